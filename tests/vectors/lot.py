"""Expected values for the room `lot`, worked out without the project's code: writes lot.csv. Run: python lot.py (scipy).

Every sample size of ISO 2859-1, table 2-A, with every accept number of it: chance to pass by the binomial distribution (scipy.stats.binom) at
seven shares, and by Poisson (scipy.stats.poisson) beside it; the share that passes one time of ten, and the highest share with 95 per cent
confidence by Clopper and Pearson, both from scipy.stats.beta.
"""
import csv, scipy
from scipy.stats import beta, binom, poisson

shares = [0.001, 0.0065, 0.01, 0.025, 0.065, 0.15, 0.4]
with open("lot.csv", "w", newline="") as file:
    file.write(f"# Written by lot.py with scipy {scipy.__version__}.\n")
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(["sample", "accept", *[f"binomial {p}" for p in shares], *[f"poisson {p}" for p in shares], "passes 0.1", "highest 0.95"])
    for n in [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000]:
        for c in [0, 1, 2, 3, 5, 7, 10, 14, 21]:
            if c >= n:
                continue
            tenth, highest = beta.ppf(0.9, c + 1, n - c), beta.ppf(0.95, c + 1, n - c)
            writer.writerow([n, c, *[repr(float(binom.cdf(c, n, p))) for p in shares], *[repr(float(poisson.cdf(c, n * p))) for p in shares], repr(float(tenth)), repr(float(highest))])
