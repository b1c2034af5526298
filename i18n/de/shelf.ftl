# The shelf: ties that wait, the log of finished ones, and what can be wrong with their files.

## The shelf screen

shelf-heading = Meine Knoten
shelf-empty = Noch ist hier nichts: Hier steht jeder Knoten, den du anfängst. Soll es der erste Knoten sein?
shelf-empty-say = Meine Knoten. Noch ist hier nichts. Drück die Leertaste, um den ersten Knoten anzufangen, oder Escape, um zurückzugehen.

# How a tie stands. $state: waiting, finished or away.
# Example: 58 Prozent, 14 von 24 Bahnen, zuletzt gestern
shelf-tie-stand = { $state ->
        [finished] Fertig
        [away] Weggelegt bei { $percent } Prozent
       *[waiting] { $percent } Prozent
    }, { $laid } von { $legs } Bahnen, { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] zuletzt heute
               *[other] zuletzt vor { $minutes } min
            }
           *[other] zuletzt vor { $hours } h
        }
        [one] zuletzt gestern
       *[other] zuletzt vor { $days } Tagen
    }

# Whether something was logged of a finished tie. $logged: yes or no.
shelf-tie-log = { $logged ->
        [yes] Im Logbuch
       *[no] Noch nicht im Logbuch: L schreibt auf, was verbraucht wurde
    }

# Spoken when the shelf appears. Example: Meine Knoten. 3 Knoten. Pfeil auf und Pfeil ab wählen.
shelf-say = Meine Knoten. { $ties ->
        [one] Ein Knoten.
       *[other] { $ties } Knoten. Pfeil auf und Pfeil ab wählen, die Leertaste nimmt einen auf.
    }

# Spoken when a tie gets the focus.
# Example: 1 von 3. Pinne. 5 Parten, 7 Buchten, doppelt. Erster Durchgang, 58 Prozent, zuletzt gestern.
# $name: what its tyer calls it, or none. $named: yes or no. $phase: kit, rig, lead,
# follow, check, lift, fair or finish. $state: waiting, finished or away. $note: what its tyer wrote; $noted: yes
# or no.
shelf-tie-say = { $number } von { $ties }. { $named ->
        [yes] { $name }.
       *[no] { "" }
    } { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, { $passes ->
        [one] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }. { $state ->
        [finished] Fertig
       *[other] { $state ->
            [away] Weggelegt.
           *[waiting] { "" }
        } { $phase ->
            [kit] Beim Zurechtlegen
            [rig] Beim Einrichten
            [lead] Erster Durchgang
            [follow] { $pass ->
                [2] Zweiter Durchgang
                [3] Dritter Durchgang
                [4] Vierter Durchgang
                [5] Fünfter Durchgang
                [6] Sechster Durchgang
                [7] Siebter Durchgang
                [8] Achter Durchgang
               *[9] Neunter Durchgang
            }
            [check] Beim Nachsehen nach Durchgang { $pass }
            [lift] { -coming-off }
            [fair] Beim Durchholen
           *[finish] Beim Fertigmachen der Enden
        }, { $percent } Prozent
    }, { $days ->
        [0] zuletzt heute
        [one] zuletzt gestern
       *[other] zuletzt vor { $days } Tagen
    }. { $noted ->
        [yes] Notiz: { $note }
       *[no] { "" }
    }

# All logged ties together.
# Example: Im Logbuch: 4 Knoten, 192 Bahnen, 6 Stunden 20 Minuten, 18,4 m Schnur.
# $cord: a length, or none when nothing was measured.
shelf-totals = Im Logbuch: { $ties ->
        [one] 1 Knoten
       *[other] { $ties } Knoten
    }, { $legs } Bahnen, { $hours ->
        [0] { $minutes ->
            [one] 1 Minute
           *[other] { $minutes } Minuten
        }
        [one] 1 Stunde{ $minutes ->
            [0] { "" }
            [one] { " " }1 Minute
           *[other] { " " }{ $minutes } Minuten
        }
       *[other] { $hours } Stunden{ $minutes ->
            [0] { "" }
            [one] { " " }1 Minute
           *[other] { " " }{ $minutes } Minuten
        }
    }{ $cord ->
        [none] .
       *[other] , { $cord } Schnur.
    }

# $ties: so many are not laid out above or below those that are.
shelf-more-ties = { $ties ->
        [one] 1 weiterer Knoten ist nicht zu sehen: Die Pfeile nach oben und unten führen hin.
       *[other] { $ties } weitere Knoten sind nicht zu sehen: Die Pfeile nach oben und unten führen hin.
    }

# The tyer's own pace.
shelf-pace = Dein Tempo: { $seconds } Sekunden je Bahn.

shelf-prompt-name = Name dieses Knotens
shelf-prompt-note = Notiz zu diesem Knoten
shelf-prompt-backup = Alle Knoten und das Logbuch in diese neue Datei sichern
shelf-prompt-bring-in = Einen Knoten oder eine Sicherung aus dieser Datei hereinholen

shelf-has-name = Umbenannt.
shelf-has-note = Notiert.
shelf-begun-again = Der gleiche Knoten ist neu angefangen und steht ganz vorn.
shelf-is-away = Weggelegt. Er bleibt hier, aber nicht mehr auf dem ersten Schirm.
shelf-is-out = Wieder vorgeholt.
shelf-is-deleted = Gelöscht. Drück U, um ihn zurückzuholen.
shelf-is-back = Er ist wieder da.
shelf-nothing-deleted = Es ist nichts gelöscht, das zurückkommen könnte: Entf löscht den gewählten Knoten, und U holt ihn zurück.
shelf-not-finished = Dieser Knoten ist nicht fertig. Was verbraucht wurde, wird aufgeschrieben, wenn er es ist.

# $ties and $logged: how many; $left: how many could not be read and are not in it.
shelf-backed-up = In { $file } { $ties ->
        [one] { $logged ->
            [0] sind 1 Knoten und kein Eintrag des Logbuchs.
            [one] sind 1 Knoten und 1 Eintrag des Logbuchs.
           *[other] sind 1 Knoten und { $logged } Einträge des Logbuchs.
        }
       *[other] { $logged ->
            [one] sind { $ties } Knoten und 1 Eintrag des Logbuchs.
           *[other] sind { $ties } Knoten und { $logged } Einträge des Logbuchs.
        }
    }{ $left ->
        [0] { "" }
        [one] { " " }1 Dokument war nicht zu lesen und ist nicht dabei.
       *[other] { " " }{ $left } Dokumente waren nicht zu lesen und sind nicht dabei.
    }

# $new: ties that came, $known: ties that were here already, $faults: lines that could not be
# read, $missing: lines that a backup cut short lacks; $shortened: names or notes that were cut; $presets: tubes and
# cords that came.
shelf-brought-in = Aus { $file } hereingeholt: { $new ->
        [0] kein neuer Knoten
        [one] 1 Knoten
       *[other] { $new } Knoten
    } und { $logged ->
        [0] nichts für das Logbuch
        [one] 1 Eintrag des Logbuchs
       *[other] { $logged } Einträge des Logbuchs
    }.{ $known ->
        [0] { "" }
        [one] { " " }1 Knoten war schon hier.
       *[other] { " " }{ $known } Knoten waren schon hier.
    }{ $faults ->
        [0] { "" }
        [one] { " " }1 Zeile war nicht zu lesen und wurde ausgelassen.
       *[other] { " " }{ $faults } Zeilen waren nicht zu lesen und wurden ausgelassen.
    }{ $missing ->
        [0] { "" }
        [one] { " " }1 Zeile fehlt am Ende.
       *[other] { " " }{ $missing } Zeilen fehlen am Ende.
    }{ $shortened ->
        [0] { "" }
        [one] { " " }1 Name oder Notiz wurde gekürzt: Ein Name hat höchstens 120 Zeichen, eine Notiz 2000.
       *[other] { " " }{ $shortened } Namen oder Notizen wurden gekürzt: Ein Name hat höchstens 120 Zeichen, eine Notiz 2000.
    }{ $presets ->
        [0] { "" }
        [one] { " " }1 gemerktes Rohr oder Schnur kam mit.
       *[other] { " " }{ $presets } gemerkte Rohre und Schnüre kamen mit.
    }{ $settings ->
        [no] { "" }
       *[yes] { " " }Die Einstellungen kamen auch mit und gelten ab dem nächsten Start.
    }

## A tie that is open elsewhere

look-only = Nur ansehen: Dieser Knoten ist in einem anderen Fenster oder Terminal offen. Was du hier tust, wird nicht behalten.
look-only-say = Nur ansehen. Was du hier tust, wird nicht behalten.

## The log

log-offer-say = Das war der letzte Schritt. Drück L, um aufzuschreiben, was verbraucht wurde, oder Escape, um zu gehen.

log-heading = Was wirklich verbraucht wurde
log-say = Was wirklich verbraucht wurde. Tab geht von Feld zu Feld; was du leer lässt, zählt nicht. Eingabe behält es.
log-cord-name = Schnur, wie du sie nennst
log-cord = Dicke der Schnur
log-cut = Zugeschnitten, alles zusammen
log-left-over = Übrig, alles zusammen
log-around = Dicke des Gegenstands
log-width = Fertige Breite
log-drawn = Durchgeholt
log-drawn-tight = so dicht es geht
log-drawn-open = offen gelassen
log-minutes = Arbeit in Minuten
log-note = Notiz
log-photograph = Foto, Pfad der Datei
log-hint = Längen mit ihrer Einheit, etwa 4 mm, 5/32 Zoll oder 2,5 m; ohne Einheit Millimeter.
log-keep = Behalten
log-kept = Behalten.

# Said when a field gets the focus. $field: as the labels above. $value: what stands in it, or
# none.
log-field-say = { $field ->
        [cord-name] Schnur, wie du sie nennst
        [cord] Dicke der Schnur
        [cut] Zugeschnittene Schnur, alles zusammen
        [left-over] Übrige Schnur, alles zusammen
        [around] Dicke des Gegenstands, auf dem der Knoten sitzt
        [width] Fertige Breite
        [drawn-tight] Durchgeholt, so dicht es geht
        [drawn-open] Offen gelassen
        [minutes] Arbeit in Minuten
        [note] Notiz
        [photograph] Pfad eines Fotos
       *[keep] Behalten
    }{ $filled ->
        [yes] : { $value }.
       *[no] .
    }

# What is wrong with a field.
log-length-unreadable = „{ $given }“ ist keine Länge: Gib eine Zahl und eine Einheit an, etwa 4 mm, 5/32 Zoll oder 2,5 m.
log-length-unit = „{ $given }“ hat eine Einheit, die hier nicht bekannt ist: Bekannt sind mm, cm, m, in und ft; versuch es mit 4 mm.
log-length-comma = Das Komma in „{ $given }“ lässt sich auf zwei Arten lesen: Schreib einen Punkt für die Dezimalen, oder lass es weg.
log-length-fraction = „{ $given }“ ist ein Bruch ohne Einheit: Sind es Zoll, dann schreib { $given }in; sonst gib mm oder cm dazu an.
log-length-positive = Eine Länge muss größer als null sein, und „{ $given }“ ist es nicht: Versuch es mit 4 mm, oder lass das Feld leer.
log-length-range = Eine Länge muss von 0,01 mm bis 100 m gehen, und „{ $given }“ liegt nicht dazwischen: Versuch es mit einer anderen Einheit.
log-cord-thickness = Die Schnur hat einen Namen, aber keine Dicke: Gib an, wie dick sie ist, etwa 4 mm, oder nimm den Namen heraus.
log-left-over-more = Es ist mehr Schnur übrig, als zugeschnitten wurde: Sieh nach, ob beide Einheiten stimmen.
# A measure is far from what it should come to, and is asked back once. $what: width or cord.
# $measured, $computed: lengths.
log-wild = { $what ->
        [width] Die fertige Breite, { $measured }, ist weit weg von den { $computed }, auf die dieser Knoten kommen sollte: Sieh nach, ob Zahl und Einheit stimmen, und wenn ja, behalte es noch einmal.
       *[cord] Zugeschnittenes weniger Übriges macht { $measured } Schnur im Knoten, weit weg von den { $computed }, die er brauchen sollte: Sieh nach, ob beides stimmt, und wenn ja, behalte es noch einmal.
    }
log-minutes-unreadable = Die Minuten müssen eine Zahl von 0 bis { $most } sein, und „{ $given }“ ist keine: Versuch es mit 90.
log-no-photograph = Eine Datei „{ $file }“ gibt es nicht: Wähl ein Foto aus, das da ist, oder lass das Feld leer.
log-photograph-unread = „{ $file }“ ließ sich nicht lesen ({ $reason }): Sieh nach, ob du die Datei lesen darfst, oder wähl ein anderes Foto.
log-photograph-other = „{ $file }“ ist kein Foto, das sich zeigen lässt: Wähl eine Datei der Art JPEG, PNG oder WebP.
log-photograph-damaged = „{ $file }“ ist beschädigt und lässt sich nicht zeigen: Kopier das Foto noch einmal von der Kamera, oder wähl ein anderes.
# $most: megabytes.
log-photograph-large = „{ $file }“ ist zu groß: Ein Foto darf bis zu { $most } Megabyte und hundert Millionen Bildpunkte haben. Wähl eine kleinere Kopie davon.
log-leave-asks = Was du eingetippt hast, ist nicht behalten. Drück noch einmal Escape, um ohne zu gehen, oder Eingabe, um es zu behalten.
log-not-kept = Es ließ sich nicht behalten. { $reason }

## In the terminal

# What stands before the ties in a list; the columns are set by the program.
shelf-no-ties = Im Regal in { $folder } liegt kein Knoten.
shelf-verify-whole = { $documents ->
        [0] Im Regal ist noch nichts.
        [one] Das eine Dokument im Regal ist unbeschädigt.
       *[other] Alle { $documents } Dokumente im Regal sind unbeschädigt.
    }
# $state: unchecked or aside.
shelf-verify-line = { $state ->
        [aside] { $file } war beschädigt und liegt beiseite: Lösch die Datei, wenn du sie nicht brauchst.
       *[unchecked] { $file } hat keine Prüfsumme, an der es sich messen ließe: Nimm den Knoten auf und drück einmal, dann bekommt er eine.
    }
# $renumbered: yes when the shelf had another tie of its name.
shelf-imported = { $fate ->
        [here] Der Knoten { $id } liegt schon im Regal.
        [renumbered] Der Knoten liegt im Regal als { $id }; ein anderer heißt schon { $was }.
       *[kept] Der Knoten { $id } liegt im Regal.
    }{ $shortened ->
        [yes] { " " }Sein Name oder seine Notiz wurde gekürzt: Ein Name hat höchstens 120 Zeichen, eine Notiz 2000.
       *[no] { "" }
    }
shelf-exported = Der Knoten { $id } steht in { $file }.
shelf-deleted = Der Knoten { $id } ist gelöscht: „marlinspeak shelf undo { $id }“ holt ihn zurück.
shelf-undone = Der Knoten { $id } liegt wieder im Regal.
shelf-not-deleted = Es ist kein Knoten { $id } gelöscht, also kann keiner zurückkommen: „marlinspeak shelf list“ zeigt, was im Regal liegt.

## What can be wrong

# While a command of the terminal waits for the disk.
disk-slow = Die Platte lässt auf sich warten. Sobald sie antwortet, geht es weiter; mit Strg+C gibst du es auf, und keine Datei bleibt halb geschrieben.
shelf-error-io = { $doing ->
        [read] { $path } ließ sich nicht lesen ({ $reason }): Sieh nach, ob die Datei da ist und du sie lesen darfst, dann versuch es noch einmal.
        [list] Der Ordner { $path } ließ sich nicht durchsehen ({ $reason }): Sieh nach, ob er da ist und du ihn lesen darfst, dann versuch es noch einmal.
        [lock] { $path } ließ sich nicht sperren ({ $reason }): Sieh nach, ob der Ordner da ist und du darin schreiben darfst, dann versuch es noch einmal.
        [make] Der Ordner { $path } ließ sich nicht anlegen ({ $reason }): Sieh nach, ob nichts anderes so heißt und ob der Datenträger nicht voll ist, dann versuch es noch einmal.
        [move] { $path } ließ sich nicht verschieben ({ $reason }): Sieh nach, ob du in dem Ordner schreiben darfst, dann versuch es noch einmal.
       *[write] { $path } ließ sich nicht schreiben ({ $reason }): Sieh nach, ob der Ordner da ist, ob du darin schreiben darfst und ob der Datenträger nicht voll ist, dann versuch es noch einmal.
    }

# $fault: what is wrong with the file. $place: where in it, in brackets with a space before them, or nothing.
shelf-error-unreadable = { $fault ->
        [too-large] { $path } ist zu groß für das, was es sein soll: Sieh nach, ob es die gemeinte Datei ist, oder nimm eine unbeschädigte Kopie.
        [not-a-file] { $path } ist keine gewöhnliche Datei: Leg eine Datei an diese Stelle, oder nimm eine andere.
        [not-json] { $path } lässt sich nicht als JSON lesen{ $place }: Nimm eine unbeschädigte Kopie davon.
        [newer] { $path } hat ein neueres Marlinspeak geschrieben{ $place }, darum bleibt es unberührt: Nimm das neuere Programm dafür.
        [checksum] { $path } ist beschädigt, denn der Inhalt passt nicht zur Prüfsumme: Nimm eine unbeschädigte Kopie davon.
        [knot] { $path } nennt einen Knoten, der sich nicht knüpfen lässt: Parten und Buchten gehen von 2 bis 999, Durchgänge von 1 bis 9; nimm eine unbeschädigte Kopie davon.
        [place] { $path } steht an einer Stelle, die der Knoten nicht hat: Nimm eine unbeschädigte Kopie davon.
       *[shape] { $path } ist nicht, was es sein soll{ $place }: Nimm eine unbeschädigte Kopie davon.
    }

shelf-error-gone = { $path } ist weg: Es gilt die Kopie davor, wenn es eine gibt.
shelf-error-stranger = { $path } liegt im Regal und heißt nicht wie ein Knoten: Leg die Datei woandershin, und hol sie mit „marlinspeak shelf import“ herein.
shelf-error-unwritable = Der Knoten { $id } lässt sich nicht so schreiben, dass er sich unverändert wieder lesen ließe: Kürze seinen Namen und seine Notiz, dann versuch es noch einmal.
shelf-error-no-such-tie = Im Regal liegt kein Knoten { $id }: „marlinspeak shelf list“ zeigt, was es gibt.
shelf-error-not-an-id = „{ $given }“ ist nicht der Name eines Knotens im Regal: So ein Name hat 6 bis 32 Buchstaben a bis z und Ziffern; „marlinspeak shelf list“ zeigt, was es gibt.
shelf-error-exists = { $path } gibt es schon und wird nicht überschrieben: Wähl einen anderen Namen, oder füge im Terminal --replace hinzu.
shelf-error-no-home = Das System nennt keinen Ordner für deine Daten: Setz XDG_DATA_HOME auf einen, dann versuch es noch einmal.
