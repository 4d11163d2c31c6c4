"""A warm worker: the engine of a page in a process of its own.

    python -m kit.room.worker LESSON.ipynb ENGINE.json

Reads one message a line on standard input and writes one answer a line; the first line it writes is {"ready": true},
or {"failed": why}. It ends when its input does.
"""

from __future__ import annotations

import gc
import json
import os
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any

from kit.errors import KitError

_MEMORY = 2 << 30  # bytes of address space: more is a draft that runs away


def _bounded() -> None:
    with suppress(ImportError, OSError, ValueError):
        import resource

        resource.setrlimit(resource.RLIMIT_AS, (_MEMORY, _MEMORY))


def main(arguments: list[str]) -> int:
    """Answer until the input ends."""
    out = os.fdopen(os.dup(1), "w", encoding="utf-8", errors="replace", buffering=1)
    os.dup2(2, 1)  # what the lesson's code prints must not mix with the answers
    heard = os.fdopen(os.dup(0), "r", encoding="utf-8")
    sys.stdin = open(os.devnull, encoding="utf-8")  # noqa: SIM115  a lesson that asks for input gets none
    _bounded()
    lesson, options = Path(arguments[0]).resolve(), json.loads(Path(arguments[1]).read_text("utf-8"))
    try:
        from kit.page.opened import without_notebook
        from kit.room.engine import RoomEngine

        without_notebook()
        os.chdir(lesson.parent)
        engine = RoomEngine(
            Path(lesson.name), offered=options["languages"], sliders=options["sliders"], cloth=options["cloth"]
        )
        _warm(engine, options)
    except KitError as error:
        print(json.dumps({"failed": str(error)}), file=out)
        return 1
    gc.collect()
    gc.freeze()
    print(json.dumps({"ready": True}), file=out)
    for line in heard:
        print(engine.answer(line), file=out)
    return 0


def _warm(engine: Any, options: dict[str, Any]) -> None:
    """Work everything once: what is read or compiled on first use is there when somebody asks."""
    for code in options["languages"]:
        engine.answer(json.dumps({"do": "about", "language": code}))
        engine.answer(json.dumps({"do": "draw", "language": code}))
    engine.answer(json.dumps({"do": "prove"}))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
