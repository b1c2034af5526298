# Paper for the bench: cards, strips and stages.

## Every sheet

# At the foot of a page.
sheet-page = Page { $page } of { $pages }

## The card

card-head-leg = Leg
card-head-way = From { -pin } to { -pin }
card-head-crossings = Crossings, in the order they are met

# The way of a leg. $heading, $from, $to as in steps.ftl.
card-way = { $heading ->
        [falling] { -Top } { $from } { -down-short } to { -bottom } { $to }
       *[rising] { -Bottom } { $from } { -up-short } to { -top } { $to }
    }

# What is tied on what, and with what. $on, $ground, $object, $top, $tube, $cord as in rig-heading.
card-for = { $on ->
        [round] In place on an object { $object } across
        [taper] In place on a taper from { $object } to { $top }
        [ball] In place on a ball { $object } across
        [mat] Flat on a board, { $object } from edge to edge
       *[tube] On a tube { $tube } across, { $ground ->
            [taper] for a taper from { $object } to { $top }
            [ball] for a ball { $object } across
           *[round] for an object { $object } across
        }
    }, with { $cord } cord.

# Example: Weave: over 1, under 1.
# $kind: run, or code for a row code of o and u.
card-weave = { $kind ->
        [run] Weave: over { $weave }, under { $weave }.
        [twin] Weave: over { $weave }, under { $weave }, begun with under { -at-the-bottom }.
       *[code] Weave, row by row { -from-the-bottom }: { $weave } (o: the rising leg goes over; u: under).
    }

# $hand: right or left. $passes, $side as in steps.ftl. $inside: top or bottom.
card-work = { $hand ->
        [left] { -card-left }
       *[right] { -card-right }
    } { $passes ->
        [one] { "" }
       *[other] { $inside ->
            [bottom] Later passes lie on the { -top-ring } side of the first cord
           *[top] Later passes lie on the { -bottom-ring } side of the first cord
        }, { $passes ->
            [2] { "" }
           *[other] each beyond the last,
        } { $inside ->
            [bottom] inside its bights { -at-the-bottom } and outside them { -at-the-top }.
           *[top] inside its bights { -at-the-top } and outside them { -at-the-bottom }.
        }
    }

# Where the pins go when the tube is not known.
# $staggered: yes or no.
card-pins = Set { $pins } pins evenly round each ring, { $staggered ->
        [yes] each { -top-pin } half way between two { -bottom-pins }: { -top-pin } 1 half a pitch on from { -bottom-pin } 1.
       *[no] each { -top-pin } { -straight-above } the { -bottom-pin } of its number.
    }

# On a tube without rings. $tube: its diameter. $apart: from pin to pin.
card-pins-apart = On a tube of { $tube } the pins stand { $apart } apart, measured { -round-the-tube }.

# On a tube with rings. $rim: top or bottom. $row: number of the row, $holes in it. $first: the
# hole of pin 1. $step: holes from one pin to the next.
card-pins-ring = { $rim ->
        [top] Top ring
       *[bottom] Bottom ring
    }, row { $row } of { $holes } holes: pin 1 in hole { $first }, each next pin { $step ->
        [one] 1 hole on.
       *[other] { $step } holes on.
    }

card-half-hole = First turn the top ring half a hole on, the way the cord travels.

# The head of a pass of a strand. $pin: the bottom pin where it begins.
# Example: Lead pass: leave a tail at bottom pin 1
# Example: Second pass, strand 2: begin at bottom pin 2 beside the first cord
card-pass = { $pass ->
        [1] Lead pass
        [2] Second pass
        [3] Third pass
        [4] Fourth pass
        [5] Fifth pass
        [6] Sixth pass
        [7] Seventh pass
        [8] Eighth pass
       *[9] Ninth pass
    }{ $strands ->
        [one] { "" }
       *[other] , strand { $strand } of { $strands }
    }: { $pass ->
        [1] leave a tail at { -bottom-pin } { $pin }
       *[other] begin at { -bottom-pin } { $pin } beside the first cord
    }

# What comes when all is laid. $rings: yes when the tube has rings. $times: how often the knot is gone
# through. $known: yes when $draw, a length, says how much to draw.
card-after = When all is laid
card-lift = Lifting: mark { -bottom-bight } 1 with tape and see that no end slips back in. Take the { -top-pins } out{ $rings ->
        [yes] , slide the top ring off
       *[no] { "" }
    }, then take the { -bottom-pins } out. Slip the knot onto what it is to cover, the same way up.
card-fair = Drawing up, { $times } times: from the tail along the cord, take { $known ->
        [yes] about { $draw } of slack
       *[no] a little slack
    } out of every leg and work it on to the next, until it comes out at the working end. Pull no leg tight before its neighbours.
card-finish = Finishing: tuck the ends as below, cut each where it comes out with a stub as long as the cord is thick, seal it with heat away from the knot (natural fibre: with glue), and push it back under.

# Over the pictures of the ends, where they are tucked away.
card-ends = The ends

card-cautions = Take care
card-caution-load = It covers and decorates. Never let it hold a person or a load; for anything that does, follow local rules and ask qualified people.
card-caution-heat = Hot knife or flame: ventilate, keep clear of what burns. Molten cord sticks to skin and burns: let it cool. Sealed ends can be sharp.
card-caution-blade = Knives, picks and needles: cut and push away from the body.
card-caution-pins = Pins stick out of the tube: mind eyes and palms.
card-caution-pull = Pull gently, never with the cord round your hand.
card-caution-children = Cords, pins and small parts are not for small children. Never leave a cord round a neck.
card-caution-hands = Hands tire: rest them on a long tie.

## The strip

# $tube: its diameter, $round: the way round it.
strip-title = Pin strips: { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, tube { $tube }, { $round } round

# $rings: yes when the tube has rings.
strip-how = Cut both strips out along their lines and lay each once { -round-the-tube }, ends together. { $rings ->
        [yes] Each lies along its ring: every circle is a hole, and a number stands over each hole that takes a pin.
       *[no] Pins go where the lines cross; the lines run on to the edge of the paper.
    } Begin both strips at the same line along the tube.

# $hand: right or left.
strip-hand = { $hand ->
        [left] Numbers run to the left, the way the cord travels.
       *[right] Numbers run to the right, the way the cord travels.
    }

strip-half-hole = First turn the top ring half a hole on, the way the cord travels: the holes of its strip are drawn so.

# How far the rows of pins stand from each other. $rings: yes when the tube has rings. $known: no when no cord
# is named, from which $spacing comes.
# $rows: rows of pins at each rim, more than one where bights are nested.
strip-spacing = { $known ->
        [no] How far apart the rings stand depends on the cord: name it too (--cord), and it is written here.
       *[yes] { $rings ->
            [yes] Set the rings so that { $rows ->
                [1] their rows of pins
               *[other] their outermost rows of pins
            } stand { $spacing } apart.
           *[no] { $rows ->
                [1] The two rows of pins
               *[other] The two outermost rows of pins
            } stand { $spacing } apart.
        }
    }

strip-top = Top ring
strip-bottom = Bottom ring
strip-cut = cut
strip-join = lay page { $page } on the dashed line
# $bar: how long the line is.
# Example: This line is 50 mm long. If it is not, …
strip-bar = This line is { $bar } long. If it is not, print again at 100 %, without fitting to the page.

## The stage

stage-signs = A square is over, a ring is under. The number in a ring is the pin it comes from, the number on a disc the pin it goes to.

## What can be wrong

sheet-out-missing = There is nowhere to put the sheet: add --out with a file name that ends in “.png” or “.pdf”, such as --out card.pdf.
sheet-out-ending = “{ $file }” does not say what to make: end the name in “.png” or “.pdf”, or add --pdf.
sheet-exists = “{ $file }” is there already and is left alone: choose another name, or add --replace.
sheet-unwritable = “{ $file }” could not be written ({ $reason }): see that its folder is there and may be written to.
sheet-progress = Made so far: { $page } of { $pages }. Ctrl+C stops it.
sheet-stopped = Stopped after { $page } of { $pages }: { $one ->
        [yes] no file was written.
       *[no] what is written so far is whole.
    }
sheet-failed = The sheet could not be made: try the other kind of file, “.png” or “.pdf”.
sheet-dpi = --dpi takes a whole number from { $least } to { $most }, and “{ $given }” is not one: try --dpi 300.
sheet-step = --step takes a step of this tie, 1 to { $steps }, and “{ $given }” is not one: “marlinspeak steps” lists them.
sheet-tube-missing = A strip is as long as the tube is round, and no tube is named: add --tube with its diameter, such as --tube 48mm.
sheet-card-long = A card of this knot would have more than { $most } crossings to print: “marlinspeak steps” tells as many as you like.
sheet-strip-long = A strip for this tube would take more than { $most } pages: check that --tube is the diameter, such as --tube 48mm.
sheet-reel-out-missing = There is nowhere to put the moving picture: add --out with a file name that ends in “.gif”, “.png” or “.webp”, such as --out tie.gif.
sheet-reel-ending = “{ $file }” does not say what kind of moving picture to make: end the name in “.gif”, “.png” or “.webp”.
sheet-reel-long = A moving picture of this knot would show more than { $most } crossings, one after another: “marlinspeak sheet stage --step” makes the picture of any one step.
sheet-width = --width takes a whole number from { $least } to { $most }, and “{ $given }” is not one: try --width 800.
