# What interrupts a tie: cord that may not do, a fault far back.

## Will the cord do?

# Example: Still to lay in this pass: 9 legs, 1.4 metres of cord with what you hold. To its end this
# cord takes 3.1 metres.
# $legs: legs left in this pass; $all: legs left to the end of this cord. $known: yes when lengths
# are known: $in-pass, $in-cord, $in-all. $ends: yes when the cord ends with this pass. $others: yes
# when further cords are to be laid.
cord-left = { $known ->
        [yes] Still to lay in this pass: { $legs ->
            [one] 1 leg
           *[other] { $legs } legs
        }, { $in-pass } of cord { $ends ->
            [yes] with what you hold and the end that hangs out.
           *[no] with what you hold. To its end this cord takes { $in-cord }.
        }{ $others ->
            [yes] { " " }All cords together still take { $in-all }.
           *[no] { "" }
        } { -all-through }
       *[no] Still to lay in this pass: { $legs ->
            [one] 1 leg
           *[other] { $legs } legs
        }{ $ends ->
            [yes] , and then this cord ends.
           *[no] ; to the end of this cord: { $all } legs.
        } How much cord that is can be told of a tie that was { -planned-so }
    }
cord-left-done = Everything is laid. No more cord is taken.

# How far it reaches by what was measured. $reach: whole, leg or none.
cord-reach = { $reach ->
        [whole] By what you measured the cord reaches to its end, with { $spare } to spare.
        [leg] By what you measured the cord reaches to the end of leg { $leg } in pass { $pass }.
       *[none] By what you measured the cord does not reach to the end of the next leg.
    } C once more takes another measure.
cord-ask = To know whether yours will do, measure what is in your hand and press C once more.

# Said before a pass that the cord does not reach to the end of.
cord-not-through = Mind the cord: by what you measured it { $reach ->
        [leg] reaches to the end of leg { $leg } in pass { $pass }, and not through this pass.
       *[none] does not reach through one leg of this pass.
    } Take a longer one now, or have a second one ready: where this one ends you are asked whether to join a new one.

# Asked before a leg that the cord does not reach to the end of.
cord-ends = By what you measured the cord does not reach to the end of this leg. Next joins a new one to it. Back: it still reaches, and what you measured is forgotten.
cord-ends-line = Is the cord at its end?
cord-reaches = What you measured is forgotten.

## What is measured. $length: so far; $step: what one press adds. $small: yes for what is over.

measuring = { $small ->
        [yes] And what is over that?
       *[no] Measure the cord from the { -pin } where it is to its end. Of a cord not begun yet, measure all.
    } So far { $length }. Next adds { $step }.
measuring-so-far = So far { $length }.
measuring-phase = Measuring the cord
measuring-line = { $length } in the hand
measuring-step = Next adds { $step }; a number that you type is so many times { $step }
# After everything that is counted.
counting-keys = Back: that is it. Or type the number, then next.

# While a number is typed.
counting-keys-typed = Next: that is it. Back takes the last digit away.

## A fault somewhere in the work

fault-phase = Looking for the leg
# $asked: pin, row or nth. $number of $of. $hand: the way that pins are counted.
fault-so-far = { $asked ->
        [pin] { -Bottom-pin } { $number }
        [row] Row { $number } of { $of }
       *[nth] Crossing { $number } of { $of }
    }.
fault-pin = Beside which { -bottom-pin } is the fault? It stands { -straight-above } that { -pin } or to the { $hand ->
        [left] left
       *[right] right
    } of it, short of the next. So far { -pin } { $number } of { $of }. Next: one { -pin } on.
fault-row = In which row of crossings is it, counted { -from-the-bottom }? So far row { $number } of { $of }. Next: { -one-row-up }.
fault-nth = That row has { $of } crossings there. Which is it, counted from the { -pin }? So far number { $number }. Next: one on.
# Which of several cords lies wrong. $over: yes when it goes over, $cords: what it crosses.
fault-which = Several cords cross there. Is it leg { $leg } in pass { $pass }{ $strands ->
        [one] { "" }
       *[other] { " " }of strand { $strand }
    }, which { $heading ->
        [falling] { -falls } from { -top-pin } { $from } to { -bottom-pin } { $to }
       *[rising] { -rises } from { -bottom-pin } { $from } to { -top-pin } { $to }
    }, and is to go { $over ->
        [yes] over
       *[no] under
    } { $cords ->
        [one] 1 cord
       *[other] { $cords } cords
    } in row { $row } { -from-the-bottom }? Next: another cord.
fault-which-line = Leg { $leg }, pass { $pass }?
# The leg that laid it. $back: legs that have to come back.
fault-found = Leg { $leg }{ $pass ->
        [1] { "" }
       *[other] { " " }in pass { $pass }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }of strand { $strand }
    } laid it, { $heading ->
        [falling] from { -top-pin } { $from } { -down } to { -bottom-pin } { $to }
       *[rising] from { -bottom-pin } { $from } { -up } to { -top-pin } { $to }
    }. In row { $row } { -from-the-bottom } it is to go { $over ->
        [yes] over
       *[no] under
    } { $cords ->
        [one] 1 cord
       *[other] { $cords } cords
    }. { $back ->
        [one] That one leg has to come back.
       *[other] { $back } legs have to come back, that one as the last.
    }
fault-found-line = Leg { $leg }, pass { $pass }: { $over ->
        [yes] over
       *[no] under
    } in row { $row } { -from-the-bottom }
# A standing end that is near. $crossings: what it comes out of. $over: how it is to lie there.
fault-by-the-end = Or take none back. The end that hangs at { $rim ->
        [top] { -top-pin } { $pin }
       *[bottom] { -bottom-pin } { $pin }
    } { -is-near }: draw it out of { $crossings ->
        [one] that crossing
       *[other] { $crossings } crossings, that one the last
    }, lay it { $over ->
        [yes] over
       *[no] under
    } there, and lead it back as it lay.
fault-found-keys = Next takes the first one back, back names another place, wrong leaves everything as it is.
fault-nothing-there = No cord crosses another there yet. Name the place again.
# A length of nothing was taken for what is in the hand.
measured-nothing = Nothing was measured, so nothing is noted.

## A new cord in place of one that ran out or frayed, step by step

join-phase = Joining a new cord
# $step: melts, cut, back, old-end, new-end, rest or finish. $row: the row of crossings in whose
# crossing both ends are hidden.
join-line = { $step ->
        [melts] Does the cord melt?
        [cut] Cut a new cord
        [back] Old cord back to row { $row } { -from-the-bottom }
        [old-end] Leave its end under row { $row }
        [new-end] Lay the new end beside it
        [rest] Lay the rest of leg { $leg }
       *[finish] The new cord runs on
    }
# $known: yes when $length says what to cut. $legs: legs that the new cord lays, that of the join too.
# $whole: yes when the old cord is on its pin already. $cords: what lies over the two ends, 0 where
# nothing does yet. $ends: ends to be cut at last.
join-told = { $step ->
        [melts] The cord ran out or has frayed, and a new one takes its place. First: does it melt, as nylon and polyester do? Next for yes. Back for no, as with cotton and hemp.
        [cut] Cut a new cord, { $known ->
            [yes] { $length } at least:
           *[no] long enough for
        } { $legs ->
            [one] 1 leg
           *[other] { $legs } legs
        } and an end on either side. { $melts ->
            [yes] Seal both its ends with heat so that they do not fray.
           *[no] Wind thread or tape round both its ends, or dip them in glue, so that they do not fray.
        }
        [back] Leg { $leg }{ $pass ->
            [1] { "" }
           *[other] { " " }in pass { $pass }
        }{ $strands ->
            [one] { "" }
           *[other] { " " }of strand { $strand }
        }: { $whole ->
            [yes] { $heading ->
                [falling] { -lift-off } the old cord off { -bottom-pin } { $to } and bring it
               *[rising] { -lift-off } the old cord off { -top-pin } { $to } and bring it
            }
           *[no] bring the old cord
        } back to row { $row } { -from-the-bottom }, where { $cords ->
            [0] a later leg will lie over it.
            [one] it goes under 1 cord.
           *[other] it goes under { $cords } cords.
        } That is within the leg; at a bight an end would show and work loose.
        [old-end] Leave the end of the old cord { $cords ->
            [0] where that later leg will lie over it,
           *[other] under that crossing,
        } { -on-the-tube-side }, and a hand long beyond it. Cut off what is longer or frayed.
        [new-end] Lay the end of the new cord beside it from the other side, { $cords ->
            [0] across the same place,
           *[other] under the same crossing,
        } a hand long beyond it too. There the two lie side by side and hold one another. Do not melt or glue them together: that is hard, shows, and breaks.
        [rest] With the new cord lay the rest of leg { $leg } as the old one lay, and go round { $heading ->
            [falling] { -bottom-pin } { $to }.
           *[rising] { -top-pin } { $to }.
        }
       *[finish] The new cord runs on from here. Both ends stay long until the knot is drawn up: then draw towards them from either side, never through them. In the end there are { $ends } ends to cut{ $melts ->
            [yes] { " " }and to seal.
           *[no] , and a drop of glue holds each.
        } Next goes on with the tie.
    }
join-where = You are joining a new cord: step { $step } of { $steps }.
join-noted = The new cord is noted.
join-nothing-laid = No leg of this cord lies { -on-it } yet: begin again with another cord.
join-off-the-pins = The knot is coming off its { -pins }: no cord is joined any more.
