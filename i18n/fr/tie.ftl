# The guided job in a terminal.

tie-keys = Espace suivant, B ou Page préc. retour, R répéter, H où suis-je, W erreur, C assez de cordon, J raccorder un cordon, 1 2 3 bref, normal, détaillé, [ et ] moins ou plus à la fois, moins et plus vitesse, P pause, T réglages, L à la fin noter ce qui a servi, Q quitter.
tie-keys-lines = Entrée : suivant ; b retour, r répéter, h où suis-je, w erreur, c assez de cordon, j raccorder un cordon, 1 2 3 bref, normal, détaillé, t réglages, q quitter, chaque fois avec Entrée.
tie-left = Le nœud est gardé là où il en est : « marlinspeak tie » le reprend.
# $known: yes when the reason is known, else no.
tie-not-saved = Vos dernières touches ne sont pas enregistrées{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    } : en reprenant le nœud, comparez l’étape à votre ouvrage.
tie-in-use = Ce nœud est ouvert dans une autre fenêtre ou un autre terminal : continuez là-bas, ou fermez-le d’abord là-bas.
tie-none-waiting = Aucun nœud n’attend d’être repris : nommez-en un, par exemple « marlinspeak tie --leads 3 --bights 5 ».
tie-lesson-or-knot = Indiquez une leçon ou un nœud, pas les deux, par exemple « marlinspeak tie --lesson 1 ».
tie-log-say = Ce qui a vraiment servi. Entrée passe au champ suivant et garde tout au dernier ; ce que vous laissez vide ne compte pas.
