# Para qué sirve cada línea de los ajustes, bajo la lista mientras está elegida.

# $field: as in settings-name.
settings-hint = { $field ->
        [learn] Cualquier tecla, pedal, botón o pedal MIDI puede seguir, volver o repetir: se pulsa una vez y queda aprendido.
        [knocks] Si no has enseñado otra cosa, dos golpes en el banco son siguiente, tres son otra vez. Un micrófono escucha; nada se graba ni se guarda, solo sale de él cuándo hubo un golpe y con qué fuerza sonó.
        [try-knocks] Muestra cuánto se oye y cada serie de golpes reconocida, para encontrar dónde debe estar el micrófono.
        [language] El idioma de todo lo que se dice, se muestra y se imprime.
        [units] Milímetros y metros, o pulgadas y pies, para cada medida.
        [voice] Cuál de las voces del servicio de voz dice los pasos.
        [speed] A qué velocidad se dice un paso: más despacio en un nudo nuevo, más deprisa en uno conocido.
        [volume] Con qué volumen se dicen los pasos.
        [pitch] Lo aguda que es la voz: elige la que mejor se oiga entre otros ruidos.
        [cues] Un sonido corto para seguir, volver, una revisión y el final, antes de las palabras.
        [cue-volume] Con qué volumen suenan.
        [flash] El borde de la pantalla se ilumina al pulsar, para quien no oye los sonidos.
        [motion] Un tramo se dibuja una vez, cruce a cruce. Si no, aparece entero desde el principio.
        [theme] Claro sobre oscuro para la noche, oscuro sobre claro para una sala con luz.
        [distance] A qué distancia está el ojo de la pantalla al anudar: las letras y los números de las clavijas crecen con ella.
        [screen-width] El ancho de la imagen en la pantalla, medido con una regla: así las letras tienen el tamaño debido.
        [pacing] Sigue solo, algo más despacio que tus últimos pasos. Cualquier pulsación lo detiene.
        [price-metre] Con él, el plan dice cuánto cuesta el cabo de un nudo.
        [price-hour] Con él, el plan dice cuánto vale el trabajo de un nudo.
        [bounce] Un pie puede dar dos golpes donde quería uno: tan seguido, el segundo no cuenta.
        [long] Un pedal por dos: si se mantiene pisado, vuelve.
       *[double] Un pedal por dos: si se pisa dos veces, repite el paso.
    }
