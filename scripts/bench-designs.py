#!/usr/bin/env python3
# The designs of scripts/bench-designs again in Python, flow and margin alone: the pump's curve built once, SciPy's brentq over
# the friction factor of fluids (Clamond's Colebrook). Prints the rate and the ratio as lines of its table, and the largest difference; more than a millionth is a failure.
# Needs the Debian packages python3-fluids and python3-scipy. Usage: bench-designs.py DESIGNS.csv
import sys
import time
from math import pi

from fluids import friction_factor
from scipy.optimize import brentq

GRAVITY = 9.80665
M3_S_OF_L_MIN = 60000.0

with open(sys.argv[1], encoding="utf-8") as lines:
    leat_rate, shutoff, max_flow, lift, length, roughness, k, density, viscosity = map(float, next(lines).split(","))
    designs = [tuple(map(float, line.split(","))) for line in lines]


def flow_and_margin(bore, shutoff=shutoff, per_flow2=shutoff / max_flow**2, g2=2 * GRAVITY):
    per_flow = 4 / (pi * bore * bore)
    reynolds = density * bore / viscosity
    relative = roughness / bore
    over_bore = length / bore
    available = shutoff - lift

    def lacking(flow):
        velocity = flow * per_flow
        f = friction_factor(velocity * reynolds, relative)
        return available - per_flow2 * flow * flow - (f * over_bore + k) * velocity * velocity / g2

    return brentq(lacking, 1e-9, max_flow, xtol=1e-14, rtol=1e-10), available


for bore, _, _ in designs[:200]:
    flow_and_margin(bore)
best = float("inf")
for _ in range(3):
    start = time.process_time()
    answers = [flow_and_margin(bore) for bore, _, _ in designs]
    best = min(best, time.process_time() - start)
rate = len(designs) / best
worst = 0.0
for (bore, flow, margin), (flow_here, margin_here) in zip(designs, answers):
    worst = max(worst, abs(flow_here * M3_S_OF_L_MIN - flow * M3_S_OF_L_MIN) / (flow * M3_S_OF_L_MIN), abs(margin_here - margin) / margin)


def row(value, unit, what, with_what):
    print(f"{value:>8} {unit:<2}  {what:<54}  {with_what}")


row(f"{rate:.0f}", "/s", "flow and margin alone, in Python", "fluids, SciPy's brentq")
row(f"{leat_rate / rate:.2f}", "x", "leat's rate for flow and margin alone", f"Python; {len(designs)} designs differ by {worst:.1e} at most")
sys.exit(0 if worst <= 1e-6 else 1)
