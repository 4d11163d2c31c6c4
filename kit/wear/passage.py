"""Whether there is a way on: over the head, stepped into, or open all the way; and if not, where it is too small.

At every height the garment lets through its girth, and twice as much as is open from there to the nearer shut end of a
zip or slit: the loop that a tape makes round the opened garment. A neck lets through what lies round it when opened.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from kit.sewing.operations.bands import SetBand
from kit.sewing.operations.drawn_in import JOIN, ThreadElastic
from kit.sewing.order import operations
from kit.sewing.spans import run_length, sides_of
from kit.wear.edges import Loop
from kit.wear.girth import Worn
from kit.wear.needs import HIP_GIVES, SHOULDERS, taken

STRETCHED = 2.0
"""How far elastic can be stretched, as times its length (common practice, no source)."""
_STEP = 15.0  # mm between the heights that are looked at
_ENOUGH = 5.0  # mm by which an opening may miss: cloth and tape give as much
Way = Literal["over", "into"]


@dataclass(frozen=True)
class Narrow:
    """Where a way on is too small: `need` mm must pass because the body's `part` is `girth` mm round, and `has` mm do.
    `height` above the waist; None: at the neck. `drawn`: elastic holds it there."""

    part: str
    girth: float
    need: float
    has: float
    height: float | None
    drawn: bool = False

    @property
    def missing(self) -> float:
        return self.need - self.has


@dataclass(frozen=True)
class OpenSlit:
    """What opens from `low` to `high` mm above the waist; `low_open`, `high_open`: it runs out at an edge there."""

    low: float
    high: float
    low_open: bool
    high_open: bool

    def opens(self, height: float) -> float:
        """mm that it adds to the girth at a height."""
        if not self.low <= height <= self.high:
            return 0.0
        ends = [height - self.low] * (not self.low_open) + [self.high - height] * (not self.high_open)
        return 2 * min(ends, default=1e6)


def slits(worn: Worn) -> list[OpenSlit]:
    """The zips and slits along the trunk."""
    found: list[OpenSlit] = []
    torso = {piece.name: piece for piece in worn.torso}
    low, high = worn.span
    for loop in worn.edges.open:
        for stretch in loop.stretches:
            if stretch.piece not in torso or not (stretch.zip or stretch.slit):
                continue
            piece = torso[stretch.piece]
            path = piece.edge(stretch.edge).path
            if stretch.slit:
                y = worn.up(piece, path.at(stretch.start).y)
                deep = stretch.length / 2
                top = y > (low + high) / 2
                found.append(OpenSlit(y - deep, y, False, True) if top else OpenSlit(y, y + deep, True, False))
                continue
            goes_on = any(not each.zip for each in loop.stretches)
            ends = []
            for at, corner in ((stretch.start, stretch.start < 1.0), (stretch.end, stretch.end > path.length - 1.0)):
                ends.append((worn.up(piece, path.at(at).y), corner and goes_on))
            (below, below_open), (above, above_open) = sorted(ends)
            slit = OpenSlit(below, above, below_open, above_open)
            if not any(abs(slit.low - other.low) < 5.0 and abs(slit.high - other.high) < 5.0 for other in found):
                found.append(slit)
    return found


def ways_on(worn: Worn) -> dict[Way, tuple[Narrow, ...]]:
    """For each way on where it is too small: nothing where it lets everything through. Empty where the garment opens
    all the way, or is not known to go round the body."""
    if not worn.torso or opens_all_the_way(worn) or not goes_round(worn):
        return {}
    top = next((loop for loop in worn.edges.open if is_top(worn, loop)), None)
    if top is None:
        return {}
    found: dict[Way, tuple[Narrow, ...]] = {}
    if not worn.legs:
        found["over"] = tuple(_over(worn, top))
    found["into"] = tuple(_into(worn, top))
    return found


def opens_all_the_way(worn: Worn) -> bool:
    """Whether one loop runs along the upper and the lower end of the garment, its zips open: a wrap, a front that opens
    from neck to hem."""
    lower = {"hem", "hip", "waist"} if has_neck(worn) else {"hem", "hip"}
    return any(is_top(worn, loop) and _own(loop) & lower for loop in worn.edges.open)


def has_neck(worn: Worn) -> bool:
    """Whether the garment reaches up to the neck."""
    return any("neck" in loop.roles for loop in worn.edges.open)


def _own(loop: Loop) -> frozenset[str]:
    """What its edges are, but for the sides of zips."""
    return frozenset().union(*(stretch.roles for stretch in loop.stretches if not stretch.zip))


def goes_round(worn: Worn) -> bool:
    """Whether the garment is a ring round the body somewhere."""
    low, high = worn.span
    middle = [worn.round(low + share * (high - low)) for share in (0.1, 0.3, 0.5, 0.7)]
    return any(each is not None and each.closed for each in middle)


def is_top(worn: Worn, loop: Loop) -> bool:
    """Whether a loop is the neck, or the upper end of what has no neck."""
    if loop.arm or worn.is_slot(loop):
        return False
    if "neck" in loop.roles:
        return True
    return "waist" in loop.roles and not has_neck(worn)


def ends(worn: Worn, top: Loop) -> tuple[float, float]:
    """Between which heights the garment is whole: from the highest place of its lower edge to the lowest of its upper
    one."""
    low, high = worn.span
    lower = [y for loop in worn.edges.open if loop is not top and not loop.arm for y in _heights(worn, loop)]
    if not has_neck(worn):
        high = min((y for y in _heights(worn, top) if y > (low + high) / 2), default=high)
    return max((y for y in lower if y < low + 0.25 * (high - low)), default=low) + 2.0, high - 2.0


def _heights(worn: Worn, loop: Loop) -> list[float]:
    """The heights of the ends of a loop's stretches, those of bands taken from the edges they are sewn to."""
    found: list[float] = []
    torso = {piece.name: piece for piece in worn.torso}
    named: list[tuple[str, tuple[str, ...]]] = [
        (stretch.piece, (stretch.edge,)) for stretch in loop.stretches if not stretch.zip
    ]
    for joint in worn.edges.joints:
        for row, other in ((joint.a, joint.b), (joint.b, joint.a)):
            if row[0].piece in loop.pieces and row[0].piece not in torso:
                named += [(run.piece, run.edges) for run in other]
    for name, edges in named:
        for edge in edges if name in torso else ():
            path = torso[name].edge(edge).path
            found += [worn.up(torso[name], path.start.y), worn.up(torso[name], path.end.y)]
    return found


def lets_through(worn: Worn, height: float, opened: list[OpenSlit]) -> float | None:
    """mm that pass the garment at a height, opened; None where it is no ring there."""
    at = worn.round(height)
    if at is None:
        return None
    girth = min(at.girth, drawn_girth(worn, height) or at.girth)
    return girth * worn.gives + sum(slit.opens(height) for slit in opened)


def drawn_girth(worn: Worn, height: float) -> float | None:
    """mm that elastic at a height lets through, stretched; None where there is none within 3 cm."""
    for _, operation in operations(worn.pattern):
        if isinstance(operation, ThreadElastic):
            for run in operation.edges:
                piece = next((piece for piece in worn.torso if piece.name == run.piece), None)
                path = None if piece is None else piece.edge(run.edges[0]).path
                if piece is None or path is None:
                    continue
                if abs(worn.up(piece, (path.start.y + path.end.y) / 2) - height) < 30.0:
                    return operation.length * STRETCHED
    return None


def waist_edge(worn: Worn) -> float | None:
    """mm round the upper edge of what hangs from the waist: of its elastic, of its band without the overlap, or of the
    edge itself; None where it has no such edge, or one that wraps."""
    if not worn.torso or has_neck(worn) or opens_all_the_way(worn):
        return None
    for _, operation in operations(worn.pattern):
        if isinstance(operation, ThreadElastic) and at_waist(worn, operation):
            return operation.length - (JOIN if operation.ring else 0.0)
    for _, operation in operations(worn.pattern):
        if isinstance(operation, SetBand) and at_waist(worn, operation):
            return sum(run_length(worn.pattern, run) * len(sides_of(worn.pattern, run)) for run in operation.a)
    top = next((loop for loop in worn.edges.shut if is_top(worn, loop)), None)
    if top is None:
        return None
    return sum(stretch.length for stretch in top.stretches if "waist" in stretch.roles and not stretch.slit)


def at_waist(worn: Worn, operation: ThreadElastic | SetBand) -> bool:
    """Whether elastic or a band is set to an upper edge at the waist."""
    runs = operation.edges if isinstance(operation, ThreadElastic) else operation.b
    return any(worn.pattern.piece(run.piece).edge(edge).role == "waist" for run in runs for edge in run.edges)


def _over(worn: Worn, top: Loop) -> Iterator[Narrow]:
    """Over the head: from the hem up everything passes bust and shoulders, and the head goes through the neck."""
    bust, head, through = taken(worn.body, "bust_girth"), taken(worn.body, "head_girth"), top.length * worn.gives
    if "neck" in top.roles and head is not None and through < head - _ENOUGH:
        yield Narrow("head_girth", head, head, through, None)
    if bust is None:
        return
    low, high = ends(worn, top)
    upper = min(worn.heights.get("bust", high), worn.underarm - 2.0, high) if "neck" in top.roles else high
    narrow = tuple(_narrowest(worn, low, upper, "bust_girth", bust, bust * SHOULDERS))
    yield from narrow or _edge(worn, top, high, "bust_girth", bust, bust * SHOULDERS)


def _into(worn: Worn, top: Loop) -> Iterator[Narrow]:
    """Stepped into: everything from its upper end down to the hip passes the hips."""
    hip = taken(worn.body, "hip_girth")
    if hip is None or "hip" not in worn.heights:
        return
    low, high = ends(worn, top)
    need = hip * (1.0 - HIP_GIVES)
    if "neck" in top.roles and top.length * worn.gives < need - _ENOUGH:
        yield Narrow("hip_girth", hip, need, top.length * worn.gives, None)
    upper = min(worn.underarm - 2.0, high) if "neck" in top.roles else high
    lower = max(low, worn.heights["hip"], worn.crotch)
    narrow = tuple(_narrowest(worn, lower, upper, "hip_girth", hip, need))
    yield from narrow or _edge(worn, top, high, "hip_girth", hip, need)


def _edge(worn: Worn, top: Loop, height: float, part: str, girth: float, need: float) -> Iterator[Narrow]:
    """The upper edge of what has no neck, where less passes it, opened, than is needed. Of cloth cut round, as a circle
    skirt, the edge itself tells what a level cut through the flat piece does not. Elastic is seen by the cut."""
    around = waist_edge(worn)
    if around is None or any(isinstance(operation, ThreadElastic) for _, operation in operations(worn.pattern)):
        return
    opened = sum(stretch.length for stretch in top.stretches if stretch.zip or stretch.slit)
    through = around * worn.gives + opened
    if through < need - _ENOUGH:
        yield Narrow(part, girth, need, through, height)


def _narrowest(worn: Worn, low: float, high: float, part: str, girth: float, need: float) -> Iterator[Narrow]:
    """The place between two heights where most is missing, if anything is."""
    opened = slits(worn)
    heights = [low + _STEP * step for step in range(int(max(high - low, 0.0) / _STEP) + 1)]
    heights += [high, *(end for slit in opened for end in (slit.low - 1.0, slit.high - 1.0) if low <= end <= high)]
    worst: Narrow | None = None
    for height in heights:
        through = lets_through(worn, height, opened)
        if through is not None and through < need - _ENOUGH and (worst is None or through < worst.has):
            worst = Narrow(part, girth, need, through, height, drawn_girth(worn, height) is not None)
    if worst is not None:
        yield worst
