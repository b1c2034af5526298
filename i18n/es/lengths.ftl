# Lengths. Where another message has an argument that is a length, it is one of these: the
# program chooses the unit and puts the whole in. $number: already in the pattern of the
# language (12.7, 12,7), and its plural chooses.
#
# Those ending in -say are heard in messages with -say in their name; the others stand in all
# other messages. One is a word for the ear, as a voice would read the figure as "uno". A foot (pie)
# is also the word for the bottom rim here: only the rim has a pin and an article ("del pie").

# Ejemplo: 9 milímetros
length-mm-say = { $number ->
        [one] un milímetro
       *[other] { $number } milímetros
    }
# Ejemplo: 9 mm
length-mm = { $number } mm

# Ejemplo: 15 centímetros
length-cm-say = { $number ->
        [one] un centímetro
       *[other] { $number } centímetros
    }
# Ejemplo: 15 cm
length-cm = { $number } cm

# Ejemplo: 1,2 metros
length-m-say = { $number ->
        [one] un metro
       *[other] { $number } metros
    }
# Ejemplo: 1,2 m
length-m = { $number } m

# Ejemplo: 0,5 pulgadas
length-in-say = { $number ->
        [one] una pulgada
       *[other] { $number } pulgadas
    }
# Ejemplo: 0,5 in
length-in = { $number } in

# Ejemplo: 4,5 pies
length-ft-say = { $number ->
        [one] un pie
       *[other] { $number } pies
    }
# Ejemplo: 4,5 ft
length-ft = { $number } ft
