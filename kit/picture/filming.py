"""The ink of pictures that are filmed: bolder and larger than in print, and free of paper where a ground is chosen.

On a flat ground that will be keyed out, everything that was paper becomes that ground, so that nothing but ink and
cloth is left when it is taken away. Greys are darkened until they stand out from ground and paper; the accent stays,
for what is new must be told apart.
"""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

from kit.picture.theme import INK, PAPER, THEME, Theme, contrast

GROUNDS = MappingProxyType({"paper": PAPER, "white": "#ffffff", "green": "#00b140", "blue": "#2f86ff"})
"""Grounds by name; "paper" is the picture on its page, the others are flat. Green and blue are saturated, as keying
wants them, and far from every tint of the cloth palette."""

LETTERS, LINES = 1.3, 1.45
LEAST = 4.5
"""The least contrast of lines and letters (WCAG 2.2, success criterion 1.4.3)."""


def filming(ground: str = PAPER, base: Theme = THEME) -> Theme:
    """`base` for filming on `ground` ("#rrggbb"): strokes 1.45 and letters 1.3 times as large, and no ink but the
    accent with less contrast than 4.5 to white paper or to the ground, where ink can have so much."""

    def dark(colour: str) -> str:
        # White stands on a sign of the accent's own, such as the number of a stroke, and would be lost there.
        return colour if colour in (base.accent, PAPER) else _dark(colour, ground)

    lines = {
        role: replace(ink, colour=dark(ink.colour), width=ink.width * LINES, dash=tuple(d * LINES for d in ink.dash))
        for role, ink in base.lines.items()
    }
    texts = {role: replace(ink, colour=dark(ink.colour), size=ink.size * LETTERS) for role, ink in base.texts.items()}
    flat = {role: replace(cloth, tint=ground) for role, cloth in base.fills.items() if role in ("paper", "frame")}
    return replace(
        base,
        paper=ground,
        lines=MappingProxyType(lines),
        texts=MappingProxyType(texts),
        fills=MappingProxyType({**base.fills, **flat}),
    )


def _dark(colour: str, ground: str) -> str:
    """`colour`, mixed with the ink until it stands out."""
    parts, deep = ([int(c[i : i + 2], 16) for i in (1, 3, 5)] for c in (colour, INK))
    mixed = colour
    for share in range(1, 11):
        if min(contrast(mixed, PAPER), contrast(mixed, ground)) >= LEAST:
            break
        mixed = "#" + "".join(f"{round(a + (b - a) * share / 10):02x}" for a, b in zip(parts, deep, strict=True))
    return mixed
