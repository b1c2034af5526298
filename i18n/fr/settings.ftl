# The settings and the learn screen, and the presses that are the same on every screen.

settings-heading = Réglages
settings-opening-say = Réglages. Les flèches haut et bas vont de ligne en ligne, les flèches de côté changent la valeur, Échap termine.

# The heading of a group of lines, with what they are for. $group: pedals, language, voice, signals,
# screen, pace, prices or presses.
settings-group = { $group ->
        [pedals] Pédales et touches : sur quoi appuyer pour quoi
        [language] Langue et mesures : dans quoi tout est dit
        [voice] La voix : comment les étapes sont dites
        [signals] Signaux : ce qu’on entend et voit d’un appui
        [screen] L’écran : quelle taille et quelles couleurs
        [pace] Rythme : avancer sans appuyer
        [prices] Prix : ce que vaut un nœud
       *[presses] Appuis : distinguer l’un de l’autre
    }
settings-none-learnt = Rien n’est encore appris : les touches et pédales habituelles servent.

# The name of a line.
settings-name = { $field ->
        [learn] Pédales et touches
        [knocks] Coups sur l’établi
        [try-knocks] Essayer les coups
        [voice] Voix
        [speed] Vitesse de la voix
        [volume] Volume de la voix
        [pitch] Hauteur de la voix
        [cues] Sons brefs
        [cue-volume] Volume des sons
        [flash] Éclair au bord
        [motion] Images animées
        [theme] Couleurs
        [distance] De l’œil à l’écran
        [screen-width] Largeur de l’image
        [pacing] Avancer tout seul
        [price-metre] Prix du mètre de cordon
        [price-hour] Prix de l’heure de travail
        [bounce] Ignorer un second appui
        [long] Appui long sur suivant : retour
       *[double] Double appui sur suivant : répéter
    }

# The value on a line. $choice: number, name, or a choice of the line. $number in the unit of
# the line, or $length with its unit, or $amount of the tyer's own money; $name is the name of a
# voice.
settings-value = { $field ->
        [learn] { $number ->
            [0] D’origine · Entrée : en apprendre d’autres
            [one] 1 apprise · Entrée : réapprendre
           *[other] { $number } apprises · Entrée : réapprendre
        }
        [try-knocks] Entrée : voir ce qui est pris pour un coup
        [voice] { $choice ->
            [asking] On interroge le service de parole
            [usual] Au choix du service de parole
            [natural] { $name }, naturelle
           *[name] { $name }
        }
        [speed] { $number } mots par minute
        [volume] { $number } %
        [pitch] { $number ->
            [50] Inchangée
           *[other] { $number } %
        }
        [cue-volume] { $number } %
        [theme] { $choice ->
            [light] Foncé sur clair
           *[dark] Clair sur foncé
        }
        [distance] { $length }
        [screen-width] { $choice ->
            [unknown] Inconnue : 96 pixels par pouce
           *[number] { $length }
        }
        [price-metre] { $choice ->
            [off] Non fixé
           *[number] { $amount }
        }
        [price-hour] { $choice ->
            [off] Non fixé
           *[number] { $amount }
        }
        [bounce] { $number ->
            [0] Jamais
           *[other] Pendant { $number } millisecondes
        }
        [long] { $choice ->
            [off] Non
           *[number] Après { $number } millisecondes
        }
        [double] { $choice ->
            [off] Non
           *[number] En moins de { $number } millisecondes
        }
       *[switch] { $choice ->
            [on] Oui
           *[off] Non
        }
    }

# A line as it is said: name, value, what can be pressed. Arguments as for settings-value.
# Exemple : Vitesse de la voix : 165 mots par minute. Les flèches de côté la changent.
settings-say = { $field ->
        [learn] { $number ->
            [0] Pédales et touches : celles d’origine. Appuyez sur entrée pour en apprendre d’autres.
            [one] Pédales et touches : une apprise. Appuyez sur entrée pour réapprendre.
           *[other] Pédales et touches : { $number } apprises. Appuyez sur entrée pour réapprendre.
        }
        [knocks] { $choice ->
            [on] Coups sur l’établi : oui. Deux, c’est suivant, trois, c’est répéter. Un micro les écoute ; rien n’est enregistré ni gardé, et seuls le moment et la force de chaque coup sont transmis. Les flèches de côté changent ce réglage.
           *[off] Coups sur l’établi : non. Avec ce réglage, un micro écoute si vous frappez deux ou trois coups. Les flèches de côté changent ce réglage.
        }
        [try-knocks] Essayer les coups : trouver où poser le micro. Appuyez sur entrée.
        [voice] { $choice ->
            [asking] Voix : on demande au service de parole celles qu’il possède.
            [usual] Voix : au choix du service de parole. Les flèches de côté en font entendre d’autres.
            [natural] Voix : { $name }, naturelle. Les flèches de côté en font entendre d’autres.
           *[name] Voix : { $name }. Les flèches de côté en font entendre d’autres.
        }
        [speed] Vitesse de la voix : { $number } mots par minute. Les flèches de côté la changent.
        [volume] Volume de la voix : { $number } pour cent. Les flèches de côté le changent.
        [pitch] { $number ->
            [50] Hauteur de la voix : la sienne. Les flèches de côté la changent.
           *[other] Hauteur de la voix : { $number } pour cent. Les flèches de côté la changent.
        }
        [cues] { $choice ->
            [on] Sons brefs : oui. Les flèches de côté changent ce réglage.
           *[off] Sons brefs : non. Les flèches de côté changent ce réglage.
        }
        [cue-volume] Volume des sons : { $number } pour cent. Les flèches de côté le changent.
        [flash] { $choice ->
            [on] Éclair au bord de l’écran : oui. Les flèches de côté changent ce réglage.
           *[off] Éclair au bord de l’écran : non. Les flèches de côté changent ce réglage.
        }
        [motion] { $choice ->
            [on] Images animées : oui. Les flèches de côté changent ce réglage.
           *[off] Images animées : non. Les flèches de côté changent ce réglage.
        }
        [theme] { $choice ->
            [light] Couleurs : foncé sur clair. Les flèches de côté les changent.
           *[dark] Couleurs : clair sur foncé. Les flèches de côté les changent.
        }
        [distance] De votre œil à l’écran : { $length }. Les flèches de côté changent ce réglage.
        [screen-width] { $choice ->
            [unknown] Largeur de l’image sur votre écran : inconnue. Les flèches de côté la changent.
           *[number] Largeur de l’image sur votre écran : { $length }. Les flèches de côté la changent.
        }
        [pacing] { $choice ->
            [on] Avancer tout seul à votre rythme : oui. Tout appui suspend. Les flèches de côté changent ce réglage.
           *[off] Avancer tout seul à votre rythme : non. Les flèches de côté changent ce réglage.
        }
        [price-metre] { $choice ->
            [off] Prix du mètre de cordon : non fixé. Les flèches de côté le changent.
           *[number] Prix du mètre de cordon : { $amount }. Les flèches de côté le changent.
        }
        [price-hour] { $choice ->
            [off] Prix de l’heure de travail : non fixé. Les flèches de côté le changent.
           *[number] Prix de l’heure de travail : { $amount }. Les flèches de côté le changent.
        }
        [bounce] { $number ->
            [0] Ignorer un second appui de la même pédale : jamais. Les flèches de côté changent ce réglage.
           *[other] Ignorer un second appui de la même pédale pendant { $number } millisecondes. Les flèches de côté changent ce réglage.
        }
        [long] { $choice ->
            [off] Un appui long sur suivant fait retour : non. Les flèches de côté changent ce réglage.
           *[number] Un appui long sur suivant fait retour, après { $number } millisecondes. Les flèches de côté changent ce réglage.
        }
       *[double] { $choice ->
            [off] Un double appui sur suivant fait répéter : non. Les flèches de côté changent ce réglage.
           *[number] Un double appui sur suivant fait répéter, en moins de { $number } millisecondes. Les flèches de côté changent ce réglage.
        }
    }

# Said when the speed is changed while tying.
speed-say = { $number } mots par minute.

# $aside: name of a file. $reason: what is wrong with it.
# The settings file is damaged. $state: aside when it was moved, else there. $kept: usual, copy, all or rest; $lost: the
# settings that could not be read.
settings-damaged = Les réglages étaient abîmés ({ $reason }){ $state ->
        [aside] { " " }et le fichier a été mis de côté sous le nom { $aside }
       *[there] { "" }
    } ; { $kept ->
        [copy] ceux qui étaient enregistrés auparavant sont en vigueur.
        [saved] ce qui a été choisi depuis est en vigueur.
        [all] tous se lisent et sont en vigueur, et chacun peut être faux : passez-les en revue.
        [rest] ce qui se lit est en vigueur, et { $lost } reste comme avant : passez-les en revue.
       *[usual] les réglages habituels sont en vigueur.
    }
settings-newer = Les réglages de { $file } ont été écrits par un Marlinspeak plus récent (version { $version }) et sont laissés tels quels : les réglages habituels valent, et les changements ne sont pas gardés.
settings-not-kept = Les réglages sont hors d’accès ({ $reason }) : vérifiez que le dossier existe et n’est pas plein ; d’ici là, les changements ne valent que tant que la fenêtre est ouverte.

## The learn screen

learn-opening-say = Apprendre pédales et touches. Appuyez sur une touche déjà apprise pour sauter une ligne, deux fois pour terminer. Échap laisse tout comme avant.
learn-how = Touche déjà apprise : sauter · deux fois : terminer

# Exemple : Appuyez sur ce que vous voulez pour « suivant ».
learn-asks = { $intent ->
        [next] Appuyez sur ce que vous voulez pour « suivant ».
        [back] Appuyez sur ce que vous voulez pour « retour ».
        [again] Appuyez sur ce que vous voulez pour « répéter ».
        [where] Appuyez sur ce que vous voulez pour « où suis-je ».
        [slower] Appuyez sur ce que vous voulez pour « plus lent ».
        [faster] Appuyez sur ce que vous voulez pour « plus vite ».
        [pause] Appuyez sur ce que vous voulez pour « pause ».
        [cord] Appuyez sur ce que vous voulez pour « assez de cordon ».
        [join] Appuyez sur ce que vous voulez pour « cordon fini ou effiloché ».
       *[wrong] Appuyez sur ce que vous voulez pour « erreur ».
    }

# What was pressed and what it is for.
# Exemple : Touche F13 : suivant.
# $kind: space, knocks, key, mouse, pad (a button of a game controller), note, controller or programme
# (of MIDI). $name: the name or number of the key or button.
learn-learnt = { $kind ->
        [space] Barre d’espace
        [knocks] Série de { $name } coups
        [mouse] Bouton de souris { $name }
        [pad] Bouton de manette { $name }
        [note] Note MIDI { $name }
        [controller] Contrôleur MIDI { $name }
        [programme] Programme MIDI { $name }
       *[key] Touche { $name }
    } : { $intent ->
        [next] suivant.
        [back] retour.
        [again] répéter.
        [where] où suis-je.
        [slower] plus lent.
        [faster] plus vite.
        [pause] pause.
        [cord] assez de cordon.
        [join] cordon fini ou effiloché.
       *[wrong] erreur.
    }
learn-skipped-say = Sauté.
learn-done-say = C’est tout, et c’est gardé.

## While tying

paused = En pause. P ou suivant reprend.
# The same in large type, above the keys that go on and what they do.
paused-shown = En pause
paused-way = reprendre
pace-held-say = Suspendu. Suivant reprend.
# Why the screen is kept on: the desktop may show it.
awake-reason = Un nœud est ouvert
screen-not-awake = Le système refuse de garder l’écran allumé : il peut s’éteindre pendant que vous nouez.

## The start screen by ear

# A part of the form when it gets the focus or changes: name, value, what can be pressed.
# $typed: what it holds. $state: empty when it holds nothing. $choice: right or left.
# Exemple : Brins : 5. Tapez un nombre ; tabulation avance, entrée commence.
start-field-say = { $field ->
        [leads] { $state ->
            [empty] Brins : rien encore. Tapez un nombre.
           *[typed] Brins : { $typed }. Tapez un nombre ; tabulation avance, entrée commence.
        }
        [bights] { $state ->
            [empty] Ganses : rien encore. Tapez un nombre.
           *[typed] Ganses : { $typed }. Tapez un nombre ; tabulation avance, entrée commence.
        }
        [passes] { $state ->
            [empty] Passes : rien encore. Tapez un nombre.
           *[typed] Passes : { $typed }. Tapez un nombre ; tabulation avance, entrée commence.
        }
        [weave] { $state ->
            [empty] Tressage : enjamber un, glisser sous un, commencé de façon à glisser le moins possible. 1 commence en enjambant ; un code par rang convient aussi ; tabulation avance.
           *[typed] Tressage : { $typed }. 1 veut dire enjamber un, glisser sous un ; un code par rang convient aussi ; tabulation avance.
        }
        [nested] { $state ->
            [empty] Ganses emboîtées : aucune. De 2 à 9, autant de cordons sont entrelacés ; tabulation avance.
           *[typed] Ganses emboîtées : { $typed }. 1 est un nœud simple ; tabulation avance, entrée commence.
        }
        [lands] { $state ->
            [empty] Le premier cordon arrive au rang de tête le plus en dedans. Un nombre est un rang, le 1 le plus en dehors ; tabulation avance.
           *[typed] Le premier cordon arrive au rang de tête { $typed }, le 1 le plus en dehors ; tabulation avance, entrée commence.
        }
        [hand] { $choice ->
            [left] Avancer à gauche. La barre d’espace change de côté ; tabulation avance.
           *[right] Avancer à droite. La barre d’espace change de côté ; tabulation avance.
        }
        [side] { $choice ->
            [top] Suivre côté tête du premier cordon. La barre d’espace change de côté ; tabulation avance.
           *[bottom] Suivre côté base du premier cordon. La barre d’espace change de côté ; tabulation avance.
        }
        [round-hand] { $choice ->
            [hand] Fait autour de la main, sans tube. La barre d’espace le change ; tabulation continue.
           *[tube] Fait sur un tube. La barre d’espace passe à autour de la main ; tabulation continue.
        }
       *[begin] Commencer ce nœud : appuyez sur la barre d’espace. Échap quitte le formulaire.
    }
