# Plusieurs pièces pareilles, l’une après l’autre.

batch-piece = { $stick ->
        [yes] nœud { $knot } sur { $knots } du bâton
       *[no] { $of ->
            [0] pièce { $number }
           *[other] pièce { $number } sur { $of }
        }
    }{ $named ->
        [yes] , commande « { $order } »
       *[no] { "" }
    }
batch-piece-begun = { $stick ->
        [yes] Nœud { $knot } sur { $knots } du bâton
       *[no] { $of ->
            [0] Pièce { $number }
           *[other] Pièce { $number } sur { $of }
        }
    }{ $named ->
        [yes] , commande « { $order } »
       *[no] { "" }
    }.
batch-tube-stands = Le tube est resté comme avant : il n’y a que le cordon à couper. Sinon, revenez en arrière d’ici.
batch-ask-standing = Le tube est-il resté comme avant, { $pins } picots à chaque extrémité aux mêmes endroits, les deux extrémités à { $spacing } l’une de l’autre ? Suivant veut dire oui, et il n’y a que le cordon à couper. Retour veut dire non, et le sac et le montage viennent d’abord.
batch-standing-show = Le tube est-il resté comme avant ?
batch-standing-note = { $pins } picots à chaque extrémité aux mêmes endroits, les deux extrémités à { $spacing } l’une de l’autre
batch-standing-note-keys = Suivant : oui, il n’y a que le cordon à couper. Retour : non, d’abord le sac et le montage.
batch-piece-done = { $stick ->
        [yes] Le nœud { $knot } sur { $knots } du bâton est fini
       *[no] { $of ->
            [0] La pièce { $number } est finie
           *[other] La pièce { $number } sur { $of } est finie
        }
    }{ $time ->
        [none] .
       *[other] , en { $time }.
    }{ $mean ->
        [none] { "" }
       *[other] { " " }La moyenne de { $pieces } pièces est de { $mean }.
    }{ $more ->
        [yes] { $next ->
            [none] { "" }
           *[other] { " " }Une autre devrait prendre { $next }.
        }{ " " }Suivant commence { $stick ->
            [yes] le nœud { $following }
           *[no] la pièce { $following }
        } ; L note ce qui a été utilisé.
       *[no] { $rest ->
            [yes] { " " }La commande mène au nœud suivant.
           *[no] { $of ->
                [0] { "" }
               *[other] { " " }C’était la dernière.
            }
        }{ " " }L note ce qui a été utilisé.
    }
batch-all-tied = De la pièce { $piece }, les { $of } sont faites.
batch-pieces-number = --pieces prend un nombre entier de 2 à { $most } et « { $given } » n’en est pas un : essayez --pieces 10.
batch-order-or-knot = Une commande a déjà ses nœuds : donnez soit --from-order, soit un nœud.
batch-pieces-what = --pieces demande un nœud à faire autant de fois : ajoutez --leads et --bights.
batch-piece-what = --piece appartient à une commande : ajoutez --from-order avec son nom.
key-next-piece = pièce suivante
help-tie-pieces = En faire autant, l’une après l’autre, de 2 à 999
help-tie-order = Le nœud suivant d’une commande, comme « order list » la nomme
help-tie-piece = La pièce de la commande, par son numéro [sinon : la première dont il en reste à faire]
