"""The finished garment, as a drawing: put together from the end of the sewing, as it is worn and used.

Seen from in front, the wearer's left is at the viewer's right, the back lies undermost with its wrong side showing
inside the neck, and the right front laps over the left. What is in the picture is sewn to the garment, or goes through
its loops; a pattern without a sewing step lies there as pieces, with what it has besides fronts and backs next to them.
"""

from __future__ import annotations

from collections.abc import Iterable

from kit.geometry import Curve, Motion, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.assembled import Assembled, View, assembled, of_kind
from kit.picture.chains import drawn
from kit.picture.drawing import Drawing, Fill, Item, Label, Stroke
from kit.picture.finished import ROOM
from kit.picture.finished import measured as measured_lines
from kit.picture.laid import box_of
from kit.picture.place import layer_line, moved_curves, rectangle, slid, whole_outline
from kit.picture.place_on_band import inner_bands
from kit.picture.put_on import on_piece
from kit.picture.round_hat import round_hat
from kit.picture.tied import belted, handle_rows, handles, loops, named, ties_behind, ties_over
from kit.piece.piece import Piece, Strip
from kit.units import System
from kit.wording.lists import strung

_BETWEEN = 0.09  # white between the two views of a cover, of the width of both


def laid_flat(
    pattern: Pattern,
    view: View = "front",
    measured: System | None = None,
    room: tuple[float, float] = ROOM,
    letters: float = 1.0,
) -> Drawing:
    """The finished garment seen from the front or the back, as worn and used. With `measured` it lies flat without what
    hangs from it, and each finished measurement of the lesson that lies along a line of it is drawn there, in that
    system first, with the name and value of the table; its letters are `letters` times as large as usual in a picture
    that takes `room` (CSS px)."""
    garment = assembled(pattern, view)
    beside = _unsewn(garment)
    hat = round_hat(pattern)
    if hat is not None:  # it stands: nothing of it lies flat
        return Drawing(tuple(hat.items(view)), alt=_alt(garment, (), *beside), title=pattern.lesson.title)
    items = _garment(garment, hanging=measured is None)
    items += _beside(*beside, garment)
    lines: tuple[tuple[str, str], ...] = ()
    if measured and garment.flats:
        drawn_lines, lines = measured_lines(garment, measured, box_of(_curves(items)), room, letters)
        items += drawn_lines
    return Drawing(tuple(items), alt=_alt(garment, lines, *beside), title=pattern.lesson.title)


def cover_drawing(pattern: Pattern) -> Drawing:
    """Front and back beside each other, at one scale and on one level, without a word."""
    front, back = laid_flat(pattern, "front"), laid_flat(pattern, "back")
    if not front.items or not back.items:
        return front
    one, two = (box_of(_curves(drawing.items)) for drawing in (front, back))
    gap = (one[2] - one[0] + two[2] - two[0]) * _BETWEEN
    slide = Vector(one[2] + gap - two[0], 0.0)
    items = (*front.items, *(slid(item, slide) for item in back.items))
    return Drawing(tuple(items), alt=f"{front.alt} {back.alt}", title=pattern.lesson.title)


def _curves(items: Iterable[Item]) -> tuple[Curve, ...]:
    return tuple(c for item in items if isinstance(item, Fill | Stroke) for c in item.curves)


def _garment(garment: Assembled, hanging: bool) -> list[Item]:
    """All that is sewn together, from the bottom up; with what hangs from it, or without."""
    items: list[Item] = []
    near = garment.near
    if hanging:
        items += ties_behind(garment)
    for flat in garment.flats:
        if hanging:
            items += handles(flat, garment)
        items += on_piece(flat, garment)
        if hanging:
            items += handle_rows(flat, garment)
        for facing in garment.within:
            if facing.motion is flat.motion and not flat.near:
                ring = drawn(facing.ring, True)
                items += [Fill(ring, "facing", facing.piece.name)]
                items += [Stroke(ring, "edge", closed=True, name=f"{facing.piece.name}.{facing.side}")]
    if hanging and near:
        items += belted(garment)
        items += ties_over(garment)
    for _, fill, stroke in loops(garment):
        items += [fill, stroke]
    return items


def _alt(garment: Assembled, lines: tuple[tuple[str, str], ...], loose: list[Piece], strips: list[Strip]) -> str:
    pattern = garment.pattern
    body = list(dict.fromkeys(flat.piece.title for flat in garment.flats))
    shown = body or [piece.title for piece in loose]
    alt = [say(f"picture.flat_{garment.view}", title=pattern.lesson.title, pieces=strung(shown))]
    if lines:
        alt.append(say("picture.flat_finished", sizes=strung([f"{title} {size}" for title, size in lines])))
    titles = {piece.name: piece.title for piece in pattern.pieces}
    titles |= {strip.name: strip.title for strip in pattern.strips}
    attached = named(garment) | _put_on(garment)
    if attached:
        alt.append(say("picture.flat_with", pieces=strung([titles[name] for name in sorted(attached)])))
    if loose or strips:
        parts = [piece.title for piece in loose] + [strip.title for strip in strips]
        alt.append(say("picture.flat_beside", pieces=strung(parts)))
    elif garment.left:
        alt.append(say("picture.flat_left_out", pieces=strung([titles[name] for name in garment.left])))
    return " ".join(alt)


def _put_on(garment: Assembled) -> set[str]:
    """The bands and pockets that are seen."""
    there = {flat.piece.name for flat in garment.flats}
    found: set[str] = set()
    for op in of_kind(garment.pattern, "set_band"):
        if any(run.piece in there for run in op.b):
            found |= {run.piece for run in op.a} | inner_bands(op.a[0].piece, garment.pattern)
    for op in of_kind(garment.pattern, "patch_pocket"):
        if op.at.piece in there:
            found |= {run.piece for run in op.edges}
    return found


# ---- a pattern that nobody has sewn yet ---------------------------------------------------------------------


def _unsewn(garment: Assembled) -> tuple[list[Piece], list[Strip]]:
    """What lies beside, where the lesson has no sewing that could join it."""
    pattern = garment.pattern
    if pattern.sewing:
        return [], []
    return [pattern.piece(name) for name in garment.left], list(pattern.strips)


def _beside(pieces: list[Piece], strips: list[Strip], garment: Assembled) -> list[Item]:
    items: list[Item] = []
    lies = garment.box() if garment.flats else None
    x = 0.0 if lies is None else lies[2] + (lies[2] - lies[0]) * 0.08
    top = None if lies is None else lies[3]
    for piece in pieces:
        line = layer_line(piece, {edge.name: 0.0 for edge in piece.edges})
        outline = whole_outline(piece, line)
        found = box_of(outline)
        down = (top - found[3]) if top is not None else -found[3]
        outline = moved_curves(outline, Motion.translation(Vector(x - found[0], down)))
        items.append(Fill(outline, "right_side", name=piece.name))
        items.append(Stroke(outline, "edge", closed=True, name=piece.name))
        middle = Point(x + (found[2] - found[0]) / 2, down + found[1] - (found[3] - found[1]) * 0.06 - 8.0)
        items.append(Label(piece.title, middle, "name"))
        x += (found[2] - found[0]) * 1.15 + 20.0
    for strip in strips:
        long, wide = strip.finished_length or strip.length, strip.finished_width or strip.width
        high = top if top is not None else 0.0
        outline = rectangle(x, high - long, x + wide, high)
        items.append(Fill(outline, "right_side", name=strip.name))
        items.append(Stroke(outline, "edge", closed=True, name=strip.name))
        items.append(Label(strip.title, Point(x + wide / 2, high - long - 16.0), "name"))
        x += wide + 70.0
    return items
