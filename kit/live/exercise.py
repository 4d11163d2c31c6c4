"""An exercise on the screen: its task, how far each goal is, and hints one at a time.

It follows the lesson's values as a panel does and checks the goals when the sliders rest. The teacher's own notebook
can show the answer; a class copy does not hold it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from html import escape
from typing import Any
from weakref import WeakKeyDictionary

import ipywidgets as widgets

from kit.errors import KitError
from kit.family.attempted import attempt_of, own_draft
from kit.language import say
from kit.lesson.cells import running_cell
from kit.lesson.exercise import Exercise
from kit.lesson.goals import Attempt, Result
from kit.lesson.lesson import Lesson
from kit.lesson.where import here
from kit.live import fragments
from kit.live.followers import followers
from kit.live.pace import Settled

_CHECK_AFTER = 0.3  # seconds of rest
_MET, _OPEN = ("#1d6b3a", "✓"), ("#6b5500", "○")


def exercise(lesson: Lesson, name: str) -> ExerciseView:
    """The exercise of that title or short name, to be worked at. Raises `KitError` for one that is not there."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"an exercise belongs to a lesson, not to {type(lesson).__name__}.",
            do='Write exercise(lesson, "Longer underarm"), with the lesson\'s own name.',
        )
    return ExerciseView(lesson, lesson.definition.exercise_called(name))


class ExerciseView(widgets.VBox):
    """The widget `exercise` gives. Its parts: `goals` (how far each is), `start` (back to the lesson's values), `hint`
    (the button), `hints`, `answer` (the button, in the teacher's notebook), `message`. `results` are those of the last
    check, `solved` whether all goals are met."""

    def __init__(self, lesson: Lesson, exercise: Exercise) -> None:
        self.lesson = lesson
        self.exercise = exercise
        self.results: tuple[Result, ...] = ()
        self.cell = ""
        self._own_cell, _ = running_cell()
        self._shown = 0
        self._checking = Settled(self._check, _CHECK_AFTER)
        self._build()
        super().__init__(self._parts)
        self.add_class("lessonkit-exercise")
        for other in tuple(followers(lesson).panels):
            if isinstance(other, ExerciseView) and self._takes_the_place_of(other):
                other.close()
        followers(lesson).panels.add(self)
        if not here().unseen:
            self._check()

    @property
    def solved(self) -> bool:
        return bool(self.results) and all(result.met for result in self.results)

    def _takes_the_place_of(self, other: ExerciseView) -> bool:
        return bool(self._own_cell) and (other._own_cell, other.exercise.key) == (self._own_cell, self.exercise.key)

    # ---- following the lesson -----------------------------------------------------------------------------

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: the goals are looked at again when the sliders rest."""
        if not here().unseen:
            self._checking.ask()

    def rebind(self, lesson: Lesson) -> None:
        """Follow `lesson`, which took the place of the one followed so far."""
        followers(self.lesson).panels.discard(self)
        self.lesson = lesson
        followers(lesson).panels.add(self)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take the exercise off the page and let the lesson forget it."""
        self._checking.drop()
        followers(self.lesson).panels.discard(self)
        super().close()

    # ---- parts --------------------------------------------------------------------------------------------

    def _build(self) -> None:
        told, plain = self.exercise, {"width": "auto"}
        heading = say("class_copy.exercise", title=told.title)
        task = f"<p>{escape(told.task)}</p>" if told.task else ""
        self.task = widgets.HTML(
            f'<div style="max-width:46em"><div style="font-weight:600">{escape(heading)}</div>{task}</div>'
        )
        self.goals = widgets.HTML()
        self.message = widgets.HTML()
        self.hints = widgets.HTML()
        self.hint = widgets.Button(layout=plain, tooltip=say("class_copy.hint_tooltip"))
        self.start = widgets.Button(
            description=say("class_copy.start"), tooltip=say("class_copy.start_tooltip"), layout=plain
        )
        self.answer = widgets.Button(description=say("class_copy.answer"), layout=plain)
        self.start.on_click(self._guarded(self._start))
        self.hint.on_click(self._guarded(self._next_hint))
        self.answer.on_click(self._guarded(self._tell_answer))
        buttons = [self.start, *([self.hint] if told.hints else []), *([self.answer] if told.answer else [])]
        self._parts = [self.task, self.goals, self.message, widgets.HBox(buttons), self.hints]
        self._show_hints()

    def _guarded(self, act: Callable[[], None]) -> Callable[[Any], None]:
        def guarded(_: Any) -> None:
            try:
                act()
            except Exception as error:
                self.message.value = fragments.message(fragments.plain(error))

        return guarded

    def _start(self) -> None:
        self.lesson.reset()
        self.lesson.save()

    def _next_hint(self) -> None:
        self._shown = min(self._shown + 1, len(self.exercise.hints))
        self._show_hints()

    def _show_hints(self) -> None:
        left = len(self.exercise.hints) - self._shown
        self.hint.description = say("class_copy.hint", left=left) if left else say("class_copy.no_hint")
        self.hint.disabled = not left
        self.hints.value = fragments.notes(self.exercise.hints[: self._shown])

    def _tell_answer(self) -> None:
        parameters = {p.name: p for p in self.lesson.parameters}
        unknown = [name for name, _ in self.exercise.answer if name not in parameters]
        if unknown:
            raise KitError(f"the answer names '{unknown[0]}', which is no parameter.", where=self.exercise.title)
        self.hints.value = fragments.notes(
            say(
                "class_copy.answer_line",
                name=parameters[name].label.capitalize(),
                value=parameters[name].show(value, self.lesson.units),
            )
            for name, value in self.exercise.answer
        )

    # ---- checking -----------------------------------------------------------------------------------------

    def _check(self) -> None:
        try:
            attempt = current_attempt(self.lesson)
        except Exception as error:
            self.results = ()
            self.message.value = fragments.message(f"{say('class_copy.waiting')} {fragments.plain(error)}")
            return
        try:
            self.results = self.exercise.results(attempt)
            asked = self.exercise.asked(attempt)
        except Exception as error:
            self.results = ()
            self.message.value = fragments.message(fragments.plain(error))
            return
        self.goals.value = _listed(self.results, asked, untouched=attempt.before.values == attempt.after.values)
        praise = say("class_copy.done", title=self.exercise.title) if self.solved else ""
        self.message.value = fragments.notes([praise])


def current_attempt(lesson: Lesson) -> Attempt:
    """The lesson as its values are now beside its own draft; worked and proved once for all exercises, and the draft
    again only when lesson or body change. Raises `KitError` as working does."""
    definition, values = lesson.definition, lesson.values
    place = (definition.entries, definition.parameters, lesson.body, lesson.units)
    known = _ATTEMPTS.get(lesson)
    same = known is not None and known[0] == place
    if known is not None and same and known[1] == values:
        return known[2]
    made = attempt_of(lesson, values, known[2].before if known is not None and same else own_draft(lesson))
    _ATTEMPTS[lesson] = place, values, made
    return made


_ATTEMPTS: WeakKeyDictionary[Lesson, tuple[object, dict[str, float], Attempt]] = WeakKeyDictionary()


def _listed(results: Sequence[Result], asked: Sequence[str], untouched: bool) -> str:
    """The goals, each with its state in a sign, a word and a sentence. Before anything is moved, what is asked."""
    lines = []
    for result, wanted in zip(results, asked, strict=True):
        colour, sign = _MET if result.met else _OPEN
        word = say("class_copy.goal_met" if result.met else "class_copy.goal_open")
        said = wanted if untouched else result.said
        lines.append(
            f'<li style="margin:3px 0"><strong style="color:{colour}">{sign} {escape(word)}</strong> '
            f"{escape(said)}</li>"
        )
    return (
        '<ul role="status" style="list-style:none;margin:4px 0;padding:0;line-height:1.4;max-width:46em">'
        f"{''.join(lines)}</ul>"
    )
