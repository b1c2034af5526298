# The screens of the app.

app-title = Marlinspeak

## The very first start, where nothing was ever begun

first-start-heading = ¿Hacemos juntos el primero?
first-start-what = Una cabeza de turco es una trenza sin fin alrededor de un cabo, una barandilla o un mango. Aquí se hace de clavija en clavija sobre un tubo, paso a paso.
first-start-needs = Necesitas un tubo de unos 45 mm con dos anillos de cinco clavijas, los anillos a 12 mm uno de otro; un metro de cabo de 4 mm, cinta y un pasador.
first-start-begin = Hacer el primero
first-start-past = Otra cosa
first-start-say = ¿Hacemos juntos el primero? Necesitas un tubo de unos 45 mm con dos anillos de cinco clavijas, los anillos a 12 mm uno de otro; un metro de cabo de 4 mm, cinta y un pasador. Pulsa la barra espaciadora para empezar, o tabulador para otra cosa.

## The start screen

start-heading = ¿Qué vas a cubrir?
start-by-numbers = O di el nudo por sus números
start-name-heading = Di el nudo por sus números
start-leads = Ramales
start-bights = Senos
start-passes = Pasadas
start-weave = Tejido («o» encima, «u» debajo)
# $example: a row code for the leads that stand in the form, such as ouou.
start-weave-hint = Vacío es encima de uno, debajo de uno, empezado de modo que haya que pasar por debajo lo menos posible. 1 empieza encima; 2 es encima de dos; o un código de filas como «{ $example }» («o» encima, «u» debajo)
start-nested = Senos anidados (vacío: 1)
start-lands = El primer cabo llega a la fila (vacío: la de más adentro)
start-hand = Trabajar hacia la
start-hand-right = derecha
start-hand-left = izquierda
start-side = Las pasadas siguientes
start-side-bottom = del lado del pie
start-side-top = del lado de la cabeza
start-begin = Empezar este nudo

# What the knot in the form comes to.
# Ejemplo: 5 ramales y 7 senos, una hebra. Cada clavija de la cabeza está medio paso a la derecha de
# la clavija del pie de su número.
# $tucks: in all passes. $other_tucks: the same begun with over, when it is begun with under, or 0. $staggered: yes or no. $uneven: yes when the weave leaves a fault at the rims. $turns: whole
# turns of the tube on each leg.
start-facts = { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $strands ->
        [one] una hebra
       *[other] { $strands } hebras
    }, { $tucks ->
        [one] 1 paso por debajo
       *[other] { $tucks } pasos por debajo
    }{ $other_tucks ->
        [0] { "" }
       *[other] , o { $other_tucks } empezando encima
    }. { $staggered ->
        [yes] Cada { -pin } { -of-top } está medio paso a la { $hand ->
            [left] izquierda
           *[right] derecha
        } de la { -pin } { -of-bottom } de su número.
       *[no] Cada { -pin } { -of-top } está { -in-line-with } la { -pin } { -of-bottom } de su número.
    }{ $turns ->
        [0] { "" }
        [one] { " " }Cada tramo da { -whole-turn } y algo más.
       *[other] { " " }Cada tramo da { $turns } { -whole-turns } y algo más.
    }{ $uneven ->
        [yes] { " " }Con este tejido el dibujo se rompe en los bordes.
       *[no] { "" }
    }

# What no knot must be trusted with, where one is chosen.
choice-caution = El nudo solo adorna: que nunca sostenga a una persona ni una carga, y guarda cabo y piezas pequeñas lejos de los niños.

# A knot of many evenings: it may be a slip of the hand. $legs: legs of all passes.
start-huge = { $leads } ramales y { $bights } senos son { $legs } tramos, trabajo para muchas tardes. Pulsa otra vez para empezarlo, o cambia los números.

# A tie in the list. $kind: usual for over one, under one; run for other runs of $weave; twin for a run of
# $weave begun with under; code for another weave, row by row in $weave.
# Ejemplo: 5 ramales y 7 senos, 2 pasadas
# Ejemplo: 5 ramales y 7 senos, tejido 2, hacia la izquierda
start-tie = { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }{ $passes ->
        [one] { "" }
        [2] , doble
        [3] , triple
       *[other] , { $passes } pasadas
    }{ $kind ->
        [usual] { "" }
        [run] , tejido { $weave }
        [twin] { $weave ->
            [1] , empezado debajo
           *[other] , tejido { $weave } empezado debajo
        }
       *[code] , tejido { $weave }
    }{ $hand ->
        [left] , hacia la izquierda
       *[right] { "" }
    }

# The same in its shortest form, by leads and bights.
start-tie-short = { $leads } × { $bights }{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados
    }{ $passes ->
        [one] { "" }
        [2] , doble
        [3] , triple
       *[other] , { $passes } pasadas
    }

# How a tie is told, beside it on the tying screen. $most: crossings at once, 0 for whole legs.
# Ejemplo: normal, 4 a la vez
telling = { $detail ->
        [brief] breve
        [teach] explicado
       *[plain] normal
    }, { $most ->
        [0] tramos enteros
        [one] 1 cruce a la vez
       *[other] { $most } cruces a la vez
    }

# Ejemplo: 7 de 24 tramos tendidos, última vez hace 3 días
# $days: whole days since.
start-tie-progress = { $laid } de { $legs } tramos tendidos, última vez { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] hace un momento
               *[other] hace { $minutes } min
            }
           *[other] hace { $hours } h
        }
        [one] ayer
       *[other] hace { $days } días
    }

# Spoken when the app opens with a tie in progress.
start-offer-say = Hay un nudo a medias: { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $laid } de { $legs } tramos tendidos. Pulsa la barra espaciadora para retomarlo, o el tabulador para empezar otro.
# Spoken when it opens with none.
start-empty-say = No hay ningún nudo a medias. Pulsa la barra espaciadora para empezar uno de { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, o pulsa el tabulador para escribir otro.

## The tying screen

# A part of the job in the strip of all of them, a word each. $part: kit (packing the bag), rig, lead,
# follow, lift, fair or finish.
job-part = { $part ->
        [kit] Material
        [rig] Aparejar
        [lead] Guía
        [follow] Seguir
        [lift] { -Lifting }
        [fair] Igualar
       *[finish] Rematar
    }
# What is left of the job. $time: as in work-time. Example: about 25 min left
job-time-left = quedan unos { $time }

# Said when the depth was changed, before the step. $detail: brief, plain or teach.
detail-say = { $detail ->
        [brief] Breve.
        [teach] Explicado.
       *[plain] Normal.
    }
# $most: crossings told at once at the most; $whole: yes when legs are told whole.
at-once-say = { $fair ->
        [leg] Tramo a tramo.
        [item] De una en una.
        [page] Varias cosas a la vez.
        [round] El nudo entero de una vez.
       *[no] { $whole ->
            [yes] Tramos enteros.
           *[no] { $most ->
                [one] Un cruce
               *[other] Hasta { $most } cruces
            } a la vez.
        }
    }

## What the app has to report

# In the bar of keys, as short as can be, while the voice is lost.
voice-lost-sign = Sin voz
voice-lost = Sin voz: el servicio de voz no responde. Los pasos siguen por escrito, y la voz volverá por sí sola.
saving-foreseen = Lo que pulses en este nudo no se puede guardar ({ $reason }): se queda como se guardó, así que apunta el paso en que lo dejas. Para que se guarde, comprueba que puedes escribir en la carpeta y que hay sitio en el disco; cada pulsación lo vuelve a intentar.
saving-failed = No se puede guardar este nudo ({ $reason }). Se vuelve a intentar cada segundo: deja sitio en el disco o comprueba que puedes escribir en la carpeta, y no salgas antes de que esté guardado.
saving-nowhere = No se puede guardar este nudo ({ $reason }): no se llega a la carpeta de los nudos. Los pasos siguen; para conservar el nudo, comprueba que puedes escribir en la carpeta y empiézalo de nuevo.
saving-slow = Aún no está guardado: el disco tarda en responder. Sigue con el nudo y no salgas mientras se vea este aviso.
# $known: yes when the reason is known, else no.
leaving-unsaved = Lo último que has pulsado no está guardado{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }. Cierra otra vez para salir sin ello, o sigue y se vuelve a intentar.
saving-again = Este nudo vuelve a estar guardado.
focus-lost = Las teclas van a otra ventana. Haz clic aquí antes de seguir pulsando.

# A tie file that was set aside.
trouble-damaged = No se ha podido leer el archivo { $file } y se ha apartado como { $aside }; no se ha cambiado nada en él.
# The copy before a damaged file is used. $state: aside, gone or there. $copy: known, unknown or kept; $presses: how
# many presses it is behind.
trouble-restored = { $state ->
        [aside] El archivo { $file } estaba dañado y se ha apartado como { $aside }
        [gone] El archivo { $file } ya no está
       *[there] El archivo { $file } está dañado
    }; { $copy ->
        [kept] se usa la copia que se guardó antes.
        [unknown] se usa la copia anterior, y no se sabe cuánto atrás queda: compara el paso con tu labor.
       *[known] { $presses ->
            [0] se usa la copia anterior, que está en el mismo paso.
            [one] se usa la copia de una pulsación antes: compara el paso con tu labor.
           *[other] se usa la copia de { $presses } pulsaciones antes: compara el paso con tu labor.
        }
    }
# $path: the file or folder. $reason: as in reasons.ftl.
trouble-io = No se ha podido acceder a «{ $path }» ({ $reason }): comprueba que su carpeta existe y tiene sitio, y prueba de nuevo.
trouble-in-use = Este nudo está abierto en otra ventana o terminal: sigue allí, o pulsa otra vez la misma tecla para verlo sin cambiarlo.
