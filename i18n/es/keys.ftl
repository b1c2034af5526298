# The keys of the screens. Each stands on a button with what it does: a word or two, no sentence.

key-sheet-heading = Todas las teclas
key-sheet-close = Cerrar

## Headings of the groups

key-group-steps = Paso a paso
key-group-telling = Cómo se dice
key-group-voice = La voz
key-group-picture = El dibujo
key-group-here = En esta pantalla
key-group-places = Otras pantallas
key-group-program = La ventana

# What is printed on a key. $key: its name, or the sign on it. CtrlQ is Q with the control key.
key-cap = { $key ->
        [Space] Espacio
        [Enter] Intro
        [Escape] Esc
        [Delete] Supr
        [PageUp] Re Pág
        [PageDown] Av Pág
        [Backspace] Retroceso
        [CtrlQ] Ctrl Q
       *[other] { $key }
    }

## While a knot is tied

key-next = siguiente
key-back = atrás
key-again = otra vez
key-where = dónde estoy
key-wrong = error
key-leave = salir
key-take-back = deshacer
key-find-place = buscar mi sitio
key-leave-as-is = dejarlo como está
key-to-step = al paso
key-one-more-back = deshacer otro
key-lay-again = volver a tenderlo
key-yes = sí
key-no = no
key-cord = ¿llega el cabo?
key-join = se acaba o se deshilacha
key-over = por encima
key-under = por debajo
key-count-again = contar otra vez
key-one-more = sumar uno
key-that-is-it = eso es
key-digit-away = borrar cifra
key-elsewhere = en otra parte
key-another-place = otro lugar
key-briefly = breve
key-plainly = normal
key-taught = explicado
key-less-at-once = menos cruces a la vez
key-more-at-once = más cruces a la vez
key-slower = más lenta
key-faster = más rápida
key-pause = pausa
key-turn-picture = girar la vista
key-size-picture = mayor, sin dibujo, menor
key-whole-picture = en toda la pantalla
key-picture = dibujo
key-smaller = más pequeño
key-write-log = apuntarlo

## Other screens

key-take-up = retomarlo
key-begin = empezarlo
key-first-tie = hacerlo
key-form = decir el nudo por sus números
key-plan = un nudo para un objeto
key-shelf = mis nudos
key-course = primeros nudos
key-glossary = palabras del oficio
key-count = contar un nudo
key-settings = ajustes
key-next-field = campo siguiente
key-field-before = campo anterior
key-leave-form = dejar el formulario
key-another-pick = otra opción
key-pick-before = la opción anterior
key-take-knot = tomar este
key-knot-next = nudo siguiente
key-knot-before = nudo anterior
key-filter-passes = pasadas
key-filter-from-three = desde tres ramales
key-filter-one-cord = un solo cabo
key-filter-most-legs = duración del trabajo
key-filter-weave = tejido
key-filter-firm = clase de cabo
key-filter-nested = senos anidados
key-lesson-below = lección siguiente
key-lesson-above = lección anterior
key-exchange-weave = tejido al revés
key-word-below = palabra siguiente
key-word-above = palabra anterior
key-tie-below = nudo siguiente
key-tie-above = nudo anterior
key-first = el primero
key-last = el último
key-name = nombre
key-note = nota
key-same-again = empezar otro igual
key-put-away = retirar o sacar
key-delete = borrar
key-undo = recuperar
key-back-up = copia de seguridad
key-bring-in = traer
key-keep = guardarlo
key-line-below = línea siguiente
key-line-above = línea anterior
key-value-more = más
key-value-less = menos
key-what-for = para qué sirve
key-voice-before = voz anterior
key-voice-next = voz siguiente
key-take-voice = quedarse con esta voz
key-keep-voice = dejar la de antes
key-done = listo
key-leave-unchanged = dejar todo como estaba
key-how-loud = cuánto se oye
key-switch-on = activarlos

## The window

key-full-screen = pantalla completa
key-quit = salir
