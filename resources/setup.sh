# Shell functions that tests/run and samples/run share: finding the cache, and installing what a
# bare Debian lacks. Sourced, never run. Plain bash and coreutils: Python may not be there yet.

NECKFIT_ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
NECKFIT_CACHE=${NECKFIT_CACHE:-${XDG_CACHE_HOME:-${HOME:-/root}/.cache}/neckfit}

# What the workbench needs, and what its tests need besides.
# xvfb and xauth give GUI tests a screen; ezdxf reads and writes DXF; numpy comes with FreeCAD.
RUN_PACKAGES=(freecad python3 python3-numpy python3-ezdxf)
TEST_PACKAGES=("${RUN_PACKAGES[@]}" python3-venv xvfb xauth ca-certificates)
# The report is looked at in a browser, once: it is the same on every FreeCAD, so the folders of
# the others do without.
BROWSER=(chromium)
[[ ! ${NECKFIT_IN_SUITE:-} ]] || BROWSER=()

say() { printf 'neckfit: %s\n' "$*" >&2; }

# Exit code 2 is "cannot start", as in the command itself.
stop() {
    say "$*"
    exit 2
}

# Set FREECAD_PYTHON to the interpreter that FreeCAD was built for: the distribution's own.
find_python() { FREECAD_PYTHON=${NECKFIT_FREECAD_PYTHON:-/usr/bin/python3}; }

lacking() {
    local package
    for package in "$@"; do
        # A package that was removed but not purged still has a line: look at its state.
        [[ $(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null) == installed ]] ||
            printf '%s\n' "$package"
    done
}

# install PACKAGE...: install by apt those that are not there yet; do nothing where all are.
install() {
    command -v dpkg-query >/dev/null ||
        stop "this machine has no apt. Install FreeCAD 0.20 or later with its Python 3.11 or later," \
            "numpy and ezdxf by hand (Debian calls the packages: $*)."
    local missing
    mapfile -t missing < <(lacking "$@")
    ((${#missing[@]})) || return 0
    local by_hand="apt-get update && apt-get install --no-install-recommends ${missing[*]}"
    command -v apt-get >/dev/null || stop "apt-get is missing. Install by hand: ${missing[*]}"
    local as_root=()
    if ((EUID != 0)); then
        # sudo only where it asks no password: a script must not hang at a prompt nobody sees.
        sudo -n true 2>/dev/null || stop "not root. As root, run: $by_hand"
        as_root=(sudo -n)
    fi
    say "installing ${missing[*]} (apt-get, takes a few minutes the first time)"
    local log
    log=$(mktemp)
    if ! { apt_get "${as_root[@]}" -- update &&
        apt_get "${as_root[@]}" -- install -y --no-install-recommends "${missing[@]}"; } \
        >"$log" 2>&1 </dev/null; then
        tail -n 20 "$log" >&2
        stop "apt-get failed; the whole log is $log. By hand: $by_hand"
    fi
    rm -f "$log"
}

# apt_get [WRAPPER...] -- ARGUMENTS: apt-get that asks nothing and waits for another apt to finish.
apt_get() {
    local wrapper=()
    while [[ $1 != -- ]]; do
        wrapper+=("$1")
        shift
    done
    shift
    "${wrapper[@]}" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 \
        apt-get -q -o DPkg::Lock::Timeout=600 "$@"
}
