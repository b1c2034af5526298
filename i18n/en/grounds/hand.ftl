# Tied round the hand: the four fingers of the hand that holds stand for the tube, the palm towards the tyer. The
# wrist side is the bottom rim, the side of the fingertips the top rim; every bight has a finger of its own.

-along-bottom = on the wrist side
-along-top = on the tip side
-at-the-bottom = at the wrist side
-at-the-top = at the tip side
-Back-down = Back
-Back-up = Back
-Bottom = Wrist
-bottom = wrist
-Bottom-bight = Wrist bight
-bottom-bight = wrist bight
-Bottom-pin = Wrist bight
-bottom-pin = wrist bight
-bottom-pins = wrist bights
-bottom-ring = wrist
-bottom-side = wrist
-card-left = Work to the left { -round-the-tube }; the bights are numbered that way.
-card-right = Work to the right { -round-the-tube }; the bights are numbered that way.
-coming-off = Coming off the hand
-down = towards the wrist
-down-short = towards the wrist
-falls = goes to the wrist
-from-the-bottom = from the wrist side
-laid-and-lifted = Everything is laid, and the knot is off your hand;
-Lift-off = Take
-lift-off = take
-Lifting = Slip off
-of-the-tube = round the hand
-on-it = on your hand
-on-the-tube = on your hand
-on-the-tube-side = on the side of the fingers
-once-they-are-gone = once it is off your hand
-one-row-up = one row towards the tips
-pin = bight
-pins = bights
-rises = goes to the tips
-round-the-tube = round the hand
-straight-above = level with
-to-be-lifted = the knot is to be slipped off your hand.
-Top = Tip
-top = tip
-Top-bight = Tip bight
-top-bight = tip bight
-Top-pin = Tip bight
-top-pin = tip bight
-top-pins = tip bights
-top-ring = tip
-top-side = tip
-tube-is-empty = your hand is bare.
-turn-it-round = Turn your hand once round
-up = towards the tips
-up-short = towards the tips
-up-towards = towards
-with-the-pick = with a fingertip

## Beginning

begin-say = { $named ->
        [yes] Take the cord “{ $cord }”.
       *[no] { "" }
    } { $hand ->
        [left] Hold up your right hand
       *[right] Hold up your left hand
    }, palm towards you, fingers close together. Lay the cord at the roots of your fingers, { $place }, with a tail of { $tail } hanging down, and hold the tail with your thumb. { $hand ->
        [left] Your left hand ties.
       *[right] Your right hand ties.
    } The cord goes across the front to the little finger, behind to the forefinger, and so on round. Keep it so loose that one more finger fits under it. The wrist bights lie at the roots of the fingers, the tip bights at their middle joints; both are counted from the tail on, the way the cord goes. { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }
begin-say-brief = { $named ->
        [yes] Cord “{ $cord }”.
       *[no] { "" }
    } { $hand ->
        [left] Right hand up
       *[right] Left hand up
    }, palm towards you. Tail of { $tail } under your thumb, { $place }. Across the front, then behind. Keep it loose.
begin-say-teach = { $named ->
        [yes] Take the cord “{ $cord }”.
       *[no] { "" }
    } { $hand ->
        [left] Hold up your right hand
       *[right] Hold up your left hand
    }, palm towards you, fingers close together. Lay the cord at the roots of your fingers, { $place }, with a tail of { $tail } hanging down, and hold the tail with your thumb. { $hand ->
        [left] Your left hand ties.
       *[right] Your right hand ties.
    } The cord goes across the front to the little finger, behind to the forefinger, and so on round. Keep it so loose that one more finger fits under it. The wrist bights lie at the roots of the fingers, the tip bights at their middle joints; both are counted from the tail on, the way the cord goes. The front of your fingers is the side of the palm. The tail stays behind; the other end does the tying. { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }
begin-show = Tail of { $tail } under your thumb
begin-show-note = { $named ->
        [yes] Cord “{ $cord }”.
       *[no] { "" }
    } { $hand ->
        [left] Right hand up, palm towards you.
       *[right] Left hand up, palm towards you.
    } At the roots of the fingers, { $place }. Keep it loose. { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

## A leg

lay-say-way = { $pass ->
        [1] Leg { $leg }
       *[other] Pass { $pass }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] From tip bight { $from }, { $from-place }, towards the wrist
       *[rising] From wrist bight { $from }, { $from-place }, towards the tips
    }{ $lane ->
        [bottom] , on the wrist side of the first cord
        [top] , on the tip side of the first cord
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , to wrist bight { $to }, { $to-place }.
       *[rising] , to tip bight { $to }, { $to-place }.
    } { $view }
lay-say-way-brief = { $pass ->
        [1] Leg { $leg }
       *[other] Pass { $pass }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] Tip bight { $from }, { $from-place }
       *[rising] Wrist bight { $from }, { $from-place }
    }, { $way }{ $heading ->
        [falling] , to wrist bight { $to }, { $to-place }.
       *[rising] , to tip bight { $to }, { $to-place }.
    }
lay-say-way-teach = { $pass ->
        [1] Leg { $leg }
       *[other] Pass { $pass }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $first ->
        [yes] A leg is the cord from a bight on one side to a bight on the other.
       *[no] { "" }
    } { $heading ->
        [falling] From tip bight { $from }, { $from-place }, towards the wrist
       *[rising] From wrist bight { $from }, { $from-place }, towards the tips
    }{ $lane ->
        [bottom] , on the wrist side of the first cord
        [top] , on the tip side of the first cord
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , to wrist bight { $to }, { $to-place }.
       *[rising] , to tip bight { $to }, { $to-place }.
    } { $view }
lay-say-way-on = { $pass ->
        [1] Leg { $leg }
       *[other] Pass { $pass }, leg { $leg }
    }, part { $part } of { $parts }, { $heading ->
        [falling] from tip bight { $from }, towards the wrist
       *[rising] from wrist bight { $from }, towards the tips
    }{ $lane ->
        [bottom] , on the wrist side of the first cord
        [top] , on the tip side of the first cord
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , to wrist bight { $to }, { $to-place }.
       *[rising] , to tip bight { $to }, { $to-place }.
    } You are { $share ->
        [little] a little way along
        [quarter] a quarter there
        [third] a third there
        [half] half way
        [two-thirds] two thirds there
        [three-quarters] three quarters there
       *[most] nearly there
    }.
lay-say-way-on-brief = { $pass ->
        [1] Leg { $leg }
       *[other] Pass { $pass }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] Tip bight { $from }, { $from-place }
       *[rising] Wrist bight { $from }, { $from-place }
    }, { $way }{ $heading ->
        [falling] , to wrist bight { $to }, { $to-place }.
       *[rising] , to tip bight { $to }, { $to-place }.
    }
lay-say-way-on-teach = { $pass ->
        [1] Leg { $leg }
       *[other] Pass { $pass }, leg { $leg }
    }, part { $part } of { $parts }, { $heading ->
        [falling] from tip bight { $from }, towards the wrist
       *[rising] from wrist bight { $from }, towards the tips
    }{ $lane ->
        [bottom] , on the wrist side of the first cord
        [top] , on the tip side of the first cord
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , to wrist bight { $to }, { $to-place }.
       *[rising] , to tip bight { $to }, { $to-place }.
    } You are { $share ->
        [little] a little way along
        [quarter] a quarter there
        [third] a third there
        [half] half way
        [two-thirds] two thirds there
        [three-quarters] three quarters there
       *[most] nearly there
    }.
lay-say-landing = { $landing ->
        [on-the-way] Hold your cord there.
        [inside] Inside the loop.
        [outside] Outside the loop.
        [home-and-on] Back at the start: over the tail, and on.
        [home-to-wait] Back at the start: hold the cord down, to wait.
        [home-to-end] Back at the start: let the end hang.
       *[round] { $heading ->
            [falling] Then turn back towards the tips.
           *[rising] Then turn back towards the wrist.
        }
    }
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Inside.
        [outside] Outside.
        [home-and-on] Start: over tail.
        [home-to-wait] Start: hold it.
        [home-to-end] Start: stop.
       *[round] { "" }
    }
lay-say-landing-teach = { $landing ->
        [on-the-way] Hold your cord there.
        [inside] Inside the loop.
        [outside] Outside the loop.
        [home-and-on] Back at the start: over the tail, and on.
        [home-to-wait] Back at the start: hold the cord down, to wait.
        [home-to-end] Back at the start: let the end hang.
       *[round] { $heading ->
            [falling] Then turn back towards the tips.
           *[rising] Then turn back towards the wrist.
        }
    }
lay-show = { $heading ->
        [falling] Tip { $from }, { $from-place }, to wrist { $to }, { $to-place }
       *[rising] Wrist { $from }, { $from-place }, to tip { $to }, { $to-place }
    }
lay-print = { $heading ->
        [falling] Tip { $from }, { $from-place }, { $way }, to wrist { $to }, { $to-place }
       *[rising] Wrist { $from }, { $from-place }, { $way }, to tip { $to }, { $to-place }
    }
lay-show-note-on = { $share ->
        [little] From a little way
        [quarter] From about a quarter of the way
        [third] From about a third of the way
        [half] From about half way
        [two-thirds] From about two thirds of the way
        [three-quarters] From about three quarters of the way
       *[most] From most of the way
    }
lay-show-note = { $landing ->
        [on-the-way] Then hold your cord where it is
        [inside] Inside the loop
        [outside] Outside the loop
        [home-and-on] Back at the start: over the tail, and on
        [home-to-wait] Back at the start: hold the cord down
        [home-to-end] Back at the start: let the end hang
       *[round] { $heading ->
            [falling] Turn back towards the tips
           *[rising] Turn back towards the wrist
        }
    }

## Off the hand

lift-say = { $task ->
        [secure] Everything is laid. Before you slip the knot off, mark wrist bight 1, where the tail is, with a scrap of tape, and see that { $ends ->
            [2] neither of the 2 ends
           *[other] none of the { $ends } ends
        } can slip back in: a loose knot in each is enough.
       *[slip-off] Slip the knot off your fingers and onto the object, the same way up. Turn it until the ends come out where you want them.
    }
lift-say-brief = { $task ->
        [secure] Mark wrist bight 1, secure the { $ends } ends.
       *[slip-off] Slip the knot onto the object, the same way up.
    }
lift-say-teach = { $task ->
        [secure] Everything is laid. Before you slip the knot off, mark wrist bight 1, where the tail is, with a scrap of tape: off your hand every bight looks like the next, and you will count from there. See that { $ends ->
            [2] neither of the 2 ends
           *[other] none of the { $ends } ends
        } can slip back in: a loose knot in each is enough.
       *[slip-off] Slip the knot off your fingers, and onto the object, the same way up, without letting it twist. It will be loose, and that is good. Turn it until the ends come out where you want them.
    }
lift-show = { $task ->
        [secure] Mark wrist bight 1
       *[slip-off] Slip the knot onto the object
    }
lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Neither of the 2 ends may slip back in
           *[other] None of the { $ends } ends may slip back in
        }
       *[slip-off] The same way up, the ends where you want them
    }
wrong-after = The knot is coming off your hand, so no leg can be taken back. Back goes one step back; H says where you are.

## Cards

card-pins = There are no pins: { $pins } bights lie on each side of your fingers, { $staggered ->
        [yes] each { -top-pin } half way between two { -bottom-pins }: { -top-pin } 1 half a pitch on from { -bottom-pin } 1.
       *[no] each { -top-pin } { -straight-above } the { -bottom-pin } of its number.
    }
card-lift = Slipping off: mark { -bottom-bight } 1 with tape and see that no end slips back in. Slip the knot off your fingers and onto its object, the same way up.

## Asked how much cord is still to be laid

cord-left = Still to lay in this pass: { $legs ->
        [one] 1 leg
       *[other] { $legs } legs
    }{ $ends ->
        [yes] , and then this cord ends.
       *[no] ; to the end of this cord: { $all } legs.
    } Round the hand no length is measured: every pass takes as much cord as the first.
