"""Findings about what hands and belts go through: pockets, belt loops, the opening that a tie passes."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from kit.diagnostic import Diagnostic, measured, message, titled
from kit.piece.piece import Piece
from kit.sewing.operations.belt_loops import BeltLoop
from kit.sewing.operations.inseam import PocketBag
from kit.sewing.operations.pockets import PatchPocket
from kit.sewing.operations.strips import AttachStrip
from kit.sewing.order import operations
from kit.sewing.spans import path_of, run_length
from kit.wear.girth import Worn
from kit.wear.needs import taken
from kit.wear.told import told

TIP = 20.0
"""mm that the shoulder's tip lies below the nape (common practice, no source)."""
FINGERS = 150.0
"""mm below the wrist at which the fingers of a hanging arm end, nearly: a pocket's mouth below is out of reach (common
practice, no source)."""
ROOM = 10.0
"""mm that a mouth is wider than the flat hand, at least (common practice, no source)."""
_FOR_HANDS = 60.0  # mm above the waist up to which a pocket is one for hands
_BESIDE = 80.0  # mm between a tie and the opening it goes through, at most


def wrist_height(worn: Worn) -> float | None:
    """How high above the waist the wrist of a hanging arm is, mm (below it: less than 0); None where that is not
    known."""
    body = worn.body
    if "back_waist_length" not in body or "arm_length" not in body:
        return None
    return body["back_waist_length"] - TIP - body["arm_length"]


def pockets(worn: Worn) -> list[Diagnostic]:
    """Pockets for hands that a hand does not go into, or does not reach; each kind is told once."""
    hand, wrist = taken(worn.body, "hand_girth"), wrist_height(worn)
    found: dict[tuple[str, str], Diagnostic] = {}
    for step, piece, height, mouth in _mouths(worn):
        if height > _FOR_HANDS:
            continue
        if wrist is not None and height < wrist - FINGERS:
            low, at = wrist - FINGERS, message("wear.pocket_low_do", amount=measured(wrist - FINGERS - height))
            says = message("wear.pocket_low", has=measured(-height), least=measured(-low))
            found["low", piece] = told("pocket_low", "warning", says, at, amount=low - height, step=step, piece=piece)
        if hand is not None and mouth < hand / 2 + ROOM - 1.0:
            need = hand / 2 + ROOM
            says = message("wear.pocket_narrow", has=measured(mouth), need=measured(need))
            can = message("wear.pocket_narrow_do", amount=measured(need - mouth))
            found["narrow", piece] = told(
                "pocket_narrow",
                "warning",
                says,
                can,
                amount=need - mouth,
                step=step,
                piece=piece,
                measures=("hand_girth",),
            )
    return list(found.values())


def _mouths(worn: Worn) -> Iterator[tuple[str, str, float, float]]:
    """(step, pocket or piece, height of the mouth, its length in mm) of every pocket on what is worn."""
    torso = {piece.name: piece for piece in worn.torso}
    for record, operation in operations(worn.pattern):
        if isinstance(operation, PatchPocket) and operation.at.piece in torso and operation.at.mark.path is not None:
            pocket = worn.pattern.piece(operation.edges[0].piece)
            sewn = {edge for run in operation.edges for edge in run.edges}
            mouth = mouth_of(pocket, sewn)
            garment = torso[operation.at.piece]
            top = max(point.y for point in operation.at.mark.path.points(1.0))
            if mouth and pocket.role in ("", "pocket"):
                yield record.key, pocket.name, worn.up(garment, top), mouth
        elif isinstance(operation, PocketBag):
            for run in operation.b:
                if run.piece in torso:
                    path = path_of(worn.pattern, run)
                    middle = (path.start.y + path.end.y) / 2
                    yield record.key, run.piece, worn.up(torso[run.piece], middle), run_length(worn.pattern, run)


def mouth_of(pocket: Piece, sewn: Collection[str]) -> float:
    """mm of a pocket's outline that are open once the edges `sewn` are; of one cut on the fold both halves."""
    free = sum(edge.path.length for edge in pocket.edges if edge.name not in sewn and edge.name != pocket.fold)
    return 2 * free if pocket.fold else free


def loops(worn: Worn) -> list[Diagnostic]:
    """Belt loops that the belt, or the tie, does not go through."""
    strips = {strip.name: strip for strip in worn.pattern.strips}
    tied = {each.name for _, each in operations(worn.pattern) if isinstance(each, AttachStrip)}
    belts = [strip for strip in strips.values() if strip.loose] or [strips[name] for name in tied]
    belt = max(belts, key=lambda strip: strip.finished_width or 0.0, default=None)
    if belt is None or not belt.finished_width or not worn.torso:
        return []
    for record, operation in operations(worn.pattern):
        if isinstance(operation, BeltLoop) and operation.length(worn.pattern) < belt.finished_width - 1.0:
            has, missing = operation.length(worn.pattern), belt.finished_width - operation.length(worn.pattern)
            says = message(
                "wear.loop_small", has=measured(has), strip=titled(belt.title), wide=measured(belt.finished_width)
            )
            can = message("wear.loop_small_do", amount=measured(missing))
            return [told("loop_small", "error", says, can, amount=missing, step=record.key)]
    return []


def tie_openings(worn: Worn) -> list[Diagnostic]:
    """Openings left in a seam that a tie goes through, less than half as long as the tie is wide."""
    torso = {piece.name: piece for piece in worn.torso}
    slots = []
    for loop in worn.edges.shut:
        first = loop.stretches[0]
        if worn.is_slot(loop) and first.piece in torso:
            y = torso[first.piece].edge(first.edge).path.at((first.start + first.end) / 2).y
            slots.append((loop.length / 2, worn.up(torso[first.piece], y), first))
    for record, operation in operations(worn.pattern):
        if not isinstance(operation, AttachStrip) or operation.to.piece not in torso:
            continue
        path = path_of(worn.pattern, operation.to)
        height = worn.up(torso[operation.to.piece], path.at(min(operation.at, path.length)).y)
        wide = worn.pattern.strip(operation.name).finished_width or 0.0
        for size, at, first in slots:
            if abs(at - height) < _BESIDE and size < wide / 2 - 1.0:
                strip = titled(worn.pattern.strip(operation.name).title)
                says = message("wear.tie_opening", has=measured(size), strip=strip, wide=measured(wide))
                can = message("wear.tie_opening_do", least=measured(wide / 2))
                more = wide / 2 - size
                return [
                    told(
                        "tie_opening",
                        "warning",
                        says,
                        can,
                        amount=more,
                        step=record.key,
                        piece=first.piece,
                        edge=first.edge,
                    )
                ]
    return []
