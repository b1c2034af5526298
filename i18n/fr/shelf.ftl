# The shelf: ties that wait, the log of finished ones, and what can be wrong with their files.

## The shelf screen

shelf-heading = Mes nœuds
shelf-empty = Il n’y a encore rien ici : chaque nœud commencé se range ici. On commence par le premier ?
shelf-empty-say = Mes nœuds. Il n’y a encore rien ici. Appuyez sur la barre d’espace pour commencer le premier nœud, ou sur Échap pour revenir.

# How a tie stands. $state: waiting, finished or away.
# Exemple : 58 %, 14 trajets sur 24, dernière fois hier
shelf-tie-stand = { $state ->
        [finished] Terminé
        [away] Rangé à { $percent } %
       *[waiting] { $percent } %
    }, { $laid ->
        [0] aucun trajet
        [one] 1 trajet
       *[other] { $laid } trajets
    } sur { $legs }, { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] dernière fois aujourd’hui
               *[other] dernière fois il y a { $minutes } min
            }
           *[other] dernière fois il y a { $hours } h
        }
        [one] dernière fois hier
       *[other] dernière fois il y a { $days } jours
    }

# Whether something was logged of a finished tie. $logged: yes or no.
shelf-tie-log = { $logged ->
        [yes] Au journal
       *[no] Pas encore au journal : L note ce qui a servi
    }

# Spoken when the shelf appears. Exemple : Mes nœuds. 3 nœuds. Haut et bas passent de l’un à l’autre.
shelf-say = Mes nœuds. { $ties ->
        [one] 1 nœud.
       *[other] { $ties } nœuds. Les flèches haut et bas passent de l’un à l’autre, la barre d’espace en reprend un.
    }

# Spoken when a tie gets the focus.
# Exemple : 1 sur 3. Barre franche. 5 brins, 7 ganses, doublé. Première passe, 58 pour cent, dernière
# fois hier.
# $name: what its tyer calls it, or none. $named: yes or no. $phase: kit, rig, lead,
# follow, check, lift, fair or finish. $state: waiting, finished or away. $note: what its tyer wrote; $noted: yes
# or no.
shelf-tie-say = { $number } sur { $ties }. { $named ->
        [yes] { $name }.
       *[no] { "" }
    } { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $passes ->
        [one] simple
        [2] doublé
        [3] triplé
       *[other] { $passes } passes
    }. { $state ->
        [finished] Terminé
       *[other] { $state ->
            [away] Rangé.
           *[waiting] { "" }
        } { $phase ->
            [kit] On réunit le nécessaire
            [rig] On se prépare
            [lead] Première passe
            [follow] { $pass ->
                [2] Deuxième passe
                [3] Troisième passe
                [4] Quatrième passe
                [5] Cinquième passe
                [6] Sixième passe
                [7] Septième passe
                [8] Huitième passe
               *[9] Neuvième passe
            }
            [check] Vérification après la passe { $pass }
            [lift] { -coming-off }
            [fair] On égalise
           *[finish] On finit les extrémités
        }, { $percent } pour cent
    }, { $days ->
        [0] dernière fois aujourd’hui
        [one] dernière fois hier
       *[other] dernière fois il y a { $days } jours
    }. { $noted ->
        [yes] Note : { $note }
       *[no] { "" }
    }

# All logged ties together.
# Exemple : Au journal : 4 nœuds, 192 trajets, 6 heures 20 minutes, 18,4 m de cordon.
# $cord: a length, or none when nothing was measured.
shelf-totals = Au journal : { $ties ->
        [one] 1 nœud
       *[other] { $ties } nœuds
    }, { $legs ->
        [one] { $legs } trajet
       *[other] { $legs } trajets
    }, { $hours ->
        [0] { $minutes ->
            [one] { $minutes } minute
           *[other] { $minutes } minutes
        }
        [one] 1 heure{ $minutes ->
            [0] { "" }
            [one] { " " }1 minute
           *[other] { " " }{ $minutes } minutes
        }
       *[other] { $hours } heures{ $minutes ->
            [0] { "" }
            [one] { " " }1 minute
           *[other] { " " }{ $minutes } minutes
        }
    }{ $cord ->
        [none] .
       *[other] , { $cord } de cordon.
    }

# $ties: so many are not laid out above or below those that are.
shelf-more-ties = { $ties ->
        [one] 1 autre nœud n’est pas affiché : les flèches haut et bas y mènent.
       *[other] { $ties } autres nœuds ne sont pas affichés : les flèches haut et bas y mènent.
    }

# The tyer’s own pace.
shelf-pace = Votre rythme : { $seconds } secondes par trajet.

shelf-prompt-name = Nom de ce nœud
shelf-prompt-note = Note pour ce nœud
shelf-prompt-backup = Sauvegarder tous les nœuds et le journal dans ce nouveau fichier
shelf-prompt-bring-in = Faire entrer un nœud ou une sauvegarde depuis ce fichier

shelf-has-name = Renommé.
shelf-has-note = Noté.
shelf-begun-again = Le même nœud est recommencé et se trouve en premier.
shelf-is-away = Rangé. Il reste ici et n’est plus sur le premier écran.
shelf-is-out = Ressorti.
shelf-is-deleted = Supprimé. Appuyez sur U pour le faire revenir.
shelf-is-back = Il est revenu.
shelf-nothing-deleted = Rien de supprimé ne peut revenir : Suppr supprime le nœud choisi, et U l’annule.
shelf-not-finished = Ce nœud n’est pas terminé. On note ce qui a servi quand il l’est.

# $ties and $logged: how many; $left: how many could not be read and are not in it.
shelf-backed-up = Le fichier { $file } contient { $ties ->
        [0] 0 nœud
        [one] 1 nœud
       *[other] { $ties } nœuds
    } et { $logged ->
        [0] 0 entrée du journal
        [one] 1 entrée du journal
       *[other] { $logged } entrées du journal
    }.{ $left ->
        [0] { "" }
        [one] { " " }1 document n’a pas pu être lu et n’y est pas.
       *[other] { " " }{ $left } documents n’ont pas pu être lus et n’y sont pas.
    }

# $new: ties that came, $known: ties that were here already, $faults: lines that could not be
# read, $missing: lines that a backup cut short lacks; $shortened: names or notes that were cut; $presets: tubes and
# cords that came.
shelf-brought-in = Venu de { $file } : { $new ->
        [0] aucun nouveau nœud
        [one] 1 nœud
       *[other] { $new } nœuds
    } et { $logged ->
        [0] rien pour le journal
        [one] 1 entrée du journal
       *[other] { $logged } entrées du journal
    }.{ $known ->
        [0] { "" }
        [one] { " " }1 nœud était déjà ici.
       *[other] { " " }{ $known } nœuds étaient déjà ici.
    }{ $faults ->
        [0] { "" }
        [one] { " " }1 ligne n’a pas pu être lue et a été laissée.
       *[other] { " " }{ $faults } lignes n’ont pas pu être lues et ont été laissées.
    }{ $missing ->
        [0] { "" }
        [one] { " " }Il manque 1 ligne à la fin.
       *[other] { " " }Il manque { $missing } lignes à la fin.
    }{ $shortened ->
        [0] { "" }
        [one] { " " }1 nom ou note a été raccourci : un nom a au plus 120 lettres, une note 2000.
       *[other] { " " }{ $shortened } noms ou notes ont été raccourcis : un nom a au plus 120 lettres, une note 2000.
    }{ $presets ->
        [0] { "" }
        [one] { " " }1 tube ou cordon gardé sous un nom est venu aussi.
       *[other] { " " }{ $presets } tubes et cordons gardés sous un nom sont venus aussi.
    }{ $settings ->
        [no] { "" }
       *[yes] { " " }Les réglages sont venus aussi, et valent dès le prochain démarrage.
    }

## A tie that is open elsewhere

look-only = Regarder seulement : ce nœud est ouvert dans une autre fenêtre ou un autre terminal. Rien de ce qui est fait ici n’est gardé.
look-only-say = Regarder seulement. Rien de ce que vous faites ici n’est gardé.

## The log

log-offer-say = C’était la dernière étape. Appuyez sur L pour noter ce qui a servi, ou sur Échap pour quitter.

log-heading = Ce qui a vraiment servi
log-say = Ce qui a vraiment servi. Tabulation va de champ en champ ; ce que vous laissez vide n’est pas compté. Entrée garde le tout.
log-cord-name = Nom du cordon
log-cord = Diamètre du cordon
log-cut = Cordon coupé, en tout
log-left-over = Cordon restant, en tout
log-around = Diamètre de l’objet
log-width = Largeur finie
log-drawn = Serrage
log-drawn-tight = serré à fond
log-drawn-open = laissé ouvert
log-minutes = Minutes de travail
log-note = Note
log-photograph = Photographie, le chemin du fichier
log-hint = Longueurs avec leur unité, comme 4 mm, 5/32 po ou 2,5 m ; sans unité, des millimètres.
log-keep = Garder
log-kept = Gardé.

# Said when a field gets the focus. $field: as the labels above. $value: what stands in it, or
# none.
log-field-say = { $field ->
        [cord-name] Nom du cordon
        [cord] Diamètre du cordon
        [cut] Cordon coupé, en tout
        [left-over] Cordon restant, en tout
        [around] Diamètre de l’objet
        [width] Largeur finie
        [drawn-tight] Aussi serré que possible
        [drawn-open] Laissé ouvert
        [minutes] Minutes de travail
        [note] Note
        [photograph] Chemin d’une photographie
       *[keep] Garder
    }{ $filled ->
        [yes] { " " }: { $value }.
       *[no] .
    }

# What is wrong with a field.
log-length-unreadable = « { $given } » n’est pas une longueur : donnez un nombre et une unité, comme 4 mm, 5/32 po ou 2,5 m.
log-length-unit = « { $given } » a une unité inconnue ici ; les unités sont mm, cm, m, po et pi : essayez 4 mm.
log-length-comma = La virgule de « { $given } » peut se lire de deux façons : mettez un point pour les décimales, ou retirez-la.
log-length-fraction = « { $given } » est une fraction sans unité : si ce sont des pouces, écrivez { $given }po ; sinon, donnez-la avec mm ou cm.
log-length-positive = Une longueur doit être plus grande que zéro, et « { $given } » ne l’est pas : essayez 4 mm, ou laissez le champ vide.
log-length-range = Une longueur doit être de 0,01 mm à 100 m, et « { $given } » n’y est pas : essayez une autre unité.
log-cord-thickness = Le cordon a un nom mais pas d’épaisseur : indiquez-la, par exemple 4 mm, ou enlevez le nom.
log-left-over-more = Il reste plus de cordon qu’il n’en a été coupé : vérifiez que les deux longueurs ont la bonne unité.
# A measure is far from what it should come to, and is asked back once. $what: width or cord.
# $measured, $computed: lengths.
log-wild = { $what ->
        [width] La largeur finie, { $measured }, est loin des { $computed } que ce nœud devrait atteindre : voyez si le chiffre et l’unité sont justes et, si oui, gardez une fois de plus.
       *[cord] Le cordon coupé moins le reste font { $measured } de cordon dans le nœud, loin des { $computed } qu’il devrait prendre : voyez si les deux sont justes et, si oui, gardez une fois de plus.
    }
log-minutes-unreadable = Les minutes doivent être un nombre de 0 à { $most }, et « { $given } » n’en est pas un : essayez 90.
log-no-photograph = Il n’y a pas de fichier « { $file } » : choisissez une photographie qui existe, ou laissez le champ vide.
log-photograph-unread = « { $file } » n’a pas pu être lu ({ $reason }) : vérifiez que l’on peut le lire, ou choisissez une autre photographie.
log-photograph-other = « { $file } » n’est pas une photographie que l’on peut montrer : choisissez un fichier JPEG, PNG ou WebP.
log-photograph-damaged = « { $file } » est abîmé et ne peut pas être montré : copiez-le encore une fois de l’appareil, ou choisissez une autre photographie.
# $most: megabytes.
log-photograph-large = « { $file } » est trop grand : une photographie peut avoir jusqu’à { $most } mégaoctets et cent millions de pixels. Choisissez-en une copie plus petite.
log-leave-asks = Ce que vous avez tapé n’est pas gardé. Appuyez encore sur Échap pour quitter sans le garder, ou sur entrée pour le garder.
log-not-kept = Cela n’a pas pu être gardé. { $reason }

## In the terminal

# What stands before the ties in a list; the columns are set by the program.
shelf-no-ties = Il n’y a aucun nœud sur l’étagère dans { $folder }.
shelf-verify-whole = { $documents ->
        [0] Il n’y a encore rien sur l’étagère.
        [one] Le seul document de l’étagère est intact.
       *[other] Les { $documents } documents de l’étagère sont tous intacts.
    }
# $state: unchecked or aside.
shelf-verify-line = { $state ->
        [aside] { $file } était abîmé et a été mis à l’écart : supprimez-le quand vous n’en avez plus besoin.
       *[unchecked] { $file } n’a pas de somme de contrôle : reprenez le nœud et appuyez une fois, et il en aura une.
    }
# $renumbered: yes when the shelf had another tie of its name.
shelf-imported = { $fate ->
        [here] Le nœud { $id } est déjà sur l’étagère.
        [renumbered] Le nœud est sur l’étagère sous le nom { $id } ; un autre porte le nom { $was }.
       *[kept] Le nœud { $id } est sur l’étagère.
    }{ $shortened ->
        [yes] { " " }Son nom ou sa note a été raccourci : un nom a au plus 120 lettres, une note 2000.
       *[no] { "" }
    }
shelf-exported = Le nœud { $id } est dans { $file }.
shelf-deleted = Le nœud { $id } est supprimé : « marlinspeak shelf undo { $id } » le fait revenir.
shelf-undone = Le nœud { $id } est revenu sur l’étagère.
shelf-not-deleted = Aucun nœud { $id } n’est supprimé, donc aucun ne peut revenir : « marlinspeak shelf list » montre ceux de l’étagère.

## What can be wrong

# While a command of the terminal waits for the disk.
disk-slow = Le disque tarde à répondre. La suite vient dès qu’il répond ; Ctrl+C abandonne, sans laisser de fichier à moitié écrit.
shelf-error-io = { $doing ->
        [read] { $path } n’a pas pu être lu ({ $reason }) : vérifiez qu’il existe et que vous avez le droit de le lire, puis réessayez.
        [list] Le dossier { $path } n’a pas pu être parcouru ({ $reason }) : vérifiez qu’il existe et que vous avez le droit de le lire, puis réessayez.
        [lock] { $path } n’a pas pu être verrouillé ({ $reason }) : vérifiez que son dossier existe et que vous avez le droit d’y écrire, puis réessayez.
        [make] Le dossier { $path } n’a pas pu être créé ({ $reason }) : vérifiez que rien d’autre ne porte son nom et que le disque n’est pas plein, puis réessayez.
        [move] { $path } n’a pas pu être déplacé ({ $reason }) : vérifiez que vous avez le droit d’écrire dans son dossier, puis réessayez.
       *[write] { $path } n’a pas pu être écrit ({ $reason }) : vérifiez que son dossier existe, que vous avez le droit d’y écrire et que le disque n’est pas plein, puis réessayez.
    }

# $fault: what is wrong with the file. $place: where in it, in brackets with a space before them, or nothing.
shelf-error-unreadable = { $fault ->
        [too-large] { $path } est trop gros pour être ce qu’il devrait être : vérifiez que c’est le bon fichier, ou prenez-en une copie intacte.
        [not-a-file] { $path } n’est pas un fichier ordinaire : mettez un fichier à sa place, ou prenez-en un autre.
        [not-json] { $path } n’est pas du JSON lisible{ $place } : prenez-en une copie intacte.
        [newer] { $path } a été écrit par un Marlinspeak plus récent{ $place } et est laissé tel quel : utilisez ce programme plus récent pour lui.
        [checksum] { $path } est abîmé, car son contenu ne répond pas à sa somme de contrôle : prenez-en une copie intacte.
        [knot] { $path } nomme un nœud impossible à faire : les brins et les ganses vont de 2 à 999, les passes de 1 à 9 ; prenez-en une copie intacte.
        [place] { $path } en est à un endroit que son nœud n’a pas : prenez-en une copie intacte.
       *[shape] { $path } n’est pas ce qu’il devrait être{ $place } : prenez-en une copie intacte.
    }

shelf-error-gone = { $path } a disparu : la copie précédente est utilisée s’il y en a une.
shelf-error-stranger = { $path } est sur l’étagère et n’a pas le nom d’un nœud : déplacez-le ailleurs et faites-le entrer avec « marlinspeak shelf import ».
shelf-error-unwritable = Le nœud { $id } ne peut pas être écrit de façon à se relire pareil : raccourcissez son nom et sa note, puis réessayez.
shelf-error-no-such-tie = Il n’y a pas de nœud { $id } sur l’étagère : « marlinspeak shelf list » montre ceux qui y sont.
shelf-error-not-an-id = « { $given } » n’est pas le nom d’un nœud de l’étagère : un tel nom a de 6 à 32 lettres de a à z et chiffres ; « marlinspeak shelf list » montre ceux qui y sont.
shelf-error-exists = { $path } existe déjà et n’est pas remplacé : choisissez un autre nom, ou ajoutez --replace dans le terminal.
shelf-error-no-home = Le système ne nomme aucun dossier pour vos données : donnez-en un dans XDG_DATA_HOME, puis réessayez.
