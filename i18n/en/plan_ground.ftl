# The first question of the plan screen: what is covered, and whether the knot can be slid onto it.

# The answers, each below its picture. $covered: round, taper, ball or mat. $slides: on or place.
plan-covers = { $covered ->
        [round] Handle, rail
        [taper] Taper
        [ball] Ball, knob
       *[mat] Flat mat
    }
plan-slides-asked = Can the knot slide onto it?
plan-slides = { $slides ->
        [on] It slides on
       *[place] Tied in place
    }

# The same, told when they are in turn.
plan-covers-told = { $covered ->
        [round] What you cover: a handle or a rail, as thick all along.
        [taper] What you cover: something that tapers, with a thick end and a thin one.
        [ball] What you cover: a ball or a knob.
       *[mat] What you cover: nothing; a flat mat, tied on a board.
    } Arrow right and arrow left change it.
plan-slides-told = { $slides ->
        [on] Can the knot slide on? Yes: it is tied on a tube with pins, and slid on.
       *[place] Can the knot slide on? No: it is tied in place, without a tube.
    } Arrow right changes it.

# What is still to be said of the thing, and the names of its measures.
plan-measure-wanted = { $covered ->
        [round] How thick is the object? Measure across it, or round it with a tape.
        [taper] How thick is it at each end? Give both with a colon between, the bottom end first, such as 32:26 mm.
        [ball] How large is the ball across?
       *[mat] How large shall the mat be from edge to edge? A hole stands behind a colon, such as 150:60 mm.
    }
plan-taper = Its two ends, bottom first
plan-ball = Its diameter
plan-mat = From edge to edge, a hole behind a colon
# What was read in the field of a taper or of a mat with its hole, below it. $shape: taper or mat.
# Example: bottom 34 mm, top 26 mm; 150 mm across, hole 40 mm
plan-ends-read = { $shape ->
        [mat] { $first } across, hole { $second }
       *[taper] bottom { $first }, top { $second }
    }
# $ends: what stands in the field, or none.
plan-taper-told = Diameters of its two ends, the bottom end first{ $ends ->
        [none] .
       *[other] : { $ends }.
    } A colon stands between them.
