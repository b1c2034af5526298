# Un nœud que l’on a déjà en tête, mesuré à l’objet sur l’écran du plan.

# The label of its field.
plan-knot = Le nœud que vous avez en tête
# Said when the field is come to. $state: empty or typed. $text: what is typed there.
# Example: Le nœud que vous avez en tête : 5 7. D’abord les brins, puis les ganses.
known-field = { $state ->
        [empty] Le nœud que vous avez en tête : aucun. Tapez ses brins et ses ganses pour entendre ce qu’il donne ici.
       *[typed] Le nœud que vous avez en tête : { $text }. D’abord les brins, puis les ganses.
    }
# $given: what is typed there.
known-unread = « { $given } » ne nomme aucun nœud : tapez ses brins et ses ganses, de 2 à 60 chacun, par exemple 5 7.
# Above what it comes to; and above the cards of other knots, where it does not do.
known-heading = Votre nœud ici
known-others = Il ne convient pas. Ceux-ci, oui :
# What it comes to in so many passes. $verdict: covers, any (no length to cover is named), narrow, wide,
# round (it does not go round), tube or cord. $drawn: tight, eased or open. Lengths: $tight and $widest
# its widths, $width the one it is drawn up to, $cover the one asked for, $needed and $hand of cord.
# Example: Doublé : convient, 36 mm, desserré. Il va de 34 mm à 45 mm.
known-fit = { $passes ->
        [1] Simple
        [2] Doublé
        [3] Triplé
       *[other] { $passes } passes
    } : { $verdict ->
        [covers] convient, { $width }, { $drawn ->
            [tight] serré
            [eased] desserré
           *[open] ouvert
        }. Il va de { $tight } à { $widest }.
        [any] { $tight } serré, { $widest } tout ouvert.
        [narrow] trop étroit pour { $cover }. Il va de { $tight } à { $widest }.
        [wide] trop large pour { $cover }. Il va de { $tight } à { $widest }.
        [cord] demande { $needed } de cordon, et il y en a { $hand }. Il va de { $tight } à { $widest }.
        [tube] de { $tight } à { $widest }, mais pas sur ce tube.
       *[round] ne fait pas le tour : tant de cordons n’y ont pas la place. Essayez moins de ganses ou un cordon plus fin.
    }
# The button that shows the filters where they have no place of their own.
plan-filters = Filtres
