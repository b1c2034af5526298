# The keys of the screens. Each stands on a button with what it does: a word or two, no sentence.

key-sheet-heading = Toutes les touches
key-sheet-close = Fermer

## Headings of the groups

key-group-steps = Étape par étape
key-group-telling = Comment c’est dit
key-group-voice = La voix
key-group-picture = L’image
key-group-here = Sur cet écran
key-group-places = Autres écrans
key-group-program = La fenêtre

# What is printed on a key. $key: its name, or the sign on it. CtrlQ is Q with the control key.
key-cap = { $key ->
        [Space] Espace
        [Enter] Entrée
        [Escape] Échap
        [Delete] Suppr
        [PageUp] Pg préc.
        [PageDown] Pg suiv.
        [Backspace] Retour arr.
        [CtrlQ] Ctrl Q
       *[other] { $key }
    }

## While a knot is tied

key-next = suivant
key-back = retour
key-again = répéter
key-where = où suis-je
key-wrong = erreur
key-leave = quitter
key-take-back = défaire
key-find-place = retrouver l’endroit
key-leave-as-is = laisser en l’état
key-to-step = revenir
key-one-more-back = encore un
key-lay-again = reposer
key-yes = oui
key-no = non
key-cord = assez de cordon
key-join = fini ou effiloché
key-over = enjambe
key-under = glisse dessous
key-count-again = recompter
key-one-more = un de plus
key-that-is-it = c’est cela
key-digit-away = effacer le chiffre
key-elsewhere = ailleurs
key-another-place = autre endroit
key-briefly = bref
key-plainly = normal
key-taught = détaillé
key-less-at-once = moins de croisements à la fois
key-more-at-once = plus de croisements à la fois
key-slower = plus lente
key-faster = plus rapide
key-pause = pause
key-turn-picture = tourner la vue
key-size-picture = plus grande, sans, plus petite
key-whole-picture = sur tout l’écran
key-picture = image
key-smaller = plus petite
key-write-log = noter

## Other screens

key-take-up = reprendre
key-begin = commencer
key-first-tie = commencer
key-form = nommer le nœud par ses nombres
key-plan = un nœud pour un objet
key-shelf = mes nœuds
key-course = premiers nœuds
key-glossary = mots du métier
key-count = compter un nœud
key-settings = réglages
key-next-field = champ suivant
key-field-before = champ d’avant
key-leave-form = quitter le formulaire
key-another-pick = autre choix
key-pick-before = choix d’avant
key-take-knot = prendre ce nœud
key-knot-next = nœud suivant
key-knot-before = nœud précédent
key-filter-passes = passes
key-filter-from-three = à partir de trois brins
key-filter-one-cord = un seul cordon
key-filter-most-legs = longueur du travail
key-filter-weave = tressage
key-filter-firm = genre de cordon
key-filter-nested = ganses emboîtées
key-lesson-below = leçon suivante
key-lesson-above = leçon d’avant
key-exchange-weave = tressage inverse
key-word-below = mot suivant
key-word-above = mot d’avant
key-tie-below = nœud suivant
key-tie-above = nœud d’avant
key-first = le premier
key-last = le dernier
key-name = nom
key-note = note
key-same-again = refaire le même
key-put-away = ranger ou ressortir
key-delete = supprimer
key-undo = annuler
key-back-up = sauvegarder
key-bring-in = faire entrer
key-keep = garder
key-line-below = ligne suivante
key-line-above = ligne d’avant
key-value-more = plus
key-value-less = moins
key-what-for = à quoi ça sert
key-voice-before = voix précédente
key-voice-next = voix suivante
key-take-voice = prendre cette voix
key-keep-voice = garder celle d’avant
key-done = terminé
key-leave-unchanged = tout laisser comme avant
key-how-loud = niveau du son
key-switch-on = les activer

## The window

key-full-screen = plein écran
key-quit = quitter le programme
