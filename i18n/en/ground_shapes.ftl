# Why a knot does not lie on a taper, a ball, a mat or in place, and what would; and what a mat is tied on.

# $most_leads and $most_bights: the most that do go, or 0 for none.
shape-wider = This knot reaches { $most } at the most and cannot cover { $given }: use more leads, or cover less.
shape-taper-short = A taper that loses so much must be more than { $least } long, and { $over } is not enough: give the length over which it tapers, or more nearly equal ends.
shape-thin-end = { $leads } leads reach where { $bights } bights no longer go round the thin end, which would have to be { $thick_from } thick: use { $most_leads ->
        [0] { $most_bights ->
            [0] fewer leads and bights
           *[other] at most { $most_bights } bights
        }
       *[other] at most { $most_leads } leads{ $most_bights ->
            [0] { "" }
           *[other] , or at most { $most_bights } bights
        }
    }, or a thinner cord.
shape-ball-full = { $leads } leads and { $bights } bights are more than a ball of { $ball } holds: use { $most_leads ->
        [0] { $most_bights ->
            [0] fewer leads and bights
           *[other] at most { $most_bights } bights
        }
       *[other] at most { $most_leads } leads{ $most_bights ->
            [0] { "" }
           *[other] , or at most { $most_bights } bights
        }
    }, or a ball of { $ball_from }, or a thinner cord.
# $cord_to: the thickest cord that does.
shape-ball-small = A cord of { $cord } is too thick to bend round a ball of { $ball }: use a cord of { $cord_to } at the most, or a ball of at least { $ball_from }.
shape-mat-full = { $leads } leads and { $bights } bights do not go into a mat of { $outer }: use { $most_leads ->
        [0] { $most_bights ->
            [0] fewer leads and bights
           *[other] at most { $most_bights } bights
        }
       *[other] at most { $most_leads } leads{ $most_bights ->
            [0] { "" }
           *[other] , or at most { $most_bights } bights
        }
    }, or a mat of { $outer_from }, or a thinner cord.
shape-hole-small = { $bights } bights do not go round a hole of { $hole }: use { $most_bights ->
        [0] { "" }
       *[other] at most { $most_bights } bights, or{" "}
    }a hole of at least { $hole_from }.
rig-no-room-in-place = { $leads } leads and { $bights } bights in { $passes ->
        [one] 1 pass
       *[other] { $passes } passes
    } leave no room to tuck where they are tied: use { $most_leads ->
        [0] { "" }
       *[other] at most { $most_leads } leads, or{" "}
    }{ $most_bights ->
        [0] { "" }
       *[other] at most { $most_bights } bights, or{" "}
    }{ $most_passes ->
        [0] { "" }
        [one] 1 pass, or{" "}
       *[other] at most { $most_passes } passes, or{" "}
    }a thinner cord.

# Example: You will need, 1 of 6: a board of cork or soft wood, at least 180 millimetres across. Press next when you have it.
kit-board-say = You will need, { $number } of { $items }: a board of cork or soft wood, at least { $across } across. Press next when you have it.
kit-board-say-brief = A board of cork or soft wood, at least { $across } across.
kit-board-say-teach = You will need, { $number } of { $items }: a board of cork or soft wood, at least { $across } across. Press next when you have it. The mat is tied flat on it, round pins that are pushed in.
kit-board-show = Board of cork or soft wood, { $across } across
kit-board-note = The pins go into it

# The printed sheet of a board. $pages: of A4.
# Example: You will need, 5 of 12: the printed sheet for the pins, 2 pages of A4 at true size. …
kit-sheet-say = You will need, { $number } of { $items }: the printed sheet for the pins, { $pages ->
        [one] 1 page of A4
       *[other] { $pages } pages of A4
    } at true size. Press next when you have it.
kit-sheet-say-brief = The printed sheet for the pins, { $pages ->
        [one] 1 page of A4
       *[other] { $pages } pages of A4
    } at true size.
kit-sheet-say-teach = You will need, { $number } of { $items }: the printed sheet for the pins, { $pages ->
        [one] 1 page of A4
       *[other] { $pages } pages of A4
    } at true size. Press next when you have it. Print it from the papers of this tie, and measure its line: a printer that scales moves every pin.
kit-sheet-show = Printed sheet, { $pages ->
        [one] 1 page
       *[other] { $pages } pages
    }
kit-sheet-note = At true size, from the papers of this tie

# $bottom, $top: from mark to mark at either rim. $outer, $inner: across the circles of pins.
card-tapes-apart = The marks of one rim stand { $bottom } apart, those of the other { $top }, measured along the tape.
card-board-circles = The pins stand on two circles, { $outer } and { $inner } across.

# $thinner, $thicker: a cord that would do, or none.
fit-none-lies = No knot of this cord lies there and hides enough: use { $thinner ->
        [none] { $thicker ->
            [none] another cord, or cover something else
           *[other] a cord of { $thicker }
        }
       *[other] a cord of { $thinner }{ $thicker ->
            [none] { "" }
           *[other] , or of { $thicker }
        }
    }.
fit-no-room-in-place = No knot of this cord leaves room to tuck there: use { $thinner ->
        [none] a thinner cord
       *[other] a cord of { $thinner }
    }, or tie it on a thicker tube and slide it on.

# In the picture of a board: which circle is which, beyond the outer one and within the inner one, as its pins are called.
picture-circle = { $circle ->
        [outer] outer
       *[inner] inner
    }

# In the picture of a tube: at the number of a pin that is round the back of it.
picture-behind = behind
