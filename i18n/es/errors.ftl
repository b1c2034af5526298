# One sentence for each thing that can go wrong: what is wrong, what is allowed, what to try.

# $quantity: leads, bights, passes, nested or lands. $given: what was typed.
# Ejemplo: El número de ramales tiene que ser entero y «cinco» no lo es: da un número de 2 a 99, por ejemplo 5.
knot-not-a-number = { $quantity ->
        [leads] El número de ramales
        [bights] El número de senos
        [nested] El número de senos anidados
        [lands] El número de la fila a la que llega el primer cabo
       *[passes] El número de pasadas
    } tiene que ser entero y «{ $given }» no lo es: da un número de { $least } a { $most }, por ejemplo { $example }.

# A field of the start screen is empty.
knot-empty = Falta { $quantity ->
        [leads] el número de ramales
        [bights] el número de senos
       *[passes] el número de pasadas
    }: da un número entero de { $least } a { $most }, por ejemplo { $example }.

knot-out-of-range = { $quantity ->
        [leads] El número de ramales
        [bights] El número de senos
        [nested] El número de senos anidados
        [lands] El número de la fila a la que llega el primer cabo
       *[passes] El número de pasadas
    } tiene que ir de { $least } a { $most }, y { $given } queda fuera: prueba con { $example }.

knot-missing = { $quantity ->
        [leads] Falta el número de ramales: añade --leads con un número de { $least } a { $most }, por ejemplo --leads { $example }.
       *[bights] Falta el número de senos: añade --bights con un número de { $least } a { $most }, por ejemplo --bights { $example }.
    }

knot-weave-unreadable = «{ $given }» no es un tejido: da el largo de la serie, como 1 (encima de uno, debajo de uno), o un código de filas con las letras «o» (encima) y «u» (debajo), desde la fila del pie hacia la cabeza, por ejemplo «ouo».

# $rows: rows of crossings, one less than the leads.
knot-run-too-long = Una serie de { $given } no cabe en { $leads } ramales, que se cruzan en { $rows ->
        [one] 1 fila: usa una serie de 1, o más ramales
       *[other] { $rows } filas: usa una serie de 1 a { $rows }, o más ramales
    }.

knot-code-length = Un código de filas de { $letters ->
        [one] 1 letra
       *[other] { $letters } letras
    } no va con { $leads } ramales: da una letra, «o» o bien «u», { $rows ->
        [one] por la única fila que hay.
       *[other] por cada una de las { $rows } filas, desde la del pie hacia la cabeza.
    }

cords-unreadable = «{ $given }» deja un cabo sin nombre: da nombres separados por comas, por ejemplo --cords azul,blanco.

# $given: how many names there are. $all: strands times passes. $example: a name for each strand.
cords-do-not-go = { $given ->
        [one] 1 nombre de cabo no va
       *[other] { $given } nombres de cabos no van
    } con este nudo: { $strands ->
        [one] { $passes ->
            [one] tiene una hebra en una pasada, así que da un solo nombre, por ejemplo --cords azul.
           *[other] da un nombre para cada una de sus { $passes } pasadas, por ejemplo --cords azul,blanco; o un nombre para todo.
        }
       *[other] { $passes ->
            [one] da un nombre para cada una de las { $strands } hebras, por ejemplo { $example }.
           *[other] da un nombre para cada una de las { $strands } hebras, por ejemplo { $example }; o uno para cada pasada de cada hebra, { $all } nombres, primero las pasadas de la primera hebra.
        }
    }
# Names of cords with commas between them, for examples.
cords-example = rojo,blanco,azul,verde

choice-unknown = «{ $given }» no es una opción de { $option }: admite { $allowed }; prueba con { $option } { $example }.

language-unknown = Marlinspeak no habla «{ $given }»: conoce { $known }; prueba con --lang { $example }.

# What the command line itself can get wrong.
cli-unknown-option = Aquí no hay ninguna opción ni orden «{ $given }»: «{ $help }» muestra las que hay.
cli-unknown-command = Aquí no hay ninguna opción ni orden «{ $given }»: «{ $before }» admite { $allowed }; «{ $help }» dice qué hace cada una.
cli-which-command = Eso no es una orden completa: «{ $before }» admite { $allowed }; «{ $help }» dice qué hace cada una.
cli-missing-value-for = La opción { $option } («{ $what }») necesita un valor detrás: «{ $help }» muestra cuál.
cli-missing-value = La opción { $option } necesita un valor detrás: «{ $help }» muestra cuál.
cli-twice = La opción { $option } se da más de una vez: dala una sola vez.
cli-options-first = Las opciones que describen un nudo van detrás de la orden: escribe «marlinspeak steps --leads 5 --bights 7».
cli-needs-command = Eso no es una orden completa: «{ $help }» muestra cómo se escribe.
cli-no-text = Una palabra de esa orden no es texto (UTF-8): escríbela de nuevo; «{ $help }» muestra cómo se escribe la orden.

at-once-unreadable = --at-once admite un número de cruces de 1 a 999, o «leg» para tramos enteros, y «{ $given }» no es ninguna de las dos cosas: prueba con --at-once 4.

app-no-display = No hay pantalla en la que abrir una ventana: arranca Marlinspeak desde una sesión de escritorio, o usa «marlinspeak steps» en la terminal.
app-without-window = Este Marlinspeak se compiló solo para la terminal y no tiene ventana: usa aquí «marlinspeak tie», o instala el que tiene ventana.
app-window-failed = No se ha podido abrir la ventana en la pantalla «{ $display }»: arranca Marlinspeak desde una sesión de escritorio, o usa «marlinspeak steps» en la terminal.
app-fault = Marlinspeak se ha detenido por un fallo suyo, que queda anotado en el registro: arráncalo de nuevo y retoma el nudo donde quedó guardado.
output-failed = No se ha podido escribir la salida ({ $reason }): comprueba adónde va y prueba de nuevo.

# $nested: rows of pins at each rim.
knot-lands-beyond = { $nested ->
        [one] Un nudo sin senos anidados tiene 1 fila de clavijas en cada borde, y no hay fila { $given }: quita la fila a la que llega el primer cabo, o anida 2 senos en cada borde.
       *[other] Las clavijas están en { $nested } filas en cada borde, la 1 es la de más afuera, y no hay fila { $given }: da la fila a la que llega el primer cabo como un número de 1 a { $nested }.
    }
knot-no-leads-left = Con { $leads } ramales no queda ninguno para los demás cabos: haz que el primer cabo llegue a la fila de más adentro, la { $nested }, o toma 3 ramales o más.
knot-weave-nested = Ese tejido no va con las { $rows } filas de cruces de este nudo entrelazado: da una serie de 1 a { $rows }, o un código de { $rows } letras, desde la fila del pie hacia la cabeza.
