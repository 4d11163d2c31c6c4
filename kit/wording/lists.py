"""Lists as people say them."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from functools import reduce
from typing import Literal

from kit.language import say


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


def strung(items: Sequence[str], way: Literal["more", "parted", "row"] = "more") -> str:
    """Items one after another without an "and", each as often as it is given: a, b, c; or "parted" by a stronger sign,
    where an item may have commas of its own; or a "row" of runs sewn as one."""
    return reduce(lambda first, last: say(f"phrase.{way}", first=first, last=last), items) if items else ""


def _sound(text: str) -> str:
    """ "i" for a word that begins with the sound of that vowel, as "hilo" and "Índice" do and "hielo" does not, else
    "other": Spanish joins it with another "and" (Real Academia Española, Diccionario panhispánico de dudas, "y2")."""
    letters = unicodedata.normalize("NFD", text.casefold())
    plain = "".join(letter for letter in letters if not unicodedata.combining(letter))
    return "i" if re.match(r"[^\w]*h?i(?![aeou])", plain) else "other"


def two_sentences(one: str, other: str) -> str:
    """Two texts one behind the other, the first closed by a full stop; either may be empty.

    >>> two_sentences("shade for the eyes", "Follows from your head girth."), two_sentences("", "Both.")
    ('shade for the eyes. Follows from your head girth.', 'Both.')
    """
    if not one or not other:
        return one or other
    return f"{one if one[-1] in '.!?…' else one + '.'} {other}"
