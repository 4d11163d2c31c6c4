"""Pleats and tucks: a stretch of an edge taken up in a fold.

The edge's path runs as it is drawn on paper, through the stretch the pleat takes up. As with a dart, a cap lies
there: the line that makes the edge, and the allowance outside it, run on under the folded pleat (`cap`).
"""

from __future__ import annotations

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError, near
from kit.geometry import Line, Motion, Path
from kit.piece.darts_and_pleats import Pleat
from kit.piece.piece import Piece

LINES_AGREE = 0.5
"""How much the two lines of a pleat or tuck may differ in mm."""


def pleat_of(piece: Piece, name: str) -> Pleat:
    """The pleat or tuck of that name; `KitError` with the nearest name otherwise."""
    for pleat in piece.pleats:
        if pleat.name == name:
            return pleat
    raise KitError(
        f"there is no pleat or tuck '{name}'.",
        where=piece.title,
        do=near(name, [p.name for p in piece.pleats]) or "Draw it.",
    )


def stretches(piece: Piece, edge: str) -> tuple[tuple[float, float, Pleat], ...]:
    """(start, end, pleat) of every stretch of an edge's path that pleats lie on, held or not, in order."""
    found = [(p.start, p.end, p) for p in piece.pleats if p.edge == edge]
    found += [(p.far_start, p.far_end, p) for p in piece.pleats if p.far == edge]
    return tuple(sorted(found, key=lambda item: item[0]))


def taken_up(piece: Piece, edge: str) -> tuple[tuple[float, float, Pleat], ...]:
    """(start, end, pleat) of the stretches of an edge that are folded when it is sewn."""
    return tuple((a, b, p) for a, b, p in stretches(piece, edge) if p.edge == edge or p.held == "both")


def lies(piece: Piece, pleat: Pleat) -> bool:
    """Whether the pleat lies on its edges; the proof tells of those that do not."""
    for name, start, end in ((pleat.edge, pleat.start, pleat.end), (pleat.far, pleat.far_start, pleat.far_end)):
        if name and not (piece.has_edge(name) and -1e-6 <= start < end <= piece.edge(name).path.length + 1e-6):
            return False
    return True


def pleats_lying(piece: Piece) -> tuple[Pleat, ...]:
    """The pleats and tucks that lie on their edges."""
    return tuple(pleat for pleat in piece.pleats if lies(piece, pleat))


def intake(pleat: Pleat) -> float:
    """How much the pleat takes up at its edge: straight across from line to line, mm."""
    return pleat.lines[0].start.distance(pleat.lines[1].start)


def fold_line(pleat: Pleat) -> Path:
    """The fold: midway between the two lines."""
    one, two = pleat.lines
    return Path.line(one.start.mid(two.start), one.end.mid(two.end))


def closing(piece: Piece, pleat: Pleat) -> Motion:
    """The motion that lays the second line on the first. `KitError` when the lines differ."""
    one, two = pleat.lines
    if abs(one.length - two.length) > LINES_AGREE:
        raise KitError(
            message("refusal.pleat_lines", pleat=pleat.label, one=measured(one.length), other=measured(two.length)),
            where=piece.title,
            do=message("refusal.pleat_lines_do"),
        )
    if one.start.distance(one.end) < 1e-6:
        raise KitError(
            message("refusal.pleat_nothing", pleat=pleat.label), where=piece.title, do=message("refusal.draw_again_do")
        )
    return Motion.matching(two.start, two.end, one.start, one.end)


def cap(piece: Piece, pleat: Pleat, far: bool = False) -> Path:
    """The line to cut through the folded pleat at its edge, or at its `far` end, in the edge's own direction.

    The folded cloth lies under the edge beside it; that edge's mirror image in the near line as far as the fold, and
    the same again beyond the fold. `KitError` where no edge is left for it to lie under.

    At a table the pleat is folded, and scissors follow the edge through all layers; opened again, the paper shows the
    edge mirrored in each line that was folded. Here the same is done by mirroring: the stretch of the edge that the
    pleat lies over goes across the near line, is cut off at the fold, and that half goes across the fold.
    """
    edge = pleat.far if far else pleat.edge
    start, end = (pleat.far_start, pleat.far_end) if far else (pleat.start, pleat.end)
    # The far edge runs the other way: what lies toward the near edge's end lies toward its start.
    ahead = (pleat.laid == "end") != far
    path = piece.edge(edge).path
    if not lies(piece, pleat):
        raise KitError(
            message(
                "refusal.pleat_off", pleat=pleat.label, edge=named_edge(piece.edge(edge)), length=measured(path.length)
            ),
            where=piece.title,
            do=message("refusal.pleat_off_do"),
        )
    one, two = path.at(max(start, 0.0)), path.at(min(end, path.length))
    wide = one.distance(two)
    fold = fold_line(pleat)
    axis = Line(fold.start, fold.end)
    # The edge can be followed as far as the next fold in it, or as far as the folded cloth can reach.
    others = [(a, b) for a, b, p in stretches(piece, edge) if p.name != pleat.name]
    others += [(d.start, d.end) for d in piece.darts if d.edge == edge]
    if ahead:
        high = min((a for a, _ in others if a >= end - 1e-6), default=path.length)
        low, high, foot = end, min(high, end + 2 * wide), two
    else:
        low = max((b for _, b in others if b <= start + 1e-6), default=0.0)
        low, high, foot = max(low, start - 2 * wide), start, one
    if high - low < 0.5:
        raise KitError(
            message("refusal.fold_no_edge", fold=pleat.label, edge=named_edge(piece.edge(edge))),
            where=piece.title,
            do=message("refusal.fold_no_edge_do"),
        )
    line = min(pleat.lines, key=lambda leg: min(leg.start.distance(foot), leg.end.distance(foot)))
    folded = path.between(low, high).mirrored(Line(line.start, line.end))
    from_leg = folded if ahead else folded.reversed()
    middle = one.mid(two)
    way = (axis.end - axis.start).unit()
    ray = Path.line(middle - way * (4 * wide + 5.0), middle + way * (4 * wide + 5.0))
    hits = from_leg.crossings(ray)
    # The mirrored edge usually crosses the fold; where it stops short, it is carried on straight as far as that.
    if hits:
        half = from_leg.between(0.0, min(from_leg.nearest(p) for p in hits))
    else:
        half = from_leg.to(ray)
    if half.end.distance(middle) > 2 * wide:
        raise KitError(
            message("refusal.fold_beyond_edge", fold=pleat.label),
            where=piece.title,
            do=message("refusal.pleat_beyond_do"),
        )
    other = half.mirrored(axis)
    return other.joined(half.reversed()) if ahead else half.joined(other.reversed())
