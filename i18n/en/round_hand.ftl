# A knot that is tied round the hand, without tube and pins: where it is chosen. How its steps are told
# stands in grounds/hand.ftl.

# On the form of the start screen: what it is tied on.
start-tied = Tied
start-tied-tube = on a tube
start-tied-hand = round the hand

# What the knot comes to, as start-facts, where it is tied round the hand. $strands is one here. $cord: a length with its unit.
start-facts-round-hand = { $leads } lead { $bights } bight round your hand, without tube and pins, { $tucks ->
        [one] 1 tuck
       *[other] { $tucks } tucks
    }{ $other_tucks ->
        [0] { "" }
       *[other] , or { $other_tucks } begun with over
    }. { $hand ->
        [left] Your right hand holds, the palm towards you, and your left hand ties.
       *[right] Your left hand holds, the palm towards you, and your right hand ties.
    } Take { $cord } of cord; have tape, a blade, and a lighter or glue at hand. Keep the cord loose round your fingers: tight, it stops their blood.{ $uneven ->
        [yes] { " " }The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

# Why a knot is not tied round the hand, and what to do. $small: yes where it is small enough, and yet not told so.
knot-not-round-hand = { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested,
    } in { $passes ->
        [one] 1 pass
       *[other] { $passes } passes
    } { $small ->
        [yes] is none of the knots that are told by the fingers
       *[no] is more than four fingers hold
    }: round the hand take 3 lead 4 bight, 3 lead 5 bight, 4 lead 5 bight or 5 lead 4 bight in up to 3 passes, and tie this one on a tube with pins.

# Tube, cord or object were named for a knot that is tied round the hand.
round-hand-without-tube = Round the hand there is no tube to rig: leave out tube, cord and object, or leave out --round-hand.

# There are no pins to mark.
round-hand-no-strip = Round the hand there are no pins, and so no strip to mark them: print the card, which names the finger for every bight, with marlinspeak sheet card --round-hand.

# The help of the option.
help-round-hand = Tie it round your hand, without tube and pins: 3 lead 4 bight, 3 lead 5 bight, 4 lead 5 bight and 5 lead 4 bight in up to 3 passes

## The fingers, as they are told in the steps

# Where a bight lies. Front is the side of the palm.
finger-place = { $place ->
        [edge-forefinger] outside of the forefinger
        [front-forefinger] front of the forefinger
        [front-middle] front of the middle finger
        [front-ring] front of the ring finger
        [front-little] front of the little finger
        [edge-little] outside of the little finger
        [back-little] back of the little finger
        [back-ring] back of the ring finger
        [back-middle] back of the middle finger
       *[back-forefinger] back of the forefinger
    }
# Which way a leg goes about the fingers.
finger-way = { $way ->
        [front] across the front
        [round-little] round the little finger to the back
        [back] across the back
        [round-forefinger] round the forefinger to the front
        [behind-all] behind all four fingers to the front again
       *[across-all] across all four fingers to the back again
    }
# How the hand is turned to see it.
finger-view = { $way ->
        [front] Palm towards you.
        [back] Back of the hand towards you.
       *[round-little] Turn the hand as you go.
    }

# The same in a picture, at the bight, after its number, where there is room for a word or two.
picture-finger = { $number } { $place ->
        [edge-forefinger] outside fore
        [front-forefinger] front fore
        [front-middle] front middle
        [front-ring] front ring
        [front-little] front little
        [edge-little] outside little
        [back-little] back little
        [back-ring] back ring
        [back-middle] back middle
       *[back-forefinger] back fore
    }
