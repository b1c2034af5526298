# Eine Matte auf einem Brett: zwei Kreise von T-Stiften. Der äußere heißt nach der Kante der Matte, der innere nach ihrem
# Loch: „außen“ und „innen“ sagt schon, wo eine Schnur in der Bucht liegt.

-all-through = Bei jedem Durchstecken geht sie ganz hindurch.
-At-the-bottom = An der Kante
-at-the-bottom = an der Kante
-At-the-top = Am Loch
-at-the-top = am Loch
-Back-down = Zurück auswärts
-Back-up = Zurück hinein
-before-lifting = Bevor die Stifte herauskommen,
-being-rigged = Das Brett wird eingerichtet:
-bottom = Kante
-bottom-bight = Kanten-Bucht
-bottom-bight-shown = Kanten-Bucht
-bottom-pin = Kanten-Stift
-bottom-pin-shown = Kanten-Stift
-bottom-pins = Kanten-Stiften
-bottom-side = Kanten-Seite
-bottom-side-shown = Kanten-Seite
-card-left = Arbeite nach links, im Uhrzeigersinn; so sind auch die Stifte nummeriert.
-card-right = Arbeite nach rechts, gegen den Uhrzeigersinn; so sind auch die Stifte nummeriert.
-coming-off = Beim Ziehen der Stifte
-down = auswärts
-down-short = auswärts
-exactly-above = auf einer Linie mit
-from-the-bottom = von der Kante her
-how-to-stand = Leg das Brett flach vor dich, und sieh von der Kante zum Loch. Dreh das Brett beim Arbeiten mit. Leg jede Bahn in einem weiten, losen Bogen um das Loch, wie im Bild, und zieh sie nie gerade.
-laid-and-lifted = Alles liegt, und die Stifte sind heraus;
-Lift-off = Nimm
-lift-off = nimm
-Lifting = Stifte heraus
-On-the-tube = Auf dem Brett
-on-the-tube = auf dem Brett
-on-the-tube-side = auf der Seite des Bretts
-one-row-up = eine Reihe weiter hinein
-planned-so = der mit Brett und Schnur geplant wurde.
-round-it = um das Loch
-round-the-tube = um das Loch herum
-straight-above = geradewegs hinter
-to-be-lifted = jetzt kommen die Stifte heraus.
-top = Loch
-top-bight = Loch-Bucht
-top-pin = Loch-Stift
-top-pins = Loch-Stiften
-top-pins-nom = Loch-Stifte
-top-side = Loch-Seite
-top-side-shown = Loch-Seite
-tops-staggered = die Loch-Stifte einen halben Abstand weiter.
-tops-straight = die Loch-Stifte auf einer Linie damit.
-towards-the-middle = zur Mitte zwischen den beiden Kreisen hin
-tube-is-empty = Das Brett ist leer.
-turn-it-round = Dreh das Brett einmal ganz herum
-up = hinein
-up-short = hinein
-upright = Brett flach, Blick von der Kante zum Loch.
-upright-shown = Brett flach, Ende festgeklebt. Weite Bögen, nie gerade gezogen.
-work-left = Du arbeitest nach links, im Uhrzeigersinn, und so sind die Stifte nummeriert.
-work-right = Du arbeitest nach rechts, gegen den Uhrzeigersinn, und so sind die Stifte nummeriert.

## Rows of nested bights: outside and inside are the circles

pin-of-row-say = { $number } der Reihe { $row }
pin-of-row-say-brief = { $number } Reihe { $row }
pin-of-row-say-teach = { $number } der Reihe { $row }
pin-of-row = { $number } (Reihe { $row })

## The legs: an arrow for the way along a tube means nothing on a mat

lay-show = { $heading ->
        [falling] { -top } { $from } { -down-short } zu { -bottom } { $to }
       *[rising] { -bottom } { $from } { -up-short } zu { -top } { $to }
    }

## The bag

kit-pins-say = Du brauchst, { $number } von { $items }: { $count } T-Stifte, mindestens { $length } lang. Weiter, wenn sie da sind.
kit-pins-say-brief = { $count } T-Stifte, mindestens { $length } lang.
kit-pins-say-teach = Du brauchst, { $number } von { $items }: { $count } T-Stifte, mindestens { $length } lang. Weiter, wenn sie da sind. Die Hälfte hält die Buchten an der Kante, die andere die am Loch.
kit-pins-show = { $count } T-Stifte, { $length }
kit-pins-note = { "" }
kit-tape-say-teach = Du brauchst, { $number } von { $items }: Kreppband, { $tape } und etwas Vorrat. Weiter, wenn es da ist. Es hält das stehende Ende und den gedruckten Bogen fest.

## On paper

card-pins = Setz je { $pins } T-Stifte gleichmäßig in { $rows ->
        [one] zwei Kreise
       *[other] alle Kreise
    }, { $staggered ->
        [yes] jeden Loch-Stift auf Lücke zwischen zwei Kanten-Stifte: Loch-Stift 1 einen halben Abstand weiter als Kanten-Stift 1.
       *[no] jeden Loch-Stift auf eine Linie mit dem Kanten-Stift seiner Nummer.
    }
card-pins-apart = Auf einem Kreis von { $tube } stehen die Stifte { $apart } auseinander, rundum gemessen.
card-lift = Stifte heraus: { -bottom-bight } 1 mit Klebeband markieren, und kein Ende zurückrutschen lassen. Die T-Stifte einzeln herausziehen und die Matte flach halten.
card-caution-pins = T-Stifte stehen aus dem Brett: Achte auf Augen und Handflächen.
