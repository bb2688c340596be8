"""Signals, and what numpy and scipy make of them, for the tests of `photo`: python3 tests/vectors/photo_seam.py > tests/vectors/photo_seam.json"""
import json

import numpy as np
from scipy import ndimage

rng = np.random.default_rng(20261125)


def rounded(values, digits=9):
    return [round(float(v), digits) for v in np.ravel(values)]


def spectra():
    """Power through Hann's window (centred on samples, scipy's general cosine), zero-padded; moving means; the slow part taken out."""
    rows = []
    for n, period, noise in [(211, 17.3, 0.2), (640, 31.7, 0.5), (900, 12.05, 1.0)]:
        x = np.arange(n)
        y = np.sin(2 * np.pi * x / period) + 0.4 * np.sin(4 * np.pi * x / period + 1) + noise * rng.standard_normal(n) + x / n
        points = 1 << int(np.ceil(np.log2(3 * n)))
        window = 0.5 - 0.5 * np.cos(2 * np.pi * (x + 0.5) / n)
        power = np.abs(np.fft.rfft(y * window, points)) ** 2 / n
        # An odd width is the same centred mean in scipy; there the ends are reflected, so only the inside is compared.
        mean = ndimage.uniform_filter1d(y, 21)
        at = int(np.argmax(power[20:])) + 20
        rows.append({"signal": rounded(y, 6), "points": points, "power": rounded(power[:200], 6), "mean_of_21": rounded(mean, 6),
                     "peak": at, "period": period,
                     "top": round(float(-np.polyfit([-1, 0, 1], power[at - 1:at + 2], 2)[1] / (2 * np.polyfit([-1, 0, 1], power[at - 1:at + 2], 2)[0])), 6)})
    return rows


def evenness():
    """Coefficient of variation of lengths after numpy's polynomial (2nd degree from twelve on, below that 1st)."""
    rows = []
    for n in [6, 11, 12, 30, 83]:
        lengths = 30 + 0.1 * np.arange(n) + 2 * rng.standard_normal(n)
        degree = 2 if n >= 12 else 1
        left = lengths - np.polyval(np.polyfit(np.arange(n), lengths, degree), np.arange(n))
        rows.append({"lengths": rounded(lengths, 6), "cv": round(float(np.sqrt((left ** 2).sum() / (n - degree - 1)) / lengths.mean()), 9)})
    return rows


def drawn():
    """Needle holes of seams to be drawn by the test (pixels), and mean and variation of the stitches between them."""
    rows = []
    for pitch, cv, count, angle in [(24.0, 0.02, 30, 4.0), (40.0, 0.05, 18, -12.0), (14.0, 0.03, 45, 88.0), (60.0, 0.08, 11, 30.0)]:
        lengths = pitch * (1 + cv * rng.standard_normal(count))
        holes = np.concatenate([[0], np.cumsum(lengths)])
        degree = 2 if count >= 12 else 1
        left = lengths - np.polyval(np.polyfit(np.arange(count), lengths, degree), np.arange(count))
        rows.append({"holes": rounded(holes, 4), "angle": angle, "mean": round(float(lengths.mean()), 6),
                     "cv": round(float(np.sqrt((left ** 2).sum() / (count - degree - 1)) / lengths.mean()), 6)})
    return rows


print(json.dumps({"origin": "numpy " + np.__version__ + ", scipy, by photo_seam.py", "spectra": spectra(), "evenness": evenness(), "drawn": drawn()}, separators=(",", ":")))
