# The steps of laying a tie. A message ending in -say is spoken, one ending in -show stands on the
# screen. What the words must do: where the cord goes comes first (from which pin, which way,
# to which pin), then the crossings in the order they are met, then the landing.
#
# Words chosen for Spanish, from memory of Spanish seamanship and rope work, no source. What must not
# be confused by ear differs in its stressed vowel, in its verb, or both:
#   bottom rim, top rim   pie, cabeza: "la clavija 4 del pie", "la clavija 6 de la cabeza". Never
#                         superior and inferior (nor interior and exterior), which differ in one
#                         syllable, nor alta and baja. "Clavija" stands before the number, the rim
#                         after it.
#   over, under           por encima, por debajo: far apart by ear; the first of a leg has its verb,
#                         pásalo or mételo. Brief has no verbs ("encima 1, debajo 1"): it is for who
#                         knows the work, and the two words are heard apart without them.
#   up, down              sube, baja; a rising leg "sube", a falling leg "baja" (ascendente and
#                         descendente sound alike).
#   right, left           derecha, izquierda.
#   inside, outside       por dentro, por fuera (of a loop, bucle).
#   follower's lane       del lado del pie, del lado de la cabeza: neither abajo nor debajo,
#                         so that it is never taken for a crossing.
#   pin clavija, leg tramo, bight seno, lead ramal, strand hebra, pass pasada (lead pass: pasada
#   guía), round ronda ("vuelta" is only ever a turn round the tube), cord cabo, tail cola, standing
#   end cola too, working end chicote de trabajo, snug ceñido, crossing cruce, weave tejido,
#   staggered al tresbolillo, pick pasador, set screw prisionero, to lay tender, to take back
#   deshacer, to lift sacar, to fair igualar, to finish rematar. The knot itself is a cabeza de turco;
#   it is just "nudo" here, since cabeza is the rim.
# On the screen a pin is "la 4 del pie", "la 6 de la cabeza": "en pie" alone would be standing up.
# Weighed once more and kept: "de grueso" of a cord, a pin and an object (a tube has a "diámetro", since its
# wall is thick too); "se mete por debajo", where the cord goes by itself; metal is "tornillo prisionero", which both shores know; a brief leg of a
# later pass names no side, since its pass began with it.
# One cord is "un cabo" in words, as the figure would be said "uno". The tyer is told in the
# imperative of tú. The names of presses: siguiente, atrás, otra vez, dónde estoy, error.
# unsure: hebra for a closed path (cordón would be mistaken for the cord itself, and is a strand of laid
# rope); ramal for a lead (some say cordón, some say vuelta); igualar for fairing; seno for
# the scallop, where some say bucle or onda; 21 and its like before a masculine noun, which voices
# say "veintiuno cruces".
#
# A spoken message comes in three depths: plain without an ending, -brief for who knows the work,
# -teach for who learns it. Every one stands alone, for a tyer who is back after a week.
#
# Arguments that come back everywhere:
#   $pass      1 is the lead pass
#   $passes    passes the whole tie has
#   $strand    the strand, $strands how many there are
#   $leg       the leg's number in this pass of the strand, $legs how many there are
#   $part      part of a long leg, $parts how many there are
#   $heading   rising (bottom rim to top rim) or falling
#   $from, $to numbers of pins; a rising leg goes from a bottom pin to a top pin
#   $hand      right or left: the way round the tube that the cord travels
#   $lane      bottom or top, or where bights are nested bottom-own or top-own: the rim towards which a follower lies of the first cord, on rising and
#              falling legs alike; none in the lead pass. ("Right of the cord" would turn about with
#              every leg, and "below" is heard as "under".)
#   $cord      what the tyer calls the cord, when $named is yes
#   $tail      a length, with its unit

## Beginning a strand

# Ejemplo: Deja una cola de 15 centímetros en la clavija 1 del pie. Sujétala con cinta. El cabo irá
# hacia la derecha alrededor del tubo, y las clavijas se numeran en ese sentido.
# $uneven: yes when the weave leaves a fault at the rims. $staggered: yes when the top pins stand
# half way between the bottom ones.
begin-say = { $strands ->
        [one] { "" }
       *[other] Hebra { $strand } de { $strands }.
    } { $named ->
        [yes] Toma el cabo «{ $cord }».
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Deja colgar una cola de { $tail } en la { -pin } { $pin } { -of-bottom }, y sujétala con cinta. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] La { -pin } 1 { -of-top } está medio paso a la izquierda de la { -pin } 1 { -of-bottom }.
               *[right] La { -pin } 1 { -of-top } está medio paso a la derecha de la { -pin } 1 { -of-bottom }.
            }
           *[no] La { -pin } 1 { -of-top } está { -in-line-with } la { -pin } 1 { -of-bottom }.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }

begin-say-brief = { $strands ->
        [one] { "" }
       *[other] Hebra { $strand } de { $strands }.
    } { $named ->
        [yes] Cabo «{ $cord }».
       *[no] { "" }
    } { -upright } Cola de { $tail } en la { -pin } { $pin } { -of-bottom }. { $hand ->
        [left] Trabaja hacia la izquierda;
       *[right] Trabaja hacia la derecha;
    } { $staggered ->
        [yes] { -tops-staggered }
       *[no] { -tops-straight }
    } { $uneven ->
        [yes] El dibujo se rompe en los bordes.
       *[no] { "" }
    }

begin-say-teach = { $strands ->
        [one] { "" }
       *[other] Hebra { $strand } de { $strands }. { $strand ->
            [1] { $woven ->
                [yes] Una hebra es un recorrido cerrado del cabo; este nudo tiene varias, entrelazadas.
               *[no] Una hebra es un recorrido cerrado del cabo; este nudo tiene varias, porque sus ramales y sus senos comparten un divisor mayor que 1.
            }
           *[other] { "" }
        }
    } { $named ->
        [yes] Toma el cabo «{ $cord }».
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Deja colgar una cola de { $tail } en la { -pin } { $pin } { -of-bottom }, y sujétala con cinta. La cola se queda; con el otro extremo, el de tu mano, se hace el nudo. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] La { -pin } 1 { -of-top } está medio paso a la izquierda de la { -pin } 1 { -of-bottom }.
               *[right] La { -pin } 1 { -of-top } está medio paso a la derecha de la { -pin } 1 { -of-bottom }.
            }
           *[no] La { -pin } 1 { -of-top } está { -in-line-with } la { -pin } 1 { -of-bottom }.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }

# Ejemplo: Cola de 15 cm en la 1 del pie
begin-show = Cola de { $tail } en la { $pin } { -of-bottom }

# Ejemplo: Sujétala con cinta. Trabaja hacia la derecha.
begin-show-note = { $named ->
        [yes] Cabo «{ $cord }».
       *[no] { "" }
    } { $hand ->
        [left] { -upright-shown } Trabaja hacia la izquierda.
       *[right] { -upright-shown } Trabaja hacia la derecha.
    } { $uneven ->
        [yes] Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }

## Beginning to follow

# Ejemplo: Segunda pasada. El mismo cabo continúa. Empieza en la clavija 1 del pie, junto al cabo que ya
# está ahí, y ve siempre por su lado del pie, sin cambiar de lado. Pasa por encima y por debajo igual
# que él. En las clavijas de la cabeza gira por dentro de sus bucles; en las del pie, por fuera.
# $inside: the rim where the follower turns inside, top or bottom. $added: yes when another cord
# begins here, no when the cord in hand goes on.
follow-say = { $pass ->
        [2] Segunda pasada.
        [3] Tercera pasada.
        [4] Cuarta pasada.
        [5] Quinta pasada.
        [6] Sexta pasada.
        [7] Séptima pasada.
        [8] Octava pasada.
       *[9] Novena pasada.
    } { $strands ->
        [one] { "" }
       *[other] Hebra { $strand } de { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Toma el cabo «{ $cord }» y deja una cola de { $tail }. Empieza
           *[no] Toma el cabo añadido y deja una cola de { $tail }. Empieza
        }
       *[no] { $strands ->
            [one] El mismo cabo continúa. Empieza
           *[other] { $named ->
                [yes] Vuelve a tomar el cabo «{ $cord }». Empieza
               *[no] Toma otra vez el de la hebra { $strand }. Empieza
            }
        }
    } en la { -pin } { $pin } { -of-bottom }, junto { $own ->
        [yes] a su propia pasada guía
       *[no] al primer cabo
    }, y ve siempre { $lane ->
        [top] { -lane-top }
       *[bottom] { -lane-bottom }
    }{ $pass ->
        [2] { "" }
       *[other] , más allá de todos los cabos que ya hay
    }, sin cambiar de lado. Pasa por encima donde él pasa por encima, y por debajo donde pasa por debajo. { $inside ->
        [bottom] En las { -pins } { -of-bottom } gira por dentro de sus bucles; en las { -of-top }, por fuera.
       *[top] En las { -pins } { -of-top } gira por dentro de sus bucles; en las { -of-bottom }, por fuera.
    } { -hold-again }

follow-say-brief = { $pass ->
        [2] Segunda pasada.
        [3] Tercera pasada.
        [4] Cuarta pasada.
        [5] Quinta pasada.
        [6] Sexta pasada.
        [7] Séptima pasada.
        [8] Octava pasada.
       *[9] Novena pasada.
    } { $strands ->
        [one] { "" }
       *[other] Hebra { $strand } de { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Cabo «{ $cord }», cola de { $tail }.
           *[no] Cabo añadido, cola de { $tail }.
        }
       *[no] { "" }
    } Desde la { -pin } { $pin } { -of-bottom }, sigue por el { $lane ->
        [top] { -side-top }.
       *[bottom] { -side-bottom }.
    } { $inside ->
        [bottom] Por dentro { -at-bottom }, por fuera { -at-top }.
       *[top] Por dentro { -at-top }, por fuera { -at-bottom }.
    } { -hold-again-short }

follow-say-teach = { $pass ->
        [2] Segunda pasada.
        [3] Tercera pasada.
        [4] Cuarta pasada.
        [5] Quinta pasada.
        [6] Sexta pasada.
        [7] Séptima pasada.
        [8] Octava pasada.
       *[9] Novena pasada.
    } { $strands ->
        [one] { "" }
       *[other] Hebra { $strand } de { $strands }.
    } { $pass ->
        [2] { $strand ->
            [1] Una pasada es un recorrido del cabo por todo el dibujo; a partir de aquí, el cabo sigue al primero.
           *[other] { "" }
        }
       *[other] { "" }
    } { $added ->
        [yes] { $named ->
            [yes] Toma el cabo «{ $cord }», y deja una cola de { $tail }. { $apart ->
                [yes] Empieza en una { -pin } propia, para que los chicotes no salgan todos en el mismo sitio: empieza
               *[no] Empieza
            }
           *[no] Toma el cabo añadido, y deja una cola de { $tail }. { $apart ->
                [yes] Empieza en una { -pin } propia, para que los chicotes no salgan todos en el mismo sitio: empieza
               *[no] Empieza
            }
        }
       *[no] { $strands ->
            [one] El mismo cabo continúa. Empieza
           *[other] { $named ->
                [yes] Vuelve a tomar el cabo «{ $cord }». Empieza
               *[no] Toma otra vez el de la hebra { $strand }. Empieza
            }
        }
    } en la { -pin } { $pin } { -of-bottom }, junto { $own ->
        [yes] a su propia pasada guía
       *[no] al primer cabo
    }, y ve siempre { $lane ->
        [top] { -lane-top }
       *[bottom] { -lane-bottom }
    }{ $pass ->
        [2] { "" }
       *[other] , más allá de todos los cabos que ya hay
    }, sin cambiar de lado. Pasa por encima donde él pasa por encima, y por debajo donde pasa por debajo. { $inside ->
        [bottom] En las { -pins } { -of-bottom } gira por dentro de su bucle, { -towards-the-middle }; en las { -of-top }, por fuera.
       *[top] En las { -pins } { -of-top } gira por dentro de su bucle, { -towards-the-middle }; en las { -of-bottom }, por fuera.
    } { -hold-again }

# Ejemplo: Sigue por el lado del pie
follow-show = { $lane ->
        [top] Sigue por el { -side-top }
       *[bottom] Sigue por el { -side-bottom }
    }

# Ejemplo: Desde la 1 del pie. Por dentro en la cabeza, por fuera en el pie.
follow-show-note = { $added ->
        [yes] { $named ->
            [yes] Cabo «{ $cord }», con una cola.
           *[no] Cabo añadido, con una cola.
        }
       *[no] { "" }
    } { $inside ->
        [bottom] Desde la { $pin } { -of-bottom }. Por dentro { -at-bottom }, por fuera { -at-top }.
       *[top] Desde la { $pin } { -of-bottom }. Por dentro { -at-top }, por fuera { -at-bottom }.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Ejemplo: Tramo 7. De la clavija 4 del pie, sube hacia la derecha a la 6 de la cabeza.
# Ejemplo: Pasada 2, hebra 2, tramo 4, del lado del pie. De la clavija 2 de la cabeza, baja a la
# 5 del pie.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Tramo { $leg }
           *[other] Hebra { $strand }{ $named ->
                [yes] , «{ $cord }»
               *[no] { "" }
            }, tramo { $leg }
        }
       *[other] Pasada { $pass }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }, tramo { $leg }
    }{ $parts ->
        [one] { "" }
       *[other] , parte { $part } de { $parts }
    }{ $lane ->
        [bottom] , { -lane-bottom }.
        [top] , { -lane-top }.
        [bottom-own] , { -lane-bottom }.
        [top-own] , { -lane-top }.
       *[none] .
    } { $heading ->
        [falling] De la { -pin } { $from } { -of-top }, { -down }
       *[rising] De la { -pin } { $from } { -of-bottom }, { -up }
    }{ $lane ->
        [none] { " " }hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }
       *[other] { "" }
    }{ $turns ->
        [0] { "" }
        [one] , dando { -one-turn },
        [2] , dando dos { -turns },
       *[other] , dando { $turns } { -turns },
    } a la { $to } { $heading ->
        [falling] { -of-bottom }.
       *[rising] { -of-top }.
    }

# The same, brief.
# Ejemplo: Tramo 7. Pie 4, sube a cabeza 6.
lay-say-way-brief = { $pass ->
        [1] { $strands ->
            [one] Tramo { $leg }
           *[other] Hebra { $strand }, tramo { $leg }
        }
       *[other] Pasada { $pass }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }, tramo { $leg }
    }{ $parts ->
        [one] .
       *[other] , parte { $part } de { $parts }.
    } { $heading ->
        [falling] { -Top } { $from }, { -down-to-bottom } { $to }
       *[rising] { -Bottom } { $from }, { -up-to-top } { $to }
    }{ $turns ->
        [0] { "" }
        [one] , una vuelta
        [2] , dos vueltas
       *[other] , { $turns } vueltas
    }.

# Ejemplo: Tramo 1. Un tramo es el cabo de una clavija a otra del otro borde. De la
# clavija 1 del pie, sube hacia la derecha a la 3 de la cabeza.
lay-say-way-teach = { $pass ->
        [1] { $strands ->
            [one] Tramo { $leg }
           *[other] Hebra { $strand }{ $named ->
                [yes] , «{ $cord }»
               *[no] { "" }
            }, tramo { $leg }
        }
       *[other] Pasada { $pass }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }, tramo { $leg }
    }{ $parts ->
        [one] { "" }
       *[other] , parte { $part } de { $parts }
    }{ $lane ->
        [bottom] , { -lane-bottom }.
        [top] , { -lane-top }.
        [bottom-own] , { -lane-bottom }.
        [top-own] , { -lane-top }.
       *[none] .
    } { $first ->
        [yes] Un tramo es el cabo de una { -pin } a otra del otro borde.
       *[no] { "" }
    } { $heading ->
        [falling] De la { -pin } { $from } { -of-top }, { -down }
       *[rising] De la { -pin } { $from } { -of-bottom }, { -up }
    }{ $lane ->
        [none] { " " }hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }
       *[other] { "" }
    }{ $turns ->
        [0] { "" }
        [one] , dando { -one-turn },
        [2] , dando dos { -turns },
       *[other] , dando { $turns } { -turns },
    } a la { $to } { $heading ->
        [falling] { -of-bottom }.
       *[rising] { -of-top }.
    }

# The beginning of a later part of a long leg: which leg, and where the cord is now.
# Ejemplo: Tramo 11, parte 2 de 5. Subes hacia la derecha, de la clavija 2 del pie a la 4 de la cabeza.
# Llevas un cuarto, tras la 3 del pie. Tras una vuelta, las vueltas y la clavija lo dicen.
# $share: little, quarter, third, half, two-thirds, three-quarters, most. $past: number of the
# pin it has just passed, $rim: bottom or top, or none while that is where the leg began or where it is to land. $made: whole turns made on this leg so far.
lay-say-way-on = { $pass ->
        [1] { $strands ->
            [one] Tramo { $leg }
           *[other] Hebra { $strand }, tramo { $leg }
        }
       *[other] Pasada { $pass }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }, tramo { $leg }
    }, parte { $part } de { $parts }{ $lane ->
        [bottom] , { -lane-bottom }.
        [top] , { -lane-top }.
        [bottom-own] , { -lane-bottom }.
        [top-own] , { -lane-top }.
       *[none] .
    } { $heading ->
        [falling] { -Going-down }
       *[rising] { -Going-up }
    }{ $lane ->
        [none] { " " }hacia la { $hand ->
            [left] izquierda,
           *[right] derecha,
        }
       *[other] { "" }
    } { $heading ->
        [falling] de la { -pin } { $from } { -of-top } a la { $to } { -of-bottom }.
       *[rising] de la { -pin } { $from } { -of-bottom } a la { $to } { -of-top }.
    } Llevas { $made ->
        [0] { $share ->
            [little] un poco
            [quarter] un cuarto
            [third] un tercio
            [half] la mitad
            [two-thirds] dos tercios
            [three-quarters] tres cuartos
           *[most] casi todo
        }
        [one] { -one-turn }
        [2] dos { -turns }
       *[other] { $made } { -turns }
    }{ $rim ->
        [none] { "" }
        [top] , tras la { $past } { -of-top }
       *[bottom] , tras la { $past } { -of-bottom }
    }.

# Ejemplo: Tramo 11, parte 2 de 5. Pie 2, sube a la cabeza 4, tras el pie 3.
lay-say-way-on-brief = { $pass ->
        [1] { $strands ->
            [one] Tramo { $leg }
           *[other] Hebra { $strand }, tramo { $leg }
        }
       *[other] Pasada { $pass }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }, tramo { $leg }
    }{ $parts ->
        [one] .
       *[other] , parte { $part } de { $parts }.
    } { $heading ->
        [falling] { -Top } { $from }, { -down-to-bottom } { $to }
       *[rising] { -Bottom } { $from }, { -up-to-top } { $to }
    }{ $rim ->
        [none] { "" }
        [top] , tras { -the-top } { $past }
       *[bottom] , tras { -the-bottom } { $past }
    }.

# The same, for who learns.
lay-say-way-on-teach = { $pass ->
        [1] { $strands ->
            [one] Tramo { $leg }
           *[other] Hebra { $strand }, tramo { $leg }
        }
       *[other] Pasada { $pass }{ $strands ->
            [one] { "" }
           *[other] , hebra { $strand }
        }, tramo { $leg }
    }, parte { $part } de { $parts }{ $lane ->
        [bottom] , { -lane-bottom }.
        [top] , { -lane-top }.
        [bottom-own] , { -lane-bottom }.
        [top-own] , { -lane-top }.
       *[none] .
    } { $heading ->
        [falling] { -Going-down }
       *[rising] { -Going-up }
    }{ $lane ->
        [none] { " " }hacia la { $hand ->
            [left] izquierda,
           *[right] derecha,
        }
       *[other] { "" }
    } { $heading ->
        [falling] de la { -pin } { $from } { -of-top } a la { $to } { -of-bottom }.
       *[rising] de la { -pin } { $from } { -of-bottom } a la { $to } { -of-top }.
    } Llevas { $made ->
        [0] { $share ->
            [little] un poco
            [quarter] un cuarto
            [third] un tercio
            [half] la mitad
            [two-thirds] dos tercios
            [three-quarters] tres cuartos
           *[most] casi todo
        }
        [one] { -one-turn }
        [2] dos { -turns }
       *[other] { $made } { -turns }
    }{ $rim ->
        [none] { "" }
        [top] , tras la { $past } { -of-top }
       *[bottom] , tras la { $past } { -of-bottom }
    }.

# One crossing; those of a step are said one after the other.
# Ejemplo: Encima de un cabo, debajo de 2.
# $place: only, first, next or last of the step. $over: yes or no. $cords: cords lying there.
lay-say-crossing = { $place ->
        [only] { $over ->
            [yes] Encima de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }.
           *[no] Debajo de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }.
        }
        [first] { $over ->
            [yes] Encima de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            },
           *[no] Debajo de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            },
        }
        [last] { $over ->
            [yes] encima de { $cords ->
                [one] uno
               *[other] { $cords }
            }.
           *[no] debajo de { $cords ->
                [one] uno
               *[other] { $cords }
            }.
        }
       *[next] { $over ->
            [yes] encima de { $cords ->
                [one] uno
               *[other] { $cords }
            },
           *[no] debajo de { $cords ->
                [one] uno
               *[other] { $cords }
            },
        }
    }

# Ejemplo: Encima, debajo 2, encima.
# One cord is not counted: more are.
lay-say-crossing-brief = { $place ->
        [only] { $over ->
            [yes] { $cords ->
                [one] Encima.
               *[other] Encima { $cords }.
            }
           *[no] { $cords ->
                [one] Debajo.
               *[other] Debajo { $cords }.
            }
        }
        [first] { $over ->
            [yes] { $cords ->
                [one] Encima,
               *[other] Encima { $cords },
            }
           *[no] { $cords ->
                [one] Debajo,
               *[other] Debajo { $cords },
            }
        }
        [last] { $over ->
            [yes] { $cords ->
                [one] encima.
               *[other] encima { $cords }.
            }
           *[no] { $cords ->
                [one] debajo.
               *[other] debajo { $cords }.
            }
        }
       *[next] { $over ->
            [yes] { $cords ->
                [one] encima,
               *[other] encima { $cords },
            }
           *[no] { $cords ->
                [one] debajo,
               *[other] debajo { $cords },
            }
        }
    }

# A crossing with the cord that is met, by its pins.
# Ejemplo: Debajo de un cabo: levántalo y mete el tuyo.
# $new: yes at the first over and the first under of the tie.
lay-say-crossing-teach = { $over ->
        [yes] Encima de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }{ $new ->
            [yes] : el tuyo queda a la vista.
           *[no] .
        }
       *[no] Debajo de { $cords ->
                [one] un cabo
               *[other] { $cords } cabos
            }{ $new ->
            [yes] : levántalo y mete el tuyo.
           *[no] .
        }
    }

# A leg that meets no cord.
lay-say-clear = Aún no hay nada que cruzar.
lay-say-clear-brief = Nada que cruzar.
lay-say-clear-teach = Aún no hay nada que cruzar.

# How a lay step ends. $landing: on-the-way, round, inside or outside; at the pin where the pass
# began home-and-on, home-to-wait (other strands come first) or home-to-end (the cord ends).
# Ejemplo: Rodea la clavija 6 de la cabeza.
# Ejemplo: Por fuera del bucle.
lay-say-landing = { $landing ->
        [on-the-way] Sujeta ahí tu cabo.
        [inside] Por dentro del bucle.
        [outside] Por fuera del bucle.
        [home-and-on] De vuelta al principio: encima de la cola, y sigue.
        [home-to-wait] De vuelta al principio: fíjalo con cinta.
        [home-to-end] De vuelta al principio: deja colgar el extremo.
       *[round] { $heading ->
            [falling] { -Then-round } la { -pin } { $to } { -of-bottom }.
           *[rising] { -Then-round } la { -pin } { $to } { -of-top }.
        }
    }

# Ejemplo: Por dentro.
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Por dentro.
        [outside] Por fuera.
        [home-and-on] Al principio: sobre la cola.
        [home-to-wait] Al principio: pégalo.
        [home-to-end] Al principio: fin.
       *[round] { "" }
    }

lay-say-landing-teach = { $landing ->
        [on-the-way] Sujeta ahí tu cabo.
        [inside] Por dentro del bucle.
        [outside] Por fuera del bucle.
        [home-and-on] De vuelta al principio: encima de la cola, y sigue.
        [home-to-wait] De vuelta al principio: fíjalo con cinta.
        [home-to-end] De vuelta al principio: deja colgar el extremo.
       *[round] { $heading ->
            [falling] { -Then-round } la { -pin } { $to } { -of-bottom }.
           *[rising] { -Then-round } la { -pin } { $to } { -of-top }.
        }
    }

# The arrow is the way the cord goes. Ejemplo: De la 4 del pie, sube a la 6 de la cabeza ↗
lay-show = { $heading ->
        [falling] De la { $from } { -of-top }, { -down } a la { $to } { -of-bottom } { $hand ->
            [left] ↙
           *[right] ↘
        }
       *[rising] De la { $from } { -of-bottom }, { -up } a la { $to } { -of-top } { $hand ->
            [left] ↖
           *[right] ↗
        }
    }

# The same in words alone, for a line that is read by a Braille display or a screen reader.
# Ejemplo: De la 4 del pie, sube hacia la derecha a la 6 de la cabeza
lay-print = { $heading ->
        [falling] De la { $from } { -of-top }, { -down } { $hand ->
            [left] hacia la izquierda
           *[right] hacia la derecha
        } a la { $to } { -of-bottom }
       *[rising] De la { $from } { -of-bottom }, { -up } { $hand ->
            [left] hacia la izquierda
           *[right] hacia la derecha
        } a la { $to } { -of-top }
    }

# One crossing as a word that differs in shape for over and under.
# Ejemplo: ENCIMA 1
# Ejemplo: debajo 2
lay-show-crossing = { $over ->
        [yes] ENCIMA { $cords }
       *[no] debajo { $cords }
    }

# The one crossing that who learns makes now, large on the screen, and how it is made.
# Ejemplo: ENCIMA de un cabo
lay-one = { $over ->
        [yes] ENCIMA de { $cords ->
            [one] un cabo
           *[other] { $cords } cabos
        }
       *[no] DEBAJO de { $cords ->
            [one] un cabo
           *[other] { $cords } cabos
        }
    }

lay-one-note = { $over ->
        [yes] El tuyo queda a la vista
       *[no] Levanta { -with-the-pick } y mete tu extremo
    }

lay-show-clear = Aún nada que cruzar

# What else the screen says of a lay step.
# Ejemplo: Cerca de la mitad de la subida, justo tras la 3 del pie
# $part, $share, $rim, $past, $made as for lay-say-way-on.
lay-show-note-on = { $share ->
        [little] Desde un poco
        [quarter] Desde cerca de un cuarto
        [third] Desde cerca de un tercio
        [half] Desde cerca de la mitad
        [two-thirds] Desde cerca de dos tercios
        [three-quarters] Desde cerca de tres cuartos
       *[most] Desde la mayor parte
    } { $heading ->
        [falling] { -of-the-way-down }
       *[rising] { -of-the-way-up }
    }{ $rim ->
        [none] { "" }
        [top] , justo tras la { $past } { -of-top }
       *[bottom] , justo tras la { $past } { -of-bottom }
    }{ $made ->
        [0] { "" }
       *[other] , { $made } de { $turns } vueltas
    }

# The side of the cord on which a follower lies. $lane: bottom, top, or the same of its own lead pass.
lay-show-lane = { $lane ->
        [bottom] Por el { -side-bottom }
        [top] Por el { -side-top }
        [bottom-own] Por el { -side-bottom } de su propia pasada guía
       *[top-own] Por el { -side-top } de su propia pasada guía
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $part ->
            [1] { $turns ->
                [0] Luego sujeta tu cabo donde está
                [one] { -One-turn } en total. Luego sujeta tu cabo donde está
                [2] Dos { -turns } en total. Luego sujeta tu cabo donde está
               *[other] { $turns } { -turns } en total. Luego sujeta tu cabo donde está
            }
           *[other] Luego sujeta tu cabo donde está
        }
        [inside] { $heading ->
            [falling] Por dentro del bucle, en la { $to } { -of-bottom }
           *[rising] Por dentro del bucle, en la { $to } { -of-top }
        }{ -taped-over }
        [outside] { $heading ->
            [falling] Por fuera del bucle, en la { $to } { -of-bottom }
           *[rising] Por fuera del bucle, en la { $to } { -of-top }
        }{ -taped-over }
        [home-and-on] De vuelta al principio: por encima de la cola, y sigue por la { $to } { -of-bottom }
        [home-to-wait] De vuelta al principio: sujétalo con cinta en la { $to } { -of-bottom }
        [home-to-end] De vuelta al principio: deja colgar el extremo en la { $to } { -of-bottom }
       *[round] { $heading ->
            [falling] { -Then-round } la { $to } { -of-bottom }
           *[rising] { -Then-round } la { $to } { -of-top }
        }
    }

## The line above a step

# Ejemplo: Pasada guía, tramo 7 de 12
# $phase: begin, lay, check, lift, fair or finish. $item of $items: things to do in lift and
# finish; rounds in fair.
phase-show = { $phase ->
        [lift] { -Lifting }, { $item } de { $items }
        [fair] Igualar, { $item } de { $items }{ $whole ->
            [yes] { "" }
           *[no] { $passes ->
                [one] { "" }
               *[other] , pasada { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , hebra { $strand }
            }, tramo { $leg } de { $legs }
        }
        [finish] Rematar, { $item } de { $items }
       *[other] { $pass ->
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
           *[other] , hebra { $strand } de { $strands }
        }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }{ $phase ->
            [begin] , empezar
            [check] , mirar
           *[lay] , tramo { $leg } de { $legs }{ $parts ->
                [one] { "" }
               *[other] , parte { $part } de { $parts }
            }
        }
    }

## How many steps there are of each kind, a line each, in the terminal

# $kind: a kind of step by its name in the JSON document, or all of them together. One word.
steps-kind = { $kind ->
        [kit] reunir
        [rig] aparejar
        [begin] empezar
        [follow] seguir
        [lay] tender
        [check] mirar
        [lift] sacar
        [fair] igualar
        [finish] rematar
       *[all] todo
    }
