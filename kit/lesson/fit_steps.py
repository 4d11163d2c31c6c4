"""A fit change as a step of a lesson: the parameter that holds its amount, and the step that is worked with it.

An author writes `lesson.fit_change("full bust", 3 * cm)` where it belongs among the steps. Whoever works the lesson may
set any other by its amount alone; then it comes first, on the block, or on blank paper behind the first step that has
drawn what it goes by.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from kit.body.body import Body
from kit.errors import KitError
from kit.language import known_language, languages, say, speaking
from kit.lesson.bench import opened
from kit.lesson.definition import Definition
from kit.lesson.fit_change import FIT_CHANGES, FitChange, altered, altered_or_how_far, has_sleeve
from kit.lesson.parameter import Parameter
from kit.lesson.steps import Entry
from kit.piece.piece import Piece

KEY = "fit_"
"""What the names of such steps begin with."""
EACH = "{}_each"
"""What is set off of an amount that is taken in several parts."""


def fit_entry(change: FitChange, language: str, *, cell: str = "", run: int = 0) -> Entry:
    """The step of a change, still without the pieces it will be worked on."""
    with speaking(known_language(language)):
        return Entry(
            "step", KEY + change.name, change.title, _unworked, (change.name,), cell=cell, run=run, fit=change.name
        )


def fit_parameter(change: FitChange, language: str, default: float = 0.0) -> Parameter:
    """The amount of a change, nothing where no `default` is given."""
    with speaking(known_language(language)):
        return change.parameter(default)


def _unworked(**given: Any) -> None:
    raise TypeError("a fit change is worked on its pieces")


def with_fits(definition: Definition, asked: Mapping[str, int]) -> Definition:
    """The lesson with these changes as well, each at its place among the entries. Those it has already are left."""
    has = {parameter.name for parameter in definition.parameters}
    entries = list(definition.entries)
    parameters = list(definition.parameters)
    language = definition.info.language
    order = list(FIT_CHANGES)
    for name in sorted((n for n in asked if n not in has), key=lambda n: (-asked[n], -order.index(n))):
        entries.insert(asked[name], fit_entry(FIT_CHANGES[name], language))
    parameters += [fit_parameter(FIT_CHANGES[n], language) for n in order if n in asked and n not in has]
    return replace(definition, entries=tuple(entries), parameters=tuple(parameters))


def ready(entry: Entry, pieces: Mapping[str, Piece], amount: float, body: Body, language: str) -> Entry | None:
    """The step as it is worked on these pieces: with what it uses and what it does; None where its amount is nothing.
    `KitError` for what cannot be done."""
    if amount <= 1e-6:
        return None
    change = FIT_CHANGES[entry.fit]
    made = altered_or_how_far(pieces, change, amount, body)
    with speaking(known_language(language)):
        text = change.told(f"{{{change.name}}}", sleeve=has_sleeve(pieces.values()))
        title = change.title

    name = change.name if change.parts == 1 else EACH.format(change.name)

    def work(**bench: Any) -> None:
        for piece in made.pieces:
            open_piece = opened(bench[piece.name])
            open_piece.lay(piece)
            for owner, start, end in made.spots:
                if owner == piece.name:
                    open_piece.spot(name, start.distance(end), start, end, None)

    work.__doc__ = text
    return replace(entry, title=title, function=work, uses=(*(p.name for p in made.pieces), change.name))


def place_of(change: str, definition: Definition, body: Body, drafted: Callable[[int], Mapping[str, Piece]]) -> int:
    """Where among the entries a change comes that no author placed: first, where the block has what it goes by, else
    behind the first drafting step after which it can be made; `drafted` gives the pieces after so many entries."""
    for number in range(len(definition.entries) + 1):
        if number and definition.entries[number - 1].kind != "step":
            continue
        try:
            altered(drafted(number), FIT_CHANGES[change], 5.0, body)
        except KitError:
            continue
        return number
    return 0


def measure_labels(definition: Definition) -> dict[str, str]:
    """What the parts of the amounts of a lesson's fit changes are called in its pictures."""
    names = [entry.fit for entry in definition.entries if entry.fit]
    return {EACH.format(name): part_said(name, definition.info.language) for name in names}


def fit_said(name: str, language: str) -> str:
    """What a change is called in a language."""
    with speaking(known_language(language)):
        return FIT_CHANGES[name].title


def part_label(name: str, language: str) -> str | None:
    """What a measure of that name is called in a language; None for one of no fit change."""
    if name in FIT_CHANGES:
        return fit_said(name, language)
    whole = name.removesuffix("_each")
    return part_said(whole, language) if whole != name and whole in FIT_CHANGES else None


def part_said(name: str, language: str) -> str:
    """What one part of a change's amount is called."""
    change = FIT_CHANGES[name]
    with speaking(known_language(language)):
        return say(f"fit.part_{change.parts}", name=change.title)


def words_of(key: str, language: str, text: str) -> dict[str, str] | None:
    """Title and text of the step of that key in a language, of a sleeve as well unless `text`, what it says so far, has
    nothing of one; None for one that is no fit change."""
    name = key.removeprefix(KEY)
    if not key.startswith(KEY) or name not in FIT_CHANGES:
        return None
    change = FIT_CHANGES[name]
    with speaking(known_language(language)):
        sleeve = not any(_said_without_sleeve(change, one) == text for one in languages())
        return {"title": change.title, "text": change.told(f"{{{name}}}", sleeve=sleeve)}


def _said_without_sleeve(change: FitChange, language: str) -> str:
    with speaking(language):
        return change.told(f"{{{change.name}}}", sleeve=False)
