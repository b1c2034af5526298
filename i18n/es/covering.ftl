# What is covered: a round thing, a taper, a ball, a mat; slid on from a tube or tied in place. What can be wrong
# with it, one sentence each.
#
# $given: the text as it was typed. Lengths are one argument each with its unit (see lengths.ftl).

# $one, $other: object, girth, ball or mat.
ask-object-twice = Lo que se cubre se da dos veces, { $one ->
        [object] por su diámetro
        [girth] por su contorno
        [ball] como bola
       *[mat] como tapete
    } y { $other ->
        [object] por su diámetro
        [girth] por su contorno
        [ball] como bola
       *[mat] como tapete
    }: da solo uno de los dos.
ask-halves = { $asking ->
        [mat] «{ $given }» no es el tamaño de un tapete: dalo de borde a borde, por ejemplo 150mm, o con su hueco, por ejemplo 150mm:60mm.
       *[object] «{ $given }» no dice qué grueso tiene una pieza que se afina: da los dos extremos con dos puntos en medio, por ejemplo 30mm:24mm.
    }
# $asking: any of the lengths of which there is one. $example: such a length.
ask-one-length = «{ $given }» son dos largos, y { $asking ->
        [ball] una bola tiene un solo diámetro
       *[other] aquí solo hay uno
    }: da uno, por ejemplo { $example }.
ask-taper-length = Una pieza que se afina necesita el largo en el que lo hace y no se da ninguno: dalo como largo que se va a cubrir, por ejemplo 120mm.
ask-end-thin = El extremo fino, de { $end }, es más fino que el cabo de { $cord }: usa un cabo más fino, o deja que el nudo acabe donde el objeto es más grueso.
ask-hole-wide = Un hueco de { $hole } no cabe en un tapete de { $outer }: da primero el borde de fuera y luego el hueco, por ejemplo 150mm:60mm.
# $asking: ball or mat.
ask-whole-cover = { $asking ->
        [ball] Una bola se cubre de polo a polo y no lleva además un largo que cubrir: quita ese largo.
       *[mat] Un tapete tiene su tamaño y no lleva además un largo que cubrir: quita ese largo, o da el hueco detrás del borde de fuera, por ejemplo 150mm:60mm.
    }
ask-in-place-unknown = Hecho en su sitio es yes (sí) o no, y «{ $given }» no es ninguno: di yes para un nudo que se hace sobre lo que cubre.
ask-in-place-nothing = Un nudo hecho en su sitio se hace sobre lo que cubre y eso no se da: di qué grueso tiene, por ejemplo --object 30mm.
# $asking: tube, rows, pin, thread, wall, ring-width or tube-length.
ask-in-place-tube = Un nudo que se hace en su sitio no lleva { $asking ->
        [tube] tubo
        [rows] filas de agujeros
        [pin] largo de clavijas
        [thread] rosca de clavijas
        [wall] pared de tubo
        [ring-width] ancho de anillos
       *[tube-length] largo de tubo
    }: quita eso, o quita lo de hacerlo en su sitio y pasa el nudo del tubo al objeto.
ask-mat-tube = Un tapete se hace plano sobre una tabla y no lleva { $asking ->
        [tube] tubo
        [rows] filas de agujeros
        [pin] largo de clavijas
        [thread] rosca de clavijas
        [wall] pared de tubo
        [ring-width] ancho de anillos
       *[tube-length] largo de tubo
    }: quita eso.

ask-mat-in-place = Un tapete se hace siempre donde se queda, en su tabla: quita --in-place.
order-not-on-stick = Ni un tapete ni una bola van en un palo con otros nudos: quita el largo del palo, o pon esta pieza en un encargo aparte.

## The knots that fit

# Of a taper, a ball and a mat; see fit-heading. $top: the other end of a taper. $hole: or none.
fit-heading-taper = { $count ->
        [0] Ningún nudo sale con { $cover } justos en una pieza que va de { $object } a { $top } con cabo de { $cord }
        [one] Un nudo cubre { $cover } de una pieza que va de { $object } a { $top } con cabo de { $cord }
       *[other] { $count } nudos cubren { $cover } de una pieza que va de { $object } a { $top } con cabo de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , y uno se queda cerca
       *[other] , y { $near } se quedan cerca
    }{ $shown ->
        [0] .
       *[other] ; primero los { $shown } mejores.
    }
fit-heading-ball = { $count ->
        [0] Ningún nudo cubre justo una bola de { $object } de diámetro con cabo de { $cord }
        [one] Un nudo cubre una bola de { $object } de diámetro con cabo de { $cord }
       *[other] { $count } nudos cubren una bola de { $object } de diámetro con cabo de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , y uno se queda cerca
       *[other] , y { $near } se quedan cerca
    }{ $shown ->
        [0] .
       *[other] ; primero los { $shown } mejores.
    }
fit-heading-mat = { $count ->
        [0] Ningún nudo da justo un tapete de { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }con un hueco de { $hole }
        } con cabo de { $cord }
        [one] Un nudo da un tapete de { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }con un hueco de { $hole }
        } con cabo de { $cord }
       *[other] { $count } nudos dan un tapete de { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }con un hueco de { $hole }
        } con cabo de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , y uno se queda cerca
       *[other] , y { $near } se quedan cerca
    }{ $shown ->
        [0] .
       *[other] ; primero los { $shown } mejores.
    }

# Above what is done before the first leg. $on: tube, round, taper, ball or mat.
rig-where = { $on ->
        [tube] En el tubo
        [mat] En la tabla
       *[round] Sobre lo que se cubre
    }
