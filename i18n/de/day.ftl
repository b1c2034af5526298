# What interrupts a tie: cord that may not do, a fault far back.

## Will the cord do?

# Example: In diesem Durchgang sind noch 9 Bahnen zu legen: 1,4 Meter Schnur, samt dem, was die Hand
# hält. Bis zu ihrem Ende braucht diese Schnur 3,1 Meter.
# $legs: legs left in this pass; $all: legs left to the end of this cord. $known: yes when lengths
# are known: $in-pass, $in-cord, $in-all. $ends: yes when the cord ends with this pass. $others: yes
# when further cords are to be laid.
cord-left = { $known ->
        [yes] In diesem Durchgang { $legs ->
            [one] ist noch eine Bahn zu legen:
           *[other] sind noch { $legs } Bahnen zu legen:
        } { $in-pass } Schnur, { $ends ->
            [yes] samt dem, was die Hand hält, und dem Ende, das heraushängt.
           *[no] samt dem, was die Hand hält. Bis zu ihrem Ende braucht diese Schnur { $in-cord }.
        }{ $others ->
            [yes] { " " }Alle Schnüre zusammen brauchen noch { $in-all }.
           *[no] { "" }
        } { -all-through }
       *[no] In diesem Durchgang { $legs ->
            [one] ist noch eine Bahn zu legen
           *[other] sind noch { $legs } Bahnen zu legen
        }{ $ends ->
            [yes] , dann endet diese Schnur.
           *[no] ; bis zum Ende dieser Schnur sind es { $all }.
        } Wie viel Schnur das ist, weiß ich nur von einem Knoten, { -planned-so }
    }
cord-left-done = Alles liegt. Es wird keine Schnur mehr gebraucht.

# How far it reaches by what was measured. $reach: whole, leg or none.
cord-reach = { $reach ->
        [whole] Nach deinem Maß reicht die Schnur bis ans Ende, und { $spare } bleiben über.
        [leg] Nach deinem Maß reicht die Schnur bis zum Ende von Bahn { $leg } in Durchgang { $pass }.
       *[none] Nach deinem Maß reicht die Schnur nicht bis zum Ende der nächsten Bahn.
    } Mit noch einmal C misst du neu.
cord-ask = Ob deine reicht? Miss, was du in der Hand hast, und drück noch einmal C.

# Said before a pass that the cord does not reach to the end of.
cord-not-through = Achte auf die Schnur: nach deinem Maß reicht sie { $reach ->
        [leg] bis zum Ende von Bahn { $leg } in Durchgang { $pass } und nicht durch diesen Durchgang.
       *[none] für keine ganze Bahn dieses Durchgangs.
    } Nimm jetzt eine längere, oder leg eine zweite bereit: wo diese endet, wird gefragt, ob eine neue angesteckt wird.

# Asked before a leg that the cord does not reach to the end of.
cord-ends = Nach deinem Maß reicht die Schnur nicht bis zum Ende dieser Bahn. Weiter steckt eine neue an. Zurück: sie reicht noch, und das Maß wird vergessen.
cord-ends-line = Ist die Schnur zu Ende?
cord-reaches = Das Maß ist vergessen.

## What is measured. $length: so far; $step: what one press adds. $small: yes for what is over.

measuring = { $small ->
        [yes] Und was darüber ist?
       *[no] Miss die Schnur von dem { -pin }, an dem sie ist, bis zu ihrem Ende; eine, die noch nicht begonnen ist, ganz.
    } Bisher { $length }. Weiter zählt { $step } dazu.
measuring-so-far = Bisher { $length }.
measuring-phase = Die Schnur messen
measuring-line = { $length } in der Hand
measuring-step = Weiter zählt { $step } dazu; eine getippte Zahl gilt so oft { $step }
# After everything that is counted.
counting-keys = Zurück: das ist es. Oder tipp die Zahl, dann weiter.

# While a number is typed.
counting-keys-typed = Weiter: das ist es. Zurück nimmt die letzte Ziffer weg.

## A fault somewhere in the work

fault-phase = Die Bahn suchen
# $asked: pin, row or nth. $number of $of. $hand: the way that pins are counted.
fault-so-far = { $asked ->
        [pin] { -bottom-pin } { $number }
        [row] Reihe { $number } von { $of }
       *[nth] Kreuzung { $number } von { $of }
    }.
fault-pin = Neben welchem { -bottom-pin } ist der Fehler? Er liegt { -straight-above } dem { -pin } oder { $hand ->
        [left] links
       *[right] rechts
    } von ihm, noch vor dem nächsten. Bisher { -pin } { $number } von { $of }. Weiter: ein { -pin } mehr.
fault-row = In welcher Reihe von Kreuzungen, { -from-the-bottom } gezählt? Bisher Reihe { $number } von { $of }. Weiter: { -one-row-up }.
fault-nth = In dieser Reihe liegen dort { $of } Kreuzungen. Welche ist es, vom { -pin } aus gezählt? Bisher Nummer { $number }. Weiter: eins mehr.
# Which of several cords lies wrong. $over: yes when it goes over, $cords: what it crosses.
fault-which = Dort kreuzen sich mehrere Schnüre. Ist es Bahn { $leg } in Durchgang { $pass }{ $strands ->
        [one] { "" }
       *[other] { " " }von Strang { $strand }
    }, die { $heading ->
        [falling] von { -top-pin } { $from } { -down } zu { -bottom-pin } { $to } geht
       *[rising] von { -bottom-pin } { $from } { -up } zu { -top-pin } { $to } geht
    } und in Reihe { $row } { -from-the-bottom } { $over ->
        [yes] { $cords ->
            [one] über eine Schnur gehört?
           *[other] über { $cords } Schnüre gehört?
        }
       *[no] { $cords ->
            [one] unter einer Schnur durchtauchen soll?
           *[other] unter { $cords } Schnüren durchtauchen soll?
        }
    } Weiter: eine andere.
fault-which-line = Bahn { $leg }, Durchgang { $pass }?
# The leg that laid it. $back: legs that have to come back.
fault-found = Gelegt hat sie Bahn { $leg }{ $pass ->
        [1] { "" }
       *[other] { " " }in Durchgang { $pass }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }von Strang { $strand }
    }, { $heading ->
        [falling] von { -top-pin } { $from } { -down } zu { -bottom-pin } { $to }
       *[rising] von { -bottom-pin } { $from } { -up } zu { -top-pin } { $to }
    }. In Reihe { $row } { -from-the-bottom } { $over ->
        [yes] gehört sie über { $cords ->
            [one] eine Schnur.
           *[other] { $cords } Schnüre.
        }
       *[no] taucht sie unter { $cords ->
            [one] einer Schnur durch.
           *[other] { $cords } Schnüren durch.
        }
    } { $back ->
        [one] Diese eine Bahn muss zurück.
       *[other] { $back } Bahnen müssen zurück, diese als letzte.
    }
fault-found-line = Bahn { $leg }, Durchgang { $pass }: { $over ->
        [yes] über
       *[no] unter durch
    } in Reihe { $row } { -from-the-bottom }
# A standing end that is near. $crossings: what it comes out of. $over: how it is to lie there.
fault-by-the-end = Oder nimm keine zurück. Das Ende, das an { $rim ->
        [top] { -top-pin } { $pin }
       *[bottom] { -bottom-pin } { $pin }
    } hängt, { -is-near }: zieh es { $crossings ->
        [one] aus dieser Kreuzung
       *[other] aus { $crossings } Kreuzungen, dieser als letzter,
    } heraus, { $over ->
        [yes] leg es dort über
       *[no] steck es dort durch
    }, und führ es zurück, wie es lag.
fault-found-keys = Weiter nimmt die erste zurück, zurück nennt eine andere Stelle, falsch lässt alles, wie es ist.
fault-nothing-there = Dort kreuzt noch keine Schnur eine andere. Nenn die Stelle noch einmal.
# A length of nothing was taken for what is in the hand.
measured-nothing = Nichts gemessen, also nichts notiert.

## A new cord in place of one that ran out or frayed, step by step

join-phase = Neue Schnur anstecken
# $step: melts, cut, back, old-end, new-end, rest or finish. $row: the row of crossings in whose
# crossing both ends are hidden.
join-line = { $step ->
        [melts] Schmilzt die Schnur?
        [cut] Schneide eine neue Schnur
        [back] Alte Schnur zurück bis Reihe { $row } { -from-the-bottom }
        [old-end] Ihr Ende bleibt in Reihe { $row }
        [new-end] Leg das neue Ende daneben
        [rest] Leg den Rest von Bahn { $leg }
       *[finish] Die neue Schnur läuft weiter
    }
# $known: yes when $length says what to cut. $legs: legs that the new cord lays, that of the join too.
# $whole: yes when the old cord is on its pin already. $cords: what lies over the two ends, 0 where
# nothing does yet. $ends: ends to be cut at last.
join-told = { $step ->
        [melts] Die Schnur ist zu Ende oder ausgefranst, und eine neue kommt an ihre Stelle. Zuerst: Schmilzt sie, wie Nylon und Polyester? Weiter heißt ja. Zurück heißt nein, wie bei Baumwolle und Hanf.
        [cut] Schneide eine neue Schnur, { $known ->
            [yes] mindestens { $length } lang, für
           *[no] lang genug für
        } { $legs ->
            [one] eine Bahn
           *[other] { $legs } Bahnen
        } und ein Ende auf jeder Seite. { $melts ->
            [yes] Verschweiße beide Enden mit Hitze, damit sie nicht ausfransen.
           *[no] Umwickle beide Enden mit Garn oder Klebeband, oder tauch sie in Leim, damit sie nicht ausfransen.
        }
        [back] Bahn { $leg }{ $pass ->
            [1] { "" }
           *[other] { " " }in Durchgang { $pass }
        }{ $strands ->
            [one] { "" }
           *[other] { " " }von Strang { $strand }
        }: { $whole ->
            [yes] { $heading ->
                [falling] { -lift-off } die alte Schnur von { -bottom-pin } { $to } ab und nimm sie
               *[rising] { -lift-off } die alte Schnur von { -top-pin } { $to } ab und nimm sie
            }
           *[no] nimm die alte Schnur
        } zurück bis Reihe { $row } { -from-the-bottom }, wo { $cords ->
            [0] eine spätere Bahn über sie kommt.
            [one] sie unter einer Schnur durchtaucht.
           *[other] sie unter { $cords } Schnüren durchtaucht.
        } Das ist mitten in der Bahn; an einer Bucht sähe man das Ende, und es käme los.
        [old-end] Lass das Ende der alten Schnur { $cords ->
            [0] dort, wo die spätere Bahn darüber kommt,
           *[other] in dieser Kreuzung verdeckt,
        } { -on-the-tube-side }, und eine Handbreit länger. Was länger oder ausgefranst ist, schneide ab.
        [new-end] Leg das Ende der neuen Schnur von der anderen Seite daneben, { $cords ->
            [0] über dieselbe Stelle hinaus,
           *[other] durch dieselbe Kreuzung,
        } auch eine Handbreit länger. Dort liegen beide nebeneinander und halten einander. Verschmilz oder verklebe sie nicht: das wird hart, man sieht es, und es bricht.
        [rest] Leg mit der neuen Schnur den Rest von Bahn { $leg }, wie die alte lag, und wende um { $heading ->
            [falling] { -bottom-pin } { $to }.
           *[rising] { -top-pin } { $to }.
        }
       *[finish] Von hier an läuft die neue Schnur. Beide Enden bleiben lang, bis der Knoten durchgeholt ist: hol dann von beiden Seiten auf sie zu, nie durch sie hindurch. Am Schluss sind { $ends } Enden abzuschneiden{ $melts ->
            [yes] { " " }und zu verschweißen.
           *[no] , und ein Tropfen Leim hält jedes.
        } Weiter geht mit dem Knoten fort.
    }
join-where = Du steckst gerade eine neue Schnur an: Schritt { $step } von { $steps }.
join-noted = Die neue Schnur ist vermerkt.
join-nothing-laid = Von dieser Schnur liegt noch keine Bahn: fang mit einer anderen neu an.
join-off-the-pins = Der Knoten kommt von den { -pins-dat }: jetzt wird keine Schnur mehr angesteckt.
