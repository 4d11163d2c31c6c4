"""How many processors there are to work on."""

from __future__ import annotations

import os


def usable_cores() -> int:
    """How many of the machine's cores this process may use, at least 1: a container, a batch system or `taskset` may
    leave it fewer than there are."""
    if hasattr(os, "sched_getaffinity"):  # not on macOS and Windows
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
