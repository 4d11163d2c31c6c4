"""Findings: ties that do not meet, belts that do not go round, a neck strap the head does not pass, a wrap that gapes.

What is left of two ties is their length less the way from one fixed end round the body to the other. Cloth that goes
round more than once has wrapped its ends past one another, and the way is shorter by as much.
"""

from __future__ import annotations

from kit.diagnostic import Diagnostic, Level, measured, message, titled
from kit.lesson.pattern import SewRecord
from kit.piece.piece import Piece
from kit.sewing.operations.belt_loops import BeltLoop
from kit.sewing.operations.strips import AttachStrip
from kit.sewing.operations.ties import AttachHandle
from kit.sewing.order import operations
from kit.sewing.spans import path_of, sides_of
from kit.wear.girth import Worn
from kit.wear.needs import MEANS, taken
from kit.wear.told import told

KNOT = 200.0
"""mm that a knot and its two ends take together (common practice, no source)."""
BOW = 400.0
"""mm that a bow and its two ends take together (common practice, no source)."""
GATHERED = 1.15
"""How much more than the waist a belt goes round, at most, over a garment that it gathers (common practice, no
source)."""
WRAPPED = 100.0
"""mm by which the fronts of a wrap lie over one another, at least, where only ties hold them (common practice, no
source)."""


class _Tie:
    """Where ties are fixed: the record and operation, the height, and how many."""

    def __init__(self, record: SewRecord, operation: AttachStrip, height: float, count: int, piece: Piece) -> None:
        self.record, self.operation, self.height, self.count, self.piece = record, operation, height, count, piece


def ties(worn: Worn) -> list[Diagnostic]:
    """Pairs of ties that go round the body at the same height, and the wrap that they hold."""
    pairs: list[list[_Tie]] = []
    for tie in _fixed(worn):
        pair = next((pair for pair in pairs if abs(pair[0].height - tie.height) < 30.0), None)
        if pair is None:
            pairs.append([tie])
        else:
            pair.append(tie)
    found: list[Diagnostic] = []
    for pair in pairs:
        if sum(tie.count for tie in pair) == 2:
            found += _tied(worn, pair)
    return found


def _fixed(worn: Worn) -> list[_Tie]:
    """The ties on edges that are left open from above to below, as of a wrap or an apron."""
    found = []
    torso = {piece.name: piece for piece in worn.torso}
    for record, operation in operations(worn.pattern):
        if isinstance(operation, AttachStrip) and operation.to.piece in torso:
            piece = torso[operation.to.piece]
            path = path_of(worn.pattern, operation.to)
            height = worn.up(piece, path.at(min(operation.at, path.length)).y)
            found.append(_Tie(record, operation, height, len(sides_of(worn.pattern, operation.to)), piece))
    return found


def _tied(worn: Worn, pair: list[_Tie]) -> list[Diagnostic]:
    first = pair[0]
    height = min(tie.height for tie in pair) - 3.0
    at = worn.round(height) or worn.round(height - 30.0)
    waist = taken(worn.body, "waist_girth")
    if at is None or waist is None or not _at_free_edges(worn, pair):
        return []
    around = max(at.girth if at.closed else 0.0, waist)
    way = max(around - at.cloth if at.cloth < around else 2 * around - at.cloth, 0.0)
    strips = [worn.pattern.strip(tie.operation.name) for tie in pair for _ in range(tie.count)]
    long = sum(strip.finished_length or strip.length for strip in strips)
    left = long - way
    step, piece = first.record.key, first.piece.name
    values = {"strip": titled(strips[0].title), "long": measured(long), "way": measured(way)}
    found = []
    if left < KNOT:
        says = message("wear.ties_short", **values)
        can = message("wear.ties_short_do", each=measured((way + BOW) / len(strips)))
        found.append(told("ties_short", "error", says, can, amount=KNOT - left, step=step, piece=piece))
    elif left < BOW:
        says = message("wear.ties_no_bow", left=measured(left), **values)
        can = message("wear.ties_short_do", each=measured((way + BOW) / len(strips)))
        found.append(told("ties_no_bow", "warning", says, can, amount=BOW - left, step=step, piece=piece))
    double = at.cloth - around
    if at.closed and at.overlap and double < WRAPPED:
        says = message("wear.wrap_small", has=measured(max(double, 0.0)), least=measured(WRAPPED))
        can = message("wear.wrap_small_do", amount=measured(WRAPPED - double))
        found.append(told("wrap_small", "warning", says, can, amount=WRAPPED - double, step=step, piece=piece))
    return found


def _at_free_edges(worn: Worn, pair: list[_Tie]) -> bool:
    """Whether the edges the ties are fixed to are left: what goes round the body ends there."""
    left = {(s.piece, s.edge) for loop in worn.edges.open for s in loop.stretches if not worn.is_slot(loop)}
    return all((tie.piece.name, edge) in left for tie in pair for edge in tie.operation.to.edges)


def belts(worn: Worn) -> list[Diagnostic]:
    """Loose belts of a garment with belt loops, against the waist."""
    waist = taken(worn.body, "waist_girth")
    looped = any(isinstance(operation, BeltLoop) for _, operation in operations(worn.pattern))
    at = worn.round(worn.heights.get("waist", 0.0)) if worn.torso else None
    if waist is None or not looped or at is None:
        return []
    around = max(min(at.girth, waist * GATHERED), waist)
    found = []
    for strip in worn.pattern.strips:
        if strip.loose and strip.finished_length and strip.finished_length < around + KNOT:
            missing = around + KNOT - strip.finished_length
            says = message(
                "wear.belt_short",
                strip=titled(strip.title),
                long=measured(strip.finished_length),
                around=measured(around),
            )
            can = message("wear.belt_short_do", amount=measured(missing))
            found.append(told("belt_short", "error", says, can, amount=missing))
    return found


def straps(worn: Worn) -> list[Diagnostic]:
    """A strap fixed with both ends to an upper edge, as round the neck of an apron: the head goes through it. Of a
    draft that uses no measure of anybody it is told as a warning, by the mean head of women."""
    nobody = not worn.body.measures
    head = MEANS["head_girth"] if nobody else taken(worn.body, "head_girth")
    torso = {piece.name: piece for piece in worn.torso}
    found = []
    for record, operation in operations(worn.pattern):
        if head is None or not isinstance(operation, AttachHandle) or operation.to.piece not in torso:
            continue
        piece = torso[operation.to.piece]
        path = path_of(worn.pattern, operation.to)
        if worn.up(piece, path.at(0.0).y) < worn.heights.get("waist", 0.0) + 100.0:
            continue
        low, high = operation.at
        strip = worn.pattern.strip(operation.name)
        loop = (strip.finished_length or strip.length) + high - low
        if loop < head:
            key = "wear.strap_small_nobody" if nobody else "wear.strap_small"
            says = message(key, strip=titled(strip.title), has=measured(loop), head=measured(head))
            can = message("wear.strap_small_do", amount=measured(head - loop))
            level: Level = "warning" if nobody else "error"
            step = str(record.key)
            found.append(told("strap_small", level, says, can, amount=head - loop, step=step, piece=piece.name))
    return found
