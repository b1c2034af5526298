# Packing the bag and rigging the tube: steps like any other, before the first leg. A message
# ending in -say is spoken, one ending in -show stands on the screen, one ending in -note below
# it. A note that comes to nothing is left out.
#
# Arguments that come back:
#   $number            this item or step, $items and $tasks how many there are
#   $hand              right or left: the way round the tube that the cord travels
#   lengths            each one argument with its unit (see lengths.ftl): "45 Millimeter" for the
#                      ear, "45 mm" for the eye
# To rig the tube is "einrichten" here; the pick is a Marlspieker (unsure: for thin cord some say
# Pricker); masking tape is Kreppband, a hex key Inbusschlüssel (a Sechskantschlüssel also
# fits the outside of a hexagon).

kit-phase-show = Was du brauchst, { $single ->
        [yes] { $number } von { $items }
        [two] { $number } und { $last } von { $items }
       *[no] { $number } bis { $last } von { $items }
    }
rig-phase-show = Einrichten, { $single ->
        [yes] Schritt { $number } von { $tasks }
        [two] Schritt { $number } und { $last } von { $tasks }
       *[no] Schritt { $number } bis { $last } von { $tasks }
    }

# Several things on one page: before them, and after them.
# Example: Du brauchst, 1 bis 3 von 6.
# $number to $last: which of them.
kit-page-say = Du brauchst, { $single ->
        [two] { $number } und { $last } von { $items }.
       *[no] { $number } bis { $last } von { $items }.
    }
kit-tick-say = Weiter, wenn alles da ist. Mit der Taste Weniger auf einmal kommt jedes einzeln.

# Before what is to be done to the tube. $single: yes when it is one thing.
# Example: Einrichten, Schritt 1 bis 2 von 7.
rig-page-say = { $single ->
        [yes] Einrichten, Schritt { $number } von { $tasks }.
        [two] Einrichten, Schritt { $number } und { $last } von { $tasks }.
       *[no] Einrichten, Schritt { $number } bis { $last } von { $tasks }.
    }

# Where the tyer is, before the first leg.
# Example: Das Rohr wird eingerichtet: Schritt 3 von 8.
# $phase: kit or rig.
rigging-where-say = { $phase ->
        [kit] Du legst zurecht, was du brauchst: { $number } von { $of }.
       *[rig] { -being-rigged } Schritt { $number } von { $of }.
    }

## The bag

# Example: Du brauchst, 1 von 6: das Rohr, 45 Millimeter Durchmesser. Weiter, wenn es da ist.
kit-tube-say = Du brauchst, { $number } von { $items }: das Rohr, Durchmesser { $diameter }. Weiter, wenn es da ist.
kit-tube-say-brief = Rohr, Durchmesser { $diameter }.
kit-tube-say-teach = Du brauchst, { $number } von { $items }: das Rohr, Durchmesser { $diameter }. Weiter, wenn es da ist. Auf dem Rohr wird der Knoten gelegt, dann kommt er auf das, was er bedecken soll.
kit-tube-show = Rohr, { $diameter } dick
kit-tube-note = { "" }

# Example: Du brauchst, 2 von 6: 14 Stifte, 12 Millimeter lang, Gewinde M4. Weiter, wenn
# sie da sind.
# $thread: its name or none. $numbered: the number of a numbered inch thread, or none.
# $fraction: the thread as a length, when it is a fraction of an inch, or none.
kit-pins-say = Du brauchst, { $number } von { $items }: { $count } Stifte, { $length } lang{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , Gewinde { $thread }
               *[other] , Gewinde { $fraction }
            }
           *[other] , Gewinde Nummer { $numbered }
        }
    }. Weiter, wenn sie da sind.
kit-pins-say-brief = { $count } Stifte, { $length } lang{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , Gewinde { $thread }
               *[other] , Gewinde { $fraction }
            }
           *[other] , Gewinde Nummer { $numbered }
        }
    }.
kit-pins-say-teach = Du brauchst, { $number } von { $items }: { $count } Stifte, { $length } lang{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , Gewinde { $thread }
               *[other] , Gewinde { $fraction }
            }
           *[other] , Gewinde Nummer { $numbered }
        }
    }. Weiter, wenn sie da sind. { $thread ->
        [none] Als Stift taugt alles, was eine Bucht an ihrem Platz hält.
       *[other] Als Stifte dienen hier Madenschrauben.
    } Jede Bucht am Fuß braucht einen und jede Bucht am Kopf auch.
kit-pins-show = { $count } Stifte, { $length } lang
kit-pins-note = { $thread ->
        [none] { "" }
       *[other] Madenschrauben { $numbered ->
            [none] { $thread }
           *[other] Nr. { $numbered }
        }
    }

# $size: as it is sold.
kit-key-say = Du brauchst, { $number } von { $items }: den Inbusschlüssel für die Stifte, Größe { $size }. Weiter, wenn er da ist.
kit-key-say-brief = Inbusschlüssel für die Stifte, Größe { $size }.
kit-key-say-teach = Du brauchst, { $number } von { $items }: den Inbusschlüssel für die Stifte, Größe { $size }. Weiter, wenn er da ist. Er ist für einen Stift da, der sich mit den Fingern allein nicht drehen lässt.
kit-key-show = Inbusschlüssel, Größe { $size }
kit-key-note = { "" }

# Example: Du brauchst, 4 von 6: ein Stück Schnur, 4 Millimeter dick, 1,9 Meter lang. …
# $name: what the tyer calls the cord, or none. $grams: weight of all, or 0.
kit-cord-say = Du brauchst, { $number } von { $items }: { $pieces ->
        [one] ein Stück
       *[other] { $pieces } Stück
    } Schnur{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $diameter } dick, { $pieces ->
        [one] { "" }
       *[other] jedes
    } { $length } lang. Weiter, wenn alles da ist.
kit-cord-say-brief = { $pieces ->
        [one] Ein Stück
       *[other] { $pieces } Stück
    } Schnur{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $diameter } dick, { $pieces ->
        [one] { "" }
       *[other] jedes
    } { $length } lang.
kit-cord-say-teach = Du brauchst, { $number } von { $items }: { $pieces ->
        [one] ein Stück
       *[other] { $pieces } Stück
    } Schnur{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $diameter } dick, { $pieces ->
        [one] { "" }
       *[other] jedes
    } { $length } lang. Weiter, wenn alles da ist. Das ist mehr, als der Knoten braucht, damit genug zum Festhalten bleibt.
kit-cord-show = Schnur, { $pieces ->
        [one] { $length }
       *[other] { $pieces } × { $length }
    }
kit-cord-note = { $name ->
        [none] { $diameter } dick
       *[other] { $name }, { $diameter } dick
    }{ $grams ->
        [0] { "" }
       *[other] , etwa { $grams } g
    }

kit-tape-say = Du brauchst, { $number } von { $items }: Kreppband, { $tape } und etwas Vorrat. Weiter, wenn es da ist.
kit-tape-say-brief = Kreppband, { $tape } und etwas Vorrat.
kit-tape-say-teach = Du brauchst, { $number } von { $items }: Kreppband, { $tape } und etwas Vorrat. Weiter, wenn es da ist. Es hält das stehende Ende fest und trägt die Nummern der Stifte.
kit-tape-show = Kreppband, { $tape }
kit-tape-note = { "" }

kit-strip-say = Du brauchst, { $number } von { $items }: einen Papierstreifen, { $length } lang, um die Stifte darauf anzuzeichnen. Weiter, wenn er da ist.
kit-strip-say-brief = Ein Papierstreifen, { $length } lang, um die Stifte darauf anzuzeichnen.
kit-strip-say-teach = Du brauchst, { $number } von { $items }: einen Papierstreifen, { $length } lang, um die Stifte darauf anzuzeichnen. Weiter, wenn er da ist. Seine Marken stehen dort, wo die Stifte hingehören.
kit-strip-show = Papierstreifen, { $length }
kit-strip-note = So lang, wie das Rohr rundum misst, um die Stifte anzuzeichnen

kit-picks-say = Du brauchst, { $number } von { $items }: { $count ->
        [one] einen Marlspieker, um die Kreuzungen zu öffnen. Weiter, wenn er da ist.
       *[other] { $count } Marlspieker, um die Kreuzungen zu öffnen. Weiter, wenn sie da sind.
    }
kit-picks-say-brief = { $count ->
        [one] Ein Marlspieker
       *[other] { $count } Marlspieker
    }, um die Kreuzungen zu öffnen.
kit-picks-say-teach = Du brauchst, { $number } von { $items }: { $count ->
        [one] einen Marlspieker, um die Kreuzungen zu öffnen. Weiter, wenn er da ist. Mit ihm
       *[other] { $count } Marlspieker, um die Kreuzungen zu öffnen. Weiter, wenn sie da sind. Mit ihnen
    } hebst du eine Schnur an, um eine andere darunter durchzustecken.
kit-picks-show = { $count ->
        [one] Ein Marlspieker
       *[other] { $count } Marlspieker
    }
kit-picks-note = Um die Kreuzungen zu öffnen

# What is used on the way. $tool: marker, ruler, blade, dish, needle (for a mat) or sealing (a flame or glue for the ends).
kit-tool-say = Du brauchst, { $number } von { $items }: { $tool ->
        [marker] einen Filzschreiber, der auf Klebeband schreibt. Weiter, wenn er da ist.
        [ruler] ein Lineal. Weiter, wenn es da ist.
        [blade] ein scharfes Messer oder eine Schere. Weiter, wenn sie da sind.
        [dish] eine Schale für die Stifte. Weiter, wenn sie da ist.
        [needle] eine Nadel und festes Garn, oder Leim. Weiter, wenn es da ist.
       *[sealing] ein Feuerzeug, wenn die Schnur schmilzt, sonst Leim. Weiter, wenn es da ist.
    }
kit-tool-say-brief = { $tool ->
        [marker] Ein Filzschreiber, der auf Klebeband schreibt.
        [ruler] Ein Lineal.
        [blade] Ein scharfes Messer oder eine Schere.
        [dish] Eine Schale für die Stifte.
        [needle] Eine Nadel und festes Garn, oder Leim.
       *[sealing] Ein Feuerzeug, wenn die Schnur schmilzt, sonst Leim.
    }
kit-tool-say-teach = Du brauchst, { $number } von { $items }: { $tool ->
        [marker] einen Filzschreiber, der auf Klebeband schreibt. Weiter, wenn er da ist. Mit ihm nummerierst du die Stifte.
        [ruler] ein Lineal. Weiter, wenn es da ist. Mit ihm misst du die Schnur ab, und wo die Stifte stehen.
        [blade] ein scharfes Messer oder eine Schere. Weiter, wenn sie da sind. Damit schneidest du die Schnur zu, und ganz am Schluss ihre Enden ab.
        [dish] eine Schale für die Stifte. Weiter, wenn sie da ist. Da hinein kommen die Stifte, die du herausnimmst: Einen verlorenen findet sonst ein bloßer Fuß.
        [needle] eine Nadel und festes Garn, oder Leim. Weiter, wenn es da ist. Damit hältst du auf der Unterseite die Kreuzungen der Matte fest.
       *[sealing] ein Feuerzeug, wenn die Schnur schmilzt, sonst Leim. Weiter, wenn es da ist. Damit fransen die Enden nicht aus.
    }
kit-tool-show = { $tool ->
        [marker] Filzschreiber für das Klebeband
        [ruler] Lineal
        [blade] Messer oder Schere
        [dish] Schale für die Stifte
        [needle] Nadel und Garn, oder Leim
       *[sealing] Feuerzeug oder Leim
    }
kit-tool-note = { $tool ->
        [sealing] Feuerzeug für Schnur, die schmilzt, Leim für Naturfaser
       *[other] { "" }
    }

## Rigging: what to know first

# $given: length of the pins named, $needed: the least that holds, $hold: passes they do hold.
rig-short-pins-say = Vorsicht: Die genannten Stifte, { $given } lang, sind zu kurz für diesen Knoten. { $hold ->
        [0] Sie reichen nicht einmal für einen Durchgang.
        [one] Sie reichen für einen Durchgang.
       *[other] Sie reichen für { $hold } Durchgänge.
    } Nimm Stifte, die mindestens { $needed } lang sind.
rig-short-pins-say-brief = Vorsicht: Die genannten Stifte, { $given } lang, sind zu kurz für diesen Knoten. { $hold ->
        [0] Sie reichen nicht einmal für einen Durchgang.
        [one] Sie reichen für einen Durchgang.
       *[other] Sie reichen für { $hold } Durchgänge.
    } Nimm Stifte, die mindestens { $needed } lang sind.
rig-short-pins-say-teach = Vorsicht: Die genannten Stifte, { $given } lang, sind zu kurz für diesen Knoten. { $hold ->
        [0] Sie reichen nicht einmal für einen Durchgang.
        [one] Sie reichen für einen Durchgang.
       *[other] Sie reichen für { $hold } Durchgänge.
    } Nimm Stifte, die mindestens { $needed } lang sind. Jeder Durchgang legt noch eine Schnur um den Stift, und von einem kurzen rutscht die äußerste herunter.
rig-short-pins-show = Stifte von { $given } sind zu kurz
rig-short-pins-note = Nimm mindestens { $needed }; diese reichen für { $hold ->
        [0] keinen Durchgang
        [one] 1 Durchgang
       *[other] { $hold } Durchgänge
    }

rig-thick-object-say = Vorsicht: Was bedeckt wird, hat { $object } Durchmesser, und das Rohr nur { $tube }. Lass den Knoten locker, bis er darauf sitzt.
rig-thick-object-say-brief = Vorsicht: Was bedeckt wird, hat { $object } Durchmesser, und das Rohr nur { $tube }. Lass den Knoten locker, bis er darauf sitzt.
rig-thick-object-say-teach = Vorsicht: Was bedeckt wird, hat { $object } Durchmesser, und das Rohr nur { $tube }. Lass den Knoten locker, bis er darauf sitzt.
rig-thick-object-show = Was bedeckt wird, ist dicker als das Rohr
rig-thick-object-note = { $object } gegen { $tube }: Lass den Knoten locker, bis er darauf sitzt

# $gap: between the pins. $comfortable: from where on it is easy. $most_bights, $most_passes: the most
# for which it is, or 0. $tube: a tube of so much or more. $pin: pins no thicker than this, or none.
rig-close-pins-say = Vorsicht: Die Stifte lassen zwischen sich { $gap } frei, und die Schnüre einer Bucht brauchen { $comfortable }, um leicht hindurchzugehen. Besser wäre ein Rohr, mindestens { $tube } dick{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }{ $pin ->
        [none] { "" }
       *[other] , oder höchstens { $pin } dicke Stifte
    }.
rig-close-pins-say-brief = Vorsicht: Die Stifte lassen zwischen sich { $gap } frei, und die Schnüre einer Bucht brauchen { $comfortable }, um leicht hindurchzugehen. Besser wäre ein Rohr, mindestens { $tube } dick{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }{ $pin ->
        [none] { "" }
       *[other] , oder höchstens { $pin } dicke Stifte
    }.
rig-close-pins-say-teach = Vorsicht: Die Stifte lassen zwischen sich { $gap } frei, und die Schnüre einer Bucht brauchen { $comfortable }, um leicht hindurchzugehen. Besser wäre ein Rohr, mindestens { $tube } dick{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }{ $pin ->
        [none] { "" }
       *[other] , oder höchstens { $pin } dicke Stifte
    }. Wo die Stifte eng stehen, klettern die Schnüre übereinander, und die Buchten werden ungleich.
rig-close-pins-show = Die Stifte stehen eng
rig-close-pins-note = { $gap } dazwischen, leicht ab { $comfortable }: besser ein Rohr von mindestens { $tube }{ $most_bights ->
        [0] { "" }
       *[other] , oder höchstens { $most_bights } Buchten
    }{ $most_passes ->
        [0] { "" }
        [one] , oder 1 Durchgang
       *[other] , oder höchstens { $most_passes } Durchgänge
    }{ $pin ->
        [none] { "" }
       *[other] , oder höchstens { $pin } dicke Stifte
    }

# $slack: out of each leg. $better: the tube with least slack, or none.
rig-thick-tube-say = Vorsicht: Das Rohr ist viel dicker als das, was bedeckt wird. Du musst aus jeder von { $legs } Bahnen { $slack } durchholen.{ $better ->
        [none] { "" }
       *[other] { " " }Am wenigsten bliebe auf einem Rohr, { $better } im Durchmesser.
    }
rig-thick-tube-say-brief = Vorsicht: Das Rohr ist viel dicker als das, was bedeckt wird. Du musst aus jeder von { $legs } Bahnen { $slack } durchholen.{ $better ->
        [none] { "" }
       *[other] { " " }Am wenigsten bliebe auf einem Rohr, { $better } im Durchmesser.
    }
rig-thick-tube-say-teach = Vorsicht: Das Rohr ist viel dicker als das, was bedeckt wird. Du musst aus jeder von { $legs } Bahnen { $slack } durchholen.{ $better ->
        [none] { "" }
       *[other] { " " }Am wenigsten bliebe auf einem Rohr, { $better } im Durchmesser.
    } Lose, die nach und nach durchgeholt wird, lässt den Knoten gleichmäßig.
rig-thick-tube-show = Viel Lose auf diesem Rohr
rig-thick-tube-note = { $slack } aus jeder von { $legs } Bahnen{ $better ->
        [none] { "" }
       *[other] ; am wenigsten auf einem Rohr von { $better } Durchmesser
    }

# $ring: width of a ring. $slack: out of each leg. $would_do: rings of so much or less.
rig-wide-rings-say = Vorsicht: Die Ringe sind { $ring } breit und halten die Ränder auseinander. Du musst aus jeder Bahn { $slack } durchholen. Ringe, höchstens { $would_do } breit, wären nicht im Weg.
rig-wide-rings-say-brief = Vorsicht: Die Ringe sind { $ring } breit und halten die Ränder auseinander. Du musst aus jeder Bahn { $slack } durchholen. Ringe, höchstens { $would_do } breit, wären nicht im Weg.
rig-wide-rings-say-teach = Vorsicht: Die Ringe sind { $ring } breit und halten die Ränder auseinander. Du musst aus jeder Bahn { $slack } durchholen. Ringe, höchstens { $would_do } breit, wären nicht im Weg. Lose, die nach und nach durchgeholt wird, lässt den Knoten gleichmäßig.
rig-wide-rings-show = Die Ringe sind breit für diesen Knoten
rig-wide-rings-note = { $slack } aus jeder Bahn; Ringe von höchstens { $would_do } wären nicht im Weg

## Rigging: rings with holes

# Example: Einrichten, Schritt 1 von 7. Jeder Ring hat eine Reihe mit 14 Löchern. Wähl ein Loch des
# Fuß-Rings als Loch 1, und zähl die Löcher von dort nach rechts, am Kopf-Ring genauso.
# $row: which row, in the order the rows were named. $rows: how many. $holes: holes in it.
rig-row-say = { $rows ->
        [one] Jeder Ring hat eine Reihe mit { $holes } Löchern.
       *[other] Nimm an jedem Ring Reihe { $row }, die mit { $holes } Löchern.
    } Wähl ein Loch des Fuß-Rings als Loch 1, und zähl die Löcher von dort nach { $hand ->
        [left] links
       *[right] rechts
    }, am Kopf-Ring genauso.
rig-row-say-brief = { $rows ->
        [one] Eine Reihe mit { $holes } Löchern.
       *[other] Reihe { $row }, die mit { $holes } Löchern.
    } Loch 1 wählen, nach { $hand ->
        [left] links
       *[right] rechts
    } zählen.
rig-row-say-teach = { $rows ->
        [one] Jeder Ring hat eine Reihe mit { $holes } Löchern.
       *[other] Nimm an jedem Ring Reihe { $row }, die mit { $holes } Löchern.
    } Wähl ein Loch des Fuß-Rings als Loch 1, und zähl die Löcher von dort nach { $hand ->
        [left] links
       *[right] rechts
    }, am Kopf-Ring genauso. Eine Reihe passt zu einem Knoten, wenn die Zahl ihrer Löcher durch die Zahl der Buchten teilbar ist.
rig-row-show = { $rows ->
        [one] Eine Reihe mit { $holes } Löchern
       *[other] Reihe { $row }: { $holes } Löcher
    }
rig-row-note = Wähl Loch 1, zähl nach { $hand ->
        [left] links
       *[right] rechts
    }; beide Ringe gleich

# Setting the pins of a ring.
# Example: Einrichten, Schritt 2 von 7. Setz 7 Stifte in den Fuß-Ring, in jedes zweite Loch: Löcher 1, 3,
# 5, 7, 9, 11 und 13. Fuß-Stift 1 steht in Loch 1. Nimm Stifte, die 12 Millimeter lang sind. …
# $rim: bottom or top. $step: from a pin to the next. $first: hole of pin 1. $few: yes when the
# holes are told one by one: $most are all but the last, $last is that. $staggered: yes or no.
# $key: size of the hex key or none.
rig-pins-say = Setz { $count } Stifte in den { $rim ->
        [top] Kopf-Ring
       *[bottom] Fuß-Ring
    }, { $step ->
        [1] in jedes Loch
        [2] in jedes zweite Loch
        [3] in jedes dritte Loch
        [4] in jedes vierte Loch
        [5] in jedes fünfte Loch
        [6] in jedes sechste Loch
        [7] in jedes siebte Loch
        [8] in jedes achte Loch
        [9] in jedes neunte Loch
        [10] in jedes zehnte Loch
        [11] in jedes elfte Loch
        [12] in jedes zwölfte Loch
       *[other] in je ein Loch von { $step }
    }{ $few ->
        [yes] : Löcher { $most } und { $last }.
       *[no] { " " }ab Loch { $first }.
    } { $rim ->
        [top] { $staggered ->
            [yes] Kopf-Stift 1 steht auf Lücke zwischen den Fuß-Stiften 1 und 2, und so rundum alle.
           *[no] Jeder Kopf-Stift steht genau über einem Fuß-Stift.
        }
       *[bottom] Fuß-Stift 1 steht in Loch 1.
    } Nimm Stifte, die { $length } lang sind{ $key ->
        [none] { "" }
       *[other] , und den Inbusschlüssel der Größe { $key }
    }.{ $key ->
        [none] { "" }
       *[other] { " " }Dreh jeden Stift von Hand ein, bis er am Rohr anliegt.
    }
rig-pins-say-brief = Setz { $count } Stifte in den { $rim ->
        [top] Kopf-Ring
       *[bottom] Fuß-Ring
    }, { $step ->
        [1] in jedes Loch
        [2] in jedes zweite Loch
        [3] in jedes dritte Loch
        [4] in jedes vierte Loch
        [5] in jedes fünfte Loch
        [6] in jedes sechste Loch
        [7] in jedes siebte Loch
        [8] in jedes achte Loch
        [9] in jedes neunte Loch
        [10] in jedes zehnte Loch
        [11] in jedes elfte Loch
        [12] in jedes zwölfte Loch
       *[other] in je ein Loch von { $step }
    }{ $few ->
        [yes] : Löcher { $most } und { $last }.
       *[no] { " " }ab Loch { $first }.
    }
rig-pins-say-teach = Setz { $count } Stifte in den { $rim ->
        [top] Kopf-Ring
       *[bottom] Fuß-Ring
    }, { $step ->
        [1] in jedes Loch
        [2] in jedes zweite Loch
        [3] in jedes dritte Loch
        [4] in jedes vierte Loch
        [5] in jedes fünfte Loch
        [6] in jedes sechste Loch
        [7] in jedes siebte Loch
        [8] in jedes achte Loch
        [9] in jedes neunte Loch
        [10] in jedes zehnte Loch
        [11] in jedes elfte Loch
        [12] in jedes zwölfte Loch
       *[other] in je ein Loch von { $step }
    }{ $few ->
        [yes] : Löcher { $most } und { $last }.
       *[no] { " " }ab Loch { $first }.
    } { $rim ->
        [top] { $staggered ->
            [yes] Kopf-Stift 1 steht auf Lücke zwischen den Fuß-Stiften 1 und 2, und so rundum alle.
           *[no] Jeder Kopf-Stift steht genau über einem Fuß-Stift.
        }
       *[bottom] Fuß-Stift 1 steht in Loch 1.
    } Nimm Stifte, die { $length } lang sind{ $key ->
        [none] { "" }
       *[other] , und den Inbusschlüssel der Größe { $key }
    }. { $key ->
        [none] { "" }
       *[other] Dreh jeden Stift von Hand ein, bis er am Rohr anliegt: So kann auch der Ring nicht rutschen.
    } Gleiche Abstände zwischen den Stiften machen gleiche Buchten.
rig-pins-show = { $rim ->
        [top] Kopfring
       *[bottom] Fußring
    }: { $few ->
        [yes] Löcher { $most }, { $last }
       *[no] { $step ->
            [1] jedes Loch ab { $first }
            [2] jedes zweite Loch ab { $first }
            [3] jedes dritte Loch ab { $first }
            [4] jedes vierte Loch ab { $first }
            [5] jedes fünfte Loch ab { $first }
            [6] jedes sechste Loch ab { $first }
            [7] jedes siebte Loch ab { $first }
            [8] jedes achte Loch ab { $first }
            [9] jedes neunte Loch ab { $first }
            [10] jedes zehnte Loch ab { $first }
            [11] jedes elfte Loch ab { $first }
            [12] jedes zwölfte Loch ab { $first }
           *[other] je ein Loch von { $step } ab { $first }
        }
    }
rig-pins-note = { $rim ->
        [top] { $staggered ->
            [yes] Versetzt: auf Lücke zwischen den Fußstiften
           *[no] Genau über den Fußstiften
        }
       *[bottom] { $count } Stifte, Stift 1 in Loch 1
    }
rig-pins-note-how = Stifte { $length }{ $key ->
        [none] { "" }
       *[other] , Inbusschlüssel { $key }
    }{ $key ->
        [none] { "" }
       *[other] . Von Hand, bis sie anliegen
    }

# Example: Einrichten, Schritt 3 von 7. Setz den Kopf-Ring so, dass seine Lochreihe 42 Millimeter über der
# des Fuß-Rings steht. Dreh ihn, bis sein Loch 1 genau über Loch 1 des Fuß-Rings steht.
# $half: yes when the ring is turned half a hole on.
rig-space-say = Setz den Kopf-Ring so, dass seine Lochreihe { $spacing } über der des Fuß-Rings steht, von Mitte zu Mitte. { $half ->
        [yes] Dreh ihn, bis sein Loch 1 ein halbes Loch weiter { $hand ->
            [left] links
           *[right] rechts
        } steht als Loch 1 des Fuß-Rings, auf halbem Weg zu dessen Loch 2.
       *[no] Dreh ihn, bis sein Loch 1 genau über Loch 1 des Fuß-Rings steht.
    }
rig-space-say-brief = Stiftreihen { $spacing } auseinander, { $half ->
        [yes] Kopf-Loch 1 ein halbes Loch weiter nach { $hand ->
            [left] links.
           *[right] rechts.
        }
       *[no] Kopf-Loch 1 genau über Fuß-Loch 1.
    }
rig-space-say-teach = Setz den Kopf-Ring so, dass seine Lochreihe { $spacing } über der des Fuß-Rings steht, von Mitte zu Mitte. { $half ->
        [yes] Dreh ihn, bis sein Loch 1 ein halbes Loch weiter { $hand ->
            [left] links
           *[right] rechts
        } steht als Loch 1 des Fuß-Rings, auf halbem Weg zu dessen Loch 2.
       *[no] Dreh ihn, bis sein Loch 1 genau über Loch 1 des Fuß-Rings steht.
    } Bei diesem Abstand haben die Bahnen die Länge, die der fertige Knoten braucht.
rig-space-show = Stiftreihen { $spacing } auseinander
rig-space-note = { $half ->
        [yes] Kopfring ein halbes Loch weiter nach { $hand ->
            [left] links
           *[right] rechts
        }
       *[no] Kopfloch 1 genau über Fußloch 1
    }

## Rigging: a tube without rings

# $length: of the strip. $pitch: from mark to mark. $shift: how far on top pin 1 stands, none when
# straight above. $spacing: from the bottom marks to the top marks.
rig-strip-say = { $rim ->
        [top] Setz die { $pins } Kopf-Stifte { $spacing } über die Fuß-Stifte, mit einem Papierstreifen, { $length } lang, und einer Marke alle { $pitch }. { $shift ->
            [none] Kopf-Stift 1 steht genau über Fuß-Stift 1.
           *[other] Kopf-Stift 1 steht { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als Fuß-Stift 1, auf halbem Weg zu Fuß-Stift 2.
        }
       *[bottom] Leg einen Papierstreifen, { $length } lang, um das Rohr, mit einer Marke alle { $pitch }, und setz die { $pins } Fuß-Stifte an die Marken.
    }
rig-strip-say-brief = { $rim ->
        [top] Setz die { $pins } Kopf-Stifte { $spacing } über die Fuß-Stifte, mit einem Papierstreifen, { $length } lang, und einer Marke alle { $pitch }. { $shift ->
            [none] Kopf-Stift 1 steht genau über Fuß-Stift 1.
           *[other] Kopf-Stift 1 steht { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als Fuß-Stift 1, auf halbem Weg zu Fuß-Stift 2.
        }
       *[bottom] Leg einen Papierstreifen, { $length } lang, um das Rohr, mit einer Marke alle { $pitch }, und setz die { $pins } Fuß-Stifte an die Marken.
    }
rig-strip-say-teach = { $rim ->
        [top] Setz die { $pins } Kopf-Stifte { $spacing } über die Fuß-Stifte, mit einem Papierstreifen, { $length } lang, und einer Marke alle { $pitch }. { $shift ->
            [none] Kopf-Stift 1 steht genau über Fuß-Stift 1.
           *[other] Kopf-Stift 1 steht { $shift } weiter { $hand ->
                [left] links
               *[right] rechts
            } als Fuß-Stift 1, auf halbem Weg zu Fuß-Stift 2.
        }
       *[bottom] Leg einen Papierstreifen, { $length } lang, um das Rohr, mit einer Marke alle { $pitch }, und setz die { $pins } Fuß-Stifte an die Marken.
    } Der Streifen ist so lang, wie das Rohr rundum misst, also stehen seine Marken in gleichen Abständen.
rig-strip-show = { $rim ->
        [top] Kopfstifte { $spacing } über den Fußstiften
       *[bottom] Fußstifte alle { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] Genau über den Fußstiften, alle { $pitch }
           *[other] Versetzt: { $shift } nach { $hand ->
                [left] links
               *[right] rechts
            }, alle { $pitch }
        }
       *[bottom] { $pins } Marken auf einem Streifen von { $length }
    }

## Rigging: numbers, cord, beginning

# $rows: rows of pins at each rim, more than one where bights are nested.
rig-number-say = Klebe Kreppband, zusammen { $tape }, oder Papierstreifen, die sich wieder lösen lassen, { $rows ->
        [one] neben beide Stiftreihen
       *[other] neben jede Stiftreihe, auf Wunsch für jede in einer eigenen Farbe
    }. Nummeriere darauf die Stifte von 1 bis { $pins }, nach { $hand ->
        [left] links
       *[right] rechts
    } gezählt, am Fuß und am Kopf gleich.
rig-number-say-brief = Nummeriere die Stifte auf Kreppband, 1 bis { $pins }, nach { $hand ->
        [left] links
       *[right] rechts
    }.
rig-number-say-teach = Klebe Kreppband, zusammen { $tape }, oder Papierstreifen, die sich wieder lösen lassen, { $rows ->
        [one] neben beide Stiftreihen
       *[other] neben jede Stiftreihe, auf Wunsch für jede in einer eigenen Farbe
    }. Nummeriere darauf die Stifte von 1 bis { $pins }, nach { $hand ->
        [left] links
       *[right] rechts
    } gezählt, am Fuß und am Kopf gleich. Jeder Schritt nennt die Stifte bei diesen Nummern.
rig-number-show = Nummeriere die Stifte 1 bis { $pins }
rig-number-note = Auf { $tape } Kreppband, nach { $hand ->
        [left] links
       *[right] rechts
    }, { $rows ->
        [one] Kopf und Fuß gleich
       *[other] alle Reihen gleich, auf Wunsch jede in einer eigenen Farbe
    }

# $name: what the tyer calls the cord, or none.
rig-cut-say = Schneide { $pieces ->
        [one] ein Stück
       *[other] { $pieces } Stück
    } Schnur ab{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $pieces ->
        [one] { "" }
       *[other] jedes
    } { $length } lang. Die Enden sind eingerechnet.
rig-cut-say-brief = Schneide { $pieces ->
        [one] ein Stück
       *[other] { $pieces } Stück
    } Schnur ab{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $pieces ->
        [one] { "" }
       *[other] jedes
    } { $length } lang.
rig-cut-say-teach = Schneide { $pieces ->
        [one] ein Stück
       *[other] { $pieces } Stück
    } Schnur ab{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $pieces ->
        [one] { "" }
       *[other] jedes
    } { $length } lang. Die Enden sind eingerechnet. Miss zweimal, schneide einmal.
rig-cut-show = Schneide ab: { $pieces ->
        [one] { $length } Schnur
       *[other] { $pieces } × { $length } Schnur
    }
rig-cut-note = { $name ->
        [none] Die Enden sind eingerechnet
       *[other] { $name }; die Enden sind eingerechnet
    }
