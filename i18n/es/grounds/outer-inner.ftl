# Un tapete en una tabla: dos círculos de clavijas, que son alfileres en T. El de fuera es el del borde, el de dentro el
# del hueco; «dentro» y «fuera» ya dicen por dónde va el cabo en un bucle.

-all-through = Cada vez que pasa por debajo, pasa entero.
-at-bottom = en el borde
-at-top = en el hueco
-Back-down = Vuelve a salir
-Back-up = Vuelve a entrar
-before-lifting = Antes de sacar las clavijas,
-being-rigged = Estás preparando la tabla:
-Bottom = Borde
-card-left = Trabaja hacia la izquierda, como el reloj; las clavijas se numeran en ese sentido.
-card-right = Trabaja hacia la derecha, contra el reloj; las clavijas se numeran en ese sentido.
-coming-off = Sacando las clavijas
-down = sal
-down-to-bottom = sal al borde
-falling = saliendo
-falls = sale
-from-the-bottom = desde el borde
-Going-down = Sales
-Going-up = Entras
-how-to-stand = Pon la tabla plana delante de ti, y mira desde el borde hacia el hueco. Gira la tabla según avanzas. Tiende cada tramo en una curva amplia y floja alrededor del hueco, como en el dibujo; no lo tenses nunca en recto.
-in-line-with = en línea con
-laid-and-lifted = Todo está tendido y sin clavijas;
-lane-bottom = del lado del borde
-lane-top = del lado del hueco
-Lifting = Quitar
-of-bottom = del borde
-of-the-way-down = del camino
-of-the-way-up = del camino
-of-top = del hueco
-on-the-tube = en la tabla
-on-the-tube-side = del lado de la tabla
-One-turn = Una vuelta al hueco
-one-turn = una vuelta al hueco
-planned-so = planeado con su tabla y su cabo.
-rises = entra
-rising = entrando
-side-bottom = lado del borde
-side-top = lado del hueco
-straight-above = justo en línea con ella
-that-falls = que sale
-that-rise = que entran
-that-rises = que entra
-the-bottom = el borde
-the-top = el hueco
-to-be-lifted = falta sacar las clavijas.
-Top = Hueco
-tops-staggered = el hueco, medio paso más.
-tops-straight = el hueco, en línea.
-towards-the-middle = hacia el medio entre los dos círculos
-tube-is-empty = la tabla está vacía.
-turn-it-round = Gira la tabla una vuelta entera
-turns = vueltas al hueco
-up = entra
-up-to-top = entra al hueco
-upright = Tabla plana, mira del borde al hueco.
-upright-shown = Tabla plana, cola sujeta con cinta. Curvas amplias, nunca tensadas en recto.
-whole-turn = una vuelta entera al hueco
-whole-turns = vueltas enteras al hueco
-work-left = Trabajas hacia la izquierda, como el reloj, y así se numeran las clavijas.
-work-right = Trabajas hacia la derecha, contra el reloj, y así se numeran las clavijas.

## Rows of nested bights: outside and inside are the circles

pin-of-row-say = { $number } de la fila { $row }
pin-of-row-say-brief = { $number } fila { $row }
pin-of-row-say-teach = { $number } de la fila { $row }
pin-of-row = { $number } (fila { $row })

## The legs: an arrow for the way along a tube means nothing on a mat

lay-show = { $heading ->
        [falling] De la { $from } { -of-top }, { -down } a la { $to } { -of-bottom }
       *[rising] De la { $from } { -of-bottom }, { -up } a la { $to } { -of-top }
    }

## The bag

kit-pins-say = Necesitas, { $number } de { $items }: { $count } alfileres en T, de { $length } de largo o más. Pulsa siguiente cuando los tengas.
kit-pins-say-brief = { $count } alfileres en T, de { $length } de largo o más.
kit-pins-say-teach = Necesitas, { $number } de { $items }: { $count } alfileres en T, de { $length } de largo o más. Pulsa siguiente cuando los tengas. La mitad sujeta los bucles del borde, y la otra los del hueco.
kit-pins-show = { $count } alfileres en T, { $length }
kit-pins-note = { "" }
kit-tape-say-teach = Necesitas, { $number } de { $items }: cinta de enmascarar, { $tape } y algo más de reserva. Pulsa siguiente cuando la tengas. Sujeta la cola y la hoja impresa.

## On paper

card-pins = Clava { $pins } alfileres en T repartidos por igual en cada uno de { $rows ->
        [one] dos círculos
       *[other] los círculos
    }, { $staggered ->
        [yes] cada uno { -of-top } a medio camino entre dos { -of-bottom }: la clavija 1 { -of-top }, medio paso más allá de la clavija 1 { -of-bottom }.
       *[no] cada uno { -of-top } en línea con el { -of-bottom } de su mismo número.
    }
card-pins-apart = En un círculo de { $tube }, las clavijas van a { $apart } una de otra, midiendo alrededor.
card-lift = Quitar: marca con cinta el seno 1 { -of-bottom } y cuida de que ningún chicote se escurra hacia dentro. Saca los alfileres uno a uno, manteniendo plano el tapete.
card-caution-pins = Los alfileres en T sobresalen de la tabla: cuidado con los ojos y las palmas.
