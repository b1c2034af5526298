# The first question of the plan screen: what is covered, and whether the knot can be slid onto it.

# The answers, each below its picture. $covered: round, taper, ball or mat. $slides: on or place.
plan-covers = { $covered ->
        [round] Manche, rambarde
        [taper] Effilé
        [ball] Boule, pommeau
       *[mat] Tapis plat
    }
plan-slides-asked = Le nœud peut-il s’enfiler ?
plan-slides = { $slides ->
        [on] Il s’enfile
       *[place] Fait sur place
    }

# The same, told when they are in turn.
plan-covers-told = { $covered ->
        [round] À couvrir : un manche ou une rambarde, de même grosseur partout.
        [taper] À couvrir : une pièce effilée, avec un gros bout et un petit bout.
        [ball] À couvrir : une boule ou un pommeau.
       *[mat] Rien à couvrir : un tapis plat, fait sur une planche.
    } Les flèches droite et gauche le changent.
plan-slides-told = { $slides ->
        [on] Le nœud peut-il s’enfiler ? Oui : il est fait sur un tube à picots, puis enfilé.
       *[place] Le nœud peut-il s’enfiler ? Non : il est fait sur place, sans tube.
    } La flèche droite le change.

# What is still to be said of the thing, and the names of its measures.
plan-measure-wanted = { $covered ->
        [round] Quel est le diamètre de l’objet ? Mesurez-le de part en part, ou tout autour avec un mètre ruban.
        [taper] Quel est son diamètre à chaque bout ? Donnez les deux avec deux-points entre eux, le bout de base d’abord, comme 32:26 mm.
        [ball] Quel est le diamètre de la boule ?
       *[mat] Quelle taille aura le tapis d’un bord à l’autre ? Le trou vient après deux-points, comme 150:60 mm.
    }
plan-taper = Ses deux bouts, base d’abord
plan-ball = Son diamètre
plan-mat = D’un bord à l’autre, un trou après deux-points
# What was read in the field of a taper or of a mat with its hole, below it. $shape: taper or mat.
# Example: base 34 mm, tête 26 mm; 150 mm d’un bord à l’autre, trou 40 mm
plan-ends-read = { $shape ->
        [mat] { $first } d’un bord à l’autre, trou { $second }
       *[taper] base { $first }, tête { $second }
    }
# $ends: what stands in the field, or none.
plan-taper-told = Diamètres des deux bouts, celui de base d’abord{ $ends ->
        [none] .
       *[other] { " " }: { $ends }.
    } Deux-points les séparent.
