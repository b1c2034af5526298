# What comes when everything is laid: lift the knot off the tube, fair it, finish the ends.
# Depths and arguments as in steps.ftl. Off the tube the pins are gone, so what was a pin is called
# by its bight.

## Lifting. $task: secure, top-pins, slide-ring, bottom-pins or slip-off. $pins: pins in a ring.
## $ends: ends of cord hanging out.

# Example: Take the 6 pins out of the top ring, one by one, and put them in a dish.
lift-say = { $task ->
        [secure] Everything is laid. { -before-lifting } mark { -bottom-bight } 1 with a scrap of tape, and see that { $ends ->
            [2] neither of the 2 ends
           *[other] none of the { $ends } ends
        } can slip back in: a loose knot in each is enough.
        [top-pins] Peel the tape off the tube, not the mark, then take the { $pins } pins out { -at-the-top }, one by one, and put them in a dish.
        [slide-ring] Slide the top ring, if there is one, up and off the tube. The bights stay as they are.
        [bottom-pins] Hold the knot with one hand, and take the { $pins } pins out { -at-the-bottom }.
        [over-ball] Slip the knot up off the tube and over the ball, the same way up. On the way its rims close in, and its middle stays as wide as it is.
        [marks] Peel the scraps of tape off the bights. Then draw the strips out from under the cords, a little at a time, one after the other. The knot stays where it is.
        [draw-pins] Draw the T-pins out one by one, from the outside in, and keep the mat flat with your other hand. Put them in a dish.
       *[slip-off] Slip the knot up off the tube and onto the object, the same way up. Turn it until the ends come out where you want them.{ $thick ->
            [bottom] { " " }The bottom rim goes to the thick end.
            [top] { " " }The top rim goes to the thick end.
           *[none] { "" }
        }
    }

lift-say-brief = { $task ->
        [secure] Mark { -bottom-bight } 1, secure the { $ends } ends.
        [top-pins] Top pins out, { $pins } of them.
        [slide-ring] Top ring off, if there is one.
        [bottom-pins] Bottom pins out, { $pins } of them.
        [over-ball] Slip the knot over the ball, the same way up.
        [marks] Scraps off the bights, strips out from under the cords.
        [draw-pins] T-pins out one by one, all { $all }, mat kept flat.
       *[slip-off] Slip the knot onto the object, the same way up.{ $thick ->
            [bottom] { " " }The bottom rim goes to the thick end.
            [top] { " " }The top rim goes to the thick end.
           *[none] { "" }
        }
    }

lift-say-teach = { $task ->
        [secure] Everything is laid. { -before-lifting } mark { -bottom-bight } 1 with a scrap of tape: { -once-they-are-gone }, every bight looks like the next, and you will count from there. See that { $ends ->
            [2] neither of the 2 ends
           *[other] none of the { $ends } ends
        } can slip back in: a loose knot in each is enough.
        [top-pins] Peel the tape off the tube, not the mark, then take the { $pins } pins out { -at-the-top }, one by one, and put them in a dish. The bights stay where they are, since the crossings hold them.
        [slide-ring] Slide the top ring, if there is one, up and off the tube. Go slowly, so that it drags no bight along.
        [bottom-pins] Hold the knot with one hand so that it cannot spring, and take the { $pins } pins out { -at-the-bottom }.
        [over-ball] Slip the knot up off the tube and over the ball, the same way up, without letting it twist. On the way its rims close in, and its middle stays as wide as it is: that holds it on the ball while you draw it up.
        [marks] Peel the scraps of tape off the bights. Then draw the strips out from under the cords, a little at a time, one after the other. The knot stays where it is. Tape that will not come is snipped between two bights, and pulled out in pieces.
        [draw-pins] Draw the T-pins out one by one, from the outside in, and put them in a dish. Keep the mat flat with your other hand: what is let go all at once springs up and loses its order.
       *[slip-off] Slip the knot up off the tube and onto the object, the same way up, without letting it twist. It will be loose, and that is good. Turn it until the ends come out where you want them.{ $thick ->
            [bottom] { " " }The bottom rim goes to the thick end.
            [top] { " " }The top rim goes to the thick end.
           *[none] { "" }
        }
    }

lift-show = { $task ->
        [secure] Mark { -bottom-bight } 1
        [top-pins] Take out the { -top-pins }
        [slide-ring] Slide the top ring off, if there is one
        [bottom-pins] Take out the { -bottom-pins }
        [over-ball] Slip the knot over the ball
        [marks] Take the marks off
        [draw-pins] Draw the T-pins out
       *[slip-off] Slip the knot onto the object
    }

lift-show-note = { $task ->
        [secure] { $ends ->
            [2] Neither of the 2 ends may slip back in
           *[other] None of the { $ends } ends may slip back in
        }
        [top-pins] { $pins } of them, into a dish
        [slide-ring] The bights stay as they are
        [bottom-pins] { $pins } of them; hold the knot with one hand
        [over-ball] The same way up: the rims close in, the middle stays
        [marks] Scraps off the bights, strips out from under the cords; the knot stays
        [draw-pins] All { $all }, one by one; keep the mat flat
       *[slip-off] The same way up, the ends where you want them{ $thick ->
            [bottom] , the bottom rim goes to the thick end
            [top] , the top rim goes to the thick end
           *[none] { "" }
        }
    }

## Fairing. $round of $rounds: how often the knot is gone through. $known: yes when $draw
## says what to draw out of this leg, and $gathered what is then in the hand: lengths with their
## unit. $first: yes where a cord begins, $last: yes where it ends.

# Example: Drawing up, time 1 of 3. Start at the tail and follow the cord all the way. Take a little slack out
# of every leg and work it on to the next, 24 legs, until it comes out at the working end.
fair-say = { $whole ->
        [yes] { $round ->
            [1] Drawing up, time { $round } of { $rounds }. { $cords ->
                [one] Start at the tail and follow the cord
               *[other] Go cord by cord, each from its own tail
            } all the way. { $known ->
                [yes] Take about { $draw } of slack out of every leg
               *[no] Take a little slack out of every leg
            } and work it on to the next, { $round-legs } legs{ $cords ->
                [one] { "" }
               *[other] {" "}in all
            }, until it comes out at the { $cords ->
                [one] working end.
               *[other] end of that cord.
            }
           *[other] Drawing up, time { $round } of { $rounds }. Once more { $cords ->
                [one] along the cord from the
               *[other] cord by cord, each from its own
            } tail: { $known ->
                [yes] about { $draw } of slack
               *[no] a little slack
            } out of each of the { $round-legs } legs, on to the { $cords ->
                [one] working end.
               *[other] end of its cord.
            }
        }
       *[no] { $round ->
            [1] First time
            [2] Second time
            [3] Third time
           *[other] Time { $round }
        } of { $rounds }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , pass { $pass }
        }. { $first ->
            [yes] Start at the tail.
           *[no] { "" }
        } Leg { $leg } of { $legs }, from { $heading ->
            [falling] { -top-bight } { $from } { -down } to { -bottom-bight } { $to }
           *[rising] { -bottom-bight } { $from } { -up } to { -top-bight } { $to }
        }: { $known ->
            [yes] pull out about { $draw } of slack and work it along to the next leg. You now carry { $gathered }.
           *[no] draw slack out of it, only so much that the crossings stay where they are, and pass it on.
        } { $last ->
            [yes] The cord ends here: let what you have gathered hang out.
           *[no] { "" }
        }
    }

fair-say-brief = { $whole ->
        [yes] Draw up, time { $round } of { $rounds }: { $cords ->
                [one] from the
               *[other] cord by cord from each
            } tail, { $known ->
            [yes] { $draw }
           *[no] a little
        } out of every leg.
       *[no] Time { $round } of { $rounds }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }{ $passes ->
            [one] { "" }
           *[other] , pass { $pass }
        }. { $heading ->
            [falling] { -Top-bight } { $from }, { -down-short } to { -bottom-bight } { $to }
           *[rising] { -Bottom-bight } { $from }, { -up-short } to { -top-bight } { $to }
        }: { $known ->
            [yes] draw { $draw }.
           *[no] draw the slack.
        } { $last ->
            [yes] Let it hang out.
           *[no] { "" }
        }
    }

fair-say-teach = { $whole ->
        [yes] Drawing up, time { $round } of { $rounds }. { $cords ->
                [one] Start at the tail and follow the cord
               *[other] Go cord by cord, each from its own tail
            } all the way. { -Lift-up } each leg { -with-the-pick }, { $known ->
            [yes] take about { $draw } of slack out of it
           *[no] take a little slack out of it
        } and work it on to the next, { $round-legs } legs. Pull no leg tight before its neighbours. Press fewer at once to go leg by leg.
       *[no] { $round ->
            [1] First time
            [2] Second time
            [3] Third time
           *[other] Time { $round }
        } of { $rounds }{ $strands ->
            [one] { "" }
           *[other] , strand { $strand }
        }{ $named ->
            [yes] , “{ $cord }”
           *[no] { "" }
        }{ $passes ->
            [one] { "" }
           *[other] , pass { $pass }
        }. { $first ->
            [yes] { $round ->
                [1] { $strand ->
                    [1] { $pass ->
                        [1] To fair a knot is to even it out: go along the cord from its tail and draw a little slack out of every leg, several times over, so that no leg is pulled tight before its neighbours.
                       *[other] { "" }
                    }
                   *[other] { "" }
                }
               *[other] { "" }
            } Start at the tail.
           *[no] { "" }
        } Leg { $leg } of { $legs }, from { $heading ->
            [falling] { -top-bight } { $from } { -down } to { -bottom-bight } { $to }
           *[rising] { -bottom-bight } { $from } { -up } to { -top-bight } { $to }
        }: { -lift-up } it { -with-the-pick } and { $known ->
            [yes] pull out about { $draw } of slack, and work it along to the next leg. You now carry { $gathered }.
           *[no] draw slack out of it, only so much that the crossings stay where they are, then pass it on along the cord.
        } { $last ->
            [yes] The cord ends here: let what you have gathered hang out.
           *[no] { "" }
        }
    }

# Example: Bottom 1 up to top 3: draw 9 mm
fair-show = { $whole ->
        [yes] Draw up, time { $round } of { $rounds }
       *[no] { $heading ->
            [falling] { -Top } { $from } { -down-short } to { -bottom } { $to }
           *[rising] { -Bottom } { $from } { -up-short } to { -top } { $to }
        }
    }

fair-show-note = { $whole ->
        [yes] { $known ->
            [yes] About { $draw } out of every leg
           *[no] A little out of every leg
        }, { $round-legs } { $cords ->
                [one] legs from the
               *[other] legs, cord by cord from each
            } tail on. Press [ for leg by leg
       *[no] { $known ->
            [yes] Draw about { $draw }; { $gathered } in the hand
           *[no] Draw the slack and pass it on
        } { $first ->
            [yes] (start at the tail)
           *[no] { "" }
        } { $last ->
            [yes] (let it hang out)
           *[no] { "" }
        }
    }

## Finishing. $task: tuck, join, trim, seal or done. $end: working or standing. $pin: the bottom bight where
## the end comes out. The end goes along the $cords cords from bottom bight $pin to top bight $top, on
## the side of the rim that $lane names. $under: yes when $order says what it goes over, and under
## what it is held at last.

# Example: The working end is at bottom bight 1. Lead it up towards top bight 3, beside the 2 cords that
# lie there, on the bottom-ring side. Over 2 cords, under 2. Pull it snug. Where it comes out, it will
# be cut.
finish-say = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } { $named ->
            [yes] Cord “{ $cord }”.
           *[no] { "" }
        } { $end ->
            [standing] The tail from the start
           *[working] The working end
        } is at { -bottom-bight } { $pin }. Undo any knot in it, and lead it { -up-towards } { -top-bight } { $top }, beside the { $cords ->
            [one] cord that lies there,
           *[other] { $cords } cords that lie there,
        } on the { $lane ->
            [top] { -top-ring }
           *[bottom] { -bottom-ring }
        } side. { $under ->
            [yes] { $order } Pull it snug. Where it comes out, it will be cut.
           *[no] Tuck it under the first cord that will take it. Where it comes out, it will be cut.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } Between { -bottom-bight } { $pin } and { -top-bight } { $top }, in row { $row } { -from-the-bottom }, two cords are joined. Draw both ends snug, and see that neither has slipped out of its crossing. Where they come out, they will be cut.
        [trim] Cut each of the { $ends } ends off where it comes out from under the cords, and leave a stub as long as the cord is thick.
        [seal] If the cord is nylon, polyester or another that melts, draw each stub out a little, seal it with heat away from the knot, let it get cold, and push it back under. Natural fibre is not sealed with heat: a drop of glue holds it.
        [press] Press the mat flat, under a board with something heavy on it. Then sew it from below where cords cross, or hold the crossings with glue, so that it keeps its shape.
       *[done] The knot is done: { $leads } lead, { $bights } bight{ $nested ->
           [one] { "" }
          *[other] , { $nested } nested{ $lands ->
               [0] { "" }
              *[other] , first cord to row { $lands }
           }
       }, { $passes ->
            [one] single.
            [2] doubled.
            [3] tripled.
           *[other] { $passes } passes.
        } That is a good piece of work. Note what you used, for next time.
    }

finish-say-brief = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } { $end ->
            [standing] Tail
           *[working] Working end
        }, { -bottom-bight } { $pin }, { -up-short } beside { $cords ->
            [one] the cord
           *[other] { $cords } cords
        } towards { -top-bight } { $top }, on the { $lane ->
            [top] { -top-ring }
           *[bottom] { -bottom-ring }
        } side. { $under ->
            [yes] { $order }
           *[no] Under the first cord that will take it.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } Join between { -bottom-bight } { $pin } and { -top-bight } { $top }, row { $row }: both ends snug.
        [trim] Cut the { $ends } ends off, a stub as long as the cord is thick.
        [seal] Seal the { $ends } ends, if they melt, and push them back under.
        [press] Press the mat flat, then sew or glue it from below.
       *[done] Done: { $leads } lead, { $bights } bight{ $nested ->
           [one] { "" }
          *[other] , { $nested } nested{ $lands ->
               [0] { "" }
              *[other] , first cord to row { $lands }
           }
       }, { $passes ->
            [one] single.
            [2] doubled.
            [3] tripled.
           *[other] { $passes } passes.
        }
    }

finish-say-teach = { $task ->
        [tuck] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } { $named ->
            [yes] Cord “{ $cord }”.
           *[no] { "" }
        } { $end ->
            [standing] The tail from the start
           *[working] The working end
        } is at { -bottom-bight } { $pin }. Undo any knot in it, and lead it { -up-towards } { -top-bight } { $top }, beside the { $cords ->
            [one] cord that lies there,
           *[other] { $cords } cords that lie there,
        } on the { $lane ->
            [top] { -top-ring }
           *[bottom] { -bottom-ring }
        } side. { $under ->
            [yes] { $order } Pull it snug. Where it comes out, it will be cut.
           *[no] Tuck it under the first cord that will take it. Where it comes out, it will be cut.
        } To tuck is to push the end under, opening the way { -with-the-pick }. { $end ->
            [standing] { "" }
           *[working] It follows the others once more, over and under as they go.
        }
        [join] { $strands ->
            [one] { "" }
           *[other] Strand { $strand }.
        } Between { -bottom-bight } { $pin } and { -top-bight } { $top }, in row { $row } { -from-the-bottom }, two cords are joined. Draw both ends snug, one after the other, and see that neither has slipped out of its crossing: it is what holds and hides them. Where they come out, they will be cut.
        [trim] First be sure that all the fairing is done: cord that is cut off cannot be put back. Cut each of the { $ends } ends off where it comes out from under the cords, and leave a stub as long as the cord is thick.
        [seal] If the cord is nylon, polyester or another that melts, draw each stub out a little, seal it with heat away from the knot, so that it does not fray, let it get cold, and push it back under. Natural fibre is not sealed with heat: a drop of glue holds it.
        [press] Press the mat flat, under a board with something heavy on it. Then sew it from below where cords cross, or hold the crossings with glue, so that it keeps its shape. A stitch at every third crossing will do, and none may show from above.
       *[done] The knot is done: { $leads } lead, { $bights } bight{ $nested ->
           [one] { "" }
          *[other] , { $nested } nested{ $lands ->
               [0] { "" }
              *[other] , first cord to row { $lands }
           }
       }, { $passes ->
            [one] single.
            [2] doubled.
            [3] tripled.
           *[other] { $passes } passes.
        } That is a good piece of work. Note what cord you used and how wide the knot came out, for next time.
    }

finish-show = { $task ->
        [tuck] { $end ->
            [standing] Tuck the tail at { -bottom } { $pin }
           *[working] Tuck the working end at { -bottom } { $pin }
        }
        [join] Draw the join snug
        [trim] Trim the { $ends } ends
        [seal] Seal the { $ends } ends
        [press] Press the mat, then sew or glue it
       *[done] The knot is done
    }

finish-show-note = { $task ->
        [tuck] Beside the { $cords ->
            [one] cord
           *[other] { $cords } cords
        } to { -top } { $top }, on the { $lane ->
            [top] { -top-ring }
           *[bottom] { -bottom-ring }
        } side{ $under ->
            [yes] . Leave it long: it is cut later
           *[no] , under the first cord that takes it
        }
        [join] Between { -bottom } { $pin } and { -top } { $top }, row { $row }. Both ends are in their crossing
        [trim] A stub as long as the cord is thick
        [seal] Away from the knot, then back under; glue for natural fibre
        [press] From below, where cords cross
       *[done] { $leads } lead { $bights } bight{ $nested ->
           [one] { "" }
          *[other] , { $nested } nested{ $lands ->
               [0] { "" }
              *[other] , first cord to row { $lands }
           }
       }. Note what you used.
    }

## Cautions, before what can hurt: spoken with the step, and on the screen as long as it stands.
## $caution: pins, fingers, blades, pick, heat, load, children, pull or rest.

caution-say = { $caution ->
        [pins] Mind the pins: they stick out, so keep eyes and palms clear of them.
        [blades] Cut and push away from your body, with the other hand behind the blade or the point.
        [pick] Push the pick away from your body and from the hand that holds the knot.
        [needle] Push the needle away from the hand that holds the mat. With glue, open a window, and keep it off your skin and out of your eyes.
        [heat] Careful: hot. Open a window, keep the flame clear of the knot and anything that burns, and do not touch the end until it is cold: molten cord sticks to the skin. A sealed end can be sharp.
        [load] It covers and decorates. Never let it hold a person or a load; for anything that does, follow local rules and ask qualified people.
        [children] Keep cords, pins and small parts away from small children, and never leave a cord round a neck.
        [pull] Pull gently, never with the cord wrapped round your hand, and keep your face clear of an end that may slip.
        [fingers] Never pull the cord tight round a finger, and slip it off at once when a finger turns pale or numb. Small children do not do this alone.
       *[rest] Rest your hands now and then.
    }

caution-show = { $caution ->
        [pins] Pins stick out: mind eyes and palms.
        [blades] Cut and push away from your body.
        [pick] Push the pick away from your body.
        [needle] Needle away from the hand that holds the mat. Glue: fresh air, off skin and eyes.
        [heat] Ventilate. Keep clear of anything that burns. Molten cord sticks and burns: let it cool. Sealed ends can be sharp.
        [load] Decorative only: never to hold a person or a load. For anything that does, follow local rules and ask qualified people.
        [children] Keep cords, pins and small parts away from small children; never a cord round a neck.
        [pull] Pull gently; never wrap the cord round your hand; keep your face clear of the end.
        [fingers] Keep the cord loose round your fingers: off at once when one turns pale or numb. Not for small children alone.
       *[rest] Rest your hands now and then.
    }
