"""Where the body is: levels told by a garment's own lines, given by an author on blank paper, passed on over seams."""

from __future__ import annotations

import pytest

from kit.blocks.blank import blank_paper
from kit.lesson.lesson import Lesson
from kit.piece.role import landmark
from kit.sewing.order import sew
from kit.units import cm
from kit.wear.girth import Worn
from kit.wear.worn import worn
from tests.wear.garments import lesson_of


def put_on(lesson: Lesson) -> Worn:
    pattern = lesson.work()
    return Worn(pattern, sew(pattern)[0])


def two_parts(name: str = "waist_line", high: float = 0.0) -> Lesson:
    """A straight dress of an upper and a lower part, each drawn with its own zero; only the upper says where the waist
    is, at its own lower edge."""
    lesson = Lesson("Two parts", start=blank_paper, size="W4")

    def rectangle(piece, width, height):
        a, b = piece.place(0 * cm, 0 * cm), piece.place(width, 0 * cm)
        c, d = piece.place(width, height), piece.place(0 * cm, height)
        return a, b, c, d

    @lesson.step("Upper part", makes=("upper", "lower"))
    def parts(upper, lower, waist_girth, hip_girth):
        """Two rectangles."""
        a, b, c, d = rectangle(upper, 27 * cm, 30 * cm)
        upper.draw(waist_seam=a.to(b), side=b.to(c), top=c.to(d), centre=d.to(a))
        level = upper.place(0 * cm, high * cm)
        upper.guide(level=level.ruled("out", 27 * cm))
        upper.role(level=name, waist_seam="", top="hem")
        a, b, c, d = rectangle(lower, 27 * cm, 50 * cm)
        lower.draw(hem=a.to(b), side=b.to(c), waist_seam=c.to(d), centre=d.to(a))
        for piece in (upper, lower):
            piece.allow(side=1.5 * cm, waist_seam=1.5 * cm, **({"top": 3 * cm} if piece is upper else {"hem": 3 * cm}))
            piece.cut(2, mirrored=True)
            piece.grain(along=piece.centre)
            piece.allow(centre=1.5 * cm)

    @lesson.sew("Sew it")
    def together(make, upper, lower):
        """All seams."""
        for piece in (upper, lower):
            make.plain_seam(piece.left.centre, piece.right.centre, allowance=1.5 * cm)
        make.plain_seam(upper.waist_seam, lower.waist_seam, allowance=1.5 * cm)
        make.plain_seam(upper.left.side, upper.right.side, allowance=1.5 * cm)
        make.plain_seam(lower.left.side, lower.right.side, allowance=1.5 * cm)

    return lesson


def test_a_part_that_names_no_level_hangs_from_the_one_it_is_sewn_to() -> None:
    garment = put_on(two_parts())
    assert garment.hung is not None
    assert garment.hung.up == {"upper": pytest.approx(0.0), "lower": pytest.approx(-500.0)}
    assert garment.span == (pytest.approx(-500.0), pytest.approx(300.0))


def test_one_level_tells_the_others_by_the_body() -> None:
    """The line named for the hip lies 10 cm up: the waist is a waist-to-hip above that."""
    lesson = two_parts("hip_line", 10.0)
    garment = put_on(lesson)
    assert garment.hung is not None
    hip = -lesson.sizes["W4"]["waist_to_hip"]
    assert garment.hung.up["upper"] == pytest.approx(hip - 100.0)
    assert garment.heights["waist"] == 0.0
    assert garment.heights["hip"] == pytest.approx(hip)


def test_without_a_level_nothing_is_known_and_nothing_said() -> None:
    lesson = lesson_of(
        "full_skirt",
        (
            ("    front.guide(waist_line=d.to(c))\n", ""),
            ('lesson.length("width", 75 * cm', 'lesson.length("width", 42 * cm'),
        ),
    )
    pattern = lesson.work()
    assert put_on(lesson).hung is None
    assert worn(pattern, sew(pattern)[0]) == []


@pytest.mark.parametrize(
    ("word", "level"),
    [
        ("knee_line", "knee_line"),
        ("knielinie", "knee_line"),
        ("oberarmlinie", "upper_arm_line"),
        ("linea_de_rodilla", "knee_line"),
        ("ligne_de_coude", "elbow_line"),
        ("kopflinie", "head_line"),
        ("head", None),
    ],
)
def test_levels_have_names_in_four_languages(word: str, level: str | None) -> None:
    assert landmark(word) == level


def test_a_garment_that_is_not_sewn_to_its_end_is_not_put_on() -> None:
    """The tunic whose neck nobody has bound yet: that is told elsewhere."""
    bind = '    make.bind(front.neck, back.neck, strip=neck_binding, finished=8 * mm, ends="ring")\n'
    small = (('lesson.length("neck_wider", 5 * cm', 'lesson.length("neck_wider", 0 * cm'), (bind, ""))
    pattern = lesson_of("tunic", small).work()
    assert worn(pattern, sew(pattern)[0]) == []
