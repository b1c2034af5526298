# Tied in place on a ball or a knob: marks at the bottom and at the top in the place of pins.

-all-through = At every tuck all of it goes through.
-along-bottom = the bottom-mark side
-along-top = the top-mark side
-before-lifting = Before the marks come off,
-being-rigged = The marks are being set:
-Bottom-pin = Bottom mark
-bottom-pin = bottom mark
-bottom-pins = bottom marks
-bottom-ring = bottom-mark
-bottom-side = bottom-mark
-card-left = Work to the left round the ball; the marks are numbered that way.
-card-right = Work to the right round the ball; the marks are numbered that way.
-coming-off = Taking the marks off
-hold-again = At every mark peel the scrap of tape off first, and press it on again over all the cords there.
-hold-again-short = At every mark tape over all cords again.
-how-to-stand = Hold the ball with the bottom marks down, and look at it from the front. At every mark a scrap of masking tape over the bight holds it.
-laid-and-lifted = Everything is laid, and the marks are off;
-Lift-off = Take
-lift-off = take
-Lift-up = Raise
-lift-up = raise
-Lifting = Marks off
-of-the-tube = of the ball
-on-it = on the ball
-on-the-tube = on the ball
-on-the-tube-side = on the ball side
-once-they-are-gone = once the marks are gone
-pin = mark
-pins = marks
-planned-so = planned with its ball and cord.
-round-shown = Tape it at
-round-the-tube = round the ball
-taped-over = , tape over all
-Then-round = Tape the bight at
-to-be-lifted = the marks are to come off.
-Top-pin = Top mark
-top-pin = top mark
-top-pins = top marks
-top-ring = top-mark
-top-side = top-mark
-tops-staggered = top marks half a step on.
-tops-straight = top marks straight above.
-tube-is-empty = nothing is laid.
-turn-it-round = Turn the ball once round
-upright = Bottom marks down. Tape every bight at its mark.
-upright-shown = Bottom marks down, tail and bights taped down.
-work-left = You work round to the left, and the marks are numbered that way.
-work-right = You work round to the right, and the marks are numbered that way.

## Rigging

rig-strip-say = { $rim ->
        [top] Stick a second strip of tape { $spacing } above it along the ball, and mark it every { $pitch }: { $pins } { -top-pins }. { $shift ->
            [none] { -Top-pin } 1 stands { -straight-above } { -bottom-pin } 1.
           *[other] { -Top-pin } 1 stands { $shift } to the { $hand ->
                [left] left
               *[right] right
            } of { -bottom-pin } 1, half way to { -bottom-pin } 2.
        }
       *[bottom] Stick narrow tape once round the lower part of the ball, { $length } of it, snip its edge where it stands off, and mark it every { $pitch }: { $pins } { -bottom-pins }.
    }
rig-strip-say-brief = { $rim ->
        [top] Stick a second strip of tape { $spacing } above it along the ball, and mark it every { $pitch }: { $pins } { -top-pins }. { $shift ->
            [none] { -Top-pin } 1 stands { -straight-above } { -bottom-pin } 1.
           *[other] { -Top-pin } 1 stands { $shift } to the { $hand ->
                [left] left
               *[right] right
            } of { -bottom-pin } 1, half way to { -bottom-pin } 2.
        }
       *[bottom] Stick narrow tape once round the lower part of the ball, { $length } of it, snip its edge where it stands off, and mark it every { $pitch }: { $pins } { -bottom-pins }.
    }
rig-strip-say-teach = { $rim ->
        [top] Stick a second strip of tape { $spacing } above it along the ball, and mark it every { $pitch }: { $pins } { -top-pins }. { $shift ->
            [none] { -Top-pin } 1 stands { -straight-above } { -bottom-pin } 1.
           *[other] { -Top-pin } 1 stands { $shift } to the { $hand ->
                [left] left
               *[right] right
            } of { -bottom-pin } 1, half way to { -bottom-pin } 2.
        }
       *[bottom] Stick narrow tape once round the lower part of the ball, { $length } of it, snip its edge where it stands off, and mark it every { $pitch }: { $pins } { -bottom-pins }.
    } Tape that goes just once round has its marks at even distances.
rig-strip-show = { $rim ->
        [top] { -Top-pin }s { $spacing } above the bottom ones, along the ball
       *[bottom] { -Bottom-pin }s every { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] In line with the others, every { $pitch }
           *[other] Half way on: { $shift } to the { $hand ->
                [left] left
               *[right] right
            }, every { $pitch }
        }
       *[bottom] { $pins } marks on tape, { $length } once round
    }
rig-number-say = Number the marks on the tape from 1 to { $pins }, to the { $hand ->
            [left] left
           *[right] right
        }{ $rows ->
            [one] , the same on both strips
           *[other] , the same in every row
        }.
rig-number-say-brief = Number the marks on the tape from 1 to { $pins }, to the { $hand ->
            [left] left
           *[right] right
        }{ $rows ->
            [one] , the same on both strips
           *[other] , the same in every row
        }.
rig-number-say-teach = Number the marks on the tape from 1 to { $pins }, to the { $hand ->
            [left] left
           *[right] right
        }{ $rows ->
            [one] , the same on both strips
           *[other] , the same in every row
        }. Every step calls the marks by these numbers.
rig-number-show = Number the marks 1 to { $pins }
rig-number-note = To the { $hand ->
            [left] left
           *[right] right
        }{ $rows ->
            [one] , both strips alike
           *[other] , all rows alike
        }
kit-tape-say = You will need, { $number } of { $items }: masking tape, { $tape } and some to spare, { $scraps } short scraps of it to hold the bights. Press next when you have it.
kit-tape-say-brief = Masking tape, { $tape } and some to spare, { $scraps } scraps of it for the bights.
kit-tape-say-teach = You will need, { $number } of { $items }: masking tape, { $tape } and some to spare, { $scraps } short scraps of it to hold the bights. Press next when you have it. It holds the tail, and carries the marks and their numbers.
kit-tape-note = { $scraps } short scraps of it, one over each bight
rig-nest-say = Now { $rows ->
        [two] the inner row
       *[more] row { $row }
    } of marks, { $pins } at each rim, { $inside } inside the outermost row, { -towards-the-middle }. Draw them on the same strip of tape, or on a further one where that is too narrow. Each stands in line with the outermost mark of its number, and has that number.
rig-nest-say-teach = Now { $rows ->
        [two] the inner row
       *[more] row { $row }
    } of marks, { $pins } at each rim, { $inside } inside the outermost row, { -towards-the-middle }. Draw them on the same strip of tape, or on a further one where that is too narrow. Each stands in line with the outermost mark of its number, and has that number. Rows that stand nearer leave no room for the bights.
rig-nest-note = { $pins } marks at each rim, with the same numbers
kit-tool-say-teach = You will need, { $number } of { $items }: { $tool ->
        [marker] a pen that writes on tape. Press next when you have it. You draw the marks with it.
        [ruler] a ruler. Press next when you have it. You measure the cord with it, and where the marks go.
        [blade] a sharp knife, or scissors. Press next when you have it. With it you cut the cord, and at the very end its ends.
        [dish] a dish for what comes off. Press next when you have it.
       *[sealing] a lighter for cord that melts, or glue for natural fibre. Press next when you have it. It keeps the cut ends from fraying.
    }

## On paper

card-pins = Make { $pins } marks evenly round on each of two tapes, { $staggered ->
        [yes] each { -top-pin } half way between two { -bottom-pins }: { -top-pin } 1 half a pitch on from { -bottom-pin } 1.
       *[no] each { -top-pin } { -straight-above } the { -bottom-pin } of its number.
    }
card-pins-apart = Round the ball the marks are { $apart } apart, where it is { $tube } across.
card-lift = Marks off: mark { -bottom-bight } 1 with tape and see that no end slips back in. Peel the scraps of tape off the bights, and draw the strips out from under the cords; the knot stays where it is.
strip-title = Mark strips: { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $tube } thick, { $round } round
strip-how = Cut both strips out along their lines and tape each once round what you cover, ends together. Its marks stand where the lines cross; the lines run on to the edge of the paper. Begin both strips at one line along it.
strip-spacing = { $known ->
        [no] How far apart the rows of marks lie depends on the cord: name it too (--cord), and it is written here.
       *[yes] { $rows ->
            [1] The two rows of marks
           *[other] The two outermost rows of marks
        } lie { $spacing } apart, along the ball.
    }
strip-top = Top
strip-bottom = Bottom
