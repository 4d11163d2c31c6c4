"""The panel: sliders beside the draft.

A move changes the lesson's value, and the draft is worked and drawn again from the start as soon as all waiting
moves are in. Saving, the proof, cloth and pages wait until the sliders rest. Whatever cannot be drafted is said in a
box; the last good picture stays, dimmed, until the value is moved back.
"""

from __future__ import annotations

import atexit
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from functools import partial
from typing import Any
from weakref import WeakSet

import ipywidgets as widgets

from kit.body.measures import said
from kit.errors import KitError
from kit.language import say
from kit.lesson.bounds import Known, narrowed
from kit.lesson.cells import running_cell
from kit.lesson.following import told as follows_from
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.lesson.sitting import troubles
from kit.lesson.where import here
from kit.lesson.working import work
from kit.live import fragments
from kit.live.beside import beside
from kit.live.choices import DRAFT, Choices
from kit.live.figures import Figures
from kit.live.fit_box import FitBox
from kit.live.followers import followers
from kit.live.notebook_watch import NotebookWatch
from kit.live.pace import Aside, Latest, Settled, Show
from kit.live.remedy_box import RemedyBox
from kit.live.row import ParameterRow, ProofNote
from kit.live.speech import in_words_of, spoken
from kit.live.still import pictures, with_still
from kit.live.tried_on import TriedOn
from kit.picture.draft import bench_drawing, step_drawing
from kit.picture.drawing import Drawing
from kit.proof.causes import Moves, parameters_of
from kit.proof.finding import Finding, failed
from kit.proof.remedy import Remedy
from kit.units import Length
from kit.wording.lists import strung
from kit.wording.worded import worded

_SAVE_AFTER = 0.5  # seconds of rest
_CHECK_AFTER = 0.35
_WIDTH, _HEIGHT = 760.0, 560.0
_NARROW = 560.0
"""Width (CSS px) under which a picture is drawn for the room it has: made smaller, its letters could not be read."""


def panel(lesson: Lesson) -> Panel:
    """Sliders for the parameters of `lesson`, its size and units, beside the draft that follows them. Values
    are kept in the lesson's sidecar file. Raises `KitError` for something that is not a lesson."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"a panel shows a lesson, not {type(lesson).__name__}.",
            do="Write panel(lesson), with the lesson's own name.",
        )
    with in_words_of(lesson):
        return Panel(lesson)


def _lasting(parameter: Parameter) -> Parameter:
    """A parameter without the value that changes with the body: its row stays."""
    return replace(parameter, default=parameter.least) if parameter.is_following else parameter


def _follows(lesson: Lesson, values: Mapping[str, float]) -> dict[str, str]:
    """By parameter what its value follows from, where it was not moved."""
    return {
        parameter.name: worded(said, lesson.units)
        for parameter in lesson.parameters
        if (said := follows_from(parameter, lesson.sizes)) and abs(values[parameter.name] - parameter.default) < 1e-6
    }


class Panel(widgets.VBox):
    """The widget `panel` gives. Its parts: `rows` by parameter name (each with `slider` and `box`), `choices` (with
    `size`, `units`, `view`, `preset`, `reset`, `undo`, `redo`), `tried_on` (a fitting), `figures` (cloth and pages),
    `picture`, `message`, `remedies` (what mends a draft), `notes`, `finished`, `proof`."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.rows: dict[str, ParameterRow] = {}
        self.drawn = 0
        self.pattern: Pattern | None = None
        self.cell, self._run = running_cell()
        self._rewritten = True
        self._said = ""
        self._moved_last = ""
        self._good = ""
        self._fitted: Any = None
        self._measured = ""
        self._proved = ""
        self._stamp: Any = None
        self._room: tuple[Any, float] = (None, 0.0)
        self._wide, self._high = _WIDTH, _HEIGHT
        self._moves = Moves()
        self._latest = Latest(self._draw)
        self._saving = Settled(self._save, _SAVE_AFTER)
        self._checking = Aside(self._check, _CHECK_AFTER)
        self._build()
        super().__init__([self._head, self.tried_on.widget, self._body_box, self._watch])
        self.add_class("lessonkit-panel")
        self.picture.add_class("lessonkit-picture")
        for other in tuple(followers(lesson).panels):
            if self.cell and other.cell == self.cell and getattr(other, "_run", None) != self._run:
                other.close()
        followers(lesson).panels.add(self)
        _open.add(self)
        if not here().unseen:
            self._draw()

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        """The widget, and a still of its picture for where no kernel runs."""
        title = f"{self.lesson.info.title}, {self.lesson.body.name}"
        return with_still(super()._repr_mimebundle_(**kwargs), pictures(self._good), title)

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: values, or (`rewritten`) steps and parameters. It is drawn where somebody looks on."""
        self._rewritten |= rewritten
        if not here().unseen:
            self._checking.drop()
            self.figures.drop()
            self.remedies.drop()
            self._latest.ask()

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far."""
        followers(self.lesson).panels.discard(self)
        for part in (self, self.choices, self.figures, self.remedies, self.tried_on, self.fit):
            part.lesson = lesson
        followers(lesson).panels.add(self)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take the panel off the page and let the lesson forget it."""
        if self._saving.pending:
            self._saving.now()
        self._checking.drop()
        self.figures.close()
        self._watch.close()
        self.remedies.close()
        self.tried_on.close()
        followers(self.lesson).panels.discard(self)
        _open.discard(self)
        super().close()

    @property
    def place(self) -> tuple[str, str, int]:
        """Kind, key and number of the picture on show; ("", "", 0) for the whole draft and the garment laid flat."""
        kind, name = self.view.value
        return ("draft", name, 1) if kind == "step" else ("", "", 0)

    def go(self, place: tuple[str, str, int]) -> None:
        """Show the drafting step at `place`; the whole draft for any other. The garment laid flat stays."""
        kind, key, _ = place
        wanted = ("step", key) if kind == "draft" else DRAFT
        if self.view.value[0] != "flat" or wanted != DRAFT:
            self.view.value = wanted if wanted in [value for _, value in self.view.options] else DRAFT

    # ---- parts --------------------------------------------------------------------------------------------

    def _build(self) -> None:
        self.choices = Choices(self.lesson, self._changed, self.refresh, self._guarded)
        self.size, self.units, self.view = self.choices.size, self.choices.units, self.choices.view
        self.preset, self.reset = self.choices.preset, self.choices.reset
        self.tried_on = TriedOn(self.lesson, self.refresh, self._guarded)
        self.figures = Figures(self.lesson)
        self.remedies = RemedyBox(self.lesson, self._mended, self._guarded)
        self.fit = FitBox(self.lesson, self._changed, self._guarded)
        self._watch = NotebookWatch(lambda: beside(self.lesson).rewritten(), self._roomy)
        self.notes = widgets.HTML()
        self.message = widgets.HTML()
        self.picture = widgets.HTML(layout={"min_height": "200px"})
        self.finished = widgets.HTML(layout={"margin": "0 40px 0 0"})
        self.proof = widgets.HTML()
        self._sliders = widgets.VBox(
            layout={
                "width": "372px",
                "max_width": "100%",
                "max_height": "720px",
                "overflow": "hidden auto",
                "flex": "0 0 auto",
                "margin": "0 24px 0 0",
                "padding": "4px 0 0 0",
            }
        )
        self._sliders.add_class("lessonkit-rows")
        self._head = widgets.VBox([self.choices.first, self.choices.second(self.tried_on.open), self.fit.widget])
        wrap = {"flex_flow": "row wrap"}
        below = widgets.HBox([self.finished, self.figures.widget, self.proof], layout=wrap)
        right = widgets.VBox(
            [self.picture, self.message, self.remedies.widget, below, self.notes],
            layout={"flex": "1 1 300px", "min_width": "0"},
        )
        # Where there is no room beside the sliders, as on a phone, the draft and what is said of it stand beneath them.
        narrow = {"align_items": "flex-start", "flex_flow": "row wrap"}
        self._body_box = widgets.HBox([self._sliders, right], layout=narrow)
        named = ((self._head, "head"), (right, "beside"), (self._body_box, "body"), (self.message, "message"))
        for part, name in named:
            part.add_class(f"lessonkit-{name}")

    def _furnish(self) -> None:
        """Rows, views and presets as the lesson has them now."""
        lesson = self.lesson
        values = lesson.values
        parameters = [_lasting(parameter) for parameter in lesson.parameters]
        if [row.parameter for row in self.rows.values()] != parameters:
            old, self.rows = self.rows, {}
            for parameter in parameters:
                row = old.get(parameter.name)
                if row is None or row.parameter != parameter:
                    row = ParameterRow(parameter, values[parameter.name], lesson.units, self._slid, self._refused)
                self.rows[parameter.name] = row
            self._sliders.children = [row.widget for row in self.rows.values()]
            for row in old.values():
                if row not in self.rows.values():
                    row.close()
        self.choices.furnish()

    # ---- what people do -----------------------------------------------------------------------------------

    def _guarded(self, act: Callable[[], None]) -> Callable[[Any], None]:
        """`act` as a callback: it speaks the lesson's language, and what goes wrong is told in words."""

        def guarded(_: Any) -> None:
            with in_words_of(self.lesson):
                self._set_anew()
                try:
                    act()
                except Exception as error:
                    self._refused(error)

        return guarded

    def _set_anew(self) -> None:
        """The reader sets something: what was refused before is told no longer."""
        self._said = ""
        for row in self.rows.values():
            row.pardon()

    def _changed(self) -> None:
        self._moved_last, self._room = "", (None, 0.0)
        self._saving.ask()

    @spoken
    def _slid(self, name: str, value: float) -> None:
        kind = self.rows[name].parameter.kind
        self._set_anew()
        self._moved_last = name
        try:
            self.lesson.change(**{name: Length(value) if kind == "length" else value})
        except KitError as error:
            self._refused(error)
            self.rows[name].refuse(error)
            return
        self._saving.ask()

    def _mended(self, remedy: Remedy) -> None:
        """A remedy was set: its button goes, and the keyboard goes on from the value that was moved."""
        self._saving.ask()
        name = remedy.names[0]
        if name in self.rows:
            self.rows[name].box.focus()

    def _refused(self, error: Exception) -> None:
        self._said = fragments.plain(error)
        self.message.value = fragments.message(self._said)

    # ---- drawing ------------------------------------------------------------------------------------------

    @spoken
    def _draw(self) -> None:
        rewritten, self._rewritten = self._rewritten, False
        if rewritten:
            self._furnish()
            self._room = (None, 0.0)
        trouble = self._said
        try:
            pattern, open_outline = self._worked(rewritten)
            trouble = trouble or open_outline
            self._good = fragments.picture(self._drawing(pattern), self._wide, self._high)
            self.pattern = pattern
            self.drawn += 1
            self._show_picture(self._good)
            self.tried_on.measure()
            self._measured = fragments.finished(pattern, self.lesson.units)
            self.finished.value = self._measured
            self._follow(pattern, unproved=bool(open_outline))
        except Exception as error:  # whatever happens, the slider keeps working and the reader is told
            trouble = fragments.plain(error)
            self.pattern = None
            self.picture.value = fragments.old(self._good) if self._good else ""
            self.finished.value = fragments.dimmed(self._measured) if self._measured else ""
            self._follow(None, trouble)
        self.message.value = fragments.message(trouble)
        self._end_sliders()
        self._show_choices()

    def _end_sliders(self) -> None:
        """Each slider ends where the other values end it, as the bounds say that the lesson's author wrote."""
        lesson = self.lesson
        known = Known({parameter.name: parameter for parameter in lesson.parameters}, lesson.values, lesson.body)
        for row in self.rows.values():
            if row.parameter.at_least is not None or row.parameter.at_most is not None:
                with suppress(KitError):  # what is wrong with a bound is told by the draft
                    row.end(narrowed(row.parameter, known))

    def _follow(self, pattern: Pattern | None, trouble: str = "", *, unproved: bool = False) -> None:
        """The proof, cloth and pages follow a pattern that is another one now."""
        lesson = self.lesson
        stamp = (
            lesson.entries,
            lesson.stale(),
            lesson.body,
            tuple(lesson.values.items()),
            lesson.info,
            lesson.units,
            trouble,
        )
        if stamp == self._stamp and not (self._checking.stopped or self.figures.stopped or self.remedies.stopped):
            return
        self._stamp = stamp
        self.figures.follow(pattern)
        self._checking.drop()
        if pattern is None or unproved:
            self.proof.value = self._proved = ""
            for name, row in self.rows.items():
                moved = bool(trouble) and name == self._moved_last
                row.mark(ProofNote(trouble, trouble, brought=True) if moved else None)
            if pattern is None:
                self.remedies.seek(self._moved_last, refused=True)
            else:
                self.remedies.clear()
            return
        self.remedies.clear()
        waiting = fragments.checking(self._proved)
        if self.proof.value != waiting:
            self.proof.value = waiting
        self._checking.ask()

    def _worked(self, rewritten: bool) -> tuple[Pattern, str]:
        """The pattern, and what is still open in it. While a lesson is being written its outlines may stand
        open between one step and the next; a moved slider gets no such leave."""
        lesson = self.lesson
        handed = None if rewritten else followers(lesson).handed(lesson)
        if handed is not None:
            return handed, ""
        try:
            return lesson.work(), ""
        except KitError as error:
            if self._good and not rewritten:
                raise
            return work(lesson.definition, lesson.body, lesson.values, whole=False), fragments.plain(error)

    def _drawing(self, pattern: Pattern) -> Drawing:
        compared = self.tried_on.drawing(pattern, self._compared)
        if compared is not None:
            return compared
        kind, name = self.view.value
        system = self.lesson.units
        if kind == "step":
            for record in pattern.steps:
                if record.key == name:
                    return step_drawing(record, system)
        if kind == "flat":
            from kit.picture.flat import laid_flat

            if name == "worn":
                from kit.picture.worn_view import worn_drawing

                on_body = worn_drawing(pattern)
                if on_body is not None:
                    return on_body
            return laid_flat(pattern, "back" if name == "back" else "front")
        return bench_drawing(pattern, system)

    def _compared(self, drawing: Drawing) -> None:
        """Before and after a fitting, with what moved measured."""
        if self.pattern is not None:
            self._good = fragments.picture(drawing, self._wide, self._high)
            self._show_picture(self._good)

    def _roomy(self, wide: float, high: float) -> None:
        """The browser's picture has this much room, CSS px."""
        least = 200.0
        room = (max(wide, least), max(high, least)) if wide < _NARROW else (_WIDTH, _HEIGHT)
        if room != (self._wide, self._high):
            self._wide, self._high = room
            self._latest.ask()

    def _show_picture(self, html: str) -> None:
        """The picture in a room that grows with it but does not shrink while one view is looked at, so that what
        stands below keeps its place."""
        looked = (self.view.value, self.tried_on.begun is None, self.tried_on.chosen is None)
        high = fragments.height(html)
        if looked != self._room[0] or high > self._room[1]:
            self._room = (looked, high)
            self.picture.layout.min_height = f"{high:.0f}px"
        self.picture.value = html

    def _show_choices(self) -> None:
        """Rows, size and units as the lesson has them, whoever changed them."""
        lesson = self.lesson
        values = lesson.values
        before = self.tried_on.before()
        follows = _follows(lesson, values)
        for name, row in self.rows.items():
            if name in values:
                row.show(values[name], lesson.units)
                row.follow(follows.get(name, ""))
                row.was(before.get(name, ""))
        self.choices.show()
        self.tried_on.show()
        if self._fitted != (lesson.body, tuple(self.rows)):
            self._fitted = lesson.body, tuple(self.rows)
            self.fit.show()

    # ---- when the sliders rest ----------------------------------------------------------------------------

    @spoken
    def _save(self) -> None:
        try:
            self.lesson.save()
        except KitError as error:
            self._refused(error)

    def _estimates(self) -> str:
        body, used = self.lesson.body, self.lesson.measures
        own = {one.name: one.said for one in self.lesson.sizes.own}
        names = strung([own.get(one.name) or said(one.name) for one in body.estimated if one.name in used])
        return say("panel.estimates", name=body.name, measures=names) if names else ""

    def _check(self) -> Iterator[Show]:
        lesson, pattern = self.lesson, self.pattern
        if pattern is None:
            return
        with in_words_of(lesson):
            stale = strung([say("panel.quoted", title=title) for title in lesson.stale()])
            gone = say("panel.stale", titles=stale) if stale else ""
            broken = troubles(lesson.sitting, lesson.definition)
            left = say("panel.left_values") if self.choices.left_by_last_session else ""
            yield partial(setattr, self.notes, "value", fragments.notes([*broken, gone, left, self._estimates()]))
            try:
                from kit.proof import prove

                found = prove(pattern)
                names = {p.name: p.label for p in lesson.parameters}
                leads = {f: parameters_of(f, pattern, lesson.entries, names) for f in found}
                html = fragments.proof(found, pattern, lesson.units, lambda f: [names[name] for name in leads[f]])
            except Exception as error:  # the proof must not take the panel down
                yield partial(self._found, (), {}, fragments.message(fragments.plain(error)))
            else:
                yield partial(self._found, found, leads, html)

    @spoken
    def _found(self, found: Sequence[Finding], leads: dict[Finding, tuple[str, ...]], html: str) -> None:
        """What the proof found, in the list and beside the parameters it depends on."""
        self._proved = html
        self.proof.value = fragments.proved(html)
        self._moves.note(found, self.lesson.values)
        for name, row in self.rows.items():
            row.mark(_mark(name, found, leads, self._moves))
        if failed(tuple(found)):
            self.remedies.seek(self._moved_last, refused=False)
        else:
            self.remedies.sound(self.lesson.values)


def _mark(name: str, found: Sequence[Finding], leads: dict[Finding, tuple[str, ...]], moves: Moves) -> ProofNote | None:
    worth = [finding for finding in found if finding.level != "note"]
    brought = [finding for finding in worth if name in moves.brought(finding)]
    mine = brought or [finding for finding in worth if name in leads.get(finding, ())]
    if not mine:
        return None
    told = [say("panel.marked_with", level=say(f"panel.level_{f.level}"), what=str(f)) for f in mine]
    short = told[0] if brought else say("panel.marked", count=len(mine))
    return ProofNote(short, "\n".join(told), bool(brought))


_open: WeakSet[Panel] = WeakSet()


@atexit.register
def _save_all() -> None:
    """A kernel that is restarted just after a move still keeps the move."""
    for one in tuple(_open):
        if one._saving.pending:
            one._saving.now()
