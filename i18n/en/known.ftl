# A knot that the tyer has in mind, held against the object on the plan screen.

# The label of its field.
plan-knot = Knot you have in mind
# Said when the field is come to. $state: empty or typed. $text: what is typed there.
# Example: Knot you have in mind: 5 7. Leads, then bights.
known-field = { $state ->
        [empty] Knot you have in mind: none. Type its leads and its bights to hear what it comes to here.
       *[typed] Knot you have in mind: { $text }. Leads, then bights.
    }
# $given: what is typed there.
known-unread = “{ $given }” names no knot: type its leads and its bights, each from 2 to 60, such as 5 7.
# Above what it comes to; and above the cards of other knots, where it does not do.
known-heading = Your knot here
known-others = It does not do. These would:
# What it comes to in so many passes. $verdict: covers, any (no length to cover is named), narrow, wide,
# round (it does not go round), tube or cord. $drawn: tight, eased or open. Lengths: $tight and $widest
# its widths, $width the one it is drawn up to, $cover the one asked for, $needed and $hand of cord.
# Example: Doubled: fits, 36 mm, eased. It goes from 34 mm to 45 mm.
known-fit = { $passes ->
        [1] Single
        [2] Doubled
        [3] Tripled
       *[other] { $passes } passes
    }: { $verdict ->
        [covers] fits, { $width }, { $drawn ->
            [tight] drawn tight
            [eased] eased
           *[open] open
        }. It goes from { $tight } to { $widest }.
        [any] { $tight } drawn tight, { $widest } at the widest.
        [narrow] too narrow for { $cover }. It goes from { $tight } to { $widest }.
        [wide] too wide for { $cover }. It goes from { $tight } to { $widest }.
        [cord] takes { $needed } of cord, and there is { $hand }. It goes from { $tight } to { $widest }.
        [tube] from { $tight } to { $widest }, but not on this tube.
       *[round] does not go round: so many cords have no room on it. Try fewer bights or thinner cord.
    }
# The button that shows the filters where they have no place of their own.
plan-filters = Filters
