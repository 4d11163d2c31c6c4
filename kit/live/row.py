"""One parameter on the panel: its name, a box to type in, the other unit, a slider and the reason."""

from __future__ import annotations

from collections.abc import Callable
from html import escape
from typing import Any

import ipywidgets as widgets

from kit.errors import KitError
from kit.lesson.parameter import Parameter
from kit.live.scale import Scale
from kit.units import System

_BOX_WIDTH, _NAME_WIDTH, _OTHER_WIDTH = "248px", "150px", "76px"


class Row:
    """The widgets of one `parameter`. `moved` is told its name and new exact value; `refused` is told why what
    was typed cannot be used (the box then goes back to the value that stands)."""

    def __init__(
        self,
        parameter: Parameter,
        value: float,
        system: System,
        moved: Callable[[str, float], None],
        refused: Callable[[KitError], None],
    ) -> None:
        self.parameter = parameter
        self._moved = moved
        self._refused = refused
        self._scale = Scale(parameter, system)
        self._value = value
        self._own: float | None = None
        self._stand = 0.0
        self._busy = False
        help_text = f"{parameter.label}: {parameter.why}" if parameter.why else parameter.label
        self.box = widgets.Text(
            description=parameter.label.capitalize(),
            tooltip=help_text,
            continuous_update=False,
            style={"description_width": _NAME_WIDTH},
            layout={"width": _BOX_WIDTH, "margin": "0"},
        )
        self.other = widgets.HTML(layout={"width": _OTHER_WIDTH, "margin": "0 0 0 6px"})
        self.slider = widgets.FloatSlider(
            readout=False,
            continuous_update=True,
            tooltip=help_text,
            layout={"width": "auto", "margin": "-2px 0 0 0"},
        )
        why = widgets.HTML(
            f'<div style="font-size:12px;line-height:1.25;opacity:.75">{escape(parameter.why)}</div>',
            layout={"margin": "-4px 0 0 0"},
        )
        parts = [widgets.HBox([self.box, self.other]), self.slider, *([why] if parameter.why else [])]
        self.widget = widgets.VBox(parts, layout={"margin": "0 0 10px 0", "flex": "0 0 auto"})
        self.widget.add_class("lessonkit-row")
        self._place()
        self._write()
        self.slider.observe(self._slid, "value")
        self.box.observe(self._typed, "value")

    def show(self, value: float, system: System) -> None:
        """Show `value` (mm, share or count) in `system`. A slider the user holds is left alone."""
        turned = system != self._scale.system
        if turned:
            self._scale = Scale(self.parameter, system)
        if value != self._value or turned:
            self._value = value
            if turned or value != self._own:
                self._place()
            self._write()
        self._own = None

    def close(self) -> None:
        self.widget.close()
        for part in (self.box, self.other, self.slider):
            part.close()

    def _place(self) -> None:
        scale, slider = self._scale, self.slider
        self._busy = True
        try:
            with slider.hold_sync():
                slider.min = min(slider.min, scale.least)
                slider.max = max(slider.max, scale.most)
                slider.step = scale.step
                slider.value = self._stand = scale.number(self._value)
                slider.min, slider.max = scale.least, scale.most
        finally:
            self._busy = False

    def _write(self) -> None:
        self._busy = True
        try:
            self.box.value = self._scale.text(self._value)
            self.other.value = escape(self._scale.other(self._value))
        finally:
            self._busy = False

    def _slid(self, change: Any) -> None:
        if self._busy or self._scale.same(change.new, self._stand):
            return
        self._stand = change.new
        value = self._scale.value(change.new)
        if value != self._value:
            self._own = value
            self._moved(self.parameter.name, value)

    def _typed(self, change: Any) -> None:
        if self._busy or change.new == self._scale.text(self._value):
            return
        try:
            value = self._scale.read(change.new)
        except KitError as error:
            self._write()
            self._refused(error)
            return
        if value == self._value:
            self._write()
        else:
            self._moved(self.parameter.name, value)
