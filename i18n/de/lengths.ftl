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

# Beispiel: 5 vierundsechzigstel Zoll. $above and $below: the fraction in lowest terms; below the line
# stands 2, 4, 8, 16, 32 or 64.
length-fraction-say = { $below ->
        [2] ein halb Zoll
        [4] { $above ->
            [1] ein viertel Zoll
           *[other] drei viertel Zoll
        }
        [8] { $above ->
            [1] ein achtel Zoll
           *[other] { $above } achtel Zoll
        }
        [16] { $above ->
            [1] ein sechzehntel Zoll
           *[other] { $above } sechzehntel Zoll
        }
        [32] { $above ->
            [1] ein zweiunddreißigstel Zoll
           *[other] { $above } zweiunddreißigstel Zoll
        }
       *[64] { $above ->
            [1] ein vierundsechzigstel Zoll
           *[other] { $above } vierundsechzigstel Zoll
        }
    }
# Beispiel: 5/64 Zoll
length-fraction = { $above }/{ $below } Zoll

# Beispiel: 1 und drei viertel Zoll. $inches: whole ones.
length-in-fraction-say = { $inches } und { $below ->
        [2] ein halb Zoll
        [4] { $above ->
            [1] ein viertel Zoll
           *[other] drei viertel Zoll
        }
        [8] { $above ->
            [1] ein achtel Zoll
           *[other] { $above } achtel Zoll
        }
        [16] { $above ->
            [1] ein sechzehntel Zoll
           *[other] { $above } sechzehntel Zoll
        }
        [32] { $above ->
            [1] ein zweiunddreißigstel Zoll
           *[other] { $above } zweiunddreißigstel Zoll
        }
       *[64] { $above ->
            [1] ein vierundsechzigstel Zoll
           *[other] { $above } vierundsechzigstel Zoll
        }
    }
# Beispiel: 1 3/4 Zoll
length-in-fraction = { $inches } { $above }/{ $below } Zoll

# Example: 4,5 Fuß
length-ft-say = { $number ->
        [one] einen Fuß
       *[other] { $number } Fuß
    }
# Example: 4,5 ft (so that it is not taken for a pin at the foot)
length-ft = { $number } ft

# Beispiel: 5 Fuß 3 Zoll. $feet, $inches: whole ones, 3 feet or more.
length-ft-in-say = { $feet } Fuß { $inches ->
        [one] ein Zoll
       *[other] { $inches } Zoll
    }
# Beispiel: 5 ft 3 Zoll
length-ft-in = { $feet } ft { $inches } Zoll
