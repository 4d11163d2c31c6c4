"""An edition read back from its file is the pattern it was written from, and a damaged one is told plainly."""

from __future__ import annotations

import json
from pathlib import Path

import jsonschema
import pytest
import shapely

from kit import KitError, skirt_block, trouser_block, workshop_chart
from kit.family.compared import compared
from kit.family.edition import Edition, edition_from, edition_of, read_edition
from kit.geometry import Outline
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.paper.export import pattern_json, pattern_schema, pattern_text
from tests.example import EXAMPLE, notebook_names
from tests.family.vest import vest


def patterns() -> list[Pattern]:
    notebooks = EXAMPLE.parent
    found = [
        vest().work(),
        Lesson("Skirt", start=skirt_block).work(),
        Lesson("Trousers", start=trouser_block).work(workshop_chart()["W9"]),
        notebook_names(EXAMPLE)["lesson"].work(),
        notebook_names(notebooks / "dune_skirt.ipynb")["lesson"].work(),
        notebook_names(notebooks / "lantern_bag.ipynb")["lesson"].work(),
    ]
    assert all(found)
    return found


def ring(outline: Outline) -> shapely.Polygon:
    return shapely.Polygon([(p.x, p.y) for p in outline.points(0.01)])


def test_a_file_gives_the_pattern_back() -> None:
    """Outlines by shapely's Hausdorff distance, an independent measure; what is not a line, exactly."""
    for pattern in patterns():
        data = json.loads(pattern_text(pattern))
        jsonschema.validate(data, pattern_schema())  # JSON Schema, draft 2020-12
        read = edition_from(data)
        here = edition_of(pattern, "en")
        for piece in pattern.pieces:
            back = read.piece(piece.name)
            off = ring(piece.outline).boundary.hausdorff_distance(ring(back.outline).boundary)
            assert off < 0.06, (pattern.lesson.title, piece.name, off)
            assert [edge.name for edge in back.edges] == [edge.name for edge in piece.edges]
            for one, two in zip(piece.edges, back.edges, strict=True):
                assert (two.allowance, two.extra) == pytest.approx((one.allowance, one.extra), abs=0.001)
                assert (two.role, two.label) == (one.role, one.label)
                assert two.path.length == pytest.approx(one.path.length, abs=0.2)
            assert len(back.notches) == len(piece.notches)
            assert [mark.name for mark in back.marks] == [mark.name for mark in piece.marks]
            assert (back.cut, back.number, back.worn) == (piece.cut, piece.number, piece.worn)
        assert read.steps == here.steps
        assert (read.title, read.edition, read.units, read.notions) == (
            here.title,
            here.edition,
            here.units,
            here.notions,
        )


def test_nothing_differs_between_a_pattern_and_its_own_file() -> None:
    for pattern in patterns():
        found = compared(edition_from(json.loads(pattern_text(pattern))), edition_of(pattern, "en"))
        assert found.nothing, (pattern.lesson.title, found.measures, found.pieces, found.steps, found.notions)


def test_a_file_of_before_steps_were_written_is_read() -> None:
    data = json.loads(pattern_text(vest().work()))
    for key in ("steps", "notions"):
        del data[key]
    del data["lesson"]["language"]
    jsonschema.validate(data, pattern_schema())
    read = edition_from(data)
    assert (read.steps, read.language) == ((), "en")
    assert not compared(read, edition_of(vest().work(), "en")).steps


BROKEN = {
    "not json": ("{", "damaged"),
    "another kind": ('{"format": "drawing"}', "not a pattern of this kit"),
    "a list": ("[]", "not a pattern of this kit"),
    "a later version": ('{"format": "pattern-lesson-kit pattern", "version": 7}', "version 7"),
    "nothing in it": ('{"format": "pattern-lesson-kit pattern", "version": 1}', "damaged"),
    "deep": ("[" * 100_000, "damaged"),
    "no number": ('{"format": "pattern-lesson-kit pattern", "version": 1, "x": NaN}', "damaged"),
    "no text": (b"\xff\xfe\x00", "damaged"),
}


@pytest.mark.parametrize("name", BROKEN)
def test_a_broken_file_is_told(name: str, tmp_path: Path) -> None:
    content, words = BROKEN[name]
    path = tmp_path / "pattern.json"
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    with pytest.raises(KitError, match=words) as refused:
        read_edition(path)
    assert "pattern.json" in str(refused.value)
    assert refused.value.do


def test_a_missing_file_is_told(tmp_path: Path) -> None:
    with pytest.raises(KitError, match=r"there is no file 'pattern\.json'"):
        read_edition(tmp_path)


def test_the_folder_of_a_release_is_an_edition(tmp_path: Path) -> None:
    """In the size its booklet is drawn in, or another that was released."""
    (tmp_path / "files").mkdir()
    chart = workshop_chart()
    for size in ("W4", "W6"):
        text = json.dumps(pattern_json(vest().work(body=chart[size])))
        (tmp_path / "files" / f"pattern-{size.lower()}.json").write_text(text)
    (tmp_path / "release.json").write_text(json.dumps({"drawn_in": "W4", "sizes": ["W4", "W6"]}))
    assert read_edition(tmp_path).size == "W4" and read_edition(tmp_path, "W6").size == "W6"
    with pytest.raises(KitError, match="no size W9 in the release") as refused:
        read_edition(tmp_path, "W9")
    assert "W4 and W6" in str(refused.value.do)
    (tmp_path / "release.json").write_text("{}")
    with pytest.raises(KitError, match=r"'release\.json' is damaged"):
        read_edition(tmp_path)


def test_a_release_without_sizes_has_one_pattern(tmp_path: Path) -> None:
    (tmp_path / "files").mkdir()
    (tmp_path / "files" / "pattern.json").write_text(json.dumps(pattern_json(vest().work())))
    (tmp_path / "release.json").write_text(json.dumps({"drawn_in": "", "sizes": []}))
    assert read_edition(tmp_path).pieces


DAMAGES = [
    lambda data: data["pieces"][0]["edges"][0].pop("start"),
    lambda data: data["pieces"][0]["edges"][0].update(start=[1.0, 2.0]),
    lambda data: data["pieces"][0]["edges"][1].update(end=[0.5, 0.5]),
    lambda data: data["pieces"][0].update(stitch_line=[]),
    lambda data: data["pieces"][0]["stitch_line"].__setitem__(0, [1e999, 0]),
    lambda data: data["values"][0].update(value="wide"),
    lambda data: data["lesson"].update(units="ell"),
    lambda data: data.update(steps=3),
    lambda data: data["pieces"][0].update(grain=[[0, 0]]),
]


@pytest.mark.parametrize("damage", DAMAGES)
def test_a_damaged_pattern_is_told(damage: object, tmp_path: Path) -> None:
    data = pattern_json(vest().work())
    damage(data)  # type: ignore[operator]
    (tmp_path / "pattern.json").write_text(json.dumps(data))
    with pytest.raises(KitError, match="damaged"):
        read_edition(tmp_path)


def test_an_edition_names_the_nearest_piece() -> None:
    read: Edition = edition_of(vest().work(), "en")
    with pytest.raises(KitError, match="front"):
        read.piece("frnt")
