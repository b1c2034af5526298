# Fichas para un curso, y un encargo en papel.

help-sheet-class = Hacer una ficha en letra grande para cada alumno, todas en un PDF, y al lado la imagen en movimiento para mostrarla
help-class-copies = Tantas fichas, cada una con un número, de 1 a 99
help-class-names = Una ficha para cada uno de estos, con el nombre en cada página: «Ada,Ben»
help-sheet-order = Hacer de un encargo una lista para comprar, preparar la bolsa y tejer
help-sheet-order-what = El encargo, como lo nombra «order list», o su archivo
class-who = ¿Para quién son las fichas? Da cuántas son, por ejemplo --copies 12, o los nombres, por ejemplo --names Ada,Ben.
class-copies-or-names = Las fichas se cuentan con --copies o se nombran con --names: da solo uno de los dos.
class-copies = --copies toma un número entero de 1 a { $most } y «{ $given }» no lo es: prueba con --copies 12.
class-names = «{ $given }» no es una lista de nombres: da hasta { $most } con una coma en medio, por ejemplo --names Ada,Ben.
class-out-ending = «{ $file }» no es el nombre de un PDF: que termine en «.pdf»; la imagen en movimiento lleva el mismo nombre con «.gif».
class-out-missing = No se dice dónde dejar las fichas: añade --out con el nombre de un PDF, por ejemplo --out curso.pdf; la imagen en movimiento lleva el mismo nombre con «.gif».
class-long = Las fichas tendrían en total más de { $most } cruces que imprimir: hazlas para menos alumnos cada vez.
class-stopped = Detenido tras { $page } de { $pages } imágenes: las fichas están y están enteras, la imagen animada falta.
help-class-out = El PDF de las fichas; la imagen en movimiento lleva el mismo nombre con «.gif»
order-pieces = Los nudos:
