"""What is packed to report a wrong picture: the lesson, its values, the kit's version and the pictures, without the
bodies its code makes or loads. What an author wrote in the text between the cells goes as it stands.

A body that a cell makes or loads is taken out of the copy before it is run; the pictures are of a size of the chart.
"""

from __future__ import annotations

import io
import json
import platform
import zipfile
from collections.abc import Callable
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

import nbformat
from nbformat import NotebookNode

from kit.booklet.asked_draft import AskedDraft
from kit.booklet.bodies_out import bodies_out
from kit.booklet.clean import without_outputs
from kit.booklet.handover import Handover
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.errors import KitError, near
from kit.lesson.pattern import Pattern
from kit.picture.draft import step_drawing
from kit.picture.sewing import scene_drawing
from kit.picture.svg_pen import svg
from kit.proof import prove
from kit.sewing.in_work import shown_scenes

_PACKAGES = ("pattern-lesson-kit", "jupyterlab", "ipywidgets", "anywidget", "weasyprint", "shapely")
_WIDE = 900.0
_SAME = (1980, 1, 1, 0, 0, 0)  # the earliest moment a zip can name, so that the same report has the same bytes


def packed(
    path: Path,
    *,
    size: str | None = None,
    step: str = "",
    says: str = "",
    timeout: int = 120,
    progress: Callable[[str], None] | None = None,
) -> tuple[bytes, list[str]]:
    """The report on the lesson at `path` as a zip, and the names in it. `step`: the pictures of that step alone; `says`
    is what is wrong, in the reporter's words. `KitError` where the notebook cannot be run, and for a step there is not.
    """
    book, bodies = without_bodies(without_outputs(read_notebook(path)))
    given = _handed_over(book, path, size, timeout, progress)
    sizes = [row.name for row in given.chart]
    if sizes and given.pattern.body.name not in sizes:  # a body kept beside the notebook
        given, bodies = _handed_over(book, path, sizes[len(sizes) // 2], timeout, progress), bodies + 1
    pattern = given.pattern
    keys = [*(record.key for record in pattern.steps), *(record.key for record in pattern.sewing)]
    if step and step not in keys:
        raise KitError(f"there is no step '{step}'.", where="--step", do=near(step, keys))
    files = {path.with_suffix(".ipynb").name: nbformat.writes(without_outputs(book)) + "\n"}
    files["report.json"] = json.dumps(_about(given, says, bodies), indent=1, ensure_ascii=False) + "\n"
    files |= {f"pictures/{name}.svg": text for name, text in _pictures(pattern, step).items()}
    packing = io.BytesIO()
    with zipfile.ZipFile(packing, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, text in files.items():
            archive.writestr(zipfile.ZipInfo(name, _SAME), text.encode("utf-8"), zipfile.ZIP_DEFLATED)
    return packing.getvalue(), list(files)


def _handed_over(
    book: NotebookNode, path: Path, size: str | None, timeout: int, progress: Callable[[str], None] | None
) -> Handover:
    draft = AskedDraft(draft="present")
    folder = path.resolve().parent
    ran = run_notebook(book, folder, name=path.name, size=size, draft=draft, timeout=timeout, progress=progress)
    return ran.handover


def without_bodies(book: NotebookNode) -> tuple[NotebookNode, int]:
    """The notebook with a size of the workshop's chart in the place of every body that a cell makes or loads, and how
    many these were. Comments go as well; a cell that is no Python is left out."""
    code = [cell for cell in book.cells if cell.cell_type == "code"]
    sources, count = bodies_out([cell.source for cell in code])
    for cell, source in zip(code, sources, strict=True):
        cell.source = source
    return book, count


def _about(given: Handover, says: str, bodies: int) -> dict[str, object]:
    pattern = given.pattern
    return {
        "says": says,
        "lesson": pattern.lesson.title,
        "edition": pattern.lesson.edition,
        "size": pattern.body.name,
        "values": {value.name: value.value for value in pattern.values},
        "notes": list(given.notes),
        "findings": [f"{finding.level}: {finding}" for finding in prove(pattern)],
        "bodies_taken_out": bodies,
        "versions": {name: _version(name) for name in _PACKAGES},
        "python": platform.python_version(),
        "system": platform.system(),
    }


def _version(name: str) -> str:
    try:
        return version(name)
    except PackageNotFoundError:
        return "not installed"


def _pictures(pattern: Pattern, step: str) -> dict[str, str]:
    """The pictures of the steps (of one, where it is named), by the step's key and their number in it."""
    found: dict[str, str] = {}
    for record in pattern.steps:
        if not step or record.key == step:
            found[record.key] = svg(step_drawing(record, pattern.lesson.units), _WIDE)
    for sewn in pattern.sewing:
        if step and sewn.key != step:
            continue
        scenes = [scene for operation in sewn.operations for scene in shown_scenes(pattern, operation)]
        for number, scene in enumerate(scenes, start=1):
            found[f"{sewn.key}-{number}"] = svg(scene_drawing(scene, pattern, pattern.lesson.units), _WIDE)
    return found
