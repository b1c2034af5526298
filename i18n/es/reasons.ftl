# Why something was refused or not believed, by kind, in words of our own: what the system and the
# readers of files say themselves is English or another language, and stands in the log file alone.

# It stands in brackets inside other sentences. $why: no-room, not-allowed, not-found, in-use,
# read-only, is-there, not-a-folder, not-a-file, bad-name, broken, no-answer, damaged, newer, other.
# Ejemplo: (no queda sitio en el disco)
reason = { $why ->
        [no-room] no queda sitio en el disco
        [not-allowed] no tienes permiso para hacerlo ahí
        [not-found] ahí no hay nada
        [in-use] otro programa lo está usando
        [read-only] el disco se puede leer, pero no escribir
        [is-there] ya hay algo con ese nombre
        [not-a-folder] hay un archivo donde debería haber una carpeta
        [not-a-file] hay una carpeta donde debería haber un archivo
        [bad-name] ningún archivo puede llamarse así
        [broken] el disco o la conexión con él falla
        [no-answer] no hubo respuesta a tiempo
        [damaged] el contenido está dañado
        [newer] lo escribió un Marlinspeak más nuevo
       *[other] el sistema no lo permite; el registro dice más
    }

# What is wrong with a document. $fault: too-large, not-a-file, not-json, newer, checksum or shape. $place: line, field or
# version, as below, or nothing.
# Ejemplo: (línea 3, columna 7: no es JSON)
fault = { $fault ->
        [too-large] es demasiado grande
        [not-a-file] no es un archivo corriente
        [not-json] { $place }: no es JSON
        [newer] { $place }: más nueva que este programa
        [checksum] su contenido no da su suma de comprobación
       *[shape] { $place ->
            [none] no es lo que debería ser
           *[known] { $place }: no es lo que debería ser
        }
    }

# Where in a document the fault is. $place: line, field or version. $name: its number or name; $column: the column, as text.
fault-place = { $place ->
        [line] línea { $name }, columna { $column }
        [field] campo «{ $name }»
       *[version] versión { $name }
    }
