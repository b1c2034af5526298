# The screens of the app.

app-title = Marlinspeak

## The very first start, where nothing was ever begun

first-start-heading = Wollen wir den ersten zusammen knüpfen?
first-start-what = Ein Türkenbund ist ein endloses Geflecht um ein Seil, ein Geländer oder einen Griff. Hier knüpfst du ihn von Stift zu Stift auf einem Rohr, Schritt für Schritt.
first-start-needs = Du brauchst ein Rohr von 45 mm mit zwei Ringen von fünf Stiften, die Ringe 12 mm auseinander; einen Meter Schnur von 4 mm, Klebeband, einen Marlspieker.
first-start-begin = Den ersten knüpfen
first-start-past = Etwas anderes
first-start-say = Wollen wir den ersten zusammen knüpfen? Du brauchst ein Rohr von 45 mm mit zwei Ringen von fünf Stiften, die Ringe 12 mm auseinander; einen Meter Schnur von 4 mm, Klebeband, einen Marlspieker. Drück die Leertaste, um anzufangen, oder Tab für etwas anderes.

## The start screen

start-heading = Was willst du bedecken?
start-by-numbers = Oder nenne den Knoten mit Zahlen
start-name-heading = Den Knoten mit Zahlen nennen
start-leads = Parten
start-bights = Buchten
start-passes = Durchgänge
start-weave = Flechtart (o über, u unter)
# $example: a row code for the leads that stand in the form, such as ouou.
start-weave-hint = Leer ist über eins, unter eins, so begonnen, dass am wenigsten durchzustecken ist. 1 beginnt mit über; 2 ist über zwei, unter zwei; oder ein Reihencode wie { $example } (o über, u unter)
start-nested = Buchten ineinander (leer: 1)
start-lands = Erste Schnur landet in Reihe (leer: innerste)
start-hand = Arbeiten nach
start-hand-right = rechts
start-hand-left = links
start-side = Spätere Durchgänge
start-side-bottom = auf der Fußseite
start-side-top = auf der Kopfseite
start-begin = Diesen Knoten anfangen

# What the knot in the form comes to.
# Example: 5 Parten, 7 Buchten, ein Strang. Jeder Kopf-Stift steht einen halben Abstand weiter rechts
# als der Fuß-Stift mit seiner Nummer.
# $tucks: in all passes. $other_tucks: the same begun with over, when it is begun with under, or 0. $staggered: yes or no. $uneven: yes when the weave leaves a fault at the rims. $turns: whole
# turns of the tube on each leg.
start-facts = { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, { $strands ->
        [one] ein Strang
       *[other] { $strands } Stränge
    }, { $tucks }-mal durchstecken{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(mit über begonnen: { $other_tucks }-mal)
    }. { $staggered ->
        [yes] Jeder { -top-pin } steht einen halben Abstand weiter { $hand ->
            [left] links
           *[right] rechts
        } als der { -bottom-pin } mit seiner Nummer.
       *[no] Jeder { -top-pin } steht { -exactly-above } dem { -bottom-pin } mit seiner Nummer.
    }{ $turns ->
        [0] { "" }
        [one] { " " }Jede Bahn geht einmal ganz { -round-it } und weiter.
       *[other] { " " }Jede Bahn geht { $turns }-mal ganz { -round-it } und weiter.
    }{ $uneven ->
        [yes] { " " }An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

# What no knot must be trusted with, where one is chosen.
choice-caution = Der Knoten schmückt nur: Lass ihn nie einen Menschen oder eine Last halten, und halte Schnur und kleine Teile von kleinen Kindern fern.

# A knot of many evenings: it may be a slip of the hand. $legs: legs of all passes.
start-huge = { $leads } Parten und { $bights } Buchten, das sind { $legs } Bahnen und viele Abende Arbeit. Drück noch einmal, um anzufangen, oder ändere die Zahlen.

# A tie in the list. $kind: usual for over one, under one; run for other runs of $weave; twin for a run of
# $weave begun with under; code for another weave, row by row in $weave.
# Example: 5 Parten, 7 Buchten, 2 Durchgänge
# Example: 5 Parten, 7 Buchten, Flechtart 2, nach links
start-tie = { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }{ $passes ->
        [one] { "" }
        [2] , doppelt
        [3] , dreifach
       *[other] , { $passes } Durchgänge
    }{ $kind ->
        [usual] { "" }
        [run] , Flechtart { $weave }
        [twin] { $weave ->
            [1] , mit unter begonnen
           *[other] , Flechtart { $weave }, mit unter begonnen
        }
       *[code] , Flechtart { $weave }
    }{ $hand ->
        [left] , nach links
       *[right] { "" }
    }

# The same in its shortest form, by leads and bights.
start-tie-short = { $leads } × { $bights }{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander
    }{ $passes ->
        [one] { "" }
        [2] , doppelt
        [3] , dreifach
       *[other] , { $passes } Durchgänge
    }

# How a tie is told, beside it on the tying screen. $most: crossings at once, 0 for whole legs.
# Example: normal, 4 auf einmal
telling = { $detail ->
        [brief] knapp
        [teach] erklärt
       *[plain] normal
    }, { $most ->
        [0] ganze Bahnen
        [one] 1 Kreuzung auf einmal
       *[other] { $most } Kreuzungen auf einmal
    }

# Example: 7 von 24 Bahnen gelegt, zuletzt vor 3 Tagen
# $days: whole days since.
start-tie-progress = { $laid } von { $legs } Bahnen gelegt, { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] zuletzt gerade eben
               *[other] zuletzt vor { $minutes } min
            }
           *[other] zuletzt vor { $hours } h
        }
        [one] zuletzt gestern
       *[other] zuletzt vor { $days } Tagen
    }

# Spoken when the app opens with a tie in progress.
start-offer-say = Ein Knoten wartet: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, { $laid } von { $legs } Bahnen gelegt. Drück die Leertaste, um ihn wieder aufzunehmen, oder Tab, um einen neuen einzugeben.
# Spoken when it opens with none.
start-empty-say = Kein Knoten wartet. Drück die Leertaste, um mit { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    } anzufangen, oder Tab, um einen anderen Knoten einzugeben.

## The tying screen

# A part of the job in the strip of all of them, a word each. $part: kit (packing the bag), rig, lead,
# follow, lift, fair or finish.
job-part = { $part ->
        [kit] Material
        [rig] Einrichten
        [lead] Legen
        [follow] Folgen
        [lift] { -Lifting }
        [fair] Durchholen
       *[finish] Fertig machen
    }
# What is left of the job. $time: as in work-time. Example: about 25 min left
job-time-left = noch etwa { $time }

# Said when the depth was changed, before the step. $detail: brief, plain or teach.
detail-say = { $detail ->
        [brief] Knapp.
        [teach] Mit Erklärung.
       *[plain] Normal.
    }
# $most: crossings told at once at the most; $whole: yes when legs are told whole.
at-once-say = { $fair ->
        [leg] Bahn für Bahn.
        [item] Eins nach dem anderen.
        [page] Mehreres auf einmal.
        [round] Der ganze Knoten auf einmal.
       *[no] { $whole ->
            [yes] Ganze Bahnen.
           *[no] Höchstens { $most ->
                [one] eine Kreuzung
               *[other] { $most } Kreuzungen
            } auf einmal.
        }
    }

## What the app has to report

# In the bar of keys, as short as can be, while the voice is lost.
voice-lost-sign = Keine Stimme
voice-lost = Keine Stimme: Der Sprachdienst antwortet nicht. Die Schritte stehen weiter auf dem Schirm, und die Stimme kommt von selbst wieder.
saving-foreseen = Was du an diesem Knoten drückst, lässt sich nicht speichern ({ $reason }): Er bleibt, wie er zuletzt gespeichert wurde, also schreib dir den Schritt auf, bei dem du aufhörst. Damit gespeichert wird, sieh nach, ob du in den Ordner schreiben darfst und auf der Platte Platz ist; jeder Druck versucht es wieder.
saving-failed = Dieser Knoten lässt sich nicht speichern ({ $reason }). Es wird jede Sekunde wieder versucht: Schaff Platz auf der Platte oder sieh nach, ob du in den Ordner schreiben darfst, und geh nicht, bevor er gespeichert ist.
saving-nowhere = Dieser Knoten lässt sich nicht speichern ({ $reason }): Der Ordner der Knoten ist nicht zu erreichen. Die Schritte gehen weiter; damit der Knoten bleibt, sieh nach, ob du in den Ordner schreiben darfst, und fang ihn neu an.
saving-slow = Noch nicht gespeichert: Die Platte lässt auf sich warten. Knüpf weiter, und geh nicht, solange das hier steht.
# $known: yes when the reason is known, else no.
leaving-unsaved = Was du zuletzt gedrückt hast, ist nicht gespeichert{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }. Schließ noch einmal, um ohne das zu gehen, oder mach weiter, dann wird es wieder versucht.
saving-again = Dieser Knoten ist wieder gespeichert.
focus-lost = Ein anderes Fenster fängt die Tasten ab. Klick hierher, bevor du weitermachst.

# A tie file that was set aside.
trouble-damaged = Die Datei { $file } war nicht zu lesen und liegt nun als { $aside } beiseite; an ihrem Inhalt wurde nichts geändert.
# The copy before a damaged file is used. $state: aside, gone or there. $copy: known, unknown or kept; $presses: how
# many presses it is behind.
trouble-restored = { $state ->
        [aside] Die Datei { $file } war beschädigt und liegt nun als { $aside } beiseite
        [gone] Die Datei { $file } ist weg
       *[there] Die Datei { $file } ist beschädigt
    }; { $copy ->
        [kept] es gilt die Kopie, die vorher gespeichert war.
        [unknown] es gilt die Kopie davor, und wie weit sie zurückliegt, lässt sich nicht sagen: Vergleich den Schritt mit deiner Arbeit.
       *[known] { $presses ->
            [0] es gilt die Kopie davor, und sie steht beim selben Schritt.
            [one] es gilt die Kopie von einem Tastendruck davor: Vergleich den Schritt mit deiner Arbeit.
           *[other] es gilt die Kopie von { $presses } Tastendrücken davor: Vergleich den Schritt mit deiner Arbeit.
        }
    }
# $path: the file or folder. $reason: as in reasons.ftl.
trouble-io = „{ $path }“ war nicht zu erreichen ({ $reason }): Sieh nach, ob der Ordner dafür da ist und Platz hat, dann versuch es noch einmal.
trouble-in-use = Dieser Knoten ist in einem anderen Fenster oder Terminal offen: Mach dort weiter, oder drück dieselbe Taste noch einmal, um ihn nur anzusehen.
