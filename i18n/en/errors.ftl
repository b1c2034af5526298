# One sentence for each thing that can go wrong: what is wrong, what is allowed, what to try.

# $quantity: leads, bights, passes, nested or lands. $given: what was typed.
knot-not-a-number = { $quantity ->
        [leads] Leads
        [bights] Bights
        [nested] Nested bights
        [lands] The row that the first cord lands in
       *[passes] Passes
    } must be a whole number and “{ $given }” is not one: give a number from { $least } to { $most }, such as { $example }.

# A field of the start screen is empty.
knot-empty = { $quantity ->
        [leads] Leads
        [bights] Bights
       *[passes] Passes
    } are still to be given: a whole number from { $least } to { $most }, such as { $example }.

knot-out-of-range = { $quantity ->
        [leads] Leads
        [bights] Bights
        [nested] Nested bights
        [lands] The row that the first cord lands in
       *[passes] Passes
    } must be from { $least } to { $most } and { $given } is not: try { $example }.

knot-missing = { $quantity ->
        [leads] The number of leads is missing: add --leads with a number from { $least } to { $most }, such as --leads { $example }.
       *[bights] The number of bights is missing: add --bights with a number from { $least } to { $most }, such as --bights { $example }.
    }

knot-weave-unreadable = “{ $given }” is not a weave: give a run length such as 1 (over one, under one), or a row code of the letters o and u from the bottom row up, such as ouo.

# $rows: rows of crossings, one less than the leads.
knot-run-too-long = A run of { $given } does not fit { $leads } leads, which cross in { $rows ->
        [one] 1 row
       *[other] { $rows } rows
    }: use a run of 1 to { $rows }, or more leads.

knot-code-length = A row code of { $letters ->
        [one] 1 letter
       *[other] { $letters } letters
    } does not fit { $leads } leads: give one letter, o or u, for each of the { $rows ->
        [one] row, which is 1 letter.
       *[other] { $rows } rows from the bottom up.
    }

cords-unreadable = “{ $given }” leaves a cord without a name: give names with commas between them, such as --cords blue,white.

# $given: how many names there are. $all: strands times passes. $example: a name for each strand.
cords-do-not-go = { $given ->
        [one] 1 name of a cord does not go
       *[other] { $given } names of cords do not go
    } with this tie: { $strands ->
        [one] { $passes ->
            [one] it has one strand in one pass, so give one name, such as --cords blue.
           *[other] give one name for each of its { $passes } passes, such as --cords blue,white; or one name for all of it.
        }
       *[other] { $passes ->
            [one] give one name for each of the { $strands } strands, such as { $example }.
           *[other] give one name for each of the { $strands } strands, such as { $example }; or one for each pass of each strand, { $all } names, the passes of the first strand first.
        }
    }
# Names of cords with commas between them, for examples.
cords-example = red,white,blue,green

choice-unknown = “{ $given }” is not a choice for { $option }: it takes { $allowed }; try { $option } { $example }.

language-unknown = Marlinspeak does not speak “{ $given }”: it knows { $known }; try --lang { $example }.

# What the command line itself can get wrong.
cli-unknown-option = There is no option or command “{ $given }” here: “{ $help }” lists those there are.
cli-unknown-command = There is no option or command “{ $given }” here: “{ $before }” takes { $allowed }; “{ $help }” says what each does.
cli-which-command = That is not a complete command: “{ $before }” takes { $allowed }; “{ $help }” says what each does.
cli-missing-value-for = The option { $option } (“{ $what }”) needs a value after it: “{ $help }” shows which.
cli-missing-value = The option { $option } needs a value after it: “{ $help }” shows which.
cli-twice = The option { $option } is given more than once: give it once.
cli-options-first = Options that name a knot come after the command: write “marlinspeak steps --leads 5 --bights 7”.
cli-needs-command = That is not a complete command: “{ $help }” shows how it is written.
cli-no-text = A word of that command is not text (UTF-8): type it anew; “{ $help }” shows how it is written.

at-once-unreadable = --at-once takes a number of crossings from 1 to 999, or “leg” for whole legs, and “{ $given }” is neither: try --at-once 4.

app-no-display = There is no display to open a window on: start Marlinspeak from a desktop session, or use “marlinspeak steps” in the terminal.
app-without-window = This Marlinspeak was built for the terminal alone and has no window: use “marlinspeak tie” here, or install the one with a window.
app-window-failed = The window could not be opened on the display “{ $display }”: start Marlinspeak from a desktop session, or use “marlinspeak steps” in the terminal.
app-fault = Marlinspeak has stopped because of a fault in it, which the log file notes: start it again and take the tie up where it was saved.
output-failed = The output could not be written ({ $reason }): check where it goes and try again.

# $nested: rows of pins at each rim.
knot-lands-beyond = { $nested ->
        [one] A knot that is not nested has 1 row of pins at each rim, and no row { $given }: leave out the row that the first cord lands in, or nest 2 bights at each rim.
       *[other] The pins stand in { $nested } rows at each rim, 1 the outermost, and there is no row { $given }: give the row that the first cord lands in as a number from 1 to { $nested }.
    }
knot-no-leads-left = With { $leads } leads the further cords would have none: let the first cord land in the innermost row, { $nested }, or take 3 leads or more.
knot-weave-nested = That weave does not fit the { $rows } rows of crossings of this interwoven knot: use a run of 1 to { $rows }, or a row code of { $rows } letters from the bottom row up.
