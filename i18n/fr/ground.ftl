# Ce qui se dit là où un nœud ne se dégage pas d’un tube : sur une rambarde, un cône, une boule, une planche.

# Exemple : Chaque fois, tirez le cordon entier : il reste 3,2 mètres.
draw-through-say = { $known ->
        [yes] Chaque fois, tirez le cordon entier : il en reste { $length }.
       *[no] Chaque fois, tirez le cordon entier.
    }
draw-through-show = { $known ->
        [yes] Tirez le cordon entier : il en reste { $length }
       *[no] Tirez le cordon entier
    }

fair-way-say = { $way ->
        [ball] { $last ->
            [yes] À cette dernière reprise, serrez aussi les ganses des deux bords, pour qu’elles se referment sur les pôles.
           *[no] Jusqu’à la dernière reprise, seul le milieu de la boule se serre : laissez lâches les ganses des deux bords.
        }
        [taper] { $last ->
            [yes] À cette dernière reprise, serrez aussi les ganses du petit bout.
           *[no] Jusqu’à la dernière reprise, seul le gros bout se serre, { -at-the-bottom } : laissez lâches les ganses du petit bout, car ce qui est lâche file de ce côté.
        }
        [taper-down] { $last ->
            [yes] À cette dernière reprise, serrez aussi les ganses du petit bout.
           *[no] Jusqu’à la dernière reprise, seul le gros bout se serre, { -at-the-top } : laissez lâches les ganses du petit bout, car ce qui est lâche file de ce côté.
        }
       *[mat] Tenez l’ouvrage à plat. { $last ->
            [yes] À cette dernière reprise, serrez aussi les ganses du centre.
           *[no] Jusqu’à la dernière reprise, seul le cercle du bord se serre : laissez lâches les ganses du centre.
        }
    }
fair-way-show = { $way ->
        [ball] { $last ->
            [yes] Maintenant les ganses aussi, sur les pôles
           *[no] Le milieu d’abord ; ganses lâches jusqu’à la dernière reprise
        }
        [mat] À plat ; { $last ->
            [yes] maintenant les ganses du centre aussi
           *[no] ganses du centre lâches jusqu’à la dernière reprise
        }
       *[taper] { $last ->
            [yes] Maintenant le petit bout aussi
           *[no] Le gros bout d’abord ; le petit, lâche jusqu’à la dernière reprise
        }
    }

# Un nœud qui n’est pas serré à fond. Arguments comme en anglais.
fair-open-say = { $way ->
        [ball] Arrêtez quand le nœud fait { $width } de large, le long de la boule : plus serré, il couvre moins.
        [mat] Arrêtez quand l’anneau fait { $width } de large : plus serré, il couvre moins.
       *[other] Arrêtez quand le nœud fait { $width } de large, d’un bord à l’autre : plus serré, il couvre moins.
    }
fair-open-show = { $way ->
        [ball] Jusqu’à { $width } de large, le long de la boule
        [mat] Jusqu’à ce que l’anneau fasse { $width } de large
       *[other] Jusqu’à { $width } de large, d’un bord à l’autre
    }

# Une planche se prépare. Arguments comme en anglais.
rig-board-say = Posez la feuille imprimée à plat sur la planche et fixez-la au ruban. Piquez une épingle en T à chaque marque { $rows ->
        [one] du cercle de dehors, { $outer } de diamètre, et du cercle de dedans, { $inner } de diamètre : { $pins } par cercle,
       *[other] des { $rows } cercles du bord, le plus en dehors de { $outer } de diamètre, et des { $rows } du centre, le plus en dedans de { $inner } : { $pins } par cercle, { $all } en tout,
    } un peu penchées à l’opposé du nœud. { $rows ->
        [one] { "" }
       *[other] Celles d’un même numéro sont alignées.
    } { $staggered ->
        [yes] Le picot du centre 1 est à mi-chemin entre les picots du bord 1 et 2.
       *[no] Le picot du centre 1 est dans le prolongement du picot du bord 1.
    }
rig-board-say-brief = Feuille imprimée sur la planche. Épingles en T aux marques, { $rows ->
        [one] { $pins } par cercle.
       *[other] { $circles } cercles de { $pins }, { $all } en tout.
    } { $staggered ->
        [yes] Le picot du centre 1 est à mi-chemin entre les picots du bord 1 et 2.
       *[no] Le picot du centre 1 est dans le prolongement du picot du bord 1.
    }
rig-board-say-teach = Posez la feuille imprimée à plat sur la planche et fixez-la au ruban. Piquez une épingle en T à chaque marque { $rows ->
        [one] du cercle de dehors, { $outer } de diamètre, et du cercle de dedans, { $inner } de diamètre : { $pins } par cercle,
       *[other] des { $rows } cercles du bord, le plus en dehors de { $outer } de diamètre, et des { $rows } du centre, le plus en dedans de { $inner } : { $pins } par cercle, { $all } en tout,
    } un peu penchées à l’opposé du nœud. { $rows ->
        [one] { "" }
       *[other] Celles d’un même numéro sont alignées.
    } { $staggered ->
        [yes] Le picot du centre 1 est à mi-chemin entre les picots du bord 1 et 2.
       *[no] Le picot du centre 1 est dans le prolongement du picot du bord 1.
    } Ces épingles sont les picots des étapes. Penchées ainsi elles tiennent le cordon, et le rendent quand on les ôte.
rig-board-show = { $rows ->
        [one] Épingles en T sur deux cercles, { $pins } par cercle
       *[other] Épingles en T sur { $circles } cercles, { $pins } par cercle
    }
rig-board-note = { $outer } et { $inner } de diamètre, aux marques de la feuille
