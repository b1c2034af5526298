# Interwoven knots: bights nested one inside the other at each rim, a row of pins for each, and cords that
# are laced through those laid before. "Anidado" for nested, "entrelazar" for to lace; the rows are "de
# fuera" and "de dentro", since exterior and interior end alike.

# A pin of one row of several. Wherever another message has the number of a pin, it is one of these.
# $rows: two or more, that is more than two. $row: 1 is the outermost.
# Ejemplo: De la clavija 3 de la fila de fuera del pie, sube hacia la derecha a la 5 de la fila de dentro de la cabeza.
pin-of-row-say = { $rows ->
        [two] { $row ->
            [1] { $number } de la fila de fuera
           *[2] { $number } de la fila de dentro
        }
       *[more] { $number } de la fila { $row }
    }
# Ejemplo: Pie 3 fila de fuera, sube a la cabeza 5 fila de dentro.
pin-of-row-say-brief = { $rows ->
        [two] { $row ->
            [1] { $number } fila de fuera
           *[2] { $number } fila de dentro
        }
       *[more] { $number } fila { $row }
    }
pin-of-row-say-teach = { $rows ->
        [two] { $row ->
            [1] { $number } de la fila de fuera
           *[2] { $number } de la fila de dentro
        }
       *[more] { $number } de la fila { $row }
    }
# Ejemplo: De la 3 (fuera) del pie, sube a la 5 (dentro) de la cabeza
pin-of-row = { $rows ->
        [two] { $row ->
            [1] { $number } (fuera)
           *[2] { $number } (dentro)
        }
       *[more] { $number } (fila { $row })
    }

# Where the first cord begins, and the first of each row inside it. $rows: rows of pins at each rim.
# $whole: yes when all passes of a cord are laid before the next cord begins.
laced-say = { $row ->
        [1] Aquí hay senos anidados: en cada borde las { -pins } están en { $rows } filas, una dentro de otra y en línea, y cada cabo se queda en las suyas. { $whole ->
            [no] Haz la primera pasada de este cabo antes de entrelazar el siguiente; las demás pasadas siguen cuando están todos los cabos.
           *[yes] Haz este cabo entero antes de entrelazar el siguiente.
        }
       *[other] Este cabo se entrelaza con los que ya están: cada tramo va por el medio entre dos tramos de ellos.
    }
laced-say-brief = { $row ->
        [1] { $rows } filas de { -pins } en cada borde, en línea.
       *[other] Entrelazado con los cabos que ya están.
    }
laced-say-teach = { $row ->
        [1] Aquí hay senos anidados: en cada borde las { -pins } están en { $rows } filas, una dentro de otra y en línea, y cada cabo se queda en las suyas. Por sí solo, cada cabo es una cabeza de turco. { $whole ->
            [no] Haz la primera pasada de este antes de entrelazar el siguiente; las demás pasadas siguen cuando están todos los cabos.
           *[yes] Haz este entero antes de entrelazar el siguiente.
        }
       *[other] Este cabo se entrelaza con los que ya están: cada tramo va por el medio entre dos tramos de ellos, y los cruza y se cruza consigo mismo en el orden que se dice. Donde se han cruzado dos cabos seguidos de la misma manera, empieza a verse una espiga.
    }
laced-show = { $row ->
        [1] { $rows } filas de { -pins } en cada borde, en línea
       *[other] Entrelazado con los cabos que ya están
    }

# What a leg of such a cord runs between: the legs that left these two pins of the same rim.
# Ejemplo: Ve entre los tramos que salen de la clavija 2 de la fila de fuera y de la clavija 3 de la fila de fuera del pie.
lay-say-splits = { $heading ->
        [falling] Ve entre los tramos que salen de la { -pin } { $left } y de la { -pin } { $next } { -of-top }.
       *[rising] Ve entre los tramos que salen de la { -pin } { $left } y de la { -pin } { $next } { -of-bottom }.
    }
lay-show-splits = { $heading ->
        [falling] Entre los tramos de la { $left } y la { $next } { -of-top }
       *[rising] Entre los tramos de la { $left } y la { $next } { -of-bottom }
    }

# Rigging: a further row of pins at both rims. $inside: how far inside the outermost row, towards the
# middle of the knot. $ring: the row of the rings it stands in, 0 without rings. $step: from a pin to the next,
# in holes. $pins: at each rim. $rows and $row as above.
rig-nest-say = Ahora { $rows ->
        [two] la fila de dentro
       *[more] la fila { $row }
    } de { -pins }, { $pins } en cada borde, a { $inside } de la fila de más afuera, { -towards-the-middle }{ $ring ->
        [0] , en las mismas marcas de la tira.
       *[other] : la fila { $ring } de cada anillo, de { $holes } agujeros, una { -pin } en { $step ->
            [1] cada agujero.
           *[other] un agujero de cada { $step }.
        }
    } Cada una está en línea con la { -pin } de más afuera de su número, y lleva ese número.
rig-nest-say-brief = { $rows ->
        [two] Fila de dentro:
       *[more] Fila { $row }:
    } { $pins } { -pins } en cada borde, a { $inside } de la de más afuera, en línea{ $ring ->
        [0] .
       *[other] , en la fila { $ring } de los anillos.
    }
rig-nest-say-teach = Ahora { $rows ->
        [two] la fila de dentro
       *[more] la fila { $row }
    } de { -pins }, { $pins } en cada borde, a { $inside } de la fila de más afuera, { -towards-the-middle }{ $ring ->
        [0] , en las mismas marcas de la tira.
       *[other] : la fila { $ring } de cada anillo, de { $holes } agujeros, una { -pin } en { $step ->
            [1] cada agujero.
           *[other] un agujero de cada { $step }.
        }
    } Cada una está en línea con la { -pin } de más afuera de su número, y lleva ese número. Unas filas más juntas no dejan sitio a los senos; si las filas de un anillo están a otra distancia, es mejor una tira de papel.
rig-nest-show = { $rows ->
        [two] Fila de dentro
       *[more] Fila { $row }
    }: a { $inside }, en línea
rig-nest-note = { $pins } { -pins } en cada borde{ $ring ->
        [0] , en las mismas marcas
       *[other] , en la fila { $ring } de los anillos ({ $holes } agujeros)
    }, con los mismos números

# On a card.
card-rows = Hay senos anidados: en cada borde las { -pins } están en { $rows } filas, una dentro de otra, y las { -pins } de un mismo número están en línea.
# On a strip. $apart: from a row of pins to the next, or none when no cord is named. $rings: yes when the tube has rings.
strip-rows = Hay senos anidados: en cada borde las { -pins } están en { $rows } filas, { $apart ->
        [none] una dentro de otra. Las marcas sirven para todas las filas, pues las { -pins } de un mismo número están en línea.
       *[other] a { $apart } una de otra, las de dentro hacia el medio del nudo. { $rings ->
            [yes] Así están dibujadas las filas; si las de los anillos están más separadas, guíate por las líneas verticales.
           *[no] Cada fila tiene su línea.
        }
    }
# The name of a row on a strip. $rows: two, or more.
strip-row = { $rows ->
        [two] { $row ->
            [1] fila de fuera
           *[2] fila de dentro
        }
       *[more] fila { $row }
    }
