# The printed sheet of a board: circles of pin marks at true size.

# $outer, $inner: across the circles of pins. $leads, $bights, $nested, $lands as in strip-title.
# Example: Board sheet: 6 lead 7 bight, pin circles 148 mm and 37 mm across
board-title = Board sheet: { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, pin circles { $outer } and { $inner } across

# $rows: circles of pins at each rim.
board-how = Tape the sheet flat on the board and push a T-pin in at the middle of every marked cross. The faint line is the way of the first two legs: in from outer pin 1, and out again.
board-pages = Where there are several pages, trim none: lay each on the dashed line of the one before, cross upon cross, and measure the line below before the first pin goes in.

# $hand: right or left.
board-hand = { $hand ->
        [left] Outer pin 1 is nearest to you. Seen from there the numbers run to the left, the way the cord travels.
       *[right] Outer pin 1 is nearest to you. Seen from there the numbers run to the right, the way the cord travels.
    }

# The tapes round a thing that is tied on in place. $bottom, $top: the way round it at either rim. The rest as in strip-title.
tape-title = Tapes: { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $bottom } round { -at-the-bottom }, { $top } { -at-the-top }

tape-top = Tape { -at-the-top }
tape-bottom = Tape { -at-the-bottom }
