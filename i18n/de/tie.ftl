# The guided job in a terminal.

tie-keys = Leertaste weiter, B oder Bild auf zurück, R noch einmal, H wo bin ich, W falsch, C reicht die Schnur, J neue Schnur anstecken, 1 2 3 knapp, normal, erklärt, [ und ] weniger oder mehr auf einmal, Minus und Plus Tempo, P Pause, T Einstellungen, L am Ende aufschreiben, was verbraucht wurde, Q verlassen.
tie-keys-lines = Eingabe heißt weiter; b zurück, r noch einmal, h wo bin ich, w falsch, c reicht die Schnur, j neue Schnur anstecken, 1 2 3 knapp, normal, erklärt, t Einstellungen, q verlassen, jeweils mit Eingabe.
tie-left = Der Knoten bleibt, wie er steht: „marlinspeak tie“ nimmt ihn wieder auf.
# $known: yes when the reason is known, else no.
tie-not-saved = Was du zuletzt gedrückt hast, ist nicht gespeichert{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }: Wenn du den Knoten wieder aufnimmst, vergleich den Schritt mit deiner Arbeit.
tie-in-use = Dieser Knoten ist in einem anderen Fenster oder Terminal offen: Mach dort weiter, oder schließ ihn dort zuerst.
tie-none-waiting = Kein Knoten wartet darauf, wieder aufgenommen zu werden: Nenne einen, etwa „marlinspeak tie --leads 3 --bights 5“.
tie-lesson-or-knot = Nenne eine Lektion oder einen Knoten, nicht beides, etwa „marlinspeak tie --lesson 1“.
tie-log-say = Was wirklich verbraucht wurde. Eingabe geht weiter zum nächsten Feld und behält beim letzten alles; was leer bleibt, zählt nicht.
