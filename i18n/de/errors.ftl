# One sentence for each thing that can go wrong: what is wrong, what is allowed, what to try.

# $quantity: leads, bights, passes, nested or lands. $given: what was typed.
knot-not-a-number = { $quantity ->
        [leads] Die Zahl der Parten
        [bights] Die Zahl der Buchten
        [nested] Die Zahl der ineinanderliegenden Buchten
        [lands] Die Reihe, in der die erste Schnur landet,
       *[passes] Die Zahl der Durchgänge
    } muss eine ganze Zahl sein, und „{ $given }“ ist keine: Gib eine Zahl von { $least } bis { $most } an, etwa { $example }.

# A field of the start screen is empty.
knot-empty = { $quantity ->
        [leads] Die Zahl der Parten
        [bights] Die Zahl der Buchten
       *[passes] Die Zahl der Durchgänge
    } fehlt noch: Gib eine ganze Zahl von { $least } bis { $most } an, etwa { $example }.

knot-out-of-range = { $quantity ->
        [leads] Die Zahl der Parten
        [bights] Die Zahl der Buchten
        [nested] Die Zahl der ineinanderliegenden Buchten
        [lands] Die Reihe, in der die erste Schnur landet,
       *[passes] Die Zahl der Durchgänge
    } geht von { $least } bis { $most }, und { $given } liegt nicht dazwischen: Versuch es mit { $example }.

knot-missing = { $quantity ->
        [leads] Die Zahl der Parten fehlt: Füge --leads mit einer Zahl von { $least } bis { $most } hinzu, etwa --leads { $example }.
       *[bights] Die Zahl der Buchten fehlt: Füge --bights mit einer Zahl von { $least } bis { $most } hinzu, etwa --bights { $example }.
    }

knot-weave-unreadable = „{ $given }“ ist keine Flechtart: Gib eine Schrittzahl an wie 1 (über eins, unter eins) oder einen Reihencode aus den Buchstaben o (über) und u (unter), von der Reihe am Fuß an, etwa ouo.

# $rows: rows of crossings, one less than the leads.
knot-run-too-long = Eine Schrittzahl von { $given } passt nicht zu { $leads } Parten, denn sie kreuzen sich in { $rows ->
        [one] 1 Reihe
       *[other] { $rows } Reihen
    }: Nimm eine Schrittzahl von 1 bis { $rows } oder mehr Parten.

knot-code-length = Ein Reihencode aus { $letters ->
        [one] 1 Buchstaben
       *[other] { $letters } Buchstaben
    } passt nicht zu { $leads } Parten: Gib { $rows ->
        [one] einen Buchstaben an, o oder u, denn es gibt 1 Reihe.
       *[other] je einen Buchstaben, o oder u, für die { $rows } Reihen an, vom Fuß her.
    }

cords-unreadable = „{ $given }“ lässt eine Schnur ohne Namen: Gib Namen mit Kommas dazwischen an, etwa --cords blau,weiß.

# $given: how many names there are. $all: strands times passes. $example: a name for each strand.
cords-do-not-go = { $given ->
        [one] 1 Name einer Schnur passt nicht
       *[other] { $given } Namen von Schnüren passen nicht
    } zu diesem Knoten: { $strands ->
        [one] { $passes ->
            [one] Er hat einen Strang und einen Durchgang, also gib einen Namen an, etwa --cords blau.
           *[other] Gib einen Namen für jeden seiner { $passes } Durchgänge an, etwa --cords blau,weiß, oder einen Namen für alles zusammen.
        }
       *[other] { $passes ->
            [one] Gib einen Namen für jeden der { $strands } Stränge an, etwa { $example }.
           *[other] Gib einen Namen für jeden der { $strands } Stränge an, etwa { $example }, oder einen für jeden Durchgang jedes Strangs, { $all } Namen, die Durchgänge des ersten Strangs zuerst.
        }
    }
# Names of cords with commas between them, for examples.
cords-example = rot,weiß,blau,grün

choice-unknown = „{ $given }“ steht bei { $option } nicht zur Wahl: Möglich ist { $allowed }; versuch es mit { $option } { $example }.

language-unknown = Marlinspeak spricht „{ $given }“ nicht, sondern { $known }: Versuch es mit --lang { $example }.

# What the command line itself can get wrong.
cli-unknown-option = Eine Option oder einen Befehl „{ $given }“ gibt es hier nicht: „{ $help }“ zeigt, was es gibt.
cli-unknown-command = Eine Option oder einen Befehl „{ $given }“ gibt es hier nicht: „{ $before }“ kennt { $allowed }; „{ $help }“ zeigt, was jeder Befehl tut.
cli-which-command = Das ist kein vollständiger Befehl: „{ $before }“ kennt { $allowed }; „{ $help }“ zeigt, was jeder Befehl tut.
cli-missing-value-for = Die Option { $option } („{ $what }“) braucht einen Wert hinter sich: „{ $help }“ zeigt, welchen.
cli-missing-value = Die Option { $option } braucht einen Wert hinter sich: „{ $help }“ zeigt, welchen.
cli-twice = Die Option { $option } steht mehr als einmal da: Gib sie einmal an.
cli-options-first = Optionen, die einen Knoten nennen, kommen nach dem Befehl: Schreib „marlinspeak steps --leads 5 --bights 7“.
cli-needs-command = Das ist kein vollständiger Befehl: „{ $help }“ zeigt, wie er geschrieben wird.
cli-no-text = Ein Wort dieses Befehls ist kein Text (UTF-8): Schreib es neu; „{ $help }“ zeigt, wie er geschrieben wird.

at-once-unreadable = --at-once nimmt eine Zahl von Kreuzungen von 1 bis 999 oder „leg“ für ganze Bahnen, und „{ $given }“ ist keines von beiden: Versuch es mit --at-once 4.

app-no-display = Es gibt keinen Bildschirm, auf dem sich ein Fenster öffnen ließe: Starte Marlinspeak in einer grafischen Sitzung, oder nimm „marlinspeak steps“ im Terminal.
app-without-window = Dieses Marlinspeak wurde nur für das Terminal gebaut und hat kein Fenster: Nimm hier „marlinspeak tie“, oder installiere das mit Fenster.
app-window-failed = Das Fenster ließ sich auf dem Bildschirm „{ $display }“ nicht öffnen: Starte Marlinspeak in einer grafischen Sitzung, oder nimm „marlinspeak steps“ im Terminal.
app-fault = Marlinspeak hat wegen eines Fehlers im Programm angehalten, der im Protokoll vermerkt ist: Starte es neu und nimm den Knoten dort wieder auf, wo er gespeichert ist.
output-failed = Die Ausgabe ließ sich nicht schreiben ({ $reason }): Sieh nach, wohin sie geht, und versuch es noch einmal.

# $nested: rows of pins at each rim.
knot-lands-beyond = { $nested ->
        [one] Ein Knoten ohne ineinanderliegende Buchten hat 1 Reihe Stifte an jedem Rand, und keine Reihe { $given }: Lass die Reihe weg, in der die erste Schnur landet, oder leg an jedem Rand 2 Buchten ineinander.
       *[other] Die Stifte stehen in { $nested } Reihen an jedem Rand, 1 ist die äußerste, und eine Reihe { $given } gibt es nicht: Gib die Reihe, in der die erste Schnur landet, als Zahl von 1 bis { $nested } an.
    }
knot-no-leads-left = Bei { $leads } Parten bleibt für die weiteren Schnüre keine: Lass die erste Schnur in der innersten Reihe landen, in Reihe { $nested }, oder nimm 3 Parten oder mehr.
knot-weave-nested = Diese Flechtart passt nicht zu den { $rows } Reihen von Kreuzungen dieses Knotens mit ineinanderliegenden Buchten: Gib eine Schrittzahl von 1 bis { $rows } an oder einen Reihencode aus { $rows } Buchstaben, von der Reihe am Fuß an.
