# Commandes : plusieurs pièces pour un client ou plusieurs nœuds sur un bâton ; ce qu’il faut acheter,
# ce qu’il faut emporter, combien de temps cela prend.

order-heading = { $named ->
        [yes] { $name } : { $count ->
            [0] 0 nœud
            [one] 1 nœud
           *[other] { $count } nœuds
        }
       *[no] { $count ->
            [0] 0 nœud
            [one] 1 nœud
           *[other] { $count } nœuds
        }
    }.
order-piece = { $count ->
        [0] 0 pièce
        [one] 1 pièce
       *[other] { $count } pièces
    }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    } : { $knot }, { $width } de large ; { $count ->
        [1] elle prend
       *[other] chacune prend
    } { $length } de cordon{ $cords ->
        [one] { "" }
       *[other] , en { $cords } cordons,
    } et environ { $time }.
order-piece-tied = { $tied } sur { $count } faites.
order-to-buy = À acheter :
order-cord = { $name ->
        [none] Cordon
       *[other] { $name }
    }, { $diameter } d’épaisseur : { $length }{ $spools ->
        [0] { "" }
        [one] , 1 bobine de { $spool }
       *[other] , { $spools } bobines de { $spool }
    }
order-cord-cut = { $pieces ->
        [0] 0 bout
        [one] 1 bout
       *[other] { $pieces } bouts
    } de { $length }
# What all of a cord weighs. $heavy: yes for kilograms.
order-cord-weight = { $heavy ->
        [yes] en tout, environ { $weight } { $weight ->
            [one] kilo
           *[other] kilos
        }
       *[no] en tout, environ { $weight } { $weight ->
            [one] gramme
           *[other] grammes
        }
    }
order-cord-spool-short = Une bobine de { $spool } est trop courte pour un bout de { $length } : prenez des bobines plus longues, ou nommez un cordon pour chaque passe, les bouts seront plus courts.
order-bag = Dans le sac, pour le tout :
order-stick = Le long du bâton de { $length }, depuis son extrémité :
order-stick-place = { $number }. { $named ->
        [yes] { $name } : de { $from } à { $to }
       *[no] de { $from } à { $to }
    }
order-stick-left = Derrière le dernier nœud, { $left } restent nus.
order-stick-short = Les nœuds et les écarts dépassent de { $left } le bâton de { $length } : prenez des écarts plus petits, moins de nœuds ou un bâton plus long.
order-time = Le tout prend environ { $time } { $pace ->
        [own] à votre rythme
       *[usual] à un rythme habituel
    }{ $cost ->
        [none] .
       *[other] , et coûte { $cost }.
    }

order-in-piece = Pièce { $number }{ $named ->
        [yes] , « { $name } »
       *[no] { "" }
    } :
order-no-pieces = La commande n’a pas de pièce : ajoutez-en une, avec les brins, les ganses, le cordon et le tube.
order-too-many = Une commande a au plus { $most } pièces et celle-ci en a { $given } : faites-en deux commandes.
order-count = Le nombre d’une pièce est un nombre entier de 1 à { $most } et « { $given } » n’en est pas un : donnez-en un, par exemple 10.
order-length = { $asking ->
        [gap] L’écart devant le nœud
        [stick] La longueur du bâton
       *[spool] Le cordon d’une bobine
    } ne peut pas être « { $given } » : { $fault ->
        [unit] l’unité est inconnue ; prenez mm, cm, m, in ou ft
        [comma] cela se lit de deux façons ; écrivez-le avec un point ou sans la virgule
        [fraction] c’est une fraction sans unité ; écrivez in derrière si ce sont des pouces
        [nought] il faut plus que zéro
        [range] il faut de 0,01 mm à { $asking ->
            [spool] 1000 m
           *[other] 100 m
        }
       *[unreadable] donnez un nombre avec mm, cm, m, in ou ft
    }, par exemple { $asking ->
        [gap] 20mm
        [stick] 1m
       *[spool] 20m
    }.
order-waste = La chute est un nombre de 0 à { $most } pour cent et « { $given } » n’en est pas un : donnez-en un, par exemple 5.
order-field-unknown = { $piece ->
        [0] La commande
       *[other] La pièce { $piece }
    } contient « { $given } », qui ne veut rien dire : prenez { $known }.
order-text-long = { $piece ->
        [0] Dans la commande
       *[other] Dans la pièce { $piece }
    } « { $field } » a plus de { $most } caractères : raccourcissez-le.
order-none-of-name = Il n’y a pas de commande « { $given } » : « marlinspeak order list » nomme celles qu’il y a.
order-piece-none = La commande n’a pas de pièce { $given } : elle a { $known }.

order-kept = Gardée sous { $id }.
order-deleted = La commande { $id } est supprimée ; « marlinspeak order undo { $id } » la fait revenir.
order-undone = La commande { $id } est revenue.
orders-none = Aucune commande n’est gardée dans { $folder }.
orders-backed-up = { $orders ->
        [0] { "" }
        [one] 1 commande y est aussi.
       *[other] { $orders } commandes y sont aussi.
    }
orders-came = { $orders ->
        [0] { "" }
        [one] 1 commande est venue aussi.
       *[other] { $orders } commandes sont venues aussi.
    }

## The screen

orders-heading = { $orders ->
        [0] Pas encore de commande
        [one] 1 commande
       *[other] { $orders } commandes
    }.
orders-being-read = Lecture des commandes.
orders-not-read = Les commandes n’ont pas pu être lues.
orders-empty = Une commande est une liste de nœuds pour un client ou le long d’un bâton, avec ce qu’il faut acheter. Appuyez sur suivant pour en commencer une.
orders-no-place = Aucun dossier ne peut garder les commandes : corrigez ce qui en a été dit au départ, puis relancez le programme.
order-keys-list = N commence une commande, suivant ouvre celle qui est à son tour, B sur sa page en fait un nœud.
order-keys-order = Suivant change une ligne ou ouvre une pièce, A ajoute une pièce, B fait la suivante.
order-keys-piece = Suivant change une ligne, B fait la suivante.
order-piece-heading = Pièce { $number }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }.
order-label = { $field ->
        [name] Nom de la commande
        [stick] Longueur du bâton qui les porte tous
        [spool] Cordon d’une bobine
        [waste] Chute en pour cent
        [piece-name] Nom
        [count] Combien
        [leads] Brins
        [bights] Ganses
        [passes] Nombre de passes
        [weave] Tressage
        [cord] Cordon
        [tube] Son tube
        [rows] Trous de chaque rang d’un anneau
        [object] Diamètre de l’objet
        [ball] Diamètre d’une boule
        [mat] Tapis, d’un bord à l’autre
        [in_place] Enfilé ou fait sur place
        [cover] Longueur à couvrir
       *[gap] Écart devant sur le bâton
    }
# The same when it is typed, with how a taper and a hole are written. $label: the label.
order-asked = { $label }{ $field ->
        [object] . S’il s’amincit, donnez ses deux bouts avec un deux-points entre eux, celui du bas d’abord, par exemple 32:26 mm.
        [mat] . Un trou se met après un deux-points, par exemple 150:60 mm.
       *[other] { "" }
    }
order-entry = { $label } : { $filled ->
        [yes] { $value }
       *[no] non dit
    }
order-is-deleted = Supprimée. U la fait revenir.
order-is-back = Elle est revenue.
order-piece-gone = Cette pièce n’est plus dans la commande : rien n’a été changé.
order-piece-done = De cette pièce, toutes sont faites.
order-nothing-deleted = Rien n’est supprimé qui puisse revenir.
key-orders = commandes
key-new-order = nouvelle commande
key-add-piece = ajouter une pièce
key-tie-next-piece = faire la suivante
key-open-or-change = ouvrir ou changer

help-orders = Plusieurs pièces à la fois : ce qu’il faut acheter et emporter, heures, prix ; gardé tant que vous y travaillez
help-order-list = Nommer les commandes gardées, les plus récentes d’abord
help-order-show = Dire à quoi revient une commande
help-order-plan = Dire à quoi revient la commande d’un fichier, sans rien garder
help-order-keep = Garder la commande d’un fichier, ou la mettre à la place d’une autre
help-order-delete = Supprimer une commande
help-order-undo = Faire revenir une commande supprimée
help-order-name = La commande, comme « order list » la nomme
help-order-file = La commande en document JSON, ou - pour l’entrée standard
help-order-as = La commande qui lui laisse sa place
value-order = COMMANDE
