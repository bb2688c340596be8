#!/usr/bin/env python3
"""Reads a zip that the app wrote, and writes one for it, with Python's zipfile: a reader and writer of another house.

    tests/zips_elsewhere.py read FILE              prints name, size, SHA-256, day and way of packing of each file as JSON
    tests/zips_elsewhere.py again FILE TO HOW      packs the same files anew: HOW is stored, deflated, bzip2, lzma, or with-others, which is
                                                   deflated with a folder and names that climb out of the zip beside them
    tests/zips_elsewhere.py front FILE             reads FILE from front to back, as one that is still arriving, without its directory

Run by tests/photographs.rs and tests/browser/photographs.test.mjs on machines that have a python3; nothing else needs it.
"""

import hashlib
import json
import struct
import sys
import zipfile

HOW = {
    "stored": zipfile.ZIP_STORED,
    "deflated": zipfile.ZIP_DEFLATED,
    "bzip2": zipfile.ZIP_BZIP2,
    "lzma": zipfile.ZIP_LZMA,
    "with-others": zipfile.ZIP_DEFLATED,
}


def told(name, data, **more):
    return {"name": name, "size": len(data), "sha256": hashlib.sha256(data).hexdigest(), **more}


def read(path):
    with zipfile.ZipFile(path) as archive:
        assert archive.testzip() is None, "a checksum that does not fit"
        return [
            told(info.filename, archive.read(info), day=list(info.date_time[:3]), method=info.compress_type, extracts_as=info.create_version)
            for info in archive.infolist()
        ]


def again(path, to, how):
    with zipfile.ZipFile(path) as source, zipfile.ZipFile(to, "w", HOW[how]) as target:
        if how == "with-others":
            target.writestr("photos/", b"")
            target.writestr("../climbed.txt", b"out")
            target.writestr("/rooted.txt", b"out")
            target.writestr("notes/read me.txt", "äö")
        for info in source.infolist():
            target.writestr(info.filename, source.read(info))


def front(path):
    """By the headers before each file alone (APPNOTE 4.3.7)."""
    data, at, found = open(path, "rb").read(), 0, []
    while data[at : at + 4] == b"PK\x03\x04":
        flags, method, _, _, crc, packed, size, name, more = struct.unpack("<HHHHIIIHH", data[at + 6 : at + 30])
        assert not flags & 8 and method == 0 and packed == size, "its size does not stand before it"
        start = at + 30 + name + more
        found.append(told(data[at + 30 : at + 30 + name].decode("utf-8"), data[start : start + size]))
        at = start + size
    assert data[at : at + 4] in (b"PK\x01\x02", b"PK\x05\x06"), "something else between"
    return found


def main():
    what, path = sys.argv[1], sys.argv[2]
    if what == "read":
        print(json.dumps(read(path)))
    elif what == "front":
        print(json.dumps(front(path)))
    else:
        again(path, sys.argv[3], sys.argv[4])


if __name__ == "__main__":
    main()
