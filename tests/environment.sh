# The throw-away environment that the tests run in. Sourced by tests/run.

# Set TEST_ENVIRONMENT and FREECAD_VERSION; install and build what is lacking.
make_test_environment() {
    # Whoever names another FreeCAD looks after it; the distribution's is installed.
    [[ ${NECKFIT_FREECAD_PYTHON:-} ]] || install "${TEST_PACKAGES[@]}" "${BROWSER[@]}"
    find_python
    local numpy key
    numpy=$("$FREECAD_PYTHON" -c 'import numpy; print(numpy.__version__)') ||
        stop "$FREECAD_PYTHON has no numpy. Install python3-numpy."
    # A new requirement, interpreter or numpy makes a new environment.
    key=$({
        cat "$NECKFIT_ROOT/tests/requirements.txt"
        "$FREECAD_PYTHON" -VV
        printf '%s %s\n' "$FREECAD_PYTHON" "$numpy"
    } | sha256sum | cut -c 1-12)
    TEST_ENVIRONMENT=$NECKFIT_CACHE/environment-$key
    # Two runs that start together must not fill one folder at the same time.
    (
        flock 9
        [[ -e $TEST_ENVIRONMENT/made ]] || fill_environment "$numpy"
    ) 9>"$NECKFIT_CACHE/environment.lock" || exit
    FREECAD_VERSION=$(cd "$NECKFIT_ROOT" && "$TEST_ENVIRONMENT/bin/python" -m freecad_neckfit.host) ||
        exit 2
    say "FreeCAD $FREECAD_VERSION, numpy $numpy, $("$FREECAD_PYTHON" -V)"
}

fill_environment() {
    local numpy=$1 log=$NECKFIT_CACHE/environment.log
    say "making a test environment in $TEST_ENVIRONMENT (pip, about a minute)"
    rm -rf "$TEST_ENVIRONMENT"
    # FreeCAD's modules were built against the distribution's numpy: no other may come in.
    printf 'numpy==%s\n' "$numpy" >"$NECKFIT_CACHE/constraints.txt"
    if ! { "$FREECAD_PYTHON" -m venv --system-site-packages "$TEST_ENVIRONMENT" &&
        "$TEST_ENVIRONMENT/bin/python" -m pip install --no-input --disable-pip-version-check \
            -c "$NECKFIT_CACHE/constraints.txt" -r "$NECKFIT_ROOT/tests/requirements.txt"; } \
        >"$log" 2>&1 </dev/null; then
        tail -n 20 "$log" >&2
        stop "cannot make the test environment; the whole log is $log"
    fi
    : >"$TEST_ENVIRONMENT/made"
}
