"""What is sewn inside out and turned: two pieces seamed round, turned through a gap, the gap closed by hand."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, titled
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, closings, shown, taken
from kit.sewing.operations.places import NARROWEST_GAP, alike, closed_but, opening_run, part, refuse
from kit.sewing.operations.seams import Seam
from kit.sewing.outcome import Closing, Effect, Fact, Uses
from kit.sewing.reading import Opening, Reader, Runs, read_size, read_width
from kit.sewing.run import PieceHandle, Place, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bands as shapes
from kit.sewing.spans import run_length, runs_opposed, sides_of, spans
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size


def turned_facts(names: tuple[str, ...]) -> tuple[Fact, ...]:
    """("turned_out", piece) of each."""
    return tuple(("turned_out", name) for name in names)


def still_inside_out(state: State, pattern: Cut, runs: tuple[Run, ...]) -> tuple[Diagnostic, ...]:
    """Pieces that must be right side out first."""
    return tuple(
        refuse(
            pattern,
            run,
            "inside_out",
            message("sewing_trouble.inside_out", piece=titled(pattern.piece(run.piece).title)),
            message("sewing_trouble.inside_out_do"),
        )
        for run in {run.piece: run for run in runs}.values()
        if run.piece in state.inside_out
    )


@dataclass(frozen=True, kw_only=True)
class SeamToTurn(Seam):
    """Two rows of runs sewn right sides together, `allowance` mm from the edge, to be turned right side out. `gap`
    (mm along the one run of `a`) stays raw for turning. `extra` are short parts beside them that the row carries on
    along, as below a waistband's overlap. ISO 4916 class 1, from memory."""

    kind: ClassVar[str] = "seam_to_turn"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "scissors", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")

    allowance: float
    gap: tuple[float, float] | None = None
    extra: tuple[Run, ...] = ()
    press: str = "one side"

    def runs(self) -> tuple[Run, ...]:
        return self.a + self.b + self.extra

    def gaps(self, pattern: Cut) -> tuple[Run, ...]:
        """The gap on each of the two runs."""
        if self.gap is None:
            return ()
        (a,), (b,) = self.a, self.b
        start, end = self.gap
        far = run_length(pattern, b)
        if runs_opposed(pattern, a, b):
            return (part(pattern, a, start, end), part(pattern, b, far - end, far - start))
        return (part(pattern, a, start, end), part(pattern, b, start, end))

    def pieces(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(run.piece for run in self.runs()))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.runs(), self.gaps(pattern), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), inside_out=self.pieces(), faced=self.a + self.b)

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return (*super().wants(pattern), *turned_facts(self.pieces()))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.a, "edge"),
            "allowance": (self.allowance, "allowance"),
        }
        found = [self._pin("right"), *self._match(pattern), *self._ease()]
        if self.gap is None:
            found.append(Sentence("seam_to_turn.sew", values))
        else:
            values["size"] = (self.gap[1] - self.gap[0], "length")
            values["from"] = (self.gap[0], "length")
            found.append(Sentence("seam_to_turn.sew_gap", values))
        if self.extra:
            found.append(Sentence("seam_to_turn.extra", values))
        found += [Sentence(f"seam_to_turn.{key}", values) for key in ("trim", "clip")]
        return (*found, *alike(pattern, self.a))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("seam_to_turn.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        return (
            Scene(
                layers=(Layer(b, up="right"), Layer(a, up="wrong", on=b, how="together")),
                rows=(Row(a, gap=self.gap),),
                focus=a,
                pins=(a,),
                section=section.superimposed("main", "facing"),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        if self.gap is not None and self.gap[1] - self.gap[0] < NARROWEST_GAP:
            size = self.gap[1] - self.gap[0]
            found += (
                refuse(
                    pattern,
                    self.a[0],
                    "gap_narrow",
                    message("sewing_trouble.gap_narrow", size=measured(size)),
                    message("sewing_trouble.gap_narrow_do", least=measured(NARROWEST_GAP)),
                    NARROWEST_GAP - size,
                ),
            )
        return found


@dataclass(frozen=True, kw_only=True)
class TurnOut(Operation):
    """Pieces turned right side out `through` runs that are still raw."""

    kind: ClassVar[str] = "turn_out"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("iron",)
    tools: ClassVar[tuple[str, ...]] = ("turner", "iron")
    notions: ClassVar[tuple[str, ...]] = ()

    pieces: tuple[str, ...]
    through: tuple[Run, ...]

    def runs(self) -> tuple[Run, ...]:
        return self.through

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(right_side_out=self.pieces, facts=turned_facts(self.pieces))

    def minutes(self, pattern: Cut) -> float:
        return 5.0

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "pieces": (self.pieces, "piece"),
            "edge": (self.through, "place"),
        }
        return (Sentence("turn_out.turn", values), Sentence("turn_out.press", values))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("turn_out.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.through[0])
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                arrows=((run, "out"),),
                focus=run,
                section=shapes.turned_out(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        run = self.through[0]
        found = [
            refuse(
                pattern,
                run,
                "right_side_out_already",
                message("sewing_trouble.right_side_out_already", piece=titled(pattern.piece(name).title)),
                message("sewing_trouble.right_side_out_already_do"),
            )
            for name in self.pieces
            if name not in state.inside_out
        ]
        for gap in self.through:
            raw = sum(span.length for span in spans(pattern, gap)) - state.covered(pattern, gap)
            if raw / len(sides_of(pattern, gap)) < NARROWEST_GAP:
                found.append(
                    refuse(
                        pattern,
                        gap,
                        "gap_shut",
                        message("sewing_trouble.turned_gap_shut", place=placed(pattern, gap)),
                        message("sewing_trouble.turned_gap_shut_do"),
                    )
                )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class SlipStitch(Operation):
    """A gap closed by hand: both edges turned in by `allowance` mm and their folds sewn together invisibly."""

    kind: ClassVar[str] = "slip_stitch"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("pins",)
    tools: ClassVar[tuple[str, ...]] = ("hand_needle", "pins", "iron")
    crosses: ClassVar[bool] = True

    a: Run
    b: Run
    allowance: float

    def runs(self) -> tuple[Run, ...]:
        return (self.a, self.b)

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return ((self.a, self.b),)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def minutes(self, pattern: Cut) -> float:
        return 4.0 + 40.0 * run_length(pattern, self.a) / 1000

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": ((self.a,), "place"),
            "allowance": (self.allowance, "allowance"),
        }
        return tuple(Sentence(f"slip_stitch.{key}", values) for key in ("turn", "sew"))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("slip_stitch.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.a)
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                rows=(Row(run, style="hand"),),
                focus=run,
                section=shapes.gap_closed(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = still_inside_out(state, pattern, self.runs())
        one, two = run_length(pattern, self.a), run_length(pattern, self.b)
        if abs(one - two) > 2.0:
            found += (
                refuse(
                    pattern,
                    self.a,
                    "gap_unequal",
                    message("sewing_trouble.gap_unequal", one=measured(one), two=measured(two)),
                    message("sewing_trouble.gap_unequal_do"),
                    abs(one - two),
                ),
            )
        return found


@verb
def seam_to_turn(
    reader: Reader,
    a: Runs,
    b: Runs,
    *,
    allowance: Size,
    gap: Opening | None = None,
    ease: Size = 0,
) -> SeamToTurn:
    """Sew two pieces right sides together to be turned out. `gap`: a mark, or (start, end) along `a`, left raw.

    Example::

        make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)
    """
    where = "seam to turn"
    first, second = reader.pair(a, b, where)
    return SeamToTurn(
        a=first,
        b=second,
        allowance=read_width(allowance, f"{where}, allowance"),
        gap=reader.opening(gap, first, second, where),
        ease=read_size(ease, f"{where}, ease"),
    )


@verb
def turn_out(reader: Reader, *pieces: PieceHandle, through: Runs | Place) -> TurnOut:
    """Turn pieces right side out through runs that are still raw.

    Example::

        make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)
        make.turn_out(flap, flap_lining, through=[flap.upper, flap_lining.upper])
    """
    where = "turn out"
    names = tuple(reader.piece(piece, where) for piece in pieces)
    if not names:
        raise KitError("no piece is named.", where=where, do="Name what is turned: make.turn_out(collar, through=...).")
    runs = (opening_run(reader, through, where),) if isinstance(through, Place) else reader.runs(through, where)
    return TurnOut(pieces=names, through=runs)


@verb
def slip_stitch(reader: Reader, a: Run | Place, b: Run | Place, *, allowance: Size) -> SlipStitch:
    """Close a gap by hand: the same part of two edges, as front.side.between(10 * cm, 20 * cm).

    Example::

        make.slip_stitch(flap.upper, flap_lining.upper, allowance=1 * cm)
    """
    where = "slip stitch"
    return SlipStitch(
        a=opening_run(reader, a, where),
        b=opening_run(reader, b, where),
        allowance=read_width(allowance, f"{where}, allowance"),
    )
