"""`lessonkit fit`: a body file beside a lesson."""

from __future__ import annotations

from pathlib import Path

from kit.cli import main

NOTEBOOKS = Path(__file__).resolve().parents[1] / "example_notebooks"


def test_it_names_size_changes_and_the_command(tmp_path, monkeypatch, capsys):
    monkeypatch.chdir(tmp_path)
    body = tmp_path / "mine.toml"
    body.write_text(
        'name = "Mine"\nunits = "cm"\n[measured]\nbust_girth = "98 cm"\nupper_chest_girth = "88 cm"\n'
        'back_waist_length = "43.4 cm"\nbody_rise = "30 cm"\n',
        encoding="utf-8",
    )
    assert main(["fit", str(body), str(NOTEBOOKS / "tideline_wrap_top.ipynb"), "--units", "cm"]) == 0
    told = capsys.readouterr().out
    assert "Draw size W4 by the upper chest girth" in told
    assert "Full bust: 8 cm" in told
    assert "Not to be made on this garment: Long rise" in told
    assert "--size W4 --values full_bust=8cm,lengthen_above_waist=2cm" in told
    assert "Set only" not in told
    body.write_text(body.read_text(encoding="utf-8").replace("98 cm", "118 cm"), encoding="utf-8")
    assert main(["fit", str(body), str(NOTEBOOKS / "tideline_wrap_top.ipynb"), "--units", "cm"]) == 0
    told = capsys.readouterr().out
    assert "Full bust: 28 cm" in told and "Set only to the most it takes: Full bust: 12 cm" in told
    assert "full_bust=12cm" in told


def test_a_file_that_is_no_body_is_told(tmp_path, capsys):
    assert main(["fit", str(tmp_path / "none.toml"), str(NOTEBOOKS / "tideline_wrap_top.ipynb")]) == 2
    assert "none.toml" in capsys.readouterr().err
