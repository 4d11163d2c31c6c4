"""What cloth to buy, for every width and size, and how the pieces are laid on it."""

from __future__ import annotations

from kit.booklet.model import Table
from kit.cloth.cut_list import INTERFACING_WIDTH, boxes
from kit.cloth.need import need
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Cloth
from kit.units import both


def lengths(pattern: Pattern) -> Table | None:
    """The length of each cloth to buy in each width."""
    info, system = pattern.lesson, pattern.lesson.units
    rows: list[tuple[str, ...]] = []
    kinds: tuple[Cloth, ...] = ("main", "lining", "interfacing")
    for kind in kinds:
        cut = boxes(pattern, kind)
        if not cut:
            continue
        for width in (INTERFACING_WIDTH,) if kind == "interfacing" else info.cloth_widths:
            name, wide = say(f"booklet.cloth_{kind}"), both(width, system, "finished")
            try:
                found = need(cut, width)
            except KitError as error:
                rows.append((name, wide, say("booklet.too_narrow"), str(error)))
                continue
            rows.append((name, wide, both(found.length, system, "shop"), say(f"booklet.laid_{found.lay}")))
    head = tuple(say(f"booklet.{key}") for key in ("cloth", "width", "to_buy", "laid"))
    return Table(say("booklet.cloth_to_buy"), head, tuple(rows), note=say("booklet.lengths_note")) if rows else None
