"""The ink of every picture, declared once.

The palette is our own: calm paper, deep ink, one accent. Cloth is told apart by a tint *and* a pattern, so
that a grey printer or colour-blind eyes lose nothing. Widths, dashes and letter heights are CSS pixels (1/96
inch) on the finished picture. `contrast` is the WCAG 2.2 contrast ratio, which the tests hold the palette to.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
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
class LineInk:
    """How a stroke role is inked: colour, width and dash lengths in CSS px."""

    colour: str
    width: float
    dash: tuple[float, ...] = ()
    round: bool = True


@dataclass(frozen=True)
class FillInk:
    """How a fill role is inked: a flat `tint`, and a `motif` of `ink` repeated every `every` CSS px."""

    tint: str
    motif: Motif = ""
    ink: str = INK
    every: float = 8.0
    width: float = 0.8


@dataclass(frozen=True)
class TextInk:
    """How a label role is inked: colour, letter height in CSS px, and weight."""

    colour: str
    size: float
    bold: bool = False
    italic: bool = False


_LINES: Mapping[str, LineInk] = MappingProxyType(
    {
        "cut": LineInk(INK, 1.8),
        "stitch": LineInk(INK, 0.9, (5, 3)),
        "fold": LineInk(INK, 1.4, (12, 3, 2, 3)),
        "grain": LineInk(INK, 1.1),
        "notch": LineInk(INK, 1.6),
        "mark": LineInk(INK, 1.0, (2, 2.5)),
        "symbol": LineInk(INK, 1.2),
        "lengthen": LineInk(INK, 0.8),
        "placement": LineInk(INK, 1.1, (7, 4)),
        "pleat": LineInk(INK, 1.1, (12, 4)),
        "leader": LineInk(INK, 0.7),
        "guide": LineInk(PALE, 0.8, (9, 3, 1.5, 3)),
        "new": LineInk(ACCENT, 2.6),
        "kept": LineInk(GREY, 1.0),
        "traced": LineInk(INK, 1.5),
        "aid": LineInk(ACCENT, 1.1),
        "sign": LineInk(ACCENT, 1.2),
        "check": LineInk(CHECK, 0.9),
        "lens": LineInk(GREY, 0.8),
        "removed": LineInk(PALE, 1.0, (3, 4)),
        "edge": LineInk(INK, 1.1),
        "crease": LineInk(INK, 2.3),
        "row_sign": LineInk(ACCENT, 2.0),
        "hidden": LineInk(INK, 0.8, (2, 3)),
        "row_ground": LineInk(PAPER, 4.0, (), False),
        "row": LineInk(ACCENT, 2.2, (6, 3), False),
        "baste": LineInk(ACCENT, 1.8, (13, 7), False),
        "hand": LineInk(ACCENT, 2.0, (2, 7)),
        "old_row": LineInk(INK, 1.2, (6, 3), False),
        "press": LineInk(ACCENT, 2.0),
        "pin": LineInk(INK, 1.2),
        "trim": LineInk(GREY, 0.8, (1, 3)),
        "page": LineInk(PALE, 0.8),
        "measure": LineInk(INK, 0.8),
        "ply_face": LineInk(INK, 2.8, (), False),
        "ply_main": LineInk(INK, 1.0),
        "ply_facing": LineInk(INK, 1.0),
        "ply_interfacing": LineInk(INK, 1.0),
        "ply_strip": LineInk(INK, 1.0),
        "ply_lining": LineInk(INK, 1.0),
        "needle": LineInk(ACCENT, 2.0),
    }
)
_FILLS: Mapping[str, FillInk] = MappingProxyType(
    {
        "right_side": FillInk("#bcd3d1", "dots", "#45666a", 9.0, 1.3),
        "wrong_side": FillInk("#f4ead6", "hatch", "#a08455", 7.0, 0.9),
        "interfacing": FillInk("#ffffff", "cross", "#7f8b94", 6.0, 0.7),
        "facing": FillInk("#dccfe0", "rings", "#7d6388", 9.0, 0.9),
        "strip": FillInk("#d9dfbd", "bars", "#75803f", 7.0, 0.9),
        "lining": FillInk("#e6d9cf", "posts", "#8a6a55", 8.0, 0.9),
        "paper": FillInk(PAPER),
        "frame": FillInk("#ffffff"),
    }
)
_TEXTS: Mapping[str, TextInk] = MappingProxyType(
    {
        "name": TextInk(INK, 12.5),
        "small": TextInk(INK, 11.0),
        "measure": TextInk(INK, 11.0),
        "number": TextInk(INK, 22.0, bold=True),
        "title": TextInk(INK, 16.0, bold=True),
        "ghost": TextInk(GREY, 12.5, italic=True),
        "new": TextInk(ACCENT, 12.5, bold=True),
        "order": TextInk(PAPER, 11.0, bold=True),
    }
)


@dataclass(frozen=True)
class Theme:
    """All ink by role. `ply` names the cloth fill of each cross-section role."""

    paper: str = PAPER
    ink: str = INK
    accent: str = ACCENT
    font: str = "'Source Sans 3','Noto Sans','DejaVu Sans',sans-serif"
    lines: Mapping[str, LineInk] = field(default_factory=lambda: _LINES)
    fills: Mapping[str, FillInk] = field(default_factory=lambda: _FILLS)
    texts: Mapping[str, TextInk] = field(default_factory=lambda: _TEXTS)
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


def in_inks(ink: str, accent: str, base: Theme = THEME) -> Theme:
    """`base` in two other inks: every line and text that was in its ink or accent."""
    inks = {base.ink: ink, base.accent: accent}
    return replace(
        base,
        ink=ink,
        accent=accent,
        lines={role: replace(line, colour=inks.get(line.colour, line.colour)) for role, line in base.lines.items()},
        texts={role: replace(text, colour=inks.get(text.colour, text.colour)) for role, text in base.texts.items()},
    )


def luminance(colour: str) -> float:
    """Relative luminance of "#rrggbb", 0 black to 1 white (WCAG 2.2, "relative luminance")."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 to 21 (WCAG 2.2, "contrast ratio")."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)
