"""Writes bench_budgets.csv: values, spreads and budgets of the bench's instruments, with the Python package uncertainties 3.2.3.

The formulas are written down here from the handbook, sections 1 to 4, not from the Rust code. Run: python bench_budgets.py > bench_budgets.csv
"""
import math
import uncertainties
from uncertainties import ufloat, umath

assert uncertainties.__version__ == "3.2.3"
OZ = 0.45359237 / 16 / 0.9144**2 * 1000  # g/m2 in an oz/yd2


def rect(half):
    return half / math.sqrt(3)


def tri(half):
    return half / math.sqrt(6)


def row(name, instrument, given, result, also=None):
    shares = {}
    for variable, part in result.error_components().items():
        shares[variable.tag] = shares.get(variable.tag, 0.0) + part**2
    total = sum(shares.values())
    fields = [
        name,
        instrument,
        "; ".join(f"{key}={value}" for key, value in given.items()),
        f"{result.nominal_value:.12g}",
        f"{result.std_dev:.12g}",
        "; ".join(f"{key}={part / total:.9f}" for key, part in sorted(shares.items()) if part > 0),
        "; ".join(f"{key}={x.nominal_value:.12g}/{x.std_dev:.12g}" for key, x in (also or {}).items()),
    ]
    print(",".join(fields))


def u(tag, value, spread):
    return ufloat(value, spread, tag)


print("# Computed with the Python package uncertainties 3.2.3 by bench_budgets.py (1 sigma; shares of the variance by input).")
print("id,instrument,given,value,uncertainty,shares,also")


# Cloth mass by weighing, handbook 4.3. Measures in cm, result in oz/yd2.
def weighed(name, mass, thigh, knee, hem, inseam, hip, rise, waist, raw=0, trims=70.0, scale=10.0, tape=1.0, model=8.0, damp=1.15):
    given = dict(mass=mass, thigh=thigh, knee=knee, hem=hem, inseam=inseam, hip=hip, rise=rise, waist=waist, washed=raw)
    t, k, h, i, s, r, w = (
        u(tag, given[tag], tape) for tag in ("thigh", "knee", "hem", "inseam", "hip", "rise", "waist")
    )
    area = (
        2 * ((t + k) / 2 * 35 + (k + h) / 2 * (i - 35))
        + s * (r - 4) + 400 + 8 * (w + 4) + 510 + 700
        + 6 * i + 5 * (i + r - 4) + 225 + 6 * h
    ) / 10000 * u("model", 1, model / 100)
    cloth = (u("mass", mass, scale) - u("trims", trims, 20)) / area * u("damp", 1, damp / 100) / OZ
    also = {"area": area}
    if raw:
        also["without-size"] = cloth * u("washed", 0.915, rect(0.035))
    row(name, "cloth-mass-weighed", given, cloth, also)


weighed("BW01", 690, 60, 44, 40, 81, 104, 32, 84)
weighed("BW02", 690, 60, 44, 40, 81, 104, 32, 84, raw=1)
weighed("BW03", 820, 66, 50, 46, 86, 110, 33, 90)


# Cloth mass from threads, handbook 4.5. Counts per inch.
def built(name, ends, picks, system, warp, weft, c1=None, c2=None, count=1.0, model=5.0):
    tex = [lambda n: n, lambda n: 453592.37 / (840 * 0.9144) / n, lambda n: 1000 / n, lambda n: n / 9][system]
    given = {"ends": ends, "picks": picks, "system": system, "warp-yarn": warp, "weft-yarn": weft}
    if c1 is not None:
        given["warp-crimp"] = c1
    if c2 is not None:
        given["weft-crimp"] = c2
    k1 = u("warp-crimp", 0.09, rect(0.03)) if c1 is None else u("warp-crimp", c1 / 100, 0.01)
    k2 = u("weft-crimp", 0.035, rect(0.015)) if c2 is None else u("weft-crimp", c2 / 100, 0.01)
    gsm = 0.1 * (u("ends", ends, count) / 2.54 * tex(warp) * (1 + k1) + u("picks", picks, count) / 2.54 * tex(weft) * (1 + k2))
    row(name, "cloth-mass-built", given, gsm / OZ * u("model", 1, model / 100))


built("BB01", 68, 44, 1, 6.5, 6, 10, 4)
built("BB02", 68, 44, 1, 6.5, 6)
built("BB03", 133, 72, 1, 50, 50, 5, 5)
built("BB04", 60, 40, 0, 90, 95)


def compared(name, low, high, nearer):
    given = dict(lighter=low, heavier=high, nearer=nearer)
    middle = (low + high) / 2
    low, high = [(low, high), (low, middle), (middle, high)][nearer]
    row(name, "cloth-mass-compared", given, u("nearer", (low + high) / 2, rect((high - low) / 2)) * u("hand", 1, 0.05))


compared("BC01", 10, 14, 0)
compared("BC02", 10, 14, 2)


# Thread count: a window in mm, threads per cm; the twill angle shares the window.
def counted(name, ends, picks, window, beside):
    given = {"ends": ends, "picks": picks, "window": window, "starts-on-thread": beside}
    spread = rect(0.5) if beside else tri(1)
    length = u("window", window, 0.2)
    n1, n2 = u("ends", ends, spread) / length, u("picks", picks, spread) / length
    row(name, "thread-count", given, n1 * 10, {
        "picks": n2 * 10, "both": (n1 + n2) * 25.4, "twill": umath.degrees(umath.atan(n1 / n2)),
    })


counted("BT01", 68, 44, 25.4, 0)
counted("BT02", 27, 17, 10, 1)


def cover(name, ends, picks, warp, weft):
    given = {"ends": ends, "picks": picks, "system": 1, "warp-yarn": warp, "weft-yarn": weft}
    k1 = u("ends", ends, 1) / umath.sqrt(u("warp-yarn", warp, warp * 0.03))
    k2 = u("picks", picks, 1) / umath.sqrt(u("weft-yarn", weft, weft * 0.03))
    row(name, "cloth-cover", given, k1 + k2 - k1 * k2 / 28, {"warp": k1, "weft": k2})


cover("BK01", 68, 44, 6.5, 6)


def strength(name, stitch, density, pounds):
    kg = pounds * 0.45359237
    given = {"stitch": stitch, "density": density, "breaks-at": kg}
    per_inch = u("density", density, 0.2) * u("breaks-at", pounds, pounds * 0.05) * [1.5, 1.7][stitch] * u("model", 1, 0.2)
    newtons = per_inch * 0.45359237 * 9.80665 / 25.4 * 50
    row(name, "seam-strength", given, newtons / 9.80665, {"newtons": newtons, "pounds-force": per_inch})


strength("BS01", 0, 10, 4.0)
strength("BS02", 1, 8, 5.5)


def thread(name, place, ratio, seam, thickness=None, density=None):
    given = {"stitch": place, "seam": seam}
    if thickness is not None:
        given |= {"thickness": thickness, "density": density}
        ratio = {0: 2, 1: 4}[place] + 2 * thickness * density / 25.4
    total = u("seam", seam, seam * 0.02) * ratio * u("model", 1, 0.125) * (1 + u("waste", 0.125, rect(0.025)))
    row(name, "thread-use", given, total)


thread("BU01", 1, 5.5, 3.24)
thread("BU02", 1, None, 1.62, 3.2, 8)
thread("BU03", 9, 20, 2.06)


def sewing(name, seam, density, instead, machine, stops, speed=None):
    given = {"seam": seam, "density": density, "instead-of": instead, "machine": machine, "stops": stops}
    low, high = [(2500, 4500), (3000, 5500), (5000, 7000)][machine]
    if speed is None:
        v = u("machine", (low + high) / 2, rect((high - low) / 2))
    else:
        given["speed"] = speed
        v = u("speed", speed, speed * 0.03)
    length = u("seam", seam, seam * 0.05)
    f = u("guiding", 1.2, rect(0.2))
    time = lambda s: length / 0.0254 * s * 60 / v * f
    total = time(density) + stops * u("stops", 0.5, rect(0.1))
    more = time(density) - time(instead)
    extra = 2 * u("thickness", 1.6, 0.32) / 25.4 * (density - instead) * length
    row(name, "sewing-time", given, total, {"more-time": more, "more-thread": extra})


sewing("BM01", 1.5, 12, 8, 0, 4, 4000)
sewing("BM02", 19.1, 10, 8, 0, 76)
sewing("BM03", 15, 12, 8, 1, 60)


def yarn(name, system, number, plies):
    tex = [lambda n: n, lambda n: 453592.37 / (840 * 0.9144) / n, lambda n: 1000 / n, lambda n: n / 9][system]
    given = dict(system=system, number=number, plies=plies)
    row(name, "yarn-number", given, tex(u("number", number, number * 0.03)) * plies)


yarn("BY01", 1, 80, 2)
yarn("BY02", 3, 150, 1)


# Taps: the length of a stitch by least squares over n taps, each off by the same spread; the scale of the ruler is shared.
def taps(name, n, stitch, tap, ruler):
    places = [u(f"tap {i}", stitch * i, tap) for i in range(n)]
    middle = (n - 1) / 2
    slope = sum((i - middle) * place for i, place in enumerate(places)) / sum((i - middle) ** 2 for i in range(n))
    share = slope.std_dev / slope.nominal_value
    length = u("taps", slope.nominal_value, share * slope.nominal_value) * u("ruler", 1, ruler / 100)
    row(name, "stitch-taps", {"taps": n, "stitch": stitch, "tap-spread": tap, "ruler": ruler}, 25.4 / length)


taps("BA01", 20, 3.175, 0.4, 0.5)
taps("BA02", 5, 1.8, 0.2, 1.0)


def comb(name, pitch, bars, misfit, ruler):
    length = u("comb", pitch, tri(2 * misfit / (bars - 1))) * u("ruler", 1, ruler / 100)
    row(name, "stitch-comb", {"comb": pitch, "bars": bars, "misfit": misfit, "ruler": ruler}, 25.4 / length)


comb("BO01", 3.175, 25, 0.25, 0.5)
comb("BO02", 1.8, 10, 0.2, 1.0)


def unravelled(name, seam, ratio, waste):
    total = u("seam", seam, seam * 0.02) * u("unravelled", ratio, ratio * 0.03) * (1 + u("waste", waste / 100, rect(waste / 100 * 0.2)))
    row(name, "thread-use", {"stitch": 1, "seam": seam, "waste": waste, "unravelled": ratio}, total)


unravelled("BU04", 1.0, 5.4, 15)
