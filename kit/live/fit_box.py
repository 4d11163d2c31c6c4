"""Fit changes on the panel: what the body chosen asks for beside a size, and any other change to be set by hand.

A change that is set is a value of the lesson like any other: it gets its slider, is kept beside the notebook, and can
be undone. Which changes can be made to this garment is tried only when the box is opened.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

import ipywidgets as widgets

from kit.body.advice import Advice, advise
from kit.body.chart import KEYS
from kit.body.proposed import within
from kit.errors import KitError
from kit.language import say
from kit.lesson.fit_change import FIT_CHANGES
from kit.lesson.lesson import Lesson
from kit.live import fragments
from kit.live.beside import beside
from kit.live.speech import spoken
from kit.units import Length

_FIRST = 10.0
"""mm at which a change chosen by hand begins."""


class FitBox:
    """The part of the panel for fit changes: `widget`, with `open` (a button), the `choice` of a change with `add`, and
    `take`, which draws the size advised for the body with the changes it asks for. `took` is called when values were
    set; `guarded` makes a callback of an act."""

    def __init__(
        self, lesson: Lesson, took: Callable[[], None], guarded: Callable[[Callable[[], None]], Callable[[Any], None]]
    ) -> None:
        self.lesson = lesson
        self._took = took
        self._advice: Advice | None = None
        self._possible: Mapping[str, float] = {}
        self.open = widgets.ToggleButton(
            value=False, description=say("panel.fit"), tooltip=say("panel.fit_tip"), layout={"width": "auto"}
        )
        self.choice = widgets.Dropdown(options=[("", "")], layout={"width": "260px", "max_width": "100%"})
        self.add = widgets.Button(
            description=say("panel.fit_add"), tooltip=say("panel.fit_add_tip"), layout={"width": "auto"}
        )
        self.advice = widgets.HTML()
        self.take = widgets.Button(
            button_style="primary", tooltip=say("panel.fit_take_tip"), layout={"width": "auto", "display": "none"}
        )
        row = widgets.HBox([self.choice, self.add], layout={"flex_flow": "row wrap", "align_items": "center"})
        self._inside = widgets.VBox(
            [self.advice, self.take, row], layout={"display": "none", "align_items": "flex-start"}
        )
        self.widget = widgets.VBox(
            [self.open, self._inside], layout={"margin": "4px 0 8px 0", "align_items": "flex-start"}
        )
        self.widget.add_class("lessonkit-fit")
        self.open.observe(guarded(self._opened), "value")
        self.add.on_click(guarded(self._add))
        self.take.on_click(guarded(self._take))

    def show(self) -> None:
        """The lesson is another one now."""
        if self.open.value:
            self._fill()

    def _opened(self) -> None:
        self._inside.layout.display = "" if self.open.value else "none"
        self.show()

    @spoken
    def _fill(self) -> None:
        lesson = self.lesson
        own = {parameter.name for parameter in lesson.parameters}
        offered = [parameter for parameter in lesson.fit_changes if parameter.name not in own]
        self._possible = {p.name: p.most for p in (*lesson.parameters, *offered)}
        options = [(say("panel.fit_choose"), ""), *((FIT_CHANGES[p.name].title, p.name) for p in offered)]
        if tuple(self.choice.options) != tuple(options):
            self.choice.options = options
            self.choice.value = ""
        self._advice = self._advised()
        if self._advice is None:
            self.advice.value = fragments.notes([say("panel.fit_by_size")])
            self.take.layout.display = "none"
            return
        asked, cut = within(self._advice.changes, self._possible, lesson.units)
        self.advice.value = fragments.notes([*self._advice.sentences, *([cut] if cut else [])])
        self.take.description = say("panel.fit_take", size=self._advice.size, count=len(asked))
        self.take.layout.display = ""

    def _advised(self) -> Advice | None:
        """What is advised for the body chosen; None for a size of the chart, which needs no change."""
        lesson = self.lesson
        if lesson.body.name in lesson.sizes or not any(key in KEYS for key in lesson.sizes.keys):
            return None
        try:
            return advise(lesson.body, lesson.sizes, lesson.units)
        except KitError:
            return None

    def _asked(self) -> dict[str, float]:
        """The changes advised that can be made to this garment, each no more than it can be."""
        asked = self._advice.changes if self._advice is not None else ()
        return {one.name: one.amount for one in within(asked, self._possible, self.lesson.units)[0]}

    def _add(self) -> None:
        name = self.choice.value
        if name:
            self._set({name: _FIRST})

    def _take(self) -> None:
        if self._advice is not None:
            asked = self._asked()
            self.lesson.choose(size=self._advice.size)
            self._set(asked)

    def _set(self, values: Mapping[str, float]) -> None:
        history = beside(self.lesson).history
        history.seal()
        self.lesson.change(**{name: Length(value) for name, value in values.items()})
        history.seal()
        self._took()
