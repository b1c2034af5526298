# What comes when everything is laid: lift the knot off the tube, fair it, finish the ends.
# Depths and arguments as in steps.ftl. Off the tube the pins are gone, so what was a pin is called
# by its bight.

## Lifting. $task: secure, top-pins, slide-ring, bottom-pins or slip-off. $pins: pins in a ring.
## $ends: ends of cord hanging out.

# Example: Nimm die 6 Stifte am Kopf heraus, einen nach dem anderen, und leg sie in eine Schale.
lift-say = { $task ->
        [secure] Alles liegt. { -before-lifting } markiere { -bottom-bight } 1 mit einem Stück Klebeband, und sieh zu, dass { $ends ->
            [2] keines der beiden Enden
           *[other] keines der { $ends } Enden
        } zurückrutschen kann: Ein loser Knoten in jedem genügt.
        [top-pins] Zieh das Klebeband vom Rohr, nicht die Marke, dann nimm die { $pins } Stifte am Kopf heraus, einen nach dem anderen, und leg sie in eine Schale.
        [slide-ring] Zieh den Kopf-Ring, wenn es einen gibt, vom Rohr ab. Die Buchten bleiben, wie sie sind.
        [bottom-pins] Halte den Knoten mit einer Hand, und nimm die { $pins } Stifte am Fuß heraus.
        [over-ball] Schieb den Knoten zum Kopf hin vom Rohr und über die Kugel, genau so herum wie auf dem Rohr. Dabei gehen die Ränder zusammen, und die Mitte bleibt so weit, wie sie ist.
        [marks] Löse die Klebestücke von den Buchten. Dann zieh die Bänder unter den Schnüren heraus, immer ein kleines Stück, eines nach dem anderen. Der Knoten bleibt, wo er ist.
        [draw-pins] Zieh die T-Stifte heraus, einen nach dem anderen, von außen nach innen, und halte mit der anderen Hand die Matte flach. Leg sie in eine Schale.
       *[slip-off] Schieb den Knoten zum Kopf hin vom Rohr und auf den Gegenstand, genau so herum wie { -on-the-tube }. Dreh ihn, bis die Enden dort herauskommen, wo du sie haben willst.{ $thick ->
            [bottom] { " " }Der Fuß-Rand kommt ans dicke Ende.
            [top] { " " }Der Kopf-Rand kommt ans dicke Ende.
           *[none] { "" }
        }
    }

lift-say-brief = { $task ->
        [secure] Markiere { -bottom-bight } 1, sichere die { $ends } Enden.
        [top-pins] Stifte am Kopf heraus, { $pins } Stück.
        [slide-ring] Kopf-Ring ab, wenn es einen gibt.
        [bottom-pins] Stifte am Fuß heraus, { $pins } Stück.
        [over-ball] Schieb den Knoten über die Kugel, genau so herum wie auf dem Rohr.
        [marks] Klebestücke ab, Bänder unter den Schnüren heraus.
        [draw-pins] T-Stifte einzeln heraus, alle { $all }, Matte flach.
       *[slip-off] Schieb den Knoten auf den Gegenstand, genau so herum wie { -on-the-tube }.{ $thick ->
            [bottom] { " " }Der Fuß-Rand kommt ans dicke Ende.
            [top] { " " }Der Kopf-Rand kommt ans dicke Ende.
           *[none] { "" }
        }
    }

lift-say-teach = { $task ->
        [secure] Alles liegt. { -before-lifting } markiere { -bottom-bight } 1 mit einem Stück Klebeband: { -once-they-are-gone } sieht eine Bucht aus wie die andere, und ab der markierten zählst du. Sieh zu, dass { $ends ->
            [2] keines der beiden Enden
           *[other] keines der { $ends } Enden
        } zurückrutschen kann: Ein loser Knoten in jedem genügt.
        [top-pins] Zieh das Klebeband vom Rohr, nicht die Marke, dann nimm die { $pins } Stifte am Kopf heraus, einen nach dem anderen, und leg sie in eine Schale. Die Buchten bleiben, wo sie sind, denn die Kreuzungen halten sie.
        [slide-ring] Zieh den Kopf-Ring, wenn es einen gibt, vom Rohr ab. Zieh langsam, damit er keine Bucht mitnimmt.
        [bottom-pins] Halte den Knoten mit einer Hand, damit er nicht aufspringt, und nimm die { $pins } Stifte am Fuß heraus.
        [over-ball] Schieb den Knoten zum Kopf hin vom Rohr und über die Kugel, genau so herum wie auf dem Rohr, ohne dass er sich verdreht. Dabei gehen die Ränder zusammen, und die Mitte bleibt so weit, wie sie ist: Sie hält ihn auf der Kugel, während du ihn durchholst.
        [marks] Löse die Klebestücke von den Buchten. Dann zieh die Bänder unter den Schnüren heraus, immer ein kleines Stück, eines nach dem anderen. Der Knoten bleibt, wo er ist. Ein Band, das nicht kommt, schneidest du zwischen zwei Buchten durch und ziehst die Stücke heraus.
        [draw-pins] Zieh die T-Stifte heraus, einen nach dem anderen, von außen nach innen, und leg sie in eine Schale. Halte mit der anderen Hand die Matte flach: Was auf einmal frei wird, springt auf und verliert seine Ordnung.
       *[slip-off] Schieb den Knoten zum Kopf hin vom Rohr und auf den Gegenstand, genau so herum wie auf dem Rohr, ohne dass er sich verdreht. Er ist locker, und das muss er sein. Dreh ihn, bis die Enden dort herauskommen, wo du sie haben willst.{ $thick ->
            [bottom] { " " }Der Fuß-Rand kommt ans dicke Ende.
            [top] { " " }Der Kopf-Rand kommt ans dicke Ende.
           *[none] { "" }
        }
    }

lift-show = { $task ->
        [secure] Markiere { -bottom-bight-shown } 1
        [top-pins] Nimm die Kopfstifte heraus
        [slide-ring] Zieh den Kopfring ab, wenn es einen gibt
        [bottom-pins] Nimm die Fußstifte heraus
        [over-ball] Schieb den Knoten über die Kugel
        [marks] Nimm die Bänder heraus
        [draw-pins] Zieh die T-Stifte heraus
       *[slip-off] Schieb den Knoten auf den Gegenstand
    }

lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Keines der beiden Enden darf zurückrutschen
           *[other] Keines der { $ends } Enden darf zurückrutschen
        }
        [top-pins] { $pins } Stück, in eine Schale
        [slide-ring] Die Buchten bleiben, wie sie sind
        [bottom-pins] { $pins } Stück; halte den Knoten mit einer Hand
        [over-ball] So herum wie auf dem Rohr: Die Ränder gehen zusammen, die Mitte bleibt
        [marks] Klebestücke ab, Bänder unter den Schnüren hervor; der Knoten bleibt
        [draw-pins] Alle { $all }, einen nach dem anderen; halte die Matte flach
       *[slip-off] So herum wie auf dem Rohr, die Enden, wo du sie haben willst{ $thick ->
            [bottom] , Fuß-Rand ans dicke Ende
            [top] , Kopf-Rand ans dicke Ende
           *[none] { "" }
        }
    }

## Fairing. $round of $rounds: how often the knot is gone through. $known: yes when $draw
## says what to draw out of this leg, and $gathered what is then in the hand: lengths with their
## unit. $first: yes where a cord begins, $last: yes where it ends.

# Example: Durchholen, 1 von 3. Beginne am stehenden Ende. Bahn 1 von 12, von Fuß-Bucht 1 hoch zu
# Kopf-Bucht 3: Hol etwa 9 Millimeter Lose heraus und gib sie weiter. Das macht 9 Millimeter in der Hand.
fair-say = { $whole ->
        [yes] { $round ->
            [1] Durchholen, { $round } von { $rounds }. { $cords ->
                [one] Beginne am stehenden Ende und folge der Schnur
               *[other] Schnur für Schnur, jede von ihrem eigenen stehenden Ende an
            } den ganzen Weg. { $known ->
                [yes] Hol aus jeder Bahn Lose heraus, etwa { $draw }
               *[no] Hol aus jeder Bahn ein wenig Lose heraus
            }, und schieb sie in die nächste, durch alle { $round-legs } Bahnen, bis sie am Arbeitsende { $cords ->
                [one] herauskommt.
               *[other] dieser Schnur herauskommt.
            }
           *[other] Durchholen, { $round } von { $rounds }. Noch einmal { $cords ->
                [one] vom stehenden Ende an der Schnur entlang:
               *[other] Schnur für Schnur, jede von ihrem stehenden Ende an:
            } { $known ->
                [yes] etwa { $draw } Lose
               *[no] ein wenig Lose
            } aus jeder der { $round-legs } Bahnen, bis zum { $cords ->
                [one] Arbeitsende.
               *[other] Arbeitsende ihrer Schnur.
            }
        }
       *[no] Durchholen, { $round } von { $rounds }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , Durchgang { $pass }
        }. { $first ->
            [yes] Beginne am stehenden Ende.
           *[no] { "" }
        } Bahn { $leg } von { $legs }, von { $heading ->
            [falling] { -top-bight } { $from } { -down } zu { -bottom-bight } { $to }
           *[rising] { -bottom-bight } { $from } { -up } zu { -top-bight } { $to }
        }: { $known ->
            [yes] Hol etwa { $draw } Lose heraus und gib sie weiter. Das macht { $gathered } in der Hand.
           *[no] Hol Lose heraus, nur so viel, dass die Kreuzungen bleiben, wo sie sind, und gib sie weiter.
        } { $last ->
            [yes] Die Schnur endet hier: Lass heraushängen, was du herausgeholt hast.
           *[no] { "" }
        }
    }

fair-say-brief = { $whole ->
        [yes] Durchholen, { $round } von { $rounds }: { $cords ->
                [one] ab
               *[other] Schnur für Schnur ab
            } dem stehenden Ende, aus jeder Bahn { $known ->
            [yes] { $draw }
           *[no] ein wenig
        }.
       *[no] Durchholen, { $round } von { $rounds }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }{ $passes ->
            [one] { "" }
           *[other] , Durchgang { $pass }
        }. { $heading ->
            [falling] { -top-bight } { $from }, { -down-short } zu { -bottom-bight } { $to }
           *[rising] { -bottom-bight } { $from }, { -up-short } zu { -top-bight } { $to }
        }: { $known ->
            [yes] Hol { $draw }.
           *[no] Hol die Lose.
        } { $last ->
            [yes] Lass sie heraushängen.
           *[no] { "" }
        }
    }

fair-say-teach = { $whole ->
        [yes] Durchholen, { $round } von { $rounds }. { $cords ->
                [one] Beginne am stehenden Ende und folge der Schnur
               *[other] Schnur für Schnur, jede von ihrem eigenen stehenden Ende an
            } den ganzen Weg. Heb jede Bahn { -with-the-pick } an, { $known ->
            [yes] hol Lose heraus, etwa { $draw }
           *[no] hol ein wenig Lose heraus
        }, und schieb sie in die nächste, durch alle { $round-legs } Bahnen. Zieh keine Bahn fest, bevor ihre Nachbarn so weit sind. Mit der Taste Weniger auf einmal kommt Bahn für Bahn.
       *[no] Durchholen, { $round } von { $rounds }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , Durchgang { $pass }
        }. { $first ->
            [yes] { $round ->
                [1] { $strand ->
                    [1] { $pass ->
                        [1] Durchholen heißt, den Knoten gleichmäßig zu machen: Geh vom stehenden Ende an der Schnur entlang, und hol aus jeder Bahn ein wenig Lose, also das, was die Schnur dort zu lang ist. Das machst du mehrmals, damit keine Bahn stramm ist, bevor ihre Nachbarn an der Reihe waren.
                       *[other] { "" }
                    }
                   *[other] { "" }
                }
               *[other] { "" }
            } Beginne am stehenden Ende.
           *[no] { "" }
        } Bahn { $leg } von { $legs }, von { $heading ->
            [falling] { -top-bight } { $from } { -down } zu { -bottom-bight } { $to }
           *[rising] { -bottom-bight } { $from } { -up } zu { -top-bight } { $to }
        }: Heb sie { -with-the-pick } an, { $known ->
            [yes] hol etwa { $draw } Lose heraus, und gib sie an der Schnur entlang weiter. Das macht { $gathered } in der Hand.
           *[no] hol Lose heraus, nur so viel, dass die Kreuzungen bleiben, wo sie sind, und gib sie an der Schnur entlang weiter.
        } { $last ->
            [yes] Die Schnur endet hier: Lass heraushängen, was du herausgeholt hast.
           *[no] { "" }
        }
    }

# Example: Fuß 1 hoch zu Kopf 3
fair-show = { $whole ->
        [yes] Durchholen, { $round } von { $rounds }
       *[no] { $heading ->
            [falling] { -top } { $from } { -down-short } zu { -bottom } { $to }
           *[rising] { -bottom } { $from } { -up-short } zu { -top } { $to }
        }
    }

# Example: Hol etwa 9 mm; 18 mm in der Hand
fair-show-note = { $whole ->
        [yes] Aus jeder Bahn { $known ->
            [yes] etwa { $draw }
           *[no] ein wenig
        }, { $round-legs } { $cords ->
                [one] Bahnen
               *[other] Bahnen, Schnur für Schnur
            } ab dem stehenden Ende. Mit [ Bahn für Bahn
       *[no] { $known ->
            [yes] Hol etwa { $draw }; { $gathered } in der Hand
           *[no] Hol die Lose und gib sie weiter
        } { $first ->
            [yes] (beginne am stehenden Ende)
           *[no] { "" }
        } { $last ->
            [yes] (lass sie heraushängen)
           *[no] { "" }
        }
    }

## Finishing. $task: tuck, join, trim, seal or done. $end: working or standing. $pin: the bottom bight where
## the end comes out. The end goes along the $cords cords from bottom bight $pin to top bight $top, on
## the side of the rim that $lane names. $under: yes when $order says what it goes over, and under
## what it is held at last.

# Example: Das Arbeitsende ist an Fuß-Bucht 1. Führe es hoch auf Kopf-Bucht 3 zu, neben den 2 Schnüren
# her, die dort liegen, auf der Fuß-Seite. Geh über 2 Schnüre, tauch unter 2 durch. Zieh es stramm. Wo
# es herauskommt, schneidest du es später ab.
finish-say = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } { $named ->
            [yes] Schnur „{ $cord }“.
           *[no] { "" }
        } { $end ->
            [standing] Das stehende Ende vom Anfang
           *[working] Das Arbeitsende
        } ist an { -bottom-bight } { $pin }. Lös den Knoten darin, falls einer da ist, und führe es { -up-towards } { -top-bight } { $top } zu, neben { $cords ->
            [one] der Schnur her, die dort liegt,
           *[other] den { $cords } Schnüren her, die dort liegen,
        } auf der { $lane ->
            [top] { -top-side }.
           *[bottom] { -bottom-side }.
        } { $under ->
            [yes] { $order } Zieh es stramm. Wo es herauskommt, schneidest du es später ab.
           *[no] Steck es unter der ersten Schnur durch, die Platz lässt. Wo es herauskommt, schneidest du es später ab.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } Zwischen { -bottom-bight } { $pin } und { -top-bight } { $top }, in Reihe { $row } { -from-the-bottom }, sind zwei Schnüre angesteckt. Zieh beide Enden stramm und sieh nach, dass keines aus seiner Kreuzung gerutscht ist. Wo sie herauskommen, schneidest du sie später ab.
        [trim] Schneide jedes der { $ends } Enden ab, wo es unter den Schnüren herauskommt, und lass einen Stummel stehen, so lang, wie die Schnur dick ist.
        [seal] Ist die Schnur aus Nylon, Polyester oder einem anderen Stoff, der schmilzt, dann zieh jeden Stummel etwas heraus, verschweiße ihn abseits vom Knoten mit Hitze, lass ihn kalt werden und schieb ihn wieder darunter. Naturfaser wird nicht verschweißt: Ein Tropfen Leim hält sie.
        [press] Press die Matte flach, unter einem Brett, auf dem etwas Schweres liegt. Dann näh sie von unten, wo Schnüre sich kreuzen, oder halte die Kreuzungen mit Leim, damit sie ihre Form behält.
       *[done] Der Knoten ist fertig: { $leads } Parten, { $bights } Buchten{ $nested ->
           [one] { "" }
          *[other] , { $nested } ineinander{ $lands ->
               [0] { "" }
              *[other] , erste Schnur zu Reihe { $lands }
           }
       }, { $passes ->
            [one] einfach.
            [2] doppelt.
            [3] dreifach.
           *[other] { $passes } Durchgänge.
        } Das ist gute Arbeit. Schreib auf, was du gebraucht hast, für das nächste Mal.
    }

finish-say-brief = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } { $end ->
            [standing] Stehendes Ende
           *[working] Arbeitsende
        }, { -bottom-bight } { $pin }, neben { $cords ->
            [one] der Schnur
           *[other] { $cords } Schnüren
        } { -up } auf { -top-bight } { $top } zu, { $lane ->
            [top] { -top-side }.
           *[bottom] { -bottom-side }.
        } { $under ->
            [yes] { $order }
           *[no] Unter der ersten Schnur durch, die Platz lässt.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } Angesteckt zwischen { -bottom-bight } { $pin } und { -top-bight } { $top }, Reihe { $row }: beide Enden stramm.
        [trim] Schneide die { $ends } Enden ab, auf einen Stummel, so lang, wie die Schnur dick ist.
        [seal] Verschweiße die { $ends } Enden, wenn sie schmelzen, und schieb sie wieder darunter.
        [press] Press die Matte flach, dann näh oder leim sie von unten.
       *[done] Fertig: { $leads } Parten, { $bights } Buchten{ $nested ->
           [one] { "" }
          *[other] , { $nested } ineinander{ $lands ->
               [0] { "" }
              *[other] , erste Schnur zu Reihe { $lands }
           }
       }, { $passes ->
            [one] einfach.
            [2] doppelt.
            [3] dreifach.
           *[other] { $passes } Durchgänge.
        }
    }

finish-say-teach = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } { $named ->
            [yes] Schnur „{ $cord }“.
           *[no] { "" }
        } { $end ->
            [standing] Das stehende Ende vom Anfang
           *[working] Das Arbeitsende
        } ist an { -bottom-bight } { $pin }. Lös den Knoten darin, falls einer da ist, und führe es { -up-towards } { -top-bight } { $top } zu, neben { $cords ->
            [one] der Schnur her, die dort liegt,
           *[other] den { $cords } Schnüren her, die dort liegen,
        } auf der { $lane ->
            [top] { -top-side }.
           *[bottom] { -bottom-side }.
        } { $under ->
            [yes] { $order } Zieh es stramm. Wo es herauskommt, schneidest du es später ab.
           *[no] Steck es unter der ersten Schnur durch, die Platz lässt. Wo es herauskommt, schneidest du es später ab.
        } Durchstecken heißt: das Ende unter den Schnüren durchschieben; den Weg öffnest du { -with-the-pick }. { $end ->
            [standing] { "" }
           *[working] Es folgt den anderen noch einmal, drüber und drunter wie sie.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        } Zwischen { -bottom-bight } { $pin } und { -top-bight } { $top }, in Reihe { $row } { -from-the-bottom }, sind zwei Schnüre angesteckt. Zieh beide Enden stramm, eines nach dem anderen, und sieh nach, dass keines aus seiner Kreuzung gerutscht ist: sie hält und verdeckt die beiden. Wo sie herauskommen, schneidest du sie später ab.
        [trim] Vorher muss alles fertig durchgeholt sein: Abgeschnittene Schnur kommt nicht wieder. Schneide jedes der { $ends } Enden ab, wo es unter den Schnüren herauskommt, und lass einen Stummel stehen, so lang, wie die Schnur dick ist.
        [seal] Ist die Schnur aus Nylon, Polyester oder einem anderen Stoff, der schmilzt, dann zieh jeden Stummel etwas heraus, verschweiße ihn abseits vom Knoten mit Hitze, damit er nicht ausfranst, lass ihn kalt werden und schieb ihn wieder darunter. Naturfaser wird nicht verschweißt: Ein Tropfen Leim hält sie.
        [press] Press die Matte flach, unter einem Brett, auf dem etwas Schweres liegt. Dann näh sie von unten, wo Schnüre sich kreuzen, oder halte die Kreuzungen mit Leim, damit sie ihre Form behält. Ein Stich an jeder dritten Kreuzung genügt, und von oben darf keiner zu sehen sein.
       *[done] Der Knoten ist fertig: { $leads } Parten, { $bights } Buchten{ $nested ->
           [one] { "" }
          *[other] , { $nested } ineinander{ $lands ->
               [0] { "" }
              *[other] , erste Schnur zu Reihe { $lands }
           }
       }, { $passes ->
            [one] einfach.
            [2] doppelt.
            [3] dreifach.
           *[other] { $passes } Durchgänge.
        } Das ist gute Arbeit. Schreib auf, welche Schnur du genommen hast und wie breit der Knoten geworden ist, für das nächste Mal.
    }

finish-show = { $task ->
        [tuck] { $end ->
            [standing] Steck das stehende Ende durch: { -bottom } { $pin }
           *[working] Steck das Arbeitsende durch: { -bottom } { $pin }
        }
        [join] Zieh die Ansteckstelle stramm
        [trim] Schneide die { $ends } Enden kurz
        [seal] Verschweiße die { $ends } Enden
        [press] Press die Matte, dann näh oder leim sie
       *[done] Der Knoten ist fertig
    }

finish-show-note = { $task ->
        [tuck] Neben { $cords ->
            [one] der Schnur
           *[other] den { $cords } Schnüren
        } her auf { -top } { $top } zu, auf der { $lane ->
            [top] { -top-side }
           *[bottom] { -bottom-side }
        }{ $under ->
            [yes] . Lass es lang: Es wird später abgeschnitten
           *[no] , unter der ersten Schnur durch, die Platz lässt
        }
        [join] Zwischen { -bottom } { $pin } und { -top } { $top }, Reihe { $row }. Beide Enden sind in ihrer Kreuzung
        [trim] Ein Stummel, so lang, wie die Schnur dick ist
        [seal] Abseits vom Knoten, dann wieder darunter; Leim für Naturfaser
        [press] Von unten, wo Schnüre sich kreuzen
       *[done] { $leads } Parten, { $bights } Buchten{ $nested ->
           [one] { "" }
          *[other] , { $nested } ineinander{ $lands ->
               [0] { "" }
              *[other] , erste Schnur zu Reihe { $lands }
           }
       }. Schreib auf, was du gebraucht hast.
    }

## Cautions, before what can hurt: spoken with the step, and on the screen as long as it stands.
## $caution: pins, fingers, blades, pick, heat, load, children, pull or rest.

caution-say = { $caution ->
        [pins] Achte auf die Stifte: Sie stehen vor, also halte Augen und Handflächen von ihnen fern.
        [blades] Schneide und stich immer vom Körper weg, die andere Hand hinter der Klinge oder der Spitze.
        [pick] Drück den Marlspieker vom Körper weg und von der Hand, die den Knoten hält.
        [needle] Stich mit der Nadel von der Hand weg, die die Matte hält. Mit Leim: öffne ein Fenster, und halte ihn von Haut und Augen fern.
        [heat] Vorsicht, heiß. Öffne ein Fenster, halte die Flamme fern vom Knoten und von allem, was brennt, und fass das Ende nicht an, bis es kalt ist: Geschmolzene Schnur klebt an der Haut. Ein verschweißtes Ende kann scharf sein.
        [load] Der Knoten bekleidet und schmückt. Lass ihn nie einen Menschen oder eine Last halten; wo etwas halten muss, beachte die örtlichen Vorschriften und frag Fachleute.
        [children] Halte Schnüre, Stifte und kleine Teile von kleinen Kindern fern, und leg nie eine Schnur um einen Hals.
        [pull] Zieh sacht, und wickle dir die Schnur nie um die Hand; halte das Gesicht fern vom Ende, falls es abrutscht.
        [fingers] Zieh die Schnur nie fest um einen Finger, und streif sie sofort ab, wenn ein Finger blass oder taub wird. Kleine Kinder machen das nicht allein.
       *[rest] Gönn deinen Händen ab und zu eine Pause.
    }

caution-show = { $caution ->
        [pins] Stifte stehen vor: Achte auf Augen und Handflächen.
        [blades] Schneide und stich immer vom Körper weg.
        [pick] Marlspieker vom Körper weg drücken.
        [needle] Nadel weg von der Hand, die hält. Leim: lüften, fern von Haut und Augen.
        [heat] Lüften. Fern von allem, was brennt. Geschmolzene Schnur klebt auf der Haut und macht Brandwunden: abkühlen lassen. Verschweißte Enden können scharf sein.
        [load] Nur Zierde: nie für einen Menschen oder eine Last. Wo etwas halten muss: örtliche Vorschriften beachten, Fachleute fragen.
        [children] Schnüre, Stifte und kleine Teile von kleinen Kindern fernhalten; nie eine Schnur um einen Hals.
        [pull] Sacht ziehen, die Schnur nie um die Hand wickeln, das Gesicht vom Ende fern.
        [fingers] Schnur locker um die Finger: sofort abstreifen, wenn einer blass oder taub wird. Nichts für kleine Kinder allein.
       *[rest] Gönn deinen Händen ab und zu eine Pause.
    }
