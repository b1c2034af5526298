# What is covered: a round thing, a taper, a ball, a mat; slid on from a tube or tied in place. What can be wrong
# with it, one sentence each.
#
# $given: the text as it was typed. Lengths are one argument each with its unit (see lengths.ftl).

# $one, $other: object, girth, ball or mat.
ask-object-twice = Was bedeckt wird, ist zweimal angegeben, { $one ->
        [object] mit seinem Durchmesser
        [girth] mit seinem Umfang
        [ball] als Kugel
       *[mat] als Matte
    } und { $other ->
        [object] mit seinem Durchmesser
        [girth] mit seinem Umfang
        [ball] als Kugel
       *[mat] als Matte
    }: Gib nur eines von beiden an.
ask-halves = { $asking ->
        [mat] „{ $given }“ ist keine Größe einer Matte: Gib sie von Rand zu Rand an, etwa 150mm, oder mit ihrem Loch, etwa 150mm:60mm.
       *[object] „{ $given }“ sagt nicht, wie dick ein Stück ist, das dünner wird: Gib beide Enden mit einem Doppelpunkt dazwischen an, etwa 30mm:24mm.
    }
# $asking: any of the lengths of which there is one. $example: such a length.
ask-one-length = „{ $given }“ sind zwei Längen, und { $asking ->
        [ball] eine Kugel hat einen Durchmesser
       *[other] hier gibt es nur eine
    }: Gib eine an, etwa { $example }.
ask-taper-length = Ein Stück, das dünner wird, braucht die Länge, auf der es das tut, und es ist keine angegeben: Gib sie als zu bedeckende Länge an, etwa 120mm.
ask-end-thin = Das dünne Ende, { $end }, ist dünner als die Schnur von { $cord }: Nimm eine dünnere Schnur, oder lass den Knoten enden, wo der Gegenstand dicker ist.
ask-hole-wide = Ein Loch von { $hole } passt nicht in eine Matte von { $outer }: Gib erst den äußeren Rand und dann das Loch an, etwa 150mm:60mm.
# $asking: ball or mat.
ask-whole-cover = { $asking ->
        [ball] Eine Kugel wird von Pol zu Pol bedeckt und braucht daneben keine zu bedeckende Länge: Lass diese Länge weg.
       *[mat] Eine Matte hat ihre Größe und braucht daneben keine zu bedeckende Länge: Lass diese Länge weg, oder gib das Loch hinter dem äußeren Rand an, etwa 150mm:60mm.
    }
ask-in-place-unknown = An Ort und Stelle heißt yes (ja) oder no (nein), und „{ $given }“ ist keines davon: Sag yes für einen Knoten, der auf dem geknüpft wird, was er bedeckt.
ask-in-place-nothing = An Ort und Stelle wird auf dem geknüpft, was bedeckt wird, und das ist nicht angegeben: Gib an, wie dick es ist, etwa --object 30mm.
# $asking: tube, rows, pin, thread, wall, ring-width or tube-length.
ask-in-place-tube = Ein Knoten, der an Ort und Stelle geknüpft wird, braucht { $asking ->
        [tube] kein Rohr
        [rows] keine Lochreihen
        [pin] keine Stiftlänge
        [thread] kein Gewinde
        [wall] keine Wandstärke
        [ring-width] keine Ringbreite
       *[tube-length] keine Rohrlänge
    }: Lass das weg, oder lass „an Ort und Stelle“ weg und streif den Knoten vom Rohr über.
ask-mat-tube = Eine Matte wird flach auf einem Brett geknüpft und braucht { $asking ->
        [tube] kein Rohr
        [rows] keine Lochreihen
        [pin] keine Stiftlänge
        [thread] kein Gewinde
        [wall] keine Wandstärke
        [ring-width] keine Ringbreite
       *[tube-length] keine Rohrlänge
    }: Lass das weg.

ask-mat-in-place = Eine Matte wird immer dort geknüpft, wo sie bleibt, auf ihrem Brett: Lass --in-place weg.
order-not-on-stick = Weder eine Matte noch eine Kugel sitzt mit anderen Knoten auf einem Stock: Lass die Länge des Stocks weg, oder mach aus diesem Stück einen eigenen Auftrag.

## The knots that fit

# Of a taper, a ball and a mat; see fit-heading. $top: the other end of a taper. $hole: or none.
fit-heading-taper = { $count ->
        [0] Kein Knoten wird genau { $cover } lang auf einem Stück, das von { $object } auf { $top } dünner wird, mit Schnur von { $cord }
        [one] Ein Knoten bedeckt { $cover } auf einem Stück von { $object } bis { $top } Durchmesser mit Schnur von { $cord }
       *[other] { $count } Knoten bedecken { $cover } auf einem Stück von { $object } bis { $top } Durchmesser mit Schnur von { $cord }
    }{ $near ->
        [0] { "" }
        [one] , und einer kommt nahe daran
       *[other] , und { $near } kommen nahe daran
    }{ $shown ->
        [0] .
       *[other] ; die { $shown } besten zuerst.
    }
fit-heading-ball = { $count ->
        [0] Kein Knoten bedeckt gerade eine Kugel von { $object } Durchmesser mit Schnur von { $cord }
        [one] Ein Knoten bedeckt eine Kugel von { $object } Durchmesser mit Schnur von { $cord }
       *[other] { $count } Knoten bedecken eine Kugel von { $object } Durchmesser mit Schnur von { $cord }
    }{ $near ->
        [0] { "" }
        [one] , und einer kommt nahe daran
       *[other] , und { $near } kommen nahe daran
    }{ $shown ->
        [0] .
       *[other] ; die { $shown } besten zuerst.
    }
fit-heading-mat = { $count ->
        [0] Kein Knoten ergibt genau eine Matte von { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }mit einem Loch von { $hole }
        } mit Schnur von { $cord }
        [one] Ein Knoten ergibt eine Matte von { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }mit einem Loch von { $hole }
        } mit Schnur von { $cord }
       *[other] { $count } Knoten ergeben eine Matte von { $object }{ $hole ->
            [none] { "" }
           *[other] { " " }mit einem Loch von { $hole }
        } mit Schnur von { $cord }
    }{ $near ->
        [0] { "" }
        [one] , und einer kommt nahe daran
       *[other] , und { $near } kommen nahe daran
    }{ $shown ->
        [0] .
       *[other] ; die { $shown } besten zuerst.
    }

# Above what is done before the first leg. $on: tube, round, taper, ball or mat.
rig-where = { $on ->
        [tube] Auf dem Rohr
        [mat] Auf dem Brett
       *[round] Auf dem, was bedeckt wird
    }
