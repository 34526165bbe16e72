#!/usr/bin/env bash
# Processor time of a motor's ensemble and all its steady-state predictions, compiled ahead of time as the program is.
#   bench/motor/run.sh [FILE]    FILE: a job file, by default the demo's seawater pump
# The bar is 60 ms. "first_ms" includes what is compiled and read at the first call in a process; "settled_ms" is the middle of ninety.
set -euo pipefail
root=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/../.." && pwd)
export DOTNET_TieredPGO=0
out=$root/artifacts/bench-motor
dotnet publish "$root/bench/motor" --configuration Release --runtime linux-x64 --self-contained false -p:PublishReadyToRun=true --output "$out" --nologo --verbosity quiet
"$out/Runup.Bench.Motor" "${1:-$root/demo/ostrevad/swp-101.job.yaml}"
