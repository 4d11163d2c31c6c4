"""Seams that join two runs: the plain seam and the French seam."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, ClassVar

from kit.errors import KitError
from kit.piece.dart import mouths_length
from kit.piece.piece import Mark
from kit.sewing import section
from kit.sewing.operation import Closing, Cut, Operation, Sentence, Trouble, both_sides, closings, shown, taken
from kit.sewing.reading import FINISHES, Reader, Runs, mark_label, read_size, read_width, read_word
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.verb import verb
from kit.sewing.walk import run_length, runs_opposed, spans
from kit.units import both

if TYPE_CHECKING:
    from kit.sewing.state import State


NARROWEST = 3.0  # mm; a French seam's second row shuts in no less (common practice, no source)


@dataclass(frozen=True, kw_only=True)
class Seam(Operation):
    """Two runs (or rows of runs) `a` and `b` joined along their stitch lines. `press` is "open", "one side"
    or the piece pressed towards; `ease` mm by which the longer run is longer on purpose, on each half."""

    crosses: ClassVar[bool] = True

    a: tuple[Run, ...]
    b: tuple[Run, ...]
    press: str = "open"
    ease: float = 0.0

    def runs(self) -> tuple[Run, ...]:
        return self.a + self.b

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        if len(self.a) == len(self.b):
            return tuple(zip(self.a, self.b, strict=True))
        return tuple((one, other) for one in self.a for other in self.b)

    def _names(self) -> tuple[tuple[str, ...], tuple[str, ...]]:
        return tuple(dict.fromkeys(r.piece for r in self.a)), tuple(dict.fromkeys(r.piece for r in self.b))

    def _place(self) -> dict[str, tuple[object, str]]:
        first, second = self._names()
        return {"a": (first, "piece"), "b": (second, "piece"), "edge": (self.a, "edge"), "other": (self.b, "edge")}

    def _pin(self, faces: str) -> Sentence:
        """How the two are laid together: by their one edge name, or run on run."""
        first, second = self._names()
        if first == second:
            return Sentence(f"pin_{faces}_same_piece", self._place())
        if {edge for run in self.a for edge in run.edges} == {edge for run in self.b for edge in run.edges}:
            return Sentence(f"pin_{faces}", self._place())
        return Sentence(f"pin_{faces}_run_on_run", {"a": (self.a, "place"), "b": (self.b, "place")})

    def _match(self, pattern: Cut) -> tuple[Sentence, ...]:
        """What is matched when the two are pinned: only what is there."""
        seams = len(self.a) > 1 or len(self.b) > 1
        notched = all(
            any(notch.edge in run.edges for run in runs for notch in pattern.piece(run.piece).notches)
            for runs in (self.a, self.b)
        )
        key = {
            (True, True): "match_seams_and_notches",
            (True, False): "match_seams",
            (False, True): "match_notches",
        }.get((seams, notched), "")
        return (Sentence(key, {}),) if key else ()

    def _ease(self) -> tuple[Sentence, ...]:
        return (Sentence("ease", {"ease": (self.ease, "length")}),) if self.ease > 0 else ()

    def _press(self) -> Sentence:
        if self.press == "open":
            return Sentence("press_open", {})
        if self.press == "one side":
            return Sentence("press_one_side", {})
        return Sentence("press_towards", {"piece": ((self.press,), "piece")})

    def check(self, state: State, pattern: Cut) -> tuple[Trouble, ...]:
        return unjoined(state, pattern, self.a) + unjoined(state, pattern, self.b)


def unjoined(state: State, pattern: Cut, runs: tuple[Run, ...]) -> tuple[Trouble, ...]:
    """Runs named as one row must already lie end to end."""
    return tuple(
        Trouble(
            "not_joined_yet",
            f"{before.said} and {after.said} are sewn as one row, but the pieces are not joined there yet.",
            pattern.piece(before.piece).title,
            "Sew the seam between them first, or sew the two one after the other.",
            piece=before.piece,
            edge=before.edges[-1],
        )
        for before, after in pairwise(runs)
        if not state.continuous(pattern, before, after)
    )


@dataclass(frozen=True, kw_only=True)
class PlainSeam(Seam):
    """One row `allowance` from the edge, right sides together (ISO 4916 1.01.01, from memory). `opening`
    (mm along `a`, marked on the pattern as `mark`) stays unsewn; its edges are turned in and stitched. `finish`
    overcasts the raw edges of the allowances: "none" leaves them."""

    kind: ClassVar[str] = "plain_seam"
    seam_class: ClassVar[str] = "1.01.01"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    finish: str = "zigzag"
    opening: tuple[float, float] | None = None
    mark: str = ""

    def _openings(self, pattern: Cut) -> tuple[tuple[Run, float, float], ...]:
        """(run, start, end) of the opening on each of the two runs."""
        if self.opening is None:
            return ()
        (a,), (b,) = self.a, self.b
        start, end = self.opening
        far = run_length(pattern, b)
        if runs_opposed(pattern, a, b):
            return ((a, start, end), (b, far - end, far - start))
        return ((a, start, end), (b, start, end))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        if self.opening is None:
            return closings(pattern, self.runs(), "sewn")
        found: list[Closing] = []
        for run, start, end in self._openings(pattern):
            if start > 0:
                found += [Closing(span, "sewn") for span in spans(pattern, run, 0.0, start)]
            found += [Closing(span, "hemmed") for span in spans(pattern, run, start, end)]
            if end < run_length(pattern, run):
                found += [Closing(span, "sewn") for span in spans(pattern, run, end)]
        return tuple(found)

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        found = [self._pin("right"), *self._match(pattern), *self._ease()]
        sew = {"allowance": (self.allowance, "allowance")}
        if self.opening is None:
            found.append(Sentence("plain_seam.sew", sew))
        else:
            start, end = self.opening
            if self.mark:
                key = "plain_seam.sew_to_marks"
            elif start < 0.5:
                key = "plain_seam.sew_open_start"
            elif end > run_length(pattern, self.a[0]) - 0.5:
                key = "plain_seam.sew_open_end"
            else:
                key = "plain_seam.sew_with_opening"
            found.append(
                Sentence(
                    key,
                    {
                        **sew,
                        "from": (start, "length"),
                        "to": (end, "length"),
                        "size": (end - start, "length"),
                        "edge": (self.a, "edge"),
                        "mark": (self.mark, "text"),
                    },
                )
            )
        if self.finish != "none":
            found.append(Sentence("plain_seam.finish", {"finish": (f"finish.{self.finish}", "word")}))
        found.append(self._press())
        if self.opening is not None:
            found.append(Sentence("plain_seam.opening_edges", sew))
        return (*found, *both_sides(pattern, self.runs()))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        lower = Layer(b, up="right")
        together = Scene(
            layers=(lower, Layer(a, up="wrong", on=b, how="together")),
            rows=(Row(a, gap=self.opening),),
            focus=a,
            section=section.superimposed(),
        )
        arrows = {"open": ((a, "in"), (b, "in")), "one side": ((a, "in"),)}.get(
            self.press, ((a, "in"),) if self.press == a.piece else ((b, "in"),)
        )
        rows: tuple[Row, ...] = (Row(a, ink="old", gap=self.opening),)
        if self.opening is not None:
            inside = self.allowance / 2
            turned = tuple(_part(pattern, run, start, end) for run, start, end in self._openings(pattern))
            rows += tuple(Row(shown(pattern, run), inset=inside) for run in turned)
        opened = Scene(
            layers=(Layer(b, up="wrong"), Layer(a, up="wrong", on=b, how="open")),
            rows=rows,
            focus=a,
            arrows=arrows,  # type: ignore[arg-type]
            section=section.pressed_open() if self.press == "open" else section.superimposed(),
        )
        return (together, opened)

    def check(self, state: State, pattern: Cut) -> tuple[Trouble, ...]:
        found = super().check(state, pattern)
        if self.opening is not None:
            end = self.opening[1]
            size = run_length(pattern, self.a[0])
            if end > size + 0.5:
                found += (
                    Trouble(
                        "opening_outside_seam",
                        f"the opening ends {both(end)} along {self.a[0].said}, which is only {both(size)} long.",
                        pattern.piece(self.a[0].piece).title,
                        "Move the opening up, or make it smaller.",
                        amount=end - size,
                        piece=self.a[0].piece,
                        edge=self.a[0].edges[-1],
                    ),
                )
        return found


def _part(pattern: Cut, run: Run, start: float, end: float) -> Run:
    """A part of a run as a run."""
    low = run.start or 0.0
    return Run(run.piece, run.edges, run.side, low + start, min(low + end, low + run_length(pattern, run)))


@dataclass(frozen=True, kw_only=True)
class FrenchSeam(Seam):
    """Sewn twice so that the raw edges are shut in: `first` mm from the edge wrong sides together, turned,
    creased, then `second` mm from the crease right sides together. It takes first + second. ISO 4916 class 1
    (superimposed). Order: A Complete Course in Dressmaking, vol. 1 (1921), p. 98."""

    kind: ClassVar[str] = "french_seam"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")

    first: float
    second: float
    press: str = "one side"

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.first + self.second)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        rows = {
            "first": (self.first, "part"),
            "second": (self.second, "part"),
            "total": (self.first + self.second, "allowance"),
        }
        return (
            self._pin("wrong"),
            *self._match(pattern),
            *self._ease(),
            Sentence("french_seam.first", rows),
            Sentence("french_seam.trim_narrow" if self.first > self.second - 1.0 else "french_seam.trim", rows),
            Sentence("french_seam.turn", {}),
            Sentence("french_seam.second", rows),
            Sentence("french_seam.takes", rows),
            self._press(),
            *both_sides(pattern, self.runs()),
        )

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        return (
            Scene(
                layers=(Layer(b, up="wrong"), Layer(a, up="right", on=b, how="together")),
                rows=(Row(a, inset=-self.second),),
                focus=a,
                section=section.french_first(),
            ),
            Scene(
                layers=(Layer(b, up="right"), Layer(a, up="wrong", on=b, how="together")),
                rows=(Row(a, inset=-self.second, ink="old"), Row(a)),
                focus=a,
                section=section.french_second(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Trouble, ...]:
        found = super().check(state, pattern)
        if self.second < NARROWEST:
            found += (
                Trouble(
                    "french_seam_rows",
                    f"the second row is {both(self.second, style='allowance')} from the crease, too narrow to shut in "
                    "trimmed raw edges.",
                    pattern.piece(self.a[0].piece).title,
                    f"Make the second row at least {both(NARROWEST, style='allowance')}.",
                    amount=NARROWEST - self.second,
                    piece=self.a[0].piece,
                    edge=self.a[0].edges[0],
                ),
            )
        return found


def length_gap(pattern: Cut, seam: Seam) -> tuple[tuple[tuple[Run, ...], tuple[Run, ...], float], ...]:
    """(runs of a, runs of b, a longer than b in mm) for each pair that must agree, on one half. Rows with the
    same number of runs are compared run by run."""

    def total(runs: tuple[Run, ...]) -> float:
        return sum(
            span.length - mouths_length(pattern.piece(span.piece), span.edge, span.start, span.end)
            for run in runs
            for span in spans(pattern, run)
        )

    if len(seam.a) == len(seam.b):
        pairs: list[tuple[tuple[Run, ...], tuple[Run, ...]]] = [
            ((x,), (y,)) for x, y in zip(seam.a, seam.b, strict=True)
        ]
    else:
        pairs = [(seam.a, seam.b)]
    found = []
    for x, y in pairs:
        halves = (
            2 if all(len({span.side for run in side for span in spans(pattern, run)}) == 2 for side in (x, y)) else 1
        )
        found.append((x, y, (total(x) - total(y)) / halves))
    return tuple(found)


@verb
def plain_seam(
    make: Reader,
    a: Runs,
    b: Runs,
    *,
    allowance: object,
    press: str = "open",
    finish: str = "zigzag",
    opening: Mark | Place | tuple[object, object] | None = None,
    ease: object = 0,
) -> PlainSeam:
    """One row, right sides together. `opening` is a mark on the seam, or (start, end) along `a`."""
    where = "plain seam"
    first, second = make.pair(a, b, where)
    return PlainSeam(
        a=first,
        b=second,
        allowance=read_width(allowance, f"{where}, allowance"),
        press=make.pressing(press, first + second, where),
        finish=read_word(finish, FINISHES, "finish", where),
        opening=make.opening(opening, first, second, where),
        mark=mark_label(opening),
        ease=read_size(ease, f"{where}, ease"),
    )


@verb
def french_seam(
    make: Reader, a: Runs, b: Runs, *, first: object, second: object, press: str = "one side", ease: object = 0
) -> FrenchSeam:
    """Two rows: `first` from the edge wrong sides together, `second` from the crease right sides together."""
    where = "French seam"
    one, other = make.pair(a, b, where)
    if press == "open":
        raise KitError(
            "a French seam cannot be pressed open: its edges are shut in.",
            where=where,
            do='Write press="one side" or the name of one of its pieces.',
        )
    return FrenchSeam(
        a=one,
        b=other,
        first=read_width(first, f"{where}, first row"),
        second=read_width(second, f"{where}, second row"),
        press=make.pressing(press, one + other, where),
        ease=read_size(ease, f"{where}, ease"),
    )
