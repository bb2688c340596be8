"""Makes second_hand.json: what is left in a second-hand piece, worked out without the project's engine. Run: python3 second_hand.py

Each check has a mark of how telling it is, a group, and how many of 100 second-hand pieces give each answer, worst first. All three are
judgement: nobody counted. From them, with scipy:
- the thresholds of its curve (norm.ppf; the rule is that of the model in full, section 2.2), to 2 decimals as the catalog keeps them;
- the shares that such a curve gives back when it is averaged over pieces, readers and groups (integrate.quad of the logistic curve, no
  shortcut), with the slips of a usual reader;
- belief from four sheets of answers (nested integrate.quad over the group's error and over quality as read): mean, spread, five bands.
"""
import json
from functools import lru_cache
from math import exp, sqrt
import numpy as np, scipy
from scipy import integrate, special, stats

SLOPE = {1: .3, 2: .6, 3: .9, 4: 1.2, 5: 1.6}
SPREAD = {g: .6 for g in ("Cloth", "Seams", "Strength", "Trims", "Finish", "Shape")} | {"Stitching": 1.0}
READER, SLIP, BORDERS = .4, .06, [-np.inf, -1.5, -.5, .5, 1.5, np.inf]
CHECKS = [  # key, power, group, shares
    ("worn-stains", 4, "Finish", [9, 14, 17, 60]),
    ("worn-kept", 3, "Finish", [4, 8, 30, 58]),
    ("worn-rubbed", 5, "Cloth", [8, 24, 43, 25]),
    ("worn-thin", 4, "Cloth", [8, 22, 32, 38]),
    ("worn-pills", 2, "Cloth", [13, 28, 34, 25]),
    ("worn-colour", 3, "Finish", [8, 26, 38, 28]),
    ("worn-seams", 4, "Strength", [6, 17, 29, 48]),
    ("worn-mends", 2, "Seams", [8, 14, 8, 70]),
    ("worn-fastening", 3, "Trims", [8, 15, 22, 55]),
    ("worn-stretch", 4, "Shape", [7, 23, 34, 36]),
    ("worn-altered", 1, "Shape", [7, 8, 13, 72]),
    ("worn-lining", 3, "Trims", [8, 17, 35, 40]),
]
SHEETS = [
    [("worn-rubbed", 3)],
    [("worn-rubbed", 0), ("worn-thin", 0)],
    [("worn-stains", 3), ("worn-kept", 3), ("worn-rubbed", 2), ("worn-thin", 2), ("worn-seams", 3), ("worn-stretch", 1)],
    [(key, 3) for key, *_ in CHECKS],
]

def thresholds(power, group, shares):
    below = np.cumsum(shares)[:-1] / 100
    ratio = SLOPE[power] / 1.702
    return stats.norm.ppf(below) / ratio * np.sqrt(1 + ratio ** 2 * (1 + READER ** 2 + SPREAD[group] ** 2))

CURVE = {key: (group, SLOPE[power], np.round(thresholds(power, group, shares), 2)) for key, power, group, shares in CHECKS}

def answers(key, eta):
    _, slope, cuts = CURVE[key]
    over = np.concatenate([[1.], special.expit(slope * (eta - cuts)), [0.]])
    share = over[:-1] - over[1:]
    return (1 - SLIP) * share + SLIP / len(share)

def given_back(key):
    spread = sqrt(1 + READER ** 2 + SPREAD[CURVE[key][0]] ** 2)
    at = lambda level: integrate.quad(lambda z: stats.norm.pdf(z) * answers(key, z * spread)[level], -9, 9, epsabs=1e-12, limit=200)[0]
    return [at(level) for level in range(len(CURVE[key][2]) + 1)]

def belief(sheet):
    groups = {}
    for key, level in sheet:
        groups.setdefault(CURVE[key][0], []).append((key, level))
    def seen(group, psi):
        product = lambda z: stats.norm.pdf(z) * np.prod([answers(key, psi + SPREAD[group] * z)[level] for key, level in groups[group]])
        return integrate.quad(product, -9, 9, epsabs=1e-11, epsrel=1e-10, limit=200)[0]
    var = 1 + READER ** 2
    @lru_cache(None)
    def weight(psi):
        return stats.norm.pdf(psi, 0, sqrt(var)) * np.prod([seen(group, psi) for group in groups])
    whole = lambda f: integrate.quad(f, -9, 9, epsabs=1e-12, epsrel=1e-9, limit=200, points=[-1.5, -.5, .5, 1.5])[0]
    total = whole(weight)
    mean = whole(lambda psi: psi * weight(psi)) / total
    spread = whole(lambda psi: (psi - mean) ** 2 * weight(psi)) / total
    rest = READER / sqrt(var)
    bands = [whole(lambda psi: weight(psi) * (stats.norm.cdf((hi - psi / var) / rest) - stats.norm.cdf((lo - psi / var) / rest))) / total
             for lo, hi in zip(BORDERS, BORDERS[1:])]
    return {"answers": [{"check": key, "level": level} for key, level in sheet], "mean": mean / var,
            "sd": sqrt(spread / var ** 2 + rest ** 2), "bands": bands}

if __name__ == "__main__":
    checks = [{"check": key, "group": group, "slope": SLOPE[power], "shares": shares, "thresholds": list(thresholds(power, group, shares)),
               "given_back": given_back(key)} for key, power, group, shares in CHECKS]
    rows = lambda found: ",\n".join("  " + json.dumps(row) for row in found)
    with open("second_hand.json", "w") as out:
        out.write('{"made_by": "second_hand.py, scipy %s",\n "checks": [\n%s\n ],\n "beliefs": [\n%s\n ]\n}\n'
                  % (scipy.__version__, rows(checks), rows(map(belief, SHEETS))))
