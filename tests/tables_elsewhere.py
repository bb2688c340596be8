#!/usr/bin/env python3
"""Reads a table that the app wrote with a reader of another house, and says what came back.

    tests/tables_elsewhere.py read FILE         Python's csv module; prints the rows as JSON
    tests/tables_elsewhere.py calc FILE [LANG]  LibreOffice Calc, where it is installed; prints each cell that came back otherwise

Run by hand, and `read` by tests/browser/hand_on.test.mjs on machines that have a python3; nothing else needs either. The language of
`calc` (en-US, de-DE ...) decides how it takes figures and dates, as the language of the device does for a person who opens the file.
"""

import csv
import io
import json
import subprocess
import sys
import tempfile
from pathlib import Path

MARK = "\ufeff"
# Numbers of languages in the options of Calc's reader (the same as Windows's).
LANGUAGES = {"en-US": 1033, "de-DE": 1031, "fr-FR": 1036}


def rows_of(text):
    """Rows by the names of their columns. The signs between columns and the mark of UTF-8 are as docs/tables.md promises."""
    assert text.startswith(MARK), "no mark of UTF-8"
    text = text[1:]
    between = ";" if text.split("\r\n", 1)[0].count(";") else ","
    table = list(csv.reader(io.StringIO(text, newline=""), delimiter=between, strict=True))
    names, rows = table[0], table[1:]
    assert all(len(row) == len(names) for row in rows), "a row of another length"
    return between, [dict(zip(names, row)) for row in rows]


def by_calc(path, between, language):
    """The same rows as Calc gives them back after opening the file as a person would, figures and dates taken as it takes them."""
    with tempfile.TemporaryDirectory() as folder:
        # Separator, quote, UTF-8, from line 1, columns as they come, language, quoted fields as text: no, special numbers: yes.
        taken = f"CSV:{ord(between)},34,76,1,,{LANGUAGES[language]},false,true"
        # Written as shown, so that a cell taken for a date would be seen as one.
        given = "csv:Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true,false"
        home = Path(folder) / "profile"
        subprocess.run(
            ["soffice", f"-env:UserInstallation=file://{home}", "--headless", f"--infilter={taken}", "--convert-to", given, "--outdir", folder, str(path)],
            check=True, capture_output=True, timeout=300,
        )
        text = (Path(folder) / path.name).with_suffix(".csv").read_text("utf-8")
    table = list(csv.reader(io.StringIO(text.removeprefix(MARK), newline="")))
    return [dict(zip(table[0], row)) for row in table[1:]]


def is_figure(given, back, between):
    """Whether a figure with decimals came back as the same number, written Calc's way."""
    sign = "," if between == ";" else "."
    try:
        return sign in given and back is not None and float(given.replace(sign, ".")) == float(back)
    except ValueError:
        return False


def main():
    what, path = sys.argv[1], Path(sys.argv[2])
    between, rows = rows_of(path.read_bytes().decode("utf-8"))
    if what == "read":
        print(json.dumps(rows, ensure_ascii=False))
        return
    language = sys.argv[3] if len(sys.argv) > 3 else ("de-DE" if between == ";" else "en-US")
    came = by_calc(path, between, language)
    print(f"{len(rows)} rows given, {len(came)} came back, {sum(len(row) for row in rows)} cells, {language}")
    figures = 0
    for place, (given, back) in enumerate(zip(rows, came), 1):
        for name, text in given.items():
            if is_figure(text, back.get(name), between):
                figures += 1
            elif back.get(name) != text:
                print(f"row {place}, {name}: {text!r} came back as {back.get(name)!r}")
    print(f"{figures} figures with decimals were taken for the numbers they are")


if __name__ == "__main__":
    main()
