# Alrededor de la mano: los cuatro dedos de la mano que sostiene hacen de tubo, con la palma hacia quien teje. El lado
# de la muñeca es el borde del pie, el de las yemas el de la cabeza; cada seno tiene su dedo. Se dice «curva», pues
# «seno» pediría otro género en cada frase.

-at-bottom = en la muñeca
-at-top = en las yemas
-Back-down = Vuelve a bajar
-Back-up = Vuelve a subir
-Bottom = Muñeca
-card-left = Trabaja hacia la izquierda alrededor de la mano; los bucles se numeran en ese sentido.
-card-right = Trabaja hacia la derecha alrededor de la mano; los bucles se numeran en ese sentido.
-down-to-bottom = baja a la muñeca
-coming-off = Saliendo de la mano
-from-the-bottom = desde la muñeca
-in-line-with = a la altura de
-laid-and-lifted = Todo está tendido y fuera de la mano;
-lane-bottom = del lado de la muñeca
-lane-top = del lado de las yemas
-Lifting = Sacar
-of-bottom = de la muñeca
-of-top = de las yemas
-on-the-tube = en la mano
-on-the-tube-side = del lado de los dedos
-once-they-are-gone = fuera de la mano,
-One-turn = Una vuelta a la mano
-one-turn = una vuelta a la mano
-Pin = Curva
-pin = curva
-pins = curvas
-side-bottom = lado de la muñeca
-side-top = lado de las yemas
-straight-above = justo a su altura
-the-bottom = la muñeca
-the-top = las yemas
-to-be-lifted = falta sacar el nudo de la mano.
-Top = Yemas
-tube-is-empty = no hay nada tendido.
-turn-it-round = Gira la mano una vuelta entera
-turns = vueltas a la mano
-up-to-top = sube a las yemas
-with-the-pick = con la punta de un dedo

## Beginning

begin-say = { $named ->
        [yes] Toma el cabo «{ $cord }».
       *[no] { "" }
    } { $hand ->
        [left] Levanta la mano derecha
       *[right] Levanta la mano izquierda
    }, con la palma hacia ti y los dedos juntos. Pon el cabo en la raíz de los dedos, { $place }, deja colgar una cola de { $tail } y sujétala con el pulgar. { $hand ->
        [left] Teje la mano izquierda.
       *[right] Teje la mano derecha.
    } El cabo cruza por delante hasta el meñique, por detrás hasta el índice, y así sigue alrededor. Déjalo tan flojo que quepa otro dedo debajo. Las curvas de la muñeca quedan en la raíz de los dedos, y las de las yemas, en sus nudillos de en medio; se cuentan desde la cola, hacia donde va el cabo. { $uneven ->
        [yes] Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }
begin-say-brief = { $named ->
        [yes] Cabo «{ $cord }».
       *[no] { "" }
    } { $hand ->
        [left] Mano derecha arriba
       *[right] Mano izquierda arriba
    }, la palma hacia ti. Cola de { $tail } bajo el pulgar, { $place }. Por delante y luego por detrás. Déjalo flojo.
begin-say-teach = { $named ->
        [yes] Toma el cabo «{ $cord }».
       *[no] { "" }
    } { $hand ->
        [left] Levanta la mano derecha
       *[right] Levanta la mano izquierda
    }, con la palma hacia ti y los dedos juntos. Pon el cabo en la raíz de los dedos, { $place }, deja colgar una cola de { $tail } y sujétala con el pulgar. { $hand ->
        [left] Teje la mano izquierda.
       *[right] Teje la mano derecha.
    } El cabo cruza por delante hasta el meñique, por detrás hasta el índice, y así sigue alrededor. Déjalo tan flojo que quepa otro dedo debajo. Las curvas de la muñeca quedan en la raíz de los dedos, y las de las yemas, en sus nudillos de en medio; se cuentan desde la cola, hacia donde va el cabo. Delante es el lado de la palma. La cola se queda atrás; con el otro extremo se teje. { $uneven ->
        [yes] Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }
begin-show = Cola de { $tail } bajo el pulgar
begin-show-note = { $named ->
        [yes] Cabo «{ $cord }».
       *[no] { "" }
    } { $hand ->
        [left] Mano derecha arriba, la palma hacia ti.
       *[right] Mano izquierda arriba, la palma hacia ti.
    } En la raíz de los dedos, { $place }. Déjalo flojo. { $uneven ->
        [yes] Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }

## A leg

lay-say-way = { $pass ->
        [1] Tramo { $leg }
       *[other] Pasada { $pass }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }, tramo { $leg }
    }{ $parts ->
        [one] .
       *[other] , parte { $part } de { $parts }.
    } { $heading ->
        [falling] De la curva { $from } de las yemas, { $from-place }, hacia la muñeca
       *[rising] De la curva { $from } de la muñeca, { $from-place }, hacia las yemas
    }{ $lane ->
        [bottom] , del lado de la muñeca del primer cabo
        [top] , del lado de las yemas del primer cabo
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , a la curva { $to } de la muñeca, { $to-place }.
       *[rising] , a la curva { $to } de las yemas, { $to-place }.
    } { $view }
lay-say-way-brief = { $pass ->
        [1] Tramo { $leg }
       *[other] Pasada { $pass }, tramo { $leg }
    }{ $parts ->
        [one] .
       *[other] , parte { $part } de { $parts }.
    } { $heading ->
        [falling] Curva { $from } de las yemas, { $from-place }
       *[rising] Curva { $from } de la muñeca, { $from-place }
    }, { $way }{ $heading ->
        [falling] , a la curva { $to } de la muñeca, { $to-place }.
       *[rising] , a la curva { $to } de las yemas, { $to-place }.
    }
lay-say-way-teach = { $pass ->
        [1] Tramo { $leg }
       *[other] Pasada { $pass }{ $named ->
            [yes] , «{ $cord }»
           *[no] { "" }
        }, tramo { $leg }
    }{ $parts ->
        [one] .
       *[other] , parte { $part } de { $parts }.
    } { $first ->
        [yes] Un tramo es el cabo de una curva de un lado a una curva del otro.
       *[no] { "" }
    } { $heading ->
        [falling] De la curva { $from } de las yemas, { $from-place }, hacia la muñeca
       *[rising] De la curva { $from } de la muñeca, { $from-place }, hacia las yemas
    }{ $lane ->
        [bottom] , del lado de la muñeca del primer cabo
        [top] , del lado de las yemas del primer cabo
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , a la curva { $to } de la muñeca, { $to-place }.
       *[rising] , a la curva { $to } de las yemas, { $to-place }.
    } { $view }
lay-say-way-on = { $pass ->
        [1] Tramo { $leg }
       *[other] Pasada { $pass }, tramo { $leg }
    }, parte { $part } de { $parts }, { $heading ->
        [falling] de la curva { $from } de las yemas, hacia la muñeca
       *[rising] de la curva { $from } de la muñeca, hacia las yemas
    }{ $lane ->
        [bottom] , del lado de la muñeca del primer cabo
        [top] , del lado de las yemas del primer cabo
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , a la curva { $to } de la muñeca, { $to-place }.
       *[rising] , a la curva { $to } de las yemas, { $to-place }.
    } Llevas { $share ->
        [little] un poco
        [quarter] un cuarto
        [third] un tercio
        [half] la mitad
        [two-thirds] dos tercios
        [three-quarters] tres cuartos
       *[most] casi todo
    }.
lay-say-way-on-brief = { $pass ->
        [1] Tramo { $leg }
       *[other] Pasada { $pass }, tramo { $leg }
    }{ $parts ->
        [one] .
       *[other] , parte { $part } de { $parts }.
    } { $heading ->
        [falling] Curva { $from } de las yemas, { $from-place }
       *[rising] Curva { $from } de la muñeca, { $from-place }
    }, { $way }{ $heading ->
        [falling] , a la curva { $to } de la muñeca, { $to-place }.
       *[rising] , a la curva { $to } de las yemas, { $to-place }.
    }
lay-say-way-on-teach = { $pass ->
        [1] Tramo { $leg }
       *[other] Pasada { $pass }, tramo { $leg }
    }, parte { $part } de { $parts }, { $heading ->
        [falling] de la curva { $from } de las yemas, hacia la muñeca
       *[rising] de la curva { $from } de la muñeca, hacia las yemas
    }{ $lane ->
        [bottom] , del lado de la muñeca del primer cabo
        [top] , del lado de las yemas del primer cabo
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , a la curva { $to } de la muñeca, { $to-place }.
       *[rising] , a la curva { $to } de las yemas, { $to-place }.
    } Llevas { $share ->
        [little] un poco
        [quarter] un cuarto
        [third] un tercio
        [half] la mitad
        [two-thirds] dos tercios
        [three-quarters] tres cuartos
       *[most] casi todo
    }.
lay-say-landing = { $landing ->
        [on-the-way] Sujeta ahí tu cabo.
        [inside] Por dentro del bucle.
        [outside] Por fuera del bucle.
        [home-and-on] De vuelta al principio: encima de la cola, y sigue.
        [home-to-wait] De vuelta al principio: sujétalo ahí.
        [home-to-end] De vuelta al principio: deja colgar el extremo.
       *[round] { $heading ->
            [falling] Luego otra vez hacia las yemas.
           *[rising] Luego otra vez hacia la muñeca.
        }
    }
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Por dentro.
        [outside] Por fuera.
        [home-and-on] Al principio: sobre la cola.
        [home-to-wait] Al principio: sujétalo.
        [home-to-end] Al principio: fin.
       *[round] { "" }
    }
lay-say-landing-teach = { $landing ->
        [on-the-way] Sujeta ahí tu cabo.
        [inside] Por dentro del bucle.
        [outside] Por fuera del bucle.
        [home-and-on] De vuelta al principio: encima de la cola, y sigue.
        [home-to-wait] De vuelta al principio: sujétalo ahí.
        [home-to-end] De vuelta al principio: deja colgar el extremo.
       *[round] { $heading ->
            [falling] Luego otra vez hacia las yemas.
           *[rising] Luego otra vez hacia la muñeca.
        }
    }
lay-show = { $heading ->
        [falling] Yemas { $from }, { $from-place }, a muñeca { $to }, { $to-place }
       *[rising] Muñeca { $from }, { $from-place }, a yemas { $to }, { $to-place }
    }
lay-print = { $heading ->
        [falling] Yemas { $from }, { $from-place }, { $way }, a muñeca { $to }, { $to-place }
       *[rising] Muñeca { $from }, { $from-place }, { $way }, a yemas { $to }, { $to-place }
    }
lay-show-note-on = { $share ->
        [little] Desde un poco del camino
        [quarter] Desde cerca de un cuarto del camino
        [third] Desde cerca de un tercio del camino
        [half] Desde cerca de la mitad del camino
        [two-thirds] Desde cerca de dos tercios del camino
        [three-quarters] Desde cerca de tres cuartos del camino
       *[most] Desde la mayor parte del camino
    }
lay-show-note = { $landing ->
        [on-the-way] Luego sujeta tu cabo donde está
        [inside] Por dentro del bucle
        [outside] Por fuera del bucle
        [home-and-on] De vuelta al principio: por encima de la cola, y sigue
        [home-to-wait] De vuelta al principio: sujétalo ahí
        [home-to-end] De vuelta al principio: deja colgar el extremo
       *[round] { $heading ->
            [falling] Otra vez hacia las yemas
           *[rising] Otra vez hacia la muñeca
        }
    }

## Off the hand

lift-say = { $task ->
        [secure] Todo está tendido. Antes de sacar el nudo, marca el seno 1 de la muñeca, donde está la cola, con un trocito de cinta, y comprueba que { $ends ->
            [2] ninguno de los 2 chicotes
           *[other] ninguno de los { $ends } chicotes
        } puede escurrirse hacia dentro: basta un nudo flojo en cada uno.
       *[slip-off] Saca el nudo de los dedos y pásalo al objeto sin voltearlo. Gíralo hasta que los chicotes salgan donde quieras.
    }
lift-say-brief = { $task ->
        [secure] Marca el seno 1 de la muñeca, asegura los { $ends } chicotes.
       *[slip-off] Pasa el nudo al objeto, sin voltearlo.
    }
lift-say-teach = { $task ->
        [secure] Todo está tendido. Antes de sacar el nudo, marca el seno 1 de la muñeca, donde está la cola, con un trocito de cinta: fuera de la mano todos los senos se parecen, y contarás desde ese. Comprueba que { $ends ->
            [2] ninguno de los 2 chicotes
           *[other] ninguno de los { $ends } chicotes
        } puede escurrirse hacia dentro: basta un nudo flojo en cada uno.
       *[slip-off] Saca el nudo de los dedos y pásalo al objeto sin voltearlo y sin que se retuerza. Está flojo, como debe ser. Gíralo hasta que los chicotes salgan donde quieras.
    }
lift-show = { $task ->
        [secure] Marca el seno 1 de la muñeca
       *[slip-off] Pasa el nudo al objeto
    }
lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Ninguno de los 2 chicotes debe escurrirse hacia dentro
           *[other] Ninguno de los { $ends } chicotes debe escurrirse hacia dentro
        }
       *[slip-off] Sin voltearlo, los chicotes donde quieras
    }
wrong-after = El nudo está saliendo de la mano y ya no se puede deshacer ningún tramo. Atrás retrocede un paso; H dice dónde estás.

## Cards

card-pins = No hay clavijas: { $pins } bucles quedan a cada lado de los dedos, { $staggered ->
        [yes] cada uno { -of-top } a medio camino entre dos { -of-bottom }: el 1 { -of-top }, medio paso más allá del 1 { -of-bottom }.
       *[no] cada uno { -of-top } a la par del { -of-bottom } de su mismo número.
    }
card-lift = Al sacarlo: marca con cinta el primer bucle { -of-bottom } y mira que no se meta ningún chicote. Saca el nudo de los dedos y pásalo al objeto, sin voltearlo.

## Asked how much cord is still to be laid

cord-left = En esta pasada { $legs ->
        [one] falta 1 tramo
       *[other] faltan { $legs } tramos
    }{ $ends ->
        [yes] , y ahí acaba este cabo.
       *[no] ; hasta el final de este cabo, { $all }.
    } En la mano no se mide ningún largo: cada pasada lleva tanto cabo como la primera.
