"""The sewing operations, a file for each family. A file put here is found by itself: its classes by `KINDS`, the
words it registers with `@verb` by `make`."""

from __future__ import annotations

from importlib import import_module
from pkgutil import iter_modules

from kit.sewing.operation import Operation

for _module in iter_modules(__path__):
    import_module(f"{__name__}.{_module.name}")


def _below(parent: type[Operation]) -> list[type[Operation]]:
    return [each for child in parent.__subclasses__() for each in (child, *_below(child))]


KINDS: dict[str, type[Operation]] = {each.kind: each for each in _below(Operation) if vars(each).get("kind")}
"""Every operation by its kind."""
