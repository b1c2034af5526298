# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Compter un nœud
count-opening = Compter un nœud.
# $asked: bights, nested, lands, rows, passes, over, colours or found. $number: so far, or which
# crossing; found: strands. $nested: rows of scallops at each rim.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] 1 feston
           *[other] { $number } festons
        }
        [nested] { $number ->
            [one] 1 feston seul
           *[other] { $number } festons emboîtés
        }
        [lands] Rang { $number } de festons
        [rows] { $number ->
            [one] 1 croisement
           *[other] { $number } croisements
        }
        [passes] { $number ->
            [one] 1 cordon
           *[other] { $number } cordons
        }
        [colours] { $number ->
            [one] 1 couleur
           *[other] { $number } couleurs
        }
       *[over] Il enjambe au croisement { $number } ?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Tenez le nœud debout. Combien de festons a son bord de base ? Posez le pouce sur l’un et comptez un tour. Suivant : un de plus.
        [nested] Regardez un endroit de ce bord. Combien de festons y sont emboîtés l’un dans l’autre ? Les cordons qui vont côte à côte tout du long comptent pour un. Le plus souvent, c’est 1. Suivant : un de plus.
        [lands] Depuis un feston extérieur de la base, suivez un cordon jusqu’au bord de tête. Dans quel rang de festons y tourne-t-il, 1 étant l’extérieur ? Suivant : un rang plus à l’intérieur.
        [rows] Depuis { $nested ->
            [one] un feston de base
           *[other] ce feston extérieur de la base
        }, suivez un cordon jusqu’au bord de tête. Combien de fois en croise-t-il d’autres ? Ceux qui vont côte à côte comptent pour un. Suivant : un de plus.
        [passes] Combien de cordons vont côte à côte ? Suivant : un de plus.
        [over] { $nested ->
            [one] Suivez un cordon qui monte vers la droite depuis le bord de base.
           *[other] Suivez un cordon qui monte vers la droite depuis un feston du rang { $from } de la base, compté de l’extérieur.
        } Croisement { $number } sur { $of } : est-ce qu’il enjambe ?
        [colours] Combien de couleurs de cordon voyez-vous ? Suivant : une de plus.
       *[found] { $tie }. { $colours ->
            [cord] Un seul cordon le fait tout entier.
            [passes] C’est un seul circuit, et des passes y ont leur propre cordon.
            [strands] Ce sont { $number } circuits, chacun avec son cordon : les couleurs s’accordent.
            [alike] Ce sont { $number } circuits, chacun avec son cordon ; certains ont la même couleur.
           *[too-many] Un tel nœud ne peut pas avoir tant de couleurs : il y a une erreur de compte.
        }
    }
count-misfit = Avec { $nested } rangs de festons, il y a { $less } croisements ou { $more }, et { $number } n’est pas possible : comptez encore.
count-keys = { $asked ->
        [over] Suivant : il enjambe. Retour : il glisse dessous.
       *[found] { $possible ->
            [yes] Suivant prend ce nœud, retour recompte.
           *[no] Suivant et retour recomptent.
        }
    }
# Printed by “marlinspeak count” when the knot is taken. $given: the options that name it.
count-go-on = Préparez-le avec « marlinspeak rig { $given } », votre tube et votre cordon, ou faites-le avec « marlinspeak tie { $given } ».
count-lines = Entrée pour suivant, b pour retour, un nombre vaut pour lui-même, q pour quitter ; chacun avec Entrée.
# $given: a number that was typed and is not between the bounds.
count-beyond = { $given } n’est pas possible : donnez un nombre de { $least } à { $most }.
count-no-voice = Pas de voix : le service vocal ne répond pas. Les questions continuent par écrit.

## A counted knot on the plan screen

plan-only = { $key } : seulement { $tie }
# Said when the screen appears.
plan-only-told = Seul est regardé le nœud qui a été compté : { $tie }. F10 les regarde tous.{ $bare ->
        [yes] { " " }Entrée le fait tel quel, sans objet ni tube.
       *[no] { "" }
    }
plan-only-note = Entrée le fait tel quel.
plan-any-told = Tous les nœuds sont de nouveau regardés.
key-any-knot = tous les nœuds
