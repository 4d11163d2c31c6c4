"""A lesson kept as text is read as the notebook it was written as: `# %%` marks (read by several editors, from memory)
and fenced code (CommonMark 0.31.2, section 4.5)."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from kit import KitError
from kit.booklet.run_notebook import read_notebook
from kit.cli import main
from kit.resources import examples

TOTE = examples() / "ferry_tote.ipynb"


def cells(path: Path) -> list[tuple[str, str]]:
    return [(cell["cell_type"], "".join(cell["source"])) for cell in json.loads(path.read_text("utf-8"))["cells"]]


def as_percent(found: list[tuple[str, str]]) -> str:
    lines = ["# ---", "# jupyter:", "#   kernelspec: x", "# ---", ""]
    for kind, source in found:
        commented = "\n".join(f"# {line}".rstrip() for line in source.split("\n"))
        lines += [f"# %%{' [markdown]' if kind == 'markdown' else ''}", commented if kind == "markdown" else source, ""]
    return "\n".join(lines)


def as_markdown(found: list[tuple[str, str]]) -> str:
    parts = [source if kind == "markdown" else f"```python\n{source}\n```" for kind, source in found]
    return "---\ntitle: x\n---\n\n" + "\n\n".join(parts) + "\n"


@pytest.mark.parametrize(("suffix", "write"), [(".py", as_percent), (".md", as_markdown)])
def test_a_text_is_the_notebook_it_was_written_as(suffix: str, write: object, tmp_path: Path) -> None:
    path = tmp_path / f"ferry_tote{suffix}"
    path.write_text(write(cells(TOTE)), encoding="utf-8")  # type: ignore[operator]
    book = read_notebook(path)
    assert [(cell.cell_type, cell.source) for cell in book.cells] == cells(TOTE)
    assert len({cell.id for cell in book.cells}) == len(book.cells)


def test_tags_and_quoted_markdown_are_read(tmp_path: Path) -> None:
    path = tmp_path / "a.py"
    path.write_text('# %% [markdown] tags=["for-class", "x"]\n"""\n# Title\n"""\n# %%\nx = 1\n', encoding="utf-8")
    title, code = read_notebook(path).cells
    assert (title.source, title.metadata.tags) == ("# Title", ["for-class", "x"])
    assert code.source == "x = 1"


def test_what_stands_before_the_first_mark_is_a_cell(tmp_path: Path) -> None:
    path = tmp_path / "a.py"
    path.write_text("# ---\n# x: y\n# ---\nfrom kit import *\n\n# %%\nx = 1\n", encoding="utf-8")
    assert [cell.source for cell in read_notebook(path).cells] == ["from kit import *", "x = 1"]


@pytest.mark.parametrize(("name", "says"), [("a.py", "# %%"), ("a.md", "```python")])
def test_a_text_without_cells_says_what_is_needed(name: str, says: str, tmp_path: Path) -> None:
    path = tmp_path / name
    path.write_text("x = 1\n", encoding="utf-8")
    with pytest.raises(KitError) as trouble:
        read_notebook(path)
    assert "holds no cells" in trouble.value.what and says in trouble.value.do and ".ipynb" in trouble.value.do


def test_a_text_is_checked(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "ferry_tote.py"
    path.write_text(as_percent(cells(TOTE)), encoding="utf-8")
    assert main(["check", str(path)]) == 0
    assert "Ferry tote, one size: nothing found." in capsys.readouterr().out


def test_each_lesson_of_a_notebook_is_checked(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Two variations of the tote, one without its hem."""
    more = """closed = lesson.variation("Closed tote")
raw = lesson.variation("Open tote")
raw.remove("top", "put_handles")"""
    path = tmp_path / "two.py"
    path.write_text(as_percent([*cells(TOTE), ("code", more)]), encoding="utf-8")
    status = main(["check", str(path)])
    said, refused = capsys.readouterr()
    assert (status, refused) == (1, "")
    assert "has 2 lessons" in said
    assert "Closed tote, one size: nothing found." in said and "Open tote, one size: the proof failed." in said
