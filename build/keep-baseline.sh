#!/usr/bin/env bash
# Keeps a released package as the one that the next versions are compared with. Usage: build/keep-baseline.sh FILE.nupkg
# From then on packing fails when a public member of that package is gone (CP0002 and its like).
set -euo pipefail
cd "$(dirname "$0")/.."
mkdir -p build/baseline
cp "$1" "build/baseline/$(basename "$1" | sed 's/\.[0-9].*//').nupkg"
echo "kept $(basename "$1"); now move the lines of PublicAPI.Unshipped.txt to PublicAPI.Shipped.txt and raise <Version>"
