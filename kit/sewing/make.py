"""`make`: what a sewing step writes with. Each method is one operation, named as the trade says it.

The methods are the verbs of `kit.sewing.operations`, each written beside its operation: `make.french_seam(...)`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import wraps
from typing import TYPE_CHECKING, Any

from kit.errors import KitError, near
from kit.piece.piece import Piece, Strip
from kit.sewing.call import answered, check_call
from kit.sewing.operation import Operation
from kit.sewing.operations import KINDS
from kit.sewing.reading import Reader
from kit.sewing.verb import VERBS

if TYPE_CHECKING:
    from kit.sewing.make_types import MakeVerbs
else:
    MakeVerbs = object


class Make(MakeVerbs):
    """Records sewing operations in the order they are written by its verbs. `operations` is the record; `before` are
    those of earlier steps, which may be gone on with. Each verb gives what it has written.

    >>> from kit import PieceHandle, bodice_block, cm, workshop_chart
    >>> pieces = bodice_block(workshop_chart()["W4"])
    >>> front, back = map(PieceHandle, pieces)
    >>> make = Make(pieces)
    >>> seam = make.plain_seam(front.side, back.side, allowance=1.5 * cm, finish="overlock")
    >>> [operation.allowance for operation in make.operations]
    [15.0]
    """

    def __init__(self, pieces: Sequence[Piece], strips: Sequence[Strip] = (), before: Sequence[Operation] = ()) -> None:
        self._reader = Reader(pieces, strips, before)
        self._operations: list[Operation] = []

    @property
    def operations(self) -> tuple[Operation, ...]:
        return tuple(self._operations)

    if not TYPE_CHECKING:  # what checkers see of it is made from the verbs: make_types.pyi

        def __getattr__(self, name: str) -> Any:
            if name.startswith("_"):
                raise AttributeError(name)
            raise KitError(f"there is no sewing operation '{name}'.", do=near(name, VERBS))

    def __dir__(self) -> list[str]:
        return sorted(VERBS)


def _method(function: Callable[..., Operation]) -> Callable[..., Operation]:
    @wraps(function)
    def write(self: Make, *given: Any, **named: Any) -> Operation:
        try:
            check_call(function, given, named)
            written = function(self._reader, *given, **named)
        except KitError as error:
            raise answered(error, function) from error.__cause__
        self._operations.append(written)
        self._reader.sewn.append(written)
        return written

    return write


assert KINDS  # importing the operations has registered their verbs
for _name, _function in VERBS.items():
    setattr(Make, _name, _method(_function))
