# Object, cord and tube: what is asked, what can be wrong with it, and the knots that fit.
#
# Arguments that come back:
#   $asking   what was being said: object, girth, ball, mat, cover, cord, tube, rows, pin, thread,
#             wall, ring-width, tube-length, have
#   $given    the text as it was typed
#   lengths   each one argument with its unit (see lengths.ftl): "29,8 mm"

## A length that is none

ask-length-unreadable = { $asking ->
        [object] Le diamètre de l’objet
        [girth] Le tour de l’objet
        [ball] Le diamètre de la boule
        [mat] La taille du tapis
        [cover] La longueur à couvrir
        [cord] L’épaisseur du cordon
        [tube] Le diamètre du tube
        [pin] La longueur des picots
        [wall] L’épaisseur de la paroi
        [ring-width] La largeur des bagues
        [tube-length] La longueur du tube
       *[have] Le cordon disponible
    } ne peut pas être « { $given } » : donnez un nombre avec mm, cm, m, po ou pi, par exemple { $example }.
ask-length-unit = { $asking ->
        [object] Le diamètre de l’objet
        [girth] Le tour de l’objet
        [ball] Le diamètre de la boule
        [mat] La taille du tapis
        [cover] La longueur à couvrir
        [cord] L’épaisseur du cordon
        [tube] Le diamètre du tube
        [pin] La longueur des picots
        [wall] L’épaisseur de la paroi
        [ring-width] La largeur des bagues
        [tube-length] La longueur du tube
       *[have] Le cordon disponible
    } a une unité inconnue, « { $unit } » dans « { $given } » : utilisez mm, cm, m, po ou pi, par exemple { $example }.
ask-length-comma = { $asking ->
        [object] Le diamètre de l’objet
        [girth] Le tour de l’objet
        [ball] Le diamètre de la boule
        [mat] La taille du tapis
        [cover] La longueur à couvrir
        [cord] L’épaisseur du cordon
        [tube] Le diamètre du tube
        [pin] La longueur des picots
        [wall] L’épaisseur de la paroi
        [ring-width] La largeur des bagues
        [tube-length] La longueur du tube
       *[have] Le cordon disponible
    } peut se lire de deux façons, « { $given } » : mettez un point pour les décimales, ou retirez la virgule.
ask-length-fraction = { $asking ->
        [object] Le diamètre de l’objet
        [girth] Le tour de l’objet
        [ball] Le diamètre de la boule
        [mat] La taille du tapis
        [cover] La longueur à couvrir
        [cord] L’épaisseur du cordon
        [tube] Le diamètre du tube
        [pin] La longueur des picots
        [wall] L’épaisseur de la paroi
        [ring-width] La largeur des bagues
        [tube-length] La longueur du tube
       *[have] Le cordon disponible
    } est une fraction sans unité, « { $given } » : si ce sont des pouces, écrivez { $given }po ; sinon, donnez-la avec mm ou cm, par exemple { $example }.
ask-length-nought = { $asking ->
        [object] Le diamètre de l’objet
        [girth] Le tour de l’objet
        [ball] Le diamètre de la boule
        [mat] La taille du tapis
        [cover] La longueur à couvrir
        [cord] L’épaisseur du cordon
        [tube] Le diamètre du tube
        [pin] La longueur des picots
        [wall] L’épaisseur de la paroi
        [ring-width] La largeur des bagues
        [tube-length] La longueur du tube
       *[have] Le cordon disponible
    } doit dépasser zéro, et « { $given } » ne le dépasse pas : donnez une longueur, par exemple { $example }.
ask-length-range = { $asking ->
        [object] Le diamètre de l’objet
        [girth] Le tour de l’objet
        [ball] Le diamètre de la boule
        [mat] La taille du tapis
        [cover] La longueur à couvrir
        [cord] L’épaisseur du cordon
        [tube] Le diamètre du tube
        [pin] La longueur des picots
        [wall] L’épaisseur de la paroi
        [ring-width] La largeur des bagues
        [tube-length] La longueur du tube
       *[have] Le cordon disponible
    } doit aller de 0,01 mm à 100 m, et « { $given } » n’y est pas : donnez une longueur, par exemple { $example }.

## Rows, threads and names

ask-rows-unreadable = Les rangées se donnent en nombres entiers de trous, et « { $given } » est autre chose : donnez un nombre pour chaque rangée d’une bague, par exemple 14,20.
# $counted: rows or holes.
ask-count-range = { $counted ->
        [rows] Une bague a de { $least } à { $most } rangées, et { $given } sont trop : donnez-en moins.
       *[holes] Une rangée a de { $least } à { $most } trous, et { $given } n’y est pas : donnez les trous de chaque rangée, par exemple 14,20.
    }
# $known: the threads there are.
ask-thread-unknown = Le filetage « { $given } » est inconnu ; les filetages connus : { $known }. Essayez M4 ou M5.

ask-missing = { $asking ->
        [object] Ce qu’il faut couvrir manque : dites son diamètre, par exemple --object 30mm, mesurez-en le tour, par exemple --girth 94mm, ou donnez une boule ou un tapis, par exemple --ball 38mm ou --mat 150mm.
        [cover] La longueur à couvrir manque : ajoutez-la, par exemple --cover 30mm.
        [cord] Le cordon manque : ajoutez son épaisseur, par exemple --cord 4mm.
       *[tube] Le tube manque : ajoutez son diamètre, par exemple --tube 45mm.
    }
# $given: what was typed.
ask-firm-unknown = « { $given } » n’est pas une sorte de cordon : dites hard (dur), soft (souple) ou flat (plat), par exemple --firm soft.
# $least, $most: the numbers taken. $soft: that of soft line.
ask-give-range = L’écart entre deux passages d’un cordon est un nombre de { $least } à { $most }, et « { $given } » n’en est pas un : essayez { $soft }, qui est celui d’un cordon souple.
ask-give-twice = Le cordon est donné à la fois par sa sorte et par un nombre : ne donnez qu’un des deux, --firm ou --cord-give.
ask-price = Un prix est un nombre de 0 à { $most }, et « { $given } » n’en est pas un : donnez-le sans monnaie, par exemple 0,35.
# A cord was named as shops name it. $designation: its type in the standard.
cord-understood = Le cordon est pris pour un cordon de nylon de type { $designation }, épais de { $diameter }.
ask-without-tube = { $asking ->
        [rows] Des rangées vont avec un tube, et aucun n’est donné
        [pin] Une longueur de picots va avec un tube, et aucun n’est donné
        [thread] Un filetage va avec un tube, et aucun n’est donné
        [ring-width] Une largeur de bagues va avec un tube, et aucun n’est donné
        [tube-length] Une longueur de tube va avec un tube de diamètre connu, et aucun n’est donné
       *[wall] Une paroi va avec un tube, et aucun n’est donné
    } : ajoutez son diamètre, par exemple 45mm.
ask-without-rings = Une largeur de bagues va avec des bagues, et aucune n’est donnée : ajoutez leurs rangées de trous, par exemple 14,20.
# $standards: designations with a diameter. $kept: names of cords, or none.
ask-cord-unknown = « { $given } » n’est pas un cordon : donnez son épaisseur, par exemple 4mm, ou un cordon normalisé ({ $standards }){ $kept ->
        [none] . Les cordons que vous gardez sous un nom conviennent aussi ; il n’y en a encore aucun.
       *[other] , ou l’un de ceux que vous gardez : { $kept }.
    }
ask-cord-unmeasured = Le cordon { $designation } n’a pas d’épaisseur publiée : mesurez le vôtre et donnez-la, par exemple 4mm.
ask-tube-unknown = « { $given } » n’est pas un tube : donnez son diamètre, par exemple 45mm{ $kept ->
        [none] . Les tubes que vous gardez sous un nom conviennent aussi ; il n’y en a encore aucun.
       *[other] , ou l’un de ceux que vous gardez : { $kept }.
    }
ask-holes-close = Une rangée de { $holes } trous sur ce tube les place à { $between } l’un de l’autre, et un picot demande { $pin } : donnez moins de trous ou un tube plus gros.
ask-wall-thick = Une paroi de { $wall } ne tient pas dans un tube de { $tube } : donnez l’épaisseur de la paroi seule.

name-unusable = « { $given } » n’est pas un nom sous lequel garder quelque chose : prenez { $most } lettres au plus, en commençant par une lettre, par exemple chêne.
name-standard = « { $given } » est le nom d’un cordon normalisé : choisissez un autre nom.
# What is kept by name could not be read or written. $path: the file. $reason: as in reasons.ftl.
rack-failed = Les tubes et les cordons gardés sous un nom n’ont pas pu servir ({ $path } : { $reason }) : voyez ce fichier, ou déplacez-le pour en commencer un nouveau.
rack-io = Les tubes et les cordons gardés sous un nom n’ont pas pu être atteints ({ $path } : { $reason }) : voyez si le dossier est là, si vous pouvez y écrire et s’il reste de la place sur le disque, puis recommencez.
rack-newer = Les tubes et les cordons gardés sous un nom ont été écrits par un Marlinspeak plus récent, et sont laissés tels quels : utilisez ce programme plus récent.

## Why a tube cannot be rigged for a knot

# $can_take: bights that the tube takes.
rig-no-row = Aucune rangée de ce tube (trous : { $rows }) ne se partage également entre { $bights } ganses. Nombres de ganses possibles : { $can_take }.
rig-cord-thick = Un cordon de { $cord } est plus épais que le tube de { $tube } : prenez un cordon plus fin ou un tube plus gros.
# $most_bights and $most_passes: the most that do go, or 0 for none.
rig-no-tuck = { $bights } ganses en { $passes ->
        [one] 1 passe
       *[other] { $passes } passes
    } ne laissent pas de place pour passer le cordon sur ce tube : prenez un tube de { $tube } ou plus{ $most_bights ->
        [0] { "" }
       *[other] , ou { $most_bights } ganses au plus
    }{ $most_passes ->
        [0] { "" }
        [one] , ou 1 passe
       *[other] , ou { $most_passes } passes au plus
    }.
# $gap: between the pins. $needed: what the cords of a bight take. $pin: pins no thicker than
# this would do, or none.
rig-pins-too-close = Sur ce tube, { $bights } picots laissent { $gap } entre eux, et les cordons d’une ganse demandent { $needed } : prenez un tube de { $tube } ou plus{ $most_bights ->
        [0] { "" }
       *[other] , ou { $most_bights } ganses au plus
    }{ $most_passes ->
        [0] { "" }
        [one] , ou 1 passe
       *[other] , ou { $most_passes } passes au plus
    }{ $pin ->
        [none] { "" }
       *[other] , ou des picots de { $pin } d’épaisseur au plus
    }.
rig-tube-short = Ce nœud occupe avec ses bagues { $needed } du tube, qui a { $length } de long : prenez un tube plus long, ou un nœud de moins de brins.
shape-cord-thick = Un cordon de { $cord } est plus épais que ce qu’il entoure, { $object } : prenez un cordon de { $object } au plus.
# $cord_below: a cord thinner than this does, or none.
shape-too-full = { $bights } ganses en { $passes ->
        [one] 1 passe
       *[other] { $passes } passes
    } d’un cordon de { $cord } ne tiennent pas côte à côte autour de l’objet : prenez { $most_bights ->
        [0] { $most_passes ->
            [0] moins de ganses et moins de passes
            [one] 1 passe
           *[other] { $most_passes } passes au plus
        }
       *[other] { $most_bights } ganses au plus
    }{ $cord_below ->
        [none] { "" }
       *[other] , ou un cordon de moins de { $cord_below }
    }.
shape-narrower = Ce nœud a au moins { $least } de large et ne peut pas couvrir seulement { $given } : prenez moins de brins, ou couvrez davantage.
rig-cord-short = Ce nœud demande { $needed } de cordon, et il y en a { $at_hand } : prenez plus de cordon, moins de brins ou moins de passes.
rig-with-what = Ni tube ni cordon ne sont donnés : ajoutez-les, par exemple --tube 45mm --rows 14,20 --cord 4mm, ou ce sur quoi il se fait sur place, par exemple --object 30mm --in-place --cord 4mm.

## Why nothing fits, and what would

fit-cord-thick = Rien ne convient : un cordon de { $cord } est plus épais que ce qu’il entoure, { $object } ; prenez un cordon plus fin.
# $cord: a cord with which it goes round, or none.
fit-too-many-cords = Les cordons de ce nœud ne font pas côte à côte le tour de ce qu’il couvre : { $cord ->
        [none] prenez un cordon bien plus fin, ou couvrez quelque chose de plus gros.
       *[other] prenez un cordon de { $cord }, ou couvrez quelque chose de plus gros.
    }
# $cord: a cord with which something fits, or none.
fit-cover-short = Rien ne convient : avec ce cordon, le nœud le plus étroit a { $narrowest } de large, plus que les { $wanted } à couvrir ; { $cord ->
        [none] couvrez davantage
       *[other] couvrez davantage, ou prenez un cordon de { $cord }
    }.
fit-cover-long = Rien ne convient : avec ce cordon, les nœuds qui atteignent { $wanted } laissent trop de l’objet à nu ; { $cord ->
        [none] couvrez moins, ou faites plusieurs nœuds côte à côte
       *[other] couvrez moins, ou prenez un cordon de { $cord }
    }.
# $would_fit, $can_take: bights.
fit-no-row = Rien ne convient sur ce tube : les nœuds qui iraient ont { $would_fit } ganses, et les rangées du tube permettent { $can_take } ; prenez un autre tube ou une rangée qui se partage par l’un de ces nombres.
# $pin: pins no thicker than this would do as well, or none.
fit-tube-thin = Rien ne convient sur ce tube : avec { $tube } de diamètre, il est trop mince pour les cordons ; prenez un tube de { $would_do } ou plus{ $pin ->
        [none] { "" }
       *[other] , ou des picots de { $pin } d’épaisseur au plus
    }.
fit-tube-short = Rien ne convient sur ce tube : il a { $length } de long, et un nœud avec ses bagues en occupe au moins { $would_do } ; prenez un tube plus long.
# $others: knots that were not asked for.
fit-filtered = Rien ne convient parmi ce que vous voulez voir, mais { $others ->
        [0] aucun autre nœud ne convient
        [one] un autre nœud convient
       *[other] { $others } autres nœuds conviennent
    } : demandez moins de choses à la fois.
fit-have-short = Rien ne convient avec le cordon disponible : il en faudrait au moins { $least }, et il y en a { $at_hand } ; prenez plus de cordon, ou donnez-lui moins à couvrir.
fit-nothing = Rien ne convient : essayez un cordon plus fin, une autre longueur à couvrir, ou ne nommez aucun tube.

## The knots that fit

# $count: how many come out as long as asked. $near: how many miss that a little. $shown: how many are listed.
fit-heading = { $count ->
        [0] Aucun nœud ne fait juste { $cover } sur un objet de { $object } de diamètre avec un cordon de { $cord }
        [one] Un seul nœud couvre { $cover } d’un objet de { $object } de diamètre avec un cordon de { $cord }
       *[other] { $count } nœuds couvrent { $cover } d’un objet de { $object } de diamètre avec un cordon de { $cord }
    }{ $near ->
        [0] { "" }
        [one] , et un autre s’en approche
       *[other] , et { $near } s’en approchent
    }{ $shown ->
        [0] .
        [one] { " " }; le meilleur d’abord.
       *[other] { " " }; les { $shown } meilleurs d’abord.
    }
# The parts of the list, each above its knots. $cover: the length asked for.
fit-section = { $section ->
        [single] Simples
        [doubled] Doublés
        [tripled] Triplés
        [interwoven] Entrelacés, deux ganses emboîtées
        [near] Un peu plus courts ou plus longs que { $cover }
        [hampered] Malaisés sur ce tube
       *[further] { $ground ->
            [ball] Autres
            [mat] Autres
           *[round] D’autres qui couvrent { $cover }
        }
    }
# Below the table, where a range begins with “~”.
fit-unsure = ~ : serré à fond, un tel nœud peut être jusqu’à un cinquième plus étroit, car ses cordons se rapprochent plus que ne le dit la règle.
# Below the table, when interwoven knots are among plain ones. $nested: bights nested in them.
fit-interwoven = Les nœuds entrelacés ont des ganses emboîtées l’une dans l’autre, un cordon pour chacune : « --nested { $nested } » en montre davantage.
fit-more = « --most { $count } » les montre tous.
# Below the table.
# $pace: own when the log knows the tyer’s, or usual.
fit-times = { $pace ->
        [own] Les durées sont à votre propre rythme.
       *[usual] Les durées sont à un rythme habituel, car le journal ne connaît pas encore le vôtre.
    }
# How long a tie takes, in $hours and $minutes of 5 each, and the same as it is said.
work-time = { $hours ->
        [0] { $minutes } min
       *[other] { $minutes ->
            [0] { $hours } h
           *[other] { $hours } h { $minutes } min
        }
    }
work-time-say = { $hours ->
        [0] { $minutes ->
            [one] 1 minute
           *[other] { $minutes } minutes
        }
        [one] 1 heure{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } minutes
        }
       *[other] { $hours } heures{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } minutes
        }
    }
# The work on a tie. $time: as above. $pace: own or usual. $cost: an amount, or none.
labour = À faire : glisser { $tucks } fois sous un cordon{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(commencé en enjambant, { $other_tucks })
    }, environ { $time } { $pace ->
        [own] à votre rythme
       *[usual] à un rythme habituel
    }{ $cost ->
        [none] .
       *[other]  ; coût : { $cost }.
    }
# Knots that the tube hampers stand last. $first: the place of the first of them; what to take care of with it follows.
fit-hampered = { $first ->
        [1] Sur ce tube, tous ces nœuds donnent de la peine ; pour le premier :
       *[other] Sur ce tube, les nœuds à partir du numéro { $first } donnent de la peine ; pour celui-là :
    }
fit-twins = Chaque nœud est donné dans le tressage où l’on glisse le moins souvent : enjamber un, glisser sous un, commencé en enjambant ou en glissant ; les deux se ressemblent. « --weave 1 » garde celui qui commence en enjambant.
# Ties that the figures of the knots listed were corrected from: $least to $most.
fit-corrected = { $least ->
        [0] Certains chiffres sont corrigés d’après vos mesures, { $most ->
            [one] 1 ouvrage
           *[other] jusqu’à { $most } ouvrages
        }.
       *[other] Corrigé d’après vos mesures, { $most ->
            [one] 1 ouvrage
           *[other] { $most } ouvrages
        }.
    }
# Heads of columns.
fit-head-rank = { "nº" }
fit-head-leads = brins
fit-head-bights = ganses
fit-head-passes = passes
fit-head-strands = circuits
fit-head-width = largeur
fit-head-range = de – à
# $ground: mat or ball.
fit-head-bare = { $ground ->
        [mat] trou
       *[ball] à nu
    }
fit-head-hides = cache
fit-head-scallop = festons
fit-head-cord = cordon à couper
fit-head-tucks = glissés
fit-head-time = durée
fit-head-drawn = serrage
fit-head-cost = coût
# What stands in them.
fit-cell-width = { $width }
fit-cell-range = { $sure ->
        [no] ~ { $tight } – { $widest }
       *[yes] { $tight } – { $widest }
    }
fit-cell-bare = { $bare ->
        [none] { "–" }
       *[other] { $bare }
    }
fit-cell-hides = { $hides } %
fit-cell-scallop = { $scallop }
fit-cell-cord = { $long }
fit-cell-time = { $time }
fit-cell-cost = { $cost }
fit-cell-drawn = { $drawn ->
        [tight] serré
        [eased] desserré
       *[open] ouvert
    }

# A knot on the plan screen, in large type. Exemple : 5 brins, 7 ganses, doublé
plan-answer = { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $passes ->
        [1] simple
        [2] doublé
        [3] triplé
       *[other] { $passes } passes
    }
# Below it, in two lines. $drawn: where it is drawn up to between $tight and $widest. $scallop: how
# far the gaps between bights reach in. Exemple : 36 mm de large, serré (de 35,8 mm à 50,5 mm), cache 86 %, festons de 4,2 mm
plan-answer-shape = { $width } de large, { $drawn ->
        [tight] serré
        [eased] desserré
       *[open] ouvert
    } (de { $tight } à { $widest }{ $sure ->
        [no] , serré peut-être jusqu’à un cinquième de moins
       *[yes] { "" }
    }), cache { $hides } %, festons de { $scallop }
# $other_tucks: tucks of the same weave begun with over, when this is begun with under, or 0.
# $time: as above. $cost: or none. Exemple : 1,88 m de cordon, 28 trajets à 66°, 36 fois à glisser (commencé en enjambant, 48), environ 40 min
plan-answer-work = { $long } de cordon{ $strands ->
        [one] { "" }
       *[other] { " " }en { $strands } circuits
    }, { $legs } trajets à { $angle }°, { $tucks } passages dessous{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(commencé en enjambant, { $other_tucks })
    }, environ { $time }{ $cost ->
        [none] { "" }
       *[other] , coûte { $cost }
    }
# Spoken when it is chosen. $rank: 1 is the best. $count: how many there are.
plan-answer-say = Nœud { $rank } sur { $count } : { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $passes ->
        [1] simple
        [2] doublé
        [3] triplé
       *[other] { $passes } passes
    }{ $strands ->
        [one] { "" }
       *[other] , en { $strands } circuits
    }. Il aura { $width } de large, { $drawn ->
        [tight] serré à fond{ $sure ->
            [no] , peut-être jusqu’à un cinquième plus étroit
           *[yes] { "" }
        }
        [eased] un peu desserré
       *[open] laissé ouvert
    }{ $near ->
        [yes] , pas tout à fait comme demandé
       *[no] { "" }
    }, et cachera { $hides } pour cent. Il demande { $long } de cordon, { $legs } trajets, { $tucks } fois à glisser sous un cordon et environ { $time }{ $cost ->
        [none] .
       *[other] , et coûte { $cost }.
    }

## A rigged tube, as the command rig prints it

# $on: tube, round, taper, ball or mat. $ground: what it is for: the same but tube.
rig-heading = { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $passes ->
        [1] simple
        [2] doublé
        [3] triplé
       *[other] { $passes } passes
    }, { $on ->
        [round] sur place, sur un objet de { $object } de diamètre,
        [taper] sur place, sur une pièce qui va de { $object } à { $top },
        [ball] sur place, sur une boule de { $object } de diamètre,
        [mat] à plat sur une planche, { $object } d’un bord à l’autre,
       *[tube] sur un tube de { $tube } de diamètre{ $ground ->
            [taper] , pour une pièce qui va de { $object } à { $top },
            [ball] , pour une boule de { $object } de diamètre,
           *[round] { "" }
        }
    } avec un cordon de { $cord }
# $ground: round, taper, ball or mat. $outer: a mat from edge to edge. $bare: what the bights leave open at the
# poles of a ball or in the middle of a mat, or none. $slack: or none.
rig-finished = Fini : { $ground ->
        [mat] { $outer } de diamètre, { $bare ->
            [none] le milieu fermé
           *[other] avec un trou de { $bare }
        }, l’anneau large de { $width }
        [ball] { $width } de large sur la boule, { $bare ->
            [none] les pôles fermés
           *[other] { $bare } à nu à chaque pôle
        }
       *[round] { $width } de large
    }, { $drawn ->
        [tight] serré à fond{ $sure ->
            [no] , peut-être jusqu’à un cinquième plus étroit
           *[yes] { "" }
        }
       *[open] ouvert depuis { $tight }
    }, cache { $hides } %, festons de { $scallop }{ $ground ->
        [mat] { "" }
       *[round] , trajets à { $angle }° de l’axe
    }.{ $slack ->
        [none] { "" }
       *[other] { " " }Égaliser tire { $slack } de chaque trajet.
    }
rig-in-the-bag = Ce qu’il vous faut
rig-all-holes = Trous { $holes }
rig-kept-tube = Le tube est gardé sous le nom { $name } : donnez désormais --tube { $name }.
rig-kept-cord = Le cordon est gardé sous le nom { $name } : donnez désormais --cord { $name }.

# $option takes a whole number.
option-number = { $option } demande un nombre entier de { $least } à { $most }, et « { $given } » n’en est pas un : essayez { $option } { $example }.

## The plan screen

plan-heading = Qu’allez-vous couvrir ?
plan-measure-across = diamètre
plan-measure-round = tour
plan-object = Son diamètre
plan-girth = Son tour
plan-cover = Longueur à couvrir
plan-cord = Cordon
plan-tube = Tube
plan-rows = Rangées de trous
plan-pin = Longueur des picots
plan-thread = Filetage des picots
plan-ring-width = Largeur d’une bague
plan-tube-length = Longueur du tube
plan-have = Cordon disponible

plan-hint = Longueurs comme 30, 3cm, 1 1/4 po ou 5/32po. Le tube, ses rangées et ses picots, et le cordon disponible peuvent rester vides.
plan-answers = Nœuds qui conviennent
plan-all = { $count ->
        [0] Aucun nœud ne convient
        [one] Un seul nœud convient
       *[other] { $count } nœuds conviennent, le meilleur d’abord
    }
plan-wanting = { $asking ->
        [cover] Quelle longueur voulez-vous en couvrir ?
       *[cord] Quelle est l’épaisseur du cordon ?
    }
# Below the answers, when no tube is named.
plan-without-tube = Nommez aussi un tube, et sa préparation sera guidée pas à pas.

# A filter above the list. $filter: passes, from-three, one-cord, most-legs, firm or weave. $key: its key.
# $choice: what it is set to, 0 for every knot; passes 1 to 4, legs at the most. Exemple : F2 : doublé
plan-filter = { $key } : { $filter ->
        [passes] { $choice ->
            [0] toutes les passes
            [1] simple
            [2] doublé
            [3] triplé
           *[other] { $choice } passes
        }
        [from-three] { $choice ->
            [0] tous brins, ganses
           *[other] dès 3 brins et ganses
        }
        [one-cord] { $choice ->
            [0] tous les cordons
           *[other] un seul cordon
        }
        [most-legs] { $choice ->
            [0] toute longueur
           *[other] { $choice } trajets au plus
        }
        [nested] { $choice ->
            [0] ganses emboîtées ou non
            [1] ganses non emboîtées
           *[other] { $choice } ganses emboîtées
        }
        [firm] { $choice ->
            [0] cordon tel que gardé
            [1] cordon dur et rond
            [2] cordon souple
           *[other] cordon plat ou creux
        }
       *[weave] { $choice ->
            [0] moins de passages dessous
           *[other] commencé en enjambant
        }
    }
# The same, said when it is changed.
plan-filter-say = { $filter ->
        [passes] { $choice ->
            [0] Des nœuds d’autant de passes qu’on veut.
            [1] Seulement des nœuds simples.
            [2] Seulement des nœuds doublés.
            [3] Seulement des nœuds triplés.
           *[other] Seulement des nœuds de { $choice } passes.
        }
        [from-three] { $choice ->
            [0] Tous les nombres de brins et de ganses.
           *[other] Trois brins et trois ganses, ou plus.
        }
        [one-cord] { $choice ->
            [0] Des nœuds d’autant de cordons qu’on veut.
           *[other] Seulement des nœuds d’un seul cordon.
        }
        [most-legs] { $choice ->
            [0] Des ouvrages de toute longueur.
           *[other] Des ouvrages de { $choice } trajets au plus.
        }
        [nested] { $choice ->
            [0] Des nœuds sans ganses emboîtées et les meilleurs entrelacés.
            [1] Seulement des nœuds sans ganses emboîtées.
           *[other] Seulement des nœuds entrelacés, à { $choice } ganses emboîtées à chaque bord.
        }
        [firm] { $choice ->
            [0] Le cordon tel qu’il est gardé, sinon souple.
            [1] Cordon dur et rond, qui garde sa forme.
            [2] Cordon souple, tressé ou toronné.
           *[other] Cordon plat ou creux, qui se serre de près.
        }
       *[weave] { $choice ->
            [0] Le tressage où l’on glisse le moins souvent.
           *[other] Enjamber un, glisser sous un, commencé en enjambant.
        }
    }

# The plan screen, come back to with something filled in.
plan-again-say = Le plan, tel que vous l’avez laissé.
plan-say = Le plan. Choisissez ce que vous couvrez et si le nœud peut s’enfiler, puis tapez son diamètre, la longueur à couvrir, et le cordon. Tabulation avance, les flèches haut et bas choisissent un nœud, entrée le prend.
# Said when a field is come to. $text: what is typed there, or none.
# Exemple : Cordon : 4mm. Page suivante parcourt ceux qui sont connus.
plan-field-say = { $asking ->
        [object] Diamètre de l’objet
        [girth] Tour de l’objet
        [ball] Diamètre de la boule
        [mat] Taille du tapis
        [in-place] Fait sur ce qu’il couvre
        [cover] Longueur à couvrir
        [cord] Cordon
        [tube] Tube
        [rows] Rangées de trous de chaque bague
        [pin] Longueur des picots
        [thread] Filetage des picots
        [ring-width] Largeur de chaque bague
        [tube-length] Longueur du tube
       *[have] Cordon disponible
    }{ $text ->
        [none] .
       *[other] { " " }: { $text }.
    }{ $asking ->
        [object] { " " }Page suivante passe à son tour.
        [girth] { " " }Page suivante passe à son diamètre.
        [cord] { " " }Page suivante parcourt ceux qui sont connus.
        [tube] { " " }Page suivante parcourt ceux qui sont gardés.
       *[other] { "" }
    }

# $rows: holes of the rows of the tube. $nested: rows that are needed, in line.
rig-too-few-rows = { $nested } rangs emboîtés de { $bights } picots demandent { $nested } rangs de trous alignés, qui se partagent également entre { $bights } ganses ; ce tube a { $rows } trous : prenez une bande de papier sur un tube sans bagues, moins de rangs ou un autre nombre de ganses.
# $ring: width of the rings. $needed: the least that does. $nested: rows of pins at each rim.
rig-ring-narrow = { $nested } rangs emboîtés de picots avec leurs ganses demandent des bagues d’au moins { $needed } de large, et celles-ci font { $ring } : prenez des bagues plus larges, un cordon plus fin ou une bande de papier sur un tube sans bagues.
