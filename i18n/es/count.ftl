# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Contar un nudo
count-opening = Contar un nudo.
# $asked: bights, nested, lands, rows, passes, over, colours or found. $number: so far, or which
# crossing; found: strands. $nested: rows of scallops at each rim.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] 1 onda
           *[other] { $number } ondas
        }
        [nested] { $number ->
            [one] 1 onda sola
           *[other] { $number } ondas anidadas
        }
        [lands] Fila { $number } de ondas
        [rows] { $number ->
            [one] 1 cruce
           *[other] { $number } cruces
        }
        [passes] { $number ->
            [one] 1 cabo
           *[other] { $number } cabos
        }
        [colours] { $number ->
            [one] 1 color
           *[other] { $number } colores
        }
       *[over] ¿Por encima en el cruce { $number }?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Sujeta el nudo derecho, con el pie abajo. ¿Cuántas ondas tiene su borde del pie? Pon el pulgar en una y cuenta toda la vuelta. Siguiente: sumar uno.
        [nested] Mira un punto de ese borde. ¿Cuántas ondas hay ahí metidas una dentro de otra? Los cabos que van juntos todo el camino cuentan como uno. En la mayoría de los nudos es 1. Siguiente: sumar uno.
        [lands] Desde una onda de fuera del pie sigue un cabo hasta el borde de la cabeza. ¿En qué fila de ondas da allí la vuelta, siendo 1 la de fuera? Siguiente: una fila más adentro.
        [rows] Desde { $nested ->
            [one] una onda del pie
           *[other] esa onda de fuera del pie
        } sigue un cabo hasta el borde de la cabeza. ¿Cuántas veces se cruza? Los cabos que van juntos cuentan como uno. Siguiente: sumar uno.
        [passes] ¿Cuántos cabos van juntos, uno al lado de otro? Siguiente: sumar uno.
        [over] { $nested ->
            [one] Sigue un cabo que sube hacia la derecha desde el borde del pie.
           *[other] Sigue un cabo que sube hacia la derecha desde una onda de la fila { $from } del pie, contando desde fuera.
        } Cruce { $number } de { $of }: ¿pasa por encima?
        [colours] ¿Cuántos colores de cabo ves? Siguiente: sumar uno.
       *[found] { $tie }. { $colours ->
            [cord] Un solo cabo lo hace entero.
            [passes] Es una sola hebra, y hay pasadas con cabo propio.
            [strands] Son { $number } hebras, cada una con su cabo: los colores concuerdan.
            [alike] Son { $number } hebras, cada una con su cabo; algunas tienen el mismo color.
           *[too-many] Un nudo así no puede tener tantos colores: algo se ha contado mal.
        }
    }
count-misfit = Con { $nested } filas de ondas hay { $less } cruces o { $more }, y { $number } no puede ser: cuenta otra vez.
count-keys = { $asked ->
        [over] Siguiente: por encima. Atrás: por debajo.
       *[found] { $possible ->
            [yes] Siguiente toma este nudo, atrás vuelve a contar.
           *[no] Siguiente y atrás vuelven a contar.
        }
    }
# Printed by “marlinspeak count” when the knot is taken. $given: the options that name it.
count-go-on = Planéalo con «marlinspeak rig { $given }» y tu tubo y tu cabo, o hazlo con «marlinspeak tie { $given }».
count-lines = Intro es siguiente, b atrás, un número vale por sí mismo, q lo deja; cada cosa con Intro.
# $given: a number that was typed and is not between the bounds.
count-beyond = { $given } no puede ser: da un número de { $least } a { $most }.
count-no-voice = Sin voz: el servicio de voz no responde. Las preguntas siguen por escrito.

## A counted knot on the plan screen

plan-only = { $key }: solo { $tie }
# Said when the screen appears.
plan-only-told = Solo se mira el nudo que se ha contado: { $tie }. Con F10 se miran todos.{ $bare ->
        [yes] { " " }Intro lo hace tal cual, sin objeto ni tubo.
       *[no] { "" }
    }
plan-only-note = Intro lo hace tal cual.
plan-any-told = Se miran otra vez todos los nudos.
key-any-knot = todos los nudos
