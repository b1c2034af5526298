# Una segunda ventana, para otra pantalla: allí ve el paso una clase.

key-second-window = segunda ventana para una clase
# Se dice cuando se abre y cuando se cierra.
second-window-say = El paso está también en una segunda ventana, para que lo vea una clase. F12 la cierra.
second-window-closed-say = La segunda ventana está cerrada.
# En ella, antes de hacer nada.
second-window-waits = Aquí estará el paso en cuanto se empiece un nudo.
