"""How much cloth to buy, from a simple lay of the pieces' bounding boxes.

Nothing is turned off its grain and no piece is tucked into another's hollow, so the length is safe rather
than thrifty. Two lays are tried: folded lengthwise (pieces on the fold at the fold, pairs cut through both
layers, single layers below on the opened cloth) and opened out flat; the shorter one counts. No piece is turned
round: a fold along the cloth keeps its direction in both layers, so the lay suits a nap.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Nap
from kit.piece.strips import SELVEDGE

GAP = 10.0  # mm between pieces


@dataclass(frozen=True)
class Box:
    """A piece's bounding box with its allowances: `along` the lengthwise grain and `across` it, in mm, of
    the paper piece (half a piece when it goes `on_fold`). `count` layers are cut; `single` when each is laid on
    the opened cloth, as what is cut right side up must be."""

    name: str
    along: float
    across: float
    count: int = 1
    on_fold: bool = False
    mirrored: bool = False
    single: bool = False


@dataclass(frozen=True)
class Need:
    """The `length` of cloth (mm) for one cloth `width` (mm), and the lay that needs it."""

    width: float
    length: float
    lay: Literal["folded", "flat"]


def need(boxes: tuple[Box, ...], width: float) -> Need:
    """Cloth for `boxes` at cloth `width` (mm). Raises `KitError` when a piece is wider than the cloth.

    >>> need((Box("front", 700.0, 260.0, on_fold=True), Box("back", 720.0, 250.0, on_fold=True)), 1400.0)
    Need(width=1400.0, length=720.0, lay='flat')
    """
    flat = _flat(boxes, width)
    folded = _folded(boxes, width)
    if folded is not None and folded <= flat + 1e-6:
        return Need(width, folded, "folded")
    return Need(width, flat, "flat")


def _flat(boxes: tuple[Box, ...], width: float) -> float:
    rectangles = []
    for box in boxes:
        across = box.across * 2 if box.on_fold else box.across
        if across > width - 2 * SELVEDGE:
            raise KitError(
                message("refusal.cloth_narrow", piece=box.name, across=measured(across), width=measured(width)),
                do=message("refusal.cloth_narrow_do"),
            )
        rectangles += [(box.along, across, False)] * box.count
    return _rows(rectangles, width - 2 * SELVEDGE)


def _folded(boxes: tuple[Box, ...], width: float) -> float | None:
    half = width / 2 - SELVEDGE
    doubled: list[tuple[float, float, bool]] = []
    single: list[Box] = []
    for box in boxes:
        if box.on_fold:
            if box.across > half:
                return None
            doubled += [(box.along, box.across, True)] * box.count
            continue
        if box.single:
            single += [Box(box.name, box.along, box.across)] * box.count
            continue
        pairs, rest = divmod(box.count, 2)
        if box.across > half:
            return None
        doubled += [(box.along, box.across, False)] * pairs
        if rest:
            single.append(Box(box.name, box.along, box.across))
    length = _rows(doubled, half)
    return length + (_flat(tuple(single), width) + GAP if single else 0.0)


def _rows(rectangles: list[tuple[float, float, bool]], width: float) -> float:
    """Length used when (along, across, at the fold) rectangles lie in rows."""
    return max(
        (begin + item[0] for (_, begin), item in zip(rows(rectangles, width), rectangles, strict=True)), default=0.0
    )


def rows(rectangles: list[tuple[float, float, bool]], width: float) -> list[tuple[float, float]]:
    """Where (along, across, at the fold) rectangles lie when they are laid one after another, longest first, each as
    near the beginning of the cloth as it goes: (place across, place along) of each, in the order given."""
    placed: list[tuple[float, float, float]] = []  # from, to across the cloth; end along it
    found = [(0.0, 0.0)] * len(rectangles)
    order = sorted(
        range(len(rectangles)), key=lambda at: (not rectangles[at][2], -rectangles[at][0], -rectangles[at][1])
    )
    for each in order:
        along, across, fold = rectangles[each]
        # A rectangle is tried at the selvedge and against the right side of each one laid already: in rows filled
        # from the left, the best place is always one of these.
        places = [0.0] if fold else sorted({0.0, *(right for _, right, _ in placed)})
        best: tuple[float, float] | None = None
        for left in places:
            if left and left + across > width + 1e-6:
                continue
            right = left + across + GAP
            begin = max((end for a, b, end in placed if a < right - 1e-6 and b > left + 1e-6), default=0.0)
            if best is None or (begin, left) < best:
                best = (begin, left)
        begin, left = best or (max((end for _, _, end in placed), default=0.0), 0.0)
        placed.append((left, left + across + GAP, begin + along + GAP))
        found[each] = (left, begin)
    return found


def nap_note(nap: Nap) -> str:
    """What the cloth's nap or print asks of the lay, in words; empty when it has none."""
    return "" if nap == "none" else say("cloth.print" if nap == "print" else "cloth.nap")
