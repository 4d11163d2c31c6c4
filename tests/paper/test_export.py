"""What a build writes on paper and as data, and what happens when it cannot."""

from __future__ import annotations

import json
import os
from dataclasses import replace
from pathlib import Path as FilePath

import pytest
from scipy.integrate import quad
from shapely.geometry import Polygon

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.paper.export import pattern_json, write_pages

NAMES = ["pages-a4.pdf", "pages-letter.pdf", "pattern.json", "sheet.pdf"]


def test_writes_the_four_files_and_tells_progress(garment: Pattern, tmp_path: FilePath) -> None:
    said: list[str] = []
    made = write_pages(garment, tmp_path / "out", said.append)
    assert sorted(made) == NAMES
    assert all(path == tmp_path / "out" / name and path.stat().st_size > 500 for name, path in made.items())
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == NAMES  # no temporary files stay
    assert len(said) >= 3


def test_data_carries_names_lengths_and_counts(garment: Pattern) -> None:
    data = json.loads(json.dumps(pattern_json(garment)))
    assert (data["format"], data["version"], data["unit"]) == ("pattern-lesson-kit pattern", 1, "mm")
    assert data["size"] == "W4" and data["lesson"]["title"] == "Tideline wrap top"
    assert data["body"][1] == {"name": "back_waist_length", "value": 405.123, "estimated": True}
    back, front, facing = data["pieces"]
    assert (back["cut_count"], back["fold"], back["mirrored"]) == (1, "centre", False)
    assert (front["cut_count"], front["fold"], front["mirrored"]) == (2, None, True)
    assert facing["interfacing"] == 1
    assert [(piece["role"], piece["worn"]) for piece in data["pieces"][:2]] == [("back", "back"), ("front", "front")]
    assert facing["role"] == "facing"
    assert data["strips"][0]["cut_count"] == 2
    hem = next(edge for edge in back["edges"] if edge["name"] == "hem")
    assert hem == {
        "name": "hem", "said": "hem", "role": "hem", "length": 255.0, "allowance": 20.0,
        "extra": 0.0,
        "start": [0.0, -150.0], "end": [255.0, -150.0],
    }  # fmt: skip
    assert back["notches"][0]["at"] == [255.0, -50.0]


def test_a_curved_edge_has_its_true_length(garment: Pattern) -> None:
    # Against numerical quadrature (scipy.integrate.quad) of the Bezier's speed.
    (p0, p1, p2, p3) = ((255, 60), (255, 170), (300, 210), (390, 190))

    def speed(t: float) -> float:
        parts = [
            3 * ((1 - t) ** 2 * (b - a) + 2 * (1 - t) * t * (c - b) + t**2 * (d - c))
            for a, b, c, d in zip(p0, p1, p2, p3, strict=True)
        ]
        return float((parts[0] ** 2 + parts[1] ** 2) ** 0.5)

    edges = pattern_json(garment)["pieces"][0]["edges"]
    underarm = next(edge for edge in edges if edge["name"] == "underarm")
    assert underarm["length"] == pytest.approx(quad(speed, 0, 1)[0], abs=0.002)


def test_the_cut_line_lies_around_the_stitch_line_by_the_allowances(garment: Pattern) -> None:
    for piece in pattern_json(garment)["pieces"]:
        stitch, cut = Polygon(piece["stitch_line"]), Polygon(piece["cut_line"])
        assert stitch.is_valid and cut.is_valid
        assert cut.buffer(0.06).covers(stitch)
        widest = max(edge["allowance"] for edge in piece["edges"])
        # Mitred corners reach further than the allowance; nothing reaches beyond three times the widest.
        assert stitch.buffer(3 * widest + 1, join_style="mitre").covers(cut)
        assert cut.area > stitch.area


def test_a_piece_without_allowances_has_no_cut_line(garment: Pattern) -> None:
    back = garment.pieces[0]
    bare = replace(back, edges=tuple(replace(edge, allowance=None) for edge in back.edges))
    assert pattern_json(replace(garment, pieces=(bare,)))["pieces"][0]["cut_line"] is None


def test_missing_allowance_names_piece_and_edge_and_keeps_the_files(garment: Pattern, tmp_path: FilePath) -> None:
    write_pages(garment, tmp_path)
    before = {name: (tmp_path / name).read_bytes() for name in NAMES}
    back = garment.pieces[0]
    bare = back.with_edges(side=replace(back.edge("side"), allowance=None))
    with pytest.raises(KitError, match=r"Back.*the side seam has no allowance"):
        write_pages(replace(garment, pieces=(bare,)), tmp_path)
    assert {name: (tmp_path / name).read_bytes() for name in NAMES} == before


@pytest.mark.skipif(os.name != "posix", reason="folder permissions are POSIX")
def test_a_folder_that_cannot_be_written_is_said_plainly(tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = tmp_path / "shelf"
    write_atomically(folder / "sheet.pdf", b"good")

    if os.geteuid() == 0:  # root may write anywhere: let the system refuse in its stead

        def refuse(*args: object, **kwargs: object) -> None:
            raise PermissionError(13, "Permission denied")

        monkeypatch.setattr("tempfile.mkstemp", refuse)
    else:
        folder.chmod(0o500)
    try:
        with pytest.raises(KitError) as caught:
            write_atomically(folder / "sheet.pdf", b"new")
    finally:
        folder.chmod(0o700)
    said = str(caught.value)
    assert str(folder / "sheet.pdf") in said and "no permission" in said and "--out" in said
    assert (folder / "sheet.pdf").read_bytes() == b"good"


def test_a_full_disk_keeps_the_old_file(tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch) -> None:
    path = write_atomically(tmp_path / "booklet.html", "old")

    def full(descriptor: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    with pytest.raises(KitError, match="the disk is full"):
        write_atomically(path, "new")
    assert path.read_text() == "old"
    assert [each.name for each in tmp_path.iterdir()] == ["booklet.html"]


def test_a_file_where_the_folder_should_be(tmp_path: FilePath) -> None:
    (tmp_path / "out").write_text("a file")
    with pytest.raises(KitError, match=r"out.*(a file of that name|is a file)"):
        write_atomically(tmp_path / "out" / "sheet.pdf", b"x")


def test_files_get_the_mode_of_a_plain_file(tmp_path: FilePath) -> None:
    plain = tmp_path / "plain"
    plain.write_text("x")
    path = write_atomically(tmp_path / "ours", "x")
    assert path.stat().st_mode == plain.stat().st_mode
    path.chmod(0o640)
    write_atomically(path, "y")
    assert path.stat().st_mode & 0o777 == 0o640
