# Choosing the language and the units of lengths.

# The language's own name in itself: it is shown beside the others, to be found by who reads no
# other.
language-name = Deutsch

# A language with the region whose numbers are wished for. $region: its code.
# Example: Deutsch (CH)
language-in-region = { $name } ({ $region })

# A language as it is called in this one, for the system's: it is read, and not looked for among
# others. $tag: the language. $name: its own name, for one that is not among these.
language-in-words = { $tag ->
        [en] Englisch
        [de] Deutsch
        [es] Spanisch
        [fr] Französisch
       *[other] { $name }
    }

# The line in the settings: its name, its value, and both as they are said. $name: a language's
# own name. $choice: system, or name when one was chosen.
setting-language-name = Sprache
setting-language = { $choice ->
        [system] Wie das System: { $name }
       *[name] { $name }
    }
setting-language-say = { $choice ->
        [system] Sprache: wie das System, { $name }. Die Pfeile zur Seite ändern sie.
       *[name] Sprache: { $name }. Die Pfeile zur Seite ändern sie.
    }

# The same for the units. $choice: region, or given when they were chosen. $units: mm or inch.
setting-units-name = Längen
setting-units = { $choice ->
        [region] { $units ->
            [inch] Wie in der Region: Zoll und Fuß
           *[mm] Wie in der Region: Millimeter und Meter
        }
       *[given] { $units ->
            [inch] Zoll und Fuß
           *[mm] Millimeter und Meter
        }
    }
setting-units-say = { $choice ->
        [region] { $units ->
            [inch] Längen: wie in der Region, in Zoll und Fuß. Die Pfeile zur Seite ändern es.
           *[mm] Längen: wie in der Region, in Millimetern und Metern. Die Pfeile zur Seite ändern es.
        }
       *[given] { $units ->
            [inch] Längen: in Zoll und Fuß. Die Pfeile zur Seite ändern es.
           *[mm] Längen: in Millimetern und Metern. Die Pfeile zur Seite ändern es.
        }
    }

# Shown, and said as well as it can be. $name: the language's own name.
voice-no-language = Der Sprachdienst hat keine Stimme für { $name } und liest mit einer anderen vor: Füge dem System eine hinzu, oder wähl in den Einstellungen eine andere Sprache.
# $name: the name of a voice.
voice-not-there = Die Stimme „{ $name }“ ist nicht da, und eine andere spricht: Wähl eine in den Einstellungen.
