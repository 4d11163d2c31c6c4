"""Places on the cut pieces as troubles and findings name them: names as the lesson gives them, put together by phrases
of the spoken language."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from kit.language import SOURCE, called, language, say, says
from kit.piece.piece import Edge, Piece, Side
from kit.sewing.run import Place, Run

if TYPE_CHECKING:
    from kit.sewing.operation import Cut


def listed(items: Sequence[str], way: str = "") -> str:
    """Items as people list them: a, b and c. An item given twice is said once. `way` "_places": the items are places,
    which may be lists themselves."""
    found = list(dict.fromkeys(items))
    if len(found) < 2:
        return "".join(found)
    head = found[0]
    for item in found[1:-1]:
        head = say(f"phrase.more{way}", first=head, last=item)
    return say(f"phrase.two{way}", first=head, last=found[-1])


def title_told(title: str) -> str:
    """A title in running text, in small letters where the language writes them so."""
    return say("phrase.title", small=title.lower(), given=title)


def edge_told(edge: Edge) -> str:
    """An edge by the lesson's own words, else by the language's for that name, else by its name."""
    key = f"edge.{edge.name}"
    if edge.said or language() == SOURCE or not says(key):
        return edge.label
    return say(key)


def name_told(piece: Piece, name: str) -> str:
    """An edge of a piece by its name."""
    return edge_told(piece.edge(name)) if piece.has_edge(name) else called(name)


def side_told(piece: Piece, side: Side, name: str) -> str:
    """An edge of one half: "left side" where the piece has two halves, else "side"."""
    edge = name_told(piece, name)
    return say("phrase.edge_on_side", side=say(f"word.{side}"), edge=edge) if len(piece.sides) == 2 else edge


def told(pattern: Cut, place: Run | Place) -> str:
    """A run of edges or a mark with its piece: "front left side"."""
    piece = pattern.piece(place.piece)
    edge = place.mark.label if isinstance(place, Place) else listed([name_told(piece, name) for name in place.edges])
    values = {"piece": title_told(piece.title), "edge": edge}
    if place.side and len(piece.sides) == 2:
        return say("phrase.run_on_side", values, side=say(f"word.{place.side}"))
    return say("phrase.run", values)
