# First ties: a short course of six knots, each taught in the teach depth. For each: its name, and
# the idea that is new in it, told before the tie begins.

course-heading = Primeros nudos
course-say = Primeros nudos: seis nudos, cada uno algo más difícil que el anterior, y el último sin tubo. Siguiente empieza el que está elegido. Las flechas arriba y abajo eligen.

# A lesson in the list. $state: new, begun or done.
# Ejemplo: 1. 3 ramales y 4 senos: clavijas y tramos, encima y debajo (hecho)
course-line = { $number }. { $lesson ->
        [1] Cabo de campana, 3 ramales y 5 senos: clavijas y tramos, encima y debajo
        [2] Collar de botella, 3 ramales y 7 senos: el ritmo de la mano
        [3] Aro de bichero, 4 ramales y 7 senos: clavijas a plomo, tramos más largos
        [4] Puño de caña, 5 ramales y 7 senos, doble: seguir
        [6] Alrededor de la mano, 3 ramales y 4 senos: sin tubo ni clavijas
       *[5] Cabo de campana de dos colores, dos de 3 ramales y 5 senos: entrelazar un segundo cabo
    }{ $state ->
        [done] { " " }(hecho)
        [begun] { " " }(empezado)
       *[new] { "" }
    }

# The same as it is spoken when the choice moves to it.
course-line-say = Lección { $number } de { $lessons }: { $lesson ->
        [1] un cabo de campana, 3 ramales y 5 senos.
        [2] un collar de botella, 3 ramales y 7 senos.
        [3] un aro de bichero, 4 ramales y 7 senos.
        [4] un puño de caña, 5 ramales y 7 senos, doble.
        [6] alrededor de la mano, 3 ramales y 4 senos, sin tubo ni clavijas.
       *[5] un cabo de campana de dos colores, dos cabos de 3 ramales y 5 senos, entrelazados.
    } { $state ->
        [done] Ya lo has hecho.
        [begun] Lo tienes empezado; espera entre tus nudos en curso.
       *[new] Todavía no lo has hecho.
    }

# Beside the lesson that is chosen: how its weave begins. $kind: run when with over, twin when with under.
course-weave = Empieza { $kind ->
        [twin] debajo
       *[run] encima
    }: { $tucks } pasos por debajo · W: empezar { $kind ->
        [twin] encima
       *[run] debajo
    }
course-weave-say = El tejido empieza { $kind ->
        [twin] debajo
       *[run] encima
    } y pide { $tucks } pasos por debajo. W lo empieza al revés.

# The idea that is new, told before the first step and shown beside the choice.
course-idea = { $lesson ->
        [1] Un nudo pequeño que vale la pena, para el cabo de la campana. Pon cinco clavijas en cada borde del tubo, las de la cabeza a medio camino entre las del pie, y numéralas. El cabo sube de una clavija del pie a una de la cabeza y vuelve a bajar, siempre en el mismo sentido alrededor del tubo. Cada viaje de borde a borde, subiendo o bajando, es un tramo. Los primeros tramos no cruzan nada; después cada uno pasa por encima y por debajo, alternando, y tras diez tramos el cabo está de nuevo en su primera clavija.
        [2] La misma trenza con dos clavijas más en cada borde, un collar para una botella. Lo único nuevo es el largo: encuentra el ritmo, subir y bajar, por encima y por debajo, y mira el trabajo de vez en cuando. Cuando un tramo llega a una clavija distinta de la anunciada, el fallo está antes: pulsa error y deshaz el tramo.
        [3] Un número par de ramales, para el aro de un bichero. Ahora cada clavija de la cabeza está a plomo con una del pie, y un tramo cruza tres cabos, alternando por encima y por debajo; donde al subir pasa por encima, al bajar pasa por debajo. Cuenta los cruces de un tramo antes de ceñirlo.
        [4] El puño de una caña: un nudo más ancho, y el primero que se hace doble. Cuando la pasada guía ha vuelto al principio, el mismo cabo da otro recorrido junto a sí mismo, siempre del lado del pie del primer cabo, por encima donde aquel pasó por encima y por debajo donde pasó por debajo. En un cruce que ya tiene dos cabos, pasa por encima de los dos o por debajo de los dos. Después el nudo se saca, se iguala y se remata.
        [6] Con nada más que metro y medio de cabo: el primer nudo alrededor de tu propia mano. Tus cuatro dedos, bien juntos, son el tubo, y cada seno tiene su dedo, así que nadie tiene que numerar clavijas. Un lado del nudo queda hacia la muñeca y el otro hacia las yemas. El cabo cruza por delante de los dedos, por la palma, luego por detrás, y otra vez alrededor, y tú giras la mano para ver el lado en que trabajas. Déjalo flojo, que quepa otro dedo: lo que sobra se recoge al final. Es el mismo nudo que se hace en un tubo, tramo por tramo, y de los dedos pasa al mango.
       *[5] Otra vez el cabo de la campana, en dos colores: un segundo cabo se entrelaza con el primero. Pon en cada borde dos filas de cinco clavijas, una dentro de otra y en línea, y corta un cabo de cada color. El primero es el nudo de la primera lección, de las clavijas de fuera del pie a las de dentro de la cabeza. El segundo va de las de dentro del pie a las de fuera de la cabeza, cada tramo por el medio entre dos tramos del primero. Lo que cruza se dice tramo a tramo; donde los dos colores quedan parejos, está bien.
    }
