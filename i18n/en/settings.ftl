# The settings and the learn screen, and the presses that are the same on every screen.

settings-heading = Settings
settings-opening-say = Settings. The up and down arrows go from line to line, the side arrows change it, escape is done.

# The heading of a group of lines, with what they are for. $group: pedals, language, voice, signals,
# screen, pace, prices or presses.
settings-group = { $group ->
        [pedals] Pedals and keys: what you press for what
        [language] Language and measures: what everything is told in
        [voice] The voice: how the steps are said
        [signals] Signals: what is heard and seen of a press
        [screen] The screen: how large and in which colours
        [pace] Pace: going on without a press
        [prices] Prices: what a knot is worth
       *[presses] Presses: one strike told from another
    }
settings-none-learnt = Nothing is learnt yet: the usual keys and pedals hold.

# The name of a line.
settings-name = { $field ->
        [learn] Pedals and keys
        [knocks] Knocks on the bench
        [try-knocks] Try the knocks
        [voice] Voice
        [speed] Speed of the voice
        [volume] Loudness of the voice
        [pitch] Pitch of the voice
        [cues] Short sounds
        [cue-volume] Loudness of the sounds
        [flash] Flash at the edge
        [motion] Moving pictures
        [theme] Colours
        [distance] Eye to screen
        [screen-width] Width of the screen’s picture
        [pacing] Move on by itself
        [price-metre] Price of a metre of cord
        [price-hour] Price of an hour of work
        [bounce] Ignore a second press
        [long] Long press of next goes back
       *[double] Double press of next says it again
    }

# The value on a line. $choice: number, name, or a choice of the line. $number in the unit of
# the line, or $length with its unit, or $amount of the tyer's own money; $name is the name of a
# voice.
settings-value = { $field ->
        [learn] { $number ->
            [0] The usual ones · Enter: learn others
            [one] 1 learnt · Enter: learn again
           *[other] { $number } learnt · Enter: learn again
        }
        [try-knocks] Enter: see what is taken for one
        [voice] { $choice ->
            [asking] Asking the speech service
            [usual] Chosen by the speech service
            [natural] { $name }, natural
           *[name] { $name }
        }
        [speed] { $number } words a minute
        [volume] { $number } %
        [pitch] { $number ->
            [50] Unchanged
           *[other] { $number } %
        }
        [cue-volume] { $number } %
        [theme] { $choice ->
            [light] Dark on light
           *[dark] Light on dark
        }
        [distance] { $length }
        [screen-width] { $choice ->
            [unknown] Not known: 96 pixels to the inch
           *[number] { $length }
        }
        [price-metre] { $choice ->
            [off] Not set
           *[number] { $amount }
        }
        [price-hour] { $choice ->
            [off] Not set
           *[number] { $amount }
        }
        [bounce] { $number ->
            [0] Never
           *[other] { $number } milliseconds long
        }
        [long] { $choice ->
            [off] Off
           *[number] After { $number } milliseconds
        }
        [double] { $choice ->
            [off] Off
           *[number] Within { $number } milliseconds
        }
       *[switch] { $choice ->
            [on] On
           *[off] Off
        }
    }

# A line as it is said: name, value, what can be pressed. Arguments as for settings-value.
# Example: Speed of the voice: 165 words a minute. The side arrows change it.
settings-say = { $field ->
        [learn] { $number ->
            [0] Pedals and keys: as they come. Press enter to learn others.
            [one] Pedals and keys: one is learnt. Press enter to learn again.
           *[other] Pedals and keys: { $number } are learnt. Press enter to learn again.
        }
        [knocks] { $choice ->
            [on] Knocks on the bench: on. Two are next, three are say it again. A microphone listens for them; nothing is recorded or kept, and only when a knock came and how loud it was is passed on. The side arrows change it.
           *[off] Knocks on the bench: off. Switched on, a microphone listens for two or three knocks. The side arrows change it.
        }
        [try-knocks] Try the knocks: find where the microphone should lie. Press enter.
        [voice] { $choice ->
            [asking] Voice: the speech service is being asked which it has.
            [usual] Voice: chosen by the speech service. The side arrows let you hear others.
            [natural] Voice: { $name }, a natural one. The side arrows let you hear others.
           *[name] Voice: { $name }. The side arrows let you hear others.
        }
        [speed] Speed of the voice: { $number } words a minute. The side arrows change it.
        [volume] Loudness of the voice: { $number } per cent. The side arrows change it.
        [pitch] { $number ->
            [50] Pitch of the voice: its own. The side arrows change it.
           *[other] Pitch of the voice: { $number } per cent. The side arrows change it.
        }
        [cues] { $choice ->
            [on] Short sounds: on. The side arrows change it.
           *[off] Short sounds: off. The side arrows change it.
        }
        [cue-volume] Loudness of the sounds: { $number } per cent. The side arrows change it.
        [flash] { $choice ->
            [on] Flash at the edge of the screen: on. The side arrows change it.
           *[off] Flash at the edge of the screen: off. The side arrows change it.
        }
        [motion] { $choice ->
            [on] Moving pictures: on. The side arrows change it.
           *[off] Moving pictures: off. The side arrows change it.
        }
        [theme] { $choice ->
            [light] Colours: dark on light. The side arrows change it.
           *[dark] Colours: light on dark. The side arrows change it.
        }
        [distance] From your eye to the screen: { $length }. The side arrows change it.
        [screen-width] { $choice ->
            [unknown] Width of the screen’s picture on your screen: not known. The side arrows change it.
           *[number] Width of the screen’s picture on your screen: { $length }. The side arrows change it.
        }
        [pacing] { $choice ->
            [on] Move on by itself at your pace: on. Any press holds it. The side arrows change it.
           *[off] Move on by itself at your pace: off. The side arrows change it.
        }
        [price-metre] { $choice ->
            [off] Price of a metre of cord: not set. The side arrows change it.
           *[number] Price of a metre of cord: { $amount }. The side arrows change it.
        }
        [price-hour] { $choice ->
            [off] Price of an hour of work: not set. The side arrows change it.
           *[number] Price of an hour of work: { $amount }. The side arrows change it.
        }
        [bounce] { $number ->
            [0] Ignore a second press of the same pedal: never. The side arrows change it.
           *[other] Ignore a second press of the same pedal for { $number } milliseconds. The side arrows change it.
        }
        [long] { $choice ->
            [off] Long press of next goes back: off. The side arrows change it.
           *[number] Long press of next goes back, after { $number } milliseconds. The side arrows change it.
        }
       *[double] { $choice ->
            [off] Double press of next says it again: off. The side arrows change it.
           *[number] Double press of next says it again, within { $number } milliseconds. The side arrows change it.
        }
    }

# Said when the speed is changed while tying.
speed-say = { $number } words a minute.

# $aside: name of a file. $reason: what is wrong with it.
# The settings file is damaged. $state: aside when it was moved, else there. $kept: usual, copy, all or rest; $lost: the
# settings that could not be read.
settings-damaged = The settings were damaged ({ $reason }){ $state ->
        [aside] { " " }and the file was put aside as { $aside }
       *[there] { "" }
    }; { $kept ->
        [copy] those that were kept before hold.
        [saved] what has been chosen since holds.
        [all] all of them can be read and hold, and any may be wrong: look them through.
        [rest] what can be read of them holds, and { $lost } is as before: look them through.
       *[usual] the usual settings hold.
    }
settings-newer = The settings in { $file } were written by a newer Marlinspeak (version { $version }) and are left alone: the usual settings hold, and changes are not kept.
settings-not-kept = The settings could not be reached ({ $reason }): see that the folder is there and not full; until then changes hold only while the window is open.

## The learn screen

learn-opening-say = Learn pedals and keys. Press something learnt before to skip a line, twice to be done. Escape leaves all as it was.
learn-how = Press something learnt before: skip this · twice: done

# Example: Press what you want for “next”.
learn-asks = { $intent ->
        [next] Press what you want for “next”.
        [back] Press what you want for “back”.
        [again] Press what you want for “say it again”.
        [where] Press what you want for “where am I”.
        [slower] Press what you want for “slower”.
        [faster] Press what you want for “faster”.
        [pause] Press what you want for “pause”.
        [cord] Press what you want for “will the cord do”.
        [join] Press what you want for “it ran out or frayed”.
       *[wrong] Press what you want for “something is wrong”.
    }

# What was pressed and what it is for.
# Example: Key F13 is next.
# $kind: space, knocks, key, mouse, pad (a button of a game controller), note, controller or programme
# (of MIDI). $name: the name or number of the key or button.
learn-learnt = { $kind ->
        [space] The space bar
        [knocks] A row of { $name } knocks
        [mouse] Mouse button { $name }
        [pad] Controller button { $name }
        [note] MIDI note { $name }
        [controller] MIDI controller { $name }
        [programme] MIDI programme { $name }
       *[key] Key { $name }
    } { $intent ->
        [next] is next.
        [back] is back.
        [again] is say it again.
        [where] is where am I.
        [slower] is slower.
        [faster] is faster.
        [pause] is pause.
        [cord] is will the cord do.
        [join] is it ran out or frayed.
       *[wrong] is something is wrong.
    }
learn-skipped-say = Skipped.
learn-done-say = That is all, and it is kept.

## While tying

paused = Paused. P or next goes on.
# The same in large type, above the keys that go on and what they do.
paused-shown = Paused
paused-way = go on
pace-held-say = Held. Next goes on.
# Why the screen is kept on: the desktop may show it.
awake-reason = A tie is open
screen-not-awake = The system will not keep the screen on: it may go dark while you tie.

## The start screen by ear

# A part of the form when it gets the focus or changes: name, value, what can be pressed.
# $typed: what it holds. $state: empty when it holds nothing. $choice: right or left.
# Example: Leads: 5. Type a number; tab goes on, enter begins.
start-field-say = { $field ->
        [leads] { $state ->
            [empty] Leads: nothing yet. Type a number.
           *[typed] Leads: { $typed }. Type a number; tab goes on, enter begins.
        }
        [bights] { $state ->
            [empty] Bights: nothing yet. Type a number.
           *[typed] Bights: { $typed }. Type a number; tab goes on, enter begins.
        }
        [passes] { $state ->
            [empty] Passes: nothing yet. Type a number.
           *[typed] Passes: { $typed }. Type a number; tab goes on, enter begins.
        }
        [weave] { $state ->
            [empty] Weave: over one, under one, begun so that it takes the fewest tucks. 1 begins with over; a row code will do too; tab goes on.
           *[typed] Weave: { $typed }. 1 is over one, under one; a row code will do too; tab goes on.
        }
        [nested] { $state ->
            [empty] Nested bights: none. 2 to 9 lace so many cords through one another; tab goes on.
           *[typed] Nested bights: { $typed }. 1 is a plain knot; tab goes on, enter begins.
        }
        [lands] { $state ->
            [empty] First cord lands: in the innermost row of top pins. A number is a row, 1 the outermost; tab goes on.
           *[typed] First cord lands in row { $typed } of the top pins, 1 the outermost; tab goes on, enter begins.
        }
        [hand] { $choice ->
            [left] Work to the left. The space bar changes it; tab goes on.
           *[right] Work to the right. The space bar changes it; tab goes on.
        }
        [side] { $choice ->
            [top] Follow on the top-ring side of the first cord. The space bar changes it; tab goes on.
           *[bottom] Follow on the bottom-ring side of the first cord. The space bar changes it; tab goes on.
        }
        [round-hand] { $choice ->
            [hand] Tied round the hand, without a tube. The space bar changes it; tab goes on.
           *[tube] Tied on a tube. The space bar changes it to round the hand; tab goes on.
        }
       *[begin] Begin this tie: press the space bar. Escape leaves the form.
    }
