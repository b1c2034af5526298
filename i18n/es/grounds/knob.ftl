# Hecho en su sitio, en una bola o un pomo: marcas en lugar de clavijas.

-before-lifting = Antes de quitar las cintas,
-being-rigged = Estás poniendo las marcas:
-how-to-stand = Ten la bola con las marcas del pie hacia el suelo, y mírala de frente.
-laid-and-lifted = Todo está tendido y sin cintas;
-Lifting = Quitar
-on-the-tube = en la bola
-on-the-tube-side = del lado de la bola
-once-they-are-gone = sin las marcas,
-One-turn = Una vuelta a la bola
-one-turn = una vuelta a la bola
-Pin = Marca
-pin = marca
-pins = marcas
-planned-so = planeado con su bola y su cabo.
-to-be-lifted = falta quitar las cintas.
-tube-is-empty = no hay nada tendido.
-turn-it-round = Gira la bola una vuelta entera
-turns = vueltas a la bola
-upright = Marcas del pie hacia el suelo.
-upright-shown = Marcas del pie hacia el suelo, cola sujeta con cinta.
-work-left = Trabajas hacia la izquierda alrededor de la bola, y así se numeran las marcas.
-work-right = Trabajas hacia la derecha alrededor de la bola, y así se numeran las marcas.

## Rigging

rig-strip-say = { $rim ->
        [top] Pega otra cinta a { $spacing } más arriba, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-top }. { $shift ->
            [none] La marca 1 { -of-top } queda { -in-line-with } la marca 1 { -of-bottom }.
           *[other] La marca 1 { -of-top } queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la marca 1 { -of-bottom }, a medio camino de la 2.
        }
       *[bottom] Pega cinta una vuelta entera alrededor de la parte baja de la bola, { $length } de ella, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-bottom }.
    }
rig-strip-say-brief = { $rim ->
        [top] Pega otra cinta a { $spacing } más arriba, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-top }. { $shift ->
            [none] La marca 1 { -of-top } queda { -in-line-with } la marca 1 { -of-bottom }.
           *[other] La marca 1 { -of-top } queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la marca 1 { -of-bottom }, a medio camino de la 2.
        }
       *[bottom] Pega cinta una vuelta entera alrededor de la parte baja de la bola, { $length } de ella, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-bottom }.
    }
rig-strip-say-teach = { $rim ->
        [top] Pega otra cinta a { $spacing } más arriba, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-top }. { $shift ->
            [none] La marca 1 { -of-top } queda { -in-line-with } la marca 1 { -of-bottom }.
           *[other] La marca 1 { -of-top } queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la marca 1 { -of-bottom }, a medio camino de la 2.
        }
       *[bottom] Pega cinta una vuelta entera alrededor de la parte baja de la bola, { $length } de ella, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-bottom }.
    } La cinta da justo una vuelta, así que sus marcas quedan a distancias iguales.
rig-strip-show = { $rim ->
        [top] Marcas { -of-top }, a { $spacing }
       *[bottom] Marcas { -of-bottom } cada { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] En línea con las otras, cada { $pitch }
           *[other] Al tresbolillo: { $shift } más a la { $hand ->
                [left] izquierda
               *[right] derecha
            }, cada { $pitch }
        }
       *[bottom] { $pins } marcas en una cinta de { $length }
    }
rig-number-say = Numera las marcas en las cintas del 1 al { $pins } hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }, igual en las dos.
rig-number-say-brief = Numera las marcas en las cintas del 1 al { $pins } hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }, igual en las dos.
rig-number-say-teach = Numera las marcas en las cintas del 1 al { $pins } hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }, igual en las dos. Cada paso llama a las marcas por esos números.
rig-number-show = Numera las marcas del 1 al { $pins }
rig-number-note = Hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }, igual en las dos cintas
kit-tape-say-teach = Necesitas, { $number } de { $items }: cinta de enmascarar, { $tape } y algo más de reserva. Pulsa siguiente cuando la tengas. Sujeta la cola y lleva las marcas con sus números.
kit-tool-say-teach = Necesitas, { $number } de { $items }: { $tool ->
        [marker] un rotulador o marcador que escriba sobre cinta. Pulsa siguiente cuando lo tengas. Con él haces las marcas.
        [ruler] una regla. Pulsa siguiente cuando la tengas. Con ella mides el cabo, y dónde van las marcas.
        [blade] un cuchillo bien afilado, o tijeras. Pulsa siguiente cuando lo tengas. Con él cortas el cabo y, al final, sus chicotes.
        [dish] un plato para lo que sobra. Pulsa siguiente cuando lo tengas.
       *[sealing] un encendedor si el cabo se funde, o pegamento si es de fibra natural. Pulsa siguiente cuando lo tengas. Así no se deshilachan los chicotes.
    }
