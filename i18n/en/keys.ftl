# The keys of the screens. Each stands on a button with what it does: a word or two, no sentence.

key-sheet-heading = All keys
key-sheet-close = Close

## Headings of the groups

key-group-steps = Step by step
key-group-telling = How it is told
key-group-voice = The voice
key-group-picture = The picture
key-group-here = On this screen
key-group-places = Elsewhere
key-group-program = The window

# What is printed on a key. $key: its name, or the sign on it. CtrlQ is Q with the control key.
key-cap = { $key ->
        [Space] Space
        [Enter] Enter
        [Escape] Esc
        [Delete] Del
        [PageUp] PgUp
        [PageDown] PgDn
        [Backspace] Backspace
        [CtrlQ] Ctrl Q
       *[other] { $key }
    }

## While a knot is tied

key-next = next
key-back = back
key-again = again
key-where = where am I
key-wrong = wrong
key-leave = leave
key-take-back = take back
key-find-place = find my place
key-leave-as-is = leave it as it is
# On the key that otherwise leaves the tie: closes what was asked for and goes back to the step.
key-to-step = to the step
key-one-more-back = one more back
key-lay-again = lay it again
key-yes = yes
key-no = no
key-cord = will the cord do
key-join = it ran out or frayed
key-over = over
key-under = under
key-count-again = count again
key-one-more = one more
key-that-is-it = that is it
key-digit-away = digit away
key-elsewhere = somewhere else
key-another-place = another place
key-briefly = brief
key-plainly = plain
key-taught = teach
key-less-at-once = fewer crossings at once
key-more-at-once = more crossings at once
key-slower = slower
key-faster = faster
key-pause = pause
key-turn-picture = turn the view
key-size-picture = larger, off, smaller
key-whole-picture = over the whole screen
key-picture = picture
key-smaller = smaller
key-write-log = write it down

## Other screens

key-take-up = take it up
key-begin = begin it
key-first-tie = tie it
key-form = name a knot by numbers
key-plan = a knot for an object
key-shelf = my ties
key-course = first ties
key-glossary = words of the craft
key-count = count a knot
key-settings = settings
key-next-field = next field
key-field-before = field before
key-leave-form = leave the form
key-another-pick = another choice
key-pick-before = the choice before
key-take-knot = take this knot
key-knot-next = next knot
key-knot-before = knot before
key-filter-passes = passes
key-filter-from-three = three leads or more
key-filter-one-cord = one cord
key-filter-most-legs = length of the work
key-filter-weave = weave
key-filter-firm = kind of cord
key-filter-nested = bights nested
key-lesson-below = next lesson
key-lesson-above = lesson before
key-exchange-weave = weave the other way
key-word-below = next word
key-word-above = word before
key-tie-below = next tie
key-tie-above = tie before
key-first = the first
key-last = the last
key-name = name it
key-note = note
key-same-again = start the same again
key-put-away = put away or out
key-delete = delete
key-undo = undo
key-back-up = back up
key-bring-in = bring in
key-keep = keep
key-line-below = next line
key-line-above = line before
key-value-more = more
key-value-less = less
key-what-for = what it is for
key-voice-before = the voice before
key-voice-next = the next voice
key-take-voice = take this voice
key-keep-voice = keep the one before
key-done = done
key-leave-unchanged = leave all as it was
key-how-loud = how loud it is
key-switch-on = switch them on

## The window

key-full-screen = full screen
key-quit = quit
