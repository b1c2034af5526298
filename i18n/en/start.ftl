# The first screen: what was left off, and the ways that lead on.

# Above the tie that was left off, which one press takes up.
start-left-off = Go on with
# On its button.
start-go-on = Take it up

# Below those that have room. $ties: so many more wait; they are reached by the way of the shelf.
start-more-ties = { $ties ->
        [one] 1 more is under “My ties”.
       *[other] { $ties } more are under “My ties”.
    }

# The ways, each beside its key: a few words.
way-course = First ties
way-plan = For an object
way-form = A knot I know
way-count = A knot to count
way-orders = Orders
way-shelf = My ties
way-glossary = Words
way-settings = Settings
