# Golpes en el banco: dónde se prueban, y lo que se dice del micrófono.

knocks-heading = Golpes en el banco
knocks-try = Pon el micrófono sobre el banco y da dos golpes, como harás al anudar. Golpea con la mano vacía, nunca con una cuchilla o aguja en ella. Aquí se muestra y se dice cada serie reconocida; aquí los golpes no hacen nada más.
knocks-off = Los golpes están desactivados, así que no escucha ningún micrófono. Siguiente los activa. Nada se graba ni se guarda.
# Said when they are switched on there.
knocks-on = Los golpes están activados: un micrófono escucha. Nada se graba ni se guarda; solo sale de él cuándo hubo un golpe y con qué fuerza sonó.

# Cuánto se oye ahora. $under: cuántos decibelios está por debajo de lo más fuerte.
knocks-level = Cuánto se oye ahora: { $under ->
        [one] 1 decibelio
       *[other] { $under } decibelios
    } por debajo de lo más fuerte que puede oír el micrófono.
knocks-level-none = Cuánto se oye ahora: no llega nada de ningún micrófono.

# Una serie de golpes que se tomó. $number: cuántos. $over: cuánto sobresalen de la sala, en decibelios. $clear: faint
# donde es demasiado poco para tomarlos siempre, si no clear.
knocks-taken = { $number ->
        [one] 1 golpe
       *[other] { $number } golpes
    }, { $over } decibelios sobre el ruido del taller: { $clear ->
        [faint] débil. Acerca el micrófono o golpea más fuerte.
       *[clear] claro.
    }

no-microphone = No hay micrófono con que oír los golpes. Las teclas y los pedales sirven como antes; en cuanto haya uno, escuchará.
microphone-again = El micrófono está otra vez: se oyen los golpes.
