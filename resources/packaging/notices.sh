#!/bin/sh
# Prints whose work is in the program besides our own: every crate that is linked in, with its
# licence, and the text of each licence once, with the crates it came with.
#
#   notices.sh [CARGO]
#
# The crates are those of Cargo.lock; their sources are where cargo has put them.
set -eu

cargo=${1:-cargo}
sources=${CARGO_HOME:-$HOME/.cargo}/registry/src
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

"$cargo" tree --locked --edges normal --prefix none --format '{p}|{l}' |
	sed 's/ (\*)$//; s/ (proc-macro)//' | sort -u | grep -v '^marlinspeak ' >"$work/crates"

echo "Libraries linked into Marlinspeak, each with its version and its licence."
echo
sed 's/|/: /; s/ v/ /' "$work/crates"
echo
echo "The texts of these licences, each followed by what it came with."

mkdir "$work/texts" "$work/owners"
while IFS='|' read -r crate _; do
	name=${crate% v*} version=${crate##* v}
	for folder in "$sources"/*/"$name-$version"; do
		for text in "$folder"/LICEN[CS]E* "$folder"/COPYING* "$folder"/NOTICE* \
			"$folder"/COPYRIGHT* "$folder"/LICEN[CS]ES/*; do
			[ -f "$text" ] || continue
			sum=$(sha256sum <"$text" | cut -d' ' -f1)
			cp "$text" "$work/texts/$sum"
			echo "$name $version" >>"$work/owners/$sum"
		done
	done
done <"$work/crates"

for text in "$work"/texts/*; do
	echo
	echo "------------------------------------------------------------------------------"
	sort -u "$work/owners/$(basename "$text")" | paste -sd, - | sed 's/,/, /g' | fold -s -w 78
	echo "------------------------------------------------------------------------------"
	cat "$text"
done
