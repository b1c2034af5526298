# “marlinspeak doctor”: a line for each thing that the program needs or likes to have. Each says
# whether it works, and where it does not, how to mend it.

# Names and numbers for a report of a fault. $system, $processor: their names. $session, $desktop, $locale: names, or none.
# $x11, $wayland: true or false, whether there is such a display.
# Example: Marlinspeak 0.1.0 on Debian GNU/Linux 12, x86_64, session x11, desktop GNOME, X11 yes, Wayland no, locale en-GB
doctor-head = Marlinspeak { $version } on { $system }, { $processor }, session { $session ->
        [none] not known
       *[other] { $session }
    }, desktop { $desktop ->
        [none] not known
       *[other] { $desktop }
    }, X11 { $x11 ->
        [true] yes
       *[false] no
    }, Wayland { $wayland ->
        [true] yes
       *[false] no
    }, locale { $locale ->
        [none] not set
       *[other] { $locale }
    }

# $display is a name such as :0 or wayland-0.
doctor-display = Display: works. A window can open on “{ $display }”.
doctor-display-none = Display: there is none here. Start Marlinspeak from a desktop session; without one, “marlinspeak tie” guides in the terminal.
doctor-display-silent = Display: does not work. Nothing answers on “{ $display }”. Start Marlinspeak from a desktop session; without one, “marlinspeak tie” guides in the terminal.
doctor-display-refuses = Display: does not work. “{ $display }” refuses: it belongs to somebody else. Start Marlinspeak as the person who is logged in to the desktop; without one, “marlinspeak tie” guides in the terminal.

# $voices is how many voices there are, $fitting how many of them speak the language of this text.
doctor-speech = Speech: works. The speech service answers; { $voices ->
        [one] it has 1 voice
       *[other] it has { $voices } voices
    }, { $fitting ->
        [one] 1 of them in the language “{ $language }”.
       *[other] { $fitting } of them in the language “{ $language }”.
    }
doctor-speech-foreign = Speech: does not work in the language “{ $language }”. { $voices ->
        [one] The speech service has 1 voice and it speaks another language.
       *[other] The speech service has { $voices } voices and none of them speaks it.
    } Install a voice for it; on Debian “sudo apt install speech-dispatcher-espeak-ng” brings voices for most languages.
doctor-speech-no-voices = Speech: does not work. The speech service answers but has no voices. Install some; on Debian with “sudo apt install speech-dispatcher-espeak-ng”. Then “spd-say hello” should be heard.
doctor-speech-none = Speech: does not work ({ $why ->
        [ended] the speech service ended while it was asked
        [refused] the speech service refuses to speak
       *[absent] there is no speech service to be reached
    }). Install the speech service; on Debian with “sudo apt install speech-dispatcher speech-dispatcher-espeak-ng”. Where it is installed it may lack a loudspeaker: see the next line. “spd-say hello” should be heard.
doctor-speech-silent = Speech: does not work. The speech service does not answer. End it with “pkill -x speech-dispatch”: it starts by itself when it is needed. Then “spd-say hello” should be heard.

doctor-sound = Sound: works. The short sounds can be played.
doctor-sound-none = Sound: no device for the short sounds was found. Ties go on without them; if speech is not heard either, plug in or switch on a loudspeaker and try “speaker-test”.

doctor-pedals = Pedals: { $controllers ->
        [one] 1 game controller
       *[other] { $controllers } game controllers
    } and { $midi ->
        [one] 1 MIDI input
       *[other] { $midi } MIDI inputs
    } plugged in. Pedals that send keys or mouse buttons are not counted here.
doctor-pedals-none = Pedals: no game controller or MIDI pedal is plugged in. None is needed: keys work, and pedals that send keys or mouse buttons, which are not counted here.

# $name: the name of a device.
doctor-microphone = Microphone: “{ $name }” would be listened to for knocks, once they are switched on in the settings. Nothing is recorded.
doctor-microphone-none = Microphone: none was found. None is needed: only knocks on the bench are heard with one.

# $megabytes: what is free on the disk, rounded down.
doctor-ties = Ties: work. “{ $file }” can be written to, with { $megabytes } MB free; { $documents ->
        [0] no tie is on the shelf yet.
        [one] 1 document on the shelf is whole.
       *[other] { $documents } documents on the shelf are whole.
    }
doctor-ties-damaged = Ties: { $damaged ->
        [one] 1 document in “{ $file }” cannot be read.
       *[other] { $damaged } documents in “{ $file }” cannot be read.
    } “marlinspeak shelf verify” names what is wrong; nothing is lost by looking.
doctor-ties-full = Ties: would soon not be kept. The disk of “{ $file }” has only { $megabytes } MB free: make room on it.
doctor-ties-unwritable = Ties: would not be kept. “{ $file }” cannot be written to ({ $reason }). Make the folder and its contents yours, or set XDG_DATA_HOME to a folder that is.
doctor-ties-nowhere = Ties: would not be kept. The system names no folder for them: set HOME to your home folder.

doctor-settings = Settings: work. “{ $file }” can be read.
doctor-settings-none = Settings: work. There are none yet in “{ $file }”, so the usual ones hold.
doctor-settings-newer = Settings: “{ $file }” was written by a newer Marlinspeak (version { $version } of the document). It is left alone and the usual settings hold: install the newer Marlinspeak, or move the file away.
doctor-settings-damaged = Settings: “{ $file }” is damaged ({ $reason }). When Marlinspeak opens it will set the file aside and use what can be read of it.
doctor-settings-unwritable = Settings: would not be kept. “{ $file }” refuses ({ $reason }). Make the folder and its contents yours, or set XDG_CONFIG_HOME to a folder that is.
doctor-settings-nowhere = Settings: would not be kept. The system names no folder for them: set HOME to your home folder.

doctor-log = Log: works. “{ $file }” is there for a report of a fault; it holds no names of yours.
doctor-log-unwritable = Log: is not kept. “{ $file }” cannot be written to ({ $reason }). Ties go on without it; to have one, make the folder yours, or set XDG_STATE_HOME to a folder that is.
doctor-log-nowhere = Log: is not kept. The system names no folder for it: set HOME to your home folder. Ties go on without it.

doctor-well = All that is needed works.
doctor-unwell = Something that is needed does not work: see the lines that say so.

# A fault in the program itself, in a part that the rest can go on without.
fault-noted = A part of Marlinspeak has stopped because of a fault in it, which is noted in “{ $file }”: leave, start it again, and take the tie up where it was saved.
