"""What becomes of each edge: what it is sewn to, or that most of it is hemmed, faced, finished, or on the fold."""

from __future__ import annotations

from collections.abc import Mapping

from kit.errors import KitError
from kit.language import called, say
from kit.lesson.pattern import Pattern
from kit.prose.say import places_said
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.wording.lists import listed

EdgeKey = tuple[str, str]
Fates = Mapping[EdgeKey, str]


def fates(pattern: Pattern) -> dict[EdgeKey, str]:
    """(piece, edge) -> a sentence that says what is done with it, read off the sewing records."""
    partners: dict[EdgeKey, list[Run]] = {}
    ways: dict[EdgeKey, list[str]] = {}
    for _, operation in operations(pattern):
        for a, b in (*operation.joins, *_laid(operation, pattern)):
            for one, other in _across(a, b):
                partners.setdefault(one, []).append(Run(other[0], (other[1],)))
                partners.setdefault(other, []).append(Run(one[0], (one[1],)))
        try:
            closings = operation.closes(pattern)
        except KitError:
            continue  # the proof says why
        for closing in closings:
            span = closing.span
            if span.length * 2 > pattern.piece(span.piece).edge(span.edge).path.length:
                ways.setdefault((span.piece, span.edge), []).append(closing.how)
    out: dict[EdgeKey, str] = {}
    for piece in pattern.pieces:
        for edge in piece.edges:
            key = (piece.name, edge.name)
            said = []
            if edge.name == piece.fold:
                said.append(say("canvas.on_fold"))
            if key in partners:
                runs = list(dict.fromkeys(partners[key]))
                said.append(say("canvas.sewn_to", edges=listed([_place(pattern, run) for run in runs])))
            said += [say(f"canvas.{how}") for how in dict.fromkeys(ways.get(key, ())) if how in ("hemmed", "finished")]
            if not said:
                said.append(say("canvas.faced") if "faced" in ways.get(key, ()) else say("canvas.not_sewn"))
            out[key] = " ".join(said)
    return out


def _laid(operation: object, pattern: Pattern) -> tuple[tuple[Run, Run], ...]:
    try:
        found: tuple[tuple[Run, Run], ...] = operation.effect(pattern).laid  # type: ignore[attr-defined]
    except KitError:
        return ()
    return found


def _across(a: Run, b: Run) -> list[tuple[EdgeKey, EdgeKey]]:
    """Edge by edge where both runs count as many, else each with all of the other."""
    one, other = [(a.piece, e) for e in a.edges], [(b.piece, e) for e in b.edges]
    if len(one) == len(other):
        return list(zip(one, other, strict=True))
    return [(x, y) for x in one for y in other]


def _place(pattern: Pattern, run: Run) -> str:
    if any(piece.name == run.piece and all(piece.has_edge(e) for e in run.edges) for piece in pattern.pieces):
        return places_said(pattern, [run])
    return say("phrase.run", piece=called(run.piece), edge=listed([called(name) for name in run.edges]))
