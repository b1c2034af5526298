# Object, cord and tube: what is asked, what can be wrong with it, and the knots that fit.
#
# Arguments that come back:
#   $asking   what was being said: object, girth, ball, mat, cover, cord, tube, rows, pin, thread,
#             wall, ring-width, tube-length, have
#   $given    the text as it was typed
#   lengths   each one argument with its unit (see lengths.ftl): "29.8 mm"

## A length that is none

ask-length-unreadable = { $asking ->
        [object] The diameter of the object
        [girth] The girth of the object
        [ball] The diameter of the ball
        [mat] The size of the mat
        [cover] The length to be covered
        [cord] The thickness of the cord
        [tube] The diameter of the tube
        [pin] The length of the pins
        [wall] The wall of the tube
        [ring-width] The width of the rings
        [tube-length] The length of the tube
       *[have] The cord at hand
    } cannot be “{ $given }”: give a number with mm, cm, m, in or ft, such as { $example }.
ask-length-unit = { $asking ->
        [object] The diameter of the object
        [girth] The girth of the object
        [ball] The diameter of the ball
        [mat] The size of the mat
        [cover] The length to be covered
        [cord] The thickness of the cord
        [tube] The diameter of the tube
        [pin] The length of the pins
        [wall] The wall of the tube
        [ring-width] The width of the rings
        [tube-length] The length of the tube
       *[have] The cord at hand
    } has a unit that is not known, “{ $unit }” in “{ $given }”: use mm, cm, m, in or ft, such as { $example }.
ask-length-comma = { $asking ->
        [object] The diameter of the object
        [girth] The girth of the object
        [ball] The diameter of the ball
        [mat] The size of the mat
        [cover] The length to be covered
        [cord] The thickness of the cord
        [tube] The diameter of the tube
        [pin] The length of the pins
        [wall] The wall of the tube
        [ring-width] The width of the rings
        [tube-length] The length of the tube
       *[have] The cord at hand
    } may be read two ways, “{ $given }”: write it with a point or without the comma.
ask-length-fraction = { $asking ->
        [object] The diameter of the object
        [girth] The girth of the object
        [ball] The diameter of the ball
        [mat] The size of the mat
        [cover] The length to be covered
        [cord] The thickness of the cord
        [tube] The diameter of the tube
        [pin] The length of the pins
        [wall] The wall of the tube
        [ring-width] The width of the rings
        [tube-length] The length of the tube
       *[have] The cord at hand
    } is a fraction without a unit, “{ $given }”: if it is inches, write { $given }in; else give it with mm or cm, such as { $example }.
ask-length-nought = { $asking ->
        [object] The diameter of the object
        [girth] The girth of the object
        [ball] The diameter of the ball
        [mat] The size of the mat
        [cover] The length to be covered
        [cord] The thickness of the cord
        [tube] The diameter of the tube
        [pin] The length of the pins
        [wall] The wall of the tube
        [ring-width] The width of the rings
        [tube-length] The length of the tube
       *[have] The cord at hand
    } must be more than zero and “{ $given }” is not: give a length such as { $example }.
ask-length-range = { $asking ->
        [object] The diameter of the object
        [girth] The girth of the object
        [ball] The diameter of the ball
        [mat] The size of the mat
        [cover] The length to be covered
        [cord] The thickness of the cord
        [tube] The diameter of the tube
        [pin] The length of the pins
        [wall] The wall of the tube
        [ring-width] The width of the rings
        [tube-length] The length of the tube
       *[have] The cord at hand
    } must be from 0.01 mm to 100 m and “{ $given }” is not: give a length such as { $example }.

## Rows, threads and names

ask-rows-unreadable = Rows are whole numbers of holes and “{ $given }” is something else: give one for each row of a ring, such as 14,20.
# $counted: rows or holes.
ask-count-range = { $counted ->
        [rows] A ring has { $least } to { $most } rows and { $given } are too many: give fewer.
       *[holes] A row has { $least } to { $most } holes and { $given } is not such a number: give the holes of each row, such as 14,20.
    }
# $known: the threads there are.
ask-thread-unknown = The thread “{ $given }” is not known: it may be { $known }; try M4 or M5.

ask-missing = { $asking ->
        [object] What is to be covered is missing: say how thick it is, such as --object 30mm, measure round it, such as --girth 94mm, or name a ball or a mat, such as --ball 38mm or --mat 150mm.
        [cover] The length to be covered is missing: add it, such as --cover 30mm.
        [cord] The cord is missing: add its thickness, such as --cord 4mm.
       *[tube] The tube is missing: add its diameter, such as --tube 45mm.
    }
# $given: what was typed.
ask-firm-unknown = “{ $given }” is not a kind of cord: say hard, soft or flat, such as --firm soft.
# $least, $most: the numbers taken. $soft: that of soft line.
ask-give-range = How closely a cord lies is a number from { $least } to { $most } and “{ $given }” is not one: try { $soft }, which is soft line.
ask-give-twice = The cord is told by its kind and by a number: give one of the two, --firm or --cord-give.
ask-price = A price is a number from 0 to { $most } and “{ $given }” is not one: give it without a currency, such as 0.35.
# A cord was named as shops name it. $designation: its type in the standard.
cord-understood = The cord is taken for nylon cord of type { $designation }, { $diameter } thick.
ask-without-tube = { $asking ->
        [rows] Rows belong to a tube and none is given
        [pin] A pin length belongs to a tube and none is given
        [thread] A thread belongs to a tube and none is given
        [ring-width] A width of rings belongs to a tube and none is given
        [tube-length] A length belongs to a tube whose diameter is known and none is given
       *[wall] A wall belongs to a tube and none is given
    }: add its diameter, such as 45mm.
ask-without-rings = A width of rings belongs to rings and none are given: add their rows of holes, such as 14,20.
# $standards: designations with a diameter. $kept: names of cords, or none.
ask-cord-unknown = “{ $given }” is not a cord: give its thickness, such as 4mm, or a standard cord ({ $standards }){ $kept ->
        [none] . Cords that you keep by name can be given too; none is kept yet.
       *[other] , or one that you keep: { $kept }.
    }
ask-cord-unmeasured = Cord { $designation } has no published thickness: measure yours and give that, such as 4mm.
ask-tube-unknown = “{ $given }” is not a tube: give its diameter, such as 45mm{ $kept ->
        [none] . Tubes that you keep by name can be given too; none is kept yet.
       *[other] , or one that you keep: { $kept }.
    }
ask-holes-close = A row of { $holes } holes on this tube puts them { $between } apart, and a pin needs { $pin }: give fewer holes or a thicker tube.
ask-wall-thick = A wall of { $wall } does not fit into a tube of { $tube }: give the thickness of the wall alone.

name-unusable = “{ $given }” is not a name to keep something by: use up to { $most } letters, beginning with a letter, such as oak.
name-standard = “{ $given }” is the name of a standard cord: choose another name.
# What is kept by name could not be read or written. $path: the file. $reason: as in reasons.ftl.
rack-failed = The tubes and cords kept by name could not be used ({ $path }: { $reason }): see to that file, or move it away to begin a new one.
rack-io = The tubes and cords kept by name could not be reached ({ $path }: { $reason }): see that the folder is there and yours to write to, and that the disk has room, then try again.
rack-newer = The tubes and cords kept by name were written by a newer Marlinspeak and are left alone: use the newer program.

## Why a tube cannot be rigged for a knot

# $can_take: bights that the tube takes.
rig-no-row = No row of this tube ({ $rows } holes) can be shared evenly among { $bights } bights: it takes { $can_take } bights.
rig-cord-thick = A cord of { $cord } is thicker than the tube of { $tube }: use a thinner cord or a thicker tube.
# $most_bights and $most_passes: the most that do go, or 0 for none.
rig-no-tuck = { $bights } bights in { $passes ->
        [one] 1 pass
       *[other] { $passes } passes
    } leave no room to tuck on this tube: use a tube of { $tube } or more{ $most_bights ->
        [0] { "" }
       *[other] , or at most { $most_bights } bights
    }{ $most_passes ->
        [0] { "" }
        [one] , or 1 pass
       *[other] , or at most { $most_passes } passes
    }.
# $gap: between the pins. $needed: what the cords of a bight take. $pin: pins no thicker than
# this would do, or none.
rig-pins-too-close = { $bights } pins on this tube leave { $gap } between them, and the cords of a bight need { $needed }: use a tube of { $tube } or more{ $most_bights ->
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
rig-tube-short = This knot with its rings takes up { $needed } of the tube, which is { $length } long: use a longer tube, or a knot of fewer leads.
shape-cord-thick = A cord of { $cord } is thicker than what it goes round, { $object }: use a cord of { $object } at the most.
# $cord_below: a cord thinner than this does, or none.
shape-too-full = { $bights } bights in { $passes ->
        [one] 1 pass
       *[other] { $passes } passes
    } of { $cord } cord do not go round the object side by side: use { $most_bights ->
        [0] { $most_passes ->
            [0] fewer bights and passes
            [one] 1 pass
           *[other] at most { $most_passes } passes
        }
       *[other] at most { $most_bights } bights
    }{ $cord_below ->
        [none] { "" }
       *[other] , or a cord thinner than { $cord_below }
    }.
shape-narrower = This knot is { $least } wide at the least and cannot cover just { $given }: use fewer leads, or cover more.
rig-cord-short = This knot takes { $needed } of cord and there are { $at_hand }: use more cord, fewer leads or fewer passes.
rig-with-what = No tube and cord are given: add them, such as --tube 45mm --rows 14,20 --cord 4mm, or what it is tied on in place, such as --object 30mm --in-place --cord 4mm.

## Why nothing fits, and what would

fit-cord-thick = Nothing fits: a cord of { $cord } is thicker than what it goes round, { $object }; use a thinner cord.
# $cord: a cord with which it goes round, or none.
fit-too-many-cords = The cords of this knot do not go round what it covers side by side: { $cord ->
        [none] take a much thinner cord, or cover something thicker.
       *[other] take a cord of { $cord }, or cover something thicker.
    }
# $cord: a cord with which something fits, or none.
fit-cover-short = Nothing fits: with this cord the narrowest knot is { $narrowest } wide, more than the { $wanted } to be covered; { $cord ->
        [none] cover more
       *[other] cover more, or use a cord of { $cord }
    }.
fit-cover-long = Nothing fits: knots that reach { $wanted } with this cord leave too much of the object bare; { $cord ->
        [none] cover less, or tie several knots side by side
       *[other] cover less, or use a cord of { $cord }
    }.
# $would_fit, $can_take: bights.
fit-no-row = Nothing fits this tube: the knots that would cover it have { $would_fit } bights, and the rows of the tube take { $can_take }; use another tube or a row that can be shared by one of these.
# $pin: pins no thicker than this would do as well, or none.
fit-tube-thin = Nothing fits this tube: { $tube } across, it is too thin for the cords; use a tube of { $would_do } or more{ $pin ->
        [none] { "" }
       *[other] , or pins no thicker than { $pin }
    }.
fit-tube-short = Nothing fits this tube: it is { $length } long, and a knot with its rings takes up { $would_do } at the least; use a longer tube.
# $others: knots that were not asked for.
fit-filtered = Nothing fits what you asked to see, and { $others ->
        [one] one other knot does
       *[other] { $others } other knots do
    }: ask for less at once.
fit-have-short = Nothing fits the cord at hand: the least that would do is { $least }, and there are { $at_hand }; get more cord, or give it less to cover.
fit-nothing = Nothing fits: try a thinner cord, another length to be covered, or no particular tube.

## The knots that fit

# $count: how many come out as long as asked. $near: how many miss that a little. $shown: how many are listed.
fit-heading = { $count ->
        [0] No knot comes out at just { $cover } on an object { $object } across with { $cord } cord
        [one] One knot covers { $cover } of an object { $object } across with { $cord } cord
       *[other] { $count } knots cover { $cover } of an object { $object } across with { $cord } cord
    }{ $near ->
        [0] { "" }
        [one] , and one comes near
       *[other] , and { $near } come near
    }{ $shown ->
        [0] .
       *[other] ; the { $shown } best first.
    }
# The parts of the list, each above its knots. $cover: the length asked for.
fit-section = { $section ->
        [single] Singles
        [doubled] Doubled
        [tripled] Tripled
        [interwoven] Interwoven, two bights nested
        [near] A little shorter or longer than { $cover }
        [hampered] Hard work on this tube
       *[further] { $ground ->
            [ball] Others
            [mat] Others
           *[round] Others that cover { $cover }
        }
    }
# Below the table, where a range begins with “~”.
fit-unsure = ~: drawn up tight, such a knot may come out up to a fifth narrower, since its cords lie closer than the rule says.
# Below the table, when interwoven knots are among plain ones. $nested: bights nested in them.
fit-interwoven = Interwoven knots have bights nested one inside the other, a cord for each: “--nested { $nested }” lists more of them.
fit-more = “--most { $count }” lists them all.
# Below the table.
# $pace: own when the log knows the tyer’s, or usual.
fit-times = { $pace ->
        [own] Times are at your own pace.
       *[usual] Times are at a usual pace, since the log does not know yours yet.
    }
# How long a tie takes, in $hours and $minutes of 5 each, and the same as it is said.
work-time = { $hours ->
        [0] { $minutes } min
       *[other] { $minutes ->
            [0] { $hours } h
           *[other] { $hours } h { $minutes } min
        }
    }
work-time-say = { $hours ->
        [0] { $minutes ->
            [one] 1 minute
           *[other] { $minutes } minutes
        }
        [one] 1 hour{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } minutes
        }
       *[other] { $hours } hours{ $minutes ->
            [0] { "" }
           *[other] { " " }{ $minutes } minutes
        }
    }
# The work on a tie. $time: as above. $pace: own or usual. $cost: an amount, or none.
labour = It takes { $tucks ->
        [one] 1 tuck
       *[other] { $tucks } tucks
    }{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(begun with over { $other_tucks })
    } and about { $time } { $pace ->
        [own] at your own pace
       *[usual] at a usual pace
    }{ $cost ->
        [none] .
       *[other] , and costs { $cost }.
    }
# Knots that the tube hampers stand last. $first: the place of the first of them; what to take care of with it follows.
fit-hampered = { $first ->
        [1] This tube makes hard work of all these knots; of the first:
       *[other] This tube makes hard work of the knots from number { $first } on; of that one:
    }
fit-twins = Each knot is given in the weave that takes fewest tucks: over one, under one, begun with over or with under, which look alike. “--weave 1” keeps the one begun with over.
# Ties that the figures of the knots listed were corrected from: $least to $most.
fit-corrected = { $least ->
        [0] Some figures are corrected by what you measured, { $most ->
            [one] 1 tie
           *[other] up to { $most } ties
        }.
       *[other] Corrected by what you measured, { $most ->
            [one] 1 tie
           *[other] { $most } ties
        }.
    }
# Heads of columns.
fit-head-rank = { "#" }
fit-head-leads = leads
fit-head-bights = bights
fit-head-passes = passes
fit-head-strands = strands
fit-head-width = width
fit-head-range = from – to
# $ground: mat or ball.
fit-head-bare = { $ground ->
        [mat] hole
       *[ball] bare
    }
fit-head-hides = hides
fit-head-scallop = scallops
fit-head-cord = cord to cut
fit-head-tucks = tucks
fit-head-time = time
fit-head-drawn = drawn up
fit-head-cost = cost
# What stands in them.
fit-cell-width = { $width }
fit-cell-range = { $sure ->
        [no] ~ { $tight } – { $widest }
       *[yes] { $tight } – { $widest }
    }
fit-cell-bare = { $bare ->
        [none] { "–" }
       *[other] { $bare }
    }
fit-cell-hides = { $hides } %
fit-cell-scallop = { $scallop }
fit-cell-cord = { $long }
fit-cell-time = { $time }
fit-cell-cost = { $cost }
fit-cell-drawn = { $drawn ->
        [tight] tight
        [eased] eased
       *[open] open
    }

# A knot on the plan screen, in large type. Example: 5 lead 7 bight, doubled
plan-answer = { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $passes ->
        [1] single
        [2] doubled
        [3] tripled
       *[other] { $passes } passes
    }
# Below it, in two lines. $drawn: where it is drawn up to between $tight and $widest. $scallop: how
# far the gaps between bights reach in. Example: 36 mm wide, tight (35.8 mm to 50.5 mm), hides 86 %, scallops 4.2 mm deep
plan-answer-shape = { $width } wide, { $drawn ->
        [tight] tight
        [eased] eased
       *[open] open
    } ({ $tight } to { $widest }{ $sure ->
        [no] , tight perhaps up to a fifth less
       *[yes] { "" }
    }), hides { $hides } %, scallops { $scallop } deep
# $other_tucks: tucks of the same weave begun with over, when this is begun with under, or 0.
# $time: as above. $cost: or none. Example: 1.88 m of cord, 28 legs at 66°, 36 tucks (begun with over 48), about 40 min
plan-answer-work = { $long } of cord{ $strands ->
        [one] { "" }
       *[other] { " " }in { $strands } strands
    }, { $legs } legs at { $angle }°, { $tucks } tucks{ $other_tucks ->
        [0] { "" }
       *[other] { " " }(begun with over { $other_tucks })
    }, about { $time }{ $cost ->
        [none] { "" }
       *[other] , costs { $cost }
    }
# Spoken when it is chosen. $rank: 1 is the best. $count: how many there are.
plan-answer-say = Knot { $rank } of { $count }: { $leads } lead, { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $passes ->
        [1] single
        [2] doubled
        [3] tripled
       *[other] { $passes } passes
    }{ $strands ->
        [one] { "" }
       *[other] , in { $strands } strands
    }. It comes out { $width } wide, { $drawn ->
        [tight] drawn up tight{ $sure ->
            [no] , perhaps up to a fifth narrower
           *[yes] { "" }
        }
        [eased] eased a little
       *[open] left open
    }{ $near ->
        [yes] , not just as asked
       *[no] { "" }
    }, and hides { $hides } per cent. It takes { $long } of cord, { $legs } legs, { $tucks } tucks and about { $time }{ $cost ->
        [none] .
       *[other] , and costs { $cost }.
    }

## A rigged tube, as the command rig prints it

# $on: tube, round, taper, ball or mat. $ground: what it is for: the same but tube.
rig-heading = { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $passes ->
        [1] single
        [2] doubled
        [3] tripled
       *[other] { $passes } passes
    }, { $on ->
        [round] in place on an object { $object } across
        [taper] in place on a taper from { $object } to { $top }
        [ball] in place on a ball { $object } across
        [mat] flat on a board, { $object } from edge to edge
       *[tube] on a tube { $tube } across{ $ground ->
            [taper] , for a taper from { $object } to { $top },
            [ball] , for a ball { $object } across,
           *[round] { "" }
        }
    } with { $cord } cord
# $ground: round, taper, ball or mat. $outer: a mat from edge to edge. $bare: what the bights leave open at the
# poles of a ball or in the middle of a mat, or none. $slack: or none.
rig-finished = Finished: { $ground ->
        [mat] { $outer } across, { $bare ->
            [none] its middle closed
           *[other] with a hole of { $bare }
        }, the ring { $width } wide
        [ball] { $width } wide along the ball, { $bare ->
            [none] its poles closed
           *[other] { $bare } bare at each pole
        }
       *[round] { $width } wide
    }, { $drawn ->
        [tight] drawn up tight{ $sure ->
            [no] , perhaps up to a fifth narrower
           *[yes] { "" }
        }
       *[open] opened from { $tight }
    }, hides { $hides } %, scallops { $scallop } deep{ $ground ->
        [mat] { "" }
       *[round] , legs { $angle }° from the axis
    }.{ $slack ->
        [none] { "" }
       *[other] { " " }Fairing draws { $slack } out of each leg.
    }
rig-in-the-bag = What you need
rig-all-holes = Holes { $holes }
rig-kept-tube = The tube is kept as { $name }: give --tube { $name } from now on.
rig-kept-cord = The cord is kept as { $name }: give --cord { $name } from now on.

# $option takes a whole number.
option-number = { $option } takes a whole number from { $least } to { $most } and “{ $given }” is not one: try { $option } { $example }.

## The plan screen

plan-heading = What will you cover?
plan-measure-across = across
plan-measure-round = round
plan-object = Its diameter
plan-girth = Its girth
plan-cover = Length to cover
plan-cord = Cord
plan-tube = Tube
plan-rows = Rows of holes
plan-pin = Pin length
plan-thread = Pin thread
plan-ring-width = Width of a ring
plan-tube-length = Tube length
plan-have = Cord at hand

plan-hint = Lengths as 30, 3 cm or 5/32 in. The tube, its rows and pins, and the cord at hand may stay empty.
plan-answers = Knots that fit
plan-all = { $count ->
        [one] One knot fits
       *[other] { $count } knots fit, best first
    }
plan-wanting = { $asking ->
        [cover] How much of it is to be covered?
       *[cord] How thick is the cord?
    }
# Below the answers, when no tube is named.
plan-without-tube = Name a tube too, and you are led through the rigging step by step.

# A filter above the list. $filter: passes, from-three, one-cord, most-legs, firm or weave. $key: its key.
# $choice: what it is set to, 0 for every knot; passes 1 to 4, legs at the most. Example: F2: doubled
plan-filter = { $key }: { $filter ->
        [passes] { $choice ->
            [0] all passes
            [1] single
            [2] doubled
            [3] tripled
           *[other] { $choice } passes
        }
        [from-three] { $choice ->
            [0] all leads and bights
           *[other] 3 leads, 3 bights and up
        }
        [one-cord] { $choice ->
            [0] all cords
           *[other] one cord
        }
        [most-legs] { $choice ->
            [0] any length
           *[other] { $choice } legs at most
        }
        [nested] { $choice ->
            [0] plain and interwoven
            [1] no nested bights
           *[other] { $choice } bights nested
        }
        [firm] { $choice ->
            [0] cord as kept
            [1] hard round cord
            [2] soft cord
           *[other] flat or hollow cord
        }
       *[weave] { $choice ->
            [0] fewest tucks
           *[other] begun with over
        }
    }
# The same, said when it is changed.
plan-filter-say = { $filter ->
        [passes] { $choice ->
            [0] Knots of any number of passes.
            [1] Single knots only.
            [2] Doubled knots only.
            [3] Tripled knots only.
           *[other] Knots of { $choice } passes only.
        }
        [from-three] { $choice ->
            [0] Any leads and bights.
           *[other] Three leads and three bights, or more.
        }
        [one-cord] { $choice ->
            [0] Knots of any number of cords.
           *[other] Knots of one cord only.
        }
        [most-legs] { $choice ->
            [0] Ties of any length.
           *[other] Ties of { $choice } legs at the most.
        }
        [nested] { $choice ->
            [0] Plain knots, and the best interwoven ones.
            [1] Plain knots only, with no nested bights.
           *[other] Interwoven knots only, { $choice } bights nested at each rim.
        }
        [firm] { $choice ->
            [0] The cord as it is kept, or else soft.
            [1] Hard round cord, which keeps its shape.
            [2] Soft cord, braided or laid.
           *[other] Flat or hollow cord, which lies close.
        }
       *[weave] { $choice ->
            [0] The weave that takes the fewest tucks.
           *[other] Over one, under one, begun with over.
        }
    }

# The plan screen, come back to with something filled in.
plan-again-say = Plan, as you left it.
plan-say = Plan. Choose what you cover and whether the knot can slide on, then type how thick it is, how much of it to cover, and the cord. Tab moves on, the arrows up and down choose a knot, Enter takes it.
# Said when a field is come to. $text: what is typed there, or none.
# Example: Cord: 4mm. Page down goes through those known.
plan-field-say = { $asking ->
        [object] Diameter of the object
        [girth] Girth of the object
        [ball] Diameter of the ball
        [mat] Size of the mat
        [in-place] Tied on what it covers
        [cover] Length to cover
        [cord] Cord
        [tube] Tube
        [rows] Rows of holes in each ring
        [pin] Length of the pins
        [thread] Thread of the pins
        [ring-width] Width of each ring
        [tube-length] Length of the tube
       *[have] Cord at hand
    }{ $text ->
        [none] .
       *[other] : { $text }.
    }{ $asking ->
        [object] { " " }Page down changes to its girth.
        [girth] { " " }Page down changes to its diameter.
        [cord] { " " }Page down goes through those known.
        [tube] { " " }Page down goes through those kept.
       *[other] { "" }
    }

# $rows: holes of the rows of the tube. $nested: rows that are needed, in line.
rig-too-few-rows = { $nested } nested rows of { $bights } pins need { $nested } rows of holes that stand in line, and that can be shared evenly among { $bights } bights; this tube has { $rows } holes: use a strip of paper on a tube without rings, fewer nested bights, or another number of bights.
# $ring: width of the rings. $needed: the least that does. $nested: rows of pins at each rim.
rig-ring-narrow = { $nested } nested rows of pins with their bights take rings at least { $needed } wide, and these are { $ring } wide: use wider rings, thinner cord, or a strip of paper on a tube without rings.
