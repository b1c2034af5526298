# Where the tyer is, and what to do when something is wrong. Arguments as in steps.ftl.

## Where am I

# Said when a tie is taken up again, before where it stands and its step.
where-taking-up-say = Wieder aufgenommen: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }.

# Example: Erster Durchgang: 7 von 12 Bahnen liegen. Die Schnur ist an Kopf-Stift 6 und geht als Nächstes
# zu Fuß-Stift 3. Insgesamt sind noch 17 Bahnen übrig. Noch etwa 11 Minuten in deinem Tempo.
# $phase: laying, lift, fair, finish or done. $at, $next: pins, on the rims $at-rim and $next-rim (top,
# bottom; none when there is no next). $laid: legs laid in this pass of the strand. $left: legs
# left in the whole tie. $crossed: crossings made on a leg that is laid in part. $round, $pass, $strand
# and $leg: where fairing is. $minutes: time left; $timed: yes when it is known.
where-say = { $phase ->
        [lift] Alles liegt; { -to-be-lifted }
        [fair] { -laid-and-lifted } der Knoten wird durchgeholt, Mal { $round }{ $whole ->
            [yes] .
           *[no] { $passes ->
                [one] { "" }
               *[other] , Durchgang { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , Strang { $strand }
            }, Bahn { $leg } von { $legs }.
        }
        [done] Der Knoten ist fertig, auch die Enden. Es ist nichts mehr zu tun.
        [finish] Der Knoten ist gelegt und durchgeholt; jetzt fehlen nur noch die Enden.
       *[laying] { $pass ->
            [1] Erster Durchgang
            [2] Zweiter Durchgang
            [3] Dritter Durchgang
            [4] Vierter Durchgang
            [5] Fünfter Durchgang
            [6] Sechster Durchgang
            [7] Siebter Durchgang
            [8] Achter Durchgang
           *[9] Neunter Durchgang
        }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }: { $laid ->
            [0] Von { $legs } Bahnen liegt noch keine.
            [one] Eine von { $legs } Bahnen liegt.
           *[other] { $laid } von { $legs } Bahnen liegen.
        } { $crossed ->
            [0] Die Schnur ist an { $at-rim ->
                [top] { -top-pin } { $at }
               *[bottom] { -bottom-pin } { $at }
            }{ $next-rim ->
                [top] { " " }und geht als Nächstes zu { -top-pin } { $next }.
                [bottom] { " " }und geht als Nächstes zu { -bottom-pin } { $next }.
               *[none] .
            }
           *[other] Die Schnur ist auf dem Weg von { $at-rim ->
                [top] { -top-pin } { $at } { -down } zu { -bottom-pin } { $next }
               *[bottom] { -bottom-pin } { $at } { -up } zu { -top-pin } { $next }
            } und hat { $crossed ->
                [one] einmal gekreuzt.
                [2] zweimal gekreuzt.
               *[other] { $crossed }-mal gekreuzt.
            }
        } { $left ->
            [0] Alle Bahnen liegen.
            [one] Insgesamt ist noch eine Bahn übrig.
           *[other] Insgesamt sind noch { $left } Bahnen übrig.
        } { $timed ->
            [yes] { $minutes ->
                [0] Noch weniger als eine Minute in deinem Tempo.
                [one] Noch etwa eine Minute in deinem Tempo.
               *[other] Noch etwa { $minutes } Minuten in deinem Tempo.
            }
           *[no] { "" }
        }
    }

## Something is wrong

# $can-take-back: yes when there is a leg to take back. $leg: which.
wrong-say = Etwas stimmt nicht. { $can-take-back ->
        [yes] Mit Weiter wird Bahn { $leg }{ $strands ->
            [one] { "" }
           *[other] { " " }von Strang { $strand }
        }{ $pass ->
            [1] { "" }
           *[other] { " " }in Durchgang { $pass }
        } zurückgenommen. Mit Zurück findest du deine Stelle. H, wenn der Fehler weiter zurück liegt. Drück noch einmal Falsch, und alles bleibt, wie es ist.
       *[no] Mit Zurück findest du deine Stelle. Drück noch einmal Falsch, und alles bleibt, wie es ist.
    }
wrong-show = Etwas stimmt nicht
wrong-show-note = { $can-take-back ->
        [yes] Weiter: Bahn { $leg } zurücknehmen
       *[no] Es gibt nichts zurückzunehmen
    }
wrong-show-note-find = Zurück: Stelle suchen
wrong-show-note-elsewhere = H: der Fehler ist anderswo
wrong-show-note-leave = W: lassen, wie es ist

# Taking a leg out again; the sentences of a step follow one another: this one, one for each
# crossing in the order they are undone, and the last.
# Example: Bahn 7 wird zurückgenommen. Bring die Schnur zurück an Kopf-Stift 6. Heb die Schnur von
# Kopf-Stift 6 ab.
# $whole: no when the leg was laid only in part and is on no pin yet. $tail: number of the bottom
# pin whose tail comes off first, for a cord that was just begun, else 0. $first-rim: top or bottom
# when the cord in hand is to be brought back to pin $first first, else none.
take-back-say = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }, Bahn { $leg }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }von Strang { $strand }
    }{ $named ->
        [yes] , „{ $cord }“, wird zurückgenommen.
       *[no] { " " }wird zurückgenommen.
    } { $tail ->
        [0] { "" }
       *[other] Nimm zuerst das stehende Ende von { -bottom-pin } { $tail } ab.
    } { $first-rim ->
        [top] Bring die Schnur zurück an { -top-pin } { $first }.
        [bottom] Bring die Schnur zurück an { -bottom-pin } { $first }.
       *[none] { "" }
    } { $whole ->
        [yes] { $heading ->
            [falling] { -Lift-off } die Schnur von { -bottom-pin } { $to } ab.
           *[rising] { -Lift-off } die Schnur von { -top-pin } { $to } ab.
        }
       *[no] { "" }
    }

# Example: Tauch zurück unter einer Schnur durch, dann geh zurück über 2 Schnüre.
take-back-say-crossing = { $place ->
        [only] { $over ->
            [yes] Geh zurück über
           *[no] Tauch zurück unter
        }
        [first] { $over ->
            [yes] Geh zurück über
           *[no] Tauch zurück unter
        }
       *[next] { $over ->
            [yes] dann geh zurück über
           *[no] dann tauch zurück unter
        }
    } { $over ->
        [yes] { $cords ->
            [one] eine Schnur
           *[other] { $cords } Schnüre
        }
       *[no] { $cords ->
            [one] einer Schnur durch
           *[other] { $cords } Schnüren durch
        }
    }{ $place ->
        [only] .
        [last] .
       *[next] ,
    }

take-back-say-clear = Sie kreuzt nichts.

# Example: Deine Hand ist an Fuß-Stift 4. Mit Weiter nimmst du noch eine Bahn zurück, mit Zurück legst
# du diese wieder.
take-back-say-end = Deine Hand ist { $heading ->
        [falling] an { -top-pin } { $from }.
       *[rising] an { -bottom-pin } { $from }.
    } Mit Weiter nimmst du noch eine Bahn zurück, mit Zurück legst du diese wieder.

take-back-show = { $heading ->
        [falling] { -Back-up } zu { -top } { $from }
       *[rising] { -Back-down } zu { -bottom } { $from }
    }
take-back-show-phase = { $pass ->
        [1] Bahn { $leg } zurücknehmen
       *[other] Durchgang { $pass }, Bahn { $leg } zurücknehmen
    }
take-back-show-crossing = { $over ->
        [yes] zurück ÜBER { $cords }
       *[no] unter { $cords } heraus
    }
take-back-show-note = { $whole ->
        [yes] { $heading ->
            [falling] Zuerst von { -bottom } { $to } ab
           *[rising] Zuerst von { -top } { $to } ab
        }
       *[no] Sie ist noch an keinem { -pin }
    }
take-back-show-note-keys = Weiter: noch eine zurücknehmen. Zurück: diese Bahn wieder legen.
take-back-nothing-say = Es gibt nichts mehr zurückzunehmen: { -tube-is-empty }

## Finding a lost place: questions answered with next for yes and back for no

# Example: Ist die Schnur in deiner Hand an Kopf-Stift 6? Weiter heißt ja, Zurück heißt nein.
question-say = { $question ->
        [pin] { $rim ->
            [top] Ist die Schnur in deiner Hand an { -top-pin } { $pin }?
           *[bottom] Ist die Schnur in deiner Hand an { -bottom-pin } { $pin }?
        }
        [cords] { $rim ->
            [top] Zähl die Schnüre um { -top-pin } { $pin }, auch die in deiner Hand.
           *[bottom] Zähl die Schnüre, die bis zu { -bottom-pin } { $pin } gekommen sind, auch die in deiner Hand.
        } { $count ->
            [one] Ist es nur eine?
           *[other] Sind es { $count }?
        }
        [tail] Hängt an { -bottom-pin } { $pin } von der Schnur nur das stehende Ende{ $count ->
            [0] { "" }
            [one] , neben einer anderen Schnur,
           *[other] , neben { $count } anderen Schnüren,
        } und läuft sie noch um keinen { -pin }?
        [home] Sieh nach einem anderen Strang: Ist seine Schnur { $count ->
            [one] einmal
            [2] zweimal
           *[other] { $count }-mal
        } an { -bottom-pin } { $pin } zurückgekommen?
       *[crossed] Hat die Schnur { $rim ->
            [top] seit { -top-pin } { $pin }
           *[bottom] seit { -bottom-pin } { $pin }
        } { $count ->
            [0] noch nichts gekreuzt?
            [one] schon etwas gekreuzt?
           *[other] { $count }-mal oder öfter gekreuzt?
        }
    } Weiter heißt ja, Zurück heißt nein.

question-show = { $question ->
        [pin] { $rim ->
            [top] Ist sie an { -top } { $pin }?
           *[bottom] Ist sie an { -bottom } { $pin }?
        }
        [cords] { $count ->
            [one] Nur 1 Schnur dort?
           *[other] { $count } Schnüre dort?
        }
        [tail] { $count ->
            [0] Nur ihr stehendes Ende dort?
            [one] Nur ihr stehendes Ende dort, neben 1 Schnur?
           *[other] Nur ihr stehendes Ende dort, neben { $count } Schnüren?
        }
        [home] { $count ->
            [one] Anderer Strang: einmal zurück am Anfang?
            [2] Anderer Strang: zweimal zurück am Anfang?
           *[other] Anderer Strang: { $count }-mal zurück am Anfang?
        }
       *[crossed] { $count ->
            [0] Noch nichts gekreuzt?
            [one] Schon etwas gekreuzt?
           *[other] { $count }-mal oder öfter gekreuzt?
        }
    }
question-show-note = { $question ->
        [pin] Der { -pin }, um den die Schnur zuletzt gelegt ist
        [cords] { $rim ->
            [top] Um { -top } { $pin }, auch die in der Hand
           *[bottom] Bis zu { -bottom } { $pin } gekommen, auch die in der Hand
        }
        [tail] An { -bottom } { $pin }
        [home] An { -bottom } { $pin }
       *[crossed] { $rim ->
            [top] Seit { -top } { $pin }
           *[bottom] Seit { -bottom } { $pin }
        }
    }
question-show-phase = Die Stelle finden
question-show-note-keys = Weiter: ja. Zurück: nein.

# Said before the step when the place is found.
found-say = Dann ist es diese Stelle.

# Said instead when the pins are being taken out or are out.
wrong-after = Der Knoten kommt von seinen { -pins-dat }, darum lässt sich keine Bahn mehr zurücknehmen. Zurück geht einen Schritt zurück; H sagt, wo du bist.
