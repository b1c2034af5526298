# Un nudo que ya se tiene en mente, medido contra el objeto en la pantalla del plan.

# The label of its field.
plan-knot = El nudo que tienes en mente
# Said when the field is come to. $state: empty or typed. $text: what is typed there.
# Example: El nudo que tienes en mente: 5 7. Primero los ramales, luego los senos.
known-field = { $state ->
        [empty] El nudo que tienes en mente: ninguno. Escribe sus ramales y sus senos y oirás qué da aquí.
       *[typed] El nudo que tienes en mente: { $text }. Primero los ramales, luego los senos.
    }
# $given: what is typed there.
known-unread = «{ $given }» no nombra ningún nudo: escribe sus ramales y sus senos, de 2 a 60 cada uno, por ejemplo 5 7.
# Above what it comes to; and above the cards of other knots, where it does not do.
known-heading = Tu nudo aquí
known-others = No sirve. Estos sí:
# What it comes to in so many passes. $verdict: covers, any (no length to cover is named), narrow, wide,
# round (it does not go round), tube or cord. $drawn: tight, eased or open. Lengths: $tight and $widest
# its widths, $width the one it is drawn up to, $cover the one asked for, $needed and $hand of cord.
# Example: Doble: sirve, 36 mm, holgado. Va de 34 mm a 45 mm.
known-fit = { $passes ->
        [1] Sencillo
        [2] Doble
        [3] Triple
       *[other] { $passes } pasadas
    }: { $verdict ->
        [covers] sirve, { $width }, { $drawn ->
            [tight] ceñido
            [eased] holgado
           *[open] abierto
        }. Va de { $tight } a { $widest }.
        [any] { $tight } ceñido, { $widest } abierto del todo.
        [narrow] demasiado estrecho para { $cover }. Va de { $tight } a { $widest }.
        [wide] demasiado ancho para { $cover }. Va de { $tight } a { $widest }.
        [cord] necesita { $needed } de cabo, y hay { $hand }. Va de { $tight } a { $widest }.
        [tube] de { $tight } a { $widest }, pero no en este tubo.
       *[round] no da la vuelta: tantos cabos no caben en él. Prueba con menos senos o con cabo más fino.
    }
# The button that shows the filters where they have no place of their own.
plan-filters = Filtros
