"""Codes that open a class: short enough to be typed from the board, long enough not to be guessed."""

from __future__ import annotations

import hmac
import re
import secrets

LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"  # none that is read as another
_LENGTH = 10


def new_code() -> str:
    """A code: 49 bits."""
    return "".join(secrets.choice(LETTERS) for _ in range(_LENGTH))


def written(code: str) -> str:
    """The code as it is written on a board: "k7qm-2xpd-9r"."""
    return "-".join(code[i : i + 4] for i in range(0, len(code), 4))


def read_code(text: str) -> str:
    """What somebody typed, without capitals, dashes and spaces."""
    return re.sub(r"[^a-z0-9]", "", text[:100].lower())


def same(code: str, text: str) -> bool:
    """Whether `text` is the `code`; it takes as long to find out that it is not."""
    return hmac.compare_digest(read_code(text).encode(), code.encode())
