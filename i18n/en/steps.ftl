# The steps of a tie. A message ending in -say is spoken, one ending in -show stands on the
# screen. What the words must do: where the cord goes comes first (from which pin, which way,
# to which pin), then the crossings in the order they are met, then the landing; "pin" stands
# before the number of a pin and a count stands with its cords, so that neither can be
# misheard for "to" or "for"; "right" is only ever a side.
#
# Arguments that come back everywhere:
#   $pass      1 is the lead pass
#   $passes    passes the whole tie has
#   $strand    the strand, $strands how many there are
#   $leg       the leg's number in this pass of the strand, $legs how many there are
#   $part      part of a long leg, $parts how many there are
#   $heading   rising (bottom rim to top rim) or falling
#   $from, $to numbers of pins; a rising leg goes from a bottom pin to a top pin
#   $hand      right or left: the way round the tube that the cord travels
#   $side      right or left of the cord that is followed, or none in the lead pass

## Beginning a strand

# Example: Leave a tail of about 15 centimetres at bottom pin 1. Hold it down with tape. The
# cord will travel to the right round the tube, and so the pins are numbered.
# $uneven: yes when the weave leaves a fault at the rims.
begin-say = { $strands ->
        [one] Leave
       *[other] Strand { $strand } of { $strands }. Leave
    } a tail of about 15 centimetres at bottom pin { $pin }. Hold it down with tape. The cord will travel to the { $hand ->
        [left] left
       *[right] right
    } round the tube, and the pins are numbered that way. { $uneven ->
        [yes] In this weave the overs and unders do not run evenly round the rims. That is how the weave is, not a mistake of yours.
       *[no] { "" }
    }

# Example: Tail at bottom 1
begin-show = Tail at bottom { $pin }

# Example: Hold it with tape. Work to the right.
begin-show-note = { $hand ->
        [left] Hold it with tape. Work to the left.
       *[right] Hold it with tape. Work to the right.
    } { $uneven ->
        [yes] This weave runs unevenly at the rims.
       *[no] { "" }
    }

## Beginning to follow

# Example: Second pass. Begin at bottom pin 1, beside the first cord, and keep to the right of
# it all the way, never crossing it. Go over and under just as it does. Round the top pins turn
# inside its bights, round the bottom pins turn outside them.
# $inside: the rim where the follower turns inside, top or bottom.
follow-say = { $pass ->
        [2] Second pass.
        [3] Third pass.
        [4] Fourth pass.
        [5] Fifth pass.
        [6] Sixth pass.
        [7] Seventh pass.
        [8] Eighth pass.
       *[9] Ninth pass.
    } { $strands ->
        [one] Begin
       *[other] Strand { $strand } of { $strands }. Begin
    } at bottom pin { $pin }, beside the cord already there, and keep to the { $side ->
        [left] left
       *[right] right
    } of it all the way, never crossing it. Go over and under just as it does. { $inside ->
        [bottom] Round the bottom pins turn inside its bights, round the top pins turn outside them.
       *[top] Round the top pins turn inside its bights, round the bottom pins turn outside them.
    }

# Example: Follow on the right
follow-show = { $side ->
        [left] Follow on the left
       *[right] Follow on the right
    }

# Example: From bottom 1. Inside at the top, outside at the bottom.
follow-show-note = { $inside ->
        [bottom] From bottom { $pin }. Inside at the bottom, outside at the top.
       *[top] From bottom { $pin }. Inside at the top, outside at the bottom.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Example: Leg 7 of 12. From bottom pin 4 go up and to the right, to top pin 6.
# Example: Second pass, strand 2, leg 4 of 12. From top pin 2 go down and to the right, to
# bottom pin 5, keeping to the right of the cord already there.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg } of { $legs }
           *[other] Strand { $strand }, leg { $leg } of { $legs }
        }
       *[other] { $pass ->
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
        }, leg { $leg } of { $legs }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] From top pin { $from } go down
       *[rising] From bottom pin { $from } go up
    } and to the { $hand ->
        [left] left
       *[right] right
    },{ $turns ->
        [0] { "" }
        [one] { " " }once right round the tube and on,
       *[other] { " " }{ $turns } times right round the tube and on,
    } to { $heading ->
        [falling] bottom pin { $to }
       *[rising] top pin { $to }
    }{ $side ->
        [right] , keeping to the right of the cord already there.
        [left] , keeping to the left of the cord already there.
       *[none] .
    }

# The beginning of a later part of a long leg: which leg, and where the cord is now.
# Example: Leg 11 of 42, part 2 of 5, from bottom pin 2 up to top pin 4. The cord is about a
# quarter of the way up, just past bottom pin 3. It goes on up and to the right.
# $share: little, quarter, third, half, two-thirds, three-quarters, most. $past: number of the
# pin it has just passed, $rim: bottom or top. $made: whole turns made on this leg so far.
lay-say-way-on = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg } of { $legs }
           *[other] Strand { $strand }, leg { $leg } of { $legs }
        }
       *[other] { $pass ->
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
        }, leg { $leg } of { $legs }
    }, part { $part } of { $parts }, from { $heading ->
        [falling] top pin { $from } down to bottom pin { $to }
       *[rising] bottom pin { $from } up to top pin { $to }
    }. The cord is { $share ->
        [little] a little of the way
        [quarter] about a quarter of the way
        [third] about a third of the way
        [half] about half way
        [two-thirds] about two thirds of the way
        [three-quarters] about three quarters of the way
       *[most] most of the way
    } { $heading ->
        [falling] down
       *[rising] up
    }, just past { $rim ->
        [top] top pin { $past }
       *[bottom] bottom pin { $past }
    }{ $made ->
        [0] .
        [one] , and has been once round the tube.
       *[other] , and has been { $made } times round the tube.
    } It goes on { $heading ->
        [falling] down
       *[rising] up
    } and to the { $hand ->
        [left] left
       *[right] right
    }{ $side ->
        [right] , to the right of the cord already there.
        [left] , to the left of the cord already there.
       *[none] .
    }

# One crossing; those of a step are said one after the other.
# Example: On the way: over 1 cord, then under 2 cords.
# $place: only, first, next or last of the step. $over: yes or no. $cords: cords lying there.
lay-say-crossing = { $place ->
        [only] On the way: { $over ->
            [yes] over
           *[no] under
        } { $cords ->
            [one] 1 cord
           *[other] { $cords } cords
        }.
        [first] On the way: { $over ->
            [yes] over
           *[no] under
        } { $cords ->
            [one] 1 cord
           *[other] { $cords } cords
        },
        [last] then { $over ->
            [yes] over
           *[no] under
        } { $cords ->
            [one] 1 cord
           *[other] { $cords } cords
        }.
       *[next] then { $over ->
            [yes] over
           *[no] under
        } { $cords ->
            [one] 1 cord
           *[other] { $cords } cords
        },
    }

# A leg that meets no cord.
lay-say-clear = It crosses nothing.

# How a lay step ends. $landing: on-the-way, round, inside, outside or home.
# Example: Round top pin 6.
# Example: At bottom pin 5 turn outside the bight already there.
lay-say-landing = { $landing ->
        [on-the-way] Hold it there.
        [inside] { $heading ->
            [falling] At bottom pin { $to } turn inside the bight already there.
           *[rising] At top pin { $to } turn inside the bight already there.
        }
        [outside] { $heading ->
            [falling] At bottom pin { $to } turn outside the bight already there.
           *[rising] At top pin { $to } turn outside the bight already there.
        }
        [home] { $heading ->
            [falling] At bottom pin { $to } it is back where it began.
           *[rising] At top pin { $to } it is back where it began.
        }
       *[round] { $heading ->
            [falling] Round bottom pin { $to }.
           *[rising] Round top pin { $to }.
        }
    }

# Example: Bottom 4 up to top 6
lay-show = { $heading ->
        [falling] Top { $from } down to bottom { $to }
       *[rising] Bottom { $from } up to top { $to }
    }

# One crossing as a word that differs in shape for over and under.
# Example: OVER 1
# Example: under 2
lay-show-crossing = { $over ->
        [yes] OVER { $cords }
       *[no] under { $cords }
    }

lay-show-clear = crosses nothing

# What else the screen says of a lay step.
# Example: Second part: about half way up, just past bottom 3.
# $part, $share, $rim, $past, $made as for lay-say-way-on.
lay-show-note-on = { $share ->
        [little] A little of the way
        [quarter] About a quarter of the way
        [third] About a third of the way
        [half] About half way
        [two-thirds] About two thirds of the way
        [three-quarters] About three quarters of the way
       *[most] Most of the way
    } { $heading ->
        [falling] down
       *[rising] up
    }, just past { $rim ->
        [top] top { $past }
       *[bottom] bottom { $past }
    }{ $made ->
        [0] { "" }
        [one] , once round
       *[other] , { $made } times round
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $turns ->
            [0] Hold it there
            [one] Once right round the tube in all. Hold it there
           *[other] { $turns } times right round the tube in all. Hold it there
        }
        [inside] { $heading ->
            [falling] Inside the bight at bottom { $to }
           *[rising] Inside the bight at top { $to }
        }
        [outside] { $heading ->
            [falling] Outside the bight at bottom { $to }
           *[rising] Outside the bight at top { $to }
        }
        [home] { $heading ->
            [falling] Back where it began, bottom { $to }
           *[rising] Back where it began, top { $to }
        }
       *[round] { $heading ->
            [falling] Round bottom { $to }
           *[rising] Round top { $to }
        }
    }

## Looking at the work after a pass

# Example: The lead pass is down. Good place to look. Every pin holds 1 cord, and between two
# neighbouring pins, from rim to rim, you can count 4 crossings. Next if it looks like that.
# $cords: cords round each pin. $rows: crossings to be counted between two pins. $whole: yes
# when every strand has come as far.
check-say = { $strands ->
        [one] { $pass ->
            [1] The lead pass is down.
           *[other] Pass { $pass } is down.
        }
       *[other] { $pass ->
            [1] The lead pass of strand { $strand } is down.
           *[other] Pass { $pass } of strand { $strand } is down.
        }
    } Good place to look. { $whole ->
        [yes] Every pin
       *[no] Every pin of this strand
    } holds { $cords ->
        [one] 1 cord
       *[other] { $cords } cords side by side
    }{ $whole ->
        [yes] , and between two neighbouring pins, from rim to rim, you can count { $rows ->
            [one] 1 crossing
           *[other] { $rows } crossings
        }.
       *[no] .
    } Next if it looks like that.

# Example: Look: 1 cord on every pin
check-show = { $whole ->
        [yes] { $cords ->
            [one] Look: 1 cord on every pin
           *[other] Look: { $cords } cords on every pin
        }
       *[no] { $cords ->
            [one] Look: 1 cord on its pins
           *[other] Look: { $cords } cords on its pins
        }
    }

# Example: 4 crossings between two pins, rim to rim
check-show-note = { $whole ->
        [yes] { $rows ->
            [one] 1 crossing between two pins, rim to rim
           *[other] { $rows } crossings between two pins, rim to rim
        }
       *[no] Strand { $strand } of { $strands }
    }

## The end

# Example: The knot is laid: 5 lead, 6 bight, 2 passes. Both ends stand at bottom pin 1. It is a
# good piece of work; look it over once more before you lift it off. It is for decoration:
# never let it hold a person or a load.
finish-say = The knot is laid: { $leads } lead, { $bights } bight, { $passes ->
        [one] single
       *[other] { $passes } passes
    }. { $strands ->
        [one] Both ends stand at bottom pin 1.
       *[other] The ends of each strand stand at the pin where it began.
    } You have made a good thing; look it over once more before you pull the pins. It covers and decorates. Never let it hold a person or a load.

# Example: The knot is laid
finish-show = The knot is laid

finish-show-note = Look it over before you pull the pins. For decoration: never to hold a person or a load.

## Where am I

# Said when a tie is taken up again, before its step.
# Example: Taking up 5 lead, 6 bight. Lead pass: 7 of 12 legs are laid.
# $laid: legs laid in this strand's pass.
where-say = Taking up { $leads } lead, { $bights } bight. { $phase ->
        [finish] Everything is laid.
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
        }: { $laid } of { $legs } legs are laid.
    }

# The line above a step.
# Example: Lead pass, leg 7 of 12
# $phase: begin, lay, check or finish.
phase-show = { $phase ->
        [finish] Done
       *[other] { $pass ->
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
           *[other] , strand { $strand } of { $strands }
        }{ $phase ->
            [begin] , begin
            [check] , check
           *[lay] , leg { $leg } of { $legs }{ $parts ->
                [one] { "" }
               *[other] , part { $part } of { $parts }
            }
        }
    }
