# What comes when everything is laid: lift the knot off the tube, fair it, finish the ends.
# Depths and arguments as in steps.ftl. Off the tube the pins are gone, so what was a pin is called
# by its bight.

## Lifting. $task: secure, top-pins, slide-ring, bottom-pins or slip-off. $pins: pins in a ring.
## $ends: ends of cord hanging out.

# Exemple : Ôtez les 6 picots de tête, un par un, et mettez-les dans une coupelle.
lift-say = { $task ->
        [secure] Tout est posé. { -before-lifting } marquez la { -bottom-bight } 1 d’un bout de ruban, et vérifiez { $ends ->
            [2] qu’aucune des 2 extrémités
           *[other] qu’aucune des { $ends } extrémités
        } ne peut filer : un demi-nœud lâche sur chacune suffit.
        [top-pins] Décollez le ruban du tube, pas la marque, puis ôtez les { $pins } { -top-pins }, un par un, et mettez-les dans une coupelle.
        [slide-ring] S’il y a une bague { -of-top }, faites-la glisser vers le haut jusqu’à la sortir du tube. Les ganses restent comme elles sont.
        [bottom-pins] Tenez le nœud d’une main, et ôtez les { $pins } { -bottom-pins }.
        [over-ball] Dégagez le nœud du tube par le haut et passez-le sur la boule, sans le retourner. En chemin, ses bords se referment, et son milieu reste aussi large.
        [marks] Décollez les morceaux de ruban des ganses. Puis tirez les rubans de dessous les cordons, peu à peu, l’un après l’autre. Le nœud reste où il est.
        [draw-pins] Ôtez les épingles en T une par une, de dehors en dedans, et de l’autre main tenez l’ouvrage à plat. Mettez-les dans une coupelle.
       *[slip-off] Dégagez le nœud du tube par le haut et passez-le sur l’objet, sans le retourner. Tournez-le jusqu’à ce que les extrémités sortent où vous les voulez.{ $thick ->
            [bottom] { " " }Le bord de base va au gros bout.
            [top] { " " }Le bord de tête va au gros bout.
           *[none] { "" }
        }
    }

lift-say-brief = { $task ->
        [secure] Marquez la { -bottom-bight } 1, retenez les { $ends } extrémités.
        [top-pins] Ôtez les { $pins } { -top-pins }.
        [slide-ring] Sortez la bague { -of-top }, s’il y en a une.
        [bottom-pins] Ôtez les { $pins } { -bottom-pins }.
        [over-ball] Passez le nœud sur la boule, sans le retourner.
        [marks] Décollez les morceaux des ganses, ôtez les rubans pris sous les cordons.
        [draw-pins] Ôtez les épingles une par une, toutes les { $all }, l’ouvrage à plat.
       *[slip-off] Passez le nœud sur l’objet, sans le retourner.{ $thick ->
            [bottom] { " " }Le bord de base va au gros bout.
            [top] { " " }Le bord de tête va au gros bout.
           *[none] { "" }
        }
    }

lift-say-teach = { $task ->
        [secure] Tout est posé. { -before-lifting } marquez la { -bottom-bight } 1 d’un bout de ruban : { -once-they-are-gone } toutes les ganses se ressemblent, et c’est de là que vous compterez. Vérifiez { $ends ->
            [2] qu’aucune des 2 extrémités
           *[other] qu’aucune des { $ends } extrémités
        } ne peut filer : un demi-nœud lâche sur chacune suffit.
        [top-pins] Décollez le ruban du tube, pas la marque, puis ôtez les { $pins } { -top-pins }, un par un, et mettez-les dans une coupelle. Les ganses restent à leur place, car les croisements les tiennent.
        [slide-ring] S’il y a une bague { -of-top }, faites-la glisser vers le haut jusqu’à la sortir du tube. Allez doucement, pour qu’elle n’entraîne aucune ganse.
        [bottom-pins] Tenez le nœud d’une main pour qu’il ne se détende pas, et ôtez les { $pins } { -bottom-pins }.
        [over-ball] Dégagez le nœud du tube par le haut et passez-le sur la boule, sans le retourner, sans le laisser se tordre. En chemin, ses bords se referment, et son milieu reste aussi large : c’est ce qui le tient sur la boule pendant que vous l’égalisez.
        [marks] Décollez les morceaux de ruban des ganses. Puis tirez les rubans pris sous les cordons, peu à peu, l’un après l’autre. Le nœud reste où il est. Un ruban qui ne vient pas se coupe entre deux ganses, et se retire en morceaux.
        [draw-pins] Ôtez les épingles en T une par une, de dehors en dedans, et mettez-les dans une coupelle. De l’autre main tenez l’ouvrage à plat : ce qui est lâché d’un coup se détend et perd son ordre.
       *[slip-off] Dégagez le nœud du tube par le haut et passez-le sur l’objet, sans le retourner, sans le laisser se tordre. Il est lâche, comme il doit l’être. Tournez-le jusqu’à ce que les extrémités sortent où vous les voulez.{ $thick ->
            [bottom] { " " }Le bord de base va au gros bout.
            [top] { " " }Le bord de tête va au gros bout.
           *[none] { "" }
        }
    }

lift-show = { $task ->
        [secure] Marquez la { -bottom-bight } 1
        [top-pins] Ôtez les { -top-pins }
        [slide-ring] Sortez la bague { -of-top }, s’il y en a une
        [bottom-pins] Ôtez les { -bottom-pins }
        [over-ball] Passez le nœud sur la boule
        [marks] Ôtez les rubans
        [draw-pins] Ôtez les épingles en T
       *[slip-off] Passez le nœud sur l’objet
    }

lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Aucune des 2 extrémités ne doit filer
           *[other] Aucune des { $ends } extrémités ne doit filer
        }
        [top-pins] Il y en a { $pins } ; dans une coupelle
        [slide-ring] Les ganses restent comme elles sont
        [bottom-pins] Il y en a { $pins } ; tenez le nœud d’une main
        [over-ball] Sans le retourner : les bords se referment, le milieu reste
        [marks] Morceaux décollés des ganses, rubans pris sous les cordons ; le nœud reste
        [draw-pins] Toutes les { $all }, une par une ; tenez l’ouvrage à plat
       *[slip-off] Sans le retourner, les extrémités où vous les voulez{ $thick ->
            [bottom] , le bord de base va au gros bout
            [top] , le bord de tête va au gros bout
           *[none] { "" }
        }
    }

## Fairing. $round of $rounds: how often the knot is gone through. $known: yes when $draw
## says what to draw out of this leg, and $gathered what is then in the hand: lengths with their
## unit. $first: yes where a cord begins, $last: yes where it ends.

# Exemple : Première reprise sur 3. Partez du dormant. Trajet 1 sur 12, en montant de la ganse de base 1
# à la ganse de tête 3 : tirez-en environ 9 millimètres et passez-le plus loin. Cela fait 9 millimètres dans
# la main.
fair-say = { $whole ->
        [yes] { $round ->
            [1] Égaliser, reprise { $round } sur { $rounds }. { $cords ->
                [one] Partez du dormant et suivez le cordon
               *[other] Cordon par cordon, partez de son propre dormant et suivez-le
            } d’un bout à l’autre. { $known ->
                [yes] Tirez environ { $draw } de mou de chaque trajet
               *[no] Tirez un peu de mou de chaque trajet
            } et passez-le au suivant, sur les { $round-legs } trajets{ $cords ->
                [one] { "" }
               *[other] {" "}en tout
            }, jusqu’à ce qu’il sorte { $cords ->
                [one] à l’autre bout.
               *[other] au bout libre de ce cordon.
            }
           *[other] Égaliser, reprise { $round } sur { $rounds }. Encore une fois { $cords ->
                [one] le long du cordon, depuis le
               *[other] cordon par cordon, chacun depuis son
            } dormant : { $known ->
                [yes] environ { $draw } de mou
               *[no] un peu de mou
            } de chacun des { $round-legs } trajets, jusqu’au bout { $cords ->
                [one] libre.
               *[other] libre de son cordon.
            }
        }
       *[no] { $round ->
            [1] Première reprise
            [2] Deuxième reprise
            [3] Troisième reprise
           *[other] Reprise { $round }
        } sur { $rounds }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , passe { $pass }
        }. { $first ->
            [yes] Partez du dormant.
           *[no] { "" }
        } Trajet { $leg } sur { $legs }, { $heading ->
            [falling] { -falling } de la { -top-bight } { $from } à la { -bottom-bight } { $to }
           *[rising] { -rising } de la { -bottom-bight } { $from } à la { -top-bight } { $to }
        } : { $known ->
            [yes] tirez-en environ { $draw } de mou et passez-le plus loin. Cela fait { $gathered } dans la main.
           *[no] tirez-en du mou, juste assez pour que les croisements restent où ils sont, et passez-le plus loin.
        } { $last ->
            [yes] Le cordon finit ici : laissez pendre le mou gagné.
           *[no] { "" }
        }
    }

fair-say-brief = { $whole ->
        [yes] Égaliser, reprise { $round } sur { $rounds } : { $cords ->
                [one] depuis le
               *[other] cordon par cordon depuis chaque
            } dormant, { $known ->
            [yes] { $draw }
           *[no] un peu
        } par trajet.
       *[no] Reprise { $round } sur { $rounds }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }{ $passes ->
            [one] { "" }
           *[other] , passe { $pass }
        }. { $heading ->
            [falling] Ganse { -of-top } { $from }, { -down } à la { -bottom-bight } { $to }
           *[rising] Ganse { -of-bottom } { $from }, { -up } à la { -top-bight } { $to }
        } : { $known ->
            [yes] tirez { $draw }.
           *[no] tirez le mou.
        } { $last ->
            [yes] Laissez pendre.
           *[no] { "" }
        }
    }

fair-say-teach = { $whole ->
        [yes] Égaliser, reprise { $round } sur { $rounds }. { $cords ->
                [one] Partez du dormant et suivez le cordon
               *[other] Cordon par cordon, partez de son propre dormant et suivez-le
            } d’un bout à l’autre. Soulevez chaque trajet { -with-the-pick }, { $known ->
            [yes] tirez-en environ { $draw } de mou
           *[no] tirez-en un peu de mou
        } et passez-le au suivant, sur les { $round-legs } trajets. Ne serrez rien à fond avant les voisins. Appuyez sur moins à la fois pour aller trajet par trajet.
       *[no] { $round ->
            [1] Première reprise
            [2] Deuxième reprise
            [3] Troisième reprise
           *[other] Reprise { $round }
        } sur { $rounds }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , passe { $pass }
        }. { $first ->
            [yes] { $round ->
                [1] { $strand ->
                    [1] { $pass ->
                        [1] Égaliser un nœud, c’est en reprendre le mou : suivez le cordon depuis son dormant et tirez un peu de mou de chaque trajet, en plusieurs reprises, pour qu’aucun trajet ne soit serré avant ses voisins.
                       *[other] { "" }
                    }
                   *[other] { "" }
                }
               *[other] { "" }
            } Partez du dormant.
           *[no] { "" }
        } Trajet { $leg } sur { $legs }, { $heading ->
            [falling] { -falling } de la { -top-bight } { $from } à la { -bottom-bight } { $to }
           *[rising] { -rising } de la { -bottom-bight } { $from } à la { -top-bight } { $to }
        } : soulevez-le { -with-the-pick } et { $known ->
            [yes] tirez-en environ { $draw } de mou, puis passez-le plus loin le long du cordon. Cela fait { $gathered } dans la main.
           *[no] tirez-en du mou, juste assez pour que les croisements restent où ils sont, puis passez-le plus loin le long du cordon.
        } { $last ->
            [yes] Le cordon finit ici : laissez pendre le mou gagné.
           *[no] { "" }
        }
    }

# Exemple : Base 1, montez à tête 3
fair-show = { $whole ->
        [yes] Égaliser, reprise { $round } sur { $rounds }
       *[no] { $heading ->
            [falling] Du { $from } { -of-top }, { -down } au { $to } { -of-bottom }
           *[rising] Du { $from } { -of-bottom }, { -up } au { $to } { -of-top }
        }
    }

fair-show-note = { $whole ->
        [yes] { $known ->
            [yes] Environ { $draw } par trajet
           *[no] Un peu par trajet
        }, { $round-legs } { $cords ->
                [one] trajets depuis le
               *[other] trajets, cordon par cordon depuis chaque
            } dormant. Avec [, trajet par trajet
       *[no] { $known ->
            [yes] Tirez environ { $draw } ; { $gathered } dans la main
           *[no] Tirez le mou et passez-le plus loin
        } { $first ->
            [yes] (partez du dormant)
           *[no] { "" }
        } { $last ->
            [yes] (laissez pendre)
           *[no] { "" }
        }
    }

## Finishing. $task: tuck, join, trim, seal or done. $end: working or standing. $pin: the bottom bight where
## the end comes out. The end goes along the $cords cords from bottom bight $pin to top bight $top, on
## the side of the rim that $lane names. $under: yes when $order says what it goes over, and under
## what it is held at last.

# Exemple : Le courant est à la ganse de base 1. Menez-le vers la ganse de tête 3, le long des 2
# cordons qui y montent, côté base. Enjambez 2 cordons, glissez sous 2. Ajustez-le. Là où il ressort, il
# sera coupé.
finish-say = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } { $named ->
            [yes] Cordon « { $cord } ».
           *[no] { "" }
        } { $end ->
            [standing] Le dormant, laissé au départ,
           *[working] Le courant, le bout libre,
        } est à la { -bottom-bight } { $pin }. S’il porte un nœud, défaites-le ; menez ensuite ce bout vers la { -top-bight } { $top }, le long { $cords ->
            [one] du cordon
           *[other] des { $cords } cordons
        } qui y { $cords ->
            [one] { -rises }, { $lane ->
                [top] { -side-top }.
               *[bottom] { -side-bottom }.
            }
           *[other] { -rise }, { $lane ->
                [top] { -side-top }.
               *[bottom] { -side-bottom }.
            }
        } { $under ->
            [yes] { $order } Ajustez-le. Là où il ressort, il sera coupé.
           *[no] Glissez-le sous le premier cordon qui s’y prête. Là où il ressort, il sera coupé.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } Entre la { -bottom-bight } { $pin } et la { -top-bight } { $top }, au rang { $row } { -from-the-bottom }, deux cordons sont raccordés. Ajustez les deux extrémités et voyez qu’aucune n’est sortie de son croisement. Là où elles ressortent, elles seront coupées.
        [trim] Coupez chacune des { $ends } extrémités là où elle ressort des cordons, en laissant dépasser l’épaisseur du cordon.
        [seal] Si le cordon est en nylon, en polyester ou en une autre matière qui fond, tirez un peu chaque bout, scellez-le à chaud à l’écart du nœud, laissez-le refroidir et rentrez-le sous un cordon. Une fibre naturelle ne se scelle pas à chaud : une goutte de colle la tient.
        [press] Pressez l’ouvrage sous une planche, avec un poids par-dessus. Puis cousez-le par l’envers, là où les cordons se croisent, ou tenez les croisements avec de la colle, pour qu’il garde sa forme.
       *[done] Le nœud est fini : { $leads } brins, { $bights } ganses{ $nested ->
           [one] { "" }
          *[other] , { $nested } emboîtées{ $lands ->
               [0] { "" }
              *[other] , premier cordon au rang { $lands }
           }
       }, { $passes ->
            [one] simple.
            [2] doublé.
            [3] triplé.
           *[other] { $passes } passes.
        } Vous avez fait là un bel ouvrage. Notez ce qui a servi, pour la prochaine fois.
    }

finish-say-brief = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } { $end ->
            [standing] Dormant
           *[working] Courant
        }, { -bottom-bight } { $pin }, le long { $cords ->
            [one] du cordon
           *[other] des { $cords } cordons
        } vers la { -top-bight } { $top }, { $lane ->
            [top] { -side-top }.
           *[bottom] { -side-bottom }.
        } { $under ->
            [yes] { $order }
           *[no] Sous le premier cordon qui s’y prête.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } Raccord entre la { -bottom-bight } { $pin } et la { -top-bight } { $top }, rang { $row } : les deux extrémités ajustées.
        [trim] Coupez les { $ends } extrémités en laissant dépasser l’épaisseur du cordon.
        [seal] Scellez les { $ends } extrémités, si elles fondent, et rentrez-les dessous.
        [press] Pressez l’ouvrage, puis cousez-le ou collez-le par l’envers.
       *[done] Fini : { $leads } brins, { $bights } ganses{ $nested ->
           [one] { "" }
          *[other] , { $nested } emboîtées{ $lands ->
               [0] { "" }
              *[other] , premier cordon au rang { $lands }
           }
       }, { $passes ->
            [one] simple.
            [2] doublé.
            [3] triplé.
           *[other] { $passes } passes.
        }
    }

finish-say-teach = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } { $named ->
            [yes] Cordon « { $cord } ».
           *[no] { "" }
        } { $end ->
            [standing] Le dormant, laissé au départ,
           *[working] Le courant, le bout libre,
        } est à la { -bottom-bight } { $pin }. S’il porte un nœud, défaites-le ; menez ensuite ce bout vers la { -top-bight } { $top }, le long { $cords ->
            [one] du cordon
           *[other] des { $cords } cordons
        } qui y { $cords ->
            [one] { -rises }, { $lane ->
                [top] { -side-top }.
               *[bottom] { -side-bottom }.
            }
           *[other] { -rise }, { $lane ->
                [top] { -side-top }.
               *[bottom] { -side-bottom }.
            }
        } { $under ->
            [yes] { $order } Ajustez-le. Là où il ressort, il sera coupé.
           *[no] Glissez-le sous le premier cordon qui s’y prête. Là où il ressort, il sera coupé.
        } Rentrer un bout, c’est le pousser sous les cordons, en ouvrant le chemin { -with-the-pick }. { $end ->
            [standing] { "" }
           *[working] Il suit les autres encore une fois, dessus et dessous comme eux.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } Entre la { -bottom-bight } { $pin } et la { -top-bight } { $top }, au rang { $row } { -from-the-bottom }, deux cordons sont raccordés. Ajustez les deux extrémités, l’une après l’autre, et voyez qu’aucune n’est sortie de son croisement : c’est lui qui les tient et les cache. Là où elles ressortent, elles seront coupées.
        [trim] Assurez-vous d’abord que toutes les reprises sont faites : un cordon coupé ne se rallonge pas. Coupez chacune des { $ends } extrémités là où elle ressort des cordons, en laissant dépasser l’épaisseur du cordon.
        [seal] Si le cordon est en nylon, en polyester ou en une autre matière qui fond, tirez un peu chaque bout, scellez-le à chaud à l’écart du nœud, pour qu’il ne s’effiloche pas, laissez-le refroidir et rentrez-le sous un cordon. Une fibre naturelle ne se scelle pas à chaud : une goutte de colle la tient.
        [press] Pressez l’ouvrage sous une planche, avec un poids par-dessus. Puis cousez-le par l’envers, là où les cordons se croisent, ou tenez les croisements avec de la colle, pour qu’il garde sa forme. Un point tous les trois croisements suffit, et aucun ne doit se voir à l’endroit.
       *[done] Le nœud est fini : { $leads } brins, { $bights } ganses{ $nested ->
           [one] { "" }
          *[other] , { $nested } emboîtées{ $lands ->
               [0] { "" }
              *[other] , premier cordon au rang { $lands }
           }
       }, { $passes ->
            [one] simple.
            [2] doublé.
            [3] triplé.
           *[other] { $passes } passes.
        } Vous avez fait là un bel ouvrage. Notez quel cordon a servi et la largeur obtenue, pour la prochaine fois.
    }

finish-show = { $task ->
        [tuck] { $end ->
            [standing] Rentrez le dormant : { -bottom-bight } { $pin }
           *[working] Rentrez le bout courant : { -bottom-bight } { $pin }
        }
        [join] Ajustez le raccord
        [trim] Coupez les { $ends } extrémités
        [seal] Scellez les { $ends } extrémités
        [press] Pressez, puis cousez ou collez
       *[done] Le nœud est fini
    }

finish-show-note = { $task ->
        [tuck] Le long { $cords ->
            [one] du cordon
           *[other] des { $cords } cordons
        } vers { -top } { $top }, { $lane ->
            [top] { -side-top }
           *[bottom] { -side-bottom }
        }{ $under ->
            [yes] . Laissez-le long : il sera coupé plus tard
           *[no] , sous le premier cordon qui s’y prête
        }
        [join] Entre la { -bottom-bight } { $pin } et celle { -of-top } { $top }, rang { $row }. Les deux extrémités sont dans leur croisement
        [trim] Laissez dépasser l’épaisseur du cordon
        [seal] À l’écart du nœud, puis de nouveau dessous ; colle pour une fibre naturelle
        [press] Par l’envers, là où les cordons se croisent
       *[done] { $leads } brins, { $bights } ganses{ $nested ->
           [one] { "" }
          *[other] , { $nested } emboîtées{ $lands ->
               [0] { "" }
              *[other] , premier cordon au rang { $lands }
           }
       }. Notez ce qui a servi.
    }

## Cautions, before what can hurt: spoken with the step, and on the screen as long as it stands.
## $caution: pins, fingers, blades, pick, heat, load, children, pull or rest.

caution-say = { $caution ->
        [pins] Attention aux picots : ils dépassent ; éloignez-en vos yeux et vos paumes.
        [blades] Coupez et poussez à l’opposé de votre corps, l’autre main derrière la lame ou la pointe.
        [pick] Poussez l’épissoir loin de votre corps et de la main qui tient le nœud.
        [needle] Poussez l’aiguille loin de la main qui tient l’ouvrage. Avec de la colle, ouvrez une fenêtre, et gardez-la loin de la peau et des yeux.
        [heat] Attention, ça brûle. Ouvrez une fenêtre, tenez la flamme loin du nœud et de tout ce qui brûle, et ne touchez pas l’extrémité avant qu’elle soit froide : le cordon fondu colle à la peau. Une extrémité scellée peut être coupante.
        [load] Ce nœud couvre et décore. Ne lui confiez jamais une personne ni une charge ; pour porter une charge, suivez les règles locales et adressez-vous à une personne habilitée.
        [children] Tenez cordons, picots et petites pièces hors de portée des jeunes enfants, et ne laissez jamais un cordon autour d’un cou.
        [pull] Tirez doucement, jamais avec le cordon enroulé autour de la main, et gardez le visage à l’écart d’un bout qui peut lâcher.
        [fingers] Ne serrez jamais le cordon autour d’un doigt, et retirez-le aussitôt si un doigt pâlit ou s’engourdit. Les jeunes enfants ne le font pas seuls.
       *[rest] Reposez vos mains de temps en temps.
    }

caution-show = { $caution ->
        [pins] Les picots dépassent : attention aux yeux et aux paumes.
        [blades] Coupez et poussez à l’opposé de votre corps.
        [pick] Poussez l’épissoir loin du corps.
        [needle] L’aiguille loin de la main qui tient. Colle : aérez, loin de la peau et des yeux.
        [heat] Aérez. Restez loin de tout ce qui brûle. Le cordon fondu colle et brûle : laissez-le refroidir. Une extrémité scellée peut être coupante.
        [load] Décoratif seulement : jamais pour tenir une personne ou une charge. Pour porter une charge, suivez les règles locales et adressez-vous à une personne habilitée.
        [children] Cordons, picots et petites pièces loin des jeunes enfants ; jamais un cordon autour d’un cou.
        [pull] Tirez doucement, jamais le cordon autour de la main, le visage à l’écart du bout.
        [fingers] Cordon lâche autour des doigts : à retirer aussitôt si l’un pâlit ou s’engourdit. Pas pour de jeunes enfants seuls.
       *[rest] Reposez vos mains de temps en temps.
    }
