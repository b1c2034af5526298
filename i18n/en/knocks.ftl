# Knocks on the bench: where they are tried, and what is told of the microphone.

knocks-heading = Knocks on the bench
knocks-try = Lay the microphone on the bench and knock twice, as you will while you tie. Knock with an empty hand, never with a blade or needle in it. Each row that was taken is shown and said here; knocks do nothing else.
knocks-off = Knocks are switched off, so no microphone is listened to. Next switches them on. Nothing is recorded or kept.
# Said when they are switched on there.
knocks-on = Knocks are switched on: a microphone listens for them. Nothing is recorded or kept; only when a knock came and how loud it was is passed on.

# How loud it is now. $under: by how many decibels that is under the loudest.
# Example: How loud it is now: 41 decibels under the loudest that the microphone can hear.
knocks-level = How loud it is now: { $under ->
        [one] 1 decibel
       *[other] { $under } decibels
    } under the loudest that the microphone can hear.
knocks-level-none = How loud it is now: nothing comes from a microphone.

# A row of knocks that was taken. $number: how many. $over: how far they stood out from the room, in decibels. $clear:
# faint where that is too little to be taken every time, else clear.
# Example: 2 knocks, 24 decibels over the room: clear.
knocks-taken = { $number ->
        [one] 1 knock
       *[other] { $number } knocks
    }, { $over } decibels over the room: { $clear ->
        [faint] faint. Lay the microphone nearer, or knock harder.
       *[clear] clear.
    }

no-microphone = There is no microphone to hear knocks with. Keys and pedals work as before; it is listened to as soon as one is there.
microphone-again = The microphone is there again: knocks are heard.
