#!/usr/bin/env python3
"""Three general methods for counting stitches, on a folder of photographs with a truth.csv, beside our own reader.

Each method reads the profile of brightness along the chord between the two marks, at the scale of the two marks on the ruler (or the
homography of the card's corners), and answers every picture it can:

- fft: the strongest line of the Hann-windowed spectrum (numpy.fft);
- autocorrelation: the first strong peak of the normalised autocorrelation (numpy);
- find_peaks: the median distance of peaks (scipy.signal.find_peaks, prominence half a standard deviation).

Needs numpy, scipy and pillow. `--ours FILE` adds the lines printed by
`cargo run --profile bench --no-default-features --example count_stitches -- FOLDER`.
"""

import argparse
import ast
import csv
import pathlib
import re
import sys
import time

import numpy as np
from PIL import Image
from scipy import ndimage, signal

CARD = np.array([[0, 0], [85.60, 0], [85.60, 53.98], [0, 53.98]], float)
# The range in which a pitch is looked for, mm: 3 to 20 stitches per inch.
LONGEST, SHORTEST = 8.5, 1.25


def numbers(text):
    """A list in a field of truth.csv, or nothing."""
    text = text.strip().strip('"').strip()
    return np.array(ast.literal_eval(text), float) if text else None


def homography(there, here):
    """The projective map that takes four points `here` to `there` (direct linear transformation, smallest singular vector)."""
    rows = []
    for (x, y), (u, v) in zip(here, there):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y, -u])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y, -v])
    return np.linalg.svd(np.array(rows))[2][-1].reshape(3, 3)


def mapped(matrix, points):
    flat = np.c_[points, np.ones(len(points))] @ matrix.T
    return flat[:, :2] / flat[:, 2:]


def profile(grey, row):
    """Brightness along the chord, and its step in mm. The strip is 0.8 mm high, as a thread is."""
    ends = np.array([[float(row["seam_x1"]), float(row["seam_y1"])], [float(row["seam_x2"]), float(row["seam_y2"])]])
    corners = numbers(row["card_corners"])
    if corners is not None:
        ends_mm = mapped(homography(CARD, corners), ends)
        back = homography(corners, CARD)
        long = np.linalg.norm(ends_mm[1] - ends_mm[0])
    else:
        a, b = numbers(row["ruler_a"]), numbers(row["ruler_b"])
        per_mm = np.linalg.norm(b - a) / float(row["known_mm"])
        ends_mm, back = ends / per_mm, None
        long = np.linalg.norm(ends_mm[1] - ends_mm[0])
    pixels = np.linalg.norm(ends[1] - ends[0])
    count = max(int(pixels), 16)
    way = (ends_mm[1] - ends_mm[0]) / long
    side = np.array([-way[1], way[0]])
    t = np.linspace(0, long, count)
    rows = []
    for off in np.linspace(-0.4, 0.4, 7):
        mm = ends_mm[0] + t[:, None] * way + off * side
        px = mm * per_mm if back is None else mapped(back, mm)
        rows.append(ndimage.map_coordinates(grey, [px[:, 1], px[:, 0]], order=1, mode="nearest"))
    line = np.mean(rows, axis=0)
    step = long / (count - 1)
    wide = max(3, int(LONGEST / step) | 1)
    return line - ndimage.uniform_filter1d(line, wide, mode="nearest"), step


def fft(line, step):
    size = 4 * len(line)
    power = np.abs(np.fft.rfft(line * np.hanning(len(line)), size)) ** 2
    frequency = np.fft.rfftfreq(size, step)
    inside = (frequency > 1 / LONGEST) & (frequency < 1 / SHORTEST)
    if inside.sum() < 3:
        return None
    return frequency[inside][np.argmax(power[inside])]


def autocorrelation(line, step):
    size = 2 * len(line)
    power = np.abs(np.fft.rfft(line, size)) ** 2
    r = np.fft.irfft(power, size)[: len(line)]
    r = r / (np.arange(len(line), 0, -1)) / max(r[0] / len(line), 1e-12)
    low, high = int(np.ceil(SHORTEST / step)), min(int(LONGEST / step), len(line) // 2)
    peaks = signal.find_peaks(r[: high + 1])[0]
    peaks = peaks[peaks >= low]
    if not len(peaks):
        return None
    best = r[peaks].max()
    if best <= 0:
        return None
    at = next(p for p in peaks if r[p] >= 0.8 * best)
    a, b, c = r[at - 1 : at + 2]
    return 1 / (step * (at + 0.5 * (a - c) / (a - 2 * b + c)))


def find_peaks(line, step):
    line = ndimage.gaussian_filter1d(line, 0.15 / step)
    best = None
    for way in (line, -line):
        peaks = signal.find_peaks(way, prominence=0.5 * line.std(), distance=max(1, SHORTEST / step))[0]
        if len(peaks) >= 4:
            gaps = np.diff(peaks)
            even = gaps.std() / gaps.mean()
            if best is None or even < best[0]:
                best = (even, 1 / (step * np.median(gaps)))
    return best and best[1]


METHODS = {"fft": fft, "autocorrelation": autocorrelation, "find_peaks": find_peaks}


def usable(row):
    """As the design says: not hard, tilt to 15 degrees, 12 pixels a stitch, thread not tone-in-tone."""
    return row["level"] != "hard" and float(row["tilt_deg"]) <= 15 and float(row["px_per_stitch"]) >= 12 and row["tonal"] == "0"


def slipped(answer, truth):
    return any(abs(answer / truth / ratio - 1) < 0.08 for ratio in (2, 0.5, 3, 1 / 3))


def line_of(name, answers, rows, ms):
    """A line of the table: answers per inch by file, None where refused."""
    pairs = [(answers[r["file"]], float(r["stitches_per_inch"])) for r in rows if answers.get(r["file"])]
    n = max(len(pairs), 1)
    share = lambda test: 100 * sum(map(test, pairs)) / n
    return (
        f"| {name} | {len(pairs)} of {len(rows)} | {share(lambda p: abs(p[0] - p[1]) <= 0.25):.1f} % | "
        f"{share(lambda p: abs(p[0] - p[1]) <= 0.5):.1f} % | {share(lambda p: abs(p[0] / p[1] - 1) > 0.15):.1f} % | "
        f"{sum(slipped(*p) for p in pairs)} | {ms} |"
    )


def main():
    ask = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ask.add_argument("folder", type=pathlib.Path)
    ask.add_argument("--ours", type=pathlib.Path, help="what count_stitches printed for the same folder")
    ask.add_argument("--limit", type=int, help="only so many pictures")
    given = ask.parse_args()
    rows = list(csv.DictReader((given.folder / "truth.csv").open(newline="")))
    rows = [r for r in rows if r.get("object") in ("mm", "in16", "card")][: given.limit]
    if not rows:
        sys.exit("no picture with a scale in this folder")
    answers = {name: {} for name in METHODS}
    spent = dict.fromkeys(METHODS, 0.0)
    for row in rows:
        grey = np.asarray(Image.open(given.folder / row["file"]).convert("L"), float)
        for name, method in METHODS.items():
            start = time.process_time()
            line, step = profile(grey, row)
            found = method(line, step)
            spent[name] += time.process_time() - start
            answers[name][row["file"]] = 25.4 * found if found else None
    head = "| method | answered | within 0.25 | within 0.5 | off by > 15 % | octave slips | ms a picture |\n| --- | --- | --- | --- | --- | --- | --- |"
    ours = given.ours and ours_of(given.ours, rows)
    for title, some in (("all", rows), ("usable", [r for r in rows if usable(r)])):
        print(f"\n{title}: {len(some)} photographs\n\n{head}")
        for name in METHODS:
            print(line_of(name, answers[name], some, f"{1000 * spent[name] / len(rows):.1f}"))
        if ours:
            print(line_of("ours", ours[0], some, ours[1]))
    if given.ours:
        print()
        for text in given.ours.read_text().splitlines():
            if text.startswith(("usable:", "all:")):
                print("as count_stitches says:", text)


def ours_of(path, rows):
    """Answers by file, from lines `FILE: ..., read NUMBER, ...` (per inch; a line without is a refusal), and the milliseconds a picture."""
    found, ms = {}, "-"
    names = {r["file"] for r in rows}
    for text in path.read_text().splitlines():
        name = text.split(":")[0].strip()
        if name in names:
            told = re.search(r"\bread (\d+\.?\d*)", text)
            found[name] = float(told.group(1)) if told else None
        elif match := re.search(r"milliseconds a picture: median (\d+\.?\d*)", text):
            ms = match.group(1)
    missing = len(names) - len(found)
    if missing:
        print(f"{missing} photographs are missing in {path}", file=sys.stderr)
    return found, ms


if __name__ == "__main__":
    main()
