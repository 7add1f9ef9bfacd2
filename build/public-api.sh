#!/usr/bin/env bash
# Writes PublicAPI.Unshipped.txt anew: every public symbol that PublicAPI.Shipped.txt does not hold yet.
set -euo pipefail
cd "$(dirname "$0")/.."
printf '#nullable enable\n' > src/MarineService.Core/PublicAPI.Unshipped.txt
dotnet format analyzers src/MarineService.Core/MarineService.Core.csproj --diagnostics RS0016 --severity warn --no-restore
