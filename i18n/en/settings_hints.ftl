# What each line of the settings is for, shown below the list while the line is chosen.

# $field: as in settings-name.
settings-hint = { $field ->
        [learn] Any key, pedal, button or MIDI pedal can go on, go back or say it again: press it once, and it is learnt.
        [knocks] Unless learnt otherwise, two knocks on the bench are next, three are say it again. A microphone listens; nothing is recorded or kept, only when a knock came and how loud it was is passed on.
        [try-knocks] Shows how loud it is and each row of knocks that was taken, so that you find where the microphone should lie.
        [language] The language of all that is said, shown and printed.
        [units] Millimetres and metres, or inches and feet, for every length.
        [voice] Which of the voices of the speech service says the steps.
        [speed] How fast a step is said: slower for a new knot, faster for one you know.
        [volume] How loud the steps are said.
        [pitch] How high the voice is: choose what you hear best beside other noise.
        [cues] A short sound for next, back, a look and the end, before the words.
        [cue-volume] How loud those sounds are.
        [flash] The edge of the screen lights up at a press, for those who do not hear the sounds.
        [motion] A leg draws itself once, crossing by crossing. Off, it stands there whole at once.
        [theme] Light on dark for the evening, dark on light for a bright room.
        [distance] How far your eye is from the screen while you tie: letters and pin numbers grow with it.
        [screen-width] How wide the picture on your screen is, measured with a rule: then letters are as large as they should be.
        [pacing] Goes on by itself, a little slower than your last steps. Any press holds it.
        [price-metre] With it the plan says what the cord of a knot costs.
        [price-hour] With it the plan says what the work on a knot is worth.
        [bounce] A foot may strike twice where once was meant: so soon after the first, the second does not count.
        [long] One pedal for two: held down, it goes back.
       *[double] One pedal for two: pressed twice, it says the step again.
    }
