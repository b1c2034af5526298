# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages. The messages around them always put a length in the accusative (einen
# Meter lang) and never in the dative, so one form of each noun will do.
# "Fuß" as a length is only heard after a number, the rim only before one (Fuß-Stift 4).

# Example: 9 Millimeter
length-mm-say = { $number ->
        [one] einen Millimeter
       *[other] { $number } Millimeter
    }
# Example: 9 mm
length-mm = { $number } mm

# Example: 15 Zentimeter
length-cm-say = { $number ->
        [one] einen Zentimeter
       *[other] { $number } Zentimeter
    }
# Example: 15 cm
length-cm = { $number } cm

# Example: 1,2 Meter
length-m-say = { $number ->
        [one] einen Meter
       *[other] { $number } Meter
    }
# Example: 1,2 m
length-m = { $number } m

# Example: 0,5 Zoll
length-in-say = { $number ->
        [one] einen Zoll
       *[other] { $number } Zoll
    }
# Example: 0,5 Zoll ("in" would be read as the preposition)
length-in = { $number } Zoll

# Example: 4,5 Fuß
length-ft-say = { $number ->
        [one] einen Fuß
       *[other] { $number } Fuß
    }
# Example: 4,5 ft (so that it is not taken for a pin at the foot)
length-ft = { $number } ft
