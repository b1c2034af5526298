# What is covered: a round thing, a taper, a ball, a mat; slid on from a tube or tied in place. What can be wrong
# with it, one sentence each.
#
# $given: the text as it was typed. Lengths are one argument each with its unit (see lengths.ftl).

# $one, $other: object, girth, ball or mat.
ask-object-twice = Ce qui est couvert est donné deux fois, { $one ->
        [object] par son diamètre
        [girth] par son tour
        [ball] comme boule
       *[mat] comme tapis
    } et { $other ->
        [object] par son diamètre
        [girth] par son tour
        [ball] comme boule
       *[mat] comme tapis
    } : ne donnez qu’un des deux.
ask-halves = { $asking ->
        [mat] « { $given } » n’est pas la taille d’un tapis : donnez-la d’un bord à l’autre, par exemple 150mm, ou avec son trou, par exemple 150mm:60mm.
       *[object] « { $given } » ne dit pas l’épaisseur d’une pièce qui s’amincit : donnez les deux bouts avec un deux-points entre eux, par exemple 30mm:24mm.
    }
# $asking: any of the lengths of which there is one. $example: such a length.
ask-one-length = « { $given } », ce sont deux longueurs, et { $asking ->
        [ball] une boule n’a qu’un diamètre
       *[other] ici il n’y en a qu’une
    } : donnez-en une, par exemple { $example }.
ask-taper-length = Une pièce qui s’amincit demande la longueur sur laquelle elle le fait, et aucune n’est donnée : donnez-la comme longueur à couvrir, par exemple 120mm.
ask-end-thin = Le bout mince, de { $end }, est plus mince que le cordon de { $cord } : prenez un cordon plus fin, ou arrêtez le nœud là où l’objet est plus gros.
ask-hole-wide = Un trou de { $hole } ne tient pas dans un tapis de { $outer } : donnez d’abord le bord extérieur, puis le trou, par exemple 150mm:60mm.
# $asking: ball or mat.
ask-whole-cover = { $asking ->
        [ball] Une boule se couvre d’un pôle à l’autre et ne prend pas de longueur à couvrir en plus : retirez cette longueur.
       *[mat] Un tapis a sa taille et ne prend pas de longueur à couvrir en plus : retirez cette longueur, ou donnez le trou après le bord extérieur, par exemple 150mm:60mm.
    }
ask-in-place-unknown = Fait sur place se dit yes (oui) ou no (non), et « { $given } » n’est ni l’un ni l’autre : dites yes pour un nœud fait sur ce qu’il couvre.
ask-in-place-nothing = Un nœud fait sur place se fait sur ce qu’il couvre, et cela n’est pas donné : dites son diamètre, par exemple --object 30mm.
# $asking: tube, rows, pin, thread, wall, ring-width or tube-length.
ask-in-place-tube = Un nœud fait sur place ne prend pas { $asking ->
        [tube] de tube
        [rows] de rangées de trous
        [pin] de longueur de picots
        [thread] de filetage de picots
        [wall] de paroi de tube
        [ring-width] de largeur de bagues
       *[tube-length] de longueur de tube
    } : retirez cela, ou renoncez à le faire sur place et passez le nœud du tube à l’objet.
ask-mat-tube = Un tapis se fait à plat sur une planche et ne prend pas { $asking ->
        [tube] de tube
        [rows] de rangées de trous
        [pin] de longueur de picots
        [thread] de filetage de picots
        [wall] de paroi de tube
        [ring-width] de largeur de bagues
       *[tube-length] de longueur de tube
    } : retirez cela.

ask-mat-in-place = Un tapis se fait toujours là où il reste, sur sa planche : retirez --in-place.
order-not-on-stick = Ni un tapis ni une boule ne tient sur un bâton avec d’autres nœuds : retirez la longueur du bâton, ou mettez cette pièce dans une commande à part.

## The knots that fit

# Of a taper, a ball and a mat; see fit-heading. $top: the other end of a taper. $hole: or none.
fit-heading-taper = { $count ->
        [0] Aucun nœud ne fait juste { $cover } sur une pièce qui va de { $object } à { $top } avec un cordon de { $cord }
        [one] Un seul nœud couvre { $cover } d’une pièce qui va de { $object } à { $top } avec un cordon de { $cord }
       *[other] { $count } nœuds couvrent { $cover } d’une pièce qui va de { $object } à { $top } avec un cordon de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , et un autre s’en approche
       *[other] , et { $near } s’en approchent
    }{ $shown ->
        [0] .
        [one] { " " }; le meilleur d’abord.
       *[other] { " " }; les { $shown } meilleurs d’abord.
    }
fit-heading-ball = { $count ->
        [0] Aucun nœud ne couvre juste une boule de { $object } de diamètre avec un cordon de { $cord }
        [one] Un seul nœud couvre une boule de { $object } de diamètre avec un cordon de { $cord }
       *[other] { $count } nœuds couvrent une boule de { $object } de diamètre avec un cordon de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , et un autre s’en approche
       *[other] , et { $near } s’en approchent
    }{ $shown ->
        [0] .
        [one] { " " }; le meilleur d’abord.
       *[other] { " " }; les { $shown } meilleurs d’abord.
    }
fit-heading-mat = { $count ->
        [0] Aucun nœud ne donne juste un tapis de { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }avec un trou de { $hole }
        } avec un cordon de { $cord }
        [one] Un seul nœud donne un tapis de { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }avec un trou de { $hole }
        } avec un cordon de { $cord }
       *[other] { $count } nœuds donnent un tapis de { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }avec un trou de { $hole }
        } avec un cordon de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , et un autre s’en approche
       *[other] , et { $near } s’en approchent
    }{ $shown ->
        [0] .
        [one] { " " }; le meilleur d’abord.
       *[other] { " " }; les { $shown } meilleurs d’abord.
    }

# Above what is done before the first leg. $on: tube, round, taper, ball or mat.
rig-where = { $on ->
        [tube] Sur le tube
        [mat] Sur la planche
       *[round] Sur ce qui est couvert
    }
