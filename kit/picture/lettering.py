"""The room that text takes, and what two boxes of text share.

What is written has real fractions (`kit.units.set_fractions`), and its room is that of the text so set. Pens have no
font metrics at hand, so widths are taken from a small table measured on DejaVu Sans, the widest
of the fonts a booklet falls back to; a narrower font leaves a little more air.
"""

from __future__ import annotations

import math

from kit.units import set_fractions

Box = tuple[float, float, float, float]

LEAST = 3.5
"""The smallest type (em) in mm on printed pieces; its capitals are 2.5 mm high in DejaVu Sans."""
_LONG = 13
"""Letters from which a name of several words stands in two lines."""
LINE_HEIGHT = 1.18
"""The height of a line of text per em."""

_WIDTH = {
    **dict.fromkeys("ijl.,:;'|!", 0.33),
    **dict.fromkeys(" ()/[]-ftI", 0.40),
    **dict.fromkeys('rsc"', 0.50),
    **dict.fromkeys("mwMW%", 0.95),
    **dict.fromkeys("ABCDEFGHKLNOPQRSTUVXYZ", 0.70),
    **dict.fromkeys("½¼¾⅛⅜⅝⅞", 0.97),
    **dict.fromkeys("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", 0.41),
    "\N{FRACTION SLASH}": 0.17,
}
_OTHER = 0.62


def text_width(text: str, size: float, bold: bool = False) -> float:
    """Width of `text` as it is set, in the unit of `size` (the em)."""
    text = set_fractions(text) if "/" in text else text
    width = sum([_WIDTH.get(letter, _OTHER) for letter in text])
    return width * size * (1.12 if bold else 1.0)


def text_box(x: float, y: float, width: float, height: float, angle: float) -> Box:
    """Bounds of a `width` x `height` box centred at x, y and turned by `angle` radians."""
    if angle:
        c, s = abs(math.cos(angle)), abs(math.sin(angle))
        width, height = width * c + height * s, width * s + height * c
    return (x - width / 2, y - height / 2, x + width / 2, y + height / 2)


def overlap(a: Box, b: Box) -> float:
    """Shared area of two boxes."""
    w = min(a[2], b[2]) - max(a[0], b[0])
    h = min(a[3], b[3]) - max(a[1], b[1])
    return w * h if w > 0 and h > 0 else 0.0


def upright(angle: float) -> float:
    """`angle` turned by half a turn where text would stand on its head: -90 deg < result <= 90 deg."""
    angle = math.remainder(angle, 2 * math.pi)
    if angle > math.pi / 2 + 1e-6:
        return angle - math.pi
    if angle <= -math.pi / 2 + 1e-6:
        return angle + math.pi
    return angle


Turned = tuple[float, float, float, float, float]
"""A box of text: its middle x and y, its width, height and angle."""


def turned_overlap(a: Turned, b: Turned) -> float:
    """Shared area of two turned boxes; where both are turned, that of the upright boxes around them, but nothing when
    a line parts the two."""
    shared = overlap(text_box(*a), text_box(*b))
    if shared == 0.0 or (a[4] == 0.0 and b[4] == 0.0):
        return shared
    dx, dy = b[0] - a[0], b[1] - a[1]
    for angle in (a[4], b[4]):
        for x, y in ((math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))):
            if abs(dx * x + dy * y) >= _reach(a, x, y) + _reach(b, x, y):
                return 0.0
    return shared


def _reach(box: Turned, x: float, y: float) -> float:
    """How far a box reaches from its middle in the direction x, y."""
    c, s = math.cos(box[4]), math.sin(box[4])
    return abs(c * x + s * y) * box[2] / 2 + abs(c * y - s * x) * box[3] / 2


def in_two(name: str) -> str:
    """A long name in two lines of about the same length.

    >>> in_two("Back neck facing"), in_two("Front")
    ('Back neck\\nfacing', 'Front')
    """
    words = name.split(" ")
    if len(name) < _LONG or len(words) < 2:
        return name
    splits: list[tuple[str, str]] = [(" ".join(words[:n]), " ".join(words[n:])) for n in range(1, len(words))]
    upper, lower = min(splits, key=lambda two: (max(len(two[0]), len(two[1])), -len(two[0])))
    return f"{upper}\n{lower}"
