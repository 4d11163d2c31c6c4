"""Rows sewn on an edge to make it ready: gathers, ease stitching, basting and taking the basting out."""

from __future__ import annotations

from collections.abc import Callable

from kit.diagnostic import number, per_cent
from kit.sewing import section
from kit.sewing.facts import drawn_facts
from kit.sewing.operations.joined import EASED_EASE, stitch_length
from kit.sewing.sections import folds as shapes
from kit.sewing.vocabulary import *

LEAST_GATHERS = 1.05
MOST_GATHERS = 4.0
"""Longer : drawn up; less shows no gathers, more cannot be pushed together (common practice, no source)."""
LONGEST = 5000.0  # mm an edge may be drawn up to


def _read_fit(given: Any, asked: Asked, name: str) -> tuple[Run, ...]:
    return () if given is None else asked.reader.runs(given, asked.at(name))


def _rows(usual: int) -> Any:
    """How many rows of long stitches."""

    def read(given: Any, asked: Asked, name: str) -> int:
        if isinstance(given, bool) or not isinstance(given, int) or not 1 <= given <= 3:
            raise KitError(f"{given!r} rows of long stitches.", where=asked.where, do="Write 1, 2 or 3.")
        return given

    return read_by(read, "int", default=usual, held=usual, fills={"": "count"})


def _one_or_two_edges(made: DrawnUp, pattern: Cut) -> tuple[Sentence, ...]:
    """The closing sentence where left and right are two edges of the cloth."""
    return () if made.across(pattern) else both_sides(pattern, made.along)


def _long_stitches(made: DrawnUp, run: Run) -> Scene:
    rows = (Row(run, inset=-(3.0 + 3.0 * number), style="gather") for number in range(made.rows))
    return laid(run, *rows, section=shapes.drawn_up(made.rows))


def _ready(fact: str) -> tuple[Rule, ...]:
    """What long stitches need: an edge that is raw and has none of them yet."""
    return (
        Rule(Raw("along"), f"{fact}_late", says="drawn_up_late", each=True, ends="next"),
        Rule(Of(fact, "whole", each="run"), f"{fact}_twice", holds=False, do="do_take_one_operation_out", each=True),
    )


def _drawn(holds: Callable[[float, float], bool], off: Callable[[float], float] = float) -> Asking:
    """A condition of the edges' length as they lie flat and as they are drawn up, where that is said; `off` makes the
    amount of what they differ by."""

    def cases(made: DrawnUp, state: State, pattern: Cut) -> Iterable[Case]:
        full, drawn = made.full(pattern), made.drawn(pattern)
        if drawn is None:
            return
        values = {
            "full": measured(full),
            "drawn": measured(drawn),
            "ratio": number(full / drawn),
            "share": per_cent((full - drawn) / drawn),
        }
        yield Case(holds(full, drawn), made.along[0], amount=off(full - drawn), values=values)

    return Asking(cases)


@operation
class DrawnUp(Operation):
    """Rows of long stitches in the allowance by which the edges become shorter: drawn up `to` mm on each half, or to
    the length of the runs they are to `fit`."""

    also = (Also("apart", 6.0), Also("distance", 3.0))
    pictures = seen("along", _long_stitches)
    gives: ClassVar[tuple[Of, ...]]
    rules: ClassVar[tuple[Rule, ...]]

    along: tuple[Run, ...] = runs()
    to: float | None = width(default=None, most=LONGEST, said="length drawn up to")
    fit: tuple[Run, ...] = read_by(_read_fit, "Runs | None", default=None, held=(), fills={"": "place"}, touched=False)
    rows: int = _rows(2)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        if asked.read["to"] is not None and asked.read["fit"]:
            raise KitError("both a length and an edge to fit are named.", where=asked.where, do="Name one of them.")

    @property
    def whole(self) -> tuple[Run, ...]:
        """The runs that are not a part of an edge."""
        return tuple(run for run in self.along if run.start is None)

    @property
    def draw(self) -> str:
        """The key of how far it is drawn up."""
        if self.fit:
            return "draw_to_fit"
        return "draw_later" if self.to is None else "draw"

    def full(self, pattern: Cut) -> float:
        """mm of the edges as they lie flat, on one half."""
        return stitch_length(pattern, self.along) / self._halves(pattern)

    def drawn(self, pattern: Cut) -> float | None:
        """mm they are drawn up to, on one half; None where it is not said."""
        if not self.fit:
            return self.to
        return stitch_length(pattern, self.fit) / self._halves(pattern)

    def _halves(self, pattern: Cut) -> int:
        return max(len(sides_of(pattern, run)) for run in self.along)

    def across(self, pattern: Cut) -> bool:
        """Whether both halves are one edge of the cloth."""
        return all(over_the_fold(pattern, run) for run in self.along)

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        drawn, full = self.drawn(pattern), self.full(pattern)
        halves = 2.0 if self.across(pattern) else 1.0
        less = 0.0 if drawn is None else full - drawn
        lengths = {"to": (drawn or 0.0) * halves, "full": full * halves, "less": less * halves}
        return super().values(pattern) | {name: (mm, "length") for name, mm in lengths.items()}

    def effect(self, pattern: Cut) -> Effect:
        found, drawn = super().effect(pattern), self.drawn(pattern)
        if drawn is None or len(self.along) > 1 or not self.whole:
            return found
        return replace(found, facts=found.facts + drawn_facts(pattern, self.along[0], drawn))


@operation
class Gather(DrawnUp):
    """Gather an edge `to` a length on each half, or to `fit` the edge it will be sewn to.

    Example::

        make.gather(sleeve.wrist, to=18 * cm)
    """

    kind = "gather"
    says = (
        Say("sew", lambda made: made.rows == 2, "sew_more"),
        "mark",
        "{draw}",
        "spread",
        _one_or_two_edges,
    )
    why = ("why", "why_quarters")
    gives = (Of("gathered", "along"),)
    rules = (
        *_ready("gathered"),
        Rule(_drawn(lambda full, drawn: full / drawn >= LEAST_GATHERS), "gathers_too_few"),
        Rule(_drawn(lambda full, drawn: full / drawn <= MOST_GATHERS), "gathers_too_many"),
    )

    @classmethod
    def agree(cls, asked: Asked) -> None:
        super().agree(asked)
        if asked.read["to"] is None and not asked.read["fit"]:
            raise KitError(
                "it is not said how far the edge is drawn up.",
                where=asked.where,
                do="Write to=40 * cm, or fit=band.lower, the edge it will be sewn to.",
            )


@operation
class EaseStitch(DrawnUp):
    """A row of long stitches by which an edge is eased, `to` a length or to `fit` the edge it will be sewn to.

    Example::

        make.ease_stitch(sleeve.back_cap + sleeve.front_cap, to=36 * cm)
    """

    kind = "ease_stitch"
    called = "ease stitching"
    says = (
        Say("sew", lambda made: made.rows == 1, "sew_two"),
        "{draw}",
        "smooth",
        _one_or_two_edges,
    )
    gives = (Of("eased", "along"),)
    rules = (
        *_ready("eased"),
        Rule(_drawn(lambda full, drawn: full > drawn, abs), "nothing_to_ease"),
        Rule(_drawn(lambda full, drawn: (full - drawn) / drawn <= EASED_EASE, abs), "too_much_to_ease"),
    )

    rows: int = _rows(1)


def _held(baste: Baste, state: State, pattern: Cut, run: Run) -> bool:
    """The run is closed and done with: no row of it is still to be sewn, which basting might hold."""
    return state.is_closed(pattern, run) and not any(map(state.touches, facts_of(pattern, (run,), "half_sewn")))


def _served(out: RemoveBasting, state: State, pattern: Cut, run: Run) -> bool:
    """The basting has done what it was for: the seam is sewn, or the garment was tried on."""
    return state.is_closed(pattern, run) or all(map(state.holds, facts_of(pattern, (run,), "tried_on")))


@operation
class Baste(Operation):
    """Hold layers with long stitches `distance` outside the stitch line; `distance=0 * mm` on it, for a fitting.

    Example::

        make.baste(front.side, back.side, distance=0 * mm)
    """

    kind = "baste"
    says = (
        Say("sew_together", lambda baste: baste.on_line and baste.pair),
        Say("sew_on_line", lambda baste: baste.on_line and not baste.pair),
        Say("sew", lambda baste: not baste.on_line),
        Say("later", lambda baste: baste.on_line),
        both("along"),
    )
    gives = (Of("basted", "along"), Of("basted_on_line", "lined"))
    undoes = (Of("basting_out", "along"), Of("tried_on", "along"))
    wanted = (Of("basting_out", "lined"),)
    rules = (Rule(Each("along", _held), "basted_late", holds=False, each=True),)

    along: tuple[Run, ...] = runs()
    distance: float = size(default=3 * mm, most=DEEPEST_HEM)

    @property
    def on_line(self) -> bool:
        """On the stitch line the stitches show later."""
        return self.distance < 0.5

    @property
    def lined(self) -> tuple[Run, ...]:
        """The runs basted on their stitch line: the basting must come out again."""
        return self.along if self.on_line else ()

    @property
    def pair(self) -> bool:
        """Whether it holds one piece to another along an edge of each."""
        return len(self.along) == 2 and self.along[0].piece != self.along[1].piece

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        row = Row(run, inset=-self.distance, style="baste")
        if self.on_line and self.pair:
            lower = shown(pattern, self.along[1], run.side)
            return (together(lower, run, row, focus=run, pins=(run,), section=section.superimposed()),)
        return (laid(run, row, section=shapes.drawn_up(1)),)


@operation
class RemoveBasting(Operation):
    """Take basting out again: once the seam is sewn, or tried on, before it.

    Example::

        make.baste(front.side, back.side, distance=0 * mm)
        make.try_on("Is the waist too wide?")
        make.remove_basting(front.side, back.side)
    """

    kind = "remove_basting"
    why = ()
    tools = ("scissors",)
    says = ("pull", both("along"))
    gives = (Of("basting_out", "along"),)
    undoes = (Of("basted", "along"), Of("basted_on_line", "along"), Of("tried_on", "along"))
    pictures = seen("along", lambda out, run: laid(run, Row(run, ink="old")))
    rules = (
        Rule(Of("basted", "along", each="run"), "not_basted", each=True, ends="run"),
        Rule(Each("along", _served), "basting_out_early", each=True),
    )

    along: tuple[Run, ...] = runs()
