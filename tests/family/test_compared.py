"""What differs between two editions: found where it is, by as much as it is, and told as a reader meets it."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest
import shapely

from kit import KitError, bodice_block, cm, mm, workshop_chart
from kit.cli import main
from kit.cloth.yardage import Amount, Yardage
from kit.family.asked import AskedComparison, compare
from kit.family.compared import Comparison, Difference, compared
from kit.family.edition import Edition, edition_of, read_edition
from kit.family.files import comparison_html, comparison_json
from kit.family.telling import lines, told
from kit.language import languages, speaking
from kit.lesson.lesson import Lesson
from kit.lesson.moved import differences
from kit.live.comparing import compare as compare_in_cell
from kit.paper.export import pattern_text
from tests.family.vest import vest


def edition(lesson: Lesson, size: str = "W4", **values: float) -> Edition:
    pattern = lesson.work(workshop_chart()[size], {**lesson.values, **values})
    return edition_of(pattern, "en", lesson.measures)


def found_of(found: Comparison, of: str, name: str) -> Difference:
    every = [*found.measures, *(each for piece in found.pieces for each in piece.differences)]
    (one,) = [each for each in every if (each.of, each.name) == (of, name)]
    return one


def test_a_lower_neck_is_found_in_every_place_it_shows() -> None:
    lesson = vest()
    before, after = edition(lesson), edition(lesson, drop=35.0)
    found = compared(before, after)
    assert [(each.of, each.name, each.before, each.after) for each in found.measures] == [("value", "drop", 20.0, 35.0)]
    assert [(piece.name, piece.state, piece.lines) for piece in found.pieces] == [("front", "changed", True)]
    assert {(each.of, each.name) for each in found.pieces[0].differences} == {("edge", "neck"), ("edge", "centre")}
    centre = found_of(found, "edge", "centre")
    assert centre.before is not None and centre.after is not None
    assert centre.before - centre.after == pytest.approx(15.0)
    (step,) = found.steps
    assert step.before == ("Square down 2 cm (3/4 in) at the centre.",)
    assert step.after == ("Square down 3.5 cm (1 3/8 in) at the centre.",)


def test_the_other_way_round_it_is_the_same_with_sides_changed() -> None:
    lesson = vest()
    one, two = edition(lesson), edition(lesson, drop=35.0, seam=12.0)
    there, back = compared(one, two), compared(two, one)
    assert [(m.of, m.name, m.before, m.after) for m in there.measures] == [
        (m.of, m.name, m.after, m.before) for m in back.measures
    ]
    for a, b in zip(there.pieces, back.pieces, strict=True):
        assert [(d.of, d.name, d.before, d.after) for d in a.differences] == [
            (d.of, d.name, d.after, d.before) for d in b.differences
        ]
    assert [(s.before, s.after) for s in there.steps] == [(s.after, s.before) for s in back.steps]


def test_shifts_are_those_of_the_outlines() -> None:
    """The largest shift told is the Hausdorff distance of the two outlines as shapely finds it, but for what the ends
    of an edge slid along it."""
    lesson = vest()
    for size in ("W2", "W5", "W8"):
        one, two = edition(lesson), edition(lesson, size)
        for piece in ("front", "back"):
            rings = [
                shapely.LinearRing([(p.x, p.y) for p in each.piece(piece).outline.points(0.05)]) for each in (one, two)
            ]
            far = rings[0].hausdorff_distance(rings[1])
            most = max(shift.size for shift in differences(one, two, piece))
            assert most <= far * 1.02 + 0.5, (size, piece)
            assert most >= far * 0.4, (size, piece)


def test_what_a_ruler_does_not_show_is_not_told() -> None:
    lesson = vest()
    assert compared(edition(lesson), edition(lesson, drop=20.04)).nothing
    assert compared(edition(lesson), edition(lesson)).nothing


def test_allowances_notches_counts_notions_pieces_and_steps() -> None:
    before = edition(vest())
    front, back = before.pieces
    wide = replace(front, edges=tuple(replace(e, allowance=20.0) if e.name == "hip" else e for e in front.edges))
    wide = replace(wide, notches=tuple(replace(n, distance=n.distance + 10) for n in wide.notches))
    wide = replace(wide, cut=replace(wide.cut, count=2))
    after = replace(
        before,
        pieces=(wide, replace(back, name="yoke", title="Yoke")),
        notions=("Silk thread",),
        steps=(*before.steps[:1], replace(before.steps[2], title="Sew both sides")),
    )
    found = compared(before, after)
    assert (found_of(found, "allowance", "hip").before, found_of(found, "allowance", "hip").after) == (15.0, 20.0)
    notch = found_of(found, "notch", "side")
    assert (notch.before, notch.after) == (50.0, 60.0)
    assert found_of(found, "cut", "front").after == 2.0
    assert [(piece.name, piece.state) for piece in found.pieces] == [
        ("front", "changed"),
        ("yoke", "new"),
        ("back", "gone"),
    ]
    assert found.notions == (("Sewing thread",), ("Silk thread",))
    assert [(step.key, step.state) for step in found.steps] == [("sides", "changed"), ("allowances", "gone")]
    assert found.steps[0].before == ("Sew the sides",)


def test_pieces_are_laid_on_a_place() -> None:
    lesson = vest()
    before, after = edition(lesson), edition(lesson, "W6")
    point = dict(before.piece("front").points)["neck_point"]
    found = compared(before, after, "neck_point")
    assert dict(found.after.piece("front").points)["neck_point"].distance(point) < 1e-9
    laid = compared(before, after, "side.start").after.piece("back").edge("side").path.start
    assert laid.distance(before.piece("back").edge("side").path.start) < 1e-9
    with pytest.raises(KitError, match="no piece of both has a place 'nek_point'") as refused:
        compared(before, after, "nek_point")
    assert "neck_point" in str(refused.value)


# ---- told --------------------------------------------------------------------------------------------------


def test_it_is_told_in_every_language_and_escaped() -> None:
    lesson = vest("<b>Vest</b>", "Square down {drop} & <i>mark</i>.")
    found = compared(edition(lesson), edition(lesson, "W5", drop=35.0))
    for code in languages():
        with speaking(code):
            page = told(found, ("W4", "W5"), "cm")
            html = comparison_html(page, "cm")
            text = "\n".join(lines(page))
        assert "<b>" not in html and "<i>" not in html and "&lt;b&gt;Vest" in html
        assert "[en]" not in text.replace("Vest [en]", "")
        assert html.count("<svg") == 2


def test_a_piece_is_not_named_twice() -> None:
    """Its sentences stand under its title; French puts a blank before the colon."""
    lesson = vest()
    found = compared(edition(lesson), edition(lesson, drop=35.0))
    for code in languages():
        with speaking(code):
            (front,) = told(found, ("1", "2"), "cm").pieces
        assert front.words and not any("Front bodice" in text for text in front.words), code


def test_a_measurement_of_the_lessons_own_is_called_by_its_name() -> None:
    lesson = vest()
    lesson.measurement("crown", 170 * mm, note="Over the head.", said="crown of the head")
    one = replace(edition(lesson), body=(("crown", 170.0),), own_measures=(("crown", "crown of the head"),))
    page = told(compared(one, replace(one, body=(("crown", 180.0),))), ("1", "2"), "cm")
    assert page.measures is not None and page.measures.rows[0][0] == "Crown of the head"
    assert edition_of(lesson.work(), "en").own_measures == one.own_measures


def test_a_row_adds_up() -> None:
    lesson = vest()
    page = told(compared(edition(lesson), edition(lesson, "W5")), ("W4", "W5"), "cm")
    assert page.measures is not None
    for name, before, after, by in page.measures.rows:
        numbers = [float(text.replace("−", "-").split(" cm")[0].split(" mm")[0]) for text in (before, after, by)]
        scale = [10.0 if " cm" in text else 1.0 for text in (before, after, by)]
        one, two, three = (number * times for number, times in zip(numbers, scale, strict=True))
        assert two - one == pytest.approx(three), name


def test_an_errata_sheet_speaks_to_buyers() -> None:
    """Who bought edition 1 knows steps, pieces and measures, and nothing of a lesson's parameters."""
    lesson = vest()
    before = edition(lesson)
    after = replace(edition(lesson, drop=35.0), edition="2")
    page = told(compared(before, after), ("1", "2"), "cm", errata=True)
    text = "\n".join(lines(page))
    assert page.title == "Vest: what edition 2 changed"
    assert page.measures is None
    assert "Now: Square down 3.5 cm" in text and "Was: Square down 2 cm" in text
    assert "edition 1" in page.lead


def test_editions_in_two_languages_say_why_steps_are_left_out() -> None:
    one = edition(vest())
    page = told(compared(one, replace(one, language="de", finished=(("Length", 600.0),))), ("1", "2"), "cm")
    assert page.lead.endswith("the words of their steps are not compared.") and not page.drafting


def test_as_data() -> None:
    lesson = vest()
    data = comparison_json(compared(edition(lesson), edition(lesson, drop=35.0)))
    assert json.loads(json.dumps(data, allow_nan=False)) == data
    assert data["measures"] == [{"of": "value", "name": "drop", "kind": "length", "before": 20.0, "after": 35.0}]
    (front,) = data["pieces"]
    assert front["name"] == "front" and max(shift["size"] for shift in front["shifts"]) == pytest.approx(15, abs=0.2)


# ---- asked -------------------------------------------------------------------------------------------------


def test_in_a_cell(tmp_path: Path) -> None:
    lesson = vest()
    sizes = compare_in_cell(lesson, sizes=("W4", "W5"))
    assert "Vest: size W4 beside size W5" in str(sizes) and sizes._repr_html_().count("<svg") == 2
    values = compare_in_cell(lesson, drop=3.5 * cm, at="neck_point")
    assert "with drop 3.5 cm (1 3/8 in)" in str(values)
    (tmp_path / "pattern.json").write_text(pattern_text(lesson.work()))
    kept = compare_in_cell(tmp_path, vest(neck="Go down {drop}.", edition="2"))
    assert "what edition 2 changed" in str(kept) and "Now: Go down 2 cm" in str(kept)
    assert compare_in_cell(tmp_path, lesson).found.nothing


def test_what_is_not_said_is_asked_for(tmp_path: Path) -> None:
    lesson = vest()
    with pytest.raises(KitError, match="not said what the lesson is compared with"):
        compare_in_cell(lesson)
    with pytest.raises(KitError, match="one size is given"):
        compare_in_cell(lesson, sizes=("W4",))
    with pytest.raises(KitError, match="W99"):
        compare_in_cell(lesson, sizes=("W4", "W99"))
    with pytest.raises(KitError, match="no parameter 'drp'"):
        compare_in_cell(lesson, drp=3 * cm)
    with pytest.raises(KitError, match="no lesson to compare"):
        compare_in_cell(tmp_path, tmp_path)
    with pytest.raises(KitError, match="compared with itself"):
        compare_in_cell(lesson, Lesson("Block", start=bodice_block), sizes=("W4", "W5"))
    for asked, words in (
        (AskedComparison(Path("a.ipynb")), "not said what the notebook"),
        (AskedComparison(Path("a.ipynb"), sizes=("W4",)), "one size is given"),
        (AskedComparison(Path("a.json")), "one edition alone"),
        (AskedComparison(Path("a.json"), Path("b.json"), size="W4"), "as they were built"),
        (AskedComparison(Path("a.ipynb"), Path("b.ipynb"), as_cut=True), "compared with itself"),
    ):
        with pytest.raises(KitError, match=words):
            compare(asked)


def test_cloth_to_buy_is_told_as_it_is_sold(tmp_path: Path) -> None:
    """A length that is bought otherwise is told; one that is rounded up to the same tenth of a metre is not."""
    lesson, sides = vest(), []
    for name, wide, narrow in (("old", 1710.0, 2310.0), ("new", 1713.0, 2420.0)):
        rows = [
            Yardage("main", width, (Amount("W4", laid, laid, folds=("flat",)),))
            for width, laid in ((1400.0, wide), (1120.0, narrow))
        ]
        path = tmp_path / f"{name}.json"
        path.write_text(pattern_text(lesson.work(workshop_chart()["W4"]), rows))
        sides.append(read_edition(path))
    found = compared(*sides)
    assert found.measures == (Difference("cloth", "main 1120", 2310.0, 2420.0),)
    page = told(found, ("old", "new"), "cm", errata=True)
    assert page.measures is not None and len(page.measures.rows) == 1
    name, was, now, by = page.measures.rows[0]
    assert name.startswith("Main cloth, 112 cm (") and name.endswith("wide, to buy")
    assert was.startswith("2.4 m (") and now.startswith("2.5 m (") and by == "+0.1 m"
    bare = replace(sides[0], cloth=())
    assert compared(bare, sides[1]).nothing and compared(sides[1], bare).nothing


def test_the_command(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Two files of a pattern, without a kernel: text, picture, page and data."""
    lesson = vest()
    for name, drop in (("old", 20.0), ("new", 35.0)):
        (tmp_path / name).mkdir()
        (tmp_path / name / "pattern.json").write_text(pattern_text(lesson.work(values={**lesson.values, "drop": drop})))
    out = tmp_path / "out"
    assert main(["compare", str(tmp_path / "old"), str(tmp_path / "new"), "--out", str(out)]) == 0
    said = capsys.readouterr().out
    assert "notebook's code" not in said and "Now: Square down 3.5 cm" in said
    assert sorted(path.name for path in out.iterdir()) == ["comparison.json", "comparison.pdf", "piece-front.svg"]
    assert (out / "comparison.pdf").read_bytes().startswith(b"%PDF")
    assert main(["compare", str(tmp_path / "none")]) == 2
    assert "one edition alone" in capsys.readouterr().err
