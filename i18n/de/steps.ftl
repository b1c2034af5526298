# The steps of laying a tie. A message ending in -say is spoken, one ending in -show stands on the
# screen. What the words must do: where the cord goes comes first (from which pin, which way,
# to which pin), then the crossings in the order they are met, then the landing; "Stift" stands
# before the number of a pin and a count stands with its cords; "rechts" is only ever a side.
#
# A spoken message comes in three depths: plain without an ending, -brief for who knows the work,
# -teach for who learns it. Every one stands alone, for a tyer who is back after a week.
#
# The words chosen, from memory of German ropework and seamanship; no source at hand:
#   over, under     "über" and "tauch unter … durch": unter, unten and hinunter are one muddle by
#                   ear, so under has a verb of its own, and neither unten, oben nor hinunter is
#                   ever said. On the screen ÜBER and unter.
#   bottom, top     Fuß and Kopf (Fuß-Stift, Kopf-Stift, Fuß-Seite, Kopf-Seite, Fuß-Bucht): no sound
#                   in common but the end of the second part. What is spoken has the hyphen, since
#                   espeak-ng says "Fußstift" and "Kopfstift" with a wrong "st" and a short "u";
#                   on the screen it is Fuß 4, Fußstift, Kopfring. What is shown and spoken in one
#                   message (an idea of the course, the facts of a knot) has the hyphen for the voice.
#   up, down        "hoch" and "hinab" (not hinauf, hinunter); "nach rechts hoch", and "auf dem Weg"
#                   before the crossings: not "und" or "unterwegs", which begin like unter
#   lane            (where a follower lies) "auf der Fuß-Seite", "auf der Kopf-Seite"
#   inside, outside "innen", "außen"; to turn round a pin is "wenden", as a boat does
#   cord            Schnur (not Leine: "eine Leine" is a rhyme that hides the count)
#   crossing counts "eine Schnur", "2 Schnüre"; brief "über 1" is said "über eins", as in weaving
#   pin, ring, tube Stift (a set screw is a Gewindestift), Ring, Rohr
#   lead, bight     Part (die Part, die Parten), Bucht
#   pass            Durchgang; the lead pass is "erster Durchgang"
#   leg, part       Bahn, Teil; strand: Strang
#   tail, working end   stehendes Ende, Arbeitsende
#   slack, fair     Lose (die Lose), durchholen; snug: satt; lift: abheben; tuck: durchstecken
#   the knot        Türkischer Bund, Türkenbund; here mostly just Knoten
#   correct         "stimmt", "gut": never richtig, which is too near to rechts
# The tyer is spoken to in the imperative (Führe, Nimm, Lass), with du and dein where needed.
# A length is never put in the dative ("15 Zentimeter lang", not "von 15 Zentimetern"), so that
# its noun fits as it stands in lengths.ftl.
#
# Weighed once more and kept: "dick" of a cord, which has no wall as a tube has; "liegt" for a round or pass that is done, as the cord lies on the tube then;
# to go through the knot when fairing has a number ("Durchholen, 1 von 3") and no noun, since Runde and
# Durchgang are other things; a brief leg of a later pass names no side, since its pass began with it.
#
# Unsure: Part for lead (some say Schlag or Strang for it); Bahn for leg (a sailor's leg is a Schlag, but
# that is a hitch in ropework); Durchholen for fairing (also Dichtholen, Ausgleichen); whether
# "zwei" should be "zwo" by ear, since zwei and drei are near to each other in noise.
#
# Arguments that come back everywhere:
#   $pass      1 is the lead pass
#   $passes    passes the whole tie has
#   $strand    the strand, $strands how many there are
#   $leg       the leg's number in this pass of the strand, $legs how many there are
#   $part      part of a long leg, $parts how many there are
#   $heading   rising (bottom rim to top rim) or falling
#   $from, $to numbers of pins; a rising leg goes from a bottom pin to a top pin
#   $hand      right or left: the way round the tube that the cord travels
#   $lane      bottom or top, or where bights are nested bottom-own or top-own: the rim towards which a follower lies of the first cord, on rising and
#              falling legs alike; none in the lead pass. ("Right of the cord" would turn about with
#              every leg, and "below" is heard as "under".)
#   $cord      what the tyer calls the cord, when $named is yes
#   $tail      a length, already with its unit (see lengths.ftl): "15 Zentimeter" for the ear,
#              "15 cm" for the eye

## Beginning a strand

# Example: Lass bei Fuß-Stift 1 ein Ende stehen, 15 Zentimeter lang. Klebe es fest. Die Schnur läuft nach
# rechts um das Rohr, und so sind auch die Stifte nummeriert.
# $uneven: yes when the weave leaves a fault at the rims. $staggered: yes when the top pins stand
# half way between the bottom ones.
begin-say = { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }.
    } { $named ->
        [yes] Nimm die Schnur „{ $cord }“.
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Lass an { -bottom-pin } { $pin } ein Ende hängen, { $tail } lang, und klebe es fest. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] { -top-pin } 1 steht einen halben Abstand weiter links als { -bottom-pin } 1.
               *[right] { -top-pin } 1 steht einen halben Abstand weiter rechts als { -bottom-pin } 1.
            }
           *[no] { -top-pin } 1 steht { -exactly-above } { -bottom-pin } 1.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

begin-say-brief = { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }.
    } { $named ->
        [yes] Schnur „{ $cord }“.
       *[no] { "" }
    } { -upright } Stehendes Ende { $tail }, an { -bottom-pin } { $pin }. { $hand ->
        [left] Arbeite nach links;
       *[right] Arbeite nach rechts;
    } { $staggered ->
        [yes] { -tops-staggered }
       *[no] { -tops-straight }
    } { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

begin-say-teach = { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }. { $strand ->
            [1] { $woven ->
                [yes] Ein Strang ist ein geschlossener Weg der Schnur; dieser Knoten hat mehrere, durcheinander gefädelt.
               *[no] Ein Strang ist ein geschlossener Weg der Schnur; dieser Knoten hat mehrere, denn die Zahl seiner Parten und die Zahl seiner Buchten haben einen gemeinsamen Teiler.
            }
           *[other] { "" }
        }
    } { $named ->
        [yes] Nimm die Schnur „{ $cord }“.
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Lass an { -bottom-pin } { $pin } ein Ende hängen, { $tail } lang, und klebe es fest. Das stehende Ende bleibt; mit dem anderen, in deiner Hand, arbeitest du. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] { -top-pin } 1 steht einen halben Abstand weiter links als { -bottom-pin } 1.
               *[right] { -top-pin } 1 steht einen halben Abstand weiter rechts als { -bottom-pin } 1.
            }
           *[no] { -top-pin } 1 steht { -exactly-above } { -bottom-pin } 1.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

# Example: Stehendes Ende 15 cm, an Fuß 1
begin-show = Stehendes Ende { $tail }, an { -bottom } { $pin }

# Example: Klebe es fest. Arbeite nach rechts.
begin-show-note = { $named ->
        [yes] Schnur „{ $cord }“.
       *[no] { "" }
    } { $hand ->
        [left] { -upright-shown } Arbeite nach links.
       *[right] { -upright-shown } Arbeite nach rechts.
    } { $uneven ->
        [yes] An den Rändern geht das Muster bei diesem Geflecht nicht auf.
       *[no] { "" }
    }

## Beginning to follow

# Example: Zweiter Durchgang. Dieselbe Schnur läuft weiter. Beginne an Fuß-Stift 1, neben der Schnur, die
# schon liegt, und bleib den ganzen Weg auf ihrer Fuß-Seite, ohne die Seite zu wechseln. Geh über und
# unter genau wie sie. An den Kopf-Stiften wende innen in ihren Buchten, an den Fuß-Stiften
# außen um sie herum.
# $inside: the rim where the follower turns inside, top or bottom. $added: yes when another cord
# begins here, no when the cord in hand goes on.
follow-say = { $pass ->
        [2] Zweiter Durchgang.
        [3] Dritter Durchgang.
        [4] Vierter Durchgang.
        [5] Fünfter Durchgang.
        [6] Sechster Durchgang.
        [7] Siebter Durchgang.
        [8] Achter Durchgang.
       *[9] Neunter Durchgang.
    } { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Nimm die Schnur „{ $cord }“ und lass ein Ende stehen, { $tail } lang. Beginne
           *[no] Nimm die neue Schnur und lass ein Ende stehen, { $tail } lang. Beginne
        }
       *[no] { $strands ->
            [one] Dieselbe Schnur läuft weiter. Beginne
           *[other] { $named ->
                [yes] Nimm die Schnur „{ $cord }“ wieder auf. Beginne
               *[no] Nimm seine Schnur wieder auf. Beginne
            }
        }
    } an { -bottom-pin } { $pin }, neben { $own ->
        [yes] dem eigenen ersten Durchgang
       *[no] der ersten Schnur
    }, und bleib den ganzen Weg auf { $lane ->
        [top] ihrer { -top-side },
       *[bottom] ihrer { -bottom-side },
    } { $pass ->
        [2] { "" }
       *[other] jenseits aller Schnüre dort,
    } ohne die Seite zu wechseln. Geh drüber, wo sie drübergeht, und tauch durch, wo sie durchtaucht. { $inside ->
        [bottom] An den { -bottom-pins } wende innen in ihren Buchten, an den { -top-pins } außen um sie herum.
       *[top] An den { -top-pins } wende innen in ihren Buchten, an den { -bottom-pins } außen um sie herum.
    } { -hold-again }

follow-say-brief = { $pass ->
        [2] Zweiter Durchgang.
        [3] Dritter Durchgang.
        [4] Vierter Durchgang.
        [5] Fünfter Durchgang.
        [6] Sechster Durchgang.
        [7] Siebter Durchgang.
        [8] Achter Durchgang.
       *[9] Neunter Durchgang.
    } { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Schnur „{ $cord }“, stehendes Ende { $tail }.
           *[no] Neue Schnur, stehendes Ende { $tail }.
        }
       *[no] { "" }
    } Ab { -bottom-pin } { $pin } folge auf der { $lane ->
        [top] { -top-side }.
       *[bottom] { -bottom-side }.
    } { $inside ->
        [bottom] { -At-the-bottom } innen, { -at-the-top } außen.
       *[top] { -At-the-top } innen, { -at-the-bottom } außen.
    } { -hold-again-short }

follow-say-teach = { $pass ->
        [2] Zweiter Durchgang.
        [3] Dritter Durchgang.
        [4] Vierter Durchgang.
        [5] Fünfter Durchgang.
        [6] Sechster Durchgang.
        [7] Siebter Durchgang.
        [8] Achter Durchgang.
       *[9] Neunter Durchgang.
    } { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }.
    } { $pass ->
        [2] { $strand ->
            [1] Ein Durchgang ist ein Weg der Schnur durch das ganze Muster; von nun an folgt die Schnur der ersten.
           *[other] { "" }
        }
       *[other] { "" }
    } { $added ->
        [yes] { $named ->
            [yes] Nimm die Schnur „{ $cord }“ und lass ein Ende stehen, { $tail } lang. { $apart ->
                [yes] Sie beginnt an einem eigenen { -pin }, damit nicht alle Enden an einer Stelle herauskommen. Beginne
               *[no] Beginne
            }
           *[no] Nimm die neue Schnur und lass ein Ende stehen, { $tail } lang. { $apart ->
                [yes] Sie beginnt an einem eigenen { -pin }, damit nicht alle Enden an einer Stelle herauskommen. Beginne
               *[no] Beginne
            }
        }
       *[no] { $strands ->
            [one] Dieselbe Schnur läuft weiter. Beginne
           *[other] { $named ->
                [yes] Nimm die Schnur „{ $cord }“ wieder auf. Beginne
               *[no] Nimm seine Schnur wieder auf. Beginne
            }
        }
    } an { -bottom-pin } { $pin }, neben { $own ->
        [yes] dem eigenen ersten Durchgang
       *[no] der ersten Schnur
    }, und bleib den ganzen Weg auf { $lane ->
        [top] ihrer { -top-side },
       *[bottom] ihrer { -bottom-side },
    } { $pass ->
        [2] { "" }
       *[other] jenseits aller Schnüre dort,
    } ohne die Seite zu wechseln. Geh drüber, wo sie drübergeht, und tauch durch, wo sie durchtaucht. { $inside ->
        [bottom] An den { -bottom-pins } wende innen in ihrer Bucht, { -towards-the-middle }; an den { -top-pins } außen um sie herum.
       *[top] An den { -top-pins } wende innen in ihrer Bucht, { -towards-the-middle }; an den { -bottom-pins } außen um sie herum.
    } { -hold-again }

# Example: Folge auf der Fußseite
follow-show = { $lane ->
        [top] Folge auf der { -top-side-shown }
       *[bottom] Folge auf der { -bottom-side-shown }
    }

# Example: Ab Fuß 1. Am Kopf innen, am Fuß außen.
follow-show-note = { $added ->
        [yes] { $named ->
            [yes] Schnur „{ $cord }“, mit stehendem Ende.
           *[no] Neue Schnur, mit stehendem Ende.
        }
       *[no] { "" }
    } { $inside ->
        [bottom] Ab { -bottom } { $pin }. { -At-the-bottom } innen, { -at-the-top } außen.
       *[top] Ab { -bottom } { $pin }. { -At-the-top } innen, { -at-the-bottom } außen.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Example: Bahn 7. Von Fuß-Stift 4 nach rechts hoch zu Kopf-Stift 6.
# Example: Durchgang 2, Strang 2, Bahn 4. Von Kopf-Stift 2 auf der Fuß-Seite der ersten Schnur
# hinab zu Fuß-Stift 5.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg }
           *[other] Strang { $strand }{ $named ->
                [yes] , „{ $cord }“
               *[no] { "" }
            }, Bahn { $leg }
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] Von { -top-pin } { $from }
       *[rising] Von { -bottom-pin } { $from }
    } { $lane ->
        [bottom] auf der { -bottom-side } der ersten Schnur
        [top] auf der { -top-side } der ersten Schnur
        [bottom-own] auf der { -bottom-side } des eigenen ersten Durchgangs
        [top-own] auf der { -top-side } des eigenen ersten Durchgangs
       *[none] nach { $hand ->
            [left] links
           *[right] rechts
        }
    } { $heading ->
        [falling] { -down }
       *[rising] { -up }
    }{ $turns ->
        [0] { "" }
        [one] , einmal ganz { -round-the-tube } und weiter
        [2] , zweimal ganz { -round-the-tube } und weiter
       *[other] , { $turns }-mal ganz { -round-the-tube } und weiter
    } zu { $heading ->
        [falling] { -bottom-pin } { $to }.
       *[rising] { -top-pin } { $to }.
    }

# The same, brief.
# Example: Bahn 7. Fuß-Stift 4, hoch zu Kopf-Stift 6.
lay-say-way-brief = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg }
           *[other] Strang { $strand }, Bahn { $leg }
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] { -top-pin } { $from }, { -down-short } zu { -bottom-pin } { $to }
       *[rising] { -bottom-pin } { $from }, { -up-short } zu { -top-pin } { $to }
    }{ $turns ->
        [0] { "" }
        [one] , einmal herum
        [2] , zweimal herum
       *[other] , { $turns }-mal herum
    }.

# Example: Bahn 1. Eine Bahn ist die Schnur von einem Stift am einen Rand zu einem Stift am
# anderen. Von Fuß-Stift 1 nach rechts hoch zu Kopf-Stift 3.
lay-say-way-teach = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg }
           *[other] Strang { $strand }{ $named ->
                [yes] , „{ $cord }“
               *[no] { "" }
            }, Bahn { $leg }
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $first ->
        [yes] Eine Bahn ist die Schnur von einem { -pin } am einen Rand zu einem { -pin } am anderen.
       *[no] { "" }
    } { $heading ->
        [falling] Von { -top-pin } { $from }
       *[rising] Von { -bottom-pin } { $from }
    } { $lane ->
        [bottom] auf der { -bottom-side } der ersten Schnur
        [top] auf der { -top-side } der ersten Schnur
        [bottom-own] auf der { -bottom-side } des eigenen ersten Durchgangs
        [top-own] auf der { -top-side } des eigenen ersten Durchgangs
       *[none] nach { $hand ->
            [left] links
           *[right] rechts
        }
    } { $heading ->
        [falling] { -down }
       *[rising] { -up }
    }{ $turns ->
        [0] { "" }
        [one] , einmal ganz { -round-the-tube } und weiter
        [2] , zweimal ganz { -round-the-tube } und weiter
       *[other] , { $turns }-mal ganz { -round-the-tube } und weiter
    } zu { $heading ->
        [falling] { -bottom-pin } { $to }.
       *[rising] { -top-pin } { $to }.
    }

# The beginning of a later part of a long leg: which leg, and where the cord is now.
# Example: Bahn 11, Teil 2 von 5, von Fuß-Stift 2 nach rechts hoch zu Kopf-Stift 4. Du bist auf einem
# Viertel des Wegs, eben an Fuß-Stift 3 vorbei. Nach einem Umlauf sagen Umläufe und Stift alles.
# $share: little, quarter, third, half, two-thirds, three-quarters, most. $past: number of the
# pin it has just passed, $rim: bottom or top, or none while that is where the leg began or where it is to land. $made: whole turns made on this leg so far.
lay-say-way-on = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg }
           *[other] Strang { $strand }, Bahn { $leg }
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, Bahn { $leg }
    }, Teil { $part } von { $parts }, von { $heading ->
        [falling] { -top-pin } { $from }
       *[rising] { -bottom-pin } { $from }
    } { $lane ->
        [bottom] auf der { -bottom-side } der ersten Schnur
        [top] auf der { -top-side } der ersten Schnur
        [bottom-own] auf der { -bottom-side } des eigenen ersten Durchgangs
        [top-own] auf der { -top-side } des eigenen ersten Durchgangs
       *[none] nach { $hand ->
            [left] links
           *[right] rechts
        }
    } { $heading ->
        [falling] { -down } zu { -bottom-pin } { $to }.
       *[rising] { -up } zu { -top-pin } { $to }.
    } Du bist { $made ->
        [0] { $share ->
            [little] noch am Anfang
            [quarter] auf einem Viertel des Wegs
            [third] auf einem Drittel des Wegs
            [half] auf halbem Weg
            [two-thirds] auf zwei Dritteln des Wegs
            [three-quarters] auf drei Vierteln des Wegs
           *[most] fast am Ziel
        }
        [one] einmal { -round-the-tube }
        [2] zweimal { -round-the-tube }
       *[other] { $made }-mal { -round-the-tube }
    }{ $rim ->
        [none] { "" }
        [top] , eben an { -top-pin } { $past } vorbei
       *[bottom] , eben an { -bottom-pin } { $past } vorbei
    }.

# Example: Bahn 11, Teil 2 von 5. Fuß-Stift 2, hoch zu Kopf-Stift 4, an Fuß-Stift 3 vorbei.
lay-say-way-on-brief = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg }
           *[other] Strang { $strand }, Bahn { $leg }
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, Bahn { $leg }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] { -top-pin } { $from }, { -down-short } zu { -bottom-pin } { $to }
       *[rising] { -bottom-pin } { $from }, { -up-short } zu { -top-pin } { $to }
    }{ $rim ->
        [none] { "" }
        [top] , an { -top-pin } { $past } vorbei
       *[bottom] , an { -bottom-pin } { $past } vorbei
    }.

# The same, for who learns.
lay-say-way-on-teach = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg }
           *[other] Strang { $strand }, Bahn { $leg }
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, Bahn { $leg }
    }, Teil { $part } von { $parts }, von { $heading ->
        [falling] { -top-pin } { $from }
       *[rising] { -bottom-pin } { $from }
    } { $lane ->
        [bottom] auf der { -bottom-side } der ersten Schnur
        [top] auf der { -top-side } der ersten Schnur
        [bottom-own] auf der { -bottom-side } des eigenen ersten Durchgangs
        [top-own] auf der { -top-side } des eigenen ersten Durchgangs
       *[none] nach { $hand ->
            [left] links
           *[right] rechts
        }
    } { $heading ->
        [falling] { -down } zu { -bottom-pin } { $to }.
       *[rising] { -up } zu { -top-pin } { $to }.
    } Du bist { $made ->
        [0] { $share ->
            [little] noch am Anfang
            [quarter] auf einem Viertel des Wegs
            [third] auf einem Drittel des Wegs
            [half] auf halbem Weg
            [two-thirds] auf zwei Dritteln des Wegs
            [three-quarters] auf drei Vierteln des Wegs
           *[most] fast am Ziel
        }
        [one] einmal { -round-the-tube }
        [2] zweimal { -round-the-tube }
       *[other] { $made }-mal { -round-the-tube }
    }{ $rim ->
        [none] { "" }
        [top] , eben an { -top-pin } { $past } vorbei
       *[bottom] , eben an { -bottom-pin } { $past } vorbei
    }.

# One crossing; those of a step are said one after the other.
# Example: Geh über eine Schnur, tauch unter 2 durch.
# $place: only, first, next or last of the step. $over: yes or no. $cords: cords lying there.
lay-say-crossing = { $place ->
        [only] { $over ->
            [yes] Geh über { $cords ->
                [one] eine Schnur
               *[other] { $cords } Schnüre
            }
           *[no] Tauch unter { $cords ->
                [one] einer Schnur
               *[other] { $cords } Schnüren
            } durch
        }.
        [first] { $over ->
            [yes] Geh über { $cords ->
                [one] eine Schnur
               *[other] { $cords } Schnüre
            }
           *[no] Tauch unter { $cords ->
                [one] einer Schnur
               *[other] { $cords } Schnüren
            } durch
        },
        [last] { $over ->
            [yes] geh über { $cords ->
                [one] eine
               *[other] { $cords }
            }
           *[no] tauch unter { $cords ->
                [one] einer
               *[other] { $cords }
            } durch
        }.
       *[next] { $over ->
            [yes] geh über { $cords ->
                [one] eine
               *[other] { $cords }
            }
           *[no] tauch unter { $cords ->
                [one] einer
               *[other] { $cords }
            } durch
        },
    }

# Example: Über 1, tauch unter 2, über 1.
lay-say-crossing-brief = { $place ->
        [only] { $over ->
            [yes] Über { $cords }.
           *[no] Tauch unter { $cords }.
        }
        [first] { $over ->
            [yes] Über { $cords },
           *[no] Tauch unter { $cords },
        }
        [last] { $over ->
            [yes] über { $cords }.
           *[no] tauch unter { $cords }.
        }
       *[next] { $over ->
            [yes] über { $cords },
           *[no] tauch unter { $cords },
        }
    }

# A crossing with the cord that is met, by its pins.
# Example: Tauch unter einer Schnur durch: Heb sie an und schieb dein Ende hindurch.
# $new: yes at the first over and the first under of the tie.
lay-say-crossing-teach = { $over ->
        [yes] Geh über { $cords ->
                [one] eine Schnur
               *[other] { $cords } Schnüre
            }{ $new ->
            [yes] : Leg deine quer darauf.
           *[no] .
        }
       *[no] Tauch unter { $cords ->
                [one] einer Schnur
               *[other] { $cords } Schnüren
            } durch{ $new ->
            [yes] : Heb sie an und schieb dein Ende hindurch.
           *[no] .
        }
    }

# A leg that meets no cord.
lay-say-clear = Noch liegt nichts im Weg.
lay-say-clear-brief = Nichts zu kreuzen.
lay-say-clear-teach = Noch liegt nichts im Weg.

# How a lay step ends. $landing: on-the-way, round, inside or outside; at the pin where the pass
# began home-and-on, home-to-wait (other strands come first) or home-to-end (the cord ends).
# Example: Dann um Kopf-Stift 6.
# Example: Außen um die Bucht.
lay-say-landing = { $landing ->
        [on-the-way] Halte deine Schnur dort fest.
        [inside] Innen in der Bucht.
        [outside] Außen um die Bucht.
        [home-and-on] Zurück am Anfang: Geh über das hängende Ende und weiter um den { -pin }.
        [home-to-wait] Zurück am Anfang: Klebe die Schnur dort fest, bis zum nächsten Durchgang.
        [home-to-end] Zurück am Anfang: Lass das Ende hängen.
       *[round] { $heading ->
            [falling] { -Then-round } { -bottom-pin } { $to }.
           *[rising] { -Then-round } { -top-pin } { $to }.
        }
    }

# Example: Innen.
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Innen.
        [outside] Außen.
        [home-and-on] Am Anfang: über das Ende weiter.
        [home-to-wait] Am Anfang: festkleben.
        [home-to-end] Am Anfang: hier aufhören.
       *[round] { "" }
    }

lay-say-landing-teach = { $landing ->
        [on-the-way] Halte deine Schnur dort fest.
        [inside] Innen in der Bucht.
        [outside] Außen um die Bucht.
        [home-and-on] Zurück am Anfang: Geh über das hängende Ende und weiter um den { -pin }.
        [home-to-wait] Zurück am Anfang: Klebe die Schnur dort fest, bis zum nächsten Durchgang.
        [home-to-end] Zurück am Anfang: Lass das Ende hängen.
       *[round] { $heading ->
            [falling] { -Then-round } { -bottom-pin } { $to }; hol die Lose nach.
           *[rising] { -Then-round } { -top-pin } { $to }; hol die Lose nach.
        }
    }

# The arrow is the way the cord goes. Example: Fuß 4 hoch zu Kopf 6 ↗
lay-show = { $heading ->
        [falling] { -top } { $from } { -down-short } zu { -bottom } { $to } { $hand ->
            [left] ↙
           *[right] ↘
        }
       *[rising] { -bottom } { $from } { -up-short } zu { -top } { $to } { $hand ->
            [left] ↖
           *[right] ↗
        }
    }

# The same in words alone, for a line that is read by a Braille display or a screen reader.
# Example: Fuß 4 hoch und nach rechts, zu Kopf 6
lay-print = { $heading ->
        [falling] { -top } { $from } { -down-short } und { $hand ->
            [left] nach links
           *[right] nach rechts
        }, zu { -bottom } { $to }
       *[rising] { -bottom } { $from } { -up-short } und { $hand ->
            [left] nach links
           *[right] nach rechts
        }, zu { -top } { $to }
    }

# One crossing as a word that differs in shape for over and under.
# Example: ÜBER 1
# Example: unter 2
lay-show-crossing = { $over ->
        [yes] ÜBER { $cords }
       *[no] unter { $cords }
    }

# The one crossing that who learns makes now, large on the screen, and how it is made.
# Example: ÜBER eine Schnur
lay-one = { $over ->
        [yes] ÜBER { $cords ->
            [one] eine Schnur
           *[other] { $cords } Schnüre
        }
       *[no] UNTER { $cords ->
            [one] einer Schnur
           *[other] { $cords } Schnüren
        } durch
    }

lay-one-note = { $over ->
        [yes] Deine Schnur liegt quer darauf
       *[no] Anheben { -with-the-pick }, das Ende hindurchschieben
    }

lay-show-clear = Noch nichts zu kreuzen

# What else the screen says of a lay step.
# Example: Etwa die Hälfte des Weges hoch, eben an Fuß 3 vorbei
# $part, $share, $rim, $past, $made as for lay-say-way-on.
lay-show-note-on = { $share ->
        [little] Ab einem kleinen Stück des Weges
        [quarter] Ab etwa einem Viertel des Weges
        [third] Ab etwa einem Drittel des Weges
        [half] Ab etwa der Hälfte des Weges
        [two-thirds] Ab etwa zwei Dritteln des Weges
        [three-quarters] Ab etwa drei Vierteln des Weges
       *[most] Ab dem größten Teil des Weges
    } { $heading ->
        [falling] { -down }
       *[rising] { -up }
    }{ $rim ->
        [none] { "" }
        [top] , eben an { -top } { $past } vorbei
       *[bottom] , eben an { -bottom } { $past } vorbei
    }{ $made ->
        [0] { "" }
       *[other] , { $made } von { $turns } Umläufen
    }

# The side of the cord on which a follower lies. $lane: bottom, top, or the same of its own lead pass.
lay-show-lane = { $lane ->
        [bottom] Auf der { -bottom-side }
        [top] Auf der { -top-side }
        [bottom-own] Auf der { -bottom-side } des eigenen ersten Durchgangs
       *[top-own] Auf der { -top-side } des eigenen ersten Durchgangs
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $part ->
            [1] { $turns ->
                [0] Dann halt deine Schnur, wo sie ist
                [one] Im Ganzen einmal { -round-it }. Dann halt deine Schnur, wo sie ist
                [2] Im Ganzen zweimal { -round-it }. Dann halt deine Schnur, wo sie ist
               *[other] Im Ganzen { $turns }-mal { -round-it }. Dann halt deine Schnur, wo sie ist
            }
           *[other] Dann halt deine Schnur, wo sie ist
        }
        [inside] { $heading ->
            [falling] Innen in der Bucht an { -bottom } { $to }
           *[rising] Innen in der Bucht an { -top } { $to }
        }{ -taped-over }
        [outside] { $heading ->
            [falling] Außen um die Bucht an { -bottom } { $to }
           *[rising] Außen um die Bucht an { -top } { $to }
        }{ -taped-over }
        [home-and-on] Zurück am Anfang: über das Ende und weiter um { -bottom } { $to }
        [home-to-wait] Zurück am Anfang: Klebe sie an { -bottom } { $to } fest
        [home-to-end] Zurück am Anfang: Lass das Ende an { -bottom } { $to } hängen
       *[round] { $heading ->
            [falling] { -round-shown } { -bottom } { $to } { -round-shown-end }
           *[rising] { -round-shown } { -top } { $to } { -round-shown-end }
        }
    }

## The line above a step

# Example: Erster Durchgang, Bahn 7 von 12
# $phase: begin, lay, check, lift, fair or finish. $item of $items: things to do in lift and
# finish; rounds in fair.
phase-show = { $phase ->
        [lift] { -Lifting }, { $item } von { $items }
        [fair] Durchholen, { $item } von { $items }{ $whole ->
            [yes] { "" }
           *[no] { $passes ->
                [one] { "" }
               *[other] , Durchgang { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , Strang { $strand }
            }, Bahn { $leg } von { $legs }
        }
        [finish] Fertig machen, { $item } von { $items }
       *[other] { $pass ->
            [1] Erster Durchgang
            [2] Zweiter Durchgang
            [3] Dritter Durchgang
            [4] Vierter Durchgang
            [5] Fünfter Durchgang
            [6] Sechster Durchgang
            [7] Siebter Durchgang
            [8] Achter Durchgang
           *[9] Neunter Durchgang
        }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand } von { $strands }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }{ $phase ->
            [begin] , Anfang
            [check] , Nachsehen
           *[lay] , Bahn { $leg } von { $legs }{ $parts ->
                [one] { "" }
               *[other] , Teil { $part } von { $parts }
            }
        }
    }

## How many steps there are of each kind, a line each, in the terminal

# $kind: a kind of step by its name in the JSON document, or all of them together. One word.
steps-kind = { $kind ->
        [kit] Bereitlegen
        [rig] Einrichten
        [begin] Anfang
        [follow] Folgen
        [lay] Legen
        [check] Nachsehen
        [lift] Abheben
        [fair] Durchholen
        [finish] Enden
       *[all] alles
    }
