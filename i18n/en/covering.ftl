# What is covered: a round thing, a taper, a ball, a mat; slid on from a tube or tied in place. What can be wrong
# with it, one sentence each.
#
# $given: the text as it was typed. Lengths are one argument each with its unit (see lengths.ftl).

# $one, $other: object, girth, ball or mat.
ask-object-twice = What is covered is named twice, { $one ->
        [object] by its diameter
        [girth] by its girth
        [ball] as a ball
       *[mat] as a mat
    } and { $other ->
        [object] by its diameter
        [girth] by its girth
        [ball] as a ball
       *[mat] as a mat
    }: give one of the two.
ask-halves = { $asking ->
        [mat] “{ $given }” is not the size of a mat: give it from edge to edge, such as 150mm, or with its hole, such as 150mm:60mm.
       *[object] “{ $given }” does not say how thick a taper is: give both ends with one colon between, such as 30mm:24mm.
    }
# $asking: any of the lengths of which there is one. $example: such a length.
ask-one-length = “{ $given }” is two lengths, and { $asking ->
        [ball] a ball has one diameter
       *[other] there is only one here
    }: give one, such as { $example }.
ask-taper-length = A taper needs the length over which it gets thinner and none is given: give it as the length to be covered, such as 120mm.
ask-end-thin = The thin end of the taper, { $end }, is thinner than the cord of { $cord }: use a thinner cord, or let the knot end where the object is thicker.
ask-hole-wide = A hole of { $hole } does not go into a mat of { $outer }: give the outer edge first and then the hole, such as 150mm:60mm.
# $asking: ball or mat.
ask-whole-cover = { $asking ->
        [ball] A ball is covered from pole to pole and takes no length to be covered besides: leave that length out.
       *[mat] A mat has its size and takes no length to be covered besides: leave that length out, or give the hole behind the outer edge, such as 150mm:60mm.
    }
ask-in-place-unknown = In place is yes or no and “{ $given }” is neither: say yes for a knot that is tied on what it covers.
ask-in-place-nothing = A knot in place is tied on what it covers and that is not named: say how thick it is, such as --object 30mm.
# $asking: tube, rows, pin, thread, wall, ring-width or tube-length.
ask-in-place-tube = A knot that is tied in place takes no { $asking ->
        [tube] tube
        [rows] rows of holes
        [pin] length of pins
        [thread] thread of pins
        [wall] wall of a tube
        [ring-width] width of rings
       *[tube-length] length of a tube
    }: leave that out, or leave out in place and slide the knot on from the tube.
ask-mat-tube = A mat is tied flat on a board and takes no { $asking ->
        [tube] tube
        [rows] rows of holes
        [pin] length of pins
        [thread] thread of pins
        [wall] wall of a tube
        [ring-width] width of rings
       *[tube-length] length of a tube
    }: leave that out.

ask-mat-in-place = A mat is always tied where it stays, on its board: leave out --in-place.
order-not-on-stick = Neither a mat nor a ball sits on a stick with other knots: leave out the length of the stick, or put this piece into an order of its own.

## The knots that fit

# Of a taper, a ball and a mat; see fit-heading. $top: the other end of a taper. $hole: or none.
fit-heading-taper = { $count ->
        [0] No knot comes out at just { $cover } on a taper from { $object } to { $top } with { $cord } cord
        [one] One knot covers { $cover } of a taper from { $object } to { $top } with { $cord } cord
       *[other] { $count } knots cover { $cover } of a taper from { $object } to { $top } with { $cord } cord
    }{ $near ->
        [0] { "" }
        [one] , and one comes near
       *[other] , and { $near } come near
    }{ $shown ->
        [0] .
       *[other] ; the { $shown } best first.
    }
fit-heading-ball = { $count ->
        [0] No knot covers just a ball { $object } across with { $cord } cord
        [one] One knot covers a ball { $object } across with { $cord } cord
       *[other] { $count } knots cover a ball { $object } across with { $cord } cord
    }{ $near ->
        [0] { "" }
        [one] , and one comes near
       *[other] , and { $near } come near
    }{ $shown ->
        [0] .
       *[other] ; the { $shown } best first.
    }
fit-heading-mat = { $count ->
        [0] No knot makes just a mat of { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }with a hole of { $hole }
        } with { $cord } cord
        [one] One knot makes a mat of { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }with a hole of { $hole }
        } with { $cord } cord
       *[other] { $count } knots make a mat of { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }with a hole of { $hole }
        } with { $cord } cord
    }{ $near ->
        [0] { "" }
        [one] , and one comes near
       *[other] , and { $near } come near
    }{ $shown ->
        [0] .
       *[other] ; the { $shown } best first.
    }

# Above what is done before the first leg. $on: tube, round, taper, ball or mat.
rig-where = { $on ->
        [tube] On the tube
        [mat] On the board
       *[round] On what is covered
    }
