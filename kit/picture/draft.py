"""Drafting pictures: one step, and the finished draft.

A step's picture is made from its record alone, the same record the sentence is filled in from: what is new is
heavy and in the accent ink, what was traced is dark, what stands is thin and grey, what was taken away is a dashed
ghost. The strokes of the hand are numbered in its order, square corners and lines that run through have their signs,
the points a stroke starts from their names, and every measure of the step is dimensioned, in an enlarged corner where
it would be lost on the page. The alternative text is read off the same record.
"""

from __future__ import annotations

from collections.abc import Iterable

from kit.geometry import Curve, Line, Path, Point, Vector
from kit.language import called, say
from kit.lesson.pattern import Pattern, StepRecord
from kit.picture.cropped import cut_to, in_strip, locator, strip_bounds, strip_of
from kit.picture.dart import in_step
from kit.picture.dimension_line import in_lanes
from kit.picture.drawing import Area, Dot, Drawing, Item, Label, Stroke
from kit.picture.enlarged import lens_items, lenses, small_corners
from kit.picture.markings import pleat_in_step
from kit.picture.place import Scaling, slid
from kit.picture.rows import GAP, Bounds, bounds_of_paths, in_rows, print_scale, side_by_side
from kit.picture.step_lines import SIGNS, cut_of, guides_shown, guides_within, lines_of, standing, traced_edges
from kit.picture.step_strips import strip_items
from kit.picture.step_texts import (
    Letters,
    Telling,
    dimension,
    line_names,
    mark_names,
    measures_of,
    order_numbers,
    point_names,
    shown_value,
)
from kit.picture.step_words import step_alt
from kit.piece.allowance import CutLine
from kit.piece.piece import Piece
from kit.units import System, show
from kit.wording.lists import listed, strung

__all__ = ["bench_drawing", "shown_value", "step_drawing"]

_BESIDE = 1.15
"""How many times larger strips must be shown beside the pieces than below them."""
_LANE = 0.05
"""Of its reach that a picture's dimension line stands farther out than one it would lie on."""


def step_drawing(
    record: StepRecord, system: System = "cm", both: bool = False, letters: Letters | None = None
) -> Drawing:
    """The picture of one drafting step: the pieces it changes, in rows that fill a booklet page. `letters` are those
    its points have on the worksheet, for each piece (kit.prose.worksheet.letters_of).

    A piece much smaller than the largest is shown magnified so that its lines can be told apart; every measure is
    written out, so nothing is read off the picture's scale.
    """
    items: list[Item] = []
    shown = _shown(record)
    over = _laid_over(record)
    pieces = [piece for piece in record.pieces if piece.edges or piece.guides]
    pieces = [piece for piece in pieces if piece.name in shown or piece.name in over.values()] or pieces
    ground = [piece for piece in pieces if piece.name not in over]
    cuts = {piece.name: cut_of(piece, record) for piece in pieces}
    many = len(record.allowed) > 2
    strips = {piece.name: None if over else strip_of(piece, record) for piece in ground}
    sizes = []
    for piece in ground:
        bounds, strip = _piece_bounds(piece, record, cuts[piece.name]), strips[piece.name]
        sizes.append((piece, bounds if strip is None else strip_bounds(piece, strip, bounds)))
    places, reach = in_rows(sizes, many)
    on = {piece.name: (bounds, put) for piece, bounds, put in places}
    laid = [(piece, *on[over.get(piece.name, piece.name)]) for piece in pieces]
    box = _box(places)
    scale = print_scale(box[2] - box[0], box[3] - box[1], many)
    tell = Telling(system, both, letters or {}, reach)
    puts = {piece.name: put for piece, _, put in laid}
    corners = small_corners([(piece, put) for piece, _, put in laid], record, tell, scale)
    windows, _ = lenses(corners, puts, box, scale)
    apart = {(c.piece.name, m.name) for c in corners for m in c.measures}
    once = {m.name for c in corners for m in c.measures}
    for piece, bounds, put in laid:
        below = next((p for p in ground if p.name == over.get(piece.name)), None)
        middle, strip = _middle(bounds), strips.get(piece.name)
        lines = lines_of(piece, record, put, reach, cuts[piece.name], below is not None)
        if strip is None:
            items.extend(lines)
        else:
            items.extend(cut_to(lines, strip, put))
            items.extend(locator(piece, record, strip, bounds, put))
            title = piece.title or called(piece.name)
            items.append(Label(title, put.point(Point(middle.x, strip.high)), "ghost"))
        if below is None and strip is None:
            outline = Area(put.curves(tuple(curve for edge in piece.edges for curve in edge.path.curves)))
            title = piece.title or called(piece.name)
            items.append(Label(title, put.point(_inside(piece, bounds)), "ghost", of=outline if piece.edges else None))
        told = []
        for measure in measures_of(piece, record, tell):
            small = measure.name in once and not measure.allowance
            if (piece.name, measure.name) not in apart and not small:
                told.append(dimension(measure, middle, put, reach))
        items.extend(in_lanes(told, reach * _LANE))
        mine = [window for window in windows if window.corner.piece.name == piece.name]
        for label in line_names(piece, record, middle, put, reach, below):
            if not any(window.takes(label.at, put) for window in mine):
                items.append(label)
        items.extend(mark_names(piece, record, middle, put, reach))
        if piece.fold and cuts[piece.name] is not None:
            fold = piece.edge(piece.fold).path
            at = put.point(fold.at(fold.length / 2))
            items.append(Label(say("picture.place_on_fold"), at, "small", of=put.curves(fold.curves)))
        for label in (*point_names(piece, record, tell, middle, put), *order_numbers(piece, record, put)):
            spot = label.of if isinstance(label.of, Point) else label.at
            outside = strip is not None and not in_strip(spot, strip, put)
            if not outside and not any(window.takes(spot, put) for window in mine):
                items.append(label)
    for window in windows:
        name = window.corner.piece.name
        bounds, put = on[over.get(name, name)]
        there = over.get(name, name)
        layers = [(p, cuts[p.name]) for p, _, _ in laid if over.get(p.name, p.name) == there]
        items.extend(lens_items(window, record, tell, put, layers, _middle(bounds)))
    items.extend(_traced_whole(record, laid))
    items.extend(_strips(record, box if places else None, reach, tell, many))
    alt = [step_alt(record, system, both)]
    if any(isinstance(item, Stroke) and ".diagonal." in item.name for item in items):
        alt.append(say("picture.step_diagonals"))
    if windows:
        texts = [measure.text for window in windows for measure in window.corner.measures]
        alt.append(say("picture.step_enlarged_too", measures=listed(texts)))
    return Drawing(tuple(items), alt=" ".join(alt), title=record.title)


def _shown(record: StepRecord) -> set[str]:
    """Names of the pieces on which something is to be seen; where one is only traced, the one it is traced from too."""
    names = {owner for owner, _, _ in (*record.new, *record.removed)}
    names |= {owner for owner, _, _ in record.new_points} | {spot.piece for spot in record.spots}
    names |= {owner for owner, _ in (*record.new_notches, *record.new_marks)}
    names |= {source for source, _ in _only_traced(record)}
    return names | set(record.allowed)


def _only_traced(record: StepRecord) -> list[tuple[str, str]]:
    """(from, to) of pieces that the step only traces."""
    found = []
    for piece in record.pieces:
        fresh = {name for owner, name, _ in record.new if owner == piece.name}
        for move in record.moves:
            if move.kind == "trace" and move.piece == piece.name and fresh == traced_edges(piece, record):
                found.append((move.source, piece.name))
    return found


def _traced_whole(record: StepRecord, laid: list[tuple[Piece, Bounds, Scaling]]) -> Iterable[Item]:
    """An arrow from what is traced to the trace, where nothing else is new."""
    boxes = {piece.name: _put_box(bounds, put) for piece, bounds, put in laid}
    traced = _only_traced(record)
    for source, name in traced:
        if source in boxes and name in boxes:
            b = boxes[name]
            alike = {source} | {other for of, other in traced if of == source}
            beside = [box for one, box in boxes.items() if one in alike]
            before = [box for box in beside if box[2] < b[0] and box[1] < b[3] and b[1] < box[3]]
            a = max(before, key=lambda box: box[2], default=boxes[source])  # several tracings stand side by side
            x, y = (max(a[0], b[0]) + min(a[2], b[2])) / 2, (max(a[1], b[1]) + min(a[3], b[3])) / 2
            if b[0] > a[2]:
                arrow = Line(Point(a[2], y), Point(b[0], y))
            elif b[3] < a[1]:
                arrow = Line(Point(x, a[1]), Point(x, b[3]))
            else:
                continue
            if not any(_runs_through(arrow, box) for one, box in boxes.items() if one != name and box != a):
                yield Stroke((arrow.between(0.12, 0.88),), "aid", arrow="end", name=f"{name}.traced")


def _runs_through(arrow: Line, box: Bounds) -> bool:
    """Whether an upright or level arrow passes through a box: it would seem to mean what lies there."""
    x0, x1 = sorted((arrow.start.x, arrow.end.x))
    y0, y1 = sorted((arrow.start.y, arrow.end.y))
    return x0 < box[2] and box[0] < x1 and y0 < box[3] and box[1] < y1


def bench_drawing(pattern: Pattern, system: System = "cm") -> Drawing:
    """The draft as it stands: stitch lines, guides and names of all pieces side by side."""
    items: list[Item] = []
    places = side_by_side([(piece, bounds_of_paths(edge.path for edge in piece.edges)) for piece in pattern.pieces])
    said = []
    reach = max((b[3] - b[1] for _, b, _ in places), default=100.0)
    for piece, bounds, dx in places:
        move = Vector(dx, 0.0)
        for _, path in guides_within(piece):
            items.append(Stroke(_moved(path.curves, move), "guide"))
        for edge in piece.edges:
            role = "fold" if edge.name == piece.fold else "new"
            curves = _moved(edge.path.curves, move)
            items.append(Stroke(curves, role, name=f"{piece.name}.{edge.name}"))  # type: ignore[arg-type]
        for dart in piece.darts:
            items.extend(in_step(piece, dart, "new", by=move))
        for pleat in piece.pleats:
            items.extend(Scaling(1.0, Point(dx, 0.0)).items(pleat_in_step(piece, pleat, "new", reach * SIGNS)))
        for name, point in standing(piece):
            items.append(Dot(point + move, "kept", f"{piece.name}.{name}"))
        foot = Point((bounds[0] + bounds[2]) / 2, bounds[1] - reach * 0.05)
        items.append(Label(piece.title, foot + move, "name"))
        width, height = show(bounds[2] - bounds[0], system), show(bounds[3] - bounds[1], system)
        said.append(say("picture.draft_piece", piece=piece.title, width=width, height=height))
    alt = say("picture.draft", title=pattern.lesson.title, body=pattern.body.said, pieces=strung(said, "parted"))
    return Drawing(tuple(items), alt=alt, title=pattern.lesson.title)


def _strips(record: StepRecord, box: Bounds | None, reach: float, tell: Telling, many: bool) -> Iterable[Item]:
    """The strips a step cuts, below the pieces (which cover `box`), or at their right where all is shown larger so."""
    strips = list(strip_items(record.strips, 0.0, tell))
    if not strips or box is None:
        return strips
    x0, y0, x1, y1 = bounds_of_paths(Path(item.curves) for item in strips if isinstance(item, Stroke))
    wide, high, gap = box[2] - box[0], box[3] - box[1], reach * GAP
    below = print_scale(max(wide, x1 - x0), high + gap - y0, many)
    if print_scale(wide + gap + x1 - x0, max(high, y1 - y0), many) > below * _BESIDE:
        return [slid(item, Vector(box[2] + gap - x0, (box[1] + box[3] - y0 - y1) / 2)) for item in strips]
    return [slid(item, Vector(0.0, box[1] - gap)) for item in strips]


# ---- placing ----------------------------------------------------------------------------------------------


def _piece_bounds(piece: Piece, record: StepRecord, cut: CutLine | None) -> Bounds:
    paths = [edge.path for edge in piece.edges] + [path for _, path in guides_shown(piece, record)]
    paths += [path for owner, _, path in (*record.new, *record.removed) if owner == piece.name]
    if cut is not None:
        paths.append(Path(cut.curves))
    return bounds_of_paths(paths)


def _put_box(bounds: Bounds, put: Scaling) -> Bounds:
    low, high = put.point(Point(bounds[0], bounds[1])), put.point(Point(bounds[2], bounds[3]))
    return (low.x, low.y, high.x, high.y)


def _box(places: list[tuple[Piece, Bounds, Scaling]]) -> Bounds:
    """What the pieces cover in the drawing."""
    boxes = [_put_box(bounds, put) for _, bounds, put in places] or [(0.0, 0.0, 1.0, 1.0)]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def _middle(bounds: Bounds) -> Point:
    return Point((bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2)


def _laid_over(record: StepRecord) -> dict[str, str]:
    """Pieces this step traced from another one that is in the picture too: they are drawn lying on it."""
    here = {piece.name for piece in record.pieces}
    fresh = {owner for owner, _, _ in record.new}
    before = {owner for owner, _, _ in record.removed}
    return {
        piece.name: piece.source
        for piece in record.pieces
        if piece.source in here and piece.name in fresh and piece.name not in before
    }


def _moved(curves: tuple[Curve, ...], by: Vector) -> tuple[Curve, ...]:
    if by.x == 0 and by.y == 0:
        return curves
    from kit.geometry import Motion

    motion = Motion.translation(by)
    return tuple(curve.moved(motion) for curve in curves)


def _inside(piece: Piece, bounds: Bounds) -> Point:
    """A quick place for the piece's title: the middle of its bounds, or inside the outline where that is not."""
    middle = Point((bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2)
    corners = [edge.path.start for edge in piece.edges]
    if not corners:
        return middle
    mean = Point(sum(p.x for p in corners) / len(corners), sum(p.y for p in corners) / len(corners))
    return middle.mid(mean)
