#!/bin/sh
# Mean DC bus of a six-pulse and a two-pulse diode rectifier under constant power, and a braking chopper, by ngspice 39 (Debian 12, package ngspice).
# Writes dc-bus.csv and chopper.csv, which tests hold the engine's mean-value bus against:   sh dc-bus.sh
# 400 V, 50 Hz, 10 kW unless said otherwise, 2000 uF; diodes nearly ideal (0.25 V). Reactances in % of U^2/P: source each phase, choke on the DC side.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT

rectifier() { # pulses, source %, choke %, power W
    awk -v pulses="$1" -v source="$2" -v choke="$3" -v power="$4" 'BEGIN {
        pi = 3.14159265358979; base = 400 * 400 / 10000; ls = source / 100 * base / (2 * pi * 50); ld = choke / 100 * base / (2 * pi * 50)
        print "mean DC bus of a diode rectifier"
        n = pulses == 6 ? 3 : 2; peak = pulses == 6 ? 400 * sqrt(2 / 3) : 400 * sqrt(2) / 2
        for (i = 0; i < n; i++) {
            delay = pulses == 6 ? -120 * i : -180 * i
            printf "v%d s%d 0 sin(0 %.9g 50 0 0 %g)\nl%d s%d a%d %.9g ic=0\n", i, i, peak, delay, i, i, i, ls
            printf "du%d a%d p near\ndl%d n a%d near\n", i, i, i, i
        }
        print ".model near d(is=1e-9 n=0.4 rs=2m)"
        if (ld > 0) printf "ld p b %.9g\n", ld; else print "rd p b 1m"
        print "c1 b n 2000u ic=540\nrleak s0 n 10meg\nbo o 0 v = v(b,n)"
        printf "bload b n i = %g / max(v(b,n), 100)\n", power
        print ".options method=gear maxord=2 reltol=1e-3 abstol=1e-4 vntol=1e-3\n.tran 20u 1.2 0.8 20u uic\n.meas tran mean avg v(o) from=1.0 to=1.2\n.meas tran most max v(o) from=1.0 to=1.2\n.meas tran least min v(o) from=1.0 to=1.2\n.end"
    }' > "$work/r.cir"
    timeout 30 ngspice -b "$work/r.cir" 2>/dev/null | awk -v c="$1,$2,$3,$4" '$1 == "mean" {m = $3} $1 == "most" {a = $3} $1 == "least" {i = $3} END {printf "%s,%.2f,%.2f,%.2f\n", c, m, a, i}'
}

chopper() { # power back W, capacitance uF, resistor ohm, on V, off V
    awk -v p="$1" -v c="$2" -v r="$3" -v on="$4" -v off="$5" 'BEGIN {
        print "braking chopper on a bus that is fed with constant power"
        printf "bfeed n b i = %g / max(v(b,n), 100)\nc1 b n %gu ic=%g\nvn n 0 0\nbo o 0 v = v(b,n)\n", p, c, off
        printf "r1 b x %g\ns1 x n b n chop\n.model chop sw(vt=%g vh=%g ron=1m roff=10meg)\n", r, (on + off) / 2, (on - off) / 2
        print "bp q 0 v = v(b,n) * v(b,x) / " r
        print ".options reltol=1e-5\n.tran 1u 1 0 1u uic\n.meas tran most max v(o) from=0.1 to=1\n.meas tran least min v(o) from=0.1 to=1\n.meas tran power avg v(q) from=0.1 to=1\n.meas tran mean avg v(o) from=0.1 to=1\n.end"
    }' > "$work/c.cir"
    timeout 30 ngspice -b "$work/c.cir" 2>/dev/null | awk -v c="$1,$2,$3,$4,$5" '$1 == "most" {a = $3} $1 == "least" {i = $3} $1 == "power" {p = $3} $1 == "mean" {m = $3} END {printf "%s,%.2f,%.2f,%.2f,%.1f\n", c, a, i, m, p}'
}

{
    echo "pulses,source_percent,choke_percent,power_W,mean_V,most_V,least_V"
    rectifier 6 0.5 1 10000; rectifier 6 0.5 4 10000
    for source in 1 2 3 5; do for choke in 0 1 4; do rectifier 6 $source $choke 10000; done; done
    for power in 1000 3000 6000; do rectifier 6 1 4 $power; rectifier 6 3 0 $power; done
    for source in 1 3; do for choke in 0 4; do rectifier 2 $source $choke 3000; done; done
} > "$here/dc-bus.csv"
{
    echo "power_W,bus_uF,resistor_ohm,on_V,off_V,most_V,least_V,mean_V,resistor_W"
    chopper 2000 540 60 760 744.8
    chopper 4000 540 60 760 744.8
    chopper 8000 540 60 760 744.8
} > "$here/chopper.csv"
