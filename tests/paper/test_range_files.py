"""Everything that can be asked of a range of sizes, by name of file."""

from __future__ import annotations

from io import BytesIO
from types import SimpleNamespace

import pikepdf
import pytest

from kit import cli
from kit.body.body import NOBODY
from kit.booklet.handover import work
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.paper.papers import A4
from kit.paper.range_files import RangeRequest, range_files, read_files, read_sheet, read_sizes
from kit.paper.request import PageRequest
from tests.example import EXAMPLE, notebook_names
from tests.paper.sizes import box, boxes

PAGES = PageRequest((A4,))


CHART = ("W3", "W4", "W5")


@pytest.fixture(scope="module")
def two() -> tuple[Pattern, ...]:
    return tuple(boxes(size, box("front", wide, 150)) for size, wide in (("W4", 100), ("W5", 110)))


def test_sizes_are_worked_in_the_order_of_the_chart() -> None:
    lesson = notebook_names(EXAMPLE)["lesson"]
    assert [pattern.body.name for pattern in work(lesson, None, None, ("W5", "W4")).sizes] == ["W4", "W5"]
    assert len(work(lesson, None, None, ("all",)).sizes) == len(lesson.sizes.names)
    assert work(lesson, None, None).sizes == ()
    with pytest.raises(KitError, match="no size 'W44'"):
        work(lesson, None, None, ("W4", "W44"))


def test_a_lesson_of_one_size_is_worked_once(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("kit.booklet.handover.troubles", lambda sitting, definition: ())
    bag = boxes(NOBODY.name, box("bag", 100, 150))
    sizes = notebook_names(EXAMPLE)["lesson"].sizes
    lesson = SimpleNamespace(
        sizes=sizes,
        units="cm",
        sitting=None,
        definition=None,
        fittings=(),
        start=None,
        measures=(),
        parameters=(),
        values={},
        work=lambda body=None: bag,
    )
    assert len(work(lesson, None, None, ("all",)).sizes) == 1


def test_sizes_by_themselves(two: tuple[Pattern, ...]) -> None:
    made = range_files(two, CHART, RangeRequest(PAGES, files=("json", "svg")))
    assert set(made) == {f"{name}-{size}{kind}" for size in ("w4", "w5") for name, kind in (
        ("pages-a4", ".pdf"), ("pattern", ".json"), ("pattern", ".svg"))}  # fmt: skip
    with pikepdf.open(BytesIO(made["pages-a4-w4.pdf"])) as document:
        assert "/OCProperties" not in document.Root


def test_nested_and_each_and_for_a_projector(two: tuple[Pattern, ...]) -> None:
    said: list[str] = []
    made = range_files(two, CHART, RangeRequest(PAGES, nested=True, projector=True, files=("dxf",)), said.append)
    assert set(made) == {
        "pages-a4-sizes.pdf",
        "pattern-sizes.dxf",
        *(f"projector-{size}-{tone}.pdf" for size in ("w4", "w5") for tone in ("light", "dark")),
    }
    assert said
    with pikepdf.open(BytesIO(made["pages-a4-sizes.pdf"])) as document:
        assert [str(group.Name) for group in document.Root.OCProperties.OCGs][::2] == ["W4", "W5"]
    each = range_files(two, CHART, RangeRequest(PAGES, nested=True, each=True))
    assert set(each) == {"pages-a4-sizes.pdf", "pages-a4-w4.pdf", "pages-a4-w5.pdf"}


def test_one_size_keeps_the_plain_names(two: tuple[Pattern, ...]) -> None:
    made = range_files(two[:1], CHART, RangeRequest(PAGES, files=("json",)))
    assert set(made) == {"pages-a4.pdf", "pattern.json"}


def test_what_people_type() -> None:
    assert read_sizes(" W1, W4,W1") == ("W1", "W4")
    assert read_files("svg, DXF") == ("svg", "dxf")
    assert read_sheet("fitted") is None
    assert read_sheet("1500x900mm") == (1500.0, 900.0)
    assert read_sheet("60x40in") == pytest.approx((1524.0, 1016.0))
    assert read_sheet("1.5x0.9m") == pytest.approx((1500.0, 900.0))
    with pytest.raises(KitError, match="no file of the kind 'svgg'"):
        read_files("svgg")
    with pytest.raises(KitError, match="'1500' is not a size of sheet"):
        read_sheet("1500")


@pytest.mark.parametrize(
    ("options", "said"),
    [(["--nested"], "no sizes to lay"), (["--size", "W4", "--sizes", "W4,W5"], "both --size and --sizes"),
     (["--files", "pdf"], "no file of the kind"), (["--projector", "big"], "not a size of sheet")],
)  # fmt: skip
def test_the_command_refuses_before_it_runs_the_notebook(
    options: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(["pages", str(EXAMPLE), *options]) == 2
    out = capsys.readouterr()
    assert said in out.err and "runs the notebook" not in out.out
