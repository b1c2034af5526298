#!/bin/sh
# Builds a Debian package of what is built, with dpkg alone.
#
#   deb.sh BINARY ARTIFACTS OUT PACKAGE…
#
# BINARY is the program, ARTIFACTS the folder that “marlinspeak install-artifacts” has written,
# OUT the folder for the package, and each PACKAGE one that must be there besides the libraries
# that the program is linked to: those it opens only when it runs, and the speech service.
set -eu

binary=$(realpath "$1") artifacts=$(realpath "$2") out=$3
shift 3
here=$(realpath "$(dirname "$0")")
top=$(realpath "$here/../..")
name=marlinspeak
version=$(sed -n 's/^version = "\(.*\)"/\1/p' "$top/Cargo.toml" | head -n 1)
arch=$(dpkg --print-architecture)
when=$(date -d "$(sed -n 's/^ -- .*>  //p' "$here/changelog" | head -n 1)" +%s)
head -n 1 "$here/changelog" | grep -q "^$name ($version) " || {
	echo "resources/packaging/changelog does not begin with version $version of Cargo.toml: add it." >&2
	exit 1
}

mkdir -p "$out"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
chmod 755 "$work"
root=$work/root
doc=$root/usr/share/doc/$name
umask 022

"$here/install.sh" install "$binary" "$artifacts" "$root/usr"
gzip -9n "$root"/usr/share/man/man1/*.1
# Debian has the completions of zsh in a folder of its own.
mkdir -p "$root/usr/share/zsh/vendor-completions"
mv "$root/usr/share/zsh/site-functions/_$name" "$root/usr/share/zsh/vendor-completions/"
rmdir "$root/usr/share/zsh/site-functions"

mkdir -p "$doc"
gzip -9nc "$here/changelog" >"$doc/changelog.gz"
"$here/notices.sh" "${CARGO:-cargo}" | gzip -9n >"$doc/libraries.gz"
{
	echo "Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/"
	echo "Upstream-Name: Marlinspeak"
	echo "Comment: The libraries linked into the program and their licences are in"
	echo " /usr/share/doc/$name/libraries.gz."
	echo
	echo "Files: *"
	echo "Copyright: $(sed -n 's/^Copyright (c) //p' "$top/LICENSE")"
	echo "License: Expat"
	sed -n '/^Permission/,$p' "$top/LICENSE" | sed 's/^$/./; s/^/ /'
	echo
	echo "Files: resources/fonts/*"
	echo "Copyright:"
	sed -n 's/^Copyright / /p' "$top/resources/fonts/LICENSE-OFL.txt"
	echo "License: OFL-1.1"
	sed 's/\r$//; s/^$/./; s/^/ /' "$top/resources/fonts/LICENSE-OFL.txt"
} >"$doc/copyright"

# What the program is linked to, by the versions that have the symbols it uses.
mkdir -p "$work/debian" "$root/DEBIAN"
printf 'Source: %s\n\nPackage: %s\nArchitecture: any\n' "$name" "$name" >"$work/debian/control"
linked=$(cd "$work" && dpkg-shlibdeps -O "$root/usr/bin/$name" | sed 's/^shlibs:Depends=//')
depends=$linked
for package in "$@"; do
	case ", $linked," in
	*", $package,"* | *", $package ("*) ;;
	*) depends="$depends, $package" ;;
	esac
done

cat >"$root/DEBIAN/control" <<END
Package: $name
Version: $version
Architecture: $arch
Maintainer: $(sed -n 's/^ -- \(.*\)  .*/\1/p' "$here/changelog" | head -n 1)
Installed-Size: $(du -sk --exclude DEBIAN "$root" | cut -f1)
Depends: $depends
Recommends: alsa-utils, pulseaudio | pipewire-pulse
Suggests: xdg-desktop-portal
Section: misc
Priority: optional
Description: speaks and shows each step of a Turk's head, one press at a time
 Marlinspeak is for people who tie Turk's heads on a pinned tube. It computes
 the very knot that was chosen, says every step aloud and shows it in very
 large type with a picture, moves on at one press of a foot pedal or the space
 bar, says it again, goes back, and remembers where the tie stopped.
END
(cd "$root" && find usr -type f -print0 | sort -z | xargs -0 md5sum) >"$root/DEBIAN/md5sums"
# Two builds of the same source are the same package.
find "$root" -exec touch -h -d "@$when" {} +
SOURCE_DATE_EPOCH=$when dpkg-deb --root-owner-group --build "$root" \
	"$out/${name}_${version}_$arch.deb"
