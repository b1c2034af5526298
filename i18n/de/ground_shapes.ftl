# Why a knot does not lie on a taper, a ball, a mat or in place, and what would; and what a mat is tied on.

# $most_leads and $most_bights: the most that do go, or 0 for none.
shape-wider = Dieser Knoten reicht höchstens über { $most } und kann nicht { $given } bedecken: Nimm mehr Parten, oder bedecke weniger.
shape-taper-short = Was sich so stark verjüngt, muss mehr als { $least } lang sein, und { $over } reichen nicht: Gib die Länge an, über die es sich verjüngt, oder Enden, die sich weniger unterscheiden.
shape-thin-end = { $leads } Parten reichen bis dorthin, wo { $bights } Buchten nicht mehr um das dünne Ende passen, das { $thick_from } dick sein müsste: Nimm { $most_leads ->
        [0] { $most_bights ->
            [0] weniger Parten und Buchten
           *[other] höchstens { $most_bights } Buchten
        }
       *[other] höchstens { $most_leads } Parten{ $most_bights ->
            [0] { "" }
           *[other] , oder höchstens { $most_bights } Buchten
        }
    }, oder eine dünnere Schnur.
shape-ball-full = { $leads } Parten und { $bights } Buchten sind mehr, als eine Kugel von { $ball } fasst: Nimm { $most_leads ->
        [0] { $most_bights ->
            [0] weniger Parten und Buchten
           *[other] höchstens { $most_bights } Buchten
        }
       *[other] höchstens { $most_leads } Parten{ $most_bights ->
            [0] { "" }
           *[other] , oder höchstens { $most_bights } Buchten
        }
    }, oder eine Kugel von { $ball_from }, oder eine dünnere Schnur.
# $cord_to: the thickest cord that does.
shape-ball-small = Eine Schnur von { $cord } ist zu dick, um sich um eine Kugel von { $ball } zu biegen: Nimm eine Schnur von höchstens { $cord_to }, oder eine Kugel von mindestens { $ball_from }.
shape-mat-full = { $leads } Parten und { $bights } Buchten gehen nicht in eine Matte von { $outer }: Nimm { $most_leads ->
        [0] { $most_bights ->
            [0] weniger Parten und Buchten
           *[other] höchstens { $most_bights } Buchten
        }
       *[other] höchstens { $most_leads } Parten{ $most_bights ->
            [0] { "" }
           *[other] , oder höchstens { $most_bights } Buchten
        }
    }, oder eine Matte von { $outer_from }, oder eine dünnere Schnur.
shape-hole-small = { $bights } Buchten passen nicht um ein Loch von { $hole }: Nimm { $most_bights ->
        [0] { "" }
       *[other] höchstens { $most_bights } Buchten, oder{" "}
    }ein Loch von mindestens { $hole_from }.
rig-no-room-in-place = { $leads } Parten und { $bights } Buchten in { $passes ->
        [one] 1 Durchgang
       *[other] { $passes } Durchgängen
    } lassen dort, wo geflochten wird, keinen Platz zum Durchstecken: Nimm { $most_leads ->
        [0] { "" }
       *[other] höchstens { $most_leads } Parten, oder{" "}
    }{ $most_bights ->
        [0] { "" }
       *[other] höchstens { $most_bights } Buchten, oder{" "}
    }{ $most_passes ->
        [0] { "" }
        [one] 1 Durchgang, oder{" "}
       *[other] höchstens { $most_passes } Durchgänge, oder{" "}
    }eine dünnere Schnur.

# Example: Du brauchst, 1 von 6: ein Brett aus Kork oder weichem Holz, mindestens 180 Millimeter breit. Weiter, wenn es da ist.
kit-board-say = Du brauchst, { $number } von { $items }: ein Brett aus Kork oder weichem Holz, mindestens { $across } breit. Weiter, wenn es da ist.
kit-board-say-brief = Ein Brett aus Kork oder weichem Holz, mindestens { $across } breit.
kit-board-say-teach = Du brauchst, { $number } von { $items }: ein Brett aus Kork oder weichem Holz, mindestens { $across } breit. Weiter, wenn es da ist. Die Matte wird flach darauf geflochten, um Stifte, die hineingesteckt werden.
kit-board-show = Brett aus Kork oder weichem Holz, { $across } breit
kit-board-note = Die Stifte kommen hinein

# The printed sheet of a board. $pages: of A4.
kit-sheet-say = Du brauchst, { $number } von { $items }: den gedruckten Bogen für die T-Stifte, { $pages ->
        [one] 1 Seite A4
       *[other] { $pages } Seiten A4
    } in wahrer Größe. Weiter, wenn er da ist.
kit-sheet-say-brief = Der gedruckte Bogen für die T-Stifte, { $pages ->
        [one] 1 Seite A4
       *[other] { $pages } Seiten A4
    } in wahrer Größe.
kit-sheet-say-teach = Du brauchst, { $number } von { $items }: den gedruckten Bogen für die T-Stifte, { $pages ->
        [one] 1 Seite A4
       *[other] { $pages } Seiten A4
    } in wahrer Größe. Weiter, wenn er da ist. Druck ihn bei den Papieren dieser Arbeit, und miss seine Linie nach: Ein Drucker, der verkleinert, verschiebt alle Marken.
kit-sheet-show = Gedruckter Bogen, { $pages ->
        [one] 1 Seite
       *[other] { $pages } Seiten
    }
kit-sheet-note = In wahrer Größe, bei den Papieren dieser Arbeit

# $bottom, $top: from mark to mark at either rim. $outer, $inner: across the circles of pins.
card-tapes-apart = Die Marken des einen Randes stehen { $bottom } auseinander, die des anderen { $top }, am Band entlang gemessen.
card-board-circles = Die Stifte stehen auf zwei Kreisen von { $outer } und { $inner } Durchmesser.

# $thinner, $thicker: a cord that would do, or none.
fit-none-lies = Kein Knoten aus dieser Schnur liegt dort und deckt genug: Nimm { $thinner ->
        [none] { $thicker ->
            [none] eine andere Schnur, oder bedecke etwas anderes
           *[other] eine Schnur von { $thicker }
        }
       *[other] eine Schnur von { $thinner }{ $thicker ->
            [none] { "" }
           *[other] {" "}oder von { $thicker }
        }
    }.
fit-no-room-in-place = Kein Knoten aus dieser Schnur lässt dort Platz zum Durchstecken: Nimm { $thinner ->
        [none] eine dünnere Schnur
       *[other] eine Schnur von { $thinner }
    }, oder flicht ihn auf einem dickeren Rohr und streif ihn über.

# In the picture of a board: which circle is which, beyond the outer one and within the inner one, as its pins are called.
picture-circle = { $circle ->
        [outer] Kante
       *[inner] Loch
    }

# In the picture of a tube: at the number of a pin that is round the back of it.
picture-behind = hinten
