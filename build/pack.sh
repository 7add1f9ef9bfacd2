#!/usr/bin/env bash
# Packs the library into a folder (default: artifacts/package) and checks what is inside.
# The same commit gives the same bytes: entry times are the commit's, paths are mapped, nothing is left over from former builds.
set -euo pipefail
cd "$(dirname "$0")/.."
out=$(realpath -m "${1:-artifacts/package}")

# Package validation is skipped while its stamp from a former run is there.
rm -rf "$out" src/MarineService.Core/obj/Release src/MarineService.Core/bin/Release
SOURCE_DATE_EPOCH=$(git log -1 --format=%ct) CI=true dotnet pack src/MarineService.Core -c Release -o "$out" -nologo -v quiet

package=$(echo "$out"/MarineService.Core.*.nupkg)
schemas=$(cd src/MarineService.Core && find Exchange/Schemas -name '*.schema.json' 2>/dev/null | sed 's|Exchange/Schemas/|schemas/|' || true)
expected=$(printf '%s\n' MarineService.Core.nuspec README.md icon.png $schemas \
    lib/net10.0/MarineService.Core.dll lib/net10.0/MarineService.Core.xml \
    lib/netstandard2.0/MarineService.Core.dll lib/netstandard2.0/MarineService.Core.xml | LC_ALL=C sort)
found=$(dotnet run build/list-package.cs -- "$package" | LC_ALL=C sort)
if [ "$expected" != "$found" ]; then
    echo "The package does not hold what it should (< should, > does):" >&2
    diff <(echo "$expected") <(echo "$found") >&2 || true
    exit 1
fi

echo "$package"
