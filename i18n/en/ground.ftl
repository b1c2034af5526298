# What is said where a knot is not slid off a tube: on a rail, a taper, a ball, a mat.

# Tied in place, the whole cord goes through at every tuck. $known: yes when $length says how much of it is
# still to come: a length with its unit.
# Example: Draw the whole cord through: 3.2 metres.
draw-through-say = { $known ->
        [yes] Draw the whole cord through: { $length }.
       *[no] Draw the whole cord through.
    }
draw-through-show = { $known ->
        [yes] Draw the whole cord through: { $length }
       *[no] Draw the whole cord through
    }

# Where slack is worked first. $way: ball, taper (thick at the bottom rim), taper-down (at the top rim) or mat.
# $last: yes the last time through; what is told the first time holds until then.
fair-way-say = { $way ->
        [ball] { $last ->
            [yes] This last time draw the bights at both rims in too, so that they close over the poles.
           *[no] Until the last time only the middle of the ball comes snug: leave the bights at both rims loose.
        }
        [taper] { $last ->
            [yes] This last time draw the bights at the thin end in too.
           *[no] Until the last time only the thick end comes snug, { -at-the-bottom }: leave the bights at the thin end loose, since what is loose creeps that way.
        }
        [taper-down] { $last ->
            [yes] This last time draw the bights at the thin end in too.
           *[no] Until the last time only the thick end comes snug, { -at-the-top }: leave the bights at the thin end loose, since what is loose creeps that way.
        }
       *[mat] Keep the mat flat. { $last ->
            [yes] This last time draw the bights round the hole in too.
           *[no] Until the last time only the outer circle comes snug: leave the bights round the hole loose.
        }
    }
fair-way-show = { $way ->
        [ball] { $last ->
            [yes] Now the bights too, over the poles
           *[no] The middle first; bights loose until the last time
        }
        [mat] Mat flat; { $last ->
            [yes] now the bights round the hole too
           *[no] bights round the hole loose until the last time
        }
       *[taper] { $last ->
            [yes] Now the thin end too
           *[no] The thick end first; the thin end loose until the last time
        }
    }

# A knot that is not drawn up as tight as it goes. $way as above, or none. $width: how wide it is left, rim to rim.
fair-open-say = { $way ->
        [ball] Stop when the knot is { $width } wide, measured along the ball: tighter, it covers less.
        [mat] Stop when the ring is { $width } wide: tighter, it covers less.
       *[other] Stop when the knot is { $width } wide, from edge to edge: tighter, it covers less.
    }
fair-open-show = { $way ->
        [ball] Stop at { $width } wide, along the ball
        [mat] Stop when the ring is { $width } wide
       *[other] Stop at { $width } wide, edge to edge
    }

# A board is set up: two circles of T-pins at the marks of the printed sheet. $outer, $inner: across the circles. $pins: in
# each. $rows: circles at each rim, more than one where bights are nested. $staggered: yes or no.
rig-board-say = Lay the printed sheet flat on the board and tape it down. Push a T-pin in at every mark of { $rows ->
        [one] the outer circle, { $outer } across, and of the inner circle, { $inner } across: { $pins } in each,
       *[other] the { $rows } circles at the outer rim, the outermost { $outer } across, and of the { $rows } at the hole, the innermost { $inner } across: { $pins } in each, { $all } in all,
    } leaning a little away from the knot. { $rows ->
        [one] { "" }
       *[other] Pins of one number stand in line.
    } { $staggered ->
        [yes] Inner pin 1 stands half way between outer pins 1 and 2.
       *[no] Inner pin 1 stands straight in from outer pin 1.
    }
rig-board-say-brief = Printed sheet on the board. T-pins at the marks, { $rows ->
        [one] { $pins } in each circle.
       *[other] { $circles } circles of { $pins }, { $all } in all.
    } { $staggered ->
        [yes] Inner pin 1 stands half way between outer pins 1 and 2.
       *[no] Inner pin 1 stands straight in from outer pin 1.
    }
rig-board-say-teach = Lay the printed sheet flat on the board and tape it down. Push a T-pin in at every mark of { $rows ->
        [one] the outer circle, { $outer } across, and of the inner circle, { $inner } across: { $pins } in each,
       *[other] the { $rows } circles at the outer rim, the outermost { $outer } across, and of the { $rows } at the hole, the innermost { $inner } across: { $pins } in each, { $all } in all,
    } leaning a little away from the knot. { $rows ->
        [one] { "" }
       *[other] Pins of one number stand in line.
    } { $staggered ->
        [yes] Inner pin 1 stands half way between outer pins 1 and 2.
       *[no] Inner pin 1 stands straight in from outer pin 1.
    } A pin that leans away from the knot holds its cord, and lets it go when it is drawn.
rig-board-show = { $rows ->
        [one] T-pins in two circles, { $pins } in each
       *[other] T-pins in { $circles } circles, { $pins } in each
    }
rig-board-note = Across: { $outer } and { $inner }, at the marks of the printed sheet
