# Cards for a class, and an order on paper.

help-sheet-class = Make a card in large type for each pupil, all in one PDF, and the moving picture to show beside it
help-class-copies = So many cards, with a number on each, 1 to 99
help-class-names = A card for each of these, with the name on every page: “Ada,Ben”
help-sheet-order = Make an order into a list to shop, pack and tie by
help-sheet-order-what = The order, as “order list” names it, or its file
class-who = For whom are the cards? Give their number, such as --copies 12, or their names, such as --names Ada,Ben.
class-copies-or-names = The cards are counted by --copies or named by --names: give one of the two.
class-copies = --copies takes a whole number from 1 to { $most } and “{ $given }” is not one: try --copies 12.
class-names = “{ $given }” is not a list of names: give up to { $most } of them with a comma between, such as --names Ada,Ben.
class-out-ending = “{ $file }” is not the name of a PDF: let it end in “.pdf”; the moving picture gets the same name with “.gif”.
class-out-missing = There is nowhere to put the cards: add --out with the name of a PDF, such as --out class.pdf; the moving picture gets the same name with “.gif”.
class-long = The cards would have more than { $most } crossings to print in all: make them for fewer at a time.
class-stopped = Stopped after { $page } of { $pages } pictures: the cards are there and whole, the moving picture is not there.
help-class-out = The PDF of the cards; the moving picture gets the same name with “.gif”
order-pieces = The knots:
