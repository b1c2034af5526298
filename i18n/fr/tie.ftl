# The guided job in a terminal.

tie-keys = Espace suivant, B ou Page préc. retour, R répéter, H où suis-je, moins et plus vitesse, P pause, Q quitter.
tie-keys-lines = Entrée : suivant ; b puis entrée : retour, r répéter, h où suis-je, q quitter.
tie-left = Le nœud est gardé là où il en est : « marlinspeak tie » le reprend.
tie-none-waiting = Aucun nœud n’attend d’être repris : nommez-en un, par exemple « marlinspeak tie --leads 3 --bights 4 ».
