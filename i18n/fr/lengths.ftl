# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses. In French everything below two is singular.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages. On the screen inches and feet are words too: "po" and "pi" are at home in Canada
# alone. By ear halves and quarters are said as at the bench (un pouce et demi, 2 pouces trois quarts).

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

# Exemple : 0,5 pouce
length-in-say = { $number ->
        [one] { $number } pouce
       *[other] { $number } pouces
    }
# Exemple : 6 pouces
length-in = { $number ->
        [one] { $number } pouce
       *[other] { $number } pouces
    }

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
# Exemple : 5/64 pouce
length-fraction = { $above }/{ $below } pouce

# Exemple : 1 pouce trois quarts. $inches: whole ones.
length-in-fraction-say = { $inches ->
        [one] { $inches } pouce
       *[other] { $inches } pouces
    } { $below ->
        [2] et demi
        [4] { $above ->
            [1] et quart
           *[other] trois quarts
        }
        [8] { $above ->
            [1] et un huitième
           *[other] et { $above } huitièmes
        }
        [16] { $above ->
            [1] et un seizième
           *[other] et { $above } seizièmes
        }
        [32] { $above ->
            [1] et un trente-deuxième
           *[other] et { $above } trente-deuxièmes
        }
       *[64] { $above ->
            [1] et un soixante-quatrième
           *[other] et { $above } soixante-quatrièmes
        }
    }
# Exemple : 1 3/4 pouce
length-in-fraction = { $inches } { $above }/{ $below } { $inches ->
        [one] pouce
       *[other] pouces
    }

# Exemple : 4,5 pieds
length-ft-say = { $number ->
        [one] { $number } pied
       *[other] { $number } pieds
    }
# Exemple : 4,5 pieds
length-ft = { $number ->
        [one] { $number } pied
       *[other] { $number } pieds
    }

# Exemple : 5 pieds 3 pouces. $feet, $inches: whole ones, 3 feet or more.
length-ft-in-say = { $feet } pieds { $inches ->
        [one] { $inches } pouce
       *[other] { $inches } pouces
    }
# Exemple : 5 pieds 3 pouces
length-ft-in = { $feet } pieds { $inches ->
        [one] { $inches } pouce
       *[other] { $inches } pouces
    }
