# Les cartes des nœuds qui conviennent, et de quoi remplir les champs du plan.

# A knot on its card: its few figures, a short line each. Exemple : cache 86 %
plan-card-size = { $width }, { $time }
plan-card-hides = cache { $hides } %
plan-card-tucks = { $tucks } passages dessous
plan-card-cord = { $long } de cordon

# In an empty field. Exemple : par ex. 30 mm
plan-example = par ex. { $example }

# What a list to pick from is for.
plan-pick-cord = Choisir un cordon
plan-pick-thread = Choisir un filetage
plan-pick-tube = Choisir un tube
# A cord in that list. $kind: named, inches or metric. $name: what it is called, or its inches.
# Exemple : paracord 550 (III), 4 mm; 5/32″ (4 mm)
plan-cord-pick = { $kind ->
        [named] { $name }, { $millimetres } mm
        [inches] { $name }″ ({ $millimetres } mm)
       *[metric] { $millimetres } mm
    }
# A thread in that list. $units: mm for a metric one, inch.
plan-thread-pick = { $units ->
        [inch] { $name } (pouces)
       *[mm] { $name }
    }

# The words by which the name of a cord tells its colour, in small letters with blanks between them.
plan-colour-names = { $colour ->
        [white] blanc blanche
        [natural] naturel beige crème chanvre jute sisal
        [grey] gris grise argent
        [black] noir noire
        [red] rouge
        [orange] orange
        [yellow] jaune or
        [green] vert verte olive
        [blue] bleu bleue marine turquoise
        [purple] violet violette
        [pink] rose
       *[brown] brun brune marron
    }
