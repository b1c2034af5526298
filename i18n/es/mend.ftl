# Where the tyer is, and what to do when something is wrong. Arguments as in steps.ftl.

## Where am I

# Said when a tie is taken up again, before where it stands and its step.
# Ejemplo: Retomas el nudo de 5 ramales y 7 senos.
where-taking-up-say = Retomas el nudo de { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }.

# Ejemplo: Pasada guía: llevas 7 de 12 tramos. El cabo está en la clavija 6 de la cabeza, y de ahí va a
# la clavija 3 del pie. Quedan 17 tramos en total. Te quedan unos 11 minutos, a tu ritmo.
# $phase: laying, lift, fair, finish or done. $at, $next: pins, on the rims $at-rim and $next-rim (top,
# bottom; none when there is no next). $laid: legs laid in this pass of the strand. $left: legs
# left in the whole tie. $crossed: crossings made on a leg that is laid in part. $round, $pass, $strand
# and $leg: where fairing is. $minutes: time left; $timed: yes when it is known.
where-say = { $phase ->
        [lift] Todo está tendido; { -to-be-lifted }
        [fair] { -laid-and-lifted } estás igualando el nudo, vez { $round }{ $whole ->
            [yes] .
           *[no] { $passes ->
                [one] { "" }
               *[other] , pasada { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , hebra { $strand }
            }, tramo { $leg } de { $legs }.
        }
        [done] El nudo está hecho, también los chicotes. No queda nada por hacer.
        [finish] El nudo está tendido e igualado; falta rematar los chicotes.
       *[laying] { $pass ->
            [1] Pasada guía
            [2] Segunda pasada
            [3] Tercera pasada
            [4] Cuarta pasada
            [5] Quinta pasada
            [6] Sexta pasada
            [7] Séptima pasada
            [8] Octava pasada
           *[9] Novena pasada
        }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }: llevas { $laid } de { $legs } tramos. { $crossed ->
            [0] El cabo está en { $at-rim ->
                [top] la { -pin } { $at } { -of-top }
               *[bottom] la { -pin } { $at } { -of-bottom }
            }{ $next-rim ->
                [top] , y de ahí va a la { -pin } { $next } { -of-top }.
                [bottom] , y de ahí va a la { -pin } { $next } { -of-bottom }.
               *[none] .
            }
           *[other] El cabo va { $at-rim ->
                [top] { -falling } de la { -pin } { $at } { -of-top } a la { -pin } { $next } { -of-bottom },
               *[bottom] { -rising } de la { -pin } { $at } { -of-bottom } a la { -pin } { $next } { -of-top },
            } y ha cruzado { $crossed ->
                [one] una vez.
                [2] dos veces.
               *[other] { $crossed } veces.
            }
        } { $left ->
            [0] No queda ningún tramo.
            [one] Queda un tramo en total.
           *[other] Quedan { $left } tramos en total.
        } { $timed ->
            [yes] { $minutes ->
                [0] Te queda menos de un minuto, a tu ritmo.
                [one] Te queda un minuto, más o menos, a tu ritmo.
               *[other] Te quedan unos { $minutes } minutos, a tu ritmo.
            }
           *[no] { "" }
        }
    }

## Something is wrong

# $can-take-back: yes when there is a leg to take back. $leg: which.
# Ejemplo: Algo va mal. Siguiente deshace el tramo 7. Atrás busca dónde estás, si has perdido la
# cuenta. Pulsa otra vez error para dejarlo todo como está.
wrong-say = Algo va mal. { $can-take-back ->
        [yes] Siguiente deshace el tramo { $leg }{ $strands ->
            [one] { "" }
           *[other] { " " }de la hebra { $strand }
        }{ $pass ->
            [1] { "" }
           *[other] , en la pasada { $pass }
        }. Atrás busca dónde estás, si has perdido la cuenta. H, si el fallo está más atrás. Pulsa otra vez error para dejarlo todo como está.
       *[no] Atrás busca dónde estás, si has perdido la cuenta. Pulsa otra vez error para dejarlo todo como está.
    }
wrong-show = Algo va mal
wrong-show-note = { $can-take-back ->
        [yes] Siguiente: deshacer el tramo { $leg }
       *[no] No hay nada que deshacer
    }
wrong-show-note-find = Atrás: buscar mi sitio
wrong-show-note-elsewhere = H: está en otra parte
wrong-show-note-leave = W: dejarlo como está

# Taking a leg out again; the sentences of a step follow one another: this one, one for each
# crossing in the order they are undone, and the last.
# Ejemplo: Deshaz el tramo 7. Primero vuelve con el cabo a la clavija 6 de la cabeza. Suelta el cabo
# de la clavija 6 de la cabeza.
# $whole: no when the leg was laid only in part and is on no pin yet. $tail: number of the bottom
# pin whose tail comes off first, for a cord that was just begun, else 0. $first-rim: top or bottom
# when the cord in hand is to be brought back to pin $first first, else none.
take-back-say = { $pass ->
        [1] Deshaz el tramo { $leg }
       *[other] Deshaz el tramo { $leg } de la pasada { $pass }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }de la hebra { $strand }
    }{ $named ->
        [yes] , cabo «{ $cord }»
       *[no] { "" }
    }. { $tail ->
        [0] { "" }
       *[other] Primero suelta la cola de la { -pin } { $tail } { -of-bottom }.
    } { $first-rim ->
        [top] { $tail ->
            [0] Primero
           *[other] Luego
        } vuelve con el cabo a la { -pin } { $first } { -of-top }.
        [bottom] { $tail ->
            [0] Primero
           *[other] Luego
        } vuelve con el cabo a la { -pin } { $first } { -of-bottom }.
       *[none] { "" }
    } { $whole ->
        [yes] { $heading ->
            [falling] Suelta el cabo de la { -pin } { $to } { -of-bottom }.
           *[rising] Suelta el cabo de la { -pin } { $to } { -of-top }.
        }
       *[no] { "" }
    }

# Ejemplo: Sácalo de debajo de un cabo, luego vuelve por encima de un cabo.
take-back-say-crossing = { $place ->
        [only] { $over ->
            [yes] Vuelve por encima de
           *[no] Sácalo de debajo de
        }
        [first] { $over ->
            [yes] Vuelve por encima de
           *[no] Sácalo de debajo de
        }
       *[next] { $over ->
            [yes] luego vuelve por encima de
           *[no] luego sácalo de debajo de
        }
    } { $cords ->
        [one] un cabo
       *[other] { $cords } cabos
    }{ $place ->
        [only] .
        [last] .
       *[next] ,
    }

take-back-say-clear = No cruza nada.

# Ejemplo: Quedas en la clavija 4 del pie. Siguiente: deshacer otro. Atrás: volver a tender este.
take-back-say-end = Quedas { $heading ->
        [falling] en la { -pin } { $from } { -of-top }.
       *[rising] en la { -pin } { $from } { -of-bottom }.
    } Siguiente: deshacer otro. Atrás: volver a tender este.

take-back-show = { $heading ->
        [falling] { -Back-up } a la { $from } { -of-top }
       *[rising] { -Back-down } a la { $from } { -of-bottom }
    }
take-back-show-phase = { $pass ->
        [1] Deshacer el tramo { $leg }
       *[other] Deshacer en la pasada { $pass } el tramo { $leg }
    }
take-back-show-crossing = { $over ->
        [yes] vuelve ENCIMA { $cords }
       *[no] saca de debajo { $cords }
    }
take-back-show-note = { $whole ->
        [yes] { $heading ->
            [falling] Suéltalo de la { $to } { -of-bottom }
           *[rising] Suéltalo de la { $to } { -of-top }
        }
       *[no] Aún no está en ninguna { -pin }
    }
take-back-show-note-keys = Siguiente: deshacer otro. Atrás: volver a tender este tramo.
take-back-nothing-say = No hay nada más que deshacer: { -tube-is-empty }

## Finding a lost place: questions answered with next for yes and back for no

# Ejemplo: El cabo que llevas en la mano, ¿está en la clavija 6 de la cabeza? Sí, siguiente; no, atrás.
question-say = { $question ->
        [pin] { $rim ->
            [top] El cabo que llevas en la mano, ¿está en la { -pin } { $pin } { -of-top }?
           *[bottom] El cabo que llevas en la mano, ¿está en la { -pin } { $pin } { -of-bottom }?
        }
        [cords] { $rim ->
            [top] Cuenta los cabos que rodean la { -pin } { $pin } { -of-top }, también el que llevas en la mano.
           *[bottom] Cuenta los cabos que han llegado a la { -pin } { $pin } { -of-bottom }, también el que llevas en la mano.
        } { $count ->
            [one] ¿Hay solo uno?
           *[other] ¿Hay { $count }?
        }
        [tail] ¿Tiene este cabo solo la cola en la { -pin } { $pin } { -of-bottom }{ $count ->
            [0] { "" }
            [one] , junto a otro cabo
           *[other] , junto a otros { $count } cabos
        }, sin haber rodeado aún ninguna?
        [home] Mira otra hebra: ¿ha vuelto su cabo al principio, a la { -pin } { $pin } { -of-bottom }, { $count ->
            [one] una vez?
            [2] dos veces?
           *[other] { $count } veces?
        }
       *[crossed] { $rim ->
            [top] Desde la { -pin } { $pin } { -of-top },
           *[bottom] Desde la { -pin } { $pin } { -of-bottom },
        } { $count ->
            [0] ¿el cabo todavía no ha cruzado nada?
            [one] ¿el cabo ha cruzado ya algo?
           *[other] ¿el cabo ha cruzado { $count } veces o más?
        }
    } Sí, siguiente; no, atrás.

question-show = { $question ->
        [pin] { $rim ->
            [top] ¿Está el cabo en la { $pin } { -of-top }?
           *[bottom] ¿Está el cabo en la { $pin } { -of-bottom }?
        }
        [cords] { $count ->
            [one] ¿Hay ahí solo 1 cabo?
           *[other] ¿Hay ahí { $count } cabos?
        }
        [tail] { $count ->
            [0] ¿Solo su cola ahí?
            [one] ¿Solo su cola ahí, junto a 1 cabo?
           *[other] ¿Solo su cola ahí, junto a { $count } cabos?
        }
        [home] { $count ->
            [one] Otra hebra: ¿de vuelta una vez?
            [2] Otra hebra: ¿de vuelta dos veces?
           *[other] Otra hebra: ¿de vuelta { $count } veces?
        }
       *[crossed] { $count ->
            [0] ¿Aún no ha cruzado nada?
            [one] ¿Ha cruzado algo?
           *[other] ¿Ha cruzado { $count } veces o más?
        }
    }
question-show-note = { $question ->
        [pin] La última { -pin } que rodeó el cabo
        [cords] { $rim ->
            [top] Alrededor de la { $pin } { -of-top }, también el que llevas en la mano
           *[bottom] Llegados a la { $pin } { -of-bottom }, también el que llevas en la mano
        }
        [tail] En la { $pin } { -of-bottom }
        [home] En la { $pin } { -of-bottom }
       *[crossed] { $rim ->
            [top] Desde la { $pin } { -of-top }
           *[bottom] Desde la { $pin } { -of-bottom }
        }
    }
question-show-phase = Buscar dónde estás
question-show-note-keys = Siguiente: sí. Atrás: no.

# Said before the step when the place is found.
found-say = Entonces este es el sitio.

# Said instead when the pins are being taken out or are out.
wrong-after = El nudo está saliendo de sus { -pins } y ya no se puede deshacer ningún tramo. Atrás retrocede un paso; H dice dónde estás.
