"""Places on the cut pieces as troubles and findings name them: names as the lesson gives them, put together by phrases
of the spoken language."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from functools import reduce
from typing import Literal

from kit.language import SOURCE, called, language, say, says
from kit.piece.piece import Edge, Piece, Side
from kit.sewing.cut import Cut
from kit.sewing.run import Place, Run


def listed(items: Sequence[str], way: str = "") -> str:
    """Items as people list them: a, b and c. An item given twice is said once. `way` "_places": the items are places,
    which may be lists themselves."""
    found = list(dict.fromkeys(items))
    if len(found) < 2:
        return "".join(found)
    head = found[0]
    for item in found[1:-1]:
        head = say(f"phrase.more{way}", first=head, last=item)
    return say(f"phrase.two{way}", first=head, last=found[-1], sound=_sound(found[-1]))


def strung(items: Sequence[str], way: Literal["more", "parted"] = "more") -> str:
    """Items one after another without an "and", each as often as it is given: a, b, c; or "parted" by a stronger sign,
    where an item may have commas of its own."""
    return reduce(lambda first, last: say(f"phrase.{way}", first=first, last=last), items) if items else ""


def _sound(text: str) -> str:
    """ "i" for a word that begins with the sound of that vowel, as "hilo" and "Índice" do and "hielo" does not, else
    "other": Spanish joins it with another "and" (Real Academia Española, Diccionario panhispánico de dudas, "y2")."""
    letters = unicodedata.normalize("NFD", text.casefold())
    plain = "".join(letter for letter in letters if not unicodedata.combining(letter))
    return "i" if re.match(r"[^\w]*h?i(?![aeou])", plain) else "other"


def title_told(title: str) -> str:
    """A title in running text, in small letters where the language writes them so."""
    return say("phrase.title", small=title.lower(), given=title)


def edge_told(edge: Edge) -> str:
    """An edge by the lesson's own words, else by the language's for that name, else by its name. In the source it is
    the name itself."""
    return edge.said or _edge_called(edge.name)


def _edge_called(name: str) -> str:
    key = f"edge.{name}"
    return say(key) if language() != SOURCE and says(key) else called(name)


def name_told(piece: Piece, name: str) -> str:
    """An edge of a piece by its name."""
    return edge_told(piece.edge(name)) if piece.has_edge(name) else called(name)


@dataclass(frozen=True)
class Unworded:
    """The name of an edge that has no words of the lesson's: as text it is told in the spoken language."""

    name: str

    def __str__(self) -> str:
        return _edge_called(self.name)


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
