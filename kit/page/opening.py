"""Where a page opens before its reader has set anything: as `--size`, `--units` and `--values` said at its build."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from kit.booklet.asked_draft import AskedDraft
from kit.booklet.handover import Handover
from kit.lesson.pattern import Pattern


@dataclass(frozen=True)
class Opening:
    """The `size` ("" for the lesson's own), the `units` and the `values` (mm, share or count) of those parameters that
    do not stand as written."""

    size: str
    units: str
    values: Mapping[str, float]
    note: str = ""
    """What its author must know."""

    @property
    def told(self) -> dict[str, object]:
        """As page.json says it."""
        return {"size": self.size, "units": self.units, "values": dict(self.values)}


def opening(given: Handover, asked: AskedDraft | None) -> Opening:
    """Where the page of what was `given` opens. Values saved beside the notebook alone are the author's own trials; a
    page has them only where values or a preset were `asked` for."""
    values = moved(given.pattern) if asked is not None and (asked.preset or asked.values) else {}
    size, wanted = size_of(given), given.pattern.body.name
    note = f"The page opens in the lesson's own size, not for {wanted}: a page holds sizes of the chart alone."
    return Opening(size, given.pattern.lesson.units, values, note if given.chart and not size else "")


def size_of(given: Handover) -> str:
    """The name of the size it is drawn in; "" where there is one for all, and for somebody's own body: that stays out
    of a page."""
    name = given.pattern.body.name
    return name if any(row.name == name for row in given.chart) else ""


def moved(pattern: Pattern) -> dict[str, float]:
    """The values that do not stand as the lesson writes them."""
    return {
        value.name: value.value
        for value in pattern.values
        if not value.follows and abs(value.value - value.default) > 1e-6
    }
