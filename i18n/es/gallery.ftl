# Las tarjetas de los nudos que valen, y con qué se pueden llenar los campos del plan.

# A knot on its card: its few figures, a short line each. Ejemplo: tapa el 86 %
plan-card-size = { $width }, { $time }
plan-card-hides = tapa el { $hides } %
plan-card-tucks = { $tucks } pasos por debajo
plan-card-cord = { $long } de cabo

# In an empty field. Ejemplo: p. ej. 30 mm
plan-example = p. ej. { $example }

# What a list to pick from is for.
plan-pick-cord = Elegir un cabo
plan-pick-thread = Elegir una rosca
plan-pick-tube = Elegir un tubo
# A cord in that list. $kind: named, inches or metric. $name: what it is called, or its inches.
# Ejemplo: paracord 550 (III), 4 mm; 5/32″ (4 mm)
plan-cord-pick = { $kind ->
        [named] { $name }, { $millimetres } mm
        [inches] { $name }″ ({ $millimetres } mm)
       *[metric] { $millimetres } mm
    }
# A thread in that list. $units: mm for a metric one, inch.
plan-thread-pick = { $units ->
        [inch] { $name } (pulgadas)
       *[mm] { $name }
    }

# The words by which the name of a cord tells its colour, in small letters with blanks between them.
plan-colour-names = { $colour ->
        [white] blanco blanca
        [natural] natural beige crema cáñamo yute sisal
        [grey] gris plata
        [black] negro negra
        [red] rojo roja
        [orange] naranja
        [yellow] amarillo amarilla oro
        [green] verde oliva
        [blue] azul marino turquesa
        [purple] morado morada violeta
        [pink] rosa
       *[brown] marrón pardo parda
    }
