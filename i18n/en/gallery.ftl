# The cards of the knots that fit, and what the fields of the plan can be filled in with.

# A knot on its card: its few figures, a short line each. Example: hides 86 %
plan-card-size = { $width }, { $time }
plan-card-hides = hides { $hides } %
plan-card-tucks = { $tucks ->
        [one] 1 tuck
       *[other] { $tucks } tucks
    }
plan-card-cord = { $long } of cord

# In an empty field. Example: such as 30 mm
plan-example = such as { $example }

# What a list to pick from is for.
plan-pick-cord = Choose a cord
plan-pick-thread = Choose a thread
plan-pick-tube = Choose a tube
# A cord in that list. $kind: named, inches or metric. $name: what it is called, or its inches.
# Example: paracord 550 (III), 4 mm; 5/32″ (4 mm)
plan-cord-pick = { $kind ->
        [named] { $name }, { $millimetres } mm
        [inches] { $name }″ ({ $millimetres } mm)
       *[metric] { $millimetres } mm
    }
# A thread in that list. $units: mm for a metric one, inch.
plan-thread-pick = { $units ->
        [inch] { $name } (inch)
       *[mm] { $name }
    }

# The words by which the name of a cord tells its colour, in small letters with blanks between them.
plan-colour-names = { $colour ->
        [white] white ivory
        [natural] natural beige tan cream hemp jute sisal
        [grey] grey gray silver
        [black] black
        [red] red
        [orange] orange
        [yellow] yellow gold
        [green] green olive
        [blue] blue navy turquoise
        [purple] purple violet
        [pink] pink
       *[brown] brown
    }
