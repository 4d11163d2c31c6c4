"""`make`: what a sewing step writes with. Each method is one operation, named as the trade says it.

The methods are the verbs of `kit.sewing.operations`, each written beside its operation: `make.french_seam(...)`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import wraps
from typing import Any

from kit.errors import KitError, near
from kit.piece.piece import Piece, Strip
from kit.sewing.operation import Operation
from kit.sewing.operations import KINDS
from kit.sewing.reading import Reader
from kit.sewing.verb import VERBS


class Make(Reader):
    """Records sewing operations in the order they are written. `operations` is the record."""

    def __init__(self, pieces: Sequence[Piece], strips: Sequence[Strip] = ()) -> None:
        super().__init__(pieces, strips)
        self._operations: list[Operation] = []

    @property
    def operations(self) -> tuple[Operation, ...]:
        return tuple(self._operations)

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):
            raise AttributeError(name)
        raise KitError(f"there is no sewing operation '{name}'.", do=near(name, VERBS))


def _method(function: Callable[..., Operation]) -> Callable[..., None]:
    @wraps(function)
    def write(self: Make, *given: Any, **named: Any) -> None:
        self._operations.append(function(self, *given, **named))

    return write


assert KINDS  # importing the operations has registered their verbs
for _name, _function in VERBS.items():
    setattr(Make, _name, _method(_function))
