# The help of the terminal: what each command and option does. What is typed (names of commands and
# options, and words such as “right”) is the same in every language.

## The program and its commands.

help-marlinspeak = Sagt beim Knüpfen von Türkenbunden jeden Schritt an, laut und in großer Schrift.
help-marlinspeak-more =
    Sagt beim Knüpfen von Türkenbunden jeden Schritt an, laut und in großer Schrift.

    Ohne Befehl öffnet sich das Fenster; mit --leads und --bights ist dieser Knoten darin schon angefangen.
help-steps = Jeden Schritt eines Knotens ausgeben
help-fit = Knoten finden, die einen Gegenstand bedecken, die besten zuerst
help-rig = Sagen, wie ein Rohr für einen Knoten eingerichtet wird: Stifte, Ringe, Schnur
help-shelf = Die gespeicherten Knoten: auflisten, weitergeben, sichern, prüfen
help-tie = Im Terminal durch einen Knoten leiten; wird keiner genannt, durch den neuesten
help-sheet = Papier für die Werkbank machen: eine Karte, einen Streifen oder ein Bild
help-count = Einen mitgebrachten Knoten auszählen, bis er bekannt ist
help-doctor = Sagen, was von Bildschirm, Sprache, Ton, Pedalen und Ordnern hier geht, und wie der Rest zu beheben ist
help-install-artifacts = Die Handbuchseiten, Vervollständigungen und Symbole schreiben, die installiert werden
help-shelf-list = Die Knoten im Regal auflisten, den neuesten zuerst
help-shelf-export = Einen Knoten in eine Datei schreiben, die sich weitergeben lässt
help-shelf-import = Den Knoten aus einer Datei ins Regal legen
help-shelf-verify = Jedes Dokument prüfen: Rückgabewert 0 nur, wenn alle unbeschädigt sind
help-shelf-backup = Alle Knoten und das Logbuch in eine Datei schreiben
help-shelf-restore = Alle Knoten einer Sicherung ins Regal legen; keiner, der da ist, wird überschrieben
help-shelf-delete = Einen Knoten aus dem Regal nehmen
help-shelf-undo = Einen gelöschten Knoten zurückholen
help-sheet-card = Der Knoten, seine Zahlen und jede Bahn als Tabelle
help-sheet-strip = Nummern der Stifte und Marken der Löcher in wahrer Größe, um das Rohr zu legen; bei einer Matte der Bogen für ihr Brett, am Ort die Bänder mit den Strichen
help-sheet-stage = Das Bild bei einem Schritt
help-sheet-reel = Der ganze Knoten als bewegtes Bild, Bahn für Bahn, mit seinen Worten

## What describes a knot.

help-leads = Parten, 2 bis 999: Schnüre auf einer geraden Linie von Rand zu Rand
help-bights = Buchten, 2 bis 999: Bögen an jedem Rand, und Stifte an jedem Ring
help-passes = Durchgänge, 1 bis 9: 1 ist einfach, 2 doppelt, 3 dreifach [sonst: 1]
help-weave = Über n, unter n; oder ein Reihencode aus o (über) und u (unter), von der Reihe am Fuß an, etwa ouuo [sonst: 1, bei Buchten ineinander so viel wie deren Zahl, mit über oder unter begonnen, je nachdem, wobei weniger durchzustecken ist]
help-side = Die Seite der ersten Schnur, auf der spätere Durchgänge liegen: right (rechts) oder left (links), in ihrer Laufrichtung gesehen; arbeitest du nach rechts, so ist right die Fuß-Seite [sonst: right]
help-hand = Wie herum du um das Rohr arbeitest: right (nach rechts) oder left (nach links) [sonst: right]
help-order = Bei mehreren Strängen: passes legt zuerst den ersten Durchgang von allen, strands macht einen Strang nach dem anderen fertig [sonst: passes, bei Buchten ineinander strands]
help-cords = Wie du die Schnüre nennst: ein Name für jeden Strang oder für jeden Durchgang jedes Strangs (zuerst alle des ersten Strangs), etwa „blau,weiß“

## Object, cord and tube.

help-object = Durchmesser des Gegenstands; wird er dünner, die seiner beiden Enden, das untere zuerst
help-girth = Umfang des Gegenstands, statt des Durchmessers
help-ball = Durchmesser einer Kugel, die bedeckt wird, statt eines Gegenstands
help-mat = Eine flache Matte, statt eines Gegenstands: von Rand zu Rand, und ihr Loch hinter einem Doppelpunkt
help-in-place = Auf dem knüpfen, was bedeckt wird, ohne Rohr: Nichts wird übergestreift
help-cover = Zu bedeckende Länge des Gegenstands; wird er dünner, die Länge, auf der er das tut
help-cord = Die Schnur: ihre Dicke, eine Norm wie III oder 550 oder der Name einer gemerkten
help-firm = Wie die Schnur ist: hard (hart: rund, behält ihre Form), soft (weich: geflochtene oder geschlagene Leine) oder flat (flach: Band, hohles Geflecht) [sonst: soft, oder wie gemerkt]
help-cord-give = Wie dicht zwei Züge der Schnur mit einem dritten dazwischen liegen, in Schnurdicken, etwa 1,7; statt --firm
help-tube = Das Rohr: sein Durchmesser oder der Name eines gemerkten
help-rows = Löcher in jeder Reihe eines Rings, etwa 14,20; ein Rohr ohne Ringe hat keine
help-pin = Länge der Stifte
help-thread = Gewinde der Stifte, etwa M4 oder M5
help-wall = Dicke dessen, wodurch die Stifte gehen
help-ring-width = Breite jedes Rings, längs des Rohrs
help-tube-length = Länge des Rohrs
help-have = Vorhandene Schnur
help-price-metre = Was ein Meter der Schnur kostet
help-price-hour = Was eine Stunde deiner Arbeit wert ist
help-keep-tube = Das Rohr unter diesem Namen merken, für --tube NAME
help-keep-cord = Die Schnur unter diesem Namen merken, für --cord NAME

## Which knots are wanted.

help-most = Höchstens so viele Knoten [sonst: 10, mit --json alle]
help-fit-passes = Nur Knoten mit so vielen Durchgängen, 1 bis 4: 1 ist einfach, 2 doppelt, 3 dreifach
help-least-leads = Nur Knoten ab so vielen Parten, 2 bis 60
help-least-bights = Nur Knoten ab so vielen Buchten, 2 bis 60
help-one-cord = Nur Knoten aus einer einzigen Schnur
help-most-legs = Nur Arbeiten mit höchstens so vielen Bahnen, alle Durchgänge zusammen
help-least-hidden = Mindestens diesen Anteil des Gegenstands verdecken, in Prozent [sonst: neun Zehntel dessen, was der Knoten fest durchgeholt verdeckt]
help-fit-weave = Über n, unter n, auch wo die mit unter begonnene Form weniger Durchstecken verlangt [sonst: 1, bei Buchten ineinander so viel wie deren Zahl, wie am wenigsten durchzustecken ist]

## How it is told, and what comes out.

help-lang = Die Sprache der Wörter, etwa de [sonst: die der Einstellungen oder des Systems]
help-detail = Wie viel zu einem Schritt gesagt wird: brief (knapp), plain (normal) oder teach (mit Erklärung) [sonst: plain]
help-json = Ein JSON-Dokument ausgeben statt Text
help-summary = Ausgeben, wie viele Schritte jeder Art es gibt und wie viele Sekunden sie gesprochen dauern
help-at-once = Höchstens so viele Kreuzungen in einem Schritt, 1 bis 999, oder „leg“ für ganze Bahnen; mit 1 kommen auch Ausrüstung, Einrichten und Durchholen einzeln [sonst: 4]
help-tie-at-once = Höchstens so viele Kreuzungen in einem Schritt, 1 bis 999, oder „leg“ für ganze Bahnen [sonst: wie gespeichert, oder 4]
help-checks = Wie oft nachgesehen wird: nach jeder Runde (round) oder nach jedem Durchgang (pass) [sonst: round]
help-lesson = Eine Lektion der ersten Knoten, mit ihrer Nummer
help-speech = Jeden Schritt auch laut sagen, mit den Tönen wie im Fenster
help-step = Der Schritt, wie „marlinspeak steps“ sie zählt [sonst: der letzte]
help-rolled-out = Das Rohr aufgeschnitten und flach ausgerollt zeigen, statt wie es steht
help-out = Die Datei, die entsteht; mehrere PNG-Seiten bekommen -1, -2, … vor die Endung
help-reel-out = Die Datei, die entsteht; ihre Art sagt die Endung: gif, png oder webp
help-reel-width = Bildpunkte in der Breite, 320 bis 1920; drei Viertel davon in der Höhe [sonst: 800]
help-replace = Eine Datei, die es schon gibt, überschreiben
help-pdf = Ein PDF machen, wie auch immer der Dateiname endet
help-dpi = Punkte auf einen Zoll eines PNG, 72 bis 600 [sonst: 300]
help-paper = Das Papier, a4 oder letter [sonst: a4]
help-shelf-tie = Der Knoten, wie „shelf list“ ihn nennt
help-shelf-undo-tie = Der Knoten, wie „shelf delete“ ihn genannt hat
help-file-out = Die Datei, die entsteht
help-file-in = Die Datei, die gelesen wird
help-folder = Der Ordner, in den geschrieben wird; was schon da ist, wird überschrieben
help-help = Diese Hilfe ausgeben
help-version = Die Version ausgeben

## Headings.

help-usage = So wird es geschrieben:
help-commands = Befehle:
help-arguments = Angaben:
help-options = Optionen:

## What stands for a value: one word, in capitals.

value-options = OPTIONEN
value-command = BEFEHL
value-number-or-code = N|CODE
value-side = SEITE
value-hand = RICHTUNG
value-names = NAMEN
value-name = NAME
value-tag = KÜRZEL
value-depth = TIEFE
value-length = LÄNGE
value-lengths = LÄNGE[:LÄNGE]
value-length-or-name = LÄNGE|NAME
value-decimal = ZAHL
value-thread = GEWINDE
value-price = PREIS
value-percent = PROZENT
value-paper = PAPIER
value-file = DATEI
value-folder = ORDNER
value-tie = KNOTEN

help-nested = Buchten, die an jedem Rand ineinanderliegen, 1 bis 9; ab 2 werden so viele Schnüre oder mehr durcheinander gefädelt
help-lands = Die Reihe der Kopf-Stifte, in der die erste Schnur landet, 1 ist die äußerste; ohne Angabe die innerste
help-fit-nested = Knoten, deren Buchten an jedem Rand zu so vielen ineinanderliegen, 1 bis 9, alle Schnüre mit gleich vielen Parten; ohne Angabe Knoten ohne ineinanderliegende Buchten und die besten durcheinander gefädelten
