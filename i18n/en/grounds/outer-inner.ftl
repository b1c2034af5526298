# A mat on a board: two circles of T-pins. The outer circle is the bottom rim, the inner circle the top
# rim; a leg goes in and comes out.

-all-through = At every tuck all of it goes through.
-along-bottom = on the outer-circle side
-along-top = on the inner-circle side
-at-the-bottom = at the outer circle
-at-the-top = at the inner circle
-away-from-the-middle = away from it
-Back-down = Back out
-Back-up = Back in
-before-lifting = Before you draw the pins,
-being-rigged = The board is being set up:
-Bottom = Outer
-bottom = outer
-Bottom-bight = Outer bight
-bottom-bight = outer bight
-Bottom-pin = Outer pin
-bottom-pin = outer pin
-bottom-pins = outer pins
-bottom-ring = outer-circle
-bottom-side = outer
-card-left = Work to the left, with the clock; the pins are numbered that way.
-card-right = Work to the right, against the clock; the pins are numbered that way.
-coming-off = Drawing the pins
-down = out
-down-short = out
-falls = comes out
-from-the-bottom = from the outer circle
-how-to-stand = Lay the board flat before you, and look from the outer circle in towards the hole. Turn the board as you go. Lay every leg in a wide, loose curve round the hole, as in the picture; never pull it straight.
-laid-and-lifted = Everything is laid, and the pins are out;
-Lift-off = Take
-lift-off = take
-Lift-up = Raise
-lift-up = raise
-Lifting = Pins out
-of-the-tube = round the hole
-on-it = on the board
-on-the-tube = on the board
-on-the-tube-side = on the board side
-one-row-up = one row in
-pin = pin
-pins = pins
-planned-so = planned with its board and cord.
-rises = goes in
-round-the-tube = round the hole
-straight-above = straight in from
-to-be-lifted = the pins are to be drawn.
-Top = Inner
-top = inner
-Top-bight = Inner bight
-top-bight = inner bight
-Top-pin = Inner pin
-top-pin = inner pin
-top-pins = inner pins
-top-ring = inner-circle
-top-side = inner
-tops-staggered = inner pins half a step on.
-tops-straight = inner pins straight in.
-towards-the-middle = towards the middle between the circles
-tube-is-empty = the board is empty.
-turn-it-round = Turn the board once round
-up = in
-up-short = in
-upright = Board flat, look in from the outer circle.
-upright-shown = Board flat, tail taped down. Wide curves, never pulled straight.
-way-down = out
-way-up = in
-work-left = You work round to the left, with the clock, and the pins are numbered that way.
-work-right = You work round to the right, against the clock, and the pins are numbered that way.

## Rows of nested bights: outside and inside are the circles

pin-of-row-say = { $number } of row { $row }
pin-of-row-say-brief = { $number } row { $row }
pin-of-row-say-teach = { $number } of row { $row }
pin-of-row = { $number } (row { $row })

## The legs: an arrow for the way along a tube means nothing on a mat

lay-show = { $heading ->
        [falling] { -Top } { $from } { -down-short } to { -bottom } { $to }
       *[rising] { -Bottom } { $from } { -up-short } to { -top } { $to }
    }

## The bag

kit-pins-say = You will need, { $number } of { $items }: { $count } T-pins, { $length } long or longer. Press next when you have them.
kit-pins-say-brief = { $count } T-pins, { $length } long or longer.
kit-pins-say-teach = You will need, { $number } of { $items }: { $count } T-pins, { $length } long or longer. Press next when you have them. Half of them hold the loops at the outer rim, and half those at the hole.
kit-pins-show = { $count } T-pins, { $length }
kit-pins-note = { "" }
kit-tape-say-teach = You will need, { $number } of { $items }: masking tape, { $tape } and some to spare. Press next when you have it. It holds the tail and the printed sheet.

## On paper

card-pins = Set { $pins } T-pins evenly in each of { $rows ->
        [one] two circles
       *[other] the circles
    }, { $staggered ->
        [yes] each { -top-pin } half way between two { -bottom-pins }: { -top-pin } 1 half a pitch on from { -bottom-pin } 1.
       *[no] each { -top-pin } { -straight-above } the { -bottom-pin } of its number.
    }
card-pins-apart = On a circle { $tube } across the pins stand { $apart } apart, measured round it.
card-lift = Pins out: mark { -bottom-bight } 1 with tape and see that no end slips back in. Draw the T-pins out one by one, and keep the mat flat.
card-caution-pins = T-pins stand up out of the board: mind eyes and palms.
