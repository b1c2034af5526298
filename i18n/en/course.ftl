# First ties: a short course of six knots, each taught in the teach depth. For each: its name, and
# the idea that is new in it, told before the tie begins.

course-heading = First ties
course-say = First ties: six knots, each a little harder than the one before, and the last without a tube. Arrow down and arrow up choose one; next begins it.

# A lesson in the list. $state: new, begun or done. Example: 1. 3 lead 4 bight: pins and legs (done)
course-line = { $number }. { $lesson ->
        [1] Bell rope, 3 lead 5 bight: pins, legs, over and under
        [2] Bottle collar, 3 lead 7 bight: the rhythm of the hand
        [3] Boathook ring, 4 lead 7 bight: pins in line, longer legs
        [4] Tiller grip, 5 lead 7 bight, doubled: following
        [6] Round your hand, 3 lead 4 bight: no tube, no pins
       *[5] Bell rope in two colours, two of 3 lead, 5 bight: lacing a second cord
    }{ $state ->
        [done] { " " }(done)
        [begun] { " " }(begun)
       *[new] { "" }
    }

# The same as it is spoken when the choice moves to it.
course-line-say = Lesson { $number } of { $lessons }: { $lesson ->
        [1] a bell rope, 3 lead, 5 bight.
        [2] a bottle collar, 3 lead, 7 bight.
        [3] a boathook ring, 4 lead, 7 bight.
        [4] a tiller grip, 5 lead, 7 bight, doubled.
        [6] round your hand, 3 lead, 4 bight, without tube and pins.
       *[5] a bell rope in two colours, two cords of 3 lead, 5 bight, interwoven.
    } { $state ->
        [done] You have tied it.
        [begun] You have begun it; it waits among your ties in progress.
       *[new] You have not tied it yet.
    }

# Beside the lesson that is chosen: how its weave begins. $kind: run when with over, twin when with under.
course-weave = Begins with { $kind ->
        [twin] under
       *[run] over
    }: { $tucks } tucks · W: begin with { $kind ->
        [twin] over
       *[run] under
    }
course-weave-say = The weave begins with { $kind ->
        [twin] under
       *[run] over
    } and takes { $tucks } tucks. W begins it the other way.

# The idea that is new, told before the first step and shown beside the choice.
course-idea = { $lesson ->
        [1] A small knot worth making, for the bell rope. Set five pins at each rim of the tube, the top ones half way between the bottom ones, and number them. The cord goes from a bottom pin up to a top pin and down again, always the same way round the tube. Each way across, up or down, is a leg. The first legs cross nothing; then each goes over and under by turns, and after ten legs the cord is back at its first pin.
        [2] The same braid with two more pins at each rim, a collar for a bottle. Nothing is new but the length: find the rhythm, up and down, over and under, and look at the work as you go. When a leg lands on another pin than you are told, something is wrong before it: press wrong and take it back.
        [3] An even number of leads, for the ring of a boathook. Now each top pin stands straight above a bottom pin, and a leg crosses three cords, over and under in turn; where it goes over on the way up, it goes under on the way down. Count the crossings of a leg before you draw it snug.
        [4] The grip of a tiller: broader, and the first knot that is doubled. When the lead pass is back at its first pin, the same cord goes round once more beside itself, always on the bottom-ring side of the first cord, over where it went over and under where it went under. At a crossing that has two cords by now, it goes over both or under both. Then the knot is lifted, faired and finished.
        [6] With nothing but a metre and a half of cord: the first knot round your own hand. Your four fingers, close together, are the tube, and every bight has a finger of its own, so nobody has to number pins. One side of the knot lies towards your wrist, the other towards your fingertips. The cord goes across the front of your fingers, the side of the palm, then behind them, and round again, and you turn the hand to see the side where you work. Lay it loosely, with room for another finger: what is loose is drawn up at the end. It is the very knot that is tied on a tube, leg for leg, and slips off your fingers onto the handle.
       *[5] The bell rope again, in two colours: a second cord is laced through the first. Set two rows of five pins at each rim, one inside the other and in line, and cut a cord of each colour. The first cord is the knot of the first lesson, from the outer bottom pins up to the inner top pins. The second goes from the inner bottom pins to the outer top pins, each leg midway between two legs of the first. What it crosses is told leg by leg; where the two colours lie evenly, it is right.
    }
