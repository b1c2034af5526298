# A look at the work after a round or a pass: what should be seen, so that a fault is found
# within one round. Depths and arguments as in steps.ftl; besides them:
#   $round     rounds laid in this pass, $rounds of them all; a round is a rising and a falling leg
#   $ends      yes when the pass of this strand is complete
#   $whole     yes when all strands have come as far
#   $cords     cords round each pin that this pass has reached
#   $at        number of the bottom pin where the cord stands now
#   $counted   yes when $crossings says how many crossings lie on the tube by now
#   $rows      crossings between two neighbouring pins from rim to rim in the whole knot
#   $first     yes at the first look of all
#   $from, $to pins of the last leg, which falls; $overs and $unders: how often it goes over, under

# Example: Good place to look. Round 3 of 6 is down, and the cord stands at bottom pin 4. There are
# 3 crossings on the tube. The last leg, down from top pin 1, goes over once and under once. Next
# if it looks like that, wrong if not.
# Example: The lead pass is down. Good place to look. Every pin holds 1 cord, and between two
# neighbouring pins, from rim to rim, you can count 4 crossings. Next if it looks like that, wrong
# if not.
check-say = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] The lead pass is down.
                [2] The second pass is down.
                [3] The third pass is down.
                [4] The fourth pass is down.
                [5] The fifth pass is down.
                [6] The sixth pass is down.
                [7] The seventh pass is down.
                [8] The eighth pass is down.
               *[9] The ninth pass is down.
            }
           *[other] { $pass ->
                [1] The lead pass of strand { $strand } is down.
                [2] The second pass of strand { $strand } is down.
                [3] The third pass of strand { $strand } is down.
                [4] The fourth pass of strand { $strand } is down.
                [5] The fifth pass of strand { $strand } is down.
                [6] The sixth pass of strand { $strand } is down.
                [7] The seventh pass of strand { $strand } is down.
                [8] The eighth pass of strand { $strand } is down.
               *[9] The ninth pass of strand { $strand } is down.
            }
        } Good place to look. { $whole ->
            [yes] Every pin
           *[no] Every pin of this strand
        } holds { $cords ->
            [one] 1 cord
           *[other] { $cords } cords side by side
        }{ $whole ->
            [yes] , and between two neighbouring pins, from rim to rim, you can count { $rows ->
                [one] 1 crossing{ $cords ->
                    [one] .
                   *[other] { " " }of { $cords } cords with { $cords }.
                }
               *[other] { $rows } crossings{ $cords ->
                    [one] .
                   *[other] , each of { $cords } cords with { $cords }.
                }
            }
           *[no] .
        }
       *[no] Good place to look. { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } { $pass ->
            [1] Round
            [2] Second pass, round
            [3] Third pass, round
            [4] Fourth pass, round
            [5] Fifth pass, round
            [6] Sixth pass, round
            [7] Seventh pass, round
            [8] Eighth pass, round
           *[9] Ninth pass, round
        } { $round } of { $rounds } is down, and the cord stands at bottom pin { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Nothing crosses yet.
                [one] There is 1 crossing on the tube.
               *[other] There are { $crossings } crossings on the tube.
            }
           *[no] { $cords ->
                [one] Every pin it has been round holds 1 cord.
               *[other] Every pin it has been round holds { $cords } cords side by side.
            }
        } The last leg, down from top pin { $from }, { $overs ->
            [0] { $unders ->
                [0] crosses nothing.
                [one] goes under once.
                [2] goes under twice.
               *[other] goes under { $unders } times.
            }
            [one] goes over once{ $unders ->
                [0] .
                [one] { " " }and under once.
                [2] { " " }and under twice.
               *[other] { " " }and under { $unders } times.
            }
           *[other] goes over { $overs ->
                [2] twice
               *[other] { $overs } times
            }{ $unders ->
                [0] .
                [one] { " " }and under once.
                [2] { " " }and under twice.
               *[other] { " " }and under { $unders } times.
            }
        }
    } Next if it looks like that, wrong if not.

# Example: Look. Round 3 of 6, 3 crossings.
check-say-brief = Look. { $strands ->
        [one] { "" }
       *[other] Strand { $strand }.
    } { $ends ->
        [yes] { $pass ->
            [1] Lead pass down,
            [2] Second pass down,
            [3] Third pass down,
            [4] Fourth pass down,
            [5] Fifth pass down,
            [6] Sixth pass down,
            [7] Seventh pass down,
            [8] Eighth pass down,
           *[9] Ninth pass down,
        } { $cords ->
            [one] 1 cord a pin.
           *[other] { $cords } cords a pin.
        }
       *[no] Round { $round } of { $rounds }, at bottom pin { $at }{ $counted ->
            [yes] , { $crossings ->
                [0] nothing crosses yet.
                [one] 1 crossing.
               *[other] { $crossings } crossings.
            }
           *[no] , { $cords ->
                [one] 1 cord a pin.
               *[other] { $cords } cords a pin.
            }
        }
    }

check-say-teach = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] The lead pass is down: the cord has been once round the whole pattern.
                [2] The second pass is down.
                [3] The third pass is down.
                [4] The fourth pass is down.
                [5] The fifth pass is down.
                [6] The sixth pass is down.
                [7] The seventh pass is down.
                [8] The eighth pass is down.
               *[9] The ninth pass is down.
            }
           *[other] { $pass ->
                [1] The lead pass of strand { $strand } is down: its cord has been once round its whole path.
                [2] The second pass of strand { $strand } is down.
                [3] The third pass of strand { $strand } is down.
                [4] The fourth pass of strand { $strand } is down.
                [5] The fifth pass of strand { $strand } is down.
                [6] The sixth pass of strand { $strand } is down.
                [7] The seventh pass of strand { $strand } is down.
                [8] The eighth pass of strand { $strand } is down.
               *[9] The ninth pass of strand { $strand } is down.
            }
        } Turn the tube once round and look at everything before you go on: a fault is easy to mend now and hard to mend later. { $whole ->
            [yes] Every pin
           *[no] Every pin of this strand
        } holds { $cords ->
            [one] 1 cord
           *[other] { $cords } cords side by side, never crossing one another
        }{ $whole ->
            [yes] . Between two neighbouring pins, from rim to rim, you can count { $rows ->
                [one] 1 crossing{ $cords ->
                    [one] .
                   *[other] { " " }of { $cords } cords with { $cords }.
                }
               *[other] { $rows } crossings{ $cords ->
                    [one] .
                   *[other] , each of { $cords } cords with { $cords }.
                }
            }
           *[no] .
        }
       *[no] { $first ->
            [yes] A good place to look, since a fault is found soonest within one round; a round is one leg up and one leg down.
           *[no] Good place to look.
        } { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } { $pass ->
            [1] Round
            [2] Second pass, round
            [3] Third pass, round
            [4] Fourth pass, round
            [5] Fifth pass, round
            [6] Sixth pass, round
            [7] Seventh pass, round
            [8] Eighth pass, round
           *[9] Ninth pass, round
        } { $round } of { $rounds } is down, and the cord stands at bottom pin { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Nothing crosses yet.
                [one] There is 1 crossing on the tube.
               *[other] There are { $crossings } crossings on the tube.
            }
           *[no] { $cords ->
                [one] Every pin it has been round holds 1 cord.
               *[other] Every pin it has been round holds { $cords } cords side by side.
            }
        } The last leg, down from top pin { $from } to bottom pin { $to }, { $overs ->
            [0] { $unders ->
                [0] crosses nothing.
                [one] goes under once.
                [2] goes under twice.
               *[other] goes under { $unders } times.
            }
            [one] goes over once{ $unders ->
                [0] .
                [one] { " " }and under once.
                [2] { " " }and under twice.
               *[other] { " " }and under { $unders } times.
            }
           *[other] goes over { $overs ->
                [2] twice
               *[other] { $overs } times
            }{ $unders ->
                [0] .
                [one] { " " }and under once.
                [2] { " " }and under twice.
               *[other] { " " }and under { $unders } times.
            }
        }
    } Next if it looks like that, wrong if not.

# Example: Look: round 3 of 6
check-show = { $ends ->
        [yes] { $whole ->
            [yes] { $cords ->
                [one] Look: 1 cord on every pin
               *[other] Look: { $cords } cords on every pin
            }
           *[no] { $cords ->
                [one] Look: 1 cord on its pins
               *[other] Look: { $cords } cords on its pins
            }
        }
       *[no] Look: round { $round } of { $rounds }
    }

# Example: 3 crossings on the tube. The cord is at bottom 4.
check-show-note = { $ends ->
        [yes] { $whole ->
            [yes] { $rows ->
                [one] 1 crossing between two pins, rim to rim
               *[other] { $rows } crossings between two pins, rim to rim
            }
           *[no] Strand { $strand } of { $strands }
        }
       *[no] { $counted ->
            [yes] { $crossings ->
                [0] Nothing crosses yet.
                [one] 1 crossing on the tube.
               *[other] { $crossings } crossings on the tube.
            }
           *[no] { $cords ->
                [one] 1 cord on every pin so far.
               *[other] { $cords } cords on every pin so far.
            }
        } The cord is at bottom { $at }.
    }

# Example: Last leg, from top 1: over once, under once.
check-show-note-last = { $overs ->
        [0] { $unders ->
            [0] Last leg, from top { $from }: crosses nothing
           *[other] Last leg, from top { $from }: goes under { $unders ->
                [one] once
                [2] twice
               *[other] { $unders } times
            }
        }
       *[other] Last leg, from top { $from }: goes over { $overs ->
            [one] once
            [2] twice
           *[other] { $overs } times
        }{ $unders ->
            [0] { "" }
            [one] , under once
            [2] , under twice
           *[other] , under { $unders } times
        }
    }
