"""A closed outline from a drawing: its corners, its edges named between them, and how it is laid on the axes."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from kit.errors import KitError
from kit.geometry import UP, Motion, Path, Point
from kit.units import Length, length, show_metric

EdgeEnd = int | Sequence[float]
"""A corner's number, or a place in the drawing as two lengths (x, y up)."""

_NEAR = 3.0


@dataclass(frozen=True)
class TracedOutline:
    """One closed outline: its `number` in the file, the `names` the file has for it (its own, then its layers),
    its `path` (clockwise from its lowest left corner, as drawn, mm, y up) and the distance of each corner along it."""

    number: int
    names: tuple[str, ...]
    path: Path
    corners: tuple[float, ...]

    @property
    def said(self) -> str:
        x0, y0, x1, y1 = self.path.bounds()
        size = f"{show_metric(x1 - x0)} × {show_metric(y1 - y0)}"
        return f"{self.number} ({f'{self.names[0]!r}, ' if self.names else ''}{size})"

    def corner(self, number: int) -> Point:
        """Where corner `number` (from 1) is, as drawn. `KitError` when there is none."""
        return self.path.at(self.along(number))

    def along(self, spot: EdgeEnd) -> float:
        """How far along the path a corner or place is, in mm. `KitError` for neither."""
        if isinstance(spot, int) and not isinstance(spot, bool):
            if not 1 <= spot <= len(self.corners):
                raise KitError(
                    f"there is no corner {spot}.",
                    do=f"The corners are 1 to {len(self.corners)}."
                    if self.corners
                    else "This outline has no corner; give places instead: two lengths, (12*cm, 30*cm).",
                )
            return self.corners[spot - 1]
        try:
            x, y = (float(length(value)) for value in spot)  # type: ignore[union-attr, arg-type]
        except (TypeError, ValueError):
            raise KitError(
                f"{spot!r} is neither a corner's number nor a place.", do="Write 3, or two lengths: (12*cm, 30*cm)."
            ) from None
        found = self.path.nearest(Point(x, y))
        off = self.path.at(found).distance(Point(x, y))
        if off > _NEAR:
            raise KitError(
                f"the place x {show_metric(x)}, y {show_metric(y)} lies {off:.1f} mm off the outline.",
                do="Give a place on it, or a corner's number.",
            )
        return found if found < self.path.length - 1e-6 else 0.0


def named_edges(outline: TracedOutline, edges: Mapping[str, tuple[EdgeEnd, EdgeEnd]]) -> list[tuple[str, Path]]:
    """The named edges, each between two corners or places, clockwise around the outline as drawn. `KitError`
    when they do not follow each other once around it."""
    whole = outline.path.length
    ends: dict[str, tuple[float, float]] = {}
    for name, pair in edges.items():
        try:
            a, b = pair
        except (TypeError, ValueError):
            raise KitError(
                f"{pair!r} does not say where the edge begins and ends.", where=name, do="Write two corners: (1, 2)."
            ) from None
        try:
            ends[name] = (outline.along(a), outline.along(b))
        except KitError as error:
            raise error.at(name) from None
    if len(ends) < 2:
        raise KitError("an outline needs two edges or more.", do="Name each edge around the piece.")
    forward = {name: (a, (b - a) % whole or whole) for name, (a, b) in ends.items()}
    backward = {name: (b, (a - b) % whole or whole) for name, (a, b) in ends.items()}
    tries = [_around(outline, way, whole) for way in (forward, backward)]
    for found, _ in tries:
        if found:
            return found
    raise min((trouble for _, trouble in tries), key=lambda t: t[0])[1]


def _around(
    outline: TracedOutline, spans: Mapping[str, tuple[float, float]], whole: float
) -> tuple[list[tuple[str, Path]], tuple[float, KitError]]:
    """The edges in order if they cover the loop once; else how far off that is and why."""
    order = sorted(spans, key=lambda name: spans[name][0])
    off, why = 0.0, KitError("")
    for name, after in zip(order, order[1:] + order[:1], strict=True):
        start, long = spans[name]
        step = (spans[after][0] - start) % whole or whole
        if abs(step - long) > 0.01:
            if off == 0.0:
                what = (
                    f"the edges '{name}' and '{after}' overlap"
                    if long > step
                    else f"no edge runs from the end of '{name}' to the beginning of '{after}'"
                )
                here = [str(i + 1) for i, d in enumerate(outline.corners) if abs(d - (start + long) % whole) < 0.01]
                why = KitError(
                    f"{what}{f' (corner {here[0]})' if here else ''}.",
                    do="Let each edge begin at the corner where the one before it ends, once around the outline.",
                )
            off += abs(step - long)
    if off:
        return [], (off, why)
    closed = outline.path.joined(outline.path)
    return [(name, closed.between(spans[name][0], sum(spans[name]))) for name in order], (0.0, why)


def laid(outline: TracedOutline, edges: list[tuple[str, Path]], centre: Any, waist: Any) -> tuple[Motion, list[str]]:
    """The motion that brings centre line and waistline to the axes, and what it did that a reader should know."""
    told: list[str] = []
    named = dict(edges)
    motion = Motion.identity()
    line: tuple[Point, Point] | None = None
    if isinstance(centre, str) and centre != "drawn":
        if centre not in named:
            raise KitError(
                f"there is no edge '{centre}' for the centre line.",
                do="Say where it is: centre= an edge's name, two corners (lower, upper), one corner, or 'drawn'.",
            )
        path = named[centre]
        if not path.is_straight:
            raise KitError(
                f"the edge '{centre}' is not straight, so it cannot be the centre line.",
                do="Give two corners instead, lower and upper: centre=(1, 2).",
            )
        line = (path.start, path.end) if path.end.y >= path.start.y else (path.end, path.start)
        lean = abs(UP.turn_to(line[1] - line[0]))
        if lean > math.radians(45):
            raise KitError(
                f"the edge '{centre}' lies across the page, so its upper end cannot be told.",
                do="Give its two corners, lower and upper: centre=(1, 2).",
            )
    elif isinstance(centre, int) or (isinstance(centre, Sequence) and any(isinstance(v, Length) for v in centre)):
        motion = Motion.translation(Point(0.0, 0.0) - Point(outline.path.at(outline.along(centre)).x, 0.0))
    elif isinstance(centre, Sequence) and len(centre) == 2 and not isinstance(centre, str):
        line = (outline.path.at(outline.along(centre[0])), outline.path.at(outline.along(centre[1])))
    elif centre != "drawn":
        raise KitError(
            "it is not said where the centre line is.",
            do="Give centre= an edge's name, two corners (lower, upper), one corner, or 'drawn'.",
        )
    # Two things may be wrong with a drawing that a scanner or another program made: it leans, and it is the mirror
    # image of what is drafted here. The centre line is stood upright about its lower end, then the whole is turned over
    # if more of it lies left of that line than right. Half a degree of lean is the scanner's, and not worth a word.
    if line is not None:
        lower, upper = line
        lean = UP.turn_to(upper - lower)
        motion = Motion.matching(lower, upper, Point(0.0, lower.y), Point(0.0, lower.y + 1.0))
        if abs(lean) > math.radians(0.5):
            told.append(f"turned by {abs(math.degrees(lean)):.1f}° so that the centre line is upright.")
        x0, _, x1, _ = outline.path.moved(motion).bounds()
        if x0 + x1 < 0:
            motion = motion.then(Motion.reflection(Point(0.0, 0.0), Point(0.0, 1.0)))
            told.append("turned over, so that the centre line is on the left.")
    level = _level(outline, {name: path.moved(motion) for name, path in named.items()}, motion, waist)
    return motion.then(Motion(dy=-level)), told


def _level(outline: TracedOutline, named: Mapping[str, Path], motion: Motion, waist: Any) -> float:
    """The waistline's y in the turned drawing."""
    if waist == "drawn":
        return 0.0
    if isinstance(waist, str) and waist in named:
        path = named[waist]
        return min((path.start, path.end), key=lambda p: abs(p.x)).y
    if isinstance(waist, Length):
        return min(path.bounds()[1] for path in named.values()) + float(waist)
    if (isinstance(waist, int) and not isinstance(waist, bool)) or isinstance(waist, tuple):
        return motion(outline.path.at(outline.along(waist))).y
    raise KitError(
        f"waist={waist!r} does not say where the waistline is." if waist else "it is not said where the waistline is.",
        do="Give waist= a corner's number, an edge's name, how far above the lowest point it is (20*cm), or 'drawn'.",
    )
