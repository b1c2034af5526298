# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Einen Knoten auszählen
# $asked: bights, rows, passes, over, colours or found. $number: so far, or the row; found: strands.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] Ein Bogen
           *[other] { $number } Bögen
        }
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
       *[over] Über in Reihe { $number }?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Halt den Knoten aufrecht. Wie viele Bögen hat sein Fuß-Rand? Leg den Daumen auf einen und zähl einmal herum. Weiter: einer mehr.
        [rows] Folge von einem Bogen am Fuß-Rand einer Schnur hoch zum Kopf-Rand. Wie oft kreuzt sie? Schnüre, die nebeneinander liegen, zählen als eine. Weiter: eine mehr.
        [passes] Wie viele Schnüre liegen nebeneinander? Weiter: eine mehr.
        [over] Folge einer Schnur, die nach rechts aufsteigt, vom Fuß-Rand hoch. Kreuzung { $number } von { $of }: geht sie über die andere?
        [colours] Wie viele Farben von Schnur siehst du? Weiter: eine mehr.
       *[found] { $tie }. { $colours ->
            [cord] Eine einzige Schnur macht ihn ganz.
            [passes] Er ist ein Strang, und Durchgänge davon haben eigene Schnüre.
            [strands] Er hat { $number } Stränge, jeder eine eigene Schnur: die Farben passen.
            [alike] Er hat { $number } Stränge, jeder eine eigene Schnur; einige haben dieselbe Farbe.
           *[too-many] So viele Farben kann ein solcher Knoten nicht haben: da ist etwas verzählt.
        }
    }
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
