"""The example lesson, worked in this process without a kernel."""

from __future__ import annotations

import json
import re
from contextlib import chdir
from pathlib import Path
from typing import Any

_PANEL = re.compile(r"^panel\(", re.MULTILINE)
EXAMPLE = Path(__file__).resolve().parents[1] / "example_notebooks" / "tideline_wrap_top.ipynb"


def lesson_notebooks() -> list[Path]:
    """The example notebooks that teach a garment, in the order of their names: neither guides nor the reference."""
    found = sorted(EXAMPLE.parent.glob("*.ipynb"))
    return [path for path in found if not path.name.startswith(("guide_", "reference_"))]


GARMENTS = tuple(path.stem for path in lesson_notebooks() if path.stem != "blocks_and_moves")
"""Every example lesson that is sewn: what is asked of one is asked of each that is added."""


def notebook_names(path: Path) -> dict[str, Any]:
    """What a notebook's code cells define, the panel's cell left out."""
    names: dict[str, Any] = {}
    for cell in json.loads(path.read_text(encoding="utf-8"))["cells"]:
        source = "".join(cell["source"])
        if cell["cell_type"] == "code" and not _PANEL.search(source):
            with chdir(path.parent):
                exec(compile(source, cell["id"], "exec"), names)
    return names
