# A knot that is tied round the hand, without tube and pins: where it is chosen. How its steps are told
# stands in grounds/hand.ftl.

# On the form of the start screen: what it is tied on.
start-tied = Se hace
start-tied-tube = en un tubo
start-tied-hand = en la mano

# What the knot comes to, as start-facts, where it is tied round the hand. $strands is one here. $cord: a length with its unit.
start-facts-round-hand = { $leads } ramales y { $bights } senos alrededor de la mano, sin tubo ni clavijas, { $tucks ->
        [one] 1 paso por debajo
       *[other] { $tucks } pasos por debajo
    }{ $other_tucks ->
        [0] { "" }
       *[other] , o { $other_tucks } empezando encima
    }. { $hand ->
        [left] La mano derecha sostiene, con la palma hacia ti, y la izquierda teje.
       *[right] La mano izquierda sostiene, con la palma hacia ti, y la derecha teje.
    } Toma { $cord } de cabo, y ten a mano cinta, algo que corte y encendedor o pegamento. Deja el cabo flojo en los dedos: apretado, les corta la sangre.{ $uneven ->
        [yes] { " " }Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }

# Why a knot is not tied round the hand, and what to do. $small: yes where it is small enough, and yet not told so.
knot-not-round-hand = { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados,
    } en { $passes ->
        [one] 1 pasada
       *[other] { $passes } pasadas
    } { $small ->
        [yes] no es ninguno de los nudos que se dictan por los dedos
       *[no] es más de lo que sujetan cuatro dedos
    }: en la mano haz 3 ramales con 4 o 5 senos, 4 ramales con 5 senos o 5 ramales con 4 senos, en 3 pasadas como mucho, y este hazlo en un tubo con clavijas.

# Tube, cord or object were named for a knot that is tied round the hand.
round-hand-without-tube = En la mano no hay tubo que preparar: quita tubo, cabo y objeto, o quita --round-hand.

# There are no pins to mark.
round-hand-no-strip = En la mano no hay clavijas ni, por tanto, tira que las marque: imprime la ficha, que nombra el dedo de cada seno, con marlinspeak sheet card --round-hand.

# The help of the option.
help-round-hand = Hacerlo alrededor de la mano, sin tubo ni clavijas: 3 ramales con 4 o 5 senos, 4 ramales con 5 senos y 5 ramales con 4 senos, en 3 pasadas como mucho

## The fingers, as they are told in the steps

# Where a bight lies. Front is the side of the palm.
finger-place = { $place ->
        [edge-forefinger] canto del índice
        [front-forefinger] delante del índice
        [front-middle] delante del dedo medio
        [front-ring] delante del anular
        [front-little] delante del meñique
        [edge-little] canto del meñique
        [back-little] detrás del meñique
        [back-ring] detrás del anular
        [back-middle] detrás del dedo medio
       *[back-forefinger] detrás del índice
    }
# Which way a leg goes about the fingers.
finger-way = { $way ->
        [front] cruzando por delante
        [round-little] rodeando el meñique hacia atrás
        [back] cruzando por detrás
        [round-forefinger] rodeando el índice hacia delante
        [behind-all] por detrás de los cuatro dedos y otra vez delante
       *[across-all] por delante de los cuatro dedos y otra vez detrás
    }
# How the hand is turned to see it.
finger-view = { $way ->
        [front] La palma hacia ti.
        [back] El dorso hacia ti.
       *[round-little] Gira la mano a la vez.
    }

# The same in a picture, at the bight, after its number, where there is room for a word or two.
picture-finger = { $number } { $place ->
        [edge-forefinger] canto índice
        [front-forefinger] delante índice
        [front-middle] delante medio
        [front-ring] delante anular
        [front-little] delante meñique
        [edge-little] canto meñique
        [back-little] detrás meñique
        [back-ring] detrás anular
        [back-middle] detrás medio
       *[back-forefinger] detrás índice
    }
