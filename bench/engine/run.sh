#!/usr/bin/env bash
# Time of the simulation engine beside SUNDIALS CVODE and plain C on the same equations, in the same frame, at the same error.
#
#   bench/engine/run.sh [--json] [--rounds N]
#
# Case a: motor of 50 hp and its machine on a V/f ramp, 3 s. Cases b (with control) and c (with DC bus and chopper) have no peer yet.
# Needs Debian's gcc, libc6-dev and libsundials-dev, and the .NET 10 SDK; it installs nothing.
set -euo pipefail
cd "$(dirname "$0")/../.."
json=false rounds=3
while [ $# -gt 0 ]; do
  case "$1" in
    --json) json=true ;;
    --rounds) rounds=$2; shift ;;
    *) sed -n '2,7s/^# \{0,1\}//p' "$0" >&2; exit 2 ;;
  esac
  shift
done
if ! command -v gcc >/dev/null || ! echo '#include <cvode/cvode.h>' | gcc -E - >/dev/null 2>&1; then
  echo "needs a C compiler and SUNDIALS: apt-get install gcc libc6-dev libsundials-dev" >&2; exit 3
fi
out=artifacts/bench-engine
mkdir -p "$out"
gcc -O3 -march=native -Wall -o "$out/ramp" bench/engine/ramp.c \
  -lsundials_cvode -lsundials_nvecserial -lsundials_sunmatrixdense -lsundials_sunlinsoldense -lm
dotnet build -c Release -v q -nologo bench/engine/ours/Runup.Bench.Engine.csproj >"$out/build.log" 2>&1 || { cat "$out/build.log" >&2; exit 1; }
ours=artifacts/bin/Runup.Bench.Engine/release/Runup.Bench.Engine
"$ours" points a | "$out/ramp" check >"$out/error"
: >"$out/peers"; : >"$out/ours"
for _ in $(seq "$rounds"); do
  "$out/ramp" >>"$out/peers" 2>/dev/null
  "$ours" time a >>"$out/ours"
done
machine=$(sed -n 's/^model name[^:]*: *//p' /proc/cpuinfo | head -n 1)
median() { sort -g | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
single=$(awk '{print $1}' "$out/ours" | median) member=$(awk '{print $2}' "$out/ours" | median) lane=$(awk '{print $3}' "$out/ours" | median)
bdf=$(awk '/^cvode bdf/ {print $4}' "$out/peers" | median) adams=$(awk '/^cvode adams/ {print $4}' "$out/peers" | median)
dp=$(awk '/^dp/ {print $3}' "$out/peers" | median) rk4=$(awk '/^rk4/ {print $3}' "$out/peers" | median)
read -r speed_error current_error <"$out/error"
awk -v json=$json -v single="$single" -v member="$member" -v lane="$lane" -v bdf="$bdf" -v adams="$adams" -v dp="$dp" -v rk4="$rk4" \
  -v es="$speed_error" -v ea="$current_error" -v machine="$machine" -v cores="$(nproc)" -v load="$(cut -d' ' -f1 /proc/loadavg)" 'BEGIN {
  cvode = bdf < adams ? bdf : adams; c = dp < rk4 ? dp : rk4
  if (json == "true") {
    printf "{\"machine\": \"%s\", \"cores\": %d, \"load\": %s, \"a\": {\"ours_us\": %s, \"batch_member_us\": %s, \"member_us_one_core\": %s, \"cvode_us\": %s, \"c_us\": %s, ", machine, cores, load, single, member, lane, cvode, c
    printf "\"speed_error_rad_per_s\": %s, \"current_error_A\": %s, \"ratio_cvode\": %.1f, \"ratio_c\": %.2f, \"ratio_cvode_member\": %.0f}, \"b\": null, \"c\": null}\n", es, ea, cvode / single, single / c, cvode / member
  } else {
    printf "%s, %d cores, load %s\n\ncase a, V/f ramp of a 50 hp motor, 3 s            us    CVODE over it\n", machine, cores, load
    printf "CVODE, BDF                               %10.1f\nCVODE, Adams                             %10.1f\n", bdf, adams
    printf "C, Dormand-Prince                        %10.1f  %10.1f\nC, Runge-Kutta                           %10.1f  %10.1f\n", dp, cvode / dp, rk4, cvode / rk4
    printf "Runup, one simulation                    %10.1f  %10.1f   (%.2f times the best C)\n", single, cvode / single, single / c
    printf "Runup, a member of 1024, all cores       %10.2f  %10.0f\nRunup, a member of 8, one core           %10.2f  %10.0f\n", member, cvode / member, lane, cvode / lane
    printf "largest error of Runup: %s rad/s, %s A (allowed 0.01 and 0.1)\n", es, ea
  }
}'
