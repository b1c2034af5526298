# What interrupts a tie: cord that may not do, a fault far back.

## Will the cord do?

# Exemple : Il reste 9 trajets à passer dans cette passe : 1,4 mètre de cordon, avec ce que tient la
# main. Jusqu’au bout, ce cordon demande 3,1 mètres.
# $legs: legs left in this pass; $all: legs left to the end of this cord. $known: yes when lengths
# are known: $in-pass, $in-cord, $in-all. $ends: yes when the cord ends with this pass. $others: yes
# when further cords are to be laid.
cord-left = { $known ->
        [yes] Il reste { $legs ->
            [one] 1 trajet
           *[other] { $legs } trajets
        } à passer dans cette passe : { $in-pass } de cordon, { $ends ->
            [yes] avec ce que tient la main et l’extrémité qui dépasse.
           *[no] avec ce que tient la main. Jusqu’au bout, ce cordon demande { $in-cord }.
        }{ $others ->
            [yes] { " " }Tous les cordons ensemble demandent encore { $in-all }.
           *[no] { "" }
        } { -all-through }
       *[no] Il reste { $legs ->
            [one] 1 trajet
           *[other] { $legs } trajets
        } à passer dans cette passe{ $ends ->
            [yes] , et ce cordon s’arrête là.
           *[no] , et { $all } jusqu’au bout de ce cordon.
        } La longueur n’est connue que d’un nœud { -planned-so }
    }
cord-left-done = Tout est en place. Il ne faut plus de cordon.

# How far it reaches by what was measured. $reach: whole, leg or none.
cord-reach = { $reach ->
        [whole] D’après votre mesure, le cordon va jusqu’au bout, et il en reste { $spare }.
        [leg] D’après votre mesure, le cordon va jusqu’à la fin du trajet { $leg } de la passe { $pass }.
       *[none] D’après votre mesure, le cordon ne va pas au bout du prochain trajet.
    } Encore C pour le mesurer de nouveau.
cord-ask = Le vôtre suffira-t-il ? Mesurez ce que vous tenez et appuyez encore sur C.

# Said before a pass that the cord does not reach to the end of.
cord-not-through = Attention au cordon : d’après votre mesure, il { $reach ->
        [leg] va jusqu’à la fin du trajet { $leg } de la passe { $pass }, et ne fait pas toute cette passe.
       *[none] ne fait pas un seul trajet de cette passe.
    } Prenez-en un plus long maintenant, ou préparez-en un second : là où il finit, il vous sera demandé s’il faut en raccorder un neuf.

# Asked before a leg that the cord does not reach to the end of.
cord-ends = D’après votre mesure, le cordon ne va pas au bout de ce trajet. Suivant en raccorde un neuf. Retour : il suffit encore, et la mesure est oubliée.
cord-ends-line = Le cordon est-il fini ?
cord-reaches = La mesure est oubliée.

## What is measured. $length: so far; $step: what one press adds. $small: yes for what is over.

measuring = { $small ->
        [yes] Et ce qui dépasse ?
       *[no] Mesurez le cordon du { -pin } où il est jusqu’à son extrémité ; s’il n’est pas commencé, tout entier.
    } Pour l’instant, { $length }. Suivant ajoute { $step }.
measuring-so-far = Pour l’instant, { $length }.
measuring-phase = Mesurer le cordon
measuring-line = { $length } en main
measuring-step = Suivant ajoute { $step } ; un nombre tapé vaut autant de fois { $step }
# After everything that is counted.
counting-keys = Retour : c’est cela. Ou tapez le nombre, puis suivant.

# While a number is typed.
counting-keys-typed = Suivant : c’est cela. Retour efface le dernier chiffre.

## A fault somewhere in the work

fault-phase = Chercher le trajet
# $asked: pin, row or nth. $number of $of. $hand: the way that pins are counted.
fault-so-far = { $asked ->
        [pin] { -Bottom-pin } { $number }
        [row] Rang { $number } sur { $of }
       *[nth] Croisement { $number } sur { $of }
    }.
fault-pin = À côté de quel { -bottom-pin } est la faute ? Elle est { -in-line-with } du { -pin } ou à sa { $hand ->
        [left] gauche
       *[right] droite
    }, avant le suivant. Pour l’instant, { -pin } { $number } sur { $of }. Suivant : un { -pin } plus loin.
fault-row = Dans quel rang de croisements, compté { -from-the-bottom } ? Pour l’instant, rang { $number } sur { $of }. Suivant : un rang plus loin.
fault-nth = Ce rang a là { $of } croisements. Lequel est-ce, compté depuis le { -pin } ? Pour l’instant, le numéro { $number }. Suivant : un de plus.
# Which of several cords lies wrong. $over: yes when it goes over, $cords: what it crosses.
fault-which = Plusieurs cordons se croisent là. Est-ce le trajet { $leg } de la passe { $pass }{ $strands ->
        [one] { "" }
       *[other] { " " }du circuit { $strand }
    }, qui { $heading ->
        [falling] { -falls } du { -top-pin } { $from } au { -bottom-pin } { $to }
       *[rising] { -rises } du { -bottom-pin } { $from } au { -top-pin } { $to }
    } et doit, au rang { $row } { -from-the-bottom }, { $over ->
        [yes] enjamber
       *[no] glisser sous
    } { $cords ->
        [one] 1 cordon ?
       *[other] { $cords } cordons ?
    } Suivant : un autre.
fault-which-line = Trajet { $leg }, passe { $pass } ?
# The leg that laid it. $back: legs that have to come back.
fault-found = C’est le trajet { $leg }{ $pass ->
        [1] { "" }
       *[other] { " " }de la passe { $pass }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }du circuit { $strand }
    } qui l’a fait, { $heading ->
        [falling] { -falling } du { -top-pin } { $from } au { -bottom-pin } { $to }
       *[rising] { -rising } du { -bottom-pin } { $from } au { -top-pin } { $to }
    }. Au rang { $row } { -from-the-bottom }, il doit { $over ->
        [yes] enjamber
       *[no] glisser sous
    } { $cords ->
        [one] 1 cordon.
       *[other] { $cords } cordons.
    } { $back ->
        [one] Ce trajet seul est à défaire.
       *[other] { $back } trajets sont à défaire, celui-là en dernier.
    }
fault-found-line = Trajet { $leg }, passe { $pass } : { $over ->
        [yes] enjamber
       *[no] glisser dessous
    } au rang { $row } { -from-the-bottom }
# A standing end that is near. $crossings: what it comes out of. $over: how it is to lie there.
fault-by-the-end = Ou n’en défaites aucun. L’extrémité qui pend { $rim ->
        [top] au { -top-pin } { $pin }
       *[bottom] au { -bottom-pin } { $pin }
    } { -is-near } : tirez-la hors { $crossings ->
        [one] de ce croisement
       *[other] de { $crossings } croisements, celui-là en dernier
    }, faites-la là { $over ->
        [yes] enjamber
       *[no] glisser dessous
    }, et ramenez-la comme elle était.
fault-found-keys = Suivant défait le premier, retour nomme un autre endroit, erreur laisse tout en l’état.
fault-nothing-there = Là, aucun cordon n’en croise encore un autre. Nommez l’endroit de nouveau.
# A length of nothing was taken for what is in the hand.
measured-nothing = Rien n’a été mesuré, donc rien n’est noté.

## A new cord in place of one that ran out or frayed, step by step

join-phase = Raccorder un cordon
# $step: melts, cut, back, old-end, new-end, rest or finish. $row: the row of crossings in whose
# crossing both ends are hidden.
join-line = { $step ->
        [melts] Le cordon fond-il ?
        [cut] Coupez un cordon neuf
        [back] L’ancien, en arrière jusqu’au rang { $row } { -from-the-bottom }
        [old-end] Son extrémité reste au rang { $row }
        [new-end] Posez la nouvelle à côté
        [rest] Passez le reste du trajet { $leg }
       *[finish] Le cordon neuf continue
    }
# $known: yes when $length says what to cut. $legs: legs that the new cord lays, that of the join too.
# $whole: yes when the old cord is on its pin already. $cords: what lies over the two ends, 0 where
# nothing does yet. $ends: ends to be cut at last.
join-told = { $step ->
        [melts] Le cordon est fini ou effiloché, et un autre prend sa place. D’abord : fond-il, comme le nylon et le polyester ? Suivant pour oui. Retour pour non, comme le coton et le chanvre.
        [cut] Coupez un cordon neuf, { $known ->
            [yes] d’au moins { $length }, pour
           *[no] assez long pour
        } { $legs ->
            [one] 1 trajet
           *[other] { $legs } trajets
        } et une extrémité de chaque côté. { $melts ->
            [yes] Scellez à chaud ses deux extrémités, pour qu’elles ne s’effilochent pas.
           *[no] Entourez de fil ou de ruban ses deux extrémités, ou trempez-les dans la colle, pour qu’elles ne s’effilochent pas.
        }
        [back] Trajet { $leg }{ $pass ->
            [1] { "" }
           *[other] { " " }de la passe { $pass }
        }{ $strands ->
            [one] { "" }
           *[other] { " " }du circuit { $strand }
        } : { $whole ->
            [yes] { $heading ->
                [falling] dégagez l’ancien cordon du { -bottom-pin } { $to } et ramenez-le
               *[rising] dégagez l’ancien cordon du { -top-pin } { $to } et ramenez-le
            }
           *[no] ramenez l’ancien cordon
        } jusqu’au rang { $row } { -from-the-bottom }, où { $cords ->
            [0] un trajet à venir l’enjambera.
            [one] il glisse sous 1 cordon.
           *[other] il glisse sous { $cords } cordons.
        } C’est à l’intérieur du trajet ; dans une ganse, l’extrémité se verrait et sortirait.
        [old-end] Laissez l’extrémité de l’ancien cordon { $cords ->
            [0] là où ce trajet l’enjambera,
           *[other] cachée dans ce croisement,
        } { -on-the-tube-side }, et plus longue d’une largeur de main. Coupez ce qui est plus long ou effiloché.
        [new-end] Posez à côté l’extrémité du cordon neuf, venue de l’autre côté, { $cords ->
            [0] au même endroit,
           *[other] dans le même croisement,
        } plus longue aussi d’une largeur de main. Là, les deux sont côte à côte et se tiennent. Ne les fondez pas et ne les collez pas l’une à l’autre : c’est dur, cela se voit et cela casse.
        [rest] Avec le cordon neuf, passez le reste du trajet { $leg } comme était l’ancien, et contournez { $heading ->
            [falling] le { -bottom-pin } { $to }.
           *[rising] le { -top-pin } { $to }.
        }
       *[finish] À partir d’ici, c’est le cordon neuf. Les deux extrémités restent longues jusqu’à ce que le nœud soit égalisé : reprenez alors le mou vers elles des deux côtés, jamais à travers elles. À la fin, il y a { $ends } extrémités à couper{ $melts ->
            [yes] { " " }et à sceller.
           *[no] , et une goutte de colle tient chacune.
        } Suivant reprend le nœud.
    }
join-where = Vous raccordez un cordon neuf : étape { $step } sur { $steps }.
join-noted = Le cordon neuf est noté.
join-nothing-laid = Aucun trajet de ce cordon n’est encore en place : recommencez avec un autre.
join-off-the-pins = Le nœud quitte ses { -pins } : on ne raccorde plus de cordon.
