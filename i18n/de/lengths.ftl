# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages. The messages around them always put a length in the accusative (einen
# Meter lang) and never in the dative, so one form of each noun will do.
# "Fuß" as a length is only heard after a number, the rim only before one (Fuß-Stift 4). On the screen
# inches and feet have their marks, ″ and ′: "in" would be read as the preposition, "Fuß" as the rim.
# Halves and quarters are said as at the bench (zweieinhalb, eindreiviertel), finer parts with "und"; a
# fraction alone is not declined (einhalb Zoll, ein achtel Zoll), as it is read off a rule.

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

# Example: 6 Zoll
length-in-say = { $number ->
        [one] einen Zoll
       *[other] { $number } Zoll
    }
# Example: 6″
length-in = { $number }″

# Example: 5 vierundsechzigstel Zoll. $above and $below: the fraction in lowest terms; below the line
# stands 2, 4, 8, 16, 32 or 64.
length-fraction-say = { $below ->
        [2] einhalb Zoll
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
# Example: 5/64″
length-fraction = { $above }/{ $below }″

# Example: eindreiviertel Zoll; 2 und 5 achtel Zoll. $inches: whole ones.
length-in-fraction-say = { $below ->
        [2] { $inches ->
            [1] eineinhalb Zoll
           *[other] { $inches } einhalb Zoll
        }
        [4] { $above ->
            [1] { $inches ->
                [1] eineinviertel Zoll
               *[other] { $inches } einviertel Zoll
            }
           *[other] { $inches ->
                [1] eindreiviertel Zoll
               *[other] { $inches } dreiviertel Zoll
            }
        }
        [8] { $inches } und { $above ->
            [1] ein achtel Zoll
           *[other] { $above } achtel Zoll
        }
        [16] { $inches } und { $above ->
            [1] ein sechzehntel Zoll
           *[other] { $above } sechzehntel Zoll
        }
        [32] { $inches } und { $above ->
            [1] ein zweiunddreißigstel Zoll
           *[other] { $above } zweiunddreißigstel Zoll
        }
       *[64] { $inches } und { $above ->
            [1] ein vierundsechzigstel Zoll
           *[other] { $above } vierundsechzigstel Zoll
        }
    }
# Example: 1 3/4″
length-in-fraction = { $inches } { $above }/{ $below }″

# Example: 5 Fuß
length-ft-say = { $number ->
        [one] einen Fuß
       *[other] { $number } Fuß
    }
# Example: 60′
length-ft = { $number }′

# Example: 5 Fuß und 3 Zoll. $feet, $inches: whole ones, 3 feet or more.
length-ft-in-say = { $feet } Fuß und { $inches ->
        [one] einen Zoll
       *[other] { $inches } Zoll
    }
# Example: 5′ 3″
length-ft-in = { $feet }′ { $inches }″
