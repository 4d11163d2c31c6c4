"""A frozen value with some of its fields changed.

`dataclasses.replace` hands every field to `__init__`, which sets each through `object.__setattr__`; a draft is made of
hundreds of such changes and a slider's move waits for them all.
"""

from __future__ import annotations

from dataclasses import fields as fields_of
from typing import Any, TypeVar

T = TypeVar("T")


def changed(value: T, **given: Any) -> T:
    """`value` with the fields `given`, as `dataclasses.replace` gives it: what was worked out of the old one and kept
    beside its fields stays behind, and `__post_init__` is called. For dataclasses without slots, all of whose fields
    `__init__` takes.

    >>> from dataclasses import dataclass
    >>> @dataclass(frozen=True)
    ... class Band:
    ...     wide: float
    ...     long: float = 600.0
    >>> changed(Band(40.0), long=720.0)
    Band(wide=40.0, long=720.0)
    """
    kind = type(value)
    known = _KNOWN.get(kind)
    if known is None:
        names = dict.fromkeys(field.name for field in fields_of(value))  # type: ignore[arg-type]
        known = _KNOWN[kind] = names, getattr(kind, "__post_init__", None)
    names, finish = known
    unknown = given.keys() - names
    if unknown:
        raise TypeError(f"{kind.__name__} has no field {', '.join(sorted(unknown))}")
    made = object.__new__(kind)
    old, new = value.__dict__, made.__dict__
    if len(old) == len(names):
        new.update(old)
    else:  # what was worked out of it stands there too
        for name in names:
            new[name] = old[name]
    new.update(given)
    if finish is not None:
        finish(made)
    return made


_KNOWN: dict[type[Any], tuple[dict[str, None], Any]] = {}
"""Of each class its fields, and what ends the making of a value."""
