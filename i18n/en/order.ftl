# Orders: several pieces for one customer, or several knots along one stick; what to buy, what to
# pack, how long it takes.

# Example: Tillers of the club: 13 knots to tie
order-heading = { $named ->
        [yes] { $name }: { $count ->
            [one] 1 knot
           *[other] { $count } knots
        }
       *[no] { $count ->
            [one] 1 knot
           *[other] { $count } knots
        }
    }.
# $knot: 5 lead 7 bight, doubled. $length: cord to cut for one, $time: for one.
# Example: 10 pieces, tiller grip: 5 lead 7 bight, doubled, 42 mm wide; each takes 5.2 m of cord and about 50 minutes.
order-piece = { $count ->
        [one] 1 piece
       *[other] { $count } pieces
    }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }: { $knot }, { $width } wide; { $count ->
        [one] it takes
       *[other] each takes
    } { $length } of cord{ $cords ->
        [one] { "" }
       *[other] , in { $cords } cords,
    } and about { $time }.
# How many of a piece are tied already.
order-piece-tied = { $tied } of { $count } tied.
order-to-buy = To buy:
# $length: with waste, in whole metres. $spools: how many, or 0 where no spool is known.
# Example: Cord, 4 mm thick: 55 m, 3 spools of 20 m
order-cord = { $name ->
        [none] Cord
       *[other] { $name }
    }, { $diameter } thick: { $length }{ $spools ->
        [0] { "" }
        [one] , 1 spool of { $spool }
       *[other] , { $spools } spools of { $spool }
    }
order-cord-cut = { $pieces ->
        [one] 1 piece
       *[other] { $pieces } pieces
    } of { $length }
# What all of a cord weighs. $heavy: yes for kilograms.
order-cord-weight = { $heavy ->
        [yes] together about { $weight } kilograms
       *[no] { $weight ->
            [one] together about 1 gram
           *[other] together about { $weight } grams
        }
    }
order-cord-spool-short = A spool of { $spool } is too short for a piece of { $length }: take longer spools, or name a cord for each pass, which makes the pieces shorter.
order-bag = In the bag, for all of it:
order-stick = Along the stick of { $length }, from its end:
# Example: 1. tiller grip: from 220 mm to 262 mm
order-stick-place = { $number }. { $named ->
        [yes] { $name }: from { $from } to { $to }
       *[no] from { $from } to { $to }
    }
order-stick-left = Behind the last knot { $left } stay bare.
order-stick-short = Knots and gaps are { $left } too long for the stick of { $length }: take smaller gaps, fewer knots or a longer stick.
# $pace: own or usual. $cost: an amount, or none.
order-time = All of it takes about { $time } { $pace ->
        [own] at your own pace
       *[usual] at a usual pace
    }{ $cost ->
        [none] .
       *[other] , and costs { $cost }.
    }

## One sentence for each thing that can be wrong.

# Stands before the sentence for what is wrong with the piece.
order-in-piece = Piece { $number }{ $named ->
        [yes] , “{ $name }”
       *[no] { "" }
    }:
order-no-pieces = The order has no pieces: add one, with leads, bights, cord and tube.
order-too-many = An order has at most { $most } pieces and this has { $given }: make two orders of it.
order-count = How many of a piece is a whole number from 1 to { $most } and “{ $given }” is not one: give one, such as 10.
# $asking: gap, stick or spool. $fault: unreadable, unit, comma, fraction, nought or range.
order-length = { $asking ->
        [gap] The gap before the knot
        [stick] The length of the stick
       *[spool] The cord on a spool
    } cannot be “{ $given }”: { $fault ->
        [unit] its unit is not known; use mm, cm, m, in or ft
        [comma] it may be read two ways; write it with a point or without the comma
        [fraction] it is a fraction without a unit; write in behind it if it is inches
        [nought] it must be more than zero
        [range] it must be from 0.01 mm to { $asking ->
            [spool] 1000 m
           *[other] 100 m
        }
       *[unreadable] give a number with mm, cm, m, in or ft
    }, such as { $asking ->
        [gap] 20mm
        [stick] 1m
       *[spool] 20m
    }.
order-waste = Waste is a number from 0 to { $most } per cent and “{ $given }” is not one: give one, such as 5.
# A name in the JSON form that means nothing. $piece: which piece, or 0 for the order itself.
order-field-unknown = { $piece ->
        [0] An order
       *[other] Piece { $piece }
    } has “{ $given }”, which means nothing: use { $known }.
order-text-long = { $piece ->
        [0] In the order
       *[other] In piece { $piece }
    } “{ $field }” has more than { $most } letters: make it shorter.
order-none-of-name = There is no order “{ $given }”: “marlinspeak order list” names those there are.
order-piece-none = The order has no piece { $given }: it has { $known }.

## What was done.

order-kept = Kept as { $id }.
order-deleted = Order { $id } is deleted; “marlinspeak order undo { $id }” brings it back.
order-undone = Order { $id } is back.
orders-none = No orders are kept in { $folder }.
orders-backed-up = { $orders ->
        [0] { "" }
        [one] 1 order is in it too.
       *[other] { $orders } orders are in it too.
    }
orders-came = { $orders ->
        [0] { "" }
        [one] 1 order came too.
       *[other] { $orders } orders came too.
    }

## The screen

orders-heading = { $orders ->
        [0] No orders yet
        [one] 1 order
       *[other] { $orders } orders
    }.
orders-being-read = The orders are being read.
orders-not-read = The orders could not be read.
orders-empty = An order is a list of knots for one customer, or along one stick, with what to buy for it. Press next to begin one.
orders-no-place = There is no folder that orders could be kept in: put right what was told of it at the start, then start the program again.
order-keys-list = N begins an order, next opens the one in turn, B on its page ties from it.
order-keys-order = Next changes a line or opens a piece, A adds a piece, B ties the next one.
order-keys-piece = Next changes a line, B ties the next one.
order-piece-heading = Piece { $number }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }.
# $field: what is asked for.
order-label = { $field ->
        [name] Name of the order
        [stick] Length of the stick that all sit on
        [spool] Cord on a spool
        [waste] Waste in per cent
        [piece-name] Name
        [count] How many
        [leads] Leads
        [bights] Bights
        [passes] Passes
        [weave] Weave
        [cord] Cord
        [tube] Tube
        [rows] Holes in each row of a ring
        [object] Thickness of the object
        [ball] Diameter of a ball
        [mat] Mat, from edge to edge
        [in_place] Slid on or tied in place
        [cover] Length to be covered
       *[gap] Gap before it on the stick
    }
# The same when it is typed, with how a taper and a hole are written. $label: the label.
order-asked = { $label }{ $field ->
        [object] . If it tapers, give both ends with a colon between, the bottom one first, such as 32:26 mm.
        [mat] . A hole stands behind a colon, such as 150:60 mm.
       *[other] { "" }
    }
order-entry = { $label }: { $filled ->
        [yes] { $value }
       *[no] not said
    }
order-is-deleted = Deleted. U brings it back.
order-is-back = It is back.
order-piece-gone = That piece has gone from the order meanwhile: nothing was changed.
order-piece-done = All of this piece are tied.
order-nothing-deleted = Nothing was deleted that could come back.
key-orders = orders
key-new-order = new order
key-add-piece = add a piece
key-tie-next-piece = tie the next one
key-open-or-change = open or change

## Help of the terminal.

help-orders = Several pieces at once: what to buy, what to pack, hours, price; kept for as long as you tie them
help-order-list = List the orders that are kept, newest first
help-order-show = Say what an order comes to
help-order-plan = Say what the order in a file comes to, and keep nothing
help-order-keep = Keep the order in a file, or put it in the place of one that is kept
help-order-delete = Delete an order
help-order-undo = Bring a deleted order back
help-order-name = The order, as “order list” names it
help-order-file = The order as a JSON document, or - for standard input
help-order-as = The order that gives way to it
value-order = ORDER
