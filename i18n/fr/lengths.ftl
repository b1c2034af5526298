# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses. In French everything below two is singular.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages.

# Exemple : 9 millimètres
length-mm-say = { $number ->
        [one] { $number } millimètre
       *[other] { $number } millimètres
    }
# Exemple : 9 mm
length-mm = { $number } mm

# Exemple : 15 centimètres
length-cm-say = { $number ->
        [one] { $number } centimètre
       *[other] { $number } centimètres
    }
# Exemple : 15 cm
length-cm = { $number } cm

# Exemple : 1,2 mètre
length-m-say = { $number ->
        [one] { $number } mètre
       *[other] { $number } mètres
    }
# Exemple : 1,2 m
length-m = { $number } m

# Exemple : 0,5 inuce
length-in-say = { $number ->
        [one] { $number } pouce
       *[other] { $number } pouces
    }
# Exemple : 0,5 po
length-in = { $number } po

# Exemple : 5 soixante-quatrièmes de pouce. $above and $below: the fraction in lowest terms; below the
# line stands 2, 4, 8, 16, 32 or 64.
length-fraction-say = { $below ->
        [2] un demi-pouce
        [4] { $above ->
            [1] un quart de pouce
           *[other] trois quarts de pouce
        }
        [8] { $above ->
            [1] un huitième de pouce
           *[other] { $above } huitièmes de pouce
        }
        [16] { $above ->
            [1] un seizième de pouce
           *[other] { $above } seizièmes de pouce
        }
        [32] { $above ->
            [1] un trente-deuxième de pouce
           *[other] { $above } trente-deuxièmes de pouce
        }
       *[64] { $above ->
            [1] un soixante-quatrième de pouce
           *[other] { $above } soixante-quatrièmes de pouce
        }
    }
# Exemple : 5/64 po
length-fraction = { $above }/{ $below } po

# Exemple : 1 pouce trois quarts. $inches: whole ones.
length-in-fraction-say = { $inches ->
        [one] { $inches } pouce
       *[other] { $inches } pouces
    } et { $below ->
        [2] demi
        [4] { $above ->
            [1] un quart
           *[other] trois quarts
        }
        [8] { $above ->
            [1] un huitième
           *[other] { $above } huitièmes
        }
        [16] { $above ->
            [1] un seizième
           *[other] { $above } seizièmes
        }
        [32] { $above ->
            [1] un trente-deuxième
           *[other] { $above } trente-deuxièmes
        }
       *[64] { $above ->
            [1] un soixante-quatrième
           *[other] { $above } soixante-quatrièmes
        }
    }
# Exemple : 1 3/4 po
length-in-fraction = { $inches } { $above }/{ $below } po

# Exemple : 4,5 pieds
length-ft-say = { $number ->
        [one] { $number } pied
       *[other] { $number } pieds
    }
# Exemple : 4,5 pi
length-ft = { $number } pi

# Exemple : 5 pieds 3 pouces. $feet, $inches: whole ones, 3 feet or more.
length-ft-in-say = { $feet } pieds { $inches ->
        [one] { $inches } pouce
       *[other] { $inches } pouces
    }
# Exemple : 5 pi 3 po
length-ft-in = { $feet } pi { $inches } po
