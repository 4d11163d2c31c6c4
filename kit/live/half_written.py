"""Reading a cell that is still being written: which step the cursor is in, and what stands just before it.

The text up to the cursor is seldom Python yet, so it is not parsed as a whole. The step is found by its `def` and the
decorator above it, line by line from the cursor upward; from there the text is cut into tokens by a scanner that takes
anything, and only finished statements are handed on to be parsed, each by itself. Nothing is run.
"""

from __future__ import annotations

import ast
import keyword
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal, NamedTuple

Zone = Literal["arguments", "body"]

_DEF = re.compile(r"(?P<indent>[ \t]*)(?:async[ \t]+)?def[ \t]+(?P<name>[^\W\d]\w*)[ \t]*\(")
_TOKEN = re.compile(
    r"""(?P<string>[rRbBuUfF]{0,2}(?:\"{3}(?:\\.|[^\\])*?\"{3}|'{3}(?:\\.|[^\\])*?'{3}
        |"(?!"")(?:\\.|[^"\\\n])*"|'(?!'')(?:\\.|[^'\\\n])*'))
    |(?P<torn>[rRbBuUfF]{0,2}(?:\"{3}.*|'{3}.*|"[^\n]*|'[^\n]*))
    |(?P<comment>\#[^\n]*)
    |(?P<name>[^\W\d]\w*)
    |(?P<number>\d[\w.]*)
    |(?P<open>[(\[{])
    |(?P<close>[)\]}])
    |(?P<line>\n)
    |(?P<space>(?:[^\S\n]|\\\n)+)
    |(?P<sign>.)""",
    re.VERBOSE | re.DOTALL,
)
_KEYWORDS = frozenset(keyword.kwlist) - {"None", "True", "False"}
_NO_NAMES = ("import", "from", "%", "!", "@", "def", "class", "global", "nonlocal")  # statements that begin so
_LONGEST_DECORATOR = 40  # lines


@dataclass(frozen=True)
class WrittenStep:
    """A step as its cell has it so far: the `lesson`'s name, the `way` it is added ("step", "sew", "finished"), the
    function's `name` and the arguments it `uses`, and what its decorator says it `makes` or comes `after`."""

    lesson: str
    way: str
    name: str = ""
    uses: tuple[str, ...] = ()
    makes: tuple[str, ...] = ()
    strips: tuple[str, ...] = ()
    after: str = ""


@dataclass(frozen=True)
class OpenCall:
    """A call whose bracket is still open: what is called ("front.draw"), the keywords `given`, how many arguments
    stand before by `position`, and the keyword being `filled` just now ("" when none is)."""

    called: str
    given: tuple[str, ...] = ()
    position: int = 0
    filled: str = ""


@dataclass(frozen=True)
class Cursor:
    """What stands before the cursor: the `statements` finished above it in the step's body, the `owner` after whose
    dot the name stands ("" for a bare name), the part of the `word` already typed, and the `call` it stands in."""

    step: WrittenStep
    zone: Zone
    statements: tuple[str, ...]
    owner: str
    word: str
    call: OpenCall | None = None


class _Token(NamedTuple):
    sort: str
    text: str


_COMMA, _DOT, _COLON, _EQUALS = (_Token("sign", sign) for sign in ",.:=")


def at_cursor(code: str, cursor: int) -> Cursor | None:
    """What stands before position `cursor` of a cell's text; None where that is not inside a step of a lesson, or
    where no name can stand (in a string, a comment or a number, after `import`)."""
    before = code[:cursor]
    for begin in _defs_above(before):
        head = _DEF.match(before, begin)
        step = head and _decorated(before[:begin], head["indent"])
        if head and step:
            return _inside(replace(step, name=head["name"]), head, before, code[cursor:])
    return None


def _defs_above(before: str) -> Iterator[int]:
    """Where the `def` lines start that the cursor may stand in, the nearest first, each less indented than the last."""
    limit: int | None = None
    end = len(before)
    while end >= 0:
        begin = before.rfind("\n", 0, end) + 1
        found = _DEF.match(before, begin)
        if found and (limit is None or len(found["indent"].expandtabs()) < limit):
            limit = len(found["indent"].expandtabs())
            yield begin
        end = begin - 1


def _inside(step: WrittenStep, head: re.Match[str], before: str, following: str) -> Cursor | None:
    tokens = _tokens(before[head.end() - 1 :])
    closed = _closing(tokens)
    if closed is None:
        step = replace(step, uses=_names([*tokens, *_tokens(following)]))
        return _in_arguments(step, tokens)
    colon = next((i for i in range(closed, len(tokens)) if tokens[i] == _COLON), None)
    if colon is None:
        return None
    step = replace(step, uses=_names(tokens[: closed + 1]))
    return _in_body(step, len(head["indent"].expandtabs()), tokens[colon + 1 :])


# ---- the head of the step ---------------------------------------------------------------------------------


def _decorated(above: str, indent: str) -> WrittenStep | None:
    """The step of a lesson that the decorators right above a `def` make of it; None where they make none."""
    lines = above.split("\n")[:-1]
    end = len(lines)
    for number in range(end - 1, max(-1, end - 1 - _LONGEST_DECORATOR), -1):
        if not lines[number].startswith(indent + "@"):
            continue
        try:
            call = ast.parse("\n".join(lines[number:end]).strip()[1:], mode="eval").body
        except (SyntaxError, ValueError):
            return None
        if (
            isinstance(call, ast.Call)
            and isinstance(call.func, ast.Attribute)
            and isinstance(call.func.value, ast.Name)
            and call.func.attr in ("step", "sew", "finished")
        ):
            said = {word.arg: _strings(word.value) for word in call.keywords}
            return WrittenStep(
                call.func.value.id,
                call.func.attr,
                makes=said.get("makes", ()),
                strips=said.get("strips", ()),
                after="".join(said.get("after", ())[:1]),
            )
        end = number
    return None


def _strings(value: ast.expr) -> tuple[str, ...]:
    items = value.elts if isinstance(value, ast.Tuple | ast.List) else [value]
    return tuple(item.value for item in items if isinstance(item, ast.Constant) and isinstance(item.value, str))


def _closing(tokens: Sequence[_Token]) -> int | None:
    """Where the bracket that `tokens` begin with is closed again."""
    depth = 0
    for i, token in enumerate(tokens):
        depth += _opens(token)
        if depth == 0:
            return i
    return None


def _names(tokens: Sequence[_Token]) -> tuple[str, ...]:
    """The arguments of a `def`, from its opening bracket to the one that closes it, if that is there yet."""
    found, depth, begins = [], 0, False
    for token in tokens:
        depth += _opens(token)
        if depth == 0:
            break
        if token.sort == "open" or token == _COMMA:
            begins = depth == 1
        elif token.sort == "name" and begins:
            found.append(token.text)
            begins = False
        elif token.sort in ("sign", "number", "string"):
            begins = False
    return tuple(found)


def _in_arguments(step: WrittenStep, tokens: list[_Token]) -> Cursor | None:
    word = tokens.pop().text if tokens[-1].sort == "name" else ""
    said = [token for token in tokens if token.sort not in ("space", "line", "comment")]
    if len(said) > 1 and said[-1] != _COMMA:
        return None  # a default, an annotation, a string
    uses = list(step.uses)
    if word in uses:
        uses.remove(word)
    return Cursor(replace(step, uses=tuple(uses)), "arguments", (), "", word)


# ---- the body ---------------------------------------------------------------------------------------------


def _in_body(step: WrittenStep, margin: int, tokens: Sequence[_Token]) -> Cursor | None:
    if tokens and tokens[-1].sort in ("torn", "comment", "string", "number"):
        return None
    statements, current = _statements(tokens)
    if any(statement.indent <= margin for statement in statements[1:]) or current.indent <= margin:
        return None  # a line at the margin has ended the step
    said = [token for token in current.tokens if token.sort not in ("space", "line", "comment")]
    if said and said[0].text in _NO_NAMES:
        return None
    word = said.pop().text if said and current.tokens[-1].sort == "name" else ""
    owner = ""
    if said and said[-1] == _DOT:
        owner, said = _chain(said[:-1])
        if not owner:
            return None
    done = tuple(text for text in (_text(statement.tokens).strip() for statement in statements) if text)
    return Cursor(step, "body", done, owner, word, _open_call(said))


class _Statement(NamedTuple):
    indent: int
    tokens: list[_Token]


def _statements(tokens: Sequence[_Token]) -> tuple[list[_Statement], _Statement]:
    """(the finished statements, the one being written). A line ends a statement unless a bracket is open; a bracket
    left open by mistake ends at the next line that is not indented further than the statement it is in."""
    done: list[_Statement] = []
    current: list[_Token] = []
    indent, depth = 1_000_000, 0  # what stands on the line of the `def` is inside it
    for i, token in enumerate(tokens):
        depth = max(0, depth + _opens(token))
        if token.sort == "line":
            following = _indent(tokens[i + 1 :])
            if depth and following is not None and following <= indent < 1_000_000:
                depth = 0
            if depth == 0:
                if any(t.sort != "space" for t in current):
                    done.append(_Statement(indent, current))
                current, indent = [], 1_000_000 if following is None else following
                continue
        elif token == ("sign", ";") and depth == 0:
            done.append(_Statement(indent, current))
            current = []
            continue
        if token.sort != "comment":
            current.append(token)
    return done, _Statement(indent, current)


def _indent(line: Sequence[_Token]) -> int | None:
    """How far the line is indented that `line` begins with; None where it is empty, or only closes a bracket."""
    first = line[0] if line else None
    wide = len(first.text.expandtabs()) if first and first.sort == "space" else 0
    rest = line[1:2] if wide else line[:1]
    return None if not rest or rest[0].sort in ("line", "comment", "close") else wide


def _chain(tokens: list[_Token]) -> tuple[str, list[_Token]]:
    """(the names, dots and closed brackets that `tokens` end with, as text; what stands before them)."""
    at = len(tokens)
    while at:
        token = tokens[at - 1]
        if token.sort == "close":
            begin = _opening(tokens, at - 1)
            if begin is None:
                return "", tokens
            at = begin
            if at and (tokens[at - 1].sort == "close" or _is_name(tokens[at - 1])):
                continue  # a call: go on with what is called
            break  # brackets that stand for themselves: (front.underarm + front.side)
        if not _is_name(token):
            return "", tokens
        at -= 1
        if not (at and tokens[at - 1] == _DOT):
            break
        at -= 1
    return _text(tokens[at:], spaced=True), tokens[:at]


def _is_name(token: _Token) -> bool:
    return token.sort == "name" and token.text not in _KEYWORDS


def _opening(tokens: Sequence[_Token], close: int) -> int | None:
    depth = 0
    for i in range(close, -1, -1):
        depth -= _opens(tokens[i])
        if depth == 0:
            return i
    return None


def _open_call(tokens: list[_Token]) -> OpenCall | None:
    """The innermost call whose bracket is open at the end."""
    depth = 0
    for i in range(len(tokens) - 1, -1, -1):
        depth -= _opens(tokens[i])
        if depth < 0:
            called, _ = _chain(tokens[:i])
            if tokens[i].text == "(" and called:
                return _arguments(called, tokens[i + 1 :])
            depth = 0  # a list, or brackets that group: look further out
    return None


def _arguments(called: str, tokens: Sequence[_Token]) -> OpenCall:
    given: list[str] = []
    position, depth, filled = 0, 0, ""
    last = _Token("", "")
    for token in tokens:
        depth += _opens(token)
        if token == _EQUALS and depth == 0 and last.sort == "name":
            filled = last.text
            given.append(filled)
        elif token == _COMMA and depth == 0:
            position += not filled
            filled = ""
        last = token
    return OpenCall(called, tuple(given), position, filled)


# ---- tokens -----------------------------------------------------------------------------------------------


def _tokens(text: str) -> list[_Token]:
    """`text` cut into tokens. A string that is never closed is "torn"."""
    return [_Token(found.lastgroup or "sign", found[0]) for found in _TOKEN.finditer(text)]


def _opens(token: _Token) -> int:
    return (token.sort == "open") - (token.sort == "close")


def _text(tokens: Sequence[_Token], *, spaced: bool = False) -> str:
    """The tokens as text again; `spaced`: their spaces have gone, and are put back between words."""
    text = ""
    for token in tokens:
        if (
            spaced
            and text
            and (text[-1].isalnum() or text[-1] in "_\"'")
            and token.sort in ("name", "number", "string")
        ):
            text += " "
        text += token.text
    return text
