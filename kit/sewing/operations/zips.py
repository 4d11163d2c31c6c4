"""Zips set into a seam: lapped and centred."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, Literal

from kit.diagnostic import Diagnostic, measured, message, named_edge
from kit.errors import KitError
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, closings, shown, taken
from kit.sewing.operations.places import facts_of, minus, opening_run, refuse
from kit.sewing.outcome import Closing, Effect
from kit.sewing.reading import Reader, in_call, read_width
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Row, Scene, Section, Thing
from kit.sewing.sections import closures as section
from kit.sewing.spans import Span, neighbours, path_of, reach, run_length, sides_of, spans
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

TOP = 15.0
"""mm by which a zip may be shorter than its opening: its slider stops that far below the top edge (common practice,
no source)."""
LONGEST = 1200.0  # mm
LEAST_ALLOWANCE = 10.0
"""mm of allowance under which a zip's tape finds nothing to be sewn to (common practice, no source)."""
_END = 0.5


@dataclass(frozen=True, kw_only=True)
class Zip(Operation):
    """Base: a zip `length` mm long sewn into the opening between `over` and `under`, parts of two edges."""

    cautions: ClassVar[tuple[str, ...]] = ("needle", "pins", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "zip_foot", "pins", "iron")
    notions: ClassVar[tuple[str, ...]] = ("thread", "zip")
    crosses: ClassVar[bool] = True

    over: Run
    under: Run
    allowance: float
    length: float
    lap: float

    def runs(self) -> tuple[Run, ...]:
        return (self.over, self.under)

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return ((self.over, self.under),)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        return tuple(span for run in self.runs() for span in spans(pattern, run))

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=facts_of(pattern, self.runs(), "zip_in"))

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"zip": (self.length, "length")}

    def minutes(self, pattern: Cut) -> float:
        return 35.0

    def _values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        return {
            "over": ((self.over,), "place"),
            "under": ((self.under,), "place"),
            "length": (self.length, "length"),
            "allowance": (self.allowance, "allowance"),
            "lap": (self.lap, "allowance"),
            "top": (self._top(pattern), "allowance"),
        }

    def _top(self, pattern: Cut) -> float:
        """mm from the stitch line at the top down to the slider."""
        return max(run_length(pattern, self.over) - self.length, 0.0)

    def _slider(self, pattern: Cut, key: str) -> str:
        return key if self._top(pattern) >= 1.0 else f"{key}_flush"

    def _scene(self, pattern: Cut, shape: Section) -> Scene:
        over, under = shown(pattern, self.over), shown(pattern, self.under)
        return Scene(
            layers=(Layer(under, up="wrong"), Layer(over, up="wrong", on=under, how="open")),
            rows=(Row(over, inset=self.lap),),
            focus=over,
            things=(Thing("zip", over, path_of(pattern, over), 25.0),),
            section=shape,
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found: list[Diagnostic] = []
        size, other = run_length(pattern, self.over), run_length(pattern, self.under)
        if abs(size - other) > 1.0:
            found.append(
                refuse(
                    pattern,
                    self.over,
                    "zip_sides",
                    message("sewing_trouble.zip_sides", size=measured(size), other=measured(other)),
                    message("sewing_trouble.zip_sides_do"),
                    abs(size - other),
                )
            )
        if not -_END <= size - self.length <= TOP + _END:
            long = self.length > size
            found.append(
                refuse(
                    pattern,
                    self.over,
                    "zip_long" if long else "zip_short",
                    message("sewing_trouble.zip_length", length=measured(self.length), opening=measured(size)),
                    message("sewing_trouble.zip_long_do")
                    if long
                    else message("sewing_trouble.zip_short_do", most=measured(TOP)),
                    abs(size - self.length),
                )
            )
        found += self._edges(state, pattern)
        return tuple(found)

    def _edges(self, state: State, pattern: Cut) -> list[Diagnostic]:
        for run in self.runs():
            piece = pattern.piece(run.piece)
            whole = [span for name in run.edges for span in spans(pattern, Run(run.piece, (name,), run.side))]
            for rest in minus(whole, spans(pattern, run)):
                beyond = Run(run.piece, (rest.edge,), rest.side, rest.start, rest.end)
                if rest.length > _END and not state.is_closed(pattern, beyond):
                    return [
                        refuse(
                            pattern,
                            beyond,
                            "seam_below_zip",
                            message("sewing_trouble.seam_below_zip", place=placed(pattern, beyond)),
                            message("sewing_trouble.seam_below_zip_do"),
                        )
                    ]
            for name, at in self._tops(pattern, run):
                for side in sides_of(pattern, run):
                    if any(
                        done.span.start - _END <= at <= done.span.end + _END
                        for done in state.on((run.piece, side, name))
                    ):
                        return [
                            refuse(
                                pattern,
                                Run(run.piece, (name,), side),
                                "zip_late",
                                message("sewing_trouble.zip_late", edge=named_edge(piece.edge(name))),
                                message("sewing_trouble.zip_late_do"),
                            )
                        ]
        return []

    def _tops(self, pattern: Cut, run: Run) -> list[tuple[str, float]]:
        """(edge, mm along it) where the opening runs out at the end of its edge, on the edge beside it. Open at both
        ends it is a zip that parts, and its ends are covered by whatever comes."""
        if len(run.edges) != 1:
            return []
        piece = pattern.piece(run.piece)
        path = piece.edge(run.edges[0]).path
        low, high = reach(pattern, run)
        ends = [path.start] * (low < _END) + [path.end] * (high > path.length - _END)
        if len(ends) != 1:
            return []
        found = []
        for name in neighbours(piece, run.edges):
            beside = piece.edge(name).path
            if name != piece.fold and beside.start.distance(ends[0]) < _END:
                found.append((name, 0.0))
            elif name != piece.fold and beside.end.distance(ends[0]) < _END:
                found.append((name, beside.length))
        return found


@dataclass(frozen=True, kw_only=True)
class LappedZip(Zip):
    """`over` covers the teeth and is stitched `lap` mm from its fold; `under` is folded a little outside its stitch
    line and stitched beside the teeth."""

    kind: ClassVar[str] = "lapped_zip"

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = self._values(pattern)
        keys = ("press", self._slider(pattern, "under"), "stitch_under", "lay", "stitch_over")
        return tuple(Sentence(f"lapped_zip.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("lapped_zip.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (self._scene(pattern, section.zip_lapped()),)


@dataclass(frozen=True, kw_only=True)
class CentredZip(Zip):
    """The opening basted shut and pressed open; the zip centred under it, stitched `lap` mm from the seam on both
    sides and across its end; the basting taken out."""

    kind: ClassVar[str] = "centred_zip"
    tools: ClassVar[tuple[str, ...]] = ("machine", "zip_foot", "pins", "iron", "seam_ripper")

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = self._values(pattern)
        keys = ("baste", "press", self._slider(pattern, "lay"), "stitch", "open")
        return tuple(Sentence(f"centred_zip.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("centred_zip.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        over, under = shown(pattern, self.over), shown(pattern, self.under)
        basted = Scene(
            layers=(Layer(under, up="right"), Layer(over, up="wrong", on=under, how="together")),
            rows=(Row(over, style="baste"),),
            focus=over,
        )
        return (basted, self._scene(pattern, section.zip_centred()))


def _read(
    reader: Reader, kind: Literal["lapped zip", "centred zip"], over: Run | Place, under: Run | Place, length: Size
) -> tuple[Run, Run, float]:
    one, two = opening_run(reader, over, kind), opening_run(reader, under, kind)
    if one == two:
        raise KitError(
            f"both sides of the zip are the {one.said}.",
            where=kind,
            do="Name the two edges it lies between, as back.left.centre and back.right.centre.",
        )
    (a,), (b,) = reader.pair(one, two, kind)
    return a, b, read_width(length, f"{kind}, length", LONGEST)


def _allowance(given: Size, where: str) -> float:
    width = read_width(given, f"{where}, allowance")
    if width < LEAST_ALLOWANCE:
        raise KitError(
            message("refusal.zip_narrow", width=measured(width, "allowance")),
            where=in_call(where),
            do=message("refusal.zip_narrow_do", least=measured(LEAST_ALLOWANCE, "allowance")),
        )
    return width


@verb
def lapped_zip(
    reader: Reader,
    over: Run | Place,
    under: Run | Place,
    *,
    allowance: Size,
    length: Size,
    lap: Size = Length(12.0),
) -> LappedZip:
    """Set in a zip under a lap: parts of two edges or opening marks, the side on top first.

    Example::

        left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
        make.lapped_zip(left, right, allowance=2 * cm, length=19 * cm)
    """
    a, b, size = _read(reader, "lapped zip", over, under, length)
    width = _allowance(allowance, "lapped zip")
    return LappedZip(over=a, under=b, allowance=width, length=size, lap=_lap(lap, width, "lapped zip"))


@verb
def centred_zip(
    reader: Reader,
    over: Run | Place,
    under: Run | Place,
    *,
    allowance: Size,
    length: Size,
    lap: Size = Length(7.0),
) -> CentredZip:
    """Set in a zip centred under a seam: parts of two edges or opening marks.

    Example::

        left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
        make.centred_zip(left, right, allowance=2 * cm, length=19 * cm)
    """
    a, b, size = _read(reader, "centred zip", over, under, length)
    width = _allowance(allowance, "centred zip")
    return CentredZip(over=a, under=b, allowance=width, length=size, lap=_lap(lap, width, "centred zip"))


def _lap(given: Size, allowance: float, where: str) -> float:
    size = read_width(given, f"{where}, lap")
    if size >= allowance:
        raise KitError(
            message("refusal.zip_row", at=measured(size, "allowance"), width=measured(allowance, "allowance")),
            where=in_call(where),
            do=message("refusal.zip_row_do"),
        )
    return size
