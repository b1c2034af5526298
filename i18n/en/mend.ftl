# Where the tyer is, and what to do when something is wrong. Arguments as in steps.ftl.

## Where am I

# Said when a tie is taken up again, before where it stands and its step.
where-taking-up-say = Taking up { $leads } lead, { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }.

# Example: Lead pass: 7 of 12 legs are laid. The cord is at top pin 6, and goes to bottom pin 3
# next. 17 legs are left in all. About 11 minutes to go, at your pace.
# $phase: laying, lift, fair, finish or done. $at, $next: pins, on the rims $at-rim and $next-rim (top,
# bottom; none when there is no next). $laid: legs laid in this pass of the strand. $left: legs
# left in the whole tie. $crossed: crossings made on a leg that is laid in part. $round, $pass, $strand
# and $leg: where fairing is. $minutes: time left; $timed: yes when it is known.
where-say = { $phase ->
        [lift] Everything is laid; { -to-be-lifted }
        [fair] { -laid-and-lifted } the knot is being faired, time { $round }{ $whole ->
            [yes] .
           *[no] { $passes ->
                [one] { "" }
               *[other] , pass { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , strand { $strand }
            }, leg { $leg } of { $legs }.
        }
        [done] The knot is done, its ends too. There is nothing more to do.
        [finish] The knot is laid and faired; its ends remain to be finished.
       *[laying] { $pass ->
            [1] Lead pass
            [2] Second pass
            [3] Third pass
            [4] Fourth pass
            [5] Fifth pass
            [6] Sixth pass
            [7] Seventh pass
            [8] Eighth pass
           *[9] Ninth pass
        }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }: { $laid } of { $legs } legs are laid. { $crossed ->
            [0] The cord is at { $at-rim ->
                [top] { -top-pin } { $at }
               *[bottom] { -bottom-pin } { $at }
            }{ $next-rim ->
                [top] , and goes to { -top-pin } { $next } next.
                [bottom] , and goes to { -bottom-pin } { $next } next.
               *[none] .
            }
           *[other] The cord is on its way from { $at-rim ->
                [top] { -top-pin } { $at } { -down } to { -bottom-pin } { $next }
               *[bottom] { -bottom-pin } { $at } { -up } to { -top-pin } { $next }
            }, and has crossed { $crossed ->
                [one] once.
                [2] twice.
               *[other] { $crossed } times.
            }
        } { $left ->
            [0] No leg is still to lay.
            [one] 1 leg is still to lay.
           *[other] { $left } legs are still to lay.
        } { $timed ->
            [yes] { $minutes ->
                [0] Less than a minute to go, at your pace.
                [one] About a minute to go, at your pace.
               *[other] About { $minutes } minutes to go, at your pace.
            }
           *[no] { "" }
        }
    }

## Something is wrong

# $can-take-back: yes when there is a leg to take back. $leg: which.
wrong-say = Something is wrong. { $can-take-back ->
        [yes] Next takes back leg { $leg }{ $strands ->
            [one] { "" }
           *[other] { " " }of strand { $strand }
        }{ $pass ->
            [1] { "" }
           *[other] { " " }in pass { $pass }
        }. Back helps you find your place. H, when the fault lies further back. Wrong again leaves everything as it is.
       *[no] Back helps you find your place. Wrong again leaves everything as it is.
    }
wrong-show = Something is wrong
wrong-show-note = { $can-take-back ->
        [yes] Next: take back leg { $leg }
       *[no] There is nothing to take back
    }
wrong-show-note-find = Back: find my place
wrong-show-note-elsewhere = H: the fault is somewhere else
wrong-show-note-leave = W: leave it as it is

# Taking a leg out again; the sentences of a step follow one another: this one, one for each
# crossing in the order they are undone, and the last.
# Example: Taking back leg 7. First bring the cord back to top pin 6. Lift it off top pin 6.
# $whole: no when the leg was laid only in part and is on no pin yet. $tail: number of the bottom
# pin whose tail comes off first, for a cord that was just begun, else 0. $first-rim: top or bottom
# when the cord in hand is to be brought back to pin $first first, else none.
take-back-say = { $pass ->
        [1] Taking back leg { $leg }
       *[other] Taking back pass { $pass }, leg { $leg }
    }{ $strands ->
        [one] { "" }
       *[other] { " " }of strand { $strand }
    }{ $named ->
        [yes] , “{ $cord }”
       *[no] { "" }
    }. { $tail ->
        [0] { "" }
       *[other] First take the tail off { -bottom-pin } { $tail }.
    } { $first-rim ->
        [top] First bring the cord back to { -top-pin } { $first }.
        [bottom] First bring the cord back to { -bottom-pin } { $first }.
       *[none] { "" }
    } { $whole ->
        [yes] { $heading ->
            [falling] { -Lift-off } the cord off { -bottom-pin } { $to }.
           *[rising] { -Lift-off } the cord off { -top-pin } { $to }.
        }
       *[no] { "" }
    }

# Example: Come back out from under 1 cord, then back over 1 cord.
take-back-say-crossing = { $place ->
        [only] { $over ->
            [yes] Come back over
           *[no] Come back out from under
        }
        [first] { $over ->
            [yes] Come back over
           *[no] Come back out from under
        }
       *[next] { $over ->
            [yes] then back over
           *[no] then back out from under
        }
    } { $cords ->
        [one] 1 cord
       *[other] { $cords } cords
    }{ $place ->
        [only] .
        [last] .
       *[next] ,
    }

take-back-say-clear = It crosses nothing.

# Example: Your hand is at bottom pin 4. Next takes back one more leg, back lays this one again.
take-back-say-end = Your hand is { $heading ->
        [falling] at { -top-pin } { $from }.
       *[rising] at { -bottom-pin } { $from }.
    } Next takes back one more leg, back lays this one again.

take-back-show = { $heading ->
        [falling] { -Back-up } to { -top } { $from }
       *[rising] { -Back-down } to { -bottom } { $from }
    }
take-back-show-phase = { $pass ->
        [1] Taking back leg { $leg }
       *[other] Taking back pass { $pass }, leg { $leg }
    }
take-back-show-crossing = { $over ->
        [yes] back OVER { $cords }
       *[no] out from under { $cords }
    }
take-back-show-note = { $whole ->
        [yes] { $heading ->
            [falling] First off { -bottom } { $to }
           *[rising] First off { -top } { $to }
        }
       *[no] It is on no { -pin } yet
    }
take-back-show-note-keys = Next: take back one more. Back: lay this leg again.
take-back-nothing-say = There is nothing more to take back: { -tube-is-empty }

## Finding a lost place: questions answered with next for yes and back for no

# Example: Is the cord at top pin 6? Next for yes, back for no.
question-say = { $question ->
        [pin] { $rim ->
            [top] Is the cord in your hand at { -top-pin } { $pin }?
           *[bottom] Is the cord in your hand at { -bottom-pin } { $pin }?
        }
        [cords] { $rim ->
            [top] Count the cords round { -top-pin } { $pin }, the one in your hand too.
           *[bottom] Count the cords that have come to { -bottom-pin } { $pin }, the one in your hand too.
        } { $count ->
            [one] Is there just 1?
           *[other] Are there { $count }?
        }
        [tail] Is there only the tail of this cord at { -bottom-pin } { $pin }{ $count ->
            [0] { "" }
            [one] , beside 1 other cord
           *[other] , beside { $count } other cords
        }, and has it been round no { -pin } yet?
        [home] Look at another strand: has its cord come back to its start, { -bottom-pin } { $pin }, { $count ->
            [one] once?
            [2] twice?
           *[other] { $count } times?
        }
       *[crossed] { $rim ->
            [top] Since { -top-pin } { $pin },
           *[bottom] Since { -bottom-pin } { $pin },
        } { $count ->
            [0] has the cord crossed nothing yet?
            [one] has the cord crossed anything yet?
           *[other] has the cord crossed { $count } times or more?
        }
    } Next for yes, back for no.

question-show = { $question ->
        [pin] { $rim ->
            [top] Is it at { -top } { $pin }?
           *[bottom] Is it at { -bottom } { $pin }?
        }
        [cords] { $count ->
            [one] Just 1 cord there?
           *[other] { $count } cords there?
        }
        [tail] { $count ->
            [0] Only its tail there?
            [one] Only its tail there, beside 1 cord?
           *[other] Only its tail there, beside { $count } cords?
        }
        [home] { $count ->
            [one] Another strand: back once?
            [2] Another strand: back twice?
           *[other] Another strand: back { $count } times?
        }
       *[crossed] { $count ->
            [0] Crossed nothing yet?
            [one] Crossed anything?
           *[other] Crossed { $count } times or more?
        }
    }
question-show-note = { $question ->
        [pin] The { -pin } the cord went round last
        [cords] { $rim ->
            [top] Round { -top } { $pin }, the one in your hand too
           *[bottom] Come to { -bottom } { $pin }, the one in your hand too
        }
        [tail] At { -bottom } { $pin }
        [home] At { -bottom } { $pin }
       *[crossed] { $rim ->
            [top] Since { -top } { $pin }
           *[bottom] Since { -bottom } { $pin }
        }
    }
question-show-phase = Finding your place
question-show-note-keys = Next: yes. Back: no.

# Said before the step when the place is found.
found-say = Then this is the place.

# Said instead when the pins are being taken out or are out.
wrong-after = The knot is coming off its { -pins }, so no leg can be taken back. Back goes one step back; H says where you are.
