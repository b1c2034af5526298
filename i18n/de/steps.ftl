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
#                   on the screen it is Fuß 4, Fußstift, Kopfring.
#   up, down        "hoch" and "hinab" (not hinauf, hinunter); "nach rechts hoch", and "auf dem Weg"
#                   before the crossings: not "und" or "unterwegs", which begin like unter
#   below, above    (lane of a follower) "auf der Fuß-Seite", "auf der Kopf-Seite"
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
#   $lane      below or above: where a follower lies beside the cord it follows, towards the bottom or
#              the top rim, on rising and falling legs alike; none in the lead pass. ("Right of the
#              cord" would turn about with every leg.)
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
    } Lass bei Fuß-Stift { $pin } ein Ende stehen, { $tail } lang. Klebe es fest. Die Schnur läuft nach { $hand ->
        [left] links
       *[right] rechts
    } um das Rohr, und so sind auch die Stifte nummeriert. { $uneven ->
        [yes] In dieser Flechtart gehen über und unter an den Rändern nicht gleichmäßig auf. Das liegt an der Flechtart, nicht an dir.
       *[no] { "" }
    }

begin-say-brief = { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }.
    } { $named ->
        [yes] Schnur „{ $cord }“.
       *[no] { "" }
    } Stehendes Ende { $tail }, bei Fuß-Stift { $pin }. Arbeite nach { $hand ->
        [left] links
       *[right] rechts
    }. { $uneven ->
        [yes] Die Flechtart geht an den Rändern nicht gleichmäßig auf.
       *[no] { "" }
    }

begin-say-teach = { $strands ->
        [one] { "" }
       *[other] Strang { $strand } von { $strands }. { $strand ->
            [1] Ein Strang ist ein geschlossener Weg der Schnur; dieser Knoten hat mehrere, denn die Zahl seiner Parten und die Zahl seiner Buchten haben einen gemeinsamen Teiler.
           *[other] { "" }
        }
    } { $named ->
        [yes] Nimm die Schnur „{ $cord }“.
       *[no] { "" }
    } Lass bei Fuß-Stift { $pin } ein Ende stehen, { $tail } lang, und klebe es fest. Das ist das stehende Ende; das in deiner Hand ist das Arbeitsende. Die Schnur läuft nach { $hand ->
        [left] links
       *[right] rechts
    } um das Rohr, von Stift zu Stift, und so sind auch die Stifte nummeriert. { $strand ->
        [1] { $staggered ->
            [yes] Jeder Kopf-Stift steht auf Lücke zwischen zwei Fuß-Stiften. Das heißt versetzt: Bei einer ungeraden Zahl von Parten kommt jede Schnur einen halben Schritt weiter an, und an geraden Stiften würde der Knoten schief.
           *[no] Jeder Kopf-Stift steht gerade über einem Fuß-Stift, denn so kommen die Schnüre bei einer geraden Zahl von Parten an.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] In dieser Flechtart gehen über und unter an den Rändern nicht gleichmäßig auf. Das liegt an der Flechtart, nicht an dir.
       *[no] { "" }
    }

# Example: 15 cm Ende an Fuß 1
begin-show = { $tail } Ende an Fuß { $pin }

# Example: Klebe es fest. Arbeite nach rechts.
begin-show-note = { $named ->
        [yes] Schnur „{ $cord }“.
       *[no] { "" }
    } { $hand ->
        [left] Klebe es fest. Arbeite nach links; auch die Stifte zählen nach links.
       *[right] Klebe es fest. Arbeite nach rechts.
    } { $uneven ->
        [yes] Diese Flechtart geht an den Rändern nicht gleichmäßig auf.
       *[no] { "" }
    }

## Beginning to follow

# Example: Zweiter Durchgang. Dieselbe Schnur läuft weiter. Beginne an Fuß-Stift 1, neben der Schnur, die
# schon liegt, und bleib den ganzen Weg auf ihrer Fuß-Seite, ohne sie je zu kreuzen. Geh über und
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
    } an Fuß-Stift { $pin }, neben der Schnur, die schon liegt, und bleib den ganzen Weg auf { $lane ->
        [above] ihrer Kopf-Seite,
       *[below] ihrer Fuß-Seite,
    } ohne sie je zu kreuzen. Geh über und unter genau wie sie. { $inside ->
        [bottom] An den Fuß-Stiften wende innen in ihren Buchten, an den Kopf-Stiften außen um sie herum.
       *[top] An den Kopf-Stiften wende innen in ihren Buchten, an den Fuß-Stiften außen um sie herum.
    }

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
    } Ab Fuß-Stift { $pin } folge auf der { $lane ->
        [above] Kopf-Seite.
       *[below] Fuß-Seite.
    } { $inside ->
        [bottom] Am Fuß innen, am Kopf außen.
       *[top] Am Kopf innen, am Fuß außen.
    }

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
            [1] Ein Durchgang ist ein Weg der Schnur durch das ganze Muster; von nun an folgt die Schnur der, die schon liegt.
           *[other] { "" }
        }
       *[other] { "" }
    } { $added ->
        [yes] { $named ->
            [yes] Nimm die Schnur „{ $cord }“ und lass ein Ende stehen, { $tail } lang. { $apart ->
                [yes] Sie beginnt an einem eigenen Stift, damit nicht alle Enden an einer Stelle herauskommen. Beginne
               *[no] Beginne
            }
           *[no] Nimm die neue Schnur und lass ein Ende stehen, { $tail } lang. { $apart ->
                [yes] Sie beginnt an einem eigenen Stift, damit nicht alle Enden an einer Stelle herauskommen. Beginne
               *[no] Beginne
            }
        }
       *[no] { $strands ->
            [one] Dieselbe Schnur läuft weiter: Sie ist wieder an ihrem ersten Stift und macht ihren Weg einfach noch einmal. Beginne
           *[other] { $named ->
                [yes] Nimm die Schnur „{ $cord }“ wieder auf: Sie ist wieder an ihrem ersten Stift und macht ihren Weg einfach noch einmal. Beginne
               *[no] Nimm seine Schnur wieder auf: Sie ist wieder an ihrem ersten Stift und macht ihren Weg einfach noch einmal. Beginne
            }
        }
    } an Fuß-Stift { $pin }, neben der Schnur, die schon liegt, und bleib den ganzen Weg auf { $lane ->
        [above] ihrer Kopf-Seite, also zum Kopf-Rand hin.
       *[below] ihrer Fuß-Seite, also zum Fuß-Rand hin.
    } Die Schnur kreuzt nie die, der sie folgt, und geht über und unter genau wie sie. { $pass ->
        [2] { $strand ->
            [1] Eine Bucht ist die Schlinge um einen Stift.
           *[other] { "" }
        }
       *[other] { "" }
    } { $inside ->
        [bottom] An den Fuß-Stiften wende innen in der Bucht, die schon liegt, also zwischen ihr und der Mitte des Knotens; an den Kopf-Stiften wende außen um sie herum, weiter draußen als sie.
       *[top] An den Kopf-Stiften wende innen in der Bucht, die schon liegt, also zwischen ihr und der Mitte des Knotens; an den Fuß-Stiften wende außen um sie herum, weiter draußen als sie.
    }

# Example: Folge auf der Fußseite
follow-show = { $lane ->
        [above] Folge auf der Kopfseite
       *[below] Folge auf der Fußseite
    }

# Example: Ab Fuß 1. Am Kopf innen, am Fuß außen.
follow-show-note = { $added ->
        [yes] { $named ->
            [yes] Schnur „{ $cord }“, mit stehendem Ende.
           *[no] Neue Schnur, mit stehendem Ende.
        }
       *[no] { "" }
    } { $inside ->
        [bottom] Ab Fuß { $pin }. Am Fuß innen, am Kopf außen.
       *[top] Ab Fuß { $pin }. Am Kopf innen, am Fuß außen.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Example: Bahn 7 von 12. Von Fuß-Stift 4 nach rechts hoch, zu Kopf-Stift 6.
# Example: Zweiter Durchgang, Strang 2, Bahn 4 von 12. Von Kopf-Stift 2 nach rechts hinab, zu
# Fuß-Stift 5, immer auf der Fuß-Seite der Schnur, die schon liegt.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg } von { $legs }
           *[other] Strang { $strand }{ $named ->
                [yes] , „{ $cord }“
               *[no] { "" }
            }, Bahn { $leg } von { $legs }
        }
       *[other] { $pass ->
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
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg } von { $legs }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $heading ->
        [falling] Von Kopf-Stift { $from }
       *[rising] Von Fuß-Stift { $from }
    } nach { $hand ->
        [left] links
       *[right] rechts
    } { $heading ->
        [falling] hinab
       *[rising] hoch
    },{ $turns ->
        [0] { "" }
        [one] { " " }einmal ganz um das Rohr herum und weiter,
        [2] { " " }zweimal ganz um das Rohr herum und weiter,
       *[other] { " " }{ $turns }-mal ganz um das Rohr herum und weiter,
    } zu { $heading ->
        [falling] Fuß-Stift { $to }
       *[rising] Kopf-Stift { $to }
    }{ $lane ->
        [below] , immer auf der Fuß-Seite der Schnur, die schon liegt.
        [above] , immer auf der Kopf-Seite der Schnur, die schon liegt.
       *[none] .
    }

# The same, brief.
# Example: Fuß-Stift 4, hoch zu Kopf-Stift 6.
# Example: Strang 2. Kopf-Stift 2, hinab zu Fuß-Stift 5.
lay-say-way-brief = { $pass ->
        [1] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, { $lane ->
            [above] Kopf-Seite.
           *[below] Fuß-Seite.
        }
    } { $heading ->
        [falling] Kopf-Stift { $from }, hinab zu Fuß-Stift { $to }
       *[rising] Fuß-Stift { $from }, hoch zu Kopf-Stift { $to }
    }{ $turns ->
        [0] { "" }
        [one] , einmal herum
        [2] , zweimal herum
       *[other] , { $turns }-mal herum
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    }

# Example: Strang 2, Bahn 4 von 12. Die Schnur steht an Fuß-Stift 4. Führe sie nach rechts hoch,
# auf Kopf-Stift 6 zu.
lay-say-way-teach = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg } von { $legs }
           *[other] Strang { $strand }{ $named ->
                [yes] , „{ $cord }“
               *[no] { "" }
            }, Bahn { $leg } von { $legs }
        }
       *[other] { $pass ->
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
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg } von { $legs }
    }{ $parts ->
        [one] .
       *[other] , Teil { $part } von { $parts }.
    } { $first ->
        [yes] Eine Bahn ist die Schnur von einem Stift am einen Rand zu einem Stift am anderen.
       *[no] { "" }
    } Die Schnur steht an { $heading ->
        [falling] Kopf-Stift { $from }
       *[rising] Fuß-Stift { $from }
    }. Führe sie nach { $hand ->
        [left] links
       *[right] rechts
    } { $heading ->
        [falling] hinab
       *[rising] hoch
    },{ $turns ->
        [0] { "" }
        [one] { " " }einmal ganz um das Rohr herum und weiter,
        [2] { " " }zweimal ganz um das Rohr herum und weiter,
       *[other] { " " }{ $turns }-mal ganz um das Rohr herum und weiter,
    } auf { $heading ->
        [falling] Fuß-Stift { $to }
       *[rising] Kopf-Stift { $to }
    } zu{ $lane ->
        [below] , dicht auf der Fuß-Seite der Schnur, die schon liegt.
        [above] , dicht auf der Kopf-Seite der Schnur, die schon liegt.
       *[none] .
    }

# The beginning of a later part of a long leg: which leg, and where the cord is now.
# Example: Bahn 11 von 42, Teil 2 von 5, von Fuß-Stift 2 hoch zu Kopf-Stift 4. Die Schnur hat etwa ein
# Viertel des Weges hinter sich und ist gerade an Fuß-Stift 3 vorbei. Von dort geht es nach
# rechts hoch.
# $share: little, quarter, third, half, two-thirds, three-quarters, most. $past: number of the
# pin it has just passed, $rim: bottom or top. $made: whole turns made on this leg so far.
lay-say-way-on = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg } von { $legs }
           *[other] Strang { $strand }{ $named ->
                [yes] , „{ $cord }“
               *[no] { "" }
            }, Bahn { $leg } von { $legs }
        }
       *[other] { $pass ->
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
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg } von { $legs }
    }, Teil { $part } von { $parts }, von { $heading ->
        [falling] Kopf-Stift { $from } hinab zu Fuß-Stift { $to }
       *[rising] Fuß-Stift { $from } hoch zu Kopf-Stift { $to }
    }. Die Schnur hat { $share ->
        [little] ein kleines Stück des Weges
        [quarter] etwa ein Viertel des Weges
        [third] etwa ein Drittel des Weges
        [half] etwa die Hälfte des Weges
        [two-thirds] etwa zwei Drittel des Weges
        [three-quarters] etwa drei Viertel des Weges
       *[most] den größten Teil des Weges
    } hinter sich{ $made ->
        [0] { " " }und ist
        [one] , ist einmal ganz um das Rohr gelaufen und
        [2] , ist zweimal ganz um das Rohr gelaufen und
       *[other] , ist { $made }-mal ganz um das Rohr gelaufen und
    } gerade an { $rim ->
        [top] Kopf-Stift { $past }
       *[bottom] Fuß-Stift { $past }
    } vorbei. Von dort geht es nach { $hand ->
        [left] links
       *[right] rechts
    } { $heading ->
        [falling] hinab
       *[rising] hoch
    }{ $lane ->
        [below] , immer auf der Fuß-Seite der Schnur, die schon liegt.
        [above] , immer auf der Kopf-Seite der Schnur, die schon liegt.
       *[none] .
    }

# Example: Fuß-Stift 2, hoch zu Kopf-Stift 4, Teil 2 von 5, an Fuß-Stift 3 vorbei.
lay-say-way-on-brief = { $pass ->
        [1] { $strands ->
            [one] { "" }
           *[other] Strang { $strand }.
        }
       *[other] Durchgang { $pass }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, { $lane ->
            [above] Kopf-Seite.
           *[below] Fuß-Seite.
        }
    } { $heading ->
        [falling] Kopf-Stift { $from }, hinab zu Fuß-Stift { $to }
       *[rising] Fuß-Stift { $from }, hoch zu Kopf-Stift { $to }
    }, Teil { $part } von { $parts }, an { $rim ->
        [top] Kopf-Stift { $past }
       *[bottom] Fuß-Stift { $past }
    } vorbei.

# The same, for who learns.
lay-say-way-on-teach = { $pass ->
        [1] { $strands ->
            [one] Bahn { $leg } von { $legs }
           *[other] Strang { $strand }{ $named ->
                [yes] , „{ $cord }“
               *[no] { "" }
            }, Bahn { $leg } von { $legs }
        }
       *[other] { $pass ->
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
           *[other] , Strang { $strand }
        }{ $named ->
            [yes] , „{ $cord }“
           *[no] { "" }
        }, Bahn { $leg } von { $legs }
    }, Teil { $part } von { $parts }, von { $heading ->
        [falling] Kopf-Stift { $from } hinab zu Fuß-Stift { $to }
       *[rising] Fuß-Stift { $from } hoch zu Kopf-Stift { $to }
    }. Eine lange Bahn wird in Teilen gelegt, jeder nicht länger, als man sich merken kann. Die Schnur hat { $share ->
        [little] ein kleines Stück des Weges
        [quarter] etwa ein Viertel des Weges
        [third] etwa ein Drittel des Weges
        [half] etwa die Hälfte des Weges
        [two-thirds] etwa zwei Drittel des Weges
        [three-quarters] etwa drei Viertel des Weges
       *[most] den größten Teil des Weges
    } hinter sich{ $made ->
        [0] { " " }und ist
        [one] , ist einmal ganz um das Rohr gelaufen und
        [2] , ist zweimal ganz um das Rohr gelaufen und
       *[other] , ist { $made }-mal ganz um das Rohr gelaufen und
    } gerade an { $rim ->
        [top] Kopf-Stift { $past }
       *[bottom] Fuß-Stift { $past }
    } vorbei. Von dort geht es nach { $hand ->
        [left] links
       *[right] rechts
    } { $heading ->
        [falling] hinab
       *[rising] hoch
    }{ $lane ->
        [below] , immer auf der Fuß-Seite der Schnur, die schon liegt.
        [above] , immer auf der Kopf-Seite der Schnur, die schon liegt.
       *[none] .
    }

# One crossing; those of a step are said one after the other.
# Example: Auf dem Weg: über eine Schnur, dann tauch unter 2 Schnüren durch.
# $place: only, first, next or last of the step. $over: yes or no. $cords: cords lying there.
lay-say-crossing = { $place ->
        [only] Auf dem Weg: { $over ->
            [yes] über { $cords ->
                [one] eine Schnur.
               *[other] { $cords } Schnüre.
            }
           *[no] tauch unter { $cords ->
                [one] einer Schnur durch.
               *[other] { $cords } Schnüren durch.
            }
        }
        [first] Auf dem Weg: { $over ->
            [yes] über { $cords ->
                [one] eine Schnur,
               *[other] { $cords } Schnüre,
            }
           *[no] tauch unter { $cords ->
                [one] einer Schnur durch,
               *[other] { $cords } Schnüren durch,
            }
        }
        [last] dann { $over ->
            [yes] über { $cords ->
                [one] eine Schnur.
               *[other] { $cords } Schnüre.
            }
           *[no] tauch unter { $cords ->
                [one] einer Schnur durch.
               *[other] { $cords } Schnüren durch.
            }
        }
       *[next] dann { $over ->
            [yes] über { $cords ->
                [one] eine Schnur,
               *[other] { $cords } Schnüre,
            }
           *[no] tauch unter { $cords ->
                [one] einer Schnur durch,
               *[other] { $cords } Schnüren durch,
            }
        }
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
# Example: Zuerst kommt die Schnur, die von Kopf-Stift 2 hinab zu Fuß-Stift 5 läuft: Geh über sie.
# Example: Dann kommen die 2 Schnüre, die von Fuß-Stift 3 hoch zu Kopf-Stift 1 laufen: Tauch unter beiden
# durch.
# $of-from, $of-to: the pins of the leg that is met; it goes the other way.
lay-say-crossing-teach = { $place ->
        [only] Auf dem Weg
        [first] Zuerst
        [last] Zuletzt
       *[next] Dann
    } { $cords ->
        [one] kommt die Schnur, die von { $heading ->
            [falling] Fuß-Stift { $of-from } hoch zu Kopf-Stift { $of-to }
           *[rising] Kopf-Stift { $of-from } hinab zu Fuß-Stift { $of-to }
        } läuft: { $over ->
            [yes] Geh über sie.
           *[no] Tauch unter ihr durch.
        }
       *[other] kommen die { $cords } Schnüre, die von { $heading ->
            [falling] Fuß-Stift { $of-from } hoch zu Kopf-Stift { $of-to }
           *[rising] Kopf-Stift { $of-from } hinab zu Fuß-Stift { $of-to }
        } laufen: { $over ->
            [yes] Geh über { $cords ->
                [2] beide.
               *[other] alle { $cords }.
            }
           *[no] Tauch unter { $cords ->
                [2] beiden durch.
               *[other] allen { $cords } durch.
            }
        }
    }

# A leg that meets no cord.
lay-say-clear = Die Schnur kreuzt nichts.
lay-say-clear-brief = Frei.
lay-say-clear-teach = Noch liegt nichts im Weg, also ist nichts zu kreuzen.

# How a lay step ends. $landing: on-the-way, round, inside or outside; at the pin where the pass
# began home-and-on, home-to-wait (other strands come first) or home-to-end (the cord ends).
# Example: Um Kopf-Stift 6 herum.
# Example: An Fuß-Stift 5 wende außen um die Bucht herum, die schon liegt.
lay-say-landing = { $landing ->
        [on-the-way] Halt deine Schnur dort fest.
        [inside] { $heading ->
            [falling] An Fuß-Stift { $to } wende innen in der Bucht, die schon liegt.
           *[rising] An Kopf-Stift { $to } wende innen in der Bucht, die schon liegt.
        }
        [outside] { $heading ->
            [falling] An Fuß-Stift { $to } wende außen um die Bucht herum, die schon liegt.
           *[rising] An Kopf-Stift { $to } wende außen um die Bucht herum, die schon liegt.
        }
        [home-and-on] An Fuß-Stift { $to } ist die Schnur wieder am Anfang; sie läuft um den Stift weiter.
        [home-to-wait] An Fuß-Stift { $to } ist die Schnur wieder am Anfang. Klebe sie dort fest, bis ihr nächster Durchgang kommt.
        [home-to-end] An Fuß-Stift { $to } ist die Schnur wieder am Anfang. Lass ihr Ende dort hängen.
       *[round] { $heading ->
            [falling] Um Fuß-Stift { $to } herum.
           *[rising] Um Kopf-Stift { $to } herum.
        }
    }

# Example: Innen.
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Innen.
        [outside] Außen.
        [home-and-on] Am Anfang, und weiter.
        [home-to-wait] Am Anfang, warten lassen.
        [home-to-end] Am Anfang, hängen lassen.
       *[round] { "" }
    }

lay-say-landing-teach = { $landing ->
        [on-the-way] Halt deine Schnur dort mit einem Finger fest.
        [inside] { $heading ->
            [falling] An Fuß-Stift { $to } wende innen in der Bucht, die schon liegt, zwischen ihr und der Mitte des Knotens, und lass deine Schnur satt anliegen.
           *[rising] An Kopf-Stift { $to } wende innen in der Bucht, die schon liegt, zwischen ihr und der Mitte des Knotens, und lass deine Schnur satt anliegen.
        }
        [outside] { $heading ->
            [falling] An Fuß-Stift { $to } wende außen um die Bucht herum, die schon liegt, weiter draußen als sie, und lass deine Schnur satt anliegen.
           *[rising] An Kopf-Stift { $to } wende außen um die Bucht herum, die schon liegt, weiter draußen als sie, und lass deine Schnur satt anliegen.
        }
        [home-and-on] An Fuß-Stift { $to } ist die Schnur wieder am Anfang; sie läuft um den Stift weiter.
        [home-to-wait] An Fuß-Stift { $to } ist die Schnur wieder am Anfang. Klebe sie dort fest, bis ihr nächster Durchgang kommt.
        [home-to-end] An Fuß-Stift { $to } ist die Schnur wieder am Anfang. Lass ihr Ende dort hängen.
       *[round] { $heading ->
            [falling] Führe deine Schnur außen um Fuß-Stift { $to } herum, und lass sie satt anliegen.
           *[rising] Führe deine Schnur außen um Kopf-Stift { $to } herum, und lass sie satt anliegen.
        }
    }

# The arrow is the way the cord goes. Example: Fuß 4 hoch zu Kopf 6 ↗
lay-show = { $heading ->
        [falling] Kopf { $from } hinab zu Fuß { $to } { $hand ->
            [left] ↙
           *[right] ↘
        }
       *[rising] Fuß { $from } hoch zu Kopf { $to } { $hand ->
            [left] ↖
           *[right] ↗
        }
    }

# The same in words alone, for a line that is read by a Braille display or a screen reader.
# Example: Fuß 4 hoch und nach rechts, zu Kopf 6
lay-print = { $heading ->
        [falling] Kopf { $from } hinab und { $hand ->
            [left] nach links
           *[right] nach rechts
        }, zu Fuß { $to }
       *[rising] Fuß { $from } hoch und { $hand ->
            [left] nach links
           *[right] nach rechts
        }, zu Kopf { $to }
    }

# One crossing as a word that differs in shape for over and under.
# Example: ÜBER 1
# Example: unter 2
lay-show-crossing = { $over ->
        [yes] ÜBER { $cords }
       *[no] unter { $cords }
    }

lay-show-clear = kreuzt nichts

# What else the screen says of a lay step.
# Example: Etwa die Hälfte des Weges hoch, gerade an Fuß 3 vorbei
# $part, $share, $rim, $past, $made as for lay-say-way-on.
lay-show-note-on = { $share ->
        [little] Ein kleines Stück des Weges
        [quarter] Etwa ein Viertel des Weges
        [third] Etwa ein Drittel des Weges
        [half] Etwa die Hälfte des Weges
        [two-thirds] Etwa zwei Drittel des Weges
        [three-quarters] Etwa drei Viertel des Weges
       *[most] Der größte Teil des Weges
    } { $heading ->
        [falling] hinab
       *[rising] hoch
    }, gerade an { $rim ->
        [top] Kopf { $past }
       *[bottom] Fuß { $past }
    } vorbei{ $made ->
        [0] { "" }
        [one] , einmal herum
        [2] , zweimal herum
       *[other] , { $made }-mal herum
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $turns ->
            [0] Halt sie dort fest
            [one] Im Ganzen einmal um das Rohr. Halt sie dort fest
            [2] Im Ganzen zweimal um das Rohr. Halt sie dort fest
           *[other] Im Ganzen { $turns }-mal um das Rohr. Halt sie dort fest
        }
        [inside] { $heading ->
            [falling] Innen in der Bucht an Fuß { $to }
           *[rising] Innen in der Bucht an Kopf { $to }
        }
        [outside] { $heading ->
            [falling] Außen um die Bucht an Fuß { $to }
           *[rising] Außen um die Bucht an Kopf { $to }
        }
        [home-and-on] Wieder am Anfang, und weiter um Fuß { $to }
        [home-to-wait] Wieder am Anfang: Klebe sie an Fuß { $to } fest
        [home-to-end] Wieder am Anfang: Lass das Ende an Fuß { $to }
       *[round] { $heading ->
            [falling] Um Fuß { $to } herum
           *[rising] Um Kopf { $to } herum
        }
    }

## The line above a step

# Example: Erster Durchgang, Bahn 7 von 12
# $phase: begin, lay, check, lift, fair or finish. $item of $items: things to do in lift and
# finish; rounds in fair.
phase-show = { $phase ->
        [lift] Abheben, { $item } von { $items }
        [fair] Durchholen, Runde { $item } von { $items }{ $passes ->
            [one] { "" }
           *[other] , Durchgang { $pass }
        }{ $strands ->
            [one] { "" }
           *[other] , Strang { $strand }
        }, Bahn { $leg } von { $legs }
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
