"""What every sewing operation can say of itself.

An operation is a value: which runs it sews and by how much. From that come the raw edge it closes, the
allowance it takes, what it joins and uses, its sentences (as keys and values, put into words by `kit.prose`),
its scenes (drawn by `kit.picture`) and its checks against the garment so far. Lengths are mm.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any, ClassVar, NamedTuple

from kit.diagnostic import Diagnostic
from kit.piece.piece import Side
from kit.piece.role import PieceRole
from kit.sewing.cut import Cut
from kit.sewing.outcome import Closing, Effect, Fact, How, Outcome, Uses
from kit.sewing.run import Run
from kit.sewing.scene import Scene
from kit.sewing.spans import Span, sides_of, spans
from kit.sewing.state import State


class Sentence(NamedTuple):
    """`key` of a sentence in templates/language, and what fills it: name -> (value, kind). Kinds: length and
    allowance (mm), part (mm; the parts of one operation are rounded so that they add up), count, edge (runs),
    place (runs with their piece), piece (names), strip (name), word (key of a word), text (the teacher's own)."""

    key: str
    values: Mapping[str, tuple[Any, str]]


@dataclass(frozen=True, kw_only=True)
class Operation:
    """Base of all operations. `kind` is the key by which sentences and pictures know it; `seam_class` its
        ISO 4916 class and `stitch_type` its ISO 4915 stitch, from memory and only where sure; `cautions`, `tools`
    and `notions` are keys of templates/language; `crosses`: a seam that runs into it must have been pressed."""

    kind: ClassVar[str] = ""
    seam_class: ClassVar[str] = ""
    stitch_type: ClassVar[str] = "301"
    cautions: ClassVar[tuple[str, ...]] = ("needle",)
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins")
    notions: ClassVar[tuple[str, ...]] = ("thread",)
    crosses: ClassVar[bool] = False

    def runs(self) -> tuple[Run, ...]:
        """Every run the operation touches."""
        raise NotImplementedError

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        """The raw edge it closes."""
        return ()

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        """{(piece, edge): mm of allowance its rows and turns take}."""
        return {}

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        """Pairs of runs it joins."""
        return ()

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(run.piece for run in self.runs())))

    def effect(self, pattern: Cut) -> Effect:
        """What else it changes of the garment in work."""
        return Effect()

    def outcome(self, pattern: Cut) -> Outcome:
        """All that it changes, for the state of the garment to take."""
        return Outcome(self.closes(pattern), self.joins, self.uses, self.effect(pattern))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        """Facts that must hold once the garment is finished because this was done: what it prepared must be used."""
        return ()

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        """Stretches of edge it leaves as an opening of the finished garment: a vent, a pocket's mouth, a zip."""
        return ()

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        """What its pieces are because it sews them so: (piece, role, the piece it lies on or "")."""
        return ()

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        """{notion: (how much of it is used up, "length" in mm or "count")} where that can be said."""
        return {}

    def minutes(self, pattern: Cut) -> float:
        """Rough time it takes a learner, in minutes, all its halves together (common practice, no source): a start
        for setting up, and so much for each metre sewn."""
        metres = sum(span.length for run in self.runs() for span in spans(pattern, run)) / 1000
        return 4.0 + 6.0 * metres

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        """Why it is done so, for teaching: printed on demand."""
        return ()

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        """What to do, in order."""
        raise NotImplementedError

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """One scene for each stage worth showing; none where there is nothing to draw."""
        raise NotImplementedError

    def scene(self, pattern: Cut) -> Scene:
        """The last stage: what the operation leaves."""
        return next(reversed(self.scenes(pattern)), Scene(layers=()))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        """What speaks against doing this now."""
        return ()


def closings(pattern: Cut, runs: Iterable[Run], how: How) -> tuple[Closing, ...]:
    """The whole of each run, closed in one way."""
    return tuple(Closing(span, how) for run in runs for span in spans(pattern, run))


def taken(runs: Iterable[Run], amount: float) -> dict[tuple[str, str], float]:
    """The same `amount` (mm) for every edge of the runs."""
    return {(run.piece, edge): amount for run in runs for edge in run.edges}


def shown(pattern: Cut, run: Run, side: Side | None = None) -> Run:
    """The run on the one half that a picture shows: its own, else `side`, else the right."""
    if run.side:
        return run
    halves = sides_of(pattern, run)
    return replace(run, side=side if side in halves else halves[-1])


def both_sides(pattern: Cut, runs: Iterable[Run]) -> tuple[Sentence, ...]:
    """A closing sentence when a left and a right half are meant."""
    if any(len(sides_of(pattern, run)) == 2 for run in runs):
        return (Sentence("both_sides", {}),)
    return ()
