# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Counting a knot
# $asked: bights, rows, passes, over, colours or found. $number: so far, or the row; found: strands.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] 1 scallop
           *[other] { $number } scallops
        }
        [rows] { $number ->
            [one] 1 crossing
           *[other] { $number } crossings
        }
        [passes] { $number ->
            [one] 1 cord
           *[other] { $number } cords
        }
        [colours] { $number ->
            [one] 1 colour
           *[other] { $number } colours
        }
       *[over] Over in row { $number }?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Hold the knot upright. How many scallops has its bottom rim? Mark one with your thumb and count once round. Next: one more.
        [rows] From a bottom scallop follow one cord up to the top rim. How many times does it cross? Cords that lie side by side count as one. Next: one more.
        [passes] How many cords lie side by side? Next: one more.
        [over] Follow a cord that rises to the right, from the bottom rim up. Crossing { $number } of { $of }: does it go over?
        [colours] How many colours of cord do you see? Next: one more.
       *[found] { $tie }. { $colours ->
            [cord] One cord makes all of it.
            [passes] It is one strand, and passes of it have cords of their own.
            [strands] It is { $number } strands, each a cord of its own: the colours agree.
            [alike] It is { $number } strands, each a cord of its own; some have the same colour.
           *[too-many] No such knot can have so many colours: something was miscounted.
        }
    }
count-keys = { $asked ->
        [over] Next: over. Back: under.
       *[found] { $possible ->
            [yes] Next takes this knot, back counts again.
           *[no] Next and back count again.
        }
    }
# Printed by “marlinspeak count” when the knot is taken. $given: the options that name it.
count-go-on = Plan it with “marlinspeak rig { $given }” and your tube and cord, or tie it with “marlinspeak tie { $given }”.
count-lines = Enter is next, b back, a number stands for itself, q leaves; each with enter.
# $given: a number that was typed and is not between the bounds.
count-beyond = { $given } cannot be: give a number from { $least } to { $most }.
count-no-voice = No voice: the speech service does not answer. The questions go on in writing.
