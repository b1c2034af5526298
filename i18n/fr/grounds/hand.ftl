# Autour de la main : les quatre doigts de la main qui tient servent de tube, la paume vers soi. Le côté du poignet est
# le bord de base, le bout des doigts le bord de tête ; chaque ganse a son doigt. On dit « tournant », car « ganse »
# demanderait un autre genre dans chaque phrase.

-At-the-bottom = Au poignet
-at-the-bottom = au poignet
-At-the-top = Au bout des doigts
-at-the-top = au bout des doigts
-Bottom = Poignet
-bottom = poignet
-bottom-bight = ganse du poignet
-Bottom-pin = Tournant du poignet
-bottom-pin = tournant du poignet
-bottom-pins = tournants du poignet
-card-left = Avancez vers la gauche autour de la main ; les tournants sont numérotés dans ce sens.
-card-right = Avancez vers la droite autour de la main ; les tournants sont numérotés dans ce sens.
-down-to-bottom = descendez au poignet
-coming-off = On sort le nœud de la main
-from-the-bottom = depuis le poignet
-in-line-with = à la hauteur
-laid-and-lifted = Tout est posé, le nœud est sorti de la main ;
-lane-bottom = poignet
-lane-top = doigts
-Lifting = Sortir
-of-bottom = du poignet
-of-top = des doigts
-on-the-tube = sur la main
-on-the-tube-side = du côté des doigts
-once-they-are-gone = une fois sorti de la main,
-pin = tournant
-pins = tournants
-side-bottom = côté poignet
-side-top = côté doigts
-to-be-lifted = il reste à le sortir de la main.
-Top = Doigts
-top = doigts
-top-bight = ganse des doigts
-top-pin = tournant des doigts
-top-pins = tournants des doigts
-tube-is-empty = la main est libre.
-turn = tour de la main
-turn-it-round = Tournez la main
-turns = tours de la main
-up-to-top = montez aux doigts
-with-the-pick = du bout d’un doigt

## Beginning

begin-say = { $named ->
        [yes] Prenez le cordon « { $cord } ».
       *[no] { "" }
    } { $hand ->
        [left] Levez la main droite
       *[right] Levez la main gauche
    }, la paume vers vous, les doigts serrés. Posez le cordon à la racine des doigts, { $place }, laissez pendre { $tail } de dormant, et tenez-le avec le pouce. { $hand ->
        [left] La main gauche noue.
       *[right] La main droite noue.
    } Le cordon traverse par-devant jusqu’au petit doigt, par-derrière jusqu’à l’index, et ainsi de suite. Gardez-le assez lâche pour qu’un doigt de plus passe dessous. Les tournants du poignet sont à la racine des doigts, ceux des doigts à la phalange du milieu ; on les compte depuis le dormant, dans le sens du cordon. { $uneven ->
        [yes] Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }
begin-say-brief = { $named ->
        [yes] Cordon « { $cord } ».
       *[no] { "" }
    } { $hand ->
        [left] Main droite levée
       *[right] Main gauche levée
    }, paume vers vous. { $tail } de dormant sous le pouce, { $place }. Par-devant, puis par-derrière. Restez lâche.
begin-say-teach = { $named ->
        [yes] Prenez le cordon « { $cord } ».
       *[no] { "" }
    } { $hand ->
        [left] Levez la main droite
       *[right] Levez la main gauche
    }, la paume vers vous, les doigts serrés. Posez le cordon à la racine des doigts, { $place }, laissez pendre { $tail } de dormant, et tenez-le avec le pouce. { $hand ->
        [left] La main gauche noue.
       *[right] La main droite noue.
    } Le cordon traverse par-devant jusqu’au petit doigt, par-derrière jusqu’à l’index, et ainsi de suite. Gardez-le assez lâche pour qu’un doigt de plus passe dessous. Les tournants du poignet sont à la racine des doigts, ceux des doigts à la phalange du milieu ; on les compte depuis le dormant, dans le sens du cordon. Devant, c’est le côté de la paume. Le dormant reste en arrière ; c’est l’autre bout qui noue. { $uneven ->
        [yes] Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }
begin-show = { $tail } de dormant sous le pouce
begin-show-note = { $named ->
        [yes] Cordon « { $cord } ».
       *[no] { "" }
    } { $hand ->
        [left] Main droite levée, paume vers vous.
       *[right] Main gauche levée, paume vers vous.
    } À la racine des doigts, { $place }. Restez lâche. { $uneven ->
        [yes] Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }

## A leg

lay-say-way = { $pass ->
        [1] Trajet { $leg }
       *[other] Passe { $pass }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $heading ->
        [falling] Du tournant des doigts { $from }, { $from-place }, vers le poignet
       *[rising] Du tournant du poignet { $from }, { $from-place }, vers le bout des doigts
    }{ $lane ->
        [bottom] , côté poignet du premier cordon
        [top] , côté doigts du premier cordon
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , au tournant du poignet { $to }, { $to-place }.
       *[rising] , au tournant des doigts { $to }, { $to-place }.
    } { $view }
lay-say-way-brief = { $pass ->
        [1] Trajet { $leg }
       *[other] Passe { $pass }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $heading ->
        [falling] Tournant des doigts { $from }, { $from-place }
       *[rising] Tournant du poignet { $from }, { $from-place }
    }, { $way }{ $heading ->
        [falling] , au tournant du poignet { $to }, { $to-place }.
       *[rising] , au tournant des doigts { $to }, { $to-place }.
    }
lay-say-way-teach = { $pass ->
        [1] Trajet { $leg }
       *[other] Passe { $pass }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $first ->
        [yes] Un trajet, c’est le cordon d’un tournant d’un côté à un tournant de l’autre.
       *[no] { "" }
    } { $heading ->
        [falling] Du tournant des doigts { $from }, { $from-place }, vers le poignet
       *[rising] Du tournant du poignet { $from }, { $from-place }, vers le bout des doigts
    }{ $lane ->
        [bottom] , côté poignet du premier cordon
        [top] , côté doigts du premier cordon
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , au tournant du poignet { $to }, { $to-place }.
       *[rising] , au tournant des doigts { $to }, { $to-place }.
    } { $view }
lay-say-way-on = { $pass ->
        [1] Trajet { $leg }
       *[other] Passe { $pass }, trajet { $leg }
    }, partie { $part } sur { $parts }, { $heading ->
        [falling] du tournant des doigts { $from } vers le poignet
       *[rising] du tournant du poignet { $from } vers le bout des doigts
    }{ $lane ->
        [bottom] , côté poignet du premier cordon
        [top] , côté doigts du premier cordon
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , au tournant du poignet { $to }, { $to-place }.
       *[rising] , au tournant des doigts { $to }, { $to-place }.
    } Vous êtes { $share ->
        [little] au début
        [quarter] au quart
        [third] au tiers
        [half] à mi-chemin
        [two-thirds] aux deux tiers
        [three-quarters] aux trois quarts
       *[most] presque au bout
    }.
lay-say-way-on-brief = { $pass ->
        [1] Trajet { $leg }
       *[other] Passe { $pass }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $heading ->
        [falling] Tournant des doigts { $from }, { $from-place }
       *[rising] Tournant du poignet { $from }, { $from-place }
    }, { $way }{ $heading ->
        [falling] , au tournant du poignet { $to }, { $to-place }.
       *[rising] , au tournant des doigts { $to }, { $to-place }.
    }
lay-say-way-on-teach = { $pass ->
        [1] Trajet { $leg }
       *[other] Passe { $pass }, trajet { $leg }
    }, partie { $part } sur { $parts }, { $heading ->
        [falling] du tournant des doigts { $from } vers le poignet
       *[rising] du tournant du poignet { $from } vers le bout des doigts
    }{ $lane ->
        [bottom] , côté poignet du premier cordon
        [top] , côté doigts du premier cordon
       *[none] { "" }
    }, { $way }{ $heading ->
        [falling] , au tournant du poignet { $to }, { $to-place }.
       *[rising] , au tournant des doigts { $to }, { $to-place }.
    } Vous êtes { $share ->
        [little] au début
        [quarter] au quart
        [third] au tiers
        [half] à mi-chemin
        [two-thirds] aux deux tiers
        [three-quarters] aux trois quarts
       *[most] presque au bout
    }.
lay-say-landing = { $landing ->
        [on-the-way] Tenez là votre cordon.
        [inside] En dedans de la ganse.
        [outside] En dehors de la ganse.
        [home-and-on] De retour au départ, enjambez le dormant et continuez.
        [home-to-wait] De retour au départ, tenez-le.
        [home-to-end] De retour au départ, laissez pendre le bout.
       *[round] { $heading ->
            [falling] Puis de nouveau vers le bout des doigts.
           *[rising] Puis de nouveau vers le poignet.
        }
    }
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] En dedans.
        [outside] En dehors.
        [home-and-on] Au départ, enjambez le dormant.
        [home-to-wait] Départ : tenez-le.
        [home-to-end] Départ : arrêtez là.
       *[round] { "" }
    }
lay-say-landing-teach = { $landing ->
        [on-the-way] Tenez là votre cordon.
        [inside] En dedans de la ganse.
        [outside] En dehors de la ganse.
        [home-and-on] De retour au départ, enjambez le dormant et continuez.
        [home-to-wait] De retour au départ, tenez-le.
        [home-to-end] De retour au départ, laissez pendre le bout.
       *[round] { $heading ->
            [falling] Puis de nouveau vers le bout des doigts.
           *[rising] Puis de nouveau vers le poignet.
        }
    }
lay-show = { $heading ->
        [falling] Doigts { $from }, { $from-place }, à poignet { $to }, { $to-place }
       *[rising] Poignet { $from }, { $from-place }, à doigts { $to }, { $to-place }
    }
lay-print = { $heading ->
        [falling] Doigts { $from }, { $from-place }, { $way }, à poignet { $to }, { $to-place }
       *[rising] Poignet { $from }, { $from-place }, { $way }, à doigts { $to }, { $to-place }
    }
lay-show-note-on = { $share ->
        [little] Depuis le début
        [quarter] Depuis le quart environ
        [third] Depuis le tiers environ
        [half] Depuis le milieu environ
        [two-thirds] Depuis les deux tiers environ
        [three-quarters] Depuis les trois quarts environ
       *[most] Depuis presque la fin
    }
lay-show-note = { $landing ->
        [on-the-way] Puis tenez votre cordon là où il est
        [inside] En dedans de la ganse
        [outside] En dehors de la ganse
        [home-and-on] Au départ, enjambez le dormant et continuez
        [home-to-wait] Au départ, tenez-le
        [home-to-end] Au départ, laissez pendre le bout
       *[round] { $heading ->
            [falling] De nouveau vers le bout des doigts
           *[rising] De nouveau vers le poignet
        }
    }

## Off the hand

lift-say = { $task ->
        [secure] Tout est posé. Avant de sortir le nœud, marquez la ganse du poignet 1, celle du dormant, d’un bout de ruban, et vérifiez { $ends ->
            [2] qu’aucune des 2 extrémités
           *[other] qu’aucune des { $ends } extrémités
        } ne peut filer : un demi-nœud lâche sur chacune suffit.
       *[slip-off] Faites glisser le nœud des doigts sur l’objet, sans le retourner. Tournez-le jusqu’à ce que les extrémités sortent où vous les voulez.
    }
lift-say-brief = { $task ->
        [secure] Marquez la ganse du poignet 1, retenez les { $ends } extrémités.
       *[slip-off] Passez le nœud sur l’objet, sans le retourner.
    }
lift-say-teach = { $task ->
        [secure] Tout est posé. Avant de sortir le nœud, marquez la ganse du poignet 1, celle du dormant, d’un bout de ruban : hors de la main, toutes les ganses se ressemblent, et c’est de là que vous compterez. Vérifiez { $ends ->
            [2] qu’aucune des 2 extrémités
           *[other] qu’aucune des { $ends } extrémités
        } ne peut filer : un demi-nœud lâche sur chacune suffit.
       *[slip-off] Faites glisser le nœud des doigts sur l’objet, sans le retourner ni le vriller. Il est lâche, et c’est bien. Tournez-le jusqu’à ce que les extrémités sortent où vous les voulez.
    }
lift-show = { $task ->
        [secure] Marquez la ganse du poignet 1
       *[slip-off] Passez le nœud sur l’objet
    }
lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Aucune des 2 extrémités ne doit filer
           *[other] Aucune des { $ends } extrémités ne doit filer
        }
       *[slip-off] Sans le retourner, les extrémités où vous les voulez
    }
wrong-after = Le nœud quitte la main ou l’a déjà quittée : on ne peut plus défaire de trajet. Retour recule d’une étape ; H dit où vous en êtes.

## Cards

card-pins = Il n’y a pas de picots : { $pins } tournants de chaque côté des doigts, { $staggered ->
        [yes] chaque { -top-pin } à mi-chemin entre deux { -bottom-pins } : le { -top-pin } 1 un demi-pas plus loin que le { -bottom-pin } 1.
       *[no] chaque { -top-pin } à la hauteur du { -bottom-pin } de même numéro.
    }
card-lift = Pour l’ôter : marquez la { -bottom-bight } 1 d’un bout de ruban et veillez à ce qu’aucune extrémité ne rentre. Faites glisser le nœud des doigts sur l’objet, sans le retourner.

## Asked how much cord is still to be laid

cord-left = Il reste { $legs ->
        [one] 1 trajet
       *[other] { $legs } trajets
    } à passer dans cette passe{ $ends ->
        [yes] , et ce cordon s’arrête là.
       *[no] , et { $all } jusqu’au bout de ce cordon.
    } Autour de la main, rien ne se mesure : chaque passe prend autant de cordon que la première.
