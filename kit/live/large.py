"""A lesson shown large: one picture fills the window, with its sentence and two or three sliders, for a room or a
camera.

The first picture is the whole draft, the others are the steps. A moved slider is answered with a new picture, the last
move first; the browser waits for an answer before it asks again, so moves never queue. Code and page stay behind it.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import anywidget
import traitlets

from kit.errors import KitError, near
from kit.language import say
from kit.lesson.cells import running_cell
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.lesson.scale import Scale
from kit.lesson.where import here
from kit.live import fragments
from kit.live.beside import beside
from kit.live.followers import followers
from kit.live.pace import Latest, Settled
from kit.live.speech import in_words_of, spoken
from kit.live.still import with_still
from kit.picture.draft import bench_drawing
from kit.picture.drawing import Drawing
from kit.picture.filming import GROUNDS, filming
from kit.picture.staged import StagedDrawing
from kit.picture.step_pictures import ROOM, PlayerPicture, player_pictures
from kit.resources import templates
from kit.units import Length, set_fractions
from kit.wording.lists import two_sentences

MOST_SLIDERS = 3
LOOKS = {"light": "white", "dark": "paper", "green": "green", "blue": "blue"}
"""The looks by name, each with the ground of its picture; in the dark look the picture lies on its paper."""
_WORDS = ("open", "leave", "back", "next", "look", "sliders", "help", *(f"look_{name}" for name in LOOKS))
_SAVE_AFTER = 0.5
_STILL = (760.0, 560.0)


def show_large(lesson: Lesson, *sliders: str) -> Large:
    """`lesson` to show large, in a room or on camera: one picture fills the window, with its sentence and up to three
    `sliders`, named as the parameters are (the first three when none is named). Page Up and Page Down, or a clicker, go
    through the steps. Raises `KitError` for something that is not a lesson, for a name that is no parameter and for
    more than three."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"show_large shows a lesson, not {type(lesson).__name__}.",
            do="Write show_large(lesson), with the lesson's own name.",
        )
    check_sliders(lesson, sliders, "show_large")
    with in_words_of(lesson):
        return Large(lesson, sliders)


def check_sliders(lesson: Lesson, sliders: tuple[str, ...], where: str) -> None:
    """Raises `KitError`, telling of `where`, for more than three `sliders` and for a name that is no parameter."""
    if len(sliders) > MOST_SLIDERS:
        raise KitError(f"{len(sliders)} sliders are named.", where=where, do=f"Name {MOST_SLIDERS} at most.")
    known = [parameter.name for parameter in lesson.parameters]
    for name in sliders:
        if name not in known:
            raise KitError(f"there is no parameter '{name}'.", where=where, do=near(str(name), known))


class Large(anywidget.AnyWidget):
    """The widget `show_large` gives. `index` is the picture on show, 0 for the whole draft; `look` one of "light",
    "dark", "green", "blue"; `large` whether it fills the window."""

    _esm = templates() / "live" / "large.js"
    _css = templates() / "live" / "large.css"

    words = traitlets.Dict().tag(sync=True)
    looks: Any = traitlets.List().tag(sync=True)
    look = traitlets.Enum(tuple(LOOKS), default_value="light").tag(sync=True)
    large = traitlets.Bool(False).tag(sync=True)
    index = traitlets.Int(0).tag(sync=True)
    shown = traitlets.Dict().tag(sync=True)
    sliders: Any = traitlets.List().tag(sync=True)
    message = traitlets.Unicode("").tag(sync=True)

    def __init__(self, lesson: Lesson, names: tuple[str, ...] = ()) -> None:
        self.lesson = lesson
        self.pattern: Pattern | None = None
        self.cell, self._run = running_cell()
        self._names = names
        self._shots: tuple[PlayerPicture, ...] = ()
        self._turn = 0
        self._latest = Latest(self._draw)
        self._saving = Settled(self._save, _SAVE_AFTER)
        super().__init__(
            words={**{key: say(f"large.{key}") for key in _WORDS}, "title": lesson.info.title},
            looks=[
                [name, say(f"large.look_{name}"), "" if name == "dark" else GROUNDS[of]] for name, of in LOOKS.items()
            ],
        )
        for other in tuple(followers(lesson).panels):
            if isinstance(other, Large) and self.cell and other.cell == self.cell and other._run != self._run:
                other.close()
        followers(lesson).panels.add(self)
        self.on_msg(self._heard)
        self.observe(self._looked, ["index", "look"])
        if not here().unseen:
            self._draw()

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        """The widget, and a still of the draft for where no kernel runs."""
        given = super()._repr_mimebundle_(**kwargs)
        if self.pattern is None:
            return given
        return with_still(given, [fragments.picture(self._drawing(self.pattern), *_STILL)], self.words["title"])

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: values, steps or parameters. It is drawn where somebody looks on."""
        if not here().unseen:
            self._latest.ask()

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far."""
        followers(self.lesson).panels.discard(self)
        self.lesson = lesson
        followers(lesson).panels.add(self)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take it off the page and let the lesson forget it."""
        if self._saving.pending:
            self._saving.now()
        followers(self.lesson).panels.discard(self)
        super().close()

    @property
    def place(self) -> tuple[str, str, int]:
        """Kind, key and number of the picture on show; ("", "", 0) for the whole draft."""
        at = min(max(self.index, 0), len(self._shots))
        return self._shots[at - 1].place if at else ("", "", 0)

    def go(self, place: tuple[str, str, int]) -> None:
        """Show the picture at `place`, where there is one, else the whole draft."""
        self.index = next((i for i, shot in enumerate(self._shots, 1) if shot.place == place), 0)

    # ---- what people do -----------------------------------------------------------------------------------

    @spoken
    def _heard(self, _: Any, content: Any, buffers: Any) -> None:
        """A message of the browser: {"do": "move", "name", "number", "turn"}, the number as on the slider;
        {"do": "rest"} when the slider is let go."""
        if not isinstance(content, dict):
            return
        if content.get("do") == "move":
            self._turn = int(content.get("turn", 0))
            self.move(str(content.get("name", "")), content.get("number"))
        elif content.get("do") == "rest":
            beside(self.lesson).history.seal()

    def move(self, name: str, number: object) -> None:
        """Set the parameter `name` to what stands at `number` of its slider."""
        parameter = next((one for one in self._chosen() if one.name == name), None)
        if parameter is None or not isinstance(number, int | float) or number != number:
            self._draw()
            return
        value = Scale(parameter, self.lesson.units).value(float(number))
        try:
            self.lesson.change(**{name: Length(value) if parameter.kind == "length" else value})
        except KitError as error:
            self.message = fragments.plain(error)
        self._saving.ask()
        self._latest.ask()

    @spoken
    def _looked(self, _: Any) -> None:
        if self.pattern is not None:
            self._show(self.pattern)

    @spoken
    def _save(self) -> Iterator[None] | None:
        try:
            self.lesson.save()
        except KitError as error:
            self.message = fragments.plain(error)
        return None

    # ---- drawing ------------------------------------------------------------------------------------------

    def _chosen(self) -> tuple[Parameter, ...]:
        every = {parameter.name: parameter for parameter in self.lesson.parameters}
        return tuple(every[name] for name in self._names or tuple(every)[:MOST_SLIDERS] if name in every)

    @spoken
    def _draw(self) -> None:
        """Work the lesson as it stands; the picture on show stays on show."""
        try:
            pattern = self.lesson.work()
            shots = player_pictures(pattern, self.lesson.units)
        except Exception as error:
            told = fragments.plain(error)
            with self.hold_sync():
                self.message = two_sentences(told, say("panel.old_picture")) if self._shots else told
                self._show_sliders()
                self.shown = {**self.shown, "stale": True, "turn": self._turn}
            return
        self.pattern, self._shots = pattern, shots
        with self.hold_sync():
            self.message = ""
            self._show_sliders()
            self._show(pattern)

    def _show_sliders(self) -> None:
        system, values = self.lesson.units, self.lesson.values
        self.sliders = [
            {
                "name": one.name,
                "label": one.label.capitalize(),
                "least": (scale := Scale(one, system)).least,
                "most": scale.most,
                "step": scale.step,
                "number": scale.number(values[one.name]),
                "text": set_fractions(one.show(values[one.name], system)),
            }
            for one in self._chosen()
        ]

    def _drawing(self, pattern: Pattern) -> Drawing:
        return bench_drawing(pattern, self.lesson.units)

    def _show(self, pattern: Pattern) -> None:
        """Send the picture on show, with its sentence."""
        at = min(max(self.index, 0), len(self._shots))
        shot = self._shots[at - 1] if at else None
        try:
            drawing = self._drawing(pattern) if shot is None else shot.draw() if shot.draw is not None else None
            ground = LOOKS[self.look]
            svg = ""
            if drawing is not None:
                svg = StagedDrawing(drawing, *ROOM, filming(GROUNDS[ground]), ground=ground == "paper").svg()
        except Exception as error:
            self.message = fragments.plain(error)
            return
        finished = [f"{title}: {length}" for title, length in _finished(pattern, self.lesson)]
        self.shown = {
            "index": at,
            "count": len(self._shots),
            "label": shot.label if shot else "",
            "title": shot.title if shot else self.lesson.info.title,
            "words": [set_fractions(text) for text in (shot.words if shot else finished)],
            "part": shot.part if shot else "",
            "svg": svg,
            "stale": False,
            "turn": self._turn,
        }


def _finished(pattern: Pattern, lesson: Lesson) -> list[tuple[str, str]]:
    """The first finished measurements, in words: what a slider does to the garment."""
    from kit.units import both

    return [(title, both(mm, lesson.units, "finished")) for title, mm in pattern.finished[:4]]
