# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Counting a knot
# Said before the first question, and when it is asked where one is.
count-opening = Counting a knot.
# $asked: bights, nested, lands, rows, passes, over, colours or found. $number: so far, or which
# crossing; found: strands. $nested: rows of scallops at each rim.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] 1 scallop
           *[other] { $number } scallops
        }
        [nested] { $number ->
            [one] 1 scallop alone
           *[other] { $number } scallops nested
        }
        [lands] Row { $number } of scallops
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
       *[over] Over at crossing { $number }?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Hold the knot upright. How many scallops has its bottom rim? Mark one with your thumb and count once round. Next: one more.
        [nested] Look at one place of that rim. How many scallops lie nested there, one inside the other? Cords that run side by side all the way count as one. In most knots it is 1. Next: one more.
        [lands] From an outermost scallop at the bottom follow a cord up to the top rim. In which row of scallops does it turn there, 1 the outermost? Next: one row further in.
        [rows] From { $nested ->
            [one] a bottom scallop
           *[other] that outermost bottom scallop
        } follow one cord up to the top rim. How many times does it cross? Cords that lie side by side count as one. Next: one more.
        [passes] How many cords lie side by side? Next: one more.
        [over] { $nested ->
            [one] Follow a cord that rises to the right, from the bottom rim up.
           *[other] Follow a cord that rises to the right from a scallop of bottom row { $from }, counted from the outside.
        } Crossing { $number } of { $of }: does it go over?
        [colours] How many colours of cord do you see? Next: one more.
       *[found] { $tie }. { $colours ->
            [cord] One cord makes all of it.
            [passes] It is one strand, and passes of it have cords of their own.
            [strands] It is { $number } strands, each a cord of its own: the colours agree.
            [alike] It is { $number } strands, each a cord of its own; some have the same colour.
           *[too-many] No such knot can have so many colours: something was miscounted.
        }
    }
# With $nested rows of scallops there is no knot of $number crossings. $less and $more: the nearest there are.
count-misfit = With { $nested } rows of scallops there are { $less } crossings or { $more }, and { $number } cannot be: count once more.
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

## A counted knot on the plan screen

plan-only = { $key }: only { $tie }
# Said when the screen appears.
plan-only-told = Only the knot that was counted is looked at: { $tie }. F10 looks at all.{ $bare ->
        [yes] { " " }Enter ties it as it is, without object and tube.
       *[no] { "" }
    }
plan-only-note = Enter ties it as it is.
plan-any-told = All knots are looked at again.
key-any-knot = all knots
