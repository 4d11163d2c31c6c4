"""The notebook's side of a lesson: it listens, and keeps cells, pictures and widgets in step.

Running the cell of a step shows the step under it: title, words with live numbers, picture. The pictures follow
when values change, a little after the sliders have come to rest. Panels and canvases are told of every change. Running
the cell of the lesson again keeps what other cells added to it.

Importing this module gives every lesson made from then on a notebook's side; it does nothing where no notebook runs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from typing import TYPE_CHECKING, Any

from kit.errors import KitError
from kit.lesson.cells import running_cell
from kit.lesson.exercise import Exercise
from kit.lesson.fit_change import FIT_CHANGES
from kit.lesson.lesson import Lesson, listen, listening, take_over
from kit.lesson.listener import AskedWalk, take_seat
from kit.lesson.parameter import in_units
from kit.lesson.pattern import Pattern
from kit.lesson.steps import Entry
from kit.lesson.time_limit import hear_interrupts
from kit.lesson.where import here, shell
from kit.lesson.working import so_far, work
from kit.live.followers import followers
from kit.live.history import History, with_changes_at_nothing
from kit.live.pace import Aside, Settled, Show
from kit.live.speech import in_words_of
from kit.live.still import bundle
from kit.pausing import pause_here

if TYPE_CHECKING:
    from kit.sewing.seam_walk import Walk as Walked

__all__ = ["Lesson", "NotebookSide", "beside"]

_FOLLOW = 0.6  # seconds after the last move
_STILL = 3.0


@dataclass
class _Said:
    """Words that a `run` of a `cell` said: the `text` as written, what was `said`, and where it is shown."""

    cell: str
    run: int
    text: str
    said: str
    display: Any


class NotebookSide:
    """The listener of one `lesson`. `history` are the changes of values that can be undone and redone, `cell` is the
    cell that made the lesson."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.cell, _ = running_cell()
        self.history = History()
        self._remembering = True
        # (kind, name) of an entry -> its display under the cell and the HTML shown there.
        self._shown: dict[tuple[str, str], tuple[Any, str]] = {}
        # The two edges of a walk -> its display, the HTML shown there, and what was asked.
        self._walks: dict[tuple[str, str], tuple[Any, str, AskedWalk]] = {}
        # Words said by a cell, each with its display, the text shown there, and what was written.
        self._said: list[_Said] = []
        # Entries whose picture says that it is old.
        self._old: set[tuple[str, str]] = set()
        # The HTML of which each entry's output holds a PNG.
        self._stilled: dict[tuple[str, str], str] = {}
        self._following = Settled(self.follow_on, _FOLLOW)
        self._stilling = Aside(self._stills, _STILL, patient=True)

    # ---- what the lesson tells ------------------------------------------------------------------------------

    def began(self) -> None:
        """The lesson has been made. Made by a cell that had made one before, it goes on where that one stood."""
        ip = shell()
        if ip is not None and not here().building:
            from kit.live.typing_help import help_while_typing

            help_while_typing(ip)
            hear_interrupts()
        names = list(ip.user_ns.values()) if ip is not None and self.cell else []
        for former in names:
            if not isinstance(former, Lesson) or former is self.lesson:
                continue
            side = listening(former)
            same = former.info.slug == self.lesson.info.slug
            if same and isinstance(side, NotebookSide) and side.cell == self.cell:
                self.go_on(former)
                return

    def go_on(self, former: Lesson) -> None:
        """Take the place of `former`: its steps, values and history, and whatever showed it."""
        side = beside(former)
        take_over(self.lesson, former, self.cell)
        self._shown, self._walks, self.history = dict(side._shown), dict(side._walks), side.history
        self._said, self._old = list(side._said), set(side._old)
        for view in tuple(followers(former)):
            view.rebind(self.lesson)

    def wrote(self, entry: Entry) -> None:
        if here().shows:
            self._show(entry)
        self.rewritten()

    def wrote_exercise(self, exercise: Exercise) -> None:
        if here().shows:
            from IPython.display import display

            from kit.live.exercise import ExerciseView

            display(ExerciseView(self.lesson, exercise))

    def rewritten(self) -> None:
        followers(self.lesson).tell(rewritten=True)
        if self._said:  # they may name what has just been written
            self._following.ask()

    def moved(self, before: Mapping[str, float], *, whole: bool) -> None:
        if self._remembering:
            if whole:
                self.history.seal()
            self.history.note(*with_changes_at_nothing(before, self.lesson.values))
            if whole:
                self.history.seal()
        self._stilling.drop()
        followers(self.lesson).tell()
        if self._shown or self._walks or self._said:
            self._following.ask()

    def undo(self) -> bool:
        return self._put(self.history.undo())

    def redo(self) -> bool:
        return self._put(self.history.redo())

    def _put(self, values: Mapping[str, float] | None) -> bool:
        if values is None:
            return False
        self._remembering = False
        try:
            known = {p.name: p for p in self.lesson.parameters}
            changes = [FIT_CHANGES[n].parameter() for n in values if n in FIT_CHANGES and n not in known]
            self.lesson.change(**in_units((*known.values(), *changes), values))
        finally:
            self._remembering = True
        return True

    def put(self, values: Mapping[str, float]) -> None:
        """Set parameters from plain numbers (mm, share, count), as one change. `KitError` outside their range; then
        none is set."""
        self.history.seal()
        self.lesson.change(**in_units(self.lesson.parameters, values))
        self.history.seal()

    # ---- walks ----------------------------------------------------------------------------------------------

    def walk(self, walk: AskedWalk) -> None:
        from kit.live import fragments

        where, lesson = here(), self.lesson
        if where.building or where.opening:
            return
        if not where.notebook:
            with in_words_of(lesson):
                print(fragments.walk_text(self._walked(walk), lesson.units))
            return
        from IPython.display import HTML, display

        with in_words_of(lesson):
            try:
                html = fragments.walk(self._walked(walk), lesson.units)
            except Exception as error:
                html = fragments.message(fragments.plain(error))
        self._walks[walk.first, walk.second] = (display(HTML(html), display_id=True), html, walk)

    # ---- help -----------------------------------------------------------------------------------------------

    def asked(self, topic: str) -> None:
        from kit.reference.told import help_on

        with in_words_of(self.lesson):
            print(help_on(topic))

    def _walked(self, asked: AskedWalk, pattern: Pattern | None = None) -> Walked:
        from kit.sewing.seam_walk import walk

        lesson = self.lesson
        whole = pattern or work(lesson.definition, lesson.body, lesson.values, whole=False)
        return walk(whole, asked.first, asked.second, turned=asked.turned, ease=asked.ease)

    # ---- words ----------------------------------------------------------------------------------------------

    def words(self, text: str) -> None:
        where = here()
        if where.opening:
            return
        if where.building:
            from IPython.display import display

            from kit.booklet.told_words import WORDS

            display({WORDS: text, "text/plain": text}, raw=True)
            return
        said = self._in_words(text)
        if not where.notebook:
            print(said)
            return
        from IPython.display import Markdown, display

        cell, run = running_cell()
        self._said = [one for one in self._said if not cell or one.cell != cell or one.run == run]
        self._said.append(_Said(cell, run, text, said, display(Markdown(said), display_id=True)))

    def _in_words(self, text: str, pattern: Pattern | None = None) -> str:
        """`text` with its numbers; what nothing is called yet, as a later cell may do, is an ellipsis."""
        from kit.live.told_values import told

        lesson = self.lesson
        with in_words_of(lesson):
            try:
                whole = pattern or work(lesson.definition, lesson.body, lesson.values, whole=False)
            except KitError:
                whole = None
            return told(text, whole)

    # ---- under the cells ----------------------------------------------------------------------------------

    def _show(self, entry: Entry) -> None:
        from IPython.display import display

        from kit.live import fragments

        lesson = self.lesson
        with in_words_of(lesson):
            try:
                html = self._html(entry, so_far(lesson.definition, entry, lesson.body, lesson.values))
            except Exception as error:
                html = fragments.message(fragments.plain(error))
        handle = display(bundle(html, png=False), raw=True, display_id=True)
        self._shown[entry.kind, entry.name] = (handle, html)
        self._stilling.ask()
        self._old.discard((entry.kind, entry.name))

    def _html(self, entry: Entry, pattern: Pattern) -> str:
        from kit.live import fragments

        if entry.kind == "step":
            return fragments.step(next(s for s in pattern.steps if s.key == entry.name), self.lesson.units)
        if entry.kind == "sew":
            record = next(s for s in pattern.sewing if s.key == entry.name)
            return fragments.sew_step(record, pattern, self.lesson.units)
        return fragments.one_finished(entry.title, dict(pattern.finished)[entry.title], self.lesson.units)

    def follow_on(self) -> Iterator[None]:
        """Bring what is shown under the cells up to date, one cell at a time."""
        if self._stilling.stopped:
            self._stilling.ask()
        from IPython.display import HTML, Markdown

        from kit.live import fragments

        try:
            pattern = self.lesson.work()
        except KitError:
            yield from self._grow_old()  # the panel says why; what is shown under the cells is the last that worked
            return
        for entry in self.lesson.entries:
            key = (entry.kind, entry.name)
            if key not in self._shown:
                continue
            yield
            handle, before = self._shown[key]
            try:
                with in_words_of(self.lesson):
                    html = self._html(entry, pattern)
            except KitError:
                continue
            if (html != before or key in self._old) and handle is not None:
                handle.update(bundle(html, png=False), raw=True)
                self._shown[key] = (handle, html)
                self._stilling.ask()
                self._old.discard(key)
        for one in tuple(self._said):
            yield
            said = self._in_words(one.text, pattern)
            if said != one.said and one.display is not None:
                one.display.update(Markdown(said))
                one.said = said
        for edges, (handle, before, asked) in tuple(self._walks.items()):
            yield
            with in_words_of(self.lesson):
                try:
                    html = fragments.walk(self._walked(asked, pattern), self.lesson.units)
                except KitError as error:
                    html = fragments.message(fragments.plain(error))
            if html != before and handle is not None:
                handle.update(HTML(html))
                self._walks[edges] = (handle, html, asked)

    def _stills(self) -> Iterator[Show]:
        """A PNG for what is shown under each cell, beside its SVG: for where the notebook is read without a kernel."""
        for key, (_, html) in tuple(self._shown.items()):
            pause_here()
            if self._stilled.get(key) != html and "<svg" in html:
                with in_words_of(self.lesson):
                    yield partial(self._stilled_now, key, html, bundle(html))

    def _stilled_now(self, key: tuple[str, str], html: str, data: dict[str, str]) -> None:
        handle, now = self._shown.get(key, (None, ""))
        if handle is not None and now == html and key not in self._old:
            self._stilled[key] = html
            handle.update(data, raw=True)

    def _grow_old(self) -> Iterator[None]:
        """Say under every cell that its picture is the last that worked."""
        from kit.live import fragments

        for key, (handle, html) in tuple(self._shown.items()):
            if handle is not None and key not in self._old and "<svg" in html:
                yield
                with in_words_of(self.lesson):
                    handle.update(bundle(fragments.old(html), png=False), raw=True)
                self._old.add(key)


def beside(lesson: Lesson) -> NotebookSide:
    """The notebook's side of a lesson."""
    side = listening(lesson)
    if not isinstance(side, NotebookSide):  # made before the notebook's side took its seat
        side = NotebookSide(lesson)
        listen(lesson, side)
    return side


take_seat(NotebookSide)
