"""Ties and other strips: made, attached."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, shown
from kit.sewing.operations.places import around
from kit.sewing.outcome import Effect, Uses
from kit.sewing.reading import DEEPEST_HEM, Reader, read_size, read_width, read_word
from kit.sewing.run import Place, Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import run_length, sides_of
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size

_CUT_FOR = {
    "in_four": "to be folded in four",
    "in_two": "to be folded in two",
    "band": "as a band",
    "single_binding": "as a binding",
    "double_binding": "as a double binding",
}


@dataclass(frozen=True, kw_only=True)
class MakeStrip(Operation):
    """Base of the two ways of making a strip; all of its `count` are made at once."""

    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "iron")

    name: str
    ends: float = 0.0

    def runs(self) -> tuple[Run, ...]:
        return ()

    def finished_width(self, width: float) -> float:
        """mm across when made, from mm as cut."""
        raise NotImplementedError

    @property
    def uses(self) -> Uses:
        return Uses(strips={self.name: 0})

    def effect(self, pattern: Cut) -> Effect:
        return Effect(made=(self.name,))

    def _alike(self, pattern: Cut) -> tuple[Sentence, ...]:
        count = pattern.strip(self.name).count
        return (Sentence(f"{self.kind}.count", {"count": (count, "count")}),) if count > 1 else ()

    def _values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        strip = pattern.strip(self.name)
        return {
            "strip": (self.name, "strip"),
            "count": (strip.count, "count"),
            "width": (self.finished_width(strip.width), "allowance"),
            "cut": (strip.width, "length"),
            "ends": (self.ends, "allowance"),
        }

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        strip = pattern.strip(self.name)
        found: list[Diagnostic] = []
        if self.name in state.made:
            found.append(
                trouble(
                    "strip_made_twice",
                    message("sewing_trouble.strip_made_twice"),
                    strip.title,
                    message("sewing_trouble.strip_made_twice_do"),
                )
            )
        width = self.finished_width(strip.width)
        if strip.finished_width and abs(width - strip.finished_width) > 0.5:
            found.append(
                trouble(
                    "strip_width",
                    message(
                        "sewing_trouble.strip_width",
                        width=measured(strip.width),
                        comes=measured(width),
                        finished_width=measured(strip.finished_width),
                    ),
                    strip.title,
                    message("sewing_trouble.strip_width_do"),
                    amount=abs(width - strip.finished_width),
                )
            )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class FoldStrip(MakeStrip):
    """Long edges folded to the middle, folded again (a quarter of the cut width), edgestitched. ISO 4916
    class 8 (single-ply items such as loops and straps), from memory."""

    kind: ClassVar[str] = "fold_strip"
    seam_class: ClassVar[str] = "8"

    edgestitch: float

    def finished_width(self, width: float) -> float:
        return width / 4

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = {**self._values(pattern), "edgestitch": (self.edgestitch, "allowance")}
        keys = ["half", *(["ends"] if self.ends > 0 else []), "quarter", "sew"]
        return (*(Sentence(f"fold_strip.{key}", values) for key in keys), *self._alike(pattern))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (Scene(layers=(), section=section.folded_in_four(), strip=self.name),)


@dataclass(frozen=True, kw_only=True)
class TurnStrip(MakeStrip):
    """Folded lengthwise right sides together, seamed `allowance` mm from the edges, turned right side out. `slant` mm:
    one end is seamed too, on a slant that is so much longer at the fold than at the seam."""

    kind: ClassVar[str] = "turn_strip"
    seam_class: ClassVar[str] = "1"
    tools: ClassVar[tuple[str, ...]] = ("machine", "iron", "scissors", "turner")

    allowance: float
    slant: float = 0.0

    def finished_width(self, width: float) -> float:
        return width / 2 - self.allowance

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        strip = pattern.strip(self.name)
        found = super().check(state, pattern)
        if self.slant > strip.length / 2:
            found += (
                trouble(
                    "slant_long",
                    message("sewing_trouble.slant_long", slant=measured(self.slant), length=measured(strip.length)),
                    strip.title,
                    message("sewing_trouble.slant_long_do"),
                    amount=self.slant - strip.length / 2,
                ),
            )
        return found

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = {
            **self._values(pattern),
            "allowance": (self.allowance, "allowance"),
            "slant": (self.slant, "length"),
        }
        keys = ["fold", "sew", *(["slant"] if self.slant > 0 else []), "turn", *(["ends"] if self.ends > 0 else [])]
        return (*(Sentence(f"turn_strip.{key}", values) for key in keys), *self._alike(pattern))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (Scene(layers=(), section=section.turned_tube(), strip=self.name),)


def attach_trouble(state: State, pattern: Cut, name: str, more: int) -> tuple[Diagnostic, ...]:
    strip = pattern.strip(name)
    found: list[Diagnostic] = []
    if name not in state.made:
        found.append(
            trouble(
                "strip_not_made",
                message("sewing_trouble.strip_not_made"),
                strip.title,
                message("sewing_trouble.do_make_strip_first"),
            )
        )
    if state.count(name) + more > strip.count:
        found.append(
            trouble(
                "too_few_strips",
                message("sewing_trouble.too_few_strips", count=state.count(name) + more, cut=strip.count),
                strip.title,
                message("sewing_trouble.too_few_strips_do"),
            )
        )
    return tuple(found)


@dataclass(frozen=True, kw_only=True)
class AttachStrip(Operation):
    """A made strip fixed at `at` mm along a run (on each half the run means). `method`: "stitched_on" lays its
    end `lap` mm over the finished edge and stitches a box; "caught" bastes it to the raw edge so that the next
    seam there catches it. `near` is "start" or "end" when `at` is that end of the run, "mark" when it is the place
    called `mark`; `halves` how many strips that makes."""

    kind: ClassVar[str] = "attach_strip"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "cords")

    name: str
    to: Run
    at: float
    method: str = "stitched_on"
    lap: float = 10.0
    near: str = "along"
    mark: str = ""
    halves: int = 1

    def runs(self) -> tuple[Run, ...]:
        return (self.to,)

    @property
    def uses(self) -> Uses:
        return Uses(pieces=(self.to.piece,), strips={self.name: self.halves})

    def effect(self, pattern: Cut) -> Effect:
        return Effect(attached={self.name: self.halves})

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "strip": (self.name, "strip"),
            "run": ((self.to,), "place"),
            "at": (self.at, "length"),
            "lap": (self.lap, "allowance"),
            "mark": (self.mark, "text"),
        }
        keys = [f"{self.method}.place_{self.near}", f"{self.method}.sew"]
        return tuple(Sentence(f"attach_strip.{key}", values) for key in keys)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.to)
        size = run_length(pattern, run)
        low = min(max(self.at - 5.0, 0.0), max(size - 10.0, 0.0))
        short = Run(
            run.piece, run.edges, run.side, (run.start or 0.0) + low, (run.start or 0.0) + min(low + 10.0, size)
        )
        inset = self.lap / 2 if self.method == "stitched_on" else -2.0
        return (
            Scene(
                layers=(Layer(run, up="wrong" if self.method == "stitched_on" else "right"),),
                rows=(Row(short, inset=inset),),
                focus=short,
                strip=self.name,
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        number = len(sides_of(pattern, self.to))
        found = list(attach_trouble(state, pattern, self.name, number))
        found += beyond(pattern, self.to, self.at, pattern.strip(self.name).title)
        if not found or found[-1].code != "place_outside_run":
            strip = pattern.strip(self.name)
            place = around(pattern, self.to, self.at, strip.finished_width or strip.width / 4)
            raw = state.is_raw(pattern, place)
            if self.method == "caught" and not raw:
                found.append(
                    trouble(
                        "edge_closed_already",
                        message("sewing_trouble.edge_closed_already", place=placed(pattern, self.to)),
                        pattern.strip(self.name).title,
                        message("sewing_trouble.edge_closed_already_do"),
                        piece=self.to.piece,
                        edge=self.to.edges[0],
                    )
                )
            if self.method == "stitched_on" and raw:
                found.append(
                    trouble(
                        "edge_still_raw",
                        message("sewing_trouble.strip_edge_raw", place=placed(pattern, self.to)),
                        pattern.strip(self.name).title,
                        message("sewing_trouble.strip_edge_raw_do"),
                        piece=self.to.piece,
                        edge=self.to.edges[0],
                    )
                )
        return tuple(found)


def beyond(pattern: Cut, run: Run, at: float, title: str) -> tuple[Diagnostic, ...]:
    size = run_length(pattern, run)
    if at <= size + 0.5:
        return ()
    return (
        trouble(
            "place_outside_run",
            message(
                "sewing_trouble.place_outside_run", at=measured(at), place=placed(pattern, run), size=measured(size)
            ),
            title,
            message("sewing_trouble.place_outside_run_do"),
            amount=at - size,
            piece=run.piece,
            edge=run.edges[-1],
        ),
    )


@verb
def fold_strip(
    reader: Reader, strip: StripHandle, *, edgestitch: Size = Length(2.0), ends: Size = Length(10.0)
) -> FoldStrip:
    """Make a strip folded in four and edgestitched.

    Example::

        make.fold_strip(loop, edgestitch=2 * mm, ends=0)
    """
    where = "fold strip"
    name = reader.strip(strip, where)
    found = reader.cut.strip(name)
    if found.fold != "in_four":
        raise KitError(
            f"it is cut {_CUT_FOR[found.fold]}, not in four.",
            where=found.title,
            do="Write make.turn_strip(...) for it, or cut it to be folded in four.",
        )
    return FoldStrip(
        name=name,
        edgestitch=read_width(edgestitch, f"{where}, edgestitch"),
        ends=read_size(ends, f"{where}, ends"),
    )


@verb
def turn_strip(reader: Reader, strip: StripHandle, *, allowance: Size, ends: Size = 0, slant: Size = 0) -> TurnStrip:
    """Make a strip seamed right sides together and turned; with `slant`, one end is seamed on a slant.

    Example::

        make.turn_strip(tie, allowance=6 * mm, ends=6 * mm)
    """
    where = "turn strip"
    name = reader.strip(strip, where)
    width = read_width(allowance, f"{where}, allowance")
    found = reader.cut.strip(name)
    if found.fold not in ("in_two", "band"):
        raise KitError(
            f"it is cut {_CUT_FOR[found.fold]}, not in two.",
            where=found.title,
            do="Write make.fold_strip(...) for it, or cut it to be folded in two.",
        )
    if width >= found.width / 2:
        raise KitError(
            message("refusal.strip_eaten", width=measured(width), cut=measured(found.width)),
            where=found.title,
            do=message("refusal.strip_eaten_do"),
        )
    return TurnStrip(
        name=name,
        allowance=width,
        ends=read_size(ends, f"{where}, ends"),
        slant=read_size(slant, f"{where}, slant", DEEPEST_HEM),
    )


@verb
def attach_strip(
    reader: Reader,
    strip: StripHandle,
    to: Run | Place,
    *,
    at: Size = "end",
    method: str = "stitched_on",
    lap: Size = Length(10.0),
) -> AttachStrip:
    """Fix a made strip to a run at its "start", its "end" or a length along it, or at a mark.

    Example::

        make.turn_strip(tie, allowance=6 * mm)
        make.attach_strip(tie, front.left.side, at=12 * cm, method="caught")
    """
    where = "attach strip"
    name = reader.strip(strip, where)
    run, place, close = reader.spot(to, at, where)
    return AttachStrip(
        name=name,
        to=run,
        at=place,
        method=read_word(method, ("stitched_on", "caught"), "method", where),
        lap=read_width(lap, f"{where}, lap"),
        near=close,
        mark=to.mark.label if isinstance(to, Place) else "",
        halves=len(sides_of(reader.cut, run)),
    )
