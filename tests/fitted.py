"""A small lesson whose cloth is cut before it is tried on: a straight tunic, front and back, drawn on blank paper.

Half a piece is a trapezium: the centre on the fold, 60 cm long; the hem 30 cm wide; the top as wide as `top_width`. So
what a change of `top_width` does can be worked out by hand.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from kit.blocks.blank import blank_paper
from kit.lesson.lesson import Lesson
from kit.proof import prove
from kit.prose import sentences
from kit.units import Size, cm

HEIGHT, HEM = 600.0, 300.0


def tunic(
    try_on: Callable[[Any], None] | None = None,
    *,
    top: Size = 25 * cm,
    side: Size = 1.5 * cm,
    extra: Size | None = None,
    before: Callable[..., None] | None = None,
    after: Callable[..., None] | None = None,
    seam: Callable[..., None] | None = None,
) -> Lesson:
    """The lesson; `try_on(make)` writes the try-on, `before` and `after` (make, front, back) what is sewn around it,
    `seam` the side seam. `extra` is cloth to fit with at the sides."""
    lesson = Lesson("Straight tunic", start=blank_paper)
    lesson.length("top_width", top, least=10 * cm, most=40 * cm, why="half the width at the top")
    lesson.length("hem_depth", 2 * cm, least=1 * cm, most=5 * cm)

    for name in ("front", "back"):
        _draft(lesson, name, side, extra)

    @lesson.sew("Shoulders")
    def shoulders(make, front, back):
        make.plain_seam(front.top, back.top, allowance=1.5 * cm)
        if before is not None:
            before(make, front, back)

    @lesson.sew("Try it on")
    def trial(make):
        (try_on or (lambda make: make.try_on()))(make)

    @lesson.sew("Sides and hem")
    def sides(make, front, back):
        if after is not None:
            after(make, front, back)
        (seam or _seam)(make, front, back)
        make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)

    return lesson


def _seam(make: Any, front: Any, back: Any) -> None:
    make.plain_seam(front.side, back.side, allowance=1.5 * cm)


def _draft(lesson: Lesson, name: str, side: Size, extra: Size | None) -> None:
    def draw(top_width, **given):
        """Rule the centre, square out top and hem, and join them."""
        piece = given[name]
        low = piece.place(0, 0)
        high = low.up(HEIGHT * cm / 10)
        corner, out = high.out(top_width), low.out(HEM * cm / 10)
        piece.draw(centre=low.to(high), top=high.to(corner), side=corner.to(out), hem=out.to(low))
        piece.allow(top=1.5 * cm, side=side, hem=3 * cm)
        if extra is not None:
            piece.allow_to_fit(side=extra)
        piece.cut(1, fold="centre")
        piece.grain(along=piece.centre)

    source = {"front": _front, "back": _back}[name]
    lesson.step(f"Draw the {name}", makes=name)(source(draw))


def _front(draw: Callable[..., None]) -> Callable[..., None]:
    def draw_front(top_width, front):
        """Rule the centre, square out top and hem, and join them."""
        draw(top_width, front=front)

    return draw_front


def _back(draw: Callable[..., None]) -> Callable[..., None]:
    def draw_back(top_width, back):
        """Rule the centre, square out top and hem, and join them."""
        draw(top_width, back=back)

    return draw_back


IN = {"top_width": (28 * cm, 25 * cm)}
"""A try-on that takes the top in by 3 cm on each side."""


def trial(pattern: Any) -> Any:
    """The one try-on of a pattern."""
    (found,) = [op for record in pattern.sewing for op in record.operations if op.kind == "try_on"]
    return found


def told(pattern: Any) -> list[str]:
    """What it says."""
    return sentences(pattern, trial(pattern))


def codes(pattern: Any, level: str) -> list[str]:
    return [finding.code for finding in prove(pattern) if finding.level == level]


def top(pattern: Any) -> float:
    return pattern.piece("front").edge("top").path.length


def sewn(make: Any, front: Any, back: Any) -> None:
    make.plain_seam(front.side, back.side, allowance=1.5 * cm)


def nothing(make: Any, front: Any, back: Any) -> None:
    """The sides are sewn before."""
