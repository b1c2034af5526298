# Choosing the language and the units of lengths.

# The language's own name in itself: it is shown beside the others, to be found by who reads no
# other.
language-name = English

# A language with the region whose numbers are wished for. $region: its code.
# Example: English (GB)
language-in-region = { $name } ({ $region })

# A language as it is called in this one, for the system's: it is read, and not looked for among
# others. $tag: the language. $name: its own name, for one that is not among these.
language-in-words = { $tag ->
        [en] English
        [de] German
        [es] Spanish
        [fr] French
       *[other] { $name }
    }

# The line in the settings: its name, its value, and both as they are said. $name: a language's
# own name. $choice: system, or name when one was chosen.
setting-language-name = Language
setting-language = { $choice ->
        [system] As the system: { $name }
       *[name] { $name }
    }
setting-language-say = { $choice ->
        [system] Language: as the system, { $name }. The side arrows change it.
       *[name] Language: { $name }. The side arrows change it.
    }

# The same for the units. $choice: region, or given when they were chosen. $units: mm or inch.
setting-units-name = Lengths
setting-units = { $choice ->
        [region] { $units ->
            [inch] As in the region: inches and feet
           *[mm] As in the region: millimetres and metres
        }
       *[given] { $units ->
            [inch] Inches and feet
           *[mm] Millimetres and metres
        }
    }
setting-units-say = { $choice ->
        [region] { $units ->
            [inch] Lengths: as in the region, in inches and feet. The side arrows change it.
           *[mm] Lengths: as in the region, in millimetres and metres. The side arrows change it.
        }
       *[given] { $units ->
            [inch] Lengths: in inches and feet. The side arrows change it.
           *[mm] Lengths: in millimetres and metres. The side arrows change it.
        }
    }

# Shown, and said as well as it can be. $name: the language's own name.
voice-no-language = The speech service has no voice for { $name } and reads with another: add one to the system, or choose another language in the settings.
# $name: the name of a voice.
voice-not-there = The voice “{ $name }” is not there and another one speaks: choose one in the settings.
