# «marlinspeak doctor»: a line for each thing that the program needs or likes to have. Each says
# whether it works, and where it does not, how to mend it.

# Names and numbers for a report of a fault. $system, $processor: their names. $session, $desktop, $locale: names, or none.
# $x11, $wayland: true or false, whether there is such a display.
# Ejemplo: Marlinspeak 0.1.0 en Debian GNU/Linux 12, x86_64, sesión x11, escritorio GNOME, X11 sí, Wayland no, configuración regional es-MX
doctor-head = Marlinspeak { $version } en { $system }, { $processor }, sesión { $session ->
        [none] desconocida
       *[other] { $session }
    }, escritorio { $desktop ->
        [none] desconocido
       *[other] { $desktop }
    }, X11 { $x11 ->
        [true] sí
       *[false] no
    }, Wayland { $wayland ->
        [true] sí
       *[false] no
    }, configuración regional { $locale ->
        [none] ninguna
       *[other] { $locale }
    }

# $display is a name such as :0 or wayland-0.
doctor-display = Pantalla: funciona. En «{ $display }» se puede abrir una ventana.
doctor-display-none = Pantalla: aquí no hay ninguna. Arranca Marlinspeak desde una sesión de escritorio; sin ella, «marlinspeak tie» te guía en la terminal.
doctor-display-silent = Pantalla: no funciona. Nada responde en «{ $display }». Arranca Marlinspeak desde una sesión de escritorio; sin ella, «marlinspeak tie» te guía en la terminal.
doctor-display-refuses = Pantalla: no funciona. «{ $display }» se niega: es de otra persona. Arranca Marlinspeak con la cuenta que tiene abierta la sesión de escritorio; sin ella, «marlinspeak tie» te guía en la terminal.

# $voices is how many voices there are, $fitting how many of them speak the language of this text.
doctor-speech = Voz: funciona. El servicio de voz responde; { $voices ->
        [one] tiene 1 voz
       *[other] tiene { $voices } voces
    }, { $fitting ->
        [one] 1 de ellas en el idioma «{ $language }».
       *[other] { $fitting } de ellas en el idioma «{ $language }».
    }
doctor-speech-foreign = Voz: no funciona en el idioma «{ $language }». { $voices ->
        [one] El servicio de voz tiene 1 voz y habla otro idioma.
       *[other] El servicio de voz tiene { $voices } voces y ninguna lo habla.
    } Instala una voz para él; en Debian, «sudo apt install speech-dispatcher-espeak-ng» trae voces para casi todos los idiomas.
doctor-speech-no-voices = Voz: no funciona. El servicio de voz responde, pero no tiene voces. Instala alguna; en Debian, con «sudo apt install speech-dispatcher-espeak-ng». Después debería oírse «spd-say hola».
doctor-speech-none = Voz: no funciona ({ $why ->
        [ended] el servicio de voz se cerró al preguntarle
        [refused] el servicio de voz se niega a hablar
       *[absent] no hay ningún servicio de voz al que llegar
    }). Instala el servicio de voz; en Debian, con «sudo apt install speech-dispatcher speech-dispatcher-espeak-ng». Después debería oírse «spd-say hola».
doctor-speech-silent = Voz: no funciona. El servicio de voz no responde. Ciérralo con «pkill -x speech-dispatch»: arranca solo cuando hace falta. Después debería oírse «spd-say hola».

doctor-sound = Sonidos: funcionan. Los sonidos cortos pueden sonar.
doctor-sound-none = Sonidos: no hay ningún aparato para los sonidos cortos. Los nudos siguen sin ellos; si tampoco se oye la voz, conecta o enciende un altavoz y prueba «speaker-test».

doctor-pedals = Pedales: { $controllers ->
        [one] 1 mando de juego
       *[other] { $controllers } mandos de juego
    } y { $midi ->
        [one] 1 entrada MIDI
       *[other] { $midi } entradas MIDI
    }, todo conectado. Aquí no se cuentan los pedales que envían teclas o botones de ratón.
doctor-pedals-none = Pedales: no hay conectado ningún mando de juego ni pedal MIDI. No hace falta: bastan las teclas, y aquí no se cuentan los pedales que envían teclas o botones de ratón.

# $name: el nombre de un aparato.
doctor-microphone = Micrófono: los golpes se escucharían con «{ $name }», una vez activados en los ajustes. Nada se graba.
doctor-microphone-none = Micrófono: no hay ninguno. No hace falta: solo sirve para oír golpes en el banco.

# $megabytes: what is free on the disk, rounded down.
doctor-ties = Nudos: funcionan. En «{ $file }» se puede escribir y quedan { $megabytes } MB libres; { $documents ->
        [0] en el estante no hay todavía ningún nudo.
        [one] 1 documento del estante está entero.
       *[other] { $documents } documentos del estante están enteros.
    }
doctor-ties-damaged = Nudos: { $damaged ->
        [one] 1 documento de «{ $file }» no se puede leer.
       *[other] { $damaged } documentos de «{ $file }» no se pueden leer.
    } «marlinspeak shelf verify» dice qué les pasa; por mirar no se pierde nada.
doctor-ties-full = Nudos: pronto no se guardarían. En el disco de «{ $file }» quedan solo { $megabytes } MB libres: haz sitio en él.
doctor-ties-unwritable = Nudos: no se guardarían. En «{ $file }» no se puede escribir ({ $reason }). Hazte propietario de la carpeta y de su contenido, o pon en XDG_DATA_HOME una carpeta que sea tuya.
doctor-ties-nowhere = Nudos: no se guardarían. El sistema no señala ninguna carpeta para ellos: pon en HOME tu carpeta personal.

doctor-settings = Ajustes: funcionan. «{ $file }» se puede leer.
doctor-settings-none = Ajustes: funcionan. En «{ $file }» no hay todavía ninguno, así que valen los de siempre.
doctor-settings-newer = Ajustes: «{ $file }» lo escribió un Marlinspeak más nuevo (versión { $version } del documento). No se toca y valen los ajustes de siempre: instala el Marlinspeak más nuevo, o lleva el archivo a otra parte.
doctor-settings-damaged = Ajustes: «{ $file }» está dañado ({ $reason }). Al abrirse, Marlinspeak apartará el archivo y usará lo que se pueda leer de él.
doctor-settings-unwritable = Ajustes: no se guardarían. «{ $file }» se niega ({ $reason }). Hazte propietario de la carpeta y de su contenido, o pon en XDG_CONFIG_HOME una carpeta que sea tuya.
doctor-settings-nowhere = Ajustes: no se guardarían. El sistema no señala ninguna carpeta para ellos: pon en HOME tu carpeta personal.

doctor-log = Registro: funciona. «{ $file }» está ahí para dar parte de un fallo; no contiene nombres tuyos.
doctor-log-unwritable = Registro: no se lleva. En «{ $file }» no se puede escribir ({ $reason }). Los nudos siguen sin él; para tenerlo, hazte propietario de la carpeta, o pon en XDG_STATE_HOME una carpeta que sea tuya.
doctor-log-nowhere = Registro: no se lleva. El sistema no señala ninguna carpeta para él: pon en HOME tu carpeta personal. Los nudos siguen sin él.

doctor-well = Todo lo que hace falta funciona.
doctor-unwell = Algo que hace falta no funciona: lo dicen las líneas de arriba.

# A fault in the program itself, in a part that the rest can go on without.
fault-noted = Una parte de Marlinspeak se ha parado por un fallo suyo, que queda anotado en «{ $file }»: sal, vuelve a arrancarlo, y retoma el nudo donde se guardó.
