#!/usr/bin/env bash
# The main job: builds the library, drafts, prints the seam table and leaves the pictures in notebooks/target/pattern.
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
