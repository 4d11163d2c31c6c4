"""Putting an operation's sentences into words. Plain text; whoever renders it escapes it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from kit.errors import KitError
from kit.piece.piece import Edge
from kit.prose.phrases import listed, phrase, say, sentence_table, word
from kit.sewing.operation import Cut, Operation, Sentence
from kit.sewing.run import Place, Run
from kit.units import Style, System, both, parts, show

_STYLES: dict[str, Style] = {"length": "draft", "allowance": "allowance", "finished": "finished"}


def sentences(pattern: Cut, operation: Operation, system: System = "cm", language: str = "en") -> list[str]:
    """What to do, sentence by sentence, lengths in both systems with `system` first. The parts of one
    operation are rounded so that they add up to their rounded total."""
    found = operation.sentences(pattern)
    shown_parts = _parts(found, system)
    return [
        say(
            key,
            {name: _worded(pattern, name, value, shown_parts, system, language) for name, value in values.items()},
            language,
        )
        for key, values in found
    ]


def whys(pattern: Cut, operation: Operation, system: System = "cm", language: str = "en") -> list[str]:
    """Why it is done so, for teaching."""
    return [
        say(
            key,
            {name: _worded(pattern, name, value, {}, system, language) for name, value in values.items()},
            language,
        )
        for key, values in operation.whys(pattern)
    ]


def about_minutes(minutes: float, language: str = "en") -> str:
    """A rough time, in steps of five minutes, or of a quarter of an hour from one hour on."""
    step = 5 if minutes < 60 else 15
    return phrase("minutes", language, count=f"{max(step, round(minutes / step) * step)}")


def _parts(found: Sequence[Sentence], system: System) -> dict[str, str]:
    """Text of every value of kind part, by name."""
    exact: dict[str, float] = {}
    for _, values in found:
        exact.update({name: float(value) for name, (value, kind) in values.items() if kind == "part"})
    other: System = "inch" if system == "cm" else "cm"
    first = parts(list(exact.values()), system)
    second = parts(list(exact.values()), other)
    return {
        name: f"{show(one, system, 'allowance')} ({show(two, other, 'allowance')})"
        for name, one, two in zip(exact, first, second, strict=True)
    }


def _worded(
    pattern: Cut, name: str, given: tuple[Any, str], shown_parts: Mapping[str, str], system: System, language: str
) -> str:
    value, kind = given
    if kind == "part":
        return shown_parts[name]
    if kind in _STYLES:
        return both(float(value), system, _STYLES[kind])
    if kind == "count":
        return f"{int(value)}"
    if kind == "text":
        return str(value)
    if kind == "word":
        return word(str(value), language)
    if kind == "edge":
        return edges_said(pattern, value, language)
    if kind == "place":
        return places_said(pattern, value, language)
    if kind == "piece":
        return pieces_said(pattern, value, language)
    if kind == "strip":
        return title_said(pattern.strip(str(value)).title)
    if kind == "mark":
        return listed([_mark_said(pattern, place, language) for place in value], language)
    raise KitError(f"'{name}' is of the unknown kind '{kind}'.")


def title_said(title: str) -> str:
    """A title in running text: the first letter small, unless the word is all capitals."""
    first = title.split(" ")[0]
    return title if len(first) > 1 and first.isupper() else title[:1].lower() + title[1:]


def pieces_said(pattern: Cut, names: Sequence[str], language: str = "en") -> str:
    """'the front and the back'."""
    return listed([phrase("piece", language, piece=title_said(pattern.piece(n).title)) for n in names], language)


def _labels(pattern: Cut, run: Run, language: str) -> str:
    piece = pattern.piece(run.piece)
    return listed([edge_said(piece.edge(name), language) for name in run.edges], language)


def edge_said(edge: Edge, language: str = "en") -> str:
    """An edge as people say it: the lesson's own words, else the language's for that name, else the name."""
    return edge.said or str(sentence_table(language)["edges"].get(edge.name, edge.label))


def edges_said(pattern: Cut, runs: Sequence[Run], language: str = "en") -> str:
    """'left side seam', 'underarm and side seam'."""
    found = []
    for run in runs:
        label = _labels(pattern, run, language)
        found.append(phrase("edge_on_side", language, side=word(run.side, language), edge=label) if run.side else label)
    return listed(found, language)


def places_said(pattern: Cut, runs: Sequence[Run], language: str = "en") -> str:
    """'neck of the back', 'hem of the front and back', 'side seam of the right front'."""
    groups: dict[tuple[str, str | None], list[str]] = {}
    for run in runs:
        title = title_said(pattern.piece(run.piece).title)
        groups.setdefault((_labels(pattern, run, language), run.side), []).append(title)
    found = []
    for (label, side), titles in groups.items():
        piece = listed(titles, language)
        if side:
            found.append(phrase("place_on_side", language, edge=label, side=word(side, language), piece=piece))
        else:
            found.append(phrase("place", language, edge=label, piece=piece))
    return listed(found, language)


def _mark_said(pattern: Cut, place: Place, language: str) -> str:
    title = title_said(pattern.piece(place.piece).title)
    if place.side:
        return phrase("place_on_side", language, edge=place.mark.label, side=word(place.side, language), piece=title)
    return phrase("place", language, edge=place.mark.label, piece=title)
