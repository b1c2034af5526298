# „marlinspeak doctor“: was ein Fenster von dem Desktop hat, auf dem es sich öffnet, je eine Zeile.

doctor-screen = Wachhalten: in Ordnung. Der Desktop lässt den Bildschirm an, solange ein Knoten offen ist.
doctor-screen-none = Wachhalten: Der Bildschirm kann beim Knüpfen dunkel werden. Auf diesem Desktop kann kein Programm dafür sorgen, dass er anbleibt: Auf „org.freedesktop.ScreenSaver“ antwortet nichts. Das Knüpfen geht trotzdem; eine längere Zeit lässt sich in den Einstellungen des Desktops wählen.
doctor-screen-none-wayland = Wachhalten: Der Bildschirm kann beim Knüpfen dunkel werden. Auf diesem Desktop kann kein Programm dafür sorgen, dass er anbleibt: Auf „org.freedesktop.ScreenSaver“ antwortet nichts. Das Knüpfen geht trotzdem; eine längere Zeit lässt sich in den Einstellungen des Desktops wählen, und unter sway mit der Zeile „for_window [app_id=marlinspeak] inhibit_idle visible“ in dessen Konfiguration.

doctor-window = Fenster: in Ordnung. Es geht so groß und dort auf, wie und wo es war.
# Wayland: the name of the protocol between the desktop and its windows.
doctor-window-wayland = Fenster: in Ordnung. Es geht so groß auf, wie es war; wo es steht, bestimmt der Desktop, denn Wayland sagt es keinem Programm: Schieb ein zweites Fenster für einen Kurs selbst auf seinen Bildschirm, F11 lässt es ihn dann füllen. Auch lässt sich keine Datei darauf ziehen: Wähl sie mit ihrer Taste, oder tipp ihren Pfad.

doctor-icon = Symbol: in Ordnung. Der Desktop findet es über „{ $file }“.
doctor-icon-none = Symbol: Das Fenster hat keines, denn Marlinspeak ist nicht dort installiert, wo der Desktop nachsieht. Das Knüpfen geht trotzdem; „make install“ oder das Debian-Paket bringt es hin.

doctor-files = Dateien: in Ordnung. Sie werden in einem Fenster des Desktops gewählt.
doctor-files-none = Dateien: Der Desktop zeigt kein Fenster, in dem sie gewählt werden, also werden ihre Pfade getippt. Unter Debian bringt „sudo apt install xdg-desktop-portal xdg-desktop-portal-gtk“ eines; melde dich danach neu an.
