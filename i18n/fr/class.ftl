# Des fiches pour un cours, et une commande sur papier.

help-sheet-class = Faire pour chaque élève une fiche en grands caractères, toutes dans un PDF, et à côté l’image animée à montrer
help-class-copies = Autant de fiches, numérotées, de 1 à 99
help-class-names = Une fiche pour chacun de ceux-ci, avec le nom sur chaque page : « Ada,Ben »
help-sheet-order = Faire d’une commande une liste pour acheter, emporter et nouer
help-sheet-order-what = La commande, comme « order list » la nomme, ou son fichier
class-who = Pour qui sont les fiches ? Donnez leur nombre, par exemple --copies 12, ou les noms, par exemple --names Ada,Ben.
class-copies-or-names = Les fiches se comptent par --copies ou se nomment par --names : ne donnez qu’un des deux.
class-copies = --copies prend un nombre entier de 1 à { $most } et « { $given } » n’en est pas un : essayez --copies 12.
class-names = « { $given } » n’est pas une liste de noms : donnez-en jusqu’à { $most }, séparés par une virgule, par exemple --names Ada,Ben.
class-out-ending = « { $file } » n’est pas le nom d’un PDF : donnez-lui l’extension PDF ; l’image animée porte le même nom, avec l’extension GIF.
class-out-missing = Rien ne dit où mettre les fiches : ajoutez --out avec le nom d’un PDF, par exemple --out cours.pdf ; l’image animée porte le même nom, avec l’extension GIF.
class-long = Les fiches auraient en tout plus de { $most } croisements à imprimer : faites-les pour moins d’élèves à la fois.
class-stopped = Arrêté après { $page } images sur { $pages } : les fiches sont là, entières, l’image animée manque.
help-class-out = Le PDF des fiches ; l’image animée porte le même nom, avec l’extension GIF
order-pieces = Les nœuds :
