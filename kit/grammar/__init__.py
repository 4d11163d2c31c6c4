"""Names in sentences: articles, cases and agreement, as functions that the messages of a language call.

A message writes `{ ACC($piece) }` (German), `{ DU($edge) }` (French) or `{ DEL($edge) }` (Spanish), and the name comes
with its article: "das Vorderteil", "de l’encolure", "del bajo". What a name needs for that is the gender of its noun.
It is read from the noun itself: `templates/language/<code>/nouns.toml` lists, by gender, the nouns that names of
pieces, edges, strips and marks end with (German) or begin with (French, Spanish). A translation may say the gender of a
name of the lesson's own with a letter in braces at its end. A name whose gender nobody knows stands bare, as in a list.
A name with a number behind it ("buttonhole 1", "Knopfloch 1") goes without an article in English and German.
A text of several names ("Halsausschnitt und Wickelkante des Vorderteils") is taken name by name; what already has an
article keeps it.
"""

from typing import Any

from kit.grammar.english import ENGLISH
from kit.grammar.french import FRENCH
from kit.grammar.german import GERMAN
from kit.grammar.nouns import GENDERS, knowing, split_gender
from kit.grammar.spanish import SPANISH

__all__ = ["FUNCTIONS", "GENDERS", "gendered", "knowing", "split_gender"]

FUNCTIONS: dict[str, dict[str, Any]] = {"en": ENGLISH, "de": GERMAN, "fr": FRENCH, "es": SPANISH}
"""The functions a language's messages may call, by the language's code."""


def gendered(name: str, code: str) -> bool:
    """Whether the gender of every name in the text `name` is known in that language."""
    return str(FUNCTIONS[code]["GENDER"](name)) != "none"
