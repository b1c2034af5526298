# The first question of the plan screen: what is covered, and whether the knot can be slid onto it.

# The answers, each below its picture. $covered: round, taper, ball or mat. $slides: on or place.
plan-covers = { $covered ->
        [round] Griff, Geländer
        [taper] Verjüngt
        [ball] Kugel, Knauf
       *[mat] Flache Matte
    }
plan-slides-asked = Lässt sich der Knoten überstreifen?
plan-slides = { $slides ->
        [on] Wird übergestreift
       *[place] Am Ort geknüpft
    }

# The same, told when they are in turn.
plan-covers-told = { $covered ->
        [round] Bedeckt wird ein Griff oder ein Geländer, überall gleich dick.
        [taper] Bedeckt wird etwas, das dünner wird, mit einem dicken und einem dünnen Ende.
        [ball] Bedeckt wird eine Kugel oder ein Knauf.
       *[mat] Bedeckt wird nichts: Es wird eine flache Matte, auf einem Brett geknüpft.
    } Pfeil rechts und Pfeil links ändern es.
plan-slides-told = { $slides ->
        [on] Lässt sich der Knoten überstreifen? Ja: Er wird auf einem Rohr mit Stiften geknüpft und übergestreift.
       *[place] Lässt sich der Knoten überstreifen? Nein: Er wird am Ort geknüpft, ohne Rohr.
    } Pfeil rechts ändert es.

# What is still to be said of the thing, and the names of its measures.
plan-measure-wanted = { $covered ->
        [round] Wie dick ist der Gegenstand? Miss quer darüber, oder rundherum mit einem Maßband.
        [taper] Wie dick ist er an jedem Ende? Gib beide mit einem Doppelpunkt dazwischen an, das Ende am Fuß zuerst, etwa 32:26 mm.
        [ball] Wie groß ist die Kugel im Durchmesser?
       *[mat] Wie groß soll die Matte von Rand zu Rand werden? Ein Loch steht hinter einem Doppelpunkt, etwa 150:60 mm.
    }
plan-taper = Beide Enden, Fuß zuerst
plan-ball = Ihr Durchmesser
plan-mat = Von Rand zu Rand, ein Loch nach Doppelpunkt
# What was read in the field of a taper or of a mat with its hole, below it. $shape: taper or mat.
# Example: Fuß 34 mm, Kopf 26 mm; 150 mm von Rand zu Rand, Loch 40 mm
plan-ends-read = { $shape ->
        [mat] { $first } von Rand zu Rand, Loch { $second }
       *[taper] Fuß { $first }, Kopf { $second }
    }
# $ends: what stands in the field, or none.
plan-taper-told = Durchmesser der beiden Enden, das am Fuß zuerst{ $ends ->
        [none] .
       *[other] : { $ends }.
    } Dazwischen steht ein Doppelpunkt.
