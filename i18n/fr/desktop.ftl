# « marlinspeak doctor » : ce qu’une fenêtre a du bureau sur lequel elle s’ouvre, une ligne pour chaque chose.

doctor-screen = Veille : en état. Le bureau garde l’écran allumé tant qu’un nœud est ouvert.
doctor-screen-none = Veille : l’écran peut s’éteindre pendant que vous nouez. Ce bureau ne laisse aucun programme le garder allumé : rien ne répond à « org.freedesktop.ScreenSaver ». Les nœuds continuent malgré tout ; un délai plus long se choisit dans les réglages du bureau.
doctor-screen-none-wayland = Veille : l’écran peut s’éteindre pendant que vous nouez. Ce bureau ne laisse aucun programme le garder allumé : rien ne répond à « org.freedesktop.ScreenSaver ». Les nœuds continuent malgré tout ; un délai plus long se choisit dans les réglages du bureau, et sous sway par la ligne « for_window [app_id=marlinspeak] inhibit_idle visible » de sa configuration.

doctor-window = Fenêtre : en état. Elle s’ouvre aussi grande qu’elle était, là où elle était.
# Wayland: the name of the protocol between the desktop and its windows.
doctor-window-wayland = Fenêtre : en état. Elle s’ouvre aussi grande qu’elle était ; sa place est l’affaire du bureau, car Wayland ne la dit à aucun programme : déplacez vous-même sur son écran une seconde fenêtre pour une classe, et F11 la lui fait remplir. Aucun fichier ne peut non plus y être déposé : choisissez-le par sa touche, ou tapez son chemin.

doctor-icon = Icône : en état. Le bureau la trouve par « { $file } ».
doctor-icon-none = Icône : la fenêtre n’en a pas, car Marlinspeak n’est pas installé là où le bureau regarde. Les nœuds continuent malgré tout ; « make install » ou le paquet Debian l’y met.

doctor-files = Fichiers : en état. Ils se choisissent dans une fenêtre du bureau.
doctor-files-none = Fichiers : le bureau ne montre aucune fenêtre pour les choisir, donc leurs chemins se tapent. Sous Debian, « sudo apt install xdg-desktop-portal xdg-desktop-portal-gtk » en apporte une ; ouvrez ensuite la session de nouveau.
