"""One parameter on the panel: its name, a box to type in, the other unit, a slider and the reason."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from html import escape
from typing import Any

import ipywidgets as widgets

from kit.errors import KitError
from kit.language import language, say, speaking
from kit.lesson.parameter import Parameter
from kit.lesson.scale import Scale
from kit.live.own_hand import OwnHand
from kit.units import System
from kit.wording.lists import two_sentences

_BOX_WIDTH, _NAME_WIDTH, _OTHER_WIDTH = "248px", "150px", "80px"
_PLAIN_EDGE, _NAMED_EDGE, _BROUGHT_EDGE = "4px solid transparent", "4px solid #d9b44a", "4px solid #b3541e"
_SMALL = "font-size:12px;line-height:1.25"
_OVER = f"position:absolute;inset:0;overflow:hidden;text-overflow:ellipsis;{_SMALL};font-weight:600"


@dataclass(frozen=True)
class ProofNote:
    """What the proof has to say about a parameter: `text` is shown in the place of its reason, `full` when it is
    pointed at. `brought`: a move of this very value brought it."""

    text: str
    full: str
    brought: bool = False


class _Track:
    """A slider for `parameter` in one unit, and where it `stands`.

    Each unit has a slider of its own, made when it is first wanted: a report that is still on its way from the
    browser when the units are switched is then read in the unit it was made in.
    """

    def __init__(self, parameter: Parameter, system: System, tooltip: str) -> None:
        self.scale = Scale(parameter, system)
        self.stands = self.scale.least
        self._left: Parameter | None = None
        self.slider = widgets.FloatSlider(
            self.stands,
            min=self.scale.least,
            max=self.scale.most,
            step=self.scale.step,
            readout=False,
            continuous_update=True,
            tooltip=tooltip,
            layout={"width": "auto", "margin": "-2px 0 0 0"},
        )

    def place(self, value: float) -> None:
        self.stands = self.scale.number(value)
        self._hold(self.stands)

    def end(self, left: Parameter | None) -> None:
        """Let the slider end where `left`, the parameter with the range the other values leave it, ends; None: at its
        own ends. Where it stands it stays, even outside."""
        self._left = left
        self._hold(self.slider.value)

    def _hold(self, value: float) -> None:
        """The slider at `value`, with the ends that hold now. A slider pulls what lies outside a new end to that end
        and reports it as a move of its own, here and in the browser: so here the ends stand wide until it is placed.
        A browser is told of ends and place at once but sets one after the other, in no order of ours; and a place that
        is no whole number it reports back a hair off, perhaps when another value stands by then. Neither is a move of
        anybody's, and a slider that does not report while it moves tells only what a hand has done."""
        scale, left = self.scale, self._left
        low, high = scale.least, scale.most
        if left is not None and (steps := scale.within(left.least, left.most)):
            own = scale.parameter  # an end of its own stays where the slider has it, which may be no whole step
            low = low if left.least <= own.least else steps[0] / scale.per_unit
            high = high if left.most >= own.most else steps[-1] / scale.per_unit
        low, high = min(low, value), max(high, value)
        slider = self.slider
        if (low, high, value) == (slider.min, slider.max, slider.value):
            return
        with slider.hold_sync():
            slider.continuous_update = False
            slider.min, slider.max = min(low, slider.min), max(high, slider.max)
            slider.value = value
            slider.min, slider.max = low, high
        slider.continuous_update = True


class ParameterRow:
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
        self._value = value
        self._own: float | None = None
        self._own_hand = OwnHand()
        self._language = language()
        self._before = ""
        self._follows = ""
        self._mark: ProofNote | None = None
        self._refusal: ProofNote | None = None
        why = parameter.why
        self._tooltip = say("panel.row_tip", name=parameter.label, why=why) if why else parameter.label
        self._tracks: dict[System, _Track] = {}
        self._left: Parameter | None = None
        self._system = system
        self.box = widgets.Text(
            description=parameter.label.capitalize(),
            tooltip=self._tooltip,
            continuous_update=False,
            style={"description_width": _NAME_WIDTH},
            layout={"width": _BOX_WIDTH, "margin": "0"},
        )
        self.other = widgets.HTML(layout={"width": _OTHER_WIDTH, "margin": "0 0 0 6px"})
        self._typing = widgets.HBox([self.box, self.other])
        self._why = widgets.HTML(layout={"margin": "-4px 0 0 0"})
        self.widget = widgets.VBox(layout={"margin": "0 0 10px 0", "padding": "0 0 0 6px", "flex": "0 0 auto"})
        self.widget.layout.border_left = _PLAIN_EDGE
        self._explain()
        self.widget.add_class("lessonkit-row")
        self._turn(system)
        self._write()
        self.box.observe(self._typed, "value")

    @property
    def slider(self) -> widgets.FloatSlider:
        """The slider in the shown unit."""
        return self._tracks[self._system].slider

    def show(self, value: float, system: System) -> None:
        """Show `value` (mm, share or count) in `system`. A slider the user holds is left alone."""
        turned, moved = system != self._system, value != self._value
        self._value = value
        if turned:
            self._turn(system)
        elif moved and value != self._own:
            self._tracks[system].place(value)
        if turned or moved:
            self._write()
        if moved:
            self.pardon()
        self._own = None

    def end(self, left: Parameter) -> None:
        """Let the slider end where the other values end it: `left` is the parameter with the range they leave it."""
        self._left = None if left is self.parameter else left
        for track in self._tracks.values():
            track.end(self._left)

    def was(self, text: str) -> None:
        """Show beside the value what it was before a fitting; nothing for an empty text."""
        if text != self._before:
            self._before = text
            self._write()

    def follow(self, text: str) -> None:
        """Say beneath the value what of the body it follows from; nothing for an empty text: it was moved."""
        if text != self._follows:
            self._follows = text
            self._explain()

    def mark(self, mark: ProofNote | None) -> None:
        """Show what the proof has to say about this value, or that it has nothing to say. The row keeps its height."""
        if mark != self._mark:
            self._mark = mark
            self._tell_mark()

    def refuse(self, error: KitError) -> None:
        """Say beside the box why what was given cannot be used. It stands until `pardon`: a proof of the draft before,
        which ends a moment later, does not take it away before it is read."""
        self._refusal = ProofNote(str(error), str(error), brought=True)
        self._tell_mark()

    def pardon(self) -> None:
        """Something else was set meanwhile: what was refused is not told any more."""
        if self._refusal is not None:
            self._refusal = None
            self._tell_mark()

    @property
    def marked(self) -> ProofNote | None:
        """What stands beside the value: a refusal, else what the proof says."""
        return self._refusal or self._mark

    def _tell_mark(self) -> None:
        mark = self.marked
        edge = _PLAIN_EDGE if mark is None else _BROUGHT_EDGE if mark.brought else _NAMED_EDGE
        self.widget.layout.border_left = edge
        self._explain()

    def _explain(self) -> None:
        """The reason of the parameter, or over it, on the same room, what the proof says."""
        mark, why = self.marked, escape(two_sentences(self.parameter.why, self._follows))
        if mark is None:
            self._why.value = f'<div style="{_SMALL};min-height:15px;opacity:.75">{why}</div>'
            return
        said = f'<div title="{escape(mark.full)}" style="{_OVER};color:{"#8f3c0e" if mark.brought else "#6b5500"}">'
        self._why.value = (
            f'<div style="position:relative"><div style="{_SMALL};min-height:15px;visibility:hidden">{why}</div>'
            f"{said}{escape(mark.text)}</div></div>"
        )

    def close(self) -> None:
        """Take the row off the page."""
        parts = [self.box, self.other, self._typing, self._why, *(track.slider for track in self._tracks.values())]
        for part in (self.widget, *parts):
            part.close()

    def _turn(self, system: System) -> None:
        track = self._tracks.get(system)
        if track is None and self.parameter.kind != "length" and self._tracks:
            track = next(iter(self._tracks.values()))
        if track is None:
            track = _Track(self.parameter, system, self._tooltip)
            track.place(self._value)
            track.end(self._left)
            track.slider.observe(partial(self._slid, track), "value")
        else:
            track.place(self._value)
        self._tracks[system] = track
        self._system = system
        children = (self._typing, track.slider, self._why)
        if self.widget.children != children:
            self.widget.children = children

    def _write(self) -> None:
        scale = self._tracks[self._system].scale
        self._own_hand.put(self.box, value=scale.text(self._value))
        other = escape(scale.other(self._value))
        if self._before:
            before = f"<div>{escape(self._before)}</div>"
            other = f'<div style="font-size:11.5px;line-height:13px;white-space:nowrap">{other}{before}</div>'
        self.other.value = other

    def _slid(self, track: _Track, change: Any) -> None:
        if track.scale.same(change.new, track.stands):
            return
        track.stands = change.new
        value = track.scale.value(change.new)
        if value != self._value:
            self._own = value if track.slider is self.slider else None
            self._moved(self.parameter.name, value)

    def _typed(self, change: Any) -> None:
        with speaking(self._language):
            self._read(change)

    def _read(self, change: Any) -> None:
        scale = self._tracks[self._system].scale
        if self._own_hand or change.new == scale.text(self._value):
            return
        try:
            value = scale.read(change.new)
        except KitError as error:
            self._write()
            self._refused(error)
            self.refuse(error)
            return
        if value == self._value:
            self._write()
            self.pardon()
        else:
            self._moved(self.parameter.name, value)
