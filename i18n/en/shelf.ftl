# The shelf: ties that wait, the log of finished ones, and what can be wrong with their files.

## The shelf screen

shelf-heading = My ties
shelf-empty = Nothing is here yet: each tie that you begin stands here. Shall it be the first one?
shelf-empty-say = My ties. Nothing is here yet. Press the space bar to begin the first tie, or Escape to go back.

# How a tie stands. $state: waiting, finished or away.
# Example: 58 per cent, 14 of 24 legs, touched yesterday
shelf-tie-stand = { $state ->
        [finished] Finished
        [away] Put away at { $percent } per cent
       *[waiting] { $percent } per cent
    }, { $laid } of { $legs } legs, { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] touched today
               *[other] touched { $minutes } min ago
            }
           *[other] touched { $hours } h ago
        }
        [one] touched yesterday
       *[other] touched { $days } days ago
    }

# Whether something was logged of a finished tie. $logged: yes or no.
shelf-tie-log = { $logged ->
        [yes] In the log
       *[no] Not in the log yet: L writes down what was used
    }

# Spoken when the shelf appears. Example: My ties. 3 wait or are done. Up and down move.
shelf-say = My ties. { $ties ->
        [one] 1 tie.
       *[other] { $ties } ties. Up and down move, the space bar takes one up.
    }

# Spoken when a tie gets the focus.
# Example: 1 of 3. Tiller. 5 lead, 7 bight, doubled. Lead pass, 58 per cent, touched yesterday.
# $name: what its tyer calls it, or none. $named: yes or no. $phase: kit, rig, lead,
# follow, check, lift, fair or finish. $state: waiting, finished or away. $note: what its tyer wrote; $noted: yes
# or no.
shelf-tie-say = { $number } of { $ties }. { $named ->
        [yes] { $name }.
       *[no] { "" }
    } { $leads } lead, { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $passes ->
        [one] single
        [2] doubled
        [3] tripled
       *[other] { $passes } passes
    }. { $state ->
        [finished] Finished
       *[other] { $state ->
            [away] Put away.
           *[waiting] { "" }
        } { $phase ->
            [kit] Gathering what is needed
            [rig] Rigging
            [lead] Lead pass
            [follow] { $pass ->
                [2] Second pass
                [3] Third pass
                [4] Fourth pass
                [5] Fifth pass
                [6] Sixth pass
                [7] Seventh pass
                [8] Eighth pass
               *[9] Ninth pass
            }
            [check] At the look after pass { $pass }
            [lift] { -coming-off }
            [fair] Fairing
           *[finish] Finishing the ends
        }, { $percent } per cent
    }, { $days ->
        [0] touched today
        [one] touched yesterday
       *[other] touched { $days } days ago
    }. { $noted ->
        [yes] Note: { $note }
       *[no] { "" }
    }

# All logged ties together.
# Example: In the log: 4 ties, 192 legs, 6 hours 20 minutes, 18.4 m of cord.
# $cord: a length, or none when nothing was measured.
shelf-totals = In the log: { $ties ->
        [one] 1 tie
       *[other] { $ties } ties
    }, { $legs } legs, { $hours ->
        [0] { $minutes ->
            [one] 1 minute
           *[other] { $minutes } minutes
        }
        [one] 1 hour { $minutes } minutes
       *[other] { $hours } hours { $minutes } minutes
    }{ $cord ->
        [none] .
       *[other] , { $cord } of cord.
    }

# $ties: so many are not laid out above or below those that are.
shelf-more-ties = { $ties ->
        [one] 1 more tie is not shown: up and down lead to it.
       *[other] { $ties } more ties are not shown: up and down lead to them.
    }

# The tyer's own pace.
shelf-pace = Your pace: { $seconds } seconds a leg.

shelf-prompt-name = Name of this tie
shelf-prompt-note = Note for this tie
shelf-prompt-backup = Back up all ties and the log to this new file
shelf-prompt-bring-in = Bring in a tie or a backup from this file

shelf-has-name = Renamed.
shelf-has-note = Noted.
shelf-begun-again = The same tie is begun again and stands first.
shelf-is-away = Put away. It stays here and no longer on the first screen.
shelf-is-out = Put out again.
shelf-is-deleted = Deleted. Press U to have it back.
shelf-is-back = It is back.
shelf-nothing-deleted = Nothing is deleted that could come back: Delete deletes the tie in the focus, and U undoes it.
shelf-not-finished = This tie is not finished. What was used is written down when it is.

# $ties and $logged: how many; $left: how many could not be read and are not in it.
shelf-backed-up = { $ties ->
        [one] 1 tie
       *[other] { $ties } ties
    } and { $logged ->
        [one] 1 entry of the log
       *[other] { $logged } entries of the log
    } are in { $file }.{ $left ->
        [0] { "" }
        [one] { " " }1 document could not be read and is not in it.
       *[other] { " " }{ $left } documents could not be read and are not in it.
    }

# $new: ties that came, $known: ties that were here already, $faults: lines that could not be
# read, $missing: lines that a backup cut short lacks; $shortened: names or notes that were cut; $presets: tubes and
# cords that came.
shelf-brought-in = { $new ->
        [0] No new tie
        [one] 1 tie
       *[other] { $new } ties
    } and { $logged ->
        [0] nothing for the log
        [one] 1 entry of the log
       *[other] { $logged } entries of the log
    } came from { $file }.{ $known ->
        [0] { "" }
        [one] { " " }1 tie was here already.
       *[other] { " " }{ $known } ties were here already.
    }{ $faults ->
        [0] { "" }
        [one] { " " }1 line could not be read and was left out.
       *[other] { " " }{ $faults } lines could not be read and were left out.
    }{ $missing ->
        [0] { "" }
        [one] { " " }1 is missing at its end.
       *[other] { " " }{ $missing } are missing at its end.
    }{ $shortened ->
        [0] { "" }
        [one] { " " }1 name or note was cut: a name has at most 120 letters, a note 2,000.
       *[other] { " " }{ $shortened } names or notes were cut: a name has at most 120 letters, a note 2,000.
    }{ $presets ->
        [0] { "" }
        [one] { " " }1 tube or cord kept by name came too.
       *[other] { " " }{ $presets } tubes and cords kept by name came too.
    }{ $settings ->
        [no] { "" }
       *[yes] { " " }The settings came too, and hold from the next start.
    }

## A tie that is open elsewhere

look-only = Looking only: this tie is open in another window or terminal. Nothing done here is kept.
look-only-say = Looking only. Nothing you do here is kept.

## The log

log-offer-say = This was the last step. Press L to write down what was used, or Escape to leave.

log-heading = What was really used
log-say = What was really used. Tab moves from field to field; what you leave empty is not counted. Enter keeps it.
log-cord-name = Cord, as you call it
log-cord = Cord diameter
log-cut = Cord cut, all together
log-left-over = Cord left over, all together
log-around = Diameter of what it sits on
log-width = Finished width
log-drawn = Drawn up
log-drawn-tight = as tight as it goes
log-drawn-open = left open
log-minutes = Minutes of work
log-note = Note
log-photograph = Photograph, the path of the file
log-hint = Lengths with their unit, such as 4 mm, 5/32 in or 2.5 m; without one, millimetres.
log-keep = Keep it
log-kept = Kept.

# Said when a field gets the focus. $field: as the labels above. $value: what stands in it, or
# none.
log-field-say = { $field ->
        [cord-name] Cord, as you call it
        [cord] Cord diameter
        [cut] Cord that was cut, all together
        [left-over] Cord left over, all together
        [around] Diameter of what it sits on
        [width] Finished width
        [drawn-tight] Drawn up as tight as it goes
        [drawn-open] Left open
        [minutes] Minutes of work
        [note] Note
        [photograph] Path of a photograph
       *[keep] Keep it
    }{ $filled ->
        [yes] : { $value }.
       *[no] .
    }

# What is wrong with a field.
log-length-unreadable = “{ $given }” is not a length: give a number and a unit, such as 4 mm, 5/32 in or 2.5 m.
log-length-unit = “{ $given }” has a unit that is not known here: mm, cm, m, in and ft are; try 4 mm.
log-length-comma = The comma in “{ $given }” can be read in two ways: write a point for decimals, or leave it out.
log-length-fraction = “{ $given }” is a fraction without a unit: if it is inches, write { $given }in; else give it with mm or cm.
log-length-positive = A length must be more than zero and “{ $given }” is not: try 4 mm, or leave the field empty.
log-length-range = A length must be from 0.01 mm to 100 m and “{ $given }” is not: try another unit.
log-cord-thickness = The cord has a name and no thickness: give how thick it is, such as 4 mm, or take the name out.
log-left-over-more = More cord is left over than was cut: see that both have the right unit.
# A measure is far from what it should come to, and is asked back once. $what: width or cord.
# $measured, $computed: lengths.
log-wild = { $what ->
        [width] The finished width, { $measured }, is far from the { $computed } that this knot should come to: see that the figure and its unit are right, and if they are, keep it once more.
       *[cord] Cut less left over makes { $measured } of cord in the knot, far from the { $computed } that it should take: see that both are right, and if they are, keep it once more.
    }
log-minutes-unreadable = Minutes must be a number from 0 to { $most } and “{ $given }” is not: try 90.
log-no-photograph = There is no file “{ $file }”: choose a photograph that is there, or leave the field empty.
log-photograph-unread = “{ $file }” could not be read ({ $reason }): see that it may be read, or choose another photograph.
log-photograph-other = “{ $file }” is not a photograph that can be shown: choose a JPEG, PNG or WebP file.
log-photograph-damaged = “{ $file }” is damaged and can’t be shown: copy it from the camera once more, or choose another photograph.
# $most: megabytes.
log-photograph-large = “{ $file }” is too large: a photograph may have up to { $most } megabytes and a hundred million pixels. Choose a smaller copy of it.
log-leave-asks = What you typed is not kept. Press Escape once more to leave without it, or Enter to keep it.
log-not-kept = It could not be kept. { $reason }

## In the terminal

# What stands before the ties in a list; the columns are set by the program.
shelf-no-ties = No ties are on the shelf in { $folder }.
shelf-verify-whole = { $documents ->
        [0] There is nothing on the shelf yet.
        [one] The one document on the shelf is whole.
       *[other] All { $documents } documents on the shelf are whole.
    }
# $state: unchecked or aside.
shelf-verify-line = { $state ->
        [aside] { $file } was damaged and is kept out of the way: delete it when you do not need it.
       *[unchecked] { $file } has no checksum to be held against: take the tie up and press once, and it gets one.
    }
# $renumbered: yes when the shelf had another tie of its name.
shelf-imported = { $fate ->
        [here] The tie { $id } is on the shelf already.
        [renumbered] The tie is on the shelf as { $id }; another one has the name { $was }.
       *[kept] The tie { $id } is on the shelf.
    }{ $shortened ->
        [yes] { " " }Its name or note was cut: a name has at most 120 letters, a note 2,000.
       *[no] { "" }
    }
shelf-exported = The tie { $id } is in { $file }.
shelf-deleted = The tie { $id } is deleted: “marlinspeak shelf undo { $id }” brings it back.
shelf-undone = The tie { $id } is back on the shelf.
shelf-not-deleted = No tie { $id } is deleted, so none can come back: “marlinspeak shelf list” shows those on the shelf.

## What can be wrong

# While a command of the terminal waits for the disk.
disk-slow = The disk is slow to answer. This goes on as soon as it does; Ctrl+C gives it up, and leaves no file half written.
shelf-error-io = { $doing ->
        [read] { $path } could not be read ({ $reason }): see that it is there and yours to read, then try again.
        [list] The folder { $path } could not be looked through ({ $reason }): see that it is there and yours to read, then try again.
        [lock] { $path } could not be locked ({ $reason }): see that its folder is there and yours to write to, then try again.
        [make] The folder { $path } could not be made ({ $reason }): see that nothing else has its name and that the disk is not full, then try again.
        [move] { $path } could not be moved ({ $reason }): see that its folder is yours to write to, then try again.
       *[write] { $path } could not be written ({ $reason }): see that its folder is there and yours to write to and that the disk is not full, then try again.
    }

# $fault: what is wrong with the file. $place: where in it, in brackets with a space before them, or nothing.
shelf-error-unreadable = { $fault ->
        [too-large] { $path } is too large to be what it should be: see that it is the right file, or use a copy that is whole.
        [not-a-file] { $path } is not a plain file: put a file in its place, or use another.
        [not-json] { $path } is not readable as JSON{ $place }: use a copy that is whole.
        [newer] { $path } was written by a newer Marlinspeak{ $place } and is left alone: use the newer program for it.
        [checksum] { $path } is damaged, for its contents do not have its checksum: use a copy that is whole.
        [knot] { $path } names a knot that cannot be tied: leads and bights go from 2 to 999, passes from 1 to 9; use a copy that is whole.
        [place] { $path } stands at a place that its knot does not have: use a copy that is whole.
       *[shape] { $path } is not what it should be{ $place }: use a copy that is whole.
    }

shelf-error-gone = { $path } is gone: the copy before it is used when there is one.
shelf-error-stranger = { $path } is on the shelf and does not have the name of a tie: move it elsewhere and bring it in with “marlinspeak shelf import”.
shelf-error-unwritable = The tie { $id } cannot be written so that it reads back the same: shorten its name and note, then try again.
shelf-error-no-such-tie = There is no tie { $id } on the shelf: “marlinspeak shelf list” shows those there are.
shelf-error-not-an-id = “{ $given }” is not the name of a tie on the shelf: such a name has 6 to 32 letters a to z and digits; “marlinspeak shelf list” shows those there are.
shelf-error-exists = { $path } is there already and is not overwritten: choose another name, or add --replace in the terminal.
shelf-error-no-home = The system names no folder for your data: set XDG_DATA_HOME to one, then try again.
