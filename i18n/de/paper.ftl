# The paper screen: what is made of a tie to be taken along, and where it goes.

paper-heading = Zum Mitnehmen

# How the screen is worked. Spoken as well.
paper-how = Auf Papier oder als bewegtes Bild: Auf und ab wählt, die seitlichen Pfeile ändern die Dateiart, die Leertaste erstellt die Datei.

# What can be made. $kind: card, strip, stage or reel.
paper-name = { $kind ->
        [card] Karte
        [strip] Streifen
        [board] Brettbogen
        [stage] Bild des Schritts
       *[reel] Bewegtes Bild
    }

# What each is for. Spoken as well.
paper-for = { $kind ->
        [card] Alle Angaben und jede Bahn als Tabelle, für einen Abend ohne Rechner.
        [strip] Nummern der Stifte und Marken der Löcher in wahrer Größe, um das Rohr zu legen.
        [board] Wo die T-Stifte stehen, in wahrer Größe, um ihn auf das Brett zu kleben: bei einer großen Matte auf mehreren Seiten.
        [stage] Der Knoten, wie er jetzt liegt, mit den Worten des Schritts.
       *[reel] Der ganze Knoten, Bahn für Bahn mit seinen Worten, für einen Kurs.
    }

# Spoken when one gets the focus. $form: the kind of file, such as PDF.
paper-choice = { $kind ->
        [card] Karte
        [strip] Streifen
        [board] Brettbogen
        [stage] Bild des Schritts
       *[reel] Bewegtes Bild
    }, als { $form }-Datei.

paper-file = Dateiart
paper-paper = Papier
# $paper: A4 or Letter.
paper-size = Papier: { $paper }.

# What stands over the system’s own window.
paper-dialog = { $kind ->
        [card] Wohin die Karte kommt
        [strip] Wohin der Streifen kommt
        [board] Wohin der Brettbogen kommt
        [stage] Wohin das Bild kommt
       *[reel] Wohin das bewegte Bild kommt
    }

paper-asking = Das System fragt in einem eigenen Fenster, wohin die Datei kommt. Mit der Leertaste tippst du den Pfad hier, Escape bricht ab.
paper-path = Speichern unter: der Pfad der Datei. Eingabe erstellt sie.
paper-path-missing = Es ist kein Pfad genannt: Tipp einen, der mit dem Namen der Datei endet, etwa ~/pinne.
paper-exists = „{ $file }“ gibt es schon: Drück noch einmal Eingabe, um die Datei zu überschreiben, oder ändere den Namen.

paper-making = { $kind ->
        [card] Die Karte entsteht.
        [strip] Der Streifen entsteht.
        [board] Der Brettbogen entsteht.
        [stage] Das Bild entsteht.
       *[reel] Das bewegte Bild entsteht.
    }
# $done of $count pages or frames.
paper-progress = { $count ->
        [0] Es fängt an.
       *[other] { $done } von { $count } sind fertig.
    }
# $files: how many files there are.
paper-made = { $kind ->
        [card] Die Karte ist in „{ $file }“.
        [strip] Der Streifen ist in „{ $file }“.
        [board] Der Brettbogen ist in „{ $file }“.
        [stage] Das Bild ist in „{ $file }“.
       *[reel] Das bewegte Bild ist in „{ $file }“.
    }{ $files ->
        [one] { "" }
       *[other] { " " }Jede Seite hat eine eigene Datei, zusammen { $files }.
    }
paper-not-opened = Es ist in „{ $file }“, und kein Programm hier hat es von selbst geöffnet.
paper-called-off = Es entsteht nichts.
paper-stopping = Was gerade entsteht, wird angehalten. Hängt es, verlass es noch einmal.
paper-left-alone = Es bleibt sich selbst überlassen und endet vielleicht später. Wähl neu, oder verlass das hier.
paper-closing = Was gerade entsteht, wird erst angehalten: Schließ das Fenster noch einmal.
paper-no-tube = Ein Streifen ist so lang, wie das Rohr rundum misst, und zu diesem Knoten gehört kein Rohr, das ihn aufnimmt: Such den Knoten für einen Gegenstand und nenn dabei das Rohr.
# $what: card, strip or reel. $most: crossings or pages at most.
paper-long = { $what ->
        [card] Eine Karte dieses Knotens hätte mehr als { $most } Kreuzungen zu drucken: Mach stattdessen das Bild eines Schritts.
        [strip] Ein Streifen für dieses Rohr bräuchte mehr als { $most } Seiten: Sieh nach, ob der Durchmesser des Rohrs stimmt.
       *[reel] Ein bewegtes Bild dieses Knotens würde mehr als { $most } Kreuzungen zeigen, eine nach der anderen: Mach die Karte oder das Bild eines Schritts.
    }

## Keys

key-on-paper = auf Papier
key-paper-make = erstellen
key-paper-below = nächstes
key-paper-above = das davor
key-paper-form = andere Dateiart
key-paper-size = anderes Papier
key-paper-open = öffnen
key-paper-stop = anhalten
key-paper-type = Pfad tippen
key-photograph = Foto wählen

## The photograph of a finished tie

log-photograph-choose = Wählen…
log-photograph-typed = Das System zeigt hier kein Fenster für Dateien: Tipp den Pfad des Fotos.
log-photograph-typed-or-dropped = Das System zeigt hier kein Fenster für Dateien: Tipp den Pfad des Fotos, oder zieh es auf dieses Fenster.
