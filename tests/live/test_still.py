"""Without a kernel: what cells show carries still pictures, and a notebook exported without network shows the lesson.

An SVG's own size and the signature of a PNG: W3C SVG 2 (section 8.2), W3C PNG third edition (section 5.2).
"""

from __future__ import annotations

import base64
import re
from pathlib import Path
from xml.etree import ElementTree

import nbformat
import numpy as np
import pytest
from nbconvert import HTMLExporter, MarkdownExporter
from nbformat.v4 import new_code_cell, new_notebook
from PIL import Image

from kit import canvas, panel, player
from kit.live import fragments
from kit.live.still import PNG, SVG, bundle, pictures, still

from .conftest import LessonMaker

VIEW = "application/vnd.jupyter.widget-view+json"


def ink(data: str, tmp_path: Path) -> float:
    """The part of a PNG that is not white."""
    raw = base64.b64decode(data)
    assert raw.startswith(b"\x89PNG\r\n\x1a\n")
    (tmp_path / "still.png").write_bytes(raw)
    pixels = np.asarray(Image.open(tmp_path / "still.png").convert("L"))
    return float((pixels < 200).mean())


def test_each_widget_keeps_a_still_of_its_picture(make_lesson: LessonMaker, tmp_path: Path) -> None:
    lesson = make_lesson()
    for each in (panel(lesson), canvas(lesson), player(lesson)):
        data, more = each._repr_mimebundle_()
        assert VIEW in data, "the live widget comes first where there is a kernel"
        root = ElementTree.fromstring(data[SVG])
        assert float(root.attrib["width"]) > 200
        assert 0.001 < ink(data[PNG], tmp_path) < 0.5
        assert "Landing vest" in data["text/plain"], type(each).__name__
        assert more[SVG]["alt"] == more[PNG]["alt"] == data["text/plain"]


def test_several_pictures_stand_in_one(make_lesson: LessonMaker, tmp_path: Path) -> None:
    lesson = make_lesson()
    pattern = lesson.work()
    html = "".join(fragments.step(record, "cm") for record in pattern.steps)
    one, two = pictures(html)
    both = still([one, two])
    root = ElementTree.fromstring(both[SVG])
    inner = root.findall("{http://www.w3.org/2000/svg}svg")
    assert len(inner) == 2 and inner[0].attrib["y"] == "0"
    assert float(root.attrib["height"]) >= max(float(each.attrib["height"]) for each in inner)
    assert ink(both[PNG], tmp_path) > 0.001
    given = bundle(html)
    lines = given["text/plain"].splitlines()
    assert lines[:2] == ["Lower the <hem>", "Rule the hem 14 cm (5 1/2 in) below the waistline."]
    assert still([]) == {} and "image/png" not in bundle(html, png=False)


STEP = """
@lesson.step("Lower the hem")
def lower(front, hem):
    "Rule the hem {hem} below the waistline."
    front.draw(hem=front.waist.parallel(hem, "down"), instead_of=front.hip)
    front.join(front.side, front.hem)
    front.join(front.hem, front.centre)
"""


@pytest.fixture(scope="module")
def saved(tmp_path_factory: pytest.TempPathFactory) -> nbformat.NotebookNode:
    """A lesson run and saved as JupyterLab saves it: without the state of its widgets."""
    from nbclient import NotebookClient

    cells = [
        'from kit import *\nlesson = Lesson("Quay vest", start=bodice_block)\n'
        'lesson.length("hem", 14 * cm, least=4 * cm, most=20 * cm)',
        STEP.strip(),
        'lesson.words("Longer than {hem}.")',
        "panel(lesson)",
        "canvas(lesson)",
        "player(lesson)",
        # The kernel rests. What it sent between two cells this client has not heard, so all of it is sent again.
        "from kit.live.beside import beside\nside = beside(lesson)\nside._stilled.clear()\nside._stilling.now()",
    ]
    book = new_notebook(cells=[new_code_cell(cell) for cell in cells])
    folder = tmp_path_factory.mktemp("saved")
    client = NotebookClient(book, store_widget_state=False, resources={"metadata": {"path": str(folder)}})
    return client.execute()


def test_the_saved_outputs_hold_both_kinds_of_picture(saved: nbformat.NotebookNode) -> None:
    outputs = [output.data for cell in saved.cells for output in cell.outputs if "data" in output]
    kinds = [(SVG in data, PNG in data) for data in outputs if SVG in data or VIEW in data]
    assert kinds == [(True, True)] * 4, "the step, the panel, the canvas, the player"


def test_exported_to_html_it_shows_itself_without_network(saved: nbformat.NotebookNode, out_folder: Path) -> None:
    html, _ = HTMLExporter().from_notebook_node(saved)
    (out_folder / "saved-lesson.html").write_text(html, encoding="utf-8")
    body = re.sub(r"<pre.*?</pre>", "", html[html.index("<body") :], flags=re.DOTALL)
    images = re.findall(r'<img [^>]*src="data:image/svg', body)
    assert body.count("<svg") == 1 and len(images) == 3, "the step; panel, canvas and player"
    assert "Longer than 14 cm (5 1/2 in)." in body and "widget-view" not in body
    assert not re.findall(r"""<(?:img|script|link|iframe)[^>]*(?:src|href)=["']https?://""", body)


def test_as_plain_markdown_each_picture_is_a_file(saved: nbformat.NotebookNode) -> None:
    text, resources = MarkdownExporter().from_notebook_node(saved)
    kinds = [Path(name).suffix for name in resources["outputs"]]
    assert kinds.count(".svg") + kinds.count(".png") >= 3 and "Longer than 14 cm" in text
