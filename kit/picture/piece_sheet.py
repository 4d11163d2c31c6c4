"""A pattern piece with all that is written on it, at true size: for pattern pages and for the booklet's cut list.

Lines and signs are drawn first; then text is fitted into what paper they leave free (kit/picture/fitted.py): what
belongs beside a line, the piece's own text, and last the allowances along the edges.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise
from typing import Any

import shapely

from kit.geometry import Line, Motion, Path, Point, Vector
from kit.language import say
from kit.lesson.lengthen_lines import lengthen_lines
from kit.lesson.pattern import LessonInfo, Pattern
from kit.picture.cut_out import cut_strokes, fold_bracket
from kit.picture.dart import dart_note, on_paper
from kit.picture.drawing import Dimension, Dot, Drawing, Item, Label, Stroke
from kit.picture.fitted import TEXT, PieceRoom
from kit.picture.lettering import LEAST, upright
from kit.picture.markings import lengthen_items, lengthen_note, mark_items, mark_note, pleat_items, pleat_note
from kit.picture.notes import SMALL, Note, Places, Standing, beside
from kit.piece.allowance import cut_line, has_allowances, notch_lines
from kit.piece.dart import darts_lying, intake
from kit.piece.piece import CutPlan, Edge, Grain, Piece
from kit.piece.pleat import intake as pleat_intake
from kit.piece.pleat import pleats_lying
from kit.prose.on_one_half import marks_on_one_half, on_half
from kit.units import System, show
from kit.wording.lists import strung
from kit.wording.names import edge_label

_NBSP = "\N{NO-BREAK SPACE}"
_EDGE_TEXT = 25.0  # mm of edge that must be there for its allowance to be written


def piece_drawing(piece: Piece, pattern: Pattern, system: System = "cm") -> Drawing:
    """One pattern piece as it is printed: cut line, stitch line, fold, grainline, notches, marks and text."""
    items = _items(piece, pattern, _booklet_scale(piece), system)
    return Drawing(items, alt=piece_alt(piece, pattern, system), title=piece.title)


def piece_alt(piece: Piece, pattern: Pattern, system: System = "cm") -> str:
    """What is to be known of a piece by whoever does not see it: how it is cut, its edges with their allowances, its
    marks, darts and pleats."""
    alt = [say("picture.piece", number=str(piece.number), title=piece.title, cut=cut_text(piece.cut))]
    edges = []
    for edge in piece.edges:
        if edge.name == piece.fold:
            edges.append(say("picture.edge_on_fold", edge=edge_label(edge)))
        elif edge.allowance is not None:
            width = show(edge.allowance, system, "allowance")
            key = "picture.edge_allowance_extra" if edge.extra else "picture.edge_allowance"
            more = {"extra": show(edge.extra, system, "allowance")} if edge.extra else {}
            edges.append(say(key, {"edge": edge_label(edge), "allowance": width, **more}))
        else:
            edges.append(edge_label(edge))
    alt.append(say("picture.piece_edges", edges=strung(edges)))
    halves = marks_on_one_half(pattern)
    marks = [on_half(mark.label, piece, halves.get((piece.name, mark.name))) for mark in piece.marks]
    if marks:
        alt.append(say("picture.piece_marks", marks=strung(marks)))
    if piece.darts:
        darts = [_taking(dart.label, intake(piece, dart), system) for dart in darts_lying(piece)]
        alt.append(say("picture.piece_darts", darts=strung(darts)))
    if piece.pleats:
        said = [_taking(pleat.label, pleat_intake(pleat), system) for pleat in pleats_lying(piece)]
        alt.append(say("picture.piece_pleats", pleats=strung(said)))
    if lines := lengthen_lines(piece, pattern.pieces):
        alt.append(say("picture.piece_lengthen", count=len(lines)))
    if piece.grain is not None and piece.grain.kind != "lengthwise":
        alt.append(say(f"picture.laid_{piece.grain.kind}"))
    if pattern.lesson.nap != "none":
        alt.append(say(f"picture.for_{pattern.lesson.nap}"))
    return " ".join(alt)


def _taking(name: str, taken: float, system: System) -> str:
    return say("picture.taking", name=name, intake=show(taken, system))


def piece_items(
    piece: Piece, pattern: Pattern, system: System = "cm", at: Point | None = None, letters: float = 1.0
) -> tuple[Item, ...]:
    """The items of one piece in mm of paper. `at` is where the origin of its draft comes to lie; text is `letters`
    times its usual size, where it fits.

    Without all allowances declared the stitch line is drawn alone. Raises `KitError` as `cut_line` does.
    """
    items = _items(piece, pattern, letters, system)
    if at is None or (at.x == 0 and at.y == 0):
        return items
    return moved(items, Motion.translation(at - Point(0.0, 0.0)))


def _booklet_scale(piece: Piece) -> float:
    """How much larger than on paper the text must be to stay readable when the piece fills a booklet picture."""
    x0, y0, x1, y1 = piece.outline.bounds()
    return max(x1 - x0, y1 - y0) * 0.021 / TEXT


def _items(piece: Piece, pattern: Pattern, letters: float, system: System) -> tuple[Item, ...]:
    """All items, with text `letters` times its size on paper."""
    whole = has_allowances(piece)
    items = list(_drawn(piece, pattern, letters, whole))
    inner = piece.outline.polygon(0.2).buffer(0)
    area = shapely.Polygon([(p.x, p.y) for p in cut_line(piece).points(0.2)]).buffer(0) if whole else inner
    return (*items, *piece_words(piece, pattern, PieceRoom(area, inner, items, letters), system, letters))


def piece_lines(piece: Piece, pattern: Pattern) -> tuple[Item, ...]:
    """Lines and signs of a piece without any text, in mm of paper."""
    return tuple(_drawn(piece, pattern, 1.0, has_allowances(piece)))


def piece_words(
    piece: Piece, pattern: Pattern, room: PieceRoom, system: System = "cm", letters: float = 1.0
) -> Iterable[Item]:
    """All that is written on a piece, fitted into `room`: names beside their lines, the piece's own text, and the
    allowances along the edges."""
    for note in _notes(piece, pattern, letters):
        yield from room.note(note)
    yield from _text(piece, pattern, room)
    if has_allowances(piece):
        for edge in piece.edges:
            if not _told(piece, edge, letters):
                continue
            note = _width_note(piece, edge, system, letters)
            label = room.inside(note)
            if label is not None:
                yield label
            elif note.needed:
                yield from room.note(note)


def _drawn(piece: Piece, pattern: Pattern, letters: float, whole: bool) -> Iterable[Item]:
    """Everything but text."""
    for each in lengthen_lines(piece, pattern.pieces):
        yield from lengthen_items(piece, each, letters)
    if whole:
        yield from cut_strokes(piece, cut_line(piece))
    for edge in piece.edges:
        if edge.name == piece.fold:
            if not whole:
                yield Stroke(edge.path.curves, "fold", name=f"{piece.name}.{edge.name}")
        elif not whole or edge.allowance or edge.extra:
            yield Stroke(edge.path.curves, "stitch", name=f"{piece.name}.{edge.name}")
    if whole:
        for notch in notch_lines(piece):
            for line in notch.lines:
                yield Stroke((line,), "notch", name=f"{piece.name}.notch")
    cut = cut_line(piece) if whole and (piece.darts or piece.pleats) else None
    for dart in piece.darts:
        yield from on_paper(piece, dart, cut)
    for pleat in piece.pleats:
        yield from pleat_items(piece, pleat, letters, cut)
    for mark in piece.marks:
        yield from mark_items(piece, mark, letters)
    if piece.grain is not None:
        way = Line(piece.grain.start, piece.grain.end)
        yield Stroke(
            (way,), "grain", arrow="end" if _one_way(piece.grain, pattern.lesson) else "both", name="grainline"
        )
    if piece.fold:
        a, p, q, b = fold_bracket(piece, letters)
        yield Stroke((Line(a, p), Line(p, q), Line(q, b)), "grain", arrow="both", name="place on fold")


def _one_way(grain: Grain, lesson: LessonInfo) -> bool:
    return grain.one_way or lesson.nap != "none"


def _notes(piece: Piece, pattern: Pattern, letters: float) -> Iterable[Note]:
    """What must be told beside a line, hardest to place first."""
    if piece.fold:
        _, p, q, _ = fold_bracket(piece, letters)
        yield Note(
            say("picture.place_on_fold"), p.mid(q), beside(Path.line(p, q), (0.5, 0.3, 0.7)), (TEXT, SMALL, LEAST)
        )
    halves = marks_on_one_half(pattern)
    for mark in piece.marks:
        note = mark_note(piece, mark, letters)
        if note is not None:
            yield replace(note, text=on_half(note.text, piece, halves.get((piece.name, mark.name))))
    for dart in piece.darts:
        told = dart_note(piece, dart)
        if told is not None:
            yield told
    for pleat in pleats_lying(piece):
        yield pleat_note(pleat)
    for number, each in enumerate(lengthen_lines(piece, pattern.pieces)):
        yield lengthen_note(each, needed=number == 0)
    grain, lesson = piece.grain, pattern.lesson
    if grain is not None and (grain.kind != "lengthwise" or _one_way(grain, lesson)):
        words = [say(f"picture.grain_{grain.kind}")] if grain.kind != "lengthwise" else []
        words += [say("picture.one_way")] if _one_way(grain, lesson) else []
        line = Path.line(grain.start, grain.end)
        yield Note(strung(words), line.at(line.length / 2), beside(line, (0.66, 0.5, 0.34)), needed=False)


def cut_text(cut: CutPlan) -> str:
    """How a piece is cut, in words: "cut 2 mirrored, main cloth"."""
    return strung(_cut_phrases(cut), "parted")


def _cut_phrases(cut: CutPlan) -> list[str]:
    """How it is cut of its cloth and, where there is any, of interfacing."""
    how = "fold" if cut.fold else "mirrored" if cut.mirrored else "single" if cut.right_side_up else "plain"
    said = [say("picture.cut", how=how, count=cut.count, cloth=say(f"picture.cloth_{cut.cloth}"))]
    return [*said, say("picture.cut_interfacing", count=cut.interfacing)] if cut.interfacing else said


def moved(items: Iterable[Item], motion: Motion) -> tuple[Item, ...]:
    """`items` under a rigid motion; labels turn with it and stay upright, dimensions keep their side."""
    out: list[Item] = []
    for item in items:
        if isinstance(item, Label):
            turned = motion.vector(Vector(math.cos(item.angle), math.sin(item.angle)))
            out.append(replace(item, at=motion(item.at), angle=upright(math.atan2(turned.y, turned.x))))
        elif isinstance(item, Dot):
            out.append(replace(item, at=motion(item.at)))
        elif isinstance(item, Dimension):
            out.append(
                replace(
                    item,
                    start=motion(item.start),
                    end=motion(item.end),
                    offset=-item.offset if motion.flips else item.offset,
                    along=tuple(curve.moved(motion) for curve in item.along),
                )
            )
        else:
            out.append(replace(item, curves=tuple(curve.moved(motion) for curve in item.curves)))
    return tuple(out)


# ---- edges ------------------------------------------------------------------------------------------------


def _told(piece: Piece, edge: Edge, letters: float) -> bool:
    whole = bool(edge.allowance or edge.extra)
    return whole and edge.name != piece.fold and edge.path.length > _EDGE_TEXT * letters


def _width_note(piece: Piece, edge: Edge, system: System, letters: float) -> Note:
    """The allowance in figures, in the middle of its own width, or just inside the stitch line where it is narrow. With
    extra cloth to fit with it is the whole width, and how much of it is extra: that must be told."""
    inward = 1.0 if piece.outline.area > 0 else -1.0
    text = show((edge.allowance or 0.0) + edge.extra, system, "allowance")
    if edge.extra:
        text = say("picture.with_extra", width=text, extra=show(edge.extra, system, "allowance"))
    middle = edge.path.at(edge.path.length / 2)
    return Note(text, middle, _along_edge(edge, inward, letters), (LEAST,), needed=bool(edge.extra))


def _along_edge(edge: Edge, inward: float, letters: float) -> Places:
    def places(_: float, size: float) -> Iterable[Standing]:
        for out in (((edge.allowance or 0.0) + edge.extra) / 2, -size * 0.6 - 1.6 * letters):
            for share in (0.5, 0.38, 0.62, 0.25, 0.75):
                at = edge.path.length * share
                place = edge.path.at(at) - edge.path.normal_at(at) * (inward * out)
                yield place, upright(edge.path.tangent_at(at).angle)

    return places


# ---- the piece's own text ---------------------------------------------------------------------------------


def _text(piece: Piece, pattern: Pattern, room: PieceRoom) -> list[Item]:
    head, phrases = piece_text(piece, pattern)
    found = room.block(head, phrases, _angles(piece))
    if found is not None:
        return found
    number = room.number(str(piece.number)) if piece.number else []
    return [*number, *room.led_out(head, phrases)]


def piece_text(piece: Piece, pattern: Pattern) -> tuple[str, tuple[str, ...]]:
    """What is written on a piece: its number and title, and phrases for lesson, size, cutting, grain and edition.
    No-break spaces hold together what must not be parted by the end of a line."""
    lesson = pattern.lesson
    head = f"{piece.number}{_NBSP} {piece.title}" if piece.number else piece.title
    phrases = [lesson.title, pattern.body.said.replace(" ", _NBSP), *_cut_phrases(piece.cut)]
    if piece.grain is not None and piece.grain.kind != "lengthwise":
        phrases.append(say(f"picture.grain_{piece.grain.kind}"))
    if lesson.nap != "none":
        phrases.append(say(f"picture.nap_{lesson.nap}"))
    elif piece.grain is not None and piece.grain.one_way:
        phrases.append(say("picture.one_way_top"))
    edition = say("picture.edition", edition=lesson.edition).replace(" ", _NBSP)
    phrases.append(f"{edition}, {lesson.date}" if lesson.date else edition)
    return head, tuple(phrase for phrase in phrases if phrase)


def _angles(piece: Piece) -> list[float]:
    """Level, then along the longest edges, along the piece as a whole, along the grain, and upright."""
    out = [0.0]
    for edge in sorted(piece.edges, key=lambda e: -e.path.length)[:2]:
        for share in (0.5, 0.3, 0.7, 0.12, 0.88):
            out.append(upright(edge.path.tangent_at(edge.path.length * share).angle))
    out.append(_lie(piece.outline.polygon(1.0)))
    if piece.grain is not None:
        out.append(upright((piece.grain.end - piece.grain.start).angle))
    out.append(math.pi / 2)
    return list(dict.fromkeys(round(a, 2) for a in out))


def _lie(shape: Any) -> float:
    """The direction of the longer side of the smallest rectangle around a shape."""
    corners = list(shape.minimum_rotated_rectangle.exterior.coords)
    sides = [Vector(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(corners)]
    return upright(max(sides, key=lambda side: side.length).angle)
