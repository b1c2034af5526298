# The guided job in a terminal.

tie-keys = Space next, B or Page Up back, R again, H where am I, W wrong, C will the cord do, J join a new cord, 1 2 3 brief, plain, teach, [ and ] less or more at once, minus and plus speed, P pause, T settings, L write down what was used at the end, Q leave.
tie-keys-lines = Enter is next; then b back, r again, h where am I, w wrong, c will the cord do, j join a new cord, 1 2 3 brief, plain, teach, t settings, q leave, each with enter.
tie-left = The tie is kept where it stands: “marlinspeak tie” takes it up again.
# $known: yes when the reason is known, else no.
tie-not-saved = What you pressed last is not saved{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }: when the tie is taken up again, hold the step against your work.
tie-in-use = This tie is open in another window or terminal: go on there, or close it there first.
tie-none-waiting = No tie is waiting to be taken up: name a knot, such as “marlinspeak tie --leads 3 --bights 5”.
tie-lesson-or-knot = Name a lesson or a knot, not both, such as “marlinspeak tie --lesson 1”.
tie-log-say = What was really used. Enter goes on to the next field and keeps them all at the last; what you leave empty is not counted.
