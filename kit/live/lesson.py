"""The lesson as it lives in a notebook.

Running the cell of a step shows the step under it: title, words with live numbers, picture. The pictures follow
when values change, a little after the sliders have come to rest. Panels are told of every change; the lesson
knows them weakly, so a closed panel is forgotten.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Protocol, Self
from weakref import WeakSet

from kit.body.body import Body
from kit.errors import KitError
from kit.lesson import lesson as definition
from kit.lesson.another import opening
from kit.lesson.cells import shell
from kit.lesson.parameter import Setting
from kit.lesson.pattern import Pattern
from kit.lesson.steps import Entry
from kit.lesson.working import work
from kit.live.history import History
from kit.live.pace import Settled
from kit.live.speech import in_words_of
from kit.units import Length, Size, System, length

if TYPE_CHECKING:
    from kit.lesson.exercise import Exercise
    from kit.live.canvas.widget import Canvas
    from kit.sewing.walked import Walk

_FOLLOW = 0.6  # seconds after the last move


class Follower(Protocol):
    """What shows a lesson and follows its changes: a panel, an exercise. `cell` is the cell that made it."""

    cell: str

    def refresh(self, *, rewritten: bool = False) -> None: ...

    def rebind(self, lesson: Lesson) -> None: ...

    def close(self) -> None: ...


@dataclass(frozen=True)
class _Asked:
    """What a walk shown under a cell was asked for; `ease` in mm."""

    first: str
    second: str
    turned: bool | None
    ease: float


class Lesson(definition.Lesson):
    __doc__ = definition.Lesson.__doc__

    def change(self, **values: Setting) -> None:
        before = self.values
        super().change(**values)
        self.history.note(before, self.values)
        self._moved()

    def reset(self) -> None:
        before = self.values
        super().reset()
        self.history.seal()
        self.history.note(before, self.values)
        self.history.seal()
        self._moved()

    def set_values(self, values: dict[str, float]) -> None:
        self.history.seal()
        super().set_values(values)
        self.history.seal()

    @property
    def history(self) -> History:
        """The changes of values that can be undone and redone."""
        found: History = self.__dict__.setdefault("_history", History())
        return found

    def undo(self) -> bool:
        """Take the last change of values back; whether there was one."""
        return self._put(self.history.undo())

    def redo(self) -> bool:
        """Make the change taken back last again; whether there was one."""
        return self._put(self.history.redo())

    def _put(self, values: Mapping[str, float] | None) -> bool:
        if values is None:
            return False
        kinds = {p.name: p.kind for p in self.parameters}
        for name, value in values.items():
            if name in kinds:
                super().change(**{name: Length(value) if kinds[name] == "length" else value})
        self._moved()
        return True

    def choose(self, *, size: str = "", body: Body | None = None, units: System | None = None) -> None:
        super().choose(size=size, body=body, units=units)
        self._moved()

    def remove(self, *names: str) -> None:
        super().remove(*names)
        self._rewritten()

    def variation(self, title: str, **changes: Any) -> Self:
        new = super().variation(title, **changes)
        for own in ("_panels", "_canvases", "_history", "_shown_", "_walks_", "_follow"):
            new.__dict__.pop(own, None)
        return new

    def walk(self, first: str, second: str, *, turned: bool | None = None, ease: Size = 0) -> None:
        """Show two edges walked under the cell, and keep the picture up to date: edge `second` rolled along edge
        `first`, named as "front.side" ("front.underarm + front.side" for several in a row), with the difference at
        every notch, corner and mark. `turned` says by hand that the second is walked from its end, `ease` by how much
        it is meant to be longer. Out of a notebook the words are printed; a build leaves it out."""
        from kit.live import fragments

        asked = _Asked(first, second, turned, float(length(ease, "walk, ease")))
        if os.environ.get("LESSONKIT_BUILD"):
            return
        if shell() is None:
            with in_words_of(self):
                print(fragments.walk_text(self._walked(asked), self.units))
            return
        from IPython.display import HTML, display

        with in_words_of(self):
            try:
                html = fragments.walk(self._walked(asked), self.units)
            except Exception as error:
                html = fragments.message(fragments.plain(error))
        self._walks[first, second] = (display(HTML(html), display_id=True), html, asked)

    def exercise(self, title: str, task: str = "", **parts: Any) -> Exercise:
        new = super().exercise(title, task, **parts)
        if shell() is not None and not os.environ.get("LESSONKIT_BUILD") and not opening():
            from IPython.display import display

            from kit.live.exercise import ExerciseView

            display(ExerciseView(self, new))
        return new

    exercise.__doc__ = definition.Lesson.exercise.__doc__

    def _walked(self, asked: _Asked, pattern: Pattern | None = None) -> Walk:
        from kit.sewing.walked import walk

        whole = pattern or work(self.definition, self.body, self.values, whole=False)
        return walk(whole, asked.first, asked.second, turned=asked.turned, ease=asked.ease)

    # ---- panels -------------------------------------------------------------------------------------------

    @property
    def panels(self) -> WeakSet[Follower]:
        """The panels and exercises that show this lesson."""
        found: WeakSet[Follower] = self.__dict__.setdefault("_panels", WeakSet())
        return found

    @property
    def canvases(self) -> WeakSet[Canvas]:
        """The canvases that show this lesson."""
        found: WeakSet[Canvas] = self.__dict__.setdefault("_canvases", WeakSet())
        return found

    @property
    def _views(self) -> tuple[Follower, ...]:
        return (*self.canvases, *self.panels)

    def so_far(self, entry: Entry) -> Pattern:
        """The pattern as `entry` leaves it, for the current body and values. Outlines need not close yet."""
        whole = self.definition
        at = next(i for i, other in enumerate(whole.entries) if (other.kind, other.name) == (entry.kind, entry.name))
        wanted = whole.entries[: at + 1]
        if entry.kind != "step":
            steps = tuple(e for e in whole.entries if e.kind == "step")
            wanted = steps + tuple(e for e in wanted if e.kind == "sew" and e is not entry) + (entry,)
        return work(replace(whole, entries=wanted), self.body, self.values, whole=False)

    def _parameter(self, *given: Any) -> Any:
        new = super()._parameter(*given)
        self._rewritten()
        return new

    def _adopt(self) -> None:
        super()._adopt()
        if (ip := shell()) is not None and not os.environ.get("LESSONKIT_BUILD"):
            from kit.live.typing_help import help_while_typing

            help_while_typing(ip)

    def _adopted(self, former: definition.Lesson) -> None:
        if former.body.name not in former.sizes.names:
            self._body = former.body
        elif former.body.name in self.sizes.names:
            self._body = self.sizes[former.body.name]
        self.units = former.units
        if isinstance(former, Lesson):
            self._shown.update(former._shown)
            self._walks.update(former._walks)
            self.__dict__["_history"] = former.history
            for view in former._views:
                view.rebind(self)

    def _registered(self, entry: Entry) -> None:
        if shell() is not None and not os.environ.get("LESSONKIT_BUILD") and not opening():
            self._show(entry)
        self._rewritten()

    def _offered(self) -> None:
        self._rewritten()

    def _moved(self) -> None:
        for view in self._views:
            view.refresh()
        if self._shown or self._walks:
            self._following.ask()

    def _rewritten(self) -> None:
        for view in self._views:
            view.refresh(rewritten=True)

    # ---- under the cells ----------------------------------------------------------------------------------

    @property
    def _shown(self) -> dict[tuple[str, str], tuple[Any, str]]:
        """(kind, name) of an entry -> its display under the cell and the HTML shown there."""
        found: dict[tuple[str, str], tuple[Any, str]] = self.__dict__.setdefault("_shown_", {})
        return found

    @property
    def _walks(self) -> dict[tuple[str, str], tuple[Any, str, _Asked]]:
        """The two edges of a walk -> its display, the HTML shown there, and what was asked."""
        found: dict[tuple[str, str], tuple[Any, str, _Asked]] = self.__dict__.setdefault("_walks_", {})
        return found

    @property
    def _following(self) -> Settled:
        found: Settled | None = self.__dict__.get("_follow")
        if found is None:
            found = self.__dict__["_follow"] = Settled(self._follow_on, _FOLLOW)
        return found

    def _show(self, entry: Entry) -> None:
        from IPython.display import HTML, display

        from kit.live import fragments

        with in_words_of(self):
            try:
                html = self._html(entry, self.so_far(entry))
            except Exception as error:
                html = fragments.message(fragments.plain(error))
        handle = display(HTML(html), display_id=True)
        self._shown[entry.kind, entry.name] = (handle, html)

    def _html(self, entry: Entry, pattern: Pattern) -> str:
        from kit.live import fragments

        if entry.kind == "step":
            return fragments.step(next(s for s in pattern.steps if s.key == entry.name), self.units)
        if entry.kind == "sew":
            record = next(s for s in pattern.sewing if s.key == entry.name)
            return fragments.sew_step(record, pattern, self.units)
        return fragments.one_finished(entry.title, dict(pattern.finished)[entry.title], self.units)

    def _follow_on(self) -> Iterator[None]:
        """Bring what is shown under the cells up to date, one cell at a time."""
        from IPython.display import HTML

        from kit.live import fragments

        try:
            pattern = self.work()
        except KitError:
            return  # the panel says why; what is shown under the cells is the last that worked
        for entry in self.entries:
            key = (entry.kind, entry.name)
            if key not in self._shown:
                continue
            yield
            handle, before = self._shown[key]
            try:
                with in_words_of(self):
                    html = self._html(entry, pattern)
            except KitError:
                continue
            if html != before and handle is not None:
                handle.update(HTML(html))
                self._shown[key] = (handle, html)
        for edges, (handle, before, asked) in tuple(self._walks.items()):
            yield
            with in_words_of(self):
                try:
                    html = fragments.walk(self._walked(asked, pattern), self.units)
                except KitError as error:
                    html = fragments.message(fragments.plain(error))
            if html != before and handle is not None:
                handle.update(HTML(html))
                self._walks[edges] = (handle, html, asked)
