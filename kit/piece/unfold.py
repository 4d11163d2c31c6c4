"""Opening out: a piece on the fold as its whole shape, and the left and the right of a mirrored pair.

What is drafted counts as the right half, as in sewing. The mirror image of an edge runs back along the outline, so
places along it are counted from its other end.
"""

from __future__ import annotations

from dataclasses import replace

from kit.diagnostic import message, named_edge
from kit.errors import KitError
from kit.geometry import Line, Motion, Path, Point
from kit.piece.corner import Corner, Declared
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Piece

RIGHT, LEFT = "right_", "left_"
_ON_FOLD = 0.05


def unfolded(piece: Piece) -> Piece:
    """The whole shape of a piece on the fold: edges, darts, pleats, marks and points are called right_... (as
    drafted) and left_... (mirrored), except points on the fold; the fold becomes a guide under its old name and
    allowances are kept. A piece that lies on no fold is returned as it is. `KitError` when the fold is no straight
    edge of the piece.

    >>> from kit import bodice_block, workshop_chart
    >>> front, back = bodice_block(workshop_chart()["W4"])
    >>> whole = unfolded(front)
    >>> whole.fold, round(whole.outline.area / front.outline.area, 6), whole.edges[0].name
    ('', 2.0, 'right_neck')
    """
    if not piece.fold:
        return piece
    fold = piece.edge(piece.fold).path
    if not fold.is_straight:
        raise KitError(
            message("refusal.fold_curved", edge=named_edge(piece.edge(piece.fold))),
            where=piece.title,
            do=message("refusal.fold_curved_do"),
        )
    axis = Line(fold.start, fold.end)
    names = [edge.name for edge in piece.edges]
    at = names.index(piece.fold)
    # The outline runs on as one closed line: the edges as drafted, from where the fold ends on, then the same edges
    # backwards on the other side. A mirror image runs round the other way; `reversed` turns it back, so that the piece
    # still lies on the same side of its edges (allowances and notches go by that), and a place counted from the start
    # of an edge is counted from its other end.
    half = (*piece.edges[at + 1 :], *piece.edges[:at])
    if not half:
        raise KitError("it has no edge beside its fold.", where=piece.title, do="Draw its outline.")
    sizes = {edge.name: edge.path.length for edge in half}
    right = tuple(_called(edge, RIGHT, edge.path) for edge in half)
    left = tuple(_called(edge, LEFT, edge.path.mirrored(axis).reversed()) for edge in reversed(half))
    notches = [n for n in piece.notches if n.edge in sizes]
    darts = [d for d in piece.darts if d.edge in sizes]
    pleats = [p if p.far in sizes else _near_alone(p) for p in piece.pleats if p.edge in sizes]
    corners = [c for c in piece.corners if {c.before, c.after} <= set(sizes)]
    declared = [d for d in piece.declared if {d.before, d.after} <= set(sizes)]
    return replace(
        piece,
        edges=(*right, *left),
        cut=replace(piece.cut, fold="", mirrored=False),
        notches=(
            *(replace(n, edge=RIGHT + n.edge) for n in notches),
            *(replace(n, edge=LEFT + n.edge, distance=sizes[n.edge] - n.distance) for n in notches),
        ),
        marks=_marks(piece, axis, sizes),
        points=_points(piece, axis),
        guides=(
            (piece.fold, fold),
            *((RIGHT + name, path) for name, path in piece.guides),
            *((LEFT + name, path.mirrored(axis)) for name, path in piece.guides),
        ),
        darts=(
            *(replace(d, name=RIGHT + d.name, edge=RIGHT + d.edge) for d in darts),
            *(_dart(d, axis, sizes[d.edge]) for d in darts),
        ),
        pleats=(
            *(replace(p, name=RIGHT + p.name, edge=RIGHT + p.edge, far=p.far and RIGHT + p.far) for p in pleats),
            *(_pleat(p, axis, sizes) for p in pleats),
        ),
        corners=(*(_corner(c, RIGHT) for c in corners), *(_corner(c, LEFT) for c in corners)),
        declared=(*(_declared(d, RIGHT) for d in declared), *(_declared(d, LEFT) for d in declared)),
    )


def pair(piece: Piece) -> tuple[Piece, Piece]:
    """(left, right) of a mirrored pair, called left_... and right_...: the right as drafted, the left its mirror
    image across the draft's upright line, edges in the same order. `KitError` for a piece cut otherwise.

    >>> from kit import skirt_block, with_sleeve, bodice_block, workshop_chart
    >>> sleeve = with_sleeve(bodice_block)(workshop_chart()["W4"])[-1]
    >>> [piece.name for piece in pair(sleeve)]
    ['left_sleeve', 'right_sleeve']
    """
    if not piece.cut.mirrored:
        raise KitError(
            "it is cut on the fold, not as a pair." if piece.fold else "it is cut single, not as a pair.",
            where=piece.title,
            do="Open it out whole instead." if piece.fold else "Cut it as a mirrored pair: cut(2, mirrored=True).",
        )
    axis = Line(Point(0.0, 0.0), Point(0.0, 1.0))
    cut = CutPlan(
        count=max(1, piece.cut.count // 2),
        cloth=piece.cut.cloth,
        interfacing=piece.cut.interfacing // 2,
        right_side_up=True,
    )
    right = replace(piece, name=RIGHT + piece.name, title=f"{piece.title}, right", cut=cut)
    left = replace(
        piece,
        name=LEFT + piece.name,
        title=f"{piece.title}, left",
        cut=cut,
        edges=tuple(replace(edge, path=edge.path.mirrored(axis)) for edge in piece.edges),
        grain=_grain(piece.grain, axis),
        marks=tuple(_mark(mark, axis) for mark in piece.marks),
        points=tuple((name, _over(point, axis)) for name, point in piece.points),
        guides=tuple((name, path.mirrored(axis)) for name, path in piece.guides),
        darts=tuple(replace(d, apex=_over(d.apex, axis)) for d in piece.darts),
        pleats=tuple(replace(p, lines=_both(p.lines, axis)) for p in piece.pleats),
        lengthen=piece.lengthen and tuple(replace(one, path=one.path.mirrored(axis)) for one in piece.lengthen),
    )
    return left, right


def _called(edge: Edge, side: str, path: Path) -> Edge:
    word = side.rstrip("_")
    return replace(edge, name=side + edge.name, path=path, said=f"{word} {edge.said}" if edge.said else "")


def _over(point: Point, axis: Line) -> Point:
    return Motion.reflection(axis.start, axis.end)(point)


def _both(lines: tuple[Path, Path], axis: Line) -> tuple[Path, Path]:
    return lines[0].mirrored(axis), lines[1].mirrored(axis)


def _grain(grain: Grain | None, axis: Line) -> Grain | None:
    return grain and replace(grain, start=_over(grain.start, axis), end=_over(grain.end, axis))


def _points(piece: Piece, axis: Line) -> tuple[tuple[str, Point], ...]:
    found: list[tuple[str, Point]] = []
    for name, point in piece.points:
        mirrored = _over(point, axis)
        if mirrored.distance(point) < 2 * _ON_FOLD:
            found.append((name, point))
        else:
            found += [(RIGHT + name, point), (LEFT + name, mirrored)]
    return tuple(found)


def _mark(mark: Mark, axis: Line) -> Mark:
    return replace(
        mark,
        path=mark.path and mark.path.mirrored(axis),
        point=mark.point and _over(mark.point, axis),
    )


def _marks(piece: Piece, axis: Line, sizes: dict[str, float]) -> tuple[Mark, ...]:
    found: list[Mark] = []
    for mark in piece.marks:
        if mark.edge == piece.fold and mark.edge:
            # A place on the fold is inside the whole shape.
            spot = mark.point or piece.edge(mark.edge).path.at(mark.start)
            found.append(replace(mark, edge="", point=spot, start=0.0, end=0.0))
            continue
        if mark.point is not None and _over(mark.point, axis).distance(mark.point) < 2 * _ON_FOLD:
            found.append(mark)
            continue
        edge = RIGHT + mark.edge if mark.edge else ""
        found.append(replace(mark, name=RIGHT + mark.name, edge=edge, said=mark.label))
        start, end = mark.start, mark.end
        if mark.edge in sizes:
            whole = sizes[mark.edge]
            start, end = (whole - mark.end, whole - mark.start) if mark.kind == "opening" else (whole - mark.start, end)
        edge = LEFT + mark.edge if mark.edge else ""
        found.append(
            replace(_mark(mark, axis), name=LEFT + mark.name, edge=edge, start=start, end=end, said=mark.label)
        )
    return tuple(found)


def _dart(dart: Dart, axis: Line, size: float) -> Dart:
    return replace(
        dart,
        name=LEFT + dart.name,
        edge=LEFT + dart.edge,
        apex=_over(dart.apex, axis),
        start=size - dart.end,
        end=size - dart.start,
        pressed="end" if dart.pressed == "start" else "start",
    )


def _near_alone(pleat: Pleat) -> Pleat:
    """A pleat that runs to the fold: opened out there is no edge any more that it ends on."""
    return replace(pleat, far="", far_start=0.0, far_end=0.0, held="near")


def _pleat(pleat: Pleat, axis: Line, sizes: dict[str, float]) -> Pleat:
    one, two = _both(pleat.lines, axis)
    size, far = sizes[pleat.edge], sizes.get(pleat.far, 0.0)
    return replace(
        pleat,
        name=LEFT + pleat.name,
        edge=LEFT + pleat.edge,
        start=size - pleat.end,
        end=size - pleat.start,
        lines=(two, one),
        laid="end" if pleat.laid == "start" else "start",
        far=pleat.far and LEFT + pleat.far,
        far_start=far - pleat.far_end,
        far_end=far - pleat.far_start,
    )


def _corner(corner: Corner, side: str) -> Corner:
    before, after = (corner.before, corner.after) if side == RIGHT else (corner.after, corner.before)
    turned = side + corner.turned if corner.turned else ""
    return replace(corner, before=side + before, after=side + after, turned=turned)


def _declared(declared: Declared, side: str) -> Declared:
    before, after = (declared.before, declared.after) if side == RIGHT else (declared.after, declared.before)
    return replace(declared, before=side + before, after=side + after)
