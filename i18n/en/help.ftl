# The help of the terminal: what each command and option does. What is typed (names of commands and
# options, and words such as “right”) is the same in every language.

## The program and its commands.

help-marlinspeak = Tells a tyer of Turk’s heads every step of the knot, aloud and in large type.
help-marlinspeak-more =
    Tells a tyer of Turk’s heads every step of the knot, aloud and in large type.

    Without a command it opens the app: with --leads and --bights on that tie, begun.
help-steps = Print every step of a tie
help-fit = Find the knots that cover an object, best first
help-rig = Say how a tube is rigged for a knot: pins, rings, cord
help-shelf = The ties that are kept: list, hand on, back up, check
help-tie = Guide through a tie in the terminal; with no knot named, through the newest one
help-sheet = Make paper for the bench: a card, a strip or a stage
help-count = Count a knot that somebody brings until it is known
help-doctor = Say what works here of display, speech, sound, pedals and folders, and how to mend the rest
help-install-artifacts = Write the man pages, the completions and the icons that are installed
help-shelf-list = List the ties on the shelf, newest first
help-shelf-export = Write one tie to a file that can be handed on
help-shelf-import = Put the tie in a file on the shelf
help-shelf-verify = Check every document: exit code 0 only when all are whole
help-shelf-backup = Write all ties and the log to one file
help-shelf-restore = Put all ties of a backup on the shelf; none that is there is overwritten
help-shelf-delete = Take a tie off the shelf
help-shelf-undo = Bring a deleted tie back
help-sheet-card = The knot, its facts and every leg as a table
help-sheet-strip = Pin numbers and hole marks at true size, to be laid round the tube; of a mat the sheet for its board, in place the strips of marks
help-sheet-stage = The picture at one step
help-sheet-reel = The whole tie as a moving picture, leg by leg, with its words

## What describes a knot.

help-leads = Leads, 2 to 999: cords met on a straight line from rim to rim
help-bights = Bights, 2 to 999: scallops along each rim, and pins on each ring
help-passes = Passes, 1 to 9: 1 is single, 2 doubled, 3 tripled [default: 1]
help-weave = Over n, under n; or a row code of o and u from the bottom row up, such as ouuo [default: 1, with nested bights as many as are nested, begun with over or with under, whichever takes fewer tucks]
help-side = The side of the first cord that later passes keep to, right or left as the cord travels; for who works to the right, right is the bottom-ring side [default: right]
help-hand = The way round the tube that the tyer works, right or left [default: right]
help-order = Several strands: passes lays the lead pass of them all first, strands finishes one strand after the other [default: passes, with nested bights strands]
help-cords = What you call the cords: one name for each strand, or for each pass of each strand (all passes of the first strand first), such as “blue,white”

## Object, cord and tube.

help-object = Diameter of the object; of a taper those of its two ends, bottom end first
help-girth = The way round the object, instead of its diameter
help-ball = Diameter of a ball to be covered, instead of an object
help-mat = A flat mat, instead of an object: from edge to edge, and its hole behind a colon
help-in-place = Tie it on what it covers, without a tube: nothing is slid on
help-cover = Length of the object to be covered; of a taper, the length over which it tapers
help-cord = The cord: its diameter, a standard such as III or 550, or the name of one that is kept
help-firm = What the cord is like: hard (round, keeps its shape), soft (braided or laid line) or flat (ribbon, hollow braid) [default: soft, or as it was kept]
help-cord-give = How closely two bands of the cord lie with another between them, in cord diameters, such as 1.7; instead of --firm
help-tube = The tube: its diameter, or the name of one that is kept
help-rows = Holes in each row of a ring, such as 14,20; a tube without rings has none
help-pin = Length of the pins
help-thread = Thread of the pins, such as M4 or M5
help-wall = Thickness of what the pins go through
help-ring-width = Width of each ring along the tube
help-tube-length = Length of the tube
help-have = Cord at hand
help-price-metre = What a metre of the cord costs
help-price-hour = What an hour of your work is worth
help-keep-tube = Keep the tube by this name, for --tube NAME
help-keep-cord = Keep the cord by this name, for --cord NAME

## Which knots are wanted.

help-most = At most so many knots [default: 10, or all of them with --json]
help-fit-passes = Only knots of so many passes, 1 to 4: 1 is single, 2 doubled, 3 tripled
help-least-leads = Only knots of so many leads or more, 2 to 60
help-least-bights = Only knots of so many bights or more, 2 to 60
help-one-cord = Only knots tied with one cord
help-most-legs = Only ties of so many legs at the most, all passes together
help-least-hidden = Hide at least this share of the object, in per cent [default: nine tenths of what the knot hides when it is tight]
help-fit-weave = Over n, under n as it is, even where its twin takes fewer tucks [default: 1 or its twin, with nested bights as many as are nested]

## How it is told, and what comes out.

help-lang = The language of the words, such as en [default: that of the settings, or the system’s]
help-detail = How much is said of a step: brief, plain or teach [default: plain]
help-json = Print one JSON document instead of text
help-summary = Print how many steps of each kind there are, and the seconds they take to be spoken
help-at-once = At most so many crossings in a step, 1 to 999, or “leg” for whole legs; with 1, bag, rigging and fairing come one by one [default: 4]
help-tie-at-once = At most so many crossings in a step, 1 to 999, or “leg” for whole legs [default: as saved, or 4]
help-checks = How often there is a look at the work: after every round or every pass [default: round]
help-lesson = A lesson of the course of first ties, by its number
help-speech = Say each step aloud too, and sound as the window does
help-step = The step, as “marlinspeak steps” counts them [default: the last]
help-rolled-out = Show the tube cut open and laid flat instead of as it stands
help-out = The file to write; several pages of PNG get -1, -2, … before their ending
help-reel-out = The file to write, of the kind that its name ends in: gif, png or webp
help-reel-width = Pixels across, 320 to 1920; three quarters of that down [default: 800]
help-replace = Write over a file that is there already
help-pdf = Make a PDF whatever the file’s name ends in
help-dpi = Dots an inch of a PNG, 72 to 600 [default: 300]
help-paper = The paper, a4 or letter [default: a4]
help-shelf-tie = The tie, as “shelf list” names it
help-shelf-undo-tie = The tie, as “shelf delete” named it
help-file-out = The file to write
help-file-in = The file to read
help-folder = The folder to write to; what is there already is overwritten
help-help = Print this help
help-version = Print the version

## Headings.

help-usage = Usage:
help-commands = Commands:
help-arguments = Arguments:
help-options = Options:

## What stands for a value: one word, in capitals.

value-options = OPTIONS
value-command = COMMAND
value-number-or-code = N|CODE
value-side = SIDE
value-hand = HAND
value-names = NAMES
value-name = NAME
value-tag = TAG
value-depth = DEPTH
value-length = LENGTH
value-lengths = LENGTH[:LENGTH]
value-length-or-name = LENGTH|NAME
value-decimal = NUMBER
value-thread = THREAD
value-price = PRICE
value-percent = PERCENT
value-paper = PAPER
value-file = FILE
value-folder = FOLDER
value-tie = TIE

help-nested = Bights nested one inside the other at each rim, 1 to 9; above 1 as many cords or more are interwoven
help-lands = The top row of pins in which the first cord lands, 1 the outermost; without it the innermost
help-fit-nested = Knots of so many bights nested at each rim, 1 to 9, all cords with the same leads; without it plain knots and the best interwoven ones
