"""Putting an operation's sentences into words. Plain text; whoever renders it escapes it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from kit.diagnostic import NamedLandmark
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.piece import Side
from kit.prose.phrases import phrase, say, word
from kit.rulers import adds_up, reading
from kit.sewing.cut import Cut
from kit.sewing.marked import Place
from kit.sewing.named import gathered, length_on, lengths_on, part_of, spot_on, spots_on
from kit.sewing.operation import Operation, Sentence
from kit.sewing.run import Chain, Run
from kit.units import Style, System, both, marked
from kit.wording.lists import listed
from kit.wording.names import (
    edge_on_side,
    edge_said,
    landmark_said,
    part_said,
    piece_said,
    spot_said,
    spots_said,
    stretch_said,
    title_said,
)

SERIES = 3  # numbered marks in a row from which on the first and the last are named
TOTAL = "total"
"""The place of a sentence that holds the whole of an operation's parts."""
_STYLES: dict[str, Style] = {
    "length": "draft",
    "allowance": "allowance",
    "part": "allowance",
    "finished": "finished",
}


def sentences(pattern: Cut, operation: Operation, system: System = "cm") -> list[str]:
    """What to do, sentence by sentence, lengths in both systems with `system` first. Where parts, as they read in the
    other, are not their whole, the whole is said in the first alone: all the parts."""
    hints = pattern.hints(operation) if isinstance(pattern, Pattern) else []
    found = (*hints, *operation.sentences(pattern))
    whole = _whole(found, system)
    return [
        say(
            key,
            {
                name: _worded(pattern, name, value, system) if not whole or name != TOTAL else whole
                for name, value in values.items()
            },
        )
        for key, values in found
    ]


def _whole(found: Sequence[Sentence], system: System) -> str:
    """What is said of the whole of an operation's parts where they do not add up in both systems; "" where they do."""
    parts = {name: float(value) for _, values in found for name, (value, kind) in values.items() if kind == "part"}
    totals = [float(values[TOTAL][0]) for _, values in found if TOTAL in values]
    if not totals or abs(sum(parts.values()) - totals[0]) > 0.01:  # a row that is sewn apart tells one part alone
        return ""
    if all(adds_up(list(parts.values()), totals[0], system).values()):
        return ""
    return marked(sum(reading(mm, system, "allowance")[system] for mm in parts.values()), system)


def whys(pattern: Cut, operation: Operation, system: System = "cm") -> list[str]:
    """Why it is done so, for teaching."""
    return [
        say(key, {name: _worded(pattern, name, value, system) for name, value in values.items()})
        for key, values in operation.whys(pattern)
    ]


def about_minutes(minutes: float) -> str:
    """A rough time, in steps of five minutes, or of a quarter of an hour from one hour on."""
    step = 5 if minutes < 60 else 15
    return phrase("minutes", count=int(max(step, round(minutes / step) * step)))


def _worded(pattern: Cut, name: str, given: tuple[Any, str], system: System) -> str | int:
    value, kind = given
    if kind in _STYLES:
        return both(float(value), system, _STYLES[kind])
    if kind == "count":
        return int(value)
    if kind == "text":
        return str(value)
    if kind == "word":
        return word(str(value))
    if kind == "edge":
        return edges_said(pattern, value, system)
    if kind == "place":
        return places_said(pattern, value, system)
    if kind == "landmarks":
        return listed([landmark_said(each, system) for each in value])
    if kind == "spot":
        return spot_said(spot_on(pattern, *value), system)
    if kind == "measured":
        return spot_said(length_on(pattern, *value), system)
    if kind == "spots":
        return spots_said(spots_on(pattern, *value), system)
    if kind == "stretch":
        return stretch_said(lengths_on(pattern, *value), system)
    if kind == "piece":
        return pieces_said(pattern, value)
    if kind == "strip":
        return title_said(pattern.strip(str(value)).title)
    if kind == "names":
        return listed([str(name) for name in value])
    if kind == "mark":
        return listed(marks_said(pattern, value))
    raise KitError(f"'{name}' is of the unknown kind '{kind}'.")


def pieces_said(pattern: Cut, names: Sequence[str]) -> str:
    """'the front and the back'."""
    return listed([piece_said(pattern.piece(n).title) for n in names])


def _labels(pattern: Cut, run: Run) -> str:
    piece = pattern.piece(run.piece)
    return listed([edge_said(piece.edge(name)) for name in run.edges])


def _half(pattern: Cut, place: Run | Place) -> Side | None:
    """The half a place is on; None where both are meant or the piece has no two halves."""
    return place.side if len(pattern.piece(place.piece).sides) == 2 else None


def edges_said(pattern: Cut, runs: Sequence[Run], system: System = "cm") -> str:
    """'left side seam', 'underarm and side seam', 'hem from the slit to the side seam'."""
    found = []
    for line in gathered(runs):
        named = [edge_on_side(_labels(pattern, run), _half(pattern, run) or "") for run in told_once(pattern, line)]
        found.append(part_said(listed(named), part_of(pattern, line), system))
    return listed(found)


def places_said(pattern: Cut, runs: Sequence[Run], system: System = "cm") -> str:
    """'neck of the back', 'hem of the front and back', 'side seam of the right front from the tie to the hem'."""
    found: list[str] = []
    rows: dict[tuple[NamedLandmark, NamedLandmark] | None, list[Run]] = {}
    for line in gathered(runs):
        part, told = part_of(pattern, line), told_once(pattern, line)
        if isinstance(line, Run):
            rows.setdefault(part, []).extend(told)
        else:
            found.append(part_said(listed(_places(pattern, told), "_places"), part, system))
    alone = [part_said(place, part, system) for part, row in rows.items() for place in _places(pattern, row)]
    return listed(alone + found, "_places")


def told_once(pattern: Cut, line: Run | Chain) -> list[Run]:
    """The runs of a line as they are named, the two halves of an edge in a row as that edge."""
    if isinstance(line, Run):
        return [line]
    halves: dict[tuple[str, tuple[str, ...]], list[Run]] = {}
    for run in line.runs:
        halves.setdefault((run.piece, run.edges), []).append(run)
    return [row[0] if len(row) == 1 else replace(row[0], side=None) for row in halves.values()]


def _places(pattern: Cut, runs: Sequence[Run]) -> list[str]:
    groups: dict[tuple[str, str | None], list[str]] = {}
    for run in runs:
        title = title_said(pattern.piece(run.piece).title)
        groups.setdefault((_labels(pattern, run), _half(pattern, run)), []).append(title)
    # One edge of several pieces is named once, and so is a piece of which several edges are meant.
    rows: dict[tuple[str | None, tuple[str, ...]], list[str]] = {}
    for (label, side), titles in groups.items():
        rows.setdefault((side, tuple(titles)), []).append(label)
    found = []
    for (side, pieces), labels in rows.items():
        edge, piece = listed(labels), listed(pieces)
        if side:
            found.append(phrase("place_on_side", edge=edge, side=word(side), piece=piece))
        else:
            found.append(phrase("place", edge=edge, piece=piece))
    return found


def marks_said(pattern: Cut, places: Sequence[Place]) -> list[str]:
    """Marks as they are said one by one: of many that are numbered one after another the first and the last, and where
    some are on one half and others on both, which these are."""
    halves = [place.side is not None for place in places if len(pattern.piece(place.piece).sides) == 2]
    mixed = any(halves) and not all(halves)
    found: list[str] = []
    for row in _in_series(places):
        label = row[0].mark.label
        if len(row) > 1:
            stem, first, last = numbered(label)[0], numbered(label)[1], numbered(row[-1].mark.label)[1]
            label = phrase("numbered_row", name=stem, first=str(first), last=str(last))
        found.append(_mark_said(pattern, row[0], label, both=mixed))
    return found


def numbered(label: str) -> tuple[str, int]:
    """A label's words and its number; 0 where it has none."""
    words, _, number = label.rpartition(" ")
    return (words, int(number)) if words and number.isdecimal() else (label, 0)


def _in_series(places: Sequence[Place]) -> list[list[Place]]:
    """Marks of one piece and half that are numbered one after another in a row, if they are several enough; the others
    each alone."""
    rows: list[list[Place]] = []
    for place in places:
        last = rows[-1][-1] if rows else None
        (words, number), before = numbered(place.mark.label), numbered(last.mark.label) if last else ("", 0)
        follows = last is not None and (last.piece, last.side) == (place.piece, place.side)
        if follows and number and before == (words, number - 1):
            rows[-1].append(place)
        else:
            rows.append([place])
    return [part for row in rows for part in ([row] if len(row) >= SERIES else [[place] for place in row])]


def _mark_said(pattern: Cut, place: Place, label: str, *, both: bool) -> str:
    title, side = title_said(pattern.piece(place.piece).title), _half(pattern, place)
    if side:
        return phrase("place_on_side", edge=label, side=word(side), piece=title)
    said = phrase("place", edge=label, piece=title)
    return phrase("on_both_halves", place=said) if both and len(pattern.piece(place.piece).sides) == 2 else said
