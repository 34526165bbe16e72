#!/usr/bin/env bash
# How long an import of 300 rows takes, from the start of the program to its end: the bar is 2 s. Medians of nine.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
"$root/runup" --version >/dev/null

# Rows of an invented make, again and again under other numbers until there are 300.
awk -F';' -v OFS=';' '
    NR == 2 { print; next }
    $1 ~ /^[0-9]+$/ && NF == 7 { rows[++n] = $0 }
    END {
        for (i = 0; i < 300; i++) {
            split(rows[i % n + 1], cell, ";")
            line = cell[1] + 1000 * int(i / n)
            for (c = 2; c <= 7; c++) line = line OFS (c == 7 ? cell[c] + 1000 * int(i / n) : cell[c])
            print line
        }
    }' "$root/tests/Runup.Files.Tests/Suggestion/Tables/heron.csv" >"$folder/table.csv"

for _ in 1 2 3 4 5 6 7 8 9; do
    from=$(date +%s%N)
    "$root/runup" profile import "$folder/table.csv" --json >"$folder/out.json" || true
    echo $((($(date +%s%N) - from) / 1000000))
done | sort -n >"$folder/ms"
rows=$(grep -o '"number"' "$folder/out.json" | wc -l)
echo "$rows rows, median of nine: $(sed -n 5p "$folder/ms") ms (from $(sed -n 1p "$folder/ms") to $(sed -n 9p "$folder/ms"))"
