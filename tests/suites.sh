# The other FreeCADs: one Debian suite each, in a chroot folder below the cache. Sourced by
# tests/run. A suite's folder holds a minimal Debian; tests/run, run inside it, installs the rest
# just as it does on a bare machine.

declare -A FREECAD_OF=([bookworm]=0.20 [trixie]=1.0 [forky]=1.1)
SUITES=(bookworm trixie forky)

# suite_of NAME: the Debian suite for "trixie" or "1.0"; fails for any other name.
suite_of() {
    local suite
    for suite in "${SUITES[@]}"; do
        [[ $1 == "$suite" || $1 == "${FREECAD_OF[$suite]}" ]] && printf '%s\n' "$suite" && return
    done
    return 1
}

# The mirror this machine's apt uses for Debian itself; empty where apt tells none, and then
# debootstrap's own default serves.
host_mirror() {
    command -v apt-get >/dev/null || return 0
    apt-get indextargets --format '$(REPO_URI)' 'Created-By: Packages' 'Origin: Debian' \
        'Label: Debian' 2>/dev/null | grep -E '^(http|https|file):/' | head -n 1
}

# make_suite SUITE: debootstrap it unless a finished one is there. The mark is written last, so a
# half-made folder is seen and made anew.
make_suite() {
    local suite=$1 root=$NECKFIT_CACHE/suites/$1
    [[ -e $root/.neckfit-made ]] && return 0
    ((EUID == 0)) || stop "FreeCAD ${FREECAD_OF[$suite]} runs in a chroot folder: run tests/run as root."
    install debootstrap gpgv debian-archive-keyring # the last two check the signatures
    say "making a Debian $suite folder for FreeCAD ${FREECAD_OF[$suite]} in $root (2 to 5 minutes, 3 GB)"
    rm -rf --one-file-system "$root"
    mkdir -p "$root"
    # Older debootstraps know no script for newer suites; all newer suites bootstrap like sid.
    local script=/usr/share/debootstrap/scripts/$suite
    [[ -e $script ]] || script=/usr/share/debootstrap/scripts/sid
    local log=$NECKFIT_CACHE/suites/$suite.log mirror
    mirror=$(host_mirror)
    # debootstrap mounts things in there: in a namespace of its own they cannot outlive it.
    if ! unshare --mount --pid --fork --kill-child --mount-proc debootstrap --variant=minbase \
        "$suite" "$root" ${mirror:+"$mirror" "$script"} >"$log" 2>&1 </dev/null; then
        tail -n 20 "$log" >&2
        say "debootstrap of $suite failed; the whole log is $log"
        return 1
    fi
    printf '#!/bin/sh\nexit 101\n' >"$root/usr/sbin/policy-rc.d" # no services in there
    chmod +x "$root/usr/sbin/policy-rc.d"
    : >"$root/.neckfit-made"
}

# share_settings SUITE: what the suite's apt and pip need to reach what this machine's reach:
# names, certificates, proxies.
share_settings() {
    local root=$NECKFIT_CACHE/suites/$1 certificates
    rm -f "$root/etc/resolv.conf" "$root/etc/hosts"
    cat /etc/resolv.conf >"$root/etc/resolv.conf"
    cat /etc/hosts >"$root/etc/hosts"
    # Testing and frozen mirrors serve lists that are past their date.
    {
        printf 'Acquire::Check-Valid-Until "false";\n'
        apt-config dump 2>/dev/null | grep -E '^Acquire::(https?::|Check-Date)' || true
    } >"$root/etc/apt/apt.conf.d/90neckfit"
    # Asked once: pip takes a while to start.
    PIP_SETTINGS=$("$TEST_ENVIRONMENT/bin/python" -m pip config list 2>/dev/null)
    certificates=$(pip_setting cert)
    certificates=${certificates:-/etc/ssl/certs/ca-certificates.crt}
    mkdir -p "$root/etc/neckfit"
    [[ ! -r $certificates ]] || cat "$certificates" >"$root/etc/neckfit/certificates.crt"
}

# pip_setting NAME: the value this machine's pip has for it, from a variable or a file.
pip_setting() {
    sed -n "s/^[^=]*\.$1='\(.*\)'\$/\1/p" <<<"$PIP_SETTINGS" | head -n 1
}

# The settings of this machine's pip that hold in another folder too, as NAME=value lines.
shared_pip_settings() {
    local name value
    for name in index-url proxy trusted-host timeout default-timeout; do
        value=$(pip_setting "$name")
        [[ -z $value ]] || printf 'PIP_%s=%s\n' "$(tr a-z- A-Z_ <<<"$name")" "$value"
    done
}

# What this run was asked for by variables that the tests read, as NAME=value lines; where things
# lie is another matter in there.
shared_wishes() {
    env | grep -E '^NECKFIT_[A-Z_]+=' | grep -vE '^NECKFIT_(CACHE|ROOT|FREECAD|PICTURES|IN_SUITE)=' || true
}

# run_in_suite SUITE ARGUMENTS...: this checkout's tests/run inside the suite, on a copy of its own,
# so that a run there neither sees later edits nor leaves files here.
run_in_suite() {
    local suite=$1 copy code
    (
        flock 9
        make_suite "$suite"
    ) 9>"$NECKFIT_CACHE/$suite.lock" || return
    share_settings "$suite" || return
    copy=$(mktemp -d "$NECKFIT_CACHE/suites/$suite/checkout.XXXXXX") || return
    copy_checkout "$copy" && enter_suite "$suite" "/${copy##*/}" "${@:2}"
    code=$?
    rm -rf --one-file-system "$copy"
    return $code
}

copy_checkout() {
    chmod 755 "$1" && tar -C "$NECKFIT_ROOT" --exclude=./.git --exclude=./samples/out \
        --exclude=__pycache__ --exclude='.*_cache' --exclude=.hypothesis -cf - . |
        tar -C "$1" -xf - --no-same-owner
}

# The mounts live in a mount namespace of their own and the processes in a process namespace of
# their own: the kernel undoes both when the command ends, however it ends.
enter_suite() {
    local root=$NECKFIT_CACHE/suites/$1 checkout=$2 settings=()
    shift 2
    mapfile -t settings < <(shared_pip_settings && shared_wishes)
    [[ ! -e $root/etc/neckfit/certificates.crt ]] ||
        settings+=(PIP_CERT=/etc/neckfit/certificates.crt)
    mkdir -p "$root/cache"
    unshare --mount --pid --fork --kill-child bash -euc '
        mount -t proc proc "$1/proc"
        mount --rbind /dev "$1/dev"
        exec chroot "$@"' in-suite \
        "$root" env -i HOME=/root LANG=C.UTF-8 TERM="${TERM:-dumb}" \
        PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin \
        ${CI:+CI="$CI"} NECKFIT_CACHE=/cache NECKFIT_IN_SUITE=yes "${settings[@]}" \
        bash "$checkout/tests/run" "$@"
}
