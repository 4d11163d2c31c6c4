"""From a move chosen on the canvas to the cell that makes it: parameter, step, docstring and drawing.

`cell_for` is a pure function. What it writes is worked before it is offered, by running the very text on a copy of the
lesson, so that the canvas previews what the cell will draw; what does not fit is refused in plain words.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, replace

from kit.errors import KitError
from kit.language import say
from kit.lesson.definition import Definition
from kit.lesson.lesson import Lesson, unheard
from kit.lesson.pattern import Pattern
from kit.lesson.working import work
from kit.live import outline_moves as outline
from kit.live import paper_moves as paper
from kit.live.fragments import plain
from kit.live.outline_moves import Ways
from kit.live.picked import Chosen, DrawnMove, Picked, piece_said, said
from kit.live.tidy_source import (
    Call,
    free,
    function,
    identifier,
    length_source,
    quoted,
    spaced,
    statements,
    stepped,
)
from kit.piece.piece import Piece
from kit.units import System, both, cm, inch, mm
from kit.wording.lists import listed

UNITS = {"cm": cm, "mm": mm, "inch": inch}
_LOCALS = frozenset(
    ("piece", "begin", "end", "old", "meet", "place", "cut", "line", "raised", "lowered", "moved", "body", "make")
)
_SMALL = frozenset(("the", "a", "an", "of", "and", "to", "it"))
_LONG = 44
_TRIES = 4


@dataclass(frozen=True)
class Kind:
    """A kind of move: how it is drawn, and the ways it can be done (none where there is but one)."""

    draw: Callable[[Picked], DrawnMove]
    ways: Callable[[Picked], Ways] | None = None


MOVES: dict[str, Kind] = {
    "point": Kind(outline.move_point, outline.direction_ways),
    "extend": Kind(outline.extend, outline.end_ways),
    "edge": Kind(outline.move_edge, outline.edge_ways),
    "square": Kind(outline.square_edge, outline.square_ways),
    "round": Kind(outline.round_corner),
    "curve": Kind(outline.curve_edge, outline.curve_ways),
    "into": Kind(outline.curve_into, outline.into_ways),
    "between": Kind(paper.draw_between, paper.line_ways),
    "line": Kind(paper.square_line, outline.square_ways),
    "parallel": Kind(paper.parallel_line, paper.side_ways),
    "mirror": Kind(paper.mirror),
    "spread": Kind(paper.spread, paper.spread_ways),
    "cut": Kind(paper.cut_apart, paper.cut_ways),
    "opening": Kind(paper.opening, paper.along_ways),
    "notch": Kind(paper.notch, paper.notch_ways),
}


@dataclass(frozen=True)
class ChosenMove:
    """A move as chosen: its `name` in `MOVES` and its `way`; the `amount` in mm (a share for a fullness), None for the
    kit's own first choice; the `system` it is written in. `title`, `measure`, `thing` (the new line) and `why` are the
    reader's words, "" where the kit chooses. It follows the step of the key `after`, "" for the last one."""

    name: str
    way: str = ""
    amount: float | None = None
    system: System = "cm"
    title: str = ""
    measure: str = ""
    thing: str = ""
    why: str = ""
    after: str = ""


@dataclass(frozen=True)
class Cell:
    """The cell of a move: its whole `source`, the `parameters` lines of it, `title` and `name` of the step, the names
    of its `measure` and new line (`thing`), the `kind` and `value` of the measure, and the `pattern` it would give on
    the copy `lesson`. When `why_not` says something it cannot be written, and there is no source."""

    source: str = ""
    parameters: tuple[str, ...] = ()
    title: str = ""
    name: str = ""
    measure: str = ""
    thing: str = ""
    kind: str = "length"
    value: float = 0.0
    why_not: str = ""
    pattern: Pattern | None = None
    lesson: Lesson | None = None


def cell_for(
    move: ChosenMove,
    lesson: Lesson,
    pattern: Pattern,
    chosen: Sequence[Chosen],
    *,
    called: str = "lesson",
    names: Collection[str] = tuple(UNITS),
    ranged: bool = True,
) -> Cell:
    """The cell that makes `move` on what is `chosen` of `pattern`, which `lesson` gives now. `called` is the lesson's
    name in the notebook, `names` all the names known there. `ranged` tries how far the measure may go; without it the
    range is only a guess, as while it is dragged."""
    try:
        return _Writing(move, lesson, pattern, chosen, called, frozenset(names)).cell(ranged)
    except Exception as error:  # the step is the reader's: whatever stops it is told in words
        return Cell(why_not=plain(error))


def ways_for(name: str, lesson: Lesson, pattern: Pattern, chosen: Sequence[Chosen], after: str = "") -> Ways:
    """The ways (key, words) a move can be done with what is chosen; none where there is but one or it does not fit."""
    ways = MOVES[name].ways
    if ways is None:
        return []
    try:
        return ways(Picked(laid(lesson, pattern, after), chosen))
    except KitError:
        return []


def fits(name: str, lesson: Lesson, pattern: Pattern, chosen: Sequence[Chosen], after: str = "") -> str:
    """Why a move does not fit what is chosen; nothing when it does."""
    try:
        MOVES[name].draw(Picked(laid(lesson, pattern, after), chosen))
    except KitError as error:
        return str(error)
    return ""


def laid(lesson: Lesson, pattern: Pattern, after: str = "") -> Mapping[str, Piece]:
    """The pieces as they lie after the step of that key, or after the last one."""
    pieces = {piece.name: piece for piece in pattern.start or lesson.start(lesson.body)}
    for record in pattern.steps:
        pieces.update((piece.name, piece) for piece in record.pieces)
        if record.key == after:
            break
    return {name: piece for name, piece in pieces.items() if piece.edges or piece.guides}


def written(lesson: Lesson, source: str, called: str = "lesson") -> Lesson:
    """A copy of `lesson` on which `source` was run; the lesson itself is left as it is."""
    copy = unheard(lesson)
    exec(compile(source, "<canvas>", "exec"), {called: copy, **UNITS})
    return copy


class _Writing:
    """One cell being written."""

    def __init__(
        self,
        move: ChosenMove,
        lesson: Lesson,
        pattern: Pattern,
        chosen: Sequence[Chosen],
        called: str,
        names: frozenset[str],
    ) -> None:
        self.move, self.lesson, self.pattern = move, lesson, pattern
        self.called = called
        self.known = names & frozenset(UNITS)
        entries = lesson.definition.entries
        steps = [entry for entry in entries if entry.kind == "step"]
        follows = next((e for e in steps if e.name == move.after), steps[-1] if steps else None)
        last = follows is None or (entries == lesson.entries and entries[-1] is follows)
        self.after = "" if last or follows is None else follows.name
        pieces = laid(lesson, pattern, follows.name if follows else "")
        # Whatever the step's function would shadow, or be shadowed by, may not name anything in it: pieces, strips,
        # measurements and parameters come in as arguments, the notebook's own names are used by the cell as they are.
        taken = {*pieces, *(p.name for p in lesson.parameters), *(e.name for e in entries), *names, *_LOCALS}
        taken |= {m.name for m in pattern.body.measures} | {s.name for s in pattern.strips} | {called, *UNITS}
        self.taken = frozenset(taken)
        self.picked = Picked(
            pieces,
            chosen,
            way=move.way,
            taken=self.taken,
            measure=move.measure,
            thing=move.thing,
            system=move.system,
            known=self.known,
        )
        self.drawn = MOVES[move.name].draw(self.picked)

    def cell(self, ranged: bool) -> Cell:
        drawn = self.drawn
        title = spaced(self.move.title or drawn.title)
        name = free(self._name(title), self.taken | {drawn.measure, drawn.thing})
        cell = Cell(title=title, name=name, measure=drawn.measure, thing=drawn.thing, kind=drawn.kind)
        if not drawn.measure:
            source = "\n".join(self._step(title, name))
            return self._worked(replace(cell, source=source))
        value = drawn.amount if self.move.amount is None else self.move.amount
        if drawn.kind == "length" and self.move.amount is None:
            line = 25.4 / 4 if self.move.system == "inch" else 5.0
            value = max(round(value / line), 1) * line
        low, high = self._bounds(value)
        if value < low - 1e-6:
            raise KitError(say("canvas_moves.too_small"))
        if drawn.within is not None and value >= drawn.within.path.length:
            size = both(drawn.within.path.length, self.lesson.units)
            raise KitError(say("canvas_moves.too_long", edge=said(drawn.within), length=size))
        cell = replace(cell, value=value)
        found = self._worked(self._ranged(cell, low, high))
        if not ranged or found.why_not:
            return found
        low, high = self._as_far(found, value, low), self._as_far(found, value, high)
        return replace(self._ranged(found, low, high), pattern=found.pattern)

    def _name(self, title: str) -> str:
        words = [word for word in identifier(title).split("_") if word not in _SMALL] or ["step"]
        while len("_".join(words)) > _LONG and len(words) > 1:
            words.pop()
        return identifier("_".join(words))

    # ---- the source ---------------------------------------------------------------------------------------

    def _ranged(self, cell: Cell, low: float, high: float) -> Cell:
        def size(value: float) -> str:
            if cell.kind == "share":
                return f"{value:g}" if value % 1 else f"{value:.1f}"
            return length_source(value, self.move.system, self.known)

        why = spaced(self.move.why)
        args = [quoted(cell.measure), size(cell.value), f"least={size(low)}", f"most={size(high)}"]
        if why:
            args.append(f"why={quoted(why)}")
        lines = Call(f"{self.called}.{cell.kind}", tuple(args)).lines()
        source = "\n".join([*lines, "", "", *self._step(cell.title, cell.name)])
        return replace(cell, source=source, parameters=tuple(lines))

    def _step(self, title: str, name: str) -> list[str]:
        drawn, picked = self.drawn, self.picked
        args = [quoted(title)]
        if drawn.makes:
            args.append(f'makes="{drawn.makes}"')
        if self.after:
            args.append(f'after="{self.after}"')
        uses = [*picked.names, *filter(None, (drawn.makes, drawn.measure))]
        words, body = list(drawn.words), list(drawn.body)
        if len(picked.names) > 1 and not drawn.apart:
            pieces = listed([piece_said(picked.pieces[name]) for name in picked.names])
            words.append(say("canvas_moves.on_pieces", pieces=pieces))
            body = [f"for piece in ({', '.join(picked.names)}):", *statements(body, 4)]
        return function(Call(f"@{self.called}.step", tuple(args)), name, uses, " ".join(words), body)

    # ---- trying it ----------------------------------------------------------------------------------------

    def _worked(self, cell: Cell) -> Cell:
        copy = written(self.lesson, cell.source, self.called)
        pattern = self._work(copy.definition, cell)
        return replace(cell, pattern=pattern, lesson=copy)

    def _work(self, whole: Definition, cell: Cell, value: float | None = None) -> Pattern:
        values = dict(self.lesson.values)
        if cell.measure:
            values[cell.measure] = cell.value if value is None else value
            wide = tuple(
                replace(p, least=min(p.least, values[p.name]), most=max(p.most, values[p.name]))
                if p.name == cell.measure
                else p
                for p in whole.parameters
            )
            whole = replace(whole, parameters=wide)
        return work(whole, self.pattern.body, values, whole=self._closed())

    def _closed(self) -> bool:
        """Whether the outlines close now; if so they must when the move is made."""
        try:
            return all(piece.outline.self_crossing() is None for piece in self.pattern.pieces)
        except KitError:
            return False

    # ---- how far it may go --------------------------------------------------------------------------------

    def _bounds(self, value: float) -> tuple[float, float]:
        """A first guess at the range."""
        if self.drawn.kind == "share":
            return self.drawn.least, max(1.6, value)
        unit = 25.4 / 2 if self.move.system == "inch" else 5.0
        most = math.ceil(max(2 * value, value + 4 * unit) / unit - 1e-6) * unit
        if self.drawn.within is not None:
            most = max(min(most, stepped(self.drawn.within.path.length - 1.0, self.move.system)), value)
        least = self.drawn.least and (25.4 / 16 if self.move.system == "inch" else self.drawn.least)
        return least, most

    def _as_far(self, cell: Cell, value: float, wanted: float) -> float:
        """`wanted`, or the place nearest to it, of a few tried, where the lesson can still be drafted."""
        assert cell.lesson is not None
        for _ in range(_TRIES):
            try:
                self._work(cell.lesson.definition, cell, wanted)
                return wanted
            except Exception:
                half = (value + wanted) / 2
                wanted = round(half, 2) if cell.kind == "share" else stepped(half, self.move.system)
        return value
