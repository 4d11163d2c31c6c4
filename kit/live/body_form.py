"""A form for a body: measurements are typed beside a figure that shows where each tape goes.

What is left empty shows the estimate it will have, said to be estimated. Each entry keeps the unit it was typed
in; a bare number gets the unit chosen at the top. A slip is told beside its own box and the others go on.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from functools import partial
from html import escape
from pathlib import Path
from typing import Any

import ipywidgets as widgets

from kit.body.advice import advise
from kit.body.body import Body
from kit.body.chart import KEYS
from kit.body.check import check_body
from kit.body.file import load_body, save_body, units_of
from kit.body.make import make_body
from kit.body.measures import MEASUREMENTS, Measurement
from kit.diagnostic import as_value, list_of, message
from kit.errors import KitError
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.live import fragments
from kit.live.own_hand import OwnHand
from kit.live.speech import in_words_of
from kit.picture.figure import measuring_figure
from kit.units import System, both, parse, show

_FIGURE = 330.0


def body_form(lesson: Lesson) -> BodyForm:
    """A form to enter a body for `lesson`: use it, save it to a small file, load it again. Raises `KitError` for
    something that is not a lesson."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"a body form needs a lesson, not {type(lesson).__name__}.",
            do="Write body_form(lesson), with the lesson's own name.",
        )
    with in_words_of(lesson):
        return BodyForm(lesson)


class BodyForm(widgets.VBox):
    """The widget `body_form` gives. Its parts: `boxes` and `hints` by measurement name, `who`, `units`, `file`,
    `use`, `save`, `load`, `more` (show every measurement), `message`, `advice`. `body` is the body as entered,
    None while no girth is known."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.body: Body | None = None
        self.boxes: dict[str, widgets.Text] = {}
        self.hints: dict[str, widgets.HTML] = {}
        self.known: dict[str, Measurement] = {**MEASUREMENTS, **{one.name: one for one in lesson.sizes.own}}
        self._own_hand = OwnHand()
        self._build()
        super().__init__([self._head, self.message, self._middle, self.advice])
        self.add_class("lessonkit-body-form")
        if lesson.body.name not in lesson.sizes.names:
            self._fill(lesson.body)
        self._arrange()
        self._read()

    def _build(self) -> None:
        plain = {"width": "auto"}
        self.who = widgets.Text(
            value=say("panel.body_mine"),
            description=say("panel.body_name"),
            tooltip=say("panel.body_name_tip"),
            continuous_update=False,
            layout={"width": "220px"},
        )
        self.units = widgets.ToggleButtons(
            options=[(say("panel.units_cm"), "cm"), (say("panel.units_inch"), "inch")],
            value=self.lesson.units,
            tooltips=[say("panel.body_cm_tip"), say("panel.body_inch_tip")],
            style={"button_width": "56px"},
            layout={"width": "max-content", "margin": "2px 12px"},
        )
        self.more = widgets.Checkbox(
            value=False, indent=False, description=say("panel.body_more"), layout={"width": "auto"}
        )
        self.use, self.save, self.load = (
            widgets.Button(description=say(f"panel.body_{key}"), tooltip=say(f"panel.body_{key}_tip"), layout=plain)
            for key in ("use", "save", "load")
        )
        self.use.button_style = "primary"
        self.file = widgets.Text(
            value=say("panel.body_file_mine"),
            description=say("panel.body_file"),
            continuous_update=False,
            layout={"width": "240px"},
        )
        self.message = widgets.HTML()
        self.advice = widgets.HTML()
        wrap = {"flex_flow": "row wrap", "align_items": "center"}
        self._head = widgets.VBox(
            [
                widgets.HBox([self.who, self.units, self.more], layout=wrap),
                widgets.HBox([self.use, self.file, self.save, self.load], layout=wrap),
            ]
        )
        self._rows: dict[str, widgets.VBox] = {}
        for name, row in self.known.items():
            box = widgets.Text(
                description=row.said.capitalize(),
                tooltip=row.note,
                placeholder=say("panel.body_empty"),
                continuous_update=False,
                style={"description_width": "168px"},
                layout={"width": "330px", "margin": "0"},
            )
            box.observe(self._guarded(partial(self._typed, name)), "value")
            hint = widgets.HTML(layout={"margin": "2px 0 0 0", "width": "330px"})
            self.boxes[name], self.hints[name] = box, hint
            self._rows[name] = widgets.VBox([box, hint], layout={"margin": "0 0 6px 0", "flex": "0 0 auto"})
        self._list = widgets.VBox(
            layout={"width": "360px", "max_height": "640px", "overflow": "hidden auto", "flex": "0 0 auto"}
        )
        self._figure = widgets.HTML()
        self._middle = widgets.HBox([self._list, self._figure], layout={"align_items": "flex-start"})
        self.who.observe(self._guarded(lambda _: self._read()), "value")
        self.units.observe(self._guarded(lambda _: self._read()), "value")
        self.more.observe(self._guarded(lambda _: self._arrange()), "value")
        self.use.on_click(self._guarded(lambda _: self._use()))
        self.save.on_click(self._guarded(lambda _: self._save()))
        self.load.on_click(self._guarded(lambda _: self._load()))

    def _guarded(self, act: Callable[[Any], None]) -> Callable[[Any], None]:
        """`act`, with whatever goes wrong told in words."""

        def guarded(change: Any) -> None:
            if self._own_hand:
                return
            with in_words_of(self.lesson):
                try:
                    act(change)
                except Exception as error:
                    self._tell(fragments.plain(error))

        return guarded

    def _tell(self, text: str, good: bool = False) -> None:
        self.message.value = fragments.notes([text]) if good else fragments.message(text)

    # ---- what is shown ------------------------------------------------------------------------------------

    @property
    def shown(self) -> tuple[str, ...]:
        """The measurements shown: those the lesson uses, the girths a size is found by and the height; or all."""
        if self.more.value:
            return tuple(self.known)
        used = {*self.lesson.measures, *self.lesson.sizes.keys, "height"}
        used |= {name for name, box in self.boxes.items() if box.value.strip()}
        return tuple(name for name in self.known if name in used)

    def _arrange(self) -> None:
        names = self.shown
        for number, name in enumerate(names, 1):
            self.boxes[name].description = f"{number}  {self.known[name].said.capitalize()}"
        self._list.children = [self._rows[name] for name in names]
        drawn = [name for name in names if name in MEASUREMENTS]  # a lesson's own come last, and have no tape
        pictures = [fragments.picture(measuring_figure(drawn, view), _FIGURE) for view in ("front", "back")]
        self._figure.value = f'<div style="display:flex;flex-wrap:wrap;gap:8px">{"".join(pictures)}</div>'

    def _read(self) -> None:
        """Work out the body from what is typed, and show estimates, checks and advice."""
        system: System = self.units.value
        good: dict[str, str] = {}
        wrong: dict[str, str] = {}
        for name, box in self.boxes.items():
            if not box.value.strip():
                continue
            try:
                self.known[name].plausible(float(parse(box.value, system)))
                good[name] = box.value
            except KitError as error:
                wrong[name] = f"{error.what} {error.do}"
        self.body, trouble = None, ""
        try:
            self.body = make_body(good, self.lesson.sizes, self.who.value.strip() or say("panel.body_mine"))
        except KitError as error:
            trouble = str(error) if good else ""
        for name in self.boxes:
            self._show_row(name, wrong.get(name, ""), system)
        self._tell(trouble)
        self._show_advice(system)

    def _show_row(self, name: str, wrong: str, system: System) -> None:
        # Only the hint changes: a change to the box itself would wipe what is being typed in it just then.
        hint, row = self.hints[name], self.known[name]
        value = self.body[name] if self.body is not None and name in self.body else None
        guessed = self.body is not None and name in {measure.name for measure in self.body.estimated}
        if wrong:
            hint.value = f'<div style="font-size:12px;line-height:1.3;color:#b3541e">{escape(wrong)}</div>'
            return
        said = escape(row.note)
        if value is not None:
            key = "panel.body_estimated" if guessed else "panel.body_value"
            said = f"<strong>{escape(say(key, value=both(value, system)))}</strong> {said}"
        hint.value = f'<div style="font-size:12px;line-height:1.3;opacity:.8">{said}</div>'

    def _show_advice(self, system: System) -> None:
        if self.body is None or not any(key in KEYS for key in self.lesson.sizes.keys):
            self.advice.value = ""
            return
        doubts = "".join(fragments.message(str(doubt)) for doubt in check_body(self.body, system))
        self.advice.value = doubts + fragments.notes(advise(self.body, self.lesson.sizes, system).sentences)

    # ---- what people do -----------------------------------------------------------------------------------

    def _typed(self, name: str, _: object) -> None:
        """A bare number gets its unit, so that switching units later does not change what was typed."""
        box, system = self.boxes[name], self.units.value
        text = box.value.strip()
        if text:
            try:
                parse(text)
            except KitError:
                unit = "in" if system == "inch" else "cm"
                try:
                    parse(f"{text} {unit}")
                    self._own_hand.put(box, value=f"{text} {unit}")
                except KitError:
                    pass  # told beside the box
        self._read()

    def _entered(self) -> Body:
        self._read()
        wrong = [name for name, box in self.boxes.items() if box.value.strip() and not self._is_measured(name)]
        if wrong:
            raise KitError(
                message(
                    "body.box_unusable", measures=list_of([as_value(self.known[name].told) for name in wrong], "string")
                ),
                do=message("body.box_unusable_do"),
            )
        if self.body is None:
            raise KitError(message("body.no_girth_yet"), do=message("body.no_girth_do"))
        return self.body

    def _is_measured(self, name: str) -> bool:
        return self.body is not None and any(m.name == name and not m.estimated for m in self.body.measures)

    def _use(self) -> None:
        body = self._entered()
        if body.name in self.lesson.sizes.names:
            raise KitError(
                message("body.name_of_size", name=body.name),
                where=message("body.where_name"),
                do=message("body.name_of_size_do"),
            )
        self.lesson.choose(body=body)
        self._tell(say("panel.body_used", name=body.name), good=True)

    def _save(self) -> None:
        body, path = self._entered(), self._path()
        if path.exists():
            try:
                load_body(path, self.lesson.sizes)
            except KitError:
                raise KitError(
                    message("body.other_file"),
                    where=str(path),
                    do=message("body.other_file_do"),
                ) from None
        save_body(path, body, self.units.value)
        code = f"lesson.choose(body=load_body({str(path)!r}))"
        self._tell(say("panel.body_saved_code", path=str(path), code=code), good=True)

    def _load(self) -> None:
        path = self._path()
        body, units = load_body(path, self.lesson.sizes), units_of(path)
        self._own_hand.put(self.units, value=units)
        self._fill(body)
        self._arrange()
        self._read()
        self._tell(say("panel.body_loaded", name=body.name, path=str(path)), good=True)

    def _path(self) -> Path:
        name = self.file.value.strip()
        if not name:
            raise KitError(
                message("body.file_no_name"), where=message("body.where_file"), do=message("body.file_no_name_do")
            )
        path = Path(os.path.expanduser(name))
        if path.suffix.lower() != ".toml":
            path = path.with_name(path.name + ".toml")
            self._own_hand.put(self.file, value=str(path))
        return path

    def _fill(self, body: Body) -> None:
        """Put the measured values of `body` into the boxes."""
        system: System = self.units.value
        texts = {m.name: m.typed or show(m.value, system) for m in body.measures if not m.estimated}
        self._own_hand.put(self.who, value=body.name)
        for name, box in self.boxes.items():
            self._own_hand.put(box, value=texts.get(name, ""))
