"""A page's kit and lesson tried before they are written: in a Python of its own, that has nothing else."""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any


class AloneError(Exception):
    """What was tried came to no end (`late`), or ended without an answer: its last words."""

    def __init__(self, said: str = "", *, late: bool = False) -> None:
        super().__init__(said)
        self.late = late


def answer_alone(
    code: str, kit: Mapping[str, bytes], lesson: Mapping[str, bytes], given: object, *, seconds: float
) -> Any:
    """What `code` prints last, read as JSON. It stands in the folder of the `lesson`'s files and sees no installed
    package; `sys.argv[1:]` is the path of the folder that holds the `kit`'s files, and the `given` as JSON.
    Raises `AloneError`.

    >>> answer_alone("import json, os, sys; print(json.dumps([os.listdir(), json.loads(sys.argv[2])]))",
    ...              {}, {"lesson.ipynb": b"{}"}, {"languages": ["en"]}, seconds=60)
    [['lesson.ipynb'], {'languages': ['en']}]
    """
    with tempfile.TemporaryDirectory(prefix="lessonkit-page-") as scratch:
        for folder, files in (("kit", kit), ("lesson", lesson)):
            (Path(scratch) / folder).mkdir()
            for name, data in files.items():
                path = Path(scratch) / folder / name
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_bytes(data)
        try:
            ran = subprocess.run(
                [sys.executable, "-I", "-S", "-B", "-c", code, str(Path(scratch) / "kit"), json.dumps(given)],
                cwd=Path(scratch) / "lesson",
                capture_output=True,
                text=True,
                timeout=seconds,
            )
        except subprocess.TimeoutExpired:
            raise AloneError(late=True) from None
    said = ran.stdout.strip().splitlines()
    if ran.returncode or not said:
        last = (ran.stderr.strip().splitlines() or ["it ended without a word"])[-1]
        raise AloneError(last.removeprefix("kit.errors.KitError: "))
    return json.loads(said[-1])
