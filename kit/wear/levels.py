"""Where the body is in a garment: how high each piece hangs, and the levels at which a tape would be laid round it.

Heights are mm above the waist. A piece hangs by its lines and points that are levels of the body (`Piece.landmarks`: a
block draws them, a traced top gets them, an author names a line so); what has none hangs by the pieces it is sewn to.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Literal, NamedTuple, get_args

from kit.body.body import Body
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.piece.role import Landmark
from kit.sewing.spans import path_of
from kit.wear.shell import TRIMS, Joined, Row

Level = Literal["bust", "under_bust", "waist", "hip", "thigh", "knee"]
LEVELS: tuple[Level, ...] = get_args(Level)
_LINES: Mapping[Level, Landmark] = {
    "bust": "bust_line",
    "under_bust": "under_bust_line",
    "waist": "waist_line",
    "hip": "hip_line",
    "thigh": "thigh_line",
    "knee": "knee_line",
}
GIRTHS: Mapping[Level, str] = {
    "bust": "bust_girth",
    "under_bust": "under_bust_girth",
    "waist": "waist_girth",
    "hip": "hip_girth",
    "thigh": "thigh_girth",
    "knee": "knee_girth",
}
"""The body's measurement round each level."""
HEIGHTS: Mapping[Level, tuple[str, ...]] = {
    "bust": ("back_waist_length", "armscye_depth"),
    "hip": ("waist_to_hip",),
    "thigh": ("body_rise",),
    "knee": ("waist_height", "height"),
}
"""The body's measurements that tell how high a level lies; the waist is where heights begin."""
_KNEE = 0.28
"""The middle of the knee above the floor, as a part of the body height (common practice, no source)."""
_UNDER_BUST = 70.0  # mm below the bust (common practice, no source)


class HungLevels(NamedTuple):
    """How a garment hangs: by piece the mm to add to its y, and the height of the levels its own lines tell."""

    up: Mapping[str, float]
    told: Mapping[Level, float]


def body_heights(body: Body) -> dict[Level, float]:
    """The height of each level of the body above its waist, mm, where its measurements tell."""
    found: dict[Level, float] = {"waist": 0.0}
    told = {level for level, names in HEIGHTS.items() if all(name in body for name in names)}
    if "hip" in told:
        found["hip"] = -body["waist_to_hip"]
    if "thigh" in told:
        found["thigh"] = -body["body_rise"]
    if "knee" in told:
        found["knee"] = _KNEE * body["height"] - body["waist_height"]
    if "bust" in told:
        found["bust"] = body["back_waist_length"] - body["armscye_depth"]
        found["under_bust"] = found["bust"] - _UNDER_BUST
    return found


def line_height(piece: Piece, level: Level) -> float | None:
    """The y of a piece's own line for a level; None where it has none."""
    line = piece.guide_of(_LINES[level])
    return None if line is None else (line.start.y + line.end.y) / 2


def hung(pattern: Pattern, worn: Iterable[Piece], joints: Iterable[Joined]) -> HungLevels | None:
    """How the garment hangs on the body; None where no line of it says what it is."""
    body = body_heights(pattern.body)
    up: dict[str, float] = {}
    told: dict[Level, list[float]] = {}
    pieces = {piece.name: piece for piece in worn if piece.role not in ("sleeve", *TRIMS)}
    for piece in pieces.values():
        lines = {level: y for level in LEVELS if (y := line_height(piece, level)) is not None}
        first = next((level for level in ("waist", "hip", "bust", "thigh", "knee") if level in lines), None)
        if first is None or first not in body:
            continue
        up[piece.name] = body[first] - lines[first]
        for level, y in lines.items():
            told.setdefault(level, []).append(y + up[piece.name])
    if not up:
        return None
    links = [joint for joint in joints if all(run.piece in pieces for run in (*joint.a, *joint.b))]
    for _ in pieces:
        for joint in links:
            for mine, other in ((joint.a, joint.b), (joint.b, joint.a)):
                if mine[0].piece in up and other[0].piece not in up:
                    up[other[0].piece] = _height(pattern, mine) + up[mine[0].piece] - _height(pattern, other)
    return HungLevels(up, {level: sum(ys) / len(ys) for level, ys in told.items()})


def _height(pattern: Pattern, row: Row) -> float:
    """The middle height of the ends of a row's first run."""
    path = path_of(pattern, row[0])
    return (path.start.y + path.end.y) / 2
