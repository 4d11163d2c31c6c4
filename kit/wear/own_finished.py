"""A lesson's own finished measurements against the girth each goes over, where no line of the garment need tell how it
hangs; and why a garment was not tried on a body."""

from __future__ import annotations

from collections.abc import Iterable

from kit.body.measures import MEASUREMENTS
from kit.diagnostic import Diagnostic, Message, list_of, measure, measured, message
from kit.sewing.operations.buttons import OnMarks
from kit.sewing.operations.drawn_in import Thread
from kit.sewing.operations.plackets import Placket
from kit.sewing.operations.strips import OnRun
from kit.sewing.operations.zips import Zip
from kit.sewing.order import operations
from kit.wear.edges import Loop
from kit.wear.girth import Worn
from kit.wear.levels import GIRTHS, HEIGHTS, line_height
from kit.wear.told import told

_ENOUGH = 5.0  # mm by which it may be smaller: cloth and tape give as much
_SAME = 5.0  # mm within which a measurement and an edge that is left are one
_OPENS = (Zip, Placket, OnMarks, OnRun, Thread)
"""What opens a garment or makes it as wide as it is tied: zips, plackets, buttons, straps and ties, cords, elastic."""


def finished_small(worn: Worn, found: Iterable[Diagnostic]) -> list[Diagnostic]:
    """Finished measurements that come out smaller than the girth they go over. An error where the measurement is that
    of a whole edge, with all that opens there open; a warning where it is not, nothing of the garment opens, and no
    line tells how it hangs. What `found` already tells as an error, of the girth or of the edge, is not told again."""
    values = dict(worn.pattern.finished)
    errors = [each for each in found if each.level == "error"]
    known = {name for each in errors for name in each.measures}
    places = {(each.piece, each.edge) for each in errors}
    small: list[Diagnostic] = []
    for title, name in worn.pattern.over:
        if title not in values or name not in worn.body or name in known or not _is_girth(worn, name):
            continue
        has, need = values[title], worn.body[name]
        if has * worn.gives >= need - _ENOUGH:
            continue
        ring = _ring(worn, has)
        if ring is None and (worn.hung is not None or _opens(worn)):
            continue
        if ring is not None and places & {(stretch.piece, stretch.edge) for stretch in ring.stretches}:
            continue
        missing = need - has * worn.gives
        does = "ring" if ring is not None else "whole"
        says = message(
            f"wear.finished_small_{does}",
            title=title,
            part=measure(name),
            need=measured(need),
            has=measured(has * worn.gives),
            amount=measured(missing),
        )
        small.append(
            told(
                "finished_small",
                "error" if ring is not None else "warning",
                says,
                message("wear.finished_small_do", amount=measured(missing), half=measured(missing / 2, "least")),
                amount=missing,
                piece=ring.stretches[0].piece if ring is not None else "",
                edge=ring.stretches[0].edge if ring is not None else "",
                measures=(name,),
            )
        )
    return small


def _is_girth(worn: Worn, name: str) -> bool:
    own = {each.name: each for each in worn.pattern.lesson.measurements}
    row = own.get(name) or MEASUREMENTS.get(name)
    return row is not None and row.kind == "girth"


def _ring(worn: Worn, long: float) -> Loop | None:
    """The edge, its zips open, that is as long as a measurement: a slit or zip in it would make it longer."""
    return next((loop for loop in worn.edges.open if abs(loop.length - long) < _SAME), None)


def _opens(worn: Worn) -> bool:
    """Whether anything of the garment opens, or holds it as it is tied."""
    slit = any(stretch.slit for loop in worn.edges.open for stretch in loop.stretches)
    return slit or any(isinstance(operation, _OPENS) for _, operation in operations(worn.pattern))


def untried(worn: Worn) -> Message | None:
    """Why nothing could be said of the garment at its levels: no line tells where they are, or the body has not the
    measures. None where it was tried on, and of what is not worn: nothing of it is measured on a body, as of a bag."""
    pieces, pattern = worn.edges.worn, worn.pattern
    used = {name for step in pattern.steps for name in step.uses} | {name for _, name in pattern.over}
    on_body = any(name in worn.body and _is_girth(worn, name) for name in used)
    if not pieces or not on_body or any(piece.guide_of("head_line") is not None for piece in pieces):
        return None
    if worn.hung is None:
        drawn = [level for level in HEIGHTS if any(line_height(piece, level) is not None for piece in pieces)]
        lack = [measure(name) for level in drawn for name in HEIGHTS[level] if name not in worn.body]
        return message("wear.untried_measures", measures=list_of(lack)) if lack else message("wear.untried_lines")
    if not any(GIRTHS[level] in worn.body for level in ("bust", "waist", "hip")):
        wanted = list_of(measure(GIRTHS[level]) for level in ("bust", "waist", "hip"))
        return message("wear.untried_girths", measures=wanted)
    return None
