# Fait sur place, sur une boule ou un pommeau : des repères au lieu des picots.

-all-through = À chaque passage dessous, il y passe tout entier.
-before-lifting = Avant d’ôter les rubans,
-being-rigged = La pose des repères
-Bottom-pin = Repère de base
-bottom-pin = repère de base
-bottom-pins = repères de base
-card-left = Avancez vers la gauche autour de la boule ; les repères sont numérotés dans ce sens.
-card-right = Avancez vers la droite autour de la boule ; les repères sont numérotés dans ce sens.
-coming-off = On ôte les rubans
-hold-again = À chaque repère, décollez d’abord le ruban, et recollez-le sur tous les cordons qui s’y trouvent.
-hold-again-short = À chaque repère, ruban de nouveau sur tous les cordons.
-how-to-stand = Tenez la boule, les repères de base en bas, et regardez-la de face. À chaque repère, un morceau de ruban de masquage collé par-dessus retient la ganse.
-laid-and-lifted = Tout est posé, les rubans sont ôtés ;
-Lifting = Ôter
-on-the-tube = sur la boule
-on-the-tube-side = du côté de la boule
-once-they-are-gone = une fois les repères ôtés,
-pin = repère
-pins = repères
-planned-so = préparé avec sa boule et son cordon.
-rigging = Préparation
-taped-over = , ruban par-dessus
-Then-round = Collez la ganse au
-to-be-lifted = il reste à ôter les rubans.
-top-pin = repère de tête
-top-pins = repères de tête
-tops-staggered = les repères de tête un demi-pas plus loin.
-tops-straight = les repères de tête à l’aplomb.
-tube-is-empty = rien n’est posé.
-turn = tour de la boule
-turn-it-round = Faites tourner la boule
-turns = tours de la boule
-upright = Repères de base en bas. Collez chaque ganse à son repère.
-upright-shown = Repères de base en bas, dormant et ganses fixés au ruban.
-work-left = Vous avancez vers la gauche autour de la boule, et les repères sont numérotés dans ce sens.
-work-right = Vous avancez vers la droite autour de la boule, et les repères sont numérotés dans ce sens.

## Rigging

rig-strip-say = { $rim ->
        [top] Collez un second ruban à { $spacing } au-dessus, le long de la boule, avec un repère tous les { $pitch } : ce sont les { $pins } { -top-pins }. { $shift ->
            [none] Le { -top-pin } 1 est { -in-line-with } du { -bottom-pin } 1.
           *[other] Le { -top-pin } 1 est à { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            } du { -bottom-pin } 1, à mi-chemin du 2.
        }
       *[bottom] Collez un ruban étroit d’un tour complet autour du bas de la boule, { $length } de long, entaillez-en le bord là où il se soulève, et tracez-y un repère tous les { $pitch } : ce sont les { $pins } { -bottom-pins }.
    }
rig-strip-say-brief = { $rim ->
        [top] Collez un second ruban à { $spacing } au-dessus, le long de la boule, avec un repère tous les { $pitch } : ce sont les { $pins } { -top-pins }. { $shift ->
            [none] Le { -top-pin } 1 est { -in-line-with } du { -bottom-pin } 1.
           *[other] Le { -top-pin } 1 est à { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            } du { -bottom-pin } 1, à mi-chemin du 2.
        }
       *[bottom] Collez un ruban étroit d’un tour complet autour du bas de la boule, { $length } de long, entaillez-en le bord là où il se soulève, et tracez-y un repère tous les { $pitch } : ce sont les { $pins } { -bottom-pins }.
    }
rig-strip-say-teach = { $rim ->
        [top] Collez un second ruban à { $spacing } au-dessus, le long de la boule, avec un repère tous les { $pitch } : ce sont les { $pins } { -top-pins }. { $shift ->
            [none] Le { -top-pin } 1 est { -in-line-with } du { -bottom-pin } 1.
           *[other] Le { -top-pin } 1 est à { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            } du { -bottom-pin } 1, à mi-chemin du 2.
        }
       *[bottom] Collez un ruban étroit d’un tour complet autour du bas de la boule, { $length } de long, entaillez-en le bord là où il se soulève, et tracez-y un repère tous les { $pitch } : ce sont les { $pins } { -bottom-pins }.
    } Le ruban fait juste un tour : ses repères sont donc à des distances égales.
rig-strip-show = { $rim ->
        [top] Repères de tête à { $spacing }, le long de la boule
       *[bottom] Repères de base tous les { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] Dans le prolongement des autres, tous les { $pitch }
           *[other] Décalés : { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            }, tous les { $pitch }
        }
       *[bottom] { $pins } repères sur un ruban de { $length }
    }
rig-number-say = Numérotez les repères sur les rubans de 1 à { $pins } vers la { $hand ->
            [left] gauche
           *[right] droite
        }{ $rows ->
            [one] , de même sur les deux.
           *[other] , de même sur tous les rangs.
        }
rig-number-say-brief = Numérotez les repères sur les rubans de 1 à { $pins } vers la { $hand ->
            [left] gauche
           *[right] droite
        }{ $rows ->
            [one] , de même sur les deux.
           *[other] , de même sur tous les rangs.
        }
rig-number-say-teach = Numérotez les repères sur les rubans de 1 à { $pins } vers la { $hand ->
            [left] gauche
           *[right] droite
        }{ $rows ->
            [one] , de même sur les deux.
           *[other] , de même sur tous les rangs.
        } Chaque étape nomme les repères par ces numéros.
rig-number-show = Numérotez les repères de 1 à { $pins }
rig-number-note = Vers la { $hand ->
            [left] gauche
           *[right] droite
        }{ $rows ->
            [one] , de même sur les deux rubans
           *[other] , de même sur tous les rangs
        }
kit-tape-say = Il vous faut, { $number } sur { $items } : du ruban de masquage, { $tape } et un peu plus, dont { $scraps } petits morceaux qui retiennent les ganses. Appuyez sur suivant quand vous l’avez.
kit-tape-say-brief = Du ruban de masquage, { $tape } et un peu plus, dont { $scraps } petits morceaux pour les ganses.
kit-tape-say-teach = Il vous faut, { $number } sur { $items } : du ruban de masquage, { $tape } et un peu plus, dont { $scraps } petits morceaux qui retiennent les ganses. Appuyez sur suivant quand vous l’avez. Il retient le dormant et porte les repères et leurs numéros.
kit-tape-note = Dont { $scraps } petits morceaux, un sur chaque ganse
rig-nest-say = Maintenant { $rows ->
        [two] le rang de dedans
       *[more] le rang { $row }
    }, { $pins } repères à chaque bord, à { $inside } du rang le plus en dehors, { -towards-the-middle }. Tracez-les sur le même ruban, ou sur un autre là où il est trop étroit. Chacun est aligné avec le repère le plus en dehors de son numéro, et porte ce numéro.
rig-nest-say-teach = Maintenant { $rows ->
        [two] le rang de dedans
       *[more] le rang { $row }
    }, { $pins } repères à chaque bord, à { $inside } du rang le plus en dehors, { -towards-the-middle }. Tracez-les sur le même ruban, ou sur un autre là où il est trop étroit. Chacun est aligné avec le repère le plus en dehors de son numéro, et porte ce numéro. Des rangs plus serrés ne laissent pas de place aux ganses.
rig-nest-note = { $pins } repères à chaque bord, avec les mêmes numéros
kit-tool-say-teach = Il vous faut, { $number } sur { $items } : { $tool ->
        [marker] un feutre qui écrit sur le ruban. Appuyez sur suivant quand vous l’avez. Il sert à tracer les repères.
        [ruler] une règle. Appuyez sur suivant quand vous l’avez. Elle sert à mesurer le cordon et la place des repères.
        [blade] un couteau bien affûté, ou des ciseaux. Appuyez sur suivant quand vous l’avez. Il sert à couper le cordon, et tout à la fin ses extrémités.
        [dish] une coupelle pour ce qui s’enlève. Appuyez sur suivant quand vous l’avez.
       *[sealing] un briquet si le cordon fond, ou de la colle pour une fibre naturelle. Appuyez sur suivant quand vous l’avez. Cela empêche les extrémités de s’effilocher.
    }

## On paper

card-pins = Tracez { $pins } repères également répartis sur chacun de deux rubans, { $staggered ->
        [yes] chaque { -top-pin } à mi-chemin entre deux { -bottom-pins } : le { -top-pin } 1 un demi-pas plus loin que le { -bottom-pin } 1.
       *[no] chaque { -top-pin } à l’aplomb du { -bottom-pin } de même numéro.
    }
card-pins-apart = Autour de la boule les repères sont à { $apart } l’un de l’autre, là où elle mesure { $tube }.
card-lift = Ôter : marquez la { -bottom-bight } 1 d’un bout de ruban, et qu’aucune extrémité ne file. Décollez les morceaux de ruban des ganses, et tirez les rubans de dessous les cordons ; le nœud reste où il est.
strip-title = Bandes à repères : { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, grosseur { $tube }, { $round } de tour
strip-how = Découpez les deux bandes suivant leurs lignes et collez chacune autour de ce que vous couvrez, extrémité contre extrémité. Les repères sont où les lignes se croisent ; les lignes continuent jusqu’au bord du papier. Faites partir les deux bandes de la même ligne dans la longueur.
strip-spacing = { $known ->
        [no] L’écart des rangs dépend du cordon : nommez-le aussi (--cord), et il sera écrit ici.
       *[yes] { $rows ->
            [1] Les deux rangs de repères
           *[other] Les deux rangs de repères les plus en dehors
        } sont à { $spacing } l’un de l’autre, le long de la boule.
    }
strip-top = Tête
strip-bottom = Base
