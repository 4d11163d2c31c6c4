"""An opening left in a seam: its rows stop there, and its allowances are clipped at the ends, turned under and stitched
down before the last row. A gap for turning is another thing: it stays raw until it is slip-stitched."""

from __future__ import annotations

from kit.sewing.fields import opening, reads_of
from kit.sewing.legs import seen_end
from kit.sewing.named import line_of
from kit.sewing.operations.joined import Seam
from kit.sewing.places import NARROWEST_GAP
from kit.sewing.reading import mark_label
from kit.sewing.sections import seams as shapes
from kit.sewing.vocabulary import *

LEAST_ALLOWANCE = 6.0
"""mm of allowance that can be folded back and turned under at an opening (common practice, no source)."""
_END = 0.5  # mm from the end of a seam at which an opening reaches it


def _within(seam: OpenSeam, state: State, pattern: Cut) -> Iterable[Case]:
    """The opening ends on the seam."""
    if seam.opening is None:
        return ()
    run, end = seam.a[0], seam.opening[1]
    size = run_length(pattern, run)
    values = {"end": measured(end), "size": measured(size)}
    return (Case(end <= size + 0.5, run, run.edges[-1], end - size, values),)


def _wide_enough(seam: Any, state: State, pattern: Cut) -> Iterator[Case]:
    """The garment can be turned through the gap."""
    size = seam.gap[1] - seam.gap[0] if seam.gap else NARROWEST_GAP
    yield off_by(seam.a[0], NARROWEST_GAP - size, 0.0, size=size, least=NARROWEST_GAP)


def _label(given: Any, asked: Asked, name: str) -> str:
    return mark_label(asked.given["opening"])


@operation
class OpenSeam(Seam):
    """A seam in which a stretch may stay open: a mark on it, or (start, end) in mm along `a`."""

    opening: tuple[float, float] | None = opening("a", "b")
    mark: str = read_by(_label, "", way="none", held="", fills={"": "text"})
    half: str = half_of("opening", "gap")

    @property
    def is_open(self) -> bool:
        """Whether an opening is left in it."""
        return self.opening is not None

    @property
    def depth(self) -> float:
        """mm of allowance at the opening: all that the rows take."""
        return self.allowance_of(reads_of(type(self))["a"]) or 0.0

    def openings(self, pattern: Cut) -> tuple[Run, ...]:
        """The opening on each of the two runs."""
        return left_of(pattern, self, self.opening)

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        return tuple(span for run in self.openings(pattern) for span in spans(pattern, run))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        left = self.openings(pattern)
        return closed_but(pattern, self.runs(), left, "sewn") + closings(pattern, left, "hemmed")

    def opening_scene(self, pattern: Cut, run: Run, *sewn: Row) -> Scene:
        """One of the two pieces from its wrong side, its allowance turned back and stitched along the opening; the
        rows that are `sewn` by then stop there."""
        part = next(shown(pattern, each) for each in self.openings(pattern) if each.piece == run.piece)
        layer = Layer(run, up="wrong", back=((part, self.depth / 2),))
        down = Row(part, inset=self.depth / 2 - 1.5)
        size = run_length(pattern, part)
        near = around(pattern, run, (part.start or 0.0) - (run.start or 0.0) + size / 2, 1.3 * size)
        return Scene((layer,), (*sewn, down), focus=near, section=shapes.opening(), stage="opening")

    def back(self, pattern: Cut, run: Run) -> tuple[tuple[Run, float], ...]:
        """What is turned back of the run by the time of the last row: its part of the opening, and how deep."""
        parts = [each for each in self.openings(pattern) if (each.piece, each.edges) == (run.piece, run.edges)]
        return tuple((shown(pattern, each, run.side), self.depth / 2) for each in parts[:1])


def left_open(seam: OpenSeam, pattern: Cut) -> Iterator[Sentence]:
    """Where the row stops for the opening."""
    return _left(seam, seam.opening, "leave", bool(seam.mark), pattern)


def left_raw(seam: Any, pattern: Cut) -> Iterator[Sentence]:
    """Where the row stops for a gap to turn through."""
    return _left(seam, seam.gap, "gap", False, pattern)


def _left(seam: Seam, stretch: tuple[float, float] | None, what: str, marked: bool, pattern: Cut) -> Iterator[Sentence]:
    """It is measured from an edge beside the seam that is named, of a part of an edge too."""
    if stretch is None:
        return
    (run,) = seam.a
    run, start, end = _on_one_edge(pattern, run, *stretch)
    last = start >= _END and end > run_length(pattern, run) - _END
    beside = _beside(pattern, run, last)
    if start < _END or last:
        key = "next" if beside else "end" if last else "start"
    else:
        low, whole = run.start or 0.0, replace(run, start=None, end=None)
        start, end = start + low, end + low
        if seen_end(line_of(pattern, whole)) == "end":
            size = run_length(pattern, whole)
            last, start, end = True, size - end, size - start
        beside = _beside(pattern, whole, last)
        key = f"{'mark' if marked else 'part'}{'_from' if beside else ''}"
    values = {**seam.values(pattern), "edge": ((run,), "edge"), "beside": (beside, "edge")}
    values |= {"from": (start, "length"), "to": (end, "length")}
    yield Sentence(f"opening.{what}_{key}", values)


def _on_one_edge(pattern: Cut, run: Run, start: float, end: float) -> tuple[Run, float, float]:
    """The one edge of a longer run that a stretch lies on, and the stretch in mm along that; the run itself where the
    stretch lies on several of its edges."""
    names = {span.edge for span in spans(pattern, run, start, end)}
    if len(names) > 1 or len(run.edges) == 1:
        return run, start, end
    whole, single = path_of(pattern, run), Run(run.piece, tuple(names), run.side)
    path = path_of(pattern, single)
    low, high = sorted(path.nearest(whole.at(at)) for at in (start, end))
    return single, low, high


def gap_along(pattern: Cut, a: Run, b: Run, stretch: tuple[float, float]) -> tuple[float, float]:
    """A stretch along `a`, in mm, as it is measured along `b`."""
    there, low = on_both(pattern, a, b, stretch)[1], b.start or 0.0
    return (there.start or 0.0) - low, (there.end or 0.0) - low


def _beside(pattern: Cut, run: Run, last: bool) -> tuple[Run, ...]:
    """The edge that meets a whole run at its start, or at its end (`last`)."""
    if run.start is not None or run.end is not None:
        return ()
    piece, path = pattern.piece(run.piece), path_of(pattern, run)
    tip = path.end if last else path.start
    for name in neighbours(piece, run.edges):
        other = piece.edge(name).path
        if min(other.start.distance(tip), other.end.distance(tip)) < _END:
            return (Run(run.piece, (name,)),)
    return ()


def clipped(seam: OpenSeam, pattern: Cut) -> Iterator[Sentence]:
    """How the allowances are cut into, so that they can be turned at the opening."""
    if seam.opening is None:
        return
    start, end = seam.opening
    whole = start < _END or end > run_length(pattern, seam.a[0]) - _END
    values = {**seam.values(pattern), "depth": (seam.depth, "allowance")}
    yield Sentence("opening.clip_one" if whole else "opening.clip", values)


AGAIN = Say("opening.again", lambda seam: seam.is_open)
"""The next row stops there too."""
UNTRIMMED = Say("opening.untrimmed", lambda seam: seam.is_open)
OPENED = Stage(
    "opening", (clipped, "opening.turn"), closes={"a": "hemmed", "b": "hemmed"}, when=lambda seam: seam.is_open
)
"""The stage between two rows in which the allowances of an opening are clipped, turned under and stitched."""
GAP_WIDE = Rule(Asking(_wide_enough), "gap_narrow")
"""What a gap for turning needs."""
WITHIN = (
    Rule(Asking(_within), "opening_outside_seam"),
    at_least("depth", LEAST_ALLOWANCE, "opening_narrow", of="a", slack=0.01, when=lambda seam: seam.is_open),
)
"""What every seam with an opening needs."""
