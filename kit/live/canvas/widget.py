"""The canvas as a widget: it joins the lesson to `templates/live/canvas.js`.

The browser asks for a value and waits for the answer before it asks again, so moves never queue; between answers it
moves the lines itself. `answer` carries the exact numbers, `slopes` how they change with each handle's value, found
when the values have come to rest. Whoever changes the lesson, panel or code, the canvas follows.
"""

from __future__ import annotations

import atexit
from array import array
from collections.abc import Iterator
from dataclasses import replace
from typing import Any
from weakref import WeakSet

import anywidget
import traitlets

from kit.errors import KitError
from kit.geometry import Vector
from kit.language import say
from kit.lesson.cells import running_cell
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.lesson.where import here
from kit.lesson.working import work
from kit.live import fragments
from kit.live.beside import beside
from kit.live.canvas.handles import Handle, Probe, chosen, on_scale, probes
from kit.live.canvas.menu import menu_answer, menu_words, refused
from kit.live.canvas.sewn import Fates, fates
from kit.live.canvas.shown import LAYERS, SHOWN_FIRST, View
from kit.live.canvas.state import canvas_state, ink
from kit.live.followers import followers
from kit.live.pace import Latest, Settled
from kit.live.speech import in_words_of
from kit.live.still import with_still
from kit.picture.draft import bench_drawing, step_drawing
from kit.picture.theme import THEME
from kit.piece.piece import Piece
from kit.resources import templates
from kit.units import Length
from kit.wording.lists import two_sentences

_SCRIPTS = ("write_cell.js", "canvas_menu.js", "canvas.js")
_SAVE_AFTER = 0.5  # seconds of rest
_HANDLES_AFTER = 0.2
_STILL = (760.0, 560.0)
_WORDS = ("help", "show", "nearer", "farther", "fit", "undo", "redo", "layers", "silent") + tuple(
    f"grid_{unit}" for unit in ("cm", "cm_far", "inch", "inch_far")
)


def canvas(lesson: Lesson) -> Canvas:
    """The draft of `lesson` to look at closely and to drag: every length and share that moves a line has a handle.
    Values are kept in the lesson's sidecar file. Raises `KitError` for something that is not a lesson."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"a canvas shows a lesson, not {type(lesson).__name__}.",
            do="Write canvas(lesson), with the lesson's own name.",
        )
    return Canvas(lesson)


class Canvas(anywidget.AnyWidget):
    """The widget `canvas` gives. `step` is the key of the step shown ("" is the whole draft), `layers` those switched
    on. `selected` is what was chosen by click or Enter: a list of {"kind": "piece", "edge" or "point", "piece": its
    piece's name, "name": its own}, in the order chosen; observe it to act on a choice. `drawing` says whether the Draw
    menu is open, `draft` is what it shows."""

    _esm = "\n".join((templates() / "live" / name).read_text(encoding="utf-8") for name in _SCRIPTS)
    _css = templates() / "live" / "canvas.css"

    step = traitlets.Unicode("").tag(sync=True)
    layers = traitlets.List(traitlets.Unicode(), default_value=sorted(SHOWN_FIRST)).tag(sync=True)
    selected = traitlets.List(traitlets.Dict()).tag(sync=True)
    steps: Any = traitlets.List().tag(sync=True)
    words = traitlets.Dict().tag(sync=True)
    ink = traitlets.Dict().tag(sync=True)
    scene = traitlets.Dict().tag(sync=True)
    answer = traitlets.Dict().tag(sync=True)
    slopes = traitlets.Dict().tag(sync=True)
    drawing = traitlets.Bool(False).tag(sync=True)
    draft = traitlets.Dict().tag(sync=True)

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.pattern: Pattern | None = None
        self.handles: tuple[Handle, ...] = ()
        self.cell, self._run = running_cell()
        self._places: tuple[tuple[str, Vector], ...] = ()
        self._block: tuple[Any, tuple[Piece, ...]] = (None, ())
        self._fate: tuple[Any, Fates] = (None, {})
        self._turn = 0
        self._draft = 0
        self._held = ""
        self._own = False
        self._rewritten = True
        self._message = ""
        self._latest = Latest(self._draw)
        self._saving = Settled(self._save, _SAVE_AFTER)
        self._finding = Settled(self._find_handles, _HANDLES_AFTER)
        super().__init__(words=_words(lesson), ink=ink(THEME))
        for other in tuple(followers(lesson).canvases):
            if isinstance(other, Canvas) and self.cell and other.cell == self.cell and other._run != self._run:
                other.close()
        followers(lesson).canvases.add(self)
        _open.add(self)
        self.on_msg(self._heard)
        self.observe(self._looked, ["step", "layers", "drawing"])
        if not here().unseen:
            self._draw()

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        """The widget, and a still of the draft for where no kernel runs."""
        given = super()._repr_mimebundle_(**kwargs)
        if self.pattern is None:
            return given
        record = next((step for step in self.pattern.steps if step.key == self.step), None)
        system = self.lesson.units
        drawing = step_drawing(record, system) if record is not None else bench_drawing(self.pattern, system)
        return with_still(given, [fragments.picture(drawing, *_STILL)], self.words["title"])

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: values, or (`rewritten`) steps and parameters. It is drawn where somebody looks on."""
        self._rewritten |= rewritten
        if not self._own and not here().unseen:
            self._latest.ask()

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far."""
        followers(self.lesson).canvases.discard(self)
        self.lesson = lesson
        followers(lesson).canvases.add(self)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take the canvas off the page and let the lesson forget it."""
        if self._saving.pending:
            self._saving.now()
        self._finding.drop()
        followers(self.lesson).canvases.discard(self)
        _open.discard(self)
        super().close()

    @property
    def place(self) -> tuple[str, str, int]:
        """Kind, key and number of the picture on show; ("", "", 0) for the whole draft."""
        return ("draft", self.step, 1) if self.step else ("", "", 0)

    def go(self, place: tuple[str, str, int]) -> None:
        """Show the drafting step at `place`; the whole draft for any other."""
        kind, key, _ = place
        self.step = key if kind == "draft" and any(key == name for name, _ in self.steps) else ""

    # ---- what people do -----------------------------------------------------------------------------------

    def _heard(self, _: Any, content: Any, buffers: Any) -> None:
        """A message of the browser: {"do": "move", "name", "value", "turn", "last"}, {"do": "rest"} when the keys
        of a handle have come to rest, {"do": "undo"} or "redo", {"do": "draft", ...} of the Draw menu."""
        if not isinstance(content, dict):
            return
        do = content.get("do")
        if do == "move":
            self.move(
                str(content.get("name", "")),
                content.get("value"),
                turn=int(content.get("turn", 0)),
                last=bool(content.get("last", True)),
            )
        elif do == "draft":
            self.propose(content)
        elif do == "rest":
            self._held = ""
            beside(self.lesson).history.seal()
            self._settle()
        elif do in ("undo", "redo"):
            self._message = ""
            if not (self.lesson.undo() if do == "undo" else self.lesson.redo()):
                self._draw()
            self._saving.ask()

    def move(self, name: str, value: object, *, turn: int = 0, last: bool = True) -> None:
        """A handle asks for a value (mm or share). It is rounded to the slider's step and held inside the range; one
        that cannot be drafted is refused in words and the lesson keeps what it had. `turn` counts the asking;
        `last` is false while the handle is held."""
        lesson = self.lesson
        self._turn = turn or self._turn + 1
        self._finding.drop()
        parameter = next((p for p in lesson.parameters if p.name == name), None)
        if parameter is None or not isinstance(value, int | float) or value != value:
            self._draw()
            return
        if self._held != name:
            beside(lesson).history.seal()
        self._held = "" if last else name
        exact = on_scale(parameter, lesson.units, float(value))
        self._message = ""
        if exact != lesson.values[name]:
            try:
                pattern = lesson.work(values={**lesson.values, name: exact})
            except Exception as error:
                self._message = fragments.plain(error)
                self._say(self._message, stale=False)
            else:
                self._own = True
                try:
                    lesson.change(**{name: Length(exact) if parameter.kind == "length" else exact})
                    followers(lesson).hand(lesson, pattern)
                finally:
                    self._own = False
                self.pattern = pattern
                self._answer()
                self._saving.ask()
        else:
            self._answer()
        if last:
            beside(lesson).history.seal()
            self._settle()

    def propose(self, asked: dict[str, Any]) -> None:
        """Fill the Draw menu for what is `asked` (see `menu_answer`). The lesson stays as it is."""
        if self.pattern is None:
            return
        with in_words_of(self.lesson):
            try:
                self.draft = menu_answer(self.lesson, self.pattern, asked, dict(self._places))
            except Exception as error:
                self.draft = refused(asked, error)

    def _looked(self, _: Any) -> None:
        self._draw()

    # ---- drawing ------------------------------------------------------------------------------------------

    @property
    def view(self) -> View:
        """How the canvas looks at the pattern now."""
        on = frozenset(layer for layer in self.layers if layer in LAYERS)
        return View(self.step, self.lesson.units, on, self._places, self.drawing)

    def _draw(self) -> None:
        """Work the lesson as it stands and answer."""
        rewritten, self._rewritten = self._rewritten, False
        lesson = self.lesson
        if rewritten:
            entries = [e for e in lesson.definition.entries if e.kind == "step"]
            titles = [[e.name, say("canvas.step", number=n, title=e.title)] for n, e in enumerate(entries, 1)]
            self.steps = [["", say("canvas.whole")], *titles]
        try:
            self.pattern = lesson.work()
        except Exception as error:
            # While a lesson is being written its outlines may stand open; a moved value gets no such leave.
            trouble = fragments.plain(error)
            try:
                if not rewritten and self.pattern is not None:
                    raise
                self.pattern = work(lesson.definition, lesson.body, lesson.values, whole=False)
            except Exception:
                self._finding.drop()
                self._answer(trouble, stale=True)
            else:
                self._answer(trouble)
            return
        self._answer(self._message)
        self._settle()

    def _settle(self) -> None:
        if self.pattern is not None:
            self._finding.ask()

    def _state(self, pattern: Pattern, places: tuple[tuple[str, Vector], ...] | None = None) -> dict[str, Any]:
        view = self.view if places is None else replace(self.view, places=places)
        held = bool(self._held) or places is not None
        return canvas_state(pattern, view, block=self._start(), handles=self.handles, fate=self._fates(), held=held)

    def _answer(self, message: str = "", *, stale: bool = False) -> None:
        """Send the draft as it now stands, or (`stale`) the last one that could be drafted."""
        pattern = self.pattern
        if pattern is None:
            self._say(message, stale=True)
            return
        try:
            state = self._state(pattern)
        except Exception as error:
            self._say(fragments.plain(error), stale=True)
            return
        self._places = tuple((name, Vector(x, y)) for name, (x, y) in state["places"].items())
        self._draft += 1
        answer = {
            "draft": self._draft,
            "scene": state["scene"]["id"],
            "shape": state["shape"],
            "numbers": array("f", state["numbers"]).tobytes(),
            "edges": state["edges"],
            "dims": state["dims"],
            "values": state["values"],
            "units": self.lesson.units,
            "places": state["places"],
        }
        with self.hold_sync():
            if self.scene.get("id") != state["scene"]["id"]:
                self.scene = state["scene"]
            self.answer = answer | self._told(message, stale=stale)

    def _say(self, message: str, *, stale: bool) -> None:
        """The last draft again, with a message."""
        self.answer = {**self.answer, **self._told(message, stale=stale)}

    def _told(self, message: str, *, stale: bool) -> dict[str, Any]:
        history = beside(self.lesson).history
        if stale and message and self.pattern is not None:
            message = two_sentences(message, say("panel.old_picture"))
        return {
            "turn": self._turn,
            "message": message,
            "stale": stale,
            "undo": history.can_undo,
            "redo": history.can_redo,
        }

    # ---- when the values rest -----------------------------------------------------------------------------

    def _find_handles(self) -> Iterator[None]:
        """Find where the handles stand, and how every number changes with each."""
        pattern = self.pattern
        if pattern is None:
            return
        found: list[Probe] = []
        for probe in probes(self.lesson, pattern):
            found.append(probe)
            yield
        try:
            self.handles = chosen(self.lesson, pattern, found, self.view, self._start(), self.handles)
            base = self._state(pattern)
        except KitError:
            self.slopes = {**self.slopes, "draft": self._draft}
            return  # the draft is shown all the same, with the handles it had
        self._answer(self._message)
        names: list[str] = []
        rows = array("f")
        for probe in found:
            if not any(handle.name == probe.name for handle in self.handles):
                continue
            yield
            try:
                there = self._state(probe.pattern, self._places)
            except KitError:
                continue
            if (there["scene"]["id"], there["shape"]) == (base["scene"]["id"], base["shape"]):
                names.append(probe.name)
                pairs = zip(there["numbers"], base["numbers"], strict=True)
                rows.extend((new - old) / probe.by for new, old in pairs)
        self.slopes = {
            "draft": self._draft,
            "scene": base["scene"]["id"],
            "shape": base["shape"],
            "names": names,
            "rows": rows.tobytes(),
        }

    def _save(self) -> None:
        try:
            self.lesson.save()
        except KitError as error:
            self._message = str(error)
            self._say(self._message, stale=False)

    # ---- kept between answers -----------------------------------------------------------------------------

    def _start(self) -> tuple[Piece, ...]:
        """What the lesson starts from, for its body."""
        lesson = self.lesson
        key = (lesson.start, lesson.body)
        if self._block[0] != key:
            try:
                self._block = (key, tuple(lesson.start(lesson.body)))
            except Exception:  # the lesson itself says why
                self._block = (key, ())
        return self._block[1]

    def _fates(self) -> Fates:
        """What becomes of each edge: the same for all values as long as no step changes."""
        key = self.lesson.entries
        if self._fate[0] != key and self.pattern is not None:
            self._fate = (key, fates(self.pattern))
        return self._fate[1]


def _words(lesson: Lesson) -> dict[str, str]:
    """The words the browser needs, by what stands after "canvas." in their keys."""
    words = {key: say(f"canvas.{key}") for key in _WORDS}
    words |= {f"layer_{layer}": say(f"canvas.layer_{layer}") for layer in LAYERS}
    words["title"] = say("canvas.title", lesson=lesson.info.title)
    return words | {f"move_{key}": text for key, text in menu_words().items()}


_open: WeakSet[Canvas] = WeakSet()


@atexit.register
def _save_all() -> None:
    """A kernel that is restarted just after a move still keeps the move."""
    for one in tuple(_open):
        if one._saving.pending:
            one._saving.now()
