"""A part of an operation of several rows: what one step sews of it, when it is begun, left and finished."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from itertools import chain
from typing import Any

from kit.diagnostic import Diagnostic, message, titled
from kit.errors import KitError, near
from kit.piece.role import PieceRole
from kit.sewing.base import Operation, asked_by, facts_given, over, row_of
from kit.sewing.cut import Cut
from kit.sewing.facts import facts_of
from kit.sewing.named import row
from kit.sewing.outcome import Closing, Effect, Fact, Uses
from kit.sewing.run import Run
from kit.sewing.scene import Scene
from kit.sewing.sentence import Sentence
from kit.sewing.spans import Span, spans
from kit.sewing.stage import Stage
from kit.sewing.state import State
from kit.sewing.trouble import refuse, trouble


@dataclass(frozen=True, kw_only=True)
class Portion(Operation):
    """Some of the stages of the operation `of`, the one numbered `start` up to the one before `end`: what one step sews
    of it. It closes, gives and says what belongs to these; what the operation needs at all counts where it begins."""

    of: Operation
    start: int
    end: int

    def __post_init__(self) -> None:
        for name in ("kind", "called", "seam_class", "stitch_type", "cautions", "tools", "notions"):
            object.__setattr__(self, name, getattr(self.of, name))
        object.__setattr__(self, "crosses", self.of.crosses and any(stage.sews for stage in self._mine))

    @property
    def entire(self) -> Operation:
        return self.of

    @property
    def begins(self) -> bool:
        return self.start == 0

    @property
    def left(self) -> tuple[Stage, ...]:
        """The stages still to be sewn after it."""
        return self.of.staged()[self.end :]

    @property
    def _mine(self) -> tuple[Stage, ...]:
        return self.of.staged()[self.start : self.end]

    def _now(self, number: int | None) -> bool:
        """Whether what comes with the stage of that number (None: with the last) comes now."""
        return not self.left if number is None else self.start <= number < self.end

    def _when(self, test: Callable[[Stage], bool]) -> int | None:
        """The number of the first stage that is so."""
        return next((number for number, stage in enumerate(self.of.staged()) if test(stage)), None)

    def runs(self) -> tuple[Run, ...]:
        return self.of.runs()

    def named(self) -> tuple[Run, ...]:
        """The runs by which it is known again: those it joins, else all."""
        return tuple(dict.fromkeys(chain.from_iterable(self.of.joins))) or self.of.runs()

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        def closed_by(closing: Closing) -> Callable[[Stage], bool]:
            return lambda stage: any(
                how in ("", closing.how) and closing.span.overlap(span) > 0
                for name, how in stage.closes.items()
                for run in row_of(getattr(self.of, name))
                for span in spans(pattern, run)
            )

        return tuple(each for each in self.of.closes(pattern) if self._now(self._when(closed_by(each))))

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return self.of.takes(pattern)

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return self.of.joins if self._now(self._when(lambda stage: stage.joins)) else ()

    @property
    def uses(self) -> Uses:
        """All that is used is there from the beginning."""
        return self.of.uses if self.begins else Uses(pieces=self.of.uses.pieces)

    def effect(self, pattern: Cut) -> Effect:
        found, every = self.of.effect(pattern), self.of.staged()
        given, undone = over(self._mine, self.of, pattern)
        if not self.left:
            staged = {fact for stage in every for fact in facts_given(stage.gives, self.of, pattern)}
            given += tuple(fact for fact in found.facts if fact not in staged)
            undone = tuple(dict.fromkeys((*undone, *found.undone)))

        def part(name: str, early: bool) -> Any:
            number = self._when(lambda stage: name in stage.brings)
            now = self._now(0 if number is None and early else number)
            return getattr(found, name) if now else getattr(Effect(), name)

        early = {"made", "attached", "inside_out", "laid"}
        late = {"faced", "right_side_out", "unpressed", "pressed", "turned", "bound", "hung"}
        parts = {name: part(name, name in early) for name in early | late}
        # The runs hang together, and wait: for the rows that are left rather than for the iron.
        if not self.begins:
            undone += (self._left_at(self.start),)
        if self.left:
            given += (self._left_at(self.end),)
        joined = self._when(lambda stage: stage.joins)
        waiting = facts_of(pattern, self.named(), "half_sewn")
        if joined is not None and joined < self.end and self.left:
            given += waiting
            parts["unpressed"] += self.named()
        elif joined is not None and not self.left:
            undone += waiting
            parts["pressed"] += () if found.unpressed else self.named()
        return Effect(facts=given, undone=undone, **parts)

    def _left_at(self, number: int) -> Fact:
        """The fact that the operation is left before the stage of that number."""
        on = " ".join(map(_written, self.of.runs())) or " ".join(self.of.uses.strips)
        return ("left_at", self.kind, on, str(number))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return () if self.left else self.of.wants(pattern)

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        return self.of.opens(pattern) if self.begins else ()

    def gaps(self, pattern: Cut) -> tuple[Run, ...]:
        return self.of.gaps(pattern) if self.begins else ()

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return self.of.roles() if self.begins else ()

    def cautioned(self, pattern: Cut) -> tuple[str, ...]:
        return self.of.cautioned(pattern)

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return self.of.notion_amounts(pattern) if self.begins else {}

    def minutes(self, pattern: Cut) -> float:
        """Its share of the whole."""
        work = sum(stage.work for stage in self._mine) / sum(stage.work for stage in self.of.staged())
        return self.of.minutes(pattern) * work

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return self.of.whys(pattern) if self.begins else ()

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        """What is gone on with is named again: other work lies between."""
        again: tuple[Sentence, ...] = ()
        if not self.begins and self.named():
            again = (Sentence("rows.go_on", {"place": (self.named(), "place")}),)
        elif not self.begins:
            again = tuple(Sentence("rows.go_on_strip", {"strip": (name, "strip")}) for name in self.of.uses.strips)
        return again + self.of.told(
            (*chain.from_iterable(stage.says for stage in self._mine), *self.of.lastly), pattern
        )

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """Those of its stages. Where none is its own, it is what was last shown, with its rows sewn by then; before the
        first, what the last one shows, before its rows are sewn."""
        every = self.of.scenes(pattern)
        order = [stage.name for stage in self.of.staged()]
        at = [order.index(scene.stage) if scene.stage in order else len(order) - 1 for scene in every]
        mine = tuple(scene for scene, number in zip(every, at, strict=True) if self.start <= number < self.end)
        if mine or not every:
            return mine
        before = [scene for scene, number in zip(every, at, strict=True) if number < self.start]
        if before:
            sewn = tuple(replace(row, ink="old") for row in before[-1].rows)
            return (replace(before[-1], rows=sewn, arrows=(), pins=()),)
        unsewn = every[-1].section and replace(every[-1].section, stitches=())
        rows = tuple(row for row in every[-1].rows if row.ink == "old")
        return (replace(every[-1], rows=rows, things=(), section=unsewn),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return self.of.check(state, pattern) if self.begins else ()

    def refusals(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        """Besides what its stages need: what is gone on with was left just there."""
        found = self.check(state, pattern) + asked_by(self._mine, self.of, state, pattern)
        if self.begins or self._left_at(self.start) in state.facts:
            return found
        do = message("sewing_trouble.not_left_there_do")
        if self.named():
            says = message("sewing_trouble.not_left_there", place=row(pattern, self.named()))
            return (refuse(pattern, self.named()[0], "not_left_there", says, do), *found)
        titles = [pattern.strip(name).title for name in self.of.uses.strips]
        says = message("sewing_trouble.not_left_there", place=titled(titles[0]))
        return (trouble("not_left_there", says, titles[0], do), *found)


def until(whole: Operation, rows: str, after: int = 0) -> Operation:
    """The part of an operation from its stage of the number `after` to the one called `rows`; all of it where that is
    all. Raises `KitError` for another word, and for a stage that is sewn already."""
    names = [stage.name for stage in whole.staged()]
    called = (whole.called or whole.kind).replace("_", " ")
    if len(names) < 2:
        raise KitError(f"this {called} is not sewn in stages.", where=called, do="Leave out rows=.")
    if rows not in names:
        raise KitError(f"this {called} has no stage {rows!r}.", where=called, do=near(str(rows), names))
    if names.index(rows) < after:
        left = " or ".join(f'rows="{name}"' for name in names[after:])
        raise KitError(
            f'the stage "{rows}" of this {called} is sewn already.', where=called, do=f"What is left is {left}."
        )
    end = names.index(rows) + 1
    return Portion(of=whole, start=after, end=end) if after or end < len(names) else whole


def begun(sewn: Iterable[Operation]) -> list[Portion]:
    """Of operations in their order those that are begun and not finished: what was last sewn of each."""
    left: list[Portion] = []
    for operation in sewn:
        if isinstance(operation, Portion):
            left = [each for each in left if each.of != operation.of]
            left += [operation] if operation.left else []
    return left


def _written(run: Run) -> str:
    """A run as a text that no other run has."""
    return f"{run.piece}.{run.side or 'both'}.{'+'.join(run.edges)}[{run.start}..{run.end}]"
