# First ties: a short course of four knots, each taught in the teach depth. For each: its name, and
# the idea that is new in it, told before the tie begins.

course-heading = Primeros nudos
course-say = Primeros nudos: cuatro nudos, cada uno algo más difícil que el anterior. Siguiente empieza el que está elegido. Las flechas arriba y abajo eligen.
course-keys = ↑ ↓ elegir · Espacio empezar · R otra vez · Esc volver

# A lesson in the list. $state: new, begun or done.
# Ejemplo: 1. 3 ramales y 4 senos: clavijas y tramos, encima y debajo (hecho)
course-line = { $number }. { $lesson ->
        [1] 3 ramales y 4 senos: clavijas y tramos, encima y debajo
        [2] 3 ramales y 5 senos: el ritmo de la mano
        [3] 4 ramales y 5 senos: clavijas en línea, tramos más largos
       *[4] 5 ramales y 6 senos, doblado: seguir
    }{ $state ->
        [done] { " " }(hecho)
        [begun] { " " }(empezado)
       *[new] { "" }
    }

# The same as it is spoken when the choice moves to it.
course-line-say = Lección { $number } de { $lessons }: { $lesson ->
        [1] 3 ramales y 4 senos.
        [2] 3 ramales y 5 senos.
        [3] 4 ramales y 5 senos.
       *[4] 5 ramales y 6 senos, doblado.
    } { $state ->
        [done] Ya lo has hecho.
        [begun] Lo tienes empezado; espera entre tus nudos en curso.
       *[new] Todavía no lo has hecho.
    }

# The idea that is new, told before the first step and shown beside the choice.
course-idea = { $lesson ->
        [1] El nudo más pequeño que merece lucirse. Pon cuatro clavijas en cada anillo, las de la cabeza a medio camino entre las del pie, y numéralas. El cabo sube de una clavija del pie a una de la cabeza y vuelve a bajar, siempre en el mismo sentido alrededor del tubo. Cada uno de esos viajes es un tramo. Los primeros tramos no cruzan nada; después cada uno pasa por encima de un cabo y por debajo del siguiente, alternando, y tras ocho tramos el cabo está de nuevo en su primera clavija.
        [2] La misma trenza con una clavija más en cada anillo. Lo único nuevo es el largo: encuentra el ritmo, subir y bajar, por encima y por debajo, y mira el trabajo después de cada ronda. Cuando un tramo llega a otra clavija que la que se te dice, hay un fallo antes: pulsa error y deshaz el tramo.
        [3] Un número par de ramales. Ahora cada clavija de la cabeza está en línea recta con una del pie, y un tramo cruza tres cabos: al subir, por encima, por debajo y por encima; al bajar, al revés. Cuenta los cruces de un tramo antes de ceñirlo.
       *[4] Un nudo más ancho, y el primero que se dobla. Cuando la pasada guía ha vuelto a casa, el mismo cabo da otro recorrido junto a sí mismo, siempre por el lado del pie del cabo que ya está ahí, por encima donde aquel pasó por encima y por debajo donde pasó por debajo. En un cruce que ya tiene dos cabos, pasa por encima de los dos o por debajo de los dos. Después el nudo se saca, se iguala y se remata.
    }
