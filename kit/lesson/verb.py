"""The verbs of a piece on the bench: every family registers its own beside the function that does it.

A verb is a function of an open piece, `def notch(bench: OpenPiece, edge, at, ...)`; a step writes `front.notch(...)`.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

VERBS: dict[str, Callable[..., Any]] = {}
F = TypeVar("F", bound=Callable[..., Any])

# fmt: off
RESERVED = frozenset({
    "add_dart", "add_ease", "add_pleat", "add_tuck", "allow", "buttonholes", "cut", "dart_to_ease",
    "dart_to_gathers", "declare", "draw", "drill", "extend_hem", "face", "finish_corner", "freeze", "grain",
    "guide", "inside_is_left", "interface", "join", "lay_dart", "leave_open", "line", "lower_neckline", "mark",
    "mark_line", "mark_point", "match", "measure", "mirror", "move_dart", "notch", "note", "piece_name", "place",
    "placement", "say", "sewn_length", "shorten_dart", "split_dart", "spread", "trace", "transfer", "true",
    "true_dart", "true_pleat",
})
# fmt: on
"""Words no line or point may be named by. The list is closed: a verb that is added later is not put into it, because a
lesson may have drawn something of that name already. There the lesson's own name wins, and called it is the verb."""


def verb(function: F) -> F:
    """Makes `function(bench, ...)` a verb of a piece on the bench."""
    VERBS[function.__name__] = function
    return function
