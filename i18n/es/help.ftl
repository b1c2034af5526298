# The help of the terminal: what each command and option does. What is typed (names of commands and
# options, and words such as “right”) is the same in every language.

## The program and its commands.

help-marlinspeak = Dice cada paso de una cabeza de turco a quien la hace, en voz alta y en letra grande.
help-marlinspeak-more =
    Dice cada paso de una cabeza de turco a quien la hace, en voz alta y en letra grande.

    Sin ninguna orden abre la ventana; con --leads y --bights, con ese nudo ya empezado.
help-steps = Escribir todos los pasos de un nudo
help-fit = Buscar los nudos que cubren un objeto, primero los mejores
help-rig = Decir cómo se apareja un tubo para un nudo: clavijas, anillos, cabo
help-shelf = Los nudos guardados: verlos, pasarlos a otros, copiarlos, comprobarlos
help-tie = Guiar un nudo en la terminal; si no se indica ninguno, el último
help-sheet = Hacer papel para el banco de trabajo: una ficha, una tira o un dibujo
help-count = Contar un nudo que alguien trae hasta saber cuál es
help-doctor = Decir qué funciona aquí de pantalla, voz, sonido, pedales y carpetas, y cómo arreglar lo demás
help-install-artifacts = Escribir las páginas de manual, los archivos de autocompletado y los iconos que se instalan
help-shelf-list = Mostrar los nudos del estante, primero el último
help-shelf-export = Escribir un nudo en un archivo que se pueda pasar a otros
help-shelf-import = Poner en el estante el nudo de un archivo
help-shelf-verify = Comprobar todos los documentos: código de salida 0 solo si están todos enteros
help-shelf-backup = Copiar todos los nudos y el cuaderno a un archivo
help-shelf-restore = Poner en el estante todos los nudos de una copia; no se sobrescribe ninguno de los que hay
help-shelf-delete = Quitar un nudo del estante
help-shelf-undo = Recuperar un nudo borrado
help-sheet-card = El nudo, sus datos y todos los tramos en una tabla
help-sheet-strip = Números de las clavijas y marcas de los agujeros a tamaño real, para rodear con ellos el tubo; de un tapete, la hoja de su tabla; en su sitio, las tiras de marcas
help-sheet-stage = El dibujo de un paso
help-sheet-reel = El nudo entero como imagen en movimiento, tramo a tramo, con sus palabras

## What describes a knot.

help-leads = Ramales, de 2 a 999: cabos que hay en línea recta de borde a borde
help-bights = Senos, de 2 a 999: ondas de cada borde, y clavijas de cada anillo
help-passes = Pasadas, de 1 a 9: 1 es sencillo, 2 doble, 3 triple [si no se indica: 1]
help-weave = Encima de n, debajo de n; o un código de filas con o (encima) y u (debajo), desde la fila del pie, como ouuo [si no se indica: 1, con senos anidados tantos como se aniden, empezado encima o debajo, lo que pida menos pasos por debajo]
help-side = El lado del primer cabo por el que van las pasadas siguientes: right (derecha) o left (izquierda), mirando hacia donde va el cabo; si trabajas hacia la derecha, right es el lado del pie [si no se indica: right]
help-hand = El sentido en que trabajas alrededor del tubo: right (derecha) o left (izquierda) [si no se indica: right]
help-order = Con varias hebras: passes tiende primero la pasada guía de todas, strands acaba una hebra tras otra [si no se indica: passes, con senos anidados strands]
help-cords = Cómo llamas a los cabos: un nombre para cada hebra, o para cada pasada de cada hebra (primero todas las de la primera), como «azul,blanco»

## Object, cord and tube.

help-object = Diámetro del objeto; si se afina, los de sus dos extremos, primero el de abajo
help-girth = Contorno del objeto, en vez de su diámetro
help-ball = Diámetro de una bola que se cubre, en vez de un objeto
help-mat = Un tapete plano, en vez de un objeto: de borde a borde, y su hueco detrás de dos puntos
help-in-place = Hacerlo sobre lo que cubre, sin tubo: no se pasa nada por encima
help-cover = Largo del objeto que se va a cubrir; si se afina, el largo en el que lo hace
help-cord = El cabo: su grueso, una norma como III o 550, o el nombre de uno guardado
help-firm = Cómo es el cabo: hard (duro: redondo, guarda su forma), soft (blando: trenzado o colchado) o flat (plano: cinta, trenza hueca) [si no se indica: soft, o como se guardó]
help-cord-give = Lo juntas que quedan dos vueltas del cabo con otra en medio, en gruesos de cabo, como 1,7; en vez de --firm
help-tube = El tubo: su diámetro, o el nombre de uno guardado
help-rows = Agujeros de cada fila de un anillo, como 14,20; un tubo sin anillos no tiene
help-pin = Largo de las clavijas
help-thread = Rosca de las clavijas, como M4 o M5
help-wall = Grueso de lo que atraviesan las clavijas
help-ring-width = Ancho de cada anillo a lo largo del tubo
help-tube-length = Largo del tubo
help-have = Cabo disponible
help-price-metre = Lo que cuesta un metro de cabo
help-price-hour = Lo que vale una hora de tu trabajo
help-keep-tube = Guardar el tubo con este nombre, para --tube NOMBRE
help-keep-cord = Guardar el cabo con este nombre, para --cord NOMBRE

## Which knots are wanted.

help-most = Tantos nudos como mucho [si no se indica: 10, o todos con --json]
help-fit-passes = Solo nudos de tantas pasadas, de 1 a 4: 1 es sencillo, 2 doble, 3 triple
help-least-leads = Solo nudos de tantos ramales o más, de 2 a 60
help-least-bights = Solo nudos de tantos senos o más, de 2 a 60
help-one-cord = Solo nudos de un cabo
help-most-legs = Solo labores de tantos tramos como mucho, sumando todas las pasadas
help-least-hidden = Tapar al menos esta parte del objeto, en tanto por ciento [si no se indica: nueve décimas de lo que tapa el nudo ceñido]
help-fit-weave = Encima de n, debajo de n, aunque empezando debajo haya menos que pasar por debajo [si no se indica: 1, con senos anidados tantos como se aniden, como menos haya que pasar]

## How it is told, and what comes out.

help-lang = El idioma de las palabras, como es [si no se indica: el de los ajustes o el del sistema]
help-detail = Cuánto se dice de cada paso: brief (breve), plain (normal) o teach (explicado) [si no se indica: plain]
help-json = Escribir un documento JSON en vez de texto
help-summary = Escribir cuántos pasos hay de cada clase y los segundos que duran dichos
help-at-once = Tantos cruces como mucho en un paso, de 1 a 999, o «leg» para tramos enteros; con 1, también el material, el aparejo y el igualado van de uno en uno [si no se indica: 4]
help-tie-at-once = Tantos cruces como mucho en un paso, de 1 a 999, o «leg» para tramos enteros [si no se indica: como se guardó, o 4]
help-checks = Cada cuánto se mira el trabajo: tras cada ronda (round) o tras cada pasada (pass) [si no se indica: round]
help-lesson = Una lección de los primeros nudos, por su número
help-speech = Decir además cada paso en voz alta, con los sonidos de la ventana
help-step = El paso, como los cuenta «marlinspeak steps» [si no se indica: el último]
help-rolled-out = Mostrar el tubo abierto y desenrollado en vez de tal como está
help-out = El archivo que se escribe; varias páginas PNG llevan -1, -2, … antes de la extensión
help-reel-out = El archivo que se escribe, de la clase que diga su extensión: gif, png o webp
help-reel-width = Píxeles de ancho, de 320 a 1920; de alto, tres cuartos de eso [si no se indica: 800]
help-replace = Sobrescribir el archivo si ya existe
help-pdf = Hacer un PDF, termine como termine el nombre del archivo
help-dpi = Puntos por pulgada de un PNG, de 72 a 600 [si no se indica: 300]
help-paper = El papel, a4 o letter (carta) [si no se indica: a4]
help-shelf-tie = El nudo, con el nombre que le da «shelf list»
help-shelf-undo-tie = El nudo, con el nombre que le dio «shelf delete»
help-file-out = El archivo que se escribe
help-file-in = El archivo que se lee
help-folder = La carpeta en la que se escribe; lo que ya haya se sobrescribe
help-help = Escribir esta ayuda
help-version = Escribir la versión

## Headings.

help-usage = Cómo se escribe:
help-commands = Órdenes:
help-arguments = Datos:
help-options = Opciones:

## What stands for a value: one word, in capitals.

value-options = OPCIONES
value-command = ORDEN
value-number-or-code = N|CÓDIGO
value-side = LADO
value-hand = SENTIDO
value-names = NOMBRES
value-name = NOMBRE
value-tag = CÓDIGO
value-depth = DETALLE
value-length = LONGITUD
value-lengths = LONGITUD[:LONGITUD]
value-length-or-name = LONGITUD|NOMBRE
value-decimal = NÚMERO
value-thread = ROSCA
value-price = PRECIO
value-percent = PORCENTAJE
value-paper = PAPEL
value-file = ARCHIVO
value-folder = CARPETA
value-tie = NUDO

help-nested = Senos anidados uno dentro de otro en cada borde, de 1 a 9; a partir de 2 se entrelazan otros tantos cabos o más
help-lands = La fila de clavijas de la cabeza a la que llega el primer cabo, la 1 es la de más afuera; si no se dice, la de más adentro
help-fit-nested = Nudos con tantos senos anidados en cada borde, de 1 a 9, todos los cabos con los mismos ramales; si no se dice, nudos sin senos anidados y los mejores entrelazados
