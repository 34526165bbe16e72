"""Steady states of induction motors by an independent way: mesh equations of the whole circuit, solved by SciPy.

Reads a JSON array of cases from a file, writes a JSON array of answers. Nothing is shared with the product: no admittances
are added up, no Thevenin equivalent is formed; the largest torque is searched by a general optimiser.
"""
import json
import sys

import numpy
from scipy.linalg import solve
from scipy.optimize import minimize_scalar


def state(case, slip):
    """Currents of the meshes: stator, core against magnetizing, first rotor branch, second rotor branch."""
    k = case["hertz"] / case["rated_hertz"]
    branches = [(case["rr"] / slip, case["xlr"] * k)]
    if case["r2"]:
        branches.append((case["r2"] / slip, case["x2"] * k))
    magnetizing = 1j * case["xm"] * k
    shunts = [magnetizing] + ([complex(case["core"])] if case["core"] else [])
    shunts += [complex(r, x) for r, x in branches]
    series = complex(case["rs"], case["xls"] * k)
    # Unknown: the stator current and the current of each shunt. One voltage equation for each shunt, one node equation.
    count = len(shunts) + 1
    a = numpy.zeros((count, count), complex)
    b = numpy.zeros(count, complex)
    phase = case["volts"] / 3 ** 0.5
    for i, z in enumerate(shunts):
        a[i, 0], a[i, 1 + i], b[i] = series, z, phase
    a[count - 1, 0], a[count - 1, 1:] = 1, -1
    currents = solve(a, b)
    rotors = currents[-len(branches):]
    gap = 3 * sum(abs(i) ** 2 * r for i, (r, _) in zip(rotors, branches))
    synchronous = 2 * numpy.pi * case["hertz"] / (case["poles"] / 2)
    stator = currents[0]
    return abs(stator), abs(stator.real) / abs(stator), gap / synchronous, 3 * phase * stator.real


def answer(case):
    current, factor, torque, power = state(case, case["slip"])
    found = {"current": current, "power_factor": factor, "torque": torque, "input": power}
    if case["breakdown"]:
        grid = numpy.logspace(-3, 0, 200)
        best = max(grid, key=lambda slip: state(case, slip)[2])
        near = minimize_scalar(lambda x: -state(case, numpy.exp(x))[2], bounds=(numpy.log(best / 1.1), min(0, numpy.log(best * 1.1))), method="bounded", options={"xatol": 1e-9})
        found["breakdown"] = max(-near.fun, state(case, 1.0)[2])
    return found


with open(sys.argv[1], encoding="utf-8") as cases:
    print(json.dumps([answer(case) for case in json.load(cases)]))
