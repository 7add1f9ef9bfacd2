#!/usr/bin/env bash
# Shows and prints the sheets and drawings in a real browser, Debian's Chromium, and looks at what comes out.
# Run it as root on Debian, or with chromium, fonts-liberation and poppler-utils installed already:
#
#     build/browser.sh                 # runs the tests
#     build/browser.sh artifacts/look  # and leaves pages and PDFs in that folder, to be looked at
set -euo pipefail
cd "$(dirname "$0")/.."

missing=
for program in chromium pdftotext pdfinfo; do
    command -v "$program" >/dev/null || missing=1
done
if [ -n "$missing" ] || [ ! -d /usr/share/fonts/truetype/liberation ]; then
    apt-get update
    DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends chromium fonts-liberation poppler-utils
fi

if [ $# -gt 0 ]; then
    mkdir -p "$1"
    BROWSER_OUT=$(cd "$1" && pwd)
    export BROWSER_OUT
fi

dotnet test --project tests/MarineService.Reports.Browser
