# Why a knot does not lie on a taper, a ball, a mat or in place, and what would; and what a mat is tied on.

# $most_leads and $most_bights: the most that do go, or 0 for none.
shape-wider = Este nudo alcanza { $most } como mucho y no puede cubrir { $given }: usa más ramales, o cubre menos.
shape-taper-short = Lo que adelgaza tanto tiene que medir más de { $least } de largo, y con { $over } no basta: da el largo en que adelgaza, o extremos menos distintos.
shape-thin-end = { $leads } ramales llegan a donde { $bights } senos ya no caben alrededor del extremo delgado, que tendría que medir { $thick_from }: usa { $most_leads ->
        [0] { $most_bights ->
            [0] menos ramales y menos senos
           *[other] como mucho { $most_bights } senos
        }
       *[other] como mucho { $most_leads } ramales{ $most_bights ->
            [0] { "" }
           *[other] , o como mucho { $most_bights } senos
        }
    }, o un cabo más fino.
shape-ball-full = { $leads } ramales y { $bights } senos son más de lo que admite una bola de { $ball }: usa { $most_leads ->
        [0] { $most_bights ->
            [0] menos ramales y menos senos
           *[other] como mucho { $most_bights } senos
        }
       *[other] como mucho { $most_leads } ramales{ $most_bights ->
            [0] { "" }
           *[other] , o como mucho { $most_bights } senos
        }
    }, o una bola de { $ball_from }, o un cabo más fino.
# $cord_to: the thickest cord that does.
shape-ball-small = Un cabo de { $cord } es demasiado grueso para doblarse alrededor de una bola de { $ball }: usa un cabo de { $cord_to } como mucho, o una bola de { $ball_from } por lo menos.
shape-mat-full = { $leads } ramales y { $bights } senos no caben en un tapete de { $outer }: usa { $most_leads ->
        [0] { $most_bights ->
            [0] menos ramales y menos senos
           *[other] como mucho { $most_bights } senos
        }
       *[other] como mucho { $most_leads } ramales{ $most_bights ->
            [0] { "" }
           *[other] , o como mucho { $most_bights } senos
        }
    }, o un tapete de { $outer_from }, o un cabo más fino.
shape-hole-small = { $bights } senos no caben alrededor de un hueco de { $hole }: usa { $most_bights ->
        [0] { "" }
       *[other] como mucho { $most_bights } senos, o{" "}
    }un hueco de { $hole_from } o más.
rig-no-room-in-place = { $leads } ramales y { $bights } senos en { $passes ->
        [one] 1 pasada
       *[other] { $passes } pasadas
    } no dejan sitio para pasar el cabo donde se hace el nudo: usa { $most_leads ->
        [0] { "" }
       *[other] como mucho { $most_leads } ramales, o{" "}
    }{ $most_bights ->
        [0] { "" }
       *[other] como mucho { $most_bights } senos, o{" "}
    }{ $most_passes ->
        [0] { "" }
        [one] 1 pasada, o{" "}
       *[other] como mucho { $most_passes } pasadas, o{" "}
    }un cabo más fino.

# Example: Necesitas, 1 de 6: una tabla de corcho o de madera blanda, de 180 milímetros de ancho como mínimo. Pulsa siguiente cuando la tengas.
kit-board-say = Necesitas, { $number } de { $items }: una tabla de corcho o de madera blanda, de { $across } de ancho como mínimo. Pulsa siguiente cuando la tengas.
kit-board-say-brief = Una tabla de corcho o de madera blanda, de { $across } de ancho como mínimo.
kit-board-say-teach = Necesitas, { $number } de { $items }: una tabla de corcho o de madera blanda, de { $across } de ancho como mínimo. Pulsa siguiente cuando la tengas. El tapete se hace plano sobre ella, alrededor de alfileres clavados.
kit-board-show = Tabla de corcho o de madera blanda, { $across } de ancho
kit-board-note = En ella se clavan los alfileres

# The printed sheet of a board. $pages: of A4.
kit-sheet-say = Necesitas, { $number } de { $items }: la hoja impresa para los alfileres, { $pages ->
        [one] 1 página A4
       *[other] { $pages } páginas A4
    } a tamaño real. Pulsa siguiente cuando la tengas.
kit-sheet-say-brief = La hoja impresa para los alfileres, { $pages ->
        [one] 1 página A4
       *[other] { $pages } páginas A4
    } a tamaño real.
kit-sheet-say-teach = Necesitas, { $number } de { $items }: la hoja impresa para los alfileres, { $pages ->
        [one] 1 página A4
       *[other] { $pages } páginas A4
    } a tamaño real. Pulsa siguiente cuando la tengas. Imprímela desde los papeles de este nudo, y mide su línea: una impresora que reduce mueve todas las marcas.
kit-sheet-show = Hoja impresa, { $pages ->
        [one] 1 página
       *[other] { $pages } páginas
    }
kit-sheet-note = A tamaño real, desde los papeles de este nudo

# $bottom, $top: from mark to mark at either rim. $outer, $inner: across the circles of pins.
card-tapes-apart = Las marcas de un borde van a { $bottom } una de otra, y las del otro a { $top }, midiendo a lo largo de la cinta.
card-board-circles = Los alfileres van en dos círculos, de { $outer } y { $inner } de diámetro.

# $thinner, $thicker: a cord that would do, or none.
fit-none-lies = Ningún nudo de este cabo queda ahí y tapa lo suficiente: usa { $thinner ->
        [none] { $thicker ->
            [none] otro cabo, o cubre otra cosa
           *[other] un cabo de { $thicker }
        }
       *[other] un cabo de { $thinner }{ $thicker ->
            [none] { "" }
           *[other] {" "}o de { $thicker }
        }
    }.
fit-no-room-in-place = Ningún nudo de este cabo deja ahí sitio para pasarlo: usa { $thinner ->
        [none] un cabo más fino
       *[other] un cabo de { $thinner }
    }, o hazlo en un tubo más grueso y mételo por el extremo.

# In the picture of a board: which circle is which, beyond the outer one and within the inner one, as its pins are called.
picture-circle = { $circle ->
        [outer] borde
       *[inner] hueco
    }

# In the picture of a tube: at the number of a pin that is round the back of it.
picture-behind = detrás
