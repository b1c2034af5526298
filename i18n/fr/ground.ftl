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
        [ball] Serrez d’abord le milieu de la boule, et les deux bords en dernier, pour qu’ils se referment sur les pôles.
        [taper] Serrez d’abord le gros bout, { -at-the-bottom }, et le petit en dernier : ce qui est lâche file vers le petit.
        [taper-down] Serrez d’abord le gros bout, { -at-the-top }, et le petit en dernier : ce qui est lâche file vers le petit.
       *[mat] Tenez l’ouvrage à plat, et serrez d’abord le cercle du bord, celui du centre en dernier.
    }
fair-way-show = { $way ->
        [ball] Du milieu de la boule vers les pôles
        [taper] Du gros bout vers le petit
        [taper-down] Du gros bout vers le petit
       *[mat] Du bord vers le centre, à plat
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
