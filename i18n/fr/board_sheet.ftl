# La feuille imprimée d’une planche : des cercles de repères en vraie grandeur.

# Arguments comme en anglais.
board-title = Feuille de planche : { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, cercles de picots de { $outer } et { $inner } de diamètre

board-how = Fixez la feuille à plat sur la planche au ruban et piquez une épingle en T au milieu de chaque croix marquée. La ligne pâle est le chemin des deux premiers trajets : vers l’intérieur depuis le picot 1 du bord, puis de nouveau vers l’extérieur.
board-pages = S’il y a plusieurs pages, n’en rognez aucune : posez chacune sur la ligne en tirets de la précédente, croix sur croix, et mesurez la ligne du bas avant de piquer la première épingle.

board-hand = { $hand ->
        [left] Le picot 1 du bord est le plus proche de vous. Vus de là, les numéros vont vers la gauche, comme le cordon.
       *[right] Le picot 1 du bord est le plus proche de vous. Vus de là, les numéros vont vers la droite, comme le cordon.
    }

# Les rubans autour de ce que l’on couvre sur place. Arguments comme en anglais.
tape-title = Rubans : { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $bottom } de tour { -at-the-bottom }, { $top } { -at-the-top }

tape-top = Ruban { -at-the-top }
tape-bottom = Ruban { -at-the-bottom }
