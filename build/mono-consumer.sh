#!/usr/bin/env bash
# A third runtime: the same strangers' programs on Mono, which is no part of the everyday run.
# Debian: apt-get install --no-install-recommends mono-devel (mono-runtime alone lacks the netstandard facade).
set -euo pipefail
command -v mono > /dev/null || { echo "no mono here" >&2; exit 1; }
"$(dirname "$0")/consumers.sh" --netframework
