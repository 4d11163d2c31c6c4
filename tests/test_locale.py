"""A machine whose system writes numbers with a comma: what is read and written there is the same to the byte.

The locale is glibc's own de_DE, made with `localedef` where the machine has none (its decimal point is a comma by the
Unicode CLDR as well).
"""

from __future__ import annotations

import locale
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from kit.lesson.pattern import Pattern
from kit.paper.dxf_file import dxf_text
from kit.paper.export import write_pages
from kit.paper.nested import lay_nest, nest
from kit.paper.papers import A0, A4
from kit.paper.svg_file import svg_text
from kit.picture.flat import cover_drawing
from kit.picture.raster import raster
from kit.picture.svg_pen import svg
from kit.units import parse
from tests.example import EXAMPLE, notebook_names


@pytest.fixture(scope="module")
def commas(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Everything that asks the system how numbers are written is told: with a comma."""
    before = locale.setlocale(locale.LC_ALL)
    with pytest.MonkeyPatch.context() as patch:
        try:
            locale.setlocale(locale.LC_ALL, "de_DE.UTF-8")
        except locale.Error:
            made = tmp_path_factory.mktemp("locales") / "de_DE.UTF-8"
            maker = shutil.which("localedef")
            if maker is None or subprocess.run([maker, "-i", "de_DE", "-f", "UTF-8", made], check=False).returncode:
                pytest.skip("there is no German locale here, and none can be made")
            patch.setenv("LOCPATH", str(made.parent))
            locale.setlocale(locale.LC_ALL, "de_DE.UTF-8")
        try:
            assert locale.localeconv()["decimal_point"] == "," and locale.format_string("%.1f", 2.5) == "2,5"
            yield
        finally:
            locale.setlocale(locale.LC_ALL, before)


def written(folder: Path) -> dict[str, bytes]:
    """The tote's pages, its data, its drawings for other programs, and its cover as SVG and pixels."""
    pattern: Pattern = notebook_names(EXAMPLE.with_name("ferry_tote.ipynb"))["lesson"].work()
    files = write_pages(pattern, folder, papers=(A4,))
    nested = nest([pattern])
    laid = lay_nest(nested, (A0,))
    cover = svg(cover_drawing(pattern), 400, 300)
    return {name: path.read_bytes() for name, path in files.items()} | {
        "sheet.dxf": dxf_text(nested, laid).encode(),
        "sheet.svg": svg_text(nested, laid).encode(),
        "cover.svg": cover.encode(),
        "cover.png": bytes(raster(cover, (200, 150)).tobytes()),
    }


@pytest.fixture(scope="module")
def plain(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    """What is written where numbers have a point; made before the locale changes."""
    return written(tmp_path_factory.mktemp("points"))


def test_files_are_the_same_where_numbers_have_a_comma(plain: dict[str, bytes], commas: None, tmp_path: Path) -> None:
    made = written(tmp_path / "commas")
    assert made.keys() == plain.keys() and len(made) >= 7
    assert [name for name in made if made[name] != plain[name]] == []


def test_lengths_are_read_alike(commas: None) -> None:
    assert float(parse("2.5 cm")) == float(parse("2,5 cm")) == 25.0
    assert float(parse("1 1/2 in")) == pytest.approx(38.1)
