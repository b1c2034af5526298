# The guided job in a terminal.

tie-keys = Leertaste weiter, B oder Bild auf zurück, R noch einmal, H wo bin ich, Minus und Plus Tempo, P Pause, Q verlassen.
tie-keys-lines = Eingabe heißt weiter; b und Eingabe zurück, r noch einmal, h wo bin ich, q verlassen.
tie-left = Der Knoten bleibt, wie er steht: „marlinspeak tie“ nimmt ihn wieder auf.
tie-none-waiting = Kein Knoten wartet darauf, wieder aufgenommen zu werden: Nenne einen, etwa „marlinspeak tie --leads 3 --bights 4“.
