"""What all seams share: two rows of runs joined along their stitch lines, how they are pinned, eased and pressed."""

from __future__ import annotations

from collections.abc import Callable
from itertools import product

from kit.diagnostic import per_cent
from kit.sewing.facts import drawn_up_to
from kit.sewing.joined_lengths import gaps_of, pairs, stitch_length
from kit.sewing.reading import read_size
from kit.sewing.sentence import Telling
from kit.sewing.spans import along
from kit.sewing.stretching import eased_by_hand, eased_by_stitching
from kit.sewing.vocabulary import *
from kit.units import Size

PINNED_EASE = 0.05
"""Share of the shorter run up to which fullness is pinned in without more ado (common practice, no source)."""
EASED_EASE = 0.15
"""Share up to which a row of ease stitching takes it up; more is gathered (common practice, no source)."""
MOST_EASE = 3000.0  # mm by which a gathered edge may be longer


def pressing(*more: str, default: str) -> Any:
    """How a seam is pressed: open, to one side, towards one of its pieces, or one of `more` words."""

    def read(given: Any, asked: Asked, name: str) -> str:
        return asked.reader.pressing(given, asked.read["a"] + asked.read["b"], asked.where, *more)

    return read_by(read, "str", default=default, held=default)


def eased() -> Any:
    """By how much (mm on each half) one row is longer on purpose: a length, or "gathered" for all that the edges
    differ by, drawn up before."""

    def read(given: Any, asked: Asked, name: str) -> float:
        return read_ease(asked.reader, asked.read["a"], asked.read["b"], given, asked.where)

    return read_by(read, "Size", default=0, held=0.0)


def read_ease(reader: Reader, a: tuple[Run, ...], b: tuple[Run, ...], ease: Size, where: str) -> float:
    """The ease of a seam as it is written."""
    if ease == "gathered":
        return abs(sum(gap for _, _, gap in gaps_of(reader.cut, a, b)))
    return read_size(ease, f"{where}, ease", MOST_EASE)


@operation
class Seam(Operation):
    """Two runs (or rows of runs) `a` and `b` joined along their stitch lines. `press` is "open", "one side"
    or the piece pressed towards; `ease` mm by which the longer run is longer on purpose, on each half."""

    crosses = True
    changes: ClassVar[Changes] = (
        Brings("unpressed", lambda seam, pattern: seam.a + seam.b if seam.press == "later" else ()),
    )

    a: tuple[Run, ...] = meets("b", closes="sewn", takes="allowance")
    b: tuple[Run, ...] = meets("a", closes="sewn", takes="allowance")
    press: str = pressing(default="open")
    ease: float = eased()

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        alike = len(self.a) == len(self.b)
        return (*(zip(self.a, self.b, strict=True) if alike else product(self.a, self.b)), *super().joins)

    def _names(self) -> tuple[tuple[str, ...], tuple[str, ...]]:
        return tuple(dict.fromkeys(r.piece for r in self.a)), tuple(dict.fromkeys(r.piece for r in self.b))

    def _pin(self, faces: str) -> Sentence:
        """How the two are laid together: by their one edge name, or run on run."""
        first, second = self._names()
        if {edge for run in self.a for edge in run.edges} != {edge for run in self.b for edge in run.edges}:
            return Sentence(f"pin_{faces}_run_on_run", {"a": (self.a, "place"), "b": (self.b, "place")})
        at = tuple(replace(run, side=None) for run in self.a) if first == second else self.a
        edges = {"edge": (at, "edge"), "other": (self.b, "edge")}
        key = f"pin_{faces}{'_same_piece' if first == second else ''}"
        return Sentence(key, {"a": (first, "piece"), "b": (second, "piece"), **edges})

    def _ease(self, pattern: Cut) -> tuple[Sentence, ...]:
        """By how much one row is longer, as it lies: over a fold both halves are one row. Of one that is gathered the
        gathering has told."""
        state = state_before(pattern, self)
        if any(map(state.touches, facts_of(pattern, self.a + self.b, "gathered"))):
            return ()
        halves = 2.0 if all(over_the_fold(pattern, run) for run in self.a + self.b) else 1.0
        return (Sentence("ease", {"ease": (self.ease * halves, "length")}),) if self.ease > 0 else ()

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return broken(_FIRST, self, state, pattern) + super().check(state, pattern)


def notched(pattern: Cut, *rows: tuple[Run, ...]) -> bool:
    """Whether every one of the rows has a notch to match."""
    return all(any(_notch_on(pattern, run) for run in runs) for runs in rows)


def _notch_on(pattern: Cut, run: Run) -> bool:
    """Whether a notch lies on the part of its edges that the run takes."""
    size = run_length(pattern, run)
    notches = (notch for notch in pattern.piece(run.piece).notches if notch.edge in run.edges)
    return any(0.0 <= along(pattern, run, notch.edge, notch.distance) <= size for notch in notches)


def pinned(faces: str) -> Telling:
    """How the two are laid together, right or wrong sides, what is matched, and what is eased in."""
    return lambda seam, pattern: (seam._pin(faces), *matched(seam, pattern))


def matched(seam: Seam, pattern: Cut) -> tuple[Sentence, ...]:
    """What is matched when the two are pinned, only what is there, and what is eased in."""
    what = ["seams"] * (len(seam.a) > 1 or len(seam.b) > 1) + ["notches"] * notched(pattern, seam.a, seam.b)
    return (*([Sentence(f"match_{'_and_'.join(what)}", {})] if what else ()), *seam._ease(pattern))


def pressed(seam: Seam, pattern: Cut) -> Sentence:
    """How the seam is pressed."""
    if seam.press in ("later", "open", "one side"):
        return Sentence(f"press_{seam.press.replace(' ', '_')}", {})
    return Sentence("press_towards", {"piece": ((seam.press,), "piece")})


def length_gap(pattern: Cut, seam: Seam) -> tuple[tuple[tuple[Run, ...], tuple[Run, ...], float], ...]:
    """(runs of a, runs of b, a longer than b in mm) for each pair that must agree, on one half. Rows with the
    same number of runs are compared run by run."""
    return gaps_of(pattern, seam.a, seam.b)


def in_rows(seam: Any, state: State, pattern: Cut, *fields: str) -> bool:
    """Whether the runs of each field lie end to end by now."""
    return all(case.holds for of in fields for case in EndToEnd(of).cases(seam, state, pattern))


def fullness(seam: Seam, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """Fullness too great to be pinned in needs its ease stitching or gathers first; gathers must be taken up, and
    be drawn up to the length they are sewn to. Of runs that do not lie end to end yet nothing is said."""
    for a, b in pairs(seam.a, seam.b) if in_rows(seam, state, pattern, "a", "b") else ():
        one, two = stitch_length(pattern, a), stitch_length(pattern, b)
        longer, shorter, most, least = (a, b, one, two) if one >= two else (b, a, two, one)
        for runs in (a, b):
            gathered = any(map(state.touches, facts_of(pattern, runs, "gathered")))
            if gathered and (not seam.ease or runs is shorter):
                yield "gathers_not_taken_up", Case(False, runs[0])
        if not seam.ease or least <= 0:
            continue
        share = (most - least) / least
        eased = eased_by_stitching(pattern, EASED_EASE)
        wanted = ("gathered",) if share > eased else ("eased", "gathered")
        edges = facts_of(pattern, longer, "eased")
        # A cap is eased between its notches, a waist gathered across its middle: some of each edge is enough.
        if share > eased_by_hand(pattern, PINNED_EASE) and not all(
            any(state.touches((what, *edge[1:])) for what in wanted) for edge in edges
        ):
            kind = "seam_not_gathered" if share > eased else "seam_not_eased"
            yield kind, Case(False, longer[0], amount=most - least, values={"share": per_cent(share)})
        for side in sides_of(pattern, longer[0]) if len(longer) == 1 else ():
            to = drawn_up_to(state, longer[0], side)
            size = stitch_length(pattern, shorter) / len(sides_of(pattern, longer[0]))
            if to is not None and abs(to - size) > max(2.0, 0.02 * size):
                values = {"to": measured(to), "size": measured(size)}
                yield "gathered_to_another_length", Case(False, longer[0], amount=abs(to - size), values=values)


def _full(kind: str, code: str) -> Rule:
    return Rule(First(fullness, kind), code, says=kind)


_FIRST = (
    in_a_row("a"),
    in_a_row("b"),
    _full("gathers_not_taken_up", "gathers_not_taken_up"),
    _full("seam_not_gathered", "not_gathered_yet"),
    _full("seam_not_eased", "not_eased_yet"),
    _full("gathered_to_another_length", "gathered_to_another_length"),
)
"""What is asked of every seam before its own rules."""


def not_basted(when: Callable[[Any], bool] | None = None) -> tuple[Rule, ...]:
    """What a seam needs whose first row lays the pieces otherwise than basting for a fitting holds them: wrong sides
    together, or one of them folded."""
    return tuple(
        Rule(Of("basted_on_line", of), "basted_otherwise", holds=False, each=True, when=when) for of in ("a", "b")
    )
