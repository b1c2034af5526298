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

# Exemple : 4,5 pieds
length-ft-say = { $number ->
        [one] { $number } pied
       *[other] { $number } pieds
    }
# Exemple : 4,5 pi
length-ft = { $number } pi
