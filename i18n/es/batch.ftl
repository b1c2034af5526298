# Varias piezas iguales, una tras otra.

batch-piece = { $stick ->
        [yes] nudo { $knot } de { $knots } del palo
       *[no] { $of ->
            [0] pieza { $number }
           *[other] pieza { $number } de { $of }
        }
    }{ $named ->
        [yes] , encargo «{ $order }»
       *[no] { "" }
    }
batch-piece-begun = { $stick ->
        [yes] Nudo { $knot } de { $knots } del palo
       *[no] { $of ->
            [0] Pieza { $number }
           *[other] Pieza { $number } de { $of }
        }
    }{ $named ->
        [yes] , encargo «{ $order }»
       *[no] { "" }
    }.
batch-tube-stands = El tubo sigue como estaba, así que solo queda cortar el cabo. Si no es así, vuelve atrás desde aquí.
batch-ask-standing = ¿Sigue el tubo como estaba: { $pins } clavijas en cada extremo en los mismos sitios, los dos extremos a { $spacing }? Siguiente quiere decir sí, y solo queda cortar el cabo. Atrás quiere decir no, y primero vienen la bolsa y el montaje.
batch-standing-show = ¿Sigue el tubo como estaba?
batch-standing-note = { $pins } clavijas en cada extremo en los mismos sitios, los dos extremos a { $spacing }
batch-standing-note-keys = Siguiente: sí, solo queda cortar el cabo. Atrás: no, primero la bolsa y el montaje.
batch-piece-done = { $stick ->
        [yes] El nudo { $knot } de { $knots } del palo está hecho
       *[no] { $of ->
            [0] La pieza { $number } está hecha
           *[other] La pieza { $number } de { $of } está hecha
        }
    }{ $time ->
        [none] .
       *[other] , en { $time }.
    }{ $mean ->
        [none] { "" }
       *[other] { " " }La media de { $pieces } piezas es { $mean }.
    }{ $more ->
        [yes] { $next ->
            [none] { "" }
           *[other] { " " }Otra debería llevar { $next }.
        }{ " " }Siguiente empieza { $stick ->
            [yes] el nudo { $following }
           *[no] la pieza { $following }
        }; L anota lo que se ha gastado.
       *[no] { $rest ->
            [yes] { " " }Al nudo siguiente lleva el encargo.
           *[no] { $of ->
                [0] { "" }
               *[other] { " " }Era la última.
            }
        }{ " " }L anota lo que se ha gastado.
    }
batch-all-tied = De la pieza { $piece } están hechas las { $of }.
batch-pieces-number = --pieces toma un número entero de 2 a { $most } y «{ $given }» no lo es: prueba con --pieces 10.
batch-order-or-knot = Un encargo ya tiene sus nudos: da o --from-order o un nudo.
batch-pieces-what = --pieces necesita un nudo que tejer tantas veces: añade --leads y --bights.
batch-piece-what = --piece es de un encargo: añade --from-order con su nombre.
key-next-piece = pieza siguiente
help-tie-pieces = Tejer tantas piezas, una tras otra, de 2 a 999
help-tie-order = El nudo siguiente de un encargo, como lo nombra «order list»
help-tie-piece = La pieza del encargo, por su número [si falta: la primera de la que quedan por tejer]
