# A knot that is tied round the hand, without tube and pins: where it is chosen. How its steps are told
# stands in grounds/hand.ftl.

# On the form of the start screen: what it is tied on.
start-tied = Fait
start-tied-tube = sur un tube
start-tied-hand = autour de la main

# What the knot comes to, as start-facts, where it is tied round the hand. $strands is one here. $cord: a length with its unit.
start-facts-round-hand = { $leads } brins, { $bights } ganses autour de la main, sans tube ni picots, { $tucks } passages dessous{ $other_tucks ->
        [0] { "" }
       *[other] , ou { $other_tucks } en commençant par enjamber
    }. { $hand ->
        [left] La main droite tient, la paume vers vous, et la gauche noue.
       *[right] La main gauche tient, la paume vers vous, et la droite noue.
    } Prenez { $cord } de cordon, et ayez sous la main du ruban, une lame, et un briquet ou de la colle. Laissez le cordon lâche autour des doigts : serré, il en arrête le sang.{ $uneven ->
        [yes] { " " }Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }

# Why a knot is not tied round the hand, and what to do. $small: yes where it is small enough, and yet not told so.
knot-not-round-hand = { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées,
    } en { $passes ->
        [one] 1 passe
       *[other] { $passes } passes
    }, { $small ->
        [yes] ce n’est aucun des nœuds qui se dictent par les doigts
       *[no] c’est plus que quatre doigts ne tiennent
    } : autour de la main, prenez 3 brins avec 4 ou 5 ganses, 4 brins avec 5 ganses ou 5 brins avec 4 ganses, en 3 passes au plus, et faites celui-ci sur un tube à picots.

# Tube, cord or object were named for a knot that is tied round the hand.
round-hand-without-tube = Autour de la main, il n’y a pas de tube à garnir : enlevez tube, cordon et objet, ou enlevez --round-hand.

# There are no pins to mark.
round-hand-no-strip = Autour de la main, il n’y a pas de picots, donc pas de bande pour les marquer : imprimez la fiche, qui nomme le doigt de chaque ganse, avec marlinspeak sheet card --round-hand.

# The help of the option.
help-round-hand = Le faire autour de la main, sans tube ni picots : 3 brins avec 4 ou 5 ganses, 4 brins avec 5 ganses et 5 brins avec 4 ganses, en 3 passes au plus

## The fingers, as they are told in the steps

# Where a bight lies. Front is the side of the palm.
finger-place = { $place ->
        [edge-forefinger] sur le bord de l’index
        [front-forefinger] devant l’index
        [front-middle] devant le majeur
        [front-ring] devant l’annulaire
        [front-little] devant le petit doigt
        [edge-little] sur le bord du petit doigt
        [back-little] derrière le petit doigt
        [back-ring] derrière l’annulaire
        [back-middle] derrière le majeur
       *[back-forefinger] derrière l’index
    }
# Which way a leg goes about the fingers.
finger-way = { $way ->
        [front] en travers par-devant
        [round-little] en contournant le petit doigt vers l’arrière
        [back] en travers par-derrière
        [round-forefinger] en contournant l’index vers l’avant
        [behind-all] derrière les quatre doigts et de nouveau devant
       *[across-all] devant les quatre doigts et de nouveau derrière
    }
# How the hand is turned to see it.
finger-view = { $way ->
        [front] La paume vers vous.
        [back] Le dos de la main vers vous.
       *[round-little] Tournez la main en même temps.
    }

# The same in a picture, at the bight, after its number, where there is room for a word or two.
picture-finger = { $number } { $place ->
        [edge-forefinger] bord index
        [front-forefinger] devant index
        [front-middle] devant majeur
        [front-ring] devant annulaire
        [front-little] devant petit
        [edge-little] bord petit
        [back-little] derrière petit
        [back-ring] derrière annulaire
        [back-middle] derrière majeur
       *[back-forefinger] derrière index
    }
