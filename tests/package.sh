#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Checks what is installed and packaged. Usage: tests/package.sh BUILD_FOLDER [--clean-root]
# --clean-root also installs the package into a fresh Debian 12, runs it there and removes it; as root, some minutes.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=$(cd "$1" && pwd)
here=$root/resources/packaging
work=$(mktemp -d)
clean=$work/root
finish() {
    mountpoint -q "$clean/proc" && umount "$clean/proc"
    rm -rf --one-file-system "$work"
}
trap finish EXIT
step() { printf '== %s\n' "$*"; }

step "desktop entry, metadata, MIME type, man page, completion"
desktop-file-validate "$here/org.trueunit.Trueunit.desktop"
appstreamcli validate --no-net "$here/org.trueunit.Trueunit.metainfo.xml"
xmllint --noout "$here"/*.xml "$here"/icons/trueunit.svg $(find "$root/resources/help" -name "*.svg")
mkdir -p "$work/mime/packages"
cp "$here/trueunit-scenario.xml" "$work/mime/packages/trueunit.xml"
update-mime-database "$work/mime" 2>/dev/null
grep -q scenario.json "$work/mime/globs2"
[[ -z $(man --warnings -E UTF-8 -l -Tutf8 -Z "$here/trueunit.1" 2>&1 >/dev/null) ]]
bash -n "$here/trueunit.bash-completion"

step "every option of the help stands in the man page"
manual=$(sed 's/\\-/-/g' "$here/trueunit.1")
help=$("$build/app/trueunit" --help)
missing=0
for word in $(grep -oE -- '--[a-z][a-z-]+' <<<"$help" | sort -u) \
            $(sed -n 's/^  trueunit \([a-z]\{1,\}\) .*/\1/p' <<<"$help" | sort -u); do
    grep -qwe "$word" <<<"$manual" || { echo "the man page lacks $word"; missing=1; }
done
[[ $missing -eq 0 ]]

step "the package"
(cd "$build" && cpack >"$work/cpack.log" 2>&1) || { cat "$work/cpack.log"; exit 1; }
package=$(ls -t "$build"/trueunit_*.deb | head -1)
dpkg-deb -I "$package" | grep -E '^ (Package|Version|Depends)'
lintian --fail-on error "$package"
[[ ${2:-} == --clean-root ]] || exit 0

step "a clean Debian 12: install, run, remove"
debootstrap --variant=minbase bookworm "$clean" http://deb.debian.org/debian >"$work/debootstrap.log"
mount -t proc proc "$clean/proc"
cp "$package" "$clean/tmp/"
inside() { chroot "$clean" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen "$@"; }
inside apt-get -qq -y --no-install-recommends install "/tmp/$(basename "$package")" >"$work/apt.log" 2>&1 ||
    { tail "$work/apt.log"; exit 1; }
inside trueunit --version
inside trueunit render /usr/share/trueunit/scenarios/marking-bias.scenario.json --seconds 20 --out /tmp/a.wav
code=0
inside trueunit measure /tmp/a.wav || code=$?
[[ $code -eq 1 ]]  # out of limits, as imposed
inside trueunit picture --seconds 3 --out /tmp/a.png
[[ -s $clean/tmp/a.png ]]
inside apt-get -qq -y purge trueunit >/dev/null 2>&1
left=$(find "$clean"/usr -name '*trueunit*' -o -name '*Trueunit*')
[[ -z $left ]] || { echo "left behind: $left"; exit 1; }
echo "installed, ran and left nothing behind"
