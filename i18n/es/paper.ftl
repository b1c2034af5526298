# The paper screen: what is made of a tie to be taken along, and where it goes.

paper-heading = Para llevar

# How the screen is worked. Spoken as well.
paper-how = En papel o como imagen en movimiento: arriba y abajo eligen, las flechas de los lados cambian el tipo de archivo, la barra espaciadora lo crea.

# What can be made. $kind: card, strip, stage or reel.
paper-name = { $kind ->
        [card] Ficha
        [strip] Tira
        [board] Hoja de tabla
        [stage] Dibujo del paso
       *[reel] Imagen en movimiento
    }

# What each is for. Spoken as well.
paper-for = { $kind ->
        [card] Todos sus datos y cada tramo en una tabla, para una tarde sin ordenador.
        [strip] Números de las clavijas y marcas de los agujeros a tamaño real, para rodear con ellos el tubo.
        [board] Dónde van los alfileres en T a tamaño real, para sujetarla a la tabla con cinta: en varias páginas si el tapete es grande.
        [stage] El nudo tal como está ahora, con las palabras del paso.
       *[reel] El nudo entero, tramo a tramo con sus palabras, para dárselo a una clase.
    }

# Spoken when one gets the focus. $form: the kind of file, such as PDF.
paper-choice = { $kind ->
        [card] Ficha
        [strip] Tira
        [board] Hoja de tabla
        [stage] Dibujo del paso
       *[reel] Imagen en movimiento
    }, como archivo { $form }.

paper-file = Tipo de archivo
paper-paper = Papel
# $paper: A4 or Letter.
paper-size = Papel: { $paper }.

# What stands over the system’s own window.
paper-dialog = { $kind ->
        [card] Adónde va la ficha
        [strip] Adónde va la tira
        [board] Adónde va la hoja de tabla
        [stage] Adónde va el dibujo
       *[reel] Adónde va la imagen en movimiento
    }

paper-asking = El sistema pregunta en una ventana propia adónde va el archivo. Con la barra espaciadora escribes la ruta aquí, Escape lo anula.
paper-path = Guardar como: la ruta del archivo. Intro lo crea.
paper-path-missing = No se da ninguna ruta: escribe una que acabe en el nombre del archivo, por ejemplo ~/timon.
paper-exists = «{ $file }» ya existe: pulsa Intro otra vez para sobrescribirlo, o cambia el nombre.

paper-making = { $kind ->
        [card] Se está haciendo la ficha.
        [strip] Se está haciendo la tira.
        [board] Se está haciendo la hoja de tabla.
        [stage] Se está haciendo el dibujo.
       *[reel] Se está haciendo la imagen en movimiento.
    }
# $done of $count pages or frames.
paper-progress = { $count ->
        [0] Empieza.
       *[other] { $done } de { $count } hechas.
    }
# $files: how many files there are.
paper-made = { $kind ->
        [card] La ficha está en «{ $file }».
        [strip] La tira está en «{ $file }».
        [board] La hoja de tabla está en «{ $file }».
        [stage] El dibujo está en «{ $file }».
       *[reel] La imagen en movimiento está en «{ $file }».
    }{ $files ->
        [one] { "" }
       *[other] { " " }Cada página tiene su propio archivo, { $files } en total.
    }
paper-not-opened = Está en «{ $file }», y ningún programa lo ha abierto por sí solo.
paper-called-off = No se hace nada.
paper-stopping = Se detiene lo que se está haciendo. Si se queda colgado, sal otra vez.
paper-left-alone = Se deja a su suerte y quizá acabe más tarde. Elige de nuevo, o sal.
paper-closing = Antes se detiene lo que se está haciendo: cierra otra vez.
paper-no-tube = Una tira es tan larga como el contorno del tubo, y este nudo no tiene indicado ningún tubo que lo admita: búscalo para un objeto, con su tubo.
# $what: card, strip or reel. $most: crossings or pages at most.
paper-long = { $what ->
        [card] Una ficha de este nudo tendría más de { $most } cruces que imprimir: haz mejor el dibujo de un paso.
        [strip] Una tira para este tubo ocuparía más de { $most } páginas: comprueba el diámetro del tubo.
       *[reel] Una imagen en movimiento de este nudo mostraría más de { $most } cruces, uno tras otro: haz la ficha, o el dibujo de un paso.
    }

## Keys

key-on-paper = en papel
key-paper-make = crearlo
key-paper-below = siguiente
key-paper-above = el anterior
key-paper-form = otra clase de archivo
key-paper-size = otro papel
key-paper-open = abrirlo
key-paper-stop = parar
key-paper-type = escribir la ruta
key-photograph = elegir la fotografía

## The photograph of a finished tie

log-photograph-choose = Elegir…
log-photograph-typed = El sistema no muestra aquí ninguna ventana para archivos: escribe la ruta de la fotografía.
log-photograph-typed-or-dropped = El sistema no muestra aquí ninguna ventana para archivos: escribe la ruta de la fotografía, o suéltala en esta ventana.
