# Lo que se dice a quien solo oye.

# Todas las teclas de una pantalla, a petición: F1 o el signo de interrogación.
keys-say = Todas las teclas que sirven aquí.
keys-close-say = Otra vez F1, y oirás dónde estás.
# $heading: para qué son las teclas que siguen.
key-group-say = { $heading }.
# $key: la tecla. $does: lo que hace, en una o dos palabras.
key-aloud-say = { $key ->
        [Space] Barra espaciadora
        [Enter] Intro
        [Escape] Escape
        [Tab] Tabulador
        [ShiftTab] Mayúsculas y tabulador
        [Home] Inicio
        [End] Fin
        [Delete] Suprimir
        [Backspace] Retroceso
        [PageUp] Retroceder página
        [PageDown] Avanzar página
        [ArrowLeft] Flecha izquierda
        [ArrowRight] Flecha derecha
        [ArrowUp] Flecha arriba
        [ArrowDown] Flecha abajo
        [Plus] Más
        [Minus] Menos
        [BracketLeft] Corchete que abre
        [BracketRight] Corchete que cierra
        [CtrlQ] Control y Q
       *[other] { $key }
    }: { $does }.

# Lo tecleado en una línea, cuando se deja de teclear.
typed-say = { $typed }.

# Un cordón o una rosca que no se conocen, para quien no ve la lista.
ask-cord-unknown-say = «{ $given }» no es un cabo conocido aquí. Teclea su grosor, por ejemplo 4 milímetros, o recorre los conocidos con avanzar página.
ask-thread-unknown-say = No se conoce la rosca «{ $given }». Prueba M4 o M5, o recorre las conocidas con avanzar página.

# Se dice cuando la primera pantalla se ha presentado.
keys-hint-say = F1 te dice todas las teclas, aquí y en cada pantalla.

# Las teclas de un nudo en un terminal, a petición.
tie-keys-say = Barra espaciadora: siguiente. B o retroceder página: atrás. R: otra vez. H: dónde estoy. W: error. C: si llega el cabo. J: empalmar otro. 1, 2 y 3: breve, normal, explicado. Los corchetes: menos o más a la vez. Menos y más: la velocidad. P: pausa. T: ajustes. L: al final, anotar lo que se usó. Q: salir.
