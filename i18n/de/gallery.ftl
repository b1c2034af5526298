# Die Karten der Knoten, die passen, und womit die Felder des Plans gefüllt werden können.

# A knot on its card: its few figures, a short line each. Beispiel: verdeckt 86 %
plan-card-size = { $width }, { $time }
plan-card-hides = verdeckt { $hides } %
plan-card-tucks = { $tucks }-mal stecken
plan-card-cord = { $long } Schnur

# In an empty field. Beispiel: etwa 30 mm
plan-example = etwa { $example }

# What a list to pick from is for.
plan-pick-cord = Schnur wählen
plan-pick-thread = Gewinde wählen
plan-pick-tube = Rohr wählen
# A cord in that list. $kind: named, inches or metric. $name: what it is called, or its inches.
# Beispiel: paracord 550 (III), 4 mm; 5/32″ (4 mm)
plan-cord-pick = { $kind ->
        [named] { $name }, { $millimetres } mm
        [inches] { $name }″ ({ $millimetres } mm)
       *[metric] { $millimetres } mm
    }
# A thread in that list. $units: mm for a metric one, inch.
plan-thread-pick = { $units ->
        [inch] { $name } (Zoll)
       *[mm] { $name }
    }

# The words by which the name of a cord tells its colour, in small letters with blanks between them.
plan-colour-names = { $colour ->
        [white] weiß weiss weiße
        [natural] natur beige creme hanf jute sisal
        [grey] grau graue silber
        [black] schwarz schwarze
        [red] rot rote
        [orange] orange
        [yellow] gelb gelbe gold
        [green] grün grüne oliv
        [blue] blau blaue marine türkis
        [purple] lila violett
        [pink] rosa pink
       *[brown] braun braune
    }
