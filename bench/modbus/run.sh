#!/usr/bin/env bash
# Requests per second of Runup's Modbus TCP server beside a server on libmodbus's own functions:
# same machine, same run, same load, in alternating rounds, with many idle connections held.
#
#   bench/modbus/run.sh [--json] [--rounds N] [--seconds S] [--held N] [--active "1 64"] [--models "automatic ..."]
#
# Models of Runup: automatic (what the product does), readiness, thread-pool, thread-pool-inline, thread-each.
# Needs Debian's gcc, libc6-dev and libmodbus-dev, and the .NET 10 SDK; it installs nothing. Loopback only.
set -euo pipefail
cd "$(dirname "$0")/../.."

json=false rounds=5 seconds=2 held=1000 active="1 64" models="automatic"
while [ $# -gt 0 ]; do
  case "$1" in
    --json) json=true ;;
    --rounds) rounds=$2; shift ;;
    --seconds) seconds=$2; shift ;;
    --held) held=$2; shift ;;
    --active) active=$2; shift ;;
    --models) models=$2; shift ;;
    *) sed -n '2,9s/^# \{0,1\}//p' "$0" >&2; exit 2 ;;
  esac
  shift
done
if [ "$rounds" -gt 25 ] || [ "$seconds" -gt 20 ] || [ "$held" -gt 4000 ]; then
  echo "at most 25 rounds, 20 seconds, 4000 held connections" >&2; exit 2
fi
if ! command -v gcc >/dev/null || ! echo '#include <modbus.h>' | gcc -I/usr/include/modbus -E - >/dev/null 2>&1; then
  echo "needs a C compiler and libmodbus: apt-get install gcc libc6-dev libmodbus-dev" >&2; exit 3
fi

out=artifacts/bench-modbus
mkdir -p "$out"
gcc -O2 -Wall -o "$out/load" bench/modbus/load.c
gcc -O2 -Wall -I/usr/include/modbus -o "$out/libmodbus-server" bench/modbus/libmodbus-server.c -lmodbus
dotnet build -c Release -v q -nologo bench/modbus/server/Runup.Bench.ModbusServer.csproj >"$out/build.log" 2>&1 || { cat "$out/build.log" >&2; exit 1; }
runup=artifacts/bin/Runup.Bench.ModbusServer/release/Runup.Bench.ModbusServer

port= server_pid=
next_port=$((10000 + RANDOM % 10000)) # below those the system hands out to clients
stop() { if [ -n "$server_pid" ]; then kill "$server_pid" 2>/dev/null || true; wait "$server_pid" 2>/dev/null || true; server_pid=; fi; }
trap stop EXIT

# Starts server $1 and leaves its port in $port.
start() {
  rm -f "$out/said" && : >"$out/said"
  case "$1" in
    libmodbus-*) next_port=$((next_port + 1)); port=$next_port; "$out/libmodbus-server" "$port" "${1#libmodbus-}" >"$out/said" 2>"$out/errors" & ;;
    thread-pool-inline) DOTNET_SYSTEM_NET_SOCKETS_INLINE_COMPLETIONS=1 "$runup" thread-pool >"$out/said" 2>"$out/errors" & ;;
    *) "$runup" "$1" >"$out/said" 2>"$out/errors" & ;;
  esac
  server_pid=$!
  for _ in $(seq 100); do [ -s "$out/said" ] && break; sleep 0.1; done
  case "$1" in libmodbus-*) ;; *) port=$(cat "$out/said") ;; esac
}

servers="libmodbus-select libmodbus-poll libmodbus-epoll $models"
: >"$out/results"
for round in $(seq "$rounds"); do
  for a in $active; do
    for s in $servers; do
      # select can't watch descriptors from 1024 up; a few are the server's own.
      if [ "$s" = libmodbus-select ] && [ $((held + a)) -gt 1015 ]; then continue; fi
      start "$s"
      echo "$s $a $("$out/load" "$port" "$server_pid" "$held" "$a" "$seconds")" >>"$out/results"
      stop
      $json || printf '\rround %d of %d: %-20s' "$round" "$rounds" "$s" >&2
    done
  done
done
$json || printf '\r%40s\r' '' >&2

# A line for each server and number of active connections: the medians, then Runup's against the quickest libmodbus.
awk -v json="$json" -v held="$held" -v rounds="$rounds" -v seconds="$seconds" '
function median(values,   a, n, i, j, t) {
  n = split(values, a, " ")
  for (i = 2; i <= n; i++) for (j = i; j > 1 && a[j] + 0 < a[j-1] + 0; j--) { t = a[j]; a[j] = a[j-1]; a[j-1] = t }
  return n % 2 ? a[(n + 1) / 2] : (a[n / 2] + a[n / 2 + 1]) / 2
}
{
  key = $2 SUBSEP $1
  if (!(key in rate)) { order[++count] = key }
  rate[key] = rate[key] " " $3; mid[key] = mid[key] " " $4; late[key] = late[key] " " $5
}
END {
  for (i = 1; i <= count; i++) {
    split(order[i], part, SUBSEP); m[order[i]] = median(rate[order[i]])
    if (part[2] ~ /^libmodbus/ && m[order[i]] > best[part[1]]) best[part[1]] = m[order[i]]
  }
  if (json == "true") printf "{\"held\": %d, \"rounds\": %d, \"seconds\": %g, \"results\": [", held, rounds, seconds
  else printf "%d idle connections held, %d rounds of %g s, medians\n%-20s %7s %12s %9s %9s %7s\n", held, rounds, seconds, "server", "active", "requests/s", "p50 us", "p99 us", "ratio"
  for (i = 1; i <= count; i++) {
    split(order[i], part, SUBSEP)
    ratio = m[order[i]] / best[part[1]]
    if (json == "true") printf "%s{\"server\": \"%s\", \"active\": %d, \"requests_per_s\": %.0f, \"p50_us\": %.0f, \"p99_us\": %.0f, \"ratio_to_quickest_libmodbus\": %.3f}", (i > 1 ? ", " : ""), part[2], part[1], m[order[i]], median(mid[order[i]]), median(late[order[i]]), ratio
    else printf "%-20s %7d %12.0f %9.0f %9.0f %7.2f\n", part[2], part[1], m[order[i]], median(mid[order[i]]), median(late[order[i]]), ratio
  }
  if (json == "true") print "]}"
}' "$out/results"
