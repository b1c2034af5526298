# Interwoven knots: bights nested one inside the other at each rim, a row of pins for each, and cords that
# are laced through those laid before. "Ineinander" for nested, "gefädelt" for laced.

# A pin of one row of several. Wherever another message has the number of a pin, it is one of these.
# $rows: two or more, that is more than two. $row: 1 is the outermost.
# Example: Von Fuß-Stift 3 der äußeren Reihe hoch nach rechts zu Kopf-Stift 5 der inneren Reihe.
pin-of-row-say = { $rows ->
        [two] { $row ->
            [1] { $number } der äußeren Reihe
           *[2] { $number } der inneren Reihe
        }
       *[more] { $number } der Reihe { $row }
    }
# Example: Fuß-Stift 3 äußere Reihe, hoch zu Kopf-Stift 5 innere Reihe.
pin-of-row-say-brief = { $rows ->
        [two] { $row ->
            [1] { $number } äußere Reihe
           *[2] { $number } innere Reihe
        }
       *[more] { $number } Reihe { $row }
    }
pin-of-row-say-teach = { $rows ->
        [two] { $row ->
            [1] { $number } der äußeren Reihe
           *[2] { $number } der inneren Reihe
        }
       *[more] { $number } der Reihe { $row }
    }
# Example: Fuß 3 außen hoch zu Kopf 5 innen
pin-of-row = { $rows ->
        [two] { $row ->
            [1] { $number } außen
           *[2] { $number } innen
        }
       *[more] { $number } (Reihe { $row })
    }

# Where the first cord begins, and the first of each row inside it. $rows: rows of pins at each rim.
# $whole: yes when all passes of a cord are laid before the next cord begins.
laced-say = { $row ->
        [1] Hier liegen Buchten ineinander: An jedem Rand stehen die { -pins } in { $rows } Reihen, eine in der anderen und auf einer Linie, und jede Schnur bleibt bei ihren. { $whole ->
            [no] Lege den ersten Durchgang dieser Schnur, bevor die nächste hindurchgefädelt wird; die anderen Durchgänge folgen, wenn alle Schnüre liegen.
           *[yes] Lege diese Schnur ganz, bevor die nächste hindurchgefädelt wird.
        }
       *[other] Diese Schnur wird durch die gefädelt, die schon liegen: Jede Bahn läuft mitten zwischen zwei Bahnen von ihnen.
    }
laced-say-brief = { $row ->
        [1] { -pins } in { $rows } Reihen an jedem Rand, auf einer Linie.
       *[other] Durch die Schnüre gefädelt, die schon liegen.
    }
laced-say-teach = { $row ->
        [1] Hier liegen Buchten ineinander: An jedem Rand stehen die { -pins } in { $rows } Reihen, eine in der anderen und auf einer Linie, und jede Schnur bleibt bei ihren. Für sich allein ist jede Schnur ein Türkischer Bund. { $whole ->
            [no] Lege den ersten Durchgang von dieser, bevor die nächste hindurchgefädelt wird; die anderen Durchgänge folgen, wenn alle Schnüre liegen.
           *[yes] Lege diese ganz, bevor die nächste hindurchgefädelt wird.
        }
       *[other] Diese Schnur wird durch die gefädelt, die schon liegen: Jede Bahn läuft mitten zwischen zwei Bahnen von ihnen und kreuzt sie und sich selbst in der Folge, die angesagt wird. Wo zwei Schnüre nacheinander gleich gekreuzt sind, zeigt sich allmählich ein Fischgrat.
    }
laced-show = { $row ->
        [1] { -pins } in { $rows } Reihen an jedem Rand, auf einer Linie
       *[other] Durch die Schnüre gefädelt, die schon liegen
    }

# What a leg of such a cord runs between: the legs that left these two pins of the same rim.
# Example: Bleib zwischen den Bahnen von Fuß-Stift 2 der äußeren Reihe und Fuß-Stift 3 der äußeren Reihe.
lay-say-splits = { $heading ->
        [falling] Bleib zwischen den Bahnen von { -top-pin } { $left } und { -top-pin } { $next }.
       *[rising] Bleib zwischen den Bahnen von { -bottom-pin } { $left } und { -bottom-pin } { $next }.
    }
lay-show-splits = { $heading ->
        [falling] Zwischen den Bahnen von { -top } { $left } und { -top } { $next }
       *[rising] Zwischen den Bahnen von { -bottom } { $left } und { -bottom } { $next }
    }

# Rigging: a further row of pins at both rims. $inside: how far inside the outermost row, towards the
# middle of the knot. $ring: the row of the rings it stands in, 0 without rings. $step: from a pin to the next,
# in holes. $pins: at each rim. $rows and $row as above.
rig-nest-say = Jetzt { $rows ->
        [two] die innere Reihe
       *[more] Reihe { $row }
    } der { -pins }, { $pins } an jedem Rand. Sie steht weiter innen als die äußerste, { -towards-the-middle }; Abstand { $inside }{ $ring ->
        [0] , an denselben Marken des Streifens.
       *[other] : Reihe { $ring } jedes Rings, mit { $holes } Löchern, ein { -pin } in { $step ->
            [1] jedem Loch.
           *[other] einem von je { $step } Löchern.
        }
    } Jeder steht auf einer Linie mit dem äußersten { -pin } seiner Nummer und hat dieselbe Nummer.
rig-nest-say-brief = { $rows ->
        [two] Innere Reihe:
       *[more] Reihe { $row }:
    } { $pins } { -pins } an jedem Rand, auf einer Linie mit den äußersten; Abstand { $inside }{ $ring ->
        [0] .
       *[other] , in Reihe { $ring } der Ringe.
    }
rig-nest-say-teach = Jetzt { $rows ->
        [two] die innere Reihe
       *[more] Reihe { $row }
    } der { -pins }, { $pins } an jedem Rand. Sie steht weiter innen als die äußerste, { -towards-the-middle }; Abstand { $inside }{ $ring ->
        [0] , an denselben Marken des Streifens.
       *[other] : Reihe { $ring } jedes Rings, mit { $holes } Löchern, ein { -pin } in { $step ->
            [1] jedem Loch.
           *[other] einem von je { $step } Löchern.
        }
    } Jeder steht auf einer Linie mit dem äußersten { -pin } seiner Nummer und hat dieselbe Nummer. Näher stehende Reihen lassen den Buchten keinen Platz; stehen die Reihen eines Rings anders, nimm lieber einen Streifen Papier.
rig-nest-show = { $rows ->
        [two] Innere Reihe
       *[more] Reihe { $row }
    }: { $inside } weiter innen
rig-nest-note = { $pins } { -pins } an jedem Rand, auf einer Linie{ $ring ->
        [0] , an denselben Marken
       *[other] , in Reihe { $ring } der Ringe ({ $holes } Löcher)
    }, mit denselben Nummern

# On a card.
card-rows = Hier liegen Buchten ineinander: An jedem Rand stehen die { -pins } in { $rows } Reihen, eine in der anderen, und { -pins } einer Nummer stehen auf einer Linie.
# On a strip. $apart: from a row of pins to the next, or none when no cord is named. $rings: yes when the tube has rings.
strip-rows = Hier liegen Buchten ineinander: An jedem Rand stehen die { -pins } in { $rows } Reihen, { $apart ->
        [none] eine in der anderen. Die Marken gelten für jede Reihe, denn { -pins } einer Nummer stehen auf einer Linie.
       *[other] { $apart } voneinander entfernt, die inneren { -towards-the-middle }. { $rings ->
            [yes] So sind die Reihen gezeichnet; stehen die der Ringe weiter auseinander, richte dich nach den senkrechten Linien.
           *[no] Jede Reihe hat ihre Linie.
        }
    }
# The name of a row on a strip. $rows: two, or more.
strip-row = { $rows ->
        [two] { $row ->
            [1] äußere Reihe
           *[2] innere Reihe
        }
       *[more] Reihe { $row }
    }
