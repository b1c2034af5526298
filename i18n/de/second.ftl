# Ein zweites Fenster für einen anderen Bildschirm: Dort sieht ein Kurs den Schritt.

key-second-window = zweites Fenster für einen Kurs
# Gesagt, wenn es aufgeht und wenn es zugeht.
second-window-say = Der Schritt steht jetzt auch in einem zweiten Fenster, für einen Kurs. F12 schließt es.
second-window-closed-say = Das zweite Fenster ist zu.
# Darin, bevor etwas geknüpft wird.
second-window-waits = Hier steht der Schritt, sobald ein Knoten begonnen ist.
