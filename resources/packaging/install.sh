#!/bin/sh
# Puts the program and what belongs to it in their places, or takes them away again.
#
#   install.sh install|uninstall BINARY ARTIFACTS ROOT
#
# BINARY is the program, ARTIFACTS the folder that “marlinspeak install-artifacts” has written,
# ROOT the folder to install under, such as /usr/local.
set -eu

task=$1 binary=$2 artifacts=$3 root=$4
here=$(dirname "$0")

# put MODE SOURCE PLACE: one file under the root.
put() {
	case $task in
	install) install -D -m "$1" "$2" "$root/$3" ;;
	uninstall) rm -f "$root/$3" ;;
	esac
}

put 755 "$binary" bin/marlinspeak
put 644 "$here/marlinspeak.desktop" share/applications/marlinspeak.desktop
put 644 "$here/marlinspeak.metainfo.xml" share/metainfo/marlinspeak.metainfo.xml
put 644 "$artifacts/icons/marlinspeak.svg" share/icons/hicolor/scalable/apps/marlinspeak.svg
for size in 32 48 64 128 256 512; do
	put 644 "$artifacts/icons/marlinspeak-$size.png" \
		"share/icons/hicolor/${size}x$size/apps/marlinspeak.png"
done
put 644 "$artifacts/completions/marlinspeak.bash" share/bash-completion/completions/marlinspeak
put 644 "$artifacts/completions/_marlinspeak" share/zsh/site-functions/_marlinspeak
put 644 "$artifacts/completions/marlinspeak.fish" share/fish/vendor_completions.d/marlinspeak.fish
case $task in
install)
	for page in "$artifacts"/man/*.1; do
		put 644 "$page" "share/man/man1/$(basename "$page")"
	done
	;;
uninstall)
	rm -f "$root"/share/man/man1/marlinspeak.1 "$root"/share/man/man1/marlinspeak-*.1
	;;
esac
