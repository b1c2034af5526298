# Paper for the bench: cards, strips and stages.

## Every sheet

# At the foot of a page.
sheet-page = Page { $page } sur { $pages }

## The card

card-head-leg = Trajet
card-head-way = De { -pin } en { -pin }
card-head-crossings = Croisements, dans l’ordre où on les rencontre

# The way of a leg. $heading, $from, $to as in steps.ftl.
card-way = { $heading ->
        [falling] Du { $from } { -of-top }, { -down } au { $to } { -of-bottom }
       *[rising] Du { $from } { -of-bottom }, { -up } au { $to } { -of-top }
    }

# Sur quoi et avec quoi. Arguments comme en anglais.
card-for = { $on ->
        [round] Sur place, sur un objet de { $object } de diamètre,
        [taper] Sur place, sur une pièce qui va de { $object } à { $top },
        [ball] Sur place, sur une boule de { $object } de diamètre,
        [mat] À plat sur une planche, { $object } d’un bord à l’autre,
       *[tube] Sur un tube de { $tube } de diamètre, { $ground ->
            [taper] pour une pièce qui va de { $object } à { $top },
            [ball] pour une boule de { $object } de diamètre,
           *[round] pour un objet de { $object } de diamètre,
        }
    } avec un cordon de { $cord }.

# Exemple : Tressage : enjamber 1, glisser sous 1.
# $kind: run, or code for a row code of o and u.
card-weave = { $kind ->
        [run] Tressage : enjamber { $weave }, glisser sous { $weave }.
        [twin] Tressage : enjamber { $weave }, glisser sous { $weave }, commencé en glissant { -at-the-bottom }.
       *[code] Tressage, rang par rang { -from-the-bottom } : { $weave } (o : le trajet montant enjambe ; u : il glisse dessous).
    }

# $hand: right or left. $passes, $side as in steps.ftl. $inside: top or bottom.
card-work = { $hand ->
        [left] { -card-left }
       *[right] { -card-right }
    } { $passes ->
        [one] { "" }
       *[other] { $inside ->
            [bottom] Les passes suivantes restent { -side-top } du premier cordon
           *[top] Les passes suivantes restent { -side-bottom } du premier cordon
        }, { $passes ->
            [2] { "" }
           *[other] chacune au-delà de la précédente,
        } { $inside ->
            [bottom] en dedans de ses ganses { -at-the-bottom }, en dehors { -at-the-top }.
           *[top] en dedans de ses ganses { -at-the-top }, en dehors { -at-the-bottom }.
        }
    }

# Where the pins go when the tube is not known.
# $staggered: yes or no.
card-pins = Répartissez { $pins } picots également autour de chaque bague, { $staggered ->
        [yes] chaque { -top-pin } à mi-chemin entre deux { -bottom-pins } : le { -top-pin } 1 un demi-pas plus loin que le { -bottom-pin } 1.
       *[no] chaque { -top-pin } à l’aplomb du { -bottom-pin } de même numéro.
    }

# On a tube without rings. $tube: its diameter. $apart: from pin to pin.
card-pins-apart = Sur un tube de { $tube }, les picots sont à { $apart } l’un de l’autre, mesurés autour du tube.

# On a tube with rings. $rim: top or bottom. $row: number of the row, $holes in it. $first: the
# hole of pin 1. $step: holes from one pin to the next.
card-pins-ring = { $rim ->
        [top] Bague { -of-top }
       *[bottom] Bague { -of-bottom }
    }, rangée { $row } de { $holes } trous : picot 1 dans le trou { $first }, puis un picot { $step ->
        [one] à chaque trou.
       *[other] tous les { $step } trous.
    }

card-half-hole = Tournez d’abord la bague { -of-top } d’un demi-trou, dans le sens où avance le cordon.

# The head of a pass of a strand. $pin: the bottom pin where it begins.
# Exemple : Première passe : laissez un dormant au picot de base 1
# Exemple : Deuxième passe, circuit 2 sur 3 : commencez au picot de base 2, le long du cordon en place
card-pass = { $pass ->
        [1] Première passe
        [2] Deuxième passe
        [3] Troisième passe
        [4] Quatrième passe
        [5] Cinquième passe
        [6] Sixième passe
        [7] Septième passe
        [8] Huitième passe
       *[9] Neuvième passe
    }{ $strands ->
        [one] { "" }
       *[other] , circuit { $strand } sur { $strands }
    } : { $pass ->
        [1] laissez un dormant au { -bottom-pin } { $pin }
       *[other] commencez au { -bottom-pin } { $pin }, le long du premier cordon
    }

# What comes when all is laid. $rings: yes when the tube has rings. $times: how often the knot is gone
# through. $known: yes when $draw, a length, says how much to draw.
card-after = Quand tout est posé
card-lift = Dégager : marquez la { -bottom-bight } 1 d’un bout de ruban, et qu’aucune extrémité ne file. Ôtez les { -top-pins }{ $rings ->
        [yes] , sortez la bague { -of-top }
       *[no] { "" }
    }, puis ôtez les { -bottom-pins }. Passez le nœud sur ce qu’il doit couvrir, sans le retourner.
card-fair = Égaliser, en { $times } reprises : depuis le dormant, le long du cordon, tirez { $known ->
        [yes] environ { $draw }
       *[no] un peu
    } de mou de chaque trajet et passez-le au suivant, jusqu’à ce qu’il sorte à l’autre bout. Ne serrez rien à fond avant les voisins.
card-finish = Finir : rentrez les extrémités comme ci-dessous, coupez-les où elles ressortent en laissant dépasser l’épaisseur du cordon, scellez-les à chaud à l’écart du nœud (fibre naturelle : à la colle) et rentrez-les sous un cordon.

# Over the pictures of the ends, where they are tucked away.
card-ends = Les extrémités

card-cautions = Attention
card-caution-load = Ce nœud couvre et décore. Ne lui confiez jamais une personne ni une charge ; pour porter une charge, suivez les règles locales et adressez-vous à une personne habilitée.
card-caution-heat = Lame chaude ou flamme : aérez, restez loin de ce qui brûle. Le cordon fondu colle à la peau et brûle : laissez-le refroidir. Une extrémité scellée peut être coupante.
card-caution-blade = Couteaux, épissoirs et aiguilles : coupez et poussez à l’opposé de votre corps.
card-caution-pins = Les picots dépassent du tube : attention aux yeux et aux paumes.
card-caution-pull = Tirez doucement, jamais avec le cordon autour de la main.
card-caution-children = Cordons, picots et petites pièces ne sont pas pour les jeunes enfants. Ne laissez jamais un cordon autour d’un cou.
card-caution-hands = Les mains se fatiguent : reposez-les pendant un long ouvrage.

## The strip

# $tube: its diameter, $round: the way round it.
strip-title = Bandes de picots : { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, tube de { $tube }, { $round } de tour

# $rings: yes when the tube has rings.
strip-how = Découpez les deux bandes suivant leurs lignes et posez chacune une fois autour du tube, extrémité contre extrémité. { $rings ->
        [yes] Chacune se pose le long de sa bague : chaque cercle est un trou, et un numéro marque chaque trou qui reçoit un picot.
       *[no] Les picots vont où les lignes se croisent ; les lignes continuent jusqu’au bord du papier.
    } Faites partir les deux bandes de la même ligne le long du tube.

# $hand: right or left.
strip-hand = { $hand ->
        [left] Les numéros vont vers la gauche, dans le sens où avance le cordon.
       *[right] Les numéros vont vers la droite, dans le sens où avance le cordon.
    }

strip-half-hole = Tournez d’abord la bague { -of-top } d’un demi-trou, dans le sens où avance le cordon : les trous de sa bande sont dessinés ainsi.

# How far the rows of pins stand from each other. $rings: yes when the tube has rings. $known: no when no cord
# is named, from which $spacing comes.
# $rows: rows of pins at each rim, more than one where bights are nested.
strip-spacing = { $known ->
        [no] L’écart des bagues dépend du cordon : nommez-le aussi (--cord), et il sera écrit ici.
       *[yes] { $rings ->
            [yes] Placez les bagues de sorte que { $rows ->
                [1] leurs rangées de picots
               *[other] leurs rangées de picots les plus en dehors
            } soient à { $spacing } l’une de l’autre.
           *[no] { $rows ->
                [1] Les deux rangées de picots
               *[other] Les deux rangées de picots les plus en dehors
            } sont à { $spacing } l’une de l’autre.
        }
    }

strip-top = Bague { -of-top }
strip-bottom = Bague { -of-bottom }
strip-cut = couper
strip-join = posez la page { $page } sur la ligne en tirets
# $bar: how long the line is.
# Exemple : Cette ligne mesure 50 mm. Sinon, …
strip-bar = Cette ligne mesure { $bar }. Sinon, imprimez de nouveau à 100 %, sans ajuster à la page.

## The stage

stage-signs = Un carré enjambe, un anneau glisse dessous. Le numéro dans un anneau est le picot d’où vient le cordon, celui dans un disque le picot où il va.

## What can be wrong

sheet-out-missing = Rien ne dit où mettre la feuille : ajoutez --out avec un nom de fichier à l’extension PNG ou PDF, par exemple --out fiche.pdf.
sheet-out-ending = « { $file } » ne dit pas quelle sorte de fichier faire : donnez un nom à l’extension PNG ou PDF, ou ajoutez --pdf.
sheet-exists = « { $file } » existe déjà et est laissé tel quel : choisissez un autre nom, ou ajoutez --replace.
sheet-unwritable = « { $file } » n’a pas pu être écrit ({ $reason }) : vérifiez que son dossier existe et que l’on peut y écrire.
sheet-progress = Prêt jusqu’ici : { $page } sur { $pages }. Ctrl+C arrête tout.
sheet-stopped = Arrêté après { $page } sur { $pages } : { $one ->
        [yes] aucun fichier n’a été écrit.
       *[no] ce qui est écrit jusque-là est entier.
    }
sheet-failed = La feuille n’a pas pu être faite : essayez l’autre sorte de fichier, PNG ou PDF.
sheet-dpi = --dpi demande un nombre entier de { $least } à { $most }, et « { $given } » n’en est pas un : essayez --dpi 300.
sheet-step = --step demande une étape de ce nœud, de 1 à { $steps }, et « { $given } » n’en est pas une : « marlinspeak steps » les montre.
sheet-tube-missing = Une bande est aussi longue que le tour du tube, et aucun tube n’est nommé : ajoutez --tube avec son diamètre, par exemple --tube 48mm.
sheet-card-long = La fiche de ce nœud aurait plus de { $most } croisements à imprimer : « marlinspeak steps » en dit autant que vous voulez.
sheet-strip-long = La bande de ce tube prendrait plus de { $most } pages : vérifiez que --tube est bien le diamètre, par exemple --tube 48mm.
sheet-reel-out-missing = Rien ne dit où mettre l’image animée : ajoutez --out avec un nom de fichier à l’extension GIF, PNG ou WEBP, par exemple --out noeud.gif.
sheet-reel-ending = « { $file } » ne dit pas quelle sorte d’image animée faire : donnez un nom à l’extension GIF, PNG ou WEBP.
sheet-reel-long = L’image animée de ce nœud montrerait plus de { $most } croisements l’un après l’autre : « marlinspeak sheet stage --step » fait l’image d’une seule étape.
sheet-width = --width demande un nombre entier de { $least } à { $most }, et « { $given } » n’en est pas un : essayez --width 800.
