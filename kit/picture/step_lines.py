"""The lines of a drafting picture on one piece: what stood, what was taken away, what was traced, what is new; the thin
lines the hand ruled on the way, its signs, and what must be equal.

One piece may be drawn twice, in its place and again enlarged: everything here takes the scale it is drawn at.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.language import called
from kit.lesson.hand import HandMove, same
from kit.lesson.pattern import StepRecord
from kit.picture.cut_out import cut_strokes, fold_bracket
from kit.picture.dart import in_step
from kit.picture.drawing import Dot, Item, Stroke, StrokeRole
from kit.picture.hand_order import aids, moves_on
from kit.picture.markings import place_of, pleat_in_step, signs
from kit.picture.place import Scaling
from kit.picture.rows import Bounds, bounds_of_paths
from kit.picture.signs import equal_sign, move_signs
from kit.piece.allowance import CutLine, cut_line
from kit.piece.piece import Mark, Notch, Piece

SIGNS = 0.003
"""How large drill marks and bars of buttonholes are drawn in a step's picture, as a share of its reach."""
_SQUARISH = 0.5
"""How short one side of a rectangle may be against the other for its diagonals to tell whether it is true."""
_MIRROR = 0.3


def lines_of(
    piece: Piece, record: StepRecord, put: Scaling, reach: float, cut: CutLine | None = None, lies_on: bool = False
) -> Iterable[Item]:
    """All strokes and points of a piece in the order they are painted. `cut` is the line to cut along where the step
    adds allowances; `lies_on` says that the piece lies on the one it was traced from."""
    own = f"{piece.name}."
    new = {name for owner, name, _ in record.new if owner == piece.name}
    taken = traced_edges(piece, record)
    for name, path in guides_shown(piece, record):
        if name not in new:
            yield Stroke(put.curves(path.curves), "guide", name=own + name)
    for owner, name, path in record.removed:
        if owner == piece.name:
            yield Stroke(put.curves(path.curves), "removed", name=own + name)
    yield from _checks(piece, record, put, reach)
    if cut is not None:
        for stroke in cut_strokes(piece, cut, "new"):
            yield replace(stroke, curves=put.curves(stroke.curves))
        if piece.fold:
            a, p, q, b = fold_bracket(piece, reach * SIGNS / put.factor)
            bracket = put.curves((Line(a, p), Line(p, q), Line(q, b)))
            yield Stroke(bracket, "grain", arrow="both", name=f"{piece.name}.on_fold")
    for edge in piece.edges:
        if edge.name not in new and not (cut is not None and edge.name == piece.fold):
            role: StrokeRole = "fold" if edge.name == piece.fold else "kept"
            yield Stroke(put.curves(edge.path.curves), role, name=own + edge.name)
    # In the order of the hand, which is the order in which a film draws them; what no move drew comes first.
    drawn = {f"{own}{name}": number for number, name in enumerate(m.name for m in moves_on(piece, record)) if name}
    strokes = [(drawn.get(own + name, -1), name, path) for name, path in new_lines(piece, record)]
    ruled = aids(piece, record, put)
    for number, name, path in sorted(strokes, key=lambda stroke: stroke[0]):
        while ruled and ruled[0][0] < number:
            yield ruled.pop(0)[1]
        yield Stroke(put.curves(path.curves), "traced" if name in taken else "new", name=own + name)
    yield from (stroke for _, stroke in ruled)
    for dart in piece.darts:
        if not lies_on or dart.edge in new:
            yield from in_step(piece, dart, "new" if dart.edge in new - taken else "kept", put)
    for pleat in piece.pleats:
        if not lies_on or pleat.edge in new:
            role = "new" if pleat.edge in new - taken else "kept"
            yield from put.items(pleat_in_step(piece, pleat, role, reach * SIGNS / put.factor))
    for owner, notch in record.new_notches:
        if owner == piece.name and piece.has_edge(notch.edge):
            yield from _notch(piece, notch, reach, put)
    for owner, mark in record.new_marks:
        if owner == piece.name:
            yield from _mark(piece, mark, reach, put)
    if piece.name in record.grained and piece.grain is not None:
        grain = Line(piece.grain.start, piece.grain.end)
        yield Stroke(put.curves((grain,)), "grain", arrow="both", name=f"{piece.name}.grain")
    yield from move_signs(moves_on(piece, record), put, reach)
    yield from _dots(piece, record, put)


def new_lines(piece: Piece, record: StepRecord) -> list[tuple[str, Path]]:
    """The new lines of a piece as they are now; those that a later step took away again as they were recorded."""
    return [
        (name, piece.edge(name).path if piece.has_edge(name) else path)
        for owner, name, path in record.new
        if owner == piece.name
    ]


def traced_edges(piece: Piece, record: StepRecord) -> set[str]:
    """The new edges of a piece that were only traced from another one, whole or in part."""
    sources = {move.source for move in record.moves if move.piece == piece.name and move.kind == "trace"}
    lines = [edge.path for other in record.pieces if other.name in sources for edge in other.edges]
    if not lines:
        return set()
    new = new_lines(piece, record)
    found = {name for name, path in new if path in lines}
    boxes = [(line, line.bounds()) for line in lines]
    for name, path in new:
        if name not in found:
            box = path.bounds()
            if any(_within(box, other) and _part(path, line) for line, other in boxes):
                found.add(name)
    return found


def _within(one: Bounds, other: Bounds) -> bool:
    """Whether one box lies in the other, or the other in it."""
    return any(
        a[0] >= b[0] - 0.1 and a[1] >= b[1] - 0.1 and a[2] <= b[2] + 0.1 and a[3] <= b[3] + 0.1
        for a, b in ((one, other), (other, one))
    )


def _part(one: Path, other: Path) -> bool:
    """Whether one line is a part of the other; straight, it may also have been carried on."""
    short, long = (one, other) if one.length <= other.length else (other, one)
    if short is other and not other.is_straight:
        return False
    return all(long.distance_to(short.at(short.length * share)) < 0.05 for share in (0.0, 1.0, 0.5))


def traced_points(piece: Piece, record: StepRecord) -> set[str]:
    """The points of a piece that came with what was traced."""
    sources = {move.source for move in record.moves if move.piece == piece.name and move.kind == "trace"}
    there = {(name, at) for other in record.pieces if other.name in sources for name, at in other.points}
    return {name for name, at in piece.points if (name, at) in there}


def guides_shown(piece: Piece, record: StepRecord) -> list[tuple[str, Path]]:
    """The construction lines a step shows: all while lines are being drawn by them, later only those by the piece."""
    drawing = any(owner == piece.name for owner, _, _ in record.new)
    return list(piece.guides) if drawing or not piece.edges else guides_within(piece)


def guides_within(piece: Piece) -> list[tuple[str, Path]]:
    """Guides that lie on the piece or beside it: those of what was cut away are left out."""
    x0, y0, x1, y1 = bounds_of_paths(edge.path for edge in piece.edges)
    wide, high = (x1 - x0) * 0.06 + 5.0, (y1 - y0) * 0.06 + 5.0
    out = []
    for name, path in piece.guides:
        a, b, c, d = path.bounds()
        near = a > x0 - wide and c < x1 + wide and b > y0 - high and d < y1 + high
        if near and (not piece.edges or _on_paper(piece, path, min(wide, high))):
            out.append((name, path))
    return out


def _on_paper(piece: Piece, path: Path, room: float) -> bool:
    """Whether a line lies on the piece somewhere, or runs along its outline within `room`. While the outline stands
    open, in a draft still being written, it has no inside yet, and every line counts."""
    spots = [path.at(path.length * share / 8) for share in range(9)]
    edges = [edge.path for edge in piece.edges]
    try:
        outline = piece.outline
    except KitError:
        return True
    if any(outline.contains(spot) for spot in spots):
        return True
    return all(min(edge.at(edge.nearest(spot)).distance(spot) for edge in edges) < room for spot in spots)


def cut_of(piece: Piece, record: StepRecord) -> CutLine | None:
    """The cut line where this step adds allowances; None where it cannot be drawn (the proof says why)."""
    if piece.name not in record.allowed:
        return None
    try:
        return cut_line(piece)
    except KitError:
        return None


# ---- points -----------------------------------------------------------------------------------------------


def standing(piece: Piece) -> list[tuple[str, Point]]:
    """The named points that still lie on the draft: at the end of an edge or a guide."""
    ends = [end for edge in piece.edges for end in (edge.path.start, edge.path.end)]
    ends += [end for _, path in piece.guides for end in (path.start, path.end)]
    return [(name, p) for name, p in piece.points if any(abs(p.x - e.x) + abs(p.y - e.y) < 0.5 for e in ends)]


def fresh_points(piece: Piece, record: StepRecord) -> list[tuple[str, Point]]:
    """The points this step marked on a piece."""
    taken = traced_points(piece, record)
    return [(name, at) for owner, name, at in record.new_points if owner == piece.name and name not in taken]


def used_points(piece: Piece, record: StepRecord) -> list[tuple[str, Point]]:
    """The named points of before that the hand begins, ends or squares at in this step."""
    fresh = {name for name, _ in fresh_points(piece, record)}
    places = places_used(piece, record)
    return [(name, at) for name, at in piece.points if name not in fresh and any(same(at, p) for p in places)]


def places_used(piece: Piece, record: StepRecord) -> list[Point]:
    """Where the moves of the hand on a piece begin and end, lines as they were trimmed, and where they are square."""
    out: list[Point] = []
    for move in moves_on(piece, record):
        if move.kind in ("trace", "mirror"):
            continue
        ends = (move.start, move.end)
        if move.is_line and piece.has_edge(move.name):
            path = piece.edge(move.name).path
            if move.kind != "curve" or len(path.curves) == 1:
                ends = (path.start, path.end)
        for p in (*ends, *(sign.at for sign in move.signs)):
            if not any(same(p, q) for q in out):
                out.append(p)
    return out


def _dots(piece: Piece, record: StepRecord, put: Scaling) -> Iterable[Item]:
    own = f"{piece.name}."
    fresh = fresh_points(piece, record)
    names = {name for name, _ in fresh}
    before = dict(standing(piece)) | dict(used_points(piece, record))
    for name, point in before.items():
        if name not in names:
            yield Dot(put.point(point), "kept", own + name)
    for name, point in fresh:
        yield Dot(put.point(point), "new", own + name)


# ---- notches and marks ------------------------------------------------------------------------------------


def _notch(piece: Piece, notch: Notch, reach: float, put: Scaling) -> Iterable[Item]:
    path = piece.edge(notch.edge).path
    half = reach * 0.012 / put.factor
    for shift in (0.0,) if notch.kind == "single" else (-half * 0.7, half * 0.7):
        at = min(max(notch.distance + shift, 0.0), path.length)
        foot, across = path.at(at), path.normal_at(at) * half
        yield Stroke(put.curves((Line(foot - across, foot + across),)), "new", name=f"{piece.name}.notch")


def mark_line_of(piece: Piece, mark: Mark) -> Path | None:
    """The line a mark is drawn along: its own, or the part of its edge that is left open."""
    if mark.kind == "opening" and piece.has_edge(mark.edge):
        edge = piece.edge(mark.edge).path
        low, high = max(min(mark.start, mark.end), 0.0), min(max(mark.start, mark.end), edge.length)
        if high - low > 0.1:
            return edge.between(low, high)
    return mark.path


def _mark(piece: Piece, mark: Mark, reach: float, put: Scaling) -> list[Item]:
    shown = replace(mark, path=mark_line_of(piece, mark))
    name = f"{piece.name}.{mark.name}"
    # A line that stands on the draft already is only kept on the piece: it is not drawn anew.
    role: StrokeRole = "new"
    if mark.kind == "line" and mark.path is not None and any(path == mark.path for _, path in piece.guides):
        role = "traced"
    return put.items(signs(shown, place_of(piece, mark), name, reach * SIGNS / put.factor, role))


# ---- what must be equal -----------------------------------------------------------------------------------


def _checks(piece: Piece, record: StepRecord, put: Scaling, reach: float) -> Iterable[Item]:
    corners = rectangle_corners(piece, record)
    if corners is not None:
        a, b, c, d = corners
        sides = sorted((a.distance(b), b.distance(c)))
        if sides[0] >= sides[1] * _SQUARISH:
            for number, (start, end) in enumerate(((a, c), (b, d))):
                p, q = put.point(start), put.point(end)
                name = f"{piece.name}.diagonal.{number}"
                yield Stroke((Line(p, q),), "check", name=name)
                way = (q - p).unit()
                yield from equal_sign(p.lerp(q, 0.3) + way.left() * (reach * 0.02), way, name, reach)
    for move in moves_on(piece, record):
        if move.kind == "curve" and move.path is not None:
            for sign in move.signs:
                if sign.kind == "square" and _is_middle(piece, sign.to):
                    yield from _mirrored(piece, move, sign.to, put)
    yield from _matched(piece, record, put, reach)


def rectangle_corners(piece: Piece, record: StepRecord) -> tuple[Point, Point, Point, Point] | None:
    """The corners of a rectangle that this step ruled on fresh paper."""
    names = {name for name, _ in new_lines(piece, record)}
    ruled = {move.name for move in moves_on(piece, record) if move.kind == "rule"}
    edges = piece.edges
    if len(edges) != 4 or not all(edge.name in names & ruled and edge.path.is_straight for edge in edges):
        return None
    around = [edge.path for edge in edges]
    if any(abs(a.end_tangent.dot(b.start_tangent)) > 0.003 for a, b in pairwise((*around, around[0]))):
        return None
    return around[0].start, around[1].start, around[2].start, around[3].start


def _is_middle(piece: Piece, name: str) -> bool:
    return (
        piece.has_edge(name)
        and piece.edge(name).path.is_straight
        and (name == piece.fold or piece.edge(name).role == "centre")
    )


def _mirrored(piece: Piece, move: HandMove, middle: str, put: Scaling) -> Iterable[Item]:
    """The curve laid to its mirror at the centre: both together must run through without a peak or a dip."""
    path = piece.edge(move.name).path if piece.has_edge(move.name) else move.path
    assert path is not None
    axis = piece.edge(middle).path
    long = path.length * _MIRROR
    first = axis.distance_to(path.start) <= axis.distance_to(path.end)  # drawn, it may run the other way round
    part = path.between(0.0, long) if first else path.between(path.length - long, path.length)
    name = f"{piece.name}.{move.name}.mirror"
    yield Stroke(put.curves(part.mirrored(Line(axis.start, axis.end)).curves), "check", name=name)


def _matched(piece: Piece, record: StepRecord, put: Scaling, reach: float) -> Iterable[Item]:
    """Two edges that got a notch together: what lies before the notch is equally long on both."""
    for owner, notch in record.new_notches:
        if owner != piece.name or not notch.name or not piece.has_edge(notch.edge):
            continue
        path = piece.edge(notch.edge).path
        mine = (notch.distance, path.length - notch.distance)
        for other, partner in record.new_notches:
            if other == owner or partner.name != notch.name:
                continue
            there = next((p for p in record.pieces if p.name == other), None)
            if there is None or not there.has_edge(partner.edge):
                continue
            long = there.edge(partner.edge).path.length
            theirs = (partner.distance, long - partner.distance)
            for low, size in ((True, mine[0]), (False, mine[1])):
                if size > 1.0 and abs(size - theirs[0 if low else 1]) < 0.5:
                    at = size / 2 if low else path.length - size / 2
                    inward = path.normal_at(at) * (1.0 if piece.outline.area > 0 else -1.0)
                    p = put.point(path.at(at)) + inward * (reach * 0.022)
                    yield from equal_sign(p, path.tangent_at(at), f"{piece.name}.{notch.name}", reach)
                    break


def title_of(piece: Piece) -> str:
    """A piece as people call it."""
    return piece.title or called(piece.name)
