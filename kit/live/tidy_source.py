"""Writing a step as a good author would: short lines, quoted as the formatter quotes, names not used yet.

What is written is clean under the project's own formatter without running it: a line that is too long is broken at its
brackets, all arguments on the next line where they fit there, else one to a line.
"""

from __future__ import annotations

import builtins
import keyword
import re
import textwrap
import unicodedata
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from fractions import Fraction

from kit.units import System

LINE = 120
_PROSE = 110
_STEP = 4


@dataclass(frozen=True)
class Call:
    """A call, or an assignment or definition that ends in one: `head`(`args`)`tail`."""

    head: str
    args: tuple[str | Call, ...] = ()
    tail: str = ""

    def flat(self) -> str:
        return f"{self.head}({', '.join(arg if isinstance(arg, str) else arg.flat() for arg in self.args)}){self.tail}"

    def lines(self, indent: int = 0, ending: str = "") -> list[str]:
        """The call as lines of source, `indent` blanks in."""
        blank, inner = " " * indent, indent + _STEP
        flat = self.flat() + ending
        if indent + len(flat) <= LINE or not self.args:
            return [blank + flat]
        first, last = f"{blank}{self.head}(", f"{blank}){self.tail}{ending}"
        joined = ", ".join(arg if isinstance(arg, str) else arg.flat() for arg in self.args)
        if inner + len(joined) <= LINE:
            return [first, " " * inner + joined, last]
        body: list[str] = []
        for arg in self.args:
            body += [" " * inner + arg + ","] if isinstance(arg, str) else arg.lines(inner, ",")
        return [first, *body, last]


def keyed(name: str, call: Call) -> Call:
    """`call` as the argument `name`."""
    return Call(f"{name}={call.head}", call.args, call.tail)


def spaced(text: str) -> str:
    """`text` on one line with single blanks; blanks that do not break, as French sets them, stay."""
    return re.sub(r"[ \t\r\n\f\v]+", " ", text).strip(" ")


def quoted(text: str) -> str:
    """A string as the formatter writes it: in double quotes, unless that needs more backslashes."""
    plain = spaced(text).replace("\\", "\\\\")
    mark = "'" if plain.count('"') > plain.count("'") else '"'
    return mark + plain.replace(mark, "\\" + mark) + mark


def docstring(text: str, indent: int = _STEP) -> list[str]:
    """A docstring as lines; every brace in `text` is meant as one."""
    plain = spaced(text).replace("\\", "\\\\").replace('"""', "'''")
    if plain.endswith('"'):
        plain += " "
    blank = " " * indent
    return textwrap.wrap(
        f'"""{plain}"""', _PROSE, initial_indent=blank, subsequent_indent=blank, break_long_words=False
    )


def literal(text: str) -> str:
    """Words that stand in a docstring as they are: braces are doubled."""
    return text.replace("{", "{{").replace("}", "}}")


def length_source(value: float, system: System, known: Collection[str]) -> str:
    """A length (mm) as an author writes it: 1.5 * cm, 6 * mm, 0.375 * inch; as text where the unit is not among the
    names `known` in the notebook."""
    if system == "inch":
        number, unit = _number(value / 25.4), "inch"
    elif 0 < abs(value) < 10 and "mm" in known:
        number, unit = _number(value), "mm"
    else:
        number, unit = _number(value / 10), "cm"
    if unit in known:
        return f"{number} * {unit}"
    return f'"{number} {"in" if unit == "inch" else unit}"'


def _number(value: float) -> str:
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text in ("", "-0") else text


def stepped(value: float, system: System) -> float:
    """A length (mm) on the ruler's nearest line: a millimetre or a sixteenth of an inch."""
    step = 1.0 if system == "cm" else 25.4 / 16
    return float(round(Fraction(value) / Fraction(step))) * step


def identifier(text: str) -> str:
    """Words as a name in code: "Shoulder lift" -> "shoulder_lift"; empty where nothing of them can stand in one."""
    plain = text.lower()
    for letter, two in (("ß", "ss"), ("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("œ", "oe"), ("æ", "ae")):
        plain = plain.replace(letter, two)
    plain = unicodedata.normalize("NFKD", plain).encode("ascii", "ignore").decode()
    name = re.sub(r"[^a-z0-9]+", "_", plain).strip("_")
    name = f"the_{name}" if name[:1].isdigit() else name
    return f"{name}_" if keyword.iskeyword(name) or hasattr(builtins, name) else name


def free(name: str, taken: Collection[str]) -> str:
    """`name`, counted on where it is taken."""
    found, count = name, 2
    while found in taken or keyword.iskeyword(found) or hasattr(builtins, found):
        found, count = f"{name}_{count}", count + 1
    return found


def function(decorator: Call, name: str, uses: Sequence[str], words: str, body: Sequence[Call | str]) -> list[str]:
    """A decorated function as lines of source."""
    lines = [*decorator.lines(), *Call(f"def {name}", tuple(uses), ":").lines(), *docstring(words)]
    return [*lines, *statements(body, _STEP)]


def statements(body: Sequence[Call | str], indent: int) -> list[str]:
    """Statements as lines; text stands as it is, at its indent."""
    lines: list[str] = []
    for each in body:
        lines += [" " * indent + each] if isinstance(each, str) else each.lines(indent)
    return lines
