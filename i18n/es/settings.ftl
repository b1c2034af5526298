# The settings and the learn screen, and the presses that are the same on every screen.

settings-heading = Ajustes
settings-opening-say = Ajustes. Las flechas arriba y abajo van de línea en línea, las flechas laterales la cambian, Escape termina.

# The heading of a group of lines, with what they are for. $group: pedals, language, voice, signals,
# screen, pace, prices or presses.
settings-group = { $group ->
        [pedals] Pedales y teclas: qué se pulsa para qué
        [language] Idioma y medidas: en qué se dice todo
        [voice] La voz: cómo se dicen los pasos
        [signals] Señales: lo que se oye y se ve de una pulsación
        [screen] La pantalla: de qué tamaño y en qué colores
        [pace] Ritmo: seguir sin pulsar
        [prices] Precios: lo que vale un nudo
       *[presses] Pulsaciones: distinguir una de otra
    }
settings-none-learnt = Todavía no se ha enseñado nada: valen las teclas y los pedales de siempre.

# The name of a line.
settings-name = { $field ->
        [learn] Pedales y teclas
        [knocks] Golpes en el banco
        [try-knocks] Probar los golpes
        [voice] Voz
        [speed] Velocidad de la voz
        [volume] Volumen de la voz
        [pitch] Tono de la voz
        [cues] Sonidos breves
        [cue-volume] Volumen de los sonidos
        [flash] Destello en el marco
        [motion] Imágenes en movimiento
        [theme] Colores
        [distance] Del ojo a la pantalla
        [screen-width] Ancho de la imagen
        [pacing] Avanzar solo
        [price-metre] Precio del metro de cabo
        [price-hour] Precio de la hora de trabajo
        [bounce] Ignorar una segunda pulsación
        [long] Pulsación larga de siguiente: atrás
       *[double] Pulsación doble de siguiente: otra vez
    }

# The value on a line. $choice: number, name, or a choice of the line. $number in the unit of
# the line, or $length with its unit, or $amount of the tyer's own money; $name is the name of a
# voice.
settings-value = { $field ->
        [learn] { $number ->
            [0] Los de siempre · Intro: aprender otros
            [one] 1 aprendido · Intro: aprender de nuevo
           *[other] { $number } aprendidos · Intro: aprender de nuevo
        }
        [try-knocks] Intro: ver qué se toma por golpe
        [voice] { $choice ->
            [asking] Preguntando al servicio de voz
            [usual] La que elija el servicio de voz
            [natural] { $name }, natural
           *[name] { $name }
        }
        [speed] { $number } palabras por minuto
        [volume] { $number } %
        [pitch] { $number ->
            [50] Sin cambiar
           *[other] { $number } %
        }
        [cue-volume] { $number } %
        [theme] { $choice ->
            [light] Oscuro sobre claro
           *[dark] Claro sobre oscuro
        }
        [distance] { $length }
        [screen-width] { $choice ->
            [unknown] Desconocido: 96 píxeles por pulgada
           *[number] { $length }
        }
        [price-metre] { $choice ->
            [off] Sin fijar
           *[number] { $amount }
        }
        [price-hour] { $choice ->
            [off] Sin fijar
           *[number] { $amount }
        }
        [bounce] { $number ->
            [0] Nunca
           *[other] Durante { $number } milisegundos
        }
        [long] { $choice ->
            [off] No
           *[number] Tras { $number } milisegundos
        }
        [double] { $choice ->
            [off] No
           *[number] En menos de { $number } milisegundos
        }
       *[switch] { $choice ->
            [on] Sí
           *[off] No
        }
    }

# A line as it is said: name, value, what can be pressed. Arguments as for settings-value.
# Ejemplo: Velocidad de la voz: 165 palabras por minuto. Las flechas laterales la cambian.
settings-say = { $field ->
        [learn] { $number ->
            [0] Pedales y teclas: los de siempre. Pulsa Intro para aprender otros.
            [one] Pedales y teclas: uno aprendido. Pulsa Intro para aprender de nuevo.
           *[other] Pedales y teclas: { $number } aprendidos. Pulsa Intro para aprender de nuevo.
        }
        [knocks] { $choice ->
            [on] Golpes en el banco: activado. Dos son siguiente, tres son otra vez. Un micrófono los escucha; nada se graba ni se guarda, y solo se transmite cuándo hubo un golpe y con qué fuerza sonó. Las flechas laterales lo cambian.
           *[off] Golpes en el banco: desactivado. Activado, un micrófono escucha si das dos o tres golpes. Las flechas laterales lo cambian.
        }
        [try-knocks] Probar los golpes: encontrar dónde debe estar el micrófono. Pulsa Intro.
        [voice] { $choice ->
            [asking] Voz: se está preguntando al servicio de voz cuáles tiene.
            [usual] Voz: la que elija el servicio de voz. Las flechas laterales te dejan oír otras.
            [natural] Voz: { $name }, natural. Las flechas laterales te dejan oír otras.
           *[name] Voz: { $name }. Las flechas laterales te dejan oír otras.
        }
        [speed] Velocidad de la voz: { $number } palabras por minuto. Las flechas laterales la cambian.
        [volume] Volumen de la voz: { $number } por ciento. Las flechas laterales lo cambian.
        [pitch] { $number ->
            [50] Tono de la voz: el suyo propio. Las flechas laterales lo cambian.
           *[other] Tono de la voz: { $number } por ciento. Las flechas laterales lo cambian.
        }
        [cues] { $choice ->
            [on] Sonidos breves: activados. Las flechas laterales los cambian.
           *[off] Sonidos breves: desactivados. Las flechas laterales los cambian.
        }
        [cue-volume] Volumen de los sonidos: { $number } por ciento. Las flechas laterales lo cambian.
        [flash] { $choice ->
            [on] Destello en el marco de la pantalla: activado. Las flechas laterales lo cambian.
           *[off] Destello en el marco de la pantalla: desactivado. Las flechas laterales lo cambian.
        }
        [motion] { $choice ->
            [on] Imágenes en movimiento: activadas. Las flechas laterales lo cambian.
           *[off] Imágenes en movimiento: desactivadas. Las flechas laterales lo cambian.
        }
        [theme] { $choice ->
            [light] Colores: oscuro sobre claro. Las flechas laterales los cambian.
           *[dark] Colores: claro sobre oscuro. Las flechas laterales los cambian.
        }
        [distance] De tu ojo a la pantalla: { $length }. Las flechas laterales lo cambian.
        [screen-width] { $choice ->
            [unknown] Ancho de la imagen en tu pantalla: desconocido. Las flechas laterales lo cambian.
           *[number] Ancho de la imagen en tu pantalla: { $length }. Las flechas laterales lo cambian.
        }
        [pacing] { $choice ->
            [on] Avanzar solo a tu ritmo: activado. Cualquier pulsación lo detiene. Las flechas laterales lo cambian.
           *[off] Avanzar solo a tu ritmo: desactivado. Las flechas laterales lo cambian.
        }
        [price-metre] { $choice ->
            [off] Precio del metro de cabo: sin fijar. Las flechas laterales lo cambian.
           *[number] Precio del metro de cabo: { $amount }. Las flechas laterales lo cambian.
        }
        [price-hour] { $choice ->
            [off] Precio de la hora de trabajo: sin fijar. Las flechas laterales lo cambian.
           *[number] Precio de la hora de trabajo: { $amount }. Las flechas laterales lo cambian.
        }
        [bounce] { $number ->
            [0] Ignorar una segunda pulsación del mismo pedal: nunca. Las flechas laterales lo cambian.
           *[other] Ignorar una segunda pulsación del mismo pedal durante { $number } milisegundos. Las flechas laterales lo cambian.
        }
        [long] { $choice ->
            [off] Pulsación larga de siguiente, para ir atrás: desactivada. Las flechas laterales la cambian.
           *[number] Pulsación larga de siguiente, para ir atrás: tras { $number } milisegundos. Las flechas laterales la cambian.
        }
       *[double] { $choice ->
            [off] Pulsación doble de siguiente, para oírlo otra vez: desactivada. Las flechas laterales la cambian.
           *[number] Pulsación doble de siguiente, para oírlo otra vez: en menos de { $number } milisegundos. Las flechas laterales la cambian.
        }
    }

# Said when the speed is changed while tying.
speed-say = { $number } palabras por minuto.

# $aside: name of a file. $reason: what is wrong with it.
# The settings file is damaged. $state: aside when it was moved, else there. $kept: usual, copy, all or rest; $lost: the
# settings that could not be read.
settings-damaged = Los ajustes estaban dañados ({ $reason }){ $state ->
        [aside] { " " }y el archivo se ha apartado como { $aside }
       *[there] { "" }
    }; { $kept ->
        [copy] valen los que se guardaron antes.
        [saved] vale lo que se ha elegido desde entonces.
        [all] todos se pueden leer y valen, y cualquiera puede estar mal: repásalos.
        [rest] vale lo que se puede leer, y { $lost } queda como antes: repásalos.
       *[usual] valen los ajustes habituales.
    }
settings-newer = Los ajustes de { $file } los escribió un Marlinspeak más nuevo (versión { $version }) y no se tocan: valen los ajustes de siempre, y los cambios no se guardan.
settings-not-kept = No se ha podido acceder a los ajustes ({ $reason }): comprueba que la carpeta existe y no está llena; hasta entonces los cambios valen solo mientras la ventana esté abierta.

## The learn screen

learn-opening-say = Aprender pedales y teclas. Pulsa algo ya aprendido para saltar una línea, y dos veces para terminar. Escape lo deja todo como estaba.
learn-how = Pulsa algo ya aprendido: saltar esto · dos veces: listo

# Ejemplo: Pulsa lo que quieras usar para «siguiente».
learn-asks = { $intent ->
        [next] Pulsa lo que quieras usar para «siguiente».
        [back] Pulsa lo que quieras usar para «atrás».
        [again] Pulsa lo que quieras usar para «otra vez».
        [where] Pulsa lo que quieras usar para «dónde estoy».
        [slower] Pulsa lo que quieras usar para «más despacio».
        [faster] Pulsa lo que quieras usar para «más rápido».
        [pause] Pulsa lo que quieras usar para «pausa».
        [cord] Pulsa lo que quieras usar para «¿llega el cabo?».
        [join] Pulsa lo que quieras usar para «se acaba o se deshilacha».
       *[wrong] Pulsa lo que quieras usar para «error», cuando algo va mal.
    }

# What was pressed and what it is for.
# Ejemplo: La tecla F13 es «siguiente».
# $kind: space, knocks, key, mouse, pad (a button of a game controller), note, controller or programme
# (of MIDI). $name: the name or number of the key or button.
learn-learnt = { $kind ->
        [space] La barra espaciadora
        [knocks] La serie de { $name } golpes
        [mouse] El botón { $name } del ratón
        [pad] El botón { $name } del mando
        [note] La nota MIDI { $name }
        [controller] El controlador MIDI { $name }
        [programme] El programa MIDI { $name }
       *[key] La tecla { $name }
    } { $intent ->
        [next] es «siguiente».
        [back] es «atrás».
        [again] es «otra vez».
        [where] es «dónde estoy».
        [slower] es «más despacio».
        [faster] es «más rápido».
        [pause] es «pausa».
        [cord] es «¿llega el cabo?».
        [join] es «se acaba o se deshilacha».
       *[wrong] es «error», cuando algo va mal.
    }
learn-skipped-say = Saltado.
learn-done-say = Eso es todo, y queda guardado.

## While tying

paused = En pausa. P o siguiente continúa.
# The same in large type, above the keys that go on and what they do.
paused-shown = En pausa
paused-way = seguir
pace-held-say = Detenido. Siguiente continúa.
# Why the screen is kept on: the desktop may show it.
awake-reason = Hay un nudo abierto
screen-not-awake = El sistema no deja la pantalla encendida: puede apagarse mientras haces el nudo.

## The start screen by ear

# A part of the form when it gets the focus or changes: name, value, what can be pressed.
# $typed: what it holds. $state: empty when it holds nothing. $choice: right or left.
# Ejemplo: Ramales: 5. Escribe un número; el tabulador avanza, Intro empieza.
start-field-say = { $field ->
        [leads] { $state ->
            [empty] Ramales: nada aún. Escribe un número.
           *[typed] Ramales: { $typed }. Escribe un número; el tabulador avanza, Intro empieza.
        }
        [bights] { $state ->
            [empty] Senos: nada aún. Escribe un número.
           *[typed] Senos: { $typed }. Escribe un número; el tabulador avanza, Intro empieza.
        }
        [passes] { $state ->
            [empty] Pasadas: nada aún. Escribe un número.
           *[typed] Pasadas: { $typed }. Escribe un número; el tabulador avanza, Intro empieza.
        }
        [weave] { $state ->
            [empty] Tejido: encima de uno, debajo de uno, empezado de modo que haya que pasar por debajo lo menos posible. 1 empieza encima; también vale un código de filas; el tabulador avanza.
           *[typed] Tejido: { $typed }. 1 es encima de uno, debajo de uno; también vale un código de filas; el tabulador avanza.
        }
        [nested] { $state ->
            [empty] Senos anidados: ninguno. De 2 a 9 entrelazan otros tantos cabos; el tabulador avanza.
           *[typed] Senos anidados: { $typed }. 1 es un nudo sencillo; el tabulador avanza, Intro empieza.
        }
        [lands] { $state ->
            [empty] El primer cabo llega a la fila de más adentro de la cabeza. Un número es una fila, la 1 es la de más afuera; el tabulador avanza.
           *[typed] El primer cabo llega a la fila { $typed } de la cabeza, la 1 es la de más afuera; el tabulador avanza, Intro empieza.
        }
        [hand] { $choice ->
            [left] Trabajar hacia la izquierda. La barra espaciadora lo cambia; el tabulador avanza.
           *[right] Trabajar hacia la derecha. La barra espaciadora lo cambia; el tabulador avanza.
        }
        [side] { $choice ->
            [top] Seguir al primer cabo del lado de la cabeza. La barra espaciadora lo cambia; el tabulador avanza.
           *[bottom] Seguir al primer cabo del lado del pie. La barra espaciadora lo cambia; el tabulador avanza.
        }
        [round-hand] { $choice ->
            [hand] Se hace alrededor de la mano, sin tubo. La barra espaciadora lo cambia; el tabulador sigue.
           *[tube] Se hace en un tubo. La barra espaciadora lo cambia a alrededor de la mano; el tabulador sigue.
        }
       *[begin] Empezar este nudo: pulsa la barra espaciadora. Escape deja el formulario.
    }
