"""Drawing on a piece, as a step writes it: `front.draw(overarm=..., instead_of=front.shoulder)`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import overload

from kit.diagnostic import message, named_edge
from kit.errors import KitError, near
from kit.geometry import Line, Point
from kit.lesson.corners import in_order, meeting
from kit.lesson.hand import HandMove, right_angles
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.role_verbs import landed
from kit.lesson.roles import drawn
from kit.lesson.verb import verb
from kit.piece.bound import carried
from kit.piece.changed import changed
from kit.piece.dart import left_where_they_lie
from kit.piece.piece import Edge
from kit.piece.role import landmark
from kit.units import Size, length


@verb
def draw(
    bench: OpenPiece,
    /,
    *,
    instead_of: str | PaperLine | Sequence[str | PaperLine] = (),
    after: str | PaperLine = "",
    **lines: PaperLine,
) -> None:
    """Draw new edges, in order around the piece: `instead_of` one or several neighbouring old ones, or `after` one that
    stays. Each line may run either way; they are turned to follow one another. A new edge has the role of what it
    stands instead of, unless its name says another.

    Example::

        line = front.centre_neck.down(2 * cm).curve_to(front.neck_point, square_to=front.centre)
        front.draw(neckline=line, instead_of=front.neck)
        front.join(front.centre, front.neckline)
    """
    old = [bench.edge_name(item) for item in _several(instead_of)]
    order = bench.order
    if not order and not old and not after:
        _first(bench, lines)
        return
    if (after and old) or (not after and not old):
        raise KitError(
            f"it is not said what {', '.join(lines) or 'the new edge'} stands instead of.",
            where=bench.where,
            do="Say instead_of=... for the edge it replaces, or after=... for the edge it follows.",
        )
    if old and order.index(old[0]) + len(old) > len(order):
        at = order.index(old[0])  # the run goes on past the last edge: begin the outline with it
        order = [*order[at:], *order[:at]]
    at = order.index(old[0]) if old else order.index(bench.edge_name(after)) + 1
    for name in old[1:]:
        if name not in order[at : at + len(old)]:
            raise KitError(f"'{name}' does not lie next to '{old[0]}'.", where=bench.where)
    kept = {edge.name: edge for edge in bench.piece.edges}
    for name in lines:
        bench.free(name)
    inside = dict(bench.piece.guides) | dict(bench.piece.points)
    for name, line in lines.items():
        if not isinstance(line, PaperLine):
            raise KitError(f"'{name}' must be a line.", where=bench.where, do="For a point use mark().")
        if (name in kept and name not in old) or name in inside:
            raise KitError(f"'{name}' is already drawn.", where=bench.where, do="Choose another name.")
    before = kept[order[at - 1]].path if len(order) > len(old) else None
    following = order[(at + len(old)) % len(order)]
    after_path = kept[following].path if following not in old else None
    edges = [kept[name] for name in order if name not in old]
    at = min(at, len(edges))
    # New lines may be given in any direction and order; they are turned so that each begins where the one before ends,
    # from the edge that stays before them to the one after.
    made = drawn({name: line.path for name, line in lines.items()}, [kept[name] for name in old])
    turned = in_order([(n, line.path) for n, line in lines.items()], before, after_path)
    new = [changed(made[name], path=path) for name, path in turned]
    _named(bench, lines)
    bench.drawn.update(lines)
    outline = changed(bench.piece, edges=(*edges[:at], *new, *edges[at:]))
    bench.piece = carried(bench.piece, left_where_they_lie(bench.piece, outline))


def _several(given: str | PaperLine | Sequence[str | PaperLine]) -> Sequence[str | PaperLine]:
    """Edges given as one or in a row."""
    return (given,) if isinstance(given, str | PaperLine) else given


def _first(bench: OpenPiece, lines: dict[str, PaperLine]) -> None:
    """The first edges on fresh paper, turned to follow one another."""
    for name in lines:
        bench.free(name)
    pairs = in_order([(name, line.path) for name, line in lines.items()], None, None)
    bench.change(edges=tuple(Edge(*pair) for pair in pairs))
    _named(bench, lines)
    # Lines ruled square to each other on fresh paper: each corner belongs to the line that was ruled from it.
    corners = right_angles(pairs)
    rows = {name: number for number, name in enumerate(lines)}
    for corner, (name, _) in ((c, pair) for c in corners for pair in pairs if pair[1].start is c.at):
        later = max((name, corner.to), key=lambda one: rows.get(one, 0))
        bench.hand = [
            changed(move, signs=(*move.signs, corner)) if move.is_line and move.name == later else move
            for move in bench.hand
        ]
    bench.drawn.update(lines)


def _named(bench: OpenPiece, lines: dict[str, PaperLine]) -> None:
    """What was drawn so far gets the names of the lines it became."""
    for name, line in lines.items():
        bench.line_named(name, line.path)


@verb
def place(bench: OpenPiece, out: Size, up: Size) -> PaperPoint:
    """A point measured from the corner of the paper (the centre line and the waistline of a block): this
    far out to the side and this far up.

    Example::

        corner = pouch.place(2 * cm, 0)
        base, top = corner.ruled("out", 15 * cm), corner.up(20 * cm)
        pouch.draw(base=base, slope=base.end.to(top), side=top.to(corner))
    """
    across, above = length(out, f"{bench.where}, out"), length(up, f"{bench.where}, up")
    at = Point(float(across), float(above))
    for size, start in ((across, Point(0.0, at.y)), (above, Point(at.x, 0.0))):
        bench.note(abs(size), start, at)
    said = across or above
    start = Point(0.0, at.y if across else 0.0)
    bench.did(HandMove("place", bench.piece_name, start, at, size=abs(float(said)), measure=said.name))
    return PaperPoint(bench, at)


@verb
def mark(bench: OpenPiece, /, **points: PaperPoint) -> None:
    """Mark and name points.

    Example::

        front.mark(button_place=front.centre_neck.down(3 * cm))
    """
    for name, point in points.items():
        bench.free(name)
        if bench.line(name) is not None:
            raise KitError(f"'{name}' is already a line.", where=bench.where, do="Choose another name.")
        bench.put_point(name, point.point)
        bench.point_named(name, point.point)
        bench.piece = landed(bench.piece, name, landmark(name))
        bench.drawn.add(name)


@overload
def guide(bench: OpenPiece, name: str, /) -> PaperLine: ...


@overload
def guide(bench: OpenPiece, /, **lines: PaperLine) -> None: ...


@verb
def guide(bench: OpenPiece, name: str = "", /, **lines: PaperLine) -> PaperLine | None:
    """Draw and name construction lines, which are not part of the outline; with a name in quotation marks, the line
    already drawn of that name.

    Example::

        front.guide(yoke=front.centre_neck.down(8 * cm).ruled("out", 20 * cm))
    """
    if name:
        if lines:
            raise KitError(
                f"'{name}' is fetched and {', '.join(lines)} drawn in one call.",
                where=bench.where,
                do="Write two: one that names the line, one that draws.",
            )
        found = bench.line(name)
        guides = [guide for guide, _ in bench.piece.guides]
        if found is None or name not in guides:
            raise KitError(f"there is no construction line '{name}'.", where=bench.where, do=near(name, guides))
        return found
    for name, line in lines.items():
        if not isinstance(line, PaperLine):
            raise KitError(f"'{name}' must be a line.", where=bench.where, do="For a point use mark().")
        bench.free(name)
        if bench.piece.has_edge(name) or bench.point(name) is not None:
            raise KitError(f"'{name}' is already used.", where=bench.where, do="Choose another name.")
        bench.put_guide(name, line.path)
        bench.line_named(name, line.path)
        bench.piece = landed(bench.piece, name, landmark(name))
        bench.drawn.add(name)
    return None


@verb
def edge(bench: OpenPiece, name: str) -> PaperLine:
    """The edge of that name, whatever else its name may mean: front.edge("line").

    Example::

        top = front.edge("neck").start
    """
    return PaperLine(bench, bench.path(bench.edge_name(name)), name)


@verb
def point(bench: OpenPiece, name: str) -> PaperPoint:
    """The point of that name, whatever else its name may mean: front.point("mark").

    Example::

        tip = front.point("shoulder_tip").up(1 * cm)
    """
    found = bench.point(name)
    if found is None:
        raise KitError(
            f"there is no point '{name}'.", where=bench.where, do=near(name, [key for key, _ in bench.piece.points])
        )
    return found


@verb
def join(bench: OpenPiece, first: str | PaperLine, second: str | PaperLine) -> None:
    """Trim or carry on two neighbouring edges so that the first ends, and the second begins, where they
    meet.

    Example::

        front.draw(hem=front.waist.parallel(8 * cm, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)
    """
    a, b = bench.edge_name(first), bench.edge_name(second)
    order = bench.order
    if order[(order.index(a) + 1) % len(order)] != b:
        a, b = b, a
        if order[(order.index(a) + 1) % len(order)] != b:
            raise KitError(f"'{a}' and '{b}' are not neighbours on the outline.", where=bench.where)
    one, two = meeting(bench.path(a), bench.path(b), (a, b), bench.where)
    bench.put_edges(changed(bench.piece.edge(a), path=one), changed(bench.piece.edge(b), path=two))


@verb
def trace(bench: OpenPiece, other: OpenPiece) -> None:
    """Trace another piece's outline, points and guides onto this one, in place of its own.

    Example::

        pouch.trace(front)
    """
    if not isinstance(other, OpenPiece):
        raise KitError(f"{other!r} is not a piece to trace.", where=bench.where, do="Name a whole piece: trace(front).")
    source = other.piece
    bench.change(
        edges=tuple(changed(edge, allowance=None) for edge in source.edges),
        points=source.points,
        guides=source.guides,
        darts=source.darts,
        pleats=source.pleats,
        landmarks=source.landmarks,
        found=source.found,
    )
    bench.drawn.update(bench.order)
    at = source.edges[0].path.start if source.edges else Point(0.0, 0.0)
    bench.did(HandMove("trace", bench.piece_name, at, at, source=source.name))


@verb
def mirror(bench: OpenPiece, axis: str | PaperLine, prefix: str = "far_") -> None:
    """Fold the paper along a straight edge and trace the other half as guide lines, named with `prefix`
    (far_side, far_hem, ...).

    Example::

        front.mirror("centre")
    """
    name = bench.edge_name(axis)
    path = bench.path(name)
    if not path.is_straight:
        raise KitError(message("refusal.paper_fold_curved", line=named_edge(name)), where=bench.where)
    line = Line(path.start, path.end)
    guides = dict(bench.piece.guides)
    for other in bench.piece.edges:
        if other.name != name:
            guides[prefix + other.name] = other.path.mirrored(line)
    for guide, guide_path in list(guides.items()):
        if not guide.startswith(prefix):
            guides[prefix + guide] = guide_path.mirrored(line)
    bench.change(guides=tuple(guides.items()))
    bench.did(HandMove("mirror", bench.piece_name, path.start, path.end, path))


@verb
def measure(bench: OpenPiece, /, **between: tuple[PaperPoint, PaperPoint] | PaperLine) -> None:
    """Write down measures by name: two points, or a line whose length it is. They can stand in the text
    as {name} and are dimensioned in the picture.

    Example::

        front.measure(neck_depth=(front.neck_point, front.centre_neck), side_seam=front.side)
    """
    for name, what in between.items():
        if isinstance(what, PaperLine):
            path = what.path
            bench.spot(name, path.length, path.start, path.end, None if path.is_straight else path)
        elif not (isinstance(what, tuple) and len(what) == 2 and all(isinstance(end, PaperPoint) for end in what)):
            raise KitError(
                f"'{name}' was given {type(what).__name__}; a measure lies between two points or along a line.",
                where=bench.where,
                do=f"Write {bench.piece_name}.measure({name}=(one_point, other_point)), or name the line it measures.",
            )
        else:
            a, b = what[0].point, what[1].point
            bench.spot(name, a.distance(b), a, b, None)
