#!/usr/bin/env bash
# Builds the documentation site, API reference included, into artifacts/site. A warning is an error, a broken link is a warning.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet tool restore

# The site's sources lie as they do in the repository, so that a link between documents works in both places.
site=artifacts/docs
rm -rf "$site" artifacts/site
mkdir -p "$site"
git ls-files --cached --others --exclude-standard -- '*.md' LICENSE src/MarineService.Core/Exchange/Schemas docs \
    | grep -E '^(README|CHANGELOG|DEVELOPERS|SECURITY)\.md$|^LICENSE$|^docs/|^src/' \
    | xargs -d '\n' cp --parents -t "$site"
cp "$site/README.md" "$site/index.md"
cp assets/icon.png docs/docfx.json "$site"

{
    echo "- { name: Start, href: index.md }"
    echo "- name: Guides"
    echo "  items:"
    (cd "$site" && for file in docs/*.md; do echo "  - { name: \"$(sed -n '1s/^# //p' "$file")\", href: $file }"; done)
    echo "- name: Rooms"
    echo "  items:"
    (cd "$site" && for file in src/*/*/README.md; do echo "  - { name: \"$(basename "$(dirname "$file")")\", href: $file }"; done)
    echo "- { name: API, href: api/ }"
    echo "- { name: Contributing, href: DEVELOPERS.md }"
    echo "- { name: Changes, href: CHANGELOG.md }"
} > "$site/toc.yml"

dotnet docfx "$site/docfx.json" --warningsAsErrors
echo "artifacts/site/index.html"
