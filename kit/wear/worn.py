"""All that is found of a finished garment when a body is put into it."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, Message
from kit.lesson.pattern import Pattern
from kit.sewing.order import sew
from kit.sewing.state import State
from kit.wear.covers import buttons, gape, wraps
from kit.wear.cut_on import level_arm
from kit.wear.dressing import limbs, no_way_on
from kit.wear.fit import elastic, hat, sizes, stride
from kit.wear.girth import Worn
from kit.wear.hand import loops, pockets, tie_openings
from kit.wear.moved import bare_armhole, cap_ease, raised_arm, seated
from kit.wear.own_finished import finished_small, untried
from kit.wear.shell import is_worn
from kit.wear.tied import belts, straps, ties


def worn(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Whether the garment goes on, fits round the body and can be tied. Nothing is said of what is not sewn to its end.
    Where no line of the pieces tells where the body is (`kit.wear.levels`), only the lesson's own finished
    measurements are held to the girths they go over.

    >>> from kit import bodice_block
    >>> from kit.lesson.lesson import Lesson
    >>> from kit.sewing.state import State
    >>> worn(Lesson("Block", start=bodice_block).work(), State())
    []
    """
    if not is_finished(pattern, state):
        return []
    garment = Worn(pattern, state)
    size = sizes(garment)
    small = {name for finding in size if finding.level == "error" for name in finding.measures}
    # What is too small to be worn does not pass either: that is told once.
    ways = [way for way in no_way_on(garment) if way.code != "no_way_on" or not small & set(way.measures)]
    found = [*ways, *limbs(garment), *size, *hat(garment), *elastic(garment), *stride(garment)]
    found += [*ties(garment), *belts(garment), *straps(garment)]
    found += [
        *pockets(garment),
        *loops(garment),
        *tie_openings(garment),
        *wraps(garment),
        *gape(garment),
        *buttons(garment),
    ]
    found += [*raised_arm(garment), *level_arm(garment), *cap_ease(garment), *bare_armhole(garment), *seated(garment)]
    return [*found, *finished_small(garment, found)]


def why_untried(pattern: Pattern) -> Message | None:
    """Why a garment that is sewn to its end was not tried on a body, nothing where it was (`untried`)."""
    if not pattern.sewing:
        return None
    state, troubles = sew(pattern)
    if any(trouble.level == "error" for trouble in troubles) or not is_finished(pattern, state):
        return None
    return untried(Worn(pattern, state))


def is_finished(pattern: Pattern, state: State) -> bool:
    """Whether every edge of the pieces that are worn is closed."""
    return bool(pattern.sewing) and not any(
        state.raw(piece, side, edge.name)
        for piece in pattern.pieces
        if is_worn(piece)
        for side in piece.sides
        for edge in piece.edges
    )
