# Interwoven knots: bights nested one inside the other at each rim, a row of pins for each, and cords that
# are laced through those laid before.

# A pin of one row of several. Wherever another message has the number of a pin, it is one of these.
# $rows: two or more, that is more than two. $row: 1 is the outermost.
# Example: From bottom pin 3 of the outer row, up and right to top pin 5 of the inner row.
pin-of-row-say = { $rows ->
        [two] { $row ->
            [1] { $number } of the outer row
           *[2] { $number } of the inner row
        }
       *[more] { $number } of row { $row }
    }
# Example: Bottom pin 3 outer row, up to pin 5 inner row.
pin-of-row-say-brief = { $rows ->
        [two] { $row ->
            [1] { $number } outer row
           *[2] { $number } inner row
        }
       *[more] { $number } row { $row }
    }
pin-of-row-say-teach = { $rows ->
        [two] { $row ->
            [1] { $number } of the outer row
           *[2] { $number } of the inner row
        }
       *[more] { $number } of row { $row }
    }
# Example: Bottom 3 outer up to top 5 inner
pin-of-row = { $rows ->
        [two] { $row ->
            [1] { $number } outer
           *[2] { $number } inner
        }
       *[more] { $number } (row { $row })
    }

# Where the first cord begins, and the first of each row inside it. $rows: rows of pins at each rim.
# $whole: yes when all passes of a cord are laid before the next cord begins.
laced-say = { $row ->
        [1] Bights are nested here: at each rim the { -pins } stand in { $rows } rows, one inside the other and in line, and every cord keeps to its own. { $whole ->
            [no] Lay the first pass of this cord, before the next is laced through it; the other passes follow when all cords lie.
           *[yes] Tie this cord whole, before the next is laced through it.
        }
       *[other] This cord is laced through those that lie there already: each leg runs midway between two legs of theirs.
    }
laced-say-brief = { $row ->
        [1] { $rows } rows of { -pins } at each rim, in line.
       *[other] Laced through the cords that lie there.
    }
laced-say-teach = { $row ->
        [1] Bights are nested here: at each rim the { -pins } stand in { $rows } rows, one inside the other and in line, and every cord keeps to its own. By itself each cord is a Turk's head. { $whole ->
            [no] Lay the first pass of this one, before the next is laced through it; the other passes follow when all cords lie.
           *[yes] Tie this one whole, before the next is laced through it.
        }
       *[other] This cord is laced through those that lie there already: each leg runs midway between two legs of theirs, and crosses them and itself in the order that is told. Where two cords have been crossed the same way, one after the other, the work begins to look like a herringbone.
    }
laced-show = { $row ->
        [1] { $rows } rows of { -pins } at each rim, in line
       *[other] Laced through the cords that lie there
    }

# What a leg of such a cord runs between: the legs that left these two pins of the same rim.
# Example: Keep between the legs from bottom pin 2 of the outer row and bottom pin 3 of the outer row.
lay-say-splits = { $heading ->
        [falling] Keep between the legs from { -top-pin } { $left } and { -top-pin } { $next }.
       *[rising] Keep between the legs from { -bottom-pin } { $left } and { -bottom-pin } { $next }.
    }
lay-show-splits = { $heading ->
        [falling] Between the legs from { -top } { $left } and { -top } { $next }
       *[rising] Between the legs from { -bottom } { $left } and { -bottom } { $next }
    }

# Rigging: a further row of pins at both rims. $inside: how far inside the outermost row, towards the
# middle of the knot. $ring: the row of the rings it stands in, 0 without rings. $step: from a pin to the next,
# in holes. $pins: at each rim. $rows and $row as above.
rig-nest-say = Now { $rows ->
        [two] the inner row
       *[more] row { $row }
    } of { -pins }, { $pins } at each rim, { $inside } inside the outermost row, { -towards-the-middle }{ $ring ->
        [0] , at the same marks of the strip.
       *[other] : row { $ring } of each ring, with { $holes } holes, a { -pin } in { $step ->
            [1] every hole.
           *[other] one hole of every { $step }.
        }
    } Each stands in line with the outermost { -pin } of its number, and has that number.
rig-nest-say-brief = { $rows ->
        [two] Inner row:
       *[more] Row { $row }:
    } { $pins } { -pins } at each rim, { $inside } inside the outermost, in line{ $ring ->
        [0] .
       *[other] , in row { $ring } of the rings.
    }
rig-nest-say-teach = Now { $rows ->
        [two] the inner row
       *[more] row { $row }
    } of { -pins }, { $pins } at each rim, { $inside } inside the outermost row, { -towards-the-middle }{ $ring ->
        [0] , at the same marks of the strip.
       *[other] : row { $ring } of each ring, with { $holes } holes, a { -pin } in { $step ->
            [1] every hole.
           *[other] one hole of every { $step }.
        }
    } Each stands in line with the outermost { -pin } of its number, and has that number. Rows that stand nearer leave no room for the bights; a ring whose rows stand otherwise does better as a strip of paper.
rig-nest-show = { $rows ->
        [two] Inner row
       *[more] Row { $row }
    }: { $inside } inside, in line
rig-nest-note = { $pins } { -pins } at each rim{ $ring ->
        [0] , at the same marks
       *[other] , in row { $ring } of the rings ({ $holes } holes)
    }, with the same numbers

# On a card.
card-rows = Bights are nested: at each rim the { -pins } stand in { $rows } rows, one inside the other, and { -pins } of one number stand in line.
# On a strip. $apart: from a row of pins to the next, or none when no cord is named. $rings: yes when the tube has rings.
strip-rows = Bights are nested: at each rim the { -pins } stand in { $rows } rows, { $apart ->
        [none] one inside the other. The marks serve every row, since { -pins } of one number stand in line.
       *[other] { $apart } apart, the inner ones { -towards-the-middle }. { $rings ->
            [yes] The rows are drawn so; where those of the rings stand further apart, go by the upright lines.
           *[no] Each row has its line.
        }
    }
# The name of a row on a strip. $rows: two, or more.
strip-row = { $rows ->
        [two] { $row ->
            [1] outer row
           *[2] inner row
        }
       *[more] row { $row }
    }
