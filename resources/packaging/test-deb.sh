#!/bin/sh
# Installs the package in a fresh Debian, opens the program there on a display without a screen,
# removes it again and looks for what is left. Must be run by root; takes some minutes.
#
#   test-deb.sh PACKAGE
#
# The fresh Debian comes from the mirror that this machine uses, and is gone at the end.
set -eu

package=$(realpath "$1")
. /etc/os-release
list() { cat /etc/apt/sources.list /etc/apt/sources.list.d/*.sources 2>/dev/null; }
mirror=$(list | sed -n 's/^URIs: *\([^ ]*\/debian\/\{0,1\}\)$/\1/p; s/^deb  *\(\[[^]]*\] *\)\{0,1\}\([^ ]*\/debian\/\{0,1\}\)  *.*/\2/p' | head -n 1)
root=$(mktemp -d)
chmod 755 "$root"
# Ends what was started in the root, and only that, and removes it.
end() {
	for process in /proc/[0-9]*; do
		if [ "$(readlink "$process/root")" = "$root" ]; then
			kill "${process##*/}" 2>/dev/null || true
		fi
	done
	umount "$root/proc" 2>/dev/null || true
	rm -rf --one-file-system "$root"
}
trap end EXIT

echo "A fresh $VERSION_CODENAME …"
debootstrap --variant=minbase "$VERSION_CODENAME" "$root" "$mirror" >"$root.log" 2>&1 ||
	{ tail "$root.log"; exit 1; }
rm -f "$root.log"
mount -t proc proc "$root/proc" 2>/dev/null || true
# The first takes the place of the shell that calls it.
exec_in_root() {
	exec chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root \
		DEBIAN_FRONTEND=noninteractive LC_ALL=C "$@"
}
in_root() { (exec_in_root "$@"); }
exec_as_tyer() {
	exec_in_root setpriv --reuid tyer --regid tyer --clear-groups \
		env HOME=/home/tyer DISPLAY="$display" "$@"
}
as_tyer() { (exec_as_tyer "$@"); }
# Every file outside the records of apt and dpkg and the system's own folders.
files() {
	(cd "$root" && find . -xdev \( -path ./proc -o -path ./sys -o -path ./dev -o -path ./run \
		-o -path ./tmp -o -path ./home -o -path ./var/lib/dpkg -o -path ./var/lib/apt -o -path ./var/cache \
		-o -path ./var/log \) -prune -o -print | sort)
}

echo "Installed with what it depends on, and a display and hands for it …"
cp "$package" "$root/tmp/marlinspeak.deb"
in_root apt-get update -qq
in_root apt-get install -y -qq --no-install-recommends xvfb xdotool /tmp/marlinspeak.deb \
	>"$root/tmp/apt.log" 2>&1 || { tail "$root/tmp/apt.log"; exit 1; }
in_root dpkg --verify marlinspeak
in_root useradd --create-home tyer

# The program alone, taken away and put in again: what it depends on stays.
in_root dpkg --purge marlinspeak >/dev/null
files >"$root/tmp/before"
in_root dpkg --install /tmp/marlinspeak.deb >/dev/null

echo "Opened …"
in_root marlinspeak --version
in_root marlinspeak steps --leads 3 --bights 4 | head -n 1
exec_in_root Xvfb -displayfd 1 -screen 0 1280x800x24 -nolisten tcp \
	>"$root/tmp/number" 2>/dev/null &
server=$!
# It tells its number when it is ready.
for _ in $(seq 60); do
	[ -s "$root/tmp/number" ] && break
	sleep 1
done
display=:$(cat "$root/tmp/number")
exec_as_tyer marlinspeak --leads 3 --bights 4 >"$root/tmp/app.log" 2>&1 &
app=$!
title=$(as_tyer timeout 60 xdotool search --sync --onlyvisible --name Marlinspeak \
	getwindowname) || { cat "$root/tmp/app.log"; exit 1; }
echo "The window “$title” is there."
as_tyer marlinspeak doctor || true
kill "$app" "$server"
wait "$app" "$server" 2>/dev/null || true

echo "Removed …"
in_root dpkg --purge marlinspeak >/dev/null
files >"$root/tmp/after"
if ! diff "$root/tmp/before" "$root/tmp/after"; then
	echo "The package has left a trace." >&2
	exit 1
fi
echo "No trace is left."
