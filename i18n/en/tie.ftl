# The guided job in a terminal.

tie-keys = Space next, B or Page Up back, R again, H where am I, minus and plus speed, P pause, Q leave.
tie-keys-lines = Enter is next; b and enter back, r again, h where am I, q leave.
tie-left = The tie is kept where it stands: “marlinspeak tie” takes it up again.
tie-none-waiting = No tie is waiting to be taken up: name a knot, such as “marlinspeak tie --leads 3 --bights 4”.
