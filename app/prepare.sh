# SPDX-License-Identifier: GPL-3.0-or-later
# Shared by app/start and tests/run: installs missing packages and builds. Sourced; needs $root, the clone.

say() { printf 'trueunit: %s\n' "$*" >&2; }
fail() { say "$*"; exit 2; }

# Under sudo the files that are made belong to the person who called it, if they can write to the clone.
owner=
if [[ $EUID -eq 0 && -n ${SUDO_USER:-} && ${SUDO_USER:-} != root ]] &&
   runuser -u "$SUDO_USER" -- test -w "$root" 2>/dev/null; then
    owner=$SUDO_USER
fi

# Runs a command as that person; as whoever we are otherwise.
as_owner() {
    if [[ -z $owner ]]; then "$@"; return; fi
    local home uid
    home=$(getent passwd "$owner" | cut -d: -f6)
    uid=$(id -u "$owner")
    local -a set=(HOME="$home" USER="$owner" LOGNAME="$owner")
    [[ -d /run/user/$uid ]] && set+=(XDG_RUNTIME_DIR="/run/user/$uid")
    runuser -u "$owner" -- env "${set[@]}" "$@"
}

as_root() {
    if [[ $EUID -eq 0 ]]; then "$@"; else sudo -- "$@"; fi
}

# Names of the packages of the given kinds that are not installed.
missing_packages() {
    local kind name
    while read -r kind name; do
        [[ " $* " == *" $kind "* ]] || continue
        dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q 'ok installed$' || printf '%s\n' "$name"
    done < <(grep -v '^#' "$root/resources/packages.txt")
}

# install_packages KIND...: kinds as in resources/packages.txt. Does nothing when all are there.
install_packages() {
    command -v dpkg-query >/dev/null ||
        fail "this is no Debian system: install what resources/packages.txt names, then build with cmake."
    local -a missing
    mapfile -t missing < <(missing_packages "$@")
    [[ ${#missing[@]} -eq 0 ]] && return
    [[ $EUID -eq 0 ]] || command -v sudo >/dev/null ||
        fail "these packages are missing and only root can install them: ${missing[*]}"
    say "installing ${missing[*]}"
    local -a get=(env DEBIAN_FRONTEND=noninteractive apt-get -qq -y -o Dpkg::Use-Pty=0)
    local -a install=("${get[@]}" install --no-install-recommends "${missing[@]}")
    # A list of packages that is there and fresh enough spares the update.
    if apt-get -qq -s install --no-install-recommends "${missing[@]}" >/dev/null 2>&1 &&
       as_root "${install[@]}" >/dev/null 2>&1 </dev/null; then
        return
    fi
    as_root "${get[@]}" update </dev/null || fail "the list of packages cannot be fetched; is there a network?"
    as_root "${install[@]}" >/dev/null </dev/null || fail "these packages could not be installed: ${missing[*]}"
}

# Passes what ninja says on to a log. On a terminal one line tells how far it is, [n/m], and goes when all is done.
log_progress() {
    local line shown=
    while IFS= read -r line; do
        printf '%s\n' "$line"
        if [[ -t 2 && $line =~ ^\[([0-9]+)/([0-9]+)\]\  ]]; then
            printf '\r\033[Ktrueunit: building, step %s of %s' "${BASH_REMATCH[1]}" "${BASH_REMATCH[2]}" >&2
            shown=yes
        fi
    done
    [[ -z $shown ]] || printf '\r\033[K' >&2
}

# build FOLDER TARGET [CMAKE OPTION...]: configures when that was not done with these options yet, builds what changed.
build() {
    local folder=$root/$1 target=$2
    shift 2
    if [[ -n $owner && -d $folder ]] && [[ -n $(find "$folder" ! -user "$owner" -print -quit) ]]; then
        chown -R "$owner:" "$folder"
    fi
    as_owner mkdir -p "$folder"
    (
        flock 9  # two starts at once: the second waits, then finds all done
        local wanted="$*"
        if [[ ! -f $folder/build.ninja || $(cat "$folder/options" 2>/dev/null) != "$wanted" ]]; then
            [[ -f $folder/build.ninja ]] || say "building, which takes five to fifteen minutes the first time"
            local -a launcher=()
            command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
            as_owner cmake -G Ninja -S "$root" -B "$folder" -DCMAKE_BUILD_TYPE=Release "${launcher[@]}" "$@" \
                >"$folder/configure.log" 2>&1 || { tail -n 20 "$folder/configure.log" >&2; exit 1; }
            printf '%s' "$wanted" | as_owner tee "$folder/options" >/dev/null
        fi
        if ! as_owner ninja -C "$folder" "$target" 2>&1 | log_progress >"$folder/build.log"; then
            grep -m 5 -A 5 -E 'error|FAILED' "$folder/build.log" >&2 || tail -n 20 "$folder/build.log" >&2
            exit 1
        fi
    ) 9>"$folder/lock" || fail "the build failed; all of it is in $folder/build.log"
}
