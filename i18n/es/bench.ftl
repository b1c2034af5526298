# Object, cord and tube: what is asked, what can be wrong with it, and the knots that fit.
#
# Arguments that come back:
#   $asking   what was being said: object, girth, ball, mat, cover, cord, tube, rows, pin, thread,
#             wall, ring-width, tube-length, have
#   $given    the text as it was typed
#   lengths   each one argument with its unit (see lengths.ftl): "29,8 mm"

## A length that is none

ask-length-unreadable = { $asking ->
        [object] El diámetro del objeto
        [girth] El contorno del objeto
        [ball] El diámetro de la bola
        [mat] El tamaño del tapete
        [cover] El largo que se va a cubrir
        [cord] El grueso del cabo
        [tube] El diámetro del tubo
        [pin] El largo de las clavijas
        [wall] La pared del tubo
        [ring-width] El ancho de los anillos
        [tube-length] El largo del tubo
       *[have] El cabo disponible
    } no puede ser «{ $given }»: da un número con mm, cm, m, in o ft, por ejemplo { $example }.
ask-length-unit = { $asking ->
        [object] El diámetro del objeto
        [girth] El contorno del objeto
        [ball] El diámetro de la bola
        [mat] El tamaño del tapete
        [cover] El largo que se va a cubrir
        [cord] El grueso del cabo
        [tube] El diámetro del tubo
        [pin] El largo de las clavijas
        [wall] La pared del tubo
        [ring-width] El ancho de los anillos
        [tube-length] El largo del tubo
       *[have] El cabo disponible
    } lleva una unidad que no se conoce, «{ $unit }» en «{ $given }»: usa mm, cm, m, in o ft, por ejemplo { $example }.
ask-length-comma = { $asking ->
        [object] El diámetro del objeto
        [girth] El contorno del objeto
        [ball] El diámetro de la bola
        [mat] El tamaño del tapete
        [cover] El largo que se va a cubrir
        [cord] El grueso del cabo
        [tube] El diámetro del tubo
        [pin] El largo de las clavijas
        [wall] La pared del tubo
        [ring-width] El ancho de los anillos
        [tube-length] El largo del tubo
       *[have] El cabo disponible
    } se puede leer de dos maneras, «{ $given }»: escribe un punto para los decimales, o quita la coma.
ask-length-fraction = { $asking ->
        [object] El diámetro del objeto
        [girth] El contorno del objeto
        [ball] El diámetro de la bola
        [mat] El tamaño del tapete
        [cover] El largo que se va a cubrir
        [cord] El grueso del cabo
        [tube] El diámetro del tubo
        [pin] El largo de las clavijas
        [wall] La pared del tubo
        [ring-width] El ancho de los anillos
        [tube-length] El largo del tubo
       *[have] El cabo disponible
    } es una fracción sin unidad, «{ $given }»: si son pulgadas, escribe { $given }in; si no, ponle mm o cm, por ejemplo { $example }.
ask-length-nought = { $asking ->
        [object] El diámetro del objeto
        [girth] El contorno del objeto
        [ball] El diámetro de la bola
        [mat] El tamaño del tapete
        [cover] El largo que se va a cubrir
        [cord] El grueso del cabo
        [tube] El diámetro del tubo
        [pin] El largo de las clavijas
        [wall] La pared del tubo
        [ring-width] El ancho de los anillos
        [tube-length] El largo del tubo
       *[have] El cabo disponible
    } tiene que ser mayor que cero y «{ $given }» no lo es: da una longitud, por ejemplo { $example }.
ask-length-range = { $asking ->
        [object] El diámetro del objeto
        [girth] El contorno del objeto
        [ball] El diámetro de la bola
        [mat] El tamaño del tapete
        [cover] El largo que se va a cubrir
        [cord] El grueso del cabo
        [tube] El diámetro del tubo
        [pin] El largo de las clavijas
        [wall] La pared del tubo
        [ring-width] El ancho de los anillos
        [tube-length] El largo del tubo
       *[have] El cabo disponible
    } tiene que ir de 0,01 mm a 100 m y «{ $given }» queda fuera: da una longitud, por ejemplo { $example }.

## Rows, threads and names

ask-rows-unreadable = Las filas son números enteros de agujeros y «{ $given }» es otra cosa: da uno por cada fila de un anillo, por ejemplo 14,20.
# $counted: rows or holes.
ask-count-range = { $counted ->
        [rows] Un anillo tiene de { $least } a { $most } filas y { $given } son demasiadas: da menos.
       *[holes] Una fila tiene de { $least } a { $most } agujeros y { $given } queda fuera: da los agujeros de cada fila, por ejemplo 14,20.
    }
# $known: the threads there are.
ask-thread-unknown = La rosca «{ $given }» no se conoce: puede ser { $known }; prueba con M4 o M5.

ask-missing = { $asking ->
        [object] Falta lo que se va a cubrir: di qué grueso tiene, por ejemplo --object 30mm, mide su contorno, por ejemplo --girth 94mm, o da una bola o un tapete, por ejemplo --ball 38mm o --mat 150mm.
        [cover] Falta el largo que se va a cubrir: añádelo, por ejemplo --cover 30mm.
        [cord] Falta el cabo: añade su grueso, por ejemplo --cord 4mm.
       *[tube] Falta el tubo: añade su diámetro, por ejemplo --tube 45mm.
    }
# $given: what was typed.
ask-firm-unknown = «{ $given }» no es una clase de cabo: di hard (duro), soft (blando) o flat (plano), por ejemplo --firm soft.
# $least, $most: the numbers taken. $soft: that of soft line.
ask-give-range = Lo juntas que quedan las vueltas de un cabo es un número de { $least } a { $most } y «{ $given }» no lo es: prueba con { $soft }, que es cabo blando.
ask-give-twice = El cabo se da por su clase y por un número: da solo uno de los dos, --firm o --cord-give.
ask-price = Un precio es un número de 0 a { $most } y «{ $given }» no lo es: dalo sin moneda, por ejemplo 0,35.
# A cord was named as shops name it. $designation: its type in the standard.
cord-understood = El cabo se toma por cabo de nailon del tipo { $designation }, de { $diameter } de grueso.
ask-without-tube = { $asking ->
        [rows] Las filas son de un tubo y no se da ninguno
        [pin] El largo de las clavijas es de un tubo y no se da ninguno
        [thread] La rosca es de un tubo y no se da ninguno
        [ring-width] El ancho de los anillos es de un tubo y no se da ninguno
        [tube-length] El largo es de un tubo con diámetro y no se da ninguno
       *[wall] La pared es de un tubo y no se da ninguno
    }: añade su diámetro, por ejemplo 45mm.
ask-without-rings = El ancho de los anillos pide anillos y no se da ninguno: añade sus filas de agujeros, por ejemplo 14,20.
# $standards: designations with a diameter. $kept: names of cords, or none.
ask-cord-unknown = «{ $given }» no es un cabo: da su grueso, por ejemplo 4mm, o un cabo normalizado ({ $standards }){ $kept ->
        [none] . También vale un cabo que guardes por su nombre; aún no hay ninguno guardado.
       *[other] , o uno de los que guardas: { $kept }.
    }
ask-cord-unmeasured = El cabo { $designation } no tiene grueso publicado: mide el tuyo y da esa medida, por ejemplo 4mm.
ask-tube-unknown = «{ $given }» no es un tubo: da su diámetro, por ejemplo 45mm{ $kept ->
        [none] . También vale un tubo que guardes por su nombre; aún no hay ninguno guardado.
       *[other] , o uno de los que guardas: { $kept }.
    }
ask-holes-close = Una fila de { $holes } agujeros los deja en este tubo a { $between } uno de otro, y una clavija necesita { $pin }: da menos agujeros o un tubo más grueso.
ask-wall-thick = Una pared de { $wall } no cabe en un tubo de { $tube }: da solo el grueso de la pared.

name-unusable = «{ $given }» no es un nombre con el que guardar algo: usa como mucho { $most } letras, empezando por una letra, por ejemplo roble.
name-standard = «{ $given }» es el nombre de un cabo normalizado: elige otro nombre.
# What is kept by name could not be read or written. $path: the file. $reason: as in reasons.ftl.
rack-failed = No se han podido usar los tubos y cabos guardados por su nombre ({ $path }: { $reason }): revisa ese archivo, o muévelo a otro sitio para empezar uno nuevo.
rack-io = No se ha podido acceder a los tubos y cabos guardados por su nombre ({ $path }: { $reason }): comprueba que la carpeta existe, que puedes escribir en ella y que queda sitio en el disco, e inténtalo de nuevo.
rack-newer = Los tubos y cabos guardados por su nombre los escribió un Marlinspeak más nuevo y no se tocan: usa el programa más nuevo.

## Why a tube cannot be rigged for a knot

# $can_take: bights that the tube takes.
rig-no-row = Ninguna fila de este tubo ({ $rows } agujeros) se puede repartir por igual entre { $bights } senos: admite { $can_take } senos.
rig-cord-thick = Un cabo de { $cord } es más grueso que el tubo de { $tube }: usa un cabo más fino o un tubo más grueso.
# $most_bights and $most_passes: the most that do go, or 0 for none.
rig-no-tuck = { $bights } senos en { $passes ->
        [one] 1 pasada
       *[other] { $passes } pasadas
    } no dejan sitio para pasar el cabo en este tubo: usa un tubo de { $tube } o más{ $most_bights ->
        [0] { "" }
       *[other] , o como mucho { $most_bights } senos
    }{ $most_passes ->
        [0] { "" }
        [one] , o 1 pasada
       *[other] , o como mucho { $most_passes } pasadas
    }.
# $gap: between the pins. $needed: what the cords of a bight take. $pin: pins no thicker than
# this would do, or none.
rig-pins-too-close = Con { $bights } clavijas, este tubo deja { $gap } entre ellas, y los cabos de un seno necesitan { $needed }: usa un tubo de { $tube } o más{ $most_bights ->
        [0] { "" }
       *[other] , o como mucho { $most_bights } senos
    }{ $most_passes ->
        [0] { "" }
        [one] , o 1 pasada
       *[other] , o como mucho { $most_passes } pasadas
    }{ $pin ->
        [none] { "" }
       *[other] , o clavijas de { $pin } de grueso como mucho
    }.
rig-tube-short = Este nudo ocupa con sus anillos { $needed } del tubo, que tiene { $length } de largo: usa un tubo más largo, o un nudo de menos ramales.
shape-cord-thick = Un cabo de { $cord } es más grueso que aquello que rodea, { $object }: usa un cabo de { $object } como mucho.
# $cord_below: a cord thinner than this does, or none.
shape-too-full = { $bights } senos en { $passes ->
        [one] 1 pasada
       *[other] { $passes } pasadas
    } de cabo de { $cord } no caben uno junto a otro alrededor del objeto: usa { $most_bights ->
        [0] { $most_passes ->
            [0] menos senos y menos pasadas
            [one] 1 pasada
           *[other] como mucho { $most_passes } pasadas
        }
       *[other] como mucho { $most_bights } senos
    }{ $cord_below ->
        [none] { "" }
       *[other] , o un cabo de menos de { $cord_below }
    }.
shape-narrower = Este nudo tiene como mínimo { $least } de ancho y no puede cubrir solo { $given }: usa menos ramales, o cubre más.
rig-cord-short = Este nudo lleva { $needed } de cabo y hay { $at_hand }: toma más cabo, menos ramales o menos pasadas.
rig-with-what = No se dan tubo ni cabo: añádelos, por ejemplo --tube 45mm --rows 14,20 --cord 4mm, o aquello sobre lo que se hace en su sitio, por ejemplo --object 30mm --in-place --cord 4mm.

## Why nothing fits, and what would

fit-cord-thick = Nada encaja: un cabo de { $cord } es más grueso que aquello que rodea, { $object }; usa un cabo más fino.
# $cord: a cord with which it goes round, or none.
fit-too-many-cords = Los cabos de este nudo no dan la vuelta uno al lado de otro a lo que cubre: { $cord ->
        [none] usa un cabo mucho más fino, o cubre algo más grueso.
       *[other] usa un cabo de { $cord }, o cubre algo más grueso.
    }
# $cord: a cord with which something fits, or none.
fit-cover-short = Nada encaja: con este cabo el nudo más estrecho tiene { $narrowest } de ancho, más que { $wanted }, que es lo que se va a cubrir; { $cord ->
        [none] cubre más
       *[other] cubre más, o usa un cabo de { $cord }
    }.
fit-cover-long = Nada encaja: los nudos que llegan a { $wanted } con este cabo dejan al aire demasiado objeto; { $cord ->
        [none] cubre menos, o haz varios nudos seguidos
       *[other] cubre menos, o usa un cabo de { $cord }
    }.
# $would_fit, $can_take: bights.
fit-no-row = Nada encaja en este tubo: los nudos que lo cubrirían tienen { $would_fit } senos, y las filas del tubo admiten { $can_take }; usa otro tubo o una fila que se pueda repartir entre uno de esos números.
# $pin: pins no thicker than this would do as well, or none.
fit-tube-thin = Nada encaja en este tubo: con { $tube } de diámetro es demasiado fino para los cabos; usa un tubo de { $would_do } o más{ $pin ->
        [none] { "" }
       *[other] , o clavijas de { $pin } de grueso como mucho
    }.
fit-tube-short = Nada encaja en este tubo: tiene { $length } de largo, y un nudo con sus anillos ocupa { $would_do } como mínimo; usa un tubo más largo.
# $others: knots that were not asked for.
fit-filtered = Nada encaja con lo que pides ver, y { $others ->
        [one] otro nudo sí encaja
       *[other] otros { $others } nudos sí encajan
    }: pide menos cosas a la vez.
fit-have-short = Nada encaja con el cabo disponible: lo mínimo que serviría es { $least }, y hay { $at_hand }; consigue más cabo, o dale menos que cubrir.
fit-nothing = Nada encaja: prueba con un cabo más fino, con otro largo que cubrir, o sin un tubo determinado.

## The knots that fit

# $count: how many come out as long as asked. $near: how many miss that a little. $shown: how many are listed.
fit-heading = { $count ->
        [0] Ningún nudo sale con { $cover } justos en un objeto de { $object } de diámetro con cabo de { $cord }
        [one] Un nudo cubre { $cover } de un objeto de { $object } de diámetro con cabo de { $cord }
       *[other] { $count } nudos cubren { $cover } de un objeto de { $object } de diámetro con cabo de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , y uno se queda cerca
       *[other] , y { $near } se quedan cerca
    }{ $shown ->
        [0] .
       *[other] ; primero los { $shown } mejores.
    }
# The parts of the list, each above its knots. $cover: the length asked for.
fit-section = { $section ->
        [single] Sencillos
        [doubled] Dobles
        [tripled] Triples
        [interwoven] Entrelazados, dos senos anidados
        [near] Algo más cortos o más largos que { $cover }
        [hampered] Con trabajo de más en este tubo
       *[further] { $ground ->
            [ball] Otros
            [mat] Otros
           *[round] Otros que cubren { $cover }
        }
    }
# Below the table, where a range begins with “~”.
fit-unsure = ~: ceñido del todo, un nudo así puede salir hasta un quinto más estrecho, porque sus cabos se juntan más de lo que dice la regla.
# Below the table, when interwoven knots are among plain ones. $nested: bights nested in them.
fit-interwoven = Los nudos entrelazados tienen senos anidados uno dentro de otro, con un cabo para cada uno: «--nested { $nested }» muestra más.
fit-more = «--most { $count }» los muestra todos.
# Below the table.
# $pace: own when the log knows the tyer’s, or usual.
fit-times = { $pace ->
        [own] Los tiempos van a tu propio ritmo.
       *[usual] Los tiempos van a un ritmo corriente, porque el registro aún no conoce el tuyo.
    }
# How long a tie takes, in $hours and $minutes of 5 each, and the same as it is said.
work-time = { $hours ->
        [0] { $minutes } min
       *[other] { $minutes ->
            [0] { $hours } h
           *[other] { $hours } h { $minutes } min
        }
    }
work-time-say = { $hours ->
        [0] { $minutes ->
            [one] 1 minuto
           *[other] { $minutes } minutos
        }
        [one] 1 hora{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } minutos
        }
       *[other] { $hours } horas{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } minutos
        }
    }
# The work on a tie. $time: as above. $pace: own or usual. $cost: an amount, or none.
labour = Lleva { $tucks ->
        [one] 1 paso por debajo
       *[other] { $tucks } pasos por debajo
    }{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(empezado encima, { $other_tucks })
    } y, { $pace ->
        [own] a tu ritmo
       *[usual] a un ritmo corriente
    }, más o menos { $time }{ $cost ->
        [none] .
       *[other] ; cuesta { $cost }.
    }
# Knots that the tube hampers stand last. $first: the place of the first of them; what to take care of with it follows.
fit-hampered = { $first ->
        [1] En este tubo todos estos nudos dan trabajo de más; en el primero:
       *[other] En este tubo dan trabajo de más los nudos a partir del número { $first }; en ese:
    }
fit-twins = Cada nudo se da en el tejido que pide menos pasos por debajo: encima de uno, debajo de uno, empezado encima o debajo; los dos se ven igual. «--weave 1» conserva el que empieza encima.
# Ties that the figures of the knots listed were corrected from: $least to $most.
fit-corrected = { $least ->
        [0] Algunas cifras están corregidas con lo que mediste, { $most ->
            [one] 1 labor
           *[other] hasta { $most } labores
        }.
       *[other] Corregido con lo que mediste, { $most ->
            [one] 1 labor
           *[other] { $most } labores
        }.
    }
# Heads of columns.
fit-head-rank = { "#" }
fit-head-leads = ramales
fit-head-bights = senos
fit-head-passes = pasadas
fit-head-strands = hebras
fit-head-width = ancho
fit-head-range = de – a
# $ground: mat or ball.
fit-head-bare = { $ground ->
        [mat] hueco
       *[ball] al aire
    }
fit-head-hides = tapa
fit-head-scallop = ondas
fit-head-cord = cabo a cortar
fit-head-tucks = por debajo
fit-head-time = tiempo
fit-head-drawn = ajuste
fit-head-cost = coste
# What stands in them.
fit-cell-width = { $width }
fit-cell-range = { $sure ->
        [no] ~ { $tight } – { $widest }
       *[yes] { $tight } – { $widest }
    }
fit-cell-bare = { $bare ->
        [none] { "–" }
       *[other] { $bare }
    }
fit-cell-hides = { $hides } %
fit-cell-scallop = { $scallop }
fit-cell-cord = { $long }
fit-cell-time = { $time }
fit-cell-cost = { $cost }
fit-cell-drawn = { $drawn ->
        [tight] ceñido
        [eased] holgado
       *[open] abierto
    }

# A knot on the plan screen, in large type. Ejemplo: 5 ramales y 7 senos, doble
plan-answer = { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $passes ->
        [1] sencillo
        [2] doble
        [3] triple
       *[other] { $passes } pasadas
    }
# Below it, in two lines. $drawn: where it is drawn up to between $tight and $widest. $scallop: how
# far the gaps between bights reach in. Ejemplo: 36 mm de ancho, ceñido (de 35,8 mm a 50,5 mm), tapa el 86 %, ondas de 4,2 mm de profundidad
plan-answer-shape = { $width } de ancho, { $drawn ->
        [tight] ceñido
        [eased] holgado
       *[open] abierto
    } (de { $tight } a { $widest }{ $sure ->
        [no] , ceñido quizá hasta un quinto menos
       *[yes] { "" }
    }), tapa el { $hides } %, ondas de { $scallop } de profundidad
# $other_tucks: tucks of the same weave begun with over, when this is begun with under, or 0.
# $time: as above. $cost: or none. Ejemplo: 1,88 m de cabo, 28 tramos a 66°, 36 pasos por debajo (empezado encima, 48), cerca de 40 min
plan-answer-work = { $long } de cabo{ $strands ->
        [one] { "" }
       *[other] { " " }en { $strands } hebras
    }, { $legs } tramos a { $angle }°, { $tucks } pasos por debajo{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(empezado encima, { $other_tucks })
    }, cerca de { $time }{ $cost ->
        [none] { "" }
       *[other] , cuesta { $cost }
    }
# Spoken when it is chosen. $rank: 1 is the best. $count: how many there are.
# Ejemplo: Nudo 1 de 12: 5 ramales y 7 senos, doble. Sale con 29,8 milímetros de ancho y tapa el 100 por
# ciento. Lleva 1,88 metros de cabo y 24 tramos.
plan-answer-say = Nudo { $rank } de { $count }: { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $passes ->
        [1] sencillo
        [2] doble
        [3] triple
       *[other] { $passes } pasadas
    }{ $strands ->
        [one] { "" }
       *[other] , en { $strands } hebras
    }. Sale con { $width } de ancho, { $drawn ->
        [tight] ceñido del todo{ $sure ->
            [no] , quizá hasta un quinto más estrecho
           *[yes] { "" }
        }
        [eased] un poco holgado
       *[open] dejado abierto
    }{ $near ->
        [yes] , no justo lo pedido
       *[no] { "" }
    }, y tapa el { $hides } por ciento. Lleva { $long } de cabo, { $legs } tramos, { $tucks } pasos por debajo y más o menos { $time }{ $cost ->
        [none] .
       *[other] , y cuesta { $cost }.
    }

## A rigged tube, as the command rig prints it

# $on: tube, round, taper, ball or mat. $ground: what it is for: the same but tube.
rig-heading = { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $passes ->
        [1] sencillo
        [2] doble
        [3] triple
       *[other] { $passes } pasadas
    }, { $on ->
        [round] en su sitio, sobre un objeto de { $object } de diámetro,
        [taper] en su sitio, sobre una pieza que va de { $object } a { $top },
        [ball] en su sitio, sobre una bola de { $object } de diámetro,
        [mat] plano sobre una tabla, de { $object } de borde a borde,
       *[tube] en un tubo de { $tube } de diámetro{ $ground ->
            [taper] , para una pieza que va de { $object } a { $top },
            [ball] , para una bola de { $object } de diámetro,
           *[round] { "" }
        }
    } con cabo de { $cord }
# $ground: round, taper, ball or mat. $outer: a mat from edge to edge. $bare: what the bights leave open at the
# poles of a ball or in the middle of a mat, or none. $slack: or none.
rig-finished = Acabado: { $ground ->
        [mat] { $outer } de diámetro, { $bare ->
            [none] con el centro cerrado
           *[other] con un hueco de { $bare }
        }, el aro de { $width } de ancho
        [ball] { $width } de ancho sobre la bola, { $bare ->
            [none] con los polos cerrados
           *[other] con { $bare } al aire en cada polo
        }
       *[round] { $width } de ancho
    }, { $drawn ->
        [tight] ceñido del todo{ $sure ->
            [no] , quizá hasta un quinto más estrecho
           *[yes] { "" }
        }
       *[open] abierto desde { $tight }
    }, tapa el { $hides } %, ondas de { $scallop } de profundidad{ $ground ->
        [mat] { "" }
       *[round] , tramos a { $angle }° del eje
    }.{ $slack ->
        [none] { "" }
       *[other] { " " }Al igualar, cada tramo suelta { $slack }.
    }
rig-in-the-bag = Lo que necesitas
rig-all-holes = Agujeros { $holes }
rig-kept-tube = El tubo queda guardado como { $name }: a partir de ahora da --tube { $name }.
rig-kept-cord = El cabo queda guardado como { $name }: a partir de ahora da --cord { $name }.

# $option takes a whole number.
option-number = { $option } lleva un número entero de { $least } a { $most } y «{ $given }» no lo es: prueba con { $option } { $example }.

## The plan screen

plan-heading = ¿Qué vas a cubrir?
plan-measure-across = diámetro
plan-measure-round = contorno
plan-object = Su diámetro
plan-girth = Su contorno
plan-cover = Largo que cubrir
plan-cord = Cabo
plan-tube = Tubo
plan-rows = Filas de agujeros
plan-pin = Largo de clavija
plan-thread = Rosca de clavija
plan-ring-width = Ancho de un anillo
plan-tube-length = Largo del tubo
plan-have = Cabo disponible

plan-hint = Longitudes como 30, 3cm, 1 1/4 in o 5/32in. El tubo, sus filas y clavijas, y el cabo disponible pueden quedar vacíos.
plan-answers = Nudos que encajan
plan-all = { $count ->
        [one] Un nudo encaja
       *[other] { $count } nudos encajan, primero los mejores
    }
plan-wanting = { $asking ->
        [cover] ¿Cuánto de él se va a cubrir?
       *[cord] ¿Qué grosor tiene el cabo?
    }
# Below the answers, when no tube is named.
plan-without-tube = Indica también un tubo, y el programa te guiará paso a paso para aparejarlo.

# A filter above the list. $filter: passes, from-three, one-cord, most-legs, firm or weave. $key: its key.
# $choice: what it is set to, 0 for every knot; passes 1 to 4, legs at the most. Ejemplo: F2: doble
plan-filter = { $key }: { $filter ->
        [passes] { $choice ->
            [0] todas las pasadas
            [1] sencillo
            [2] doble
            [3] triple
           *[other] { $choice } pasadas
        }
        [from-three] { $choice ->
            [0] todos los ramales
           *[other] desde 3 ramales y senos
        }
        [one-cord] { $choice ->
            [0] todos los cabos
           *[other] un solo cabo
        }
        [most-legs] { $choice ->
            [0] cualquier largo
           *[other] { $choice } tramos como mucho
        }
        [nested] { $choice ->
            [0] senos anidados o sin anidar
            [1] senos sin anidar
           *[other] { $choice } senos anidados
        }
        [firm] { $choice ->
            [0] cabo como se guardó
            [1] cabo duro y redondo
            [2] cabo blando
           *[other] cabo plano o hueco
        }
       *[weave] { $choice ->
            [0] menos pasos por debajo
           *[other] empezado encima
        }
    }
# The same, said when it is changed.
plan-filter-say = { $filter ->
        [passes] { $choice ->
            [0] Nudos de cualquier número de pasadas.
            [1] Solo nudos sencillos.
            [2] Solo nudos dobles.
            [3] Solo nudos triples.
           *[other] Solo nudos de { $choice } pasadas.
        }
        [from-three] { $choice ->
            [0] Cualquier número de ramales y senos.
           *[other] Tres ramales y tres senos, o más.
        }
        [one-cord] { $choice ->
            [0] Nudos de cualquier número de cabos.
           *[other] Solo nudos de un cabo.
        }
        [most-legs] { $choice ->
            [0] Labores de cualquier largo.
           *[other] Labores de { $choice } tramos como mucho.
        }
        [nested] { $choice ->
            [0] Nudos sin senos anidados y los mejores entrelazados.
            [1] Solo nudos sin senos anidados.
           *[other] Solo nudos entrelazados, con { $choice } senos anidados en cada borde.
        }
        [firm] { $choice ->
            [0] El cabo como se guardó, o si no, blando.
            [1] Cabo duro y redondo, que conserva su forma.
            [2] Cabo blando, trenzado o colchado.
           *[other] Cabo plano o hueco, que se aprieta mucho.
        }
       *[weave] { $choice ->
            [0] El tejido que pide menos pasos por debajo.
           *[other] Encima de uno, debajo de uno, empezado encima.
        }
    }

# The plan screen, come back to with something filled in.
plan-again-say = Plan, como lo dejaste.
plan-say = Plan. Elige qué cubres y si el nudo se puede deslizar encima; después escribe su grosor, cuánto se va a cubrir y qué cabo. El tabulador avanza, las flechas arriba y abajo eligen un nudo, Intro lo toma.
# Said when a field is come to. $text: what is typed there, or none.
# Ejemplo: Cabo: 4mm. Avance de página recorre los conocidos.
plan-field-say = { $asking ->
        [object] Diámetro del objeto
        [girth] Contorno del objeto
        [ball] Diámetro de la bola
        [mat] Tamaño del tapete
        [in-place] Hecho sobre lo que cubre
        [cover] Largo que cubrir
        [cord] Cabo
        [tube] Tubo
        [rows] Filas de agujeros de cada anillo
        [pin] Largo de las clavijas
        [thread] Rosca de las clavijas
        [ring-width] Ancho de cada anillo
        [tube-length] Largo del tubo
       *[have] Cabo disponible
    }{ $text ->
        [none] .
       *[other] : { $text }.
    }{ $asking ->
        [object] { " " }Avance de página cambia a su contorno.
        [girth] { " " }Avance de página cambia a su diámetro.
        [cord] { " " }Avance de página recorre los conocidos.
        [tube] { " " }Avance de página recorre los guardados.
       *[other] { "" }
    }

# $rows: holes of the rows of the tube. $nested: rows that are needed, in line.
rig-too-few-rows = { $nested } filas anidadas de { $bights } clavijas necesitan { $nested } filas de agujeros que estén en línea, y que se repartan por igual entre { $bights } senos; este tubo tiene { $rows } agujeros: usa una tira de papel en un tubo sin anillos, menos filas u otro número de senos.
# $ring: width of the rings. $needed: the least that does. $nested: rows of pins at each rim.
rig-ring-narrow = { $nested } filas anidadas de clavijas con sus senos necesitan anillos de { $needed } de ancho como mínimo, y estos tienen { $ring }: usa anillos más anchos, un cabo más fino o una tira de papel en un tubo sin anillos.
