"""How marks, pleats and tucks are drawn: on the printed piece, and in the pictures of drafting steps.

A drill mark is a small circle with a cross, a buttonhole a slit with a bar at each end, as is a slit for a placket, a
placement the outline of what is laid there, an opening two ticks across its edge; hooks, bars, eyes, snaps and eyelets
are drawn as what they are. A pleat shows its two lines, its fold, and arrows across it in the direction it is laid; a
tuck shows its two rows of stitching in place of the lines.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

from kit.geometry import Arc, Line, Path, Point, Vector
from kit.language import say
from kit.picture.drawing import Dot, Item, Stroke, StrokeRole
from kit.picture.fastener_signs import ACROSS, SIGNS, sign
from kit.picture.lettering import upright
from kit.picture.notes import Note, Places, Standing, around, beside
from kit.piece.allowance import NOTCH_LENGTH, CutLine
from kit.piece.darts_and_pleats import Pleat
from kit.piece.double_dart import DoubleDart, double_dart
from kit.piece.piece import LengthenLine, Mark, Piece
from kit.piece.pleat import fold_line, lies

DRILL_RADIUS = 2.0
BAR = 2.5
LENGTHEN = 4.0
"""mm between the two lines at which a piece is lengthened or shortened."""
_ARROWS = 70.0
_LEAST_ARROW = 8.0  # an arrow across a narrow tuck runs on beyond it


def mark_items(piece: Piece, mark: Mark, letters: float) -> list[Item]:
    """A mark as printed. `letters` is how much larger than on paper small signs are drawn."""
    name = f"{piece.name}.{mark.name}"
    if mark.kind == "opening" and piece.has_edge(mark.edge):
        return _opening(piece, mark, name)
    return signs(mark, place_of(piece, mark), name, letters)


def signs(mark: Mark, at: Point | None, name: str, letters: float, role: StrokeRole | None = None) -> list[Item]:
    """A mark other than an opening; `role` draws all of it in one ink, as in a step's picture."""
    items: list[Item] = []
    if mark.kind in SIGNS:
        line = mark.path or (None if at is None else Path.line(at, at + Vector(1.0, 0.0)))
        if line is not None:
            shapes = sign(mark.kind, line, ACROSS * min(letters, 2.0))
            items += [Stroke(curves, role or "symbol", closed=closed, name=name) for curves, closed in shapes]
    elif (dart := double_dart(mark)) is not None:
        items += _double_dart(dart, name, letters, role)
    elif mark.path is not None:
        kinds: dict[str, StrokeRole] = {"buttonhole": "symbol", "slit": "symbol", "placement": "placement"}
        drawn = role or kinds.get(mark.kind, "mark")
        items.append(Stroke(mark.path.curves, drawn, name=name))
        if mark.kind in ("buttonhole", "slit"):
            for end, way in ((mark.path.start, mark.path.start_tangent), (mark.path.end, mark.path.end_tangent)):
                half = way.left() * (BAR * letters)
                items.append(Stroke((Line(end - half, end + half),), drawn, name=f"{name}.bar"))
    elif at is not None and mark.kind == "drill":
        radius, drawn = DRILL_RADIUS * letters, role or "symbol"
        items.append(Stroke((Arc(at, radius, 0.0, 2 * math.pi),), drawn, closed=True, name=name))
        for way in (Vector(1.0, 0.0), Vector(0.0, 1.0)):
            arm = way * (radius * 1.5)
            items.append(Stroke((Line(at - arm, at + arm),), drawn, name=f"{name}.cross"))
    elif at is not None:
        items.append(Dot(at, "new" if role == "new" else "mark", name))
    return items


def lengthen_items(piece: Piece, line: LengthenLine, letters: float) -> list[Item]:
    """A lengthen line as printed: two lines close together, the place itself between them."""
    off = (line.path.end - line.path.start).unit().left() * (LENGTHEN / 2 * min(letters, 2.0))
    name = f"{piece.name}.lengthen"
    return [Stroke((Line(line.path.start + way, line.path.end + way),), "lengthen", name=name) for way in (off, -off)]


def lengthen_note(line: LengthenLine, *, needed: bool) -> Note:
    """What a lengthen line is for, beside it."""
    middle = line.path.at(line.path.length / 2)
    return Note(say("picture.lengthen_here"), middle, beside(line.path, (0.5, 0.4, 0.6, 0.3, 0.7)), needed=needed)


def _double_dart(dart: DoubleDart, name: str, letters: float, role: StrokeRole | None) -> list[Item]:
    """Both stitching lines, the fold between the points, the widest place, and a dot at each of its four corners."""
    ink = "new" if role == "new" else "mark"
    items: list[Item] = [Stroke(leg.curves, role or "stitch", name=name) for leg in dart.legs]
    items.append(Stroke(dart.fold.curves, "guide" if role else "mark", name=f"{name}.fold"))
    items.append(Stroke((Line(dart.one, dart.other),), "guide" if role else "mark", name=f"{name}.widest"))
    for corner, what in ((dart.top, "top"), (dart.one, "widest"), (dart.bottom, "bottom"), (dart.other, "widest")):
        items.append(Dot(corner, ink, f"{name}.{what}"))  # type: ignore[arg-type]
    return items


def place_of(piece: Piece, mark: Mark) -> Point | None:
    """Where a point or drill mark lies; on its edge where it has no point of its own."""
    if mark.point is not None:
        return mark.point
    if mark.kind in ("point", "drill", *SIGNS) and piece.has_edge(mark.edge):
        path = piece.edge(mark.edge).path
        return path.at(min(max(mark.start, 0.0), path.length))
    return None


def mark_note(piece: Piece, mark: Mark, letters: float) -> Note | None:
    """The mark's name, to stand beside it."""
    if mark.kind == "opening" and piece.has_edge(mark.edge):
        edge = piece.edge(mark.edge)
        low, high = (min(max(d, 0.0), edge.path.length) for d in (mark.start, mark.end))
        path = edge.path.between(min(low, high), max(low, high)) if abs(high - low) > 0.5 else edge.path
        inward = 1.0 if piece.outline.area > 0 else -1.0
        anchor = path.at(path.length / 2) + path.normal_at(path.length / 2) * inward
        return Note(mark.label, anchor, _beside_edge(edge.path, (low + high) / 2, high - low, inward, letters))
    if (dart := double_dart(mark)) is not None:
        leg = dart.legs[0] if abs(dart.one.x) > abs(dart.other.x) else dart.legs[1]
        return Note(mark.label, leg.at(leg.length / 2), beside(leg, (0.3, 0.7, 0.2, 0.8)))
    if mark.path is not None:
        if mark.kind == "buttonhole" or mark.kind in SIGNS:
            return Note(mark.label, mark.path.at(mark.path.length / 2), _beside_short(mark.path, letters))
        return Note(mark.label, mark.path.at(mark.path.length / 2), beside(mark.path))
    at = place_of(piece, mark)
    if at is None:
        return None
    clear = (DRILL_RADIUS * 1.5 if mark.kind == "drill" else ACROSS / 2 if mark.kind in SIGNS else 1.0) * letters
    return Note(mark.label, at, around(at, clear))


def _beside_short(path: Path, letters: float) -> Places:
    """In line with a short slit or beside it."""
    angle = upright(path.start_tangent.angle)
    middle = path.at(path.length / 2)
    up, on = Vector(-math.sin(angle), math.cos(angle)), Vector(math.cos(angle), math.sin(angle))

    def places(wide: float, size: float) -> Iterable[Standing]:
        for far in (1.0, 1.6):
            for side in (1.0, -1.0):
                yield middle + on * (side * (path.length / 2 + wide / 2 + 2.0 * letters * far)), angle
                yield middle + up * (side * (BAR * letters + size * 0.8 + letters * far)), angle
        yield from around(middle, path.length / 2)(wide, size)

    return places


def _beside_edge(path: Path, at: float, long: float, inward: float, letters: float) -> Places:
    """Inside an edge: by the opening `long` mm around `at`, clear of its ticks, or beyond either end of it."""

    def places(wide: float, size: float) -> Iterable[Standing]:
        for deep in (size + 3.0 * letters, size * 0.8 + NOTCH_LENGTH + 1.5, size * 2 + 4.0 * letters):
            for shift in (0.0, abs(long) / 2 + wide * 0.6, -abs(long) / 2 - wide * 0.6):
                here = min(max(at + shift, 0.0), path.length)
                yield path.at(here) + path.normal_at(here) * (inward * deep), upright(path.tangent_at(here).angle)
        foot = path.at(min(max(at, 0.0), path.length))
        inside = foot + path.normal_at(min(max(at, 0.0), path.length)) * (inward * (NOTCH_LENGTH + size))
        yield from around(inside, 2.0 * letters)(wide, size)

    return places


def _opening(piece: Piece, mark: Mark, name: str) -> list[Item]:
    edge = piece.edge(mark.edge)
    width = edge.allowance or 0.0
    sign = 1.0 if piece.outline.area > 0 else -1.0
    items: list[Item] = []
    for distance in (mark.start, mark.end):
        distance = min(max(distance, 0.0), edge.path.length)
        foot, inward = edge.path.at(distance), edge.path.normal_at(distance) * sign
        items.append(Stroke((Line(foot - inward * width, foot + inward * NOTCH_LENGTH),), "mark", name=name))
    return items


# ---- pleats and tucks --------------------------------------------------------------------------------------


def pleat_items(piece: Piece, pleat: Pleat, letters: float, cut: CutLine | None) -> list[Item]:
    """A pleat or tuck as printed; its lines run to the cut line as notches. Nothing for one that does not lie on its
    edge (the proof says why)."""
    if not lies(piece, pleat):
        return []
    name = f"{piece.name}.{pleat.name}"
    items = _lines(pleat, name, None)
    items += [Stroke(fold_line(pleat).curves, "mark", name=f"{name}.fold"), *_arrows(pleat, name, letters, "symbol")]
    if cut is not None:
        for leg in pleat.lines:
            ends = [(leg.start, leg.reversed(), pleat.edge)]
            ends += [(leg.end, leg, pleat.far)] if pleat.far else []
            for end, ray, edge in ends:
                met = ray.extended(80.0).crossings(cut.edge(edge))
                found = min(met, key=end.distance, default=None)
                if found is not None and found.distance(end) > 0.2:
                    items.append(Stroke((Line(end, found),), "notch", name=f"{name}.notch"))
    return items


def pleat_in_step(piece: Piece, pleat: Pleat, role: StrokeRole, letters: float) -> list[Item]:
    """A pleat in a drafting picture: lines in `role`, fold as a guide, arrows the way it is laid."""
    if not lies(piece, pleat):
        return []
    name = f"{piece.name}.{pleat.name}"
    return [
        *_lines(pleat, name, role),
        Stroke(fold_line(pleat).curves, "guide", name=f"{name}.fold"),
        *_arrows(pleat, name, letters, role),
    ]


def pleat_note(pleat: Pleat) -> Note:
    """The pleat's name, along the side it does not lie on."""
    one, two = pleat.lines
    leg = one if pleat.laid == "end" else two
    return Note(pleat.label, leg.at(leg.length / 2), beside(leg, (0.5, 0.35, 0.65, 0.2, 0.8)))


def _lines(pleat: Pleat, name: str, role: StrokeRole | None) -> list[Item]:
    items: list[Item] = []
    for leg in pleat.lines:
        sewn = min(pleat.sewn, leg.length) if pleat.kind == "tuck" else 0.0
        if sewn > 0.1:
            items.append(Stroke(leg.between(0.0, sewn).curves, role or "stitch", name=name))
        if leg.length - sewn > 0.1:
            rest = leg.between(sewn, leg.length) if sewn > 0.1 else leg
            items.append(Stroke(rest.curves, role or "pleat", name=name if sewn <= 0.1 else f"{name}.beyond"))
    return items


def _arrows(pleat: Pleat, name: str, letters: float, role: StrokeRole) -> list[Item]:
    """From line to line across the fold, one near the edge and more down a long pleat."""
    one, two = pleat.lines if pleat.laid == "end" else (pleat.lines[1], pleat.lines[0])
    long = min(one.length, two.length)
    count = max(1, min(4, int(long // (_ARROWS * max(letters, 0.5)))))
    items: list[Item] = []
    for number in range(count):
        share = (number + 0.5) / count if count > 1 else 0.3
        a, b = one.at(one.length * share), two.at(two.length * share)
        wide = a.distance(b)
        if wide > 0.5:
            way = (b - a).unit()
            tip = b - way * (wide * 0.12) if wide > _LEAST_ARROW * letters else a + way * (_LEAST_ARROW * letters)
            items.append(Stroke((Line(a + way * (wide * 0.12), tip),), role, arrow="end", name=f"{name}.laid"))
    return items
