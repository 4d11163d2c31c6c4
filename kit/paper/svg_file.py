"""The pattern as one SVG drawing, true to scale, for general vector editors and cutters.

Plain SVG 1.1, nothing of any program's own: `width` and `height` are in mm and the view box counts mm, so one user
unit is one millimetre. Curves are written as the cubic and arc commands they are; there are no transforms on lines.

Structure, every group with an `id`, an `aria-label` and a `title` in words:

    svg
      #test-square                      a square of 100 mm: measure it after importing
      #size-W4 ...                      one group a size, in order: what that size alone draws
      #sizes-W3-W4 ...                  what some sizes share
      #all-sizes                        what all draw alike (with one size: not there)
      #text                             what is written on the pieces
        #size-W4-front                  in each of these one group a piece
          #size-W4-front-cut-line       and in it groups by kind of line: cut-line, stitch-line, fold, grainline,
                                        notches, marks, names

A line's `id` ends in the edge it belongs to where it has one: `size-W4-front-stitch-line-side`.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from xml.sax.saxutils import escape, quoteattr

from kit.geometry import Motion, Point, Vector
from kit.language import say
from kit.paper.head import edition_line
from kit.paper.layers import size_look
from kit.paper.nested import Nest
from kit.paper.pdf_pen import DOTS, INKS, LETTERS, PLAIN, Ink, Look
from kit.paper.shared_lines import SharedPart
from kit.paper.sheet import Sheet
from kit.picture.drawing import Dot, Fill, Item, Label, Stroke
from kit.picture.piece_sheet import moved
from kit.picture.svg_path import number, path_data
from kit.units import set_fractions
from kit.wording.lists import strung

SIDE = 100.0
_HEAD = 4.0  # arrow heads, mm
_FOOT = SIDE + 20.0
_CAP = 0.729  # height of a capital of DejaVu Sans, per em
_FONT = "'DejaVu Sans', 'Noto Sans', Arial, sans-serif"
_KINDS = {
    "cut": "cut-line",
    "stitch": "stitch-line",
    "fold": "fold",
    "grain": "grainline",
    "notch": "notches",
}
_PLAIN = ("", "cut", "notch", "grainline")  # names that say no more than the kind of line
_MARKS = "marks"
_NAMES = "names"


def svg_text(made: Nest, laid: Sheet) -> str:
    """The sheet as an SVG document; it is `laid.width` (100 mm at least) by `laid.height` and 120 mm more for the test
    square at its foot."""
    wide, high = max(laid.width, SIDE + 20.0), laid.height + _FOOT
    pattern = made.pattern
    title = say("paper.document", title=pattern.lesson.title, edition=edition_line(pattern))
    ids = _Ids()
    out = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="{number(wide)}mm" height="{number(high)}mm" '
        f'viewBox="0 0 {number(wide)} {number(high)}" fill="none" stroke="none">',
        f"<title>{escape(title)}</title>",
        f"<desc>{escape(say('paper.svg_about'))}</desc>",
        *_square(laid.height),
    ]
    for sizes in sorted({part.sizes for part in _parts(made)}, key=lambda sizes: (len(sizes), sizes)):
        out += _layer(made, laid, sizes, ids)
    if made.several:
        out += _texts(made, laid, ids)
    return "\n".join([*out, "</svg>"]) + "\n"


def _parts(made: Nest) -> Iterable[SharedPart]:
    for each in made.pieces:
        yield from (*each.parts, *each.stitches, *each.names)


def _layer(made: Nest, laid: Sheet, sizes: tuple[int, ...], ids: _Ids) -> list[str]:
    """What is drawn for exactly these sizes, piece by piece."""
    names = [made.sizes[size] for size in sizes]
    if len(names) == 1:
        key, said = ids(f"size-{names[0]}"), say("paper.svg_size", size=names[0])
    elif len(names) == len(made.sizes):
        key, said = ids("all-sizes"), say("paper.svg_all_sizes")
    else:
        key, said = ids(f"sizes-{'-'.join(names)}"), say("paper.svg_shared", sizes=strung(names))
    look = size_look(made.places[sizes[0]]) if len(sizes) == 1 and made.several else PLAIN
    inside: list[str] = []
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        items = [
            item for part in (*each.parts, *each.stitches, *each.names) if part.sizes == sizes for item in part.items
        ]
        if items:
            piece = each.piece
            inside += _piece(
                _turned(items, placement.motion, laid), f"{key}-{piece.name}", piece.title, piece.name, look, ids
            )
    return _group(key, said, inside)


def _piece(items: Sequence[Item], key: str, title: str, name: str, look: Look, ids: _Ids) -> list[str]:
    key = ids(key)
    kinds: dict[str, list[str]] = {}
    for item in items:
        if isinstance(item, Stroke):
            kind = _KINDS.get(item.role, _MARKS)
            own = item.name.removeprefix(f"{name}.")
            line = ids(f"{key}-{kind}-{'line' if own in _PLAIN else own}")
            kinds.setdefault(kind, []).extend(_line(item, line, look))
        elif isinstance(item, Dot):
            grey = _grey(DOTS[item.role])
            spot = f'<circle cx="{number(item.at.x)}" cy="{number(-item.at.y)}" r="0.8" fill="{grey}"/>'
            kinds.setdefault(_MARKS, []).append(spot)
        elif isinstance(item, Fill):
            kinds.setdefault(_NAMES, []).append(f'<path d="{path_data(item.curves, True)}" fill="#ffffff"/>')
        elif isinstance(item, Label):
            kinds.setdefault(_NAMES, []).append(_label(item))
    inside: list[str] = []
    for kind, lines in kinds.items():
        said = say(f"paper.svg_{kind.replace('-', '_')}", piece=title)
        inside += _group(ids(f"{key}-{kind}"), said, lines)
    return _group(key, title, inside)


def _texts(made: Nest, laid: Sheet, ids: _Ids) -> list[str]:
    inside: list[str] = []
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        if each.text:
            inside += _piece(
                _turned(each.text, placement.motion, laid),
                f"text-{each.piece.name}",
                each.piece.title,
                each.piece.name,
                PLAIN,
                ids,
            )
    return _group(ids("text"), say("paper.svg_text"), inside)


def _turned(items: Iterable[Item], motion: Motion, laid: Sheet) -> tuple[Item, ...]:
    """Items as they lie on the sheet, its upper edge at y = 0, y still up."""
    return moved(items, motion.then(Motion.translation(Vector(0.0, -laid.height))))


def _group(key: str, said: str, inside: Sequence[str]) -> list[str]:
    if not inside:
        return []
    return [f'<g id="{key}" aria-label={quoteattr(said)}>', f"<title>{escape(said)}</title>", *inside, "</g>"]


def _line(stroke: Stroke, key: str, look: Look) -> list[str]:
    if not stroke.curves:
        return []
    ink = look.inks[stroke.role]
    dash = f' stroke-dasharray="{" ".join(number(part) for part in ink.dash)}"' if ink.dash else ""
    out = [
        f'<path id="{key}" d="{path_data(stroke.curves, stroke.closed)}" stroke="{_grey(ink.grey)}" '
        f'stroke-width="{number(ink.width)}"{dash}/>'
    ]
    if stroke.arrow in ("end", "both"):
        last = stroke.curves[-1]
        out.append(_head(last.end, last.tangent(1.0).angle, ink))
    if stroke.arrow in ("start", "both"):
        first = stroke.curves[0]
        out.append(_head(first.start, first.tangent(0.0).angle + math.pi, ink))
    return out


def _head(tip: Point, angle: float, ink: Ink) -> str:
    sides = [Vector.at_angle(angle + math.radians(turn), _HEAD) for turn in (162, -162)]
    places = [tip, *(tip + side for side in sides)]
    points = " ".join(f"{number(place.x)},{number(-place.y)}" for place in places)
    return f'<polygon points="{points}" fill="{_grey(ink.grey)}"/>'


def _label(label: Label) -> str:
    size, bold, grey = LETTERS[label.role]
    size = label.size or size
    drop = size * _CAP / 2  # text stands on its baseline, a label is centred on its place
    x, y = label.at.x + drop * math.sin(label.angle), -(label.at.y - drop * math.cos(label.angle))
    turn = f' transform="rotate({number(-math.degrees(label.angle))} {number(x)} {number(y)})"' if label.angle else ""
    weight = ' font-weight="bold"' if bold else ""
    return (
        f'<text x="{number(x)}" y="{number(y)}" font-family="{_FONT}" font-size="{number(size)}" '
        f'text-anchor="{label.anchor}" fill="{_grey(grey)}"{weight}{turn}>{escape(set_fractions(label.text))}</text>'
    )


def _square(top: float) -> list[str]:
    line = (
        f'<path id="test-square-line" d="M10 {number(top + 10)}h{number(SIDE)}v{number(SIDE)}h-{number(SIDE)}Z" '
        f'stroke="#000000" stroke-width="{number(INKS["cut"].width)}"/>'
    )
    text = replace(Label(say("paper.svg_measure"), Point(10 + SIDE / 2, -(top + 10 + SIDE / 2)), "small"), size=5.0)
    return _group("test-square", say("paper.svg_square"), [line, _label(text)])


def _grey(value: float) -> str:
    return "#" + f"{round(value * 255):02x}" * 3


class _Ids:
    """Every id once in the document, made of letters, digits, dots and hyphens."""

    def __init__(self) -> None:
        self._used: set[str] = set()

    def __call__(self, text: str) -> str:
        plain = re.sub(r"[^\w.-]+", "-", text.replace("_", "-"), flags=re.ASCII).strip("-") or "line"
        key, count = plain, 1
        while key in self._used:
            count += 1
            key = f"{plain}-{count}"
        self._used.add(key)
        return key
