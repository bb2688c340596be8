"""Makes practice.csv: skill of a learner by quadrature (scipy), for the model of src/practice/skill.rs.

Prior: normal, mean 0, spread 1.5, cut at -6.05 and 6.05. Chance of a right answer c + (1 - 0.03 - c) / (1 + exp(b - t)).
Answers are written difficulty:blind:right. Run: python3 practice.py > practice.csv
"""
import numpy as np, scipy
from scipy.integrate import quad
from scipy.optimize import brentq

CASES = [
    [],
    [(0, .25, 1)],
    [(0, .25, 1)] * 4 + [(0, .25, 0)],
    [(-1.5, .5, 1), (-.5, .5, 1), (.5, .5, 0), (1.5, .5, 1), (2.5, .5, 0)],
    [(1.0, .07, 1)] * 12 + [(1.0, .07, 0)] * 3,
    [(-1.0, .2, 0)] * 6 + [(-2.0, .2, 1)] * 2,
]
END = 6.05
def density(t, case):
    value = np.exp(-.5 * (t / 1.5) ** 2)
    for b, c, right in case:
        p = c + (1 - .03 - c) / (1 + np.exp(b - t))
        value *= p if right else 1 - p
    return value
print(f"# scipy {scipy.__version__}, integrate.quad; made by practice.py")
print("answers,mean,sd,low,high")
for case in CASES:
    whole = quad(density, -END, END, args=(case,), epsabs=1e-14)[0]
    mean = quad(lambda t: t * density(t, case), -END, END, epsabs=1e-14)[0] / whole
    var = quad(lambda t: (t - mean) ** 2 * density(t, case), -END, END, epsabs=1e-14)[0] / whole
    at = lambda share: brentq(lambda x: quad(density, -END, x, args=(case,), epsabs=1e-14)[0] / whole - share, -END, END)
    answers = " ".join(f"{b}:{c}:{right}" for b, c, right in case)
    print(f"{answers},{mean:.6f},{var ** .5:.6f},{at(.1):.6f},{at(.9):.6f}")
