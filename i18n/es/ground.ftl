# Lo que se dice donde un nudo no sale de un tubo: en una barandilla, algo cónico, una bola, un tapete.

# Ejemplo: Cada vez que pases por debajo, saca el cabo entero: quedan 3,2 metros.
draw-through-say = { $known ->
        [yes] Cada vez, pasa el cabo entero: quedan { $length }.
       *[no] Cada vez, pasa el cabo entero.
    }
draw-through-show = { $known ->
        [yes] Pasa el cabo entero: quedan { $length }
       *[no] Pasa el cabo entero
    }

fair-way-say = { $way ->
        [ball] { $last ->
            [yes] Esta última vez recoge también los senos de los dos bordes, para que se cierren sobre los polos.
           *[no] Hasta la última vez se ajusta solo el medio de la bola: deja flojos los senos de los dos bordes.
        }
        [taper] { $last ->
            [yes] Esta última vez recoge también los senos del extremo delgado.
           *[no] Hasta la última vez se ajusta solo el extremo grueso, el { -of-bottom }: deja flojos los senos del delgado, pues lo que está flojo se va hacia allí.
        }
        [taper-down] { $last ->
            [yes] Esta última vez recoge también los senos del extremo delgado.
           *[no] Hasta la última vez se ajusta solo el extremo grueso, el { -of-top }: deja flojos los senos del delgado, pues lo que está flojo se va hacia allí.
        }
       *[mat] Mantenlo plano. { $last ->
            [yes] Esta última vez recoge también los senos del hueco.
           *[no] Hasta la última vez se ajusta solo el círculo del borde: deja flojos los senos del hueco.
        }
    }
fair-way-show = { $way ->
        [ball] { $last ->
            [yes] Ahora también los senos, sobre los polos
           *[no] Primero el medio; senos flojos hasta la última vez
        }
        [mat] Todo plano; { $last ->
            [yes] ahora también los senos del hueco
           *[no] senos del hueco flojos hasta la última vez
        }
       *[taper] { $last ->
            [yes] Ahora también el extremo delgado
           *[no] Primero el grueso; el delgado, flojo hasta la última vez
        }
    }

# Un nudo que no se aprieta del todo. Argumentos como en inglés.
fair-open-say = { $way ->
        [ball] Detente cuando el nudo tenga { $width } de ancho, medido a lo largo de la bola: más apretado cubre menos.
        [mat] Detente cuando el anillo tenga { $width } de ancho: más apretado cubre menos.
       *[other] Detente cuando el nudo tenga { $width } de ancho, de borde a borde: más apretado cubre menos.
    }
fair-open-show = { $way ->
        [ball] Hasta { $width } de ancho, a lo largo de la bola
        [mat] Hasta que el anillo tenga { $width } de ancho
       *[other] Hasta { $width } de ancho, de borde a borde
    }

# Se prepara una tabla. Argumentos como en inglés.
rig-board-say = Pon la hoja impresa plana en la tabla y sujétala con cinta. Clava un alfiler en T en cada marca { $rows ->
        [one] del círculo de fuera, de { $outer } de ancho, y del de dentro, de { $inner }: { $pins } en cada uno,
       *[other] de los { $rows } círculos del borde, el de más afuera de { $outer } de ancho, y de los { $rows } del hueco, el de más adentro de { $inner }: { $pins } en cada uno, { $all } en total,
    } un poco inclinados hacia el lado contrario del nudo. { $rows ->
        [one] { "" }
       *[other] Los de un mismo número están en línea.
    } { $staggered ->
        [yes] La clavija 1 del hueco está a medio camino entre la 1 y la 2 del borde.
       *[no] La clavija 1 del hueco está en línea con la clavija 1 del borde.
    }
rig-board-say-brief = Hoja impresa en la tabla. Alfileres en T en las marcas, { $rows ->
        [one] { $pins } en cada círculo.
       *[other] { $circles } círculos de { $pins }, { $all } en total.
    } { $staggered ->
        [yes] La clavija 1 del hueco está a medio camino entre la 1 y la 2 del borde.
       *[no] La clavija 1 del hueco está en línea con la clavija 1 del borde.
    }
rig-board-say-teach = Pon la hoja impresa plana en la tabla y sujétala con cinta. Clava un alfiler en T en cada marca { $rows ->
        [one] del círculo de fuera, de { $outer } de ancho, y del de dentro, de { $inner }: { $pins } en cada uno,
       *[other] de los { $rows } círculos del borde, el de más afuera de { $outer } de ancho, y de los { $rows } del hueco, el de más adentro de { $inner }: { $pins } en cada uno, { $all } en total,
    } un poco inclinados hacia el lado contrario del nudo. { $rows ->
        [one] { "" }
       *[other] Los de un mismo número están en línea.
    } { $staggered ->
        [yes] La clavija 1 del hueco está a medio camino entre la 1 y la 2 del borde.
       *[no] La clavija 1 del hueco está en línea con la clavija 1 del borde.
    } Estos alfileres son las clavijas de los pasos. Inclinados así sujetan el cabo, y lo sueltan cuando se sacan.
rig-board-show = { $rows ->
        [one] Alfileres en T en dos círculos, { $pins } en cada uno
       *[other] Alfileres en T en { $circles } círculos, { $pins } en cada uno
    }
rig-board-note = De { $outer } y { $inner } de ancho, en las marcas de la hoja
