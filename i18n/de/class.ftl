# Karten für einen Kurs, und ein Auftrag auf Papier.

help-sheet-class = Für jeden Teilnehmer eine Karte in großer Schrift, alle in einem PDF, und daneben das bewegte Bild zum Zeigen
help-class-copies = So viele Karten, jede mit einer Nummer, 1 bis 99
help-class-names = Eine Karte für jeden von diesen, mit dem Namen auf jeder Seite: „Ada,Ben“
help-sheet-order = Aus einem Auftrag eine Liste zum Einkaufen, Packen und Binden machen
help-sheet-order-what = Der Auftrag, wie „order list“ ihn nennt, oder seine Datei
class-who = Für wen sind die Karten? Gib ihre Zahl an, etwa --copies 12, oder die Namen, etwa --names Ada,Ben.
class-copies-or-names = Die Karten werden mit --copies gezählt oder mit --names benannt: Gib nur eines von beiden an.
class-copies = --copies nimmt eine ganze Zahl von 1 bis { $most }, und „{ $given }“ ist keine: Versuch es mit --copies 12.
class-names = „{ $given }“ ist keine Liste von Namen: Gib bis zu { $most } an, mit Kommas dazwischen, etwa --names Ada,Ben.
class-out-ending = „{ $file }“ ist kein Name eines PDF: Lass ihn auf „.pdf“ enden; das bewegte Bild bekommt denselben Namen mit „.gif“.
class-out-missing = Es ist nicht gesagt, wohin die Karten sollen: Füge --out mit dem Namen eines PDF hinzu, etwa --out kurs.pdf; das bewegte Bild bekommt denselben Namen mit „.gif“.
class-long = Die Karten hätten zusammen mehr als { $most } Kreuzungen zu drucken: Mach sie für weniger Leute auf einmal.
class-stopped = Nach { $page } von { $pages } Bildern aufgehört: Die Karten sind da und ganz, das bewegte Bild fehlt.
help-class-out = Das PDF der Karten; das bewegte Bild bekommt denselben Namen mit „.gif“
order-pieces = Die Knoten:
