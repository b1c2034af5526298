# Le premier écran : ce qui est resté en plan, et les chemins qui mènent plus loin.

# Above the tie that was left off, which one press takes up.
start-left-off = Continuer
# On its button.
start-go-on = Le reprendre

# Below those that have room. $ties: so many more wait; they are reached by the way of the shelf.
start-more-ties = { $ties ->
        [one] 1 autre dans « Mes nœuds ».
       *[other] { $ties } autres dans « Mes nœuds ».
    }

# The ways, each beside its key: a few words.
way-course = Premiers nœuds
way-plan = Pour un objet
way-form = Nœud connu
way-count = Compter un nœud
way-orders = Commandes
way-shelf = Mes nœuds
way-glossary = Les mots
way-settings = Réglages
