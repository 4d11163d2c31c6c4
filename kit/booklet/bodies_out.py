"""A notebook without anybody's body in its code: a size of the workshop's chart stands where a cell made or loaded one.

Over the whole notebook, first the names a body can be made by are gathered (`mb` in `from kit import make_body as mb`,
a function that calls `make_body`), then the names that are handed to them, and theirs in turn. Each making is replaced,
and every text and number in what those names are given is blotted out. Comments go, since names stand in them.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator, Sequence

from kit.lesson.another import plain_python

STAND_IN = '__import__("kit").workshop_chart()["W4"]'
UNREADABLE = "# A cell that could not be read was left out."
_MAKERS = frozenset({"make_body", "load_body", "save_body", "Body"})
_WORDED = re.compile(r"\b(make_body|load_body|save_body)\b|\bBody\s*\(")
_FILLED = {"update", "append", "extend", "insert", "add", "setdefault"}
_ASKED = {"isinstance", "issubclass", "print", "help", "display"}


def bodies_out(sources: Sequence[str]) -> tuple[list[str], int]:
    """The cells' code without bodies, and how many were taken out. Where there is none to take out, a cell is the
    same but for comments; a cell that is no Python is left out, and counts."""
    trees = [_tree(source) for source in sources]
    whole = [tree for tree in trees if tree is not None]
    makers = _makers(whole)
    told = _handed(whole, makers)
    count, made = 0, []
    for tree in trees:
        if tree is None:
            made.append(UNREADABLE)
            count += 1
            continue
        taking = _Taking(makers, told)
        made.append(ast.unparse(ast.fix_missing_locations(taking.visit(tree))))
        count += taking.count
    return made, count


def _tree(source: str) -> ast.Module | None:
    try:  # what is timed is code too, and not a text
        timed = re.sub(r"\A\s*%%(?:time|timeit|prun|capture)\b[^\n]*\n", "", source)
        timed = re.sub(r"^(\s*)%(?:time|timeit|prun)[ \t]+", r"\1", timed, flags=re.M)
        return ast.parse(plain_python(timed))
    except (SyntaxError, ValueError):
        return None


def _named(node: ast.AST, names: frozenset[str]) -> bool:
    """Whether the node itself is one of the names: a name, the end of a dotted one, or a text that is it."""
    if isinstance(node, ast.Name):
        return node.id in names
    said = getattr(node, "attr", getattr(node, "value", None))
    return isinstance(said, str) and said in _MAKERS


def _mentions(node: ast.AST, names: frozenset[str]) -> bool:
    return any(_named(each, names) for each in ast.walk(node))


def _makes(node: ast.AST, makers: frozenset[str]) -> bool:
    if not isinstance(node, ast.Call):
        return False
    if _mentions(node.func, makers):
        return True
    if getattr(node.func, "id", "") in _ASKED:
        return False
    return any(_named(given, makers) for given in [*node.args, *(word.value for word in node.keywords)])


def _gives(node: ast.AST, makers: frozenset[str]) -> bool:
    back = node.value if isinstance(node, ast.Return) else None
    return _makes(node, makers) or (back is not None and _named(back, makers))


def _makers(trees: Sequence[ast.Module]) -> frozenset[str]:
    names = _MAKERS
    while True:
        more = set(names)
        for node in (node for tree in trees for node in ast.walk(tree)):
            if isinstance(node, ast.alias) and node.name.split(".")[-1] in names and node.asname:
                more.add(node.asname)
            elif isinstance(node, ast.FunctionDef) and any(_gives(each, names) for each in ast.walk(node)):
                more.add(node.name)
            else:
                for target, value in _given(node):
                    direct = isinstance(value, ast.Call) and _mentions(value.func, names)
                    if isinstance(target, ast.Name) and not direct:
                        bare = _named(value, names) or (isinstance(value, ast.Lambda) and _mentions(value, names))
                        if bare or _makes(value, names):
                            more.add(target.id)
        if more == names:
            return names
        names = frozenset(more)


def _given(node: ast.AST) -> Iterator[tuple[ast.expr, ast.expr]]:
    """What the node gives to what: targets and values."""
    if isinstance(node, ast.Assign):
        yield from ((target, node.value) for target in node.targets)
    elif isinstance(node, ast.AnnAssign | ast.AugAssign | ast.NamedExpr) and node.value is not None:
        yield node.target, node.value
    elif isinstance(node, ast.For | ast.comprehension):
        yield node.target, node.iter
    elif isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr in _FILLED:
        for given in [*node.args, *(word.value for word in node.keywords)]:
            yield node.func.value, given


def _names(node: ast.AST) -> set[str]:
    return {each.id for each in ast.walk(node) if isinstance(each, ast.Name)}


def _handed(trees: Sequence[ast.Module], makers: frozenset[str]) -> frozenset[str]:
    """The names that hold what bodies are made from."""
    nodes = [node for tree in trees for node in ast.walk(tree)]
    found: set[str] = set()
    for node in nodes:
        if _makes(node, makers):
            assert isinstance(node, ast.Call)
            for given in [*node.args, *(word.value for word in node.keywords)]:
                found |= _names(given)
    while True:
        more = set(found)
        for node in nodes:
            for target, value in _given(node):
                if _names(target) & found and not _makes(value, makers):
                    more |= _names(value)
        if more == found:
            return frozenset(found - makers)
        found = more


class _Blotting(ast.NodeTransformer):
    def visit_Constant(self, node: ast.Constant) -> ast.expr:
        if isinstance(node.value, str):
            return ast.Constant("left out")
        if isinstance(node.value, int | float) and not isinstance(node.value, bool):
            return ast.Constant(1)
        return node


class _Taking(ast.NodeTransformer):
    def __init__(self, makers: frozenset[str], told: frozenset[str]) -> None:
        self.makers, self.told, self.count = makers, told, 0

    def visit(self, node: ast.AST) -> ast.AST:
        if _makes(node, self.makers):
            self.count += 1
            return ast.parse(STAND_IN, mode="eval").body
        said = node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""
        if said not in _MAKERS and _WORDED.search(said):  # code in a text, such as a notebook's own command
            self.count += 1
            return ast.Constant("")
        for target, value in list(_given(node)):
            if _names(target) & self.told and not _makes(value, self.makers):
                _Blotting().visit(target)
                if isinstance(node, ast.Call):
                    node.args = [_Blotting().visit(each) for each in node.args]
                    for word in node.keywords:
                        word.value = _Blotting().visit(word.value)
                else:
                    where = "iter" if isinstance(node, ast.For | ast.comprehension) else "value"
                    setattr(node, where, _Blotting().visit(value))
        return super().visit(node)
