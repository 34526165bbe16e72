#!/usr/bin/env python3
"""A motor whose conductors fail, in phase quantities: reference trajectories by SciPy's LSODA (Debian 12, python3-scipy) at a relative tolerance of 1e-11.

Three stator and three rotor phases with the inductances of a machine with sinusoidal windings, mutual ones turning with the rotor; isolated star point. The currents that can flow
are x in i = T x, and each loop has T'v = T'(R i + d(lambda)/dt): nothing here knows of two axes. Writes open-phase.csv, which tests hold the engine against:

  python3 open-phase.py > open-phase.csv
"""
import numpy as np
from scipy.integrate import solve_ivp

LINE_V, HZ, PAIRS = 400.0, 50.0, 2
RS, XLS, XM, XLR, RR = 0.42, 0.95, 34.0, 1.25, 0.46
INERTIA, LOAD_NM, LOAD_RPM = 0.155, 42.0, 1460.0
W = 2 * np.pi * HZ
PEAK = LINE_V * np.sqrt(2 / 3)
LLS, LLR, LMS = XLS / W, XLR / W, XM / W * 2 / 3
CLOSE = LMS * (1.5 * np.eye(3) - 0.5)
LS, LR = LLS * np.eye(3) + CLOSE, LLR * np.eye(3) + CLOSE
THIRDS = 2 * np.pi / 3 * np.array([[0, 1, -1], [-1, 0, 1], [1, -1, 0]])
WHOLE = np.array([[1.0, 0], [0, 1], [-1, -1]])
WITHOUT_U = np.array([[0.0], [1], [-1]])


def mutual(angle):
    return LMS * np.cos(angle + THIRDS), -LMS * np.sin(angle + THIRDS)


def currents(loops, psi, rotor, angle):
    lsr, slope = mutual(angle)
    n = loops.shape[1]
    matrix = np.block([[loops.T @ LS @ loops, loops.T @ lsr], [lsr.T @ loops, LR]])
    both = np.linalg.solve(matrix, np.concatenate([psi, rotor]))
    stator = loops @ both[:n]
    return stator, both[n:], PAIRS * stator @ slope @ both[n:]


def stage(loops, volts, extra, state, begin, end, every):
    """From begin to end with the currents of some loops; volts(t) at the terminals, extra ohms in the first loop."""
    n = loops.shape[1]

    def rates(t, y):
        psi, rotor, speed, angle = y[:n], y[n:n + 3], y[n + 3], y[n + 4]
        stator, rotor_a, torque = currents(loops, psi, rotor, angle)
        drop = loops.T @ (volts(t) - RS * stator)
        drop[0] -= extra * stator[1]
        load = LOAD_NM * (speed * 30 / np.pi / LOAD_RPM) ** 2 * np.sign(speed)
        return np.concatenate([drop, -RR * rotor_a, [(torque - load) / INERTIA, PAIRS * speed]])

    times = np.round(np.arange(begin + every, end + every / 2, every), 6)
    run = solve_ivp(rates, (begin, end), state, method="LSODA", t_eval=times, rtol=1e-11, atol=1e-12, max_step=1e-3)
    rows = []
    for t, y in zip(run.t, run.y.T):
        stator, _, torque = currents(loops, y[:n], y[n:n + 3], y[n + 4])
        rows.append((t, *stator, torque, y[n + 3]))
    return rows, run.y[:, -1]


def other_loops(state, before, after):
    """The state as the fluxes of other loops, those of windings and rotor being what they are."""
    n = before.shape[1]
    psi, rotor, rest = state[:n], state[n:n + 3], state[n + 3:]
    stator, rotor_a, _ = currents(before, psi, rotor, rest[1])
    lsr, _ = mutual(rest[1])
    return np.concatenate([after.T @ (LS @ stator + lsr @ rotor_a), rotor, rest])


def supply(t):
    return PEAK * np.cos(W * t - np.array([0, 1, -1]) * 2 * np.pi / 3)


def nothing(t):
    return np.zeros(3)


def main():
    print("run,time_s,u_A,v_A,w_A,torque_Nm,speed_rad_per_s")

    def show(name, rows):
        for row in rows:
            print(name + "," + ",".join(f"{x:.10g}" for x in (row[0], *np.round(row[1:], 9) + 0.0)))

    healthy, at = stage(WHOLE, supply, 0, np.zeros(7), 0, 0.604, 0.001)
    show("open", healthy[19::20])
    lost, _ = stage(WITHOUT_U, supply, 0, other_loops(at, WHOLE, WITHOUT_U), 0.604, 1.304, 0.001)
    show("open", lost[:20] + lost[29::10])
    still, _ = stage(WITHOUT_U, supply, 0, np.zeros(6), 0, 0.2, 0.001)
    show("start", still[9::10])
    coasting, _ = stage(WITHOUT_U, nothing, 2.0, other_loops(at, WHOLE, WITHOUT_U), 0.604, 0.904, 0.001)
    show("coast", coasting[:20] + coasting[29::10])


main()
