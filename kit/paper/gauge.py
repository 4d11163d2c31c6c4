"""What is measured before anything is cut: test squares and the printer gauge.

A square shows whether the print is true; the gauge tells by how much it is not. Its bar is 100 mm long as asked of the
printer, whatever correction the pages carry, so that its printed length in millimetres is the printer's scale in per
cent. Its end is a scale to read with a ruler: the line under the ruler's 100 mm (or 4 in) names the per cent, since
what a printer makes p per cent as large reaches 100 mm at 10000 / p mm.
"""

from __future__ import annotations

import math
from typing import Any

from kit.language import say
from kit.paper.pdf_pen import MM, Ink, fitted, set_ink, write
from kit.paper.request import CLASS_SCALES, PageRequest
from kit.units import plain

METRIC_SIDE = 100.0
INCH_SIDE = 101.6
BAR = 100.0
LOWEST, HIGHEST = 94, 106
GAUGE_LENGTH = 111.5
"""Room for a gauge along its bar, in mm as asked of the printer."""
GAUGE_WIDTH = 16.0
"""Room across the bar, in mm of paper."""
_BASE = 6.5


def gauge_place(per_cent: float, length: float = BAR) -> float:
    """Where on the bar, in mm as asked, a line stands that a printer of this scale puts at `length` mm."""
    return length * 100 / per_cent


def draw_square(canvas: Any, left: float, bottom: float, side: float, step: float = 0.0) -> None:
    """A square whose line, measured along its middle, is `side` mm long, with ticks inside every 10 mm for a
    metric square and every half inch for one in inches, or every `step` mm."""
    set_ink(canvas, Ink(0.25))
    canvas.rect(left * MM, bottom * MM, side * MM, side * MM, stroke=1, fill=0)
    step = step or (10.0 if math.isclose(side % 10, 0, abs_tol=1e-6) else 12.7)
    set_ink(canvas, Ink(0.15, 0.3))
    for count in range(1, round(side / step)):
        middle = math.isclose(count * step, side / 2)
        long = 3.0 if middle or (not math.isclose(step % 10, 0, abs_tol=1e-6) and count % 2 == 0) else 1.8
        along = count * step
        canvas.line((left + along) * MM, bottom * MM, (left + along) * MM, (bottom + long) * MM)
        canvas.line(left * MM, (bottom + along) * MM, (left + long) * MM, (bottom + along) * MM)


def draw_gauge(canvas: Any, x: float, y: float, enlarged: float, said: str, upright: bool = False) -> None:
    """The gauge in a room of GAUGE_LENGTH x GAUGE_WIDTH whose lower left corner is (x, y) mm, or on end when
    `upright`. `enlarged` is how much larger the canvas is drawn along the bar, which the gauge undoes; `said` names
    the gauge and the side of the paper it measures."""
    canvas.saveState()
    canvas.translate((x + (GAUGE_WIDTH if upright else 0.0)) * MM, y * MM)
    if upright:
        canvas.rotate(90)
    unit = 1.0 / enlarged

    def rule(at: float, low: float, high: float, width: float = 0.15) -> None:
        set_ink(canvas, Ink(width))
        canvas.line((2 + at * unit) * MM, (_BASE + low) * MM, (2 + at * unit) * MM, (_BASE + high) * MM)

    set_ink(canvas, Ink(0.3))
    canvas.line(2 * MM, _BASE * MM, (2 + gauge_place(LOWEST, INCH_SIDE) * unit) * MM, _BASE * MM)
    rule(0, -3.2, 3.2, 0.25)
    for per_cent in range(LOWEST, HIGHEST + 1):
        named = per_cent in (LOWEST, 100, HIGHEST)
        long = 3.2 if named else 2.5 if per_cent in (97, 103) else 1.6
        for length, way in ((BAR, 1), (INCH_SIDE, -1)):
            at = gauge_place(per_cent, length)
            rule(at, 0, way * long, 0.25 if per_cent == 100 else 0.15)
            if named:
                write(
                    canvas,
                    str(per_cent),
                    2 + at * unit,
                    _BASE + (3.9 if way > 0 else -5.2),
                    1.4,
                    bold=per_cent == 100,
                    anchor="middle",
                )
    for key, length, y in (("metric", BAR, 3.9), ("inch", INCH_SIDE, -5.4)):
        text = say(f"paper.gauge_{key}")
        end = 2 + gauge_place(HIGHEST, length) * unit - 3
        write(canvas, text, end, _BASE + y, fitted(text, 1.5, end - 6), anchor="end")
    room = gauge_place(HIGHEST) * unit - 4
    write(canvas, said, 4, _BASE + 1.3, fitted(said, 1.9, room, bold=True), bold=True)
    write(canvas, "0", 2, _BASE + 3.9, 1.5, anchor="middle")
    zero = say("paper.gauge_zero")
    write(canvas, zero, 4, _BASE - 2.9, fitted(zero, 1.6, room))
    canvas.restoreState()


def gauge_side(horizontal: bool, landscape: bool) -> str:
    """The gauge by the side of the paper it runs along."""
    return say("paper.gauge_short" if horizontal != landscape else "paper.gauge_long")


def how_to_gauge(request: PageRequest) -> tuple[str, ...]:
    """What to do with the gauge, in sentences."""
    if not request.corrected:
        return (say("paper.gauge_how"),)
    short, long = (plain(share * 100, 2) for share in request.printer_scale)
    if short == long:
        return (say("paper.gauge_corrected", scale=short),)
    return (say("paper.gauge_corrected_two", short=short, long=long),)


def class_banner(request: PageRequest) -> str:
    """What stands on every page of a class scale; "" at full scale."""
    return "" if request.full_size else say(f"paper.class_{CLASS_SCALES[request.class_scale]}")


def square_sides(request: PageRequest) -> tuple[tuple[float, str, str], ...]:
    """For both test squares: side in mm on paper, what it is called, and what is said about it."""
    sides = (METRIC_SIDE, 4.0)
    whole = [say(f"unit.{unit}", amount=plain(side)) for side, unit in zip(sides, ("mm", "in"), strict=True)]
    if request.full_size:
        return tuple((mm, name, say("paper.square")) for mm, name in zip((METRIC_SIDE, INCH_SIDE), whole, strict=True))
    scale = request.class_scale
    small = [say(f"unit.{unit}", amount=plain(side * scale)) for side, unit in zip(sides, ("mm", "in"), strict=True)]
    said = [say("paper.square_small", side=own, stands_for=full) for own, full in zip(small, whole, strict=True)]
    return tuple(zip((METRIC_SIDE * scale, INCH_SIDE * scale), small, said, strict=True))
