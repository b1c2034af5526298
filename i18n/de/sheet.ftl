# Paper for the bench: cards, strips and stages.

## Every sheet

# At the foot of a page.
sheet-page = Seite { $page } von { $pages }

## The card

card-head-leg = Bahn
card-head-way = Von { -pin } zu { -pin }
card-head-crossings = Kreuzungen, wie sie der Reihe nach kommen

# The way of a leg. $heading, $from, $to as in steps.ftl.
card-way = { $heading ->
        [falling] { -top } { $from } { -down-short } zu { -bottom } { $to }
       *[rising] { -bottom } { $from } { -up-short } zu { -top } { $to }
    }

# Worauf und womit. Argumente wie im Englischen.
card-for = { $on ->
        [round] An Ort und Stelle auf einem Gegenstand von { $object } Durchmesser,
        [taper] An Ort und Stelle auf einem Stück von { $object } bis { $top } Durchmesser,
        [ball] An Ort und Stelle auf einer Kugel von { $object } Durchmesser,
        [mat] Flach auf einem Brett, { $object } von Rand zu Rand,
       *[tube] Auf einem Rohr von { $tube } Durchmesser, { $ground ->
            [taper] für ein Stück von { $object } bis { $top } Durchmesser,
            [ball] für eine Kugel von { $object } Durchmesser,
           *[round] für einen Gegenstand von { $object } Durchmesser,
        }
    } mit Schnur von { $cord }.

# Example: Flechtart: über 1, unter 1.
# $kind: run, or code for a row code of o and u.
card-weave = { $kind ->
        [run] Flechtart: über { $weave }, unter { $weave }.
        [twin] Flechtart: über { $weave }, unter { $weave }, { -at-the-bottom } mit unter begonnen.
       *[code] Flechtart, Reihe für Reihe { -from-the-bottom }: { $weave } (o: die aufsteigende Bahn geht über; u: unter).
    }

# $hand: right or left. $passes, $side as in steps.ftl. $inside: top or bottom.
card-work = { $hand ->
        [left] { -card-left }
       *[right] { -card-right }
    } { $passes ->
        [one] { "" }
       *[other] { $inside ->
            [bottom] Spätere Durchgänge liegen auf der { -top-side-shown } der ersten Schnur
           *[top] Spätere Durchgänge liegen auf der { -bottom-side-shown } der ersten Schnur
        }, { $passes ->
            [2] { "" }
           *[other] jeder jenseits des vorigen,
        } { $inside ->
            [bottom] { -at-the-bottom } innen in ihren Buchten und { -at-the-top } außen um sie herum.
           *[top] { -at-the-top } innen in ihren Buchten und { -at-the-bottom } außen um sie herum.
        }
    }

# Where the pins go when the tube is not known.
# $staggered: yes or no.
card-pins = Setz { $pins } Stifte gleichmäßig rund um jeden Ring, { $staggered ->
        [yes] jeden Kopfstift auf Lücke zwischen zwei Fußstifte: Kopfstift 1 einen halben Abstand weiter als Fußstift 1.
       *[no] jeden Kopfstift genau über den Fußstift mit seiner Nummer.
    }

# On a tube without rings. $tube: its diameter. $apart: from pin to pin.
card-pins-apart = Auf einem Rohr von { $tube } stehen die Stifte { $apart } auseinander, um das Rohr gemessen.

# On a tube with rings. $rim: top or bottom. $row: number of the row, $holes in it. $first: the
# hole of pin 1. $step: holes from one pin to the next.
card-pins-ring = { $rim ->
        [top] Kopfring
       *[bottom] Fußring
    }, Reihe { $row } mit { $holes } Löchern: Stift 1 in Loch { $first }, jeder nächste Stift { $step ->
        [one] 1 Loch weiter.
       *[other] { $step } Löcher weiter.
    }

card-half-hole = Dreh zuerst den Kopfring ein halbes Loch weiter, in der Richtung, in der die Schnur läuft.

# The head of a pass of a strand. $pin: the bottom pin where it begins.
# Example: Erster Durchgang: Lass an Fußstift 1 ein Ende stehen
# Example: Zweiter Durchgang, Strang 2 von 3: Beginne an Fußstift 2 neben der Schnur, die schon liegt
card-pass = { $pass ->
        [1] Erster Durchgang
        [2] Zweiter Durchgang
        [3] Dritter Durchgang
        [4] Vierter Durchgang
        [5] Fünfter Durchgang
        [6] Sechster Durchgang
        [7] Siebter Durchgang
        [8] Achter Durchgang
       *[9] Neunter Durchgang
    }{ $strands ->
        [one] { "" }
       *[other] , Strang { $strand } von { $strands }
    }: { $pass ->
        [1] Lass an { -bottom-pin-shown } { $pin } ein Ende stehen
       *[other] Beginne an { -bottom-pin-shown } { $pin } neben der ersten Schnur
    }

# What comes when all is laid. $rings: yes when the tube has rings. $times: how often the knot is gone
# through. $known: yes when $draw, a length, says how much to draw.
card-after = Wenn alles liegt
card-lift = Abheben: { -bottom-bight } 1 mit Klebeband markieren, und kein Ende zurückrutschen lassen. Die Stifte am Kopf heraus{ $rings ->
        [yes] , den Kopfring ab
       *[no] { "" }
    }, dann die Stifte am Fuß. Den Knoten auf das schieben, was er bedecken soll, genau so herum.
card-fair = Durchholen, { $times }-mal: vom stehenden Ende an der Schnur entlang aus jeder Bahn { $known ->
        [yes] etwa { $draw } Lose
       *[no] ein wenig Lose
    } holen und in die nächste schieben, bis sie am Arbeitsende herauskommt. Keine Bahn fest, bevor ihre Nachbarn so weit sind.
card-finish = Enden: wie unten durchstecken, wo sie herauskommen abschneiden, ein Stummel so lang, wie die Schnur dick ist; abseits vom Knoten mit Hitze verschweißen (Naturfaser: mit Leim) und wieder darunterschieben.

# Over the pictures of the ends, where they are tucked away.
card-ends = Die Enden

card-cautions = Achte darauf
card-caution-load = Der Knoten bekleidet und schmückt. Lass ihn nie einen Menschen oder eine Last halten; wo etwas halten muss, beachte die örtlichen Vorschriften und frag Fachleute.
card-caution-heat = Heißes Messer oder Flamme: Lüfte, und halte sie fern von allem, was brennt. Geschmolzene Schnur klebt auf der Haut und macht Brandwunden: Lass die Schnur erst abkühlen. Verschweißte Enden können scharf sein.
card-caution-blade = Messer, Marlspieker und Nadeln: Schneide und stich immer vom Körper weg.
card-caution-pins = Stifte stehen aus dem Rohr vor: Achte auf Augen und Handflächen.
card-caution-pull = Sacht ziehen, die Schnur nie um die Hand gewickelt.
card-caution-children = Schnüre, Stifte und kleine Teile sind nichts für kleine Kinder. Leg nie eine Schnur um einen Hals.
card-caution-hands = Hände ermüden: Gönn ihnen bei einem langen Knoten Pausen.

## The strip

# $tube: its diameter, $round: the way round it.
strip-title = Stiftstreifen: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, Rohr { $tube }, Umfang { $round }

# $rings: yes when the tube has rings.
strip-how = Schneide beide Streifen an ihren Linien aus, und leg jeden einmal um das Rohr, Ende an Ende. { $rings ->
        [yes] Jeder liegt an seinem Ring: Jeder Kreis ist ein Loch, und über jedem Loch für einen Stift steht eine Nummer.
       *[no] Die Stifte kommen dorthin, wo die Linien sich kreuzen; die Linien laufen weiter bis zum Rand des Papiers.
    } Beginne mit beiden Streifen an derselben Linie längs des Rohrs.

# $hand: right or left.
strip-hand = { $hand ->
        [left] Die Nummern laufen nach links, so wie die Schnur läuft.
       *[right] Die Nummern laufen nach rechts, so wie die Schnur läuft.
    }

strip-half-hole = Dreh zuerst den Kopfring ein halbes Loch weiter, in der Richtung, in der die Schnur läuft: So sind die Löcher seines Streifens gezeichnet.

# How far the rows of pins stand from each other. $rings: yes when the tube has rings. $known: no when no cord
# is named, from which $spacing comes.
# $rows: rows of pins at each rim, more than one where bights are nested.
strip-spacing = { $known ->
        [no] Wie weit die Ringe auseinander stehen, hängt von der Schnur ab: Nenne sie auch (--cord), dann steht es hier.
       *[yes] { $rings ->
            [yes] Die Ringe so setzen, dass { $rows ->
                [1] ihre Reihen von Stiften
               *[other] ihre äußersten Reihen von Stiften
            } { $spacing } auseinander stehen.
           *[no] { $rows ->
                [1] Die beiden Reihen von Stiften
               *[other] Die beiden äußersten Reihen von Stiften
            } stehen { $spacing } auseinander.
        }
    }

strip-top = Kopfring
strip-bottom = Fußring
strip-cut = schneiden
strip-join = Seite { $page } an die gestrichelte Linie legen
strip-bar = Diese Linie ist { $bar } lang. Wenn nicht, drucke noch einmal mit 100 %, ohne Anpassung an die Seite.

## The stage

stage-signs = Ein Quadrat heißt über, ein Ring heißt unter. Die Zahl in einem Kreisring nennt den Stift, von dem die Bahn kommt, die Zahl auf einer vollen Scheibe den Stift, zu dem sie geht.

## What can be wrong

sheet-out-missing = Es ist nicht gesagt, wohin das Blatt soll: Füge --out mit einem Dateinamen hinzu, der auf „.png“ oder „.pdf“ endet, etwa --out karte.pdf.
sheet-out-ending = „{ $file }“ sagt nicht, was entstehen soll: Lass den Namen auf „.png“ oder „.pdf“ enden, oder füge --pdf hinzu.
sheet-exists = „{ $file }“ gibt es schon und bleibt unberührt: Wähl einen anderen Namen, oder füge --replace hinzu.
sheet-unwritable = „{ $file }“ ließ sich nicht schreiben ({ $reason }): Sieh nach, ob der Ordner da ist und du darin schreiben darfst.
sheet-progress = Bisher fertig: { $page } von { $pages }. Mit Strg+C hörst du auf.
sheet-stopped = Nach { $page } von { $pages } aufgehört: { $one ->
        [yes] Es wurde keine Datei geschrieben.
       *[no] Was bis dahin geschrieben ist, ist ganz.
    }
sheet-failed = Das Blatt ließ sich nicht herstellen: Versuch es mit der anderen Dateiart, „.png“ oder „.pdf“.
sheet-dpi = --dpi nimmt eine ganze Zahl von { $least } bis { $most }, und „{ $given }“ ist keine: Versuch es mit --dpi 300.
sheet-step = --step nimmt einen Schritt dieses Knotens, 1 bis { $steps }, und „{ $given }“ ist keiner: „marlinspeak steps“ zeigt sie alle.
sheet-tube-missing = Ein Streifen ist so lang, wie das Rohr rundum misst, und es ist keines genannt: Füge --tube mit seinem Durchmesser hinzu, etwa --tube 48mm.
sheet-card-long = Eine Karte dieses Knotens hätte mehr als { $most } Kreuzungen zu drucken: „marlinspeak steps“ nennt so viele, wie du willst.
sheet-strip-long = Ein Streifen für dieses Rohr würde mehr als { $most } Seiten brauchen: Sieh nach, ob --tube den Durchmesser nennt, etwa --tube 48mm.
sheet-reel-out-missing = Es ist nicht gesagt, wohin das bewegte Bild soll: Füge --out mit einem Dateinamen hinzu, der auf „.gif“, „.png“ oder „.webp“ endet, etwa --out knoten.gif.
sheet-reel-ending = „{ $file }“ sagt nicht, welche Art von bewegtem Bild entstehen soll: Lass den Namen auf „.gif“, „.png“ oder „.webp“ enden.
sheet-reel-long = Ein bewegtes Bild dieses Knotens würde mehr als { $most } Kreuzungen nacheinander zeigen: „marlinspeak sheet stage --step“ macht das Bild eines einzelnen Schritts.
sheet-width = --width nimmt eine ganze Zahl von { $least } bis { $most }, und „{ $given }“ ist keine: Versuch es mit --width 800.
