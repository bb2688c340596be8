"""Belief after each act of one journey, worked out without the project's code: writes journey.json from journey.acts.json.

Method: Gauss-Legendre products directly over quality (band by band), the reading error and each group's error. No grid of the
project's model is used, nor its shortcuts (quality and reading error are never merged). The last act is worked out again by nested
adaptive quadrature (scipy.integrate.quad), and the largest difference is written down. Run: python journey.py (numpy, scipy).
"""
import json, os, platform
import numpy as np, scipy
from scipy import integrate, special, stats

here = os.path.dirname(os.path.abspath(__file__))
task = json.load(open(os.path.join(here, "journey.acts.json")))
d, edges = task["reading_error"], [-9.0, -1.5, -0.5, 0.5, 1.5, 9.0]

def nodes(low, high, n, sd=1.0):
    x, w = np.polynomial.legendre.leggauss(n)
    x = low + (high - low) * (x + 1) / 2
    return x, w * (high - low) / 2 * stats.norm.pdf(x, 0, sd)

def weights(act):
    n = len(act["thresholds"]) + 1
    out = np.zeros(n)
    if "level" in act: out[act["level"]] = 1
    elif "between" in act: out[act["between"]] = 0.5
    else:
        r = act["reading"]; norm = stats.norm(r["value"], r["spread"])
        ends = lambda span: (-np.inf if span[0] is None else span[0], np.inf if span[1] is None else span[1])
        out[:] = [sum(norm.cdf(hi) - norm.cdf(lo) for lo, hi in map(ends, spans)) for spans in r["spans"]]
        out /= out.sum()
    return out

def likelihood(act, eta):
    a, b, e, w = act["slope"], act["thresholds"], task["lapse"][act["care"]], weights(act)
    above = [np.ones_like(eta)] + [special.expit(a * (eta - t)) for t in b] + [np.zeros_like(eta)]
    return sum(wk * ((1 - e) * (above[k] - above[k + 1]) + e / len(w)) for k, wk in enumerate(w) if wk > 0)

theta, wt, band = (np.concatenate(x) for x in zip(*[nodes(lo, hi, 44) + (np.full(44, k),) for k, (lo, hi) in enumerate(zip(edges, edges[1:]))]))
delta, wd = nodes(-8 * d, 8 * d, 44, d)
psi = theta[:, None] + delta[None, :]
errors = {g: nodes(-8.5 * s, 8.5 * s, 72, s) for g, s in task["spread"].items()}
product = {g: np.ones(psi.shape + (72,)) for g in errors}
seen = {g: np.ones(psi.shape) for g in errors}
beliefs = []
for act in task["acts"]:
    if not act.get("cannot_tell"):
        g = act["group"]; x, w = errors[g]
        product[g] *= likelihood(act, psi[..., None] + x)
        seen[g] = product[g] @ w
    at = wt * (np.prod(list(seen.values()), axis=0) @ wd)
    total = at.sum(); mean = (at * theta).sum() / total
    beliefs.append(dict(check=act["check"], mean=mean, sd=np.sqrt((at * (theta - mean) ** 2).sum() / total),
                        bands=[at[band == k].sum() / total for k in range(5)], log_evidence=np.log(total)))

def last_again():
    acts = [a for a in task["acts"] if not a.get("cannot_tell")]
    def evidence(p):
        out = 1.0
        for g, s in task["spread"].items():
            mine = [a for a in acts if a["group"] == g]
            f = lambda x: stats.norm._pdf(x / s) / s * np.prod([likelihood(a, np.float64(p + x)) for a in mine])
            out *= integrate.quad(f, -8 * s, 8 * s, epsabs=1e-15, epsrel=1e-10, points=[0.0])[0] if mine else 1.0
        return out
    v = 1 + d * d
    grid = np.linspace(-7, 7, 281)  # step 0.05, trapezoid over quality as read; its bands by the normal distribution
    f = np.array([evidence(p) for p in grid]) * stats.norm.pdf(grid, 0, np.sqrt(v))
    cut = np.array([-np.inf, -1.5, -0.5, 0.5, 1.5, np.inf])
    split = np.diff(stats.norm.cdf(cut[None, :], grid[:, None] / v, d / np.sqrt(v)), axis=1)
    return np.r_[(f * grid).sum() / f.sum() / v, f @ split / f.sum()]

last = beliefs[-1]
difference = float(np.abs(last_again() - np.r_[last["mean"], last["bands"]]).max())
head = dict(made_by="journey.py", python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__,
            last_act_differs_from_nested_quad_by=difference)
with open(os.path.join(here, "journey.json"), "w") as out:
    out.write(json.dumps(head)[:-1] + ', "beliefs": [\n' + ",\n".join(json.dumps(b) for b in beliefs) + "\n]}\n")
print(head)
