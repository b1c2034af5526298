# The paper screen: what is made of a tie to be taken along, and where it goes.

paper-heading = Take it along

# How the screen is worked. Spoken as well.
paper-how = On paper or as a moving picture: up and down choose, the side arrows change the kind of file, the space bar makes it.

# What can be made. $kind: card, strip, board (in the place of a strip, for a mat), stage or reel.
paper-name = { $kind ->
        [card] Card
        [strip] Strip
        [board] Board sheet
        [stage] Picture of the step
       *[reel] Moving picture
    }

# What each is for. Spoken as well.
paper-for = { $kind ->
        [card] All its figures and every leg as a table, for an evening without a computer.
        [strip] Pin numbers and hole marks at true size, to be laid round the tube.
        [board] Where the T-pins go at true size, to be taped on the board: on several pages for a large mat.
        [stage] The knot as it lies now, with the words of the step.
       *[reel] The whole tie, leg by leg with its words, to hand to a class.
    }

# Spoken when one gets the focus. $form: the kind of file, such as PDF.
paper-choice = { $kind ->
        [card] Card
        [strip] Strip
        [board] Board sheet
        [stage] Picture of the step
       *[reel] Moving picture
    }, as a { $form } file.

paper-file = Kind of file
paper-paper = Paper
# $paper: A4 or Letter.
paper-size = Paper: { $paper }.

# What stands over the system’s own window.
paper-dialog = { $kind ->
        [card] Where the card goes
        [strip] Where the strip goes
        [board] Where the board sheet goes
        [stage] Where the picture goes
       *[reel] Where the moving picture goes
    }

paper-asking = The system asks in a window of its own where the file goes. The space bar has the path typed here instead, Escape calls it off.
paper-path = Save as: the path of the file. Enter makes it.
paper-path-missing = No path is given: type one that ends in the name of the file, such as ~/tiller.
paper-exists = “{ $file }” is there already: press Enter once more to write over it, or change the name.

paper-making = { $kind ->
        [card] The card is being made.
        [strip] The strip is being made.
        [board] The board sheet is being made.
        [stage] The picture is being made.
       *[reel] The moving picture is being made.
    }
# $done of $count pages or frames.
paper-progress = { $count ->
        [0] It begins.
       *[other] { $done } of { $count } made.
    }
# $files: how many files there are.
paper-made = { $kind ->
        [card] The card is in “{ $file }”.
        [strip] The strip is in “{ $file }”.
        [board] The board sheet is in “{ $file }”.
        [stage] The picture is in “{ $file }”.
       *[reel] The moving picture is in “{ $file }”.
    }{ $files ->
        [one] { "" }
       *[other] { " " }Each page has a file of its own, { $files } in all.
    }
paper-not-opened = It is in “{ $file }”, and no program here opened it by itself.
paper-called-off = Nothing is made.
paper-stopping = What is being made is stopped. If it hangs, leave once more.
paper-left-alone = It is left to itself and may end later. Choose again, or leave.
paper-closing = What is being made is stopped first: close once more.
paper-no-tube = A strip is as long as the tube is round, and this tie names no tube that takes the knot: find the knot for an object, with the tube, and it has one.
# $what: card, strip or reel. $most: crossings or pages at most.
paper-long = { $what ->
        [card] A card of this knot would have more than { $most } crossings to print: make the picture of one step instead.
        [strip] A strip for this tube would take more than { $most } pages: see that the diameter of the tube is right.
       *[reel] A moving picture of this knot would show more than { $most } crossings, one after another: make the card, or the picture of one step.
    }

## Keys

key-on-paper = on paper
key-paper-make = make it
key-paper-below = the next
key-paper-above = the one before
key-paper-form = other kind of file
key-paper-size = other paper
key-paper-open = open it
key-paper-stop = stop
key-paper-type = type the path
key-photograph = choose the photograph

## The photograph of a finished tie

log-photograph-choose = Choose…
log-photograph-typed = The system shows no window for files here: type the path of the photograph.
log-photograph-typed-or-dropped = The system shows no window for files here: type the path of the photograph, or drop it on this window.
