"""What a piece or an edge *is*: its role, one of a closed set of trade words, and where on the body a piece is worn.

Roles are data. Blocks, derivations, bench verbs and sewing operations set them, an author may set them, and every
decision about shape or drawing reads them; a name is for people and may be in any language.

There is one place where a word is read: a piece, edge, point or line that somebody makes without saying its role gets
a default from its name, by the trade words of four languages in `data/trade_words.toml`, whole words only. It is found
once, when the value is made, and written into it; afterwards the name means nothing. A name that is in no table leaves
the role empty, for what the piece comes from or how it is sewn to fill.
"""

from __future__ import annotations

import tomllib
import unicodedata
from functools import cache, lru_cache
from importlib.resources import files
from typing import Literal, cast, get_args

PieceRole = Literal[
    "",
    "front",
    "back",
    "yoke",
    "sleeve",
    "collar",
    "cuff",
    "band",
    "pocket",
    "flap",
    "bag",
    "facing",
    "lining",
    "interfacing",
    "strip",
]
Worn = Literal["", "front", "back"]
EdgeRole = Literal[
    "",
    "neck",
    "shoulder",
    "armhole",
    "side",
    "centre",
    "waist",
    "hip",
    "hem",
    "opening",
    "fold",
    "cap",
    "underarm",
    "wrist",
    "inseam",
    "crotch",
    "outer",
]
Landmark = Literal[
    "neck_point",
    "shoulder_tip",
    "underarm_point",
    "bust_point",
    "upper_chest_line",
    "bust_line",
    "under_bust_line",
    "waist_line",
    "hip_line",
    "thigh_line",
    "knee_line",
    "upper_arm_line",
    "elbow_line",
    "wrist_line",
    "head_line",
]
"""What a point or a line of a piece is on the body. The lines are its levels, where a tape would be laid;
`kit.wear` asks for them."""

PIECE_ROLES: tuple[str, ...] = tuple(role for role in get_args(PieceRole) if role)
EDGE_ROLES: tuple[str, ...] = tuple(role for role in get_args(EdgeRole) if role)
LANDMARKS: tuple[str, ...] = get_args(Landmark)
WORN: tuple[str, ...] = ("front", "back")

# Of several trade words in one name these say what the piece is; the rest only where it is worn ("back neck facing").
_FIRST = ("facing", "lining", "interfacing")


@lru_cache(maxsize=1024)  # a piece is made anew with every line that is drawn on it
def piece_role(*words: str) -> tuple[PieceRole, Worn]:
    """(role, where it is worn) that the trade words in a piece's name and title give; empty where there is none.

    >>> piece_role("back_facing", "Back neck facing")
    ('facing', 'back')
    >>> piece_role("ruecken")
    ('back', 'back')
    """
    found = [meaning for word in _words(words) for meaning in _table("piece").get(word, ())]
    worn: Worn = "back" if "back" in found else "front" if "front" in found else ""
    things = [role for role in found if role not in WORN]
    role = next((first for first in _FIRST if first in things), things[-1] if things else worn)
    return cast("PieceRole", role), worn


@lru_cache(maxsize=1024)
def edge_role(*words: str) -> EdgeRole:
    """The role that the trade words in an edge's name, and in how people say it, give: a hem where any word says so
    ("top hem"), else the last of them ("left side").

    >>> edge_role("hem_side"), edge_role("top", "Oberkante, Saum")
    ('hem', 'hem')
    """
    found = [meaning for word in _words(words) for meaning in _table("edge").get(word, ())]
    return cast("EdgeRole", "hem" if "hem" in found else found[-1] if found else "")


def landmark(name: str) -> Landmark | None:
    """What a point or construction line of that name is, None where the name is in no table.

    >>> landmark("neck_point")
    'neck_point'
    """
    found = _table("landmark").get(_plain(name), ())
    return cast("Landmark", found[0]) if found else None


def _words(texts: tuple[str, ...]) -> list[str]:
    return [_plain(word) for text in texts for word in text.replace("_", " ").split()]


def _plain(word: str) -> str:
    """Small letters without accents."""
    if word.isascii():
        return word.lower()
    parts = unicodedata.normalize("NFKD", word.casefold())
    return "".join(letter for letter in parts if not unicodedata.combining(letter))


_TRANSCRIBED = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "ß": "ss", "ñ": "n"})


@cache
def _table(kind: str) -> dict[str, tuple[str, ...]]:
    """{plain word: what it means} of all languages. A word of two languages means what the first says."""
    data = tomllib.loads(files("kit.piece").joinpath("data", "trade_words.toml").read_text(encoding="utf-8"))
    found: dict[str, tuple[str, ...]] = {}

    def put(words: list[str], meaning: tuple[str, ...]) -> None:
        for word in words:
            for spelling in (_plain(word), _plain(word.translate(_TRANSCRIBED))):
                found.setdefault(spelling, meaning)

    for meanings in data[kind].values():
        for role, words in meanings.items():
            put(words, (role,))
    if kind == "piece":
        for meanings in data["both"].values():
            for role, places in meanings.items():
                for worn, words in places.items():
                    put(words, (role, worn))
    return found
