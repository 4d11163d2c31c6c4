"""Zips set into a seam: lapped and centred, and what every zip has."""

from __future__ import annotations

from kit.geometry import parallel
from kit.sewing.fields import part
from kit.sewing.sections import closures as section
from kit.sewing.sentence import Telling
from kit.sewing.spans import cloth_left, reach
from kit.sewing.vocabulary import *

TOP = 15.0
"""mm by which a zip may be shorter than its opening: its slider stops that far below the top edge (common practice,
no source)."""
LONGEST = 1200.0  # mm
LEAST_ALLOWANCE = 10.0
"""mm of allowance under which a zip's tape finds nothing to be sewn to (common practice, no source)."""
EDGE = 2.0  # mm from the fold to the row beside the teeth
TEETH = 4.0  # mm from the middle of a zip to a fold laid close beside its teeth (common practice, no source)
_END = 0.5


def equal_sides(zip: Zip, state: State, pattern: Cut) -> Iterator[Case]:
    """Whether the two sides of an opening are as long as one another."""
    size, other = run_length(pattern, zip.over), run_length(pattern, zip.under)
    yield off_by(zip.over, abs(size - other), 1.0, size=size, other=other)


def _misfit(zip: Zip, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """Whether the zip is too long or too short for its opening."""
    size = run_length(pattern, zip.over)
    if not -_END <= size - zip.length <= TOP + _END:
        values = {"length": measured(zip.length), "opening": measured(size), "most": measured(TOP)}
        kind = "long" if zip.length > size else "short"
        yield kind, Case(False, zip.over, amount=abs(size - zip.length), values=values)


def _beyond(zip: Zip, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """Seams that are missing below the zip."""
    for run in zip.sides:
        whole = [span for name in run.edges for span in spans(pattern, Run(run.piece, (name,), run.side))]
        for rest in minus(whole, spans(pattern, run)):
            beyond = Run(run.piece, (rest.edge,), rest.side, rest.start, rest.end)
            if rest.length > _END and not state.is_closed(pattern, beyond):
                yield "below", Case(False, beyond)
    yield from closed_above(zip, state, pattern)


def closed_above(zip: Zip, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """Edges at the upper end of the zip that are closed already."""
    for run in zip.sides:
        for name, at in _tops(pattern, run):
            for side in sides_of(pattern, run):
                done = state.on((run.piece, side, name))
                if any(each.span.start - _END <= at <= each.span.end + _END for each in done):
                    yield "above", Case(False, Run(run.piece, (name,), side))


def _tops(pattern: Cut, run: Run) -> list[tuple[str, float]]:
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


def flush(key: str) -> Telling:
    """The sentence of how high the slider lies: below the stitch line at the top, or at it."""
    return lambda zip, pattern: key if zip.top(pattern) >= 1.0 else f"{key}_flush"


@operation
class Zip(Operation):
    """Base: a zip `length` mm long sewn into the opening between `over` and `under`, parts of two edges."""

    cautions: ClassVar[Words] = ("needle", "pins", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "zip_foot", "pins", "iron")
    notions: ClassVar[Words] = ("thread", "zip")
    crosses = True
    caught: ClassVar[bool] = True  # the row at `lap` has to catch the allowance behind it
    gives = (Of("zip_in", "over"), Of("zip_in", "under"))
    work = Work(35.0)
    joined: ClassVar[tuple[tuple[str, str], ...]] = (("over", "under"),)
    amounts: ClassVar[Amounts] = (("zip", "length", "length"),)
    also: ClassVar[tuple[Also, ...]] = (Also("top", lambda zip, pattern: zip.top(pattern)),)
    rules: ClassVar[Rules] = (
        Rule(Asking(equal_sides), "zip_sides"),
        Rule(First(_misfit, "long"), "zip_long", says="zip_length", do="zip_long_do"),
        Rule(First(_misfit, "short"), "zip_short", says="zip_length", do="zip_short_do"),
        Rule(First(_beyond, "below"), "seam_below_zip"),
        Rule(First(_beyond, "above"), "zip_late"),
    )

    over: Run = part(closes="sewn", takes="allowance")
    under: Run = part(closes="sewn", takes="allowance")
    length: float = width(most=LONGEST, fills="length")
    allowance: float = width()
    lap: float = width(default=12 * mm)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        over, under, allowance, lap = (asked.read[name] for name in ("over", "under", "allowance", "lap"))
        if over == under:
            raise KitError(
                f"both sides of the zip are the {over.said}.",
                where=asked.where,
                do="Name the two edges it lies between, as back.left.centre and back.right.centre.",
            )
        asked.reader.pair(over, under, asked.where)
        if allowance < LEAST_ALLOWANCE:
            raise KitError(
                message("refusal.zip_narrow", width=measured(allowance, "allowance")),
                where=in_call(asked.where),
                do=message("refusal.zip_narrow_do", least=measured(LEAST_ALLOWANCE, "allowance")),
            )
        if cls.caught and lap >= allowance:
            raise KitError(
                message("refusal.zip_row", at=measured(lap, "allowance"), width=measured(allowance, "allowance")),
                where=in_call(asked.where),
                do=message("refusal.zip_row_do"),
            )

    @property
    def sides(self) -> tuple[Run, Run]:
        """The two sides of the opening."""
        return self.over, self.under

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        return tuple(span for run in self.sides for span in spans(pattern, run))

    def top(self, pattern: Cut) -> float:
        """mm from the stitch line at the top down to the slider."""
        return max(run_length(pattern, self.over) - self.length, 0.0)

    @property
    def beside(self) -> float:
        """mm from the stitch line in to the row that shows in the picture."""
        return self.lap

    def line(self, pattern: Cut, run: Run) -> Path:
        """Where the zip lies along a side of its opening, from its upper end: the end that an edge beside it covers."""
        path = path_of(pattern, run)
        tops = _tops(pattern, run)
        if not tops:
            return path
        name, at = tops[0]
        end = pattern.piece(run.piece).edge(name).path.at(at)
        return path if path.start.distance(end) < path.end.distance(end) else path.reversed()

    def _set_in(self, pattern: Cut, shape: Section) -> Scene:
        over, under = shown(pattern, self.over), shown(pattern, self.under)
        zip = Thing("zip", over, self.line(pattern, over), 25.0)
        return opened(under, over, Row(over, inset=self.beside), things=(zip,), section=shape)


@operation
class LappedZip(Zip):
    """Set in a zip under a lap: parts of two edges or opening marks, the side on top first.

    Example::

        left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
        make.lapped_zip(left, right, allowance=2 * cm, length=19 * cm)
    """

    kind = "lapped_zip"
    says = ("press", flush("under"), "stitch_under", "lay", "stitch_over")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """From inside both folds pressed; then the zip on the side that lies under, its teeth beside the fold and the
        row on the tape; from the right side the lap over it, with the row across below the zip and up."""
        over, under = shown(pattern, self.over), shown(pattern, self.under)
        pressed = opened(under, over, up="wrong", arrows=((over, "in"), (under, "in")), focus=under)
        turned = tuple(replace(each, back=((each.run, self.allowance),)) for each in pressed.layers)
        below = Thing("zip", under, self._beyond_fold(pattern, under), 25.0)
        sewn = laid(under, Row(under, inset=EDGE), up="wrong", things=(below,))
        folded = Layer(under, up="wrong", back=((under, self.allowance),))
        laps = opened(under, over, Row(over, line=self._up(pattern, over)), up="right", section=section.zip_lapped())
        sides = tuple(replace(each, back=((each.run, self.allowance),)) for each in laps.layers)
        return replace(pressed, layers=turned), replace(sewn, layers=(folded,)), replace(laps, layers=sides, focus=over)

    def _beyond_fold(self, pattern: Cut, under: Run) -> Path:
        """The middle of the zip, whose teeth lie close beside the fold of the side that lies under."""
        line = self.line(pattern, under)
        return parallel(line, -TEETH if cloth_left(pattern.piece(under.piece), line) else TEETH)

    def _up(self, pattern: Cut, over: Run) -> Path:
        """The row that shows, as it is sewn: from the fold across at the lower end, and up beside the fold."""
        line = self.line(pattern, over)
        row = parallel(line, self.lap if cloth_left(pattern.piece(over.piece), line) else -self.lap)
        return (row.joined(Path.line(row.end, line.end)) if row.end.distance(line.end) > 0.5 else row).reversed()


@operation
class CentredZip(Zip):
    """Set in a zip centred under a seam: parts of two edges or opening marks.

    Example::

        left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
        make.centred_zip(left, right, allowance=2 * cm, length=19 * cm)
    """

    kind = "centred_zip"
    cautions = Zip.cautions
    tools = ("machine", "zip_foot", "pins", "iron", "seam_ripper")
    says = ("baste", "press", flush("lay"), "stitch", "open")

    lap: float = width(default=7 * mm)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        over, under = shown(pattern, self.over), shown(pattern, self.under)
        return (together(under, over, Row(over, style="baste")), self._set_in(pattern, section.zip_centred()))
