# Choosing the language and the units of lengths.

# The language's own name in itself: it is shown beside the others, to be found by who reads no
# other.
language-name = Español

# A language with the region whose numbers are wished for. $region: its code.
# Ejemplo: Español (MX)
language-in-region = { $name } ({ $region })

# A language as it is called in this one, for the system's: it is read, and not looked for among
# others. $tag: the language. $name: its own name, for one that is not among these.
language-in-words = { $tag ->
        [en] inglés
        [de] alemán
        [es] español
        [fr] francés
       *[other] { $name }
    }

# The line in the settings: its name, its value, and both as they are said. $name: a language's
# own name. $choice: system, or name when one was chosen.
setting-language-name = Idioma
setting-language = { $choice ->
        [system] El del sistema: { $name }
       *[name] { $name }
    }
setting-language-say = { $choice ->
        [system] Idioma: el del sistema, { $name }. Las flechas laterales lo cambian.
       *[name] Idioma: { $name }. Las flechas laterales lo cambian.
    }

# The same for the units. $choice: region, or given when they were chosen. $units: mm or inch.
setting-units-name = Longitudes
setting-units = { $choice ->
        [region] { $units ->
            [inch] Las de la región: pulgadas y pies
           *[mm] Las de la región: milímetros y metros
        }
       *[given] { $units ->
            [inch] Pulgadas y pies
           *[mm] Milímetros y metros
        }
    }
setting-units-say = { $choice ->
        [region] { $units ->
            [inch] Longitudes: las de la región, en pulgadas y pies. Las flechas laterales las cambian.
           *[mm] Longitudes: las de la región, en milímetros y metros. Las flechas laterales las cambian.
        }
       *[given] { $units ->
            [inch] Longitudes: en pulgadas y pies. Las flechas laterales las cambian.
           *[mm] Longitudes: en milímetros y metros. Las flechas laterales las cambian.
        }
    }

# Shown, and said as well as it can be. $name: the language's own name.
# Ejemplo: El servicio de voz no tiene ninguna voz para este idioma, Español, y lee con otra: …
voice-no-language = El servicio de voz no tiene ninguna voz para este idioma, { $name }, y lee con otra: añade una al sistema, o elige otro idioma en los ajustes.
# $name: the name of a voice.
voice-not-there = La voz «{ $name }» no está y habla otra en su lugar: elige una en los ajustes.
