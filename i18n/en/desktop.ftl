# “marlinspeak doctor”: what a window has of the desktop that it opens on, a line for each.

doctor-screen = Screen: works. The desktop keeps it on while a tie is open.
doctor-screen-none = Screen: may go dark while you tie. This desktop lets no program keep it on: nothing answers to “org.freedesktop.ScreenSaver”. Ties go on all the same; a longer time can be set in the desktop’s own settings.
doctor-screen-none-wayland = Screen: may go dark while you tie. This desktop lets no program keep it on: nothing answers to “org.freedesktop.ScreenSaver”. Ties go on all the same; a longer time can be set in the desktop’s own settings, and under sway by the line “for_window [app_id=marlinspeak] inhibit_idle visible” in its configuration.

doctor-window = Window: works. It opens as large as it was, where it was.
# Wayland: the name of the protocol between the desktop and its windows.
doctor-window-wayland = Window: works. It opens as large as it was; where it stands is up to the desktop, because Wayland tells no program: move a second window for a class to its screen yourself, and F11 has it fill that screen. No file can be dropped on it either: choose it by its key, or type its path.

doctor-icon = Icon: works. The desktop finds it by “{ $file }”.
doctor-icon-none = Icon: the window has none, for Marlinspeak is not installed where the desktop looks. Ties go on all the same; “make install” or the Debian package puts it there.

doctor-files = Files: work. They are chosen in a window of the desktop.
doctor-files-none = Files: the desktop shows no window to choose them in, so their paths are typed. On Debian “sudo apt install xdg-desktop-portal xdg-desktop-portal-gtk” brings one; log in again afterwards.
