# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages.

# Example: 9 millimetres
length-mm-say = { $number ->
        [one] { $number } millimetre
       *[other] { $number } millimetres
    }
# Example: 9 mm
length-mm = { $number } mm

# Example: 15 centimetres
length-cm-say = { $number ->
        [one] { $number } centimetre
       *[other] { $number } centimetres
    }
# Example: 15 cm
length-cm = { $number } cm

# Example: 1.2 metres
length-m-say = { $number ->
        [one] { $number } metre
       *[other] { $number } metres
    }
# Example: 1.2 m
length-m = { $number } m

# Example: 0.5 inches
length-in-say = { $number ->
        [one] { $number } inch
       *[other] { $number } inches
    }
# Example: 0.5 in
length-in = { $number } in

# Example: 4.5 feet
length-ft-say = { $number ->
        [one] { $number } foot
       *[other] { $number } feet
    }
# Example: 4.5 ft
length-ft = { $number } ft
