# A knot that somebody brings, counted on the knot itself until it is known.

count-phase = Compter un nœud
# $asked: bights, rows, passes, over, colours or found. $number: so far, or the row; found: strands.
count-so-far = { $asked ->
        [bights] { $number ->
            [one] 1 feston
           *[other] { $number } festons
        }
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
       *[over] Il enjambe au rang { $number } ?
    }
# $tie: the knot that was found. $colours: what its colours say: cord, passes, strands, alike or too-many.
count-told = { $asked ->
        [bights] Tenez le nœud debout. Combien de festons a son bord de base ? Posez le pouce sur l’un et comptez un tour. Suivant : un de plus.
        [rows] Depuis un feston de base, suivez un cordon jusqu’au bord de tête. Combien de fois en croise-t-il d’autres ? Ceux qui vont côte à côte comptent pour un. Suivant : un de plus.
        [passes] Combien de cordons vont côte à côte ? Suivant : un de plus.
        [over] Suivez un cordon qui monte vers la droite depuis le bord de base. Croisement { $number } sur { $of } : est-ce qu’il enjambe ?
        [colours] Combien de couleurs de cordon voyez-vous ? Suivant : une de plus.
       *[found] { $tie }. { $colours ->
            [cord] Un seul cordon le fait tout entier.
            [passes] C’est un seul circuit, et des passes y ont leur propre cordon.
            [strands] Ce sont { $number } circuits, chacun avec son cordon : les couleurs s’accordent.
            [alike] Ce sont { $number } circuits, chacun avec son cordon ; certains ont la même couleur.
           *[too-many] Un tel nœud ne peut pas avoir tant de couleurs : il y a une erreur de compte.
        }
    }
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
