#!/usr/bin/env bash
# Adds up the counters of all result files (.trx) below a folder and the steps that stood beside them, and prints the sum.
# Fails when something failed, or when no test was counted. Usage: build/count-results.sh FOLDER [STEPS-PASSED STEPS-FAILED]
set -euo pipefail
{ find "$1" -name '*.trx' -exec grep -ho '<Counters [^>]*>' {} + || true; } | awk -v steps_passed="${2:-0}" -v steps_failed="${3:-0}" '
    /<Counters / {
        if (match($0, /passed="[0-9]+"/)) passed += substr($0, RSTART + 8, RLENGTH - 9)
        if (match($0, /failed="[0-9]+"/)) failed += substr($0, RSTART + 8, RLENGTH - 9)
        if (match($0, /error="[0-9]+"/)) failed += substr($0, RSTART + 7, RLENGTH - 8)
    }
    END {
        tested = passed + failed > 0
        passed += steps_passed
        failed += steps_failed
        if (!tested) print "no test was counted" > "/dev/stderr"
        printf "%d passed, %d failed\n", passed, failed
        exit (tested && failed == 0) ? 0 : 1
    }'
