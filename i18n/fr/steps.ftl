# The steps of laying a tie. A message ending in -say is spoken, one ending in -show stands on the
# screen. What the words must do: where the cord goes comes first (from which pin, which way,
# to which pin), then the crossings in the order they are met, then the landing; "picot" stands
# before the number of a pin and a count stands with its cords; "droite" is only ever a side.
#
# A spoken message comes in three depths: plain without an ending, -brief for who knows the work,
# -teach for who learns it. Every one stands alone, for a tyer who is back after a week. The
# tyer is told what to do in the imperative with "vous"; the keys are named by a bare word
# ("Suivant : …").
#
# The words chosen, all from memory of how French rope-work is talked, none taken from a book:
#   over / under      enjamber / glisser sous (glisser dessous). "Dessus" and "dessous", "sur" and
#                     "sous" differ by one vowel and are lost across a bench: "dessus" is never
#                     said, and each crossing has a verb of its own. "Sur" is only in "7 sur 12".
#                     (unsure: a rigger would say "passer par-dessus"; enjamber is clear, not usual)
#   bottom / top      base / tête, always "picot de base 4", "picot de tête 6". "Haut" is a single
#                     vowel that melts into the word before it; "pied" is also a foot of length and
#                     its "pié" is near "tê"; the verb says the way a second time: montez, descendez.
#                     (unsure: a mast has "pied" and "tête")
#                     On the screen a pin is "le 4 de base", "le 6 de tête": with its article, as a
#                     person would say it.
#   lane              côté base / côté tête, where a follower lies
#   inside / outside  en dedans / en dehors, for "intérieur" and "extérieur", which end alike
#   lead, bight       brin, ganse ("bonnet turc à 5 brins et 7 ganses"; unsure: "boucle" is said too)
#   cord              cordon, whatever lies there or is in the hand, so that "brin" stays the lead.
#                     "Corde" is not said aboard, "bout" is also an end.
#   strand            circuit (no word of the trade is known; "toron" is a strand of a rope)
#   leg, round        trajet, aller-retour (unsure of both; "tour" is kept for a turn of the tube)
#   pass              passe; the lead pass is simply "première passe"
#   tail, end in hand dormant, courant
#   pin, ring, row    picot (as on a knitting loom), bague, rang
#   weave             tressage
#   pick              épissoir
#   snug, fair        ajusté; égaliser, in "reprises" ("reprendre le mou")
#   lift              dégager du tube
#   staggered         décalés; straight above: à l’aplomb ("tout droit" could be taken for a side)
# Weighed once more and kept: a "rang" of pins (nested bights), as of stitches, beside a "rangée de trous"
# of a ring; "en panne" of what does not work at all, as a machine is; "corde de cloche", the one rope of a ship that is called so; a brief leg
# of a later pass names no side, since its pass began with it.
# A number that counts a feminine noun is written out where it is one ("une minute", "une
# ganse"); numbers such as 21 before "ganses", "passes" or "minutes" are read "vingt et un" by
# the voice, which is a slip of grammar and cannot be mistaken. Most counted nouns are masculine.
#
# Arguments that come back everywhere:
#   $pass      1 is the lead pass
#   $passes    passes the whole tie has
#   $strand    the strand, $strands how many there are
#   $leg       the leg’s number in this pass of the strand, $legs how many there are
#   $part      part of a long leg, $parts how many there are
#   $heading   rising (bottom rim to top rim) or falling
#   $from, $to numbers of pins; a rising leg goes from a bottom pin to a top pin
#   $hand      right or left: the way round the tube that the cord travels
#   $lane      bottom or top, or where bights are nested bottom-own or top-own: the rim towards which a follower lies of the first cord, on rising and
#              falling legs alike; none in the lead pass
#   $cord      what the tyer calls the cord, when $named is yes
#   $tail      a length, already with its unit (see lengths.ftl): "15 centimètres" for the ear,
#              "15 cm" for the eye

## Beginning a strand

# Exemple : Laissez 15 centimètres de dormant au picot de base 1. Fixez-le avec du ruban adhésif. Le
# cordon avancera vers la droite autour du tube, et les picots sont numérotés dans ce sens.
# $uneven: yes when the weave leaves a fault at the rims. $staggered: yes when the top pins stand
# half way between the bottom ones.
begin-say = { $strands ->
        [one] { "" }
       *[other] Circuit { $strand } sur { $strands }.
    } { $named ->
        [yes] Prenez le cordon « { $cord } ».
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Laissez pendre { $tail } de dormant au { -bottom-pin } { $pin }, et fixez-le avec du ruban. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] Le { -top-pin } 1 est à un demi-pas à gauche du { -bottom-pin } 1.
               *[right] Le { -top-pin } 1 est à un demi-pas à droite du { -bottom-pin } 1.
            }
           *[no] Le { -top-pin } 1 est { -in-line-with } du { -bottom-pin } 1.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }

begin-say-brief = { $strands ->
        [one] { "" }
       *[other] Circuit { $strand } sur { $strands }.
    } { $named ->
        [yes] Cordon « { $cord } ».
       *[no] { "" }
    } { -upright } { $tail } de dormant au { -bottom-pin } { $pin }. { $hand ->
        [left] Avancez vers la gauche ;
       *[right] Avancez vers la droite ;
    } { $staggered ->
        [yes] { -tops-staggered }
       *[no] { -tops-straight }
    } { $uneven ->
        [yes] Le motif se rompt aux bords.
       *[no] { "" }
    }

begin-say-teach = { $strands ->
        [one] { "" }
       *[other] Circuit { $strand } sur { $strands }. { $strand ->
            [1] { $woven ->
                [yes] Un circuit est un parcours fermé du cordon ; ce nœud en a plusieurs, entrelacés.
               *[no] Un circuit est un parcours fermé du cordon ; ce nœud en a plusieurs, car ses brins et ses ganses se divisent par un même nombre plus grand que 1.
            }
           *[other] { "" }
        }
    } { $named ->
        [yes] Prenez le cordon « { $cord } ».
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Laissez pendre { $tail } de dormant au { -bottom-pin } { $pin }, et fixez-le avec du ruban. Le dormant reste ; l’autre bout, dans votre main, est celui qui travaille. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] Le { -top-pin } 1 est à un demi-pas à gauche du { -bottom-pin } 1.
               *[right] Le { -top-pin } 1 est à un demi-pas à droite du { -bottom-pin } 1.
            }
           *[no] Le { -top-pin } 1 est { -in-line-with } du { -bottom-pin } 1.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }

# Exemple : 15 cm de dormant au 1 de base
begin-show = { $tail } de dormant au { $pin } { -of-bottom }

# Exemple : Fixez-le au ruban. Avancez vers la droite.
begin-show-note = { $named ->
        [yes] Cordon « { $cord } ».
       *[no] { "" }
    } { $hand ->
        [left] { -upright-shown } Avancez vers la gauche.
       *[right] { -upright-shown } Avancez vers la droite.
    } { $uneven ->
        [yes] Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }

## Beginning to follow

# Exemple : Deuxième passe. Le même cordon continue. Partez du picot de base 1, le long du cordon en
# place, et restez toujours côté base de ce cordon, sans changer de côté. Enjambez et glissez dessous
# exactement comme lui. Autour des picots de tête, tournez en dedans de ses ganses ; autour des picots
# de base, tournez en dehors.
# $inside: the rim where the follower turns inside, top or bottom. $added: yes when another cord
# begins here, no when the cord in hand goes on. $apart: yes when it begins at a pin of its own.
follow-say = { $pass ->
        [2] Deuxième passe.
        [3] Troisième passe.
        [4] Quatrième passe.
        [5] Cinquième passe.
        [6] Sixième passe.
        [7] Septième passe.
        [8] Huitième passe.
       *[9] Neuvième passe.
    } { $strands ->
        [one] { "" }
       *[other] Circuit { $strand } sur { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Prenez le cordon « { $cord } » et laissez { $tail } de dormant. Partez
           *[no] Prenez le cordon ajouté et laissez { $tail } de dormant. Partez
        }
       *[no] { $strands ->
            [one] Le même cordon continue. Partez
           *[other] { $named ->
                [yes] Reprenez le cordon « { $cord } ». Partez
               *[no] Reprenez le cordon de ce circuit. Partez
            }
        }
    } du { -bottom-pin } { $pin }, le long { $own ->
        [yes] de sa propre première passe
       *[no] du premier cordon
    }, et restez toujours côté { $lane ->
        [top] { -lane-top }
       *[bottom] { -lane-bottom }
    } de ce cordon{ $pass ->
        [2] { "" }
       *[other] , au-delà de tous ceux qui y sont
    }, sans changer de côté. Enjambez là où il enjambe, glissez dessous là où il glisse dessous. { $inside ->
        [bottom] Aux { -bottom-pins }, tournez en dedans de ses ganses ; aux { -top-pins }, en dehors.
       *[top] Aux { -top-pins }, tournez en dedans de ses ganses ; aux { -bottom-pins }, en dehors.
    } { -hold-again }

follow-say-brief = { $pass ->
        [2] Deuxième passe.
        [3] Troisième passe.
        [4] Quatrième passe.
        [5] Cinquième passe.
        [6] Sixième passe.
        [7] Septième passe.
        [8] Huitième passe.
       *[9] Neuvième passe.
    } { $strands ->
        [one] { "" }
       *[other] Circuit { $strand } sur { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Cordon « { $cord } », { $tail } de dormant.
           *[no] Cordon ajouté, { $tail } de dormant.
        }
       *[no] { "" }
    } Depuis le { -bottom-pin } { $pin }, suivez côté { $lane ->
        [top] { -lane-top }.
       *[bottom] { -lane-bottom }.
    } { $inside ->
        [bottom] { -At-the-bottom }, en dedans ; { -at-the-top }, en dehors.
       *[top] { -At-the-top }, en dedans ; { -at-the-bottom }, en dehors.
    } { -hold-again-short }

follow-say-teach = { $pass ->
        [2] Deuxième passe.
        [3] Troisième passe.
        [4] Quatrième passe.
        [5] Cinquième passe.
        [6] Sixième passe.
        [7] Septième passe.
        [8] Huitième passe.
       *[9] Neuvième passe.
    } { $strands ->
        [one] { "" }
       *[other] Circuit { $strand } sur { $strands }.
    } { $pass ->
        [2] { $strand ->
            [1] Une passe est un parcours du cordon dans tout le dessin ; à partir d’ici, le cordon suit le premier.
           *[other] { "" }
        }
       *[other] { "" }
    } { $added ->
        [yes] { $named ->
            [yes] Prenez le cordon « { $cord } », et laissez { $tail } de dormant. { $apart ->
                [yes] Il part d’un { -pin } à lui, pour que les extrémités ne sortent pas toutes au même endroit. Partez
               *[no] Partez
            }
           *[no] Prenez le cordon ajouté, et laissez { $tail } de dormant. { $apart ->
                [yes] Il part d’un { -pin } à lui, pour que les extrémités ne sortent pas toutes au même endroit. Partez
               *[no] Partez
            }
        }
       *[no] { $strands ->
            [one] Le même cordon continue. Partez
           *[other] { $named ->
                [yes] Reprenez le cordon « { $cord } ». Partez
               *[no] Reprenez le cordon de ce circuit. Partez
            }
        }
    } du { -bottom-pin } { $pin }, le long { $own ->
        [yes] de sa propre première passe
       *[no] du premier cordon
    }, et restez toujours côté { $lane ->
        [top] { -lane-top }
       *[bottom] { -lane-bottom }
    } de ce cordon{ $pass ->
        [2] { "" }
       *[other] , au-delà de tous ceux qui y sont
    }, sans changer de côté. Enjambez là où il enjambe, glissez dessous là où il glisse dessous. { $inside ->
        [bottom] Aux { -bottom-pins }, tournez en dedans de sa ganse, { -towards-the-middle } ; aux { -top-pins }, en dehors.
       *[top] Aux { -top-pins }, tournez en dedans de sa ganse, { -towards-the-middle } ; aux { -bottom-pins }, en dehors.
    } { -hold-again }

# Exemple : Suivez le cordon, côté base
follow-show = { $lane ->
        [top] Suivez le cordon, { -side-top }
       *[bottom] Suivez le cordon, { -side-bottom }
    }

# Exemple : Du 1 de base. À la tête, en dedans ; à la base, en dehors.
follow-show-note = { $added ->
        [yes] { $named ->
            [yes] Cordon « { $cord } », avec un dormant.
           *[no] Cordon ajouté, avec un dormant.
        }
       *[no] { "" }
    } { $inside ->
        [bottom] Du { $pin } { -of-bottom }. { -At-the-bottom }, en dedans ; { -at-the-top }, en dehors.
       *[top] Du { $pin } { -of-bottom }. { -At-the-top }, en dedans ; { -at-the-bottom }, en dehors.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Exemple : Trajet 7. Du picot de base 4, montez vers la droite jusqu’au picot de tête 6.
# Exemple : Passe 2, circuit 2, trajet 4. Du picot de tête 2, côté base du premier cordon,
# descendez au picot de base 5.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Trajet { $leg }
           *[other] Circuit { $strand }{ $named ->
                [yes] , « { $cord } »
               *[no] { "" }
            }, trajet { $leg }
        }
       *[other] Passe { $pass }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $heading ->
        [falling] Du { -top-pin } { $from },
       *[rising] Du { -bottom-pin } { $from },
    } { $lane ->
        [bottom] { -side-bottom } du premier cordon,
        [top] { -side-top } du premier cordon,
        [bottom-own] { -side-bottom } de sa propre première passe,
        [top-own] { -side-top } de sa propre première passe,
       *[none] { "" }
    } { $heading ->
        [falling] { -down }
       *[rising] { -up }
    }{ $lane ->
        [none] { " " }vers la { $hand ->
            [left] gauche
           *[right] droite
        }
       *[other] { "" }
    }{ $turns ->
        [0] { "" }
        [one] , avec un { -turn },
       *[other] , avec { $turns } { -turns },
    } { $lane ->
        [none] jusqu’au { -pin }
       *[other] au { -pin }
    } { $heading ->
        [falling] { -of-bottom } { $to }.
       *[rising] { -of-top } { $to }.
    }

# The same, brief.
# Exemple : Trajet 7. Base 4, montez à tête 6.
lay-say-way-brief = { $pass ->
        [1] { $strands ->
            [one] Trajet { $leg }
           *[other] Circuit { $strand }, trajet { $leg }
        }
       *[other] Passe { $pass }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $heading ->
        [falling] { -Top } { $from }, { -down-to-bottom } { $to }
       *[rising] { -Bottom } { $from }, { -up-to-top } { $to }
    }{ $turns ->
        [0] { "" }
        [one] , un tour complet
       *[other] , { $turns } tours
    }.

# Exemple : Trajet 1. Un trajet est le cordon d’un picot d’un bord à un picot de l’autre. Du
# picot de base 1, montez vers la droite jusqu’au picot de tête 3.
lay-say-way-teach = { $pass ->
        [1] { $strands ->
            [one] Trajet { $leg }
           *[other] Circuit { $strand }{ $named ->
                [yes] , « { $cord } »
               *[no] { "" }
            }, trajet { $leg }
        }
       *[other] Passe { $pass }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $first ->
        [yes] Un trajet, c’est le cordon d’un { -pin } d’un bord à un { -pin } de l’autre.
       *[no] { "" }
    } { $heading ->
        [falling] Du { -top-pin } { $from },
       *[rising] Du { -bottom-pin } { $from },
    } { $lane ->
        [bottom] { -side-bottom } du premier cordon,
        [top] { -side-top } du premier cordon,
        [bottom-own] { -side-bottom } de sa propre première passe,
        [top-own] { -side-top } de sa propre première passe,
       *[none] { "" }
    } { $heading ->
        [falling] { -down }
       *[rising] { -up }
    }{ $lane ->
        [none] { " " }vers la { $hand ->
            [left] gauche
           *[right] droite
        }
       *[other] { "" }
    }{ $turns ->
        [0] { "" }
        [one] , avec un { -turn },
       *[other] , avec { $turns } { -turns },
    } { $lane ->
        [none] jusqu’au { -pin }
       *[other] au { -pin }
    } { $heading ->
        [falling] { -of-bottom } { $to }.
       *[rising] { -of-top } { $to }.
    }

# The beginning of a later part of a long leg: which leg, and where the cord is now.
# Exemple : Trajet 11, partie 2 sur 5. Vous montez vers la droite, du picot de base 2 au picot de tête 4.
# Vous êtes au quart, après le picot de base 3. Après un tour du tube, les tours et le picot disent tout.
# $share: little, quarter, third, half, two-thirds, three-quarters, most. $past: number of the
# pin it has just passed, $rim: bottom or top, or none while that is where the leg began or where it is to land. $made: whole turns made on this leg so far.
lay-say-way-on = { $pass ->
        [1] { $strands ->
            [one] Trajet { $leg }
           *[other] Circuit { $strand }, trajet { $leg }
        }
       *[other] Passe { $pass }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }, trajet { $leg }
    }, partie { $part } sur { $parts }. { $heading ->
        [falling] { -Going-down }
       *[rising] { -Going-up }
    }{ $lane ->
        [bottom] , { -side-bottom },
        [top] , { -side-top },
        [bottom-own] , { -side-bottom },
        [top-own] , { -side-top },
       *[none] { " " }vers la { $hand ->
            [left] gauche,
           *[right] droite,
        }
    } { $heading ->
        [falling] du { -top-pin } { $from } au { -bottom-pin } { $to }.
       *[rising] du { -bottom-pin } { $from } au { -top-pin } { $to }.
    } Vous êtes { $made ->
        [0] { $share ->
            [little] au début
            [quarter] au quart
            [third] au tiers
            [half] à mi-chemin
            [two-thirds] aux deux tiers
            [three-quarters] aux trois quarts
           *[most] presque au bout
        }
        [one] à un { -turn }
       *[other] à { $made } { -turns }
    }{ $rim ->
        [none] { "" }
        [top] , après le { -top-pin } { $past }
       *[bottom] , après le { -bottom-pin } { $past }
    }.

# Exemple : Trajet 11, partie 2 sur 5. Base 2, montez à tête 4, après base 3.
lay-say-way-on-brief = { $pass ->
        [1] { $strands ->
            [one] Trajet { $leg }
           *[other] Circuit { $strand }, trajet { $leg }
        }
       *[other] Passe { $pass }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }, trajet { $leg }
    }{ $parts ->
        [one] .
       *[other] , partie { $part } sur { $parts }.
    } { $heading ->
        [falling] { -Top } { $from }, { -down-to-bottom } { $to }
       *[rising] { -Bottom } { $from }, { -up-to-top } { $to }
    }{ $rim ->
        [none] { "" }
        [top] , après { -top } { $past }
       *[bottom] , après { -bottom } { $past }
    }.

# The same, for who learns.
lay-say-way-on-teach = { $pass ->
        [1] { $strands ->
            [one] Trajet { $leg }
           *[other] Circuit { $strand }, trajet { $leg }
        }
       *[other] Passe { $pass }{ $strands ->
            [one] { "" }
           *[other] , circuit { $strand }
        }, trajet { $leg }
    }, partie { $part } sur { $parts }. { $heading ->
        [falling] { -Going-down }
       *[rising] { -Going-up }
    }{ $lane ->
        [bottom] , { -side-bottom },
        [top] , { -side-top },
        [bottom-own] , { -side-bottom },
        [top-own] , { -side-top },
       *[none] { " " }vers la { $hand ->
            [left] gauche,
           *[right] droite,
        }
    } { $heading ->
        [falling] du { -top-pin } { $from } au { -bottom-pin } { $to }.
       *[rising] du { -bottom-pin } { $from } au { -top-pin } { $to }.
    } Vous êtes { $made ->
        [0] { $share ->
            [little] au début
            [quarter] au quart
            [third] au tiers
            [half] à mi-chemin
            [two-thirds] aux deux tiers
            [three-quarters] aux trois quarts
           *[most] presque au bout
        }
        [one] à un { -turn }
       *[other] à { $made } { -turns }
    }{ $rim ->
        [none] { "" }
        [top] , après le { -top-pin } { $past }
       *[bottom] , après le { -bottom-pin } { $past }
    }.

# One crossing; those of a step are said one after the other.
# Exemple : Enjambez 1 cordon, glissez sous 2.
# $place: only, first, next or last of the step. $over: yes or no. $cords: cords lying there.
lay-say-crossing = { $place ->
        [only] { $over ->
            [yes] Enjambez { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }.
           *[no] Glissez sous { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }.
        }
        [first] { $over ->
            [yes] Enjambez { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            },
           *[no] Glissez sous { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            },
        }
        [last] { $over ->
            [yes] enjambez { $cords ->
                [one] 1
               *[other] { $cords }
            }.
           *[no] glissez sous { $cords ->
                [one] 1
               *[other] { $cords }
            }.
        }
       *[next] { $over ->
            [yes] enjambez { $cords ->
                [one] 1
               *[other] { $cords }
            },
           *[no] glissez sous { $cords ->
                [one] 1
               *[other] { $cords }
            },
        }
    }

# Exemple : Enjambez 1, sous 2, enjambez 1.
lay-say-crossing-brief = { $place ->
        [only] { $over ->
            [yes] Enjambez { $cords }.
           *[no] Sous { $cords }.
        }
        [first] { $over ->
            [yes] Enjambez { $cords },
           *[no] Sous { $cords },
        }
        [last] { $over ->
            [yes] enjambez { $cords }.
           *[no] sous { $cords }.
        }
       *[next] { $over ->
            [yes] enjambez { $cords },
           *[no] sous { $cords },
        }
    }

# A crossing with the cord that is met, by its pins.
# Exemple : Glissez sous 1 cordon : soulevez-le et passez votre bout.
# $new: yes at the first over and the first under of the tie.
lay-say-crossing-teach = { $over ->
        [yes] Enjambez { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }{ $new ->
            [yes]  : le vôtre se pose en travers.
           *[no] .
        }
       *[no] Glissez sous { $cords ->
                [one] 1 cordon
               *[other] { $cords } cordons
            }{ $new ->
            [yes]  : soulevez-le et passez votre bout.
           *[no] .
        }
    }

# A leg that meets no cord.
lay-say-clear = Il n’y a encore rien à croiser.
lay-say-clear-brief = Rien à croiser.
lay-say-clear-teach = Il n’y a encore rien à croiser.

# How a lay step ends. $landing: on-the-way, round, inside or outside; at the pin where the pass
# began home-and-on, home-to-wait (other strands come first) or home-to-end (the cord ends).
# Exemple : Contournez le picot de tête 6.
# Exemple : En dehors de la ganse.
lay-say-landing = { $landing ->
        [on-the-way] Tenez là votre cordon.
        [inside] En dedans de la ganse.
        [outside] En dehors de la ganse.
        [home-and-on] De retour au départ, enjambez le dormant et continuez.
        [home-to-wait] De retour au départ, fixez-le, jusqu’à sa prochaine passe.
        [home-to-end] De retour au départ, laissez pendre le bout.
       *[round] { $heading ->
            [falling] { -Then-round } { -bottom-pin } { $to }.
           *[rising] { -Then-round } { -top-pin } { $to }.
        }
    }

# Exemple : En dedans.
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] En dedans.
        [outside] En dehors.
        [home-and-on] Au départ, enjambez le dormant.
        [home-to-wait] Départ : fixez-le.
        [home-to-end] Départ : arrêtez là.
       *[round] { "" }
    }

lay-say-landing-teach = { $landing ->
        [on-the-way] Tenez là votre cordon.
        [inside] En dedans de la ganse.
        [outside] En dehors de la ganse.
        [home-and-on] De retour au départ, enjambez le dormant et continuez.
        [home-to-wait] De retour au départ, fixez-le, jusqu’à sa prochaine passe.
        [home-to-end] De retour au départ, laissez pendre le bout.
       *[round] { $heading ->
            [falling] { -Then-round } { -bottom-pin } { $to }.
           *[rising] { -Then-round } { -top-pin } { $to }.
        }
    }

# The arrow is the way the cord goes. Exemple : Du 4 de base, montez au 6 de tête ↗
lay-show = { $heading ->
        [falling] Du { $from } { -of-top }, { -down } au { $to } { -of-bottom } { $hand ->
            [left] ↙
           *[right] ↘
        }
       *[rising] Du { $from } { -of-bottom }, { -up } au { $to } { -of-top } { $hand ->
            [left] ↖
           *[right] ↗
        }
    }

# The same in words alone, for a line that is read by a Braille display or a screen reader.
# Exemple : Du 4 de base, montez vers la droite au 6 de tête
lay-print = { $heading ->
        [falling] Du { $from } { -of-top }, { -down } vers { $hand ->
            [left] la gauche
           *[right] la droite
        } au { $to } { -of-bottom }
       *[rising] Du { $from } { -of-bottom }, { -up } vers { $hand ->
            [left] la gauche
           *[right] la droite
        } au { $to } { -of-top }
    }

# One crossing as a word that differs in shape for over and under.
# Exemple : ENJAMBER 1
# Exemple : sous 2
lay-show-crossing = { $over ->
        [yes] ENJAMBER { $cords }
       *[no] sous { $cords }
    }

# The one crossing that who learns makes now, large on the screen, and how it is made.
# Exemple : ENJAMBEZ 1 cordon
lay-one = { $over ->
        [yes] ENJAMBEZ { $cords ->
            [one] 1 cordon
           *[other] { $cords } cordons
        }
       *[no] GLISSEZ SOUS { $cords ->
            [one] 1 cordon
           *[other] { $cords } cordons
        }
    }

lay-one-note = { $over ->
        [yes] Le vôtre reste visible
       *[no] Soulevez { -with-the-pick } et passez votre bout
    }

lay-show-clear = Encore rien à croiser

# What else the screen says of a lay step.
# Exemple : Au milieu de la montée, juste après le 3 de base
# $part, $share, $rim, $past, $made as for lay-say-way-on.
lay-show-note-on = { $share ->
        [little] Depuis le début
        [quarter] Depuis le quart environ
        [third] Depuis le tiers environ
        [half] Depuis le milieu environ
        [two-thirds] Depuis les deux tiers environ
        [three-quarters] Depuis les trois quarts environ
       *[most] Depuis presque la fin
    } { $heading ->
        [falling] { -of-the-way-down }
       *[rising] { -of-the-way-up }
    }{ $rim ->
        [none] { "" }
        [top] , juste après le { $past } { -of-top }
       *[bottom] , juste après le { $past } { -of-bottom }
    }{ $made ->
        [0] { "" }
        [one] , { $made } tour sur { $turns }
       *[other] , { $made } tours sur { $turns }
    }

# The side of the cord on which a follower lies. $lane: bottom, top, or the same of its own lead pass.
lay-show-lane = { $lane ->
        [bottom] Du { -side-bottom }
        [top] Du { -side-top }
        [bottom-own] Du { -side-bottom } de sa propre première passe
       *[top-own] Du { -side-top } de sa propre première passe
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $part ->
            [1] { $turns ->
                [0] Puis tenez votre cordon là où il est
                [one] 1 { -turn } en tout. Puis tenez votre cordon là où il est
               *[other] { $turns } { -turns } en tout. Puis tenez votre cordon là où il est
            }
           *[other] Puis tenez votre cordon là où il est
        }
        [inside] { $heading ->
            [falling] En dedans de la ganse, au { $to } { -of-bottom }
           *[rising] En dedans de la ganse, au { $to } { -of-top }
        }{ -taped-over }
        [outside] { $heading ->
            [falling] En dehors de la ganse, au { $to } { -of-bottom }
           *[rising] En dehors de la ganse, au { $to } { -of-top }
        }{ -taped-over }
        [home-and-on] Au départ, enjambez le dormant, continuez autour du { $to } { -of-bottom }
        [home-to-wait] Au départ, fixez-le au { $to } { -of-bottom }
        [home-to-end] Au départ, laissez pendre le bout au { $to } { -of-bottom }
       *[round] { $heading ->
            [falling] { -Then-round } { $to } { -of-bottom }
           *[rising] { -Then-round } { $to } { -of-top }
        }
    }

## The line above a step

# Exemple : Première passe, trajet 7 sur 12
# $phase: begin, lay, check, lift, fair or finish. $item of $items: things to do in lift and
# finish; rounds in fair.
phase-show = { $phase ->
        [lift] { -Lifting }, { $item } sur { $items }
        [fair] Égaliser, reprise { $item } sur { $items }{ $whole ->
            [yes] { "" }
           *[no] { $passes ->
                [one] { "" }
               *[other] , passe { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , circuit { $strand }
            }, trajet { $leg } sur { $legs }
        }
        [finish] Finir, { $item } sur { $items }
       *[other] { $pass ->
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
        }{ $named ->
            [yes] , « { $cord } »
           *[no] { "" }
        }{ $phase ->
            [begin] , départ
            [check] , regardez
           *[lay] , trajet { $leg } sur { $legs }{ $parts ->
                [one] { "" }
               *[other] , partie { $part } sur { $parts }
            }
        }
    }

## How many steps there are of each kind, a line each, in the terminal

# $kind: a kind of step by its name in the JSON document, or all of them together. One word.
steps-kind = { $kind ->
        [kit] réunir
        [rig] préparer
        [begin] départ
        [follow] suivre
        [lay] poser
        [check] regarder
        [lift] dégager
        [fair] égaliser
        [finish] finir
       *[all] tout
    }
