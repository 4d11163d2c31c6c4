"""Drawing files broken on purpose: read as far as they make sense, or refused in words, and never without end.

The sound DXF is written by ezdxf (https://ezdxf.mozman.at)."""

from __future__ import annotations

import io
import tempfile
from pathlib import Path as FilePath

import ezdxf
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.blocks.read_dxf import read_dxf
from kit.blocks.read_svg import read_svg
from kit.errors import KitError


def test_parts_used_over_and_over_are_counted_before_they_are_written_out(tmp_path: FilePath) -> None:
    """Ten uses of ten uses of ...: a small file that would come to millions of lines, or to no end."""

    def drawing(levels: int, start: str = '<path d="M0 0L10 0L10 10Z"/>') -> FilePath:
        groups = [f'<g id="l0">{start}</g>']
        for i in range(1, levels + 1):
            uses = f'<use href="#l{i - 1}"/>' * 10
            groups.append(f'<g id="l{i}">{uses}</g>')
        head = '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">'
        path = tmp_path / "again.svg"
        path.write_text(f'{head}<defs>{"".join(groups)}</defs><use href="#l{levels}"/></svg>')
        return path

    assert len(read_svg(drawing(2)).strokes) == 100
    with pytest.raises(KitError, match=r"6,802,\d+ parts"):
        read_svg(drawing(6))
    with pytest.raises(KitError, match="no end"):
        read_svg(drawing(3, '<use href="#l3"/>'))
    deep = tmp_path / "deep.svg"
    deep.write_text('<svg xmlns="http://www.w3.org/2000/svg">' + "<g>" * 30_000 + "</g>" * 30_000 + "</svg>")
    with pytest.raises(KitError):
        read_svg(deep)


@settings(max_examples=60, deadline=None)
@given(st.data())
def test_damaged_dxf_is_refused_in_words(data: st.DataObject) -> None:
    """Lines left out, doubled and garbled anywhere: read as far as it makes sense, or refused, never a traceback."""
    doc = ezdxf.new("R2010", units=4)
    doc.modelspace().add_lwpolyline([(0, 0), (100, 0), (100, 60), (0, 60)], close=True)
    doc.modelspace().add_spline([(0, 0), (30, 40), (80, 20)])
    doc.modelspace().add_arc((0, 0), 40, 10, 120)
    stream = io.StringIO()
    doc.write(stream)
    lines = stream.getvalue().splitlines()
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(lines) - 1))
        how = data.draw(st.sampled_from(("cut", "out", "twice", "garbled", "empty")))
        if how == "cut":
            lines = lines[: max(at, 1)]
        elif how == "garbled":
            lines[at] = data.draw(st.sampled_from(("-1", "9" * 400, "nan", "ENTITIES", "0", "inf", "\x00", "EOF")))
        else:
            lines[at : at + 1] = {"out": [], "twice": [lines[at]] * 2, "empty": [""]}[how]
        lines = lines or [""]
    with tempfile.TemporaryDirectory() as folder:
        path = FilePath(folder) / "damaged.dxf"
        path.write_text("\n".join(lines), "utf-8")
        try:
            read_dxf(path)
        except KitError as refusal:
            assert "damaged.dxf" in str(refusal)
