"""A fitting in words: what was changed on the parameters, and what that did to each piece."""

from __future__ import annotations

from collections.abc import Sequence

from kit.language import say
from kit.lesson.fitting import Fitting
from kit.lesson.moved import TOLD, Drafted, Shift, differences, direction, moved_edges, moved_pieces
from kit.lesson.pattern import ParameterValue, Pattern
from kit.piece.piece import Piece
from kit.units import System, both, percent
from kit.wording.names import edge_said

_ALIKE = 1.0
"""Shifts that differ by no more than this (mm) are told as one."""


def fitting_words(fitting: Fitting, before: Pattern, after: Pattern, system: System = "cm") -> tuple[str, ...]:
    """What a fitting changed, a sentence each: the parameters first, then every piece that moved, edge by edge.
    Lengths in both systems, `system` first."""
    return (*change_words(fitting, after, system), *moved_words(before, after, system))


def change_words(fitting: Fitting, pattern: Pattern, system: System = "cm") -> tuple[str, ...]:
    """ "Shoulder lift from 8 mm (5/16 in) to 1.2 cm (1/2 in)." for each parameter the pattern still has."""
    known = {value.name: value for value in pattern.values}
    found = []
    for change in fitting.changes:
        value = known.get(change.parameter)
        if value is None:
            continue
        one, two = (_shown(value, number, system) for number in (change.before, change.after))
        label = value.label[:1].upper() + value.label[1:]
        found.append(say("fitting.changed", name=label, before=one, after=two))
    return tuple(found)


def moved_words(before: Drafted, after: Drafted, system: System = "cm") -> tuple[str, ...]:
    """How each piece moved; one sentence that says so when no stitch line did."""
    found: list[str] = []
    for name in moved_pieces(before, after):
        found += piece_words(before, after, name, system)
    return tuple(found) or (say("fitting.no_line_moves"),)


def piece_words(before: Drafted, after: Drafted, piece: str, system: System = "cm") -> tuple[str, ...]:
    """How the edges of one piece moved, a sentence or two for each."""
    was, now = (next((p for p in pattern.pieces if p.name == piece), None) for pattern in (before, after))
    if was is None or now is None:
        key, there = ("fitting.new_piece", now) if was is None else ("fitting.gone_piece", was)
        return (say(key, piece=there.title),) if there else ()
    found: list[str] = []
    shifts = differences(before, after, piece)
    for edge in dict.fromkeys(shift.edge for shift in shifts):
        found += _edge_words(now, edge, [shift for shift in shifts if shift.edge == edge], system)
    if not found and piece in moved_pieces(before, after):
        folds = (was.darts, was.pleats) != (now.darts, now.pleats)
        key = "hardly" if moved_edges(was, now) else "darts" if folds else "meets_elsewhere"
        found.append(say(f"fitting.{key}", piece=now.title))
    return tuple(found)


def _edge_words(piece: Piece, edge: str, shifts: Sequence[Shift], system: System) -> list[str]:
    names = [e.name for e in piece.edges]
    at = names.index(edge)
    place = {
        "start": edge_said(piece.edges[at - 1]),
        "end": edge_said(piece.edges[(at + 1) % len(names)]),
    }
    start, end = shifts[0], shifts[-1]
    low, high = sorted((start, end), key=lambda shift: shift.size)
    if max(shift.size for shift in shifts) <= TOLD:
        return []
    said = {"piece": piece.title, "edge": edge_said(piece.edge(edge))}

    def sentence(key: str, shift: Shift, **more: str) -> str:
        size = both(shift.size, system)
        return say(f"fitting.{key}", {**said, "way": direction(shift), "size": size, **more})

    if len(shifts) == 3:
        found = [] if high.size <= TOLD else [sentence("one_end", high, at=place[high.place])]
        return [*found, sentence("middle", shifts[1])]
    if low.size <= TOLD:
        return [sentence("to_nothing", high, at=place[high.place], to=place[low.place])]
    if direction(low) != direction(high):
        return [sentence("one_end", shift, at=place[shift.place]) for shift in (start, end)]
    if high.size - low.size <= _ALIKE:
        return [sentence("all_along", low)]
    return [sentence("unequal", high, at=place[high.place], other=both(low.size, system), to=place[low.place])]


def _shown(value: ParameterValue, number: float, system: System) -> str:
    if value.kind == "share":
        return percent(number)
    return f"{number:.0f}" if value.kind == "count" else both(number, system)
