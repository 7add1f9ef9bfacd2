#!/usr/bin/env bash
# Writes the bill of materials (CycloneDX, JSON) of the library into a folder. Usage: build/bill-of-materials.sh FOLDER
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet tool restore
dotnet restore src/MarineService.Core
dotnet CycloneDX src/MarineService.Core/MarineService.Core.csproj --output "$1" \
    --filename MarineService.Core.cdx.json --output-format Json --exclude-dev --disable-package-restore
grep -q '"NodaTime"' "$1/MarineService.Core.cdx.json"
