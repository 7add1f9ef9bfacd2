#!/usr/bin/env bash
# Writes new public symbols into PublicAPI.Unshipped.txt. Stale lines stay: delete those that RS0017 names.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet format analyzers src/MarineService.Core/MarineService.Core.csproj --diagnostics RS0016 --severity warn --no-restore
