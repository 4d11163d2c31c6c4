"""The panel: sliders beside the draft.

A move changes the lesson's value, and the draft is worked and drawn again from the start as soon as all waiting
moves are in. Saving and the proof wait until the sliders rest. Whatever cannot be drafted is said in a box; the
last good picture stays, dimmed, until the value is moved back.
"""

from __future__ import annotations

import atexit
import os
from collections.abc import Iterator
from typing import Any
from weakref import WeakSet

import ipywidgets as widgets

from kit.body.measures import said
from kit.errors import KitError
from kit.lesson.cells import running_cell
from kit.lesson.pattern import Pattern
from kit.lesson.working import work
from kit.live import fragments
from kit.live.lesson import Lesson
from kit.live.pace import Latest, Settled
from kit.live.row import Row
from kit.picture.draft import bench_drawing, step_drawing
from kit.picture.drawing import Drawing
from kit.units import Length

_SAVE_AFTER = 0.5  # seconds of rest
_CHECK_AFTER = 0.35
_WIDTH, _HEIGHT = 760.0, 560.0
_OWN_BODY = "\0own"

View = tuple[str, str]
_DRAFT: View = ("draft", "")


def panel(lesson: Lesson) -> Panel:
    """Sliders for the parameters of `lesson`, its size and units, beside the draft that follows them. Values
    are kept in the lesson's sidecar file. Raises `KitError` for something that is not a lesson."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"a panel shows a lesson, not {type(lesson).__name__}.",
            do="Write panel(lesson), with the lesson's own name.",
        )
    return Panel(lesson)


class Panel(widgets.VBox):
    """The widget `panel` gives. Its parts: `rows` by parameter name (each with `slider` and `box`), `size`,
    `units`, `view`, `reset`, `picture`, `message`, `notes`, `finished`, `proof`."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.rows: dict[str, Row] = {}
        self.drawn = 0
        self.pattern: Pattern | None = None
        self.cell, _ = running_cell()
        self._body = lesson.body
        self._busy = False
        self._rewritten = True
        self._said = ""
        self._good = ""
        self._measured = ""
        self._latest = Latest(self._draw)
        self._saving = Settled(self._save, _SAVE_AFTER)
        self._checking = Settled(self._check, _CHECK_AFTER)
        self._build()
        super().__init__([self._head, self.notes, self._body_box])
        self.add_class("lessonkit-panel")
        self.picture.add_class("lessonkit-picture")
        for other in tuple(lesson.panels):
            if self.cell and other.cell == self.cell:
                other.close()
        lesson.panels.add(self)
        _open.add(self)
        self._draw()

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: values, or (`rewritten`) steps and parameters. A build has no use for the panel."""
        self._rewritten |= rewritten
        if not os.environ.get("LESSONKIT_BUILD"):
            self._latest.ask()

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far."""
        self.lesson.panels.discard(self)
        self.lesson = lesson
        lesson.panels.add(self)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take the panel off the page and let the lesson forget it."""
        if self._saving.pending:
            self._saving.now()
        self._checking.drop()
        self.lesson.panels.discard(self)
        _open.discard(self)
        super().close()

    # ---- parts --------------------------------------------------------------------------------------------

    def _build(self) -> None:
        wide = {"description_width": "initial"}
        self.size = widgets.Dropdown(
            description="Size", style=wide, layout={"width": "auto"}, tooltip="The size the lesson is drafted in"
        )
        self.units = widgets.ToggleButtons(
            options=[("cm", "cm"), ("inch", "inch")],
            value=self.lesson.units,
            tooltips=["Centimetres first", "Inches first"],
            style={"button_width": "56px"},
            layout={"width": "max-content", "margin": "2px 12px 2px 4px"},
        )
        self.reset = widgets.Button(
            description="Reset values", tooltip="Put every value back to the lesson's own", layout={"width": "auto"}
        )
        self.view = widgets.Dropdown(
            description="Show",
            options=[("The draft", _DRAFT)],
            value=_DRAFT,
            style=wide,
            layout={"width": "auto", "max_width": "420px"},
            tooltip="What the picture shows",
        )
        self.notes = widgets.HTML()
        self.message = widgets.HTML()
        self.picture = widgets.HTML(layout={"min_height": "200px"})
        self.finished = widgets.HTML()
        self.proof = widgets.HTML()
        self._sliders = widgets.VBox(
            layout={
                "width": "356px",
                "max_height": "720px",
                "overflow": "hidden auto",
                "flex": "0 0 auto",
                "margin": "0 24px 0 0",
            }
        )
        self._head = widgets.HBox(
            [self.size, widgets.Label("Units", layout={"margin": "2px 0 2px 12px"}), self.units, self.view, self.reset],
            layout={"flex_flow": "row wrap", "align_items": "center"},
        )
        beside = widgets.VBox(
            [self.picture, self.message, widgets.HBox([self.finished, self.proof], layout={"flex_flow": "row wrap"})],
            layout={"flex": "1 1 300px", "min_width": "0"},
        )
        self.finished.layout.margin = "0 40px 0 0"
        self._body_box = widgets.HBox([self._sliders, beside], layout={"align_items": "flex-start"})
        self.size.observe(self._sized, "value")
        self.units.observe(self._turned, "value")
        self.view.observe(self._viewed, "value")
        self.reset.on_click(self._put_back)

    def _furnish(self) -> None:
        """Rows, sizes and views as the lesson has them now."""
        lesson = self.lesson
        values = lesson.values
        if [row.parameter for row in self.rows.values()] != list(lesson.parameters):
            old, self.rows = self.rows, {}
            for parameter in lesson.parameters:
                row = old.get(parameter.name)
                if row is None or row.parameter != parameter:
                    row = Row(parameter, values[parameter.name], lesson.units, self._slid, self._refused)
                self.rows[parameter.name] = row
            self._sliders.children = [row.widget for row in self.rows.values()]
            for row in old.values():
                if row not in self.rows.values():
                    row.close()
        steps = [e for e in lesson.definition.entries if e.kind == "step"]
        views: list[tuple[str, View]] = [("The draft", _DRAFT)]
        views += [(f"Step {n}: {e.title}", ("step", e.name)) for n, e in enumerate(steps, 1)]
        views += [("Laid flat, front", ("flat", "front")), ("Laid flat, back", ("flat", "back"))]
        if list(self.view.options) != views:
            kept = self.view.value
            self._set(self.view, options=views)
            self._set(self.view, value=kept if kept in [v for _, v in views] else _DRAFT)

    def _set(self, part: Any, **traits: Any) -> None:
        self._busy = True
        try:
            for name, value in traits.items():
                setattr(part, name, value)
        finally:
            self._busy = False

    # ---- what people do -----------------------------------------------------------------------------------

    def _slid(self, name: str, value: float) -> None:
        kind = self.rows[name].parameter.kind
        self._said = ""
        try:
            self.lesson.change(**{name: Length(value) if kind == "length" else value})
        except KitError as error:
            self._refused(error)
            return
        self._saving.ask()

    def _refused(self, error: KitError) -> None:
        self._said = str(error)
        self.message.value = fragments.message(self._said)

    def _sized(self, change: Any) -> None:
        if self._busy or change.new is None:
            return
        self._said = ""
        if change.new == _OWN_BODY:
            self.lesson.choose(body=self._body)
        else:
            self.lesson.choose(size=change.new)
        self._saving.ask()

    def _turned(self, change: Any) -> None:
        if not self._busy and change.new in ("cm", "inch"):
            self.lesson.choose(units=change.new)
            self._saving.ask()

    def _viewed(self, change: Any) -> None:
        if not self._busy:
            self.refresh()

    def _put_back(self, _: Any) -> None:
        self._said = ""
        self.lesson.reset()
        self._saving.ask()

    # ---- drawing ------------------------------------------------------------------------------------------

    def _draw(self) -> None:
        rewritten, self._rewritten = self._rewritten, False
        if rewritten:
            self._furnish()
        trouble = self._said
        try:
            pattern, open_outline = self._worked(rewritten)
            trouble = trouble or open_outline
            self._good = fragments.picture(self._drawing(pattern), _WIDTH, _HEIGHT)
            self.pattern = pattern
            self.drawn += 1
            self.picture.value = self._good
            self._measured = fragments.finished(pattern.finished, self.lesson.units)
            self.finished.value = self._measured
            if open_outline:
                self._checking.drop()
                self.proof.value = ""
            else:
                self._ask_proof()
        except Exception as error:  # whatever happens, the slider keeps working and the reader is told
            trouble = fragments.plain(error)
            self.pattern = None
            self.picture.value = fragments.dimmed(self._good) if self._good else ""
            self.finished.value = fragments.dimmed(self._measured) if self._measured else ""
            self._checking.drop()
            self.proof.value = ""
        self.message.value = fragments.message(trouble)
        self._show_choices()

    def _worked(self, rewritten: bool) -> tuple[Pattern, str]:
        """The pattern, and what is still open in it. While a lesson is being written its outlines may stand
        open between one step and the next; a moved slider gets no such leave."""
        lesson = self.lesson
        try:
            return lesson.work(), ""
        except KitError as error:
            if self._good and not rewritten:
                raise
            return work(lesson.definition, lesson.body, lesson.values, whole=False), fragments.plain(error)

    def _drawing(self, pattern: Pattern) -> Drawing:
        kind, name = self.view.value
        system = self.lesson.units
        if kind == "step":
            for record in pattern.steps:
                if record.key == name:
                    return step_drawing(record, system)
        if kind == "flat":
            from kit.picture.flat import laid_flat

            return laid_flat(pattern, "front" if name == "front" else "back")
        return bench_drawing(pattern, system)

    def _show_choices(self) -> None:
        """Rows, size and units as the lesson has them, whoever changed them."""
        lesson = self.lesson
        values = lesson.values
        for name, row in self.rows.items():
            if name in values:
                row.show(values[name], lesson.units)
        names = list(lesson.sizes.names)
        own = lesson.body.name not in names
        if own:
            self._body = lesson.body
        options = [(name, name) for name in names]
        if self._body.name not in names:
            options.append((f"{self._body.name} (own measurements)", _OWN_BODY))
        if list(self.size.options) != options:
            self._set(self.size, options=options)
        chosen = _OWN_BODY if own else lesson.body.name
        if self.size.value != chosen:
            self._set(self.size, value=chosen)
        if self.units.value != lesson.units:
            self._set(self.units, value=lesson.units)

    # ---- when the sliders rest ----------------------------------------------------------------------------

    def _save(self) -> None:
        try:
            self.lesson.save()
        except KitError as error:
            self._refused(error)

    def _ask_proof(self) -> None:
        waiting = fragments.checking()
        if self.proof.value != waiting:
            self.proof.value = waiting
        self._checking.ask()

    def _estimates(self) -> str:
        body, used = self.lesson.body, self.lesson.measures
        names = ", ".join(said(measure.name) for measure in body.estimated if measure.name in used)
        return f"Estimated from the size chart for {body.name}, not measured: {names}." if names else ""

    def _check(self) -> Iterator[None]:
        pattern = self.pattern
        if pattern is None:
            return
        stale = self.lesson.stale()
        names = ", ".join(f"“{title}”" for title in stale)
        gone = (
            f"The cell of {names} is not in the saved notebook. If you deleted it, restart the kernel and run all "
            "cells; if it is new, save the notebook."
            if stale
            else ""
        )
        self.notes.value = fragments.notes([self.lesson.saved.trouble, gone, self._estimates()])
        yield
        try:
            from kit.proof import prove

            self.proof.value = fragments.findings(prove(pattern), pattern, self.lesson.units)
        except Exception as error:  # the proof must not take the panel down
            self.proof.value = fragments.message(fragments.plain(error))


_open: WeakSet[Panel] = WeakSet()


@atexit.register
def _save_all() -> None:
    """A kernel that is restarted just after a move still keeps the move."""
    for one in tuple(_open):
        if one._saving.pending:
            one._saving.now()
