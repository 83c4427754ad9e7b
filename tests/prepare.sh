# Sourced by the scripts that a person runs: installs what is missing and builds.
# Needs $root, the project's folder. Functions stop the script with status 2 when the machine lacks
# something that cannot be installed from here, and with 1 when a build fails.

build_packages="g++ cmake ninja-build ccache tao-pegtl-dev libfmt-dev libhowardhinnant-date-dev catch2 \
libcli11-dev nlohmann-json3-dev libeigen3-dev"

say() { printf '%s\n' "$*" >&2; }

stop() {
    status=$1
    shift
    say "$@"
    exit "$status"
}

installed() { dpkg-query -W -f='${Status}\n' "$1" 2>/dev/null | grep -q '^install ok installed'; }

missing_of() {
    for package in "$@"; do
        installed "$package" || printf '%s ' "$package"
    done
}

# ensure PACKAGE...: installs with apt what is not there yet. Quiet when nothing is missing.
ensure() {
    if ! command -v dpkg-query >/dev/null 2>&1 || ! command -v apt-get >/dev/null 2>&1; then
        command -v cmake >/dev/null 2>&1 || stop 2 "This is not Debian: please install what these Debian packages hold: $*"
        return 0
    fi
    missing=$(missing_of "$@")
    [ -n "$missing" ] || return 0
    if [ "$(id -u)" = 0 ]; then as_root=
    elif command -v sudo >/dev/null 2>&1; then as_root=sudo
    else stop 2 "Please install (as root): apt-get install $missing"
    fi
    say "installing: $missing"
    $as_root apt-get -q update >&2 || stop 2 "apt-get update failed; needed: $missing"
    # shellcheck disable=SC2086
    $as_root env DEBIAN_FRONTEND=noninteractive apt-get -q install -y --no-install-recommends $missing >&2 ||
        stop 2 "Could not install: $missing"
}

cores() { nproc 2>/dev/null || echo 2; }

# build NAME [CMAKE-OPTION...]: configures and builds into build/NAME, which git ignores; only $target when
# that is set.
target=
build() {
    name=$1
    shift
    folder=$root/build/$name
    log=$folder/log.txt
    mkdir -p "$folder"
    generator=
    command -v ninja >/dev/null 2>&1 && [ ! -f "$folder/Makefile" ] && generator="-G Ninja"
    launcher=
    command -v ccache >/dev/null 2>&1 && launcher="-DCMAKE_CXX_COMPILER_LAUNCHER=ccache"
    # shellcheck disable=SC2086
    if ! cmake -S "$root" -B "$folder" $generator $launcher -DWAXTAB_TOGETHER=12 "$@" >"$log" 2>&1; then
        tail -n 20 "$log" >&2
        stop 2 "Could not set up the build; it needs what these Debian packages hold: $build_packages"
    fi
    if ! cmake --build "$folder" --parallel "$(cores)" ${target:+--target "$target"} >>"$log" 2>&1; then
        grep -n -A5 -E 'error|FAILED' "$log" | head -n 60 >&2
        stop 1 "The build failed; the whole log is in $log"
    fi
}
