"""Seams that join two runs: the plain seam and the French seam, and pressing one later."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.joined import Seam, read_ease, shut_in
from kit.sewing.operations.joined import length_gap as length_gap
from kit.sewing.operations.joined import unjoined as unjoined
from kit.sewing.outcome import Closing, Effect, Uses
from kit.sewing.reading import FINISHES, Opening, Reader, Runs, mark_label, read_width, read_word
from kit.sewing.run import Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene, Section
from kit.sewing.sections import seams as shapes
from kit.sewing.spans import run_length, runs_opposed, sides_of, spans
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Size

NARROWEST = 3.0  # mm; a French seam's second row shuts in no less (common practice, no source)


@dataclass(frozen=True, kw_only=True)
class PlainSeam(Seam):
    """One row `allowance` from the edge, right sides together (ISO 4916 1.01.01, from memory). `opening`
    (mm along `a`, marked on the pattern as `mark`) stays unsewn; its edges are turned in and stitched. `finish` keeps
    the raw edges of the allowances from fraying, `together` both as one: "none" leaves them, "bound" folds a binding
    over them, cut as the strip `binding` or bought. `ends`: the row goes from raw edge to raw edge, or from "stitch
    line" to stitch line of the neighbouring edges."""

    kind: ClassVar[str] = "plain_seam"
    seam_class: ClassVar[str] = "1.01.01"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    finish: str = "zigzag"
    opening: tuple[float, float] | None = None
    mark: str = ""
    together: bool = False
    binding: str = ""
    ends: str = "raw edge"

    def bound_length(self, pattern: Cut) -> float:
        """mm of binding that a bound finish takes, both halves together."""
        if self.finish != "bound":
            return 0.0
        runs = self.a if self.together else self.runs()
        return sum(run_length(pattern, run) * len(sides_of(pattern, run)) for run in runs)

    def _strips(self, pattern: Cut) -> dict[str, int]:
        if not self.binding:
            return {}
        return {self.binding: max(1, math.ceil(self.bound_length(pattern) / pattern.strip(self.binding).length - 1e-6))}

    @property
    def uses(self) -> Uses:
        return Uses(
            pieces=tuple(dict.fromkeys(run.piece for run in self.runs())),
            strips={self.binding: 1} if self.binding else {},
        )

    def effect(self, pattern: Cut) -> Effect:
        found = super().effect(pattern)
        if not self.binding:
            return found
        return replace(found, made=(self.binding,), attached=self._strips(pattern))

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
            found.append(
                Sentence("plain_seam.sew_line_to_line" if self.ends == "stitch line" else "plain_seam.sew", sew)
            )
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
        found += self._finished()
        found.append(self._press())
        if self.opening is not None:
            found.append(Sentence("plain_seam.opening_edges", sew))
        return (*found, *both_sides(pattern, self.runs()))

    def _finished(self) -> tuple[Sentence, ...]:
        if self.finish == "none":
            return ()
        if self.finish == "bound":
            key = f"bound{'_together' if self.together else ''}{'' if self.binding else '_bought'}"
            return (Sentence(f"plain_seam.{key}", {"strip": (self.binding, "strip")} if self.binding else {}),)
        key = "plain_seam.finish_together" if self.together else "plain_seam.finish"
        return (Sentence(key, {"finish": (f"finish.{self.finish}", "word")}),)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        keys = ["line_to_line"] if self.ends == "stitch line" else []
        keys += ["later"] if self.press == "later" else ["open"] if self.press == "open" else ["one_side"]
        return tuple(Sentence(f"plain_seam.why_{key}", {}) for key in keys)

    def _section(self) -> Section:
        if self.press == "open":
            return shapes.bound_open() if self.finish == "bound" else section.pressed_open()
        return section.superimposed() if self.press == "later" else shapes.pressed_one_side()

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
        if self.press == "later":
            arrows = ()
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
            section=self._section(),
        )
        return (together, opened)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        if self.opening is not None:
            end = self.opening[1]
            size = run_length(pattern, self.a[0])
            if end > size + 0.5:
                found += (
                    trouble(
                        "opening_outside_seam",
                        message(
                            "sewing_trouble.opening_outside_seam",
                            end=measured(end),
                            place=placed(pattern, self.a[0]),
                            size=measured(size),
                        ),
                        pattern.piece(self.a[0].piece).title,
                        message("sewing_trouble.opening_outside_seam_do"),
                        amount=end - size,
                        piece=self.a[0].piece,
                        edge=self.a[0].edges[-1],
                    ),
                )
        if self.binding:
            found += self._binding_trouble(state, pattern)
        return found

    def _binding_trouble(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        strip, wanted = pattern.strip(self.binding), self.bound_length(pattern)
        left = (strip.count - state.count(self.binding)) * strip.length
        if wanted <= left + 0.5:
            return ()
        return (
            trouble(
                "binding_short",
                message("sewing_trouble.binding_short_seam", wanted=measured(wanted), left=measured(left)),
                strip.title,
                message("sewing_trouble.binding_short_seam_do"),
                amount=wanted - left,
            ),
        )


@dataclass(frozen=True, kw_only=True)
class BoundSeam(PlainSeam):
    """A plain seam whose allowances are bound with bought binding."""

    kind: ClassVar[str] = "bound_seam"
    notions: ClassVar[tuple[str, ...]] = ("thread", "bias_binding")

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"bias_binding": (self.bound_length(pattern), "length")}


def _part(pattern: Cut, run: Run, start: float, end: float) -> Run:
    """A part of a run as a run."""
    low = run.start or 0.0
    return Run(run.piece, run.edges, run.side, low + start, min(low + end, low + run_length(pattern, run)))


@dataclass(frozen=True, kw_only=True)
class FrenchSeam(Seam):
    """Sewn twice so that the raw edges are shut in: `first` mm from the edge wrong sides together, turned,
    creased, then `second` mm from the crease right sides together. It takes first + second. ISO 4916 class 1
    (superimposed). Order: A Complete Course in Dressmaking, vol. 1 (1921), p. 98. `trim`: mm of the first allowance
    left after trimming (None: a little less than the second row, where it is wider)."""

    kind: ClassVar[str] = "french_seam"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")

    first: float
    second: float
    press: str = "one side"
    trim: float | None = None

    def effect(self, pattern: Cut) -> Effect:
        return shut_in(super().effect(pattern), pattern, self.runs())

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.first + self.second)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        rows: dict[str, tuple[object, str]] = {
            "first": (self.first, "part"),
            "second": (self.second, "part"),
            "total": (self.first + self.second, "allowance"),
        }
        if self.trim is not None:
            rows["trim"] = (self.trim, "allowance")
        return (
            self._pin("wrong"),
            *self._match(pattern),
            *self._ease(),
            Sentence("french_seam.first", rows),
            Sentence(f"french_seam.{self._trimmed()}", rows),
            Sentence("french_seam.turn", {}),
            Sentence("french_seam.second", rows),
            Sentence("french_seam.takes", rows),
            self._press(),
            *both_sides(pattern, self.runs()),
        )

    def _trimmed(self) -> str:
        if self.trim is not None:
            return "trim_to"
        return "trim_narrow" if self.first > self.second - 1.0 else "trim"

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("french_seam.why", {}), Sentence("french_seam.why_wrong_sides", {}))

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

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        if self.trim is not None and self.trim >= self.second - 0.5:
            found += (
                trouble(
                    "french_seam_trimmed",
                    message(
                        "sewing_trouble.french_seam_trimmed",
                        trim=measured(self.trim, "allowance"),
                        second=measured(self.second, "allowance"),
                    ),
                    pattern.piece(self.a[0].piece).title,
                    message("sewing_trouble.french_seam_trimmed_do"),
                    amount=self.trim - self.second,
                    piece=self.a[0].piece,
                    edge=self.a[0].edges[0],
                ),
            )
        if self.second < NARROWEST:
            found += (
                trouble(
                    "french_seam_rows",
                    message("sewing_trouble.french_seam_rows", second=measured(self.second, "allowance")),
                    pattern.piece(self.a[0].piece).title,
                    message("sewing_trouble.french_seam_rows_do", least=measured(NARROWEST, "allowance")),
                    amount=NARROWEST - self.second,
                    piece=self.a[0].piece,
                    edge=self.a[0].edges[0],
                ),
            )
        return found


@verb
def plain_seam(
    reader: Reader,
    a: Runs,
    b: Runs,
    *,
    allowance: Size,
    press: str = "open",
    finish: str = "zigzag",
    opening: Opening | None = None,
    ease: Size = 0,
    together: bool = False,
    binding: StripHandle | None = None,
    ends: str = "raw edge",
) -> PlainSeam:
    """One row, right sides together. `opening` is a mark on the seam, or (start, end) along `a`. `finish`: zigzag,
    overlock, pinked, bound (with the strip `binding`, or bought binding) or none, of each allowance or of both
    `together`. `press`: open, one side, a piece's name, or "later" with `make.press` to follow. `ends`: "raw edge", or
    "stitch line" to begin and end where the neighbouring stitch lines cross.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, finish="overlock")
    """
    where = "plain seam"
    first, second = reader.pair(a, b, where)
    if together and press == "open":
        raise KitError(
            "allowances finished together cannot be pressed open.",
            where=where,
            do='Write press="one side", or leave out together=True.',
        )
    if binding is not None and finish != "bound":
        raise KitError(f"a binding is named, but the finish is '{finish}'.", where=where, do='Write finish="bound".')
    if ends == "stitch line" and opening is not None:
        raise KitError(
            "a row that stops at the stitch lines has no opening as well.", where=where, do="Leave one of them out."
        )
    kind = BoundSeam if finish == "bound" and binding is None else PlainSeam
    return kind(
        a=first,
        b=second,
        allowance=read_width(allowance, f"{where}, allowance"),
        press=reader.pressing(press, first + second, where, "later"),
        finish=read_word(finish, ("bound", *FINISHES), "finish", where),
        opening=reader.opening(opening, first, second, where),
        mark=mark_label(opening),
        together=bool(together),
        binding="" if binding is None else reader.strip(binding, where),
        ends=read_word(ends, ("raw edge", "stitch line"), "ends", where),
        ease=read_ease(reader, first, second, ease, where),
    )


@verb
def french_seam(
    reader: Reader,
    a: Runs,
    b: Runs,
    *,
    first: Size,
    second: Size,
    press: str = "one side",
    ease: Size = 0,
    trim: Size | None = None,
) -> FrenchSeam:
    """Two rows: `first` from the edge wrong sides together, `second` from the crease right sides together. `trim`: how
    wide the first allowances are left in between.

    Example::

        make.french_seam(front.shoulder, back.shoulder, first=6 * mm, second=4 * mm)
    """
    where = "French seam"
    one, other = reader.pair(a, b, where)
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
        press=reader.pressing(press, one + other, where),
        trim=None if trim is None else read_width(trim, f"{where}, trim"),
        ease=read_ease(reader, one, other, ease, where),
    )
