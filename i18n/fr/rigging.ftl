# Packing the bag and rigging the tube: steps like any other, before the first leg. A message
# ending in -say is spoken, one ending in -show stands on the screen, one ending in -note below
# it. A note that comes to nothing is left out.
#
# Arguments that come back:
#   $number            this item or step, $items and $tasks how many there are
#   $hand              right or left: the way round the tube that the cord travels
#   lengths            each one argument with its unit (see lengths.ftl): "45 millimètres" for the
#                      ear, "45 mm" for the eye

kit-phase-show = Il vous faut, { $single ->
        [yes] { $number } sur { $items }
        [two] { $number } et { $last } sur { $items }
       *[no] { $number } à { $last } sur { $items }
    }
rig-phase-show = Préparation, { $single ->
        [yes] étape { $number } sur { $tasks }
        [two] étapes { $number } et { $last } sur { $tasks }
       *[no] étapes { $number } à { $last } sur { $tasks }
    }

# Several things on one page: before them, and after them.
# Exemple : Il vous faut, 1 à 3 sur 6.
# $number to $last: which of them.
kit-page-say = Il vous faut, { $single ->
        [two] { $number } et { $last } sur { $items }.
       *[no] { $number } à { $last } sur { $items }.
    }
kit-tick-say = Appuyez sur suivant quand vous avez tout. Touche moins à la fois : un par un.

# Before what is to be done to the tube. $single: yes when it is one thing.
# Exemple : Préparation du tube, étapes 1 à 2 sur 7.
rig-page-say = { $single ->
        [yes] { -rigging }, étape { $number } sur { $tasks }.
        [two] { -rigging }, étapes { $number } et { $last } sur { $tasks }.
       *[no] { -rigging }, étapes { $number } à { $last } sur { $tasks }.
    }

# Where the tyer is, before the first leg.
# Exemple : Le tube est en préparation : étape 3 sur 8.
# $phase: kit or rig.
rigging-where-say = { $phase ->
        [kit] Vous réunissez le nécessaire : { $number } sur { $of }.
       *[rig] { -being-rigged } : étape { $number } sur { $of }.
    }

## The bag

# Exemple : Il vous faut, 1 sur 6 : le tube, 45 millimètres de diamètre. Appuyez sur suivant quand vous l’avez.
kit-tube-say = Il vous faut, { $number } sur { $items } : le tube, { $diameter } de diamètre. Appuyez sur suivant quand vous l’avez.
kit-tube-say-brief = Le tube, { $diameter } de diamètre.
kit-tube-say-teach = Il vous faut, { $number } sur { $items } : le tube, { $diameter } de diamètre. Appuyez sur suivant quand vous l’avez. C’est sur le tube qu’on fait le nœud, avant de le passer sur ce qu’il doit couvrir.
kit-tube-show = Tube, { $diameter } de diamètre
kit-tube-note = { "" }

# Exemple : Il vous faut, 2 sur 6 : 14 picots de 12 millimètres de long, filetage M4. Appuyez
# sur suivant quand vous les avez.
# $thread: its name or none. $numbered: the number of a numbered inch thread, or none.
# $fraction: the thread as a length, when it is a fraction of an inch, or none.
kit-pins-say = Il vous faut, { $number } sur { $items } : { $count } picots de { $length } de long{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , filetage { $thread }
               *[other] , filetage de { $fraction }
            }
           *[other] , filetage numéro { $numbered }
        }
    }. Appuyez sur suivant quand vous les avez.
kit-pins-say-brief = { $count } picots de { $length } de long{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , filetage { $thread }
               *[other] , filetage de { $fraction }
            }
           *[other] , filetage numéro { $numbered }
        }
    }.
kit-pins-say-teach = Il vous faut, { $number } sur { $items } : { $count } picots de { $length } de long{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , filetage { $thread }
               *[other] , filetage de { $fraction }
            }
           *[other] , filetage numéro { $numbered }
        }
    }. Appuyez sur suivant quand vous les avez. { $thread ->
        [none] Tout ce qui tient une ganse à sa place peut servir de picot.
       *[other] Ici, les picots sont des vis sans tête.
    } Il en faut un pour chaque ganse de base et un pour chaque ganse de tête.
kit-pins-show = { $count } picots, { $length } de long
kit-pins-note = { $thread ->
        [none] { "" }
       *[other] Vis sans tête { $numbered ->
            [none] { $thread }
           *[other] n° { $numbered }
        }
    }

# $size: as it is sold.
kit-key-say = Il vous faut, { $number } sur { $items } : la clé à six pans des picots, { $size }. Appuyez sur suivant quand vous l’avez.
kit-key-say-brief = La clé à six pans des picots, { $size }.
kit-key-say-teach = Il vous faut, { $number } sur { $items } : la clé à six pans des picots, { $size }. Appuyez sur suivant quand vous l’avez. Elle sert à visser un picot trop dur pour les doigts.
kit-key-show = Clé à six pans, { $size }
kit-key-note = { "" }

# Exemple : Il vous faut, 4 sur 6 : un morceau de cordon, 4 millimètres de diamètre, 1,9 mètre de
# long. Appuyez sur suivant quand vous l’avez.
# $name: what the tyer calls the cord, or none. $grams: weight of all, or 0.
kit-cord-say = Il vous faut, { $number } sur { $items } : { $pieces ->
        [one] un morceau de cordon
       *[other] { $pieces } morceaux de cordon
    }{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $diameter } de diamètre, { $length } de long{ $pieces ->
        [one] { "" }
       *[other] { " " }chacun
    }. { $pieces ->
        [one] Appuyez sur suivant quand vous l’avez.
       *[other] Appuyez sur suivant quand vous les avez.
    }
kit-cord-say-brief = { $pieces ->
        [one] Un morceau de cordon
       *[other] { $pieces } morceaux de cordon
    }{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $diameter } de diamètre, { $length } de long{ $pieces ->
        [one] { "" }
       *[other] { " " }chacun
    }.
kit-cord-say-teach = Il vous faut, { $number } sur { $items } : { $pieces ->
        [one] un morceau de cordon
       *[other] { $pieces } morceaux de cordon
    }{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $diameter } de diamètre, { $length } de long{ $pieces ->
        [one] { "" }
       *[other] { " " }chacun
    }. { $pieces ->
        [one] Appuyez sur suivant quand vous l’avez. Il est plus long
       *[other] Appuyez sur suivant quand vous les avez. Ils sont plus longs
    } que le nœud ne le demande, pour qu’il reste de quoi tenir. 
kit-cord-show = Cordon, { $pieces ->
        [one] { $length }
       *[other] { $pieces } × { $length }
    }
kit-cord-note = { $name ->
        [none] { $diameter } de diamètre
       *[other] { $name }, { $diameter } de diamètre
    }{ $grams ->
        [0] { "" }
       *[other] , environ { $grams } g
    }

kit-tape-say = Il vous faut, { $number } sur { $items } : du ruban de masquage, { $tape } et un peu plus. Appuyez sur suivant quand vous l’avez.
kit-tape-say-brief = Du ruban de masquage, { $tape } et un peu plus.
kit-tape-say-teach = Il vous faut, { $number } sur { $items } : du ruban de masquage, { $tape } et un peu plus. Appuyez sur suivant quand vous l’avez. Il retient le dormant et porte les numéros des picots.
kit-tape-show = Ruban de masquage, { $tape }
kit-tape-note = { "" }

kit-strip-say = Il vous faut, { $number } sur { $items } : une bande de papier de { $length } de long, pour y marquer les picots. Appuyez sur suivant quand vous l’avez.
kit-strip-say-brief = Une bande de papier de { $length } de long, pour y marquer les picots.
kit-strip-say-teach = Il vous faut, { $number } sur { $items } : une bande de papier de { $length } de long, pour y marquer les picots. Appuyez sur suivant quand vous l’avez. Ses repères sont là où vont les picots.
kit-strip-show = Bande de papier, { $length }
kit-strip-note = Aussi longue que le tour du tube, pour y marquer les picots

kit-picks-say = Il vous faut, { $number } sur { $items } : { $count ->
        [one] un épissoir
       *[other] { $count } épissoirs
    } pour ouvrir les croisements. Appuyez sur suivant quand vous { $count ->
        [one] l’avez.
       *[other] les avez.
    }
kit-picks-say-brief = { $count ->
        [one] Un épissoir
       *[other] { $count } épissoirs
    } pour ouvrir les croisements.
kit-picks-say-teach = Il vous faut, { $number } sur { $items } : { $count ->
        [one] un épissoir
       *[other] { $count } épissoirs
    } pour ouvrir les croisements. Appuyez sur suivant quand vous { $count ->
        [one] l’avez.
       *[other] les avez.
    } On soulève ainsi un cordon pour en glisser un autre dessous.
kit-picks-show = { $count ->
        [one] Un épissoir
       *[other] { $count } épissoirs
    }
kit-picks-note = Pour ouvrir les croisements

# What is used on the way. $tool: marker, ruler, blade, dish, needle (for a mat) or sealing (a flame or glue for the ends).
kit-tool-say = Il vous faut, { $number } sur { $items } : { $tool ->
        [marker] un feutre qui écrit sur le ruban. Appuyez sur suivant quand vous l’avez.
        [ruler] une règle. Appuyez sur suivant quand vous l’avez.
        [blade] un couteau bien affûté, ou des ciseaux. Appuyez sur suivant quand vous l’avez.
        [dish] une coupelle pour les picots. Appuyez sur suivant quand vous l’avez.
        [needle] une aiguille et du fil solide, ou de la colle. Appuyez sur suivant quand vous l’avez.
       *[sealing] un briquet si le cordon fond, ou de la colle pour une fibre naturelle. Appuyez sur suivant quand vous l’avez.
    }
kit-tool-say-brief = { $tool ->
        [marker] Un feutre qui écrit sur le ruban.
        [ruler] Une règle.
        [blade] Un couteau bien affûté, ou des ciseaux.
        [dish] Une coupelle pour les picots.
        [needle] Une aiguille et du fil solide, ou de la colle.
       *[sealing] Un briquet si le cordon fond, ou de la colle pour une fibre naturelle.
    }
kit-tool-say-teach = Il vous faut, { $number } sur { $items } : { $tool ->
        [marker] un feutre qui écrit sur le ruban. Appuyez sur suivant quand vous l’avez. Il sert à numéroter les picots.
        [ruler] une règle. Appuyez sur suivant quand vous l’avez. Elle sert à mesurer le cordon et la place des picots.
        [blade] un couteau bien affûté, ou des ciseaux. Appuyez sur suivant quand vous l’avez. Il sert à couper le cordon, et tout à la fin ses extrémités.
        [dish] une coupelle pour les picots. Appuyez sur suivant quand vous l’avez. Les picots ôtés y vont : un picot perdu se retrouve pieds nus.
        [needle] une aiguille et du fil solide, ou de la colle. Appuyez sur suivant quand vous l’avez. Cela fixe les croisements du tapis, par-dessous.
       *[sealing] un briquet si le cordon fond, ou de la colle pour une fibre naturelle. Appuyez sur suivant quand vous l’avez. Cela empêche les extrémités de s’effilocher.
    }
kit-tool-show = { $tool ->
        [marker] Feutre pour le ruban
        [ruler] Règle
        [blade] Couteau ou ciseaux
        [dish] Coupelle pour les picots
        [needle] Aiguille et fil, ou colle
       *[sealing] Briquet ou colle
    }
kit-tool-note = { $tool ->
        [sealing] Briquet pour un cordon qui fond, colle pour une fibre naturelle
       *[other] { "" }
    }

## Rigging: what to know first

# $given: length of the pins named, $needed: the least that holds, $hold: passes they do hold.
rig-short-pins-say = Attention : les picots que vous avez indiqués, de { $given } de long, sont trop courts pour ce nœud. { $hold ->
        [0] Pas même une passe.
        [one] Une passe au plus.
       *[other] { $hold } passes au plus.
    } Prenez des picots de { $needed } ou plus.
rig-short-pins-say-brief = Attention : les picots que vous avez indiqués, de { $given } de long, sont trop courts pour ce nœud. { $hold ->
        [0] Pas même une passe.
        [one] Une passe au plus.
       *[other] { $hold } passes au plus.
    } Prenez des picots de { $needed } ou plus.
rig-short-pins-say-teach = Attention : les picots que vous avez indiqués, de { $given } de long, sont trop courts pour ce nœud. { $hold ->
        [0] Pas même une passe.
        [one] Une passe au plus.
       *[other] { $hold } passes au plus.
    } Prenez des picots de { $needed } ou plus. Chaque passe ajoute un cordon autour du picot, et d’un picot court le dernier s’échappe.
rig-short-pins-show = Picots de { $given } trop courts
rig-short-pins-note = Prenez { $needed } ou plus ; ceux-ci suffisent pour { $hold ->
        [0] moins d’une passe
        [one] 1 passe
       *[other] { $hold } passes
    }

rig-thick-object-say = Attention : ce que vous couvrez a { $object } de diamètre, et le tube seulement { $tube }. Laissez le nœud lâche jusqu’à ce qu’il soit passé dessus.
rig-thick-object-say-brief = Attention : ce que vous couvrez a { $object } de diamètre, et le tube seulement { $tube }. Laissez le nœud lâche jusqu’à ce qu’il soit passé dessus.
rig-thick-object-say-teach = Attention : ce que vous couvrez a { $object } de diamètre, et le tube seulement { $tube }. Laissez le nœud lâche jusqu’à ce qu’il soit passé dessus.
rig-thick-object-show = Ce que vous couvrez est plus gros que le tube
rig-thick-object-note = { $object } contre { $tube } : laissez le nœud lâche jusqu’à ce qu’il soit passé dessus

# $gap: between the pins. $comfortable: from where on it is easy. $most_bights, $most_passes: the most
# for which it is, or 0. $tube: a tube of so much or more. $pin: pins no thicker than this, or none.
rig-close-pins-say = Attention : les picots laissent { $gap } entre eux, et les cordons d’une ganse passent à l’aise à partir de { $comfortable }. Mieux vaudrait un tube de { $tube } ou plus{ $most_bights ->
        [0] { "" }
       *[other] , ou { $most_bights } ganses au plus
    }{ $most_passes ->
        [0] { "" }
        [one] , ou 1 passe
       *[other] , ou { $most_passes } passes au plus
    }{ $pin ->
        [none] { "" }
       *[other] , ou des picots de { $pin } d’épaisseur au plus
    }.
rig-close-pins-say-brief = Attention : les picots laissent { $gap } entre eux, et les cordons d’une ganse passent à l’aise à partir de { $comfortable }. Mieux vaudrait un tube de { $tube } ou plus{ $most_bights ->
        [0] { "" }
       *[other] , ou { $most_bights } ganses au plus
    }{ $most_passes ->
        [0] { "" }
        [one] , ou 1 passe
       *[other] , ou { $most_passes } passes au plus
    }{ $pin ->
        [none] { "" }
       *[other] , ou des picots de { $pin } d’épaisseur au plus
    }.
rig-close-pins-say-teach = Attention : les picots laissent { $gap } entre eux, et les cordons d’une ganse passent à l’aise à partir de { $comfortable }. Mieux vaudrait un tube de { $tube } ou plus{ $most_bights ->
        [0] { "" }
       *[other] , ou { $most_bights } ganses au plus
    }{ $most_passes ->
        [0] { "" }
        [one] , ou 1 passe
       *[other] , ou { $most_passes } passes au plus
    }{ $pin ->
        [none] { "" }
       *[other] , ou des picots de { $pin } d’épaisseur au plus
    }. Là où les picots sont serrés, les cordons montent les uns sur les autres et les ganses sortent inégales.
rig-close-pins-show = Les picots sont serrés
rig-close-pins-note = { $gap } entre eux, à l’aise à partir de { $comfortable } : mieux vaut un tube de { $tube } ou plus{ $most_bights ->
        [0] { "" }
       *[other] , ou { $most_bights } ganses au plus
    }{ $most_passes ->
        [0] { "" }
        [one] , ou 1 passe
       *[other] , ou { $most_passes } passes au plus
    }{ $pin ->
        [none] { "" }
       *[other] , ou des picots de { $pin } d’épaisseur au plus
    }

# $slack: out of each leg. $better: the tube with least slack, or none.
rig-thick-tube-say = Attention : le tube est bien plus gros que ce que vous couvrez. Il faudra tirer { $slack } de chacun des { $legs } trajets.{ $better ->
        [none] { "" }
       *[other] { " " }C’est un tube de { $better } de diamètre qui en laisserait le moins.
    }
rig-thick-tube-say-brief = Attention : le tube est bien plus gros que ce que vous couvrez. Il faudra tirer { $slack } de chacun des { $legs } trajets.{ $better ->
        [none] { "" }
       *[other] { " " }C’est un tube de { $better } de diamètre qui en laisserait le moins.
    }
rig-thick-tube-say-teach = Attention : le tube est bien plus gros que ce que vous couvrez. Il faudra tirer { $slack } de chacun des { $legs } trajets.{ $better ->
        [none] { "" }
       *[other] { " " }C’est un tube de { $better } de diamètre qui en laisserait le moins.
    } Le mou qui se tire peu à peu, en plusieurs reprises, laisse le nœud régulier.
rig-thick-tube-show = Beaucoup de mou sur ce tube
rig-thick-tube-note = { $slack } de chacun des { $legs } trajets{ $better ->
        [none] { "" }
       *[other]  ; le moins, sur un tube de { $better } de diamètre
    }

# $ring: width of a ring. $slack: out of each leg. $would_do: rings of so much or less.
rig-wide-rings-say = Attention : les bagues ont { $ring } de large et écartent trop les bords. Il faudra tirer { $slack } de chaque trajet. Des bagues de { $would_do } au plus ne gêneraient pas.
rig-wide-rings-say-brief = Attention : les bagues ont { $ring } de large et écartent trop les bords. Il faudra tirer { $slack } de chaque trajet. Des bagues de { $would_do } au plus ne gêneraient pas.
rig-wide-rings-say-teach = Attention : les bagues ont { $ring } de large et écartent trop les bords. Il faudra tirer { $slack } de chaque trajet. Des bagues de { $would_do } au plus ne gêneraient pas. Le mou qui se tire peu à peu, en plusieurs reprises, laisse le nœud régulier.
rig-wide-rings-show = Des bagues larges pour ce nœud
rig-wide-rings-note = { $slack } de chaque trajet ; des bagues de { $would_do } au plus ne gêneraient pas

## Rigging: rings with holes

# Exemple : Préparation du tube, étape 1 sur 7. Chaque bague a une seule rangée de 14 trous. Choisissez un
# trou de la bague de base comme trou 1 et comptez les trous à partir de lui vers la droite, et de même
# sur la bague de tête.
# $row: which row, in the order the rows were named. $rows: how many. $holes: holes in it.
rig-row-say = { $rows ->
        [one] Chaque bague a une seule rangée de { $holes } trous.
       *[other] Sur chaque bague, prenez la rangée { $row }, celle de { $holes } trous.
    } Choisissez un trou de la bague de base comme trou 1 et comptez les trous à partir de lui vers la { $hand ->
        [left] gauche
       *[right] droite
    }, et de même sur la bague de tête.
rig-row-say-brief = { $rows ->
        [one] Une seule rangée de { $holes } trous.
       *[other] Rangée { $row }, celle de { $holes } trous.
    } Choisissez le trou 1 et comptez vers la { $hand ->
        [left] gauche.
       *[right] droite.
    }
rig-row-say-teach = { $rows ->
        [one] Chaque bague a une seule rangée de { $holes } trous.
       *[other] Sur chaque bague, prenez la rangée { $row }, celle de { $holes } trous.
    } Choisissez un trou de la bague de base comme trou 1 et comptez les trous à partir de lui vers la { $hand ->
        [left] gauche
       *[right] droite
    }, et de même sur la bague de tête. Une rangée convient à un nœud quand son nombre de trous est un multiple du nombre de ganses.
rig-row-show = { $rows ->
        [one] Une seule rangée de { $holes } trous
       *[other] Rangée { $row } : { $holes } trous
    }
rig-row-note = Choisissez le trou 1, comptez vers la { $hand ->
        [left] gauche
       *[right] droite
    } ; de même sur les deux bagues

# Setting the pins of a ring.
# Exemple : Préparation du tube, étape 2 sur 7. Placez 7 picots dans la bague de base, dans un trou sur
# 2 : trous 1, 3, 5, 7, 9, 11 et 13. Le picot de base 1 est dans le trou 1. Prenez des picots de
# 12 millimètres de long.
# $rim: bottom or top. $step: from a pin to the next. $first: hole of pin 1. $few: yes when the
# holes are told one by one: $most are all but the last, $last is that. $staggered: yes or no.
# $key: size of the hex key or none.
rig-pins-say = Placez { $count } picots dans la bague { $rim ->
        [top] de tête
       *[bottom] de base
    }, { $step ->
        [1] dans chaque trou
       *[other] dans un trou sur { $step }
    }{ $few ->
        [yes] { " " }: trous { $most } et { $last }.
       *[no] , à partir du trou { $first }.
    } { $rim ->
        [top] { $staggered ->
            [yes] Le picot de tête 1 est à mi-chemin entre les picots de base 1 et 2, et ainsi de suite tout autour.
           *[no] Chaque picot de tête est à l’aplomb d’un picot de base.
        }
       *[bottom] Le picot de base 1 est dans le trou 1.
    } Prenez des picots de { $length } de long{ $key ->
        [none] { "" }
       *[other] { " " }et la clé à six pans de { $key }
    }.{ $key ->
        [none] { "" }
       *[other] { " " }Vissez chaque picot à la main jusqu’à ce qu’il porte sur le tube.
    }
rig-pins-say-brief = Placez { $count } picots dans la bague { $rim ->
        [top] de tête
       *[bottom] de base
    }, { $step ->
        [1] dans chaque trou
       *[other] dans un trou sur { $step }
    }{ $few ->
        [yes] { " " }: trous { $most } et { $last }.
       *[no] , à partir du trou { $first }.
    }
rig-pins-say-teach = Placez { $count } picots dans la bague { $rim ->
        [top] de tête
       *[bottom] de base
    }, { $step ->
        [1] dans chaque trou
       *[other] dans un trou sur { $step }
    }{ $few ->
        [yes] { " " }: trous { $most } et { $last }.
       *[no] , à partir du trou { $first }.
    } { $rim ->
        [top] { $staggered ->
            [yes] Le picot de tête 1 est à mi-chemin entre les picots de base 1 et 2, et ainsi de suite tout autour.
           *[no] Chaque picot de tête est à l’aplomb d’un picot de base.
        }
       *[bottom] Le picot de base 1 est dans le trou 1.
    } Prenez des picots de { $length } de long{ $key ->
        [none] { "" }
       *[other] { " " }et la clé à six pans de { $key }
    }. { $key ->
        [none] { "" }
       *[other] Vissez chaque picot à la main jusqu’à ce qu’il porte sur le tube : la bague ne glisse plus.
    } Des picots à égale distance font des ganses égales.
rig-pins-show = { $rim ->
        [top] Bague de tête
       *[bottom] Bague de base
    } : { $few ->
        [yes] trous { $most }, { $last }
       *[no] { $step ->
            [1] chaque trou dès { $first }
           *[other] un trou sur { $step }, depuis le { $first }
        }
    }
rig-pins-note = { $rim ->
        [top] { $staggered ->
            [yes] Décalés : à mi-chemin entre les picots de base
           *[no] À l’aplomb des picots de base
        }
       *[bottom] { $count } picots, le picot 1 dans le trou 1
    }
rig-pins-note-how = Picots de { $length }{ $key ->
        [none] { "" }
       *[other] , clé à six pans de { $key }
    }{ $key ->
        [none] { "" }
       *[other] . À la main, jusqu’à ce qu’ils portent
    }

# Exemple : Préparation du tube, étape 3 sur 7. Placez la bague de tête de façon que sa rangée de trous
# soit à 42 millimètres de celle de la bague de base. Tournez-la jusqu’à ce que son trou 1 soit à
# l’aplomb du trou de base 1.
# $half: yes when the ring is turned half a hole on.
rig-space-say = Placez la bague de tête ainsi : sa rangée de trous à { $spacing } de celle de la bague de base, d’une rangée de picots à l’autre. { $half ->
        [yes] Tournez-la jusqu’à ce que son trou 1 soit à { $hand ->
            [left] gauche
           *[right] droite
        }, à mi-chemin entre les trous de base 1 et 2.
       *[no] Tournez-la jusqu’à ce que son trou 1 soit à l’aplomb du trou de base 1.
    }
rig-space-say-brief = Rangées de picots à { $spacing } l’une de l’autre, { $half ->
        [yes] trou de tête 1 un demi-trou plus à { $hand ->
            [left] gauche.
           *[right] droite.
        }
       *[no] trou de tête 1 à l’aplomb du trou de base 1.
    }
rig-space-say-teach = Placez la bague de tête ainsi : sa rangée de trous à { $spacing } de celle de la bague de base, d’une rangée de picots à l’autre. { $half ->
        [yes] Tournez-la jusqu’à ce que son trou 1 soit à { $hand ->
            [left] gauche
           *[right] droite
        }, à mi-chemin entre les trous de base 1 et 2.
       *[no] Tournez-la jusqu’à ce que son trou 1 soit à l’aplomb du trou de base 1.
    } À cette distance, les trajets ont le mou que demande le nœud fini.
rig-space-show = Rangées de picots à { $spacing }
rig-space-note = { $half ->
        [yes] Bague de tête un demi-trou plus à { $hand ->
            [left] gauche
           *[right] droite
        }
       *[no] Trou de tête 1 à l’aplomb du trou de base 1
    }

## Rigging: a tube without rings

# $length: of the strip. $pitch: from mark to mark. $shift: how far on top pin 1 stands, none when
# straight above. $spacing: from the bottom marks to the top marks.
rig-strip-say = { $rim ->
        [top] Placez les { $pins } picots de tête à { $spacing } de ceux de base, avec une bande de papier de { $length } de long et un repère tous les { $pitch }. { $shift ->
            [none] Le picot de tête 1 est à l’aplomb du picot de base 1.
           *[other] Le picot de tête 1 est à { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            } du picot de base 1, à mi-chemin du picot de base 2.
        }
       *[bottom] Enroulez autour du tube une bande de papier de { $length } de long, avec un repère tous les { $pitch }, et placez les { $pins } picots de base aux repères.
    }
rig-strip-say-brief = { $rim ->
        [top] Placez les { $pins } picots de tête à { $spacing } de ceux de base, avec une bande de papier de { $length } de long et un repère tous les { $pitch }. { $shift ->
            [none] Le picot de tête 1 est à l’aplomb du picot de base 1.
           *[other] Le picot de tête 1 est à { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            } du picot de base 1, à mi-chemin du picot de base 2.
        }
       *[bottom] Enroulez autour du tube une bande de papier de { $length } de long, avec un repère tous les { $pitch }, et placez les { $pins } picots de base aux repères.
    }
rig-strip-say-teach = { $rim ->
        [top] Placez les { $pins } picots de tête à { $spacing } de ceux de base, avec une bande de papier de { $length } de long et un repère tous les { $pitch }. { $shift ->
            [none] Le picot de tête 1 est à l’aplomb du picot de base 1.
           *[other] Le picot de tête 1 est à { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            } du picot de base 1, à mi-chemin du picot de base 2.
        }
       *[bottom] Enroulez autour du tube une bande de papier de { $length } de long, avec un repère tous les { $pitch }, et placez les { $pins } picots de base aux repères.
    } La bande est aussi longue que le tour du tube : ses repères sont donc à des distances égales.
rig-strip-show = { $rim ->
        [top] Picots de tête à { $spacing } de la base
       *[bottom] Picots de base tous les { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] À l’aplomb des picots de base, tous les { $pitch }
           *[other] Décalés : { $shift } à { $hand ->
                [left] gauche
               *[right] droite
            }, tous les { $pitch }
        }
       *[bottom] { $pins } repères sur une bande de { $length }
    }

## Rigging: numbers, cord, beginning

# $rows: rows of pins at each rim, more than one where bights are nested.
rig-number-say = Collez en tout { $tape } de ruban de masquage, ou de papier qui s’enlève, { $rows ->
        [one] autour des deux bagues
       *[other] le long de chaque rang de picots, si vous voulez d’une couleur pour chacun
    }. Numérotez-y les picots de 1 à { $pins } vers la { $hand ->
        [left] gauche
       *[right] droite
    }, de même à la base et à la tête.
rig-number-say-brief = Numérotez les picots sur le ruban, de 1 à { $pins }, vers la { $hand ->
        [left] gauche
       *[right] droite
    }.
rig-number-say-teach = Collez en tout { $tape } de ruban de masquage, ou de papier qui s’enlève, { $rows ->
        [one] autour des deux bagues
       *[other] le long de chaque rang de picots, si vous voulez d’une couleur pour chacun
    }. Numérotez-y les picots de 1 à { $pins } vers la { $hand ->
        [left] gauche
       *[right] droite
    }, de même à la base et à la tête. Chaque étape nomme les picots par ces numéros.
rig-number-show = Numérotez les picots de 1 à { $pins }
rig-number-note = Sur { $tape } de ruban, vers la { $hand ->
        [left] gauche
       *[right] droite
    }, { $rows ->
        [one] de même à la base et à la tête
       *[other] de même pour tous les rangs, si vous voulez d’une couleur pour chacun
    }

# $name: what the tyer calls the cord, or none.
rig-cut-say = Coupez { $pieces ->
        [one] 1 morceau
       *[other] { $pieces } morceaux
    } de cordon{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $length } de long{ $pieces ->
        [one] { "" }
       *[other] { " " }chacun
    }. Les bouts sont compris.
rig-cut-say-brief = Coupez { $pieces ->
        [one] 1 morceau
       *[other] { $pieces } morceaux
    } de cordon{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $length } de long{ $pieces ->
        [one] { "" }
       *[other] { " " }chacun
    }.
rig-cut-say-teach = Coupez { $pieces ->
        [one] 1 morceau
       *[other] { $pieces } morceaux
    } de cordon{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $length } de long{ $pieces ->
        [one] { "" }
       *[other] { " " }chacun
    }. Les bouts sont compris. Mesurez deux fois, coupez une fois.
rig-cut-show = Coupez { $pieces ->
        [one] { $length } de cordon
       *[other] { $pieces } × { $length } de cordon
    }
rig-cut-note = { $name ->
        [none] Bouts compris
       *[other] { $name } ; bouts compris
    }
