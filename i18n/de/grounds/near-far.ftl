# An Ort und Stelle um eine Reling, einen Griff, etwas Kegeliges: zwei Bänder mit Strichen statt der Stifte. Man
# sieht daran entlang; eine Bahn geht von einem weg zum fernen Ende und kommt her zum nahen. „Strich“ steht für
# die Marke auf dem Band, denn „Marke“ hieße „die“ und brächte jeden Satz durcheinander.

-all-through = Bei jedem Durchstecken geht sie ganz hindurch.
-At-the-bottom = Am nahen Ende
-at-the-bottom = am nahen Ende
-At-the-top = Am fernen Ende
-at-the-top = am fernen Ende
-Back-down = Zurück
-Back-up = Zurück
-before-lifting = Bevor die Bänder herauskommen,
-being-rigged = Die Bänder werden angelegt:
-bottom = Nah
-bottom-bight = Nah-Bucht
-bottom-bight-shown = Nah-Bucht
-bottom-pin = Nah-Strich
-bottom-pin-shown = Nah-Strich
-bottom-pins = Nah-Strichen
-bottom-side = Nah-Seite
-bottom-side-shown = Nah-Seite
-card-left = Arbeite obenherum nach links; so sind auch die Striche nummeriert.
-card-right = Arbeite obenherum nach rechts; so sind auch die Striche nummeriert.
-coming-off = Beim Herausnehmen der Bänder
-down = zu dir her
-down-short = her
-exactly-above = in einer Linie mit
-from-the-bottom = vom nahen Ende her
-hold-again = An jedem Strich löst du erst das Kreppband und klebst es dann wieder über alle Schnüre, die dort liegen.
-hold-again-short = An jedem Strich das Band wieder über alle Schnüre.
-how-to-stand = Stell dich an ein Ende und sieh daran entlang: Das nahe Ende ist bei dir, das ferne liegt von dir weg. An etwas Aufrechtem ist das nahe Ende das untere. An jedem Strich hält ein Stück Kreppband die Bucht, quer darüber geklebt.
-is-near = ist in der Nähe
-laid-and-lifted = Alles liegt, und die Bänder sind heraus;
-Lift-off = Nimm
-lift-off = nimm
-Lifting = Bänder heraus
-On-the-tube = Bisher
-on-the-tube = bisher
-on-the-tube-side = auf der Unterseite
-once-they-are-gone = Sind die Striche fort,
-one-row-up = eine Reihe weiter
-pin = Strich
-pins = Striche
-pins-dat = Strichen
-planned-so = der mit seinen Maßen und der Schnur geplant wurde.
-round-it = herum
-round-the-tube = herum
-straight-above = geradeaus hinter
-taped-over = , Band über alle
-round-shown = An
-round-shown-end = festkleben
-Then-round = Kleb die Bucht an
-to-be-lifted = jetzt kommen die Bänder heraus.
-top = Fern
-top-bight = Fern-Bucht
-top-pin = Fern-Strich
-top-pins = Fern-Strichen
-top-pins-nom = Fern-Striche
-top-side = Fern-Seite
-top-side-shown = Fern-Seite
-tops-staggered = die Fern-Striche einen halben Abstand weiter.
-tops-straight = die Fern-Striche in einer Linie damit.
-tube-is-empty = Da liegt keine Bahn mehr.
-turn-it-round = Geh einmal ganz herum
-up = von dir weg
-up-short = weg
-upright = Sieh daran entlang. Kleb jede Bucht an ihrem Strich fest.
-upright-shown = Sieh daran entlang, Ende und Buchten festgeklebt.
-work-left = Du arbeitest obenherum nach links, und so sind die Striche nummeriert.
-work-right = Du arbeitest obenherum nach rechts, und so sind die Striche nummeriert.

## Rigging

rig-strip-say = { $rim ->
        [top] Kleb ein zweites Band { $spacing } weiter weg von dir, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein Band einmal herum, am nahen Ende, Länge { $length }, mit einem Strich alle { $pitch }: Das sind { $pins } Nah-Striche.
    } { $end ->
        [none] { "" }
        [thick] Hier ist das dicke Ende.
       *[thin] Hier ist das dünne Ende.
    }
rig-strip-say-brief = { $rim ->
        [top] Kleb ein zweites Band { $spacing } weiter weg von dir, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein Band einmal herum, am nahen Ende, Länge { $length }, mit einem Strich alle { $pitch }: Das sind { $pins } Nah-Striche.
    } { $end ->
        [none] { "" }
        [thick] Hier ist das dicke Ende.
       *[thin] Hier ist das dünne Ende.
    }
rig-strip-say-teach = { $rim ->
        [top] Kleb ein zweites Band { $spacing } weiter weg von dir, mit einem Strich alle { $pitch }: Das sind { $pins } { -top-pins-nom }. { $shift ->
            [none] { -top-pin } 1 liegt { -exactly-above } { -bottom-pin } 1.
           *[other] { -top-pin } 1 liegt { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als { -bottom-pin } 1, auf halbem Weg zu { -bottom-pin } 2.
        }
       *[bottom] Kleb ein Band einmal herum, am nahen Ende, Länge { $length }, mit einem Strich alle { $pitch }: Das sind { $pins } Nah-Striche.
    } { $end ->
        [none] { "" }
        [thick] Hier ist das dicke Ende.
       *[thin] Hier ist das dünne Ende.
    } Ein Band, das genau einmal herumgeht, hat seine Striche in gleichen Abständen.
rig-strip-show = { $rim ->
        [top] { -top-pins-nom } { $spacing } weiter weg
       *[bottom] Nah-Striche alle { $pitch }
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
    }{ $end ->
        [none] { "" }
        [thick] , am dicken Ende
       *[thin] , am dünnen Ende
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
        [yes] jeden Fern-Strich auf Lücke zwischen zwei Nah-Striche: Fern-Strich 1 einen halben Abstand weiter als Nah-Strich 1.
       *[no] jeden Fern-Strich in einer Linie mit dem Nah-Strich seiner Nummer.
    }
card-pins-apart = Bei einer Dicke von { $tube } liegen die Striche { $apart } auseinander, rundum gemessen.
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
        } liegen { $spacing } auseinander.
    }
strip-top = Fernes Ende
strip-bottom = Nahes Ende
