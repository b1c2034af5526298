# La primera pantalla: lo que quedó a medias y los caminos que siguen.

# Above the tie that was left off, which one press takes up.
start-left-off = Seguir con
# On its button.
start-go-on = Retomarlo

# The ways, each beside its key: a few words.
way-course = Primeros nudos
way-plan = Para un objeto
way-form = Nudo conocido
way-count = Contar un nudo
way-orders = Encargos
way-shelf = Mis nudos
way-glossary = Palabras
way-settings = Ajustes
