# La hoja impresa de una tabla: círculos de marcas a tamaño real.

# Los argumentos, como en inglés.
board-title = Hoja de tabla: { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, círculos de clavijas de { $outer } y { $inner } de ancho

board-how = Sujeta la hoja plana en la tabla con cinta y clava un alfiler en T en el centro de cada cruz marcada. La línea tenue es el camino de los dos primeros tramos: hacia dentro desde la clavija 1 del borde, y otra vez hacia fuera.
board-pages = Si hay varias páginas, no recortes ninguna: pon cada una sobre la línea de trazos de la anterior, cruz sobre cruz, y mide la línea de abajo antes de clavar el primer alfiler.

board-hand = { $hand ->
        [left] La clavija 1 del borde es la más cercana a ti. Vistos desde ahí, los números van hacia la izquierda, como el cabo.
       *[right] La clavija 1 del borde es la más cercana a ti. Vistos desde ahí, los números van hacia la derecha, como el cabo.
    }

# Las cintas alrededor de lo que se cubre en su sitio. Los argumentos, como en inglés.
tape-title = Cintas: { $leads } ramales y { $bights } senos{ $nested ->
        [one] { "" }
       *[other] , { $nested } anidados{ $lands ->
            [0] { "" }
           *[other] , primer cabo a la fila { $lands }
        }
    }, { $bottom } de contorno { -at-bottom }, { $top } { -at-top }

tape-top = Cinta { -at-top }
tape-bottom = Cinta { -at-bottom }
