#!/usr/bin/env bash
# Adds up the counters of all result files (.trx) below a folder; fails when there are none or a test failed.
set -euo pipefail
files=$(find "$1" -name '*.trx')
if [ -z "$files" ]; then
    echo "no result files below $1" >&2
    exit 1
fi

# shellcheck disable=SC2086
awk '
    /<Counters / {
        if (match($0, /passed="[0-9]+"/)) passed += substr($0, RSTART + 8, RLENGTH - 9)
        if (match($0, /failed="[0-9]+"/)) failed += substr($0, RSTART + 8, RLENGTH - 9)
        if (match($0, /error="[0-9]+"/)) failed += substr($0, RSTART + 7, RLENGTH - 8)
    }
    END {
        printf "%d passed, %d failed\n", passed, failed
        exit (passed > 0 && failed == 0) ? 0 : 1
    }' $files
