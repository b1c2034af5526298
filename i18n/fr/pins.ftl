# Interwoven knots: bights nested one inside the other at each rim, a row of pins for each, and cords that
# are laced through those laid before. "Emboîté" for nested, "entrelacer" for to lace; the rows are "de
# dehors" and "de dedans", since extérieur and intérieur end alike.

# A pin of one row of several. Wherever another message has the number of a pin, it is one of these.
# $rows: two or more, that is more than two. $row: 1 is the outermost.
# Exemple : Du picot de base 3 du rang de dehors, montez vers la droite au picot de tête 5 du rang de dedans.
pin-of-row-say = { $rows ->
        [two] { $row ->
            [1] { $number } du rang de dehors
           *[2] { $number } du rang de dedans
        }
       *[more] { $number } du rang { $row }
    }
# Exemple : Base 3 rang de dehors, montez à tête 5 rang de dedans.
pin-of-row-say-brief = { $rows ->
        [two] { $row ->
            [1] { $number } rang de dehors
           *[2] { $number } rang de dedans
        }
       *[more] { $number } rang { $row }
    }
pin-of-row-say-teach = { $rows ->
        [two] { $row ->
            [1] { $number } du rang de dehors
           *[2] { $number } du rang de dedans
        }
       *[more] { $number } du rang { $row }
    }
# Exemple : Du 3 (dehors) de base, montez au 5 (dedans) de tête
pin-of-row = { $rows ->
        [two] { $row ->
            [1] { $number } (dehors)
           *[2] { $number } (dedans)
        }
       *[more] { $number } (rang { $row })
    }

# Where the first cord begins, and the first of each row inside it. $rows: rows of pins at each rim.
# $whole: yes when all passes of a cord are laid before the next cord begins.
laced-say = { $row ->
        [1] Ici, les ganses sont emboîtées : à chaque bord, les { -pins } sont sur { $rows } rangs, l’un dans l’autre et alignés, et chaque cordon garde les siens. { $whole ->
            [no] Faites le premier passage de ce cordon, avant d’y entrelacer le suivant ; les autres passages suivent quand tous les cordons sont posés.
           *[yes] Faites ce cordon en entier, avant d’y entrelacer le suivant.
        }
       *[other] Ce cordon s’entrelace avec ceux qui sont déjà là : chaque trajet passe au milieu, entre deux des leurs.
    }
laced-say-brief = { $row ->
        [1] { $rows } rangs de { -pins } à chaque bord, alignés.
       *[other] Entrelacé avec les cordons déjà là.
    }
laced-say-teach = { $row ->
        [1] Ici, les ganses sont emboîtées : à chaque bord, les { -pins } sont sur { $rows } rangs, l’un dans l’autre et alignés, et chaque cordon garde les siens. À lui seul, chaque cordon est un bonnet turc. { $whole ->
            [no] Faites le premier passage de celui-ci, avant d’y entrelacer le suivant ; les autres passages suivent quand tous les cordons sont posés.
           *[yes] Faites celui-ci en entier, avant d’y entrelacer le suivant.
        }
       *[other] Ce cordon s’entrelace avec ceux qui sont déjà là : chaque trajet passe au milieu, entre deux des leurs, les croise et se croise lui-même dans l’ordre qui est dit. Là où deux cordons de suite sont croisés de la même façon, un chevron commence à se voir.
    }
laced-show = { $row ->
        [1] { $rows } rangs de { -pins } à chaque bord, alignés
       *[other] Entrelacé avec les cordons déjà là
    }

# What a leg of such a cord runs between: the legs that left these two pins of the same rim.
# Exemple : Restez entre les trajets partis du picot de base 2 du rang de dehors et du picot de base 3 du rang de dehors.
lay-say-splits = { $heading ->
        [falling] Restez entre les trajets partis du { -top-pin } { $left } et du { -top-pin } { $next }.
       *[rising] Restez entre les trajets partis du { -bottom-pin } { $left } et du { -bottom-pin } { $next }.
    }
lay-show-splits = { $heading ->
        [falling] Entre les trajets du { $left } et du { $next } { -of-top }
       *[rising] Entre les trajets du { $left } et du { $next } { -of-bottom }
    }

# Rigging: a further row of pins at both rims. $inside: how far inside the outermost row, towards the
# middle of the knot. $ring: the row of the rings it stands in, 0 without rings. $step: from a pin to the next,
# in holes. $pins: at each rim. $rows and $row as above.
rig-nest-say = Maintenant { $rows ->
        [two] le rang de dedans
       *[more] le rang { $row }
    }, { $pins } { -pins } à chaque bord, à { $inside } du rang le plus en dehors, { -towards-the-middle }{ $ring ->
        [0] , aux mêmes marques de la bande.
       *[other]  : le rang { $ring } de chaque bague, à { $holes } trous, un { -pin } dans { $step ->
            [1] chaque trou.
           *[other] un trou sur { $step }.
        }
    } Chacun est aligné avec le { -pin } le plus en dehors de son numéro, et porte ce numéro.
rig-nest-say-brief = { $rows ->
        [two] Rang de dedans,
       *[more] Rang { $row },
    } { $pins } { -pins } à chaque bord, à { $inside } du rang le plus en dehors, alignés{ $ring ->
        [0] .
       *[other] , dans le rang { $ring } des bagues.
    }
rig-nest-say-teach = Maintenant { $rows ->
        [two] le rang de dedans
       *[more] le rang { $row }
    }, { $pins } { -pins } à chaque bord, à { $inside } du rang le plus en dehors, { -towards-the-middle }{ $ring ->
        [0] , aux mêmes marques de la bande.
       *[other]  : le rang { $ring } de chaque bague, à { $holes } trous, un { -pin } dans { $step ->
            [1] chaque trou.
           *[other] un trou sur { $step }.
        }
    } Chacun est aligné avec le { -pin } le plus en dehors de son numéro, et porte ce numéro. Des rangs plus serrés ne laissent pas de place aux ganses ; si les rangs d’une bague sont écartés autrement, mieux vaut une bande de papier.
rig-nest-show = { $rows ->
        [two] Rang de dedans
       *[more] Rang { $row }
    }, { $inside } vers le milieu
rig-nest-note = { $pins } { -pins } à chaque bord{ $ring ->
        [0] , aux mêmes marques
       *[other] , dans le rang { $ring } des bagues ({ $holes } trous)
    }, avec les mêmes numéros

# On a card.
card-rows = Des ganses sont emboîtées : à chaque bord, les { -pins } sont sur { $rows } rangs, l’un dans l’autre, et les { -pins } d’un même numéro sont alignés.
# On a strip. $apart: from a row of pins to the next, or none when no cord is named. $rings: yes when the tube has rings.
strip-rows = Des ganses sont emboîtées : à chaque bord, les { -pins } sont sur { $rows } rangs, { $apart ->
        [none] l’un dans l’autre. Les marques servent à tous les rangs, car les { -pins } d’un même numéro sont alignés.
       *[other] à { $apart } l’un de l’autre, ceux de dedans { -towards-the-middle }. { $rings ->
            [yes] Les rangs sont dessinés ainsi ; si ceux des bagues sont plus écartés, suivez les lignes verticales.
           *[no] Chaque rang a sa ligne.
        }
    }
# The name of a row on a strip. $rows: two, or more.
strip-row = { $rows ->
        [two] { $row ->
            [1] rang de dehors
           *[2] rang de dedans
        }
       *[more] rang { $row }
    }
