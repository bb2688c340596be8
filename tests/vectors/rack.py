"""Expected values for the room `rack`, worked out without the project's code: writes rack.json. Run: python rack.py MODEL_VECTORS
(numpy, scipy, statsmodels), MODEL_VECTORS the model's own vectors.json, of which the groups that concern this room are copied as they are.

Added here:
- points and areas of Student t over a grid (scipy.stats.t);
- a prediction from twelve references with a shared part of the shop's multiple and unknown shops and makers, by another road than the
  project's: random effects as an explicit design, the prior as rows of its own, all fitted by ordinary weighted least squares
  (statsmodels WLS); scale from the same fit's squares; each reference left out by fitting again without it;
- the same with one ticket mistyped tenfold and weights in three passes, from the leverages of the same fit (in the model's own vector for
  this, TICKET-06, every weight is 1);
- two tens of scores compared (scipy.stats.ttest_ind's interval at 0.8).
"""
import json, sys, platform
import numpy as np, scipy, statsmodels
from scipy import stats
import statsmodels.api as sm

model = json.load(open(sys.argv[1]))
wanted = ("NIG", "TQ", "TC", "TICKET", "MIX", "Z", "GUESS", "PIN", "CRPS", "LOGS", "CAL", "WIDTH", "BIAS")
out = {
    "source": "vectors: the model's own vectors.json, groups " + ", ".join(wanted) + ", copied unchanged; the rest by rack.py",
    "versions": {"python": platform.python_version(), "numpy": np.__version__, "scipy": scipy.__version__, "statsmodels": statsmodels.__version__},
    "vectors": [v for v in model["vectors"] if v["id"].split("-")[0] in wanted],
}
out["student"] = [
    {"df": df, "x": x, "below": stats.t.cdf(x, df), "p": p, "quantile": stats.t.ppf(p, df), "ln_density": stats.t.logpdf(x, df)}
    for df in (0.5, 1.0, 2.0, 3.5, 8.0, 13.0, 58.0, 208.0, 1000.0)
    for x, p in ((-40.0, 1e-6), (-3.0, 0.001), (-0.5, 0.1), (1e-7, 0.499), (0.7, 0.5), (2.2, 0.9), (15.0, 0.99999))
]

S0, NU0, LEVEL, SLOPE, FAMILY, SHOP, MAKER, LIKE, ELL = 0.22, 8.0, 0.28, 0.20, 0.15, 0.20, 0.25, 0.20, 1.0
NAMES = {"store": (-0.10, 0.20), "known": (0.15, 0.28), "premium": (0.45, 0.38), "designer": (1.05, 0.55)}
rng = np.random.default_rng(20261125)
def draw():
    sigma = float(np.round(rng.uniform(0.25, 0.6), 3))
    return dict(mu=float(np.round(rng.normal(4.1, 0.6), 3)), sigma=sigma, of_shop=float(np.round(sigma * rng.uniform(0, 0.9), 3)),
                family=str(rng.choice(["jeans", "t-shirt"])), shop=[None, "a", "b", "c"][rng.integers(4)], maker=[None, "x", "y", "z"][rng.integers(4)],
                name=str(rng.choice(list(NAMES))))
refs = [draw() | {"log_ticket": float(np.round(rng.normal(4.4, 0.7), 3))} for _ in range(12)]
new = draw() | {"shop": "a", "maker": "x", "family": "jeans"}

def design(rows):
    """Columns with prior variance 1: everything garments share."""
    n = len(rows); cols = [[LEVEL] * n, [SLOPE * (g["mu"] - np.log(60)) for g in rows]]
    for f in sorted({g["family"] for g in rows}): cols.append([FAMILY * (g["family"] == f) for g in rows])
    for key, sd in (("shop", SHOP), ("maker", MAKER)):
        for i, g in enumerate(rows):   # one that is not known is like nobody's
            g[f"{key}_"] = g[key] or f"?{i}"
        for k in sorted({g[f"{key}_"] for g in rows}): cols.append([sd * (g[f"{key}_"] == k) for g in rows])
    for k in sorted({g["shop_"] for g in rows}): cols.append([g["of_shop"] * (g["shop_"] == k) for g in rows])
    mu = np.array([g["mu"] for g in rows]); same = np.array([[a["family"] == b["family"] for b in rows] for a in rows])
    value, vector = np.linalg.eigh(LIKE ** 2 * np.exp(-(mu[:, None] - mu[None]) ** 2 / (2 * ELL ** 2)) * same)
    return np.column_stack([np.array(cols).T, vector * np.sqrt(np.clip(value, 0, None))])
def own(g): return 1 + (g["sigma"] ** 2 - g["of_shop"] ** 2 + NAMES[g["name"]][1] ** 2) / S0 ** 2
def before(g): return g["mu"] + NAMES[g["name"]][0]
def predict(known, stranger, w=None):
    X = design(known + [stranger]) / S0; A, x = X[:-1], X[-1]; m = X.shape[1]
    w = np.ones(len(known)) if w is None else w; D = np.array([own(g) for g in known])
    y = np.array([g["log_ticket"] - before(g) for g in known])
    fit = sm.WLS(np.concatenate([y, np.zeros(m)]), np.vstack([A, np.eye(m)]), weights=np.concatenate([w / D, np.ones(m)])).fit()
    n = float(np.sum(w)); scale2 = (NU0 * S0 ** 2 + float(np.sum(fit.wresid ** 2))) / (NU0 + n); V = fit.normalized_cov_params
    rest = y - A @ fit.params; spread = scale2 * (D + np.einsum("ij,jk,ik->i", A, V, A))
    return dict(df=NU0 + n, centre=float(before(stranger) + x @ fit.params), scale=float(np.sqrt(scale2 * (own(stranger) + x @ V @ x)))), np.minimum(1, 5 / (4 + rest ** 2 / spread))
p, _ = predict(refs, new); t = stats.t(p["df"], p["centre"], p["scale"])
left = []
for i, g in enumerate(refs):
    q, _ = predict(refs[:i] + refs[i + 1:], g); left.append(stats.t.cdf(g["log_ticket"], q["df"], q["centre"], q["scale"]))
out["shared"] = {"references": [{k: v for k, v in g.items() if not k.endswith("_")} for g in refs], "new": {k: v for k, v in new.items() if not k.endswith("_")},
                 "expected": p | {"p10_p50_p90": [t.ppf(q) for q in (0.1, 0.5, 0.9)]}, "left_out": left}
slip = [dict(g) for g in refs]; slip[4]["log_ticket"] += float(np.log(10)); w = np.ones(len(slip))
for _ in range(3): _, w = predict(slip, new, w)
q, _ = predict(slip, new, w)
out["slips"] = {"reference": 4, "times": 10, "expected": q | {"weights": list(w)}}
s = [float(np.round(v, 3)) for v in rng.gamma(3, 0.08, 23)]; test = stats.ttest_ind(s[-10:], s[-20:-10]); ci = test.confidence_interval(0.8)
out["trend"] = {"scores": s, "mean": float(np.mean(s[-10:]) - np.mean(s[-20:-10])), "low": float(ci.low), "high": float(ci.high)}
json.dump(out, open(__file__.replace(".py", ".json"), "w"), indent=1)
