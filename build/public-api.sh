#!/usr/bin/env bash
# Writes PublicAPI.Unshipped.txt anew: every public symbol that PublicAPI.Shipped.txt does not hold yet, as the compiler names them.
# Usage: build/public-api.sh [PROJECT, default MarineService.Core]
set -euo pipefail
cd "$(dirname "$0")/../src/${1:-MarineService.Core}"
list=PublicAPI.Unshipped.txt
printf '#nullable enable\n' > "$list"
dotnet build -f net10.0 --no-restore -nologo -v q -p:TreatWarningsAsErrors=false -p:EnforceCodeStyleInBuild=false 2>&1 \
    | sed -n "s/.*RS0016: Symbol '\(.*\)' is not part of the declared public API.*/\1/p" \
    | LC_ALL=C sort -u > "$list.new"
cat "$list.new" >> "$list"
rm "$list.new"
wc -l < "$list"
