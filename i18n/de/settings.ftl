# The settings and the learn screen, and the presses that are the same on every screen.

settings-heading = Einstellungen
settings-opening-say = Einstellungen. Pfeil auf und Pfeil ab gehen von Zeile zu Zeile, die Pfeile zur Seite ändern sie, Escape ist fertig.

# The heading of a group of lines, with what they are for. $group: pedals, language, voice, signals,
# screen, pace, prices or presses.
settings-group = { $group ->
        [pedals] Pedale und Tasten: was du wofür drückst
        [language] Sprache und Maße: worin alles gesagt wird
        [voice] Die Stimme: wie die Schritte gesprochen werden
        [signals] Zeichen: was man von einem Druck hört und sieht
        [screen] Der Bildschirm: wie groß und in welchen Farben
        [pace] Takt: ohne Druck weitergehen
        [prices] Preise: was ein Knoten wert ist
       *[presses] Drücke: einen Tritt vom anderen unterscheiden
    }
settings-none-learnt = Noch ist nichts gelernt: Es gelten die üblichen Tasten und Pedale.

# The name of a line.
settings-name = { $field ->
        [learn] Pedale und Tasten
        [knocks] Klopfen auf die Werkbank
        [try-knocks] Klopfen ausprobieren
        [voice] Stimme
        [speed] Tempo der Stimme
        [volume] Lautstärke der Stimme
        [pitch] Tonhöhe der Stimme
        [cues] Kurze Töne
        [cue-volume] Lautstärke der Töne
        [flash] Blitz am Rand
        [motion] Bewegte Bilder
        [theme] Farben
        [distance] Auge bis Bildschirm
        [screen-width] Breite des Bildes
        [pacing] Von selbst weitergehen
        [price-metre] Preis für einen Meter Schnur
        [price-hour] Preis für eine Stunde Arbeit
        [bounce] Zweiten Druck überhören
        [long] Weiter lang gedrückt geht zurück
       *[double] Weiter doppelt gedrückt sagt es noch einmal
    }

# The value on a line. $choice: number, name, or a choice of the line. $number in the unit of
# the line, or $length with its unit, or $amount of the tyer's own money; $name is the name of a
# voice.
settings-value = { $field ->
        [learn] { $number ->
            [0] Die üblichen · Eingabe: andere anlernen
            [one] 1 angelernt · Eingabe: neu anlernen
           *[other] { $number } angelernt · Eingabe: neu anlernen
        }
        [try-knocks] Eingabe: sehen, was als Klopfen gilt
        [voice] { $choice ->
            [asking] Der Sprachdienst wird gefragt
            [usual] Die Wahl des Sprachdienstes
            [natural] { $name }, natürlich
           *[name] { $name }
        }
        [speed] { $number } Wörter in der Minute
        [volume] { $number } %
        [pitch] { $number ->
            [50] Unverändert
           *[other] { $number } %
        }
        [cue-volume] { $number } %
        [theme] { $choice ->
            [light] Dunkel auf hell
           *[dark] Hell auf dunkel
        }
        [distance] { $length }
        [screen-width] { $choice ->
            [unknown] Nicht bekannt: 96 Pixel auf einen Zoll
           *[number] { $length }
        }
        [price-metre] { $choice ->
            [off] Nicht angegeben
           *[number] { $amount }
        }
        [price-hour] { $choice ->
            [off] Nicht angegeben
           *[number] { $amount }
        }
        [bounce] { $number ->
            [0] Nie
           *[other] { $number } Millisekunden lang
        }
        [long] { $choice ->
            [off] Aus
           *[number] Nach { $number } Millisekunden
        }
        [double] { $choice ->
            [off] Aus
           *[number] Innerhalb von { $number } Millisekunden
        }
       *[switch] { $choice ->
            [on] An
           *[off] Aus
        }
    }

# A line as it is said: name, value, what can be pressed. Arguments as for settings-value.
# Example: Tempo der Stimme: 165 Wörter in der Minute. Die Pfeile zur Seite ändern es.
settings-say = { $field ->
        [learn] { $number ->
            [0] Pedale und Tasten: die üblichen. Drück Eingabe, um andere anzulernen.
            [one] Pedale und Tasten: eine Belegung ist angelernt. Drück Eingabe, um neu anzulernen.
           *[other] Pedale und Tasten: { $number } Belegungen sind angelernt. Drück Eingabe, um neu anzulernen.
        }
        [knocks] { $choice ->
            [on] Klopfen auf die Werkbank: an. Zweimal heißt weiter, dreimal noch einmal. Ein Mikrofon hört danach; nichts wird aufgenommen oder behalten, weitergegeben wird nur, wann und wie laut geklopft wurde. Die Pfeile zur Seite ändern es.
           *[off] Klopfen auf die Werkbank: aus. Eingeschaltet hört ein Mikrofon, ob du zwei- oder dreimal klopfst. Die Pfeile zur Seite ändern es.
        }
        [try-knocks] Klopfen ausprobieren: finden, wo das Mikrofon liegen soll. Drück Eingabe.
        [voice] { $choice ->
            [asking] Stimme: Der Sprachdienst wird gefragt, welche er hat.
            [usual] Stimme: die Wahl des Sprachdienstes. Die Pfeile zur Seite lassen andere hören.
            [natural] Stimme: { $name }, eine natürliche. Die Pfeile zur Seite lassen andere hören.
           *[name] Stimme: { $name }. Die Pfeile zur Seite lassen andere hören.
        }
        [speed] Tempo der Stimme: { $number } Wörter in der Minute. Die Pfeile zur Seite ändern es.
        [volume] Lautstärke der Stimme: { $number } Prozent. Die Pfeile zur Seite ändern sie.
        [pitch] { $number ->
            [50] Tonhöhe der Stimme: ihre eigene. Die Pfeile zur Seite ändern sie.
           *[other] Tonhöhe der Stimme: { $number } Prozent. Die Pfeile zur Seite ändern sie.
        }
        [cues] { $choice ->
            [on] Kurze Töne: an. Die Pfeile zur Seite ändern es.
           *[off] Kurze Töne: aus. Die Pfeile zur Seite ändern es.
        }
        [cue-volume] Lautstärke der Töne: { $number } Prozent. Die Pfeile zur Seite ändern sie.
        [flash] { $choice ->
            [on] Blitz am Rand des Bildschirms: an. Die Pfeile zur Seite ändern es.
           *[off] Blitz am Rand des Bildschirms: aus. Die Pfeile zur Seite ändern es.
        }
        [motion] { $choice ->
            [on] Bewegte Bilder: an. Die Pfeile zur Seite ändern es.
           *[off] Bewegte Bilder: aus. Die Pfeile zur Seite ändern es.
        }
        [theme] { $choice ->
            [light] Farben: dunkel auf hell. Die Pfeile zur Seite ändern sie.
           *[dark] Farben: hell auf dunkel. Die Pfeile zur Seite ändern sie.
        }
        [distance] Vom Auge bis zum Bildschirm: { $length }. Die Pfeile zur Seite ändern es.
        [screen-width] { $choice ->
            [unknown] Breite des Bildes auf deinem Bildschirm: nicht bekannt. Die Pfeile zur Seite ändern sie.
           *[number] Breite des Bildes auf deinem Bildschirm: { $length }. Die Pfeile zur Seite ändern sie.
        }
        [pacing] { $choice ->
            [on] In deinem Tempo von selbst weitergehen: an. Jeder Druck hält es an. Die Pfeile zur Seite ändern es.
           *[off] In deinem Tempo von selbst weitergehen: aus. Die Pfeile zur Seite ändern es.
        }
        [price-metre] { $choice ->
            [off] Preis für einen Meter Schnur: nicht angegeben. Die Pfeile zur Seite ändern ihn.
           *[number] Preis für einen Meter Schnur: { $amount }. Die Pfeile zur Seite ändern ihn.
        }
        [price-hour] { $choice ->
            [off] Preis für eine Stunde Arbeit: nicht angegeben. Die Pfeile zur Seite ändern ihn.
           *[number] Preis für eine Stunde Arbeit: { $amount }. Die Pfeile zur Seite ändern ihn.
        }
        [bounce] { $number ->
            [0] Zweiten Schlag desselben Pedals überhören: nie. Die Pfeile zur Seite ändern es.
           *[other] Zweiten Schlag desselben Pedals { $number } Millisekunden lang überhören. Die Pfeile zur Seite ändern es.
        }
        [long] { $choice ->
            [off] Weiter lang gedrückt geht zurück: aus. Die Pfeile zur Seite ändern es.
           *[number] Weiter lang gedrückt geht zurück, nach { $number } Millisekunden. Die Pfeile zur Seite ändern es.
        }
       *[double] { $choice ->
            [off] Weiter doppelt gedrückt sagt es noch einmal: aus. Die Pfeile zur Seite ändern es.
           *[number] Weiter doppelt gedrückt sagt es noch einmal, innerhalb von { $number } Millisekunden. Die Pfeile zur Seite ändern es.
        }
    }

# Said when the speed is changed while tying.
speed-say = { $number } Wörter in der Minute.

# $aside: name of a file. $reason: what is wrong with it.
# The settings file is damaged. $state: aside when it was moved, else there. $kept: usual, copy, all or rest; $lost: the
# settings that could not be read.
settings-damaged = Die Einstellungen waren beschädigt ({ $reason }){ $state ->
        [aside] { " " }und die Datei liegt nun als { $aside } beiseite
       *[there] { "" }
    }; { $kept ->
        [copy] es gelten die vorher gespeicherten.
        [saved] es gilt, was seither gewählt wurde.
        [all] alle sind lesbar und gelten, und jede kann falsch sein: Sieh sie durch.
        [rest] was lesbar ist, gilt, und { $lost } ist wie vorher: Sieh sie durch.
       *[usual] es gelten die üblichen Einstellungen.
    }
settings-newer = Die Einstellungen in { $file } hat ein neueres Marlinspeak geschrieben (Version { $version }), darum bleiben sie unberührt: Es gelten die üblichen Einstellungen, und Änderungen werden nicht behalten.
settings-not-kept = Die Einstellungen waren nicht zu erreichen ({ $reason }): Sieh nach, ob der Ordner da und nicht voll ist; bis dahin gelten Änderungen nur, solange das Fenster offen ist.

## The learn screen

learn-opening-say = Pedale und Tasten anlernen. Drück etwas schon Angelerntes, um eine Zeile zu überspringen, zweimal, um fertig zu sein. Escape lässt alles, wie es war.
learn-how = Etwas schon Angelerntes drücken: überspringen · zweimal: fertig

# Example: Drück, was „Weiter“ heißen soll.
learn-asks = { $intent ->
        [next] Drück, was „Weiter“ heißen soll.
        [back] Drück, was „Zurück“ heißen soll.
        [again] Drück, was „Noch einmal“ heißen soll.
        [where] Drück, was „Wo bin ich“ heißen soll.
        [slower] Drück, was „Langsamer“ heißen soll.
        [faster] Drück, was „Schneller“ heißen soll.
        [pause] Drück, was „Pause“ heißen soll.
        [cord] Drück, was „Reicht die Schnur“ heißen soll.
        [join] Drück, was „Zu Ende oder ausgefranst“ heißen soll.
       *[wrong] Drück, was „Falsch“ heißen soll.
    }

# What was pressed and what it is for.
# Example: Taste F13 heißt „Weiter“.
# $kind: space, knocks, key, mouse, pad (a button of a game controller), note, controller or programme
# (of MIDI). $name: the name or number of the key or button.
learn-learnt = { $kind ->
        [space] Die Leertaste
        [knocks] Klopfen, { $name }-mal,
        [mouse] Maustaste { $name }
        [pad] Gamepad-Taste { $name }
        [note] MIDI-Note { $name }
        [controller] MIDI-Regler { $name }
        [programme] MIDI-Programm { $name }
       *[key] Taste { $name }
    } { $intent ->
        [next] heißt „Weiter“.
        [back] heißt „Zurück“.
        [again] heißt „Noch einmal“.
        [where] heißt „Wo bin ich“.
        [slower] heißt „Langsamer“.
        [faster] heißt „Schneller“.
        [pause] heißt „Pause“.
        [cord] heißt „Reicht die Schnur“.
        [join] heißt „Zu Ende oder ausgefranst“.
       *[wrong] heißt „Falsch“.
    }
learn-skipped-say = Übersprungen.
learn-done-say = Das war alles, und es ist gespeichert.

## While tying

paused = Pause. Mit P oder Weiter geht es weiter.
# The same in large type, above the keys that go on and what they do.
paused-shown = Pause
paused-way = weiter
pace-held-say = Angehalten. Mit Weiter geht es weiter.
# Why the screen is kept on: the desktop may show it.
awake-reason = Ein Knoten ist offen
screen-not-awake = Das System hält den Bildschirm nicht wach: Er kann beim Knüpfen dunkel werden.

## The start screen by ear

# A part of the form when it gets the focus or changes: name, value, what can be pressed.
# $typed: what it holds. $state: empty when it holds nothing. $choice: right or left.
# Example: Parten: 5. Gib eine Zahl ein; Tab geht weiter, Eingabe fängt an.
start-field-say = { $field ->
        [leads] { $state ->
            [empty] Parten: noch nichts. Gib eine Zahl ein.
           *[typed] Parten: { $typed }. Gib eine Zahl ein; Tab geht weiter, Eingabe fängt an.
        }
        [bights] { $state ->
            [empty] Buchten: noch nichts. Gib eine Zahl ein.
           *[typed] Buchten: { $typed }. Gib eine Zahl ein; Tab geht weiter, Eingabe fängt an.
        }
        [passes] { $state ->
            [empty] Durchgänge: noch nichts. Gib eine Zahl ein.
           *[typed] Durchgänge: { $typed }. Gib eine Zahl ein; Tab geht weiter, Eingabe fängt an.
        }
        [weave] { $state ->
            [empty] Flechtart: über eins, unter eins, so begonnen, dass am wenigsten durchzustecken ist. 1 beginnt mit über; auch ein Reihencode geht; Tab geht weiter.
           *[typed] Flechtart: { $typed }. 1 heißt über eins, unter eins; auch ein Reihencode geht; Tab geht weiter.
        }
        [nested] { $state ->
            [empty] Buchten ineinander: keine. 2 bis 9 fädeln so viele Schnüre durcheinander; Tab geht weiter.
           *[typed] Buchten ineinander: { $typed }. 1 ist ein einfacher Knoten; Tab geht weiter, Eingabe fängt an.
        }
        [lands] { $state ->
            [empty] Erste Schnur landet in der innersten Reihe der Kopf-Stifte. Eine Zahl nennt die Reihe, 1 ist die äußerste; Tab geht weiter.
           *[typed] Erste Schnur landet in Reihe { $typed } der Kopf-Stifte, 1 ist die äußerste; Tab geht weiter, Eingabe fängt an.
        }
        [hand] { $choice ->
            [left] Arbeiten nach links. Die Leertaste ändert es; Tab geht weiter.
           *[right] Arbeiten nach rechts. Die Leertaste ändert es; Tab geht weiter.
        }
        [side] { $choice ->
            [top] Folgen auf der Kopf-Seite der ersten Schnur. Die Leertaste ändert es; Tab geht weiter.
           *[bottom] Folgen auf der Fuß-Seite der ersten Schnur. Die Leertaste ändert es; Tab geht weiter.
        }
        [round-hand] { $choice ->
            [hand] Geknüpft um die Hand, ohne Rohr. Die Leertaste ändert es; Tab geht weiter.
           *[tube] Geknüpft auf einem Rohr. Die Leertaste wechselt zu um die Hand; Tab geht weiter.
        }
       *[begin] Diesen Knoten anfangen: Drück die Leertaste. Escape verlässt das Formular.
    }
