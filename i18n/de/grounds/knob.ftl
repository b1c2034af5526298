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
-hold-again = An jedem Strich löst du erst das Kreppband und klebst es dann wieder über alle Schnüre, die dort liegen.
-hold-again-short = An jedem Strich das Band wieder über alle Schnüre.
-how-to-stand = Halte die Kugel so, dass die Fuß-Striche zum Boden zeigen, und sieh sie von vorn an. An jedem Strich hält ein Stück Kreppband die Bucht, quer darüber geklebt.
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
-taped-over = , Band über alle
-round-shown = An
-round-shown-end = festkleben
-Then-round = Kleb die Bucht an
-to-be-lifted = jetzt kommen die Bänder heraus.
-top-pin = Kopf-Strich
-top-pins = Kopf-Strichen
-top-pins-nom = Kopf-Striche
-tops-staggered = die Kopf-Striche einen halben Abstand weiter.
-tops-straight = die Kopf-Striche genau darüber.
-tube-is-empty = Da liegt keine Bahn mehr.
-turn-it-round = Dreh die Kugel einmal ganz herum
-upright = Fuß-Striche zum Boden. Kleb jede Bucht an ihrem Strich fest.
-upright-shown = Fuß-Striche zum Boden, Ende und Buchten festgeklebt.
-work-left = Du arbeitest nach links, und so sind die Striche nummeriert.
-work-right = Du arbeitest nach rechts, und so sind die Striche nummeriert.

## Rigging

rig-strip-say = { $rim ->
        [top] Kleb ein zweites Band { $spacing } darüber, an der Kugel entlang, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein schmales Band einmal herum, um den unteren Teil der Kugel, Länge { $length }, schneide seinen Rand ein, wo er absteht, und mach alle { $pitch } einen Strich darauf: Das sind { $pins } Fuß-Striche.
    }
rig-strip-say-brief = { $rim ->
        [top] Kleb ein zweites Band { $spacing } darüber, an der Kugel entlang, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein schmales Band einmal herum, um den unteren Teil der Kugel, Länge { $length }, schneide seinen Rand ein, wo er absteht, und mach alle { $pitch } einen Strich darauf: Das sind { $pins } Fuß-Striche.
    }
rig-strip-say-teach = { $rim ->
        [top] Kleb ein zweites Band { $spacing } darüber, an der Kugel entlang, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein schmales Band einmal herum, um den unteren Teil der Kugel, Länge { $length }, schneide seinen Rand ein, wo er absteht, und mach alle { $pitch } einen Strich darauf: Das sind { $pins } Fuß-Striche.
    } Ein Band, das genau einmal herumgeht, hat seine Striche in gleichen Abständen.
rig-strip-show = { $rim ->
        [top] { -top-pins-nom } { $spacing } darüber, an der Kugel entlang
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
        } gezählt{ $rows ->
            [one] , auf beiden gleich
           *[other] , in allen Reihen gleich
        }.
rig-number-say-brief = Nummeriere auf den Bändern die Striche von 1 bis { $pins }, nach { $hand ->
            [left] links
           *[right] rechts
        } gezählt{ $rows ->
            [one] , auf beiden gleich
           *[other] , in allen Reihen gleich
        }.
rig-number-say-teach = Nummeriere auf den Bändern die Striche von 1 bis { $pins }, nach { $hand ->
            [left] links
           *[right] rechts
        } gezählt{ $rows ->
            [one] , auf beiden gleich
           *[other] , in allen Reihen gleich
        }. Jeder Schritt nennt die Striche bei diesen Nummern.
rig-number-show = Nummeriere die Striche 1 bis { $pins }
rig-number-note = Nach { $hand ->
            [left] links
           *[right] rechts
        }{ $rows ->
            [one] , beide Bänder gleich
           *[other] , alle Reihen gleich
        }
kit-tape-say = Du brauchst, { $number } von { $items }: Kreppband, { $tape } und etwas Vorrat, davon { $scraps } kurze Stücke, die die Buchten halten. Weiter, wenn es da ist.
kit-tape-say-brief = Kreppband, { $tape } und etwas Vorrat, davon { $scraps } Stücke für die Buchten.
kit-tape-say-teach = Du brauchst, { $number } von { $items }: Kreppband, { $tape } und etwas Vorrat, davon { $scraps } kurze Stücke, die die Buchten halten. Weiter, wenn es da ist. Es hält das stehende Ende fest und trägt die Striche mit ihren Nummern.
kit-tape-note = Davon { $scraps } kurze Stücke, eines über jede Bucht
rig-nest-say = Jetzt { $rows ->
        [two] die innere Reihe
       *[more] Reihe { $row }
    } der Striche, { $pins } an jedem Rand. Sie liegt weiter innen als die äußerste, { -towards-the-middle }; Abstand { $inside }. Zeichne sie auf dasselbe Band, oder auf ein weiteres, wo das zu schmal ist. Jeder liegt auf einer Linie mit dem äußersten Strich seiner Nummer und hat dieselbe Nummer.
rig-nest-say-teach = Jetzt { $rows ->
        [two] die innere Reihe
       *[more] Reihe { $row }
    } der Striche, { $pins } an jedem Rand. Sie liegt weiter innen als die äußerste, { -towards-the-middle }; Abstand { $inside }. Zeichne sie auf dasselbe Band, oder auf ein weiteres, wo das zu schmal ist. Jeder liegt auf einer Linie mit dem äußersten Strich seiner Nummer und hat dieselbe Nummer. Näher liegende Reihen lassen den Buchten keinen Platz.
rig-nest-note = { $pins } Striche an jedem Rand, auf einer Linie, mit denselben Nummern
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
card-lift = Bänder heraus: { -bottom-bight } 1 mit Klebeband markieren, und kein Ende zurückrutschen lassen. Die Klebestücke von den Buchten lösen, die Bänder unter den Schnüren herausziehen; der Knoten bleibt, wo er ist.
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
       *[yes] { $rows ->
            [1] Die beiden Reihen von Strichen
           *[other] Die beiden äußersten Reihen von Strichen
        } liegen { $spacing } auseinander, an der Kugel entlang.
    }
strip-top = Kopf
strip-bottom = Fuß
