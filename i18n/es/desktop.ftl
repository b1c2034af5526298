# «marlinspeak doctor»: lo que una ventana tiene del escritorio en el que se abre, una línea para cada cosa.

doctor-screen = Luz de la pantalla: funciona. El escritorio la deja encendida mientras haya un nudo abierto.
doctor-screen-none = Luz de la pantalla: puede apagarse mientras haces el nudo. Este escritorio no deja que ningún programa la mantenga: nada responde a «org.freedesktop.ScreenSaver». Los nudos siguen igual; en los ajustes del escritorio se puede poner un tiempo más largo.
doctor-screen-none-wayland = Luz de la pantalla: puede apagarse mientras haces el nudo. Este escritorio no deja que ningún programa la mantenga: nada responde a «org.freedesktop.ScreenSaver». Los nudos siguen igual; en los ajustes del escritorio se puede poner un tiempo más largo, y en sway con la línea «for_window [app_id=marlinspeak] inhibit_idle visible» en su configuración.

doctor-window = Ventana: funciona. Se abre tan grande como era y donde estaba.
# Wayland: the name of the protocol between the desktop and its windows.
doctor-window-wayland = Ventana: funciona. Se abre tan grande como era; dónde está lo decide el escritorio, porque Wayland no se lo dice a ningún programa: lleva tú mismo a su pantalla una segunda ventana para una clase, y F11 hace que la llene. Tampoco se puede soltar un archivo en ella: elígelo con su tecla o escribe su ruta.

doctor-icon = Icono: funciona. El escritorio lo encuentra por «{ $file }».
doctor-icon-none = Icono: la ventana no lo tiene, porque Marlinspeak no está instalado donde mira el escritorio. Los nudos siguen igual; «make install» o el paquete de Debian lo ponen ahí.

doctor-files = Archivos: funcionan. Se eligen en una ventana del escritorio.
doctor-files-none = Archivos: el escritorio no muestra ninguna ventana para elegirlos, así que se escriben sus rutas. En Debian la trae «sudo apt install xdg-desktop-portal xdg-desktop-portal-gtk»; después vuelve a abrir la sesión.
