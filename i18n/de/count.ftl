# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Einen Knoten auszählen
count-opening = Ein Knoten wird gezählt.
# $asked: bights, nested, lands, rows, passes, over, colours or found. $number: so far, or which
# crossing; found: strands. $nested: rows of scallops at each rim.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] Ein Bogen
           *[other] { $number } Bögen
        }
        [nested] { $number ->
            [one] Ein Bogen allein
           *[other] { $number } Bögen ineinander
        }
        [lands] Reihe { $number } der Bögen
        [rows] { $number ->
            [one] Eine Kreuzung
           *[other] { $number } Kreuzungen
        }
        [passes] { $number ->
            [one] Eine Schnur
           *[other] { $number } Schnüre
        }
        [colours] { $number ->
            [one] Eine Farbe
           *[other] { $number } Farben
        }
       *[over] Über an Kreuzung { $number }?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Halt den Knoten aufrecht. Wie viele Bögen hat sein Fußrand? Leg den Daumen auf einen und zähl einmal herum. Weiter: eins mehr.
        [nested] Sieh dir eine Stelle dieses Randes an. Wie viele Bögen liegen dort ineinander? Schnüre, die überall nebeneinander laufen, zählen als eine. Meist ist es 1. Weiter: eins mehr.
        [lands] Folge von einem äußersten Bogen am Fuß einer Schnur hoch zum Kopfrand. In welcher Reihe von Bögen wendet sie dort, 1 die äußerste? Weiter: eine Reihe weiter innen.
        [rows] Folge von { $nested ->
            [one] einem Bogen am Fußrand
           *[other] diesem äußersten Bogen am Fußrand
        } einer Schnur hoch zum Kopfrand. Wie oft kreuzt sie? Schnüre, die nebeneinander liegen, zählen als eine. Weiter: eins mehr.
        [passes] Wie viele Schnüre liegen nebeneinander? Weiter: eins mehr.
        [over] { $nested ->
            [one] Folge einer Schnur, die nach rechts aufsteigt, vom Fußrand hoch.
           *[other] Folge einer Schnur, die nach rechts aufsteigt, von einem Bogen der Fußreihe { $from } hoch, von außen gezählt.
        } Kreuzung { $number } von { $of }: geht sie über die andere?
        [colours] Wie viele Farben von Schnur siehst du? Weiter: eins mehr.
       *[found] { $tie }. { $colours ->
            [cord] Eine einzige Schnur macht ihn ganz.
            [passes] Er ist ein Strang, und Durchgänge davon haben eigene Schnüre.
            [strands] Er hat { $number } Stränge, jeder eine eigene Schnur: die Farben passen.
            [alike] Er hat { $number } Stränge, jeder eine eigene Schnur; einige haben dieselbe Farbe.
           *[too-many] So viele Farben kann ein solcher Knoten nicht haben: da ist etwas verzählt.
        }
    }
count-misfit = Bei { $nested } Reihen von Bögen sind es { $less } Kreuzungen oder { $more }, { $number } kann nicht sein: zähl noch einmal.
count-keys = { $asked ->
        [over] Weiter: über. Zurück: sie taucht durch.
       *[found] { $possible ->
            [yes] Weiter nimmt diesen Knoten, zurück zählt noch einmal.
           *[no] Weiter und zurück zählen noch einmal.
        }
    }
# Printed by “marlinspeak count” when the knot is taken. $given: the options that name it.
count-go-on = Plane ihn mit „marlinspeak rig { $given }“ und deinem Rohr und deiner Schnur, oder knüpf ihn mit „marlinspeak tie { $given }“.
count-lines = Eingabe ist weiter, b zurück, eine Zahl steht für sich, q verlässt; jeweils mit Eingabe.
# $given: a number that was typed and is not between the bounds.
count-beyond = { $given } kann nicht sein: Gib eine Zahl von { $least } bis { $most } an.
count-no-voice = Keine Stimme: Der Sprachdienst antwortet nicht. Die Fragen gehen schriftlich weiter.

## A counted knot on the plan screen

plan-only = { $key }: nur { $tie }
# Said when the screen appears.
plan-only-told = Gesucht wird nur der Knoten, der ausgezählt wurde: { $tie }. F10 nimmt alle.{ $bare ->
        [yes] { " " }Die Eingabetaste knüpft ihn, wie er ist, ohne Gegenstand und Rohr.
       *[no] { "" }
    }
plan-only-note = Die Eingabetaste knüpft ihn, wie er ist.
plan-any-told = Gesucht wird wieder unter allen Knoten.
key-any-knot = alle Knoten
