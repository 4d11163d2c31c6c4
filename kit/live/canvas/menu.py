"""The Draw menu of the canvas: what is chosen, which move, how far, and the cell that it would write.

The browser says what the reader chose and typed, the kernel answers with everything the menu shows: the moves that fit,
the sentence, the source, the lines as they would lie and the place where the amount can be dragged. Nothing is kept
between two answers and the lesson is not touched: the cell itself, once the notebook has run it, does that.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import chain
from typing import Any

from kit.errors import KitError
from kit.geometry import Curve, Line, Vector
from kit.language import called, say
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.lesson.where import shell
from kit.lesson.working import work
from kit.live.canvas.handles import Ground, Probe, chosen
from kit.live.canvas.shown import View
from kit.live.canvas.steady import steady
from kit.live.fragments import plain
from kit.live.move_cell import MOVES, UNITS, Cell, ChosenMove, cell_for, fits, laid, ways_for
from kit.live.picked import Chosen, place
from kit.live.picked import said as edge_said
from kit.live.tidy_source import stepped
from kit.picture.drawing import Stroke
from kit.picture.markings import mark_items
from kit.piece.piece import Piece
from kit.prose import fill_words
from kit.units import System, parse, percent, show
from kit.wording.lists import strung
from kit.wording.names import title_said

WORDS = (
    *("draw", "choose", "move", "way", "amount", "title", "measure", "thing", "why", "says", "write", "copy"),
    *("copied", "source", "cancel", "grip", "writing", "written", "not_run"),
)
_INCH = re.compile(r"(in\.?|inch|inches|yd|yards?|zoll|pulg\w*\.?|po\.?|pouces?|[\"″”])\s*$", re.IGNORECASE)
_METRIC = re.compile(r"m\s*$", re.IGNORECASE)
_TICK = 8.0
_NUDGE = {"length": 0.5, "share": 0.01}


def menu_words() -> dict[str, str]:
    """The words of the menu, by what stands after "canvas_moves." in their keys."""
    return {key: say(f"canvas_moves.{key}") for key in WORDS}


def menu_answer(
    lesson: Lesson, pattern: Pattern, asked: Mapping[str, Any], places: Mapping[str, Vector]
) -> dict[str, Any]:
    """Everything the menu shows, as plain data for JSON. `asked` is {"chosen": [{"kind", "piece", "name"}], "step",
    "move", "way", "amount" (typed text, or mm when dragged), "title", "measure", "thing", "why", "rest"}: with "rest"
    the range is tried out and the place to drag it found. `places` says where each piece lies on the sheet."""
    picked = [Chosen(str(one["kind"]), str(one["piece"]), str(one["name"])) for one in asked.get("chosen", ())]
    after = str(asked.get("step", ""))
    name = str(asked.get("move", ""))
    follows = _follows(lesson, after)
    answer: dict[str, Any] = {
        "turn": int(asked.get("turn", 0)),
        "chosen": _chosen_said(lesson, pattern, picked, after),
        "moves": [
            [key, say(f"canvas_moves.name_{key}"), fits(key, lesson, pattern, picked, after) if picked else ""]
            for key in MOVES
        ],
        "ways": [list(way) for way in ways_for(name, lesson, pattern, picked, after)] if name in MOVES else [],
        "follows": follows.name if follows else "",
        "hand": say("canvas_moves.by_hand", step=follows.title) if follows else say("canvas_moves.by_hand_first"),
        "source": "",
        "trouble": "",
        "lines": [],
    }
    if name not in MOVES or not picked:
        return answer
    kind = _kind(name, str(asked.get("way", "")))
    try:
        amount, system = read_amount(asked.get("amount"), kind, lesson.units)
    except KitError as error:
        return answer | {"trouble": str(error)}
    move = ChosenMove(
        name,
        str(asked.get("way", "")),
        amount,
        system,
        **{key: str(asked.get(key, "")) for key in ("title", "measure", "thing", "why")},
        after=after,
    )
    # A way remembered from another choice may not be offered for this one; the first that is takes its place. What
    # follows runs the very cell that would be written, and its record gives sentence and ghost lines.
    ways = [way for way, _ in answer["ways"]]
    if move.way not in ways:
        move = replace(move, way=ways[0] if ways else "")
    known, names = _names(lesson)
    cell = cell_for(move, lesson, pattern, picked, called=known, names=names, ranged=bool(asked.get("rest", True)))
    answer["way"] = move.way
    if cell.why_not or cell.pattern is None:
        return answer | {"trouble": cell.why_not}
    record = next(step for step in cell.pattern.steps if step.key == cell.name)
    return answer | {
        "source": cell.source,
        "title": cell.title,
        "name": cell.name,
        "measure": cell.measure,
        "thing": cell.thing,
        "kind": cell.kind if cell.measure else "",
        "value": cell.value,
        "step": _step_of(cell.kind, system),
        "amount": _amount_said(cell, system),
        "sentence": fill_words(record.text, record.values, lesson.units),
        "lines": ghost(lesson, pattern, cell, places, after),
        "grip": _grip(pattern, cell, places, after) if asked.get("rest", True) else None,
    }


# ---- what was typed ------------------------------------------------------------------------------------------


def read_amount(given: object, kind: str, units: System) -> tuple[float | None, System]:
    """(mm or share, the system it was given in) of what was typed or dragged; None for nothing typed. A number typed
    without a unit is in `units`, that of a fullness in per cent. Raises `KitError` for what cannot be read."""
    if given is None or (isinstance(given, str) and not given.strip()):
        return None, units
    if isinstance(given, int | float):
        return (round(float(given), 2) if kind == "share" else max(stepped(float(given), units), 0.0)), units
    text = str(given).strip()
    if kind == "share":
        try:
            number = float(text.removesuffix("%").strip().replace(",", "."))
        except ValueError:
            raise KitError(say("canvas_moves.bad_amount", name=text)) from None
        return number / 100, units
    value = float(parse(text, units))
    return value, "inch" if _INCH.search(text) else "cm" if _METRIC.search(text) else units


def _amount_said(cell: Cell, system: System) -> str:
    if not cell.measure:
        return ""
    return percent(cell.value) if cell.kind == "share" else show(cell.value, system)


def _step_of(kind: str, system: System) -> float:
    return 0.01 if kind == "share" else 1.0 if system == "cm" else 25.4 / 16


def _kind(name: str, way: str) -> str:
    """The kind of measure a move has."""
    return "share" if name == "curve" or (name == "between" and way in ("square", "smooth")) else "length"


# ---- where it stands -----------------------------------------------------------------------------------------


def _follows(lesson: Lesson, after: str) -> Any:
    """The step the cell is to follow: that of the key `after`, else the last one."""
    steps = [entry for entry in lesson.definition.entries if entry.kind == "step"]
    return next((entry for entry in steps if entry.name == after), steps[-1] if steps else None)


def _names(lesson: Lesson) -> tuple[str, tuple[str, ...]]:
    """(what the notebook calls the lesson, all the names it knows, units among them only where they are the kit's)."""
    ip = shell()
    space = dict(ip.user_ns) if ip is not None else {"lesson": lesson, **UNITS}
    known = next((name for name, value in space.items() if value is lesson and not name.startswith("_")), "lesson")
    return known, tuple(name for name, value in space.items() if name not in UNITS or value == UNITS[name])


def _chosen_said(lesson: Lesson, pattern: Pattern, picked: Sequence[Chosen], after: str) -> str:
    if not picked:
        return say("canvas_moves.choose")
    pieces = laid(lesson, pattern, after)
    found = []
    for one in picked:
        piece = pieces.get(one.piece)
        if piece is None or one.kind == "piece":
            found.append(called(one.name))
            continue
        try:
            name = edge_said(piece.edge(one.name)) if one.kind == "edge" else place(piece, one.name).said
        except KitError:
            name = called(one.name)
        found.append(say("canvas_moves.one_chosen", name=name, piece=title_said(piece.title)))
    return say("canvas_moves.chosen", chosen=strung(found))


# ---- the lines as they would lie -----------------------------------------------------------------------------


def ghost(
    lesson: Lesson, pattern: Pattern, cell: Cell, places: Mapping[str, Vector], after: str = ""
) -> list[list[float]]:
    """What the cell would draw anew, as rows of numbers (mm on the sheet): a start and three points for each cubic."""
    assert cell.pattern is not None and cell.lesson is not None
    if after:
        before, now = laid(lesson, pattern, after), laid(cell.lesson, cell.pattern, cell.name)
    else:
        before = {piece.name: piece for piece in pattern.pieces}
        now = {piece.name: piece for piece in cell.pattern.pieces}
    own = [places[name] for name in now if name in places]
    rows = []
    for name, piece in now.items():
        by = places.get(name) or (own[0] if own else Vector(0.0, 0.0))
        rows += [_row(curves, by) for curves in _fresh(before.get(name), piece)]
    return rows


def _fresh(before: Piece | None, piece: Piece) -> list[Sequence[Curve]]:
    old = set() if before is None else {edge.path for edge in before.edges} | {path for _, path in before.guides}
    found: list[Sequence[Curve]] = [edge.path.curves for edge in piece.edges if edge.path not in old]
    found += [path.curves for _, path in piece.guides if path not in old]
    if before is not None:
        for notch in piece.notches:
            if notch not in before.notches and piece.has_edge(notch.edge):
                path = piece.edge(notch.edge).path
                at = min(notch.distance, path.length)
                half = path.normal_at(at) * (_TICK / 2)
                found.append((Line(path.at(at) - half, path.at(at) + half),))
        strokes = chain.from_iterable(mark_items(piece, m, 2.0) for m in piece.marks if m not in before.marks)
        found += [item.curves for item in strokes if isinstance(item, Stroke)]
    return found


def _row(curves: Sequence[Curve], by: Vector) -> list[float]:
    row = [curves[0].start.x + by.x, curves[0].start.y + by.y]
    for cubic in steady(curves):
        for point in (cubic.c1, cubic.c2, cubic.end):
            row += (point.x + by.x, point.y + by.y)
    return [round(number, 2) for number in row]


def _grip(pattern: Pattern, cell: Cell, places: Mapping[str, Vector], after: str) -> list[float] | None:
    """[x, y, x and y of the change for each mm of the amount, or for the whole of a share] of the place that moves with
    it; None when nothing on the sheet does."""
    assert cell.pattern is not None and cell.lesson is not None
    if not cell.measure:
        return None
    by = _NUDGE[cell.kind]
    values = {value.name: value.value for value in cell.pattern.values}
    wide = tuple(replace(p, most=max(p.most, values[p.name] + by)) for p in cell.lesson.parameters)
    moved = replace(cell.lesson.definition, parameters=wide)
    try:
        there = work(moved, pattern.body, {**values, cell.measure: values[cell.measure] + by}, whole=False)
    except Exception:  # it cannot go farther: the amount is typed
        return None
    view = View(step=cell.name if after else "")
    found = chosen(cell.lesson, cell.pattern, (Probe(cell.measure, by, there),), view, cell.pattern.start)
    at = Ground(cell.pattern, view.step, cell.pattern.start).at(found[0].anchor) if found else None
    if at is None or found[0].anchor.piece not in places:
        return None
    lies, way = places[found[0].anchor.piece], found[0].direction * found[0].rate
    return [at.x + lies.x, at.y + lies.y, way.x, way.y]


def refused(asked: Mapping[str, Any], error: Exception) -> dict[str, Any]:
    """The answer when the menu cannot be filled at all."""
    return {"turn": int(asked.get("turn", 0)), "trouble": plain(error), "moves": [], "ways": [], "lines": []}
