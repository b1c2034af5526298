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
fair-way-say = { $way ->
        [ball] Draw the middle of the ball snug first, and the two rims last, so that they close over the poles.
        [taper] Draw the thick end snug first, { -at-the-bottom }, and the thin end last: what is loose creeps towards the thin end.
        [taper-down] Draw the thick end snug first, { -at-the-top }, and the thin end last: what is loose creeps towards the thin end.
       *[mat] Keep the mat flat, and draw the outer circle snug first, and the inner one last.
    }
fair-way-show = { $way ->
        [ball] From the middle of the ball to the poles
        [taper] From the thick end to the thin end
        [taper-down] From the thick end to the thin end
       *[mat] From the outer circle in, the mat flat
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
