"""Expected values for value for quality (src/rack/worth.rs), worked out without the project's code: writes worth.json. Run: python worth.py

- beats and beaten: sums of scipy.stats.norm.cdf over pairs;
- spread: variance of the mean given the own quality and mean of the variance given it, each by scipy.integrate.quad;
- drawn: mean and standard deviation of the net share over 400 000 draws of all qualities (numpy), which knows neither formula.
"""
import json, platform
import numpy as np, scipy
from scipy import stats, integrate

rng = np.random.default_rng(20261126)

def row(asked, i):
    m, s, p = asked[i]
    others = [a for j, a in enumerate(asked) if j != i]
    ahead = lambda q, o: stats.norm.cdf((q - o[0]) / o[1])
    beats = sum(stats.norm.cdf((m - o[0]) / np.hypot(s, o[1])) for o in others if p <= o[2])
    beaten = sum(stats.norm.cdf((o[0] - m) / np.hypot(s, o[1])) for o in others if o[2] <= p)
    def net(q): return sum((ahead(q, o) if p <= o[2] else 0) - ((1 - ahead(q, o)) if o[2] <= p else 0) for o in others)
    def varies(q): return sum((4 if p == o[2] else 1) * ahead(q, o) * (1 - ahead(q, o)) for o in others)
    points = sorted({o[0] for o in others if abs(o[0] - m) < 8 * s})
    mean = lambda f: integrate.quad(lambda q: f(q) * stats.norm.pdf(q, m, s), m - 8 * s, m + 8 * s, points=points, limit=400, epsabs=1e-11)[0]
    middle = mean(net)
    variance = mean(lambda q: (net(q) - middle) ** 2 + varies(q))
    return {"beats": beats, "beaten": beaten, "spread": np.sqrt(variance) / len(others)}

def drawn(asked):
    asked = np.array(asked); n = len(asked)
    q = rng.normal(asked[:, 0], asked[:, 1], size=(400_000, n))
    net = np.zeros_like(q)
    for i in range(n):
        for j in range(n):
            if i == j: continue
            if asked[i, 2] <= asked[j, 2]: net[:, i] += q[:, i] > q[:, j]
            if asked[j, 2] <= asked[i, 2]: net[:, i] -= q[:, j] > q[:, i]
    net /= n - 1
    return [{"mean": a, "sd": b} for a, b in zip(net.mean(0), net.std(0))]

def garments(n, low, high):
    return [(float(np.round(rng.normal(0, 0.8), 3)), float(np.round(rng.uniform(low, high), 3)), float(np.round(np.exp(rng.normal(4, 0.5)), 2))) for _ in range(n)]

racks = {
    "a clear order": [(1.2, 0.2, 30.0), (0.4, 0.2, 40.0), (-0.3, 0.2, 50.0), (-1.0, 0.2, 60.0)],
    "dearer is better made": [(-1.0, 0.2, 30.0), (-0.3, 0.2, 40.0), (0.4, 0.2, 50.0), (1.2, 0.2, 60.0)],
    "one price": [(0.9, 0.3, 40.0), (0.1, 0.5, 40.0), (0.0, 0.3, 40.0), (-0.8, 0.4, 40.0), (0.2, 0.9, 40.0)],
    "hardly checked": garments(9, 0.8, 1.1),
    "well checked": garments(16, 0.15, 0.4),
    "some of each": garments(30, 0.15, 1.1),
}
out = {"versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__}, "racks": [
    {"name": name, "asked": asked, "expected": [row(asked, i) for i in range(len(asked))], "drawn": drawn(asked)} for name, asked in racks.items()]}
x, w = np.polynomial.hermite_e.hermegauss(7)
print(x, w / np.sqrt(2 * np.pi))
json.dump(out, open("worth.json", "w"), indent=1)
