# Une seconde fenêtre, pour un autre écran : une classe y voit l’étape.

key-second-window = seconde fenêtre pour une classe
# Dit quand elle s’ouvre et quand elle se ferme.
second-window-say = L’étape est aussi dans une seconde fenêtre, pour une classe. F12 la ferme.
second-window-closed-say = La seconde fenêtre est fermée.
# Dedans, avant que rien ne soit commencé.
second-window-waits = L’étape sera ici dès qu’un nœud sera commencé.
