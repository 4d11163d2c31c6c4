"""After try-on: the part of the panel that records what a fitting changes, and why.

From its beginning to its end the picture shows one piece before, dashed, and now, with what moved measured when the
sliders have come to rest; beside each value stands what it was. What is kept goes beside the notebook, and into the
booklet; a line is offered that writes it into a cell.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from html import escape
from typing import Any

import ipywidgets as widgets

from kit.errors import KitError
from kit.language import say
from kit.lesson.fitting import Begun, Change, Fitting
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.live.beside import beside
from kit.live.own_hand import OwnHand
from kit.live.pace import Settled
from kit.live.speech import spoken
from kit.picture.drawing import Drawing
from kit.picture.overlay import most_moved, overlay_drawing
from kit.units import System, show

_MEASURE_AFTER = 0.3  # seconds of rest
_MOST = ""
_WIDE = {"description_width": "56px"}


class TriedOn:
    """`widget` and its parts: `name`, `begin`; while a fitting goes on `piece`, `why`, `keep`, `cancel` and `changes`;
    `kept`, `back` and `code` for those recorded. `open` is the button that shows it. `redraw` is called when the
    picture should be another; `guarded` wraps what people do."""

    def __init__(
        self, lesson: Lesson, redraw: Callable[[], None], guarded: Callable[[Callable[[], None]], Callable[[Any], None]]
    ) -> None:
        self.lesson = lesson
        self.drawn_measured = 0
        self._redraw = redraw
        self._before: tuple[Any, Pattern] | None = None
        self._pattern: Pattern | None = None
        self._looked: tuple[Any, int] | None = None
        self._settled: Callable[[Drawing], None] | None = None
        self._measuring = Settled(self._measure, _MEASURE_AFTER)
        self._compares = False
        self._own_hand = OwnHand()
        self._naming = threading.RLock()  # the box and the button may be answered in two threads
        self._build(guarded)
        self.show()

    @property
    def begun(self) -> Begun | None:
        """The fitting that goes on."""
        return self.lesson.sitting.begun

    # ---- parts --------------------------------------------------------------------------------------------

    def _build(self, guarded: Callable[[Callable[[], None]], Callable[[Any], None]]) -> None:
        def button(key: str, style: str = "") -> widgets.Button:
            return widgets.Button(
                description=say(f"panel.tryon_{key}"),
                tooltip=say(f"panel.tryon_{key}_tip"),
                button_style=style,
                layout={"width": "auto"},
            )

        self.open = widgets.ToggleButton(
            description=say("panel.tryon"), tooltip=say("panel.tryon_tip"), layout={"width": "auto"}
        )
        self.name = widgets.Text(description=say("panel.tryon_name"), style=_WIDE, layout={"width": "300px"})
        self.begin, self.keep = button("begin", "primary"), button("keep", "primary")
        self.cancel, self.back = button("cancel"), button("back")
        self.going, self.changes, self.code = widgets.HTML(), widgets.HTML(), widgets.HTML()
        self.piece = widgets.Dropdown(
            description=say("panel.tryon_piece"), options=[(say("panel.tryon_most"), _MOST)], style=_WIDE
        )
        self.why = widgets.Textarea(
            description=say("panel.tryon_why"),
            placeholder=say("panel.tryon_why_hint"),
            rows=2,
            style=_WIDE,
            layout={"width": "460px"},
        )
        self.kept = widgets.Dropdown(description=say("panel.tryon_kept"), options=[("", -1)], style=_WIDE)
        wrap = {"flex_flow": "row wrap", "align_items": "center"}
        self._idle = widgets.HBox([self.name, self.begin, self.kept, self.back], layout=wrap)
        self._on = widgets.VBox(
            [
                self.going,
                self.changes,
                widgets.HBox([self.piece, self.why, self.keep, self.cancel], layout=wrap),
            ]
        )
        self.widget = widgets.VBox([self._idle, self._on, self.code], layout={"margin": "4px 0 8px 0"})
        self.widget.add_class("lessonkit-try-on")
        self.open.observe(self._opened, "value")
        self.begin.on_click(guarded(self._begin))
        self.name.observe(self._named, "value")
        self.keep.on_click(guarded(self._keep))
        self.cancel.on_click(guarded(self._cancel))
        self.back.on_click(guarded(self._take_back))
        self.piece.observe(self._chosen, "value")
        self.kept.observe(self._chosen, "value")

    def show(self) -> None:
        """The parts as the lesson has them: nothing, a fitting that goes on, or those kept."""
        with self._naming:
            self._show()

    def _show(self) -> None:
        begun = self.lesson.sitting.begun
        if begun is not None and not self.open.value:
            self._own_hand.put(self.open, value=True)
        is_open = bool(self.open.value)
        _display(self.widget, is_open)
        _display(self._idle, begun is None)
        _display(self._on, begun is not None)
        if not is_open:
            return
        self._show_kept()
        if begun is None:
            self._before = None
            # Offered behind the box and never written into it: what is typed while the kernel works would be lost.
            self.name.placeholder = self._offered()
            self._show_code()
            return
        self.code.value = ""
        going = escape(say("panel.tryon_going", title=begun.title))
        self.going.value = f'<div style="font-weight:600">{going}</div>'
        lines = [
            f"{escape(parameter.label.capitalize())}: {escape(parameter.show(one, self.lesson.units))} → "
            f"<strong>{escape(parameter.show(two, self.lesson.units))}</strong>"
            for parameter, one, two in self.moved()
        ] or [escape(say("panel.tryon_nothing"))]
        self.changes.value = f'<div style="min-height:20px;line-height:1.4">{"<br>".join(lines)}</div>'

    def moved(self) -> list[tuple[Parameter, float, float]]:
        """(parameter, before, now) of every value that differs from when the fitting began."""
        earlier = dict(self.lesson.sitting.begun.values) if self.lesson.sitting.begun else {}
        values = self.lesson.values
        return [
            (p, earlier[p.name], values[p.name])
            for p in self.lesson.parameters
            if p.name in earlier and abs(earlier[p.name] - values[p.name]) > 1e-6
        ]

    def before(self) -> dict[str, str]:
        """What each value that differs now was before the fitting, in words."""
        units = self.lesson.units
        return {
            p.name: say("panel.before", value=show(one, units) if p.kind == "length" else p.show(one))
            for p, one, _ in self.moved()
        }

    def _show_kept(self) -> None:
        options = [(say("panel.tryon_none"), -1)]
        for number, one in enumerate(self.lesson.fittings):
            said = say("panel.tryon_one_dated", title=one.title, date=one.date) if one.date else one.title
            options.append((said, number))
        if list(self.kept.options) != options:
            chosen = self.kept.value
            self._own_hand.put(self.kept, options=options)
            self._own_hand.put(self.kept, value=chosen if any(number == chosen for _, number in options) else -1)
        _display(self.kept, len(options) > 1)
        _display(self.back, self.chosen is not None)

    def _show_code(self) -> None:
        fitting = self.chosen
        in_notebook = len(self.lesson.definition.fittings)
        if fitting is None or self.kept.value < in_notebook:
            self.code.value = ""
            return
        line = written(fitting, self.lesson.parameters, self.lesson.units)
        self.code.value = (
            f'<div style="line-height:1.4">{escape(say("panel.tryon_copy"))}</div>'
            '<pre style="margin:2px 0;padding:6px 10px;background:#f3f3f0;color:#222;border-radius:3px;'
            f'white-space:pre-wrap;user-select:all;max-width:900px">{escape(line)}</pre>'
        )

    # ---- what people do -----------------------------------------------------------------------------------

    @spoken
    def _opened(self, _: object) -> None:
        if self._own_hand:
            return
        if not self.open.value:
            self._own_hand.put(self.kept, value=-1)
        self.show()  # a fitting that goes on keeps it open
        self._redraw()

    @spoken
    def _chosen(self, _: object) -> None:
        if not self._own_hand:
            self._looked = None
            self.show()
            self._redraw()

    def _begin(self) -> None:
        with self._naming:
            self.lesson.begin_fitting(self.name.value or self._offered())
        beside(self.lesson).history.seal()
        self._own_hand.put(self.why, value="")
        self._own_hand.put(self.kept, value=-1)
        self._own_hand.put(self.piece, value=_MOST)
        self.show()
        self._redraw()

    def _offered(self) -> str:
        """The title of a fitting that is given none."""
        return say("panel.tryon_title", number=len(self.lesson.fittings) + 1)

    @spoken
    def _named(self, _: object) -> None:
        """A name that comes after the button was typed before it: the page holds it back while the kernel works."""
        title = self.name.value.strip()
        if self._own_hand or not title:
            return
        with self._naming:
            late = self.lesson.sitting.begun is not None and not self.moved()
            if late:
                self.lesson.begin_fitting(title)
        if late:
            self.show()

    def _keep(self) -> None:
        self.lesson.keep_fitting(self.why.value.strip())
        self._own_hand.put(self.name, value="")
        self._show_kept()
        self._own_hand.put(self.kept, value=len(self.lesson.fittings) - 1)
        self.show()
        self._redraw()

    def _cancel(self) -> None:
        beside(self.lesson).history.seal()
        self.lesson.drop_fitting()
        beside(self.lesson).history.seal()
        self._own_hand.put(self.name, value="")
        self.show()
        self._redraw()

    def _take_back(self) -> None:
        fitting = self.chosen
        if fitting is not None:
            beside(self.lesson).history.seal()
            self.lesson.take_back(self.kept.value)
            beside(self.lesson).history.seal()
            self._own_hand.put(self.kept, value=-1)
        self.show()
        self._redraw()

    @property
    def chosen(self) -> Fitting | None:
        """The recorded fitting that is chosen."""
        fittings = self.lesson.fittings
        return fittings[self.kept.value] if self.open.value and 0 <= self.kept.value < len(fittings) else None

    # ---- the picture --------------------------------------------------------------------------------------

    def drawing(self, pattern: Pattern, settled: Callable[[Drawing], None]) -> Drawing | None:
        """The piece before and now; None when no fitting goes on or is chosen, or nothing differs. `settled` is given
        the drawing with what moved measured, when the sliders rest after `measure`."""
        self._measuring.drop()
        self._compares = False
        before = self._earlier()
        if before is None:
            return None
        pieces = [(piece.title, piece.name) for piece in pattern.pieces]
        options = [(say("panel.tryon_most"), _MOST), *pieces]
        if list(self.piece.options) != options:
            self._own_hand.put(self.piece, options=options)
        self._pattern, self._settled = pattern, settled
        name = self.piece.value or most_moved(before, pattern)
        if not name:
            return None
        self._compares = True
        return overlay_drawing(before, pattern, name)

    def measure(self) -> None:
        """The picture of `drawing` is shown: measure what moved when the sliders rest."""
        if self._compares:
            self._measuring.ask()

    def _earlier(self) -> Pattern | None:
        """The draft before the fitting that goes on or is chosen."""
        lesson, begun, fitting = self.lesson, self.lesson.sitting.begun, self.chosen
        values = lesson.values
        if begun is not None:
            earlier = {**values, **{name: value for name, value in begun.values if name in values}}
        elif fitting is not None:
            stands = (lesson.body, tuple(values.items()))
            if self._looked is None:
                self._looked = (stands, self.kept.value)
            elif self._looked != (stands, self.kept.value):  # a value was moved: the draft is looked at again
                self._looked = None
                self._own_hand.put(self.kept, value=-1)
                self.show()
                return None
            earlier = {**values, **{name: value for name, value in fitting.before.items() if name in values}}
        else:
            return None
        key = (lesson.entries, lesson.body, tuple(earlier.items()))
        if self._before is None or self._before[0] != key:
            try:
                self._before = (key, lesson.work(values=earlier))
            except KitError:
                return None
        return self._before[1]

    @spoken
    def _measured(self) -> Drawing | None:
        from kit.picture.fitting import fitting_drawing

        before, pattern = self._before, self._pattern
        if before is None or pattern is None:
            return None
        name = self.piece.value or most_moved(before[1], pattern)
        return fitting_drawing(before[1], pattern, name, self.lesson.units) if name else None

    def _measure(self) -> Iterator[None] | None:
        try:
            drawing = self._measured()
        except KitError:
            return None  # the plain one stays
        if drawing is not None and self._settled is not None:
            self.drawn_measured += 1
            self._settled(drawing)
        return None

    def close(self) -> None:
        self._measuring.drop()


def written(fitting: Fitting, parameters: tuple[Parameter, ...], system: System) -> str:
    """The line that records the fitting in a notebook."""
    kinds = {parameter.name: parameter.kind for parameter in parameters}
    lines = [repr(fitting.title), repr(fitting.why)]
    if fitting.date:
        lines.append(f"date={fitting.date!r}")
    lines += [_pair(change, kinds.get(change.parameter, "length"), system) for change in fitting.changes]
    inside = "".join(f"    {line},\n" for line in lines)
    return f"lesson.fitting(\n{inside})"


def _pair(change: Change, kind: str, system: System) -> str:
    def one(value: float) -> str:
        if kind != "length":
            return f"{value:.6g}"
        unit, size = ("cm", 10.0) if system == "cm" else ("inch", 25.4)
        return f"{round(value / size, 6):.8g} * {unit}"

    return f"{change.parameter}=({one(change.before)}, {one(change.after)})"


def _display(widget: Any, shown: bool) -> None:
    wanted = None if shown else "none"
    if widget.layout.display != wanted:
        widget.layout.display = wanted
