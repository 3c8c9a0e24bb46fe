#!/usr/bin/env bash
# Prints are measured: rasterised by Poppler, checked by qpdf, drawn by librsvg and by Apache Batik. PDF files named as arguments are looked
# at for errors as well. What is missing is installed on Debian as root; elsewhere it is said what to install.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)

missing=()
for pair in pdftoppm:poppler-utils qpdf:qpdf rsvg-convert:librsvg2-bin; do
    command -v "${pair%%:*}" >/dev/null || missing+=("${pair#*:}")
done
if [ ${#missing[@]} != 0 ] && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo "installing Debian's packages: ${missing[*]}"
    timeout 300 apt-get update -qq || true
    DEBIAN_FRONTEND=noninteractive timeout 600 apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null || true
fi
for tool in pdftoppm qpdf rsvg-convert; do
    if ! command -v "$tool" >/dev/null; then
        echo "$tool is missing, and prints cannot be measured without it. On Debian: sudo apt-get install -y poppler-utils qpdf librsvg2-bin" >&2
        exit 1
    fi
done

(cd "$here/.." && mvn -q -B -DskipTests package -pl reference-checks -am)
timeout 900 java -Djava.awt.headless=true -cp "$here/target/classes:$here/target/lib/*" \
    org.draftingmaths.reference.print.PrintCheck "$here/target/print" "$@"
