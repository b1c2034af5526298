# Encargos: varias piezas para un cliente o varios nudos en un palo; qué comprar, qué meter en la bolsa,
# cuánto se tarda.

order-heading = { $named ->
        [yes] { $name }: { $count ->
            [one] 1 nudo
           *[other] { $count } nudos
        }
       *[no] { $count ->
            [one] 1 nudo
           *[other] { $count } nudos
        }
    }.
order-piece = { $count ->
        [one] 1 pieza
       *[other] { $count } piezas
    }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }: { $knot }, { $width } de ancho; { $count ->
        [one] lleva
       *[other] cada una lleva
    } { $length } de cabo{ $cords ->
        [one] { "" }
       *[other] , en { $cords } cabos,
    } y más o menos { $time }.
order-piece-tied = { $tied } de { $count } hechas.
order-to-buy = Para comprar:
order-cord = { $name ->
        [none] Cabo
       *[other] { $name }
    }, { $diameter } de grueso: { $length }{ $spools ->
        [0] { "" }
        [one] , 1 bobina de { $spool }
       *[other] , { $spools } bobinas de { $spool }
    }
order-cord-cut = { $pieces ->
        [one] 1 trozo
       *[other] { $pieces } trozos
    } de { $length }
# What all of a cord weighs. $heavy: yes for kilograms.
order-cord-weight = { $heavy ->
        [yes] en total, { $weight ->
            [one] cerca de 1 kilo
           *[other] unos { $weight } kilos
        }
       *[no] en total, { $weight ->
            [one] cerca de 1 gramo
           *[other] unos { $weight } gramos
        }
    }
order-cord-spool-short = Una bobina de { $spool } es demasiado corta para un trozo de { $length }: usa bobinas más largas o nombra un cabo para cada pasada, y los trozos serán más cortos.
order-bag = En la bolsa, para todo:
order-stick = A lo largo del palo de { $length }, desde su extremo:
order-stick-place = { $number }. { $named ->
        [yes] { $name }: de { $from } a { $to }
       *[no] de { $from } a { $to }
    }
order-stick-left = Detrás del último nudo quedan libres { $left }.
order-stick-short = Los nudos y los huecos miden { $left } de más para el palo de { $length }: deja huecos más pequeños, pon menos nudos o toma un palo más largo.
order-time = Todo junto lleva más o menos { $time } { $pace ->
        [own] a tu ritmo
       *[usual] a un ritmo corriente
    }{ $cost ->
        [none] .
       *[other] , y cuesta { $cost }.
    }

order-in-piece = Pieza { $number }{ $named ->
        [yes] , «{ $name }»
       *[no] { "" }
    }:
order-no-pieces = El encargo no tiene piezas: añade una, con ramales, senos, cabo y tubo.
order-too-many = Un encargo tiene { $most } piezas como mucho y este tiene { $given }: haz dos encargos.
order-count = Cuántas de una pieza es un número entero de 1 a { $most } y «{ $given }» no lo es: da uno, por ejemplo 10.
order-length = { $asking ->
        [gap] El hueco delante del nudo
        [stick] El largo del palo
       *[spool] El cabo de una bobina
    } no puede ser «{ $given }»: { $fault ->
        [unit] no se conoce la unidad; usa mm, cm, m, in o ft
        [comma] se puede leer de dos maneras; escríbelo con un punto o sin la coma
        [fraction] es una fracción sin unidad; escribe in detrás si son pulgadas
        [nought] tiene que ser más que cero
        [range] tiene que estar entre 0,01 mm y { $asking ->
            [spool] 1000 m
           *[other] 100 m
        }
       *[unreadable] da un número con mm, cm, m, in o ft
    }, por ejemplo { $asking ->
        [gap] 20mm
        [stick] 1m
       *[spool] 20m
    }.
order-waste = La merma es un número de 0 a { $most } por ciento y «{ $given }» no lo es: da uno, por ejemplo 5.
order-field-unknown = { $piece ->
        [0] El encargo
       *[other] La pieza { $piece }
    } tiene «{ $given }», que no significa nada: usa { $known }.
order-text-long = { $piece ->
        [0] En el encargo
       *[other] En la pieza { $piece }
    } «{ $field }» tiene más de { $most } caracteres: hazlo más corto.
order-none-of-name = No hay ningún encargo «{ $given }»: «marlinspeak order list» nombra los que hay.
order-piece-none = El encargo no tiene la pieza { $given }: tiene { $known }.

order-kept = Guardado como { $id }.
order-deleted = El encargo { $id } está borrado; «marlinspeak order undo { $id }» lo recupera.
order-undone = El encargo { $id } está de vuelta.
orders-none = No hay encargos guardados en { $folder }.
orders-backed-up = { $orders ->
        [0] { "" }
        [one] También está 1 encargo.
       *[other] También están { $orders } encargos.
    }
orders-came = { $orders ->
        [0] { "" }
        [one] También ha llegado 1 encargo.
       *[other] También han llegado { $orders } encargos.
    }

## The screen

orders-heading = { $orders ->
        [0] Aún no hay encargos
        [one] 1 encargo
       *[other] { $orders } encargos
    }.
orders-being-read = Se están leyendo los encargos.
orders-not-read = No se han podido leer los encargos.
orders-empty = Un encargo es una lista de nudos para un cliente o en un palo, con lo que hay que comprar. Pulsa siguiente para empezar uno.
orders-no-place = No hay carpeta donde guardar los encargos: arregla lo que se dijo de ella al empezar y vuelve a abrir el programa.
order-keys-list = N empieza un encargo, siguiente abre el que toca, B en su página teje de él.
order-keys-order = Siguiente cambia una línea o abre una pieza, A añade una pieza, B teje la que sigue.
order-keys-piece = Siguiente cambia una línea, B teje la que sigue.
order-piece-heading = Pieza { $number }{ $named ->
        [yes] , { $name }
       *[no] { "" }
    }.
order-label = { $field ->
        [name] Nombre del encargo
        [stick] Largo del palo en que van todos
        [spool] Cabo de una bobina
        [waste] Merma en por ciento
        [piece-name] Nombre
        [count] Cuántas
        [leads] Ramales
        [bights] Senos
        [passes] Pasadas
        [weave] Trama
        [cord] Cabo
        [tube] Tubo
        [rows] Agujeros de cada fila de un anillo
        [object] Grueso del objeto
        [ball] Diámetro de una bola
        [mat] Tapete, de borde a borde
        [in_place] Deslizado encima o hecho en su sitio
        [cover] Largo que se va a cubrir
       *[gap] Hueco delante en el palo
    }
# The same when it is typed, with how a taper and a hole are written. $label: the label.
order-asked = { $label }{ $field ->
        [object] . Si se afina, da los dos extremos con dos puntos en medio, primero el de abajo, por ejemplo 32:26 mm.
        [mat] . El hueco va detrás de dos puntos, por ejemplo 150:60 mm.
       *[other] { "" }
    }
order-entry = { $label }: { $filled ->
        [yes] { $value }
       *[no] sin decir
    }
order-is-deleted = Borrado. U lo recupera.
order-is-back = Está de vuelta.
order-piece-gone = Esa pieza ya no está en el encargo: no se ha cambiado nada.
order-piece-done = De esta pieza están hechas todas.
order-nothing-deleted = No hay nada borrado que pueda volver.
key-orders = encargos
key-new-order = encargo nuevo
key-add-piece = añadir una pieza
key-tie-next-piece = tejer la que sigue
key-open-or-change = abrir o cambiar

help-orders = Varias piezas a la vez: qué comprar, qué meter en la bolsa, horas, precio; guardado mientras las tejes
help-order-list = Nombrar los encargos guardados, los más nuevos primero
help-order-show = Decir en qué queda un encargo
help-order-plan = Decir en qué queda el encargo de un archivo, sin guardar nada
help-order-keep = Guardar el encargo de un archivo, o ponerlo en el lugar de uno guardado
help-order-delete = Borrar un encargo
help-order-undo = Recuperar un encargo borrado
help-order-name = El encargo, como lo nombra «order list»
help-order-file = El encargo como documento JSON, o - para la entrada estándar
help-order-as = El encargo que le deja su sitio
value-order = PEDIDO
