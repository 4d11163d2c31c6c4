"""Operations as data: their rules have their messages, their fields are read and fill what they should, a verb that is
called wrongly says all that is missing."""

from __future__ import annotations

import inspect
import pickle
import re
from dataclasses import fields
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from fluent.syntax import FluentParser
from fluent.syntax import ast as fluent
from fluent.syntax.visitor import Visitor

from kit.errors import KitError
from kit.language import variables
from kit.sewing.fields import reads_of
from kit.sewing.operation import Operation
from kit.sewing.operations import KINDS
from kit.sewing.operations.pockets import FoldPocket
from kit.sewing.rules import Of, Rule
from kit.sewing.verb import VERBS
from kit.units import cm, mm

ENGLISH = Path(__file__).resolve().parents[2] / "templates" / "language" / "en"


class Places(Visitor):
    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: fluent.VariableReference) -> None:
        self.names.add(node.id.name)


@cache
def messages() -> dict[str, set[str]]:
    """{key of a message of troubles: the names of its places}."""
    found = {}
    for entry in FluentParser().parse((ENGLISH / "sewing_trouble.ftl").read_text("utf-8")).body:
        if isinstance(entry, fluent.Message):
            places = Places()
            places.visit(entry)
            found[entry.id.name.removeprefix("sewing_trouble-")] = places.names
    return found


EVERY = {name: (*kind.rules, *(rule for stage in kind.stages for rule in stage.rules)) for name, kind in KINDS.items()}
"""The rules of each kind, those of its stages with them."""
SOURCES = "".join(path.read_text("utf-8") for path in Path(inspect.getfile(Rule)).parent.rglob("*.py"))
RULES = [pytest.param(KINDS[name], rule, id=f"{name}-{rule.code}") for name, row in EVERY.items() for rule in row]


def test_there_are_rules() -> None:
    assert RULES


@pytest.mark.parametrize(("kind", "rule"), RULES)
def test_a_rule_has_its_two_messages_and_fills_their_places(kind: type[Operation], rule: Rule) -> None:
    known = messages()
    says, do = (key.removeprefix("sewing_trouble.") for key in rule.keys)
    assert says in known and do in known
    assert (known[says], known[do]) == tuple(set(variables(key)) for key in rule.keys)
    filled = {"place", "edge", "piece", "amount", *dir(kind), *(each.name for each in fields(kind))}
    for name in (known[says] | known[do]) - filled:  # a value of its case, written there
        assert f'"{name}"' in SOURCES or re.search(rf"\b(off_by|_longer)\(.*\b{name}=", SOURCES), name


@pytest.mark.parametrize(("kind", "rule"), RULES)
def test_what_a_rule_asks_of_is_a_field(kind: type[Operation], rule: Rule) -> None:
    of = getattr(rule.condition, "of", "")
    named = {*(of if isinstance(of, tuple) else (of,)), rule.on} - {""}
    assert named <= {each.name for each in fields(kind)} | set(dir(kind))


def test_a_fact_that_is_asked_for_is_one_that_some_operation_gives() -> None:
    asked = {rule.condition.what for row in EVERY.values() for rule in row if isinstance(rule.condition, Of)}
    sources = [path.read_text("utf-8") for path in Path(inspect.getfile(KINDS["hem"])).parent.glob("*.py")]
    given = {of.what for kind in KINDS.values() for of in kind.gives}
    given |= {of.what for kind in KINDS.values() for stage in kind.stages for of in stage.gives}
    for fact in asked - given:  # given by a method of an operation
        assert sum(source.count(f'"{fact}"') for source in sources) > 1, fact


def test_the_verb_of_a_class_takes_its_fields() -> None:
    edges = reads_of(FoldPocket)["edges"]
    assert (edges.way, edges.role, edges.needed) == ("rest", "pocket", True)
    parameters = inspect.signature(VERBS["fold_pocket"]).parameters
    assert list(parameters) == ["reader", "edges", "allowance", "corners"]
    assert parameters["corners"].default == "square"
    assert parameters["allowance"].default is inspect.Parameter.empty


@pytest.mark.parametrize("name", sorted(VERBS))
def test_what_a_verb_needs_stands_before_what_may_be_left_out(name: str) -> None:
    by_name = [one for one in inspect.signature(VERBS[name]).parameters.values() if one.kind is one.KEYWORD_ONLY]
    left_out = [one.default is not one.empty for one in by_name]
    assert left_out == sorted(left_out)


def test_a_verb_names_everything_it_is_not_told_and_shows_its_example(wrap: Any) -> None:
    t = wrap.table()

    def said(write: Any) -> str:
        with pytest.raises(KitError) as caught:
            write()
        return str(caught.value)

    assert said(lambda: t.make.french_seam(t.front.side)) == (
        "french_seam is not told its b, first and second. Write b=..., first=... and second=... between its brackets. "
        "For example: make.french_seam(front.shoulder, back.shoulder, first=6 * mm, second=4 * mm) "
        '(more: lesson.help("french_seam"))'
    )
    assert "fold_pocket is not told its edges and allowance. Write edges and allowance=..." in said(
        lambda: t.make.fold_pocket()
    )
    assert "no edge is named" in said(lambda: t.make.fold_pocket(allowance=1 * cm))
    assert "french_seam is given 3 arguments without a name and takes 2" in said(
        lambda: t.make.french_seam(t.front.side, t.back.side, 6 * mm, second=4 * mm)
    )
    assert "knows no argument 'alowance'. Did you mean 'allowance'?" in said(
        lambda: t.make.plain_seam(t.front.side, t.back.side, alowance=1 * cm)
    )
    assert "is told its b twice" in said(
        lambda: t.make.plain_seam(t.front.side, t.back.side, b=t.back.side, allowance=1 * cm)
    )
    assert t.make.operations == ()


def test_a_declared_operation_is_a_value(wrap: Any) -> None:
    t = wrap.table()
    t.make.fold_pocket(t.front.hem, t.front.side, allowance=1 * cm, corners="mitred")
    (fold,) = t.make.operations
    assert (fold.allowance, fold.corners, [run.edges for run in fold.edges]) == (10.0, "mitred", [("hem",), ("side",)])
    assert pickle.loads(pickle.dumps(fold)) == fold and hash(fold) == hash(pickle.loads(pickle.dumps(fold)))
    with pytest.raises(AttributeError):
        fold.allowance = 3.0
