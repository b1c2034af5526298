# La primera pantalla: lo que quedó a medias y los caminos que siguen.

# Above the tie that was left off, which one press takes up.
start-left-off = Seguir con
# On its button.
start-go-on = Retomarlo

# Below those that have room. $ties: so many more wait; they are reached by the way of the shelf.
start-more-ties = { $ties ->
        [one] Hay 1 más en «Mis nudos».
       *[other] Hay { $ties } más en «Mis nudos».
    }

# The ways, each beside its key: a few words.
way-course = Primeros nudos
way-plan = Para un objeto
way-form = Nudo conocido
way-count = Contar un nudo
way-orders = Encargos
way-shelf = Mis nudos
way-glossary = Palabras
way-settings = Ajustes
