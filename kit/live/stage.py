"""The stage: one place in the notebook where a lesson is moved by sliders, dragged, and gone through step by step.

Its three views are the panel, the canvas and the player. They share values, body and units, which are the lesson's, and
the step, which the stage hands from view to view. A view is made when it is first asked for, and rests while another is
on show, so that a moved slider costs what one view costs. Shown large the stage fills the window; the panel gives way
there to one picture with its sentence and a few sliders (large.py).
"""

from __future__ import annotations

from functools import partial
from typing import Any

import anywidget
import ipywidgets as widgets
import traitlets

from kit.errors import KitError, near
from kit.language import say
from kit.lesson.cells import running_cell
from kit.lesson.lesson import Lesson
from kit.lesson.where import acting
from kit.live.canvas.widget import Canvas
from kit.live.followers import followers
from kit.live.large import Large, check_sliders
from kit.live.panel import Panel
from kit.live.player import Player
from kit.live.speech import in_words_of, spoken
from kit.resources import templates

VIEWS = ("panel", "canvas", "player")
WHOLE = ("", "", 0)
"""The place of the whole draft."""
_VIEW = "application/vnd.jupyter.widget-view+json"

ViewOnStage = Panel | Canvas | Player | Large
Place = tuple[str, str, int]


def stage(lesson: Lesson, *sliders: str, view: str = "panel") -> LessonStage:
    """`lesson` with everything in one place: its panel, its canvas and its player are views of one stage that share
    values, body and step, and it can fill the window for a class or a camera. `view` is the one on show first:
    "panel", "canvas" or "player". `sliders` name up to three parameters to have at hand when it is shown large (the
    first three when none is named). Raises `KitError` for something that is not a lesson, for another view, for a
    name that is no parameter and for more than three."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"a stage shows a lesson, not {type(lesson).__name__}.",
            do="Write stage(lesson), with the lesson's own name.",
        )
    if view not in VIEWS:
        raise KitError(f"there is no view '{view}'.", where="stage", do=near(str(view), VIEWS))
    check_sliders(lesson, sliders, "stage")
    with in_words_of(lesson):
        return LessonStage(lesson, sliders, view)


class StageBar(anywidget.AnyWidget):
    """The row of buttons over a stage: its views, and the whole window. `view` is the one on show, `large` whether it
    fills the window, `told` the step on show in words."""

    _esm = templates() / "live" / "stage.js"
    _css = templates() / "live" / "stage.css"

    words = traitlets.Dict().tag(sync=True)
    views: Any = traitlets.List().tag(sync=True)
    view = traitlets.Enum(VIEWS, default_value="panel").tag(sync=True)
    large = traitlets.Bool(False).tag(sync=True)
    told = traitlets.Unicode("").tag(sync=True)


class LessonStage(widgets.VBox):
    """The widget `stage` gives. `view` is the name of the view on show, `large` says whether the stage fills the
    window, `place` the step that was gone to last: (kind, key, picture), kind "draft" or "sew", ("", "", 0) for the
    whole draft. A view that cannot show it, as the panel a sewing step, shows the whole draft and hands it on. `panel`,
    `canvas` and `player` give the views themselves, made where they were not yet."""

    def __init__(self, lesson: Lesson, sliders: tuple[str, ...] = (), view: str = "panel") -> None:
        self.lesson = lesson
        self.place: Place = WHOLE
        self.cell, self._run = running_cell()
        self._names = sliders
        self._views: dict[str, ViewOnStage] = {}
        self._moving = False
        words = {key: say(f"stage.{key}") for key in ("views", "large", "leave", "help")}
        words["title"] = say("stage.title", lesson=lesson.info.title)
        self.bar = StageBar(words=words, views=[[name, say(f"stage.{name}")] for name in VIEWS], view=view)
        super().__init__()
        self.add_class("lessonkit-stage")
        for other in tuple(followers(lesson).panels):
            if isinstance(other, LessonStage) and self.cell and other.cell == self.cell and other._run != self._run:
                other.close()
        followers(lesson).panels.add(self)
        self.bar.observe(self._turned, ["view", "large"])
        self._show()

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        """The widget, and the still of the view on show for where no kernel runs."""
        given, shown = super()._repr_mimebundle_(**kwargs), self._on_show()._repr_mimebundle_(**kwargs)
        if given is None or shown is None:
            return given
        data, more = given if isinstance(given, tuple) else (given, {})
        still, told = shown if isinstance(shown, tuple) else (shown, {})
        kept = {kind: value for kind, value in still.items() if kind != _VIEW}
        return {**data, **kept}, {**more, **told}

    # ---- its views ----------------------------------------------------------------------------------------

    @property
    def view(self) -> str:
        """The view on show: "panel", "canvas" or "player"."""
        return str(self.bar.view)

    @view.setter
    def view(self, name: str) -> None:
        if name not in VIEWS:
            raise KitError(f"there is no view '{name}'.", where="stage", do=near(str(name), VIEWS))
        self.bar.view = name

    @property
    def large(self) -> bool:
        """Whether the stage fills the window."""
        return bool(self.bar.large)

    @property
    def panel(self) -> Panel:
        """The view with the sliders."""
        found = self._view("panel")
        assert isinstance(found, Panel)
        return found

    @property
    def canvas(self) -> Canvas:
        """The view in which the draft is dragged."""
        found = self._view("canvas")
        assert isinstance(found, Canvas)
        return found

    @property
    def player(self) -> Player:
        """The view that goes through the steps."""
        found = self._view("player")
        assert isinstance(found, Player)
        return found

    def _on_show(self) -> ViewOnStage:
        return self._view("large" if self.large and self.view == "panel" else self.view)

    def _view(self, name: str) -> ViewOnStage:
        """The view called so, made where it was not yet. It belongs to no cell of its own: the stage does."""
        made = self._views.get(name)
        if made is None:
            with acting(cell="", run=0), in_words_of(self.lesson):
                made = self._made(name)
            self._views[name] = made
            made.layout.display = "none"
            followers(self.lesson).rest(made)
            went = partial(self._went, made)
            if isinstance(made, Panel):
                made.view.observe(went, "value")
            else:
                made.observe(went, "step" if isinstance(made, Canvas) else "index")
            self.children = (self.bar, *self._views.values())
        return made

    def _made(self, name: str) -> ViewOnStage:
        if name == "canvas":
            return Canvas(self.lesson)
        if name == "player":
            return Player(self.lesson)
        return Large(self.lesson, self._names) if name == "large" else Panel(self.lesson)

    @spoken
    def _turned(self, _: Any) -> None:
        self._show()

    def _show(self) -> None:
        """Put the view on show there, at the step that was on show before, and let the others rest."""
        shown = self._on_show()
        rest = followers(self.lesson)
        for view in self._views.values():
            if view is not shown:
                view.layout.display = "none"
                rest.rest(view)
        rest.wake(shown)
        self._take_there(shown)
        shown.layout.display = None
        self._say()

    @spoken
    def _went(self, view: ViewOnStage, _: Any) -> None:
        """Somebody went to another step in `view`. What the page sent of it may arrive when another is on show by now:
        then that one follows."""
        if self._moving:
            return
        self.place = view.place
        if view is not self._on_show():
            self._take_there(self._on_show())
        self._say()

    def _take_there(self, view: ViewOnStage) -> None:
        """Let `view` show the step that was gone to last."""
        self._moving = True
        try:
            if view.place != self.place:
                view.go(self.place)
        finally:
            self._moving = False

    def _say(self) -> None:
        """The step on show in words, which the buttons stand beside."""
        kind, key, _ = self._on_show().place
        entries = [
            entry for entry in self.lesson.definition.entries if entry.kind == ("sew" if kind == "sew" else "step")
        ]
        at = next((n for n, entry in enumerate(entries, 1) if entry.name == key), 0)
        said = say("canvas.whole")
        if at:
            said = say("stage.at", step=say(f"player.step_{kind}", number=at), title=entries[at - 1].title)
        self.bar.told = said

    # ---- as a follower ------------------------------------------------------------------------------------

    def refresh(self, *, rewritten: bool = False) -> None:
        """The views follow by themselves; where steps were rewritten, the one on show may be gone."""
        if rewritten:
            with in_words_of(self.lesson):
                if self.place[1] and not any(entry.name == self.place[1] for entry in self.lesson.definition.entries):
                    self.place = WHOLE
                self._say()

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far. Its views are told by themselves."""
        followers(self.lesson).panels.discard(self)
        self.lesson = lesson
        followers(lesson).panels.add(self)
        shown = self._on_show()
        for view in self._views.values():
            if view is not shown:
                followers(lesson).rest(view)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take the stage and its views off the page and let the lesson forget them."""
        followers(self.lesson).panels.discard(self)
        for view in self._views.values():
            view.close()
        self.bar.close()
        super().close()
