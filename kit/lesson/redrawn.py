"""Lines redrawn when a piece is altered: an edge swung to a new end, its darts' legs kept equal; a straight line ruled
anew where paper was opened or closed, a curved one blended.

An edge is looked at from the end that meets one neighbour on (`Side`), whichever way the outline runs, so that the same
alteration serves a piece and its mirror image.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry import Cubic, Line, Path, Point
from kit.lesson.moves import true_dart
from kit.lesson.slash import with_path
from kit.piece.dart import darts_on, mouth_path, mouths
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Edge, Piece
from kit.piece.role import EdgeRole

NEAR = 0.05


@dataclass(frozen=True)
class Side:
    """One edge of a piece seen from the end that was asked for: its `path` runs from there; `turned` says that this is
    against the outline."""

    edge: Edge
    path: Path
    turned: bool

    @property
    def name(self) -> str:
        return self.edge.name

    def drawn(self, path: Path) -> Path:
        """A path seen from that end as it stands on the outline."""
        return path.reversed() if self.turned else path

    def along(self, distance: float) -> float:
        """mm from that end as mm along the edge on the outline."""
        return self.edge.path.length - distance if self.turned else distance


def lacking(piece: Piece) -> KitError:
    """The refusal of a piece that has not the edges or points that an alteration goes by."""
    return KitError(message("fit.lacking", piece=piece.title), do=message("fit.lacking_do"))


def sides(piece: Piece, role: EdgeRole) -> tuple[Edge, ...]:
    return piece.with_role(role)


def from_point(piece: Piece, role: EdgeRole, point: Point) -> Side:
    """The edge of that role with an end at `point`, seen from there; `KitError` where the piece has none."""
    for edge in piece.with_role(role):
        if edge.path.start.distance(point) < NEAR:
            return Side(edge, edge.path, False)
        if edge.path.end.distance(point) < NEAR:
            return Side(edge, edge.path.reversed(), True)
    raise lacking(piece)


def common_end(piece: Piece, one: EdgeRole, other: EdgeRole) -> Point:
    """Where an edge of one role meets one of another; `KitError` where they do not."""
    for a in piece.with_role(one):
        for b in piece.with_role(other):
            for p in (a.path.start, a.path.end):
                if min(p.distance(b.path.start), p.distance(b.path.end)) < NEAR:
                    return p
    raise lacking(piece)


def swung(path: Path, end: Point, start: Point | None = None) -> Path:
    """The path laid from `start` (as it is) to a new `end`, in its own shape: turned and made longer or shorter.

    >>> swung(Path.line(Point(0, 0), Point(10, 0)), Point(0, 20)).end
    Point(x=0.0, y=20.0)
    """
    begin = path.start if start is None else start
    old, new = path.end - path.start, end - begin
    if old.length < 1e-9 or ((old - new).length < 1e-12 and begin == path.start):
        return path
    size, turn = new.length / old.length, old.turn_to(new)

    def go(p: Point) -> Point:
        return begin + (p - path.start).rotated(turn) * size

    curves: list[Line | Cubic] = []
    for curve in path.curves:
        for bit in (curve,) if isinstance(curve, Line) else curve.as_cubics():
            if isinstance(bit, Line):
                curves.append(Line(go(bit.start), go(bit.end)))
            else:
                curves.append(Cubic(go(bit.start), go(bit.c1), go(bit.c2), go(bit.end)))
    first, last = curves[0], curves[-1]
    curves[0] = replace(first, start=begin)
    curves[-1] = replace(last if len(curves) > 1 else curves[0], end=end)
    return Path(tuple(curves))


def tail_swung(path: Path, end: Point, least: float = 80.0) -> Path:
    """The path with its last part, from a joint at least `least` mm before its end on, laid to a new end."""
    joints = [at for at in path.marks if at <= path.length - least]
    at = max(joints, default=0.0)
    if at < NEAR:
        return swung(path, end)
    return path.between(0.0, at).joined(swung(path.between(at, path.length), end))


def put(piece: Piece, paths: Mapping[str, Path], there: Mapping[str, Callable[[float], float]] | None = None) -> Piece:
    """The piece with these edges redrawn. Notches and marks keep their share of an edge where `there` does not say
    otherwise; points that lay on an end of a redrawn edge go with it."""
    ends: list[tuple[Point, Point]] = []
    for name, path in paths.items():
        old = piece.edge(name).path
        share = path.length / old.length

        def scaled(d: float, by: float = share) -> float:
            return d * by

        ends += [(old.start, path.start), (old.end, path.end)]
        piece = with_path(piece, name, path, (there or {}).get(name, scaled))
    moved = [(a, b) for a, b in ends if a.distance(b) > 1e-9]
    return replace(piece, points=tuple((name, _new(point, moved)) for name, point in piece.points))


def shifted(by: float) -> Callable[[float], float]:
    """Distances along an edge that all become `by` mm more."""
    return lambda d: d + by


def _new(point: Point, moved: list[tuple[Point, Point]]) -> Point:
    return next((new for old, new in moved if old.distance(point) < NEAR), point)


def with_points(piece: Piece, points: Mapping[str, Point]) -> Piece:
    """The piece with its points of these names elsewhere."""
    return replace(piece, points=tuple((name, points.get(name, point)) for name, point in piece.points))


def with_guides(piece: Piece, guides: Mapping[str, Path]) -> Piece:
    """The piece with its construction lines of these names redrawn."""
    return replace(piece, guides=tuple((name, guides.get(name, path)) for name, path in piece.guides))


def rejoined(piece: Piece, before: Piece) -> Piece:
    """The piece with straight construction lines that were cut through put together again, end to end."""
    whole = {name: path for name, path in before.guides if path.is_straight}
    now = dict(piece.guides)
    kept: list[tuple[str, Path]] = []
    for name, path in piece.guides:
        base = name.rsplit("_", 1)[0]
        if name not in dict(before.guides) and base in whole:
            continue
        parts = [now[name], *(now[other] for other in now if other.startswith(f"{name}_") and other not in whole)]
        kept.append((name, Path.line(parts[0].start, parts[-1].end) if name in whole and len(parts) > 1 else path))
    return replace(piece, guides=tuple(kept))


def ruled(piece: Piece, name: str) -> Piece:
    """An edge that was straight and was opened or closed, ruled straight from end to end again."""
    edge = piece.edge(name)
    line = Path.line(edge.path.start, edge.path.end)
    return put(piece, {name: line}, {name: lambda d: line.nearest(edge.path.at(d))})


def blended(piece: Piece, name: str, low: float, high: float, reach: float) -> Piece:
    """An edge redrawn as one smooth curve from `reach` mm before `low` to `reach` after `high` (mm along it), where
    paper was opened or closed between the two, but not through the mouth of a dart."""
    path = piece.edge(name).path
    taken = mouths(piece, name)
    a = max([low - reach, 0.0, *(end for _, end in taken if end <= low + 1e-6)])
    b = min([high + reach, path.length, *(start for start, _ in taken if start >= high - 1e-6)])
    if b - a < 1.0:
        return piece
    start, end = path.at(a), path.at(b)
    way, on = path.tangent_at(a + 1e-6), path.tangent_at(b - 1e-6)

    third = start.distance(end) / 3
    parts = [path.between(0.0, a)] if a > 1e-6 else []
    parts.append(Path((Cubic(start, start + way * third, end - on * third, end),)))
    parts += [path.between(b, path.length)] if path.length - b > 1e-6 else []
    new = Path.of(*parts)
    longer = new.length - path.length

    def there(d: float) -> float:
        return d if d <= a else d + longer if d >= b else a + (d - a) * (b - a + longer) / (b - a)

    return with_path(piece, name, new, there)


def solved(off: Callable[[float], float], low: float, high: float) -> float:
    """Where `off` is nothing between two places of which one gives too little and the other too much."""
    sign = 1.0 if off(high) > 0 else -1.0
    for _ in range(60):
        middle = (low + high) / 2
        if off(middle) * sign > 0:
            high = middle
        else:
            low = middle
    return (low + high) / 2


def aimed(piece: Piece, name: str, apex: Point) -> Piece:
    """A dart that points elsewhere: its apex at that height on the line that leaves both legs equal. A cap is drawn
    again."""
    dart = next(d for d in piece.darts if d.name == name)
    path = piece.edge(dart.edge).path
    one, two = path.at(dart.start), path.at(dart.end)
    middle, across = one.mid(two), (two - one).unit()
    capped = not mouth_path(piece, dart).is_straight
    apex = apex - across * across.dot(apex - middle)
    piece = replace(piece, darts=tuple(replace(d, apex=apex) if d.name == name else d for d in piece.darts))
    return true_dart(piece, name) if capped else piece


def evened(piece: Piece) -> Piece:
    """The piece with darts whose legs a redrawn edge left unequal pointed a little aside, so that they close."""
    for dart in piece.darts:
        path = piece.edge(dart.edge).path
        one, two = (dart.apex.distance(path.at(at)) for at in (dart.start, dart.end))
        if abs(one - two) > 0.01:
            piece = aimed(piece, dart.name, dart.apex)
    return piece


def taken_down(piece: Piece, side: Side, at_start: float, at_end: float, down: Side, up: Side) -> Piece:
    """An edge with darts (a waist) redrawn lower: by `at_start` mm along `down` at the end it is seen from, by `at_end`
    along `up` at its other end, evenly between the two. The legs of each dart become shorter alike, so that it closes;
    caps are drawn again. `down` and `up` are the edges it meets, seen from its ends; they are cut or run on."""
    path = side.path
    darts = darts_on(piece, side.name)
    capped = [d.name for d in darts if not mouth_path(piece, d).is_straight]
    start, end = _on(down.path, at_start), _on(up.path, at_end)
    total = path.start.distance(path.end)
    nodes: list[tuple[float, float, Dart]] = []
    for dart in darts:
        a, b = sorted((side.along(dart.start), side.along(dart.end)))
        nodes.append((a, b, dart))
    nodes.sort(key=lambda node: node[0])
    parts: list[Path] = []
    opened: list[tuple[Dart, Point, Point]] = []
    at, here = 0.0, start
    for a, b, dart in nodes:
        middle = path.at(a).mid(path.at(b))
        share = path.start.distance(middle) / total
        less = at_start + (at_end - at_start) * share
        one, two = (path.at(d) + (dart.apex - path.at(d)).unit() * less for d in (a, b))
        if a - at > 1e-6:
            parts.append(swung(path.between(at, a), one, here))
        parts.append(Path.line(one, two))
        opened.append((dart, one, two))
        at, here = b, two
    if path.length - at > 1e-6:
        parts.append(swung(path.between(at, path.length), end, here))
    new = side.drawn(Path.of(*parts))
    beside: dict[str, Path] = {}
    there: dict[str, Callable[[float], float]] = {}
    for edge, by in ((down, at_start), (up, at_end)):
        if abs(by) > 1e-9:
            beside[edge.name] = edge.drawn(cut_or_run_on(edge.path, by))
            there[edge.name] = shifted(0.0 if edge.turned else -by)
    piece = put(piece, {side.name: new, **beside}, there)
    placed = {dart.name: sorted((new.nearest(one), new.nearest(two))) for dart, one, two in opened}
    piece = replace(
        piece,
        darts=tuple(
            replace(d, start=placed[d.name][0], end=placed[d.name][1]) if d.name in placed else d for d in piece.darts
        ),
    )
    for name in capped:
        piece = true_dart(piece, name)
    return piece


def _on(path: Path, distance: float) -> Point:
    """A place along a path, or beyond its start where `distance` is less than nothing."""
    return path.at(distance) if distance >= 0 else path.start - path.start_tangent * -distance


def cut_or_run_on(path: Path, distance: float) -> Path:
    """A path that begins `distance` mm farther on, or as much sooner, straight on."""
    if abs(distance) < 1e-9:
        return path
    return path.between(distance, path.length) if distance > 0 else path.extended(-distance, "start")
