# A look at the work after a round or a pass: what should be seen, so that a fault is found
# within one round. Depths and arguments as in steps.ftl; besides them:
#   $round     rounds laid in this pass, $rounds of them all; a round is a rising and a falling leg
#   $ends      yes when the pass of this strand is complete
#   $whole     yes when all strands have come as far
#   $cords     cords round each pin that this pass has reached
#   $at        number of the bottom pin where the cord stands now
#   $counted   yes when $crossings says how many crossings lie on the tube by now
#   $rows      crossings along every leg from rim to rim in the whole knot
#   $first     yes at the first look of all
#   $from, $to pins of the last leg, which falls; $order: its overs and unders, one after the other

# Example: Halt an und sieh nach. Runde 3 von 6 liegt, und die Schnur steht an Fuß-Stift 4. Auf
# dem Rohr liegen 3 Kreuzungen. Die letzte Bahn, von Kopf-Stift 1 hinab, geht einmal drüber und taucht
# einmal drunter durch. Weiter, wenn es so aussieht, sonst Falsch.
# Example: Der erste Durchgang liegt. Halt an und sieh nach. An jedem Stift liegt eine Schnur,
# und längs jeder Bahn liegen von Rand zu Rand 4 Kreuzungen. Weiter, wenn es so
# aussieht, sonst Falsch.
check-say = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] Der erste Durchgang liegt.
                [2] Der zweite Durchgang liegt.
                [3] Der dritte Durchgang liegt.
                [4] Der vierte Durchgang liegt.
                [5] Der fünfte Durchgang liegt.
                [6] Der sechste Durchgang liegt.
                [7] Der siebte Durchgang liegt.
                [8] Der achte Durchgang liegt.
               *[9] Der neunte Durchgang liegt.
            }
           *[other] { $pass ->
                [1] Der erste Durchgang von Strang { $strand } liegt.
                [2] Der zweite Durchgang von Strang { $strand } liegt.
                [3] Der dritte Durchgang von Strang { $strand } liegt.
                [4] Der vierte Durchgang von Strang { $strand } liegt.
                [5] Der fünfte Durchgang von Strang { $strand } liegt.
                [6] Der sechste Durchgang von Strang { $strand } liegt.
                [7] Der siebte Durchgang von Strang { $strand } liegt.
                [8] Der achte Durchgang von Strang { $strand } liegt.
               *[9] Der neunte Durchgang von Strang { $strand } liegt.
            }
        } Halt an und sieh nach. { $whole ->
            [yes] An jedem { -pin }
           *[no] An jedem { -pin } dieses Strangs
        } { $cords ->
            [one] liegt eine Schnur
           *[other] liegen { $cords } Schnüre nebeneinander
        }, zwei hängende Enden als eine gezählt{ $whole ->
            [yes] , und längs jeder Bahn { $rows ->
                [one] liegt von Rand zu Rand eine Kreuzung{ $cords ->
                    [one] .
                   *[other] , von { $cords } Schnüren mit { $cords } anderen.
                }
               *[other] liegen von Rand zu Rand { $rows } Kreuzungen{ $cords ->
                    [one] .
                   *[other] , jede von { $cords } Schnüren mit { $cords } anderen.
                }
            }
           *[no] .
        }
       *[no] Halt an und sieh nach. { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } { $pass ->
            [1] Runde
            [2] Zweiter Durchgang, Runde
            [3] Dritter Durchgang, Runde
            [4] Vierter Durchgang, Runde
            [5] Fünfter Durchgang, Runde
            [6] Sechster Durchgang, Runde
            [7] Siebter Durchgang, Runde
            [8] Achter Durchgang, Runde
           *[9] Neunter Durchgang, Runde
        } { $round } von { $rounds } liegt, und die Schnur ist an { -bottom-pin } { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Noch kreuzt sich nichts.
                [one] { -On-the-tube } liegt eine Kreuzung.
               *[other] { -On-the-tube } liegen { $crossings } Kreuzungen.
            }
           *[no] { $cords ->
                [one] An jedem { -pin }, um den sie schon läuft, liegt eine Schnur.
               *[other] An jedem { -pin }, um den sie schon läuft, liegen { $cords } Schnüre nebeneinander.
            }
        } Sieh dir die letzte Bahn an, von { -top-pin } { $from } { -down } zu { -bottom-pin } { $to }. { $order }
    } Sieht es so aus, drück Weiter, sonst Falsch.

# Example: Nachsehen. Runde 3 von 6, an Fuß-Stift 4, 3 Kreuzungen.
check-say-brief = Nachsehen. { $strands ->
        [one] { "" }
       *[other] Strang { $strand }.
    } { $ends ->
        [yes] { $pass ->
            [1] Erster Durchgang liegt,
            [2] Zweiter Durchgang liegt,
            [3] Dritter Durchgang liegt,
            [4] Vierter Durchgang liegt,
            [5] Fünfter Durchgang liegt,
            [6] Sechster Durchgang liegt,
            [7] Siebter Durchgang liegt,
            [8] Achter Durchgang liegt,
           *[9] Neunter Durchgang liegt,
        } { $cords ->
            [one] eine Schnur je { -pin }.
           *[other] { $cords } Schnüre je { -pin }.
        }
       *[no] Runde { $round } von { $rounds }, an { -bottom-pin } { $at }. Letzte Bahn. { $order }
    }

check-say-teach = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] Der erste Durchgang liegt: Die Schnur ist einmal durch das ganze Muster gelaufen.
                [2] Der zweite Durchgang liegt.
                [3] Der dritte Durchgang liegt.
                [4] Der vierte Durchgang liegt.
                [5] Der fünfte Durchgang liegt.
                [6] Der sechste Durchgang liegt.
                [7] Der siebte Durchgang liegt.
                [8] Der achte Durchgang liegt.
               *[9] Der neunte Durchgang liegt.
            }
           *[other] { $pass ->
                [1] Der erste Durchgang von Strang { $strand } liegt: Seine Schnur ist einmal ihren ganzen Weg gelaufen.
                [2] Der zweite Durchgang von Strang { $strand } liegt.
                [3] Der dritte Durchgang von Strang { $strand } liegt.
                [4] Der vierte Durchgang von Strang { $strand } liegt.
                [5] Der fünfte Durchgang von Strang { $strand } liegt.
                [6] Der sechste Durchgang von Strang { $strand } liegt.
                [7] Der siebte Durchgang von Strang { $strand } liegt.
                [8] Der achte Durchgang von Strang { $strand } liegt.
               *[9] Der neunte Durchgang von Strang { $strand } liegt.
            }
        } { -turn-it-round } und sieh dir alles an, bevor es weitergeht: Ein Fehler ist jetzt leicht behoben und später schwer. { $whole ->
            [yes] An jedem { -pin }
           *[no] An jedem { -pin } dieses Strangs
        } { $cords ->
            [one] liegt eine Schnur
           *[other] liegen { $cords } Schnüre nebeneinander, ohne einander je zu kreuzen
        }, zwei hängende Enden als eine gezählt{ $whole ->
            [yes] . Längs jeder Bahn { $rows ->
                [one] liegt von Rand zu Rand eine Kreuzung{ $cords ->
                    [one] .
                   *[other] , von { $cords } Schnüren mit { $cords } anderen.
                }
               *[other] liegen von Rand zu Rand { $rows } Kreuzungen{ $cords ->
                    [one] .
                   *[other] , jede von { $cords } Schnüren mit { $cords } anderen.
                }
            }
           *[no] .
        }
       *[no] { $first ->
            [yes] Halt an und sieh nach. Ein Fehler ist in der Runde, in der er passiert, am leichtesten zu finden; eine Runde ist eine Bahn { -up } und eine Bahn { -down }.
           *[no] Halt an und sieh nach.
        } { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } { $pass ->
            [1] Runde
            [2] Zweiter Durchgang, Runde
            [3] Dritter Durchgang, Runde
            [4] Vierter Durchgang, Runde
            [5] Fünfter Durchgang, Runde
            [6] Sechster Durchgang, Runde
            [7] Siebter Durchgang, Runde
            [8] Achter Durchgang, Runde
           *[9] Neunter Durchgang, Runde
        } { $round } von { $rounds } liegt, und die Schnur ist an { -bottom-pin } { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Noch kreuzt sich nichts.
                [one] { -On-the-tube } liegt eine Kreuzung.
               *[other] { -On-the-tube } liegen { $crossings } Kreuzungen.
            }
           *[no] { $cords ->
                [one] An jedem { -pin }, um den sie schon läuft, liegt eine Schnur.
               *[other] An jedem { -pin }, um den sie schon läuft, liegen { $cords } Schnüre nebeneinander.
            }
        } Sieh dir die letzte Bahn an, von { -top-pin } { $from } { -down } zu { -bottom-pin } { $to }. { $order }
    } Sieht es so aus, drück Weiter, sonst Falsch.

# Example: Nachsehen: Runde 3 von 6
check-show = { $ends ->
        [yes] { $whole ->
            [yes] { $cords ->
                [one] Nachsehen: 1 Schnur an jedem { -pin }
               *[other] Nachsehen: { $cords } Schnüre an jedem { -pin }
            }
           *[no] { $cords ->
                [one] Nachsehen: 1 Schnur an ihren { -pins-dat }
               *[other] Nachsehen: { $cords } Schnüre an ihren { -pins-dat }
            }
        }
       *[no] Nachsehen: Runde { $round } von { $rounds }
    }

# Example: 3 Kreuzungen auf dem Rohr. Die Schnur ist an Fuß 4.
check-show-note = { $ends ->
        [yes] { $whole ->
            [yes] { $rows ->
                [one] Längs jeder Bahn 1 Kreuzung, von Rand zu Rand. Wo zwei Enden hängen, zählen sie als 1 Schnur
               *[other] Längs jeder Bahn { $rows } Kreuzungen, von Rand zu Rand. Wo zwei Enden hängen, zählen sie als 1 Schnur
            }
           *[no] Strang { $strand } von { $strands }. Wo zwei Enden hängen, zählen sie als 1 Schnur
        }
       *[no] { $counted ->
            [yes] { $crossings ->
                [0] Noch kreuzt sich nichts.
                [one] 1 Kreuzung { -on-the-tube }.
               *[other] { $crossings } Kreuzungen { -on-the-tube } insgesamt.
            }
           *[no] { $cords ->
                [one] Bisher 1 Schnur an jedem { -pin }.
               *[other] Bisher { $cords } Schnüre an jedem { -pin }.
            }
        } Die Schnur ist an { -bottom } { $at }.
    }

# Example: Letzte Bahn, von Kopf 1: geht einmal drüber, einmal drunter
# $shown: yes where its crossings stand above in large type, and $order is nothing.
check-show-note-last = Letzte Bahn, von { -top } { $from }{ $shown ->
        [yes] { "" }
       *[no] { "" }: { $order }
    }

# One crossing of the last leg, as it lies there; those of the leg are said one after the other, in $order.
# Example: Sie geht über eine Schnur, taucht unter 2 durch, geht über eine.
# $place: only, first, next or last. $over: yes or no. $cords: cords lying there.
check-say-crossing = { $place ->
        [only] { $over ->
            [yes] Sie geht über { $cords ->
                [one] eine Schnur
               *[other] { $cords } Schnüre
            }
           *[no] Sie taucht unter { $cords ->
                [one] einer Schnur
               *[other] { $cords } Schnüren
            } durch
        }.
        [first] { $over ->
            [yes] Sie geht über { $cords ->
                [one] eine Schnur
               *[other] { $cords } Schnüre
            }
           *[no] Sie taucht unter { $cords ->
                [one] einer Schnur
               *[other] { $cords } Schnüren
            } durch
        },
        [last] { $over ->
            [yes] geht über { $cords ->
                [one] eine
               *[other] { $cords }
            }
           *[no] taucht unter { $cords ->
                [one] einer
               *[other] { $cords }
            } durch
        }.
       *[next] { $over ->
            [yes] geht über { $cords ->
                [one] eine
               *[other] { $cords }
            }
           *[no] taucht unter { $cords ->
                [one] einer
               *[other] { $cords }
            } durch
        },
    }

# In place of the order of overs and unders, for a leg of so many crossings that nobody would
# follow it: $crossings there are, $overs and $unders of them.
check-order-say = An { $overs } ihrer { $crossings } Kreuzungen geht sie drüber, an { $unders } drunter.
check-order-show = { $crossings } Kreuzungen, bei { $overs } drüber, bei { $unders } drunter
