# À quoi sert chaque ligne des réglages, sous la liste tant qu’elle est choisie.

# $field: as in settings-name.
settings-hint = { $field ->
        [learn] Toute touche, toute pédale, tout bouton, toute pédale MIDI peut avancer, reculer ou répéter : un appui, et c’est appris.
        [knocks] Sauf autre apprentissage, deux coups sur l’établi, c’est suivant, trois, c’est répéter. Un micro écoute ; rien n’est enregistré ni gardé, il n’en sort que le moment et la force de chaque coup.
        [try-knocks] Montre le niveau du son et chaque série de coups reconnue, pour trouver où poser le micro.
        [language] La langue de tout ce qui est dit, montré et imprimé.
        [units] Millimètres et mètres, ou pouces et pieds, pour toutes les longueurs.
        [voice] Laquelle des voix du service vocal dit les étapes.
        [speed] À quelle vitesse une étape est dite : plus lentement pour un nœud nouveau, plus vite pour un nœud connu.
        [volume] À quel volume les étapes sont dites.
        [pitch] La hauteur de la voix : celle qu’on entend le mieux parmi d’autres bruits.
        [cues] Un son bref pour avancer, reculer, un contrôle et la fin, avant les mots.
        [cue-volume] À quel volume sonnent ces signaux.
        [flash] Le bord de l’écran s’allume à chaque appui, pour qui n’entend pas les sons.
        [motion] Un trajet se dessine une fois, croisement par croisement. Sinon, il est là tout entier d’emblée.
        [theme] Clair sur sombre pour le soir, sombre sur clair pour une pièce lumineuse.
        [distance] La distance de l’œil à l’écran pendant qu’on noue : lettres et numéros de picots grandissent avec elle.
        [screen-width] La largeur de l’image sur l’écran, mesurée à la règle : les lettres ont alors la taille voulue.
        [pacing] Avance tout seul, un peu plus lentement que vos dernières étapes. Tout appui l’arrête.
        [price-metre] Avec lui, le plan dit ce que coûte le cordon d’un nœud.
        [price-hour] Avec lui, le plan dit ce que vaut le travail d’un nœud.
        [bounce] Un pied frappe parfois deux fois pour une : si près de la première, la seconde ne compte pas.
        [long] Une pédale pour deux : maintenue, elle recule.
       *[double] Une pédale pour deux : pressée deux fois, elle répète l’étape.
    }
