# Mehrere Stücke desselben Knotens nacheinander.

batch-piece = { $stick ->
        [yes] Knoten { $knot } von { $knots } auf dem Stock
       *[no] { $of ->
            [0] Stück { $number }
           *[other] Stück { $number } von { $of }
        }
    }{ $named ->
        [yes] , Auftrag „{ $order }“
       *[no] { "" }
    }
batch-piece-begun = { $stick ->
        [yes] Knoten { $knot } von { $knots } auf dem Stock
       *[no] { $of ->
            [0] Stück { $number }
           *[other] Stück { $number } von { $of }
        }
    }{ $named ->
        [yes] , Auftrag „{ $order }“
       *[no] { "" }
    }.
batch-tube-stands = Das Rohr steht noch wie vorher, also ist nur die Schnur zu schneiden. Wenn nicht, geh von hier aus zurück.
batch-ask-standing = Steht das Rohr noch wie vorher: { $pins } Stifte an jedem Ende an denselben Stellen, die beiden Enden { $spacing } auseinander? Weiter heißt ja, dann ist nur die Schnur zu schneiden. Zurück heißt nein, dann wird zuerst gepackt und gerüstet.
batch-standing-show = Steht das Rohr noch wie vorher?
batch-standing-note = { $pins } Stifte an jedem Ende an denselben Stellen, die beiden Enden { $spacing } auseinander
batch-standing-note-keys = Weiter: ja, nur die Schnur ist zu schneiden. Zurück: nein, erst Tasche und Rüsten.
batch-piece-done = { $stick ->
        [yes] Knoten { $knot } von { $knots } auf dem Stock ist fertig
       *[no] { $of ->
            [0] Stück { $number } ist fertig
           *[other] Stück { $number } von { $of } ist fertig
        }
    }{ $time ->
        [none] .
       *[other] , in { $time }.
    }{ $mean ->
        [none] { "" }
       *[other] { " " }Das Mittel von { $pieces } Stück ist { $mean }.
    }{ $more ->
        [yes] { $next ->
            [none] { "" }
           *[other] { " " }Ein weiteres sollte { $next } dauern.
        }{ " " }Weiter beginnt { $stick ->
            [yes] Knoten { $following }
           *[no] Stück { $following }
        }, L schreibt auf, was verbraucht wurde.
       *[no] { $rest ->
            [yes] { " " }Zum nächsten Knoten führt der Auftrag.
           *[no] { $of ->
                [0] { "" }
               *[other] { " " }Das war das letzte.
            }
        }{ " " }L schreibt auf, was verbraucht wurde.
    }
batch-all-tied = Von Stück { $piece } sind alle { $of } gebunden.
batch-pieces-number = --pieces nimmt eine ganze Zahl von 2 bis { $most }, und „{ $given }“ ist keine: Versuch es mit --pieces 10.
batch-order-or-knot = Ein Auftrag hat seine Knoten schon: Gib entweder --from-order oder einen Knoten an.
batch-pieces-what = --pieces braucht einen Knoten, der so oft gebunden wird: Füge --leads und --bights hinzu.
batch-piece-what = --piece gehört zu einem Auftrag: Füge --from-order mit seinem Namen hinzu.
key-next-piece = nächstes Stück
help-tie-pieces = So viele davon nacheinander binden, 2 bis 999
help-tie-order = Der nächste Knoten eines Auftrags, wie „order list“ ihn nennt
help-tie-piece = Das Stück des Auftrags, nach seiner Nummer [sonst: das erste, von dem noch welche fehlen]
