"""Whether an attribute is being called, `front.drawe(...)`, or only named, `front.drawe`.

An object that does not know a name sees the same question in both; the bytecode of whoever asked tells them apart.
"""

from __future__ import annotations

import dis
import sys
from types import FrameType


def is_called(frame: FrameType) -> bool:
    """Whether the instruction that `frame` is at fetches an attribute in order to call it. Where that cannot be told (a
    call that spreads out its arguments, another interpreter) it is taken as only named."""
    if sys.implementation.name != "cpython":
        return False
    code = frame.f_code.co_code
    at = frame.f_lasti
    if not 0 <= at < len(code) - 1:
        return False
    operation = dis.opname[code[at]]
    if operation == "LOAD_METHOD":  # CPython 3.11
        return True
    return operation == "LOAD_ATTR" and sys.version_info >= (3, 12) and bool(code[at + 1] & 1)
