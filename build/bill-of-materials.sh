#!/usr/bin/env bash
# Writes the bill of materials (CycloneDX, JSON) of each library into a folder. Usage: build/bill-of-materials.sh FOLDER
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet tool restore
for library in MarineService.Core MarineService.Reports; do
    dotnet restore "src/$library"
    dotnet CycloneDX "src/$library/$library.csproj" --output "$1" \
        --filename "$library.cdx.json" --output-format Json --exclude-dev --disable-package-restore
    grep -q '"NodaTime"' "$1/$library.cdx.json"
done
