"""Belief after each act of each journey, worked out without the project's code.

Reads journeys.json (acts) and jeans_curves.json (the catalog's curves, printed by tests/journeys.rs); writes jeans_journeys.json.
Method: Gauss-Legendre products over quality (band by band), the reading error and each group's error; no grid or shortcut of the
project's engine. Stitch density and its standard uncertainty are worked out here too (handbook 1.1 to 1.3). The last belief of the
longest journey is worked out again by trapezoids on much finer lines, and the largest difference is written down.
Run: python jeans_journeys.py (numpy, scipy).
"""
import json, os, platform
import numpy as np, scipy
from scipy import special, stats

here = os.path.dirname(os.path.abspath(__file__))
load = lambda name: json.load(open(os.path.join(here, name)))
catalog, journeys = load("jeans_curves.json"), load("journeys.json")
checks = {c["check"]: c for c in catalog["checks"]}
d, names, edges = catalog["reading_error"], ["Poor", "Basic", "Sound", "Fine", "Exceptional"], [-9.0, -1.5, -0.5, 0.5, 1.5, 9.0]
unit_mm = {"mm": 1.0, "cm": 10.0, "in": 25.4}

def density(given):
    """Stitches per inch and its standard uncertainty, from a count and a length, ruler laid anywhere or on a needle hole."""
    g = {x["input"]: x for x in given}
    n, mm = g["count"]["amount"], g["length"]["amount"] * unit_mm[g["length"]["unit"]]
    on_hole = g.get("starts-on-hole", {"amount": 0})["amount"] == 1
    u_n = 0.5 / np.sqrt(3) if on_hole else 1 / np.sqrt(6)
    s = n / (mm / 25.4)
    return s, s * np.hypot(u_n / n, 0.5 / mm)

def weights(check, act):
    w = np.zeros(len(check["levels"]))
    if act["act"] == "judge":
        w[check["levels"].index(act["level"])] = 1
    else:
        value, spread = density(act["given"])
        cdf = lambda end, open_end: open_end if end is None else stats.norm.cdf(end, value, spread)
        w[:] = [sum(cdf(hi, 1.0) - cdf(lo, 0.0) for lo, hi in spans) for spans in check["spans"]]
        w /= w.sum()
    return w

def likelihood(key, act, eta):
    check = checks[key]; a, b = check["curve"]["slope"], check["curve"]["thresholds"]
    w = weights(check, act); e = catalog["lapse"]["careful" if act["act"] == "measure" else act.get("care", "usual")]
    above = [np.ones_like(eta)] + [special.expit(a * (eta - t)) for t in b] + [np.zeros_like(eta)]
    return sum(wk * ((1 - e) * (above[k] - above[k + 1]) + e / len(w)) for k, wk in enumerate(w) if wk > 0)

def counted(answers):
    """Answers that speak of quality and are not of a check that its gate has closed."""
    out = {}
    for key, act in answers.items():
        when = checks[key]["asked_when"]
        gate = when and answers.get(when["check"])
        if gate and gate["act"] == "judge" and gate["level"] not in when["levels"]: continue
        if act["act"] in ("judge", "measure") and checks[key]["curve"]: out[key] = act
    return out

def nodes(low, high, n, sd):
    x, w = np.polynomial.legendre.leggauss(n)
    x = low + (high - low) * (x + 1) / 2
    return x, w * (high - low) / 2 * stats.norm.pdf(x, 0, sd)

def lines(n_theta, n_delta, n_error):
    theta, wt, band = (np.concatenate(x) for x in zip(*[nodes(lo, hi, n_theta, 1.0) + (np.full(n_theta, k),) for k, (lo, hi) in enumerate(zip(edges, edges[1:]))]))
    return theta, wt, band, *nodes(-8 * d, 8 * d, n_delta, d), {g: nodes(-8.5 * s, 8.5 * s, n_error, s) for g, s in catalog["spread"].items()}

theta, wt, band, delta, wd, errors = lines(44, 44, 72)
psi, cache = theta[:, None] + delta[None, :], {}

def seen(group, answers):
    name = json.dumps([group, sorted(answers.items())])
    if name not in cache:
        x, w = errors[group]; product = np.ones(psi.shape + (len(x),))
        for key, act in answers.items(): product *= likelihood(key, act, psi[..., None] + x)
        cache[name] = product @ w
    return cache[name]

def grouped(answers):
    out = {}
    for key, act in answers.items(): out.setdefault(checks[key]["curve"]["group"], {})[key] = act
    return out

def belief(answers):
    product = np.ones(psi.shape)
    for group, mine in grouped(answers).items(): product = product * seen(group, mine)
    at = wt * (product @ wd); total = at.sum(); mean = (at * theta).sum() / total
    bands = [at[band == k].sum() / total for k in range(5)]
    two = max(bands[k] + bands[k + 1] for k in range(4))
    return dict(mean=mean, sd=np.sqrt((at * (theta - mean) ** 2).sum() / total), bands=bands, likely=names[int(np.argmax(bands))],
                settled=bool(answers) and bool(two >= 0.8), counted=len(answers))

def again(answers):
    """The same by trapezoids: psi on a line of step 0.02, each group's error on one of step 0.01 s, quality given psi in closed form."""
    v = 1 + d * d; line = np.arange(-8, 8.0001, 0.02); at = stats.norm.pdf(line, 0, np.sqrt(v))
    for group, mine in grouped(answers).items():
        s = catalog["spread"][group]; x = np.arange(-8.5, 8.5001, 0.01) * s; product = np.ones((len(line), len(x)))
        for key, act in mine.items(): product *= likelihood(key, act, line[:, None] + x)
        at = at * (product @ (stats.norm.pdf(x, 0, s) * 0.01 * s))
    cut = np.array([-np.inf, -1.5, -0.5, 0.5, 1.5, np.inf])
    split = np.diff(stats.norm.cdf(cut[None, :], line[:, None] / v, d / np.sqrt(v)), axis=1)
    return np.r_[(at * line).sum() / at.sum() / v, at @ split / at.sum()]

out, longest = [], {}
for journey in journeys:
    answers, beliefs = {}, []
    for act in journey["acts"]:
        answers.pop(act["check"], None)
        if act["act"] != "clear": answers[act["check"]] = act
        beliefs.append(dict(check=act["check"], **belief(counted(answers))))
    out.append((journey["name"], beliefs))
    if len(counted(answers)) > len(longest): longest, last = counted(answers), beliefs[-1]

difference = float(np.abs(again(longest) - np.r_[last["mean"], last["bands"]]).max())
head = dict(made_by="jeans_journeys.py", python=platform.python_version(), numpy=np.__version__, scipy=scipy.__version__,
            last_belief_differs_from_trapezoids_by=difference)
text = ",\n".join('{"name": %s, "beliefs": [\n%s\n]}' % (json.dumps(n), ",\n".join(json.dumps(b) for b in bs)) for n, bs in out)
with open(os.path.join(here, "jeans_journeys.json"), "w") as file:
    file.write(json.dumps(head)[:-1] + ', "journeys": [\n' + text + "\n]}\n")
print(head)
