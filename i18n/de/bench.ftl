# Object, cord and tube: what is asked, what can be wrong with it, and the knots that fit.
#
# Arguments that come back:
#   $asking   what was being said: object, girth, cover, cord, tube, rows, pin, thread, wall, have
#   $given    the text as it was typed
#   lengths   each one argument with its unit (see lengths.ftl): "40 Millimeter" for the ear,
#             "40 mm" for the eye

## A length that is none

ask-length-unreadable = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } kann nicht „{ $given }“ sein: Gib eine Zahl mit mm, cm, m, in oder ft an, etwa { $example }.
ask-length-unit = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } hat eine Einheit, die hier nicht bekannt ist, „{ $unit }“ in „{ $given }“: Nimm mm, cm, m, in oder ft, etwa { $example }.
ask-length-comma = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } lässt sich auf zwei Arten lesen, „{ $given }“: Schreib einen Punkt, oder lass das Komma weg.
ask-length-nought = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } muss größer als null sein, und „{ $given }“ ist es nicht: Gib eine Länge an, etwa { $example }.
ask-length-range = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } muss von 0,01 mm bis 100 m gehen, und „{ $given }“ liegt nicht dazwischen: Gib eine Länge an, etwa { $example }.

## Rows, threads and names

ask-rows-unreadable = Lochreihen werden mit ganzen Zahlen von Löchern angegeben, und „{ $given }“ ist etwas anderes: Gib eine Zahl für jede Reihe eines Rings an, etwa 12,16.
# $counted: rows or holes.
ask-count-range = { $counted ->
        [rows] Ein Ring hat { $least } bis { $most } Reihen, und { $given } sind zu viele: Gib weniger an.
       *[holes] Eine Reihe hat { $least } bis { $most } Löcher, und { $given } ist keine solche Zahl: Gib die Löcher jeder Reihe an, etwa 12,16.
    }
# $known: the threads there are.
ask-thread-unknown = Das Gewinde „{ $given }“ ist nicht bekannt: Möglich sind { $known }; versuch es mit #8 oder M4.

ask-missing = { $asking ->
        [object] Der Gegenstand fehlt: Gib an, wie dick er ist, etwa --object 30mm, oder miss rundherum, etwa --girth 94mm.
        [cover] Die zu bedeckende Länge fehlt: Füge sie hinzu, etwa --cover 30mm.
        [cord] Die Schnur fehlt: Füge ihre Dicke hinzu, etwa --cord 4mm.
       *[tube] Das Rohr fehlt: Füge seinen Durchmesser hinzu, etwa --tube 40mm.
    }
ask-object-twice = Der Gegenstand ist mit Durchmesser und mit Umfang angegeben: Gib nur eines von beiden an.
ask-without-tube = { $asking ->
        [rows] Lochreihen gehören zu einem Rohr, und es ist keines angegeben
        [pin] Eine Stiftlänge gehört zu einem Rohr, und es ist keines angegeben
        [thread] Ein Gewinde gehört zu einem Rohr, und es ist keines angegeben
       *[wall] Eine Wandstärke gehört zu einem Rohr, und es ist keines angegeben
    }: Füge seinen Durchmesser hinzu, etwa 40mm.
# $standards: designations with a diameter. $kept: names of cords, or none.
ask-cord-unknown = „{ $given }“ ist keine Schnur: Gib ihre Dicke an, etwa 4mm, oder eine genormte Schnur ({ $standards }){ $kept ->
        [none] . Auch Schnüre, die unter einem Namen gemerkt sind, lassen sich angeben; noch ist keine gemerkt.
       *[other] , oder eine gemerkte: { $kept }.
    }
ask-cord-unmeasured = Für die Schnur { $designation } ist keine Dicke veröffentlicht: Miss deine und gib das an, etwa 4mm.
ask-tube-unknown = „{ $given }“ ist kein Rohr: Gib seinen Durchmesser an, etwa 40mm{ $kept ->
        [none] . Auch Rohre, die unter einem Namen gemerkt sind, lassen sich angeben; noch ist keines gemerkt.
       *[other] , oder ein gemerktes: { $kept }.
    }
ask-holes-close = In einer Reihe von { $holes } Löchern liegen sie auf diesem Rohr { $between } auseinander, und ein Stift braucht { $pin }: Gib weniger Löcher oder ein dickeres Rohr an.
ask-wall-thick = Eine Wandstärke von { $wall } passt nicht in ein Rohr von { $tube }: Gib die Dicke der Wand allein an.

name-unusable = „{ $given }“ ist kein Name, unter dem sich etwas merken lässt: Nimm bis zu { $most } Buchstaben, mit einem Buchstaben am Anfang, etwa eiche.
name-standard = „{ $given }“ ist der Name einer genormten Schnur: Wähl einen anderen Namen.
# What is kept by name could not be read or written. $reason: what the system says.
rack-failed = Die gemerkten Rohre und Schnüre ließen sich nicht benutzen ({ $reason }): Sieh nach dieser Datei, oder leg sie beiseite, um eine neue anzufangen.
rack-newer = Die gemerkten Rohre und Schnüre hat ein neueres Marlinspeak geschrieben ({ $reason }), darum bleiben sie unberührt: Nimm das neuere Programm.

## Why a tube cannot be rigged for a knot

# $can_take: bights that the tube takes.
rig-no-row = Keine Reihe dieses Rohrs ({ $rows } Löcher) lässt sich gleichmäßig auf { $bights } Buchten verteilen: Möglich sind { $can_take } Buchten.
rig-cord-thick = Eine Schnur von { $cord } ist dicker als das Rohr von { $tube }: Nimm eine dünnere Schnur oder ein dickeres Rohr.
# $most_bights and $most_passes: the most that do go, or 0 for none.
rig-tube-full = { $bights } Buchten in { $passes ->
        [one] 1 Durchgang
       *[other] { $passes } Durchgängen
    } haben auf diesem Rohr keinen Platz: Nimm ein Rohr von mindestens { $tube }{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }.
shape-cord-thick = Eine Schnur von { $cord } ist dicker als der Gegenstand von { $object }: Nimm eine Schnur von höchstens { $object }.
# $cord_below: a cord thinner than this does, or none.
shape-too-full = { $bights } Buchten in { $passes ->
        [one] 1 Durchgang
       *[other] { $passes } Durchgängen
    } aus Schnur von { $cord } passen nicht nebeneinander um den Gegenstand: Nimm { $most_bights ->
        [0] { $most_passes ->
            [0] weniger Buchten und Durchgänge
            [one] 1 Durchgang
           *[other] höchstens { $most_passes } Durchgänge
        }
       *[other] höchstens { $most_bights } Buchten
    }{ $cord_below ->
        [none] { "" }
       *[other] , oder eine Schnur, die dünner ist als { $cord_below }
    }.
shape-narrower = Dieser Knoten wird mindestens { $least } breit und kann nicht bloß { $given } bedecken: Nimm weniger Parten, oder bedecke mehr.
rig-cord-short = Dieser Knoten braucht { $needed } Schnur, und vorhanden sind { $at_hand }: Nimm mehr Schnur, weniger Parten oder weniger Durchgänge.
rig-with-what = Rohr und Schnur sind nicht angegeben: Füge sie hinzu, etwa --tube 40mm --rows 12 --cord 4mm.

## Why nothing fits, and what would

fit-cord-thick = Nichts passt: Eine Schnur von { $cord } ist dicker als der Gegenstand von { $object }; nimm eine dünnere Schnur.
# $cord: a cord with which something fits, or none.
fit-cover-short = Nichts passt: Mit dieser Schnur wird der schmalste Knoten { $narrowest } breit, mehr als die { $wanted }, die zu bedecken sind; { $cord ->
        [none] bedecke mehr
       *[other] bedecke mehr, oder nimm eine Schnur von { $cord }
    }.
fit-cover-long = Nichts passt: Knoten, die mit dieser Schnur { $wanted } erreichen, lassen zu viel vom Gegenstand frei; { $cord ->
        [none] bedecke weniger, oder leg mehrere Knoten nebeneinander
       *[other] bedecke weniger, oder nimm eine Schnur von { $cord }
    }.
# $would_fit, $can_take: bights.
fit-no-row = Nichts passt auf dieses Rohr: Die Knoten für den Gegenstand haben { $would_fit } Buchten, und in die Reihen des Rohrs passen { $can_take }; nimm ein anderes Rohr oder eine Reihe, die sich durch eine dieser Zahlen teilen lässt.
fit-tube-thin = Nichts passt auf dieses Rohr: Mit { $tube } ist es zu dünn für die Schnüre; nimm ein Rohr von mindestens { $would_do }.
fit-have-short = Nichts passt zur vorhandenen Schnur: Das wenigste, das reichen würde, sind { $least }, und vorhanden sind { $at_hand }; nimm mehr Schnur, oder bedecke weniger.
fit-nothing = Nichts passt: Versuch es mit dünnerer Schnur, mit einer anderen zu bedeckenden Länge oder ohne ein bestimmtes Rohr.

## The knots that fit

# $count: how many fit. $shown: how many are listed.
fit-heading = { $count ->
        [one] Ein Knoten bedeckt { $cover } auf einem Gegenstand von { $object } mit Schnur von { $cord }.
       *[other] { $count } Knoten bedecken { $cover } auf einem Gegenstand von { $object } mit Schnur von { $cord }{ $shown ->
            [0] .
           *[other] ; die { $shown } besten zuerst.
        }
    }
fit-more = „--most { $count }“ zeigt sie alle.
# Heads of columns.
fit-head-rank = { "#" }
fit-head-leads = Parten
fit-head-bights = Buchten
fit-head-passes = Durchgänge
fit-head-strands = Stränge
fit-head-width = Breite
fit-head-cover = Deckung
fit-head-angle = Winkel
fit-head-cord = Schnur
fit-head-legs = Bahnen
fit-head-drawn = dichtgeholt
# What stands in them.
fit-cell-width = { $width }
fit-cell-cover = { $cover } %
fit-cell-angle = { $angle }°
fit-cell-cord = { $long }
fit-cell-drawn = { $faired ->
        [yes] ganz
       *[no] offen
    }

# A knot on the plan screen, in large type. Example: 5 Parten, 6 Buchten, doppelt
plan-answer = { $leads } Parten, { $bights } Buchten, { $passes ->
        [1] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }
# Below it, in two lines. Example: 29,8 mm breit, ganz dichtgeholt, verdeckt 100 %
plan-answer-shape = { $width } breit, { $faired ->
        [yes] ganz dichtgeholt
       *[no] offen gelassen
    }, verdeckt { $cover } %
# Example: 1,88 m Schnur, 24 Bahnen mit 66°
plan-answer-work = { $long } Schnur{ $strands ->
        [one] { "" }
       *[other] { " " }in { $strands } Strängen
    }, { $legs } Bahnen mit { $angle }°
# Spoken when it is chosen. $rank: 1 is the best. $count: how many there are.
plan-answer-say = Knoten { $rank } von { $count }: { $leads } Parten, { $bights } Buchten, { $passes ->
        [1] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }{ $strands ->
        [one] { "" }
       *[other] , in { $strands } Strängen
    }. Er wird { $width } breit und verdeckt { $cover } Prozent. Er braucht { $long } Schnur und hat { $legs } Bahnen.

## A rigged tube, as the command rig prints it

rig-heading = { $leads } Parten, { $bights } Buchten, { $passes ->
        [1] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }, auf einem Rohr von { $tube } mit Schnur von { $cord }
rig-finished = Fertig: { $width } breit, { $faired ->
        [yes] ganz dichtgeholt
       *[no] offen gelassen
    }, verdeckt { $cover } %, Bahnen { $angle }° zur Achse. Das Durchholen nimmt { $slack } aus jeder Bahn.
rig-in-the-bag = Im Beutel
rig-on-the-tube = Auf dem Rohr
rig-all-holes = Löcher { $holes }
rig-kept-tube = Das Rohr ist als { $name } gemerkt: Gib von jetzt an --tube { $name } an.
rig-kept-cord = Die Schnur ist als { $name } gemerkt: Gib von jetzt an --cord { $name } an.

most-unreadable = --most nimmt eine Zahl von Knoten von 1 bis 9999, und „{ $given }“ ist keine: Versuch es mit --most 20.

## The plan screen

plan-heading = Was wird bedeckt?
plan-measure-across = quer
plan-measure-round = rundum
plan-object = Durchmesser
plan-girth = Umfang
plan-cover = Bedeckte Länge
plan-cord = Schnur
plan-tube = Rohr
plan-rows = Lochreihen
plan-pin = Stiftlänge
plan-thread = Stiftgewinde
plan-have = Vorhandene Schnur

plan-hint = Längen wie 30, 3cm, 1 1/4 in oder 5/32in. Das Rohr, seine Lochreihen und Stifte und die vorhandene Schnur dürfen leer bleiben.
plan-answers = Knoten, die passen
# Some of them are in sight.
plan-more = { $first } bis { $last } von { $count } Knoten, die besten zuerst · ↓ geht weiter
plan-more-one = Knoten { $first } von { $count }, die besten zuerst · ↓ geht weiter
plan-all = { $count ->
        [one] Ein Knoten passt
       *[other] { $count } Knoten passen, die besten zuerst
    }
plan-wanting = { $asking ->
        [object] Wie dick ist der Gegenstand? Miss quer darüber, oder rundherum mit einem Maßband.
        [cover] Wie viel davon soll bedeckt werden?
       *[cord] Wie dick ist die Schnur?
    }
# Below the answers, when no tube is named.
plan-without-tube = Nenne auch ein Rohr, dann wird sein Einrichten Schritt für Schritt angesagt.
plan-keys = Tab geht weiter · Bild auf, Bild ab wechseln · ↑ ↓ wählen einen Knoten · Eingabe nimmt ihn · Esc verlassen

plan-say = Plan. Gib ein, wie dick der Gegenstand ist, wie viel davon bedeckt werden soll, und die Schnur. Tab geht weiter, Pfeil auf und Pfeil ab wählen einen Knoten, Eingabe nimmt ihn.
# Said when a field is come to. $text: what is typed there, or none.
# Example: Schnur: 4mm. Bild ab geht durch die bekannten.
plan-field-say = { $asking ->
        [object] Durchmesser des Gegenstands
        [girth] Umfang des Gegenstands
        [cover] Bedeckte Länge
        [cord] Schnur
        [tube] Rohr
        [rows] Lochreihen in jedem Ring
        [pin] Länge der Stifte
        [thread] Gewinde der Stifte
       *[have] Vorhandene Schnur
    }{ $text ->
        [none] .
       *[other] : { $text }.
    }{ $asking ->
        [object] { " " }Bild ab wechselt zum Umfang.
        [girth] { " " }Bild ab wechselt zum Durchmesser.
        [cord] { " " }Bild ab geht durch die bekannten.
        [tube] { " " }Bild ab geht durch die gemerkten.
       *[other] { "" }
    }

# On the start screen.
start-plan = P: einen Knoten für einen Gegenstand finden
