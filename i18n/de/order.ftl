# Aufträge: mehrere Stücke für einen Kunden oder mehrere Knoten auf einem Stock; was zu kaufen und
# einzupacken ist, wie lange es dauert.

order-heading = { $named ->
        [yes] { $name }: { $count ->
            [one] 1 Knoten
           *[other] { $count } Knoten
        }
       *[no] { $count ->
            [one] 1 Knoten
           *[other] { $count } Knoten
        }
    }.
order-piece = { $count ->
        [one] 1 Stück
       *[other] { $count } Stück
    }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }: { $knot }, { $width } breit; { $count ->
        [one] braucht
       *[other] jedes braucht
    } { $length } Schnur{ $cords ->
        [one] { "" }
       *[other] , in { $cords } Schnüren,
    } und etwa { $time }.
order-piece-tied = { $tied } von { $count } gebunden.
order-to-buy = Zu kaufen:
order-cord = { $name ->
        [none] Schnur
       *[other] { $name }
    }, { $diameter } dick: { $length }{ $spools ->
        [0] { "" }
        [one] , 1 Spule zu { $spool }
       *[other] , { $spools } Spulen zu { $spool }
    }
order-cord-cut = { $pieces ->
        [one] 1 Stück
       *[other] { $pieces } Stück
    } zu { $length }
# What all of a cord weighs. $heavy: yes for kilograms.
order-cord-weight = { $heavy ->
        [yes] zusammen etwa { $weight } Kilogramm
       *[no] zusammen etwa { $weight } Gramm
    }
order-cord-spool-short = Eine Spule von { $spool } ist zu kurz für ein Stück von { $length }: Nimm längere Spulen oder nenne für jeden Durchgang eine Schnur, dann werden die Stücke kürzer.
order-bag = In die Tasche, für alles zusammen:
order-stick = Auf dem Stock von { $length }, vom Ende an:
order-stick-place = { $number }. { $named ->
        [yes] { $name }: von { $from } bis { $to }
       *[no] von { $from } bis { $to }
    }
order-stick-left = Hinter dem letzten Knoten bleiben { $left } frei.
order-stick-short = Knoten und Abstände sind { $left } zu lang für den Stock von { $length }: Nimm kleinere Abstände, weniger Knoten oder einen längeren Stock.
order-time = Alles zusammen dauert etwa { $time }, { $pace ->
        [own] in deinem eigenen Tempo
       *[usual] in üblichem Tempo
    }{ $cost ->
        [none] .
       *[other] , und kostet { $cost }.
    }

order-in-piece = Stück { $number }{ $named ->
        [yes] , „{ $name }“
       *[no] { "" }
    }:
order-no-pieces = Der Auftrag hat keine Stücke: Gib eines an, mit Parten, Buchten, Schnur und Rohr.
order-too-many = Ein Auftrag hat höchstens { $most } Stücke, dieser hat { $given }: Mach zwei Aufträge daraus.
order-count = Die Anzahl eines Stücks ist eine ganze Zahl von 1 bis { $most }, „{ $given }“ ist keine: Gib eine an, etwa 10.
order-length = { $asking ->
        [gap] Der Abstand vor dem Knoten
        [stick] Die Länge des Stocks
       *[spool] Die Schnur auf einer Spule
    } kann nicht „{ $given }“ sein: { $fault ->
        [unit] Die Einheit ist unbekannt; nimm mm, cm, m, in oder ft
        [comma] Das lässt sich auf zwei Arten lesen; schreib es mit einem Punkt oder ohne das Komma
        [fraction] Das ist ein Bruch ohne Einheit; schreib in dahinter, wenn es Zoll sind
        [nought] Es muss mehr als null sein
        [range] Es muss zwischen 0,01 mm und { $asking ->
            [spool] 1000 m
           *[other] 100 m
        } liegen
       *[unreadable] Gib eine Zahl mit mm, cm, m, in oder ft an
    }, etwa { $asking ->
        [gap] 20mm
        [stick] 1m
       *[spool] 20m
    }.
order-waste = Verschnitt ist eine Zahl von 0 bis { $most } Prozent, „{ $given }“ ist keine: Gib eine an, etwa 5.
order-field-unknown = { $piece ->
        [0] Im Auftrag
       *[other] In Stück { $piece }
    } steht „{ $given }“, das nichts bedeutet: Es gibt { $known }.
order-text-long = { $piece ->
        [0] Im Auftrag
       *[other] In Stück { $piece }
    } hat „{ $field }“ mehr als { $most } Zeichen: Mach es kürzer.
order-none-of-name = Es gibt keinen Auftrag „{ $given }“: „marlinspeak order list“ nennt die vorhandenen.
order-piece-none = Der Auftrag hat kein Stück { $given }: Er hat { $known }.

order-kept = Aufgehoben als { $id }.
order-deleted = Auftrag { $id } ist gelöscht; „marlinspeak order undo { $id }“ holt ihn zurück.
order-undone = Auftrag { $id } ist wieder da.
orders-none = In { $folder } ist kein Auftrag aufgehoben.
orders-backed-up = { $orders ->
        [0] { "" }
        [one] 1 Auftrag ist auch dabei.
       *[other] { $orders } Aufträge sind auch dabei.
    }
orders-came = { $orders ->
        [0] { "" }
        [one] 1 Auftrag kam auch mit.
       *[other] { $orders } Aufträge kamen auch mit.
    }

## The screen

orders-heading = { $orders ->
        [0] Noch keine Aufträge
        [one] 1 Auftrag
       *[other] { $orders } Aufträge
    }.
orders-being-read = Die Aufträge werden gelesen.
orders-not-read = Die Aufträge waren nicht zu lesen.
orders-empty = Ein Auftrag ist eine Liste von Knoten für einen Kunden oder auf einem Stock, mit dem, was dafür zu kaufen ist. Drück Weiter, um einen anzulegen.
orders-no-place = Es gibt keinen Ordner, in dem Aufträge liegen könnten: Behebe, was beim Start dazu gesagt wurde, und starte das Programm neu.
order-keys-list = N legt einen Auftrag an, Weiter öffnet den, der dran ist, B auf seiner Seite bindet daraus.
order-keys-order = Weiter ändert eine Zeile oder öffnet ein Stück, A fügt ein Stück hinzu, B bindet das nächste.
order-keys-piece = Weiter ändert eine Zeile, B bindet das nächste.
order-piece-heading = Stück { $number }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }.
order-label = { $field ->
        [name] Name des Auftrags
        [stick] Länge des Stocks, auf dem alle sitzen
        [spool] Schnur auf einer Spule
        [waste] Verschnitt in Prozent
        [piece-name] Wie es heißt
        [count] Wie viele
        [leads] Parten
        [bights] Buchten
        [passes] Durchgänge
        [weave] Flechtart
        [cord] Schnur
        [tube] Rohr
        [rows] Löcher in jeder Reihe eines Rings
        [object] Dicke des Gegenstands
        [ball] Durchmesser einer Kugel
        [mat] Matte, von Rand zu Rand
        [in_place] Aufgeschoben oder an Ort und Stelle geknüpft
        [cover] Zu bedeckende Länge
       *[gap] Abstand davor auf dem Stock
    }
# The same when it is typed, with how a taper and a hole are written. $label: the label.
order-asked = { $label }{ $field ->
        [object] . Verjüngt er sich, gib beide Enden mit einem Doppelpunkt dazwischen an, das untere zuerst, etwa 32:26 mm.
        [mat] . Ein Loch steht hinter einem Doppelpunkt, etwa 150:60 mm.
       *[other] { "" }
    }
order-entry = { $label }: { $filled ->
        [yes] { $value }
       *[no] nicht angegeben
    }
order-is-deleted = Gelöscht. U holt ihn zurück.
order-is-back = Er ist wieder da.
order-piece-gone = Dieses Stück steht inzwischen nicht mehr im Auftrag: Geändert wurde nichts.
order-piece-done = Von diesem Stück sind alle gebunden.
order-nothing-deleted = Es ist nichts gelöscht, was zurückkommen könnte.
key-orders = Aufträge
key-new-order = neuer Auftrag
key-add-piece = Stück dazu
key-tie-next-piece = das nächste binden
key-open-or-change = öffnen oder ändern

help-orders = Mehrere Stücke auf einmal: was zu kaufen und einzupacken ist, Stunden, Preis; aufgehoben, solange du daran bindest
help-order-list = Die aufgehobenen Aufträge nennen, die neuesten zuerst
help-order-show = Sagen, was ein Auftrag ausmacht
help-order-plan = Sagen, was der Auftrag in einer Datei ausmacht, und nichts aufheben
help-order-keep = Den Auftrag in einer Datei aufheben oder an die Stelle eines aufgehobenen setzen
help-order-delete = Einen Auftrag löschen
help-order-undo = Einen gelöschten Auftrag zurückholen
help-order-name = Der Auftrag, wie „order list“ ihn nennt
help-order-file = Der Auftrag als JSON-Dokument, oder - für die Standardeingabe
help-order-as = Der Auftrag, der ihm Platz macht
value-order = AUFTRAG
