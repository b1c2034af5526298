# Paper for the bench: cards, strips and stages.

## Every sheet

# At the foot of a page.
sheet-page = Página { $page } de { $pages }

## The card

card-head-leg = Tramo
card-head-way = De { -pin } a { -pin }
card-head-crossings = Cruces, en el orden en que se encuentran

# The way of a leg. $heading, $from, $to as in steps.ftl.
card-way = { $heading ->
        [falling] De la { $from } { -of-top }, { -down } a la { $to } { -of-bottom }
       *[rising] De la { $from } { -of-bottom }, { -up } a la { $to } { -of-top }
    }

# Sobre qué y con qué. Argumentos como en inglés.
card-for = { $on ->
        [round] En su sitio, sobre un objeto de { $object } de diámetro,
        [taper] En su sitio, sobre una pieza que va de { $object } a { $top },
        [ball] En su sitio, sobre una bola de { $object } de diámetro,
        [mat] Plano sobre una tabla, de { $object } de borde a borde,
       *[tube] En un tubo de { $tube } de diámetro, { $ground ->
            [taper] para una pieza que va de { $object } a { $top },
            [ball] para una bola de { $object } de diámetro,
           *[round] para un objeto de { $object } de diámetro,
        }
    } con cabo de { $cord }.

# Ejemplo: Tejido: encima de 1, debajo de 1.
# $kind: run, or code for a row code of o and u.
card-weave = { $kind ->
        [run] Tejido: encima de { $weave }, debajo de { $weave }.
        [twin] Tejido: encima de { $weave }, debajo de { $weave }, empezado debajo { -at-bottom }.
       *[code] Tejido, fila por fila { -from-the-bottom }: { $weave } («o»: el tramo { -that-rises } pasa por encima; «u»: por debajo).
    }

# $hand: right or left. $passes, $side as in steps.ftl. $inside: top or bottom.
card-work = { $hand ->
        [left] { -card-left }
       *[right] { -card-right }
    } { $passes ->
        [one] { "" }
       *[other] { $inside ->
            [bottom] Las pasadas siguientes van junto al primer cabo, { -lane-top }
           *[top] Las pasadas siguientes van junto al primer cabo, { -lane-bottom }
        }, { $passes ->
            [2] { "" }
           *[other] cada una más allá de la anterior,
        } { $inside ->
            [bottom] por dentro de sus senos { -at-bottom } y por fuera { -at-top }.
           *[top] por dentro de sus senos { -at-top } y por fuera { -at-bottom }.
        }
    }

# Where the pins go when the tube is not known.
# $staggered: yes or no.
card-pins = Pon { $pins } clavijas repartidas por igual en cada anillo, { $staggered ->
        [yes] cada una { -of-top } a medio camino entre dos { -of-bottom }: la clavija 1 { -of-top }, medio paso más allá de la clavija 1 { -of-bottom }.
       *[no] cada una { -of-top } a plomo con la { -of-bottom } de su mismo número.
    }

# On a tube without rings. $tube: its diameter. $apart: from pin to pin.
card-pins-apart = En un tubo de { $tube }, las clavijas van a { $apart } una de otra, midiendo alrededor del tubo.

# On a tube with rings. $rim: top or bottom. $row: number of the row, $holes in it. $first: the
# hole of pin 1. $step: holes from one pin to the next.
card-pins-ring = { $rim ->
        [top] Anillo { -of-top }
       *[bottom] Anillo { -of-bottom }
    }, fila { $row }, de { $holes } agujeros: clavija 1 en el agujero { $first }, cada clavija siguiente { $step ->
        [one] 1 agujero más allá.
       *[other] { $step } agujeros más allá.
    }

card-half-hole = Gira antes el anillo { -of-top } medio agujero más allá, en el sentido en que va el cabo.

# The head of a pass of a strand. $pin: the bottom pin where it begins.
# Ejemplo: Pasada guía: deja una cola en la clavija 1 del pie
# Ejemplo: Segunda pasada, hebra 2 de 3: empieza en la clavija 2 del pie junto al cabo que ya está ahí
card-pass = { $pass ->
        [1] Pasada guía
        [2] Segunda pasada
        [3] Tercera pasada
        [4] Cuarta pasada
        [5] Quinta pasada
        [6] Sexta pasada
        [7] Séptima pasada
        [8] Octava pasada
       *[9] Novena pasada
    }{ $strands ->
        [one] { "" }
       *[other] , hebra { $strand } de { $strands }
    }: { $pass ->
        [1] deja una cola en la { -pin } { $pin } { -of-bottom }
       *[other] empieza en la { -pin } { $pin } { -of-bottom } junto al primer cabo
    }

# What comes when all is laid. $rings: yes when the tube has rings. $times: how often the knot is gone
# through. $known: yes when $draw, a length, says how much to draw.
card-after = Cuando todo está tendido
card-lift = Sacar: marca con cinta el seno 1 { -of-bottom } y cuida de que ningún chicote se escurra hacia dentro. Quita las clavijas { -of-top }{ $rings ->
        [yes] , saca el anillo { -of-top }
       *[no] { "" }
    } y quita las { -of-bottom }. Pasa el nudo a lo que va a cubrir, sin voltearlo.
card-fair = Igualar, { $times } veces: desde la cola, a lo largo del cabo, recoge { $known ->
        [yes] unos { $draw }
       *[no] un poco
    } de cada tramo y pásalo al siguiente, hasta que salga por el chicote de trabajo. No tenses ningún tramo antes que sus vecinos.
card-finish = Rematar: mete los chicotes como abajo, córtalos donde salen dejando una punta tan larga como el grueso del cabo, séllala con calor lejos del nudo (fibra natural: con pegamento) y vuelve a meterla debajo.

# Over the pictures of the ends, where they are tucked away.
card-ends = Los chicotes

card-cautions = Cuidado
card-caution-load = Solo adorna: que nunca sostenga a una persona ni una carga; para eso, cumple las normas y recurre a personal autorizado.
card-caution-heat = Cuchillo caliente o llama: ventila, lejos de todo lo que arda. El cabo fundido se pega a la piel y quema: deja que se enfríe. Un chicote sellado puede cortar.
card-caution-blade = Cuchillos, pasadores y agujas: filo y punta, siempre hacia fuera, lejos del cuerpo.
card-caution-pins = Las clavijas sobresalen del tubo: cuidado con los ojos y las palmas.
card-caution-pull = Tira con suavidad, nunca con el cabo enrollado en la mano.
card-caution-children = Los cabos, las clavijas y las piezas pequeñas no son para niños pequeños. Nunca pongas un cabo al cuello de nadie.
card-caution-hands = Las manos se cansan: descánsalas en un nudo largo.

## The strip

# $tube: diameter, $round: the way round it.
strip-title = Tiras para las clavijas: { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, tubo de { $tube }, { $round } de contorno

# $rings: yes when the tube has rings.
strip-how = Recorta las dos tiras por sus líneas y da con cada una la vuelta al tubo, hasta juntar sus extremos. { $rings ->
        [yes] Cada una va a lo largo de su anillo: cada círculo es un agujero, y sobre cada agujero que lleva clavija hay un número.
       *[no] Las clavijas van donde se cruzan las líneas; las líneas llegan hasta el canto del papel.
    } Empieza las dos tiras en la misma línea a lo largo del tubo.

# $hand: right or left.
strip-hand = { $hand ->
        [left] Los números van hacia la izquierda, en el sentido en que va el cabo.
       *[right] Los números van hacia la derecha, en el sentido en que va el cabo.
    }

strip-half-hole = Gira antes el anillo { -of-top } medio agujero más allá, en el sentido en que va el cabo: los agujeros de su tira están dibujados así.

# How far the rows of pins stand from each other. $rings: yes when the tube has rings. $known: no when no cord
# is named, from which $spacing comes.
# $rows: rows of pins at each rim, more than one where bights are nested.
strip-spacing = { $known ->
        [no] A qué distancia van los anillos depende del cabo: indícalo también (--cord) y saldrá escrito aquí.
       *[yes] { $rings ->
            [yes] Pon los anillos de modo que { $rows ->
                [1] sus filas de clavijas
               *[other] sus filas de clavijas de más afuera
            } queden a { $spacing } una de otra.
           *[no] { $rows ->
                [1] Las dos filas de clavijas
               *[other] Las dos filas de clavijas de más afuera
            } quedan a { $spacing } una de otra.
        }
    }

strip-top = Anillo { -of-top }
strip-bottom = Anillo { -of-bottom }
strip-cut = cortar
strip-join = pon la página { $page } sobre la línea de trazos
# $bar: how long the line is.
# Ejemplo: Esta línea mide 50 mm. Si no es así, …
strip-bar = Esta línea mide { $bar }. Si no es así, imprime otra vez al 100 %, sin ajustar a la página.

## The stage

stage-signs = Un cuadrado es encima, un aro es debajo. El número del aro es la clavija de la que viene; el número del disco, la clavija a la que va.

## What can be wrong

sheet-out-missing = No se dice dónde dejar la hoja: añade --out con un nombre de archivo que termine en «.png» o «.pdf», por ejemplo --out ficha.pdf.
sheet-out-ending = «{ $file }» no dice qué hay que hacer: termina el nombre en «.png» o «.pdf», o añade --pdf.
sheet-exists = «{ $file }» ya existe y no se toca: elige otro nombre, o añade --replace.
sheet-unwritable = No se ha podido escribir «{ $file }» ({ $reason }): comprueba que su carpeta existe y que se puede escribir en ella.
sheet-progress = Hecho hasta ahora: { $page } de { $pages }. Ctrl+C lo detiene.
sheet-stopped = Detenido tras { $page } de { $pages }: { $one ->
        [yes] no se ha escrito ningún archivo.
       *[no] lo escrito hasta aquí está entero.
    }
sheet-failed = No se ha podido hacer la hoja: prueba con la otra clase de archivo, «.png» o «.pdf».
sheet-dpi = --dpi admite un número entero de { $least } a { $most }, y «{ $given }» no lo es: prueba con --dpi 300.
sheet-step = --step admite un paso de este nudo, de 1 a { $steps }, y «{ $given }» no lo es: «marlinspeak steps» los muestra.
sheet-tube-missing = Una tira es tan larga como el contorno del tubo, y no se indica ningún tubo: añade --tube con su diámetro, por ejemplo --tube 48mm.
sheet-card-long = Una ficha de este nudo tendría más de { $most } cruces que imprimir: «marlinspeak steps» dice tantos como quieras.
sheet-strip-long = Una tira para este tubo ocuparía más de { $most } páginas: comprueba que --tube es el diámetro, por ejemplo --tube 48mm.
sheet-reel-out-missing = No se dice dónde dejar la imagen en movimiento: añade --out con un nombre de archivo que termine en «.gif», «.png» o «.webp», por ejemplo --out nudo.gif.
sheet-reel-ending = «{ $file }» no dice qué clase de imagen en movimiento hay que hacer: termina el nombre en «.gif», «.png» o «.webp».
sheet-reel-long = Una imagen en movimiento de este nudo mostraría más de { $most } cruces, uno tras otro: «marlinspeak sheet stage --step» hace el dibujo de un solo paso.
sheet-width = --width admite un número entero de { $least } a { $most }, y «{ $given }» no lo es: prueba con --width 800.
