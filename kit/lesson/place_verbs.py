"""What is marked inside a piece: drill marks, buttonholes with their buttons, and where another piece is laid."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Literal

from kit.diagnostic import Value, measured, message, named_edge, titled
from kit.errors import KitError, near
from kit.geometry import Motion, Path, Point
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.true_verbs import bench_of
from kit.lesson.verb import verb
from kit.piece.folded import cloth_left, folded
from kit.piece.piece import Mark, Piece
from kit.sewing.seam_walk import opposed
from kit.units import Size

TOWARD_EDGE = 3.0
"""A buttonhole square to the edge begins this much nearer to the edge than the button stands, because the button pulls
to its end (common practice, no source)."""
_REACH_OUT = 1.0


@verb
def drill(bench: OpenPiece, name: str, point: PaperPoint, said: str = "") -> None:
    """A drill mark: a point inside the piece pricked through all layers.

    Example::

        front.drill("pocket_corner", front.side_waist.into(8 * cm), said="pocket corner")
    """
    _inside(bench.freeze(), point.point, f"the drill mark '{name.replace('_', ' ')}'")
    _mark(bench, Mark(name, "drill", point=point.point, said=said))


@verb
def buttonholes(
    bench: OpenPiece,
    line: str | PaperLine,
    *,
    inside: Size,
    first: Size,
    last: Size,
    count: int | None = None,
    spacing: Size | None = None,
    button: Size | None = None,
    thick: Size = 0,
    slit: Size | None = None,
    lie: Literal["horizontal", "vertical"] = "horizontal",
    onto: str | PaperLine | None = None,
    turned: bool | None = None,
    name: str = "buttonhole",
) -> int:
    """Buttonholes along an edge, `inside` it by this much, from the `first` place along it to the `last`: by their
    `count`, evenly, or from the first one at a `spacing`, as many as reach the last.

    The slit is as long as the button's diameter and its thickness together (common practice, no source), or as
    long as `slit` says. Horizontal slits lie square to the edge and begin 3 mm nearer to it than the button
    stands; vertical ones lie along it with the button at their middle. The buttons are marked on the edge `onto`
    of the piece that laps under, at the same distances from the ends that meet and as far inside; without it on
    this piece, as on a mirrored pair, where each mark is a hole on one half and a button's place on the other
    (`front.left.buttonhole_1`). Gives how many there are.

    Example::

        front.cut(2, mirrored=True)
        front.buttonholes(front.centre, inside=2 * cm, first=3 * cm, last=33 * cm, count=5,
                          button=15 * mm)
    """
    piece = bench.freeze()
    path, label = _line(piece, line, bench.where)
    deep = distance(inside, f"{bench.where}, inside")
    low, high = distance(first, f"{bench.where}, first"), distance(last, f"{bench.where}, last")
    if not low <= high <= path.length + 1e-6:
        raise KitError(
            message(
                "refusal.buttonholes_off",
                start=measured(low),
                end=measured(high),
                edge=label,
                length=measured(path.length),
            ),
            where=bench.where,
            do=message("refusal.buttonholes_off_do"),
        )
    places = _places(float(low), float(high), count, spacing, bench.where)
    if lie not in ("horizontal", "vertical"):
        raise KitError(f"a buttonhole does not lie '{lie}'.", do=near(lie, ("horizontal", "vertical")))
    if (slit is None) == (button is None):
        raise KitError(
            "it is not said how long the slit is.",
            where=bench.where,
            do="Give the button, button=... and its thickness, thick=..., or the slit itself, slit=....",
        )
    if slit is not None:
        long = float(distance(slit, f"{bench.where}, slit"))
    else:
        assert button is not None
        long = float(distance(button, f"{bench.where}, button")) + float(distance(thick, f"{bench.where}, thick"))
    if long <= 0:
        raise KitError(
            message("refusal.buttonhole_nothing"), where=bench.where, do=message("refusal.buttonhole_nothing_do")
        )
    gap = min((b - a for a, b in pairwise(places)), default=math.inf)
    if lie == "vertical" and gap <= long:
        raise KitError(
            message("refusal.slits_meet", size=measured(long), gap=measured(gap)),
            where=bench.where,
            do=message("refusal.slits_meet_do"),
        )
    way = 1.0 if cloth_left(piece) else -1.0
    for number, place in enumerate(places, start=1):
        along, inward = path.tangent_at(place), path.normal_at(place) * way
        stand = path.at(place) + inward * float(deep)
        begin = stand - inward * TOWARD_EDGE if lie == "horizontal" else stand - along * (long / 2)
        hole = Path.line(begin, begin + (inward if lie == "horizontal" else along) * long)
        for end in (hole.start, hole.end):
            _inside(piece, end, f"buttonhole {number}")
        _mark(bench, Mark(f"{name}_{number}", "buttonhole", path=hole))
    middle = path.at(places[0])
    bench.note(deep, middle, middle + path.normal_at(places[0]) * (way * float(deep)))
    for value, place in ((low, places[0]), (high, places[-1])):
        if place > 1e-6:
            bench.note(value, path.start, path.at(place), path.between(0.0, place))
    _buttons(bench, piece, path, places, float(deep), onto, turned, name)
    return len(places)


def _buttons(
    bench: OpenPiece,
    piece: Piece,
    path: Path,
    places: list[float],
    deep: float,
    onto: str | PaperLine | None,
    turned: bool | None,
    name: str,
) -> None:
    target = bench
    other = path
    if onto is not None:
        target = bench if isinstance(onto, str) else bench_of(onto, bench.where)
        other, label = _line(target.freeze(), onto, target.where)
        if abs(other.length - path.length) > 0.5:
            raise KitError(
                message(
                    "refusal.buttons_length", edge=label, length=measured(other.length), other=measured(path.length)
                ),
                where=target.where,
                do=message("refusal.buttons_length_do"),
            )
    back = other is not path and (opposed(path, other) if turned is None else turned)
    way = 1.0 if cloth_left(target.freeze()) else -1.0
    for number, place in enumerate(places, start=1):
        at = min(max(other.length - place if back else place, 0.0), other.length)
        stand = other.at(at) + other.normal_at(at) * (way * deep)
        _inside(target.freeze(), stand, f"button {number}")
        _mark(target, Mark(f"{name}_button_{number}", "point", point=stand, said=f"button {number}"))


@verb
def placement(
    bench: OpenPiece,
    name: str,
    other: OpenPiece,
    *,
    at: PaperPoint,
    by: PaperPoint | None = None,
    turned: float = 0.0,
    said: str = "",
) -> None:
    """Where another piece, such as a pocket, is laid on this one: its outline, its point `by` (its first corner
    where none is named) at the point `at`, turned by this many degrees anticlockwise. A piece on the fold is drawn
    opened out, unless its fold is laid on the fold of this one; their `cut` tells, so write it before this.

    Example::

        front.placement("pocket_place", pocket, at=front.centre_waist.out(6 * cm))
    """
    laid = other.freeze()
    if laid.name == bench.piece_name:
        raise KitError("a piece cannot be laid on itself.", where=bench.where, do="Name the pocket's piece.")
    if not math.isfinite(turned):
        raise KitError(f"{turned} is not an angle.", where=bench.where, do="Give degrees, such as 5.")
    pivot = by.point if by is not None else laid.edges[0].path.start
    if by is not None and by.sheet is not other:
        raise KitError(
            f"the point to lay it by does not lie on the {laid.title}.",
            where=bench.where,
            do="Name a point of the piece that is laid: by=pocket.corner.",
        )
    turn = Motion.rotation(math.radians(turned), pivot)
    motion = turn.then(Motion.translation(at.point - turn(pivot)))
    own = bench.freeze()
    shape = _laid_shape(laid, own, motion)
    for point in shape.points(1.0):
        if not own.outline.contains(point):
            out = min(edge.path.distance_to(point) for edge in own.edges)
            if out > _REACH_OUT:
                over = _beyond_fold(own, point)
                raise KitError(
                    message("refusal.laid_outside", piece=titled(laid.title), by=measured(out)),
                    where=bench.where,
                    do=message("refusal.laid_over_fold_do" if over else "refusal.laid_outside_do"),
                )
    _mark(bench, Mark(name, "placement", path=shape, said=said or f"{laid.title.lower()} placement"))


def _laid_shape(laid: Piece, own: Piece, motion: Motion) -> Path:
    """The outline of a piece as it is laid: whole, of one cut on the fold opened out; where its fold comes to lie on
    that of the piece below, its half, from the fold round to the fold."""
    if not laid.fold:
        return Path(tuple(laid.outline.curves)).moved(motion)
    fold = laid.edge(laid.fold).path
    names = [edge.name for edge in laid.edges]
    i = names.index(laid.fold)
    half = [c for name in (*names[i + 1 :], *names[:i]) for c in laid.outline.edge(name).curves]
    if own.fold:
        below = own.edge(own.fold).path
        if max(below.distance_to(motion(end)) for end in (fold.start, fold.end)) < _REACH_OUT:
            return Path(tuple(half)).moved(motion)
    mirror = Motion.reflection(fold.start, fold.end)
    return Path((*half, *(c.reversed().moved(mirror) for c in reversed(half)))).moved(motion)


def _beyond_fold(piece: Piece, point: Point) -> bool:
    """Whether a point outside a piece lies beyond its fold."""
    if not piece.fold:
        return False
    fold = piece.edge(piece.fold).path
    return fold.distance_to(point) <= min(edge.path.distance_to(point) for edge in piece.edges) + 1e-6


def _mark(bench: OpenPiece, mark: Mark) -> None:
    if any(mark.name == one.name for one in bench.piece.marks):
        raise KitError(f"'{mark.name}' is already marked.", where=bench.where, do="Give it another name: name=....")
    bench.change(marks=(*bench.piece.marks, mark))


def _line(piece: Piece, given: str | PaperLine, where: str) -> tuple[Path, Value]:
    """A line of the piece and how it is said: an edge as sewn, or a guide such as the centre front line."""
    name = given if isinstance(given, str) else given.name
    if piece.has_edge(name):
        run = folded(piece, (name,))
        if run.folds:
            raise KitError(
                message("refusal.dart_in_way", edge=named_edge(piece.edge(name))),
                where=where,
                do=message("refusal.dart_in_way_do"),
            )
        return run.path, named_edge(piece.edge(name))
    guides = dict(piece.guides)
    if name in guides:
        return guides[name], named_edge(name)
    if isinstance(given, PaperLine):
        return given.path, given.told
    raise KitError(
        f"there is no line '{name}'.", where=where, do=near(name, [*guides, *(edge.name for edge in piece.edges)])
    )


def _places(low: float, high: float, count: int | None, spacing: Size | None, where: str) -> list[float]:
    if count is None and spacing is not None:
        return _spaced(low, high, spacing, where)
    if count is None or spacing is not None:
        raise KitError(
            "it is not said how many buttonholes there are.",
            where=where,
            do="Give either their count=... or their spacing=....",
        )
    if count < 1 or count != int(count) or (count == 1 and high - low > 1e-6) or (count > 1 and high - low < 1e-6):
        raise KitError(
            message("refusal.buttonholes_count", count=int(count), length=measured(high - low)),
            where=where,
            do=message("refusal.buttonholes_count_do"),
        )
    return [low + (high - low) * i / max(count - 1, 1) for i in range(int(count))]


def _spaced(low: float, high: float, spacing: Size, where: str) -> list[float]:
    step = float(distance(spacing, f"{where}, spacing"))
    if step <= 0:
        raise KitError(message("refusal.spacing_nothing"), where=where, do=message("refusal.spacing_nothing_do"))
    number = math.floor((high - low) / step + 1e-6) + 1
    if number > 100:
        raise KitError(message("refusal.buttonholes_many", count=number), where=where, do=message("refusal.unit_do"))
    return [low + step * i for i in range(number)]


def _inside(piece: Piece, point: Point, what: str) -> None:
    if not piece.outline.contains(point) and min(edge.path.distance_to(point) for edge in piece.edges) > 0.01:
        raise KitError(message("refusal.outside_piece"), where=piece.title, do=message("refusal.outside_piece_do"))
