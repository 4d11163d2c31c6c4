"""The head of the panel: size, units and view, and the values as a whole: presets, undo and redo, reset."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import ipywidgets as widgets

from kit.body.body import Body
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.lesson.presets import same_values
from kit.live.beside import beside
from kit.live.own_hand import OwnHand

_OWN_BODY = "\0own"
_NONE, _DEFAULT, _OPENED = "", "\0default", "\0opened"
_WIDE = {"description_width": "initial"}

View = tuple[str, str]
DRAFT: View = ("draft", "")


class Choices:
    """`widget` and its parts `size`, `units`, `view`, `preset`, `reset`, `undo`, `redo`. `changed` is called when the
    lesson has been changed here and is to be saved, `viewed` when something else is to be shown; `guarded` wraps what
    people do."""

    def __init__(
        self,
        lesson: Lesson,
        changed: Callable[[], None],
        viewed: Callable[[], None],
        guarded: Callable[[Callable[[], None]], Callable[[Any], None]],
    ) -> None:
        self.lesson = lesson
        self._body = lesson.body
        self._changed = changed
        self._own_hand = OwnHand()
        self._build()
        self._hear(viewed, guarded)
        self._wrap = {"flex_flow": "row wrap", "align_items": "center"}
        self.first = widgets.HBox(
            [
                self.size,
                widgets.Label(say("panel.units"), layout={"margin": "2px 0 2px 12px"}),
                self.units,
                self.view,
            ],
            layout=self._wrap,
        )

    def second(self, *more: Any) -> widgets.HBox:
        """The row of the values as a whole, with what else belongs there."""
        return widgets.HBox([self.preset, self.reset, self.undo, self.redo, *more], layout=self._wrap)

    def _build(self) -> None:
        def button(key: str, icon: str = "") -> widgets.Button:
            return widgets.Button(
                description=say(f"panel.{key}"), tooltip=say(f"panel.{key}_tip"), icon=icon, layout={"width": "auto"}
            )

        def dropdown(key: str, **more: Any) -> widgets.Dropdown:
            return widgets.Dropdown(
                description=say(f"panel.{key}"), tooltip=say(f"panel.{key}_tip"), style=_WIDE, **more
            )

        self.size = dropdown("size", layout={"width": "auto"})
        self.units = widgets.ToggleButtons(
            options=[(say("panel.units_cm"), "cm"), (say("panel.units_inch"), "inch")],
            value=self.lesson.units,
            tooltips=[say("panel.units_cm_tip"), say("panel.units_inch_tip")],
            style={"button_width": "56px"},
            layout={"width": "max-content", "margin": "2px 12px 2px 4px"},
        )
        self.view = dropdown(
            "view",
            options=[(say("panel.view_draft"), DRAFT)],
            value=DRAFT,
            layout={"width": "auto", "max_width": "420px"},
        )
        self.preset = dropdown(
            "preset",
            options=[(say("panel.preset_none"), _NONE)],
            value=_NONE,
            layout={"width": "300px"},  # a fixed width: the buttons beside it stay where they are
        )
        self.reset, self.undo, self.redo = button("reset"), button("undo", "undo"), button("redo", "repeat")

    def _hear(self, viewed: Callable[[], None], guarded: Callable[[Callable[[], None]], Callable[[Any], None]]) -> None:
        def unless_busy(act: Callable[[], None]) -> Callable[[Any], None]:
            hears = guarded(act)
            return lambda change: None if self._own_hand else hears(change)

        self.size.observe(unless_busy(self._sized), "value")
        self.units.observe(unless_busy(self._turned), "value")
        self.view.observe(unless_busy(viewed), "value")
        self.preset.observe(unless_busy(self._preset), "value")
        self.reset.on_click(guarded(self._put_back))
        self.undo.on_click(guarded(lambda: self._step(self.lesson.undo)))
        self.redo.on_click(guarded(lambda: self._step(self.lesson.redo)))

    # ---- what people do -----------------------------------------------------------------------------------

    def _sized(self) -> None:
        if self.size.value is not None:
            if self.size.value == _OWN_BODY:
                self.lesson.choose(body=self._body)
            else:
                self.lesson.choose(size=self.size.value)
            self._changed()

    def _turned(self) -> None:
        if self.units.value in ("cm", "inch"):
            self.lesson.choose(units=self.units.value)
            self._changed()

    def _preset(self) -> None:
        chosen = self.preset.value
        if chosen == _NONE:
            self.show()  # it says how the sliders stand, which choosing it does not change
            return
        try:
            if chosen == _DEFAULT:
                beside(self.lesson).put(self.lesson.definition.defaults)
            elif chosen == _OPENED:
                beside(self.lesson).put(self.lesson.sitting.opened_values(self.lesson.parameters))
            else:
                self.lesson.use_preset(chosen)
            self._changed()
        finally:
            self.show()

    def _put_back(self) -> None:
        self.lesson.reset()
        self._changed()

    def _step(self, step: Callable[[], bool]) -> None:
        if step():
            self._changed()
        self.show()

    # ---- as the lesson has it -----------------------------------------------------------------------------

    def furnish(self) -> None:
        """Views and presets as the lesson has them now."""
        steps = [e for e in self.lesson.definition.entries if e.kind == "step"]
        views: list[tuple[str, View]] = [(say("panel.view_draft"), DRAFT)]
        views += [(say("panel.view_step", number=n, title=e.title), ("step", e.name)) for n, e in enumerate(steps, 1)]
        views += [(say(f"panel.view_flat_{side}"), ("flat", side)) for side in ("front", "back")]
        views.append((say("panel.view_worn"), ("flat", "worn")))
        if list(self.view.options) != views:
            kept = self.view.value
            self._own_hand.put(self.view, options=views)
            self._own_hand.put(self.view, value=kept if kept in [v for _, v in views] else DRAFT)
        presets = [(say(f"panel.preset_{key[1:] or 'none'}"), key) for key in (_NONE, _DEFAULT, _OPENED)]
        presets += [(preset.title, preset.title) for preset in self.lesson.presets]
        if list(self.preset.options) != presets:
            self._own_hand.put(self.preset, options=presets)

    def show(self) -> None:
        """Size, units, preset and what can be undone as the lesson has them, whoever changed them."""
        lesson = self.lesson
        names = list(lesson.sizes.names)
        own = lesson.body.name not in names
        if own:
            self._body = lesson.body
        options = [(name, name) for name in names]
        if self._body.name not in names:
            options.append((say("panel.own_measurements", name=self._body.name), _OWN_BODY))
        if list(self.size.options) != options:
            self._own_hand.put(self.size, options=options)
        self.size.layout.display = "" if lesson.measures else "none"  # a bag has one size
        chosen = _OWN_BODY if own else lesson.body.name
        if self.size.value != chosen:
            self._own_hand.put(self.size, value=chosen)
        if self.units.value != lesson.units:
            self._own_hand.put(self.units, value=lesson.units)
        standing = self._standing()
        if self.preset.value != standing:
            self._own_hand.put(self.preset, value=standing)
        left = self.left_by_last_session
        said = say("panel.fresh" if left else "panel.reset")
        if self.reset.description != said:
            self.reset.description = said
            self.reset.tooltip = say("panel.fresh_tip" if left else "panel.reset_tip")
        history = beside(lesson).history
        for part, can in ((self.undo, history.can_undo), (self.redo, history.can_redo)):
            if part.disabled == can:
                part.disabled = not can

    @property
    def left_by_last_session(self) -> bool:
        """Whether the values are those that the last session left, and not the lesson's own."""
        lesson = self.lesson
        names = [p.name for p in lesson.parameters]
        opened = lesson.sitting.opened_values(lesson.parameters)
        return same_values(lesson.values, opened, names) and not same_values(
            opened, {p.name: p.default for p in lesson.parameters}, names
        )

    @property
    def body(self) -> Body:
        """The body of one's own that can be chosen, or the lesson's."""
        return self._body

    def _standing(self) -> str:
        """The preset whose values these are; the one chosen last, where two have the same."""
        lesson, values, names = self.lesson, self.lesson.values, [p.name for p in self.lesson.parameters]
        defaults = {p.name: p.default for p in lesson.parameters}

        def stands(key: str) -> bool:
            if key == _DEFAULT:
                return same_values(values, defaults, names)
            if key == _OPENED:
                return same_values(values, lesson.sitting.opened_values(lesson.parameters), names)
            preset = next((one for one in lesson.presets if one.title == key), None)
            return preset is not None and same_values(values, {**defaults, **dict(preset.named)}, names)

        keys = [key for _, key in self.preset.options if key != _NONE]
        chosen = self.preset.value
        return next((key for key in sorted(keys, key=lambda key: key != chosen) if stands(key)), _NONE)
