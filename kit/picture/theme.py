"""The ink of every picture, declared once.

The palette is our own: calm paper, deep ink, one accent. Cloth is told apart by a tint *and* a pattern, so
that a grey printer or colour-blind eyes lose nothing. Widths, dashes and letter heights are CSS pixels (1/96
inch) on the finished picture. `contrast` is the WCAG 2.2 contrast ratio, which the tests hold the palette to.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

Motif = Literal["", "dots", "hatch", "cross", "rings", "bars", "posts"]

PAPER = "#ffffff"
INK = "#1f2d3a"
ACCENT = "#a8391b"
GREY = "#6d757c"
PALE = "#8a9299"
CHECK = "#2c5f8d"


@dataclass(frozen=True)
class Line:
    """How a stroke role is inked: colour, width and dash lengths in CSS px."""

    colour: str
    width: float
    dash: tuple[float, ...] = ()
    round: bool = True


@dataclass(frozen=True)
class Cloth:
    """How a fill role is inked: a flat `tint`, and a `motif` of `ink` repeated every `every` CSS px."""

    tint: str
    motif: Motif = ""
    ink: str = INK
    every: float = 8.0
    width: float = 0.8


@dataclass(frozen=True)
class Text:
    """How a label role is inked: colour, letter height in CSS px, and weight."""

    colour: str
    size: float
    bold: bool = False
    italic: bool = False


_LINES: Mapping[str, Line] = MappingProxyType(
    {
        "cut": Line(INK, 1.8),
        "stitch": Line(INK, 0.9, (5, 3)),
        "fold": Line(INK, 1.4, (12, 3, 2, 3)),
        "grain": Line(INK, 1.1),
        "notch": Line(INK, 1.6),
        "mark": Line(INK, 1.0, (2, 2.5)),
        "symbol": Line(INK, 1.2),
        "lengthen": Line(INK, 0.8),
        "placement": Line(INK, 1.1, (7, 4)),
        "pleat": Line(INK, 1.1, (12, 4)),
        "leader": Line(INK, 0.7),
        "guide": Line(PALE, 0.8, (9, 3, 1.5, 3)),
        "new": Line(ACCENT, 2.6),
        "kept": Line(GREY, 1.0),
        "traced": Line(INK, 1.5),
        "aid": Line(ACCENT, 1.1),
        "sign": Line(ACCENT, 1.2),
        "check": Line(CHECK, 0.9),
        "lens": Line(GREY, 0.8),
        "removed": Line(PALE, 1.0, (3, 4)),
        "edge": Line(INK, 1.1),
        "crease": Line(INK, 2.3),
        "row_sign": Line(ACCENT, 2.0),
        "hidden": Line(INK, 0.8, (2, 3)),
        "row": Line(ACCENT, 2.2, (6, 3), False),
        "baste": Line(ACCENT, 1.8, (13, 7), False),
        "hand": Line(ACCENT, 2.0, (2, 7)),
        "old_row": Line(INK, 1.2, (6, 3), False),
        "press": Line(ACCENT, 2.0),
        "pin": Line(INK, 1.2),
        "trim": Line(GREY, 0.8, (1, 3)),
        "page": Line(PALE, 0.8),
        "measure": Line(INK, 0.8),
        "ply_face": Line(INK, 2.8, (), False),
        "ply_main": Line(INK, 1.0),
        "ply_facing": Line(INK, 1.0),
        "ply_interfacing": Line(INK, 1.0),
        "ply_strip": Line(INK, 1.0),
        "ply_lining": Line(INK, 1.0),
        "needle": Line(ACCENT, 2.0),
    }
)
_FILLS: Mapping[str, Cloth] = MappingProxyType(
    {
        "right_side": Cloth("#bcd3d1", "dots", "#45666a", 9.0, 1.3),
        "wrong_side": Cloth("#f4ead6", "hatch", "#a08455", 7.0, 0.9),
        "interfacing": Cloth("#ffffff", "cross", "#7f8b94", 6.0, 0.7),
        "facing": Cloth("#dccfe0", "rings", "#7d6388", 9.0, 0.9),
        "strip": Cloth("#d9dfbd", "bars", "#75803f", 7.0, 0.9),
        "lining": Cloth("#e6d9cf", "posts", "#8a6a55", 8.0, 0.9),
        "paper": Cloth(PAPER),
        "frame": Cloth("#ffffff"),
    }
)
_TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "name": Text(INK, 12.5),
        "small": Text(INK, 11.0),
        "measure": Text(INK, 11.0),
        "number": Text(INK, 22.0, bold=True),
        "title": Text(INK, 16.0, bold=True),
        "ghost": Text(GREY, 12.5, italic=True),
        "new": Text(ACCENT, 12.5, bold=True),
        "order": Text(PAPER, 11.0, bold=True),
    }
)


@dataclass(frozen=True)
class Theme:
    """All ink by role. `ply` names the cloth fill of each cross-section role."""

    paper: str = PAPER
    ink: str = INK
    accent: str = ACCENT
    font: str = "'Source Sans 3','Noto Sans','DejaVu Sans',sans-serif"
    lines: Mapping[str, Line] = field(default_factory=lambda: _LINES)
    fills: Mapping[str, Cloth] = field(default_factory=lambda: _FILLS)
    texts: Mapping[str, Text] = field(default_factory=lambda: _TEXTS)
    ply: Mapping[str, str] = field(
        default_factory=lambda: MappingProxyType(
            {
                "ply_main": "right_side",
                "ply_facing": "facing",
                "ply_interfacing": "interfacing",
                "ply_strip": "strip",
                "ply_lining": "lining",
            }
        )
    )


THEME = Theme()


def luminance(colour: str) -> float:
    """Relative luminance of "#rrggbb", 0 black to 1 white (WCAG 2.2, "relative luminance")."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 to 21 (WCAG 2.2, "contrast ratio")."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)
