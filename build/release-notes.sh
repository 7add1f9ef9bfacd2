#!/usr/bin/env bash
# Prints what the changelog says of one version, without its heading. Usage: build/release-notes.sh VERSION
set -euo pipefail
cd "$(dirname "$0")/.."
notes=$(awk -v version="$1" '/^## /{inside = ($2 == version); next} inside' CHANGELOG.md)
[ -n "$notes" ] || { echo "CHANGELOG.md has no entry for $1" >&2; exit 1; }
printf '%s\n' "$notes" | sed '/./,$!d'
