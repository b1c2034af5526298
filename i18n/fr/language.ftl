# Choosing the language and the units of lengths.

# The language’s own name in itself: it is shown beside the others, to be found by who reads no
# other.
language-name = Français

# A language with the region whose numbers are wished for. $region: its code.
# Exemple : Français (CA)
language-in-region = { $name } ({ $region })

# A language as it is called in this one, for the system's: it is read, and not looked for among
# others. $tag: the language. $name: its own name, for one that is not among these.
language-in-words = { $tag ->
        [en] anglais
        [de] allemand
        [es] espagnol
        [fr] français
       *[other] { $name }
    }

# The line in the settings: its name, its value, and both as they are said. $name: a language’s
# own name. $choice: system, or name when one was chosen.
setting-language-name = Langue
setting-language = { $choice ->
        [system] Celle du système : { $name }
       *[name] { $name }
    }
setting-language-say = { $choice ->
        [system] Langue : celle du système, { $name }. Les flèches de côté la changent.
       *[name] Langue : { $name }. Les flèches de côté la changent.
    }

# The same for the units. $choice: region, or given when they were chosen. $units: mm or inch.
setting-units-name = Longueurs
setting-units = { $choice ->
        [region] { $units ->
            [inch] Selon la région : pouces et pieds
           *[mm] Selon la région : millimètres et mètres
        }
       *[given] { $units ->
            [inch] Pouces et pieds
           *[mm] Millimètres et mètres
        }
    }
setting-units-say = { $choice ->
        [region] { $units ->
            [inch] Longueurs : selon la région, en pouces et en pieds. Les flèches de côté changent ce réglage.
           *[mm] Longueurs : selon la région, en millimètres et en mètres. Les flèches de côté changent ce réglage.
        }
       *[given] { $units ->
            [inch] Longueurs : en pouces et en pieds. Les flèches de côté changent ce réglage.
           *[mm] Longueurs : en millimètres et en mètres. Les flèches de côté changent ce réglage.
        }
    }

# Shown, and said as well as it can be. $name: the language’s own name.
voice-no-language = Le service de parole n’a pas de voix pour la langue { $name } et lit avec une autre : ajoutez-en une au système, ou choisissez une autre langue dans les réglages.
# $name: the name of a voice.
voice-not-there = La voix « { $name } » n’est pas là, et une autre parle : choisissez-en une dans les réglages.
