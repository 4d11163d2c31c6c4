"""Where a class is served: this machine's address in the room, and the names a browser may call it by."""

from __future__ import annotations

import contextlib
import errno
import re
import socket
from collections.abc import Iterable

from kit.errors import KitError

LOOPBACK = ("127.0.0.1", "localhost", "::1")
_USUAL = (80, 443)  # RFC 9110, 4.2: the ports of http and https that an address need not name
_NAME = re.compile(r"[A-Za-z0-9]([A-Za-z0-9.-]{0,250}[A-Za-z0-9])?\Z|\[[0-9A-Fa-f:.]+\]\Z")


def local_address() -> str:
    """This machine's address in the local network. Nothing is sent. Raises `KitError` when there is none."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked:
        try:
            asked.connect(("192.0.2.1", 9))  # an address of RFC 5737, for documentation: only the route is looked up
            found = str(asked.getsockname()[0])
        except OSError:
            found = ""
    if not found or found.startswith("127."):
        with contextlib.suppress(OSError):
            found = socket.gethostbyname(socket.gethostname())
    if not found or found.startswith("127."):
        raise KitError(
            "this machine has no address in a local network.",
            where="--local-network",
            do="Join the network first, or name the address: --local-network 192.168.1.20.",
        )
    return found


def checked_name(name: str) -> str:
    """A name to be called by, without its port. Raises `KitError` for what is none."""
    if not _NAME.match(name):
        raise KitError(f"'{name}' is no name of a machine.", where="--name", do="Write it as in class.school.example.")
    return name.lower()


def hosts(address: str, port: int, names: Iterable[str] = ()) -> frozenset[str]:
    """What a browser's Host header may say: the address served at and the `names`, with the port or, where it is
    a usual one (browsers leave it out) or a name stands for a proxy, without. Anything else is a page of somebody else
    that was pointed here (DNS rebinding)."""
    called = {f"[{address}]" if ":" in address else address, *(name.lower() for name in names)}
    if address in LOOPBACK:
        called |= {"127.0.0.1", "localhost", "[::1]"}
    bare = called if port in _USUAL else {name.lower() for name in names}
    return frozenset({f"{name}:{port}" for name in called} | bare)


def no_port(error: OSError, address: str, port: int) -> KitError:
    """Why nothing can be served there."""
    if error.errno == errno.EADDRINUSE:
        return KitError(f"port {port} is taken.", where="--port", do="Another class may be open; try --port 8867.")
    if error.errno == errno.EACCES:
        return KitError(f"port {port} may not be used.", where="--port", do="Choose one above 1024, such as 8866.")
    return KitError(f"'{address}' is no address of this machine.", where="--local-network", do="Look it up and retry.")
