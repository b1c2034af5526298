# The keys of the screens. Each stands on a button with what it does: a word or two, no sentence.

key-sheet-heading = Alle Tasten
key-sheet-close = Schließen

## Headings of the groups

key-group-steps = Schritt für Schritt
key-group-telling = Wie es gesagt wird
key-group-voice = Die Stimme
key-group-picture = Das Bild
key-group-here = Auf dieser Seite
key-group-places = Andere Seiten
key-group-program = Das Fenster

# What is printed on a key. $key: its name, or the sign on it. CtrlQ is Q with the control key.
key-cap = { $key ->
        [Space] Leertaste
        [Enter] Eingabe
        [Escape] Esc
        [Delete] Entf
        [PageUp] Bild ↑
        [PageDown] Bild ↓
        [Backspace] Rücktaste
        [CtrlQ] Strg Q
       *[other] { $key }
    }

## While a knot is tied

key-next = weiter
key-back = zurück
key-again = nochmal
key-where = wo bin ich
key-wrong = falsch
key-leave = verlassen
key-take-back = zurücknehmen
key-find-place = Stelle suchen
key-leave-as-is = lassen, wie es ist
key-to-step = zum Schritt
key-one-more-back = noch eine zurück
key-lay-again = neu legen
key-yes = ja
key-no = nein
key-cord = reicht die Schnur
key-join = zu Ende oder ausgefranst
key-over = über
key-under = taucht durch
key-count-again = neu zählen
key-one-more = eins mehr
key-that-is-it = das ist es
key-digit-away = Ziffer weg
key-elsewhere = anderswo
key-another-place = andere Stelle
key-briefly = knapp
key-plainly = normal
key-taught = erklärt
key-less-at-once = weniger Kreuzungen auf einmal
key-more-at-once = mehr Kreuzungen auf einmal
key-slower = langsamer
key-faster = schneller
key-pause = Pause
key-turn-picture = Ansicht drehen
key-size-picture = größer, aus, kleiner
key-whole-picture = über die ganze Seite
key-picture = Bild
key-smaller = kleiner
key-write-log = aufschreiben

## Other screens

key-take-up = weiterknüpfen
key-begin = anfangen
key-first-tie = knüpfen
key-form = Knoten mit Zahlen nennen
key-plan = Knoten für einen Gegenstand
key-shelf = meine Knoten
key-course = erste Knoten
key-glossary = Fachwörter
key-count = Knoten auszählen
key-settings = Einstellungen
key-next-field = nächstes Feld
key-field-before = Feld davor
key-leave-form = Formular verlassen
key-another-pick = andere Wahl
key-pick-before = Wahl davor
key-take-knot = diesen nehmen
key-knot-next = nächster Knoten
key-knot-before = Knoten davor
key-filter-passes = Durchgänge
key-filter-from-three = ab drei Parten
key-filter-one-cord = eine Schnur
key-filter-most-legs = Länge der Arbeit
key-filter-weave = Flechtart
key-filter-firm = Art der Schnur
key-filter-nested = Buchten ineinander
key-lesson-below = nächste Lektion
key-lesson-above = Lektion davor
key-exchange-weave = Flechtart umkehren
key-word-below = nächstes Wort
key-word-above = Wort davor
key-tie-below = nächster Knoten
key-tie-above = Knoten davor
key-first = der erste
key-last = der letzte
key-name = Name
key-note = Notiz
key-same-again = gleichen neu anfangen
key-put-away = weglegen oder vorholen
key-delete = löschen
key-undo = zurückholen
key-back-up = sichern
key-bring-in = hereinholen
key-keep = behalten
key-line-below = nächste Zeile
key-line-above = Zeile davor
key-value-more = mehr
key-value-less = weniger
key-what-for = wofür es ist
key-voice-before = vorige Stimme
key-voice-next = nächste Stimme
key-take-voice = diese Stimme nehmen
key-keep-voice = die vorige lassen
key-done = fertig
key-leave-unchanged = alles lassen, wie es war
key-how-loud = wie laut es ist
key-switch-on = einschalten

## The window

key-full-screen = ganzer Schirm
key-quit = beenden
