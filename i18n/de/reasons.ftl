# Why something was refused or not believed, by kind, in words of our own: what the system and the
# readers of files say themselves is English or another language, and stands in the log file alone.

# It stands in brackets inside other sentences. $why: no-room, not-allowed, not-found, in-use,
# read-only, is-there, not-a-folder, not-a-file, bad-name, broken, no-answer, damaged, newer, other.
# Example: (auf dem Datenträger ist kein Platz mehr)
reason = { $why ->
        [no-room] auf dem Datenträger ist kein Platz mehr
        [not-allowed] das ist dir dort nicht erlaubt
        [not-found] dort ist nichts
        [in-use] ein anderes Programm benutzt es gerade
        [read-only] der Datenträger lässt sich lesen, aber nicht beschreiben
        [is-there] unter diesem Namen gibt es dort schon etwas
        [not-a-folder] wo ein Ordner sein sollte, liegt eine Datei
        [not-a-file] wo eine Datei sein sollte, liegt ein Ordner
        [bad-name] so kann keine Datei heißen
        [broken] der Datenträger oder die Verbindung zu ihm ist gestört
        [no-answer] es kam keine Antwort
        [damaged] der Inhalt ist beschädigt
        [newer] ein neueres Marlinspeak hat es geschrieben
       *[other] das System lässt es nicht zu; mehr steht im Protokoll
    }

# What is wrong with a document. $fault: too-large, not-a-file, not-json, newer, checksum or shape. $place: line, field or
# version, as below, or nothing.
# Example: (Zeile 3, Spalte 7 ist kein JSON)
fault = { $fault ->
        [too-large] sie ist zu groß
        [not-a-file] das ist keine gewöhnliche Datei
        [not-json] { $place } ist kein JSON
        [newer] { $place } ist neuer als dieses Programm
        [checksum] der Inhalt passt nicht zur Prüfsumme
       *[shape] { $place ->
            [none] der Inhalt ist nicht, was er sein soll
           *[known] { $place } ist nicht, was es sein soll
        }
    }

# Where in a document the fault is. $place: line, field or version. $name: its number or name; $column: the column, as text.
fault-place = { $place ->
        [line] Zeile { $name }, Spalte { $column }
        [field] das Feld „{ $name }“
       *[version] Version { $name }
    }
