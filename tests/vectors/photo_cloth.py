"""Colours of stains by colour-science 0.4.7, spectra by numpy: writes photo_cloth.json. Run: python photo_cloth.py (needs both from PyPI).

CIELAB, the sRGB curve and matrix and dE are the library's; only the two lines of ISO 105-A04 are written here, as the standard is not in it.
"""

import json
import math
import pathlib

import colour
import numpy

WHITE = 0.80
D65 = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D65"]


def lab(linear):
    xyz = colour.RGB_to_XYZ(linear, "sRGB", apply_cctf_decoding=False)
    return colour.XYZ_to_Lab(xyz, D65)


def stain(white, stained):
    linear = [colour.models.eotf_sRGB(numpy.array(at) / 255.0) for at in (white, stained)]
    one, other = lab(numpy.full(3, WHITE)), lab(linear[1] / linear[0] * WHITE)
    de = float(colour.delta_E(one, other, method="CIE 1976"))
    gs = de - 0.4 * math.sqrt(max(de**2 - (one[0] - other[0]) ** 2, 0.0))
    grade = 6.1 - 1.45 * math.log(gs) if gs > 0 else 5.0
    if grade > 4:
        grade = 5 - 0.23 * gs
    return {"white": white, "stain": stained, "difference": gs, "grade": max(grade, 1.0)}


stains = [
    stain(white, stained)
    for white in ([220, 220, 220], [231, 222, 205], [190, 200, 215])
    for stained in ([180, 180, 180], [150, 165, 188], [70, 80, 120], [188, 192, 196], [120, 60, 70], [186, 170, 160], [60, 60, 60])
]


def array(seed):
    """The same whole numbers as in the test."""
    return numpy.array([[(x * 37 + y * 101 + x * y * 7 + seed * x * x) % 61 for x in range(32)] for y in range(32)], float)


hann = 0.5 - 0.5 * numpy.cos(2 * numpy.pi * numpy.arange(32) / 32)
spectra = []
for seed in (1, 2, 3):
    power = abs(numpy.fft.fft2(array(seed) * hann[:, None] * hann[None, :])) ** 2
    half = power[:, :17].copy()
    half[0, 0] = 0
    y, x = numpy.unravel_index(int(half.argmax()), half.shape)
    places = [(int(x), int(y))] + [(3, 5), (0, 31), (16, 16), (7, 20), (0, 0), (16, 3), (1, 30)]
    spectra.append({"seed": seed, "power": [[x, y, float(power[y, x])] for x, y in places]})

path = pathlib.Path(__file__).with_suffix(".json")
path.write_text(json.dumps({"colour-science": colour.__version__, "numpy": numpy.__version__, "stains": stains, "spectra": spectra}, indent=1) + "\n")
