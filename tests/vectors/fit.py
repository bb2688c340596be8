"""Makes fit.json: how garment and body sit, by Monte Carlo over what a tape, a wash and a day's wear may do (numpy), and the verdict of
several places by counting. The model is that of src/fit/assess.rs, written anew: every case is drawn, judged and counted; nothing is
integrated. Run: python3 fit.py > fit.json (numpy; a quarter of a minute)."""
import json, numpy as np
rng = np.random.default_rng(20261126)
N = 2_000_000

def case(name, G, uG, B, uB, give, ugive, rows, floor, yields, fails_over, wash, wear, out=0.0, taken_in=0.0, let_through=1.0):
    # What a tape errs by, it errs by before and after: one draw for both.
    e = rng.normal(0, np.hypot(uG, uB), N)
    g = np.maximum(rng.normal(give, ugive, N), 0) if ugive else np.full(N, float(give))
    gives = [r[0] for r in rows]
    low = np.interp(g, gives, [r[1] for r in rows]); high = np.interp(g, gives, [r[2] for r in rows])
    # Where the cloth gives out before the cut does, the cut is what the cloth can do.
    least = floor - (B * (g / 200) / (1 + g / 200) if yields else np.zeros(N))
    low = np.maximum(low, least); high = np.maximum(high, low)
    ceiling = high + fails_over if fails_over is not None else np.full(N, np.inf)
    now = G - B + e
    d = rng.uniform(*wash, N) if wash else np.zeros(N)
    w = rng.uniform(*wear, N) if wash else np.zeros(N)
    fresh, last = now + G * d, now + G * d + w
    # Moves went freely: of the garments that are too tight today only so many would have let them through; the others are struck out.
    kept = (now >= least) | (rng.uniform(0, 1, N) < let_through)
    now, fresh, last, low, high, least, ceiling = [np.broadcast_to(x, N)[kept] for x in (now, fresh, last, low, high, least, ceiling)]
    sits = lambda x: [float(np.mean(x < least)), float(np.mean((x >= least) & (x < low))), float(np.mean((x >= low) & (x < high))), float(np.mean(x >= high))]
    fine = lambda x: (x >= least) & (x < ceiling)
    a, b = fine(now), fine(last)
    cured = (last >= least - out) & (last < ceiling + taken_in)
    fates = [float(np.mean(a & b)), float(np.mean(~a & b)), float(np.mean(~b & cured)), float(np.mean(~b & ~cured))]
    return dict(name=name, garment=[G, uG], body=[B, uB], give=[give, ugive], rows=rows, floor=floor, yields=yields, fails_over=fails_over,
                wash=wash, wear=wear, out=out, taken_in=taken_in, let_through=let_through, now=sits(now), washed=sits(fresh) if wash else None, worn=sits(last) if wash else None, fates=fates)

SLIM_HIP = [[5, 0, 4], [25, -6, 2], [37, -14, -4]]
WAIST = [[5, -2, 2]]
cases = [
    case("rigid, as intended", 100.0, .8, 98.0, 1.0, 5, 0, SLIM_HIP, 0.0, True, None, None, [0, 1]),
    case("stretch, negative ease", 93.0, .8, 98.0, 1.0, 26, 2, SLIM_HIP, 0.0, True, None, [-.02, .005], [0, 1]),
    case("super stretch on a small body", 61.0, .8, 75.0, 1.0, 38, 2, SLIM_HIP, 0.0, True, None, [-.02, .005], [0, 1]),
    case("give hardly known", 97.0, .8, 98.0, 1.0, 12, 8, SLIM_HIP, 0.0, True, None, [-.02, .005], [0, 1]),
    case("raw, fits now and not later", 86.0, .6, 86.5, 1.2, 3, 0, WAIST, -3.0, False, 2.0, [-.10, -.03], [1.3, 2.5], 0, 4),
    case("raw, comes right by shrinking", 92.5, .6, 86.5, 1.2, 3, 0, WAIST, -3.0, False, 2.0, [-.10, -.03], [1.3, 2.5], 0, 0),
    case("loose, taken in", 92.0, .6, 85.0, 1.2, 3, 0, WAIST, -3.0, False, 2.0, [-.02, 0], [0, 1], 0, 4),
    case("tight by the tape, moved in freely", 95.5, .8, 98.0, 1.0, 5, 1, SLIM_HIP, 0.0, True, None, None, [0, 1], 0, 0, .16),
    case("the same, raw", 95.5, .8, 98.0, 1.0, 5, 1, SLIM_HIP, 0.0, True, None, [-.03, 0], [.5, 2], 2, 0, .16),
    case("close call", 88.0, 1.0, 91.0, 1.5, 3, 0, WAIST, -3.0, False, 2.0, [-.02, 0], [0, 1], 1, 4),
]
# The verdict on several places that err by themselves: every combination of fates is drawn and the worst counts.
def verdict(places):
    drawn = np.array([rng.choice(4, N, p=np.array(p) / np.sum(p)) for p in places])
    worst = drawn.max(axis=0)
    return [float(np.mean(worst == k)) for k in range(4)]
groups = [[[.9, .05, .03, .02], [.7, .1, .15, .05]], [[.5, .3, .1, .1], [.6, .2, .1, .1], [.99, .01, 0, 0]], [[.2, 0, .8, 0], [.95, 0, 0, .05]], [[1, 0, 0, 0]] * 3]
print(json.dumps(dict(source="numpy " + np.__version__ + ", Monte Carlo of 2,000,000; made by fit.py", cases=cases, verdicts=[dict(places=g, chances=verdict(g)) for g in groups]), indent=1))
