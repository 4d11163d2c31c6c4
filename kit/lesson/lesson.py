"""The lesson: what a designer writes in a notebook.

A `Lesson` gathers parameters, drafting steps, sewing steps and words. It holds no geometry: `work` gives a
fresh pattern each time, from the start, for one body and one set of values.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from pathlib import Path as FilePath
from typing import Any, Self, TypeVar, cast, get_args

from kit.body.body import NOBODY, Body
from kit.body.chart import SizeChart, workshop_chart
from kit.body.measures import MEASUREMENTS
from kit.errors import KitError, near
from kit.lesson import sidecar
from kit.lesson.cells import running_cell, shell
from kit.lesson.ease import measured
from kit.lesson.exercise import Exercises
from kit.lesson.fitting import Fittings
from kit.lesson.parameter import Kind, Parameter, Setting
from kit.lesson.pattern import LessonInfo, Nap, Pattern, Words
from kit.lesson.presets import Presets
from kit.lesson.publishing import Publishing, check_cover, check_references, checked
from kit.lesson.steps import Entry, added, arguments, following, ordered, stale
from kit.lesson.working import Definition, work
from kit.units import Size, System, length

F = TypeVar("F", bound=Callable[..., Any])
NAPS: tuple[str, ...] = get_args(Nap)
WORDS: tuple[str, ...] = get_args(Words)


def slug(title: str) -> str:
    """A title as a file name: "Tideline wrap top" -> "tideline-wrap-top"."""
    return re.sub(r"[^a-z0-9]+", "-", title.lower()).strip("-") or "lesson"


class Lesson(Fittings, Presets, Publishing, Exercises):
    """A lesson: `title`; `start`, a block or traced top (called with a body, gives pieces); `units` "cm" or
    "inch" first in every text; `sizes`, the chart readers choose from; `nap` says
    whether the cloth has one ("none", "one_way", or a "print" to match); `whys` prints
    why each sewing operation is done as it is; `language` is that of the lesson's own words (BCP 47); `shrinkage`, 0 to
    0.3, is how much the cloth loses in length; `cover` is a picture in the lesson's folder, told in `cover_alt`;
    `variations` are (title, words). The rest is printed in the booklet.

    Running the cell that makes a lesson again keeps the steps that later cells added to it.
    """

    def __init__(
        self,
        title: str,
        *,
        start: Callable[[Body], Sequence[Any]],
        units: System = "cm",
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
    ) -> None:
        if units not in ("cm", "inch"):
            raise KitError(f"units are 'cm' or 'inch', not '{units}'.", where=title)
        if not callable(start):
            raise KitError(
                "a lesson starts from a block or a traced top.", where=title, do="Write, say, start=bodice_block."
            )
        if nap not in NAPS:
            raise KitError(
                f"nap is {', '.join(repr(word) for word in NAPS[:-1])} or {NAPS[-1]!r}, not {nap!r}.",
                where=title,
                do="Say one_way for cloth whose pile or print must run one way, print for a pattern to be matched too.",
            )
        if isinstance(cloth_widths, str) or not isinstance(cloth_widths, Sequence):
            raise KitError(
                f"cloth_widths is {cloth_widths!r}, not a list of widths.",
                where=title,
                do='Write cloth_widths=["140 cm", "112 cm"].',
            )
        info = LessonInfo(
            title=title,
            slug=slug(title),
            units=units,
            edition=str(edition),
            date=date,
            author=author,
            summary=summary,
            cloth=cloth,
            cloth_widths=tuple(float(length(width, "cloth width")) for width in cloth_widths),
            notions=notions,  # type: ignore[arg-type]  # made a tuple when checked
            level=level,
            cautions=cautions,  # type: ignore[arg-type]
            start_notes=tuple(getattr(start, "notes", ())),
            nap=cast("Nap", nap),
            whys=bool(whys),
            language=language,
            fibre=fibre,
            weight=weight,
            drape=drape,
            avoid=avoid,
            prewash=prewash,
            shrinkage=shrinkage,
            licence=licence,
            credits=credits,  # type: ignore[arg-type]
            cover=cover,
            cover_alt=cover_alt,
            variations=variations,  # type: ignore[arg-type]
        )
        self.info = checked(info)
        check_cover(self.info)
        self.start = start
        self.sizes = sizes if sizes is not None else workshop_chart()
        self.parameters: tuple[Parameter, ...] = ()
        self.entries: tuple[Entry, ...] = ()
        self.sidecar: FilePath = sidecar.path_for(self.info.slug)
        self.saved = self._opened = sidecar.read(self.sidecar)
        self._changed: dict[str, float] = {}
        self.parent: Lesson | None = None
        names = list(self.sizes.names)
        wanted = self.saved.size if self.saved.size in names else size or names[len(names) // 2]
        self._body = self.sizes[wanted]
        self.units: System = "inch" if (self.saved.units or units) == "inch" else "cm"
        self.cell, self.run = running_cell()
        self._adopt()

    @classmethod
    def of(cls, block: Any) -> Self:
        """A lesson that drafts a block step by step, to read, to change and to show. `KitError` when the block is
        not written in steps."""
        plain: Lesson = block.lesson
        new = cls(plain.info.title, start=plain.start)
        new.entries, new.parameters = plain.entries, plain.parameters
        return new

    def _adopt(self) -> None:
        """Keep what other cells added to the lesson this one replaces in the notebook."""
        ip = shell()
        for former in list(ip.user_ns.values()) if ip is not None else ():
            if (
                isinstance(former, Lesson)
                and former is not self
                and former.info.slug == self.info.slug
                and self.cell
                and former.cell == self.cell
            ):
                self.entries = tuple(e for e in former.entries if e.cell != self.cell)
                self._changed = dict(former._changed)
                self.exercises = tuple(e for e in former.exercises if e.cell != self.cell)
                self._fittings_of(former, self.cell)
                self._presets_of(former, self.cell)
                self._keep_published(former)
                self._adopted(former)
                return

    def _adopted(self, former: Lesson) -> None:
        """For the live lesson: rebind the widgets of `former`."""

    def _registered(self, entry: Entry) -> None:
        """For the live lesson: show what was just written."""

    # ---- parameters -----------------------------------------------------------------------------------

    def length(self, name: str, default: Size, *, least: Size, most: Size, why: str = "", said: str = "") -> Parameter:
        """A parameter that is a length. Its three lengths carry a unit; a bare number is refused."""
        where = f"Parameter '{name}'"
        numbers = [float(length(value, where)) for value in (default, least, most)]
        return self._parameter(name, "length", numbers, why, said)

    def share(
        self, name: str, default: float, *, least: float = 0.0, most: float = 1.0, why: str = "", said: str = ""
    ) -> Parameter:
        """A parameter that is a part of something, 0 to 1, shown in per cent."""
        return self._parameter(name, "share", [default, least, most], why, said)

    def count(
        self, name: str, default: int, *, least: int = 0, most: int = 99, why: str = "", said: str = ""
    ) -> Parameter:
        """A parameter that is a whole number."""
        return self._parameter(name, "count", [default, least, most], why, said)

    def _parameter(self, name: str, kind: Kind, numbers: Sequence[float], why: str, said: str) -> Parameter:
        where = f"Parameter '{name}'"
        default, least, most = (float(number) for number in numbers)
        if not name.isidentifier():
            raise KitError(f"'{name}' cannot be used as a name in a step.", do="Use letters, digits and _.")
        if least > most:
            raise KitError("the least value is larger than the most.", where=where, do="Swap them.")
        new = Parameter(name, kind, default, least, most, why, said)
        try:
            new.checked(default)
        except KitError as error:
            raise error.at(where) from None
        kept = tuple(p for p in self.parameters if p.name != name)
        at = next((i for i, p in enumerate(self.parameters) if p.name == name), len(kept))
        self.parameters = (*kept[:at], new, *kept[at:])
        return new

    @property
    def values(self) -> dict[str, float]:
        """The current value of every parameter: moved in this session, else saved, else its default."""
        return {p.name: self._changed.get(p.name, sidecar.within(p, self.saved)) for p in self.parameters}

    def change(self, **values: Setting) -> None:
        """Set parameters (lengths with a unit); `KitError` outside their range. Call `save` to keep them."""
        by_name = {p.name: p for p in self.parameters}
        for name, value in values.items():
            if name not in by_name:
                raise KitError(f"there is no parameter '{name}'.", do=near(name, by_name))
            number = float(length(value, name)) if by_name[name].kind == "length" else float(value)  # type: ignore[arg-type]
            self._changed[name] = by_name[name].checked(number)

    def reset(self) -> None:
        """Every parameter back to its default."""
        self._changed = {}
        self.saved = replace(self.saved, values={})

    def save(self) -> None:
        """Keep size, units and the values that differ from their defaults in the sidecar file: a default changed
        later in the notebook then counts."""
        size = self._body.name if self._body.name in self.sizes.names else ""
        values = self.values
        moved = {p.name: values[p.name] for p in self.parameters if values[p.name] != p.default}
        sidecar.write(self.sidecar, self.info.slug, size, self.units, moved)

    # ---- body -----------------------------------------------------------------------------------------

    @property
    def body(self) -> Body:
        return self._body

    @property
    def measures(self) -> tuple[str, ...]:
        """The body measurements its block and its steps use, in the order of the measurement table."""
        asked = [name for entry in self.entries for name in (*entry.uses, entry.over)]
        used = {*getattr(self.start, "measures", ()), *asked}
        return tuple(name for name in MEASUREMENTS if name in used)

    def choose(self, *, size: str = "", body: Body | None = None, units: System | None = None) -> None:
        """Choose a size of the chart or a body, and the units read first."""
        if body is not None:
            self._body = body
        elif size:
            if size not in self.sizes.names:
                raise KitError(f"there is no size '{size}'.", do=near(size, self.sizes.names))
            self._body = self.sizes[size]
        if units is not None:
            self.units = units

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
        return self._adding("sew", title, after=after, words=words)

    def finished(self, title: str, *, over: str = "") -> Callable[[F], F]:
        """A finished measurement: a function of pieces that returns a length. `over` names the body measurement it
        goes over, so that its ease can be told."""
        return self._adding("finished", title, over=over and measured(over, title, self._body))

    def _adding(
        self,
        kind: Any,
        title: str,
        makes: tuple[str, ...] = (),
        strips: tuple[str, ...] = (),
        after: str = "",
        words: str = "before",
        over: str = "",
    ) -> Callable[[F], F]:
        def add(function: F) -> F:
            cell, run = running_cell()
            uses = arguments(function, title)
            for name in (*makes, *strips):
                if name not in uses:
                    raise KitError(
                        f"the step makes '{name}' but does not take it as an argument.",
                        where=f"Step '{title}'",
                        do=f"Add {name} to the function's arguments.",
                    )
            said = cast("Words", words)
            entry = Entry(kind, function.__name__, title, function, uses, makes, strips, cell, run, "", said, over)
            if after:
                self.entries = following(self.entries, entry, after)
            else:
                self.entries = added(self.entries, self._placed(entry))
            self._forget_run(cell, run)
            self._registered(entry)
            return function

        return add

    def _placed(self, entry: Entry) -> Entry:
        """In a variation, a step named like one of the parent's keeps that one's place."""
        if self.parent is None:
            return entry
        same = [e for e in self.parent.entries if (e.kind, e.name) == (entry.kind, entry.name)]
        return replace(entry, placed=same[0].placed or same[0].cell) if same else entry

    def remove(self, *names: str) -> None:
        """Take steps out by their functions' names, or parameters that nothing uses any more."""
        for name in names:
            known = [*(e.name for e in self.entries), *(p.name for p in self.parameters)]
            if name not in known:
                raise KitError(f"there is no step or parameter '{name}'.", do=near(name, known))
            users = [e.title for e in self.entries if name in e.uses and e.name != name]
            if name in [p.name for p in self.parameters] and users:
                raise KitError(
                    f"the parameter '{name}' is still used in '{users[0]}'.", do="Change or remove that step first."
                )
            self.entries = tuple(e for e in self.entries if e.name != name)
            self.parameters = tuple(p for p in self.parameters if p.name != name)

    def stale(self) -> tuple[str, ...]:
        """Titles of steps whose cell is not in the saved notebook any more."""
        return tuple(e.title for e in stale(self.entries))

    def variation(self, title: str, **changes: Any) -> Self:
        """A lesson of its own that keeps this one's parameters and steps; change values, replace, add and
        remove steps on it."""
        new = type(self).__new__(type(self))
        new.__dict__.update(self.__dict__)
        new._inherit_published(self, {"title": title, "slug": slug(title), **changes})
        new.sidecar = sidecar.path_for(new.info.slug)
        new.saved = new._opened = sidecar.read(new.sidecar)
        new._changed, new._written, new._begun = {}, (), None
        new.parent = self
        return new

    # ---- working --------------------------------------------------------------------------------------

    @property
    def definition(self) -> Definition:
        """The lesson as a value."""
        return Definition(self.published, self.start, self.parameters, ordered(self.entries))

    def work(self, body: Body | None = None, values: Mapping[str, float] | None = None) -> Pattern:
        """The pattern for a body (or size chosen) and values (name -> mm, share, count; else the current
        ones). Raises `KitError` for what cannot be drafted."""
        pattern = work(
            self.definition,
            (body or self._body) if self.measures else NOBODY,
            self.values if values is None else values,
        )
        check_references(pattern)
        return pattern

    def __repr__(self) -> str:
        return f"<Lesson '{self.info.title}': {len(self.entries)} steps>"


def _names(given: str | Sequence[str]) -> tuple[str, ...]:
    return (given,) if isinstance(given, str) else tuple(given)
