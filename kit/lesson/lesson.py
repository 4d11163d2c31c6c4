"""The lesson as an author writes it in a notebook, and a reader tries it.

A `Lesson` holds two values: a `Definition`, what was written, and a `Sitting`, what is set at present. Its verbs put
another in the place of one of them and tell the listener. It holds no geometry: `work` gives a fresh pattern each time,
from the start, for one body and one set of values.
"""

from __future__ import annotations

import datetime
import inspect
from collections.abc import Callable, Iterable, Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from typing import Any, Self, TypeVar, cast, get_args

from kit.body.body import NOBODY, Body
from kit.body.chart import SizeChart, workshop_chart
from kit.errors import KitError, near
from kit.lesson import definition as defining
from kit.lesson import sitting as sitting_down
from kit.lesson.bounds import bounded
from kit.lesson.cells import running_cell, saved_cells
from kit.lesson.definition import Definition, as_read, slug
from kit.lesson.ease import measured
from kit.lesson.exercise import Exercise, exercise_of
from kit.lesson.fit_change import named as fit_named
from kit.lesson.fit_steps import fit_entry, fit_parameter, with_fits
from kit.lesson.fits_asked import FitsAsked
from kit.lesson.fitting import Begun, Fitting, FittingCell, fitting_between, fitting_of, undone
from kit.lesson.following import following_parameter, follows
from kit.lesson.goals import Goal
from kit.lesson.halted import Asked, moved_on
from kit.lesson.listener import AskedWalk, Listener, Nobody, listener_of
from kit.lesson.own_measure import Kind as MeasureKind
from kit.lesson.own_measure import OwnMeasure, own_measure
from kit.lesson.parameter import Bound, Parameter, Setting, given_values, in_units, parameter_of
from kit.lesson.parameter import Kind as ParameterKind
from kit.lesson.pattern import Fit, LessonInfo, Nap, Pattern, Words
from kit.lesson.presets import Preset, preset_of
from kit.lesson.publishing import Added, check_cover, check_references, checked, photo_of, video_of, widths
from kit.lesson.sitting import Sitting, sat_down
from kit.lesson.steps import Entry, Kind, entry_of, stale
from kit.lesson.time_limit import TIME_LIMIT, checked_limit
from kit.lesson.working import work
from kit.placeholder import split
from kit.sewing.handling import KINDS as HANDLING
from kit.units import Said, Size, System, length, system_said

F = TypeVar("F", bound=Callable[..., Any])
WORDS: tuple[str, ...] = get_args(Words)
BySize = Mapping[str, Any] | Sequence[Any]
"""One value for each size of the chart: by its name, or in their order."""
Following = Callable[..., Any] | BySize
"""A value that follows from the body: a function of measurements, or one for each size."""


class Lesson:
    """A lesson: `title`; `start`, a block or traced top (called with a body, gives pieces); `units` "cm" or "inch"
    ("in") first in every text; `sizes`, the chart readers choose from; `nap` says whether the cloth has one ("none",
    "one_way", or a "print" to match); `whys` prints why each sewing operation is done as it is; `handling` names what
    is told of handling the cloth: "stretch" (edges that lie across the grain), "curve" (a curve sewn to a straighter
    edge), "cloth" (needle and stitch for its weight); `language` is that of the lesson's own words (BCP 47);
    `shrinkage`, 0 to 0.3, is how much the cloth loses in length; `stretch`, 0 to 2, how much farther round it goes when
    it is stretched across (0.4: 10 cm become 14), 0 for woven cloth, `stretch_along` how much longer along the grain;
    `fit` is how it means to fit, "close", "easy" or "loose", and asks the ease of that in every size; `cover` is a
    picture in the lesson's folder, told in `cover_alt`; `variations` are (title, words); `no_paper` names pieces that
    are cut by their measures and take no pages, `["collar", "cuff"]`, or `["rectangles"]` for all that can be. The rest
    is printed in the booklet. Drafting that takes longer than `time_limit` seconds is stopped, and the step named.

    Running the cell that makes a lesson again keeps the steps that later cells added to it.

    >>> from kit import bodice_block, cm
    >>> lesson = Lesson("Shoreline top", start=bodice_block)
    >>> drop = lesson.length("hem_drop", 8 * cm, least=2 * cm, most=20 * cm, why="how far the hem falls")
    >>> lesson.values, [piece.name for piece in lesson.work().pieces]
    ({'hem_drop': 80.0}, ['front', 'back'])
    """

    def __init__(
        self,
        title: str,
        *,
        start: Callable[[Body], Sequence[Any]],
        units: Said = "cm",
        sizes: SizeChart | None = None,
        size: str = "",
        edition: str = "1",
        date: str = "",
        author: str = "",
        summary: str = "",
        level: str = "",
        cloth: str = "",
        cloth_widths: Sequence[Size] = ("140 cm",),
        notions: Sequence[str] = (),
        cautions: Sequence[str] = (),
        nap: str = "none",
        whys: bool = False,
        handling: Sequence[str] = HANDLING,
        language: str = "en",
        fibre: str = "",
        weight: str = "",
        drape: str = "",
        avoid: str = "",
        prewash: str = "",
        shrinkage: float = 0.0,
        licence: str = "",
        credits: Sequence[str] = (),
        cover: str = "",
        cover_alt: str = "",
        variations: Sequence[tuple[str, str]] = (),
        stretch: float = 0.0,
        size_breaks: Sequence[str] = (),
        stretch_along: float = 0.0,
        fit: str = "",
        time_limit: float = TIME_LIMIT,
        care: str = "",
        no_paper: Sequence[str] = (),
    ) -> None:
        _check_start(start, title)
        limit = checked_limit(time_limit, title)
        info = checked(
            LessonInfo(
                title=title,
                slug=slug(title),
                units=system_said(units, title),
                edition=str(edition),
                date=date,
                author=author,
                summary=summary,
                cloth=cloth,
                cloth_widths=widths(cloth_widths, title),
                notions=notions,  # type: ignore[arg-type]  # made a tuple when checked
                level=level,
                cautions=cautions,  # type: ignore[arg-type]
                start_notes=tuple(getattr(start, "notes", ())),
                nap=cast("Nap", nap),
                whys=bool(whys),
                handling=handling,  # type: ignore[arg-type]
                language=language,
                fibre=fibre,
                weight=weight,
                drape=drape,
                avoid=avoid,
                prewash=prewash,
                care=care,
                shrinkage=shrinkage,
                stretch=stretch,
                stretch_along=stretch_along,
                fit=cast("Fit", fit),
                licence=licence,
                credits=credits,  # type: ignore[arg-type]
                cover=cover,
                cover_alt=cover_alt,
                variations=variations,  # type: ignore[arg-type]
                size_breaks=size_breaks,  # type: ignore[arg-type]
                no_paper=no_paper,  # type: ignore[arg-type]
            )
        )
        check_cover(info)
        chart = sizes if sizes is not None else workshop_chart()
        self._definition = Definition(info, start, sizes=chart, time_limit=limit)
        self._sitting = sat_down(self._definition, size)
        self._parent: Lesson | None = None
        self._fits_asked = FitsAsked()
        self._listener: Listener = listener_of(self)
        self._listener.began()

    @classmethod
    def of(cls, block: Any) -> Self:
        """A lesson that drafts a block step by step, to read, to change and to show. `KitError` when the block is
        not written in steps."""
        drafted: Definition = block.definition
        new = cls(drafted.info.title, start=drafted.start)
        new._definition = replace(new._definition, entries=drafted.entries, parameters=drafted.parameters)
        return new

    # ---- parameters -----------------------------------------------------------------------------------

    def length(
        self,
        name: str,
        default: Size | Following,
        *,
        least: Size,
        most: Size,
        why: str = "",
        said: str = "",
        at_least: Bound | None = None,
        at_most: Bound | None = None,
    ) -> Parameter:
        """A parameter that is a length. Its three lengths carry a unit; a bare number is refused. `at_least` and
        `at_most` say what other values leave of its range, as a function that names them: `at_least=lambda hem_rise:
        hem_rise + 5 * mm`; a setting that breaks it is refused with the slider's name.

        `default` may follow from the body: a function that names measurements, `lambda waist_girth: waist_girth / 2 +
        40 * cm`, or one length for each size, `{"S": 12 * cm, "M": 13 * cm}`. It stands until its slider is moved."""
        where = f"Parameter '{name}'"
        if follows(default):
            ends = (float(length(least, where)), float(length(most, where)))
            return self._follow(name, "length", default, ends, (why, said), at_least, at_most)
        default = cast("Size", default)
        own, low, high = (float(length(value, where)) for value in (default, least, most))
        return self._offer(bounded(parameter_of(name, "length", own, low, high, why, said), at_least, at_most))

    def share(
        self,
        name: str,
        default: float | Following,
        *,
        least: float = 0.0,
        most: float = 1.0,
        why: str = "",
        said: str = "",
        at_least: Bound | None = None,
        at_most: Bound | None = None,
    ) -> Parameter:
        """A parameter that is a part of something, 0 to 1, shown in per cent. Bounds and a value that follow as for a
        length."""
        if follows(default):
            return self._follow(name, "share", default, (least, most), (why, said), at_least, at_most)
        default = cast("float", default)
        return self._offer(bounded(parameter_of(name, "share", default, least, most, why, said), at_least, at_most))

    def count(
        self,
        name: str,
        default: int | Following,
        *,
        least: int = 0,
        most: int = 99,
        why: str = "",
        said: str = "",
        at_least: Bound | None = None,
        at_most: Bound | None = None,
    ) -> Parameter:
        """A parameter that is a whole number. Bounds and a value that follow as for a length."""
        if follows(default):
            return self._follow(name, "count", default, (least, most), (why, said), at_least, at_most)
        default = cast("int", default)
        return self._offer(bounded(parameter_of(name, "count", default, least, most, why, said), at_least, at_most))

    def measurement(
        self, name: str, values: Size | BySize, *, note: str = "", said: str = "", kind: MeasureKind | None = None
    ) -> OwnMeasure:
        """A measurement of the lesson's own, which the kit's table has not: steps ask for it by `name`, `note` says how
        it is taken, `said` what people call it. `values` are lengths, one for each size of the chart: a list in their
        order, or `{"S": 54 * cm, "M": 57 * cm}`. It stands in size chart, body form, body file and booklet like any
        other; of a body that was not measured there it is estimated from the chart, a "height" (along the body) by the
        person's height too: `kind` is that, "girth" (around) or "width" (across); left out, it is read from the end of
        the name (`crown_height`), else a height. Of the table's own it gives a chart the values it lacks. Raises
        `KitError` without a note, for another kind, and for a size that has no value.

        >>> from kit import blank_paper, cm, read_chart
        >>> hats = read_chart("measure,S,M,L\\nhead_girth,55,57,59", "Hats")
        >>> lesson = Lesson("Brim hat", start=blank_paper, sizes=hats)
        >>> crown = [17 * cm, 17.5 * cm, 18 * cm]
        >>> made = lesson.measurement("crown_height", crown, note="From the brow line up to the top of the head.")
        >>> lesson.sizes["L"]["crown_height"]
        180.0
        """
        new = own_measure(name, values, note, said, kind, self._definition.chart, *running_cell())
        self._write(self._definition.with_own(new))
        return new

    def _follow(
        self,
        name: str,
        kind: ParameterKind,
        default: Any,
        ends: tuple[float, float],
        words: tuple[str, str],
        at_least: Bound | None,
        at_most: Bound | None,
    ) -> Parameter:
        new = bounded(following_parameter(name, kind, default, ends, words, self._definition.chart), at_least, at_most)
        return self._offer(new)

    def _offer(self, new: Parameter) -> Parameter:
        self._write(self._definition.with_parameter(new))
        return new

    def preset(self, title: str, /, **values: Setting) -> Preset:
        """Offer a named set of values on the panel: `lesson.preset("Long sleeve", sleeve_length=45 * cm)`. What it does
        not name stands at the lesson's own value. A cell run again replaces what it wrote, as does the same title
        elsewhere. Raises `KitError` without a title or values, for an unknown parameter and for a value that is no
        length or out of its range."""
        new = preset_of(title, values, self.parameters, *running_cell())
        self._write(self._definition.with_preset(new))
        return new

    # ---- what it teaches ------------------------------------------------------------------------------

    def step(
        self, title: str, *, makes: str | Sequence[str] = (), strips: str | Sequence[str] = (), after: str = ""
    ) -> Callable[[F], F]:
        """A drafting step. Its arguments say what it uses; its docstring is what students read. `makes` names
        new pieces, `strips` new strips, that it draws; they are arguments too. In a variation a step takes the place
        of the one it is named like, or comes right `after` the step of that name."""
        return self._adding("step", title, _names(makes), _names(strips), after)

    def sew(self, title: str, *, after: str = "", words: str = "before") -> Callable[[F], F]:
        """A sewing step: asks for `make`, pieces, strips and parameters by name. `after` as in `step`. The docstring is
        read "before" the sentences of its operations, "after" them, or "instead" of them."""
        if words not in WORDS:
            raise KitError(f"words is {words!r}.", where=f"Step '{title}'", do=near(words, WORDS))
        return self._adding("sew", title, after=after, words=cast("Words", words))

    def finished(self, title: str, *, over: str = "") -> Callable[[F], F]:
        """A finished measurement: a function of pieces that returns a length. `over` names the body measurement it
        goes over, so that its ease can be told."""
        return self._adding("finished", title, over=over and measured(over, title, self.body))

    def _adding(
        self,
        kind: Kind,
        title: str,
        makes: tuple[str, ...] = (),
        strips: tuple[str, ...] = (),
        after: str = "",
        words: Words = "before",
        over: str = "",
    ) -> Callable[[F], F]:
        def add(function: F) -> F:
            cell, run = running_cell()
            entry = entry_of(kind, title, function, makes, strips, cell=cell, run=run, words=words, over=over)
            self._definition = self._definition.with_entry(entry if after else self._placed(entry), after=after)
            self._listener.wrote(entry)
            return function

        return add

    def _placed(self, entry: Entry) -> Entry:
        """In a variation, a step named like one of the parent's keeps that one's place."""
        if self._parent is None:
            return entry
        same = [e for e in self._parent.entries if (e.kind, e.name) == (entry.kind, entry.name)]
        return replace(entry, placed=same[0].placed or same[0].cell) if same else entry

    def exercise(
        self,
        title: str,
        task: str = "",
        *,
        goals: Iterable[Goal] | Goal,
        hints: Iterable[str] | str = (),
        answer: Mapping[str, Setting] | None = None,
    ) -> Exercise:
        """An exercise for the class copy; the booklet leaves it out. `goals` are made by `grows`, `shrinks`, `keeps`,
        `is_length`, `at_least`, `at_most`, `moves` and `passes_proof`; `hints` come one at a time. `answer` is values
        that solve it, lengths with a unit, written out here: a class copy checks them once and leaves them out.
        Written again under the same title it takes the former's place. Raises `KitError` for an exercise without a
        title or goals."""
        new = exercise_of(title, task, goals, hints, answer, *running_cell())
        self._definition = self._definition.with_exercise(new)
        self._listener.wrote_exercise(new)
        return new

    def photo(self, file: str, *, beside: str, alt: str = "", caption: str = "") -> None:
        """Print the picture `file` of the lesson's folder beside a step or sewing step; `beside` is the name of its
        function. `alt` says what the picture shows, for those who cannot see it. Running the cell again replaces
        it; so does the same file beside the same step."""
        new = Added(photo_of(file, beside, alt, caption), *running_cell())
        self._definition = self._definition.with_photo(new)

    def video(self, address: str, /, **marks: object) -> None:
        """A film on the web and where in it each step is shown: `lesson.video("https://example.org/film",
        hem_it="1:02:10")`. Marks are "m:ss", "h:mm:ss" or seconds. Without marks, those recorded beside the notebook
        are used."""
        self._definition = self._definition.with_video(Added(video_of(address, marks), *running_cell()))

    def remove(self, *names: str) -> None:
        """Take steps out by their functions' names, or parameters that nothing uses any more."""
        self._write(self._definition.without(*names))

    def fit_change(self, name: str, amount: Size = 0, *, after: str = "") -> Parameter:
        """Alter the pattern for another figure, under the name the trade has for it: `lesson.fit_change("full bust",
        3 * cm)`. It is a drafting step at this place among the others, or right `after` the step of that name, and a
        parameter that the reader may move; what is drawn later follows. `amount` is the whole, round the body or at the
        centre. Without an amount it stands at nothing, to be moved. Raises `KitError` for a change there is not and for
        more than it can be.

        >>> from kit import cm, darted_bodice_block
        >>> lesson = Lesson("Blouse", start=darted_bodice_block)
        >>> lesson.fit_change("full bust", 3 * cm).name
        'full_bust'
        >>> lesson.work().steps[0].title
        'Full bust'
        """
        change = fit_named(name)
        cell, run = running_cell()
        default = float(length(amount, f"Fit change '{name}'"))
        new = fit_parameter(change, self.info.language, default)
        if not 0.0 <= default <= change.most:
            new.checked(default)
        entry = fit_entry(change, self.info.language, cell=cell, run=run)
        self._definition = self._definition.with_parameter(new)
        self._definition = self._definition.with_entry(entry if after else self._placed(entry), after=after)
        self._fits_asked.forget(change.name)
        self._listener.rewritten()
        return new

    @property
    def fit_changes(self) -> tuple[Parameter, ...]:
        """The fit changes that may be set by their amount though the author placed none: `lesson.change(full_bust=3 *
        cm)`. Those that can be made to this garment."""
        return self._fits_asked.offered(self._definition, self._fit_body)

    def _fit_body(self) -> Body:
        return self.body if self._definition.measures else NOBODY

    def _fits(self) -> dict[str, int]:
        """The changes set by a reader, each with its place among the entries."""
        values = {**self._sitting.saved.values, **self._sitting.moved}
        return self._fits_asked.placed(self._definition, values, self._fit_body)

    def _with_fits(self, definition: Definition) -> Definition:
        asked = self._fits()
        return with_fits(definition, asked) if asked else definition

    def variation(self, title: str, *, start: Callable[[Body], Sequence[Any]] | None = None, **changes: Any) -> Self:
        """A lesson of its own that keeps this one's parameters and steps; change values, replace, add and remove steps
        on it. One that names another `cloth` says anew what `fibre`, `weight`, `drape`, `avoid`, `prewash` and `care`
        are for it; nothing of that is kept. `start` has it begin from another block or traced top, which needs the
        pieces, edges and points that the steps name."""
        marks = self._sitting.saved.marks
        if start is not None:
            _check_start(start, title)
            changes["start_notes"] = tuple(getattr(start, "notes", ()))
        definition = defining.variation(self._definition, title, changes, marks)
        if start is not None:
            definition = replace(definition, start=start)
        new = _put_together(type(self), definition, sitting_down.varied(self._sitting, definition))
        new._parent = self
        new._listener = listener_of(new)
        return new

    def walk(self, first: str, second: str, *, turned: bool | None = None, ease: Size = 0) -> None:
        """Show two edges walked under the cell, and keep the picture up to date: edge `second` rolled along edge
        `first`, named as "front.side" ("front.underarm + front.side" for several in a row), with the difference at
        every notch, corner and mark. `turned` says by hand that the second is walked from its end, `ease` by how much
        it is meant to be longer. Out of a notebook the words are printed; a build leaves it out."""
        self._listener.walk(AskedWalk(first, second, turned, float(length(ease, "walk, ease"))))

    def words(self, text: str) -> None:
        """Words of the lesson in a code cell, as markdown with live values: `lesson.words("A longer sleeve than
        {sleeve_length}.")`. They name whatever a markdown cell may name, `{overarm:step}` too. On the notebook's page
        they show the numbers and follow the sliders, in the booklet they stand in the cell's place. Raises `KitError`
        for what is no text and for a brace that stands alone."""
        if not isinstance(text, str):
            raise KitError(f"words are {text!r}.", where="words", do='Write lesson.words("...") with a text.')
        split(text)
        self._listener.words(inspect.cleandoc(text))

    def _write(self, definition: Definition) -> None:
        self._definition = definition
        with suppress(KitError):  # half written: nothing can be said of its values yet
            moved_on(self._asked)
        self._listener.rewritten()

    # ---- trying it ------------------------------------------------------------------------------------

    def change(self, **values: Setting) -> None:
        """Set parameters (lengths with a unit); `KitError` outside their range, and then none is set. Call `save` to
        keep them."""
        own = self.parameters
        more = self._fits_asked.more(self._definition, own, values, self._fit_body)
        self._move(given_values((*own, *more), values), whole=False)

    def use_preset(self, title: str) -> None:
        """Set every parameter as that preset says. `KitError` with the near title for one that is not offered."""
        values = self._definition.fitted(self.body).preset_values(title)
        if values:
            self._move(values, whole=True)

    def reset(self) -> None:
        """Every parameter back to its default."""
        before, fits = self.values, self._fits()
        self._sitting = replace(self._sitting, moved={}, saved=replace(self._sitting.saved, values={}))
        if fits:
            self._listener.rewritten()
        self._moved(before, whole=True)

    def _move(self, values: Mapping[str, float], *, whole: bool) -> None:
        before, fits = self.values, set(self._fits())
        moved = {**self._sitting.moved, **values}
        saved = self._sitting.saved
        # What is set to just what it follows from goes on following.
        own = {p.name for p in self.parameters if p.is_following and abs(moved.get(p.name, -1.0) - p.default) < 1e-6}
        if own:
            saved = replace(saved, values={name: value for name, value in saved.values.items() if name not in own})
        kept = {name: value for name, value in moved.items() if name not in own}
        self._sitting = replace(self._sitting, moved=kept, saved=saved)
        if set(self._fits()) != fits:
            self._listener.rewritten()
        self._moved(before, whole=whole)

    def _moved(self, before: Mapping[str, float], *, whole: bool) -> None:
        """Values or the body are others than `before`."""
        moved_on(self._asked)
        self._listener.moved(before, whole=whole)

    def _asked(self) -> Asked:
        """What a draft of the lesson as it is set now is asked for."""
        return self.definition.entries, self.body if self.measures else NOBODY, self.values

    def undo(self) -> bool:
        """Take the last change of values back; whether there was one. Only a notebook remembers them."""
        return self._listener.undo()

    def redo(self) -> bool:
        """Make the change taken back last again; whether there was one."""
        return self._listener.redo()

    def choose(self, *, size: str = "", body: Body | None = None, units: Said | None = None) -> None:
        """Choose a size of the chart or a body, and the units read first."""
        new = sitting_down.chosen(self._sitting, self.sizes, size=size, body=body, units=units)
        # Refused before anything is changed: what follows from the body is read with every parameter.
        self._definition.completed(new.body)
        self._definition.fitted(new.body)
        self._sitting = new
        self._moved(self.values, whole=False)

    def help(self, topic: str = "") -> None:
        """Show the reference's entry of a verb, `lesson.help("set_band")`, or which verbs do a thing of the trade,
        `lesson.help("curved hem")`; without a topic, every verb by subject. `KitError` with the near ones when there is
        no such entry."""
        self._listener.asked(topic)

    def save(self) -> None:
        """Keep size, units and the values that differ from their defaults in the sidecar file: a default changed
        later in the notebook then counts."""
        kept = sitting_down.save(self._sitting, self._with_fits(self._definition))
        if kept != self._sitting.sidecar:  # set by itself: a value that another thread moved meanwhile stays
            self._sitting = replace(self._sitting, sidecar=kept)

    def work(
        self,
        body: Body | None = None,
        values: Mapping[str, float] | None = None,
        *,
        time_limit: float | None = None,
    ) -> Pattern:
        """The pattern for a body (or size chosen) and values (name -> mm, share, count; else the current
        ones), drafted within `time_limit` seconds (None: the lesson's own). Raises `KitError` for what cannot be
        drafted, or not in that time."""
        worn = (body or self.body) if self.measures else NOBODY
        given = values_for(self, worn) if values is None else values
        limit = None if time_limit is None else checked_limit(time_limit, self.info.title)
        pattern = work(self.definition, worn, given, time_limit=limit)
        check_references(pattern)
        return pattern

    # ---- fittings -------------------------------------------------------------------------------------

    def fitting(self, title: str, why: str = "", /, *, date: str = "", **changes: tuple[Setting, Setting]) -> Fitting:
        """Record in the notebook what a try-on changed and why, each parameter with its value before and after:
        `lesson.fitting("First toile", "The shoulder pulled.", shoulder_lift=(0.8 * cm, 1.2 * cm))`. It changes no
        value. A cell run again replaces what it wrote. `KitError` for an unknown parameter, for a value that is no
        length or out of its range, and when nothing is named or nothing changes."""
        new = FittingCell(fitting_of(title, why, date, changes, self.parameters), *running_cell())
        self._definition = self._definition.with_fitting(new)
        return new.fitting

    def begin_fitting(self, title: str) -> None:
        """Remember every parameter's value now, before a try-on."""
        if not title.strip():
            raise KitError("a fitting needs a title.", where="Fitting", do='Write, say, "First toile".')
        self._sitting = replace(self._sitting, begun=Begun(title.strip(), tuple(self.values.items())))

    def drop_fitting(self) -> None:
        """Give up the fitting that is going on and set every parameter back to what it was when it began. `KitError`
        when a parameter cannot go back."""
        begun = self._sitting.begun
        if begun is not None:
            back = in_units(self.parameters, dict(begun.values))
            self._sitting = replace(self._sitting, begun=None)
            if back:
                self.change(**back)

    def keep_fitting(self, why: str, *, date: str | None = None) -> Fitting:
        """Record what changed since the fitting began, today or on `date`, and save it with the values. `KitError`
        when none was begun or nothing changed."""
        begun = self._sitting.begun
        if begun is None:
            raise KitError("no fitting has been begun.", do='Begin one first: lesson.begin_fitting("First toile").')
        day = datetime.date.today().isoformat() if date is None else date
        new = fitting_between(begun, why, day, self.values, self.parameters)
        self.save()
        kept = (*self._sitting.kept_fittings(self._definition), new)
        self._sitting = replace(sitting_down.with_fittings(self._sitting, self._definition, kept), begun=None)
        return new

    def take_back(self, index: int) -> Fitting:
        """Remove the fitting of that place in `fittings` and set its parameters back to what they were before it.
        `KitError` when there is none, when it is written in the notebook, when a later one changed the same parameter
        again, or when a parameter cannot go back."""
        written = len(self._definition.fittings)
        gone = undone(self.fittings, index, written)
        try:
            back = in_units(self.parameters, gone.before)
        except KitError as error:
            raise error.at(f"Fitting '{gone.title}'") from None
        self.change(**back)
        self.save()
        kept = list(self._sitting.kept_fittings(self._definition))
        del kept[index - written]
        self._sitting = sitting_down.with_fittings(self._sitting, self._definition, kept)
        return gone

    # ---- what it is -----------------------------------------------------------------------------------

    @property
    def definition(self) -> Definition:
        """The lesson as a value, as it is worked: steps in the order of the saved notebook, photos and films told in
        its `info`."""
        read = as_read(self._definition.fitted(self.body), saved_cells(), self._sitting.saved.marks)
        return self._with_fits(read)

    @property
    def sitting(self) -> Sitting:
        """What is set at present, and what is kept beside the notebook. Another may be put in its place."""
        return self._sitting

    @sitting.setter
    def sitting(self, sitting: Sitting) -> None:
        self._sitting = sitting

    @property
    def info(self) -> LessonInfo:
        """What it says of itself."""
        return self._definition.info

    @property
    def start(self) -> Any:
        """The block or traced top it starts from."""
        return self._definition.start

    @property
    def sizes(self) -> SizeChart:
        """The chart its readers choose from."""
        return self._definition.chart

    @property
    def parameters(self) -> tuple[Parameter, ...]:
        """The numbers a reader may change; those that follow from the body as for the one chosen."""
        return self._with_fits(self._definition.fitted(self.body)).parameters

    @property
    def entries(self) -> tuple[Entry, ...]:
        """Its steps, sewing steps and finished measurements, in the order they were written."""
        return self._definition.entries

    @property
    def presets(self) -> tuple[Preset, ...]:
        """The named sets of values it offers."""
        return self._definition.presets

    @property
    def exercises(self) -> tuple[Exercise, ...]:
        """Its exercises."""
        return self._definition.exercises

    @property
    def fittings(self) -> tuple[Fitting, ...]:
        """Those written in the notebook, then those kept at live try-ons."""
        written = tuple(one.fitting for one in self._definition.fittings)
        return (*written, *self._sitting.kept_fittings(self._definition))

    @property
    def measures(self) -> tuple[str, ...]:
        """The body measurements its block and its steps use, in the order of the measurement table."""
        return self._definition.measures

    @property
    def parent(self) -> Lesson | None:
        """The lesson this one is a variation of."""
        return self._parent

    @property
    def values(self) -> dict[str, float]:
        """The current value of every parameter: moved in this session, else saved, else its default."""
        return self._sitting.values(self.parameters)

    @property
    def body(self) -> Body:
        """The body or size chosen."""
        return self._definition.completed(self._sitting.body)

    @property
    def units(self) -> System:
        """The units read first."""
        return self._sitting.units

    def stale(self) -> tuple[str, ...]:
        """Titles of steps whose cell is not in the saved notebook any more."""
        return tuple(e.title for e in stale(self.entries, saved_cells()))

    def __repr__(self) -> str:
        return f"<Lesson '{self.info.title}': {len(self.entries)} steps>"


def _names(given: str | Sequence[str]) -> tuple[str, ...]:
    return (given,) if isinstance(given, str) else tuple(given)


# ---- for those who sit beside a lesson ----------------------------------------------------------------------

L = TypeVar("L", bound=Lesson)


def _put_together(kind: type[L], definition: Definition, sitting: Sitting) -> L:
    new = kind.__new__(kind)
    new._definition, new._sitting, new._parent, new._listener = definition, sitting, None, Nobody()
    new._fits_asked = FitsAsked()
    return new


def rewrite(lesson: Lesson, **changes: Any) -> None:
    """Put other things in the place of what was written: `rewrite(lesson, entries=...)`, fields of a `Definition`."""
    lesson._write(replace(lesson._definition, **changes))


def values_for(lesson: Lesson, body: Body) -> dict[str, float]:
    """Every parameter's value with another body in it: what was moved stays, what follows from the body follows."""
    parameters = lesson._with_fits(lesson._definition.fitted(body)).parameters
    return {**{p.name: p.default for p in parameters}, **lesson._sitting.set_values(parameters)}


def unheard(lesson: Lesson) -> Lesson:
    """A lesson like this one that nobody listens to: what is written on it leaves this one as it is."""
    new = _put_together(Lesson, lesson._definition, lesson._sitting)
    new._parent = lesson._parent
    return new


def take_over(new: Lesson, former: Lesson, cell: str) -> None:
    """Give `new`, made by running `cell` again, what other cells had added to `former` and what was set on it."""
    new._definition = defining.adopted(new._definition, former._definition, cell)
    new._sitting = sitting_down.resumed(new._sitting, former._sitting, new.sizes, former.sizes)


def listening(lesson: Lesson) -> Listener:
    """Who listens to a lesson."""
    return lesson._listener


def listen(lesson: Lesson, listener: Listener) -> None:
    """Let `listener` hear what happens to a lesson, instead of whoever did so far."""
    lesson._listener = listener


def _check_start(start: object, title: str) -> None:
    if not callable(start):
        raise KitError(
            "a lesson starts from a block or a traced top.", where=title, do="Write, say, start=bodice_block."
        )
