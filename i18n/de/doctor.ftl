# „marlinspeak doctor“: eine Zeile für jedes Ding, das das Programm braucht oder gern hat. Each
# says whether it works, and where it does not, how to mend it.

# Names and numbers for a report of a fault. $system, $processor: their names. $session, $desktop, $locale: names, or none.
# $x11, $wayland: true or false, whether there is such a display.
# Example: Marlinspeak 0.1.0 auf Debian GNU/Linux 12, x86_64, Sitzung x11, Oberfläche GNOME, X11 ja, Wayland nein, Spracheinstellung de-DE
doctor-head = Marlinspeak { $version } auf { $system }, { $processor }, Sitzung { $session ->
        [none] unbekannt
       *[other] { $session }
    }, Oberfläche { $desktop ->
        [none] unbekannt
       *[other] { $desktop }
    }, X11 { $x11 ->
        [true] ja
       *[false] nein
    }, Wayland { $wayland ->
        [true] ja
       *[false] nein
    }, Spracheinstellung { $locale ->
        [none] keine
       *[other] { $locale }
    }

# $display is a name such as :0 or wayland-0.
doctor-display = Bildschirm: in Ordnung. Auf „{ $display }“ lässt sich ein Fenster öffnen.
doctor-display-none = Bildschirm: Hier gibt es keinen. Starte Marlinspeak in einer grafischen Sitzung; ohne Bildschirm leitet „marlinspeak tie“ im Terminal an.
doctor-display-silent = Bildschirm: geht nicht. Auf „{ $display }“ antwortet nichts. Starte Marlinspeak in einer grafischen Sitzung; ohne Bildschirm leitet „marlinspeak tie“ im Terminal an.
doctor-display-refuses = Bildschirm: geht nicht. „{ $display }“ lehnt ab: Er gehört jemand anderem. Starte Marlinspeak unter dem Namen, der an der grafischen Sitzung angemeldet ist; ohne Bildschirm leitet „marlinspeak tie“ im Terminal an.

# $voices is how many voices there are, $fitting how many of them speak the language of this text.
doctor-speech = Sprache: in Ordnung. Der Sprachdienst antwortet; { $voices ->
        [one] er hat 1 Stimme
       *[other] er hat { $voices } Stimmen
    }, { $fitting ->
        [one] 1 davon in der Sprache „{ $language }“.
       *[other] { $fitting } davon in der Sprache „{ $language }“.
    }
doctor-speech-foreign = Sprache: geht nicht in der Sprache „{ $language }“. { $voices ->
        [one] Der Sprachdienst hat 1 Stimme, und die spricht eine andere Sprache.
       *[other] Der Sprachdienst hat { $voices } Stimmen, aber keine für diese Sprache.
    } Installiere eine Stimme dafür; auf Debian bringt „sudo apt install speech-dispatcher-espeak-ng“ Stimmen für die meisten Sprachen.
doctor-speech-no-voices = Sprache: geht nicht. Der Sprachdienst antwortet, hat aber keine Stimmen. Installiere welche; auf Debian mit „sudo apt install speech-dispatcher-espeak-ng“. Danach sollte „spd-say hallo“ zu hören sein.
doctor-speech-none = Sprache: geht nicht ({ $why ->
        [ended] der Sprachdienst ist bei der Frage ausgegangen
        [refused] der Sprachdienst weigert sich zu sprechen
       *[absent] es ist kein Sprachdienst zu erreichen
    }). Installiere den Sprachdienst; auf Debian mit „sudo apt install speech-dispatcher speech-dispatcher-espeak-ng“. Danach sollte „spd-say hallo“ zu hören sein.
doctor-speech-silent = Sprache: geht nicht. Der Sprachdienst antwortet nicht. Beende ihn mit „pkill -x speech-dispatch“: Er startet von selbst, wenn er gebraucht wird. Danach sollte „spd-say hallo“ zu hören sein.

doctor-sound = Töne: in Ordnung. Die kurzen Töne können erklingen.
doctor-sound-none = Töne: Für die kurzen Töne ist kein Gerät da. Das Knüpfen geht auch ohne sie; ist auch keine Sprache zu hören, dann schließ einen Lautsprecher an oder schalte ihn ein, und versuch „speaker-test“.

doctor-pedals = Pedale: Angeschlossen sind { $controllers ->
        [one] 1 Gamecontroller
       *[other] { $controllers } Gamecontroller
    } und { $midi ->
        [one] 1 MIDI-Eingang
       *[other] { $midi } MIDI-Eingänge
    }. Pedale, die Tasten oder Mausknöpfe senden, zählen hier nicht mit.
doctor-pedals-none = Pedale: Kein Gamecontroller und kein MIDI-Pedal ist angeschlossen. Es braucht auch keines: Tasten genügen, und Pedale, die Tasten oder Mausknöpfe senden, zählen hier nicht mit.

# $name: der Name eines Geräts.
doctor-microphone = Mikrofon: Auf Klopfen hört „{ $name }“, sobald das in den Einstellungen eingeschaltet ist. Aufgenommen wird nichts.
doctor-microphone-none = Mikrofon: Es ist keines da. Es braucht auch keines: Nur Klopfen auf die Werkbank wird damit gehört.

# $megabytes: what is free on the disk, rounded down.
doctor-ties = Knoten: in Ordnung. In „{ $file }“ kann geschrieben werden, { $megabytes } MB sind frei; { $documents ->
        [0] im Regal liegt noch kein Knoten.
        [one] 1 Dokument im Regal ist unbeschädigt.
       *[other] { $documents } Dokumente im Regal sind unbeschädigt.
    }
doctor-ties-damaged = Knoten: { $damaged ->
        [one] 1 Dokument in „{ $file }“ ist nicht lesbar.
       *[other] { $damaged } Dokumente in „{ $file }“ sind nicht lesbar.
    } „marlinspeak shelf verify“ nennt, was daran nicht stimmt; vom Nachsehen geht nichts verloren.
doctor-ties-full = Knoten: könnten bald nicht mehr gespeichert werden. Auf dem Datenträger von „{ $file }“ sind nur { $megabytes } MB frei: Mach dort Platz.
doctor-ties-unwritable = Knoten: könnten nicht gespeichert werden. In „{ $file }“ kann nicht geschrieben werden ({ $reason }). Nimm den Ordner und seinen Inhalt in deinen Besitz, oder setz XDG_DATA_HOME auf einen Ordner, der dir gehört.
doctor-ties-nowhere = Knoten: könnten nicht gespeichert werden. Das System nennt keinen Ordner dafür: Setz HOME auf deinen eigenen Ordner.

doctor-settings = Einstellungen: in Ordnung. „{ $file }“ ist lesbar.
doctor-settings-none = Einstellungen: in Ordnung. In „{ $file }“ gibt es noch keine, also gelten die üblichen.
doctor-settings-newer = Einstellungen: „{ $file }“ hat ein neueres Marlinspeak geschrieben (Version { $version } des Dokuments). Sie bleibt unberührt, und es gelten die üblichen Einstellungen: Installiere das neuere Marlinspeak, oder verschieb die Datei.
doctor-settings-damaged = Einstellungen: „{ $file }“ ist beschädigt ({ $reason }). Beim Öffnen legt Marlinspeak die Datei beiseite und nimmt, was davon lesbar ist.
doctor-settings-unwritable = Einstellungen: könnten nicht gespeichert werden. „{ $file }“ lässt es nicht zu ({ $reason }). Nimm den Ordner und seinen Inhalt in deinen Besitz, oder setz XDG_CONFIG_HOME auf einen Ordner, der dir gehört.
doctor-settings-nowhere = Einstellungen: könnten nicht gespeichert werden. Das System nennt keinen Ordner dafür: Setz HOME auf deinen eigenen Ordner.

doctor-log = Protokoll: in Ordnung. „{ $file }“ liegt bereit, um einen Fehler zu melden; Namen von dir stehen nicht darin.
doctor-log-unwritable = Protokoll: wird nicht geführt. In „{ $file }“ kann nicht geschrieben werden ({ $reason }). Das Knüpfen geht auch ohne; sonst nimm den Ordner in deinen Besitz, oder setz XDG_STATE_HOME auf einen Ordner, der dir gehört.
doctor-log-nowhere = Protokoll: wird nicht geführt. Das System nennt keinen Ordner dafür: Setz HOME auf deinen eigenen Ordner. Das Knüpfen geht auch ohne.

doctor-well = Alles, was gebraucht wird, ist in Ordnung.
doctor-unwell = Etwas, das gebraucht wird, geht nicht: Die Zeilen oben sagen, was.

# A fault in the program itself, in a part that the rest can go on without.
fault-noted = Ein Teil von Marlinspeak ist an einem eigenen Fehler stehen geblieben; er ist in „{ $file }“ vermerkt: Beende das Programm, starte es neu, und nimm den Knoten dort auf, wo er gespeichert ist.
