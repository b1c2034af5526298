# Why a knot does not lie on a taper, a ball, a mat or in place, and what would; and what a mat is tied on.

# $most_leads and $most_bights: the most that do go, or 0 for none.
shape-wider = Ce nœud s’étend sur { $most } au plus et ne peut pas couvrir { $given } : prenez plus de brins, ou couvrez moins.
shape-taper-short = Ce qui s’amincit autant doit avoir plus de { $least } de long, et { $over } ne suffisent pas : donnez la longueur sur laquelle il s’amincit, ou des bouts moins différents.
shape-thin-end = { $leads } brins vont jusqu’où { $bights } ganses ne font plus le tour du bout mince, qui devrait avoir { $thick_from } d’épaisseur : prenez { $most_leads ->
        [0] { $most_bights ->
            [0] moins de brins et moins de ganses
           *[other] { $most_bights } ganses au plus
        }
       *[other] { $most_leads } brins au plus{ $most_bights ->
            [0] { "" }
           *[other] , ou { $most_bights } ganses au plus
        }
    }, ou un cordon plus fin.
shape-ball-full = { $leads } brins et { $bights } ganses, c’est plus que n’en tient une boule de { $ball } : prenez { $most_leads ->
        [0] { $most_bights ->
            [0] moins de brins et moins de ganses
           *[other] { $most_bights } ganses au plus
        }
       *[other] { $most_leads } brins au plus{ $most_bights ->
            [0] { "" }
           *[other] , ou { $most_bights } ganses au plus
        }
    }, ou une boule de { $ball_from }, ou un cordon plus fin.
# $cord_to: the thickest cord that does.
shape-ball-small = Un cordon de { $cord } est trop épais pour se plier autour d’une boule de { $ball } : prenez un cordon de { $cord_to } au plus, ou une boule d’au moins { $ball_from }.
shape-mat-full = { $leads } brins et { $bights } ganses ne tiennent pas dans un tapis de { $outer } : prenez { $most_leads ->
        [0] { $most_bights ->
            [0] moins de brins et moins de ganses
           *[other] { $most_bights } ganses au plus
        }
       *[other] { $most_leads } brins au plus{ $most_bights ->
            [0] { "" }
           *[other] , ou { $most_bights } ganses au plus
        }
    }, ou un tapis de { $outer_from }, ou un cordon plus fin.
shape-hole-small = { $bights } ganses ne font pas le tour d’un trou de { $hole } : prenez { $most_bights ->
        [0] { "" }
       *[other] { $most_bights } ganses au plus, ou{" "}
    }un trou de { $hole_from } au moins.
rig-no-room-in-place = { $leads } brins et { $bights } ganses en { $passes ->
        [one] 1 passe
       *[other] { $passes } passes
    } ne laissent pas de place pour passer le cordon là où on le noue : prenez { $most_leads ->
        [0] { "" }
       *[other] { $most_leads } brins au plus, ou{" "}
    }{ $most_bights ->
        [0] { "" }
       *[other] { $most_bights } ganses au plus, ou{" "}
    }{ $most_passes ->
        [0] { "" }
        [one] 1 passe, ou{" "}
       *[other] { $most_passes } passes au plus, ou{" "}
    }un cordon plus fin.

# Example: Il vous faut, 1 sur 6 : une planche de liège ou de bois tendre, d’au moins 180 millimètres de large. Appuyez sur suivant quand vous l’avez.
kit-board-say = Il vous faut, { $number } sur { $items } : une planche de liège ou de bois tendre, d’au moins { $across } de large. Appuyez sur suivant quand vous l’avez.
kit-board-say-brief = Une planche de liège ou de bois tendre, d’au moins { $across } de large.
kit-board-say-teach = Il vous faut, { $number } sur { $items } : une planche de liège ou de bois tendre, d’au moins { $across } de large. Appuyez sur suivant quand vous l’avez. Le tapis s’y noue à plat, autour d’épingles qu’on y pique.
kit-board-show = Planche de liège ou de bois tendre, { $across } de large
kit-board-note = Les épingles s’y piquent

# The printed sheet of a board. $pages: of A4.
kit-sheet-say = Il vous faut, { $number } sur { $items } : la feuille imprimée pour les épingles, { $pages ->
        [one] 1 page A4
       *[other] { $pages } pages A4
    } en vraie grandeur. Appuyez sur suivant quand vous l’avez.
kit-sheet-say-brief = La feuille imprimée pour les épingles, { $pages ->
        [one] 1 page A4
       *[other] { $pages } pages A4
    } en vraie grandeur.
kit-sheet-say-teach = Il vous faut, { $number } sur { $items } : la feuille imprimée pour les épingles, { $pages ->
        [one] 1 page A4
       *[other] { $pages } pages A4
    } en vraie grandeur. Appuyez sur suivant quand vous l’avez. Imprimez-la depuis les papiers de ce nœud, et mesurez sa ligne : une imprimante qui réduit déplace toutes les marques.
kit-sheet-show = Feuille imprimée, { $pages ->
        [one] 1 page
       *[other] { $pages } pages
    }
kit-sheet-note = En vraie grandeur, depuis les papiers de ce nœud

# $bottom, $top: from mark to mark at either rim. $outer, $inner: across the circles of pins.
card-tapes-apart = Les repères d’un bord sont à { $bottom } l’un de l’autre, ceux de l’autre bord à { $top }, mesurés le long du ruban.
card-board-circles = Les épingles sont sur deux cercles de { $outer } et de { $inner } de diamètre.

# $thinner, $thicker: a cord that would do, or none.
fit-none-lies = Aucun nœud de ce cordon ne tient là en cachant assez : prenez { $thinner ->
        [none] { $thicker ->
            [none] un autre cordon, ou couvrez autre chose
           *[other] un cordon de { $thicker }
        }
       *[other] un cordon de { $thinner }{ $thicker ->
            [none] { "" }
           *[other] {" "}ou de { $thicker }
        }
    }.
fit-no-room-in-place = Aucun nœud de ce cordon n’y laisse la place de passer le cordon : prenez { $thinner ->
        [none] un cordon plus fin
       *[other] un cordon de { $thinner }
    }, ou nouez-le sur un tube plus gros et enfilez-le.

# In the picture of a board: which circle is which, beyond the outer one and within the inner one, as its pins are called.
picture-circle = { $circle ->
        [outer] bord
       *[inner] centre
    }

# In the picture of a tube: at the number of a pin that is round the back of it.
picture-behind = derrière
