"""What mends a draft, on the panel: a sentence for each remedy, and a button that sets it.

Remedies are looked for in a thread when the sliders rest (kit/proof/mending.py) and shown as they are found; the next
move stops the search.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial
from typing import Any

import ipywidgets as widgets

from kit.body.body import NOBODY, Body
from kit.language import say
from kit.lesson.definition import Definition
from kit.lesson.lesson import Lesson
from kit.live import fragments
from kit.live.beside import beside
from kit.live.pace import Aside, Show
from kit.live.speech import in_words_of, spoken
from kit.proof.mending import mending
from kit.proof.remedy import Remedy, heading, latest
from kit.units import System

_AFTER = 0.2  # seconds of rest

Key = tuple[tuple[str, ...], bool]


@dataclass(frozen=True)
class _Asked:
    """What a search is for: the lesson as it stood, the parameter `moved` last, values known to be `good`."""

    definition: Definition
    body: Body
    values: Mapping[str, float]
    system: System
    moved: str
    good: Mapping[str, float] | None
    refused: bool


@dataclass
class _Line:
    """One remedy on the panel: its button, its sentence, and what the button sets now."""

    button: widgets.Button
    sentence: widgets.HTML
    widget: widgets.HBox
    remedy: Remedy = field(repr=False)

    def close(self) -> None:
        for part in (self.widget, self.button, self.sentence):
            part.close()


class RemedyBox:
    """The part of the panel that says what mends a draft: `widget`, with a button for each of `remedies`. `took` is
    told of the remedy whose button was pressed, once its values are set; `guarded` makes a callback of an act."""

    def __init__(
        self,
        lesson: Lesson,
        took: Callable[[Remedy], None],
        guarded: Callable[[Callable[[], None]], Callable[[Any], None]],
    ) -> None:
        self.lesson = lesson
        self.remedies: tuple[Remedy, ...] = ()
        self._took, self._guarded = took, guarded
        self._asked: _Asked | None = None
        self._good: Mapping[str, float] | None = None
        self._lines: dict[Key, _Line] = {}
        self._searching = Aside(self._search, _AFTER, patient=True)
        self._head = widgets.HTML()
        self._list = widgets.VBox()
        self.widget = widgets.VBox([self._head, self._list], layout={"display": "none", "margin": "0 0 6px 0"})
        self.widget.add_class("lessonkit-remedies")

    @property
    def stopped(self) -> bool:
        """Whether the last search was dropped before its end."""
        return self._searching.stopped

    def sound(self, values: Mapping[str, float]) -> None:
        """The proof found no error with these values: nothing to mend, and something to go back to."""
        self._good = dict(values)
        self.clear()

    def seek(self, moved: str, *, refused: bool) -> None:
        """Look for what mends the lesson as it stands: a draft that is `refused`, or one that fails its proof."""
        lesson = self.lesson
        body = lesson.body if lesson.measures else NOBODY
        self._asked = _Asked(lesson.definition, body, lesson.values, lesson.units, moved, self._good, refused)
        if refused:
            self._show((), True)
        self._searching.ask()

    def now(self) -> None:
        """Look at once for what was asked."""
        self._searching.now()

    def drop(self) -> None:
        """The lesson is another one now: stop looking. What was found stays until it is known what takes its place."""
        self._searching.drop()

    def clear(self) -> None:
        """There is nothing to mend."""
        self.drop()
        self._asked = None
        self.remedies = ()
        self.widget.layout.display = "none"
        self._fill(())

    def close(self) -> None:
        """Nothing is looked for any more. The widgets stay: they stand among the children of others, and a page that
        asks for all widgets is answered nothing at all while one of them has a closed child."""
        self.drop()

    # ---- in the thread ------------------------------------------------------------------------------------

    def _search(self) -> Iterator[Show]:
        asked = self._asked
        if asked is None:
            return
        found: list[Remedy] = []
        with in_words_of(self.lesson):
            if not asked.refused:
                yield partial(self._show, (), True)
            try:
                for remedy in mending(
                    asked.definition,
                    asked.body,
                    asked.values,
                    system=asked.system,
                    moved=asked.moved,
                    good=asked.good,
                ):
                    found.append(remedy)
                    yield partial(self._show, latest(found), True)
            except Exception:  # the search must not take the panel down; the trouble itself is told already
                pass
            yield partial(self._show, latest(found), False)

    # ---- on the page --------------------------------------------------------------------------------------

    @spoken
    def _show(self, found: tuple[Remedy, ...], going_on: bool) -> None:
        if self._asked is None:
            return
        self.remedies = found
        text = heading(found) if found or not going_on else say("remedy.looking")
        if not found and not going_on and not self._asked.refused:
            # While a lesson is being written the proof finds much that no slider can mend; it says so itself.
            self.clear()
            return
        what_for = "" if self._asked.refused else fragments.heading(say("remedy.for_proof"))
        self._head.value = what_for + (fragments.sentence(text) if what_for else fragments.heading(text))
        self._fill(found)
        self.widget.layout.display = ""

    def _fill(self, found: tuple[Remedy, ...]) -> None:
        """A line for each remedy. Lines that stay are kept, so that a button in use keeps the focus."""
        old, self._lines = self._lines, {}
        for remedy in found:
            key = (remedy.names, remedy.back)
            line = self._lines[key] = old.pop(key) if key in old else self._line(remedy)
            line.remedy = remedy
            line.sentence.value = fragments.sentence(str(remedy))
            line.button.tooltip = say("remedy.take_tip", remedy=str(remedy))
        shown = tuple(line.widget for line in self._lines.values())
        if self._list.children != shown:
            self._list.children = shown
        for line in old.values():
            line.close()

    def _line(self, remedy: Remedy) -> _Line:
        button = widgets.Button(
            description=say("remedy.take_back" if remedy.back else "remedy.take"),
            layout={"width": "auto", "min_width": "84px", "flex": "0 0 auto"},
        )
        sentence = widgets.HTML(layout={"flex": "1 1 0", "min_width": "0", "margin": "2px 0 0 8px"})
        line = _Line(button, sentence, widgets.HBox([button, sentence], layout={"align_items": "flex-start"}), remedy)
        button.on_click(self._guarded(partial(self._take, line)))
        return line

    def _take(self, line: _Line) -> None:
        remedy, history = line.remedy, beside(self.lesson).history
        history.seal()
        self.lesson.change(**remedy.values)
        history.seal()
        self._took(remedy)
