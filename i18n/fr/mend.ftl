# Where the tyer is, and what to do when something is wrong. Arguments as in steps.ftl.

## Where am I

# Said when a tie is taken up again, before where it stands and its step.
where-taking-up-say = Reprise du nœud à { $leads } brins et { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }.

# Exemple : Première passe : 7 trajets posés sur 12. Le cordon est au picot de tête 6 et va ensuite au
# picot de base 3. Il reste 17 trajets en tout. Encore 11 minutes environ, à votre rythme.
# $phase: laying, lift, fair, finish or done. $at, $next: pins, on the rims $at-rim and $next-rim (top,
# bottom; none when there is no next). $laid: legs laid in this pass of the strand. $left: legs
# left in the whole tie. $crossed: crossings made on a leg that is laid in part. $round, $pass, $strand
# and $leg: where fairing is. $minutes: time left; $timed: yes when it is known.
where-say = { $phase ->
        [lift] Tout est posé ; { -to-be-lifted }
        [fair] { -laid-and-lifted } le nœud est en cours d’égalisation, reprise { $round }{ $whole ->
            [yes] .
           *[no] { $passes ->
                [one] { "" }
               *[other] , passe { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , circuit { $strand }
            }, trajet { $leg } sur { $legs }.
        }
        [done] Le nœud est fini, ses extrémités aussi. Il ne reste rien à faire.
        [finish] Le nœud est posé et égalisé ; il reste à finir ses extrémités.
       *[laying] { $pass ->
            [1] Première passe
            [2] Deuxième passe
            [3] Troisième passe
            [4] Quatrième passe
            [5] Cinquième passe
            [6] Sixième passe
            [7] Septième passe
            [8] Huitième passe
           *[9] Neuvième passe
        }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        } : { $laid ->
            [0] aucun trajet posé
            [one] 1 trajet posé
           *[other] { $laid } trajets posés
        } sur { $legs }. { $crossed ->
            [0] Le cordon est { $at-rim ->
                [top] au { -top-pin } { $at }
               *[bottom] au { -bottom-pin } { $at }
            }{ $next-rim ->
                [top] { " " }et va ensuite au { -top-pin } { $next }.
                [bottom] { " " }et va ensuite au { -bottom-pin } { $next }.
               *[none] .
            }
           *[other] Le cordon est en route : { $at-rim ->
                [top] il { -falls } du { -top-pin } { $at } au { -bottom-pin } { $next }
               *[bottom] il { -rises } du { -bottom-pin } { $at } au { -top-pin } { $next }
            } et a déjà croisé { $crossed ->
                [one] une fois.
               *[other] { $crossed } fois.
            }
        } { $left ->
            [0] Tous les trajets sont posés.
            [one] Il reste 1 trajet en tout.
           *[other] Il reste { $left } trajets en tout.
        } { $timed ->
            [yes] { $minutes ->
                [0] Encore moins d’une minute, à votre rythme.
                [one] Encore une minute environ, à votre rythme.
                [21] Encore vingt et une minutes environ, à votre rythme.
                [31] Encore trente et une minutes environ, à votre rythme.
                [41] Encore quarante et une minutes environ, à votre rythme.
                [51] Encore cinquante et une minutes environ, à votre rythme.
               *[other] Encore { $minutes } minutes environ, à votre rythme.
            }
           *[no] { "" }
        }
    }

## Something is wrong

# $can-take-back: yes when there is a leg to take back. $leg: which.
wrong-say = Quelque chose ne va pas. { $can-take-back ->
        [yes] Suivant pour défaire le trajet { $leg }{ $strands ->
            [one] { "" }
           *[other] { " " }du circuit { $strand }
        }{ $pass ->
            [1] { "" }
           *[other] { " " }de la passe { $pass }
        }. Retour pour chercher où vous en êtes, si vous avez perdu le compte. H si la faute est plus loin en arrière. Appuyez encore sur erreur pour laisser en l’état.
       *[no] Retour pour chercher où vous en êtes, si vous avez perdu le compte. Appuyez encore sur erreur pour laisser en l’état.
    }
wrong-show = Quelque chose ne va pas
wrong-show-note = { $can-take-back ->
        [yes] Suivant : défaire le trajet { $leg }
       *[no] Il n’y a rien à défaire
    }
wrong-show-note-find = Retour : retrouver l’endroit
wrong-show-note-elsewhere = H : l’erreur est ailleurs
wrong-show-note-leave = W : laisser en l’état

# Taking a leg out again; the sentences of a step follow one another: this one, one for each
# crossing in the order they are undone, and the last.
# Exemple : Défaites le trajet 7. Ramenez le cordon au picot de tête 6. Dégagez le cordon du picot de
# tête 6.
# $whole: no when the leg was laid only in part and is on no pin yet. $tail: number of the bottom
# pin whose tail comes off first, for a cord that was just begun, else 0. $first-rim: top or bottom
# when the cord in hand is to be brought back to pin $first first, else none.
take-back-say = Défaites le trajet { $leg }{ $strands ->
        [one] { "" }
       *[other] { " " }du circuit { $strand }
    }{ $pass ->
        [1] { "" }
       *[other] { " " }de la passe { $pass }
    }{ $named ->
        [yes] , « { $cord } »
       *[no] { "" }
    }. { $tail ->
        [0] { "" }
       *[other] Ôtez d’abord le dormant du { -bottom-pin } { $tail }.
    } { $first-rim ->
        [top] Ramenez le cordon au { -top-pin } { $first }.
        [bottom] Ramenez le cordon au { -bottom-pin } { $first }.
       *[none] { "" }
    } { $whole ->
        [yes] { $heading ->
            [falling] Dégagez le cordon du { -bottom-pin } { $to }.
           *[rising] Dégagez le cordon du { -top-pin } { $to }.
        }
       *[no] { "" }
    }

# Exemple : Repassez sous 1 cordon, enjambez-en 1.
take-back-say-crossing = { $place ->
        [only] { $over ->
            [yes] Revenez en enjambant
           *[no] Repassez sous
        }
        [first] { $over ->
            [yes] Revenez en enjambant
           *[no] Repassez sous
        }
       *[next] { $over ->
            [yes] enjambez-en
           *[no] repassez sous
        }
    } { $place ->
        [only] { $cords ->
            [one] 1 cordon
           *[other] { $cords } cordons
        }
        [first] { $cords ->
            [one] 1 cordon
           *[other] { $cords } cordons
        }
       *[next] { $cords }
    }{ $place ->
        [only] .
        [last] .
       *[next] ,
    }

take-back-say-clear = Il ne croise rien.

# Exemple : Votre main est au picot de base 4. Suivant pour défaire encore un trajet. Retour pour
# reposer celui-ci.
take-back-say-end = Votre main est { $heading ->
        [falling] au { -top-pin } { $from }.
       *[rising] au { -bottom-pin } { $from }.
    } Suivant pour défaire encore un trajet. Retour pour reposer celui-ci.

take-back-show = { $heading ->
        [falling] { -Back-up } au { $from } { -of-top }
       *[rising] { -Back-down } au { $from } { -of-bottom }
    }
take-back-show-phase = { $pass ->
        [1] On défait le trajet { $leg }
       *[other] On défait le trajet { $leg }, passe { $pass }
    }
take-back-show-crossing = { $over ->
        [yes] revenir en ENJAMBANT { $cords }
       *[no] ressortir de dessous { $cords }
    }
take-back-show-note = { $whole ->
        [yes] { $heading ->
            [falling] D’abord, dégagez-le du { $to } { -of-bottom }
           *[rising] D’abord, dégagez-le du { $to } { -of-top }
        }
       *[no] Il n’est encore à aucun { -pin }
    }
take-back-show-note-keys = Suivant : défaire encore un trajet. Retour : reposer celui-ci.
take-back-nothing-say = Il n’y a plus rien à défaire : { -tube-is-empty }

## Finding a lost place: questions answered with next for yes and back for no

# Exemple : Le cordon que vous tenez est-il au picot de tête 6 ? Suivant pour oui, retour pour non.
question-say = { $question ->
        [pin] { $rim ->
            [top] Le cordon que vous tenez est-il au { -top-pin } { $pin } ?
           *[bottom] Le cordon que vous tenez est-il au { -bottom-pin } { $pin } ?
        }
        [cords] { $rim ->
            [top] Comptez les cordons autour du { -top-pin } { $pin }, y compris le vôtre.
           *[bottom] Comptez les cordons arrivés au { -bottom-pin } { $pin }, y compris le vôtre.
        } { $count ->
            [one] Y en a-t-il un seul ?
           *[other] Y en a-t-il { $count } ?
        }
        [tail] Ce cordon est-il encore au départ, au { -bottom-pin } { $pin }{ $count ->
            [0] { "" }
            [one] , à côté d’un autre cordon
           *[other] , à côté de { $count } autres cordons
        }, sans aucun trajet posé ?
        [home] Regardez un autre circuit : son cordon est-il revenu au { -bottom-pin } { $pin } { $count ->
            [one] une fois ?
           *[other] { $count } fois ?
        }
       *[crossed] { $rim ->
            [top] Depuis le { -top-pin } { $pin },
           *[bottom] Depuis le { -bottom-pin } { $pin },
        } { $count ->
            [0] le cordon est-il encore libre de tout croisement ?
            [one] le cordon a-t-il déjà croisé quelque chose ?
           *[other] le cordon a-t-il croisé { $count } fois ou plus ?
        }
    } Suivant pour oui, retour pour non.

question-show = { $question ->
        [pin] { $rim ->
            [top] Est-il au { $pin } { -of-top } ?
           *[bottom] Est-il au { $pin } { -of-bottom } ?
        }
        [cords] { $count ->
            [one] Un seul cordon là ?
           *[other] { $count } cordons là ?
        }
        [tail] { $count ->
            [0] Seulement son dormant ?
            [one] Seulement son dormant, à côté d’un cordon ?
           *[other] Seulement son dormant, à côté de { $count } cordons ?
        }
        [home] { $count ->
            [one] Autre circuit : revenu une fois ?
           *[other] Autre circuit : revenu { $count } fois ?
        }
       *[crossed] { $count ->
            [0] Libre de tout croisement ?
            [one] Croisé quelque chose ?
           *[other] Croisé { $count } fois ou plus ?
        }
    }
question-show-note = { $question ->
        [pin] Le dernier { -pin } que le cordon a contourné
        [cords] { $rim ->
            [top] Autour du { $pin } { -of-top }, y compris le vôtre
           *[bottom] Arrivés au { $pin } { -of-bottom }, y compris le vôtre
        }
        [tail] Au { $pin } { -of-bottom }
        [home] Au { $pin } { -of-bottom }
       *[crossed] { $rim ->
            [top] Depuis le { $pin } { -of-top }
           *[bottom] Depuis le { $pin } { -of-bottom }
        }
    }
question-show-phase = On cherche où vous en êtes
question-show-note-keys = Suivant : oui. Retour : non.

# Said before the step when the place is found.
found-say = Voilà donc où vous en êtes.

# Said instead when the pins are being taken out or are out.
wrong-after = Le nœud quitte ses { -pins } ou les a déjà quittés : on ne peut plus défaire de trajet. Retour recule d’une étape ; H dit où vous en êtes.
