"""What a build hands out on paper: pattern pages, the copy-shop sheet, and the pattern as plain data.

`pattern.json` is this kit's own shape, version 1, every length in millimetres rounded to 0.001:

    format, version, unit           "pattern-lesson-kit pattern", 1, "mm"
    lesson                          title, slug, edition, date, author, units (the lesson's own system), language (of
                                      the words in this file)
    size                            the body's name
    body                            [{name, value, estimated}]   names as in ISO 8559-1, snake case
    values                          [{name, kind, value, default, least, most, why}]   lengths in mm, shares 0..1
    pieces                          [piece], in pattern order
    strips                          [{name, title, number, length, width, cut_count, cloth, finished_length,
                                      finished_width, fold, grain, joins}]
    finished                        [{name, value}]   measurements of the finished garment
    notions                         [text]
    cloth_to_buy                    [{cloth, width, laid, length, folds}]   where it was reckoned, as a build does: the
                                      shortest lay found, and with what washing takes; the ways to lay it at that price
    steps                           [{key, kind, title, words}]   what every step tells its reader, draft or sew

A piece: name, title, role and worn (what it is and where on the body, null where not known), number, cut_count,
mirrored, right_side_up, fold (edge name or null), cloth, interfacing (layers), edges, stitch_line, cut_line (null while
an allowance is missing), grain ([start, end] or null), grain_kind and grain_one_way (null without a grainline),
notches, marks, points, darts, pleats, corners, declared. Places are [x, y] in the piece's own millimetres, y up. Closed
lines are lists of places, the first not repeated, within 0.05 mm of the curve. An edge: name, said, role (what it is,
or null), length (stitch line), allowance (mm or null), extra (mm of cloth to fit with that
it is cut wider than its allowance), start, end. A notch: edge, distance (along the stitch line from
the edge's start), kind, name, at. A mark: name, said, kind, edge, start, end, line, at. A
dart: name, said, edge, start and end of its mouth along the edge, legs (their two ends on the edge), point (where the
stitching ends), apex, pressed (toward the edge's start or end). A pleat: name, said, kind, edge, start, end, lines,
sewn, laid. A corner: before, after, rule, turned, folds, size, by_hand (how the allowances of two edges meet);
declared: before, after, why (a corner drawn on purpose).

`pattern.schema.json` beside this file says the same as a JSON Schema (draft 2020-12); `pattern_schema` reads it.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from pathlib import Path as FilePath
from typing import Any

from kit.atomic import write_atomically
from kit.cloth.yardage import Yardage
from kit.geometry import Point
from kit.language import language, say
from kit.lesson.pattern import Pattern
from kit.paper.papers import A0, A4, LETTER, Paper
from kit.paper.printing import print_files
from kit.paper.request import PageRequest
from kit.paper.sheet import drawn_pieces, sheet, sheet_content, sheet_pdf
from kit.paper.without_paper import also_without
from kit.piece.allowance import cut_line, has_allowances
from kit.piece.dart import darts_lying, mouth, sewn_point
from kit.piece.piece import Mark, Piece, Strip
from kit.prose.told import told_steps

FORMAT = "pattern-lesson-kit pattern"
VERSION = 1
_FINE = 0.05

Progress = Callable[[str], None]


def write_pages(
    pattern: Pattern,
    out: FilePath,
    progress: Progress | None = None,
    bought: Iterable[Yardage] = (),
    papers: tuple[Paper, ...] = (A4, LETTER),
) -> dict[str, FilePath]:
    """Write pages-a4.pdf and pages-letter.pdf (one for each of the `papers`), sheet.pdf and pattern.json into `out`;
    give their paths by name.

    `progress` is told in a few words what is being made. Everything is made before the first file is written,
    so a pattern that cannot be printed leaves the last good files as they are. `bought` is the cloth to buy, where it
    is known. Raises `KitError`.
    """
    tell = progress or (lambda text: None)
    tell(say("paper.doing_pages"))
    drawn = drawn_pieces(pattern, PageRequest(papers))
    made = print_files(pattern, PageRequest(papers), tell, drawn)
    tell(say("paper.doing_sheet"))
    laid = sheet(pattern, (A0,), limit=A0.area[0], drawn=drawn)
    made["sheet.pdf"] = sheet_pdf(
        sheet_content(laid, pattern), laid, pattern, lambda about: also_without(about, pattern, laid)
    )
    made["pattern.json"] = pattern_text(pattern, bought).encode("utf-8")
    tell(say("paper.doing_writing"))
    return {name: write_atomically(out / name, data) for name, data in made.items()}


def pattern_text(pattern: Pattern, bought: Iterable[Yardage] = ()) -> str:
    """`pattern_json` as the text of pattern.json."""
    return json.dumps(pattern_json(pattern, bought), ensure_ascii=False, indent=1, allow_nan=False) + "\n"


def pattern_json(pattern: Pattern, bought: Iterable[Yardage] = ()) -> dict[str, Any]:
    """The pattern as plain data in the shape described above. Raises `KitError` for edges that do not meet and
    for allowances that cannot be drawn."""
    lesson = pattern.lesson
    return {
        "format": FORMAT,
        "version": VERSION,
        "unit": "mm",
        "lesson": {
            "title": lesson.title,
            "slug": lesson.slug,
            "edition": lesson.edition,
            "date": lesson.date,
            "author": lesson.author,
            "units": lesson.units,
            "language": language(),
        },
        "size": pattern.body.name,
        "body": [
            {"name": measure.name, "value": _round(measure.value), "estimated": measure.estimated}
            for measure in pattern.body.measures
        ],
        "values": [
            {
                "name": value.name,
                "kind": value.kind,
                "value": _round(value.value),
                "default": _round(value.default),
                "least": _round(value.least),
                "most": _round(value.most),
                "why": value.why,
            }
            for value in pattern.values
        ],
        "pieces": [_piece(piece) for piece in pattern.pieces],
        "strips": [_strip(strip) for strip in pattern.strips],
        "finished": [{"name": name, "value": _round(value)} for name, value in pattern.finished],
        "notions": list(lesson.notions),
        **_bought(pattern.body.name, bought),
        "steps": [
            {"key": step.key, "kind": step.kind, "title": step.title, "words": list(step.words)}
            for step in told_steps(pattern)
        ],
    }


def _bought(size: str, bought: Iterable[Yardage]) -> dict[str, Any]:
    rows = [(entry.cloth, entry.width, entry.of(size)) for entry in bought]
    if not rows:
        return {}
    return {
        "cloth_to_buy": [
            {
                "cloth": cloth,
                "width": _round(width),
                "laid": None if amount.trouble else _round(amount.laid),
                "length": None if amount.trouble else _round(amount.length),
                "folds": list(amount.folds),
            }
            for cloth, width, amount in rows
        ]
    }


def pattern_schema() -> dict[str, Any]:
    """The JSON Schema of pattern.json (draft 2020-12)."""
    text = (FilePath(__file__).parent / "pattern.schema.json").read_text(encoding="utf-8")
    found: dict[str, Any] = json.loads(text)
    return found


def _piece(piece: Piece) -> dict[str, Any]:
    """A piece as pattern.schema.json describes it: mm, y upward, as drafted (half a piece where it lies on a fold).

    A key is always there; what does not apply is null rather than left out or "", so that a program can tell "no
    allowance was said" (null) from "cut on the line" (0). Lines are given as points and not as the curves they are
    made of, for whoever reads the file may know no curves; each end of an edge is a point of the line as well."""
    return {
        "name": piece.name,
        "title": piece.title,
        "role": piece.role or None,
        "worn": piece.worn or None,
        "number": piece.number,
        "cut_count": piece.cut.count,
        "mirrored": piece.cut.mirrored,
        "right_side_up": piece.cut.right_side_up,
        "fold": piece.fold or None,
        "cloth": piece.cut.cloth,
        "interfacing": piece.cut.interfacing,
        "edges": [
            {
                "name": edge.name,
                "said": edge.label,
                "role": edge.role or None,
                "length": _round(edge.path.length),
                "allowance": None if edge.allowance is None else _round(edge.allowance),
                "extra": _round(edge.extra),
                "start": _place(edge.path.start),
                "end": _place(edge.path.end),
            }
            for edge in piece.edges
        ],
        "stitch_line": _closed(point for edge in piece.edges for point in edge.path.points(_FINE)),
        "cut_line": _closed(cut_line(piece).points(_FINE)) if has_allowances(piece) else None,
        "grain": [_place(piece.grain.start), _place(piece.grain.end)] if piece.grain else None,
        "grain_kind": piece.grain.kind if piece.grain else None,
        "grain_one_way": piece.grain.one_way if piece.grain else None,
        "notches": [
            {
                "edge": notch.edge,
                "distance": _round(notch.distance),
                "kind": notch.kind,
                "name": notch.name,
                "at": _place(piece.edge(notch.edge).path.at(notch.distance)),
            }
            for notch in piece.notches
        ],
        "marks": [_mark(mark) for mark in piece.marks],
        "points": [{"name": name, "at": _place(point)} for name, point in piece.points],
        "darts": [
            {
                "name": dart.name,
                "said": dart.label,
                "edge": dart.edge,
                "start": _round(dart.start),
                "end": _round(dart.end),
                "legs": [_place(end) for end in mouth(piece, dart)],
                "point": _place(sewn_point(piece, dart)),
                "apex": _place(dart.apex),
                "pressed": dart.pressed,
            }
            for dart in darts_lying(piece)
        ],
        "pleats": [
            {
                "name": pleat.name,
                "said": pleat.label,
                "kind": pleat.kind,
                "edge": pleat.edge,
                "start": _round(pleat.start),
                "end": _round(pleat.end),
                "lines": [[_place(point) for point in line.points(_FINE)] for line in pleat.lines],
                "sewn": _round(pleat.sewn),
                "laid": pleat.laid,
            }
            for pleat in piece.pleats
        ],
        "corners": [
            {
                "before": corner.before,
                "after": corner.after,
                "rule": corner.rule,
                "turned": corner.turned or None,
                "folds": [_round(fold) for fold in corner.folds],
                "size": _round(corner.size),
                "by_hand": corner.by_hand,
            }
            for corner in piece.corners
        ],
        "declared": [{"before": each.before, "after": each.after, "why": each.why} for each in piece.declared],
    }


def _mark(mark: Mark) -> dict[str, Any]:
    return {
        "name": mark.name,
        "said": mark.label,
        "kind": mark.kind,
        "edge": mark.edge or None,
        "start": _round(mark.start),
        "end": _round(mark.end),
        "line": [_place(point) for point in mark.path.points(_FINE)] if mark.path else None,
        "at": _place(mark.point) if mark.point else None,
    }


def _strip(strip: Strip) -> dict[str, Any]:
    return {
        "name": strip.name,
        "title": strip.title,
        "number": strip.number,
        "length": _round(strip.length),
        "width": _round(strip.width),
        "cut_count": strip.count,
        "cloth": strip.cloth,
        "finished_length": _round(strip.finished_length),
        "finished_width": _round(strip.finished_width),
        "fold": strip.fold,
        "grain": strip.grain,
        "joins": strip.joins,
    }


def _round(value: float) -> float:
    return round(float(value), 3) + 0.0


def _place(point: Point) -> list[float]:
    return [_round(point.x), _round(point.y)]


def _closed(points: Iterable[Point]) -> list[list[float]]:
    """Places around a closed line, none repeated."""
    out: list[list[float]] = []
    for place in map(_place, points):
        if not out or place != out[-1]:
            out.append(place)
    if len(out) > 1 and out[0] == out[-1]:
        out.pop()
    return out
