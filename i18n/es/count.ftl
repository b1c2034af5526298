# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Contar un nudo
# $asked: bights, rows, passes, over, colours or found. $number: so far, or the row; found: strands.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] 1 onda
           *[other] { $number } ondas
        }
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
       *[over] ¿Por encima en la fila { $number }?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Sujeta el nudo de pie. ¿Cuántas ondas tiene su borde del pie? Pon el pulgar en una y cuenta toda la vuelta. Siguiente: una más.
        [rows] Desde una onda del pie sigue un cabo hasta el borde de la cabeza. ¿Cuántas veces se cruza? Los cabos que van juntos cuentan como uno. Siguiente: una más.
        [passes] ¿Cuántos cabos van juntos, uno al lado de otro? Siguiente: uno más.
        [over] Sigue un cabo que sube hacia la derecha desde el borde del pie. Cruce { $number } de { $of }: ¿pasa por encima?
        [colours] ¿Cuántos colores de cabo ves? Siguiente: uno más.
       *[found] { $tie }. { $colours ->
            [cord] Un solo cabo lo hace entero.
            [passes] Es una sola hebra, y hay pasadas con cabo propio.
            [strands] Son { $number } hebras, cada una con su cabo: los colores concuerdan.
            [alike] Son { $number } hebras, cada una con su cabo; algunas tienen el mismo color.
           *[too-many] Un nudo así no puede tener tantos colores: algo se ha contado mal.
        }
    }
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
