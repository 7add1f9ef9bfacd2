#!/usr/bin/env bash
# Proves that the package can be made again: clones the current commit into two folders, packs both, compares byte for byte.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
commit=$(git rev-parse HEAD)

for place in "$work/one" "$work/another/folder deeper"; do
    git clone --quiet --no-hardlinks . "$place"
    git -C "$place" checkout --quiet --detach "$commit"
    (cd "$place" && build/pack.sh >pack.log) || { cat "$place/pack.log" >&2; exit 1; }
done

for file in "$work/one/artifacts/package/"*; do
    cmp "$file" "$work/another/folder deeper/artifacts/package/$(basename "$file")"
    sha256sum "$file" | sed "s|$work/one/artifacts/package/||"
done
echo "identical"
