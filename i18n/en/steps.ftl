# The steps of laying a tie. A message ending in -say is spoken, one ending in -show stands on the
# screen. What the words must do: where the cord goes comes first (from which pin, which way,
# to which pin), then the crossings in the order they are met, then the landing; "pin" stands
# before the number of a pin and a count stands with its cords, so that neither can be
# misheard for "to" or "for"; "right" is only ever a side.
#
# A spoken message comes in three depths: plain without an ending, -brief for who knows the work,
# -teach for who learns it. Every one stands alone, for a tyer who is back after a week.
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
#   $lane      below or above: where a follower lies beside the cord it follows, towards the bottom or
#              the top rim, on rising and falling legs alike; none in the lead pass. ("Right of the
#              cord" would turn about with every leg.)
#   $cord      what the tyer calls the cord, when $named is yes
#   $tail      a length, already with its unit (see lengths.ftl): "15 centimetres" for the ear,
#              "15 cm" for the eye

## Beginning a strand

# Example: Leave a tail of 15 centimetres at bottom pin 1. Hold it down with tape. The cord will
# travel to the right round the tube, and the pins are numbered that way.
# $uneven: yes when the weave leaves a fault at the rims. $staggered: yes when the top pins stand
# half way between the bottom ones.
begin-say = { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }.
    } { $named ->
        [yes] Take the cord “{ $cord }”.
       *[no] { "" }
    } Leave a tail of { $tail } at bottom pin { $pin }. Hold it down with tape. The cord will travel to the { $hand ->
        [left] left
       *[right] right
    } round the tube, and the pins are numbered that way. { $uneven ->
        [yes] In this weave the overs and unders do not run evenly round the rims. That is how the weave is, not a mistake of yours.
       *[no] { "" }
    }

begin-say-brief = { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }.
    } { $named ->
        [yes] Cord “{ $cord }”.
       *[no] { "" }
    } Tail of { $tail } at bottom pin { $pin }. Work to the { $hand ->
        [left] left
       *[right] right
    }. { $uneven ->
        [yes] The weave runs unevenly at the rims.
       *[no] { "" }
    }

begin-say-teach = { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }. { $strand ->
            [1] A strand is one closed path of cord; this knot has several, because its leads and bights share a factor.
           *[other] { "" }
        }
    } { $named ->
        [yes] Take the cord “{ $cord }”.
       *[no] { "" }
    } Leave a tail of { $tail } at bottom pin { $pin }, and hold it down with tape. The tail is the end that stays behind; the end in your hand is the working end. The cord will travel to the { $hand ->
        [left] left
       *[right] right
    } round the tube, pin to pin, and the pins are numbered that way. { $strand ->
        [1] { $staggered ->
            [yes] Each top pin stands half way between two bottom pins. That is staggered: with an odd number of leads every cord lands half a step on, and on straight pins the knot would come out crooked.
           *[no] Each top pin stands straight above a bottom pin, as the cords of an even number of leads land.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] In this weave the overs and unders do not run evenly round the rims. That is how the weave is, not a mistake of yours.
       *[no] { "" }
    }

# Example: Tail of 15 cm at bottom 1
begin-show = Tail of { $tail } at bottom { $pin }

# Example: Hold it with tape. Work to the right.
begin-show-note = { $named ->
        [yes] Cord “{ $cord }”.
       *[no] { "" }
    } { $hand ->
        [left] Hold it with tape. Work to the left; the pins are numbered to the left.
       *[right] Hold it with tape. Work to the right.
    } { $uneven ->
        [yes] This weave runs unevenly at the rims.
       *[no] { "" }
    }

## Beginning to follow

# Example: Second pass. Begin at bottom pin 1, beside the cord already there, and keep below
# it all the way, never crossing it. Go over and under just as it does. Round the top pins turn
# inside its bights, round the bottom pins turn outside them.
# $inside: the rim where the follower turns inside, top or bottom. $added: yes when another cord
# begins here, no when the cord in hand goes on.
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
        [one] { "" }
       *[other] Strand { $strand } of { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Take the cord “{ $cord }” and leave a tail of { $tail }. Begin
           *[no] Take the added cord and leave a tail of { $tail }. Begin
        }
       *[no] { $strands ->
            [one] The same cord goes on. Begin
           *[other] { $named ->
                [yes] Take up the cord “{ $cord }” again. Begin
               *[no] Take up its cord again. Begin
            }
        }
    } at bottom pin { $pin }, beside the cord already there, and keep { $lane ->
        [above] above
       *[below] below
    } it all the way, never crossing it. Go over and under just as it does. { $inside ->
        [bottom] Round the bottom pins turn inside its bights, round the top pins turn outside them.
       *[top] Round the top pins turn inside its bights, round the bottom pins turn outside them.
    }

follow-say-brief = { $pass ->
        [2] Second pass.
        [3] Third pass.
        [4] Fourth pass.
        [5] Fifth pass.
        [6] Sixth pass.
        [7] Seventh pass.
        [8] Eighth pass.
       *[9] Ninth pass.
    } { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }.
    } { $added ->
        [yes] { $named ->
            [yes] Cord “{ $cord }”, tail of { $tail }.
           *[no] Added cord, tail of { $tail }.
        }
       *[no] { "" }
    } From bottom pin { $pin } follow { $lane ->
        [above] above.
       *[below] below.
    } { $inside ->
        [bottom] Inside at the bottom, outside at the top.
       *[top] Inside at the top, outside at the bottom.
    }

follow-say-teach = { $pass ->
        [2] Second pass.
        [3] Third pass.
        [4] Fourth pass.
        [5] Fifth pass.
        [6] Sixth pass.
        [7] Seventh pass.
        [8] Eighth pass.
       *[9] Ninth pass.
    } { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }.
    } { $pass ->
        [2] { $strand ->
            [1] A pass is one trip of the cord round the whole pattern; from here on the cord follows the one that lies there.
           *[other] { "" }
        }
       *[other] { "" }
    } { $added ->
        [yes] { $named ->
            [yes] Take the cord “{ $cord }”, and leave a tail of { $tail }. { $apart ->
                [yes] It begins at a pin of its own, so that the ends do not all come out in one place. Begin
               *[no] Begin
            }
           *[no] Take the added cord, and leave a tail of { $tail }. { $apart ->
                [yes] It begins at a pin of its own, so that the ends do not all come out in one place. Begin
               *[no] Begin
            }
        }
       *[no] { $strands ->
            [one] The same cord goes on: it has come home to its first pin and simply starts its trip again. Begin
           *[other] { $named ->
                [yes] Take up the cord “{ $cord }” again: it has come home to its first pin and simply starts its trip again. Begin
               *[no] Take up its cord again: it has come home to its first pin and simply starts its trip again. Begin
            }
        }
    } at bottom pin { $pin }, beside the cord already there, and keep { $lane ->
        [above] above it all the way, on the side of the top rim.
       *[below] below it all the way, on the side of the bottom rim.
    } It never crosses the cord it follows, and goes over and under just as that one does. { $pass ->
        [2] { $strand ->
            [1] A bight is the loop round a pin.
           *[other] { "" }
        }
       *[other] { "" }
    } { $inside ->
        [bottom] Round the bottom pins turn inside the bight already there, that is, between it and the middle of the knot; round the top pins turn outside it, beyond it.
       *[top] Round the top pins turn inside the bight already there, that is, between it and the middle of the knot; round the bottom pins turn outside it, beyond it.
    }

# Example: Follow below the cord
follow-show = { $lane ->
        [above] Follow above the cord
       *[below] Follow below the cord
    }

# Example: From bottom 1. Inside at the top, outside at the bottom.
follow-show-note = { $added ->
        [yes] { $named ->
            [yes] Cord “{ $cord }”, with a tail.
           *[no] Added cord, with a tail.
        }
       *[no] { "" }
    } { $inside ->
        [bottom] From bottom { $pin }. Inside at the bottom, outside at the top.
       *[top] From bottom { $pin }. Inside at the top, outside at the bottom.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Example: Leg 7 of 12. From bottom pin 4 go up and to the right, to top pin 6.
# Example: Second pass, strand 2, leg 4 of 12. From top pin 2 go down and to the right, to
# bottom pin 5, keeping below the cord already there.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg } of { $legs }
           *[other] Strand { $strand }{ $named ->
                [yes] , “{ $cord }”
               *[no] { "" }
            }, leg { $leg } of { $legs }
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
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
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
        [one] { " " }once all round the tube and on,
        [2] { " " }twice all round the tube and on,
       *[other] { " " }{ $turns } times all round the tube and on,
    } to { $heading ->
        [falling] bottom pin { $to }
       *[rising] top pin { $to }
    }{ $lane ->
        [below] , keeping below the cord already there.
        [above] , keeping above the cord already there.
       *[none] .
    }

# The same, brief.
# Example: Bottom pin 4, up to top pin 6.
# Example: Strand 2. Top pin 2, down to bottom pin 5.
lay-say-way-brief = { $pass ->
        [1] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, { $lane ->
            [above] above.
           *[below] below.
        }
    } { $heading ->
        [falling] Top pin { $from }, down to bottom pin { $to }
       *[rising] Bottom pin { $from }, up to top pin { $to }
    }{ $turns ->
        [0] { "" }
        [one] , once round
        [2] , twice round
       *[other] , { $turns } times round
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    }

# Example: Strand 2, leg 4 of 12. The cord stands at bottom pin 4. Take it up and to the right,
# towards top pin 6.
lay-say-way-teach = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg } of { $legs }
           *[other] Strand { $strand }{ $named ->
                [yes] , “{ $cord }”
               *[no] { "" }
            }, leg { $leg } of { $legs }
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
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg } of { $legs }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $first ->
        [yes] A leg is the cord from a pin on one rim to a pin on the other.
       *[no] { "" }
    } The cord stands at { $heading ->
        [falling] top pin { $from }. Take it down
       *[rising] bottom pin { $from }. Take it up
    } and to the { $hand ->
        [left] left
       *[right] right
    },{ $turns ->
        [0] { "" }
        [one] { " " }once all round the tube and on,
        [2] { " " }twice all round the tube and on,
       *[other] { " " }{ $turns } times all round the tube and on,
    } towards { $heading ->
        [falling] bottom pin { $to }
       *[rising] top pin { $to }
    }{ $lane ->
        [below] , close below the cord already there.
        [above] , close above the cord already there.
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
           *[other] Strand { $strand }{ $named ->
                [yes] , “{ $cord }”
               *[no] { "" }
            }, leg { $leg } of { $legs }
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
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg } of { $legs }
    }, part { $part } of { $parts }, from { $heading ->
        [falling] top pin { $from } down to bottom pin { $to }
       *[rising] bottom pin { $from } up to top pin { $to }
    }. The cord is { $share ->
        [little] a little way
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
        [2] , and has been twice round the tube.
       *[other] , and has been { $made } times round the tube.
    } It goes on { $heading ->
        [falling] down
       *[rising] up
    } and to the { $hand ->
        [left] left
       *[right] right
    }{ $lane ->
        [below] , keeping below the cord already there.
        [above] , keeping above the cord already there.
       *[none] .
    }

# Example: Bottom pin 2, up to top pin 4, part 2 of 5, past bottom pin 3.
lay-say-way-on-brief = { $pass ->
        [1] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, { $lane ->
            [above] above.
           *[below] below.
        }
    } { $heading ->
        [falling] Top pin { $from }, down to bottom pin { $to }
       *[rising] Bottom pin { $from }, up to top pin { $to }
    }, part { $part } of { $parts }, past { $rim ->
        [top] top pin { $past }
       *[bottom] bottom pin { $past }
    }.

# The same, for who learns.
lay-say-way-on-teach = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg } of { $legs }
           *[other] Strand { $strand }{ $named ->
                [yes] , “{ $cord }”
               *[no] { "" }
            }, leg { $leg } of { $legs }
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
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg } of { $legs }
    }, part { $part } of { $parts }, from { $heading ->
        [falling] top pin { $from } down to bottom pin { $to }
       *[rising] bottom pin { $from } up to top pin { $to }
    }. A long leg is laid in parts, each no longer than you can hold in your head. The cord is { $share ->
        [little] a little way
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
        [2] , and has been twice round the tube.
       *[other] , and has been { $made } times round the tube.
    } It goes on { $heading ->
        [falling] down
       *[rising] up
    } and to the { $hand ->
        [left] left
       *[right] right
    }{ $lane ->
        [below] , keeping below the cord already there.
        [above] , keeping above the cord already there.
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

# Example: Over 1, under 2, over 1.
lay-say-crossing-brief = { $place ->
        [only] { $over ->
            [yes] Over { $cords }.
           *[no] Under { $cords }.
        }
        [first] { $over ->
            [yes] Over { $cords },
           *[no] Under { $cords },
        }
        [last] { $over ->
            [yes] over { $cords }.
           *[no] under { $cords }.
        }
       *[next] { $over ->
            [yes] over { $cords },
           *[no] under { $cords },
        }
    }

# A crossing with the cord that is met, by its pins.
# Example: First you meet the cord that comes down from top pin 2 to bottom pin 5: go over it.
# Example: Next the 2 cords that go up from bottom pin 3 to top pin 1: tuck under both.
# $of-from, $of-to: the pins of the leg that is met; it goes the other way.
lay-say-crossing-teach = { $place ->
        [only] You meet
        [first] First you meet
        [last] And last
       *[next] Next
    } { $cords ->
        [one] the cord that { $heading ->
            [falling] goes up from bottom pin { $of-from } to top pin { $of-to }
           *[rising] comes down from top pin { $of-from } to bottom pin { $of-to }
        }: { $over ->
            [yes] go over it.
           *[no] tuck under it.
        }
       *[other] the { $cords } cords that { $heading ->
            [falling] go up from bottom pin { $of-from } to top pin { $of-to }
           *[rising] come down from top pin { $of-from } to bottom pin { $of-to }
        }: { $over ->
            [yes] go over { $cords ->
                [2] both.
               *[other] all { $cords }.
            }
           *[no] tuck under { $cords ->
                [2] both.
               *[other] all { $cords }.
            }
        }
    }

# A leg that meets no cord.
lay-say-clear = The cord crosses nothing.
lay-say-clear-brief = Clear.
lay-say-clear-teach = Nothing lies in its way yet, so there is nothing to cross.

# How a lay step ends. $landing: on-the-way, round, inside or outside; at the pin where the pass
# began home-and-on, home-to-wait (other strands come first) or home-to-end (the cord ends).
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
        [home-and-on] At bottom pin { $to } the cord is back where it began; it goes on round the pin.
        [home-to-wait] At bottom pin { $to } the cord is back where it began. Tape it down there, to wait for its next pass.
        [home-to-end] At bottom pin { $to } the cord is back where it began. Leave its end hanging there.
       *[round] { $heading ->
            [falling] Round bottom pin { $to }.
           *[rising] Round top pin { $to }.
        }
    }

# Example: Inside.
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Inside.
        [outside] Outside.
        [home-and-on] Home, and on.
        [home-to-wait] Home, to wait.
        [home-to-end] Home, to end.
       *[round] { "" }
    }

lay-say-landing-teach = { $landing ->
        [on-the-way] Hold it there with a finger.
        [inside] { $heading ->
            [falling] At bottom pin { $to } turn inside the bight already there, between it and the middle of the knot, and hold it snug.
           *[rising] At top pin { $to } turn inside the bight already there, between it and the middle of the knot, and hold it snug.
        }
        [outside] { $heading ->
            [falling] At bottom pin { $to } turn outside the bight already there, beyond it, and hold it snug.
           *[rising] At top pin { $to } turn outside the bight already there, beyond it, and hold it snug.
        }
        [home-and-on] At bottom pin { $to } the cord is back where it began; it goes on round the pin.
        [home-to-wait] At bottom pin { $to } the cord is back where it began. Tape it down there, to wait for its next pass.
        [home-to-end] At bottom pin { $to } the cord is back where it began. Leave its end hanging there.
       *[round] { $heading ->
            [falling] Lead it round the outside of bottom pin { $to }, and hold it snug.
           *[rising] Lead it round the outside of top pin { $to }, and hold it snug.
        }
    }

# The arrow is the way the cord goes. Example: Bottom 4 up to top 6 ↗
lay-show = { $heading ->
        [falling] Top { $from } down to bottom { $to } { $hand ->
            [left] ↙
           *[right] ↘
        }
       *[rising] Bottom { $from } up to top { $to } { $hand ->
            [left] ↖
           *[right] ↗
        }
    }

# The same in words alone, for a line that is read by a Braille display or a screen reader.
# Example: Bottom 4 up and to the right, to top 6
lay-print = { $heading ->
        [falling] Top { $from } down and { $hand ->
            [left] to the left
           *[right] to the right
        }, to bottom { $to }
       *[rising] Bottom { $from } up and { $hand ->
            [left] to the left
           *[right] to the right
        }, to top { $to }
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
        [little] A little way
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
        [2] , twice round
       *[other] , { $made } times round
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $turns ->
            [0] Hold it there
            [one] Once round the tube in all. Hold it there
            [2] Twice round the tube in all. Hold it there
           *[other] { $turns } times round the tube in all. Hold it there
        }
        [inside] { $heading ->
            [falling] Inside the bight at bottom { $to }
           *[rising] Inside the bight at top { $to }
        }
        [outside] { $heading ->
            [falling] Outside the bight at bottom { $to }
           *[rising] Outside the bight at top { $to }
        }
        [home-and-on] Back where it began, and on round bottom { $to }
        [home-to-wait] Back where it began: tape it down at bottom { $to }
        [home-to-end] Back where it began: leave the end at bottom { $to }
       *[round] { $heading ->
            [falling] Round bottom { $to }
           *[rising] Round top { $to }
        }
    }

## The line above a step

# Example: Lead pass, leg 7 of 12
# $phase: begin, lay, check, lift, fair or finish. $item of $items: things to do in lift and
# finish; rounds in fair.
phase-show = { $phase ->
        [lift] Lift, { $item } of { $items }
        [fair] Fair, round { $item } of { $items }{ $passes ->
            [one] { "" }
           *[other] , pass { $pass }
        }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, leg { $leg } of { $legs }
        [finish] Finish, { $item } of { $items }
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
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }{ $phase ->
            [begin] , begin
            [check] , look
           *[lay] , leg { $leg } of { $legs }{ $parts ->
                [one] { "" }
               *[other] , part { $part } of { $parts }
            }
        }
    }
