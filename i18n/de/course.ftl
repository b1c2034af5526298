# First ties: a short course of six knots, each taught in the teach depth. For each: its name, and
# the idea that is new in it, told before the tie begins.

course-heading = Erste Knoten
course-say = Erste Knoten: sechs Knoten, jeder ein wenig schwerer als der davor, und der letzte ohne Rohr. Mit Weiter fängt der gewählte an. Pfeil ab und Pfeil auf wählen.

# A lesson in the list. $state: new, begun or done. Example: 1. 3 Parten, 4 Buchten: Stifte und Bahnen, über und unter (fertig)
course-line = { $number }. { $lesson ->
        [1] Glockenseil, 3 Parten, 5 Buchten: Stifte und Bahnen, über und unter
        [2] Flaschenkragen, 3 Parten, 7 Buchten: der Rhythmus der Hand
        [3] Bootshaken, 4 Parten, 7 Buchten: Stifte übereinander, längere Bahnen
        [4] Pinnengriff, 5 Parten, 7 Buchten, doppelt: folgen
        [6] Um die Hand, 3 Parten, 4 Buchten: kein Rohr, keine Stifte
       *[5] Glockenseil in zwei Farben, zwei Schnüre zu 3 Parten, 5 Buchten: eine zweite Schnur einfädeln
    }{ $state ->
        [done] { " " }(fertig)
        [begun] { " " }(angefangen)
       *[new] { "" }
    }

# The same as it is spoken when the choice moves to it.
course-line-say = Lektion { $number } von { $lessons }: { $lesson ->
        [1] ein Glockenseil, 3 Parten, 5 Buchten.
        [2] ein Flaschenkragen, 3 Parten, 7 Buchten.
        [3] ein Ring für den Bootshaken, 4 Parten, 7 Buchten.
        [4] ein Pinnengriff, 5 Parten, 7 Buchten, doppelt.
        [6] um die Hand, 3 Parten, 4 Buchten, ohne Rohr und Stifte.
       *[5] ein Glockenseil in zwei Farben, zwei Schnüre zu 3 Parten, 5 Buchten, ineinander.
    } { $state ->
        [done] Dieser Knoten ist geknüpft.
        [begun] Er ist angefangen und wartet bei den angefangenen Knoten.
       *[new] Dieser Knoten ist noch neu.
    }

# Beside the lesson that is chosen: how its weave begins. $kind: run when with over, twin when with under.
course-weave = Beginnt mit { $kind ->
        [twin] unter
       *[run] über
    }: { $tucks }-mal durchstecken · W: mit { $kind ->
        [twin] über
       *[run] unter
    } beginnen
course-weave-say = Die Flechtart beginnt mit { $kind ->
        [twin] unter
       *[run] über
    } und verlangt { $tucks }-mal Durchstecken. W beginnt sie andersherum.

# The idea that is new, told before the first step and shown beside the choice.
course-idea = { $lesson ->
        [1] Ein kleiner Knoten, der sich lohnt, für das Glockenseil. Setz an jeden Rand des Rohrs fünf Stifte, die am Kopf auf Lücke zwischen denen am Fuß, und nummeriere sie. Die Schnur geht von einem Fuß-Stift hoch zu einem Kopf-Stift und wieder hinab, immer in derselben Richtung um das Rohr. Jeder Weg von Rand zu Rand, hoch oder hinab, ist eine Bahn. Die ersten Bahnen kreuzen nichts; dann geht jede im Wechsel über Schnüre und unter ihnen durch, und nach zehn Bahnen ist die Schnur wieder an ihrem ersten Stift.
        [2] Das gleiche Geflecht mit zwei Stiften mehr an jedem Rand, ein Kragen für eine Flasche. Neu ist nur die Länge: Finde den Rhythmus, hoch und hinab, über und unter, und sieh die Arbeit zwischendurch an. Kommt eine Bahn an einem anderen Stift an als angesagt, dann stimmt schon davor etwas nicht: Drück Falsch und nimm sie zurück.
        [3] Eine gerade Zahl von Parten, für den Ring am Bootshaken. Jetzt steht jeder Kopf-Stift genau über einem Fuß-Stift, und eine Bahn kreuzt drei Schnüre, abwechselnd über und unter; wo sie auf dem Weg hoch drübergeht, geht sie auf dem Weg hinab drunter. Zähl die Kreuzungen einer Bahn, bevor du sie anziehst.
        [4] Der Griff einer Pinne: breiter, und der erste Knoten, der doppelt wird. Ist der erste Durchgang wieder am Anfang, dann läuft dieselbe Schnur noch einmal herum, neben sich selbst, immer auf der Fuß-Seite der ersten Schnur: über, wo sie darüberging, und unter, wo sie darunterging. An einer Kreuzung, in der schon zwei Schnüre liegen, geht sie über beide oder taucht unter beiden durch. Dann wird der Knoten abgehoben, durchgeholt und fertig gemacht.
        [6] Mit nichts als anderthalb Metern Schnur: der erste Knoten um die eigene Hand. Deine vier Finger, dicht beisammen, sind das Rohr, und jede Bucht hat einen Finger für sich, also braucht niemand Stifte zu zählen. Die eine Seite des Knotens liegt zum Handgelenk hin, die andere zu den Fingerspitzen hin. Die Schnur läuft vorn quer über die Finger, auf der Seite der Handfläche, dann hinter ihnen zurück und wieder herum, und du drehst die Hand so, dass du siehst, wo du arbeitest. Leg sie locker, ein Finger muss noch darunterpassen: Was lose ist, wird am Ende durchgeholt. Es ist genau der Knoten, der auf dem Rohr entsteht, Bahn für Bahn, und er rutscht von den Fingern auf den Griff.
       *[5] Noch einmal das Glockenseil, in zwei Farben: Eine zweite Schnur wird durch die erste gefädelt. Setz an jeden Rand zwei Reihen von fünf Stiften, eine in der anderen und auf einer Linie, und schneide von jeder Farbe eine Schnur. Die erste Schnur ist der Knoten der ersten Lektion, von den äußeren Fuß-Stiften hoch zu den inneren Kopf-Stiften. Die zweite geht von den inneren Fuß-Stiften zu den äußeren Kopf-Stiften, jede Bahn mitten zwischen zwei Bahnen der ersten. Was sie kreuzt, wird Bahn für Bahn gesagt; liegen die beiden Farben gleichmäßig, dann stimmt es.
    }
