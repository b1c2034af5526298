# Was dem gesagt wird, der nur hört.

# Alle Tasten einer Seite, auf Wunsch: F1 oder das Fragezeichen.
keys-say = Alle Tasten, die hier gelten.
keys-close-say = Noch einmal F1, und du hörst, wo du bist.
# $heading: wozu die Tasten danach sind.
key-group-say = { $heading }.
# $key: die Taste. $does: was sie tut, in ein, zwei Worten.
key-aloud-say = { $key ->
        [Space] Leertaste
        [Enter] Eingabetaste
        [Escape] Escape
        [Tab] Tabulator
        [ShiftTab] Umschalt und Tabulator
        [Home] Pos eins
        [End] Ende
        [Delete] Entfernen
        [Backspace] Rücktaste
        [PageUp] Bild auf
        [PageDown] Bild ab
        [ArrowLeft] Pfeil links
        [ArrowRight] Pfeil rechts
        [ArrowUp] Pfeil hoch
        [ArrowDown] Pfeil runter
        [Plus] Plus
        [Minus] Minus
        [BracketLeft] Eckige Klammer auf
        [BracketRight] Eckige Klammer zu
        [CtrlQ] Steuerung und Q
       *[other] { $key }
    }: { $does }.

# Was in eine Zeile getippt wurde, sobald das Tippen ruht.
typed-say = { $typed }.

# Eine Schnur oder ein Gewinde, die nicht bekannt sind, für den, der die Liste nicht sieht.
ask-cord-unknown-say = „{ $given }“ ist keine Schnur, die hier bekannt ist. Tippe ihre Dicke, etwa 4 Millimeter, oder geh mit Bild ab durch die bekannten.
ask-thread-unknown-say = Das Gewinde „{ $given }“ ist nicht bekannt. Versuch M4 oder M5, oder geh mit Bild ab durch die bekannten.

# Gesagt, wenn die erste Seite sich vorgestellt hat.
keys-hint-say = F1 nennt dir alle Tasten, hier und auf jeder Seite.

# Die Tasten eines Knotens im Terminal, auf Wunsch.
tie-keys-say = Leertaste: weiter. B oder Bild auf: zurück. R: noch einmal. H: wo bin ich. W: falsch. C: reicht die Schnur. J: neue Schnur anstecken. 1, 2 und 3: knapp, normal, erklärt. Die eckigen Klammern: weniger oder mehr auf einmal. Minus und Plus: das Tempo. P: Pause. T: Einstellungen. L: am Ende aufschreiben, was verbraucht wurde. Q: verlassen.
