# The guided job in a terminal.

tie-keys = Espacio siguiente, B o Re Pág atrás, R otra vez, H dónde estoy, W error, C si llega el cabo, J empalmar otro, 1 2 3 breve, normal, explicado, [ y ] menos o más a la vez, menos y más velocidad, P pausa, T ajustes, L al final anotar lo que se usó, Q salir.
tie-keys-lines = Intro es siguiente; b atrás, r otra vez, h dónde estoy, w error, c si llega el cabo, j empalmar otro, 1 2 3 breve, normal, explicado, t ajustes, q salir, cada una con Intro.
tie-left = El nudo se guarda tal como está: «marlinspeak tie» lo retoma.
# $known: yes when the reason is known, else no.
tie-not-saved = Lo último que has pulsado no está guardado{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }: cuando retomes el nudo, compara el paso con tu labor.
tie-in-use = Este nudo está abierto en otra ventana o terminal: sigue allí o ciérralo allí primero.
tie-none-waiting = No hay ningún nudo que retomar: indica uno, por ejemplo «marlinspeak tie --leads 3 --bights 5».
tie-lesson-or-knot = Indica una lección o un nudo, no las dos cosas, por ejemplo «marlinspeak tie --lesson 1».
tie-log-say = Lo que se usó de verdad. Intro pasa al campo siguiente y en el último lo guarda todo; lo que dejes vacío no cuenta.
