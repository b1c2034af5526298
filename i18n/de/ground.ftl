# Was gesagt wird, wo ein Knoten nicht vom Rohr geschoben wird: um eine Reling, etwas Kegeliges, eine Kugel, als Matte.

# Example: Zieh bei jedem Durchstecken die ganze Schnur durch, noch 3,2 Meter.
draw-through-say = { $known ->
        [yes] Zieh jedes Mal die ganze Schnur durch, noch { $length }.
       *[no] Zieh jedes Mal die ganze Schnur durch.
    }
draw-through-show = { $known ->
        [yes] Die ganze Schnur durchziehen: noch { $length }
       *[no] Die ganze Schnur durchziehen
    }

fair-way-say = { $way ->
        [ball] Hol zuerst die Mitte der Kugel stramm, zuletzt die beiden Ränder, damit sie sich über den Polen schließen.
        [taper] Hol zuerst das dicke Ende stramm, { -at-the-bottom }, zuletzt das dünne: Was locker ist, rutscht zum dünnen hin.
        [taper-down] Hol zuerst das dicke Ende stramm, { -at-the-top }, zuletzt das dünne: Was locker ist, rutscht zum dünnen hin.
       *[mat] Halte die Matte flach, und hol zuerst den Kreis an der Kante stramm, zuletzt den am Loch.
    }
fair-way-show = { $way ->
        [ball] Von der Mitte der Kugel zu den Polen
        [taper] Vom dicken Ende zum dünnen
        [taper-down] Vom dicken Ende zum dünnen
       *[mat] Von der Kante zum Loch, die Matte flach
    }

# Ein Brett wird eingerichtet. Argumente wie im Englischen.
rig-board-say = Leg den gedruckten Bogen flach auf das Brett und kleb ihn fest. Steck an jede Marke { $rows ->
        [one] des äußeren Kreises, { $outer } im Durchmesser, und des inneren, { $inner } im Durchmesser, einen T-Stift: { $pins } in jeden,
       *[other] der { $rows } Kreise an der Kante, der äußerste { $outer } im Durchmesser, und der { $rows } am Loch, der innerste { $inner }, einen T-Stift: { $pins } in jeden, { $all } im Ganzen,
    } ein wenig vom Knoten weg geneigt. { $rows ->
        [one] { "" }
       *[other] T-Stifte mit einer Nummer stehen auf einer Linie.
    } { $staggered ->
        [yes] Loch-Stift 1 steht auf halbem Weg zwischen Kanten-Stift 1 und Kanten-Stift 2.
       *[no] Loch-Stift 1 steht auf einer Linie mit Kanten-Stift 1.
    }
rig-board-say-brief = Gedruckter Bogen aufs Brett. T-Stifte an die Marken, { $rows ->
        [one] { $pins } in jeden Kreis.
       *[other] { $circles } Kreise zu { $pins }, { $all } im Ganzen.
    } { $staggered ->
        [yes] Loch-Stift 1 steht auf halbem Weg zwischen Kanten-Stift 1 und Kanten-Stift 2.
       *[no] Loch-Stift 1 steht auf einer Linie mit Kanten-Stift 1.
    }
rig-board-say-teach = Leg den gedruckten Bogen flach auf das Brett und kleb ihn fest. Steck an jede Marke { $rows ->
        [one] des äußeren Kreises, { $outer } im Durchmesser, und des inneren, { $inner } im Durchmesser, einen T-Stift: { $pins } in jeden,
       *[other] der { $rows } Kreise an der Kante, der äußerste { $outer } im Durchmesser, und der { $rows } am Loch, der innerste { $inner }, einen T-Stift: { $pins } in jeden, { $all } im Ganzen,
    } ein wenig vom Knoten weg geneigt. { $rows ->
        [one] { "" }
       *[other] T-Stifte mit einer Nummer stehen auf einer Linie.
    } { $staggered ->
        [yes] Loch-Stift 1 steht auf halbem Weg zwischen Kanten-Stift 1 und Kanten-Stift 2.
       *[no] Loch-Stift 1 steht auf einer Linie mit Kanten-Stift 1.
    } Ein Stift, der vom Knoten weg geneigt ist, hält seine Schnur, und gibt sie frei, wenn er gezogen wird.
rig-board-show = { $rows ->
        [one] T-Stifte in zwei Kreisen, je { $pins }
       *[other] T-Stifte in { $circles } Kreisen, je { $pins }
    }
rig-board-note = Durchmesser { $outer } und { $inner }, an den Marken des Bogens
