"""Fittings: what a try-on changed, and why.

A `Fitting` is a value: which parameters moved, from what to what. It changes nothing by itself; the lesson's present
values count, and before and after are drafted from the fitting. Those written in the notebook stand in its cells;
those kept at a live try-on stand in the sidecar file under "fittings":
`[{"title": ..., "date": "2026-05-04", "why": ..., "changes": [{"parameter": ..., "before": 8.0, "after": 12.0}]}]`,
lengths in mm.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any, cast

from kit.errors import KitError, near
from kit.lesson.parameter import Parameter, Setting
from kit.lesson.sidecar import Saved
from kit.units import Size, length

KEY = "fittings"
"""Where they stand in the sidecar file."""
SAME = 1e-6
"""Values that differ by no more are one value."""


@dataclass(frozen=True)
class Change:
    """One parameter's value before and after a fitting: mm for a length, 0..1 for a share, whole for a count."""

    parameter: str
    before: float
    after: float


@dataclass(frozen=True)
class Fitting:
    """A try-on: its `title`, `date` (as written, may be empty), `why` in the teacher's words, and the `changes`."""

    title: str
    date: str
    why: str
    changes: tuple[Change, ...]

    def _ipython_display_(self) -> None:
        """Nothing: a cell that ends with a fitting prints no output."""

    @property
    def before(self) -> dict[str, float]:
        """The earlier value of every parameter it changed."""
        return {change.parameter: change.before for change in self.changes}

    @property
    def after(self) -> dict[str, float]:
        return {change.parameter: change.after for change in self.changes}


@dataclass(frozen=True)
class FittingCell:
    """A fitting written in the notebook, and the `cell` and `run` (execution count) that wrote it."""

    fitting: Fitting
    cell: str = ""
    run: int = 0

    @property
    def title(self) -> str:
        return self.fitting.title


@dataclass(frozen=True)
class Begun:
    """A fitting that is going on: its `title` and every parameter's value when it began."""

    title: str
    values: tuple[tuple[str, float], ...]


# ---- values in, fitting out -------------------------------------------------------------------------------


def fitting_of(
    title: str, why: str, date: str, changes: Mapping[str, tuple[Setting, Setting]], parameters: Sequence[Parameter]
) -> Fitting:
    """A fitting from pairs (before, after) by parameter, lengths with their unit. `KitError` when a parameter is
    unknown, a value is no length or out of its range, nothing is named or nothing changes."""
    where = f"Fitting '{title}'"
    known = {parameter.name: parameter for parameter in parameters}
    if not title.strip():
        raise KitError("a fitting needs a title.", where="Fitting", do='Write, say, "First toile".')
    if not changes:
        raise KitError(
            "nothing is said to have changed.", where=where, do="Name a parameter: sleeve_length=(23 * cm, 25 * cm)."
        )
    found = []
    for name, pair in changes.items():
        if name not in known:
            raise KitError(f"there is no parameter '{name}'.", where=where, do=near(name, known))
        if not isinstance(pair, tuple | list) or len(pair) != 2:
            raise KitError(
                f"{name} needs two values, before and after.", where=where, do=f"Write {name}=(1 * cm, 2 * cm)."
            )
        before, after = (number_of(known[name], value, where) for value in pair)
        found.append(_change(known[name], before, after, where))
    return Fitting(title, date, why, tuple(found))


def fitting_between(
    begun: Begun, why: str, date: str, values: Mapping[str, float], parameters: Sequence[Parameter]
) -> Fitting:
    """What changed between the values a fitting began with and `values`. `KitError` when nothing did."""
    earlier = dict(begun.values)
    moved = {
        p.name: (earlier[p.name], values[p.name])
        for p in parameters
        if p.name in earlier and abs(earlier[p.name] - values[p.name]) > SAME
    }
    if not moved:
        raise KitError(
            "nothing has changed since it began.",
            where=f"Fitting '{begun.title}'",
            do="Move a slider to what the try-on asks for, then keep it.",
        )
    return Fitting(begun.title, date, why, tuple(Change(name, one, two) for name, (one, two) in moved.items()))


def number_of(parameter: Parameter, value: Setting, where: str) -> float:
    """A value as an author writes it, in mm, share or count. `KitError` for a bare length and for what is no number."""
    if parameter.kind == "length":
        return float(length(cast("Size", value), f"{where}, {parameter.label}"))
    if isinstance(value, bool) or not isinstance(value, int | float):
        example = "0.7" if parameter.kind == "share" else "2"
        raise KitError(f"{parameter.label} is {value!r}, not a number.", where=where, do=f"Write, say, {example}.")
    return float(value)


def _change(parameter: Parameter, before: float, after: float, where: str) -> Change:
    for value in (before, after):
        try:
            parameter.checked(value)
        except KitError as error:
            raise error.at(where) from None
    if abs(before - after) <= SAME:
        raise KitError(
            f"the {parameter.label} is {parameter.show(before)} before and after.",
            where=where,
            do="Leave it out, or write what it was before.",
        )
    return Change(parameter.name, before, after)


# ---- kept beside the notebook -----------------------------------------------------------------------------


def as_data(fittings: Sequence[Fitting]) -> list[dict[str, Any]]:
    """Fittings as they stand in the sidecar file."""
    return [
        {"title": f.title, "date": f.date, "why": f.why, "changes": [asdict(change) for change in f.changes]}
        for f in fittings
    ]


def from_data(data: object) -> tuple[tuple[Fitting, ...], str]:
    """The fittings of a sidecar file, and what is wrong with those that cannot be read (empty: nothing)."""
    found: list[Fitting] = []
    bad = 0
    for row in data if isinstance(data, list) else []:
        try:
            changes = tuple(Change(str(c["parameter"]), float(c["before"]), float(c["after"])) for c in row["changes"])
            if not changes:
                raise ValueError("no changes")
            found.append(Fitting(str(row["title"]), str(row.get("date", "")), str(row.get("why", "")), changes))
        except (KeyError, TypeError, ValueError, AttributeError):
            bad += 1
    if data is not None and not isinstance(data, list):
        bad = 1
    return tuple(found), f"{bad} of the fittings kept beside the notebook cannot be read." if bad else ""


def kept_fittings(saved: Saved, written: Sequence[FittingCell]) -> tuple[Fitting, ...]:
    """Those kept in the sidecar file, but for what has been written in the notebook since: there it counts."""
    found = from_data(saved.more.get(KEY))[0]
    return tuple(fitting for fitting in found if not any(_alike(fitting, w.fitting) for w in written))


def fittings_trouble(saved: Saved) -> str:
    """What is wrong with the fittings in the sidecar file, or empty."""
    return from_data(saved.more.get(KEY))[1]


def undone(fittings: Sequence[Fitting], index: int, written: int) -> Fitting:
    """The fitting of that place in `fittings`, when it can be taken back. `KitError` when there is none, when it is
    among the first `written`, which stand in the notebook, or when a later one changed the same parameter again."""
    if not 0 <= index < len(fittings):
        raise KitError(f"there is no fitting {index}; there are {len(fittings)}.", do="Count from 0.")
    gone, where = fittings[index], f"Fitting '{fittings[index].title}'"
    if index < written:
        raise KitError("it is written in the notebook.", where=where, do="Delete its cell there.")
    for later in fittings[index + 1 :]:
        again = sorted(set(gone.before) & set(later.before))
        if again:
            raise KitError(
                f"'{later.title}' changed {again[0].replace('_', ' ')} again after it.",
                where=where,
                do=f"Take back '{later.title}' first.",
            )
    return gone


def _alike(one: Fitting, other: Fitting) -> bool:
    """Whether two fittings say the same, to a hundredth of a millimetre."""
    if (one.title, [c.parameter for c in one.changes]) != (other.title, [c.parameter for c in other.changes]):
        return False
    pairs = zip(one.changes, other.changes, strict=True)
    return all(abs(a.before - b.before) < 0.01 and abs(a.after - b.after) < 0.01 for a, b in pairs)
