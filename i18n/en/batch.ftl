# Several pieces of the same, one after the other.

# $of: how many there are to be, or 0 where nobody said. $stick: yes when it is knot $knot of $knots on a
# stick. $order: what its order is called, $named: yes when it is called something.
batch-piece = { $stick ->
        [yes] knot { $knot } of { $knots } on the stick
       *[no] { $of ->
            [0] piece { $number }
           *[other] piece { $number } of { $of }
        }
    }{ $named ->
        [yes] , order “{ $order }”
       *[no] { "" }
    }
batch-piece-begun = { $stick ->
        [yes] Knot { $knot } of { $knots } on the stick
       *[no] { $of ->
            [0] Piece { $number }
           *[other] Piece { $number } of { $of }
        }
    }{ $named ->
        [yes] , order “{ $order }”
       *[no] { "" }
    }.
batch-tube-stands = The tube stands as it was, so there is only the cord to cut. If it does not, go back from here.
# Asked before the first step. $pins: pins at each end. $spacing: between the two ends.
batch-ask-standing = Does the tube still stand as it was: { $pins } pins at each end in the same places, the two ends { $spacing } apart? Next means yes, and there is only the cord to cut. Back means no, and it is packed and rigged first.
batch-standing-show = Does the tube still stand as it was?
batch-standing-note = { $pins } pins at each end in the same places, the two ends { $spacing } apart
batch-standing-note-keys = Next: yes, only the cord is to be cut. Back: no, bag and rigging come first.
# $time: how long this piece took, $mean: the mean of all that are done ($pieces), $next: what another should take; each
# is none where it is not known. $more: whether another of it follows, $following: its number. $rest: yes when
# the order has more knots besides.
batch-piece-done = { $stick ->
        [yes] Knot { $knot } of { $knots } on the stick is done
       *[no] { $of ->
            [0] Piece { $number } is done
           *[other] Piece { $number } of { $of } is done
        }
    }{ $time ->
        [none] .
       *[other] , in { $time }.
    }{ $mean ->
        [none] { "" }
       *[other] { " " }The mean of { $pieces } pieces is { $mean }.
    }{ $more ->
        [yes] { $next ->
            [none] { "" }
           *[other] { " " }Another should take { $next }.
        }{ " " }Next begins { $stick ->
            [yes] knot { $following }
           *[no] piece { $following }
        }, L writes down what was used.
       *[no] { $rest ->
            [yes] { " " }The order leads to its next knot.
           *[no] { $of ->
                [0] { "" }
               *[other] { " " }That was the last one.
            }
        }{ " " }L writes down what was used.
    }
# Where there is no such tie.
batch-all-tied = All { $of } of piece { $piece } are tied.
batch-pieces-number = --pieces takes a whole number from 2 to { $most } and “{ $given }” is not one: try --pieces 10.
batch-order-or-knot = An order has its knots already: give either --from-order or a knot.
batch-pieces-what = --pieces needs a knot to tie so often: add --leads and --bights.
batch-piece-what = --piece belongs to an order: add --from-order with its name.
key-next-piece = next piece
help-tie-pieces = Tie so many of it, one after the other, 2 to 999
help-tie-order = The next knot of an order, as “order list” names it
help-tie-piece = The piece of the order, by its number [default: the first of which some are still to be tied]
