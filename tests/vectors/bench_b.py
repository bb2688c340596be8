"""Rows for give, shrinkage, twist, girths and grades, worked out without the project's code: writes bench_b.csv beside it.

Spreads by the package uncertainties (1 sigma, first order), colours by colour-science (Lab to LCh, CIE 1976 difference). Mean hue is
taken as the direction of the sum of two unit vectors, and dH as the signed root of what is left, neither of which the project does.
Run: python bench_b.py (uncertainties, colour-science, numpy).
"""
import csv, math, platform, random, statistics, warnings
from importlib.metadata import version
from pathlib import Path

warnings.filterwarnings("ignore")
import numpy as np
from colour.difference import delta_E_CIE1976
from colour.models import Lab_to_LCHab
from uncertainties import ufloat, umath

rows = []


def carried(name, inputs, result):
    rows.append(["spread", name, " ".join(map(repr, inputs)), repr(result.nominal_value), repr(result.std_dev)])


def u(value, spread):
    return ufloat(value, spread)


# Give: three readings in mm, each with the same spread.
for a, b, c, s in [(250.0, 310.0, 256.0, 1.0), (100.0, 122.0, 103.0, 1.0), (100.0, 108.0, 100.5, 0.5)]:
    A, B, C = u(a, s), u(b, s), u(c, s)
    carried("stretch", [a, b, c, s], (B - A) / A)
    carried("growth", [a, b, c, s], (C - A) / A)
    carried("recovery-of-stretch", [a, b, c, s], (B - C) / (B - A))
    carried("recovery-of-length", [a, b, c, s], 1 - (C - A) / A)
    # The pull is off by 6 % of what it stretches.
    B = B + u(0.0, 0.06 * (b - a))
    carried("hand-give", [a, b, c, s], 100 * (B - A) / A)
    carried("hand-recovery", [a, b, c, s], 100 * (B - C) / (B - A))

for a, b, s in [(380.0, 369.0, 1.0), (500.0, 488.0, 0.5), (500.0, 503.0, 2.0)]:
    A, B = u(a, s), u(b, s)
    change = (B - A) / A
    carried("change", [a, b, s], change)
    carried("size-after", [a, b, s], u(864.0, 2.0) * (1 + change))
    carried("size-to-buy", [a, b, s], u(813.0, 2.0) / (1 + change))
one, two = u(-0.03, 0.004), u(-0.01, 0.003)
carried("washes", [-0.03, 0.004, -0.01, 0.003], (1 + one) * (1 + two) - 1)

for moved, seam, s, t in [(30.0, 780.0, 3.0, 5.0), (25.4, 460.0, 3.0, 5.0), (150.0, 400.0, 5.0, 2.0)]:
    M, S = u(moved, s), u(seam, t)
    carried("twist", [moved, seam, s, t], M / S)
    carried("lean", [moved, seam, s, t], umath.atan(M / S))
    carried("diagonals", [moved, seam, s, t], 2 * (S - M) / (S + M))

# Mean of readings: pooled variance with four degrees for the expected spread; the tape's half step is rectangular.
for readings, s0, step in [
    ([424.0], 3.0, 1.0),
    ([424.0, 428.0], 3.0, 1.0),
    ([424.0, 424.0, 424.0], 3.0, 1.0),
    ([210.0, 214.0, 209.0, 216.0, 211.0], 2.0, 3.175),
]:
    n = len(readings)
    s2 = statistics.variance(readings) if n > 1 else 0.0
    pooled = ((n - 1) * s2 + 4 * s0 * s0) / (n - 1 + 4)
    mean = u(statistics.fmean(readings), math.sqrt(pooled / n)) + u(0.0, step / math.sqrt(12))
    carried("mean", [s0, step, *readings], mean)
    carried("girth", [s0, step, *readings], 2 * mean)

for x, s in [(1.0, 0.5), (4.2, 0.5), (4.3, 0.5), (8.1185, 0.5), (20.8088, 1.0)]:
    X = u(x, s)
    grade = 6.1 - 1.45 * umath.log(X)
    carried("staining-grade", [x, s], grade if grade.nominal_value <= 4 else 5 - 0.23 * X)
for x, s in [(0.5, 0.5), (3.3, 0.5), (3.5, 0.5), (10.2561, 0.5)]:
    X = u(x, s)
    carried("change-grade", [x, s], 5 - X / 1.7 if x <= 3.4 else 5 - umath.log(X / 0.85) / math.log(2))


def change_difference(before, after, slip=False):
    (l0, c0, h0), (l1, c1, h1) = Lab_to_LCHab(before), Lab_to_LCHab(after)
    dl, dc = l1 - l0, c1 - c0
    de = float(delta_E_CIE1976(before, after))
    turn = math.sin(math.radians(h1 - h0))
    dh = math.copysign(math.sqrt(max(0.0, de * de - dl * dl - dc * dc)), turn)
    cm = (c0 + c1) / 2
    both = np.exp(1j * math.radians(h0)) + np.exp(1j * math.radians(h1))
    hm = math.degrees(np.angle(both)) % 360
    if slip:
        hm = (h1 - h0) / 2
    away = abs(hm - 280)
    x = ((away if away <= 180 else 360 - away) / 30) ** 2
    d = dc * cm * math.exp(-x) / 100
    hf = (dh - d) / (1 + (10 * cm / 1000) ** 2)
    cf = (dc - d) / (1 + (20 * cm / 1000) ** 2)
    return math.sqrt(dl * dl + cf * cf + hf * hf)


random.seed(105)
pairs = []
for _ in range(60):
    before = np.array([random.uniform(15, 95), random.uniform(-60, 60), random.uniform(-60, 60)])
    pairs.append((before, before + np.array([random.uniform(-12, 12) for _ in range(3)])))
# Hues almost opposite, so that the shorter way round and its sign are seen in the result.
for one, other in [([50.0, 10.0, -0.1], [52.0, -6.0, 0.2]), ([50.0, 9.8, 1.7], [51.0, -14.0, -4.0])]:
    pairs += [(np.array(one), np.array(other)), (np.array(other), np.array(one))]
for before, after in pairs:
    de = float(delta_E_CIE1976(before, after))
    dl = after[0] - before[0]
    staining = de - 0.4 * math.sqrt(de * de - dl * dl)
    values = [repr(float(v)) for v in (*before, *after)]
    rows.append(["colour", "pair", " ".join(values), repr(de), f"{staining!r} {change_difference(before, after)!r}"])
pair = (np.array([25, 0.5, -18.0]), np.array([35, -1.5, -16.0]))
rows.append(["slip", "hue-mean", "25 0.5 -18 35 -1.5 -16", repr(change_difference(*pair, slip=True)), repr(change_difference(*pair))])

with Path(__file__).with_name("bench_b.csv").open("w", newline="") as file:
    file.write(f"# Written by bench_b.py: Python {platform.python_version()}, uncertainties {version('uncertainties')}, ")
    file.write(f"colour-science {version('colour-science')}, numpy {version('numpy')}.\n")
    file.write("# spread rows: inputs, value, standard uncertainty. colour rows: Lab and Lab, dE, dE for staining and for change. ")
    file.write("slip row: Lab and Lab, the slip, the true one.\n")
    csv.writer(file, lineterminator="\n").writerows(rows)
