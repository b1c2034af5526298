# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages. Inches are told as on a rule, and feet with inches, never with decimals: nobody can
# lay 1.57 inches off.

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

# Example: 6 inches
length-in-say = { $number ->
        [one] { $number } inch
       *[other] { $number } inches
    }
# Example: 6 in
length-in = { $number } in

# Example: 5 sixty-fourths of an inch. $above and $below: the fraction in lowest terms; below the line
# stands 2, 4, 8, 16, 32 or 64.
length-fraction-say = { $below ->
        [2] half an inch
        [4] { $above ->
            [1] a quarter of an inch
           *[other] three quarters of an inch
        }
        [8] { $above ->
            [1] an eighth of an inch
           *[other] { $above } eighths of an inch
        }
        [16] { $above ->
            [1] a sixteenth of an inch
           *[other] { $above } sixteenths of an inch
        }
        [32] { $above ->
            [1] a thirty-second of an inch
           *[other] { $above } thirty-seconds of an inch
        }
       *[64] { $above ->
            [1] a sixty-fourth of an inch
           *[other] { $above } sixty-fourths of an inch
        }
    }
# Example: 5/64 in
length-fraction = { $above }/{ $below } in

# Example: 1 and three quarter inches. $inches: whole ones.
length-in-fraction-say = { $inches } and { $below ->
        [2] a half inches
        [4] { $above ->
            [1] a quarter inches
           *[other] three quarter inches
        }
        [8] { $above ->
            [1] an eighth inches
           *[other] { $above } eighths inches
        }
        [16] { $above ->
            [1] a sixteenth inches
           *[other] { $above } sixteenths inches
        }
        [32] { $above ->
            [1] a thirty-second inches
           *[other] { $above } thirty-seconds inches
        }
       *[64] { $above ->
            [1] a sixty-fourth inches
           *[other] { $above } sixty-fourths inches
        }
    }
# Example: 1 3/4 in
length-in-fraction = { $inches } { $above }/{ $below } in

# Example: 5 feet
length-ft-say = { $number ->
        [one] { $number } foot
       *[other] { $number } feet
    }
# Example: 60 ft
length-ft = { $number } ft

# Example: 5 feet 3 inches. $feet, $inches: whole ones, 3 feet or more.
length-ft-in-say = { $feet } feet { $inches ->
        [one] 1 inch
       *[other] { $inches } inches
    }
# Example: 5 ft 3 in
length-ft-in = { $feet } ft { $inches } in
