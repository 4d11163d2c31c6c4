"""What French and Spanish have in common: the noun leads its name, and the article leads the noun."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from kit.grammar.nouns import nouns, told


@dataclass(frozen=True)
class Tongue:
    """How one of the two languages writes names: what stands between two of them, words that are articles already,
    words that go on with the name before them, and adjectives that may lead a noun."""

    code: str
    between: re.Pattern[str]
    determined: re.Pattern[str]
    going_on: re.Pattern[str]
    leading: re.Pattern[str]

    def gender(self, name: str) -> str:
        """m, f, mp, fp, or "" where it is not known."""
        if own := told(name):
            return own
        words = self.leading.sub("", name).strip().split(" ")
        # A name of the lesson's own with what it is of behind it: "pourtour du dessus de calotte".
        if own := next((own for end in range(len(words) - 1, 0, -1) if (own := told(" ".join(words[:end])))), ""):
            return own
        word = re.split(r"[-’']", words[0].casefold())[0] if words else ""
        known = nouns(self.code)
        if word in known:
            return known[word]
        if word[-1:] in "sx":
            for one in (word[:-1], word[:-2]):
                if known.get(one) in ("m", "f"):
                    return f"{known[one]}p"
        return ""

    def each(self, text: str, put: Callable[[str, str], str], kept: Callable[[str], str]) -> str | None:
        """The text with each name put by `put(name, gender)`; one that has its article by `kept`. None where a name's
        gender is not known."""
        said = []
        for at, part in enumerate(self._parts(text)):
            if at % 2:
                said.append(part)
            elif self.determined.match(part):
                said.append(kept(part))
            elif gender := self.gender(part):
                said.append(put(part, gender))
            else:
                return None
        return "".join(said)

    def gender_of(self, text: Any) -> str:
        """The letters of the gender of a text of names; of several, the plural's; "none" where it is not known."""
        whole = str(text)
        found = [self.gender(self.determined.sub("", part).strip()) for part in self._parts(whole)[::2]]
        if not all(found):
            return "none"
        if len(found) == 1:
            return found[0]
        return "fp" if all(each.startswith("f") for each in found) else "mp"

    def _parts(self, text: str) -> list[str]:
        """The names of a text and, at odd places, what stands between them; "couture d’épaule et de manche" is one."""
        parts = [text] if told(text) else self.between.split(text)
        found = parts[:1]
        for joint, part in zip(parts[1::2], parts[2::2], strict=True):
            if self.going_on.match(part) or part[:1].isdigit():
                found[-1] += joint + part
            else:
                found += [joint, part]
        return found
