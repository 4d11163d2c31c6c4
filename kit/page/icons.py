"""The icon a page has on a phone's home screen: a needle's thread on the kit's dark ink, drawn here dot by dot."""

from __future__ import annotations

import math
import struct
import zlib

_GROUND, _PAPER, _THREAD = (31, 45, 58), (246, 242, 234), (214, 110, 76)


def icon(side: int) -> bytes:
    """A square PNG, `side` px: a sheet with a curved seam, stitched. All of it lies within the middle four fifths, so
    that a phone may cut the corners round."""
    rows = []
    for y in range(side):
        row = bytearray([0])
        for x in range(side):
            row += bytes(_colour((x + 0.5) / side, (y + 0.5) / side, 1.5 / side))
        rows.append(bytes(row))
    head = struct.pack(">IIBBBBB", side, side, 8, 2, 0, 0, 0)
    return (
        b"\x89PNG\r\n\x1a\n"
        + _chunk(b"IHDR", head)
        + _chunk(b"IDAT", zlib.compress(b"".join(rows), 9))
        + _chunk(b"IEND", b"")
    )


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def _colour(x: float, y: float, soft: float) -> tuple[int, int, int]:
    """The colour at a place, 0 to 1 across and down; edges are `soft` wide."""
    # A front with a scooped neck: left edge straight, right edge swung in at the waist.
    right = 0.72 - 0.07 * math.sin((y - 0.2) / 0.6 * math.pi)
    neck = 0.2 + 0.16 * max(0.0, 1 - ((x - 0.28) / 0.22) ** 2) ** 0.5 if x < 0.5 else 0.2
    inside = min(x - 0.28, right - x, y - neck, 0.8 - y)
    colour = _mixed(_GROUND, _PAPER, inside / soft + 0.5)
    seam = abs(x - (right - 0.075))
    if 0.26 < y < 0.8 and math.fmod(y - 0.26, 0.085) < 0.055:
        colour = _mixed(colour, _THREAD, (0.013 - seam) / soft + 0.5)
    return colour


def _mixed(one: tuple[int, int, int], other: tuple[int, int, int], share: float) -> tuple[int, int, int]:
    share = min(max(share, 0.0), 1.0)
    r, g, b = (round(a + (c - a) * share) for a, c in zip(one, other, strict=True))
    return r, g, b
