# The guided job in a terminal.

tie-keys = Espacio siguiente, B o Re Pág atrás, R otra vez, H dónde estoy, menos y más velocidad, P pausa, Q salir.
tie-keys-lines = Intro es siguiente; b e Intro atrás, r otra vez, h dónde estoy, q salir.
tie-left = El nudo se guarda tal como está: «marlinspeak tie» lo retoma.
tie-none-waiting = No hay ningún nudo que retomar: indica uno, por ejemplo «marlinspeak tie --leads 3 --bights 4».
