"""Packed as tightly as a browser can unpack without help of its host: LZMA, which a script of the page reads.

A plain host serves files as they are, so what a visit loads is what lies in the folder. LZMA in its old form (one
stream, its size at the head; LZMA SDK 9.20, lzma.txt, public domain) takes a quarter less than what browsers unpack by
themselves, and `templates/page/unpack.js` reads it while it arrives. An archive inside is stored without packing of its
own: files that are alike then save each other's bytes.
"""

from __future__ import annotations

import hashlib

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.page.core import cache_folder

_HEAD = 13  # bytes: properties, size of the window, size of what is packed
_WINDOW = 1 << 24


def packed(data: bytes) -> bytes:
    """`data` packed; what took long is kept for the next build. Raises `KitError` where this Python has no LZMA."""
    try:
        import lzma
    except ImportError:
        raise KitError(
            "this Python was built without LZMA, with which a page is packed.",
            do="Install the system's liblzma (Debian: liblzma-dev) and Python again, or use another Python.",
        ) from None
    kept = cache_folder() / f"packed-{hashlib.sha256(data).hexdigest()[:32]}.lzma"
    try:
        made = kept.read_bytes()
        if unpacked_size(made) == len(data) and lzma.decompress(made) == data:
            return made
    except (OSError, lzma.LZMAError):
        pass  # it is made anew
    settings = {"id": lzma.FILTER_LZMA1, "preset": 9 | lzma.PRESET_EXTREME, "dict_size": _WINDOW}
    made = lzma.compress(data, format=lzma.FORMAT_ALONE, filters=[settings])
    made = made[:5] + len(data).to_bytes(8, "little") + made[_HEAD:]
    try:
        write_atomically(kept, made)
    except KitError:
        pass  # it is made anew next time
    return made


def unpacked_size(made: bytes) -> int:
    """How many bytes are packed in `made`."""
    return int.from_bytes(made[5:_HEAD], "little")
