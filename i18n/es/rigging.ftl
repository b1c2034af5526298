# Packing the bag and rigging the tube: steps like any other, before the first leg. A message
# ending in -say is spoken, one ending in -show stands on the screen, one ending in -note below
# it. A note that comes to nothing is left out.
#
# Arguments that come back:
#   $number            this item or step, $items and $tasks how many there are
#   $hand              right or left: the way round the tube that the cord travels
#   lengths            each one argument with its unit (see lengths.ftl): "45 milímetros" for the
#                      ear, "45 mm" for the eye

kit-phase-show = Lo que necesitas, { $single ->
        [yes] { $number } de { $items }
        [two] { $number } y { $last } de { $items }
       *[no] { $number } a { $last } de { $items }
    }
rig-phase-show = Aparejar, { $single ->
        [yes] paso { $number } de { $tasks }
        [two] pasos { $number } y { $last } de { $tasks }
       *[no] pasos { $number } a { $last } de { $tasks }
    }

# Several things on one page: before them, and after them.
# Ejemplo: Necesitas, 1 a 3 de 6.
# $number to $last: which of them.
kit-page-say = Necesitas, { $single ->
        [two] { $number } y { $last } de { $items }.
       *[no] { $number } a { $last } de { $items }.
    }
kit-tick-say = Pulsa siguiente cuando lo tengas todo. Con menos a la vez, de uno en uno.

# Before what is to be done to the tube. $single: yes when it is one thing.
# Ejemplo: Aparejar, pasos 1 a 2 de 7.
rig-page-say = { $single ->
        [yes] Aparejar, paso { $number } de { $tasks }.
        [two] Aparejar, pasos { $number } y { $last } de { $tasks }.
       *[no] Aparejar, pasos { $number } a { $last } de { $tasks }.
    }

# Where the tyer is, before the first leg.
# Ejemplo: { -being-rigged } paso 3 de 8.
# $phase: kit or rig.
rigging-where-say = { $phase ->
        [kit] Estás reuniendo lo que necesitas: { $number } de { $of }.
       *[rig] { -being-rigged } paso { $number } de { $of }.
    }

## The bag

# Ejemplo: Necesitas, 1 de 6: el tubo, de 45 milímetros de diámetro. Pulsa siguiente cuando lo tengas.
kit-tube-say = Necesitas, { $number } de { $items }: el tubo, de { $diameter } de diámetro. Pulsa siguiente cuando lo tengas.
kit-tube-say-brief = Tubo, de { $diameter } de diámetro.
kit-tube-say-teach = Necesitas, { $number } de { $items }: el tubo, de { $diameter } de diámetro. Pulsa siguiente cuando lo tengas. Sobre el tubo se hace el nudo, y después se pasa a lo que va a cubrir.
kit-tube-show = Tubo, { $diameter } de diámetro
kit-tube-note = { "" }

# Ejemplo: Necesitas, 2 de 6: 14 clavijas, de 12 milímetros de largo, rosca M4. Pulsa
# siguiente cuando las tengas.
# $thread: its name or none. $numbered: the number of a numbered inch thread, or none.
# $fraction: the thread as a length, when it is a fraction of an inch, or none.
kit-pins-say = Necesitas, { $number } de { $items }: { $count } clavijas, de { $length } de largo{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , rosca { $thread }
               *[other] , rosca de { $fraction }
            }
           *[other] , rosca número { $numbered }
        }
    }. Pulsa siguiente cuando las tengas.
kit-pins-say-brief = { $count } clavijas, de { $length } de largo{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , rosca { $thread }
               *[other] , rosca de { $fraction }
            }
           *[other] , rosca número { $numbered }
        }
    }.
kit-pins-say-teach = Necesitas, { $number } de { $items }: { $count } clavijas, de { $length } de largo{ $thread ->
        [none] { "" }
       *[other] { $numbered ->
            [none] { $fraction ->
                [none] , rosca { $thread }
               *[other] , rosca de { $fraction }
            }
           *[other] , rosca número { $numbered }
        }
    }. Pulsa siguiente cuando las tengas. { $thread ->
        [none] Una clavija es cualquier cosa que sujete un bucle de cabo en su sitio.
       *[other] Aquí las clavijas son tornillos prisioneros.
    } Hace falta una por cada bucle del pie y una por cada bucle de la cabeza.
kit-pins-show = { $count } clavijas, { $length } de largo
kit-pins-note = { $thread ->
        [none] { "" }
       *[other] Prisioneros { $numbered ->
            [none] { $thread }
           *[other] n.º { $numbered }
        }
    }

# $size: as it is sold.
kit-key-say = Necesitas, { $number } de { $items }: la llave hexagonal de las clavijas, de { $size }. Pulsa siguiente cuando la tengas.
kit-key-say-brief = La llave hexagonal de las clavijas, de { $size }.
kit-key-say-teach = Necesitas, { $number } de { $items }: la llave hexagonal de las clavijas, de { $size }. Pulsa siguiente cuando la tengas. Es para las clavijas que no giren con los dedos.
kit-key-show = Llave hexagonal, { $size }
kit-key-note = { "" }

# Ejemplo: Necesitas, 4 de 6: un trozo de cabo de 4 milímetros de grueso y 1,9 metros de largo.
# Pulsa siguiente cuando lo tengas.
# $name: what the tyer calls the cord, or none. $grams: weight of all, or 0.
kit-cord-say = Necesitas, { $number } de { $items }: { $pieces ->
        [one] un trozo
       *[other] { $pieces } trozos
    } de cabo{ $name ->
        [none] { "" }
       *[other] , { $name },
    } de { $diameter } de grueso y { $length } de largo{ $pieces ->
        [one] { "" }
       *[other] { " " }cada uno
    }. Pulsa siguiente cuando { $pieces ->
        [one] lo
       *[other] los
    } tengas.
kit-cord-say-brief = { $pieces ->
        [one] Un trozo
       *[other] { $pieces } trozos
    } de cabo{ $name ->
        [none] { "" }
       *[other] , { $name },
    } de { $diameter } de grueso y { $length } de largo{ $pieces ->
        [one] { "" }
       *[other] { " " }cada uno
    }.
kit-cord-say-teach = Necesitas, { $number } de { $items }: { $pieces ->
        [one] un trozo
       *[other] { $pieces } trozos
    } de cabo{ $name ->
        [none] { "" }
       *[other] , { $name },
    } de { $diameter } de grueso y { $length } de largo{ $pieces ->
        [one] { "" }
       *[other] { " " }cada uno
    }. Pulsa siguiente cuando { $pieces ->
        [one] lo
       *[other] los
    } tengas. Así hay más cabo del que pide el nudo, y queda de dónde tirar.
kit-cord-show = Cabo, { $pieces ->
        [one] { $length }
       *[other] { $pieces } × { $length }
    }
kit-cord-note = { $name ->
        [none] { $diameter } de grueso
       *[other] { $name }, { $diameter } de grueso
    }{ $grams ->
        [0] { "" }
       *[other] , unos { $grams } g
    }

kit-tape-say = Necesitas, { $number } de { $items }: cinta de enmascarar, { $tape } y algo más de reserva. Pulsa siguiente cuando la tengas.
kit-tape-say-brief = Cinta de enmascarar, { $tape } y algo más de reserva.
kit-tape-say-teach = Necesitas, { $number } de { $items }: cinta de enmascarar, { $tape } y algo más de reserva. Pulsa siguiente cuando la tengas. Sujeta la cola y lleva los números de las clavijas.
kit-tape-show = Cinta de enmascarar, { $tape }
kit-tape-note = { "" }

kit-strip-say = Necesitas, { $number } de { $items }: una tira de papel de { $length } de largo, para marcar en ella las clavijas. Pulsa siguiente cuando la tengas.
kit-strip-say-brief = Una tira de papel de { $length } de largo, para marcar en ella las clavijas.
kit-strip-say-teach = Necesitas, { $number } de { $items }: una tira de papel de { $length } de largo, para marcar en ella las clavijas. Pulsa siguiente cuando la tengas. Sus marcas están donde van las clavijas.
kit-strip-show = Tira de papel, { $length }
kit-strip-note = Tan larga como el contorno del tubo, para marcar las clavijas

kit-picks-say = Necesitas, { $number } de { $items }: { $count ->
        [one] un pasador
       *[other] { $count } pasadores
    } para abrir los cruces. Pulsa siguiente cuando { $count ->
        [one] lo
       *[other] los
    } tengas.
kit-picks-say-brief = { $count ->
        [one] Un pasador
       *[other] { $count } pasadores
    } para abrir los cruces.
kit-picks-say-teach = Necesitas, { $number } de { $items }: { $count ->
        [one] un pasador
       *[other] { $count } pasadores
    } para abrir los cruces. Pulsa siguiente cuando { $count ->
        [one] lo
       *[other] los
    } tengas. Con un pasador se levanta un cabo para meter otro por debajo.
kit-picks-show = { $count ->
        [one] Un pasador
       *[other] { $count } pasadores
    }
kit-picks-note = Para abrir los cruces

# What is used on the way. $tool: marker, ruler, blade, dish, needle (for a mat) or sealing (a flame or glue for the ends).
kit-tool-say = Necesitas, { $number } de { $items }: { $tool ->
        [marker] un rotulador o marcador que escriba sobre cinta. Pulsa siguiente cuando lo tengas.
        [ruler] una regla. Pulsa siguiente cuando la tengas.
        [blade] un cuchillo bien afilado, o tijeras. Pulsa siguiente cuando lo tengas.
        [dish] un plato para las clavijas. Pulsa siguiente cuando lo tengas.
        [needle] una aguja e hilo fuerte, o pegamento. Pulsa siguiente cuando lo tengas.
       *[sealing] un encendedor si el cabo se funde, o pegamento si es de fibra natural. Pulsa siguiente cuando lo tengas.
    }
kit-tool-say-brief = { $tool ->
        [marker] Un rotulador o marcador que escriba sobre cinta.
        [ruler] Una regla.
        [blade] Un cuchillo bien afilado, o tijeras.
        [dish] Un plato para las clavijas.
        [needle] Una aguja e hilo fuerte, o pegamento.
       *[sealing] Un encendedor si el cabo se funde, o pegamento si es de fibra natural.
    }
kit-tool-say-teach = Necesitas, { $number } de { $items }: { $tool ->
        [marker] un rotulador o marcador que escriba sobre cinta. Pulsa siguiente cuando lo tengas. Con él numeras las clavijas.
        [ruler] una regla. Pulsa siguiente cuando la tengas. Con ella mides el cabo, y dónde van las clavijas.
        [blade] un cuchillo bien afilado, o tijeras. Pulsa siguiente cuando lo tengas. Con él cortas el cabo y, al final, sus chicotes.
        [dish] un plato para las clavijas. Pulsa siguiente cuando lo tengas. Ahí van las clavijas que quitas: la que se pierde la encuentra un pie descalzo.
        [needle] una aguja e hilo fuerte, o pegamento. Pulsa siguiente cuando lo tengas. Con eso fijas los cruces por la cara de abajo.
       *[sealing] un encendedor si el cabo se funde, o pegamento si es de fibra natural. Pulsa siguiente cuando lo tengas. Así no se deshilachan los chicotes.
    }
kit-tool-show = { $tool ->
        [marker] Rotulador o marcador
        [ruler] Regla
        [blade] Cuchillo o tijeras
        [dish] Plato para las clavijas
        [needle] Aguja e hilo, o pegamento
       *[sealing] Encendedor o pegamento
    }
kit-tool-note = { $tool ->
        [sealing] Encendedor para el cabo que se funde, pegamento para la fibra natural
       *[other] { "" }
    }

## Rigging: what to know first

# $given: length of the pins named, $needed: the least that holds, $hold: passes they do hold.
rig-short-pins-say = Atención: las clavijas que has indicado, de { $given } de largo, son cortas para este nudo. { $hold ->
        [0] No aguantan ni una pasada.
        [one] Aguantan una sola pasada.
       *[other] Aguantan { $hold } pasadas.
    } Usa clavijas de { $needed } o más.
rig-short-pins-say-brief = Atención: clavijas de { $given }, cortas para este nudo. { $hold ->
        [0] No aguantan ni una pasada.
        [one] Aguantan una sola pasada.
       *[other] Aguantan { $hold } pasadas.
    } Usa clavijas de { $needed } o más.
rig-short-pins-say-teach = Atención: las clavijas que has indicado, de { $given } de largo, son cortas para este nudo. { $hold ->
        [0] No aguantan ni una pasada.
        [one] Aguantan una sola pasada.
       *[other] Aguantan { $hold } pasadas.
    } Usa clavijas de { $needed } o más. Cada pasada pone un cabo más en la clavija, y de una corta se sale el último.
rig-short-pins-show = Clavijas de { $given }: demasiado cortas
rig-short-pins-note = Usa de { $needed } o más; estas { $hold ->
        [0] no aguantan ni una pasada
        [one] aguantan 1 pasada
       *[other] aguantan { $hold } pasadas
    }

rig-thick-object-say = Atención: lo que se cubre tiene { $object } de diámetro, y el tubo solo { $tube }. Deja el nudo flojo hasta que esté puesto encima.
rig-thick-object-say-brief = Atención: se cubren { $object }, con un tubo de solo { $tube }. Deja el nudo flojo hasta que esté puesto encima.
rig-thick-object-say-teach = Atención: lo que se cubre tiene { $object } de diámetro, y el tubo solo { $tube }. Deja el nudo flojo hasta que esté puesto encima.
rig-thick-object-show = Lo que se cubre es más grueso que el tubo
rig-thick-object-note = { $object } frente a { $tube }: deja el nudo flojo hasta que esté puesto encima

# $gap: between the pins. $comfortable: from where on it is easy. $most_bights, $most_passes: the most
# for which it is, or 0. $tube: a tube of so much or more. $pin: pins no thicker than this, or none.
rig-close-pins-say = Atención: las clavijas dejan { $gap } entre sí, y los cabos de un seno pasan con holgura a partir de { $comfortable }. Mejor un tubo de { $tube } o más{ $most_bights ->
        [0] { "" }
       *[other] , o como mucho { $most_bights } senos
    }{ $most_passes ->
        [0] { "" }
        [one] , o 1 pasada
       *[other] , o como mucho { $most_passes } pasadas
    }{ $pin ->
        [none] { "" }
       *[other] , o clavijas de { $pin } de grueso como mucho
    }.
rig-close-pins-say-brief = Atención: las clavijas dejan { $gap } entre sí, y los cabos de un seno pasan con holgura a partir de { $comfortable }. Mejor un tubo de { $tube } o más{ $most_bights ->
        [0] { "" }
       *[other] , o como mucho { $most_bights } senos
    }{ $most_passes ->
        [0] { "" }
        [one] , o 1 pasada
       *[other] , o como mucho { $most_passes } pasadas
    }{ $pin ->
        [none] { "" }
       *[other] , o clavijas de { $pin } de grueso como mucho
    }.
rig-close-pins-say-teach = Atención: las clavijas dejan { $gap } entre sí, y los cabos de un seno pasan con holgura a partir de { $comfortable }. Mejor un tubo de { $tube } o más{ $most_bights ->
        [0] { "" }
       *[other] , o como mucho { $most_bights } senos
    }{ $most_passes ->
        [0] { "" }
        [one] , o 1 pasada
       *[other] , o como mucho { $most_passes } pasadas
    }{ $pin ->
        [none] { "" }
       *[other] , o clavijas de { $pin } de grueso como mucho
    }. Donde las clavijas están muy juntas, los cabos se montan unos sobre otros y los senos salen desiguales.
rig-close-pins-show = Clavijas muy juntas
rig-close-pins-note = { $gap } entre ellas, con holgura desde { $comfortable }: mejor un tubo de { $tube } o más{ $most_bights ->
        [0] { "" }
       *[other] , o como mucho { $most_bights } senos
    }{ $most_passes ->
        [0] { "" }
        [one] , o 1 pasada
       *[other] , o como mucho { $most_passes } pasadas
    }{ $pin ->
        [none] { "" }
       *[other] , o clavijas de { $pin } de grueso como mucho
    }

# $slack: out of each leg. $better: the tube with least slack, or none.
rig-thick-tube-say = Atención: el tubo es mucho más grueso que lo que se cubre. Habrá que sacar { $slack } de cada uno de { $legs } tramos.{ $better ->
        [none] { "" }
       *[other] { " " }Con un tubo de { $better } de diámetro sobraría lo menos posible.
    }
rig-thick-tube-say-brief = Atención: el tubo es mucho más grueso que lo que se cubre. Habrá que sacar { $slack } de cada uno de { $legs } tramos.{ $better ->
        [none] { "" }
       *[other] { " " }Con un tubo de { $better } de diámetro sobraría lo menos posible.
    }
rig-thick-tube-say-teach = Atención: el tubo es mucho más grueso que lo que se cubre. Habrá que sacar { $slack } de cada uno de { $legs } tramos.{ $better ->
        [none] { "" }
       *[other] { " " }Con un tubo de { $better } de diámetro sobraría lo menos posible.
    } Lo que sobra se saca poco a poco, en varias veces, y así el nudo queda igual.
rig-thick-tube-show = Sobra mucho cabo en este tubo
rig-thick-tube-note = { $slack } de cada uno de { $legs } tramos{ $better ->
        [none] { "" }
       *[other] ; lo menos, con un tubo de { $better } de diámetro
    }

# $ring: width of a ring. $slack: out of each leg. $would_do: rings of so much or less.
rig-wide-rings-say = Atención: los anillos tienen { $ring } de ancho y separan demasiado los bordes. Habrá que sacar { $slack } de cada tramo. Anillos de { $would_do } como mucho no estorbarían.
rig-wide-rings-say-brief = Atención: los anillos tienen { $ring } de ancho y separan demasiado los bordes. Habrá que sacar { $slack } de cada tramo. Anillos de { $would_do } como mucho no estorbarían.
rig-wide-rings-say-teach = Atención: los anillos tienen { $ring } de ancho y separan demasiado los bordes. Habrá que sacar { $slack } de cada tramo. Anillos de { $would_do } como mucho no estorbarían. Lo que sobra se saca poco a poco, en varias veces, y así el nudo queda igual.
rig-wide-rings-show = Anillos anchos para este nudo
rig-wide-rings-note = { $slack } de cada tramo; anillos de { $would_do } como mucho no estorbarían

## Rigging: rings with holes

# Ejemplo: Aparejar, paso 1 de 7. Cada anillo tiene una fila de 14 agujeros. Elige un agujero del anillo
# del pie como agujero 1 y cuenta desde él los agujeros hacia la derecha, y lo mismo en el anillo
# de la cabeza.
# $row: which row, in the order the rows were named. $rows: how many. $holes: holes in it.
rig-row-say = { $rows ->
        [one] Cada anillo tiene una fila de { $holes } agujeros.
       *[other] En cada anillo usa la fila { $row }, la de { $holes } agujeros.
    } Elige un agujero del anillo del pie como agujero 1 y cuenta desde él los agujeros hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }, y lo mismo en el anillo de la cabeza.
rig-row-say-brief = { $rows ->
        [one] Una fila de { $holes } agujeros.
       *[other] Fila { $row }, la de { $holes } agujeros.
    } Agujero 1, y cuenta hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }.
rig-row-say-teach = { $rows ->
        [one] Cada anillo tiene una fila de { $holes } agujeros.
       *[other] En cada anillo usa la fila { $row }, la de { $holes } agujeros.
    } Elige un agujero del anillo del pie como agujero 1 y cuenta desde él los agujeros hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }, y lo mismo en el anillo de la cabeza. Una fila sirve para un nudo cuando su número de agujeros es múltiplo del de senos.
rig-row-show = { $rows ->
        [one] Una fila de { $holes } agujeros
       *[other] Fila { $row }: { $holes } agujeros
    }
rig-row-note = Elige el agujero 1, cuenta hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }; igual en los dos anillos

# Setting the pins of a ring.
# Ejemplo: Aparejar, paso 2 de 7. Pon 7 clavijas en el anillo del pie, en uno de cada 2 agujeros: agujeros
# 1, 3, 5, 7, 9, 11 y 13. La clavija 1 del pie va en el agujero 1. Usa clavijas de 12 milímetros de largo. …
# $rim: bottom or top. $step: from a pin to the next. $first: hole of pin 1. $few: yes when the
# holes are told one by one: $most are all but the last, $last is that. $staggered: yes or no.
# $key: size of the hex key or none.
rig-pins-say = Pon { $count } clavijas en el anillo { $rim ->
        [top] de la cabeza
       *[bottom] del pie
    }, { $step ->
        [1] en todos los agujeros
       *[other] en uno de cada { $step } agujeros
    }{ $few ->
        [yes] : agujeros { $most } y { $last }.
       *[no] , a partir del agujero { $first }.
    } { $rim ->
        [top] { $staggered ->
            [yes] La clavija 1 de la cabeza queda a medio camino entre las clavijas 1 y 2 del pie, y así las demás.
           *[no] Cada clavija de la cabeza queda a plomo con una del pie.
        }
       *[bottom] La clavija 1 del pie va en el agujero 1.
    } Usa clavijas de { $length } de largo{ $key ->
        [none] { "" }
       *[other] { " " }y la llave hexagonal de { $key }
    }.{ $key ->
        [none] { "" }
       *[other] { " " }Enrosca cada clavija a mano hasta que toque el tubo.
    }
rig-pins-say-brief = Pon { $count } clavijas en el anillo { $rim ->
        [top] de la cabeza
       *[bottom] del pie
    }, { $step ->
        [1] en todos los agujeros
       *[other] en uno de cada { $step } agujeros
    }{ $few ->
        [yes] : agujeros { $most } y { $last }.
       *[no] , a partir del agujero { $first }.
    }
rig-pins-say-teach = Pon { $count } clavijas en el anillo { $rim ->
        [top] de la cabeza
       *[bottom] del pie
    }, { $step ->
        [1] en todos los agujeros
       *[other] en uno de cada { $step } agujeros
    }{ $few ->
        [yes] : agujeros { $most } y { $last }.
       *[no] , a partir del agujero { $first }.
    } { $rim ->
        [top] { $staggered ->
            [yes] La clavija 1 de la cabeza queda a medio camino entre las clavijas 1 y 2 del pie, y así las demás.
           *[no] Cada clavija de la cabeza queda a plomo con una del pie.
        }
       *[bottom] La clavija 1 del pie va en el agujero 1.
    } Usa clavijas de { $length } de largo{ $key ->
        [none] { "" }
       *[other] { " " }y la llave hexagonal de { $key }
    }. { $key ->
        [none] { "" }
       *[other] Enrosca cada clavija a mano hasta que toque el tubo: así el anillo no se desliza.
    } Con las clavijas a distancias iguales, los bucles salen iguales.
rig-pins-show = Anillo { $rim ->
        [top] de la cabeza
       *[bottom] del pie
    }: { $few ->
        [yes] agujeros { $most }, { $last }
       *[no] { $step ->
            [1] en todos los agujeros desde el { $first }
           *[other] en uno de cada { $step } agujeros desde el { $first }
        }
    }
rig-pins-note = { $rim ->
        [top] { $staggered ->
            [yes] Al tresbolillo: a medio camino entre las clavijas del pie
           *[no] A plomo con las clavijas del pie
        }
       *[bottom] { $count } clavijas, la clavija 1 en el agujero 1
    }
rig-pins-note-how = Clavijas de { $length }{ $key ->
        [none] { "" }
       *[other] , llave hexagonal de { $key }
    }{ $key ->
        [none] { "" }
       *[other] . A mano, hasta que toquen
    }

# Ejemplo: Aparejar, paso 3 de 7. Coloca el anillo de la cabeza de modo que su fila de agujeros quede a 42
# milímetros de la fila del anillo del pie. Gíralo hasta que su agujero 1 quede a plomo con el
# agujero 1 del pie.
# $half: yes when the ring is turned half a hole on.
rig-space-say = Coloca el anillo de la cabeza así: su fila de agujeros, a { $spacing } de la fila del anillo del pie, de fila de clavijas a fila de clavijas. { $half ->
        [yes] Gíralo hasta que su agujero 1 quede a la { $hand ->
            [left] izquierda
           *[right] derecha
        }, a medio camino entre los agujeros 1 y 2 del pie.
       *[no] Gíralo hasta que su agujero 1 quede a plomo con el agujero 1 del pie.
    }
rig-space-say-brief = Filas de clavijas a { $spacing } una de otra, { $half ->
        [yes] el agujero 1 de la cabeza medio agujero más a la { $hand ->
            [left] izquierda.
           *[right] derecha.
        }
       *[no] el agujero 1 de la cabeza a plomo con el agujero 1 del pie.
    }
rig-space-say-teach = Coloca el anillo de la cabeza así: su fila de agujeros, a { $spacing } de la fila del anillo del pie, de fila de clavijas a fila de clavijas. { $half ->
        [yes] Gíralo hasta que su agujero 1 quede a la { $hand ->
            [left] izquierda
           *[right] derecha
        }, a medio camino entre los agujeros 1 y 2 del pie.
       *[no] Gíralo hasta que su agujero 1 quede a plomo con el agujero 1 del pie.
    } A esa distancia, los tramos llevan el cabo de sobra que pide el nudo acabado.
rig-space-show = Filas de clavijas a { $spacing }
rig-space-note = { $half ->
        [yes] Anillo de la cabeza, medio agujero más a la { $hand ->
            [left] izquierda
           *[right] derecha
        }
       *[no] El agujero 1 de la cabeza, a plomo con el 1 del pie
    }

## Rigging: a tube without rings

# $length: of the strip. $pitch: from mark to mark. $shift: how far on top pin 1 stands, none
# when straight above. $spacing: from the bottom marks to the top marks.
rig-strip-say = { $rim ->
        [top] Pon las { $pins } clavijas de la cabeza a { $spacing } de las del pie, con una tira de papel de { $length } de largo y una marca cada { $pitch }. { $shift ->
            [none] La clavija 1 de la cabeza queda a plomo con la clavija 1 del pie.
           *[other] La clavija 1 de la cabeza queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la clavija 1 del pie, a medio camino de la clavija 2 del pie.
        }
       *[bottom] Rodea el tubo con una tira de papel de { $length } de largo, con una marca cada { $pitch }, y pon las { $pins } clavijas del pie en las marcas.
    }
rig-strip-say-brief = { $rim ->
        [top] Las { $pins } clavijas de la cabeza, a { $spacing } de las del pie, cada { $pitch } en una tira de { $length }. { $shift ->
            [none] La clavija 1 de la cabeza, a plomo con la clavija 1 del pie.
           *[other] La clavija 1 de la cabeza, { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la clavija 1 del pie.
        }
       *[bottom] Tira de papel de { $length } alrededor del tubo, una marca cada { $pitch }; las { $pins } clavijas del pie, en las marcas.
    }
rig-strip-say-teach = { $rim ->
        [top] Pon las { $pins } clavijas de la cabeza a { $spacing } de las del pie, con una tira de papel de { $length } de largo y una marca cada { $pitch }. { $shift ->
            [none] La clavija 1 de la cabeza queda a plomo con la clavija 1 del pie.
           *[other] La clavija 1 de la cabeza queda { $shift } a la { $hand ->
                [left] izquierda
               *[right] derecha
            } de la clavija 1 del pie, a medio camino de la clavija 2 del pie.
        }
       *[bottom] Rodea el tubo con una tira de papel de { $length } de largo, con una marca cada { $pitch }, y pon las { $pins } clavijas del pie en las marcas.
    } La tira es tan larga como el contorno del tubo, así que sus marcas quedan a distancias iguales.
rig-strip-show = { $rim ->
        [top] Clavijas de la cabeza a { $spacing } del pie
       *[bottom] Clavijas del pie cada { $pitch }
    }
rig-strip-note = { $rim ->
        [top] { $shift ->
            [none] A plomo con las clavijas del pie, cada { $pitch }
           *[other] Al tresbolillo: { $shift } más a la { $hand ->
                [left] izquierda
               *[right] derecha
            }, cada { $pitch }
        }
       *[bottom] { $pins } marcas en una tira de { $length }
    }

## Rigging: numbers, cord, beginning

# $rows: rows of pins at each rim, more than one where bights are nested.
rig-number-say = Pega cinta de enmascarar, { $tape } en total, o tiras de papel que se puedan quitar, { $rows ->
        [one] junto a los dos anillos de clavijas
       *[other] junto a cada fila de clavijas, si quieres de un color distinto para cada una
    }. Numera en ella las clavijas del 1 al { $pins } hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }, igual en el pie y en la cabeza.
rig-number-say-brief = Numera las clavijas en la cinta, del 1 al { $pins }, hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }.
rig-number-say-teach = Pega cinta de enmascarar, { $tape } en total, o tiras de papel que se puedan quitar, { $rows ->
        [one] junto a los dos anillos de clavijas
       *[other] junto a cada fila de clavijas, si quieres de un color distinto para cada una
    }. Numera en ella las clavijas del 1 al { $pins } hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }, igual en el pie y en la cabeza. Cada paso llama a las clavijas por esos números.
rig-number-show = Numera las clavijas del 1 al { $pins }
rig-number-note = En { $tape } de cinta, hacia la { $hand ->
        [left] izquierda
       *[right] derecha
    }, { $rows ->
        [one] igual en la cabeza y en el pie
       *[other] igual en todas las filas, si quieres cada una de un color
    }

# $name: what the tyer calls the cord, or none.
rig-cut-say = Corta { $pieces ->
        [one] un trozo
       *[other] { $pieces } trozos
    } de cabo{ $name ->
        [none] { "" }
       *[other] , { $name },
    } de { $length } de largo{ $pieces ->
        [one] { "" }
       *[other] { " " }cada uno
    }. Las colas van incluidas.
rig-cut-say-brief = Corta { $pieces ->
        [one] un trozo
       *[other] { $pieces } trozos
    } de cabo{ $name ->
        [none] { "" }
       *[other] , { $name },
    } de { $length } de largo{ $pieces ->
        [one] { "" }
       *[other] { " " }cada uno
    }.
rig-cut-say-teach = Corta { $pieces ->
        [one] un trozo
       *[other] { $pieces } trozos
    } de cabo{ $name ->
        [none] { "" }
       *[other] , { $name },
    } de { $length } de largo{ $pieces ->
        [one] { "" }
       *[other] { " " }cada uno
    }. Las colas van incluidas. Mide dos veces y corta una.
rig-cut-show = Corta { $pieces ->
        [one] { $length } de cabo
       *[other] { $pieces } × { $length } de cabo
    }
rig-cut-note = { $name ->
        [none] Las colas van incluidas
       *[other] { $name }; las colas van incluidas
    }
