"""The lesson as a value: everything its author wrote, and nothing of who reads it or where.

A `Definition` is immutable. What an author adds gives a new one; `work` (kit/lesson/working.py) makes a pattern of it.
It knows of no notebook: what was added in a cell carries the cell's id, which is only compared.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

from kit.body.body import NOBODY, Body
from kit.body.chart import SizeChart, workshop_chart
from kit.body.make import completed
from kit.body.measures import MEASUREMENTS
from kit.errors import KitError, near
from kit.lesson import exercise, presets
from kit.lesson.author_function import names_of
from kit.lesson.cells import added, earlier
from kit.lesson.exercise import Exercise
from kit.lesson.fitting import FittingCell
from kit.lesson.following import fitted_all, followed
from kit.lesson.own_measure import OwnMeasure
from kit.lesson.parameter import Parameter, with_parameter
from kit.lesson.pattern import LessonInfo, Photo, Video
from kit.lesson.presets import Preset
from kit.lesson.publishing import OF_CLOTH, Added, changed, check_cover, inherited_photos, inherited_videos, published
from kit.lesson.steps import Entry, following, ordered
from kit.lesson.steps import added as entry_added
from kit.lesson.time_limit import TIME_LIMIT


def slug(title: str) -> str:
    """A title as a file name: "Tideline wrap top" -> "tideline-wrap-top"."""
    return re.sub(r"[^a-z0-9]+", "-", title.lower()).strip("-") or "lesson"


@dataclass(frozen=True)
class Definition:
    """What a lesson says of itself (`info`), the block it starts from (`start`: a body gives pieces), its `parameters`
    and `entries` (steps, sewing steps, finished measurements), the chart of `sizes` readers choose from (None: the
    workshop's own), the presets, fittings, exercises, photos and films its author wrote, the measurements of its
    `own`, and the seconds its drafting may take (`time_limit`)."""

    info: LessonInfo
    start: Any
    parameters: tuple[Parameter, ...] = ()
    entries: tuple[Entry, ...] = ()
    sizes: SizeChart | None = None
    presets: tuple[Preset, ...] = ()
    fittings: tuple[FittingCell, ...] = ()
    exercises: tuple[Exercise, ...] = ()
    photos: tuple[Added[Photo], ...] = ()
    videos: tuple[Added[Video], ...] = ()
    own: tuple[OwnMeasure, ...] = ()
    time_limit: float = TIME_LIMIT

    # ---- what can be asked of it ----------------------------------------------------------------------------

    @cached_property
    def chart(self) -> SizeChart:
        """The chart its readers choose from, with the measurements of the lesson's own."""
        chart = self.sizes if self.sizes is not None else workshop_chart()
        for one in self.own:
            chart = one.added_to(chart)
        return chart

    @property
    def measures(self) -> tuple[str, ...]:
        """The body measurements its block and its steps use, in the order of the measurement table."""
        asked = [name for entry in self.entries for name in (*entry.uses, entry.over)]
        used = {*getattr(self.start, "measures", ()), *asked}
        for one in self.parameters:
            used |= {*followed(one), *(name for end in (one.at_least, one.at_most) if end for name in names_of(end))}
        if not used & {*MEASUREMENTS} and any(one.sizes for one in self.parameters):
            used |= {*self.chart.keys[:1]}  # what stands for each size needs a place among them
        return tuple(name for name in (*MEASUREMENTS, *self.own_names) if name in used)

    @property
    def own_names(self) -> tuple[str, ...]:
        """The measurements it has of its own, that the kit's table has not."""
        return tuple(one.name for one in self.own if one.name not in MEASUREMENTS)

    def completed(self, body: Body) -> Body:
        """`body` with the measurements of the lesson's own, estimated where it has them not. `KitError` for one that no
        person measures."""
        return completed(body, self.chart, [one.name for one in self.own]) if self.own and body != NOBODY else body

    def fitted(self, body: Body) -> Definition:
        """As it is for a body: parameters that follow from measurements have that body's values as their own."""
        if not any(parameter.is_following for parameter in self.parameters):
            return self
        return replace(self, parameters=fitted_all(self.parameters, self.completed(body), self.chart))

    @property
    def defaults(self) -> dict[str, float]:
        """Every parameter at the lesson's own value."""
        return {parameter.name: parameter.default for parameter in self.parameters}

    def preset_values(self, title: str) -> dict[str, float]:
        """Every parameter's value in that preset. `KitError` with the near title for one that is not offered, and for
        one that names a value the parameter cannot take any more."""
        return presets.preset_values(title, self.presets, self.parameters)

    def exercise_called(self, name: str) -> Exercise:
        """The exercise of that title or short name. `KitError` with the near name."""
        return exercise.exercise_called(name, self.exercises)

    # ---- what its author adds -------------------------------------------------------------------------------

    def with_parameter(self, new: Parameter) -> Definition:
        return replace(self, parameters=with_parameter(self.parameters, new))

    def with_own(self, new: OwnMeasure) -> Definition:
        """With a measurement of its own. `KitError` for the name of a parameter."""
        if any(parameter.name == new.name for parameter in self.parameters):
            raise KitError(f"'{new.name}' is a parameter.", where=f"Measurement '{new.name}'", do="Name it otherwise.")
        left = replace(self, own=added(self.own, new, lambda one: one.name))
        left.chart  # noqa: B018  # refuses a row that does not stand
        return left

    def with_entry(self, new: Entry, *, after: str = "") -> Definition:
        """With a step, right behind the one named `after` or where its cell belongs. Photos and films that an earlier
        run of its cell added go."""
        entries = following(self.entries, new, after) if after else entry_added(self.entries, new)
        return replace(
            self,
            entries=entries,
            photos=tuple(one for one in self.photos if not earlier(one, new.cell, new.run)),
            videos=tuple(one for one in self.videos if not earlier(one, new.cell, new.run)),
        )

    def with_preset(self, new: Preset) -> Definition:
        return replace(self, presets=added(self.presets, new, lambda one: one.title))

    def with_fitting(self, new: FittingCell) -> Definition:
        return replace(self, fittings=added(self.fittings, new, lambda one: one.title))

    def with_exercise(self, new: Exercise) -> Definition:
        return replace(self, exercises=added(self.exercises, new, lambda one: one.key))

    def with_photo(self, new: Added[Photo]) -> Definition:
        return replace(self, photos=added(self.photos, new, lambda one: (one.thing.file, one.thing.beside)))

    def with_video(self, new: Added[Video]) -> Definition:
        return replace(self, videos=added(self.videos, new, lambda one: one.thing.address))

    def without(self, *names: str) -> Definition:
        """Without steps, by their functions' names, or parameters. `KitError` for a name there is not and for a
        parameter that a step still uses."""
        left = self
        for name in names:
            known = [*(e.name for e in left.entries), *(p.name for p in left.parameters)]
            if name not in known:
                raise KitError(f"there is no step or parameter '{name}'.", do=near(name, known))
            users = [e.title for e in left.entries if name in e.uses and e.name != name]
            if name in [p.name for p in left.parameters] and users:
                raise KitError(
                    f"the parameter '{name}' is still used in '{users[0]}'.", do="Change or remove that step first."
                )
            left = replace(
                left,
                entries=tuple(e for e in left.entries if e.name != name),
                parameters=tuple(p for p in left.parameters if p.name != name),
            )
        return left


def as_read(definition: Definition, saved: Iterable[str], recorded: Mapping[str, float]) -> Definition:
    """The definition as it is worked: its entries in the order of the `saved` notebook's cells, its photos and films
    told in `info`. `recorded` are the seconds of a film kept beside the notebook, by step."""
    info = published(definition.info, definition.photos, definition.videos, definition.entries, recorded)
    own = tuple(one.measurement for one in definition.own if one.name not in MEASUREMENTS)
    info = replace(info, measurements=own) if own else info
    return replace(definition, info=info, entries=ordered(definition.entries, saved))


def variation(
    parent: Definition, title: str, changes: Mapping[str, Any], recorded: Mapping[str, float] | None = None
) -> Definition:
    """A lesson of its own that begins as `parent`.

    Kept: the block, parameters, steps, chart, presets and exercises; of what the parent says of itself all but
    `changes` (where `cloth` is among them, nothing of what it says of its cloth: `OF_CLOTH`); photos and films for as
    long as the step they show stays as it is, films with the marks `recorded` beside the parent's notebook. Fresh:
    title, cover, the list of variations, and fittings, which were of another garment.
    `KitError` for a change of something a lesson does not say."""
    own: dict[str, Any] = {"cover": "", "cover_alt": "", "variations": ()}
    if changes.get("cloth", parent.info.cloth) != parent.info.cloth:
        own |= dict.fromkeys(OF_CLOTH, "")  # what is said of linen is not true of flannel
    info = changed(replace(parent.info, **own), {"title": title, "slug": slug(title), **changes})
    check_cover(info)
    return replace(
        parent,
        info=info,
        fittings=(),
        photos=inherited_photos(parent.photos, parent.entries),
        videos=inherited_videos(parent.videos, parent.entries, recorded or {}),
    )


def adopted(new: Definition, former: Definition, cell: str) -> Definition:
    """`new`, made by running the `cell` that had made `former` again, with everything that other cells had added."""

    def others(them: tuple[Any, ...]) -> tuple[Any, ...]:
        return tuple(one for one in them if one.cell != cell)

    return replace(
        new,
        entries=others(former.entries),
        presets=others(former.presets),
        fittings=others(former.fittings),
        exercises=others(former.exercises),
        photos=others(former.photos),
        videos=others(former.videos),
        own=(*new.own, *others(former.own)),
    )
