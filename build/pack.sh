#!/usr/bin/env bash
# Packs both libraries into a folder (default: artifacts/package) and checks what is inside.
# The same commit gives the same bytes: entry times are the commit's, paths are mapped, nothing is left over from former builds.
set -euo pipefail
cd "$(dirname "$0")/.."
out=$(realpath -m "${1:-artifacts/package}")

# Package validation is skipped while its stamp from a former run is there. The analyzers looked at the same sources in the build
# for the tests; they change no byte of the package.
rm -rf "$out" src/*/obj/Release src/*/bin/Release
notes=$(mktemp)
trap 'rm -f "$notes"' EXIT
for library in MarineService.Core MarineService.Reports; do
    SOURCE_DATE_EPOCH=$(git log -1 --format=%ct) CI=true dotnet pack "src/$library" -c Release -o "$out" -nologo -v quiet -p:RunAnalyzers=false
    package=$(echo "$out/$library".*.nupkg)
    build/release-notes.sh "$(basename "$package" .nupkg | sed "s/^$library\.//")" > "$notes"
    dotnet run build/check-package.cs -- "$library" "$package" "$(git rev-parse HEAD)" "$notes" "$(git remote get-url origin 2> /dev/null || true)"
    echo "$package"
done
