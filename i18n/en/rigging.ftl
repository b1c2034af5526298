# Packing the bag and rigging the tube: steps like any other, before the first leg. A message
# ending in -say is spoken, one ending in -show stands on the screen, one ending in -note below
# it. A note that comes to nothing is left out.
#
# Arguments that come back:
#   $number            this item or step, $items and $tasks how many there are
#   $hand              right or left: the way round the tube that the cord travels
#   lengths            each one argument with its unit (see lengths.ftl): "45 millimetres" for the
#                      ear, "45 mm" for the eye

kit-phase-show = What you need, { $single ->
        [yes] { $number } of { $items }
        [two] { $number } and { $last } of { $items }
       *[no] { $number } to { $last } of { $items }
    }
rig-phase-show = Rig, { $single ->
        [yes] step { $number } of { $tasks }
        [two] steps { $number } and { $last } of { $tasks }
       *[no] steps { $number } to { $last } of { $tasks }
    }

# Several things on one page: before them, and after them.
# Example: You will need, 1 to 3 of 6.
# $number to $last: which of them.
kit-page-say = You will need, { $single ->
        [two] { $number } and { $last } of { $items }.
       *[no] { $number } to { $last } of { $items }.
    }
kit-tick-say = Press next when you have them. Fewer at once names them one by one.

# Before what is to be done to the tube. $single: yes when it is one thing.
# Example: Rigging, steps 1 to 2 of 7.
rig-page-say = { $single ->
        [yes] Rigging, step { $number } of { $tasks }.
        [two] Rigging, steps { $number } and { $last } of { $tasks }.
       *[no] Rigging, steps { $number } to { $last } of { $tasks }.
    }

# Where the tyer is, before the first leg.
# Example: The tube is being rigged: step 3 of 8.
# $phase: kit or rig.
rigging-where-say = { $phase ->
        [kit] You are gathering what you need: { $number } of { $of }.
       *[rig] { -being-rigged } step { $number } of { $of }.
    }

## The bag

# Example: You will need, 1 of 6: the tube, 45 millimetres across. Press next when you have it.
kit-tube-say = You will need, { $number } of { $items }: the tube, { $diameter } across. Press next when you have it.
kit-tube-say-brief = Tube, { $diameter } across.
kit-tube-say-teach = You will need, { $number } of { $items }: the tube, { $diameter } across. Press next when you have it. You tie on the tube, then slide the knot onto what it is to cover.
kit-tube-show = Tube, { $diameter } across
kit-tube-note = { "" }

# Example: You will need, 2 of 6: 14 pins, 12 millimetres long, thread M4. Press next when you have them.
# $thread: its name or none. $numbered: the number of a numbered inch thread, or none.
# $fraction: the thread as a length, when it is a fraction of an inch, or none.
kit-pins-say = You will need, { $number } of { $items }: { $count } pins, { $length } long{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , thread { $thread }
               *[other] , thread of { $fraction }
            }
           *[other] , thread number { $numbered }
        }
    }. Press next when you have them.
kit-pins-say-brief = { $count } pins, { $length } long{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , thread { $thread }
               *[other] , thread of { $fraction }
            }
           *[other] , thread number { $numbered }
        }
    }.
kit-pins-say-teach = You will need, { $number } of { $items }: { $count } pins, { $length } long{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , thread { $thread }
               *[other] , thread of { $fraction }
            }
           *[other] , thread number { $numbered }
        }
    }. Press next when you have them. { $thread ->
        [none] A pin is anything that holds a loop of cord in its place.
       *[other] Here the pins are set screws.
    } You need one for every loop at the bottom rim, and one for every loop at the top rim.
kit-pins-show = { $count } pins, { $length } long
kit-pins-note = { $thread ->
        [none] { "" }
       *[other] Set screws { $numbered ->
            [none] { $thread }
           *[other] #{ $numbered }
        }
    }

# $size: as it is sold.
kit-key-say = You will need, { $number } of { $items }: the hex key for the pins, { $size }. Press next when you have it.
kit-key-say-brief = The hex key for the pins, { $size }.
kit-key-say-teach = You will need, { $number } of { $items }: the hex key for the pins, { $size }. Press next when you have it. You need it where fingers alone will not turn a pin.
kit-key-show = Hex key, { $size }
kit-key-note = { "" }

# Example: You will need, 4 of 6: a piece of cord 4 millimetres thick, 1.9 metres long. …
# $name: what the tyer calls the cord, or none. $grams: weight of all, or 0.
kit-cord-say = You will need, { $number } of { $items }: { $pieces ->
        [one] a piece
       *[other] { $pieces } pieces
    } of cord{ $name ->
        [none] { "" }
       *[other] , { $name },
    } { $diameter } thick, { $length } long{ $pieces ->
        [one] { "" }
       *[other] { " " }each
    }. Press next when you have it.
kit-cord-say-brief = { $pieces ->
        [one] A piece
       *[other] { $pieces } pieces
    } of cord{ $name ->
        [none] { "" }
       *[other] , { $name },
    } { $diameter } thick, { $length } long{ $pieces ->
        [one] { "" }
       *[other] { " " }each
    }.
kit-cord-say-teach = You will need, { $number } of { $items }: { $pieces ->
        [one] a piece
       *[other] { $pieces } pieces
    } of cord{ $name ->
        [none] { "" }
       *[other] , { $name },
    } { $diameter } thick, { $length } long{ $pieces ->
        [one] { "" }
       *[other] { " " }each
    }. Press next when you have it. It is longer than the knot needs, so that there is enough to hold.
kit-cord-show = Cord, { $pieces ->
        [one] { $length }
       *[other] { $pieces } × { $length }
    }
kit-cord-note = { $name ->
        [none] { $diameter } thick
       *[other] { $name }, { $diameter } thick
    }{ $grams ->
        [0] { "" }
       *[other] , about { $grams } g
    }

kit-tape-say = You will need, { $number } of { $items }: masking tape, { $tape } and some to spare. Press next when you have it.
kit-tape-say-brief = Masking tape, { $tape } and some to spare.
kit-tape-say-teach = You will need, { $number } of { $items }: masking tape, { $tape } and some to spare. Press next when you have it. It holds the tail, and carries the numbers of the pins.
kit-tape-show = Masking tape, { $tape }
kit-tape-note = { "" }

kit-strip-say = You will need, { $number } of { $items }: a strip of paper { $length } long, to mark the pins on. Press next when you have it.
kit-strip-say-brief = A strip of paper { $length } long, to mark the pins on.
kit-strip-say-teach = You will need, { $number } of { $items }: a strip of paper { $length } long, to mark the pins on. Press next when you have it. The marks on it stand where the pins go.
kit-strip-show = Paper strip, { $length }
kit-strip-note = As long as the tube is round, to mark the pins on

kit-picks-say = You will need, { $number } of { $items }: { $count ->
        [one] a pick
       *[other] { $count } picks
    } to open the crossings. Press next when you have it.
kit-picks-say-brief = { $count ->
        [one] A pick
       *[other] { $count } picks
    } to open the crossings.
kit-picks-say-teach = You will need, { $number } of { $items }: { $count ->
        [one] a pick
       *[other] { $count } picks
    } to open the crossings. Press next when you have it. With it you { -lift-up } a cord to pass another under it.
kit-picks-show = { $count ->
        [one] A pick
       *[other] { $count } picks
    }
kit-picks-note = To open the crossings

# What is used on the way. $tool: marker, ruler, blade, dish, needle (for a mat) or sealing (a flame or glue for the ends).
kit-tool-say = You will need, { $number } of { $items }: { $tool ->
        [marker] a pen that writes on tape. Press next when you have it.
        [ruler] a ruler. Press next when you have it.
        [blade] a sharp knife, or scissors. Press next when you have it.
        [dish] a dish for the pins. Press next when you have it.
        [needle] a needle and strong thread, or glue. Press next when you have it.
       *[sealing] a lighter for cord that melts, or glue for natural fibre. Press next when you have it.
    }
kit-tool-say-brief = { $tool ->
        [marker] A pen that writes on tape.
        [ruler] A ruler.
        [blade] A sharp knife, or scissors.
        [dish] A dish for the pins.
        [needle] A needle and strong thread, or glue.
       *[sealing] A lighter for cord that melts, or glue for natural fibre.
    }
kit-tool-say-teach = You will need, { $number } of { $items }: { $tool ->
        [marker] a pen that writes on tape. Press next when you have it. You number the pins with it.
        [ruler] a ruler. Press next when you have it. You measure the cord with it, and where the pins go.
        [blade] a sharp knife, or scissors. Press next when you have it. With it you cut the cord, and at the very end its ends.
        [dish] a dish for the pins. Press next when you have it. Pins that come out go there: a lost one is found by a bare foot.
        [needle] a needle and strong thread, or glue. Press next when you have it. With it you fix the crossings of the mat, on the underside.
       *[sealing] a lighter for cord that melts, or glue for natural fibre. Press next when you have it. It keeps the cut ends from fraying.
    }
kit-tool-show = { $tool ->
        [marker] Pen that writes on tape
        [ruler] Ruler
        [blade] Knife or scissors
        [dish] Dish for the pins
        [needle] Needle and thread, or glue
       *[sealing] Lighter or glue
    }
kit-tool-note = { $tool ->
        [sealing] A lighter for cord that melts, glue for natural fibre
       *[other] { "" }
    }

## Rigging: what to know first

# $given: length of the pins named, $needed: the least that holds, $hold: passes they do hold.
rig-short-pins-say = Take care: the pins you named, { $given } long, are too short for this knot. { $hold ->
        [0] They do not hold a single pass.
        [one] They hold 1 pass.
       *[other] They hold { $hold } passes.
    } Use pins of { $needed } or more.
rig-short-pins-say-brief = Take care: the pins you named, { $given } long, are too short for this knot. { $hold ->
        [0] They do not hold a single pass.
        [one] They hold 1 pass.
       *[other] They hold { $hold } passes.
    } Use pins of { $needed } or more.
rig-short-pins-say-teach = Take care: the pins you named, { $given } long, are too short for this knot. { $hold ->
        [0] They do not hold a single pass.
        [one] They hold 1 pass.
       *[other] They hold { $hold } passes.
    } Use pins of { $needed } or more. Every pass lays one more cord round the pin, and the outermost slips off the end of a short one.
rig-short-pins-show = { $given } pins are too short
rig-short-pins-note = Use { $needed } or more; these hold { $hold ->
        [0] not one pass
        [one] 1 pass
       *[other] { $hold } passes
    }

rig-thick-object-say = Take care: what is covered is { $object } across and the tube only { $tube }. Leave the knot loose until it is over it.
rig-thick-object-say-brief = Take care: what is covered is { $object } across and the tube only { $tube }. Leave the knot loose until it is over it.
rig-thick-object-say-teach = Take care: what is covered is { $object } across and the tube only { $tube }. Leave the knot loose until it is over it.
rig-thick-object-show = What is covered is thicker than the tube
rig-thick-object-note = { $object } against { $tube }: leave the knot loose until it is over it

# $gap: between the pins. $comfortable: from where on it is easy. $most_bights, $most_passes: the most
# for which it is, or 0. $tube: a tube of so much or more. $pin: pins no thicker than this, or none.
rig-close-pins-say = Take care: the pins leave { $gap } between them, and the cords of a bight pass easily only from { $comfortable } on. Better: a tube of { $tube } or more{ $most_bights ->
        [0] { "" }
       *[other] , or at most { $most_bights } bights
    }{ $most_passes ->
        [0] { "" }
        [one] , or 1 pass
       *[other] , or at most { $most_passes } passes
    }{ $pin ->
        [none] { "" }
       *[other] , or pins no thicker than { $pin }
    }.
rig-close-pins-say-brief = Take care: the pins leave { $gap } between them, and the cords of a bight pass easily only from { $comfortable } on. Better: a tube of { $tube } or more{ $most_bights ->
        [0] { "" }
       *[other] , or at most { $most_bights } bights
    }{ $most_passes ->
        [0] { "" }
        [one] , or 1 pass
       *[other] , or at most { $most_passes } passes
    }{ $pin ->
        [none] { "" }
       *[other] , or pins no thicker than { $pin }
    }.
rig-close-pins-say-teach = Take care: the pins leave { $gap } between them, and the cords of a bight pass easily only from { $comfortable } on. Better: a tube of { $tube } or more{ $most_bights ->
        [0] { "" }
       *[other] , or at most { $most_bights } bights
    }{ $most_passes ->
        [0] { "" }
        [one] , or 1 pass
       *[other] , or at most { $most_passes } passes
    }{ $pin ->
        [none] { "" }
       *[other] , or pins no thicker than { $pin }
    }. Where pins stand close, the cords climb on one another and the bights come out uneven.
rig-close-pins-show = The pins stand close
rig-close-pins-note = { $gap } between them, easy from { $comfortable }: better a tube of { $tube } or more{ $most_bights ->
        [0] { "" }
       *[other] , or at most { $most_bights } bights
    }{ $most_passes ->
        [0] { "" }
        [one] , or 1 pass
       *[other] , or at most { $most_passes } passes
    }{ $pin ->
        [none] { "" }
       *[other] , or pins no thicker than { $pin }
    }

# $slack: out of each leg. $better: the tube with least slack, or none.
rig-thick-tube-say = Take care: the tube is much thicker than what is covered. { $slack } will have to be drawn out of each of { $legs } legs.{ $better ->
        [none] { "" }
       *[other] { " " }A tube { $better } across would leave the least.
    }
rig-thick-tube-say-brief = Take care: the tube is much thicker than what is covered. { $slack } will have to be drawn out of each of { $legs } legs.{ $better ->
        [none] { "" }
       *[other] { " " }A tube { $better } across would leave the least.
    }
rig-thick-tube-say-teach = Take care: the tube is much thicker than what is covered. { $slack } will have to be drawn out of each of { $legs } legs.{ $better ->
        [none] { "" }
       *[other] { " " }A tube { $better } across would leave the least.
    } Slack that is drawn out a little at a time, over and over, keeps the knot even.
rig-thick-tube-show = Much slack on this tube
rig-thick-tube-note = { $slack } out of each of { $legs } legs{ $better ->
        [none] { "" }
       *[other] ; a tube { $better } across would leave the least
    }

# $ring: width of a ring. $slack: out of each leg. $would_do: rings of so much or less.
rig-wide-rings-say = Take care: the rings are { $ring } wide and keep the rims apart. { $slack } will have to be drawn out of each leg. Rings no wider than { $would_do } would not stand in the way.
rig-wide-rings-say-brief = Take care: the rings are { $ring } wide and keep the rims apart. { $slack } will have to be drawn out of each leg. Rings no wider than { $would_do } would not stand in the way.
rig-wide-rings-say-teach = Take care: the rings are { $ring } wide and keep the rims apart. { $slack } will have to be drawn out of each leg. Rings no wider than { $would_do } would not stand in the way. Slack that is drawn out a little at a time, over and over, keeps the knot even.
rig-wide-rings-show = The rings are wide for this knot
rig-wide-rings-note = { $slack } out of each leg; rings of { $would_do } or less would not stand in the way

## Rigging: rings with holes

# Example: Rigging, step 1 of 7. Each ring has one row of 14 holes. Choose a hole of the bottom
# ring as hole 1 and count the holes from it to the right.
# $row: which row, in the order the rows were named. $rows: how many. $holes: holes in it.
rig-row-say = { $rows ->
        [one] Each ring has one row of { $holes } holes.
       *[other] On each ring use row { $row }, the one with { $holes } holes.
    } Choose a hole of the bottom ring as hole 1 and count the holes from it to the { $hand ->
        [left] left
       *[right] right
    }, and the same on the top ring.
rig-row-say-brief = { $rows ->
        [one] One row of { $holes } holes.
       *[other] Row { $row }, the one with { $holes } holes.
    } Hole 1, and count to the { $hand ->
        [left] left.
       *[right] right.
    }
rig-row-say-teach = { $rows ->
        [one] Each ring has one row of { $holes } holes.
       *[other] On each ring use row { $row }, the one with { $holes } holes.
    } Choose a hole of the bottom ring as hole 1 and count the holes from it to the { $hand ->
        [left] left
       *[right] right
    }, and the same on the top ring. A row suits a knot when its number of holes divides by the number of bights.
rig-row-show = { $rows ->
        [one] One row of { $holes } holes
       *[other] Row { $row }: { $holes } holes
    }
rig-row-note = Choose hole 1, count to the { $hand ->
        [left] left
       *[right] right
    }; both rings alike

# Setting the pins of a ring.
# Example: Rigging, step 2 of 7. Set 7 pins in the bottom ring, in every second hole: holes 1, 3, 5,
# 7, 9, 11 and 13. Bottom pin 1 stands in hole 1. Use pins 12 millimetres long. …
# $rim: bottom or top. $step: from a pin to the next. $first: hole of pin 1. $few: yes when the
# holes are told one by one: $most are all but the last, $last is that. $staggered: yes or no.
# $key: size of the hex key or none.
rig-pins-say = Set { $count } pins in the { $rim ->
        [top] top
       *[bottom] bottom
    } ring, in { $step ->
        [1] every hole
        [2] every second hole
        [3] every third hole
        [4] every fourth hole
        [5] every fifth hole
        [6] every sixth hole
        [7] every seventh hole
        [8] every eighth hole
        [9] every ninth hole
        [10] every tenth hole
        [11] every eleventh hole
        [12] every twelfth hole
       *[other] one hole of every { $step }
    }{ $few ->
        [yes] : holes { $most } and { $last }.
       *[no] { " " }from hole { $first } on.
    } { $rim ->
        [top] { $staggered ->
            [yes] Top pin 1 stands half way between bottom pins 1 and 2, and so on round.
           *[no] Each top pin stands straight above a bottom pin.
        }
       *[bottom] Bottom pin 1 stands in hole 1.
    } Use pins { $length } long{ $key ->
        [none] { "" }
       *[other] { " " }and the hex key, { $key }
    }.{ $key ->
        [none] { "" }
       *[other] { " " }Turn each pin in by hand until it bears on the tube.
    }
rig-pins-say-brief = Set { $count } pins in the { $rim ->
        [top] top
       *[bottom] bottom
    } ring, in { $step ->
        [1] every hole
        [2] every second hole
        [3] every third hole
        [4] every fourth hole
        [5] every fifth hole
        [6] every sixth hole
        [7] every seventh hole
        [8] every eighth hole
        [9] every ninth hole
        [10] every tenth hole
        [11] every eleventh hole
        [12] every twelfth hole
       *[other] one hole of every { $step }
    }{ $few ->
        [yes] : holes { $most } and { $last }.
       *[no] { " " }from hole { $first } on.
    }
rig-pins-say-teach = Set { $count } pins in the { $rim ->
        [top] top
       *[bottom] bottom
    } ring, in { $step ->
        [1] every hole
        [2] every second hole
        [3] every third hole
        [4] every fourth hole
        [5] every fifth hole
        [6] every sixth hole
        [7] every seventh hole
        [8] every eighth hole
        [9] every ninth hole
        [10] every tenth hole
        [11] every eleventh hole
        [12] every twelfth hole
       *[other] one hole of every { $step }
    }{ $few ->
        [yes] : holes { $most } and { $last }.
       *[no] { " " }from hole { $first } on.
    } { $rim ->
        [top] { $staggered ->
            [yes] Top pin 1 stands half way between bottom pins 1 and 2, and so on round.
           *[no] Each top pin stands straight above a bottom pin.
        }
       *[bottom] Bottom pin 1 stands in hole 1.
    } Use pins { $length } long{ $key ->
        [none] { "" }
       *[other] { " " }and the hex key, { $key }
    }. { $key ->
        [none] { "" }
       *[other] Turn each pin in by hand until it bears on the tube: that also keeps the ring from sliding.
    } Even distances between the pins make even loops.
rig-pins-show = { $rim ->
        [top] Top ring
       *[bottom] Bottom ring
    }: { $few ->
        [yes] holes { $most }, { $last }
       *[no] { $step ->
            [1] every hole from { $first }
            [2] every second hole from { $first }
            [3] every third hole from { $first }
            [4] every fourth hole from { $first }
            [5] every fifth hole from { $first }
            [6] every sixth hole from { $first }
            [7] every seventh hole from { $first }
            [8] every eighth hole from { $first }
            [9] every ninth hole from { $first }
            [10] every tenth hole from { $first }
            [11] every eleventh hole from { $first }
            [12] every twelfth hole from { $first }
           *[other] one hole of every { $step } from { $first }
        }
    }
rig-pins-note = { $rim ->
        [top] { $staggered ->
            [yes] Staggered: half way between the bottom pins
           *[no] Straight above the bottom pins
        }
       *[bottom] { $count } pins, pin 1 in hole 1
    }
rig-pins-note-how = Pins { $length }{ $key ->
        [none] { "" }
       *[other] , hex key { $key }
    }{ $key ->
        [none] { "" }
       *[other] . By hand, until they bear
    }

# Example: Rigging, step 3 of 7. Set the top ring so that its row of holes stands 42 millimetres
# above the row of the bottom ring, from pin row to pin row. Turn it until its hole 1 stands straight above bottom hole 1.
# $half: yes when the ring is turned half a hole on.
rig-space-say = Set the top ring so that its row of holes stands { $spacing } above the row of the bottom ring, from pin row to pin row. { $half ->
        [yes] Turn it until its hole 1 stands half a hole to the { $hand ->
            [left] left
           *[right] right
        } of bottom hole 1, half way to bottom hole 2.
       *[no] Turn it until its hole 1 stands straight above bottom hole 1.
    }
rig-space-say-brief = Pin rows { $spacing } apart, { $half ->
        [yes] top hole 1 half a hole on to the { $hand ->
            [left] left.
           *[right] right.
        }
       *[no] top hole 1 above bottom hole 1.
    }
rig-space-say-teach = Set the top ring so that its row of holes stands { $spacing } above the row of the bottom ring, from pin row to pin row. { $half ->
        [yes] Turn it until its hole 1 stands half a hole to the { $hand ->
            [left] left
           *[right] right
        } of bottom hole 1, half way to bottom hole 2.
       *[no] Turn it until its hole 1 stands straight above bottom hole 1.
    } At that distance the legs have the slack that the finished knot needs.
rig-space-show = Pin rows { $spacing } apart
rig-space-note = { $half ->
        [yes] Top ring half a hole on to the { $hand ->
            [left] left
           *[right] right
        }
       *[no] Top hole 1 straight above bottom hole 1
    }

## Rigging: a tube without rings

# $length: of the strip. $pitch: from mark to mark. $shift: how far on top pin 1 stands, none when
# straight above. $spacing: from the bottom marks to the top marks.
rig-strip-say = { $rim ->
        [top] Set the { $pins } top pins { $spacing } above the bottom ones, with a strip of paper { $length } long and a mark every { $pitch }. { $shift ->
            [none] Top pin 1 stands straight above bottom pin 1.
           *[other] Top pin 1 stands { $shift } to the { $hand ->
                [left] left
               *[right] right
            } of bottom pin 1, half way to bottom pin 2.
        }
       *[bottom] Wrap a strip of paper { $length } long round the tube, with a mark every { $pitch }, and set the { $pins } bottom pins at the marks.
    }
rig-strip-say-brief = { $rim ->
        [top] Set the { $pins } top pins { $spacing } above the bottom ones, with a strip of paper { $length } long and a mark every { $pitch }. { $shift ->
            [none] Top pin 1 stands straight above bottom pin 1.
           *[other] Top pin 1 stands { $shift } to the { $hand ->
                [left] left
               *[right] right
            } of bottom pin 1, half way to bottom pin 2.
        }
       *[bottom] Wrap a strip of paper { $length } long round the tube, with a mark every { $pitch }, and set the { $pins } bottom pins at the marks.
    }
rig-strip-say-teach = { $rim ->
        [top] Set the { $pins } top pins { $spacing } above the bottom ones, with a strip of paper { $length } long and a mark every { $pitch }. { $shift ->
            [none] Top pin 1 stands straight above bottom pin 1.
           *[other] Top pin 1 stands { $shift } to the { $hand ->
                [left] left
               *[right] right
            } of bottom pin 1, half way to bottom pin 2.
        }
       *[bottom] Wrap a strip of paper { $length } long round the tube, with a mark every { $pitch }, and set the { $pins } bottom pins at the marks.
    } The strip is as long as the tube is round, so its marks stand at even distances.
rig-strip-show = { $rim ->
        [top] Top pins { $spacing } above the bottom
       *[bottom] Bottom pins every { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] Straight above the bottom pins, every { $pitch }
           *[other] Staggered: { $shift } to the { $hand ->
                [left] left
               *[right] right
            }, every { $pitch }
        }
       *[bottom] { $pins } marks on a strip of { $length }
    }

## Rigging: numbers, cord, beginning

# $rows: rows of pins at each rim, more than one where bights are nested.
rig-number-say = Stick tape, { $tape } in all, or strips of paper that come off again, { $rows ->
        [one] beside both rings of pins
       *[other] beside every row of pins, for each row in a colour of its own if you like
    }. Number the pins on it from 1 to { $pins }, to the { $hand ->
        [left] left
       *[right] right
    }, the same at the bottom and at the top.
rig-number-say-brief = Number the pins on tape, 1 to { $pins }, to the { $hand ->
        [left] left
       *[right] right
    }.
rig-number-say-teach = Stick tape, { $tape } in all, or strips of paper that come off again, { $rows ->
        [one] beside both rings of pins
       *[other] beside every row of pins, for each row in a colour of its own if you like
    }. Number the pins on it from 1 to { $pins }, to the { $hand ->
        [left] left
       *[right] right
    }, the same at the bottom and at the top. Every step calls the pins by these numbers.
rig-number-show = Number the pins 1 to { $pins }
rig-number-note = On { $tape } of tape, to the { $hand ->
        [left] left
       *[right] right
    }, { $rows ->
        [one] top and bottom alike
       *[other] all rows alike, each in a colour of its own if you like
    }

# $name: what the tyer calls the cord, or none.
rig-cut-say = Cut { $pieces ->
        [one] 1 piece
       *[other] { $pieces } pieces
    } of cord{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $length } long{ $pieces ->
        [one] { "" }
       *[other] { " " }each
    }. That includes the tails.
rig-cut-say-brief = Cut { $pieces ->
        [one] 1 piece
       *[other] { $pieces } pieces
    } of cord{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $length } long{ $pieces ->
        [one] { "" }
       *[other] { " " }each
    }.
rig-cut-say-teach = Cut { $pieces ->
        [one] 1 piece
       *[other] { $pieces } pieces
    } of cord{ $name ->
        [none] { "" }
       *[other] , { $name }
    }, { $length } long{ $pieces ->
        [one] { "" }
       *[other] { " " }each
    }. That includes the tails. Measure twice, cut once.
rig-cut-show = Cut { $pieces ->
        [one] { $length } of cord
       *[other] { $pieces } × { $length } of cord
    }
rig-cut-note = { $name ->
        [none] Tails included
       *[other] { $name }; tails included
    }
