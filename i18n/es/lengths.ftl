# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages. One is a word for the ear, as a voice would read the figure as "uno". A foot (pie)
# is also the word for the bottom rim here: only the rim has a pin and an article ("del pie"). On the
# screen "in" and "ft" stay: they are the symbols of the standard and read alike in Spain and Mexico.

# Ejemplo: 9 milímetros
length-mm-say = { $number ->
        [one] un milímetro
       *[other] { $number } milímetros
    }
# Ejemplo: 9 mm
length-mm = { $number } mm

# Ejemplo: 15 centímetros
length-cm-say = { $number ->
        [one] un centímetro
       *[other] { $number } centímetros
    }
# Ejemplo: 15 cm
length-cm = { $number } cm

# Ejemplo: 1,2 metros
length-m-say = { $number ->
        [one] un metro
       *[other] { $number } metros
    }
# Ejemplo: 1,2 m
length-m = { $number } m

# Ejemplo: 6 pulgadas
length-in-say = { $number ->
        [one] una pulgada
       *[other] { $number } pulgadas
    }
# Ejemplo: 6 in
length-in = { $number } in

# Ejemplo: 5 sesenta y cuatroavos de pulgada. $above and $below: the fraction in lowest terms; below the
# line stands 2, 4, 8, 16, 32 or 64.
length-fraction-say = { $below ->
        [2] media pulgada
        [4] { $above ->
            [1] un cuarto de pulgada
           *[other] tres cuartos de pulgada
        }
        [8] { $above ->
            [1] un octavo de pulgada
           *[other] { $above } octavos de pulgada
        }
        [16] { $above ->
            [1] un dieciseisavo de pulgada
           *[other] { $above } dieciseisavos de pulgada
        }
        [32] { $above ->
            [1] un treintaidosavo de pulgada
           *[other] { $above } treintaidosavos de pulgada
        }
       *[64] { $above ->
            [1] un sesentaicuatroavo de pulgada
           *[other] { $above } sesentaicuatroavos de pulgada
        }
    }
# Ejemplo: 5/64 in
length-fraction = { $above }/{ $below } in

# Ejemplo: 1 pulgada y tres cuartos. $inches: whole ones.
length-in-fraction-say = { $inches ->
        [one] una pulgada
       *[other] { $inches } pulgadas
    } y { $below ->
        [2] media
        [4] { $above ->
            [1] un cuarto
           *[other] tres cuartos
        }
        [8] { $above ->
            [1] un octavo
           *[other] { $above } octavos
        }
        [16] { $above ->
            [1] un dieciseisavo
           *[other] { $above } dieciseisavos
        }
        [32] { $above ->
            [1] un treintaidosavo
           *[other] { $above } treintaidosavos
        }
       *[64] { $above ->
            [1] un sesentaicuatroavo
           *[other] { $above } sesentaicuatroavos
        }
    }
# Ejemplo: 1 3/4 in
length-in-fraction = { $inches } { $above }/{ $below } in

# Ejemplo: 5 pies
length-ft-say = { $number ->
        [one] un pie
       *[other] { $number } pies
    }
# Ejemplo: 60 ft
length-ft = { $number } ft

# Ejemplo: 5 pies y 3 pulgadas. $feet, $inches: whole ones, 3 feet or more.
length-ft-in-say = { $feet } pies y { $inches ->
        [one] una pulgada
       *[other] { $inches } pulgadas
    }
# Ejemplo: 5 ft 3 in
length-ft-in = { $feet } ft { $inches } in
