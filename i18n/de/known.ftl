# Ein Knoten, den jemand schon im Sinn hat, auf dem Planbildschirm am Gegenstand gemessen.

# The label of its field.
plan-knot = Knoten, den du im Sinn hast
# Said when the field is come to. $state: empty or typed. $text: what is typed there.
# Example: Knoten, den du im Sinn hast: 5 7. Erst die Parten, dann die Buchten.
known-field = { $state ->
        [empty] Knoten, den du im Sinn hast: keiner. Tipp seine Parten und seine Buchten, dann hörst du, was er hier hergibt.
       *[typed] Knoten, den du im Sinn hast: { $text }. Erst die Parten, dann die Buchten.
    }
# $given: what is typed there.
known-unread = „{ $given }“ nennt keinen Knoten: Tipp seine Parten und seine Buchten, je von 2 bis 60, etwa 5 7.
# Above what it comes to; and above the cards of other knots, where it does not do.
known-heading = Dein Knoten hier
known-others = Er passt nicht. Diese würden passen:
# What it comes to in so many passes. $verdict: covers, any (no length to cover is named), narrow, wide,
# round (it does not go round), tube or cord. $drawn: tight, eased or open. Lengths: $tight and $widest
# its widths, $width the one it is drawn up to, $cover the one asked for, $needed and $hand of cord.
# Example: Doppelt: passt, 36 mm, gelockert. Er reicht von 34 mm bis 45 mm.
known-fit = { $passes ->
        [1] Einfach
        [2] Doppelt
        [3] Dreifach
       *[other] { $passes } Durchgänge
    }: { $verdict ->
        [covers] passt, { $width }, { $drawn ->
            [tight] fest
            [eased] gelockert
           *[open] offen
        }. Er reicht von { $tight } bis { $widest }.
        [any] { $tight } fest gezogen, { $widest } ganz geöffnet.
        [narrow] zu schmal für { $cover }. Er reicht von { $tight } bis { $widest }.
        [wide] zu breit für { $cover }. Er reicht von { $tight } bis { $widest }.
        [cord] braucht { $needed } Schnur, und es sind { $hand } da. Er reicht von { $tight } bis { $widest }.
        [tube] von { $tight } bis { $widest }, aber nicht auf diesem Rohr.
       *[round] geht nicht herum: So viele Schnüre haben darauf keinen Platz. Nimm weniger Buchten oder dünnere Schnur.
    }
# The button that shows the filters where they have no place of their own.
plan-filters = Filter
