# The steps of laying a tie. A message ending in -say is spoken, one ending in -show stands on the
# screen. What the words must do: where the cord goes comes first (from which pin, which way,
# to which pin), then the crossings in the order they are met, then the landing; "pin" stands
# before the number of a pin and a count stands with its cords, so that neither can be
# misheard for "to" or "for"; "right" is only ever a side.
#
# Weighed once more and kept:
#   "Then round top pin 6", without "go": it ends every leg, and stands before a pin, where the round
#   of a look stands before its number; going through the knot when fairing is a "time" and never a round
#   "It crosses nothing" of a leg that is taken back, where "yet" would be wrong
#   a brief leg of a later pass names no side: its pass began with it, and no leg changes it
#   "metres" and "millimetres" for every English; who measures in inches is told inches
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
#   $lane      bottom or top, or where bights are nested bottom-own or top-own: the rim towards which a follower lies of the first cord, on rising and
#              falling legs alike; none in the lead pass. ("Right of the cord" would turn about with
#              every leg, and "below" is heard as "under".)
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
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Leave a tail of { $tail } hanging at { -bottom-pin } { $pin }, and tape it down. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] { -Top-pin } 1 stands half a step to the left of { -bottom-pin } 1.
               *[right] { -Top-pin } 1 stands half a step to the right of { -bottom-pin } 1.
            }
           *[no] { -Top-pin } 1 stands { -straight-above } { -bottom-pin } 1.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

begin-say-brief = { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }.
    } { $named ->
        [yes] Cord “{ $cord }”.
       *[no] { "" }
    } { -upright } Tail of { $tail } at { -bottom-pin } { $pin }. { $hand ->
        [left] Work to the left;
       *[right] Work to the right;
    } { $staggered ->
        [yes] { -tops-staggered }
       *[no] { -tops-straight }
    } { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

begin-say-teach = { $strands ->
        [one] { "" }
       *[other] Strand { $strand } of { $strands }. { $strand ->
            [1] { $woven ->
                [yes] A strand is one closed path of cord; this knot has several, laced through one another.
               *[no] A strand is one closed path of cord; this knot has several, because its leads and bights share a factor.
            }
           *[other] { "" }
        }
    } { $named ->
        [yes] Take the cord “{ $cord }”.
       *[no] { "" }
    } { $strand ->
        [1] { -how-to-stand }
       *[other] { "" }
    } Leave a tail of { $tail } hanging at { -bottom-pin } { $pin }, and tape it down. The tail stays behind; the other end, in your hand, does the tying. { $strand ->
        [1] { $hand ->
            [left] { -work-left }
           *[right] { -work-right }
        } { $staggered ->
            [yes] { $hand ->
                [left] { -Top-pin } 1 stands half a step to the left of { -bottom-pin } 1.
               *[right] { -Top-pin } 1 stands half a step to the right of { -bottom-pin } 1.
            }
           *[no] { -Top-pin } 1 stands { -straight-above } { -bottom-pin } 1.
        }
       *[other] { "" }
    } { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

# Example: Tail of 15 cm at bottom 1
begin-show = Tail of { $tail } at { -bottom } { $pin }

# Example: Hold it with tape. Work to the right.
begin-show-note = { $named ->
        [yes] Cord “{ $cord }”.
       *[no] { "" }
    } { $hand ->
        [left] { -upright-shown } Work to the left.
       *[right] { -upright-shown } Work to the right.
    } { $uneven ->
        [yes] The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

## Beginning to follow

# Example: Second pass. Begin at bottom pin 1, beside the cord already there, and keep below
# it all the way, without changing sides. Go over and under just as it does. Round the top pins turn
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
    } at { -bottom-pin } { $pin }, beside { $own ->
        [yes] its own lead pass
       *[no] the first cord
    }, and stay on its { $lane ->
        [top] { -top-ring } side
       *[bottom] { -bottom-ring } side
    } all the way, { $pass ->
        [2] { "" }
       *[other] beyond all the cords there,
    } without changing sides. Go over where it goes over, under where it goes under. { $inside ->
        [bottom] At the { -bottom-pins } turn inside its loops, at the { -top-pins } outside them.
       *[top] At the { -top-pins } turn inside its loops, at the { -bottom-pins } outside them.
    } { -hold-again }

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
    } From { -bottom-pin } { $pin } follow on the { $lane ->
        [top] { -top-ring } side.
       *[bottom] { -bottom-ring } side.
    } { $inside ->
        [bottom] Inside { -at-the-bottom }, outside { -at-the-top }.
       *[top] Inside { -at-the-top }, outside { -at-the-bottom }.
    } { -hold-again-short }

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
            [1] A pass is one trip of the cord round the whole pattern; from here on the cord follows the first one.
           *[other] { "" }
        }
       *[other] { "" }
    } { $added ->
        [yes] { $named ->
            [yes] Take the cord “{ $cord }”, and leave a tail of { $tail }. { $apart ->
                [yes] It begins at a { -pin } of its own, so that the ends do not all come out in one place. Begin
               *[no] Begin
            }
           *[no] Take the added cord, and leave a tail of { $tail }. { $apart ->
                [yes] It begins at a { -pin } of its own, so that the ends do not all come out in one place. Begin
               *[no] Begin
            }
        }
       *[no] { $strands ->
            [one] The same cord goes on. Begin
           *[other] { $named ->
                [yes] Take up the cord “{ $cord }” again. Begin
               *[no] Take up its cord again. Begin
            }
        }
    } at { -bottom-pin } { $pin }, beside { $own ->
        [yes] its own lead pass
       *[no] the first cord
    }, and stay on its { $lane ->
        [top] { -top-ring } side
       *[bottom] { -bottom-ring } side
    } all the way, { $pass ->
        [2] { "" }
       *[other] beyond all the cords there,
    } without changing sides. Go over where it goes over, under where it goes under. { $inside ->
        [bottom] At the { -bottom-pins } turn inside its loop, { -towards-the-middle }; at the { -top-pins } outside it, { -away-from-the-middle }.
       *[top] At the { -top-pins } turn inside its loop, { -towards-the-middle }; at the { -bottom-pins } outside it, { -away-from-the-middle }.
    } { -hold-again }

# Example: Follow on the bottom side
follow-show = { $lane ->
        [top] Follow on the { -top-side } side
       *[bottom] Follow on the { -bottom-side } side
    }

# Example: From bottom 1. Inside at the top, outside at the bottom.
follow-show-note = { $added ->
        [yes] { $named ->
            [yes] Cord “{ $cord }”, with a tail.
           *[no] Added cord, with a tail.
        }
       *[no] { "" }
    } { $inside ->
        [bottom] From { -bottom } { $pin }. Inside { -at-the-bottom }, outside { -at-the-top }.
       *[top] From { -bottom } { $pin }. Inside { -at-the-top }, outside { -at-the-bottom }.
    }

## Laying a leg

# The beginning of a lay step: which leg, and where it goes.
# Example: Leg 7. From bottom pin 4, up and to the right, to top pin 6. ("Right to" would be heard for
# "all the way to".)
# Example: Pass 2, strand 2, leg 4. From top pin 2, down the bottom-ring side of the first cord
# to bottom pin 5.
# $turns: whole turns of the tube on the leg.
lay-say-way = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg }
           *[other] Strand { $strand }{ $named ->
                [yes] , “{ $cord }”
               *[no] { "" }
            }, leg { $leg }
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] From { -top-pin } { $from }, { -down }
       *[rising] From { -bottom-pin } { $from }, { -up }
    } { $lane ->
        [bottom] { -along-bottom } of the first cord
        [top] { -along-top } of the first cord
        [bottom-own] { -along-bottom } of its own lead pass
        [top-own] { -along-top } of its own lead pass
       *[none] and to the { $hand ->
            [left] left
           *[right] right
        }
    }{ $turns ->
        [0] { $lane ->
            [none] ,
           *[other] { "" }
        }
        [one] , with one full turn { -of-the-tube },
        [2] , with two full turns { -of-the-tube },
       *[other] , with { $turns } full turns { -of-the-tube },
    } to { $heading ->
        [falling] { -bottom-pin } { $to }.
       *[rising] { -top-pin } { $to }.
    }

# The same, brief.
# Example: Leg 7. Bottom pin 4, up to pin 6.
lay-say-way-brief = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg }
           *[other] Strand { $strand }, leg { $leg }
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] { -Top-pin } { $from }, { -down-short } to { -pin } { $to }
       *[rising] { -Bottom-pin } { $from }, { -up-short } to { -pin } { $to }
    }{ $turns ->
        [0] { "" }
        [one] , once round
        [2] , twice round
       *[other] , { $turns } times round
    }.

# Example: Leg 1. A leg is the cord from a pin on one rim to a pin on the other. From bottom pin
# 1, up and to the right, to top pin 3.
lay-say-way-teach = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg }
           *[other] Strand { $strand }{ $named ->
                [yes] , “{ $cord }”
               *[no] { "" }
            }, leg { $leg }
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $first ->
        [yes] A leg is the cord from a { -pin } on one rim to a { -pin } on the other.
       *[no] { "" }
    } { $heading ->
        [falling] From { -top-pin } { $from }, { -down }
       *[rising] From { -bottom-pin } { $from }, { -up }
    } { $lane ->
        [bottom] { -along-bottom } of the first cord
        [top] { -along-top } of the first cord
        [bottom-own] { -along-bottom } of its own lead pass
        [top-own] { -along-top } of its own lead pass
       *[none] and to the { $hand ->
            [left] left
           *[right] right
        }
    }{ $turns ->
        [0] { $lane ->
            [none] ,
           *[other] { "" }
        }
        [one] , with one full turn { -of-the-tube },
        [2] , with two full turns { -of-the-tube },
       *[other] , with { $turns } full turns { -of-the-tube },
    } to { $heading ->
        [falling] { -bottom-pin } { $to }.
       *[rising] { -top-pin } { $to }.
    }

# The beginning of a later part of a long leg: which leg, and where the cord is now.
# Example: Leg 11, part 2 of 5, from bottom pin 2 up and to the right, to top pin 4. You are a quarter
# there, just past bottom pin 3. After a turn of the tube, the turns and the pin say it all.
# $share: little, quarter, third, half, two-thirds, three-quarters, most. $past: number of the
# pin it has just passed, $rim: bottom or top, or none while that is where the leg began or where it is to land. $made: whole turns made on this leg so far.
lay-say-way-on = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg }
           *[other] Strand { $strand }, leg { $leg }
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, leg { $leg }
    }, part { $part } of { $parts }, from { $heading ->
        [falling] { -top-pin } { $from } { -down }
       *[rising] { -bottom-pin } { $from } { -up }
    } { $lane ->
        [bottom] { -along-bottom }
        [top] { -along-top }
        [bottom-own] { -along-bottom }
        [top-own] { -along-top }
       *[none] and to the { $hand ->
            [left] left,
           *[right] right,
        }
    } to { $heading ->
        [falling] { -bottom-pin } { $to }.
       *[rising] { -top-pin } { $to }.
    } You are { $made ->
        [0] { $share ->
            [little] a little way along
            [quarter] a quarter there
            [third] a third there
            [half] half way
            [two-thirds] two thirds there
            [three-quarters] three quarters there
           *[most] nearly there
        }
        [one] once { -round-the-tube }
        [2] twice { -round-the-tube }
       *[other] { $made } times { -round-the-tube }
    }{ $rim ->
        [none] { "" }
        [top] , just past { -top-pin } { $past }
       *[bottom] , just past { -bottom-pin } { $past }
    }.

# Example: Leg 11, part 2 of 5. Bottom 2, up to pin 4, past bottom 3.
lay-say-way-on-brief = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg }
           *[other] Strand { $strand }, leg { $leg }
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, leg { $leg }
    }{ $parts ->
        [one] .
       *[other] , part { $part } of { $parts }.
    } { $heading ->
        [falling] { -Top } { $from }, { -down-short } to { -pin } { $to }
       *[rising] { -Bottom } { $from }, { -up-short } to { -pin } { $to }
    }{ $rim ->
        [none] { "" }
        [top] , past { -top } { $past }
       *[bottom] , past { -bottom } { $past }
    }.

# The same, for who learns.
lay-say-way-on-teach = { $pass ->
        [1] { $strands ->
            [one] Leg { $leg }
           *[other] Strand { $strand }, leg { $leg }
        }
       *[other] Pass { $pass }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }, leg { $leg }
    }, part { $part } of { $parts }, from { $heading ->
        [falling] { -top-pin } { $from } { -down }
       *[rising] { -bottom-pin } { $from } { -up }
    } { $lane ->
        [bottom] { -along-bottom }
        [top] { -along-top }
        [bottom-own] { -along-bottom }
        [top-own] { -along-top }
       *[none] and to the { $hand ->
            [left] left,
           *[right] right,
        }
    } to { $heading ->
        [falling] { -bottom-pin } { $to }.
       *[rising] { -top-pin } { $to }.
    } You are { $made ->
        [0] { $share ->
            [little] a little way along
            [quarter] a quarter there
            [third] a third there
            [half] half way
            [two-thirds] two thirds there
            [three-quarters] three quarters there
           *[most] nearly there
        }
        [one] once { -round-the-tube }
        [2] twice { -round-the-tube }
       *[other] { $made } times { -round-the-tube }
    }{ $rim ->
        [none] { "" }
        [top] , just past { -top-pin } { $past }
       *[bottom] , just past { -bottom-pin } { $past }
    }.

# One crossing; those of a step are said one after the other.
# Example: Over 1 cord, under 2, over 1.
# $place: only, first, next or last of the step. $over: yes or no. $cords: cords lying there.
lay-say-crossing = { $place ->
        [only] { $over ->
            [yes] Over { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
           *[no] Under { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
        }.
        [first] { $over ->
            [yes] Over { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
           *[no] Under { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
        },
        [last] { $over ->
            [yes] over { $cords ->
                [one] 1
               *[other] { $cords }
            }
           *[no] under { $cords ->
                [one] 1
               *[other] { $cords }
            }
        }.
       *[next] { $over ->
            [yes] over { $cords ->
                [one] 1
               *[other] { $cords }
            }
           *[no] under { $cords ->
                [one] 1
               *[other] { $cords }
            }
        },
    }

# Example: Over, under 2, over.
# One cord is not counted: more are.
lay-say-crossing-brief = { $place ->
        [only] { $over ->
            [yes] { $cords ->
                [one] Over.
               *[other] Over { $cords }.
            }
           *[no] { $cords ->
                [one] Under.
               *[other] Under { $cords }.
            }
        }
        [first] { $over ->
            [yes] { $cords ->
                [one] Over,
               *[other] Over { $cords },
            }
           *[no] { $cords ->
                [one] Under,
               *[other] Under { $cords },
            }
        }
        [last] { $over ->
            [yes] { $cords ->
                [one] over.
               *[other] over { $cords }.
            }
           *[no] { $cords ->
                [one] under.
               *[other] under { $cords }.
            }
        }
       *[next] { $over ->
            [yes] { $cords ->
                [one] over,
               *[other] over { $cords },
            }
           *[no] { $cords ->
                [one] under,
               *[other] under { $cords },
            }
        }
    }

# A crossing with the cord that is met, by its pins.
# Example: Under 1 cord: lift it and pass your end beneath.
# $new: yes at the first over and the first under of the tie.
lay-say-crossing-teach = { $over ->
        [yes] Over { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }{ $new ->
            [yes] : lay yours on top of it.
           *[no] .
        }
       *[no] Under { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }{ $new ->
            [yes] : { -lift-up } it and pass your end beneath.
           *[no] .
        }
    }

# A leg that meets no cord.
lay-say-clear = There is nothing to cross yet.
lay-say-clear-brief = Nothing to cross.
lay-say-clear-teach = There is nothing to cross yet.

# How a lay step ends. $landing: on-the-way, round, inside or outside; at the pin where the pass
# began home-and-on, home-to-wait (other strands come first) or home-to-end (the cord ends).
# Example: Then round top pin 6.
# Example: Outside the loop.
lay-say-landing = { $landing ->
        [on-the-way] Hold your cord there.
        [inside] Inside the loop.
        [outside] Outside the loop.
        [home-and-on] Back at the start: over the tail, and on.
        [home-to-wait] Back at the start: tape the cord down, to wait.
        [home-to-end] Back at the start: let the end hang.
       *[round] { $heading ->
            [falling] { -Then-round } { -bottom-pin } { $to }.
           *[rising] { -Then-round } { -top-pin } { $to }.
        }
    }

# Example: Inside.
lay-say-landing-brief = { $landing ->
        [on-the-way] { "" }
        [inside] Inside.
        [outside] Outside.
        [home-and-on] Start: over tail.
        [home-to-wait] Start: tape it.
        [home-to-end] Start: stop.
       *[round] { "" }
    }

lay-say-landing-teach = { $landing ->
        [on-the-way] Hold your cord there.
        [inside] Inside the loop.
        [outside] Outside the loop.
        [home-and-on] Back at the start: over the tail, and on.
        [home-to-wait] Back at the start: tape the cord down, to wait.
        [home-to-end] Back at the start: let the end hang.
       *[round] { $heading ->
            [falling] { -Then-round } { -bottom-pin } { $to }.
           *[rising] { -Then-round } { -top-pin } { $to }.
        }
    }

# The arrow is the way the cord goes. Example: Bottom 4 up to top 6 ↗
lay-show = { $heading ->
        [falling] { -Top } { $from } { -down-short } to { -bottom } { $to } { $hand ->
            [left] ↙
           *[right] ↘
        }
       *[rising] { -Bottom } { $from } { -up-short } to { -top } { $to } { $hand ->
            [left] ↖
           *[right] ↗
        }
    }

# The same in words alone, for a line that is read by a Braille display or a screen reader.
# Example: Bottom 4 up and to the right, to top 6
lay-print = { $heading ->
        [falling] { -Top } { $from } { -down-short } and { $hand ->
            [left] to the left
           *[right] to the right
        }, to { -bottom } { $to }
       *[rising] { -Bottom } { $from } { -up-short } and { $hand ->
            [left] to the left
           *[right] to the right
        }, to { -top } { $to }
    }

# One crossing as a word that differs in shape for over and under.
# Example: OVER 1
# Example: under 2
lay-show-crossing = { $over ->
        [yes] OVER { $cords }
       *[no] under { $cords }
    }

# The one crossing that who learns makes now, large on the screen, and how it is made.
# Example: OVER 1 cord
lay-one = { $over ->
        [yes] OVER { $cords ->
            [one] 1 cord
           *[other] { $cords } cords
        }
       *[no] UNDER { $cords ->
            [one] 1 cord
           *[other] { $cords } cords
        }
    }

lay-one-note = { $over ->
        [yes] Your cord lies on top
       *[no] { -Lift-up } { -with-the-pick }, and pass your end beneath
    }

lay-show-clear = Nothing to cross yet

# What else the screen says of a lay step.
# Example: Second part: about half way up, just past bottom 3.
# $part, $share, $rim, $past, $made as for lay-say-way-on.
lay-show-note-on = { $share ->
        [little] From a little way
        [quarter] From about a quarter of the way
        [third] From about a third of the way
        [half] From about half way
        [two-thirds] From about two thirds of the way
        [three-quarters] From about three quarters of the way
       *[most] From most of the way
    } { $heading ->
        [falling] { -way-down }
       *[rising] { -way-up }
    }{ $rim ->
        [none] { "" }
        [top] , just past { -top } { $past }
       *[bottom] , just past { -bottom } { $past }
    }{ $made ->
        [0] { "" }
       *[other] , { $made } of { $turns } turns { -round-the-tube }
    }

# The side of the cord on which a follower lies. $lane: bottom, top, or the same of its own lead pass.
lay-show-lane = { $lane ->
        [bottom] On { -along-bottom }
        [top] On { -along-top }
        [bottom-own] On { -along-bottom } of its own lead pass
       *[top-own] On { -along-top } of its own lead pass
    }

# $landing as for lay-say-landing; $turns as for lay-say-way.
lay-show-note = { $landing ->
        [on-the-way] { $part ->
            [1] { $turns ->
                [0] Then hold your cord where it is
                [one] Once { -round-the-tube } in all, then hold your cord where it is
                [2] Twice { -round-the-tube } in all, then hold your cord where it is
               *[other] { $turns } times { -round-the-tube } in all, then hold your cord where it is
            }
           *[other] Then hold your cord where it is
        }
        [inside] { $heading ->
            [falling] Inside the loop at { -bottom } { $to }
           *[rising] Inside the loop at { -top } { $to }
        }{ -taped-over }
        [outside] { $heading ->
            [falling] Outside the loop at { -bottom } { $to }
           *[rising] Outside the loop at { -top } { $to }
        }{ -taped-over }
        [home-and-on] Back at the start: over the tail and on round { -bottom } { $to }
        [home-to-wait] Back at the start: tape it at { -bottom } { $to }
        [home-to-end] Back at the start: let the end hang at { -bottom } { $to }
       *[round] { $heading ->
            [falling] { -round-shown } { -bottom } { $to }
           *[rising] { -round-shown } { -top } { $to }
        }
    }

## The line above a step

# Example: Lead pass, leg 7 of 12
# $phase: begin, lay, check, lift, fair or finish. $item of $items: things to do in lift and
# finish; rounds in fair.
phase-show = { $phase ->
        [lift] { -Lifting }, { $item } of { $items }
        [fair] Fair, time { $item } of { $items }{ $whole ->
            [yes] { "" }
           *[no] { $passes ->
                [one] { "" }
               *[other] , pass { $pass }
            }{ $strands ->
                [one] { "" }
               *[other] , strand { $strand }
            }, leg { $leg } of { $legs }
        }
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

## How many steps there are of each kind, a line each, in the terminal

# $kind: a kind of step by its name in the JSON document, or all of them together. One word.
steps-kind = { $kind ->
        [kit] kit
        [rig] rig
        [begin] begin
        [follow] follow
        [lay] lay
        [check] check
        [lift] lift
        [fair] fair
        [finish] finish
       *[all] all
    }
