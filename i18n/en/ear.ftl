# What is told to who only hears.

# All keys of a screen, on request: F1 or the question mark.
keys-say = All the keys that work here.
keys-close-say = F1 once more, and you are told where you are.
# $heading: what the keys after it are for.
key-group-say = { $heading }.
# $key: the key. $does: what it does, in a word or two.
key-aloud-say = { $key ->
        [Space] Space bar
        [Enter] Enter
        [Escape] Escape
        [Tab] Tab
        [ShiftTab] Shift and tab
        [Home] Home
        [End] End
        [Delete] Delete
        [Backspace] Backspace
        [PageUp] Page up
        [PageDown] Page down
        [ArrowLeft] Left arrow
        [ArrowRight] Right arrow
        [ArrowUp] Up arrow
        [ArrowDown] Down arrow
        [Plus] Plus
        [Minus] Minus
        [BracketLeft] Opening square bracket
        [BracketRight] Closing square bracket
        [CtrlQ] Control and Q
       *[other] { $key }
    }: { $does }.

# What was typed into a line, once typing rests.
typed-say = { $typed }.

# A cord or a thread that is not known, told to who does not see the list.
ask-cord-unknown-say = “{ $given }” is not a cord that is known here. Type its thickness, such as 4 millimetres, or press page down to go through those known.
ask-thread-unknown-say = The thread “{ $given }” is not known. Try M4 or M5, or press page down to go through those known.

# Said once the first screen has said itself.
keys-hint-say = F1 tells you all the keys, here and on every screen.

# The keys of a tie in a terminal, on request.
tie-keys-say = Space bar: next. B or page up: back. R: again. H: where am I. W: wrong. C: will the cord do. J: join a new cord. 1, 2 and 3: brief, plain, teach. The square brackets: less or more at once. Minus and plus: the speed. P: pause. T: settings. L: write down what was used, at the end. Q: leave.
