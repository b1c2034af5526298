# « marlinspeak doctor » : a line for each thing that the program needs or likes to have. Each says
# whether it works, and where it does not, how to mend it.

# Names and numbers for a report of a fault. $system, $processor: their names. $session, $desktop, $locale: names, or none.
# $x11, $wayland: true or false, whether there is such a display.
# Exemple : Marlinspeak 0.1.0 sur Debian GNU/Linux 12, x86_64, session x11, bureau GNOME, X11 oui, Wayland non, langue du système fr-CA
doctor-head = Marlinspeak { $version } sur { $system }, { $processor }, session { $session ->
        [none] inconnue
       *[other] { $session }
    }, bureau { $desktop ->
        [none] inconnu
       *[other] { $desktop }
    }, X11 { $x11 ->
        [true] oui
       *[false] non
    }, Wayland { $wayland ->
        [true] oui
       *[false] non
    }, langue du système { $locale ->
        [none] aucune
       *[other] { $locale }
    }

# $display is a name such as :0 or wayland-0.
doctor-display = Écran : en état. Une fenêtre peut s’ouvrir sur « { $display } ».
doctor-display-none = Écran : il n’y en a pas ici. Lancez Marlinspeak depuis une session de bureau ; sans elle, « marlinspeak tie » vous guide dans le terminal.
doctor-display-silent = Écran : ne répond pas. Rien ne répond sur « { $display } ». Lancez Marlinspeak depuis une session de bureau ; sans elle, « marlinspeak tie » vous guide dans le terminal.
doctor-display-refuses = Écran : refusé. « { $display } » refuse : il est à quelqu’un d’autre. Lancez Marlinspeak sous le compte qui a ouvert la session de bureau ; sans elle, « marlinspeak tie » vous guide dans le terminal.

# $voices is how many voices there are, $fitting how many of them speak the language of this text.
doctor-speech = Parole : en état. Le service de parole répond ; { $voices ->
        [one] il a { $voices } voix
       *[other] il a { $voices } voix
    }, dont { $fitting ->
        [one] { $fitting } pour la langue « { $language } ».
       *[other] { $fitting } pour la langue « { $language } ».
    }
doctor-speech-foreign = Parole : en panne pour la langue « { $language } ». { $voices ->
        [one] Le service de parole a { $voices } voix, et elle parle une autre langue.
       *[other] Le service de parole a { $voices } voix, et aucune ne la parle.
    } Installez une voix pour elle ; sous Debian, « sudo apt install speech-dispatcher-espeak-ng » apporte des voix pour la plupart des langues.
doctor-speech-no-voices = Parole : en panne. Le service de parole répond, mais n’a pas de voix. Installez-en ; sous Debian, avec « sudo apt install speech-dispatcher-espeak-ng ». Ensuite, « spd-say bonjour » devrait s’entendre.
doctor-speech-none = Parole : en panne ({ $why ->
        [ended] le service de parole s’est arrêté quand on l’a interrogé
        [refused] le service de parole refuse de parler
       *[absent] aucun service de parole n’est joignable
    }). Installez le service de parole ; sous Debian, avec « sudo apt install speech-dispatcher speech-dispatcher-espeak-ng ». Ensuite, « spd-say bonjour » devrait s’entendre.
doctor-speech-silent = Parole : ne répond pas. Arrêtez-le avec « pkill -x speech-dispatch » : il repart de lui-même au besoin. Ensuite, « spd-say bonjour » devrait s’entendre.

doctor-sound = Sons : en état. Les sons brefs peuvent se faire entendre.
doctor-sound-none = Sons : aucun appareil n’est là pour les sons brefs. Les nœuds continuent sans eux ; si la parole ne s’entend pas non plus, branchez ou allumez un haut-parleur et essayez « speaker-test ».

doctor-pedals = Pédales : { $controllers ->
        [one] { $controllers } manette de jeu
       *[other] { $controllers } manettes de jeu
    } et { $midi ->
        [one] { $midi } entrée MIDI
       *[other] { $midi } entrées MIDI
    } au total. Les pédales qui envoient des touches ou des boutons de souris ne sont pas comptées ici.
doctor-pedals-none = Pédales : aucune manette de jeu ni pédale MIDI n’est branchée. Il n’en faut pas : les touches suffisent, et les pédales qui envoient des touches ou des boutons de souris ne sont pas comptées ici.

# $name : le nom d’un appareil.
doctor-microphone = Micro : les coups seraient écoutés par « { $name } », une fois activés dans les réglages. Rien n’est enregistré.
doctor-microphone-none = Micro : il n’y en a pas. Il n’en faut pas : il ne sert qu’à entendre les coups sur l’établi.

# $megabytes: what is free on the disk, rounded down.
doctor-ties = Nœuds : en état. On peut écrire dans « { $file } », avec { $megabytes } Mo de libre ; { $documents ->
        [0] il n’y a pas encore de nœud sur l’étagère.
        [one] { $documents } document de l’étagère est intact.
       *[other] { $documents } documents de l’étagère sont intacts.
    }
doctor-ties-damaged = Nœuds : { $damaged ->
        [one] { $damaged } document de « { $file } » est illisible.
       *[other] { $damaged } documents de « { $file } » sont illisibles.
    } « marlinspeak shelf verify » dit ce qui ne va pas ; regarder ne fait rien perdre.
doctor-ties-full = Nœuds : bientôt, ils ne seraient plus gardés. Il ne reste que { $megabytes } Mo sur le disque de « { $file } » : faites-y de la place.
doctor-ties-unwritable = Nœuds : ils ne seraient pas gardés. On ne peut pas écrire dans « { $file } » ({ $reason }). Devenez propriétaire du dossier et de son contenu, ou donnez à XDG_DATA_HOME un dossier qui soit à vous.
doctor-ties-nowhere = Nœuds : ils ne seraient pas gardés. Le système n’indique pas de dossier pour eux : donnez à HOME votre dossier personnel.

doctor-settings = Réglages : en état. « { $file } » se lit.
doctor-settings-none = Réglages : en état. Il n’y en a pas encore dans « { $file } », donc les réglages habituels valent.
doctor-settings-newer = Réglages : « { $file } » a été écrit par un Marlinspeak plus récent (version { $version } du document). Il est laissé tel quel et les réglages habituels valent : installez ce Marlinspeak plus récent, ou déplacez le fichier.
doctor-settings-damaged = Réglages : « { $file } » est abîmé ({ $reason }). À l’ouverture, Marlinspeak mettra le fichier de côté et prendra ce qui s’y lit encore.
doctor-settings-unwritable = Réglages : ils ne seraient pas gardés. « { $file } » refuse ({ $reason }). Devenez propriétaire du dossier et de son contenu, ou donnez à XDG_CONFIG_HOME un dossier qui soit à vous.
doctor-settings-nowhere = Réglages : ils ne seraient pas gardés. Le système n’indique pas de dossier pour eux : donnez à HOME votre dossier personnel.

doctor-log = Journal : en état. « { $file } » est là pour signaler une erreur ; il ne contient aucun nom à vous.
doctor-log-unwritable = Journal : il n’est pas tenu. On ne peut pas écrire dans « { $file } » ({ $reason }). Les nœuds continuent sans lui ; pour l’avoir, devenez propriétaire du dossier, ou donnez à XDG_STATE_HOME un dossier qui soit à vous.
doctor-log-nowhere = Journal : il n’est pas tenu. Le système n’indique pas de dossier pour lui : donnez à HOME votre dossier personnel. Les nœuds continuent sans lui.

doctor-well = Tout ce qu’il faut est en état.
doctor-unwell = Quelque chose qu’il faut est en panne : les lignes ci-dessus le disent.

# A fault in the program itself, in a part that the rest can go on without.
fault-noted = Une partie de Marlinspeak s’est arrêtée à cause d’une erreur du programme, notée dans « { $file } » : quittez, relancez-le, et reprenez le nœud là où il a été gardé.
