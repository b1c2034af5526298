# The screens of the app.

app-title = Marlinspeak

## The very first start, where nothing was ever begun

first-start-heading = Shall we tie the first one together?
first-start-what = A Turk’s head is a braid without an end round a rope, a rail or a handle. Here you tie one pin to pin on a tube, a step at a time.
first-start-needs = You need a tube some 45 mm across with two rings of five pins, the rings 12 mm apart; a metre of 4 mm cord, tape and a pick.
first-start-begin = Tie the first one
first-start-past = Something else
first-start-say = Shall we tie the first one together? You need a tube some 45 mm across with two rings of five pins, the rings 12 mm apart; a metre of 4 mm cord, tape and a pick. Press the space bar to begin, or tab for something else.

## The start screen

start-heading = What will you cover?
start-by-numbers = Or name the knot by its numbers
start-name-heading = Name the knot by its numbers
start-leads = Leads
start-bights = Bights
start-passes = Passes
start-weave = Weave (o over, u under)
# $example: a row code for the leads that stand in the form, such as ouou.
start-weave-hint = Empty is over one, under one, begun so that it takes the fewest tucks. 1 begins with over; 2 is over two; or a row code such as { $example } (o over, u under)
start-nested = Bights nested at each rim (empty: 1)
start-lands = First cord lands in row (empty: innermost)
start-hand = Work to the
start-hand-right = right
start-hand-left = left
start-side = Later passes lie
start-side-bottom = on the bottom-ring side
start-side-top = on the top-ring side
start-begin = Begin this tie

# What the knot in the form comes to.
# Example: 5 lead 7 bight, one strand. Each top pin stands half a step to the right of the bottom
# pin of its number.
# $tucks: in all passes. $other_tucks: the same begun with over, when it is begun with under, or 0. $staggered: yes or no. $uneven: yes when the weave leaves a fault at the rims. $turns: whole
# turns of the tube on each leg.
start-facts = { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $strands ->
        [one] one strand
       *[other] { $strands } strands
    }, { $tucks ->
        [one] 1 tuck
       *[other] { $tucks } tucks
    }{ $other_tucks ->
        [0] { "" }
       *[other] , or { $other_tucks } begun with over
    }. { $staggered ->
        [yes] Each { -top-pin } stands half a step to the { $hand ->
            [left] left
           *[right] right
        } of the { -bottom-pin } of its number.
       *[no] Each { -top-pin } stands { -straight-above } the { -bottom-pin } of its number.
    }{ $turns ->
        [0] { "" }
        [one] { " " }Every leg goes once { -round-the-tube } and more.
       *[other] { " " }Every leg goes { $turns } times { -round-the-tube } and more.
    }{ $uneven ->
        [yes] { " " }The pattern breaks at the edges in this weave.
       *[no] { "" }
    }

# What no knot must be trusted with, where one is chosen.
choice-caution = The knot only decorates: never let it hold a person or a load, and keep cord and small parts from small children.

# A knot of many evenings: it may be a slip of the hand. $legs: legs of all passes.
start-huge = { $leads } lead { $bights } bight has { $legs } legs, many evenings of work. Press once more to begin it, or change the numbers.

# A tie in the list. $kind: usual for over one, under one; run for other runs of $weave; twin for a run of
# $weave begun with under; code for another weave, row by row in $weave.
# Example: 5 lead 7 bight, 2 passes
# Example: 5 lead 7 bight, weave 2, to the left
start-tie = { $leads } lead { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }{ $passes ->
        [one] { "" }
        [2] , doubled
        [3] , tripled
       *[other] , { $passes } passes
    }{ $kind ->
        [usual] { "" }
        [run] , weave { $weave }
        [twin] { $weave ->
            [1] , begun with under
           *[other] , weave { $weave } begun with under
        }
       *[code] , weave { $weave }
    }{ $hand ->
        [left] , to the left
       *[right] { "" }
    }

# The same in its shortest form, by leads and bights.
start-tie-short = { $leads } × { $bights }{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested
    }{ $passes ->
        [one] { "" }
        [2] , doubled
        [3] , tripled
       *[other] , { $passes } passes
    }

# How a tie is told, beside it on the tying screen. $most: crossings at once, 0 for whole legs.
# Example: plain, 4 crossings at once
telling = { $detail ->
        [brief] brief
        [teach] teach
       *[plain] plain
    }, { $most ->
        [0] whole legs
        [one] 1 crossing at once
       *[other] { $most } crossings at once
    }

# Example: 7 of 24 legs laid, last touched 3 days ago
# $days: whole days since.
start-tie-progress = { $laid } of { $legs } legs laid, { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] touched just now
               *[other] touched { $minutes } min ago
            }
           *[other] touched { $hours } h ago
        }
        [one] touched yesterday
       *[other] touched { $days } days ago
    }

# Spoken when the app opens with a tie in progress.
start-offer-say = A tie is waiting: { $leads } lead, { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, { $laid } of { $legs } legs laid. Press the space bar to take it up, or tab for a new one.
# Spoken when it opens with none.
start-empty-say = No tie is waiting. Press the space bar to begin { $leads } lead, { $bights } bight{ $nested ->
        [one] { "" }
       *[other] , { $nested } nested{ $lands ->
            [0] { "" }
           *[other] , first cord to row { $lands }
        }
    }, or press tab to type another knot.

## The tying screen

# A part of the job in the strip of all of them, a word each. $part: kit (packing the bag), rig, lead,
# follow, lift, fair or finish.
job-part = { $part ->
        [kit] Bag
        [rig] Rigging
        [lead] Lead
        [follow] Follow
        [lift] { -Lifting }
        [fair] Fair
       *[finish] Finish
    }
# What is left of the job. $time: as in work-time. Example: about 25 min left
job-time-left = about { $time } left

# Said when the depth was changed, before the step. $detail: brief, plain or teach.
detail-say = { $detail ->
        [brief] Brief.
        [teach] Teaching.
       *[plain] Plain.
    }
# $most: crossings told at once at the most; $whole: yes when legs are told whole.
at-once-say = { $fair ->
        [leg] Leg by leg.
        [item] One thing at a time.
        [page] Several things at once.
        [round] The whole knot at once.
       *[no] { $whole ->
            [yes] Whole legs.
           *[no] Up to { $most ->
                [one] 1 crossing
               *[other] { $most } crossings
            } at once.
        }
    }

## What the app has to report

# In the bar of keys, as short as can be, while the voice is lost.
voice-lost-sign = No voice
voice-lost = No voice: the speech service does not answer. The steps go on in writing, and speech comes back by itself.
saving-foreseen = What you press at this tie cannot be saved ({ $reason }): it stays as it was kept, so note the step where you stop. To have it saved, see that the folder is yours to write to and that there is room on the disk; every press tries it again.
saving-failed = This tie cannot be saved ({ $reason }). It is tried again every second: make room on the disk, or see that the folder is yours to write to, and do not leave before it is saved.
saving-nowhere = This tie cannot be saved ({ $reason }): the folder of the ties cannot be reached. The steps go on; to keep this tie, see that the folder is yours to write to, and begin it anew.
saving-slow = Not saved yet: the disk is slow to answer. Go on tying, and do not leave while this stands here.
# $known: yes when the reason is known, else no.
leaving-unsaved = What you pressed last is not saved{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }. Close once more to leave without it, or go on and it is tried again.
saving-again = This tie is saved again.
focus-lost = Another window is taking the keys. Click here before you press on.

# A tie file that was set aside.
trouble-damaged = The file { $file } could not be read and was put aside as { $aside }; nothing in it was changed.
# The copy before a damaged file is used. $state: aside, gone or there. $copy: known, unknown or kept; $presses: how
# many presses it is behind.
trouble-restored = { $state ->
        [aside] The file { $file } was damaged and was put aside as { $aside }
        [gone] The file { $file } is gone
       *[there] The file { $file } is damaged
    }; { $copy ->
        [kept] the copy that was kept before it is used.
        [unknown] the copy before it is used, and how far that is behind cannot be told: hold the step against your work.
       *[known] { $presses ->
            [0] the copy before it is used, and it stands at the same step.
            [one] the copy from one press before it is used: hold the step against your work.
           *[other] the copy from { $presses } presses before it is used: hold the step against your work.
        }
    }
# $path: the file or folder. $reason: as in reasons.ftl.
trouble-io = “{ $path }” could not be reached ({ $reason }): see that its folder is there and has room, then try again.
trouble-in-use = This tie is open in another window or terminal: go on there, or press the same key again to look only.
