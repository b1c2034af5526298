# Wozu jede Zeile der Einstellungen da ist, unter der Liste, solange sie gewählt ist.

# $field: as in settings-name.
settings-hint = { $field ->
        [learn] Jede Taste, jedes Pedal, jeder Knopf und jedes MIDI-Pedal lässt sich für weiter, zurück oder noch einmal lernen: Einmal drücken genügt.
        [knocks] Wenn nicht anders gelernt, heißt zweimal auf die Werkbank geklopft weiter, dreimal noch einmal. Ein Mikrofon hört zu; nichts wird aufgenommen oder behalten, nur wann und wie laut geklopft wurde, geht weiter.
        [try-knocks] Zeigt, wie laut es ist und welches Klopfen erkannt wurde: So findest du, wo das Mikrofon liegen soll.
        [language] Die Sprache von allem, was gesagt, gezeigt und gedruckt wird.
        [units] Millimeter und Meter oder Zoll und Fuß, für jede Länge.
        [voice] Welche Stimme des Sprachdienstes die Schritte spricht.
        [speed] Wie schnell gesprochen wird: langsamer bei einem neuen Knoten, schneller bei einem vertrauten.
        [volume] Wie laut die Schritte gesprochen werden.
        [pitch] Wie hoch die Stimme ist: nimm, was du neben anderem Lärm am besten hörst.
        [cues] Ein kurzer Ton für weiter, zurück, eine Kontrolle und das Ende, noch vor den Worten.
        [cue-volume] Wie laut diese Töne sind.
        [flash] Der Rand des Bildschirms leuchtet bei einem Druck auf, für alle, die die Töne nicht hören.
        [motion] Eine Bahn zeichnet sich einmal, Kreuzung für Kreuzung. Aus: Sie steht gleich ganz da.
        [theme] Hell auf dunkel für den Abend, dunkel auf hell für einen hellen Raum.
        [distance] Wie weit dein Auge beim Knüpfen vom Bildschirm weg ist: Schrift und Stiftnummern wachsen mit.
        [screen-width] Wie breit das Bild auf deinem Bildschirm ist, mit dem Lineal gemessen: Dann ist die Schrift so groß, wie sie sein soll.
        [pacing] Geht von selbst weiter, etwas langsamer als deine letzten Schritte. Jeder Druck hält an.
        [price-metre] Damit sagt der Plan, was die Schnur für einen Knoten kostet.
        [price-hour] Damit sagt der Plan, was die Arbeit an einem Knoten wert ist.
        [bounce] Ein Fuß tritt leicht zweimal, wo einmal gemeint war: So kurz nach dem ersten zählt der zweite Tritt nicht.
        [long] Ein Pedal für zwei: Gehalten geht es zurück.
       *[double] Ein Pedal für zwei: Zweimal gedrückt sagt es den Schritt noch einmal.
    }
