"""Goals of an exercise: what is asked of a draft, and how far off one is.

A goal compares two patterns of the same body: the lesson's own draft at the teacher's values, and the student's. It
says in words how far off the student is, so that an exercise can be checked while a slider moves, and without knowing
the answer.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any, Protocol

from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import named
from kit.sewing.seam_walk import run_of
from kit.units import Size, System, both, length, mm
from kit.wording.lists import listed
from kit.wording.names import edge_label

WITHIN = 2.0
"""mm by which a length may miss what was asked: a little more than a step of a slider in inches."""
STILL = 1.0
"""mm by which a line that is to stay may have moved: half a pencil line."""


@dataclass(frozen=True)
class Attempt:
    """A student's draft `after` beside the lesson's own `before`, both of one body. `prove` gives the findings of the
    proof on `after` when a goal asks for them."""

    before: Pattern
    after: Pattern
    units: System
    prove: Callable[[Pattern], Sequence[Any]]

    @cached_property
    def findings(self) -> tuple[Any, ...]:
        """What the proof found in the student's draft, notes left out."""
        return tuple(finding for finding in self.prove(self.after) if finding.level != "note")

    def says(self, value: float) -> str:
        """A length in both systems."""
        return both(abs(value), self.units)


@dataclass(frozen=True)
class Result:
    """How far a goal is: whether it is `met`, and in words where the draft stands."""

    met: bool
    said: str


class Goal(Protocol):
    """What must hold for an exercise to be done."""

    def asked(self, attempt: Attempt) -> str:
        """What is asked, as a sentence."""

    def result(self, attempt: Attempt) -> Result:
        """How far it is. Raises `KitError` with the near name for an edge or point that is not drawn."""


# ---- what is measured -------------------------------------------------------------------------------------


def _size(pattern: Pattern, name: str) -> float:
    """mm of an edge, of several in a row ("front.underarm + front.side") or of a finished measurement."""
    finished = dict(pattern.finished)
    if name in finished:
        return finished[name]
    if "." not in name:
        raise KitError(
            f"there is no edge or finished measurement '{name}'.",
            do=near(name, [*finished, *(f"{p.name}.{e.name}" for p in pattern.pieces for e in p.edges)]),
        )
    return sum(path.length for path in _paths(pattern, name))


def _paths(pattern: Pattern, name: str) -> tuple[Path, ...]:
    run = run_of(pattern.pieces, name)
    piece = pattern.piece(run.piece)
    return tuple(piece.edge(edge).path for edge in run.edges)


def _label(pattern: Pattern, name: str) -> str:
    """What an edge or finished measurement is called in a sentence."""
    if "." not in name:
        return name
    run = run_of(pattern.pieces, name)
    piece = pattern.piece(run.piece)
    edges = listed([edge_label(piece.edge(edge)) for edge in run.edges])
    return say("class_copy.edge", piece=piece.title, edge=edges)


def _point(pattern: Pattern, name: str) -> tuple[str, Point]:
    """(label, place) of a named point, "front.wrap_corner"."""
    words = name.split(".")
    if len(words) != 2 or not all(words):
        raise KitError(f"'{name}' does not name a point.", do='Name piece and point, as in "front.wrap_corner".')
    piece = named(pattern.pieces, words[0], "piece")
    points = dict(piece.points)
    if words[1] not in points:
        raise KitError(f"there is no point '{words[1]}'.", where=piece.title, do=near(words[1], points))
    return say("class_copy.edge", piece=piece.title, edge=words[1].replace("_", " ")), points[words[1]]


def _apart(one: Sequence[Path], other: Sequence[Path]) -> float:
    """How far the furthest point of either run of lines lies from the other, mm."""

    def furthest(here: Sequence[Path], there: Sequence[Path]) -> float:
        return max(min(path.distance_to(point) for path in there) for line in here for point in line.points(0.5))

    return max(furthest(one, other), furthest(other, one))


# ---- goals ------------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class GrowthGoal:
    """An edge or finished measurement becomes `by` mm longer, or shorter below zero, than in the lesson's draft."""

    what: str
    by: float
    within: float = WITHIN

    def asked(self, attempt: Attempt) -> str:
        key = "class_copy.grows" if self.by > 0 else "class_copy.shrinks"
        return say(key, what=_label(attempt.before, self.what), by=attempt.says(self.by))

    def result(self, attempt: Attempt) -> Result:
        gained = _size(attempt.after, self.what) - _size(attempt.before, self.what)
        what, way = _label(attempt.before, self.what), "grows" if self.by > 0 else "shrinks"
        toward = gained if self.by > 0 else -gained
        missing = abs(self.by) - toward
        places = {"what": what, "by": attempt.says(self.by), "change": attempt.says(toward)}
        if abs(missing) <= self.within + 1e-6:
            return Result(True, say(f"class_copy.{way}_met", places))
        if missing < 0:
            return Result(False, say(f"class_copy.{way}_over", places, over=attempt.says(missing)))
        if toward < -0.5:
            return Result(False, say(f"class_copy.{way}_wrong", places))
        state = "none" if toward < 0.5 else "short"
        return Result(False, say(f"class_copy.{way}_{state}", places, missing=attempt.says(missing)))


@dataclass(frozen=True)
class Keep:
    """An edge keeps its length and its place on the paper."""

    what: str
    within: float = STILL

    def asked(self, attempt: Attempt) -> str:
        return say("class_copy.keeps", what=_label(attempt.before, self.what))

    def result(self, attempt: Attempt) -> Result:
        before, after = _paths(attempt.before, self.what), _paths(attempt.after, self.what)
        what = _label(attempt.before, self.what)
        gained = sum(path.length for path in after) - sum(path.length for path in before)
        if gained > self.within:
            return Result(False, say("class_copy.keeps_longer", what=what, by=attempt.says(gained)))
        if gained < -self.within:
            return Result(False, say("class_copy.keeps_shorter", what=what, by=attempt.says(gained)))
        moved = _apart(before, after)
        if moved > self.within:
            return Result(False, say("class_copy.keeps_moved", what=what, by=attempt.says(moved)))
        return Result(True, say("class_copy.keeps_met", what=what))


@dataclass(frozen=True)
class Between:
    """An edge or finished measurement is at `least` and at `most` so long, mm; None: no bound."""

    what: str
    least: float | None = None
    most: float | None = None

    def asked(self, attempt: Attempt) -> str:
        places = {"what": _label(attempt.before, self.what)}
        if self.least is None or self.most is None:
            key, value = ("at_most", self.most) if self.least is None else ("at_least", self.least)
            return say(f"class_copy.{key}", places, length=attempt.says(value or 0.0))
        return say("class_copy.is_length", places, length=attempt.says((self.least + self.most) / 2))

    def result(self, attempt: Attempt) -> Result:
        size = _size(attempt.after, self.what)
        places = {"what": _label(attempt.before, self.what), "length": attempt.says(size)}
        if self.least is not None and size < self.least - 1e-6:
            aim = self.least if self.most is None else (self.least + self.most) / 2
            return Result(False, say("class_copy.too_short", places, missing=attempt.says(aim - size)))
        if self.most is not None and size > self.most + 1e-6:
            aim = self.most if self.least is None else (self.least + self.most) / 2
            return Result(False, say("class_copy.too_long", places, over=attempt.says(size - aim)))
        return Result(True, say("class_copy.length_met", places))


@dataclass(frozen=True)
class PointGoal:
    """A named point moves by `up` and `out` mm (down and toward the centre line below zero) from where the lesson's
    own draft has it."""

    point: str
    up: float = 0.0
    out: float = 0.0
    within: float = WITHIN

    def _said(self, attempt: Attempt, key: str, label: str, up: float, out: float) -> str:
        """A sentence of `key` with how far up or down and out or in; what is nothing is not named."""
        parts = []
        if abs(up) >= 0.5:
            parts.append(say("class_copy.up" if up > 0 else "class_copy.down", by=attempt.says(up)))
        if abs(out) >= 0.5:
            parts.append(say("class_copy.out" if out > 0 else "class_copy.in", by=attempt.says(out)))
        return say(key, what=label, way=listed(parts))

    def asked(self, attempt: Attempt) -> str:
        label, _ = _point(attempt.before, self.point)
        return self._said(attempt, "class_copy.moves", label, self.up, self.out)

    def result(self, attempt: Attempt) -> Result:
        label, start = _point(attempt.before, self.point)
        _, end = _point(attempt.after, self.point)
        side = -1.0 if start.x < 0 else 1.0
        up, out = self.up - (end.y - start.y), self.out - side * (end.x - start.x)
        if max(abs(up), abs(out)) <= self.within + 1e-6:
            return Result(True, self._said(attempt, "class_copy.moves_met", label, self.up, self.out))
        return Result(False, self._said(attempt, "class_copy.moves_short", label, up, out))


@dataclass(frozen=True)
class Sound:
    """The proof finds nothing wrong in the draft."""

    def asked(self, attempt: Attempt) -> str:
        return say("class_copy.sound")

    def result(self, attempt: Attempt) -> Result:
        found = attempt.findings
        if not found:
            return Result(True, say("class_copy.sound_met"))
        return Result(False, say("class_copy.sound_not", count=len(found), first=str(found[0])))


def grows(what: str, by: Size, *, within: Size = WITHIN * mm) -> Goal:
    """The edge ("front.underarm", or several in a row joined by " + ") or finished measurement `what` becomes `by`
    longer than the lesson draws it. Raises `KitError` for a length without a unit.

    >>> from kit import cm
    >>> grows("front.side", 2 * cm).by
    20.0
    """
    return GrowthGoal(str(what), _positive(by, "grows"), float(length(within, "grows, within")))


def shrinks(what: str, by: Size, *, within: Size = WITHIN * mm) -> Goal:
    """`what`, as in `grows`, becomes `by` shorter.

    >>> from kit import cm
    >>> shrinks("front.side", 2 * cm).by
    -20.0
    """
    return GrowthGoal(str(what), -_positive(by, "shrinks"), float(length(within, "shrinks, within")))


def keeps(what: str, *, within: Size = STILL * mm) -> Goal:
    """The edge `what` stays as long as it was and where it was.

    >>> keeps("front.neck")
    Keep(what='front.neck', within=1.0)
    """
    return Keep(str(what), float(length(within, "keeps, within")))


def is_length(what: str, wanted: Size, *, within: Size = WITHIN * mm) -> Goal:
    """`what`, as in `grows`, is as long as `wanted`.

    >>> from kit import cm
    >>> is_length("front.side", 30 * cm, within=0.5 * cm)
    Between(what='front.side', least=295.0, most=305.0)
    """
    aim, slack = _positive(wanted, "is_length"), float(length(within, "is_length, within"))
    return Between(str(what), aim - slack, aim + slack)


def at_least(what: str, wanted: Size) -> Goal:
    """`what`, as in `grows`, is as long as `wanted` or longer.

    >>> from kit import cm
    >>> at_least("front.side", 30 * cm).least
    300.0
    """
    return Between(str(what), least=_positive(wanted, "at_least"))


def at_most(what: str, wanted: Size) -> Goal:
    """`what`, as in `grows`, is as long as `wanted` or shorter.

    >>> from kit import cm
    >>> at_most("front.side", 30 * cm).most
    300.0
    """
    return Between(str(what), most=_positive(wanted, "at_most"))


def moves(point: str, *, up: Size = 0, out: Size = 0, within: Size = WITHIN * mm) -> Goal:
    """The named point ("front.wrap_corner") moves `up` (below zero: down) and `out` from the centre line (below zero:
    in) from where the lesson draws it.

    >>> from kit import cm
    >>> moves("front.wrap_corner", up=-2 * cm).up
    -20.0
    """
    by = float(length(up, "moves, up")), float(length(out, "moves, out"))
    if by == (0.0, 0.0):
        raise KitError("the point is to move, but nowhere.", where="moves", do="Write up=2 * cm or out=1 * cm.")
    return PointGoal(str(point), *by, float(length(within, "moves, within")))


def passes_proof() -> Goal:
    """The proof finds nothing wrong.

    >>> passes_proof()
    Sound()
    """
    return Sound()


def _positive(value: Size, where: str) -> float:
    size = float(length(value, where))
    if size <= 0:
        raise KitError(f"{size:g} mm is not a length to ask for.", where=where, do="Write, say, 2 * cm.")
    return size
