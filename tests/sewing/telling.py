"""Operations, what they do and what their pictures show, told in lines of text."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields

from kit.diagnostic import Diagnostic, Message
from kit.lesson.pattern import Pattern
from kit.sewing.operation import Operation
from kit.sewing.scene import Scene
from tests.told import told, usual


def told_operation(operation: Operation, pattern: Pattern) -> Iterator[str]:
    """All that an operation says of itself, a line each: the keys and values of its sentences, not their words."""
    yield f"{operation.kind}, {operation.minutes(pattern):.4g} minutes, class {operation.seam_class or '-'}"
    yield f"needs {told(operation.tools)}; minds {told(operation.cautioned(pattern))}; {told(operation.notions)}"
    values = operation.values(pattern)
    for sentence in operation.sentences(pattern):
        more = {name: each[0] for name, each in sentence.values.items() if values.get(name) != each}
        yield f"says {sentence.key} {told(more) if more else ''}".rstrip()
    for name, (value, kind) in sorted(values.items()):
        yield f"tells {name} ({kind}): {told(value)}"
    yield from (f"why {sentence.key}" for sentence in operation.whys(pattern))
    yield from (f"is {told(role)}" for role in operation.roles())
    yield from (f"amount {name}: {told(amount)}" for name, amount in operation.notion_amounts(pattern).items())
    for name in ("opens", "gaps", "wants"):
        yield from (f"{name} {told(each)}" for each in getattr(operation, name)(pattern))
    for name in ("joins", "uses", "effect"):
        value = getattr(operation, name)
        yield f"{name} {told(value(pattern) if callable(value) else value)}"


def told_objection(found: Diagnostic) -> str:
    """What speaks against an operation: its code, and the keys and values of what is said, not the words."""
    do = found.can.key if isinstance(found.can, Message) else found.can or "-"
    says = found.says
    if isinstance(says, Message):
        filled = ", ".join(f"{name} {told(value.value)}" for name, value in says.values)
        says = f"{says.key} {{{filled}}}"
    amount = "" if found.amount is None else f", {told(found.amount)} mm"
    return f"{found.level} {found.code}{amount}: {says}; do {do}"


def told_scene(scene: Scene) -> Iterator[str]:
    """What a picture shows: a line for each layer from below, each row, each thing, and for all else that is not as
    usual."""
    for key in ("layers", "rows", "things"):
        for each in getattr(scene, key):
            yield f"  {key[:-1]} {told(each)}"
    for each in (each for each in fields(scene) if each.repr):
        value = getattr(scene, each.name)
        if each.name not in ("layers", "rows", "things") and not usual(each, value):
            yield f"  {each.name} {told(value)}"
