#!/usr/bin/env bash
# Time of the simulation engine beside SUNDIALS CVODE and plain C on the same equations, in the same frame, at the same error.
#
#   bench/engine/run.sh [--json] [--rounds N]
#
# Case a: motor of 50 hp and its machine on a V/f ramp, 3 s. Case b: the same motor on a drive with its control and DC bus, start at the current limit and stop by
# overvoltage control, 3.6 s. Case c: with a braking chopper on a stiff bus. The control of b and c is sampled each millisecond, as a drive's is, for every method alike.
# CVODE: the quicker of BDF and Adams, each with its own first step or the one before it as a hint. C: the quicker of Dormand-Prince and Runge-Kutta.
# "smooth": the same control as equations beside the plant's (smooth.h), so that CVODE goes through the run at once and stops at true events alone; its settings are scanned.
#   Held against its own 1e-12 run; how far that lies from ours, which is sampled, is printed. Runup is held against both forms; the bars (5 and 60 times) count for each.
# "told": CVODE without a stop and without the control, whose outputs it is given beforehand and smooth: what the plant alone costs it.
# All times are processor time of the process, in microseconds; those of many members over the number of processors. SciPy and Octave: case a.
# Needs Debian's gcc, libc6-dev and libsundials-dev, and the .NET 10 SDK; python3-scipy and octave where they are there; it installs nothing.
set -euo pipefail
cd "$(dirname "$0")/../.."
json=false rounds=3
while [ $# -gt 0 ]; do
  case "$1" in
    --json) json=true ;;
    --rounds) rounds=$2; shift ;;
    *) sed -n '2,14s/^# \{0,1\}//p' "$0" >&2; exit 2 ;;
  esac
  shift
done
if ! command -v gcc >/dev/null || ! echo '#include <cvode/cvode.h>' | gcc -E - >/dev/null 2>&1; then
  echo "needs a C compiler and SUNDIALS: apt-get install gcc libc6-dev libsundials-dev" >&2; exit 3
fi
export DOTNET_TieredPGO=0
out=artifacts/bench-engine
mkdir -p "$out"
for peer in ramp drive smooth peak; do
  gcc -O3 -march=native -Wall -o "$out/$peer" "bench/engine/$peer.c" \
    -lsundials_cvode -lsundials_nvecserial -lsundials_sunmatrixdense -lsundials_sunlinsoldense -lm
done
dotnet build -c Release -v q -nologo bench/engine/ours/Runup.Bench.Engine.csproj >"$out/build.log" 2>&1 || { cat "$out/build.log" >&2; exit 1; }
ours=artifacts/bin/Runup.Bench.Engine/release/Runup.Bench.Engine
peer() { # CASE [check]
  if [ "$1" = a ]; then
    if [ $# -gt 1 ]; then "$out/ramp" check <"$out/points.a"; else "$out/ramp" 2>/dev/null; fi
  elif [ $# -gt 1 ]; then "$out/drive" check "$out/points.$1" <"$out/figures.$1"
  else
    "$out/drive" <"$out/figures.$1" 2>/dev/null
    "$out/smooth" <"$out/figures.$1" 2>/dev/null
  fi
}
for case in a b c; do
  [ "$case" = a ] || "$ours" figures "$case" >"$out/figures.$case"
  "$ours" points "$case" >"$out/points.$case"
  peer "$case" check >"$out/error.$case"
  [ "$case" = a ] || "$out/smooth" apart "$out/points.$case" <"$out/figures.$case" >"$out/apart.$case" 2>/dev/null
  : >"$out/peers.$case"; : >"$out/ours.$case"
done
# One kind after the other in each round, so that what else the machine does meets all of them.
for _ in $(seq "$rounds"); do
  for case in a b c; do
    peer "$case" >>"$out/peers.$case"
    "$ours" time "$case" >>"$out/ours.$case"
  done
done
drives=$("$ours" drives)
peak=$("$out/peak" 2>/dev/null)
: >"$out/scipy"; : >"$out/octave"
for python in /usr/bin/python3 python3; do
  if [ ! -s "$out/scipy" ] && "$python" -c 'import scipy' 2>/dev/null; then "$python" bench/engine/ramp.py >"$out/scipy"; fi
done
if command -v octave-cli >/dev/null; then octave-cli --quiet bench/engine/ramp.m >"$out/octave" 2>/dev/null; fi

machine=$(sed -n 's/^model name[^:]*: *//p' /proc/cpuinfo | head -n 1)
median() { sort -g | awk '{ v[NR] = $1 } END { if (NR) print v[int((NR + 1) / 2)]; else print "null" }'; }
# Of a method: the time stands third from the end of the line that begins with its name.
of() { awk -v name="$2" 'index($0, name " ") == 1 { print $(NF - 2) }' "$out/peers.$1" | median; }
setting() { awk -v name="$2" 'index($0, name " ") == 1 { last = $(NF - 3) } END { print last }' "$out/peers.$1"; }
least() { sort -g | head -n 1; }
ratio() { awk -v x="$1" -v y="$2" -v d="$3" 'BEGIN { printf "%.*f", d, x / y }'; }
figures() { # CASE: sets the variables of a case
  single=$(awk '{print $1}' "$out/ours.$1" | median) member=$(awk '{print $2}' "$out/ours.$1" | median) lane=$(awk '{print $3}' "$out/ours.$1" | median)
  cvode=$(for m in "cvode bdf" "cvode adams" "cvode bdf-hint" "cvode adams-hint"; do of "$1" "$m"; done | grep -v null | least)
  c=$(for m in dp rk4; do of "$1" "$m"; done | least)
  smooth=$(for m in "smooth bdf" "smooth adams"; do of "$1" "$m"; done | grep -v null | least) c_smooth=$(of "$1" "smooth dp")
  read -r speed_error current_error <"$out/error.$1"
  if [ "$1" != a ]; then read -r speed_apart current_apart <"$out/apart.$1"; fi
}
if $json; then
  printf '{"machine": "%s", "cores": %d, "load": %s' "$machine" "$(nproc)" "$(cut -d' ' -f1 /proc/loadavg)"
  for case in a b c; do
    figures "$case"
    printf ', "%s": {"ours_us": %s, "batch_member_us": %s, "member_us_one_core": %s, "cvode_us": %s, "c_us": %s, "speed_error_rad_per_s": %s, "current_error_A": %s, ' \
      "$case" "$single" "$member" "$lane" "$cvode" "$c" "$speed_error" "$current_error"
    [ "$case" = a ] || printf '"cvode_smooth_us": %s, "c_smooth_us": %s, "smooth_speed_apart_rad_per_s": %s, "smooth_current_apart_A": %s, "ratio_cvode_smooth": %s, "ratio_cvode_smooth_member": %s, ' \
      "$smooth" "$c_smooth" "$speed_apart" "$current_apart" "$(ratio "$smooth" "$single" 1)" "$(ratio "$smooth" "$member" 0)"
    [ "$case" != b ] || printf '"cvode_told_us": %s, ' "$(for m in "told bdf" "told adams"; do of b "$m"; done | least)"
    printf '"ratio_cvode": %s, "ratio_c": %s, "ratio_cvode_member": %s}' "$(ratio "$cvode" "$single" 1)" "$(ratio "$single" "$c" 2)" "$(ratio "$cvode" "$member" 0)"
  done
  printf ', "scipy_us": %s, "octave_us": %s, "drives_200_core_share": %s, "peak_multiply_adds_of_8_per_ns": %s}\n' "$(awk '{print $2}' "$out/scipy" | median)" "$(awk '{print $2}' "$out/octave" | median)" "$drives" "$peak"
  exit 0
fi
printf '%s, %d cores, load %s; processor time\n' "$machine" "$(nproc)" "$(cut -d' ' -f1 /proc/loadavg)"
for case in a b c; do
  figures "$case"
  case $case in
    a) what="V/f ramp of a 50 hp motor, 3 s" ;;
    b) what="drive with control and DC bus, 3.6 s" ;;
    c) what="the same with chopper, stiff bus, 3.6 s" ;;
  esac
  printf '\ncase %s, %-42s %12s  CVODE over it   setting\n' "$case" "$what" us
  for method in "cvode bdf" "cvode adams" "cvode bdf-hint" "cvode adams-hint" dp rk4 "smooth bdf" "smooth adams" "smooth dp" "told bdf" "told adams"; do
    us=$(of "$case" "$method")
    [ "$us" = null ] || printf '  %-48s %12.1f  %13s   %s\n' "$method" "$us" "$(ratio "$cvode" "$us" 1)" "$(setting "$case" "$method")"
  done
  printf '  %-48s %12.1f  %13s   %s times the best C\n' "Runup, one simulation" "$single" "$(ratio "$cvode" "$single" 1)" "$(ratio "$single" "$c" 2)"
  printf '  %-48s %12.2f  %13s\n  %-48s %12.2f  %13s\n' "Runup, a member of 1024, all cores" "$member" "$(ratio "$cvode" "$member" 0)" "Runup, a member of 8, one core" "$lane" "$(ratio "$cvode" "$lane" 0)"
  [ "$case" = a ] || printf '  CVODE smooth: %s times Runup, %s times a member; that run and ours, sampled, lie at most %s rad/s and %s A apart\n' \
    "$(ratio "$smooth" "$single" 1)" "$(ratio "$smooth" "$member" 0)" "$speed_apart" "$current_apart"
  printf '  largest error of Runup: %s rad/s, %s A (allowed 0.01 and 0.1)\n' "$speed_error" "$current_error"
  if [ "$case" = a ]; then
    for other in scipy octave; do
      if [ -s "$out/$other" ]; then
        us=$(awk '{print $2}' "$out/$other" | median)
        printf '  %-48s %12.0f  %13s   Runup is %s times as fast\n' "$([ $other = scipy ] && echo "SciPy, LSODA" || echo "Octave, ode45")" "$us" "$(ratio "$cvode" "$us" 3)" "$(ratio "$us" "$single" 0)"
      else
        printf '  %s is not installed: skipped\n' "$([ $other = scipy ] && echo "SciPy (python3-scipy)" || echo "Octave (octave)")"
      fi
    done
  fi
done
printf '\n200 simulated drives at 1 kHz: %s of one core\n' "$(awk -v s="$drives" 'BEGIN { printf "%.1f %%", 100 * s }')"
printf 'the peak of one core: %s multiply-adds of eight numbers each ns\n' "$peak"
