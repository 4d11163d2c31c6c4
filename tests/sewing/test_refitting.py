"""What a try-on finds on the lines it moves, from two drafts sewn alike: oblongs 200 mm high, 100 wide in the first
draft and wider or narrower in the second. So every distance is the difference of two numbers."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.piece.piece import Mark, Strip
from kit.sewing.refitting import SHUT_IN, refit
from kit.sewing.run import Run
from kit.units import cm, mm

ROUND = {"hem": 30, "far": 20, "top": 10, "near": 10}


@pytest.fixture
def tried(sewn, garments):
    """tried(*writes, wide=80, before=None): what changes when front and back become `wide` after the steps before."""

    def pieces(wide: float, marks=()):
        return tuple(garments.rectangle(name, wide, 200, ROUND, marks=marks) for name in ("front", "back"))

    def find(*writes, wide: float = 80, at=None, strips=((), ()), marks=((), ())):
        was = sewn(pieces(100, marks[0]), *writes, strips=strips[0]).pattern
        now = sewn(pieces(wide, marks[1]), *writes, strips=strips[1]).pattern
        return refit(was, now, at or (len(writes), 0), ())

    return find


def seam(make, front, back, **_):
    make.plain_seam(front.far, back.far, allowance=2 * cm)


def hem(make, front, back, **_):
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)


FAR, BACK_FAR = Run("front", ("far",)), Run("back", ("far",))


def runs(found) -> set[str]:
    return {f"{run.piece}.{run.edges[0]}" for run in found}


def test_what_is_sewn_on_a_line_that_moves_is_unpicked(tried) -> None:
    found = tried(seam)
    assert found.unpicked == (FAR, BACK_FAR) and found.basted == ()
    assert [(c.was.name, [e.edge for e in c.moved]) for c in found.pieces] == [("front", ["far"]), ("back", ["far"])]
    assert found.pieces[0].edge("far").start.off == pytest.approx(-20)
    assert tried(hem).unpicked == ()  # the hem's line stays where it is
    assert tried(seam, wide=100.5).pieces == ()  # no ruler shows it


def test_what_is_sewn_later_is_not_unpicked(tried) -> None:
    assert tried(seam, hem, at=(0, 0)).unpicked == ()
    assert tried(hem, seam, at=(1, 0)).unpicked == ()
    assert tried(hem, seam, at=(2, 0)).unpicked == (FAR, BACK_FAR)

    def both(make, front, back, **_):
        hem(make, front, back)
        seam(make, front, back)

    assert tried(both, at=(0, 1)).unpicked == ()
    assert tried(both, at=(0, 2)).unpicked == (FAR, BACK_FAR)


def test_basting_is_told_apart_from_rows_and_gone_when_it_is_taken_out(tried) -> None:
    def baste(make, front, back, **_):
        make.baste(front.far, back.far)

    def out(make, front, back, **_):
        make.remove_basting(front.far, back.far)

    assert (tried(baste).basted, tried(baste).unpicked) == ((FAR, BACK_FAR), ())
    assert (tried(baste, out).basted, tried(baste, out).unpicked) == ((), ())
    assert (tried(baste, seam).basted, tried(baste, seam).unpicked) == ((), (FAR, BACK_FAR))


def test_edges_sewn_beside_the_moved_end_of_a_row_are_opened(tried) -> None:
    def tops(make, front, back, **_):
        make.plain_seam(front.top, back.top, allowance=1 * cm)

    assert runs(tried(hem, tops, seam).opened) == {"front.hem", "back.hem", "front.top", "back.top"}
    assert runs(tried(hem, seam).opened) == {"front.hem", "back.hem"}
    assert tried(seam).opened == ()
    assert tried(hem, tops).opened == ()  # no row lies on the line that moves


def test_seams_of_the_new_draft_are_told_with_what_sews_them(tried) -> None:
    found = tried(hem, seam)
    assert set(found.seams) == {
        ("front", "hem", "hem"),
        ("back", "hem", "hem"),
        ("front", "far", "plain_seam"),
        ("back", "far", "plain_seam"),
    }
    assert len(found.seams) == 4


# ---- what scissors took off before ------------------------------------------------------------------------------


def test_trimmed_allowances_are_trimmed_on_both_sides_of_a_seam(tried) -> None:
    def trim(make, front, back, **_):
        make.trim(front.far, to=6 * mm)

    assert set(tried(trim).cut_back) == {("front", "far", 6)}
    assert set(tried(seam, trim).cut_back) == {("front", "far", 6), ("back", "far", 6)}


def test_of_a_graded_seam_the_other_side_stays_wider(tried) -> None:
    def grade(make, front, back, **_):
        make.grade(front.far, to=4 * mm, wider=9 * mm)

    found = set(tried(seam, grade).cut_back)
    assert ("front", "far", 4) in found and ("back", "far", 9) in found and len(found) == 2


def test_a_french_seam_leaves_what_its_second_row_shuts_in(tried) -> None:
    """First 6 mm from the raw edge, second 4 from the fold: 4 and what is left of the first, trimmed to at most 4."""

    def french(first, second, **more):
        return lambda make, front, back, **_: make.french_seam(front.far, back.far, first=first, second=second, **more)

    def left(write) -> set[float]:
        return {mm_left for _, edge, mm_left in tried(write).cut_back if edge == "far"} - {SHUT_IN}

    assert left(french(14 * mm, 6 * mm)) == {12}
    assert left(french(15 * mm, 5 * mm, trim=3 * mm)) == {8}
    assert left(french(4 * mm, 16 * mm)) == {20}


def test_of_an_allowance_shut_in_three_mm_are_left(tried) -> None:
    assert SHUT_IN == 3.0
    assert {("front", "hem", 3.0), ("back", "hem", 3.0)} <= set(tried(hem).cut_back)


def test_cloth_suffices_as_far_as_it_has_not_been_trimmed(tried) -> None:
    """Let out by 12 mm within the allowance of 20: as wide as it is sewn, 12 lack; trimmed to 6, 26 do."""

    def trim(make, front, back, **_):
        make.trim(front.far, to=6 * mm)

    for writes, lack in (((seam,), 12), ((seam, trim), 26)):
        edge = tried(*writes, wide=112).pieces[0].edge("far")
        assert edge.shortest.short == pytest.approx(lack, abs=0.3)


# ---- marks and strips -------------------------------------------------------------------------------------------


def slit(start: float) -> tuple[Mark, ...]:
    return (Mark("slit", "opening", edge="far", start=start, end=200.0),)


def test_a_row_that_ends_at_a_mark_that_moves_is_told_by_its_new_end(tried) -> None:
    def up_to(make, front, back, **_):
        make.plain_seam(front.far.before(front.slit), back.far.before(back.slit), allowance=2 * cm)

    found = tried(up_to, wide=100, marks=(slit(150), slit(120)))
    assert [(what, span.piece, span.start, span.end) for what, span in found.shifted] == [
        ("row", "front", 120, 120),
        ("row", "back", 120, 120),
    ]
    assert tried(up_to, wide=100, marks=(slit(150), slit(150.5))).shifted == ()
    assert tried(seam, wide=80).shifted == ()  # it ends where the edge does
    assert tried(up_to, wide=100, at=(0, 0), marks=(slit(150), slit(120))).shifted == ()


def strip(long: float, wide: float, name: str = "tie") -> Strip:
    return Strip(name, name.capitalize(), long, wide, "in_four", 1)


@pytest.mark.parametrize(
    ("long", "wide", "told"),
    [(500, 40, []), (500.5, 40.5, []), (510, 40, [(10, 0)]), (500, 36, [(0, -4)]), (480, 44, [(-20, 4)])],
)
def test_strips_of_another_size(tried, long, wide, told) -> None:
    found = tried(strips=((strip(500, 40),), (strip(long, wide), strip(50, 50, "new"))))
    assert [(each.longer, each.wider) for each in found.strips] == told


def test_pieces_of_one_draft_alone(sewn, garments) -> None:
    front, back = (garments.rectangle(name, 100, 200, ROUND) for name in ("front", "back"))
    yoke = replace(front, name="yoke", title="Yoke")
    found = refit(sewn((front, back)).pattern, sewn((front, yoke)).pattern, (0, 0), ())
    assert [piece.name for piece in found.fresh] == ["yoke"] and [piece.name for piece in found.gone] == ["back"]
    assert found.pieces == ()
