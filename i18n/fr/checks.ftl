# A look at the work after a round or a pass: what should be seen, so that a fault is found
# within one round. Depths and arguments as in steps.ftl; besides them:
#   $round     rounds laid in this pass, $rounds of them all; a round is a rising and a falling leg
#   $ends      yes when the pass of this strand is complete
#   $whole     yes when all strands have come as far
#   $cords     cords round each pin that this pass has reached
#   $at        number of the bottom pin where the cord stands now
#   $counted   yes when $crossings says how many crossings lie on the tube by now
#   $rows      crossings along every leg from rim to rim in the whole knot
#   $first     yes at the first look of all
#   $from, $to pins of the last leg, which falls; $order: its overs and unders, one after the other

# Exemple : Arrêtez-vous et regardez. Aller-retour 3 sur 6 posé ; le cordon est au picot de base 4. Il y
# a 4 croisements sur le tube. Regardez le dernier trajet, du picot de tête 1 au picot de base 4. Il enjambe
# 1 cordon, glisse sous 1. Si c’est bien cela, appuyez sur suivant ; sinon, sur erreur.
# Exemple : La première passe est posée. Arrêtez-vous et regardez. Chaque picot tient 1 cordon, et le long de
# chaque trajet, d’un bord à l’autre, vous pouvez compter 4 croisements. Si c’est bien cela, appuyez sur
# suivant ; sinon, sur erreur.
check-say = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] La première passe est posée.
                [2] La deuxième passe est posée.
                [3] La troisième passe est posée.
                [4] La quatrième passe est posée.
                [5] La cinquième passe est posée.
                [6] La sixième passe est posée.
                [7] La septième passe est posée.
                [8] La huitième passe est posée.
               *[9] La neuvième passe est posée.
            }
           *[other] { $pass ->
                [1] La première passe du circuit { $strand } est posée.
                [2] La deuxième passe du circuit { $strand } est posée.
                [3] La troisième passe du circuit { $strand } est posée.
                [4] La quatrième passe du circuit { $strand } est posée.
                [5] La cinquième passe du circuit { $strand } est posée.
                [6] La sixième passe du circuit { $strand } est posée.
                [7] La septième passe du circuit { $strand } est posée.
                [8] La huitième passe du circuit { $strand } est posée.
               *[9] La neuvième passe du circuit { $strand } est posée.
            }
        } Arrêtez-vous et regardez. { $whole ->
            [yes] Chaque { -pin }
           *[no] Chaque { -pin } de ce circuit
        } tient { $cords ->
            [one] 1 cordon
           *[other] { $cords } cordons côte à côte
        }, deux bouts qui pendent comptant pour un{ $whole ->
            [yes] , et le long de chaque trajet, d’un bord à l’autre, vous pouvez compter { $rows ->
                [one] 1 croisement{ $cords ->
                    [one] .
                   *[other] , { $cords } cordons contre { $cords }.
                }
               *[other] { $rows } croisements{ $cords ->
                    [one] .
                   *[other] , chaque fois { $cords } cordons contre { $cords }.
                }
            }
           *[no] .
        }
       *[no] Arrêtez-vous et regardez. { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } { $pass ->
            [1] Aller-retour
            [2] Deuxième passe, aller-retour
            [3] Troisième passe, aller-retour
            [4] Quatrième passe, aller-retour
            [5] Cinquième passe, aller-retour
            [6] Sixième passe, aller-retour
            [7] Septième passe, aller-retour
            [8] Huitième passe, aller-retour
           *[9] Neuvième passe, aller-retour
        } { $round } sur { $rounds } posé ; le cordon est au { -bottom-pin } { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Rien ne se croise encore.
                [one] Il y a 1 croisement { -on-the-tube }.
               *[other] Il y a { $crossings } croisements { -on-the-tube }.
            }
           *[no] { $cords ->
                [one] Chaque { -pin } déjà contourné tient 1 cordon.
               *[other] Chaque { -pin } déjà contourné tient { $cords } cordons côte à côte.
            }
        } Regardez le dernier trajet, du { -top-pin } { $from } au { -bottom-pin } { $to }. { $order }
    } Si c’est bien cela, appuyez sur suivant ; sinon, sur erreur.

# Exemple : Regardez. Aller-retour 3 sur 6, au picot de base 4, 3 croisements.
check-say-brief = Regardez. { $strands ->
        [one] { "" }
       *[other] Circuit { $strand }.
    } { $ends ->
        [yes] { $pass ->
            [1] Première passe posée,
            [2] Deuxième passe posée,
            [3] Troisième passe posée,
            [4] Quatrième passe posée,
            [5] Cinquième passe posée,
            [6] Sixième passe posée,
            [7] Septième passe posée,
            [8] Huitième passe posée,
           *[9] Neuvième passe posée,
        } { $cords ->
            [one] 1 cordon par { -pin }.
           *[other] { $cords } cordons par { -pin }.
        }
       *[no] Aller-retour { $round } sur { $rounds }, au { -bottom-pin } { $at }. Dernier trajet. { $order }
    }

check-say-teach = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] La première passe est posée : le cordon a parcouru une fois tout le dessin.
                [2] La deuxième passe est posée.
                [3] La troisième passe est posée.
                [4] La quatrième passe est posée.
                [5] La cinquième passe est posée.
                [6] La sixième passe est posée.
                [7] La septième passe est posée.
                [8] La huitième passe est posée.
               *[9] La neuvième passe est posée.
            }
           *[other] { $pass ->
                [1] La première passe du circuit { $strand } est posée : son cordon a parcouru une fois tout son chemin.
                [2] La deuxième passe du circuit { $strand } est posée.
                [3] La troisième passe du circuit { $strand } est posée.
                [4] La quatrième passe du circuit { $strand } est posée.
                [5] La cinquième passe du circuit { $strand } est posée.
                [6] La sixième passe du circuit { $strand } est posée.
                [7] La septième passe du circuit { $strand } est posée.
                [8] La huitième passe du circuit { $strand } est posée.
               *[9] La neuvième passe du circuit { $strand } est posée.
            }
        } { -turn-it-round } et regardez tout avant de continuer : une faute se répare facilement maintenant, difficilement plus tard. { $whole ->
            [yes] Chaque { -pin }
           *[no] Chaque { -pin } de ce circuit
        } tient { $cords ->
            [one] 1 cordon
           *[other] { $cords } cordons côte à côte, qui ne se croisent jamais
        }, deux bouts qui pendent comptant pour un{ $whole ->
            [yes] . Le long de chaque trajet, d’un bord à l’autre, vous pouvez compter { $rows ->
                [one] 1 croisement{ $cords ->
                    [one] .
                   *[other] , { $cords } cordons contre { $cords }.
                }
               *[other] { $rows } croisements{ $cords ->
                    [one] .
                   *[other] , chaque fois { $cords } cordons contre { $cords }.
                }
            }
           *[no] .
        }
       *[no] { $first ->
            [yes] Arrêtez-vous et regardez. Une erreur se repère le mieux dans l’aller-retour où elle est faite ; un aller-retour, c’est un trajet qui { -rises } et un trajet qui { -falls }.
           *[no] Arrêtez-vous et regardez.
        } { $strands ->
            [one] { "" }
           *[other] Circuit { $strand }.
        } { $pass ->
            [1] Aller-retour
            [2] Deuxième passe, aller-retour
            [3] Troisième passe, aller-retour
            [4] Quatrième passe, aller-retour
            [5] Cinquième passe, aller-retour
            [6] Sixième passe, aller-retour
            [7] Septième passe, aller-retour
            [8] Huitième passe, aller-retour
           *[9] Neuvième passe, aller-retour
        } { $round } sur { $rounds } posé ; le cordon est au { -bottom-pin } { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Rien ne se croise encore.
                [one] Il y a 1 croisement { -on-the-tube }.
               *[other] Il y a { $crossings } croisements { -on-the-tube }.
            }
           *[no] { $cords ->
                [one] Chaque { -pin } déjà contourné tient 1 cordon.
               *[other] Chaque { -pin } déjà contourné tient { $cords } cordons côte à côte.
            }
        } Regardez le dernier trajet, du { -top-pin } { $from } au { -bottom-pin } { $to }. { $order }
    } Si c’est bien cela, appuyez sur suivant ; sinon, sur erreur.

# Exemple : Regardez : aller-retour 3 sur 6
check-show = { $ends ->
        [yes] { $whole ->
            [yes] { $cords ->
                [one] Regardez : 1 cordon à chaque { -pin }
               *[other] Regardez : { $cords } cordons à chaque { -pin }
            }
           *[no] { $cords ->
                [one] Regardez : 1 cordon à ses { -pins }
               *[other] Regardez : { $cords } cordons à ses { -pins }
            }
        }
       *[no] Regardez : aller et retour { $round } sur { $rounds }
    }

# Exemple : 3 croisements sur le tube. Le cordon est à base 4.
check-show-note = { $ends ->
        [yes] { $whole ->
            [yes] { $rows ->
                [one] 1 croisement le long de chaque trajet. Là où pendent deux bouts, ils comptent pour 1 cordon
               *[other] { $rows } croisements le long de chaque trajet. Là où pendent deux bouts, ils comptent pour 1 cordon
            }
           *[no] Circuit { $strand } sur { $strands }. Là où pendent deux bouts, ils comptent pour 1 cordon
        }
       *[no] { $counted ->
            [yes] { $crossings ->
                [0] Rien ne se croise encore.
                [one] 1 croisement { -on-the-tube }.
               *[other] { $crossings } croisements { -on-the-tube } en tout.
            }
           *[no] { $cords ->
                [one] 1 cordon à chaque { -pin } jusqu’ici.
               *[other] { $cords } cordons à chaque { -pin } jusqu’ici.
            }
        } Le cordon est au { $at } { -of-bottom }.
    }

# Exemple : Dernier trajet, de tête 1 : enjambe 1 fois, sous 1 fois.
# $shown: yes where its crossings stand above in large type, and $order is nothing.
check-show-note-last = Dernier trajet, du { $from } { -of-top }{ $shown ->
        [yes] { "" }
       *[no] { " " }: { $order }
    }

# One crossing of the last leg, as it lies there; those of the leg are said one after the other, in $order.
# Exemple : Il enjambe 1 cordon, glisse sous 2, en enjambe 1.
# $place: only, first, next or last. $over: yes or no. $cords: cords lying there.
check-say-crossing = { $place ->
        [only] { $over ->
            [yes] Il enjambe { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }
           *[no] Il glisse sous { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }
        }.
        [first] { $over ->
            [yes] Il enjambe { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }
           *[no] Il glisse sous { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }
        },
        [last] { $over ->
            [yes] en enjambe { $cords ->
                [one] 1
               *[other] { $cords }
            }
           *[no] glisse sous { $cords ->
                [one] 1
               *[other] { $cords }
            }
        }.
       *[next] { $over ->
            [yes] en enjambe { $cords ->
                [one] 1
               *[other] { $cords }
            }
           *[no] glisse sous { $cords ->
                [one] 1
               *[other] { $cords }
            }
        },
    }

# In place of the order of overs and unders, for a leg of so many crossings that nobody would
# follow it: $crossings there are, $overs and $unders of them.
check-order-say = Sur ses { $crossings } croisements, il enjambe à { $overs } et glisse dessous à { $unders }.
check-order-show = { $crossings } croisements, enjambe à { $overs }, glisse dessous à { $unders }
