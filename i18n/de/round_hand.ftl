# A knot that is tied round the hand, without tube and pins: where it is chosen. How its steps are told
# stands in grounds/hand.ftl.

# On the form of the start screen: what it is tied on.
start-tied = Geknüpft
start-tied-tube = auf einem Rohr
start-tied-hand = um die Hand

# What the knot comes to, as start-facts, where it is tied round the hand. $strands is one here. $cord: a length with its unit.
start-facts-round-hand = { $leads } Parten, { $bights } Buchten um die Hand, ohne Rohr und Stifte, { $tucks }-mal durchstecken{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(mit über begonnen: { $other_tucks }-mal)
    }. { $hand ->
        [left] Die rechte Hand hält, die Handfläche zu dir, und die linke knüpft.
       *[right] Die linke Hand hält, die Handfläche zu dir, und die rechte knüpft.
    } Nimm { $cord } Schnur, und leg Klebeband, eine Klinge und Feuerzeug oder Leim bereit. Lass die Schnur locker um die Finger: Straff hält sie ihr Blut auf.{ $uneven ->
        [yes] { " " }An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

# Why a knot is not tied round the hand, and what to do. $small: yes where it is small enough, and yet not told so.
knot-not-round-hand = { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander,
    } in { $passes ->
        [one] 1 Durchgang
       *[other] { $passes } Durchgängen
    } { $small ->
        [yes] ist keiner der Knoten, die nach den Fingern angesagt werden
       *[no] ist mehr, als vier Finger halten
    }: Nimm um die Hand 3 Parten mit 4 oder 5 Buchten, 4 Parten mit 5 Buchten oder 5 Parten mit 4 Buchten in höchstens 3 Durchgängen, und knüpf diesen auf einem Rohr mit Stiften.

# Tube, cord or object were named for a knot that is tied round the hand.
round-hand-without-tube = Um die Hand gibt es kein Rohr zu bestücken: Lass Rohr, Schnur und Gegenstand weg, oder lass --round-hand weg.

# There are no pins to mark.
round-hand-no-strip = Um die Hand gibt es keine Stifte und darum keinen Streifen, der sie markiert: Druck die Karte, die zu jeder Bucht den Finger nennt, mit marlinspeak sheet card --round-hand.

# The help of the option.
help-round-hand = Um die Hand knüpfen, ohne Rohr und Stifte: 3 Parten mit 4 oder 5 Buchten, 4 Parten mit 5 Buchten und 5 Parten mit 4 Buchten in höchstens 3 Durchgängen

## The fingers, as they are told in the steps

# Where a bight lies. Front is the side of the palm.
finger-place = { $place ->
        [edge-forefinger] außen am Zeigefinger
        [front-forefinger] vorn am Zeigefinger
        [front-middle] vorn am Mittelfinger
        [front-ring] vorn am Ringfinger
        [front-little] vorn am kleinen Finger
        [edge-little] außen am kleinen Finger
        [back-little] hinten am kleinen Finger
        [back-ring] hinten am Ringfinger
        [back-middle] hinten am Mittelfinger
       *[back-forefinger] hinten am Zeigefinger
    }
# Which way a leg goes about the fingers.
finger-way = { $way ->
        [front] vorn quer hinüber
        [round-little] um den kleinen Finger nach hinten
        [back] hinten quer hinüber
        [round-forefinger] um den Zeigefinger nach vorn
        [behind-all] hinter allen vier Fingern her und wieder nach vorn
       *[across-all] vor allen vier Fingern her und wieder nach hinten
    }
# How the hand is turned to see it.
finger-view = { $way ->
        [front] Handfläche zu dir.
        [back] Handrücken zu dir.
       *[round-little] Dreh die Hand dabei mit.
    }

# The same in a picture, at the bight, after its number, where there is room for a word or two.
picture-finger = { $number } { $place ->
        [edge-forefinger] außen Zeige
        [front-forefinger] vorn Zeige
        [front-middle] vorn Mittel
        [front-ring] vorn Ring
        [front-little] vorn Klein
        [edge-little] außen Klein
        [back-little] hinten Klein
        [back-ring] hinten Ring
        [back-middle] hinten Mittel
       *[back-forefinger] hinten Zeige
    }
