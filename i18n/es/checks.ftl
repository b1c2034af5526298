# A look at the work after a round or a pass: what should be seen, so that a fault is found
# within one round. Depths and arguments as in steps.ftl; besides them:
#   $round     rounds laid in this pass, $rounds of them all; a round is a rising and a falling leg
#   $ends      yes when the pass of this strand is complete
#   $whole     yes when all strands have come as far
#   $cords     cords round each pin that this pass has reached
#   $at        number of the bottom pin where the cord stands now
#   $counted   yes when $crossings says how many crossings lie on the tube by now
#   $rows      crossings along every leg from rim to rim in the whole knot
#   $first     yes at the first look of all
#   $from, $to pins of the last leg, which falls; $order: its overs and unders, one after the other

# Ejemplo: Para y mira. La ronda 3 de 6 está tendida, y el cabo está en la clavija 4 del
# pie. Hay 4 cruces en el tubo. Mira el último tramo, de la clavija 1 de la cabeza a la clavija 4 del pie. Ese
# tramo pasa por encima de un cabo, y por debajo de otro. Si lo ves así, pulsa siguiente; si no, error.
# Ejemplo: La pasada guía está tendida. Para y mira. Cada clavija sujeta un cabo, y a lo largo de cada
# tramo, de borde a borde, puedes contar 4 cruces. Si lo ves así, pulsa siguiente; si no, error.
check-say = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] La pasada guía está tendida.
                [2] La segunda pasada está tendida.
                [3] La tercera pasada está tendida.
                [4] La cuarta pasada está tendida.
                [5] La quinta pasada está tendida.
                [6] La sexta pasada está tendida.
                [7] La séptima pasada está tendida.
                [8] La octava pasada está tendida.
               *[9] La novena pasada está tendida.
            }
           *[other] { $pass ->
                [1] La pasada guía de la hebra { $strand } está tendida.
                [2] La segunda pasada de la hebra { $strand } está tendida.
                [3] La tercera pasada de la hebra { $strand } está tendida.
                [4] La cuarta pasada de la hebra { $strand } está tendida.
                [5] La quinta pasada de la hebra { $strand } está tendida.
                [6] La sexta pasada de la hebra { $strand } está tendida.
                [7] La séptima pasada de la hebra { $strand } está tendida.
                [8] La octava pasada de la hebra { $strand } está tendida.
               *[9] La novena pasada de la hebra { $strand } está tendida.
            }
        } Para y mira. { $whole ->
            [yes] Cada { -pin }
           *[no] Cada { -pin } de esta hebra
        } sujeta { $cords ->
            [one] un cabo
           *[other] { $cords } cabos uno junto al otro
        }, contando como uno dos extremos que cuelgan{ $whole ->
            [yes] , y a lo largo de cada tramo, de borde a borde, puedes contar { $rows ->
                [one] un cruce{ $cords ->
                    [one] .
                   *[other] { " " }de { $cords } cabos sobre { $cords }.
                }
               *[other] { $rows } cruces{ $cords ->
                    [one] .
                   *[other] , cada uno de { $cords } cabos sobre { $cords }.
                }
            }
           *[no] .
        }
       *[no] Para y mira. { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } { $pass ->
            [1] La ronda
            [2] Segunda pasada: la ronda
            [3] Tercera pasada: la ronda
            [4] Cuarta pasada: la ronda
            [5] Quinta pasada: la ronda
            [6] Sexta pasada: la ronda
            [7] Séptima pasada: la ronda
            [8] Octava pasada: la ronda
           *[9] Novena pasada: la ronda
        } { $round } de { $rounds } está tendida, y el cabo está en la { -pin } { $at } { -of-bottom }. { $counted ->
            [yes] { $crossings ->
                [0] Todavía no hay ningún cruce.
                [one] Hay un cruce { -on-the-tube }.
               *[other] Hay { $crossings } cruces { -on-the-tube }.
            }
           *[no] { $cords ->
                [one] Cada { -pin } que ha rodeado sujeta un cabo.
               *[other] Cada { -pin } que ha rodeado sujeta { $cords } cabos uno junto al otro.
            }
        } Mira el último tramo, de la { -pin } { $from } { -of-top } a la { -pin } { $to } { -of-bottom }. { $order }
    } Si lo ves así, pulsa siguiente; si no, error.

# Ejemplo: Mira. Ronda 3 de 6, en la clavija 4 del pie, 3 cruces.
check-say-brief = Mira. { $strands ->
        [one] { "" }
       *[other] Hebra { $strand }.
    } { $ends ->
        [yes] { $pass ->
            [1] Pasada guía tendida,
            [2] Segunda pasada tendida,
            [3] Tercera pasada tendida,
            [4] Cuarta pasada tendida,
            [5] Quinta pasada tendida,
            [6] Sexta pasada tendida,
            [7] Séptima pasada tendida,
            [8] Octava pasada tendida,
           *[9] Novena pasada tendida,
        } { $cords ->
            [one] un cabo por { -pin }.
           *[other] { $cords } cabos por { -pin }.
        }
       *[no] Ronda { $round } de { $rounds }, en la { -pin } { $at } { -of-bottom }. { $order }
    }

check-say-teach = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] La pasada guía está tendida: el cabo ha recorrido una vez todo el dibujo.
                [2] La segunda pasada está tendida.
                [3] La tercera pasada está tendida.
                [4] La cuarta pasada está tendida.
                [5] La quinta pasada está tendida.
                [6] La sexta pasada está tendida.
                [7] La séptima pasada está tendida.
                [8] La octava pasada está tendida.
               *[9] La novena pasada está tendida.
            }
           *[other] { $pass ->
                [1] La pasada guía de la hebra { $strand } está tendida: su cabo ha recorrido una vez todo su camino.
                [2] La segunda pasada de la hebra { $strand } está tendida.
                [3] La tercera pasada de la hebra { $strand } está tendida.
                [4] La cuarta pasada de la hebra { $strand } está tendida.
                [5] La quinta pasada de la hebra { $strand } está tendida.
                [6] La sexta pasada de la hebra { $strand } está tendida.
                [7] La séptima pasada de la hebra { $strand } está tendida.
                [8] La octava pasada de la hebra { $strand } está tendida.
               *[9] La novena pasada de la hebra { $strand } está tendida.
            }
        } { -turn-it-round } y míralo todo antes de seguir: un fallo se arregla fácilmente ahora y con trabajo después. { $whole ->
            [yes] Cada { -pin }
           *[no] Cada { -pin } de esta hebra
        } sujeta { $cords ->
            [one] un cabo
           *[other] { $cords } cabos uno junto al otro, que nunca se cruzan entre sí
        }, contando como uno dos extremos que cuelgan{ $whole ->
            [yes] . A lo largo de cada tramo, de borde a borde, puedes contar { $rows ->
                [one] un cruce{ $cords ->
                    [one] .
                   *[other] { " " }de { $cords } cabos sobre { $cords }.
                }
               *[other] { $rows } cruces{ $cords ->
                    [one] .
                   *[other] , cada uno de { $cords } cabos sobre { $cords }.
                }
            }
           *[no] .
        }
       *[no] { $first ->
            [yes] Para y mira. Un fallo se encuentra mejor en la misma ronda en que se hizo; una ronda es un tramo { -that-rises } y otro { -that-falls }.
           *[no] Para y mira.
        } { $strands ->
            [one] { "" }
           *[other] Hebra { $strand }.
        } { $pass ->
            [1] La ronda
            [2] Segunda pasada: la ronda
            [3] Tercera pasada: la ronda
            [4] Cuarta pasada: la ronda
            [5] Quinta pasada: la ronda
            [6] Sexta pasada: la ronda
            [7] Séptima pasada: la ronda
            [8] Octava pasada: la ronda
           *[9] Novena pasada: la ronda
        } { $round } de { $rounds } está tendida, y el cabo está en la { -pin } { $at } { -of-bottom }. { $counted ->
            [yes] { $crossings ->
                [0] Todavía no hay ningún cruce.
                [one] Hay un cruce { -on-the-tube }.
               *[other] Hay { $crossings } cruces { -on-the-tube }.
            }
           *[no] { $cords ->
                [one] Cada { -pin } que ha rodeado sujeta un cabo.
               *[other] Cada { -pin } que ha rodeado sujeta { $cords } cabos uno junto al otro.
            }
        } Mira el último tramo, de la { -pin } { $from } { -of-top } a la { -pin } { $to } { -of-bottom }. { $order }
    } Si lo ves así, pulsa siguiente; si no, error.

# Ejemplo: Mira: ronda 3 de 6
check-show = { $ends ->
        [yes] { $whole ->
            [yes] { $cords ->
                [one] Mira: 1 cabo en cada { -pin }
               *[other] Mira: { $cords } cabos en cada { -pin }
            }
           *[no] { $cords ->
                [one] Mira: 1 cabo en sus { -pins }
               *[other] Mira: { $cords } cabos en sus { -pins }
            }
        }
       *[no] Mira: ronda { $round } de { $rounds }
    }

# Ejemplo: 3 cruces en el tubo. El cabo está en el 4 del pie.
check-show-note = { $ends ->
        [yes] { $whole ->
            [yes] { $rows ->
                [one] 1 cruce a lo largo de cada tramo. Donde cuelgan dos extremos, cuentan como 1 cabo
               *[other] { $rows } cruces a lo largo de cada tramo. Donde cuelgan dos extremos, cuentan como 1 cabo
            }
           *[no] Hebra { $strand } de { $strands }. Donde cuelgan dos extremos, cuentan como 1 cabo
        }
       *[no] { $counted ->
            [yes] { $crossings ->
                [0] Ningún cruce todavía.
                [one] 1 cruce { -on-the-tube }.
               *[other] { $crossings } cruces { -on-the-tube } en total.
            }
           *[no] { $cords ->
                [one] 1 cabo en cada { -pin } hasta ahora.
               *[other] { $cords } cabos en cada { -pin } hasta ahora.
            }
        } El cabo está en la { $at } { -of-bottom }.
    }

# Ejemplo: Último tramo, desde la 1 de la cabeza: una vez por encima, una vez por debajo.
# $shown: yes where its crossings stand above in large type, and $order is nothing.
check-show-note-last = Último tramo, desde la { $from } { -of-top }{ $shown ->
        [yes] { "" }
       *[no] { "" }: { $order }
    }

# One crossing of the last leg, as it lies there; those of the leg are said one after the other, in $order.
# Ejemplo: Ese tramo pasa por encima de un cabo, por debajo de 2, por encima de uno.
# $place: only, first, next or last. $over: yes or no. $cords: cords lying there.
check-say-crossing = { $place ->
        [only] { $over ->
            [yes] Ese tramo pasa por encima de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }
           *[no] Ese tramo pasa por debajo de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }
        }.
        [first] { $over ->
            [yes] Ese tramo pasa por encima de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }
           *[no] Ese tramo pasa por debajo de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }
        },
        [last] { $over ->
            [yes] y por encima de { $cords ->
                [one] otro
               *[other] { $cords }
            }
           *[no] y por debajo de { $cords ->
                [one] otro
               *[other] { $cords }
            }
        }.
       *[next] { $over ->
            [yes] por encima de { $cords ->
                [one] uno
               *[other] { $cords }
            }
           *[no] por debajo de { $cords ->
                [one] uno
               *[other] { $cords }
            }
        },
    }

# In place of the order of overs and unders, for a leg of so many crossings that nobody would
# follow it: $crossings there are, $overs and $unders of them.
check-order-say = De sus { $crossings } cruces pasa por encima en { $overs } y por debajo en { $unders }.
check-order-show = { $crossings } cruces, en { $overs } por encima, en { $unders } por debajo
