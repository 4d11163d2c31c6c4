"""A band shorter than its edge, pulled to it: what the cloth's stretch allows. Up to half of its stretch a band is
pulled without waves (common practice, no source): one of 17 cm on an edge of 20 (18 % more) wants 36 % of stretch."""

from __future__ import annotations

import pytest

from kit import Lesson, blank_paper, cm
from kit.proof import prove


def tube(stretch: float, band: float = 17.0) -> Lesson:
    """A sleeve's end 20 cm round and a cuff of ribbing, each closed to a ring, the cuff set on and closed."""
    lesson = Lesson("Cuff", start=blank_paper, stretch=stretch)

    @lesson.step("Rule both", makes=("sleeve", "cuff"))
    def rule(sleeve, cuff):  # type: ignore[no-untyped-def]
        for piece, wide, deep in ((sleeve, 20.0, 30.0), (cuff, band, 12.0)):
            a, b, c, d = (piece.place(x * cm, y * cm) for x, y in ((0, 0), (wide, 0), (wide, deep), (0, deep)))
            piece.draw(lower=a.to(b), right_side=b.to(c), upper=c.to(d), left_side=d.to(a))
            piece.allow(lower=1 * cm, right_side=1 * cm, upper=1 * cm, left_side=1 * cm)
            piece.cut(1)

    @lesson.sew("Sew it")
    def sew(make, sleeve, cuff):  # type: ignore[no-untyped-def]
        for piece in (sleeve, cuff):
            make.plain_seam(piece.right_side, piece.left_side, allowance=1 * cm, finish="none")
        make.set_band(cuff.upper, sleeve.lower, allowance=1 * cm, ease=(20.0 - band) * cm)

    return lesson


@pytest.mark.parametrize(
    ("stretch", "band", "code"),
    [
        (0.0, 17.0, "not_gathered_yet"),
        (0.34, 17.0, "not_gathered_yet"),
        (0.37, 17.0, ""),
        (0.0, 18.0, "not_eased_yet"),  # 11 %
        (0.2, 18.0, "not_eased_yet"),
        (0.25, 18.0, ""),
    ],
)
def test_a_band_is_pulled_as_far_as_its_cloth_stretches(stretch: float, band: float, code: str) -> None:
    found = [each for each in prove(tube(stretch, band).work()) if each.code in ("not_gathered_yet", "not_eased_yet")]
    assert [each.code for each in found] == ([code] if code else [])
    if code == "not_gathered_yet":
        assert "stretch=0.6" in str(found[0])


@pytest.mark.parametrize(("stretch", "band", "key"), [(0.6, 17.0, "pull"), (0.6, 20.0, ""), (0.0, 19.9, "ease")])
def test_the_band_is_pulled_and_not_the_edge(stretch: float, band: float, key: str) -> None:
    pattern = tube(stretch, band).work()
    said = [each.key for each in pattern.sewing[0].operations[-1].sentences(pattern)]
    assert [each for each in said if each in ("set_band.pull", "set_band.ease")] == ([f"set_band.{key}"] if key else [])
