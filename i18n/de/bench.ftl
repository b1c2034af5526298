# Object, cord and tube: what is asked, what can be wrong with it, and the knots that fit.
#
# Arguments that come back:
#   $asking   what was being said: object, girth, ball, mat, cover, cord, tube, rows, pin, thread,
#             wall, ring-width, tube-length, have
#   $given    the text as it was typed
#   lengths   each one argument with its unit (see lengths.ftl): "40 Millimeter" for the ear,
#             "40 mm" for the eye

## A length that is none

ask-length-unreadable = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [ball] Der Durchmesser der Kugel
        [mat] Die Größe der Matte
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
        [ring-width] Die Breite der Ringe
        [tube-length] Die Länge des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } kann nicht „{ $given }“ sein: Gib eine Zahl mit mm, cm, m, in oder ft an, etwa { $example }.
ask-length-unit = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [ball] Der Durchmesser der Kugel
        [mat] Die Größe der Matte
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
        [ring-width] Die Breite der Ringe
        [tube-length] Die Länge des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } hat eine Einheit, die hier nicht bekannt ist, „{ $unit }“ in „{ $given }“: Nimm mm, cm, m, in oder ft, etwa { $example }.
ask-length-comma = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [ball] Der Durchmesser der Kugel
        [mat] Die Größe der Matte
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
        [ring-width] Die Breite der Ringe
        [tube-length] Die Länge des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } lässt sich auf zwei Arten lesen, „{ $given }“: Schreib einen Punkt, oder lass das Komma weg.
ask-length-fraction = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [ball] Der Durchmesser der Kugel
        [mat] Die Größe der Matte
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
        [ring-width] Die Breite der Ringe
        [tube-length] Die Länge des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } ist ein Bruch ohne Einheit, „{ $given }“: Sind es Zoll, dann schreib { $given }in; sonst gib mm oder cm dazu an, etwa { $example }.
ask-length-nought = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [ball] Der Durchmesser der Kugel
        [mat] Die Größe der Matte
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
        [ring-width] Die Breite der Ringe
        [tube-length] Die Länge des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } muss größer als null sein, und „{ $given }“ ist es nicht: Gib eine Länge an, etwa { $example }.
ask-length-range = { $asking ->
        [object] Der Durchmesser des Gegenstands
        [girth] Der Umfang des Gegenstands
        [ball] Der Durchmesser der Kugel
        [mat] Die Größe der Matte
        [cover] Die zu bedeckende Länge
        [cord] Die Dicke der Schnur
        [tube] Der Durchmesser des Rohrs
        [pin] Die Länge der Stifte
        [wall] Die Wandstärke des Rohrs
        [ring-width] Die Breite der Ringe
        [tube-length] Die Länge des Rohrs
       *[have] Die Länge der vorhandenen Schnur
    } muss von 0,01 mm bis 100 m gehen, und „{ $given }“ liegt nicht dazwischen: Gib eine Länge an, etwa { $example }.

## Rows, threads and names

ask-rows-unreadable = Lochreihen werden mit ganzen Zahlen von Löchern angegeben, und „{ $given }“ ist etwas anderes: Gib eine Zahl für jede Reihe eines Rings an, etwa 14,20.
# $counted: rows or holes.
ask-count-range = { $counted ->
        [rows] Ein Ring hat { $least } bis { $most } Reihen, und { $given } sind zu viele: Gib weniger an.
       *[holes] Eine Reihe hat { $least } bis { $most } Löcher, und { $given } ist keine solche Zahl: Gib die Löcher jeder Reihe an, etwa 14,20.
    }
# $known: the threads there are.
ask-thread-unknown = Das Gewinde „{ $given }“ ist nicht bekannt: Möglich sind { $known }; versuch es mit M4 oder M5.

ask-missing = { $asking ->
        [object] Was bedeckt werden soll, fehlt: Gib an, wie dick es ist, etwa --object 30mm, miss rundherum, etwa --girth 94mm, oder nenne eine Kugel oder eine Matte, etwa --ball 38mm oder --mat 150mm.
        [cover] Die zu bedeckende Länge fehlt: Füge sie hinzu, etwa --cover 30mm.
        [cord] Die Schnur fehlt: Füge ihre Dicke hinzu, etwa --cord 4mm.
       *[tube] Das Rohr fehlt: Füge seinen Durchmesser hinzu, etwa --tube 45mm.
    }
# $given: what was typed.
ask-firm-unknown = „{ $given }“ ist keine Art von Schnur: Sag hard (hart), soft (weich) oder flat (flach), etwa --firm soft.
# $least, $most: the numbers taken. $soft: that of soft line.
ask-give-range = Wie dicht eine Schnur liegt, ist eine Zahl von { $least } bis { $most }, und „{ $given }“ ist keine: Versuch es mit { $soft }, das ist weiche Schnur.
ask-give-twice = Die Schnur ist durch ihre Art und durch eine Zahl angegeben: Gib nur eines von beiden an, --firm oder --cord-give.
ask-price = Ein Preis ist eine Zahl von 0 bis { $most }, und „{ $given }“ ist keine: Gib ihn ohne Währung an, etwa 0,35.
# A cord was named as shops name it. $designation: its type in the standard.
cord-understood = Die Schnur wird als Nylonschnur vom Typ { $designation } genommen, { $diameter } dick.
ask-without-tube = { $asking ->
        [rows] Lochreihen gehören zu einem Rohr, und es ist keines angegeben
        [pin] Eine Stiftlänge gehört zu einem Rohr, und es ist keines angegeben
        [thread] Ein Gewinde gehört zu einem Rohr, und es ist keines angegeben
        [ring-width] Eine Ringbreite gehört zu einem Rohr, und es ist keines angegeben
        [tube-length] Eine Rohrlänge gehört zu einem Rohr mit Durchmesser, und es ist keines angegeben
       *[wall] Eine Wandstärke gehört zu einem Rohr, und es ist keines angegeben
    }: Füge seinen Durchmesser hinzu, etwa 45mm.
ask-without-rings = Eine Ringbreite gehört zu Ringen, und es sind keine angegeben: Füge ihre Lochreihen hinzu, etwa 14,20.
# $standards: designations with a diameter. $kept: names of cords, or none.
ask-cord-unknown = „{ $given }“ ist keine Schnur: Gib ihre Dicke an, etwa 4mm, oder eine genormte Schnur ({ $standards }){ $kept ->
        [none] . Auch Schnüre, die unter einem Namen gemerkt sind, lassen sich angeben; noch ist keine gemerkt.
       *[other] , oder eine gemerkte: { $kept }.
    }
ask-cord-unmeasured = Für die Schnur { $designation } ist keine Dicke veröffentlicht: Miss deine und gib das an, etwa 4mm.
ask-tube-unknown = „{ $given }“ ist kein Rohr: Gib seinen Durchmesser an, etwa 45mm{ $kept ->
        [none] . Auch Rohre, die unter einem Namen gemerkt sind, lassen sich angeben; noch ist keines gemerkt.
       *[other] , oder ein gemerktes: { $kept }.
    }
ask-holes-close = In einer Reihe von { $holes } Löchern liegen sie auf diesem Rohr { $between } auseinander, und ein Stift braucht { $pin }: Gib weniger Löcher oder ein dickeres Rohr an.
ask-wall-thick = Eine Wandstärke von { $wall } passt nicht in ein Rohr von { $tube }: Gib die Dicke der Wand allein an.

name-unusable = „{ $given }“ ist kein Name, unter dem sich etwas merken lässt: Nimm bis zu { $most } Buchstaben, mit einem Buchstaben am Anfang, etwa eiche.
name-standard = „{ $given }“ ist der Name einer genormten Schnur: Wähl einen anderen Namen.
# What is kept by name could not be read or written. $path: the file. $reason: as in reasons.ftl.
rack-failed = Die gemerkten Rohre und Schnüre ließen sich nicht benutzen ({ $path }: { $reason }): Sieh nach dieser Datei, oder leg sie beiseite, um eine neue anzufangen.
rack-io = Die gemerkten Rohre und Schnüre waren nicht zu erreichen ({ $path }: { $reason }): Sieh nach, ob der Ordner da ist, dir gehört und auf der Platte noch Platz ist, und versuch es noch einmal.
rack-newer = Die gemerkten Rohre und Schnüre hat ein neueres Marlinspeak geschrieben, darum bleiben sie unberührt: Nimm das neuere Programm.

## Why a tube cannot be rigged for a knot

# $can_take: bights that the tube takes.
rig-no-row = Keine Reihe dieses Rohrs ({ $rows } Löcher) lässt sich gleichmäßig auf { $bights } Buchten verteilen: Möglich sind { $can_take } Buchten.
rig-cord-thick = Eine Schnur von { $cord } ist dicker als das Rohr von { $tube }: Nimm eine dünnere Schnur oder ein dickeres Rohr.
# $most_bights and $most_passes: the most that do go, or 0 for none.
rig-no-tuck = { $bights } Buchten in { $passes ->
        [one] 1 Durchgang
       *[other] { $passes } Durchgängen
    } lassen auf diesem Rohr keinen Platz zum Durchstecken: Nimm ein Rohr von mindestens { $tube }{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }.
# $gap: between the pins. $needed: what the cords of a bight take. $pin: pins no thicker than
# this would do, or none.
rig-pins-too-close = Zwischen { $bights } Stiften bleiben auf diesem Rohr { $gap }, und die Schnüre einer Bucht brauchen { $needed }: Nimm ein Rohr von mindestens { $tube }{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }{ $pin ->
        [none] { "" }
       *[other] , oder höchstens { $pin } dicke Stifte
    }.
rig-tube-short = Dieser Knoten nimmt mit seinen Ringen { $needed } vom Rohr ein, und das Rohr ist { $length } lang: Nimm ein längeres Rohr oder einen Knoten mit weniger Parten.
shape-cord-thick = Eine Schnur von { $cord } ist dicker als das, worum sie geht, { $object }: Nimm eine Schnur von höchstens { $object }.
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
rig-with-what = Rohr und Schnur sind nicht angegeben: Füge sie hinzu, etwa --tube 45mm --rows 14,20 --cord 4mm, oder das, worauf an Ort und Stelle geknüpft wird, etwa --object 30mm --in-place --cord 4mm.

## Why nothing fits, and what would

fit-cord-thick = Nichts passt: Eine Schnur von { $cord } ist dicker als das, worum sie geht, { $object }; nimm eine dünnere Schnur.
# $cord: a cord with which it goes round, or none.
fit-too-many-cords = Die Schnüre dieses Knotens gehen nicht nebeneinander um das, was er bedecken soll: { $cord ->
        [none] Nimm eine viel dünnere Schnur, oder bedecke etwas Dickeres.
       *[other] Nimm eine Schnur von { $cord }, oder bedecke etwas Dickeres.
    }
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
fit-no-row = Nichts passt auf dieses Rohr: Die Knoten, die es bedecken würden, haben { $would_fit } Buchten, und in die Reihen des Rohrs passen { $can_take }; nimm ein anderes Rohr oder eine Reihe, die sich durch eine dieser Zahlen teilen lässt.
# $pin: pins no thicker than this would do as well, or none.
fit-tube-thin = Nichts passt auf dieses Rohr: Mit { $tube } Durchmesser ist es zu dünn für die Schnüre; nimm ein Rohr von mindestens { $would_do }{ $pin ->
        [none] { "" }
       *[other] , oder höchstens { $pin } dicke Stifte
    }.
fit-tube-short = Nichts passt auf dieses Rohr: Es ist { $length } lang, und ein Knoten mit seinen Ringen nimmt mindestens { $would_do } ein; nimm ein längeres Rohr.
# $others: knots that were not asked for.
fit-filtered = Nichts passt zu dem, was du sehen willst, und { $others ->
        [one] ein anderer Knoten passt
       *[other] { $others } andere Knoten passen
    }: Verlang weniger auf einmal.
fit-have-short = Nichts passt zur vorhandenen Schnur: Das wenigste, das reichen würde, sind { $least }, und vorhanden sind { $at_hand }; nimm mehr Schnur, oder gib ihr weniger zu bedecken.
fit-nothing = Nichts passt: Versuch es mit dünnerer Schnur, mit einer anderen zu bedeckenden Länge oder ohne ein bestimmtes Rohr.

## The knots that fit

# $count: how many come out as long as asked. $near: how many miss that a little. $shown: how many are listed.
fit-heading = { $count ->
        [0] Kein Knoten wird genau { $cover } lang auf einem Gegenstand von { $object } Durchmesser mit Schnur von { $cord }
        [one] Ein Knoten bedeckt { $cover } auf einem Gegenstand von { $object } Durchmesser mit Schnur von { $cord }
       *[other] { $count } Knoten bedecken { $cover } auf einem Gegenstand von { $object } Durchmesser mit Schnur von { $cord }
    }{ $near ->
        [0] { "" }
        [one] , und einer kommt nahe daran
       *[other] , und { $near } kommen nahe daran
    }{ $shown ->
        [0] .
       *[other] ; die { $shown } besten zuerst.
    }
# The parts of the list, each above its knots. $cover: the length asked for.
fit-section = { $section ->
        [single] Einfach
        [doubled] Doppelt
        [tripled] Dreifach
        [interwoven] Verflochten, zwei Buchten ineinander
        [near] Etwas kürzer oder länger als { $cover }
        [hampered] Mühsam auf diesem Rohr
       *[further] { $ground ->
            [ball] Weitere
            [mat] Weitere
           *[round] Weitere, die { $cover } bedecken
        }
    }
# Below the table, where a range begins with “~”.
fit-unsure = ~: Fest durchgeholt kann ein solcher Knoten bis zu einem Fünftel schmaler werden, denn seine Schnüre rücken enger zusammen, als die Regel sagt.
# Below the table, when interwoven knots are among plain ones. $nested: bights nested in them.
fit-interwoven = Bei durcheinander gefädelten Knoten liegen Buchten ineinander, für jede eine Schnur: „--nested { $nested }“ zeigt mehr davon.
fit-more = „--most { $count }“ zeigt sie alle.
# Below the table.
# $pace: own when the log knows the tyer’s, or usual.
fit-times = { $pace ->
        [own] Die Zeiten gelten für dein eigenes Tempo.
       *[usual] Die Zeiten gelten für ein übliches Tempo, denn deines kennt das Protokoll noch nicht.
    }
# How long a tie takes, in $hours and $minutes of 5 each, and the same as it is said.
work-time = { $hours ->
        [0] { $minutes } min
       *[other] { $minutes ->
            [0] { $hours } h
           *[other] { $hours } h { $minutes } min
        }
    }
work-time-say = { $hours ->
        [0] { $minutes ->
            [one] 1 Minute
           *[other] { $minutes } Minuten
        }
        [one] 1 Stunde{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } Minuten
        }
       *[other] { $hours } Stunden{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } Minuten
        }
    }
# The work on a tie. $time: as above. $pace: own or usual. $cost: an amount, or none.
labour = Zu tun: { $tucks }-mal durchstecken{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(mit über begonnen { $other_tucks }-mal)
    }, { $pace ->
        [own] in deinem Tempo
       *[usual] in einem üblichen Tempo
    } etwa { $time }{ $cost ->
        [none] .
       *[other] ; Kosten { $cost }.
    }
# Knots that the tube hampers stand last. $first: the place of the first of them; what to take care of with it follows.
fit-hampered = { $first ->
        [1] Auf diesem Rohr machen alle diese Knoten Mühe; beim ersten:
       *[other] Auf diesem Rohr machen die Knoten ab Nummer { $first } Mühe; bei diesem:
    }
fit-twins = Jeder Knoten steht in der Flechtart, die am wenigsten Durchstecken verlangt: über eins, unter eins, mit über oder mit unter begonnen; beide sehen gleich aus. „--weave 1“ behält die mit über begonnene.
# Ties that the figures of the knots listed were corrected from: $least to $most.
fit-corrected = { $least ->
        [0] Manche Zahlen sind nach dem berichtigt, was du gemessen hast, { $most ->
            [one] 1 Arbeit
           *[other] bis zu { $most } Arbeiten
        }.
       *[other] Berichtigt nach dem, was du gemessen hast, { $most ->
            [one] 1 Arbeit
           *[other] { $most } Arbeiten
        }.
    }
# Heads of columns.
fit-head-rank = { "#" }
fit-head-leads = Parten
fit-head-bights = Buchten
fit-head-passes = Durchgänge
fit-head-strands = Stränge
fit-head-width = Breite
fit-head-range = von – bis
# $ground: mat or ball.
fit-head-bare = { $ground ->
        [mat] Loch
       *[ball] frei
    }
fit-head-hides = verdeckt
fit-head-scallop = Bögen
fit-head-cord = Schnur
fit-head-tucks = Durchstecken
fit-head-time = Zeit
fit-head-drawn = durchgeholt
fit-head-cost = Kosten
# What stands in them.
fit-cell-width = { $width }
fit-cell-range = { $sure ->
        [no] ~ { $tight } – { $widest }
       *[yes] { $tight } – { $widest }
    }
fit-cell-bare = { $bare ->
        [none] { "–" }
       *[other] { $bare }
    }
fit-cell-hides = { $hides } %
fit-cell-scallop = { $scallop }
fit-cell-cord = { $long }
fit-cell-time = { $time }
fit-cell-cost = { $cost }
fit-cell-drawn = { $drawn ->
        [tight] fest
        [eased] gelockert
       *[open] offen
    }

# A knot on the plan screen, in large type. Example: 5 Parten, 7 Buchten, doppelt
plan-answer = { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, { $passes ->
        [1] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }
# Below it, in two lines. $drawn: where it is drawn up to between $tight and $widest. $scallop: how
# far the gaps between bights reach in. Beispiel: 36 mm breit, fest (35,8 mm bis 50,5 mm), verdeckt 86 %, Bögen 4,2 mm tief
plan-answer-shape = { $width } breit, { $drawn ->
        [tight] fest
        [eased] gelockert
       *[open] offen
    } ({ $tight } bis { $widest }{ $sure ->
        [no] , fest vielleicht bis zu einem Fünftel weniger
       *[yes] { "" }
    }), verdeckt { $hides } %, Bögen { $scallop } tief
# $other_tucks: tucks of the same weave begun with over, when this is begun with under, or 0.
# $time: as above. $cost: or none. Beispiel: 1,88 m Schnur, 28 Bahnen mit 66°, 36-mal durchstecken (mit über begonnen 48), etwa 40 min
plan-answer-work = { $long } Schnur{ $strands ->
        [one] { "" }
       *[other] { " " }in { $strands } Strängen
    }, { $legs } Bahnen mit { $angle }°, { $tucks }-mal durchstecken{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(mit über begonnen { $other_tucks })
    }, etwa { $time }{ $cost ->
        [none] { "" }
       *[other] , kostet { $cost }
    }
# Spoken when it is chosen. $rank: 1 is the best. $count: how many there are.
plan-answer-say = Knoten { $rank } von { $count }: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, { $passes ->
        [1] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }{ $strands ->
        [one] { "" }
       *[other] , in { $strands } Strängen
    }. Er wird { $width } breit, { $drawn ->
        [tight] fest durchgeholt{ $sure ->
            [no] , vielleicht bis zu einem Fünftel schmaler
           *[yes] { "" }
        }
        [eased] ein wenig gelockert
       *[open] offen gelassen
    }{ $near ->
        [yes] , nicht genau wie verlangt
       *[no] { "" }
    }, und verdeckt { $hides } Prozent. Er braucht { $long } Schnur, hat { $legs } Bahnen, verlangt { $tucks }-mal Durchstecken und dauert etwa { $time }{ $cost ->
        [none] .
       *[other] ; er kostet { $cost }.
    }

## A rigged tube, as the command rig prints it

# $on: tube, round, taper, ball or mat. $ground: what it is for: the same but tube.
rig-heading = { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, { $passes ->
        [1] einfach
        [2] doppelt
        [3] dreifach
       *[other] { $passes } Durchgänge
    }, { $on ->
        [round] an Ort und Stelle auf einem Gegenstand von { $object } Durchmesser
        [taper] an Ort und Stelle auf einem Stück von { $object } bis { $top } Durchmesser
        [ball] an Ort und Stelle auf einer Kugel von { $object } Durchmesser
        [mat] flach auf einem Brett, { $object } von Rand zu Rand,
       *[tube] auf einem Rohr von { $tube } Durchmesser{ $ground ->
            [taper] , für ein Stück von { $object } bis { $top } Durchmesser,
            [ball] , für eine Kugel von { $object } Durchmesser,
           *[round] { "" }
        }
    } mit Schnur von { $cord }
# $ground: round, taper, ball or mat. $outer: a mat from edge to edge. $bare: what the bights leave open at the
# poles of a ball or in the middle of a mat, or none. $slack: or none.
rig-finished = Fertig: { $ground ->
        [mat] { $outer } im Durchmesser, { $bare ->
            [none] in der Mitte geschlossen
           *[other] mit einem Loch von { $bare }
        }, der Ring { $width } breit
        [ball] { $width } breit auf der Kugel, { $bare ->
            [none] an den Polen geschlossen
           *[other] an jedem Pol { $bare } frei
        }
       *[round] { $width } breit
    }, { $drawn ->
        [tight] fest durchgeholt{ $sure ->
            [no] , vielleicht bis zu einem Fünftel schmaler
           *[yes] { "" }
        }
       *[open] geöffnet von { $tight }
    }, verdeckt { $hides } %, Bögen { $scallop } tief{ $ground ->
        [mat] { "" }
       *[round] , Bahnen { $angle }° zur Achse
    }.{ $slack ->
        [none] { "" }
       *[other] { " " }Das Durchholen nimmt { $slack } aus jeder Bahn.
    }
rig-in-the-bag = Was du brauchst
rig-all-holes = Löcher { $holes }
rig-kept-tube = Das Rohr ist als { $name } gemerkt: Gib von jetzt an --tube { $name } an.
rig-kept-cord = Die Schnur ist als { $name } gemerkt: Gib von jetzt an --cord { $name } an.

# $option takes a whole number.
option-number = { $option } nimmt eine ganze Zahl von { $least } bis { $most }, und „{ $given }“ ist keine: Versuch es mit { $option } { $example }.

## The plan screen

plan-heading = Was willst du bedecken?
plan-measure-across = Durchmesser
plan-measure-round = Umfang
plan-object = Durchmesser
plan-girth = Umfang
plan-cover = Zu bedeckende Länge
plan-cord = Schnur
plan-tube = Rohr
plan-rows = Lochreihen
plan-pin = Stiftlänge
plan-thread = Stiftgewinde
plan-ring-width = Breite eines Rings
plan-tube-length = Rohrlänge
plan-have = Vorhandene Schnur

plan-hint = Längen wie 30, 3 cm oder 5/32 Zoll. Das Rohr, seine Lochreihen und Stifte und die vorhandene Schnur dürfen leer bleiben.
plan-answers = Knoten, die passen
plan-all = { $count ->
        [one] Ein Knoten passt
       *[other] { $count } Knoten passen, die besten zuerst
    }
plan-wanting = { $asking ->
        [cover] Wie viel davon soll bedeckt werden?
       *[cord] Wie dick ist die Schnur?
    }
# Below the answers, when no tube is named.
plan-without-tube = Nenne auch ein Rohr, dann wird sein Einrichten Schritt für Schritt angesagt.

# A filter above the list. $filter: passes, from-three, one-cord, most-legs, firm or weave. $key: its key.
# $choice: what it is set to, 0 for every knot; passes 1 to 4, legs at the most. Beispiel: F2: doppelt
plan-filter = { $key }: { $filter ->
        [passes] { $choice ->
            [0] alle Durchgänge
            [1] einfach
            [2] doppelt
            [3] dreifach
           *[other] { $choice } Durchgänge
        }
        [from-three] { $choice ->
            [0] alle Parten, Buchten
           *[other] ab 3 Parten und Buchten
        }
        [one-cord] { $choice ->
            [0] alle Schnüre
           *[other] eine Schnur
        }
        [most-legs] { $choice ->
            [0] alle Längen
           *[other] höchstens { $choice } Bahnen
        }
        [nested] { $choice ->
            [0] auch ineinander
            [1] Buchten nebeneinander
           *[other] { $choice } Buchten ineinander
        }
        [firm] { $choice ->
            [0] Schnur wie gemerkt
            [1] Schnur hart und rund
            [2] Schnur weich
           *[other] Schnur flach oder hohl
        }
       *[weave] { $choice ->
            [0] wenig durchstecken
           *[other] mit über begonnen
        }
    }
# The same, said when it is changed.
plan-filter-say = { $filter ->
        [passes] { $choice ->
            [0] Knoten mit beliebig vielen Durchgängen.
            [1] Nur einfache Knoten.
            [2] Nur doppelte Knoten.
            [3] Nur dreifache Knoten.
           *[other] Nur Knoten mit { $choice } Durchgängen.
        }
        [from-three] { $choice ->
            [0] Alle Parten und Buchten.
           *[other] Mindestens drei Parten und drei Buchten.
        }
        [one-cord] { $choice ->
            [0] Knoten aus beliebig vielen Schnüren.
           *[other] Nur Knoten aus einer Schnur.
        }
        [most-legs] { $choice ->
            [0] Beliebig lange Arbeiten.
           *[other] Arbeiten mit höchstens { $choice } Bahnen.
        }
        [nested] { $choice ->
            [0] Knoten ohne ineinanderliegende Buchten und die besten durcheinander gefädelten.
            [1] Nur Knoten ohne ineinanderliegende Buchten.
           *[other] Nur Knoten, bei denen an jedem Rand { $choice } Buchten ineinanderliegen.
        }
        [firm] { $choice ->
            [0] Die Schnur, wie sie gemerkt ist, sonst weich.
            [1] Harte runde Schnur, die ihre Form behält.
            [2] Weiche Schnur, geflochten oder geschlagen.
           *[other] Flache oder hohle Schnur, die sich eng anlegt.
        }
       *[weave] { $choice ->
            [0] Die Flechtart, bei der am wenigsten durchzustecken ist.
           *[other] Über eins, unter eins, mit über begonnen.
        }
    }

# The plan screen, come back to with something filled in.
plan-again-say = Plan, wie du ihn verlassen hast.
plan-say = Plan. Wähl, was du bedeckst und ob sich der Knoten überstreifen lässt; dann gib ein, wie dick es ist, wie viel davon bedeckt werden soll, und die Schnur. Tab geht weiter, Pfeil auf und Pfeil ab wählen einen Knoten, Eingabe nimmt ihn.
# Said when a field is come to. $text: what is typed there, or none.
# Example: Schnur: 4mm. Bild ab geht durch die bekannten.
plan-field-say = { $asking ->
        [object] Durchmesser des Gegenstands
        [girth] Umfang des Gegenstands
        [ball] Durchmesser der Kugel
        [mat] Größe der Matte
        [in-place] An Ort und Stelle geknüpft
        [cover] Zu bedeckende Länge
        [cord] Schnur
        [tube] Rohr
        [rows] Lochreihen in jedem Ring
        [pin] Länge der Stifte
        [thread] Gewinde der Stifte
        [ring-width] Breite jedes Rings
        [tube-length] Länge des Rohrs
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

# $rows: holes of the rows of the tube. $nested: rows that are needed, in line.
rig-too-few-rows = { $nested } ineinanderliegende Reihen von { $bights } Stiften brauchen { $nested } Reihen Löcher, die sich gleichmäßig auf { $bights } Buchten verteilen lassen und auf einer Linie stehen, und dieses Rohr hat { $rows } Löcher: Nimm einen Streifen Papier auf einem Rohr ohne Ringe, weniger Reihen oder eine andere Zahl von Buchten.
# $ring: width of the rings. $needed: the least that does. $nested: rows of pins at each rim.
rig-ring-narrow = { $nested } ineinanderliegende Reihen von Stiften mit ihren Buchten brauchen mindestens { $needed } breite Ringe, und diese sind { $ring } breit: Nimm breitere Ringe, dünnere Schnur oder einen Streifen Papier auf einem Rohr ohne Ringe.
