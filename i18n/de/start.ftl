# Der erste Bildschirm: was liegen blieb, und die Wege, die weiterführen.

# Above the tie that was left off, which one press takes up.
start-left-off = Weiter mit
# On its button.
start-go-on = Weiterknüpfen

# Below those that have room. $ties: so many more wait; they are reached by the way of the shelf.
start-more-ties = { $ties ->
        [one] Noch einer liegt unter „Meine Knoten“.
       *[other] { $ties } weitere liegen unter „Meine Knoten“.
    }

# The ways, each beside its key: a few words.
way-course = Erste Knoten
way-plan = Für Gegenstände
way-form = Nach Zahlen
way-count = Knoten auszählen
way-orders = Aufträge
way-shelf = Meine Knoten
way-glossary = Fachwörter
way-settings = Einstellungen
