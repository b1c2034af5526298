# A look at the work after a round or a pass: what should be seen, so that a fault is found
# within one round. Depths and arguments as in steps.ftl; besides them:
#   $round     rounds laid in this pass, $rounds of them all; a round is a rising and a falling leg
#   $ends      yes when the pass of this strand is complete
#   $whole     yes when all strands have come as far
#   $cords     cords round each pin that this pass has reached
#   $at        number of the bottom pin where the cord stands now
#   $counted   yes when $crossings says how many crossings lie on the tube by now
#   $rows      crossings along every leg from rim to rim in the whole knot
#   $first     yes at the first look of all
#   $from, $to pins of the last leg, which falls; $order: its overs and unders, one after the other

# Example: Stop and look. Round 3 of 6 is done, and your cord is at bottom pin 4. There are
# 3 crossings on the tube. The last leg, down from top pin 1, goes over once and under once. Next
# if it looks like that, wrong if not.
# Example: The lead pass is done. Stop and look. Every pin holds 1 cord, and along every
# leg, from rim to rim, you can count 4 crossings. Next if it looks like that, wrong
# if not.
check-say = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] The lead pass is done.
                [2] The second pass is done.
                [3] The third pass is done.
                [4] The fourth pass is done.
                [5] The fifth pass is done.
                [6] The sixth pass is done.
                [7] The seventh pass is done.
                [8] The eighth pass is done.
               *[9] The ninth pass is done.
            }
           *[other] { $pass ->
                [1] The lead pass of strand { $strand } is done.
                [2] The second pass of strand { $strand } is done.
                [3] The third pass of strand { $strand } is done.
                [4] The fourth pass of strand { $strand } is done.
                [5] The fifth pass of strand { $strand } is done.
                [6] The sixth pass of strand { $strand } is done.
                [7] The seventh pass of strand { $strand } is done.
                [8] The eighth pass of strand { $strand } is done.
               *[9] The ninth pass of strand { $strand } is done.
            }
        } Stop and look. { $whole ->
            [yes] Every { -pin }
           *[no] Every { -pin } of this strand
        } holds { $cords ->
            [one] 1 cord
           *[other] { $cords } cords side by side
        }, two hanging ends counting as one{ $whole ->
            [yes] , and along every leg, from rim to rim, you can count { $rows ->
                [one] 1 crossing{ $cords ->
                    [one] .
                   *[other] { "" }, { $cords } cords over { $cords }.
                }
               *[other] { $rows } crossings{ $cords ->
                    [one] .
                   *[other] , { $cords } cords over { $cords } at each.
                }
            }
           *[no] .
        }
       *[no] Stop and look. { $strands ->
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
        } { $round } of { $rounds } is done, and your cord is at { -bottom-pin } { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Nothing crosses yet.
                [one] There is 1 crossing { -on-the-tube }.
               *[other] There are { $crossings } crossings { -on-the-tube }.
            }
           *[no] { $cords ->
                [one] Every { -pin } it has been round holds 1 cord.
               *[other] Every { -pin } it has been round holds { $cords } cords side by side.
            }
        } Look at the last leg, from { -top-pin } { $from } { -down } to { -bottom-pin } { $to }. { $order }
    } If that is what you see, press next. If not, press wrong.

# Example: Look. Round 3 of 6, at bottom pin 4. Last leg. It goes over 1 cord, under 1.
check-say-brief = Look. { $strands ->
        [one] { "" }
       *[other] Strand { $strand }.
    } { $ends ->
        [yes] { $pass ->
            [1] Lead pass done,
            [2] Second pass done,
            [3] Third pass done,
            [4] Fourth pass done,
            [5] Fifth pass done,
            [6] Sixth pass done,
            [7] Seventh pass done,
            [8] Eighth pass done,
           *[9] Ninth pass done,
        } { $cords ->
            [one] 1 cord a { -pin }.
           *[other] { $cords } cords a { -pin }.
        }
       *[no] Round { $round } of { $rounds }, at { -bottom-pin } { $at }. Last leg. { $order }
    }

check-say-teach = { $ends ->
        [yes] { $strands ->
            [one] { $pass ->
                [1] The lead pass is done: the cord has been once round the whole pattern.
                [2] The second pass is done.
                [3] The third pass is done.
                [4] The fourth pass is done.
                [5] The fifth pass is done.
                [6] The sixth pass is done.
                [7] The seventh pass is done.
                [8] The eighth pass is done.
               *[9] The ninth pass is done.
            }
           *[other] { $pass ->
                [1] The lead pass of strand { $strand } is done: its cord has been once round its whole path.
                [2] The second pass of strand { $strand } is done.
                [3] The third pass of strand { $strand } is done.
                [4] The fourth pass of strand { $strand } is done.
                [5] The fifth pass of strand { $strand } is done.
                [6] The sixth pass of strand { $strand } is done.
                [7] The seventh pass of strand { $strand } is done.
                [8] The eighth pass of strand { $strand } is done.
               *[9] The ninth pass of strand { $strand } is done.
            }
        } { -turn-it-round } and look at everything before you go on: a fault is easy to mend now and hard to mend later. { $whole ->
            [yes] Every { -pin }
           *[no] Every { -pin } of this strand
        } holds { $cords ->
            [one] 1 cord
           *[other] { $cords } cords side by side, never crossing one another
        }, two hanging ends counting as one{ $whole ->
            [yes] . Along every leg, from rim to rim, you can count { $rows ->
                [one] 1 crossing{ $cords ->
                    [one] .
                   *[other] { "" }, { $cords } cords over { $cords }.
                }
               *[other] { $rows } crossings{ $cords ->
                    [one] .
                   *[other] , { $cords } cords over { $cords } at each.
                }
            }
           *[no] .
        }
       *[no] { $first ->
            [yes] Stop and look. A mistake is easiest to mend in the round you made it; a round is one leg { -up } and one leg { -down }.
           *[no] Stop and look.
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
        } { $round } of { $rounds } is done, and your cord is at { -bottom-pin } { $at }. { $counted ->
            [yes] { $crossings ->
                [0] Nothing crosses yet.
                [one] There is 1 crossing { -on-the-tube }.
               *[other] There are { $crossings } crossings { -on-the-tube }.
            }
           *[no] { $cords ->
                [one] Every { -pin } it has been round holds 1 cord.
               *[other] Every { -pin } it has been round holds { $cords } cords side by side.
            }
        } Look at the last leg, from { -top-pin } { $from } { -down } to { -bottom-pin } { $to }. { $order }
    } If that is what you see, press next. If not, press wrong.

# Example: Look: round 3 of 6
check-show = { $ends ->
        [yes] { $whole ->
            [yes] { $cords ->
                [one] Look: 1 cord on every { -pin }
               *[other] Look: { $cords } cords on every { -pin }
            }
           *[no] { $cords ->
                [one] Look: 1 cord on its { -pins }
               *[other] Look: { $cords } cords on its { -pins }
            }
        }
       *[no] Look: round { $round } of { $rounds }
    }

# Example: 3 crossings on the tube. The cord is at bottom 4.
check-show-note = { $ends ->
        [yes] { $whole ->
            [yes] { $rows ->
                [one] 1 crossing along every leg, rim to rim. Where two ends hang they count as 1 cord
               *[other] { $rows } crossings along every leg, rim to rim. Where two ends hang they count as 1 cord
            }
           *[no] Strand { $strand } of { $strands }. Where two ends hang they count as 1 cord
        }
       *[no] { $counted ->
            [yes] { $crossings ->
                [0] Nothing crosses yet.
                [one] 1 crossing { -on-the-tube }.
               *[other] { $crossings } crossings { -on-the-tube } in all.
            }
           *[no] { $cords ->
                [one] 1 cord on every { -pin } so far.
               *[other] { $cords } cords on every { -pin } so far.
            }
        } The cord is at { -bottom } { $at }.
    }

# Example: Last leg, from top 1: over once, under once.
# $shown: yes where its crossings stand above in large type, and $order is nothing.
check-show-note-last = Last leg, from { -top } { $from }{ $shown ->
        [yes] { "" }
       *[no] { "" }: { $order }
    }

# One crossing of the last leg, as it lies there; those of the leg are said one after the other, in $order.
# Example: It goes over 1 cord, under 2, over 1.
# $place: only, first, next or last. $over: yes or no. $cords: cords lying there.
check-say-crossing = { $place ->
        [only] { $over ->
            [yes] It goes over { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
           *[no] It goes under { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
        }.
        [first] { $over ->
            [yes] It goes over { $cords ->
                [one] 1 cord
               *[other] { $cords } cords
            }
           *[no] It goes under { $cords ->
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

# In place of the order of overs and unders, for a leg of so many crossings that nobody would
# follow it: $crossings there are, $overs and $unders of them.
check-order-say = Of its { $crossings } crossings it goes over at { $overs } and under at { $unders }.
check-order-show = { $crossings } crossings, over at { $overs }, under at { $unders }
