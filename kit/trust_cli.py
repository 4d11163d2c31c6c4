"""What every command that runs a notebook says first."""

from __future__ import annotations

from pathlib import Path


def say_code(*notebooks: Path) -> None:
    """What is said before the code of notebooks runs, and more when one did not come from this machine's user."""
    from kit.booklet.origin import stranger
    from kit.language import say

    print(say("building.code"), flush=True)
    for notebook in notebooks:
        reason = stranger(notebook)
        if reason:
            print(
                f"Take care: {reason} Its code can do whatever you can do on this machine: read, change and send your "
                "files. Stop now (Ctrl+C) unless you trust whoever wrote it.",
                flush=True,
            )
