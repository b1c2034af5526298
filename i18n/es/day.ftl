# What interrupts a tie: cord that may not do, a fault far back.

## Will the cord do?

# Ejemplo: En esta pasada faltan 9 tramos: 1,4 metros de cabo, con lo que sujeta la mano. Hasta su
# final, este cabo pide 3,1 metros.
# $legs: legs left in this pass; $all: legs left to the end of this cord. $known: yes when lengths
# are known: $in-pass, $in-cord, $in-all. $ends: yes when the cord ends with this pass. $others: yes
# when further cords are to be laid.
cord-left = { $known ->
        [yes] En esta pasada { $legs ->
            [one] falta 1 tramo:
           *[other] faltan { $legs } tramos:
        } { $in-pass } de cabo, { $ends ->
            [yes] con lo que sujeta la mano y el extremo que queda fuera.
           *[no] con lo que sujeta la mano. Hasta su final, este cabo pide { $in-cord }.
        }{ $others ->
            [yes] { " " }Todos los cabos juntos piden aún { $in-all }.
           *[no] { "" }
        } { -all-through }
       *[no] En esta pasada { $legs ->
            [one] falta 1 tramo
           *[other] faltan { $legs } tramos
        }{ $ends ->
            [yes] , y ahí acaba este cabo.
           *[no] ; hasta el final de este cabo, { $all }.
        } Cuánto cabo es eso solo se sabe de un nudo { -planned-so }
    }
cord-left-done = Todo está tendido. Ya no hace falta más cabo.

# How far it reaches by what was measured. $reach: whole, leg or none.
cord-reach = { $reach ->
        [whole] Según tu medida, el cabo llega hasta su final y sobran { $spare }.
        [leg] Según tu medida, el cabo llega hasta el final del tramo { $leg } de la pasada { $pass }.
       *[none] Según tu medida, el cabo no llega al final del tramo siguiente.
    } Con C otra vez lo mides de nuevo.
cord-ask = ¿Llegará el tuyo? Mide lo que tienes en la mano y pulsa C otra vez.

# Said before a pass that the cord does not reach to the end of.
cord-not-through = Ojo con el cabo: según tu medida { $reach ->
        [leg] llega hasta el final del tramo { $leg } de la pasada { $pass }, y no a toda esta pasada.
       *[none] no llega a un solo tramo de esta pasada.
    } Toma ahora uno más largo o ten otro a mano: donde este acabe se te preguntará si se empalma uno nuevo.

# Asked before a leg that the cord does not reach to the end of.
cord-ends = Según tu medida, el cabo no llega al final de este tramo. Siguiente le empalma uno nuevo. Atrás: aún llega, y la medida se olvida.
cord-ends-line = ¿Se acaba el cabo?
cord-reaches = La medida queda olvidada.

## What is measured. $length: so far; $step: what one press adds. $small: yes for what is over.

measuring = { $small ->
        [yes] ¿Y lo que pasa de ahí?
       *[no] Mide el cabo desde la { -pin } en que está hasta su extremo; si aún no está empezado, entero.
    } Por ahora, { $length }. Siguiente suma { $step }.
measuring-so-far = Por ahora, { $length }.
measuring-phase = Medir el cabo
measuring-line = { $length } en la mano
measuring-step = Siguiente suma { $step }; un número escrito vale tantas veces { $step }
# After everything that is counted.
counting-keys = Atrás: eso es. O escribe el número y pulsa siguiente.

# While a number is typed.
counting-keys-typed = Siguiente: eso es. Atrás borra la última cifra.

## A fault somewhere in the work

fault-phase = Buscar el tramo
# $asked: pin, row or nth. $number of $of. $hand: the way that pins are counted.
fault-so-far = { $asked ->
        [pin] { -Pin } { $number } { -of-bottom }
        [row] Fila { $number } de { $of }
       *[nth] Cruce { $number } de { $of }
    }.
fault-pin = ¿Junto a qué { -pin } { -of-bottom } está el fallo? Queda { -straight-above } o a su { $hand ->
        [left] izquierda
       *[right] derecha
    }, sin llegar a la siguiente. Por ahora, { -pin } { $number } de { $of }. Siguiente: una { -pin } más.
fault-row = ¿En qué fila de cruces, contando { -from-the-bottom }? Por ahora, fila { $number } de { $of }. Siguiente: una fila más.
fault-nth = En esa fila hay allí { $of } cruces. ¿Cuál es, contando desde la { -pin }? Por ahora, el número { $number }. Siguiente: sumar uno.
# Which of several cords lies wrong. $over: yes when it goes over, $cords: what it crosses.
fault-which = Allí se cruzan varios cabos. ¿Es el tramo { $leg } de la pasada { $pass }{ $strands ->
        [one] { "" }
       *[other] { " " }de la hebra { $strand }
    }, que { $heading ->
        [falling] { -falls } de la { -pin } { $from } { -of-top } a la { -pin } { $to } { -of-bottom }
       *[rising] { -rises } de la { -pin } { $from } { -of-bottom } a la { -pin } { $to } { -of-top }
    }, y en la fila { $row } { -from-the-bottom } va { $over ->
        [yes] por encima
       *[no] por debajo
    } de { $cords ->
        [one] 1 cabo?
       *[other] { $cords } cabos?
    } Siguiente: otro.
fault-which-line = ¿Tramo { $leg }, pasada { $pass }?
# The leg that laid it. $back: legs that have to come back.
fault-found = Lo tendió el tramo { $leg }{ $pass ->
        [1] { "" }
       *[other] { " " }de la pasada { $pass }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }de la hebra { $strand }
    }, { $heading ->
        [falling] { -that-falls } de la { -pin } { $from } { -of-top } a la { -pin } { $to } { -of-bottom }
       *[rising] { -that-rises } de la { -pin } { $from } { -of-bottom } a la { -pin } { $to } { -of-top }
    }. En la fila { $row } { -from-the-bottom } va { $over ->
        [yes] por encima
       *[no] por debajo
    } de { $cords ->
        [one] 1 cabo.
       *[other] { $cords } cabos.
    } { $back ->
        [one] Hay que deshacer ese tramo solo.
       *[other] Hay que deshacer { $back } tramos, ese el último.
    }
fault-found-line = Tramo { $leg }, pasada { $pass }: { $over ->
        [yes] por encima
       *[no] por debajo
    } en la fila { $row } { -from-the-bottom }
# A standing end that is near. $crossings: what it comes out of. $over: how it is to lie there.
fault-by-the-end = O no deshagas ninguno. El extremo que cuelga en { $rim ->
        [top] la { -pin } { $pin } { -of-top }
       *[bottom] la { -pin } { $pin } { -of-bottom }
    } está cerca: sácalo { $crossings ->
        [one] de ese cruce
       *[other] de { $crossings } cruces, ese el último
    }, pásalo allí { $over ->
        [yes] por encima
       *[no] por debajo
    } y devuélvelo por donde estaba.
fault-found-keys = Siguiente deshace el primero, atrás nombra otro lugar, error lo deja todo como está.
fault-nothing-there = Allí todavía no se cruzan dos cabos. Nombra otra vez el lugar.
# A length of nothing was taken for what is in the hand.
measured-nothing = No se midió nada, así que no se anota nada.

## A new cord in place of one that ran out or frayed, step by step

join-phase = Empalmar otro cabo
# $step: melts, cut, back, old-end, new-end, rest or finish. $row: the row of crossings in whose
# crossing both ends are hidden.
join-line = { $step ->
        [melts] ¿El cabo se derrite?
        [cut] Corta un cabo nuevo
        [back] El viejo, atrás hasta la fila { $row } { -from-the-bottom }
        [old-end] Su extremo queda en la fila { $row }
        [new-end] Pon al lado el extremo nuevo
        [rest] Tiende el resto del tramo { $leg }
       *[finish] El cabo nuevo sigue
    }
# $known: yes when $length says what to cut. $legs: legs that the new cord lays, that of the join too.
# $whole: yes when the old cord is on its pin already. $cords: what lies over the two ends, 0 where
# nothing does yet. $ends: ends to be cut at last.
join-told = { $step ->
        [melts] El cabo se ha acabado o deshilachado, y otro ocupa su lugar. Primero: ¿se derrite, como el nailon y el poliéster? Siguiente es sí. Atrás es no, como el algodón y el cáñamo.
        [cut] Corta un cabo nuevo, { $known ->
            [yes] de { $length } por lo menos, para
           *[no] lo bastante largo para
        } { $legs ->
            [one] 1 tramo
           *[other] { $legs } tramos
        } y un extremo a cada lado. { $melts ->
            [yes] Sella con calor los dos extremos, para que no se deshilachen.
           *[no] Rodea con hilo o cinta los dos extremos, o mójalos en cola, para que no se deshilachen.
        }
        [back] Tramo { $leg }{ $pass ->
            [1] { "" }
           *[other] { " " }de la pasada { $pass }
        }{ $strands ->
            [one] { "" }
           *[other] { " " }de la hebra { $strand }
        }: { $whole ->
            [yes] { $heading ->
                [falling] suelta el cabo viejo de la { -pin } { $to } { -of-bottom } y llévalo
               *[rising] suelta el cabo viejo de la { -pin } { $to } { -of-top } y llévalo
            }
           *[no] lleva el cabo viejo
        } atrás hasta la fila { $row } { -from-the-bottom }, donde { $cords ->
            [0] un tramo posterior le pasará por encima.
            [one] va por debajo de 1 cabo.
           *[other] va por debajo de { $cords } cabos.
        } Eso queda dentro del tramo; en un seno el extremo se vería y se soltaría.
        [old-end] Deja el extremo del cabo viejo { $cords ->
            [0] donde ese tramo le pasará por encima,
           *[other] debajo de ese cruce,
        } { -on-the-tube-side }, y un palmo más allá. Corta lo que sea más largo o esté deshilachado.
        [new-end] Pon a su lado el extremo del cabo nuevo, desde el otro lado, { $cords ->
            [0] por el mismo sitio,
           *[other] debajo del mismo cruce,
        } también un palmo más allá. Ahí quedan los dos juntos y se sujetan. No los fundas ni los pegues uno a otro: queda duro, se ve y se parte.
        [rest] Con el cabo nuevo tiende el resto del tramo { $leg } como estaba el viejo, y rodea { $heading ->
            [falling] la { -pin } { $to } { -of-bottom }.
           *[rising] la { -pin } { $to } { -of-top }.
        }
       *[finish] De aquí en adelante sigue el cabo nuevo. Los dos extremos quedan largos hasta igualar el nudo: entonces recoge hacia ellos desde ambos lados, nunca a través de ellos. Al final hay { $ends } extremos que cortar{ $melts ->
            [yes] { " " }y sellar.
           *[no] , y una gota de cola sujeta cada uno.
        } Siguiente continúa con el nudo.
    }
join-where = Estás empalmando un cabo nuevo: paso { $step } de { $steps }.
join-noted = El cabo nuevo queda apuntado.
join-nothing-laid = De este cabo aún no hay ningún tramo tendido: empieza otra vez con otro.
join-off-the-pins = El nudo está saliendo de las { -pins }: ya no se empalma ningún cabo.
