# Ce qui est dit à qui ne fait qu’entendre.

# Toutes les touches d’un écran, sur demande : F1 ou le point d’interrogation.
keys-say = Toutes les touches qui servent ici.
keys-close-say = Encore une fois F1, et vous entendez où vous en êtes.
# $heading : à quoi servent les touches qui suivent.
key-group-say = { $heading }.
# $key : la touche. $does : ce qu’elle fait, en un mot ou deux.
key-aloud-say = { $key ->
        [Space] Barre d’espace
        [Enter] Entrée
        [Escape] Échap
        [Tab] Tabulation
        [ShiftTab] Majuscule et tabulation
        [Home] Début
        [End] Fin
        [Delete] Supprimer
        [Backspace] Retour arrière
        [PageUp] Page précédente
        [PageDown] Page suivante
        [ArrowLeft] Flèche gauche
        [ArrowRight] Flèche droite
        [ArrowUp] Flèche haut
        [ArrowDown] Flèche bas
        [Plus] Plus
        [Minus] Moins
        [BracketLeft] Crochet ouvrant
        [BracketRight] Crochet fermant
        [CtrlQ] Contrôle et Q
       *[other] { $key }
    } : { $does }.

# Ce qui a été tapé dans une ligne, dès que la frappe s’arrête.
typed-say = { $typed }.

# Un cordon ou un filetage inconnus, pour qui ne voit pas la liste.
ask-cord-unknown-say = « { $given } » n’est pas un cordon connu ici. Tapez son épaisseur, par exemple 4 millimètres, ou parcourez les cordons connus avec page suivante.
ask-thread-unknown-say = Le filetage « { $given } » n’est pas connu. Essayez M4 ou M5, ou parcourez les filetages connus avec page suivante.

# Dit quand le premier écran s’est présenté.
keys-hint-say = F1 vous dit toutes les touches, ici et sur chaque écran.

# Les touches d’un nœud dans un terminal, sur demande.
tie-keys-say = Barre d’espace : suivant. B ou page précédente : retour. R : répéter. H : où suis-je. W : erreur. C : assez de cordon. J : raccorder un cordon. 1, 2 et 3 : bref, normal, détaillé. Les crochets : moins ou plus à la fois. Moins et plus : la vitesse. P : pause. T : réglages. L : à la fin, noter ce qui a servi. Q : quitter.
