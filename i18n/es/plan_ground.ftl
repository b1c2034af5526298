# The first question of the plan screen: what is covered, and whether the knot can be slid onto it.

# The answers, each below its picture. $covered: round, taper, ball or mat. $slides: on or place.
plan-covers = { $covered ->
        [round] Mango, barandilla
        [taper] Cónico
        [ball] Bola, pomo
       *[mat] Tapete
    }
plan-slides-asked = ¿Se puede deslizar el nudo encima?
plan-slides = { $slides ->
        [on] Se desliza encima
       *[place] Se hace en el sitio
    }

# The same, told when they are in turn.
plan-covers-told = { $covered ->
        [round] Se cubre un mango o una barandilla, igual de grueso en todo lo largo.
        [taper] Se cubre algo cónico, con un extremo grueso y otro delgado.
        [ball] Se cubre una bola o un pomo.
       *[mat] No se cubre nada: es un tapete, hecho sobre una tabla.
    } Las flechas derecha e izquierda lo cambian.
plan-slides-told = { $slides ->
        [on] ¿Se puede deslizar el nudo encima? Sí: se hace en un tubo con clavijas y se desliza.
       *[place] ¿Se puede deslizar el nudo encima? No: se hace en el sitio, sin tubo.
    } La flecha derecha lo cambia.

# What is still to be said of the thing, and the names of its measures.
plan-measure-wanted = { $covered ->
        [round] ¿Qué grosor tiene el objeto? Mídelo de lado a lado, o alrededor con una cinta.
        [taper] ¿Qué grosor tiene en cada extremo? Da los dos con dos puntos en medio, primero el del pie, como 32:26 mm.
        [ball] ¿Qué diámetro tiene la bola?
       *[mat] ¿Qué tamaño tendrá el tapete de borde a borde? El hueco va tras dos puntos, como 150:60 mm.
    }
plan-taper = Sus dos extremos, primero el pie
plan-ball = Su diámetro
plan-mat = De borde a borde, el hueco tras dos puntos
# What was read in the field of a taper or of a mat with its hole, below it. $shape: taper or mat.
# Example: pie 34 mm, cabeza 26 mm; 150 mm de borde a borde, hueco 40 mm
plan-ends-read = { $shape ->
        [mat] { $first } de borde a borde, hueco { $second }
       *[taper] pie { $first }, cabeza { $second }
    }
# $ends: what stands in the field, or none.
plan-taper-told = Diámetros de los dos extremos, primero el del pie{ $ends ->
        [none] .
       *[other] : { $ends }.
    } Entre ellos van dos puntos.
