# The paper screen: what is made of a tie to be taken along, and where it goes.

paper-heading = À emporter

# How the screen is worked. Spoken as well.
paper-how = Sur papier ou en image animée : haut et bas choisissent, les flèches de côté changent le type de fichier, la barre d’espace le crée.

# What can be made. $kind: card, strip, stage or reel.
paper-name = { $kind ->
        [card] Fiche
        [strip] Bande
        [board] Feuille de planche
        [stage] Image de l’étape
       *[reel] Image animée
    }

# What each is for. Spoken as well.
paper-for = { $kind ->
        [card] Tous ses chiffres et chaque trajet en tableau, pour une soirée sans ordinateur.
        [strip] Numéros des picots et repères des trous en vraie grandeur, à poser autour du tube.
        [board] La place des épingles en T en vraie grandeur, à fixer sur la planche au ruban : sur plusieurs pages pour un grand dessous-de-plat.
        [stage] Le nœud tel qu’il est maintenant, avec les mots de l’étape.
       *[reel] Le nœud entier, trajet par trajet avec ses mots, à remettre à une classe.
    }

# Spoken when one gets the focus. $form: the kind of file, such as PDF.
paper-choice = { $kind ->
        [card] Fiche
        [strip] Bande
        [board] Feuille de planche
        [stage] Image de l’étape
       *[reel] Image animée
    }, en fichier { $form }.

paper-file = Type de fichier
paper-paper = Papier
# $paper: A4 or Letter.
paper-size = Papier : { $paper }.

# What stands over the system’s own window.
paper-dialog = { $kind ->
        [card] Où va la fiche
        [strip] Où va la bande
        [board] Où va la feuille de planche
        [stage] Où va l’image
       *[reel] Où va l’image animée
    }

paper-asking = Le système demande dans sa propre fenêtre où va le fichier. La barre d’espace fait taper le chemin ici, Échap annule.
paper-path = Enregistrer sous : le chemin du fichier. Entrée le crée.
paper-path-missing = Aucun chemin n’est donné : tapez-en un qui finit par le nom du fichier, par exemple ~/barre.
paper-exists = « { $file } » existe déjà : appuyez encore une fois sur Entrée pour l’écraser, ou changez le nom.

paper-making = { $kind ->
        [card] La fiche se fait.
        [strip] La bande se fait.
        [board] La feuille de planche se fait.
        [stage] L’image se fait.
       *[reel] L’image animée se fait.
    }
# $done of $count pages or frames.
paper-progress = { $count ->
        [0] Cela commence.
       *[other] { $done } sur { $count } sont faites.
    }
# $files: how many files there are.
paper-made = { $kind ->
        [card] La fiche est dans « { $file } ».
        [strip] La bande est dans « { $file } ».
        [board] La feuille de planche est dans « { $file } ».
        [stage] L’image est dans « { $file } ».
       *[reel] L’image animée est dans « { $file } ».
    }{ $files ->
        [one] { "" }
       *[other] { " " }Chaque page a son propre fichier, { $files } en tout.
    }
paper-not-opened = C’est dans « { $file } », et aucun programme ne l’a ouvert de lui-même.
paper-called-off = Rien n’est fait.
paper-stopping = On arrête ce qui se fait. Si cela reste bloqué, quittez encore une fois.
paper-left-alone = On laisse cela à son sort ; la fin viendra peut-être plus tard. Choisissez de nouveau, ou quittez.
paper-closing = Ce qui se fait est d’abord arrêté : fermez encore une fois.
paper-no-tube = Une bande est aussi longue que le tour du tube, et cet ouvrage ne nomme aucun tube qui prenne le nœud : cherchez le nœud pour un objet, avec son tube.
# $what: card, strip or reel. $most: crossings or pages at most.
paper-long = { $what ->
        [card] Une fiche de ce nœud aurait plus de { $most } croisements à imprimer : faites plutôt l’image d’une étape.
        [strip] Une bande pour ce tube prendrait plus de { $most } pages : vérifiez le diamètre du tube.
       *[reel] Une image animée de ce nœud montrerait plus de { $most } croisements, l’un après l’autre : faites la fiche, ou l’image d’une étape.
    }

## Keys

key-on-paper = sur papier
key-paper-make = le créer
key-paper-below = suivant
key-paper-above = précédent
key-paper-form = autre sorte de fichier
key-paper-size = autre papier
key-paper-open = l’ouvrir
key-paper-stop = arrêter
key-paper-type = taper le chemin
key-photograph = choisir la photographie

## The photograph of a finished tie

log-photograph-choose = Choisir…
log-photograph-typed = Le système ne montre ici aucune fenêtre pour les fichiers : tapez le chemin de la photographie.
log-photograph-typed-or-dropped = Le système ne montre ici aucune fenêtre pour les fichiers : tapez le chemin de la photographie, ou déposez-la sur cette fenêtre.
