# Der gedruckte Bogen eines Bretts: Kreise von Stiftmarken in wahrer Größe.

# Argumente wie im Englischen.
board-title = Brettbogen: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, Stiftkreise { $outer } und { $inner } im Durchmesser

board-how = Kleb den Bogen flach auf das Brett und steck in die Mitte jedes markierten Kreuzes einen T-Stift. Die blasse Linie ist der Weg der ersten zwei Bahnen: von Kanten-Stift 1 hinein und wieder heraus.
board-pages = Bei mehreren Seiten schneide nichts ab: Leg jede an die gestrichelte Linie der vorigen, Kreuz auf Kreuz, und miss die Linie unten nach, bevor der erste Stift steckt.

board-hand = { $hand ->
        [left] Kanten-Stift 1 ist dir am nächsten. Von dort gesehen laufen die Nummern nach links, wie die Schnur.
       *[right] Kanten-Stift 1 ist dir am nächsten. Von dort gesehen laufen die Nummern nach rechts, wie die Schnur.
    }

# Die Bänder um etwas, auf dem an Ort und Stelle geknüpft wird. Argumente wie im Englischen.
tape-title = Bänder: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, Umfang { $bottom } { -at-the-bottom }, { $top } { -at-the-top }

tape-top = Band { -at-the-top }
tape-bottom = Band { -at-the-bottom }
