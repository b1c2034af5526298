# An Ort und Stelle um einen Knauf oder eine Kugel: Striche statt der Stifte.

-all-through = Bei jedem Durchstecken geht sie ganz hindurch.
-before-lifting = Bevor die Bänder herauskommen,
-being-rigged = Die Bänder werden angelegt:
-bottom-bight-shown = Fuß-Bucht
-bottom-pin = Fuß-Strich
-bottom-pin-shown = Fuß-Strich
-bottom-pins = Fuß-Strichen
-card-left = Arbeite nach links um die Kugel; so sind auch die Striche nummeriert.
-card-right = Arbeite nach rechts um die Kugel; so sind auch die Striche nummeriert.
-coming-off = Beim Herausnehmen der Bänder
-how-to-stand = Halte die Kugel so, dass die Fuß-Striche zum Boden zeigen, und sieh sie von vorn an.
-laid-and-lifted = Alles liegt, und die Bänder sind heraus;
-Lift-off = Nimm
-lift-off = nimm
-Lifting = Bänder heraus
-On-the-tube = Auf der Kugel
-on-the-tube = auf der Kugel
-on-the-tube-side = auf der Seite der Kugel
-once-they-are-gone = Sind die Striche fort,
-pin = Strich
-pins = Striche
-pins-dat = Strichen
-planned-so = der mit Kugel und Schnur geplant wurde.
-round-it = um die Kugel
-round-the-tube = um die Kugel herum
-Then-round = Dann wende an
-to-be-lifted = jetzt kommen die Bänder heraus.
-top-pin = Kopf-Strich
-top-pins = Kopf-Strichen
-top-pins-nom = Kopf-Striche
-tops-staggered = die Kopf-Striche einen halben Abstand weiter.
-tops-straight = die Kopf-Striche genau darüber.
-tube-is-empty = Da liegt keine Bahn mehr.
-turn-it-round = Dreh die Kugel einmal ganz herum
-upright = Fuß-Striche zum Boden.
-upright-shown = Fuß-Striche zum Boden, Ende festgeklebt.
-work-left = Du arbeitest nach links, und so sind die Striche nummeriert.
-work-right = Du arbeitest nach rechts, und so sind die Striche nummeriert.

## Rigging

rig-strip-say = { $rim ->
        [top] Kleb ein zweites Band { $spacing } darüber, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein Band einmal herum, um den unteren Teil der Kugel, Länge { $length }, mit einem Strich alle { $pitch }: Das sind { $pins } Fuß-Striche.
    }
rig-strip-say-brief = { $rim ->
        [top] Kleb ein zweites Band { $spacing } darüber, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein Band einmal herum, um den unteren Teil der Kugel, Länge { $length }, mit einem Strich alle { $pitch }: Das sind { $pins } Fuß-Striche.
    }
rig-strip-say-teach = { $rim ->
        [top] Kleb ein zweites Band { $spacing } darüber, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein Band einmal herum, um den unteren Teil der Kugel, Länge { $length }, mit einem Strich alle { $pitch }: Das sind { $pins } Fuß-Striche.
    } Ein Band, das genau einmal herumgeht, hat seine Striche in gleichen Abständen.
rig-strip-show = { $rim ->
        [top] { -top-pins-nom } { $spacing } darüber
       *[bottom] Fuß-Striche alle { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] In einer Linie mit den anderen, alle { $pitch }
           *[other] Versetzt: { $shift } nach { $hand ->
                [left] links
               *[right] rechts
            }, alle { $pitch }
        }
       *[bottom] { $pins } Striche auf einem Band, Länge { $length }
    }
rig-number-say = Nummeriere auf den Bändern die Striche von 1 bis { $pins }, nach { $hand ->
            [left] links
           *[right] rechts
        } gezählt, auf beiden gleich.
rig-number-say-brief = Nummeriere auf den Bändern die Striche von 1 bis { $pins }, nach { $hand ->
            [left] links
           *[right] rechts
        } gezählt, auf beiden gleich.
rig-number-say-teach = Nummeriere auf den Bändern die Striche von 1 bis { $pins }, nach { $hand ->
            [left] links
           *[right] rechts
        } gezählt, auf beiden gleich. Jeder Schritt nennt die Striche bei diesen Nummern.
rig-number-show = Nummeriere die Striche 1 bis { $pins }
rig-number-note = Nach { $hand ->
            [left] links
           *[right] rechts
        }, beide Bänder gleich
kit-tape-say-teach = Du brauchst, { $number } von { $items }: Kreppband, { $tape } und etwas Vorrat. Weiter, wenn es da ist. Es hält das stehende Ende fest und trägt die Striche mit ihren Nummern.
kit-tool-say-teach = Du brauchst, { $number } von { $items }: { $tool ->
        [marker] einen Filzschreiber, der auf Klebeband schreibt. Weiter, wenn er da ist. Mit ihm ziehst du die Striche.
        [ruler] ein Lineal. Weiter, wenn es da ist. Mit ihm misst du die Schnur ab, und wo die Striche hinkommen.
        [blade] ein scharfes Messer oder eine Schere. Weiter, wenn sie da sind. Damit schneidest du die Schnur zu, und ganz am Schluss ihre Enden ab.
        [dish] eine Schale für das, was abkommt. Weiter, wenn sie da ist.
       *[sealing] ein Feuerzeug, wenn die Schnur schmilzt, sonst Leim. Weiter, wenn es da ist. Damit fransen die Enden nicht aus.
    }

## On paper

card-pins = Zieh auf zwei Bändern je { $pins } Striche gleichmäßig rundum, { $staggered ->
        [yes] jeden Kopf-Strich auf Lücke zwischen zwei Fuß-Striche: Kopf-Strich 1 einen halben Abstand weiter als Fuß-Strich 1.
       *[no] jeden Kopf-Strich genau über den Fuß-Strich seiner Nummer.
    }
card-pins-apart = Um die Kugel liegen die Striche { $apart } auseinander, wo sie { $tube } dick ist.
card-lift = Bänder heraus: { -bottom-bight } 1 mit Klebeband markieren, und kein Ende zurückrutschen lassen. Die Bänder unter den Schnüren herausziehen; der Knoten bleibt, wo er ist.
strip-title = Streifen mit Strichen: { $leads } Parten, { $bights } Buchten{ $nested ->
        [one] { "" }
       *[other] , { $nested } ineinander{ $lands ->
            [0] { "" }
           *[other] , erste Schnur zu Reihe { $lands }
        }
    }, Dicke { $tube }, Umfang { $round }
strip-how = Schneide beide Streifen an ihren Linien aus, und kleb jeden einmal herum, Ende an Ende. Die Striche liegen, wo die Linien sich kreuzen; die Linien laufen weiter bis zum Rand des Papiers. Beginne mit beiden Streifen an derselben Linie, die der Länge nach läuft.
strip-spacing = { $known ->
        [no] Wie weit die Reihen auseinander liegen, hängt von der Schnur ab: Nenne sie auch (--cord), dann steht es hier.
       *[yes] Die beiden Reihen von Strichen liegen { $spacing } auseinander.
    }
strip-top = Kopf
strip-bottom = Fuß
