"""Makes learn.csv: what one answer alone makes of a garment that nobody has looked at, and the bits that a check is expected to tell,
by quadrature with scipy and nothing of the project's code.

Curves come from the model's checks.json; those of wear from second_hand.json beside this, rounded as the catalog keeps them. Quality is normal (0, 1); what is read of it carries an error of 0.4 and one of the group (1.0
for stitching, 0.6 for the others); 6 of 100 answers are slips spread evenly over the levels; bands are cut at -1.5, -0.5, 0.5 and 1.5.
Run: python3 learn.py checks.json > learn.csv
"""
import json
import os
import sys
import numpy as np
import scipy
from scipy.integrate import quad
from scipy.stats import norm

CHECKS = [("jeans", "inseam"), ("jeans", "thread-ends"), ("jeans", "spi"), ("jeans", "bag-seam"), ("woven-shirt", "collar"),
          ("t-shirt", "neck-rib"), ("sweater", "joins"), ("dress-skirt", "zip"), ("tailored-jacket", "canvas")]
WORN = ["worn-rubbed", "worn-stains", "worn-altered"]
CUTS = [-np.inf, -1.5, -.5, .5, 1.5, np.inf]
SLIP = .06


def likelihoods(curve, spread, theta):
    """Chance of each answer given quality, errors and slips in it."""
    slope, borders = curve
    def beyond(border):
        over = lambda z: norm.pdf(z) / (1 + np.exp(-slope * (theta + spread * z - border)))
        return quad(over, -9, 9, epsabs=1e-10)[0]
    above = [1.0] + [beyond(border) for border in borders] + [0.0]
    return [(1 - SLIP) * (one - other) + SLIP / (len(borders) + 1) for one, other in zip(above, above[1:])]


def joint(curve, spread):
    levels = len(curve[1]) + 1
    table = np.zeros((5, levels))
    for band in range(5):
        low, high = max(CUTS[band], -9), min(CUTS[band + 1], 9)
        for level in range(levels):
            table[band, level] = quad(lambda t: norm.pdf(t) * likelihoods(curve, spread, t)[level], low, high, epsabs=1e-8)[0]
    return table


model = json.load(open(sys.argv[1]))
print(f"# learn.py, scipy {scipy.__version__}: family, check, level from the worst, chance of Fine or Exceptional, bits of the check")
rows = []
for family, key in CHECKS:
    check = next(check for check in model["families"][family] if check["id"] == key)
    rows.append((family, key, check["testlet"], (check["a"], check["b"])))
for check in json.load(open(os.path.join(os.path.dirname(os.path.abspath(__file__)), "second_hand.json")))["checks"]:
    if check["check"] in WORN:
        rows.append(("second-hand", check["check"], check["group"].lower(), (check["slope"], np.round(check["thresholds"], 2))))
for family, key, group, curve in rows:
    spread = np.hypot(.4, 1.0 if group == "stitching" else .6)
    table = joint(curve, spread)
    answer, band = table.sum(axis=0), table.sum(axis=1)
    bits = (table * np.log2(table / np.outer(band, answer))).sum()
    for level in range(table.shape[1]):
        print(f"{family},{key},{level},{table[3:, level].sum() / answer[level]:.6f},{bits:.6f}")
