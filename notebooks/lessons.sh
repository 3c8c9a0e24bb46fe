#!/usr/bin/env bash
# Runs the lessons in a real Jupyter, opens them for use, or makes the learners' copy.
set -euo pipefail
export LC_ALL=C.UTF-8

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
kernel_home=$here/target/jupyter
kernel=$kernel_home/kernels/java

usage() {
    cat <<'TEXT'
usage: lessons.sh [FOLDER]                     run all lessons in Jupyter, HTML into FOLDER (default notebooks/target/lessons)
       lessons.sh --serve [FOLDER [OPTIONS]]   open the notebooks of FOLDER (default: the lessons) in the browser;
                                               OPTIONS go to Jupyter, such as --no-browser --port=8899
       lessons.sh --learners FOLDER            copy the lessons into FOLDER without answers and outputs
       lessons.sh --store                      run all lessons without Jupyter and store their outputs in them
TEXT
}

say() { printf '%s\n' "$*"; }
fail() {
    printf '%s\n' "$*" >&2
    exit 1
}

# The launcher and all jars, built when missing or older than a source of this project.
build_kernel() {
    local jar
    jar=$(find "$kernel/lib" -name 'drafting-maths-lessons-*.jar' 2>/dev/null | head -n 1) || true
    if [ -n "$jar" ] && [ -z "$(newer_source "$jar")" ]; then
        return
    fi
    command -v mvn >/dev/null || fail "Maven is needed to build the lessons' kernel: install JDK 17 and Maven 3.8 or later."
    say "building the library and the kernel ..."
    rm -rf "$kernel_home"
    (cd "$here/.." && mvn -q -B -DskipTests package -pl notebooks -am)
}

newer_source() {
    find "$here/../pom.xml" "$here/../library" "$here/../reference-checks" "$here/pom.xml" "$here/src" \
        -name target -prune -o -type f -newer "$1" -print 2>/dev/null | head -n 1 || true
}

# Sets jupyter to the command that runs the given Jupyter program; installs Debian's packages when it may.
find_jupyter() {
    local program=$1
    shift
    if command -v jupyter >/dev/null && jupyter "$program" --version >/dev/null 2>&1; then
        jupyter=(jupyter)
        return
    fi
    # Another Python may come first on the PATH and not have it.
    if ! "/usr/bin/jupyter-$program" --version >/dev/null 2>&1; then
        install_packages "$program" "$@"
    fi
    jupyter=(/usr/bin/jupyter)
}

install_packages() {
    local program=$1
    shift
    if ! command -v apt-get >/dev/null; then
        fail "jupyter $program was not found, and this system has no apt-get. Install it with the system's own packages or with
    python3 -m pip install nbconvert jupyter-client notebook
so that 'jupyter $program --version' answers, and run this script again."
    fi
    if [ "$(id -u)" != 0 ]; then
        fail "jupyter $program was not found, and only root may install packages. Ask for, or do:
    sudo apt-get update
    sudo apt-get install -y --no-install-recommends $*
and run this script again."
    fi
    say "installing Debian's packages: $*"
    apt-get update -qq
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null
    "/usr/bin/jupyter-$program" --version >/dev/null || fail "jupyter $program does not answer after installing $*"
}

# A Java kernel that people have installed is used; otherwise Jupyter is pointed at the launcher of this project.
choose_kernel() {
    local installed
    installed=$("${jupyter[@]}" kernelspec list 2>/dev/null | awk '$1 == "java" { $1 = ""; sub(/^ +/, ""); print }') || true
    if [ -n "$installed" ] && ! grep -q org.draftingmaths "$installed/kernel.json"; then
        say "using the Java kernel installed in $installed"
    else
        say "using the launcher of this project as the Java kernel (it is not IJava)"
        export JUPYTER_PATH=$kernel_home${JUPYTER_PATH:+:$JUPYTER_PATH}
    fi
    # Where IJava and its successor look for the library; the protocol's own jars are theirs to bring.
    IJAVA_CLASSPATH=$(find "$kernel/lib" -name '*.jar' ! -name 'jupyter-*' ! -name 'jeromq-*' ! -name 'jnacl-*' \
        | sort | paste -sd: -)
    export IJAVA_CLASSPATH
    export JJAVA_CLASSPATH=$IJAVA_CLASSPATH
}

run_lessons() {
    local folder=$1 lesson ran=0 failed=0
    find_jupyter nbconvert jupyter-nbconvert jupyter-client
    build_kernel
    choose_kernel
    mkdir -p "$folder"
    folder=$(cd "$folder" && pwd)
    for lesson in "$here"/[0-9]*.ipynb; do
        [ -e "$lesson" ] || fail "there is no lesson in $here"
        say "running $(basename "$lesson")"
        if run_lesson "$lesson" "$folder"; then
            ran=$((ran + 1))
        else
            failed=$((failed + 1))
        fi
    done
    say "lessons: $ran ran, $failed failed; HTML in $folder"
    [ "$failed" = 0 ]
}

run_lesson() {
    local lesson=$1 html log
    html=$2/$(basename "$lesson" .ipynb).html
    log=$(mktemp)
    rm -f "$html"
    if "${jupyter[@]}" nbconvert --to html --execute --output-dir "$2" \
        --ExecutePreprocessor.kernel_name=java --ExecutePreprocessor.timeout=300 \
        --HTMLExporter.mathjax_url= --HTMLExporter.require_js_url= "$lesson" >"$log" 2>&1; then
        rm -f "$log"
        cut_network "$html"
    else
        # From the failing cell on: what comes before is Jupyter's own.
        sed -n '/CellExecutionError/,$p' "$log" >&2
        grep -q CellExecutionError "$log" || cat "$log" >&2
        rm -f "$log"
        return 1
    fi
}

# The page must look the same without a network: scripts and styles that are fetched go, links to click stay.
cut_network() {
    sed -i -E -e 's#<script[^>]* src="[^"]*"[^>]*>[[:space:]]*</script>##g' \
        -e 's#<link[^>]* href="(https?:)?//[^"]*"[^>]*>##g' \
        -e 's#@import url\([^)]*//[^)]*\);?##g' "$1"
    if grep -nE '(<(script|img|iframe)[^>]* src="(https?:|file:)?//|<link[^>]* href="(https?:|file:)?//|url\(["'"'"']?(https?:)?//)' "$1" >&2; then
        say "$1 would fetch the above from the network" >&2
        return 1
    fi
}

serve() {
    local folder=${1:-$here} program=notebook options=()
    [ $# = 0 ] || shift
    folder=$(cd "$folder" && pwd) || fail "there is no folder $folder"
    if command -v jupyter >/dev/null && jupyter lab --version >/dev/null 2>&1; then
        program=lab
    fi
    find_jupyter "$program" jupyter-notebook jupyter-nbconvert jupyter-client
    build_kernel
    choose_kernel
    [ "$(id -u)" != 0 ] || options+=(--allow-root)
    say "opening the notebooks of $folder; to stop: press Ctrl-C twice in this window"
    cd "$folder"
    exec "${jupyter[@]}" "$program" "${options[@]}" "$@"
}

tell_java() {
    build_kernel
    java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Dfile.encoding=UTF-8 -cp "$kernel/lib/*" \
        org.draftingmaths.lessons.runner.LessonCommand "$@"
}

case ${1:-} in
    --serve)
        shift
        serve "$@"
        ;;
    --learners)
        [ $# = 2 ] || { usage >&2; exit 2; }
        tell_java learners "$here" "$2"
        ;;
    --store)
        [ $# = 1 ] || { usage >&2; exit 2; }
        cd "$here"
        tell_java store "$here"
        ;;
    --help) usage ;;
    -*)
        usage >&2
        exit 2
        ;;
    *)
        [ $# -le 1 ] || { usage >&2; exit 2; }
        run_lessons "${1:-$here/target/lessons}"
        ;;
esac
