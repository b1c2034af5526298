# The shelf: ties that wait, the log of finished ones, and what can be wrong with their files.

## The shelf screen

shelf-heading = Mis nudos
shelf-empty = Aquí no hay nada todavía: aquí estará cada nudo que empieces. ¿Empezamos por el primero?
shelf-empty-say = Mis nudos. Aquí no hay nada todavía. Pulsa la barra espaciadora para empezar el primer nudo, o Escape para volver.

# How a tie stands. $state: waiting, finished or away.
# Ejemplo: 58 por ciento, 14 de 24 tramos, última vez ayer
shelf-tie-stand = { $state ->
        [finished] Acabado
        [away] Retirado al { $percent } por ciento
       *[waiting] { $percent } por ciento
    }, { $laid } de { $legs } tramos, última vez { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] hoy
               *[other] hace { $minutes } min
            }
           *[other] hace { $hours } h
        }
        [one] ayer
       *[other] hace { $days } días
    }

# Whether something was logged of a finished tie. $logged: yes or no.
shelf-tie-log = { $logged ->
        [yes] En el cuaderno
       *[no] Aún no está en el cuaderno: L apunta lo que se usó
    }

# Spoken when the shelf appears. Ejemplo: Mis nudos. 3 nudos. Arriba y abajo pasan de uno a otro.
shelf-say = Mis nudos. { $ties ->
        [one] Un nudo.
       *[other] { $ties } nudos. Las flechas arriba y abajo pasan de uno a otro, la barra espaciadora retoma uno.
    }

# Spoken when a tie gets the focus.
# Ejemplo: 1 de 3. Caña del timón. 5 ramales y 7 senos, doble. Pasada guía, 58 por ciento, última vez ayer.
# $name: what its tyer calls it, or none. $named: yes or no. $phase: kit, rig, lead,
# follow, check, lift, fair or finish. $state: waiting, finished or away. $note: what its tyer wrote; $noted: yes
# or no.
shelf-tie-say = { $number } de { $ties }. { $named ->
        [yes] { $name }.
       *[no] { "" }
    } { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $passes ->
        [one] sencillo
        [2] doble
        [3] triple
       *[other] { $passes } pasadas
    }. { $state ->
        [finished] Acabado
       *[other] { $state ->
            [away] Retirado.
           *[waiting] { "" }
        } { $phase ->
            [kit] Reuniendo lo necesario
            [rig] Aparejando
            [lead] Pasada guía
            [follow] { $pass ->
                [2] Segunda pasada
                [3] Tercera pasada
                [4] Cuarta pasada
                [5] Quinta pasada
                [6] Sexta pasada
                [7] Séptima pasada
                [8] Octava pasada
               *[9] Novena pasada
            }
            [check] En el repaso tras la pasada { $pass }
            [lift] { -coming-off }
            [fair] Igualando
           *[finish] Rematando los chicotes
        }, { $percent } por ciento
    }, última vez { $days ->
        [0] hoy
        [one] ayer
       *[other] hace { $days } días
    }. { $noted ->
        [yes] Nota: { $note }
       *[no] { "" }
    }

# All logged ties together.
# Ejemplo: En el cuaderno: 4 nudos, 192 tramos, 6 horas y 20 minutos, 18,4 m de cabo.
# $cord: a length, or none when nothing was measured.
shelf-totals = En el cuaderno: { $ties ->
        [one] 1 nudo
       *[other] { $ties } nudos
    }, { $legs } tramos, { $hours ->
        [0] { $minutes ->
            [one] 1 minuto
           *[other] { $minutes } minutos
        }
        [one] 1 hora y { $minutes ->
            [one] 1 minuto
           *[other] { $minutes } minutos
        }
       *[other] { $hours } horas y { $minutes ->
            [one] 1 minuto
           *[other] { $minutes } minutos
        }
    }{ $cord ->
        [none] .
       *[other] , { $cord } de cabo.
    }

# $ties: so many are not laid out above or below those that are.
shelf-more-ties = { $ties ->
        [one] Hay 1 nudo más que no se ve: las flechas arriba y abajo llevan a él.
       *[other] Hay { $ties } nudos más que no se ven: las flechas arriba y abajo llevan a ellos.
    }

# The tyer's own pace. 
shelf-pace = Tu ritmo: { $seconds } segundos por tramo.

shelf-prompt-name = Nombre de este nudo
shelf-prompt-note = Nota para este nudo
shelf-prompt-backup = Copiar todos los nudos y el cuaderno a este archivo nuevo
shelf-prompt-bring-in = Traer un nudo o una copia de seguridad de este archivo

shelf-has-name = Nombre cambiado.
shelf-has-note = Anotado.
shelf-begun-again = El mismo nudo queda empezado de nuevo y es el primero.
shelf-is-away = Retirado. Sigue aquí, pero ya no en la primera pantalla.
shelf-is-out = Sacado de nuevo.
shelf-is-deleted = Borrado. Pulsa U para recuperarlo.
shelf-is-back = Recuperado.
shelf-nothing-deleted = No hay nada borrado que pueda volver: Supr borra el nudo elegido, y U lo recupera.
shelf-not-finished = Este nudo no está acabado. Lo que se usó se apunta cuando lo esté.

# $ties and $logged: how many; $left: how many could not be read and are not in it.
shelf-backed-up = { $ties ->
        [one] 1 nudo
       *[other] { $ties } nudos
    } y { $logged ->
        [one] 1 apunte del cuaderno
       *[other] { $logged } apuntes del cuaderno
    } están en { $file }.{ $left ->
        [0] { "" }
        [one] { " " }1 documento no se ha podido leer y no está incluido.
       *[other] { " " }{ $left } documentos no se han podido leer y no están incluidos.
    }

# $new: ties that came, $known: ties that were here already, $faults: lines that could not be
# read, $missing: lines that a backup cut short lacks; $shortened: names or notes that were cut; $presets: tubes and
# cords that came.
shelf-brought-in = De { $file }: { $new ->
        [0] ningún nudo nuevo
        [one] 1 nudo
       *[other] { $new } nudos
    } y { $logged ->
        [0] nada para el cuaderno.
        [one] 1 apunte del cuaderno.
       *[other] { $logged } apuntes del cuaderno.
    }{ $known ->
        [0] { "" }
        [one] { " " }1 nudo ya estaba aquí.
       *[other] { " " }{ $known } nudos ya estaban aquí.
    }{ $faults ->
        [0] { "" }
        [one] { " " }1 línea no se ha podido leer y se ha dejado fuera.
       *[other] { " " }{ $faults } líneas no se han podido leer y se han dejado fuera.
    }{ $missing ->
        [0] { "" }
        [one] { " " }Falta 1 al final.
       *[other] { " " }Faltan { $missing } al final.
    }{ $shortened ->
        [0] { "" }
        [one] { " " }Se ha recortado 1 nombre o nota: un nombre tiene 120 letras como mucho y una nota, 2000.
       *[other] { " " }Se han recortado { $shortened } nombres o notas: un nombre tiene 120 letras como mucho y una nota, 2000.
    }{ $presets ->
        [0] { "" }
        [one] { " " }También ha llegado 1 tubo o cabo guardado por su nombre.
       *[other] { " " }También han llegado { $presets } tubos y cabos guardados por su nombre.
    }{ $settings ->
        [no] { "" }
       *[yes] { " " }También han llegado los ajustes, y valen desde el próximo arranque.
    }

## A tie that is open elsewhere

look-only = Solo mirar: este nudo está abierto en otra ventana o terminal. Nada de lo que hagas aquí se guarda.
look-only-say = Solo mirar. Nada de lo que hagas aquí se guarda.

## The log

log-offer-say = Este era el último paso. Pulsa L para apuntar lo que se usó, o Escape para dejarlo.

log-heading = Lo que se usó de verdad
log-say = Lo que se usó de verdad. El tabulador pasa de campo en campo; lo que dejes vacío no cuenta. Intro lo guarda.
log-cord-name = Cabo, como tú lo llamas
log-cord = Diámetro del cabo
log-cut = Cabo cortado, en total
log-left-over = Cabo sobrante, en total
log-around = Diámetro de lo que va debajo
log-width = Ancho acabado
log-drawn = Ajuste
log-drawn-tight = ceñido del todo
log-drawn-open = dejado abierto
log-minutes = Minutos de trabajo
log-note = Nota
log-photograph = Fotografía, la ruta del archivo
log-hint = Longitudes con su unidad, como 4 mm, 5/32 in o 2,5 m; sin unidad, milímetros.
log-keep = Guardar
log-kept = Guardado.

# Said when a field gets the focus. $field: as the labels above. $value: what stands in it, or
# none.
log-field-say = { $field ->
        [cord-name] Cabo, como tú lo llamas
        [cord] Diámetro del cabo
        [cut] Cabo cortado, en total
        [left-over] Cabo sobrante, en total
        [around] Diámetro de lo que va debajo
        [width] Ancho acabado
        [drawn-tight] Ceñido del todo
        [drawn-open] Dejado abierto
        [minutes] Minutos de trabajo
        [note] Nota
        [photograph] Ruta de una fotografía
       *[keep] Guardar
    }{ $filled ->
        [yes] : { $value }.
       *[no] .
    }

# What is wrong with a field.
log-length-unreadable = «{ $given }» no es una longitud: da un número y una unidad, como 4 mm, 5/32 in o 2,5 m.
log-length-unit = «{ $given }» lleva una unidad que aquí no se conoce: valen mm, cm, m, in y ft; prueba con 4 mm.
log-length-comma = La coma de «{ $given }» se puede leer de dos maneras: escribe un punto para los decimales, o quítala.
log-length-fraction = «{ $given }» es una fracción sin unidad: si son pulgadas, escribe { $given }in; si no, ponle mm o cm.
log-length-positive = Una longitud tiene que ser mayor que cero y «{ $given }» no lo es: prueba con 4 mm, o deja el campo vacío.
log-length-range = Una longitud tiene que ir de 0,01 mm a 100 m y «{ $given }» queda fuera: prueba con otra unidad.
log-cord-thickness = El cabo tiene nombre pero no grueso: di qué grueso tiene, por ejemplo 4 mm, o quita el nombre.
log-left-over-more = Ha sobrado más cabo del que se cortó: comprueba que ambos llevan la unidad correcta.
# A measure is far from what it should come to, and is asked back once. $what: width or cord.
# $measured, $computed: lengths.
log-wild = { $what ->
        [width] El ancho acabado, { $measured }, está lejos de los { $computed } a los que debería llegar este nudo: mira si la cifra y la unidad están bien y, si lo están, guárdalo otra vez.
       *[cord] Lo cortado menos lo sobrante da { $measured } de cabo en el nudo, lejos de los { $computed } que debería llevar: mira si ambos están bien y, si lo están, guárdalo otra vez.
    }
log-minutes-unreadable = Los minutos tienen que ser un número de 0 a { $most } y «{ $given }» no lo es: prueba con 90.
log-no-photograph = No hay ningún archivo «{ $file }»: elige una fotografía que exista, o deja el campo vacío.
log-photograph-unread = No se ha podido leer «{ $file }» ({ $reason }): comprueba que se puede leer, o elige otra fotografía.
log-photograph-other = «{ $file }» no es una fotografía que se pueda mostrar: elige un archivo JPEG, PNG o WebP.
log-photograph-damaged = «{ $file }» está dañado y no se puede mostrar: cópialo otra vez de la cámara, o elige otra fotografía.
# $most: megabytes.
log-photograph-large = «{ $file }» es demasiado grande: una fotografía puede tener hasta { $most } megabytes y cien millones de píxeles. Elige una copia más pequeña.
log-leave-asks = Lo que has escrito no está guardado. Pulsa Escape otra vez para salir sin ello, o Intro para guardarlo.
log-not-kept = No se ha podido guardar. { $reason }

## In the terminal

# What stands before the ties in a list; the columns are set by the program.
shelf-no-ties = No hay ningún nudo en el estante de { $folder }.
shelf-verify-whole = { $documents ->
        [0] Todavía no hay nada en el estante.
        [one] El único documento del estante está entero.
       *[other] Los { $documents } documentos del estante están enteros.
    }
# $state: unchecked or aside.
shelf-verify-line = { $state ->
        [aside] { $file } estaba dañado y está apartado: bórralo cuando no lo necesites.
       *[unchecked] { $file } no tiene suma de comprobación con la que compararlo: retoma el nudo, pulsa una vez, y la tendrá.
    }
# $renumbered: yes when the shelf had another tie of its name.
shelf-imported = { $fate ->
        [here] El nudo { $id } ya está en el estante.
        [renumbered] El nudo está en el estante como { $id }; otro tiene ya el nombre { $was }.
       *[kept] El nudo { $id } está en el estante.
    }{ $shortened ->
        [yes] { " " }Se ha recortado su nombre o su nota: un nombre tiene 120 letras como mucho y una nota, 2000.
       *[no] { "" }
    }
shelf-exported = El nudo { $id } está en { $file }.
shelf-deleted = El nudo { $id } está borrado: «marlinspeak shelf undo { $id }» lo recupera.
shelf-undone = El nudo { $id } está de nuevo en el estante.
shelf-not-deleted = No hay ningún nudo { $id } borrado que pueda volver: «marlinspeak shelf list» muestra los que hay en el estante.

## What can be wrong

# While a command of the terminal waits for the disk.
disk-slow = El disco tarda en responder. En cuanto lo haga, esto sigue; Ctrl+C lo abandona y no deja ningún archivo a medio escribir.
shelf-error-io = { $doing ->
        [read] No se ha podido leer { $path } ({ $reason }): comprueba que existe y que puedes leerlo, y prueba de nuevo.
        [list] No se ha podido recorrer la carpeta { $path } ({ $reason }): comprueba que existe y que puedes leerla, y prueba de nuevo.
        [lock] No se ha podido bloquear { $path } ({ $reason }): comprueba que su carpeta existe y que puedes escribir en ella, y prueba de nuevo.
        [make] No se ha podido crear la carpeta { $path } ({ $reason }): comprueba que nada más tiene ese nombre y que el disco no está lleno, y prueba de nuevo.
        [move] No se ha podido mover { $path } ({ $reason }): comprueba que puedes escribir en su carpeta, y prueba de nuevo.
       *[write] No se ha podido escribir { $path } ({ $reason }): comprueba que su carpeta existe, que puedes escribir en ella y que el disco no está lleno, y prueba de nuevo.
    }

# $fault: what is wrong with the file. $place: where in it, in brackets with a space before them, or nothing.
shelf-error-unreadable = { $fault ->
        [too-large] { $path } es demasiado grande para ser lo que debería: comprueba que es el archivo correcto, o toma una copia que esté entera.
        [not-a-file] { $path } no es un archivo corriente: pon un archivo en su lugar, o toma otro.
        [not-json] { $path } no se puede leer como JSON{ $place }: toma una copia que esté entera.
        [newer] { $path } lo escribió un Marlinspeak más nuevo{ $place } y no se toca: usa para él el programa más nuevo.
        [checksum] { $path } está dañado, porque su contenido no da su suma de comprobación: toma una copia que esté entera.
        [knot] { $path } nombra un nudo que no se puede hacer: los ramales y los senos van de 2 a 999, las pasadas de 1 a 9; toma una copia que esté entera.
        [place] { $path } está en un punto que su nudo no tiene: toma una copia que esté entera.
       *[shape] { $path } no es lo que debería ser{ $place }: toma una copia que esté entera.
    }

shelf-error-gone = { $path } ya no está: se usa la copia anterior, si la hay.
shelf-error-stranger = { $path } está en el estante y no tiene nombre de nudo: muévelo a otro sitio y tráelo con «marlinspeak shelf import».
shelf-error-unwritable = El nudo { $id } no se puede escribir de modo que se lea igual: acorta su nombre y su nota, y prueba de nuevo.
shelf-error-no-such-tie = No hay ningún nudo { $id } en el estante: «marlinspeak shelf list» muestra los que hay.
shelf-error-not-an-id = «{ $given }» no es el nombre de un nudo del estante: un nombre así tiene de 6 a 32 letras de la a a la z y cifras; «marlinspeak shelf list» muestra los que hay.
shelf-error-exists = { $path } ya existe y no se sobrescribe: elige otro nombre, o añade --replace en la terminal.
shelf-error-no-home = El sistema no indica ninguna carpeta para tus datos: pon en XDG_DATA_HOME una, y prueba de nuevo.
