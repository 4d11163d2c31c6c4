"""The class of an operation as a value and as its own verb: `@operation`. What an operation is: `kit.sewing.base`; what
it says: `kit.sewing.sentence`. Both are had from here.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeVar, dataclass_transform, overload

from kit.sewing import fields
from kit.sewing.base import Operation as Operation
from kit.sewing.own_verb import verb_of
from kit.sewing.sentence import Sentence as Sentence
from kit.sewing.verb import VERBS

T = TypeVar("T", bound=Operation)


@overload
def operation(made: type[T], /) -> type[T]: ...
@overload
def operation(*, verb: str) -> Callable[[type[T]], type[T]]: ...
@dataclass_transform(
    kw_only_default=True,
    frozen_default=True,
    field_specifiers=(
        fields.runs,
        fields.run,
        fields.meets,
        fields.row,
        fields.part,
        fields.opening,
        fields.width,
        fields.size,
        fields.word,
        fields.direction,
        fields.flag,
        fields.strip,
        fields.whole,
        fields.fixed,
        fields.pieces,
        fields.mark,
        fields.places,
        fields.read_by,
    ),
)
def operation(made: type[T] | None = None, /, *, verb: str | None = None) -> Any:
    """Makes a class a value, and the verb of its `kind` (or of the name `verb`): a method of `make` whose arguments are
    its fields, with its docstring. No verb comes of `verb=""`, nor of a class without a kind, which others build on."""

    def make_of(cls: type[T]) -> type[T]:
        whole = dataclass(frozen=True, kw_only=True)(cls)
        name = (whole.kind if "kind" in vars(whole) else "") if verb is None else verb
        if name:
            VERBS[name] = verb_of(whole, name)
        return whole

    return make_of if made is None else make_of(made)
