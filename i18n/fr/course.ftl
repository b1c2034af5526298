# First ties: a short course of six knots, each taught in the teach depth. For each: its name, and
# the idea that is new in it, told before the tie begins.

course-heading = Premiers nœuds
course-say = Premiers nœuds : six nœuds, chacun un peu plus difficile que le précédent, et le dernier sans tube. Suivant commence celui qui est choisi. Les flèches bas et haut choisissent.

# A lesson in the list. $state: new, begun or done. Exemple : 1. 3 brins, 4 ganses : picots et trajets (fait)
course-line = { $number }. { $lesson ->
        [1] Corde de cloche, 3 brins, 5 ganses : picots, trajets, croisements
        [2] Collier de bouteille, 3 brins, 7 ganses : le rythme de la main
        [3] Anneau de gaffe, 4 brins, 7 ganses : picots à l’aplomb, trajets plus longs
        [4] Poignée de barre, 5 brins, 7 ganses, doublé : suivre
        [6] Autour de la main, 3 brins, 4 ganses : ni tube ni picots
       *[5] Corde de cloche à deux couleurs, deux cordons de 3 brins, 5 ganses : entrelacer un second cordon
    }{ $state ->
        [done] { " " }(fait)
        [begun] { " " }(commencé)
       *[new] { "" }
    }

# The same as it is spoken when the choice moves to it.
course-line-say = Leçon { $number } sur { $lessons } : { $lesson ->
        [1] une corde de cloche, 3 brins, 5 ganses.
        [2] un collier de bouteille, 3 brins, 7 ganses.
        [3] un anneau de gaffe, 4 brins, 7 ganses.
        [4] une poignée de barre, 5 brins, 7 ganses, doublé.
        [6] autour de la main, 3 brins, 4 ganses, sans tube ni picots.
       *[5] une corde de cloche à deux couleurs, deux cordons de 3 brins, 5 ganses, entrelacés.
    } { $state ->
        [done] Vous l’avez fait.
        [begun] Vous l’avez commencé ; il attend parmi vos nœuds en cours.
       *[new] Vous ne l’avez pas encore fait.
    }

# Beside the lesson that is chosen: how its weave begins. $kind: run when with over, twin when with under.
course-weave = Commence en { $kind ->
        [twin] glissant
       *[run] enjambant
    } : { $tucks } passages dessous · W : commencer en { $kind ->
        [twin] enjambant
       *[run] glissant
    }
course-weave-say = Le tressage commence en { $kind ->
        [twin] glissant sous un cordon
       *[run] enjambant un cordon
    }, et il faut glisser { $tucks } fois. W le commence dans l’autre sens.

# The idea that is new, told before the first step and shown beside the choice.
course-idea = { $lesson ->
        [1] Un petit nœud qui vaut la peine, pour la corde d’une cloche. Placez cinq picots à chaque bord du tube, ceux de tête à mi-chemin entre ceux de base, et numérotez-les. Le cordon monte d’un picot de base à un picot de tête, puis redescend, toujours dans le même sens autour du tube. Chaque traversée, en montant ou en descendant, est un trajet. Les premiers trajets ne croisent rien ; ensuite chacun enjambe et glisse dessous, tour à tour, et après dix trajets le cordon est revenu à son premier picot.
        [2] La même tresse, avec deux picots de plus à chaque bord, pour le col d’une bouteille. Rien n’est nouveau, sauf la longueur : trouvez le rythme, monter et descendre, enjamber et glisser sous, et regardez l’ouvrage de temps en temps. Quand un trajet arrive à un autre picot que celui annoncé, la faute est plus tôt : appuyez sur erreur et défaites-le.
        [3] Un nombre pair de brins, pour l’anneau d’une gaffe. Chaque picot de tête est maintenant à l’aplomb d’un picot de base, et un trajet croise trois cordons, en enjambant et en glissant dessous tour à tour ; là où il enjambe en montant, il glisse dessous en descendant. Comptez les croisements d’un trajet avant de le tendre.
        [4] La poignée d’une barre : un nœud plus large, et le premier qui soit doublé. Quand la première passe est revenue à son départ, le même cordon refait le parcours le long de lui-même, toujours côté base du premier cordon ; il enjambe là où celui-ci enjambe et glisse dessous là où celui-ci glisse dessous. À un croisement qui a déjà deux cordons, il enjambe les deux ou glisse sous les deux. Ensuite on dégage le nœud, on l’égalise et on le finit.
        [6] Avec rien d’autre qu’un mètre et demi de cordon : le premier nœud autour de votre main. Vos quatre doigts, bien serrés, sont le tube, et chaque ganse a son doigt, si bien que personne n’a de picots à numéroter. Un côté du nœud est vers le poignet, l’autre vers le bout des doigts. Le cordon traverse le devant des doigts, du côté de la paume, passe derrière, et refait le tour, et vous tournez la main pour voir le côté où vous travaillez. Posez-le lâche, qu’un doigt puisse encore passer : ce qui est lâche se reprend à la fin. C’est bien le nœud que l’on fait sur un tube, trajet par trajet, et il glisse des doigts sur le manche.
       *[5] La corde de cloche encore, en deux couleurs : un second cordon s’entrelace avec le premier. Placez à chaque bord deux rangs de cinq picots, l’un dans l’autre et alignés, et coupez un cordon de chaque couleur. Le premier est le nœud de la première leçon, des picots de base du dehors aux picots de tête du dedans. Le second va des picots de base du dedans aux picots de tête du dehors, chaque trajet au milieu, entre deux trajets du premier. Ce qu’il croise est dit trajet par trajet ; là où les deux couleurs sont régulières, c’est bon.
    }
