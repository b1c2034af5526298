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
        [ball] { $last ->
            [yes] Bei diesem letzten Mal hol auch die Buchten an beiden Rändern ein, damit sie sich über den Polen schließen.
           *[no] Bis zum letzten Mal kommt nur die Mitte der Kugel stramm: Lass die Buchten an beiden Rändern locker.
        }
        [taper] { $last ->
            [yes] Bei diesem letzten Mal hol auch die Buchten am dünnen Ende ein.
           *[no] Bis zum letzten Mal kommt nur das dicke Ende stramm, { -at-the-bottom }: Lass die Buchten am dünnen locker, denn dorthin rutscht, was lose ist.
        }
        [taper-down] { $last ->
            [yes] Bei diesem letzten Mal hol auch die Buchten am dünnen Ende ein.
           *[no] Bis zum letzten Mal kommt nur das dicke Ende stramm, { -at-the-top }: Lass die Buchten am dünnen locker, denn dorthin rutscht, was lose ist.
        }
       *[mat] Halte die Matte flach. { $last ->
            [yes] Bei diesem letzten Mal hol auch die Buchten am Loch ein.
           *[no] Bis zum letzten Mal kommt nur der Kreis an der Kante stramm: Lass die Buchten am Loch locker.
        }
    }
fair-way-show = { $way ->
        [ball] { $last ->
            [yes] Jetzt auch die Buchten, über die Pole
           *[no] Erst die Mitte; Buchten locker bis zum letzten Mal
        }
        [mat] Matte flach; { $last ->
            [yes] jetzt auch die Buchten am Loch
           *[no] Buchten am Loch locker bis zum letzten Mal
        }
       *[taper] { $last ->
            [yes] Jetzt auch das dünne Ende
           *[no] Erst das dicke Ende; das dünne locker bis zum letzten Mal
        }
    }

# Ein Knoten, der nicht so stramm wird, wie es geht. Argumente wie im Englischen.
fair-open-say = { $way ->
        [ball] Hör auf, wenn der Knoten { $width } breit ist, an der Kugel entlang gemessen: Strammer deckt er weniger.
        [mat] Hör auf, wenn der Ring { $width } breit ist: Strammer deckt er weniger.
       *[other] Hör auf, wenn der Knoten { $width } breit ist, von Rand zu Rand: Strammer deckt er weniger.
    }
fair-open-show = { $way ->
        [ball] Aufhören bei { $width } Breite, an der Kugel entlang
        [mat] Aufhören, wenn der Ring { $width } breit ist
       *[other] Aufhören bei { $width } Breite, von Rand zu Rand
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
