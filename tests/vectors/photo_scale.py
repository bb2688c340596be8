"""Numbers that tests/photo_scale.rs is checked against, worked out by general libraries: OpenCV (homography, ellipse), numpy and scipy (comb).

Run from the root of the repository with numpy, scipy and opencv-python-headless; writes tests/vectors/photo_scale.json.
"""

import json

import cv2
import numpy as np
from scipy.ndimage import map_coordinates

rng = np.random.default_rng(5)
rows = {"origin": f"OpenCV {cv2.__version__}, numpy {np.__version__}", "homography": [], "ellipse": [], "comb": []}

# Four corners of an ID-1 card in the picture; where five places of the picture lie on the cloth.
card = np.array([[0, 0], [85.6, 0], [85.6, 53.98], [0, 53.98]], np.float64)
for corners in (
    [[100, 100], [520, 110], [515, 380], [96, 362]],
    [[240.3, 80.9], [601.2, 190.4], [520.8, 455.1], [171.7, 330.2]],
    [[300, 60], [560, 300], [390, 455], [140, 210]],
):
    corners = np.array(corners, np.float64)
    # The first side is the long one seen, as the test gives them.
    h, _ = cv2.findHomography(corners, card)
    places = np.array([[[50, 50]], [[320, 240]], [[400, 20]], [[610, 470]], [[10, 400]]], np.float64)
    rows["homography"].append(
        {
            "corners": corners.tolist(),
            "pixels": places.reshape(-1, 2).tolist(),
            "mm": cv2.perspectiveTransform(places, h).reshape(-1, 2).tolist(),
        }
    )

# Places near an ellipse, and the ellipse that least squares under 4ac - b² = 1 gives.
for middle, long, short, angle, count in (((310.0, 250.0), 120.0, 104.0, 0.6, 9), ((200.5, 180.2), 90.0, 88.0, 2.1, 7), ((330.0, 220.0), 150.0, 95.0, 1.2, 12)):
    turns = np.arange(count) / count * 2 * np.pi + rng.uniform(-0.2, 0.2, count)
    x, y = long * np.cos(turns), short * np.sin(turns)
    points = np.stack([middle[0] + x * np.cos(angle) - y * np.sin(angle), middle[1] + x * np.sin(angle) + y * np.cos(angle)], 1)
    points = (points + rng.normal(0, 0.8, points.shape)).astype(np.float32)
    (cx, cy), (width, height), _ = cv2.fitEllipseDirect(points)
    rows["ellipse"].append(
        {
            "points": points.astype(float).tolist(),
            "middle": [cx, cy],
            "long": max(width, height) / 2,
            "short": min(width, height) / 2,
        }
    )

# Graduations of a drawn ruler that was not tilted: the frequency of brightness along the line between the marks, by a windowed Fourier transform
# filled up with zeros.
picture = cv2.imread("tests/images/ruler_flat.jpg", cv2.IMREAD_GRAYSCALE).astype(np.float64)
with open("tests/images/photo_scale.json") as file:
    marks = json.load(file)["ruler_flat.jpg"]
a, b = np.array(marks["marks"][0]), np.array(marks["marks"][1])
length = np.hypot(*(b - a))
t = np.arange(0, length, 0.5) / length
across = np.array([-(b - a)[1], (b - a)[0]]) / length
frequency = np.fft.rfftfreq(1 << 18, 0.5)
typed = marks["mm"] / length
# Narrower than the lines that longer graduations put beside it, a tenth away.
inside = (frequency > 0.96 * typed) & (frequency < 1.04 * typed)
around = (frequency > 0.7 * typed) & (frequency < 1.3 * typed)
best = (0, 0)
# Where across the ruler graduations are, is found by how far their line stands out.
for middle in range(-40, 41, 8):
    profile = np.zeros(len(t))
    for off in range(middle - 3, middle + 4):
        at = a + t[:, None] * (b - a) + off * across
        profile += map_coordinates(picture, [at[:, 1], at[:, 0]], order=1)
    profile -= np.convolve(np.pad(profile, 30, "edge"), np.ones(61) / 61, "valid")
    power = np.abs(np.fft.rfft(profile * np.hanning(len(profile)), 1 << 18)) ** 2
    line = power[inside].max() / np.median(power[around])
    best = max(best, (line, 1 / frequency[inside][np.argmax(power[inside])]))
rows["comb"].append({"file": "ruler_flat.jpg", "px_per_mm": float(best[1])})

with open("tests/vectors/photo_scale.json", "w") as file:
    json.dump(rows, file, indent=1)
    file.write("\n")
