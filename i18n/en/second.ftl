# A second window, for another display: a class sees the step there.

key-second-window = second window for a class
# Said when it opens and when it is closed.
second-window-say = The step stands in a second window too, for a class to see. F12 closes it.
second-window-closed-say = The second window is closed.
# In it, before anything is tied.
second-window-waits = The step stands here as soon as a knot is begun.
