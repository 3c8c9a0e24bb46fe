#!/usr/bin/env bash
# The main job: builds the library, drafts, prints the seam table, and leaves the pictures and the executed lessons in
# notebooks/target/pattern. With --serve it opens the lessons in a notebook server afterwards.
set -euo pipefail
cd "$(dirname "$0")/.."

for tool in java mvn; do
  if ! command -v "$tool" >/dev/null; then
    echo "$tool is missing. Install JDK 17 or later and Maven 3.8 or later, on Debian: apt-get install openjdk-17-jdk-headless maven" >&2
    exit 1
  fi
done

echo "Building ..."
mvn -q -B -DskipTests package -pl notebooks -am
java -cp "notebooks/target/jupyter/kernels/java/lib/*" org.draftingmaths.lessons.Pattern notebooks/target/pattern
echo
notebooks/lessons.sh notebooks/target/pattern/lessons
if [ "${1:-}" = "--serve" ]; then
  notebooks/lessons.sh --serve
fi
