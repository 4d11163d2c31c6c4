"""The fold-true test: hems, facings and seam allowances turned in software along their fold lines.

An allowance is taken from the real cut line and folded back, fold by fold, onto the garment. Along a straight fold
its end must come to lie on the garment's own cut edge. Along a curved hem the angle of its end must mirror the
neighbour's, and the turned edge is longer or shorter than the garment line it comes to lie on: that surplus must be
eased in, that want makes the hem pull.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from kit.diagnostic import Diagnostic, measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Line, Path, Point, Vector, parallel
from kit.lesson.pattern import Pattern
from kit.piece.allowance import CutLine, allowance_of, cut_line, has_allowances
from kit.piece.offset import inside_left
from kit.piece.piece import Edge, Piece
from kit.proof.curved_folds import EASES, curved_edges, cut_into, fit_findings, fold_finding
from kit.sewing.ends import Choice, Turning, Turnings, allowed, chosen, meetings, turnings
from kit.sewing.stretching import eased_by_hand

TOLERANCE = 0.5  # mm that a folded end may lie beside the garment's edge
TRUE_ANGLE = 3.0  # degrees that the end of a curved hem may lie beside its mirror image
SEEN = 1.0  # mm by which it must lie off at its far end for a hand to notice (common practice, no source)
_SMOOTH = math.radians(25.0)  # less of a turn than this and one edge runs on into the other
_FAR = 1000.0


def fold_true(pattern: Pattern, pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """What the folded allowances of `pieces` (sound ones of the pattern) have against them."""
    order, cut = turnings(pattern), cut_into(pattern)
    found: list[Diagnostic] = []
    for piece in pieces:
        if not has_allowances(piece):
            continue
        try:
            line = cut_line(piece)
        except KitError:
            continue  # told with the cut lines
        for end in folded_ends(piece, line, order):
            found += _end_findings(piece, end)
        for fit in curved_edges(piece, order, cut, eased_by_hand(pattern, EASES)):
            found += fit_findings(piece, fit)
    return found


# ---- ends of folded allowances ----------------------------------------------------------------------------


@dataclass(frozen=True)
class FoldedEnd:
    """The end of the allowance of `edge` beside `neighbour` once folded back: how far in mm it lies at most beyond the
    neighbour's cut edge (`beyond`) or short of it (`short`), and the degrees by which its direction is off
    (`degrees`). `straight` says whether the fold is; `on_fold` whether the neighbour is the fold of the cloth."""

    edge: Edge
    neighbour: Edge
    turning: Turning
    straight: bool
    on_fold: bool
    beyond: float
    short: float
    degrees: float
    slant: float


def folded_ends(piece: Piece, line: CutLine, order: Turnings) -> Iterator[FoldedEnd]:
    """Every end of an allowance that lies folded where a later operation crosses it. Ends at a corner that is not
    convex, or that is declared to be drawn on purpose, are left out, and those of seams shaped by hand."""
    joins = {(before, after): curves for before, after, curves in line.joins}
    declared = {frozenset((d.before, d.after)) for d in piece.declared}
    by_hand = {frozenset((c.before, c.after)) for c in piece.corners if c.by_hand}
    for before, after in meetings(piece):
        names = frozenset((before.name, after.name))
        choice = _folded_at(piece, before, after, order)
        if choice is None or names in declared or (names in by_hand and not choice.turning.hem):
            continue
        end = _fold_end(piece, before, after, choice, line, joins[before.name, after.name])
        if end is not None:
            yield end


def _folded_at(piece: Piece, before: Edge, after: Edge, order: Turnings) -> Choice | None:
    """The edge folded at a corner; at the fold of the cloth, the hem that ends there."""
    if piece.fold in (before.name, after.name):
        ends_here = after.name == piece.fold
        edge = before if ends_here else after
        turning = order.get((piece.name, edge.name, "end" if ends_here else "start"))
        return Choice(edge.name, turning) if turning is not None and turning.hem and allowed(piece, edge) else None
    if not (allowed(piece, before) and allowed(piece, after)):
        return None
    choice = chosen(piece, before, after, order)
    return choice if choice is not None and choice.turning.folds else None


def _fold_end(
    piece: Piece, before: Edge, after: Edge, choice: Choice, line: CutLine, join: tuple[object, ...]
) -> FoldedEnd | None:
    first = choice.edge == before.name
    edge, neighbour = (before, after) if first else (after, before)
    corner = before.path.end
    toward = after.path.start_tangent * -1.0 if first else before.path.end_tangent
    away = before.path.end_tangent * -1.0 if first else after.path.start_tangent
    sign = inside_left(piece)
    turn = before.path.end_tangent.turn_to(after.path.start_tangent) * sign
    if turn < _SMOOTH:
        return None
    out = away.left() * (sign if first else -sign)
    own = line.edge(edge.name)
    curves = [curve for curve in join if hasattr(curve, "points")]
    points = [p for curve in curves for p in _sampled(curve)]
    if first:
        points.reverse()  # from the neighbour to the folded edge's own cut line
    folds = choice.turning.folds
    width = allowance_of(piece, edge)
    reference = _carried_on(neighbour, sign, 0.0 if neighbour.name == piece.fold else allowance_of(piece, neighbour))
    level = Line(corner, corner + away)
    outward = out_of(toward, away)
    beyond = short = 0.0
    passed = False
    low: tuple[float, Point] | None = None
    high: tuple[float, Point] | None = None
    for p in points:
        height = (p - corner).dot(out)
        if height < folds[0] + 1e-6:
            continue
        if passed:
            break  # on along the folded edge's own cut line
        passed = height > width - 1e-4
        back = _folded_back(p, height, corner, out, away, folds)
        along = reference.nearest(back)
        off = (back - reference.at(along)).dot(_square(reference.tangent_at(along), outward))
        beyond, short = max(beyond, off), max(short, -off)
        if height <= (folds[1] if len(folds) > 1 else width) + 1e-6:
            high = max(high or (height, p), (height, p), key=lambda spot: spot[0])
            low = min(low or (height, p), (height, p), key=lambda spot: spot[0])
    degrees = slant = 0.0
    if low is not None and high is not None and high[0] - low[0] > 1.0:
        run = (low[1].mirrored(level) - high[1].mirrored(level)).unit()
        turn = math.acos(max(-1.0, min(1.0, run.dot(_chord(reference, low, high, level)))))
        degrees, slant = math.degrees(turn), (high[0] - low[0]) * math.sin(turn)
    straight = edge.path.is_straight
    if straight and folds[0] < 1e-6:
        beyond = max(beyond, _sticks_out(line, own, corner, out, away, folds))
    return FoldedEnd(
        edge, neighbour, choice.turning, straight, neighbour.name == piece.fold, beyond, short, degrees, slant
    )


def out_of(toward: Vector, away: Vector) -> Vector:
    """The direction out of the garment across a neighbour that runs `toward` the corner, where the folded edge leads
    `away` from it."""
    beside = toward.left()
    return beside * -1.0 if beside.dot(away) > 0 else beside


def _square(tangent: Vector, outward: Vector) -> Vector:
    beside = tangent.left()
    return beside if beside.dot(outward) > 0 else beside * -1.0


def _sampled(curve: object) -> list[Point]:
    if isinstance(curve, Line):
        return [curve.start, curve.point(0.25), curve.point(0.5), curve.point(0.75), curve.end]
    return list(curve.points(0.05))  # type: ignore[attr-defined]


def _carried_on(edge: Edge, sign: float, width: float) -> Path:
    """The true parallel of a neighbour at its allowance, carried on straight at both ends."""
    path = edge.path if width < 1e-9 else parallel(edge.path, -sign * width)
    return path.extended(_FAR).extended(_FAR, end="start")


def _folded_back(p: Point, height: float, corner: Point, out: Vector, away: Vector, folds: tuple[float, ...]) -> Point:
    """Where a point of the allowance comes to lie: mirrored in the outermost fold inside it, then in the next."""
    for fold in reversed([fold for fold in folds if fold < height - 1e-9]):
        at = corner + out * fold
        p = p.mirrored(Line(at, at + away))
    return p


def _chord(reference: Path, low: tuple[float, Point], high: tuple[float, Point], level: Line) -> Vector:
    """The direction of the neighbour's cut edge over the stretch that the folded end covers."""
    one, two = (reference.at(reference.nearest(spot[1].mirrored(level))) for spot in (low, high))
    return (one - two).unit() if one.distance(two) > 1e-6 else reference.start_tangent


def _sticks_out(line: CutLine, own: Path, corner: Point, out: Vector, away: Vector, folds: tuple[float, ...]) -> float:
    """How far in mm the half of a folded allowance's cut edge that is nearer the corner sticks out of the garment."""
    cloth = line.region(0.05)
    worst = 0.0
    half = own.length / 2
    near = (
        own.between(0.0, half) if own.start.distance(corner) < own.end.distance(corner) else own.between(half, 2 * half)
    )
    for p in near.points(0.1):
        back = _folded_back(p, (p - corner).dot(out), corner, out, away, folds)
        worst = max(worst, cloth.distance(back))
    return worst


def _end_findings(piece: Piece, end: FoldedEnd) -> list[Diagnostic]:
    what = "hem" if end.turning.hem else "seam"
    edge, beside = named_edge(end.edge), named_edge(end.neighbour)
    if not end.straight:
        if end.degrees <= TRUE_ANGLE or end.slant <= SEEN:
            return []
        return [
            fold_finding(
                piece,
                end.edge,
                end.turning,
                f"{what}_end_angle",
                message("proof.end_angle", edge=edge, beside=beside, degrees=round(end.degrees)),
                message(f"proof.{what}_end_angle_do"),
            )
        ]
    off = max(end.beyond, end.short)
    if off <= TOLERANCE:
        return []
    if end.on_fold:
        return [
            fold_finding(
                piece,
                end.edge,
                end.turning,
                f"{what}_not_true",
                message(f"proof.{what}_beside_fold", edge=edge, amount=measured(off)),
                message("proof.beside_fold_do"),
                off,
            )
        ]
    way = "beyond" if end.beyond >= end.short else "short"
    return [
        fold_finding(
            piece,
            end.edge,
            end.turning,
            f"{what}_not_true",
            message(f"proof.{what}_end_{way}", edge=edge, beside=beside, amount=measured(off)),
            message("proof.end_do", beside=beside),
            off,
        )
    ]
