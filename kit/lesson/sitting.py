"""What is set at present: body, units, values, a fitting that is going on; and what is kept beside the notebook.

A `Sitting` is immutable. It belongs to one reader of a lesson, as the definition belongs to its author.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from kit.body.body import Body
from kit.body.chart import SizeChart
from kit.diagnostic import Told, message
from kit.errors import KitError, known_near
from kit.lesson import fitting, sidecar
from kit.lesson.definition import Definition
from kit.lesson.fitting import Begun, Fitting
from kit.lesson.parameter import Parameter
from kit.lesson.sidecar import Saved
from kit.units import Said, System, system_said


@dataclass(frozen=True)
class Sitting:
    """The `body` and `units` chosen; the values `moved` in this session (name -> mm, share or count); the fitting
    `begun`. `sidecar` is the file beside the notebook, `saved` what it holds, `opened` what it held at first; `book`
    is the name of the notebook the lesson stands in, "" where it is not known."""

    body: Body
    units: System
    sidecar: Path
    saved: Saved = field(default_factory=Saved)
    opened: Saved = field(default_factory=Saved)
    moved: Mapping[str, float] = field(default_factory=dict)
    begun: Begun | None = None
    book: str = ""

    def values(self, parameters: Sequence[Parameter]) -> dict[str, float]:
        """The current value of every parameter: moved in this session, else saved, else its default."""
        return {p.name: self.moved.get(p.name, sidecar.within(p, self.saved)) for p in parameters}

    def set_values(self, parameters: Sequence[Parameter]) -> dict[str, float]:
        """The values that were moved, in this session or before it: what remains when another body is put in."""
        kept = {p.name: sidecar.within(p, self.saved) for p in parameters if p.name in self.saved.values}
        return {
            **kept,
            **{name: value for name, value in self.moved.items() if any(p.name == name for p in parameters)},
        }

    def opened_values(self, parameters: Sequence[Parameter]) -> dict[str, float]:
        """Every parameter as the sidecar file had it when the lesson was opened."""
        return {p.name: sidecar.within(p, self.opened) for p in parameters}

    def kept_fittings(self, definition: Definition) -> tuple[Fitting, ...]:
        """Those of live try-ons, in the sidecar file, that have not been written in the notebook since."""
        return fitting.kept_fittings(self.saved, definition.fittings)


def troubles(sitting: Sitting, definition: Definition) -> tuple[str, ...]:
    """What of the sidecar file is not used, and why, in the spoken language."""
    saved, chart = sitting.saved, definition.chart
    found: list[Told] = [saved.trouble] if saved.trouble else []
    usual = sitting.sidecar.with_name(f"{definition.info.slug}.values.json")
    if sitting.book and sitting.sidecar != usual and (other := sidecar.owner(usual)):
        found.append(message("saved.apart", other=other, file=sitting.sidecar.name))
    if saved.size and saved.size not in chart:
        found.append(message("saved.no_size", file=saved.file, size=saved.size))
    if saved.units not in ("", "cm", "inch"):
        found.append(message("saved.no_units", file=saved.file, units=saved.units))
    for parameter in definition.fitted(sitting.body).parameters:
        if parameter.name in saved.values and parameter.name not in sitting.moved:
            try:
                parameter.checked(saved.values[parameter.name])
            except KitError as error:
                own = parameter.told(parameter.default)
                found.append(message("saved.out_of_range", file=saved.file, trouble=error.what, value=own))
    return tuple(filter(None, (*map(str, found), fitting.fittings_trouble(saved))))


def sat_down(definition: Definition, size: str = "", folder: Path | None = None) -> Sitting:
    """Where a reader takes up the lesson: as the sidecar file in `folder` (None: the working folder) has it, else in
    `size`, else in the middle one of the chart."""
    path = sidecar.path_for(definition.info.slug, folder)
    saved = sidecar.read(path, definition.info.slug)
    names = list(definition.chart.names)
    wanted = saved.size if saved.size in definition.chart else size or names[len(names) // 2]
    units: System = "inch" if (saved.units or definition.info.units) == "inch" else "cm"
    return Sitting(definition.chart[wanted], units, path, saved, saved, book=sidecar.notebook())


def varied(parent: Sitting, definition: Definition) -> Sitting:
    """Where a reader takes up a variation: body and units as in the `parent`, values from the variation's own file."""
    path = sidecar.path_for(definition.info.slug)
    saved = sidecar.read(path, definition.info.slug)
    return Sitting(parent.body, parent.units, path, saved, saved, book=sidecar.notebook())


def resumed(new: Sitting, former: Sitting, chart: SizeChart, before: SizeChart) -> Sitting:
    """`new`, the lesson's cell having been run again, going on as `former` was. A size of the chart as it was `before`
    is that of the `chart` now."""
    body = new.body
    if former.body.name not in before:
        body = former.body
    elif former.body.name in chart:
        body = chart[former.body.name]
    return replace(
        new, body=body, units=former.units, opened=former.opened, moved=dict(former.moved), begun=former.begun
    )


def chosen(
    sitting: Sitting, chart: SizeChart, *, size: str = "", body: Body | None = None, units: Said | None = None
) -> Sitting:
    """With another body, or another size of the `chart`, or units. `KitError` for an unknown size."""
    if body is None and size:
        if size not in chart:
            raise KitError(message("body.no_such_size", size=size), do=known_near(size, chart.names))
        body = chart[size]
    return replace(sitting, body=body or sitting.body, units=sitting.units if units is None else system_said(units))


def save(sitting: Sitting, definition: Definition) -> Path:
    """Write size, units and the values that differ from their defaults into the sidecar file: a default changed later
    in the notebook then counts. Gives the file they are in."""
    size = sitting.body.name if sitting.body.name in definition.chart else ""
    definition = definition.fitted(sitting.body)
    values, defaults = sitting.values(definition.parameters), definition.defaults
    moved = {name: value for name, value in values.items() if value != defaults[name]}
    slug = definition.info.slug
    sidecar.write(sitting.sidecar, slug, size, sitting.units, moved, book=sitting.book)
    return sidecar.own_path(sitting.sidecar, slug, sitting.book)


def with_fittings(sitting: Sitting, definition: Definition, fittings: Sequence[Fitting]) -> Sitting:
    """With these fittings kept in the sidecar file."""
    slug, kept = definition.info.slug, fitting.as_data(fittings)
    saved = sidecar.keep(sitting.sidecar, slug, sitting.saved, fitting.KEY, kept, book=sitting.book)
    return replace(sitting, saved=saved)
