# What comes when everything is laid: lift the knot off the tube, fair it, finish the ends.
# Depths and arguments as in steps.ftl. Off the tube the pins are gone, so what was a pin is called
# by its bight.

## Lifting. $task: secure, top-pins, slide-ring, bottom-pins or slip-off. $pins: pins in a ring.
## $ends: ends of cord hanging out.

# Ejemplo: Quita las 6 clavijas de la cabeza, una a una, y déjalas en un plato.
lift-say = { $task ->
        [secure] Todo está tendido. { -before-lifting } marca el seno 1 { -of-bottom } con un trocito de cinta, y comprueba que ninguno de los { $ends } chicotes puede escurrirse hacia dentro: basta un nudo flojo en cada uno.
        [top-pins] Despega la cinta del tubo, no la marca, y luego quita las { $pins } clavijas { -of-top }, una a una, y déjalas en un plato.
        [slide-ring] Si hay un anillo { -at-top }, deslízalo hacia arriba hasta sacarlo del tubo. Los senos se quedan como están.
        [bottom-pins] Sujeta el nudo con una mano y quita las { $pins } clavijas { -of-bottom }.
        [over-ball] Desliza el nudo hacia arriba hasta sacarlo del tubo, y pásalo sobre la bola sin voltearlo. Por el camino los bordes se cierran, y el medio queda tan ancho como está.
        [marks] Despega los trocitos de cinta de los senos. Luego saca las cintas de debajo de los cabos, poco a poco, una tras otra. El nudo se queda donde está.
        [draw-pins] Saca los alfileres en T uno a uno, de fuera hacia dentro, y con la otra mano mantén plano el tapete. Déjalos en un plato.
       *[slip-off] Desliza el nudo hacia arriba hasta sacarlo del tubo, y pásalo al objeto sin voltearlo. Gíralo hasta que los chicotes salgan donde quieras.{ $thick ->
            [bottom] { " " }El borde del pie va al extremo grueso.
            [top] { " " }El borde de la cabeza va al extremo grueso.
           *[none] { "" }
        }
    }

lift-say-brief = { $task ->
        [secure] Marca el seno 1 { -of-bottom }, asegura los { $ends } chicotes.
        [top-pins] Fuera las { $pins } clavijas { -of-top }.
        [slide-ring] Fuera el anillo { -of-top }, si lo hay.
        [bottom-pins] Fuera las { $pins } clavijas { -of-bottom }.
        [over-ball] Pasa el nudo sobre la bola, sin voltearlo.
        [marks] Trocitos fuera de los senos, cintas fuera de debajo de los cabos.
        [draw-pins] Alfileres fuera uno a uno, los { $all }, todo plano.
       *[slip-off] Pasa el nudo al objeto, sin voltearlo.{ $thick ->
            [bottom] { " " }El borde del pie va al extremo grueso.
            [top] { " " }El borde de la cabeza va al extremo grueso.
           *[none] { "" }
        }
    }

lift-say-teach = { $task ->
        [secure] Todo está tendido. { -before-lifting } marca el seno 1 { -of-bottom } con un trocito de cinta: { -once-they-are-gone } todos los senos se parecen, y contarás desde ese. Comprueba que ninguno de los { $ends } chicotes puede escurrirse hacia dentro: basta un nudo flojo en cada uno.
        [top-pins] Despega la cinta del tubo, no la marca, y luego quita las { $pins } clavijas { -of-top }, una a una, y déjalas en un plato. Los senos se quedan donde están, porque los cruces los sujetan.
        [slide-ring] Si hay un anillo { -at-top }, deslízalo hacia arriba hasta sacarlo del tubo. Ve despacio, para que no arrastre ningún seno.
        [bottom-pins] Sujeta el nudo con una mano para que no salte, y quita las { $pins } clavijas { -of-bottom }.
        [over-ball] Desliza el nudo hacia arriba hasta sacarlo del tubo, y pásalo sobre la bola sin voltearlo y sin que se retuerza. Por el camino los bordes se cierran, y el medio queda tan ancho como está: eso lo sujeta en la bola mientras lo igualas.
        [marks] Despega los trocitos de cinta de los senos. Luego saca las cintas de debajo de los cabos, poco a poco, una tras otra. El nudo se queda donde está. La cinta que no salga se corta entre dos senos y se saca a trozos.
        [draw-pins] Saca los alfileres en T uno a uno, de fuera hacia dentro, y déjalos en un plato. Con la otra mano mantén plano el tapete: lo que se suelta de golpe salta y pierde su orden.
       *[slip-off] Desliza el nudo hacia arriba hasta sacarlo del tubo, y pásalo al objeto sin voltearlo y sin que se retuerza. Está flojo, como debe ser. Gíralo hasta que los chicotes salgan donde quieras.{ $thick ->
            [bottom] { " " }El borde del pie va al extremo grueso.
            [top] { " " }El borde de la cabeza va al extremo grueso.
           *[none] { "" }
        }
    }

lift-show = { $task ->
        [secure] Marca el seno 1 { -of-bottom }
        [top-pins] Quita las clavijas { -of-top }
        [slide-ring] Saca el anillo { -of-top }, si lo hay
        [bottom-pins] Quita las clavijas { -of-bottom }
        [over-ball] Pasa el nudo sobre la bola
        [marks] Quita las cintas
        [draw-pins] Saca los alfileres en T
       *[slip-off] Pasa el nudo al objeto
    }

lift-show-note = { $task ->
        [secure] Que ninguno de los { $ends } chicotes se escurra hacia dentro
        [top-pins] Son { $pins }, a un plato
        [slide-ring] Los senos se quedan como están
        [bottom-pins] Son { $pins }; sujeta el nudo con una mano
        [over-ball] Sin voltearlo: los bordes se cierran, el medio queda
        [marks] Trocitos fuera de los senos, cintas de debajo de los cabos; el nudo se queda
        [draw-pins] Los { $all }, uno a uno; todo plano
       *[slip-off] Sin voltearlo, con los chicotes donde quieras{ $thick ->
            [bottom] , el borde del pie va al extremo grueso
            [top] , el borde de la cabeza va al extremo grueso
           *[none] { "" }
        }
    }

## Fairing. $round of $rounds: how often the knot is gone through. $known: yes when $draw says what
## to draw out of this leg, and $gathered what is in the hand behind it. $first: yes where a cord begins,
## $last: yes where it ends.

# Ejemplo: Igualar, 1 de 3. Empieza por la cola. Tramo 1 de 12, que sube del seno 1 del pie al seno 3
# de la cabeza: recoge cerca de 9 milímetros y pásalo al tramo siguiente. Ya llevas 9 milímetros
# en la mano.
fair-say = { $whole ->
        [yes] { $round ->
            [1] Igualar, { $round } de { $rounds }. { $cords ->
                [one] Empieza por la cola y sigue el cabo
               *[other] Ve cabo por cabo, cada uno desde su propia cola
            } hasta el final. { $known ->
                [yes] Recoge cerca de { $draw } de cada tramo
               *[no] Recoge un poco de cada tramo
            } y pásalo al siguiente, por los { $round-legs } tramos{ $cords ->
                [one] { "" }
               *[other] {" "}en total
            }, hasta que salga por el chicote de { $cords ->
                [one] trabajo.
               *[other] trabajo de ese cabo.
            }
           *[other] Igualar, { $round } de { $rounds }. Una vez { $cords ->
                [one] más por el cabo, desde la
               *[other] más, cabo por cabo, cada uno desde su
            } cola: { $known ->
                [yes] cerca de { $draw }
               *[no] un poco
            } de cada uno de los { $round-legs } tramos, hasta el chicote de { $cords ->
                [one] trabajo.
               *[other] trabajo de su cabo.
            }
        }
       *[no] Igualar, { $round } de { $rounds }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , pasada { $pass }
        }. { $first ->
            [yes] Empieza por la cola.
           *[no] { "" }
        } Tramo { $leg } de { $legs }, { $heading ->
            [falling] { -that-falls } del seno { $from } { -of-top } al seno { $to } { -of-bottom }
           *[rising] { -that-rises } del seno { $from } { -of-bottom } al seno { $to } { -of-top }
        }: { $known ->
            [yes] recoge cerca de { $draw } y pásalo al tramo siguiente. Ya llevas { $gathered } en la mano.
           *[no] recoge lo que sobra, sin que los cruces se muevan de su sitio, y pásalo al tramo siguiente.
        } { $last ->
            [yes] El cabo termina aquí: deja colgando lo que has recogido.
           *[no] { "" }
        }
    }

fair-say-brief = { $whole ->
        [yes] Igualar, { $round } de { $rounds }: { $cords ->
                [one] desde la
               *[other] cabo por cabo desde cada
            } cola, { $known ->
            [yes] { $draw }
           *[no] un poco
        } de cada tramo.
       *[no] Igualar, { $round } de { $rounds }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }{ $passes ->
            [one] { "" }
           *[other] , pasada { $pass }
        }. { $heading ->
            [falling] Seno { $from } { -of-top }, { -down } al seno { $to } { -of-bottom }
           *[rising] Seno { $from } { -of-bottom }, { -up } al seno { $to } { -of-top }
        }: { $known ->
            [yes] recoge { $draw }.
           *[no] recoge lo que sobra.
        } { $last ->
            [yes] Déjalo colgando.
           *[no] { "" }
        }
    }

fair-say-teach = { $whole ->
        [yes] Igualar, { $round } de { $rounds }. { $cords ->
                [one] Empieza por la cola y sigue el cabo
               *[other] Ve cabo por cabo, cada uno desde su propia cola
            } hasta el final. Levanta cada tramo { -with-the-pick }, { $known ->
            [yes] recoge cerca de { $draw }
           *[no] recoge un poco
        } y pásalo al siguiente, por los { $round-legs } tramos. No tenses ningún tramo antes que sus vecinos. Pulsa menos a la vez para ir tramo a tramo.
       *[no] Igualar, { $round } de { $rounds }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , pasada { $pass }
        }. { $first ->
            [yes] { $round ->
                [1] { $strand ->
                    [1] { $pass ->
                        [1] Igualar un nudo es dejarlo igual por todas partes: recorre el cabo desde la cola y recoge un poco de lo que sobra en cada tramo, varias veces, para que ningún tramo quede tenso antes que sus vecinos.
                       *[other] { "" }
                    }
                   *[other] { "" }
                }
               *[other] { "" }
            } Empieza por la cola.
           *[no] { "" }
        } Tramo { $leg } de { $legs }, { $heading ->
            [falling] { -that-falls } del seno { $from } { -of-top } al seno { $to } { -of-bottom }
           *[rising] { -that-rises } del seno { $from } { -of-bottom } al seno { $to } { -of-top }
        }: levántalo { -with-the-pick } y { $known ->
            [yes] recoge cerca de { $draw }, y pásalo a lo largo del cabo al tramo siguiente. Ya llevas { $gathered } en la mano.
           *[no] recoge lo que sobra, sin que los cruces se muevan de su sitio, y pásalo a lo largo del cabo al tramo siguiente.
        } { $last ->
            [yes] El cabo termina aquí: deja colgando lo que has recogido.
           *[no] { "" }
        }
    }

# Ejemplo: De la 1 del pie, sube a la 3 de la cabeza
fair-show = { $whole ->
        [yes] Igualar, { $round } de { $rounds }
       *[no] { $heading ->
            [falling] De la { $from } { -of-top }, { -down } a la { $to } { -of-bottom }
           *[rising] De la { $from } { -of-bottom }, { -up } a la { $to } { -of-top }
        }
    }

fair-show-note = { $whole ->
        [yes] { $known ->
            [yes] Unos { $draw } de cada tramo
           *[no] Un poco de cada tramo
        }, { $round-legs } { $cords ->
                [one] tramos desde la
               *[other] tramos, cabo por cabo desde cada
            } cola. Con [, tramo a tramo
       *[no] { $known ->
            [yes] Recoge cerca de { $draw }; { $gathered } en la mano
           *[no] Recoge lo que sobra y pásalo al siguiente
        } { $first ->
            [yes] (empieza por la cola)
           *[no] { "" }
        } { $last ->
            [yes] (déjalo colgando)
           *[no] { "" }
        }
    }

## Finishing. $task: tuck, join, trim, seal or done. $end: working or standing. $pin: the bottom bight where
## the end comes out. The end goes along the $cords cords from bottom bight $pin to top bight $top, on
## the side of the rim that $lane names. $under: yes when $order says what it goes over, and under
## what it is held at last.

# Ejemplo: El chicote de trabajo está en el seno 1 del pie. Llévalo hacia el seno 3 de la cabeza, junto
# a los 2 cabos { -that-rise } hasta allí, del lado del pie. Encima de 2 cabos, debajo de 2. Ajústalo. Se
# cortará donde sale.
finish-say = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } { $named ->
            [yes] Cabo «{ $cord }».
           *[no] { "" }
        } { $end ->
            [standing] La cola, el extremo que dejaste al empezar,
           *[working] El chicote de trabajo
        } está en el seno { $pin } { -of-bottom }. Si tiene un nudo, deshazlo; luego lleva { $end ->
            [standing] la cola
           *[working] el chicote
        } hacia el seno { $top } { -of-top }, junto { $cords ->
            [one] al cabo { -that-rises } hasta allí,
           *[other] a los { $cords } cabos { -that-rise } hasta allí,
        } { $lane ->
            [top] { -lane-top }.
           *[bottom] { -lane-bottom }.
        } { $under ->
            [yes] { $order } { $end ->
                [standing] Ajústala.
               *[working] Ajústalo.
            } Se cortará donde sale.
           *[no] { $end ->
                [standing] Métela
               *[working] Mételo
            } por debajo del primer cabo que lo admita. Se cortará donde sale.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } Entre el seno { $pin } { -of-bottom } y el seno { $top } { -of-top }, en la fila { $row } { -from-the-bottom }, hay dos cabos empalmados. Ciñe los dos extremos y mira que ninguno se haya salido de su cruce. Donde asomen, se cortarán.
        [trim] Corta los { $ends } chicotes donde salen, dejando una punta tan larga como el grueso del cabo.
        [seal] Si el cabo es de nailon, de poliéster o de otra fibra que se funde, saca un poco cada punta, séllala con calor lejos del nudo, deja que se enfríe y vuelve a meterla debajo. La fibra natural no se sella con calor: la sujeta una gota de pegamento.
        [press] Prensa el tapete bajo una tabla con algo pesado encima. Luego cóselo por la cara de abajo donde se cruzan los cabos, o sujeta los cruces con pegamento, para que guarde su forma.
       *[done] El nudo está hecho: { $leads } ramales y { $bights } senos{ $nested ->
           [one] { "" }
          *[other] , { $nested } anidados{ $lands ->
               [0] { "" }
              *[other] , primer cabo a la fila { $lands }
           }
       }, { $passes ->
            [one] sencillo.
            [2] doble.
            [3] triple.
           *[other] { $passes } pasadas.
        } Has hecho un buen trabajo. Apunta lo que has usado, para la próxima vez.
    }

finish-say-brief = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } { $end ->
            [standing] Cola
           *[working] Chicote de trabajo
        }, seno { $pin } { -of-bottom }, junto { $cords ->
            [one] al cabo
           *[other] a los { $cords } cabos
        } hacia el { $top } { -of-top }, { $lane ->
            [top] { -lane-top }.
           *[bottom] { -lane-bottom }.
        } { $under ->
            [yes] { $order }
           *[no] Bajo el primero que lo admita.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } Empalme entre el seno { $pin } { -of-bottom } y el seno { $top } { -of-top }, fila { $row }: los dos extremos ceñidos.
        [trim] Corta los { $ends } chicotes y deja una punta tan larga como el grueso del cabo.
        [seal] Sella los { $ends } chicotes, si se funden, y vuelve a meterlos debajo.
        [press] Prensa el tapete, luego cóselo o pégalo por la cara de abajo.
       *[done] Hecho: { $leads } ramales y { $bights } senos{ $nested ->
           [one] { "" }
          *[other] , { $nested } anidados{ $lands ->
               [0] { "" }
              *[other] , primer cabo a la fila { $lands }
           }
       }, { $passes ->
            [one] sencillo.
            [2] doble.
            [3] triple.
           *[other] { $passes } pasadas.
        }
    }

finish-say-teach = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } { $named ->
            [yes] Cabo «{ $cord }».
           *[no] { "" }
        } { $end ->
            [standing] La cola, el extremo que dejaste al empezar,
           *[working] El chicote de trabajo
        } está en el seno { $pin } { -of-bottom }. Si tiene un nudo, deshazlo; luego lleva { $end ->
            [standing] la cola
           *[working] el chicote
        } hacia el seno { $top } { -of-top }, junto { $cords ->
            [one] al cabo { -that-rises } hasta allí,
           *[other] a los { $cords } cabos { -that-rise } hasta allí,
        } { $lane ->
            [top] { -lane-top }.
           *[bottom] { -lane-bottom }.
        } { $under ->
            [yes] { $order } { $end ->
                [standing] Ajústala.
               *[working] Ajústalo.
            } Se cortará donde sale.
           *[no] { $end ->
                [standing] Métela
               *[working] Mételo
            } por debajo del primer cabo que lo admita. Se cortará donde sale.
        } Meter un chicote es empujarlo por debajo, abriendo camino { -with-the-pick }. { $end ->
            [standing] { "" }
           *[working] Sigue a los demás una vez más, por encima y por debajo como ellos.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } Entre el seno { $pin } { -of-bottom } y el seno { $top } { -of-top }, en la fila { $row } { -from-the-bottom }, hay dos cabos empalmados. Ciñe los dos extremos, uno después del otro, y mira que ninguno se haya salido de su cruce: es lo que los sujeta y los tapa. Donde asomen, se cortarán.
        [trim] Antes, el nudo tiene que estar igualado del todo: el cabo cortado no vuelve. Corta los { $ends } chicotes donde salen, dejando una punta tan larga como el grueso del cabo.
        [seal] Si el cabo es de nailon, de poliéster o de otra fibra que se funde, saca un poco cada punta, séllala con calor lejos del nudo, para que no se deshilache, deja que se enfríe y vuelve a meterla debajo. La fibra natural no se sella con calor: la sujeta una gota de pegamento.
        [press] Prensa el tapete bajo una tabla con algo pesado encima. Luego cóselo por la cara de abajo donde se cruzan los cabos, o sujeta los cruces con pegamento, para que guarde su forma. Basta una puntada cada tres cruces, y ninguna debe verse por la cara de arriba.
       *[done] El nudo está hecho: { $leads } ramales y { $bights } senos{ $nested ->
           [one] { "" }
          *[other] , { $nested } anidados{ $lands ->
               [0] { "" }
              *[other] , primer cabo a la fila { $lands }
           }
       }, { $passes ->
            [one] sencillo.
            [2] doble.
            [3] triple.
           *[other] { $passes } pasadas.
        } Has hecho un buen trabajo. Apunta qué cabo has usado y qué ancho ha salido el nudo, para la próxima vez.
    }

finish-show = { $task ->
        [tuck] { $end ->
            [standing] Mete la cola: seno { $pin } { -of-bottom }
           *[working] Mete el chicote: seno { $pin } { -of-bottom }
        }
        [join] Ciñe el empalme
        [trim] Corta los { $ends } chicotes
        [seal] Sella los { $ends } chicotes
        [press] Prensa, y luego cose o pega
       *[done] El nudo está hecho
    }

finish-show-note = { $task ->
        [tuck] Junto { $cords ->
            [one] al cabo
           *[other] a los { $cords } cabos
        } hacia el seno { $top } { -of-top }, { $lane ->
            [top] { -lane-top }
           *[bottom] { -lane-bottom }
        }{ $under ->
            [yes] . Aún no se corta: eso viene después
           *[no] , por debajo del primer cabo que lo admita
        }
        [join] Entre el seno { $pin } { -of-bottom } y el { $top } { -of-top }, fila { $row }. Los dos extremos están en su cruce
        [trim] Una punta tan larga como el grueso del cabo
        [seal] Lejos del nudo, y otra vez debajo; pegamento para fibra natural
        [press] Por la cara de abajo, donde se cruzan los cabos
       *[done] { $leads } ramales y { $bights } senos{ $nested ->
           [one] { "" }
          *[other] , { $nested } anidados{ $lands ->
               [0] { "" }
              *[other] , primer cabo a la fila { $lands }
           }
       }. Apunta lo que has usado.
    }

## Cautions, before what can hurt: spoken with the step, and on the screen as long as it stands.
## $caution: pins, fingers, blades, pick, heat, load, children, pull or rest.

caution-say = { $caution ->
        [pins] Cuidado con las clavijas: sobresalen; no les acerques los ojos ni las palmas.
        [blades] Filo y punta, siempre hacia fuera, lejos del cuerpo, y la otra mano, detrás.
        [pick] Empuja el pasador lejos de tu cuerpo y de la mano que sujeta el nudo.
        [needle] Empuja la aguja lejos de la mano que sujeta la labor. Con pegamento, abre una ventana, y que no toque la piel ni los ojos.
        [heat] Cuidado, quema. Abre una ventana, aparta la llama del nudo y de todo lo que arda, y no toques el chicote hasta que esté frío: el cabo fundido se pega a la piel. Un chicote sellado puede cortar.
        [load] Solo adorna: que nunca sostenga a una persona ni una carga; para eso, cumple las normas y recurre a personal autorizado.
        [children] Guarda cabos, clavijas y piezas pequeñas lejos de los niños, y nunca pongas un cabo al cuello de nadie.
        [pull] Tira con suavidad, nunca con el cabo enrollado en la mano, y aparta la cara del chicote, por si se suelta.
        [fingers] No aprietes nunca el cabo alrededor de un dedo, y sácalo enseguida si un dedo se pone pálido o se duerme. Los niños pequeños no lo hacen solos.
       *[rest] Descansa las manos de vez en cuando.
    }

caution-show = { $caution ->
        [pins] Las clavijas sobresalen: cuidado con los ojos y las palmas.
        [blades] Filo y punta, siempre hacia fuera, lejos del cuerpo.
        [pick] Empuja el pasador lejos del cuerpo.
        [needle] La aguja, lejos de la mano que sujeta. Pegamento: aire fresco, lejos de piel y ojos.
        [heat] Ventila. Lejos de todo lo que arda. El cabo fundido se pega y quema: deja que se enfríe. Un chicote sellado puede cortar.
        [load] Solo adorno: nunca para sostener a una persona ni una carga. Para eso, cumple las normas y recurre a personal autorizado.
        [children] Cabos, clavijas y piezas pequeñas, lejos de los niños pequeños; nunca un cabo alrededor de un cuello.
        [pull] Tira con suavidad, nunca con el cabo enrollado en la mano; la cara, lejos del chicote.
        [fingers] El cabo, flojo en los dedos: fuera enseguida si uno se pone pálido o se duerme. No es para niños pequeños solos.
       *[rest] Descansa las manos de vez en cuando.
    }
