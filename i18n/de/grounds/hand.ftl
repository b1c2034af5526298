# Um die Hand geknüpft: Die vier Finger der haltenden Hand sind das Rohr, die Handfläche zum Knüpfer. Die Seite am
# Handgelenk ist der Fuß-Rand, die Seite der Fingerspitzen der Kopf-Rand; jede Bucht hat ihren Finger. „Bogen“ steht
# für die Bucht, denn „Bucht“ hieße „die“ und brächte jeden Satz durcheinander.

-At-the-bottom = Am Handgelenk
-at-the-bottom = am Handgelenk
-At-the-top = An den Spitzen
-at-the-top = an den Spitzen
-Back-down = Zurück
-Back-up = Zurück
-bottom = Handgelenk
-bottom-bight = Handgelenk-Bucht
-bottom-pin = Handgelenk-Bogen
-bottom-pins = Handgelenk-Bögen
-bottom-side = Handgelenk-Seite
-bottom-side-shown = Handgelenk-Seite
-card-left = Arbeite nach links um die Hand; so sind auch die Bögen nummeriert.
-card-right = Arbeite nach rechts um die Hand; so sind auch die Bögen nummeriert.
-coming-off = Beim Abstreifen von der Hand
-down = zum Handgelenk hin
-down-short = zum Handgelenk
-exactly-above = auf gleicher Höhe mit
-from-the-bottom = vom Handgelenk her
-laid-and-lifted = Alles liegt, und der Knoten ist von der Hand;
-Lift-off = Nimm
-lift-off = nimm
-Lifting = Abstreifen
-On-the-tube = Auf der Hand
-on-the-tube = auf der Hand
-on-the-tube-side = auf der Seite der Finger
-once-they-are-gone = Ist er von der Hand,
-one-row-up = eine Reihe weiter zu den Spitzen
-pin = Bogen
-pins = Bögen
-pins-dat = Bögen
-round-it = um die Hand
-round-the-tube = um die Hand herum
-straight-above = auf gleicher Höhe mit
-to-be-lifted = jetzt kommt der Knoten von der Hand.
-top = Spitzen
-top-bight = Spitzen-Bucht
-top-pin = Spitzen-Bogen
-top-pins = Spitzen-Bögen
-top-pins-nom = Spitzen-Bögen
-top-side = Spitzen-Seite
-top-side-shown = Spitzen-Seite
-tube-is-empty = Da liegt keine Bahn mehr.
-turn-it-round = Dreh die Hand einmal herum
-up = zu den Spitzen hin
-up-short = zu den Spitzen
-up-towards = auf
-with-the-pick = mit einer Fingerspitze

## Beginning

begin-say = { $named ->
        [yes] Nimm die Schnur „{ $cord }“.
       *[no] { "" }
    } { $hand ->
        [left] Halt die rechte Hand hoch
       *[right] Halt die linke Hand hoch
    }, die Handfläche zu dir, die Finger dicht beisammen. Leg die Schnur an die Wurzeln der Finger, { $place }, lass ein Ende hängen, { $tail } lang, und halt es mit dem Daumen fest. { $hand ->
        [left] Die linke Hand knüpft.
       *[right] Die rechte Hand knüpft.
    } Die Schnur läuft vorn quer zum kleinen Finger, hinten zurück zum Zeigefinger und so immer herum. Lass sie so locker, dass noch ein Finger darunterpasst. Die Handgelenk-Bögen liegen an den Wurzeln der Finger, die Spitzen-Bögen an ihren mittleren Gliedern; beide zählen vom hängenden Ende an, so herum, wie die Schnur läuft. { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }
begin-say-brief = { $named ->
        [yes] Schnur „{ $cord }“.
       *[no] { "" }
    } { $hand ->
        [left] Rechte Hand hoch
       *[right] Linke Hand hoch
    }, Handfläche zu dir. Ende von { $tail } unter den Daumen, { $place }. Vorn hinüber, hinten zurück. Locker lassen.
begin-say-teach = { $named ->
        [yes] Nimm die Schnur „{ $cord }“.
       *[no] { "" }
    } { $hand ->
        [left] Halt die rechte Hand hoch
       *[right] Halt die linke Hand hoch
    }, die Handfläche zu dir, die Finger dicht beisammen. Leg die Schnur an die Wurzeln der Finger, { $place }, lass ein Ende hängen, { $tail } lang, und halt es mit dem Daumen fest. { $hand ->
        [left] Die linke Hand knüpft.
       *[right] Die rechte Hand knüpft.
    } Die Schnur läuft vorn quer zum kleinen Finger, hinten zurück zum Zeigefinger und so immer herum. Lass sie so locker, dass noch ein Finger darunterpasst. Die Handgelenk-Bögen liegen an den Wurzeln der Finger, die Spitzen-Bögen an ihren mittleren Gliedern; beide zählen vom hängenden Ende an, so herum, wie die Schnur läuft. Vorn ist die Seite der Handfläche. Das hängende Ende bleibt zurück; mit dem anderen wird geknüpft. { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }
begin-show = Ende von { $tail } unter den Daumen
begin-show-note = { $named ->
        [yes] Schnur „{ $cord }“.
       *[no] { "" }
    } { $hand ->
        [left] Rechte Hand hoch, Handfläche zu dir.
       *[right] Linke Hand hoch, Handfläche zu dir.
    } An den Wurzeln der Finger, { $place }. Locker lassen. { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

## A leg

lay-say-way = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] Von Spitzen-Bogen { $from }, { $from-place }, zum Handgelenk hin
       *[rising] Von Handgelenk-Bogen { $from }, { $from-place }, zu den Spitzen hin
    }{ $lane ->
        [bottom] , auf der Handgelenk-Seite der ersten Schnur
        [top] , auf der Spitzen-Seite der ersten Schnur
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , zu Handgelenk-Bogen { $to }, { $to-place }.
       *[rising] , zu Spitzen-Bogen { $to }, { $to-place }.
    } { $view }
lay-say-way-brief = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] Spitzen-Bogen { $from }, { $from-place }
       *[rising] Handgelenk-Bogen { $from }, { $from-place }
    }, { $way }{ $heading ->
        [falling] , zu Handgelenk-Bogen { $to }, { $to-place }.
       *[rising] , zu Spitzen-Bogen { $to }, { $to-place }.
    }
lay-say-way-teach = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $first ->
        [yes] Eine Bahn ist die Schnur von einem Bogen auf der einen Seite zu einem auf der anderen.
       *[no] { "" }
    } { $heading ->
        [falling] Von Spitzen-Bogen { $from }, { $from-place }, zum Handgelenk hin
       *[rising] Von Handgelenk-Bogen { $from }, { $from-place }, zu den Spitzen hin
    }{ $lane ->
        [bottom] , auf der Handgelenk-Seite der ersten Schnur
        [top] , auf der Spitzen-Seite der ersten Schnur
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , zu Handgelenk-Bogen { $to }, { $to-place }.
       *[rising] , zu Spitzen-Bogen { $to }, { $to-place }.
    } { $view }
lay-say-way-on = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }, Bahn { $leg }
    }, Teil { $part } von { $parts }, { $heading ->
        [falling] von Spitzen-Bogen { $from } zum Handgelenk hin
       *[rising] von Handgelenk-Bogen { $from } zu den Spitzen hin
    }{ $lane ->
        [bottom] , auf der Handgelenk-Seite der ersten Schnur
        [top] , auf der Spitzen-Seite der ersten Schnur
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , zu Handgelenk-Bogen { $to }, { $to-place }.
       *[rising] , zu Spitzen-Bogen { $to }, { $to-place }.
    } Du bist { $share ->
        [little] noch am Anfang
        [quarter] auf einem Viertel des Wegs
        [third] auf einem Drittel des Wegs
        [half] auf halbem Weg
        [two-thirds] auf zwei Dritteln des Wegs
        [three-quarters] auf drei Vierteln des Wegs
       *[most] fast da
    }.
lay-say-way-on-brief = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] Spitzen-Bogen { $from }, { $from-place }
       *[rising] Handgelenk-Bogen { $from }, { $from-place }
    }, { $way }{ $heading ->
        [falling] , zu Handgelenk-Bogen { $to }, { $to-place }.
       *[rising] , zu Spitzen-Bogen { $to }, { $to-place }.
    }
lay-say-way-on-teach = { $pass ->
        [1] Bahn { $leg }
       *[other] Durchgang { $pass }, Bahn { $leg }
    }, Teil { $part } von { $parts }, { $heading ->
        [falling] von Spitzen-Bogen { $from } zum Handgelenk hin
       *[rising] von Handgelenk-Bogen { $from } zu den Spitzen hin
    }{ $lane ->
        [bottom] , auf der Handgelenk-Seite der ersten Schnur
        [top] , auf der Spitzen-Seite der ersten Schnur
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , zu Handgelenk-Bogen { $to }, { $to-place }.
       *[rising] , zu Spitzen-Bogen { $to }, { $to-place }.
    } Du bist { $share ->
        [little] noch am Anfang
        [quarter] auf einem Viertel des Wegs
        [third] auf einem Drittel des Wegs
        [half] auf halbem Weg
        [two-thirds] auf zwei Dritteln des Wegs
        [three-quarters] auf drei Vierteln des Wegs
       *[most] fast da
    }.
lay-say-landing = { $landing ->
        [on-the-way] Halte deine Schnur dort fest.
        [inside] Innen in der Bucht.
        [outside] Außen um die Bucht.
        [home-and-on] Zurück am Anfang: Geh über das hängende Ende und weiter.
        [home-to-wait] Zurück am Anfang: Halte die Schnur dort fest.
        [home-to-end] Zurück am Anfang: Lass das Ende hängen.
       *[round] { $heading ->
            [falling] Dann wieder zu den Spitzen hin.
           *[rising] Dann wieder zum Handgelenk hin.
        }
    }
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Innen.
        [outside] Außen.
        [home-and-on] Am Anfang: über das Ende weiter.
        [home-to-wait] Am Anfang: festhalten.
        [home-to-end] Am Anfang: hier aufhören.
       *[round] { "" }
    }
lay-say-landing-teach = { $landing ->
        [on-the-way] Halte deine Schnur dort fest.
        [inside] Innen in der Bucht.
        [outside] Außen um die Bucht.
        [home-and-on] Zurück am Anfang: Geh über das hängende Ende und weiter.
        [home-to-wait] Zurück am Anfang: Halte die Schnur dort fest.
        [home-to-end] Zurück am Anfang: Lass das Ende hängen.
       *[round] { $heading ->
            [falling] Dann wieder zu den Spitzen hin.
           *[rising] Dann wieder zum Handgelenk hin.
        }
    }
lay-show = { $heading ->
        [falling] Spitzen { $from }, { $from-place }, zu Handgelenk { $to }, { $to-place }
       *[rising] Handgelenk { $from }, { $from-place }, zu Spitzen { $to }, { $to-place }
    }
lay-print = { $heading ->
        [falling] Spitzen { $from }, { $from-place }, { $way }, zu Handgelenk { $to }, { $to-place }
       *[rising] Handgelenk { $from }, { $from-place }, { $way }, zu Spitzen { $to }, { $to-place }
    }
lay-show-note-on = { $share ->
        [little] Ab einem kleinen Stück des Weges
        [quarter] Ab etwa einem Viertel des Weges
        [third] Ab etwa einem Drittel des Weges
        [half] Ab etwa der Hälfte des Weges
        [two-thirds] Ab etwa zwei Dritteln des Weges
        [three-quarters] Ab etwa drei Vierteln des Weges
       *[most] Ab dem größten Teil des Weges
    }
lay-show-note = { $landing ->
        [on-the-way] Dann halt deine Schnur, wo sie ist
        [inside] Innen in der Bucht
        [outside] Außen um die Bucht
        [home-and-on] Zurück am Anfang: über das Ende und weiter
        [home-to-wait] Zurück am Anfang: dort festhalten
        [home-to-end] Zurück am Anfang: Lass das Ende hängen
       *[round] { $heading ->
            [falling] Wieder zu den Spitzen hin
           *[rising] Wieder zum Handgelenk hin
        }
    }

## Off the hand

lift-say = { $task ->
        [secure] Alles liegt. Bevor du den Knoten abstreifst, markiere Handgelenk-Bucht 1, dort hängt das Ende, mit einem Stück Klebeband, und sieh zu, dass { $ends ->
            [2] keines der beiden Enden
           *[other] keines der { $ends } Enden
        } zurückrutschen kann: Ein loser Knoten in jedem genügt.
       *[slip-off] Streif den Knoten von den Fingern und auf den Gegenstand, genau so herum wie auf der Hand. Dreh ihn, bis die Enden dort herauskommen, wo du sie haben willst.
    }
lift-say-brief = { $task ->
        [secure] Markiere Handgelenk-Bucht 1, sichere die { $ends } Enden.
       *[slip-off] Streif den Knoten auf den Gegenstand, genau so herum wie auf der Hand.
    }
lift-say-teach = { $task ->
        [secure] Alles liegt. Bevor du den Knoten abstreifst, markiere Handgelenk-Bucht 1, dort hängt das Ende, mit einem Stück Klebeband: Von der Hand genommen, sieht eine Bucht aus wie die andere, und ab der markierten zählst du. Sieh zu, dass { $ends ->
            [2] keines der beiden Enden
           *[other] keines der { $ends } Enden
        } zurückrutschen kann: Ein loser Knoten in jedem genügt.
       *[slip-off] Streif den Knoten von den Fingern und auf den Gegenstand, genau so herum wie auf der Hand, ohne dass er sich verdreht. Er ist lose, und das ist gut. Dreh ihn, bis die Enden dort herauskommen, wo du sie haben willst.
    }
lift-show = { $task ->
        [secure] Markiere Handgelenk-Bucht 1
       *[slip-off] Streif den Knoten auf den Gegenstand
    }
lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Keines der beiden Enden darf zurückrutschen
           *[other] Keines der { $ends } Enden darf zurückrutschen
        }
       *[slip-off] Genau so herum wie auf der Hand, die Enden, wo du sie haben willst
    }
wrong-after = Der Knoten kommt von der Hand, darum lässt sich keine Bahn mehr zurücknehmen. Zurück geht einen Schritt zurück; H sagt, wo du bist.

## Cards

card-pins = Stifte gibt es nicht: { $pins } Bögen liegen auf jeder Seite der Finger, { $staggered ->
        [yes] jeder { -top-pin } auf Lücke zwischen zwei { -bottom-pins }: { -top-pin } 1 einen halben Abstand weiter als { -bottom-pin } 1.
       *[no] jeder { -top-pin } auf gleicher Höhe mit dem { -bottom-pin } seiner Nummer.
    }
card-lift = Abstreifen: Kleb { -bottom-bight } 1 ein Stück Band an und sieh zu, dass kein Ende zurückrutscht. Streif den Knoten von den Fingern und auf den Gegenstand, genau so herum.

## Asked how much cord is still to be laid

cord-left = In diesem Durchgang { $legs ->
        [one] ist noch eine Bahn zu legen
       *[other] sind noch { $legs } Bahnen zu legen
    }{ $ends ->
        [yes] , dann endet diese Schnur.
       *[no] ; bis zum Ende dieser Schnur sind es { $all }.
    } Um die Hand wird keine Länge gemessen: Jeder Durchgang braucht so viel Schnur wie der erste.
