# Klopfen auf die Werkbank: wo es ausprobiert wird, und was vom Mikrofon gesagt wird.

knocks-heading = Klopfen auf die Werkbank
knocks-try = Leg das Mikrofon auf die Werkbank und klopf zweimal, so wie später beim Knüpfen. Klopf mit leerer Hand, nie mit Klinge oder Nadel darin. Jedes erkannte Klopfen wird hier gezeigt und gesagt; sonst bewirkt es hier nichts.
knocks-off = Klopfen ist ausgeschaltet, also hört kein Mikrofon zu. Weiter schaltet es ein. Nichts wird aufgenommen oder behalten.
# Said when they are switched on there.
knocks-on = Klopfen ist eingeschaltet: Ein Mikrofon hört zu. Nichts wird aufgenommen oder behalten; nur wann und wie laut geklopft wurde, geht weiter.

# Wie laut es jetzt ist. $under: um wie viele Dezibel das unter dem Lautesten liegt.
knocks-level = Lautstärke jetzt: { $under ->
        [one] 1 Dezibel
       *[other] { $under } Dezibel
    } unter dem Lautesten, was das Mikrofon hören kann.
knocks-level-none = Lautstärke jetzt: Von einem Mikrofon kommt nichts.

# Ein Klopfen, das erkannt wurde. $number: wie oft. $over: wie weit es aus dem Raum hervorsticht, in Dezibel. $clear:
# faint, wo das zu wenig ist, um immer erkannt zu werden, sonst clear.
knocks-taken = { $number ->
        [one] Einmal geklopft
       *[other] { $number }-mal geklopft
    }, { $over } Dezibel über dem Raumgeräusch: { $clear ->
        [faint] schwach. Leg das Mikrofon näher, oder klopf fester.
       *[clear] deutlich.
    }

no-microphone = Es ist kein Mikrofon da, um Klopfen zu hören. Tasten und Pedale gehen wie zuvor; sobald eines da ist, hört es zu.
microphone-again = Das Mikrofon ist wieder da: Klopfen wird gehört.
