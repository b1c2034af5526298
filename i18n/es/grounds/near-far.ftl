# Hecho en su sitio, en una barandilla, un mango o algo cónico: dos tiras de cinta con marcas en lugar de clavijas. Se mira
# a lo largo: el cabo se lleva al fondo y se trae al lado de uno.

-all-through = Cada vez que pasa por debajo, pasa entero.
-at-bottom = en tu lado
-at-top = en el fondo
-Back-down = Vuelve
-Back-up = Vuelve
-before-lifting = Antes de quitar las cintas,
-being-rigged = Estás poniendo las marcas:
-Bottom = Tu lado
-card-left = Trabaja por encima hacia la izquierda; las marcas se numeran en ese sentido.
-card-right = Trabaja por encima hacia la derecha; las marcas se numeran en ese sentido.
-coming-off = Quitando las cintas
-down = tráelo
-down-to-bottom = tráelo a tu lado
-falling = hacia ti,
-falls = viene
-from-the-bottom = desde tu lado
-Going-down = Lo traes
-Going-up = Lo llevas
-hold-again = En cada marca despega antes la cinta, y vuelve a pegarla sobre todos los cabos que hay allí.
-hold-again-short = En cada marca, la cinta otra vez sobre todos los cabos.
-how-to-stand = Ponte en un extremo y mira a lo largo de lo que cubres: un lado queda junto a ti, y el otro en el fondo. En algo vertical, el lado junto a ti es el de abajo. En cada marca, un trocito de cinta de enmascarar por encima sujeta el seno.
-in-line-with = en línea con
-laid-and-lifted = Todo está tendido y sin cintas;
-lane-bottom = del lado tuyo
-lane-top = del lado del fondo
-Lifting = Quitar
-of-bottom = de tu lado
-of-the-way-down = del camino
-of-the-way-up = del camino
-of-top = del fondo
-on-the-tube = hasta ahora
-on-the-tube-side = por la cara de abajo
-once-they-are-gone = sin las marcas,
-One-turn = Una vuelta entera
-one-turn = una vuelta entera
-Pin = Marca
-pin = marca
-pins = marcas
-planned-so = planeado con sus medidas y su cabo.
-rises = va
-rising = hacia el fondo,
-side-bottom = lado tuyo
-side-top = lado del fondo
-straight-above = justo en línea con ella
-that-falls = que viene
-that-rise = que van
-that-rises = que va
-the-bottom = tu lado
-the-top = el fondo
-taped-over = , cinta sobre todos
-Then-round = Pégalo en
-to-be-lifted = falta quitar las cintas.
-Top = Fondo
-tops-staggered = el fondo, medio paso más.
-tops-straight = el fondo, en línea.
-tube-is-empty = no hay nada tendido.
-turn-it-round = Recórrelo una vuelta entera
-turns = vueltas enteras
-up = llévalo
-up-to-top = llévalo al fondo
-upright = Mira a lo largo. Pega cada seno en su marca.
-upright-shown = Mira a lo largo, cola y senos sujetos con cinta.
-whole-turn = una vuelta entera
-whole-turns = vueltas enteras
-work-left = Trabajas por encima hacia la izquierda, y así se numeran las marcas.
-work-right = Trabajas por encima hacia la derecha, y así se numeran las marcas.

## Rigging

rig-strip-say = { $rim ->
        [top] Pega otra cinta a { $spacing } hacia el fondo, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-top }. { $shift ->
            [none] La marca 1 { -of-top } queda { -in-line-with } la marca 1 { -of-bottom }.
           *[other] La marca 1 { -of-top } queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la marca 1 { -of-bottom }, a medio camino de la 2.
        }
       *[bottom] Pega cinta una vuelta entera en el extremo de tu lado, { $length } de ella, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-bottom }.
    } { $end ->
        [none] { "" }
        [thick] Este es el extremo grueso.
       *[thin] Este es el extremo delgado.
    }
rig-strip-say-brief = { $rim ->
        [top] Pega otra cinta a { $spacing } hacia el fondo, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-top }. { $shift ->
            [none] La marca 1 { -of-top } queda { -in-line-with } la marca 1 { -of-bottom }.
           *[other] La marca 1 { -of-top } queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la marca 1 { -of-bottom }, a medio camino de la 2.
        }
       *[bottom] Pega cinta una vuelta entera en el extremo de tu lado, { $length } de ella, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-bottom }.
    } { $end ->
        [none] { "" }
        [thick] Este es el extremo grueso.
       *[thin] Este es el extremo delgado.
    }
rig-strip-say-teach = { $rim ->
        [top] Pega otra cinta a { $spacing } hacia el fondo, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-top }. { $shift ->
            [none] La marca 1 { -of-top } queda { -in-line-with } la marca 1 { -of-bottom }.
           *[other] La marca 1 { -of-top } queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la marca 1 { -of-bottom }, a medio camino de la 2.
        }
       *[bottom] Pega cinta una vuelta entera en el extremo de tu lado, { $length } de ella, y haz una marca cada { $pitch }: son las { $pins } marcas { -of-bottom }.
    } { $end ->
        [none] { "" }
        [thick] Este es el extremo grueso.
       *[thin] Este es el extremo delgado.
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
    }{ $end ->
        [none] { "" }
        [thick] , en el extremo grueso
       *[thin] , en el extremo delgado
    }
rig-number-say = Numera las marcas en las cintas del 1 al { $pins } hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }{ $rows ->
            [one] , igual en las dos.
           *[other] , igual en todas las filas.
        }
rig-number-say-brief = Numera las marcas en las cintas del 1 al { $pins } hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }{ $rows ->
            [one] , igual en las dos.
           *[other] , igual en todas las filas.
        }
rig-number-say-teach = Numera las marcas en las cintas del 1 al { $pins } hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }{ $rows ->
            [one] , igual en las dos.
           *[other] , igual en todas las filas.
        } Cada paso llama a las marcas por esos números.
rig-number-show = Numera las marcas del 1 al { $pins }
rig-number-note = Hacia la { $hand ->
            [left] izquierda
           *[right] derecha
        }{ $rows ->
            [one] , igual en las dos cintas
           *[other] , igual en todas las filas
        }
kit-tape-say = Necesitas, { $number } de { $items }: cinta de enmascarar, { $tape } y algo más de reserva, con ella { $scraps } trocitos que sujetan los senos. Pulsa siguiente cuando la tengas.
kit-tape-say-brief = Cinta de enmascarar, { $tape } y algo más de reserva, con ella { $scraps } trocitos para los senos.
kit-tape-say-teach = Necesitas, { $number } de { $items }: cinta de enmascarar, { $tape } y algo más de reserva, con ella { $scraps } trocitos que sujetan los senos. Pulsa siguiente cuando la tengas. Sujeta la cola y lleva las marcas con sus números.
kit-tape-note = De ella { $scraps } trocitos, uno sobre cada seno
rig-nest-say = Ahora { $rows ->
        [two] la fila de dentro
       *[more] la fila { $row }
    } de marcas, { $pins } en cada borde, a { $inside } de la fila de más afuera, { -towards-the-middle }. Dibújalas en la misma cinta, o en otra donde no quepan. Cada una está en línea con la marca de más afuera de su número, y lleva ese número.
rig-nest-say-teach = Ahora { $rows ->
        [two] la fila de dentro
       *[more] la fila { $row }
    } de marcas, { $pins } en cada borde, a { $inside } de la fila de más afuera, { -towards-the-middle }. Dibújalas en la misma cinta, o en otra donde no quepan. Cada una está en línea con la marca de más afuera de su número, y lleva ese número. Unas filas más juntas no dejan sitio a los senos.
rig-nest-note = { $pins } marcas en cada borde, con los mismos números
kit-tool-say-teach = Necesitas, { $number } de { $items }: { $tool ->
        [marker] un rotulador o marcador que escriba sobre cinta. Pulsa siguiente cuando lo tengas. Con él haces las marcas.
        [ruler] una regla. Pulsa siguiente cuando la tengas. Con ella mides el cabo, y dónde van las marcas.
        [blade] un cuchillo bien afilado, o tijeras. Pulsa siguiente cuando lo tengas. Con él cortas el cabo y, al final, sus chicotes.
        [dish] un plato para lo que sobra. Pulsa siguiente cuando lo tengas.
       *[sealing] un encendedor si el cabo se funde, o pegamento si es de fibra natural. Pulsa siguiente cuando lo tengas. Así no se deshilachan los chicotes.
    }

## On paper

card-pins = Haz { $pins } marcas repartidas por igual en cada una de dos cintas, { $staggered ->
        [yes] cada una { -of-top } a medio camino entre dos { -of-bottom }: la marca 1 { -of-top }, medio paso más allá de la marca 1 { -of-bottom }.
       *[no] cada una { -of-top } en línea con la { -of-bottom } de su mismo número.
    }
card-pins-apart = En un grueso de { $tube }, las marcas van a { $apart } una de otra, midiendo alrededor.
card-lift = Quitar: marca con cinta el seno 1 { -of-bottom } y cuida de que ningún chicote se escurra hacia dentro. Despega los trocitos de cinta de los senos y saca las cintas de debajo de los cabos; el nudo se queda donde está.
strip-title = Tiras con marcas: { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, grueso de { $tube }, { $round } de contorno
strip-how = Recorta las dos tiras por sus líneas y pega cada una alrededor de lo que cubres, hasta juntar sus extremos. Las marcas están donde se cruzan las líneas; las líneas llegan hasta el canto del papel. Empieza las dos tiras en la misma línea a lo largo.
strip-spacing = { $known ->
        [no] A qué distancia van las filas depende del cabo: indícalo también (--cord) y saldrá escrito aquí.
       *[yes] { $rows ->
            [1] Las dos filas de marcas
           *[other] Las dos filas de marcas de más afuera
        } quedan a { $spacing } una de otra.
    }
strip-top = Fondo
strip-bottom = Tu lado
