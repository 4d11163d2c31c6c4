"""A machine without Pango: with this folder on PYTHONPATH no process finds the library."""

from __future__ import annotations

import ctypes
from typing import Any

import cffi

_CDLL, _open = ctypes.CDLL, cffi.FFI.dlopen


def _refuse(name: object) -> None:
    if any(part in str(name) for part in ("pango", "gobject", "harfbuzz", "fontconfig")):
        raise OSError(f"cannot load library '{name}': {name}: cannot open shared object file")


class _Without(_CDLL):
    def __init__(self, name: Any, *more: Any, **options: Any) -> None:
        _refuse(name)
        super().__init__(name, *more, **options)


def _dlopen(self: Any, name: Any, *more: Any) -> Any:
    _refuse(name)
    return _open(self, name, *more)


ctypes.CDLL = _Without  # type: ignore[misc]
cffi.FFI.dlopen = _dlopen
