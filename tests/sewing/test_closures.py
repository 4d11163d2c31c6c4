"""Zips, buttonholes and buttons, snaps and hooks: what must come first, what must fit, their sections."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.piece.piece import Mark
from kit.prose import sentences
from kit.sewing.order import sew
from kit.sewing.sections import closures as shapes
from kit.sewing.spans import path_of
from kit.units import cm, mm


def codes(pattern) -> list[str]:
    return [refusal.code for refusal in sew(pattern)[1]]


def changed(garment, title, write):
    return garment.pattern([(name, write if name == title else own) for name, own in garment.steps])


def operation_of(pattern, title):
    return next(record for record in pattern.sewing if record.title == title).operations[0]


# ---- zips -----------------------------------------------------------------------------------------------------


def zip_of(length, verb="lapped_zip", **more):
    def write(t):
        getattr(t.make, verb)(
            t.back.left.zip_opening, t.back.right.zip_opening, allowance=2 * cm, length=length, **more
        )

    return write


@pytest.mark.parametrize("verb", ["lapped_zip", "centred_zip"])
@pytest.mark.parametrize(
    ("length", "found"),
    [(20 * cm, []), (19 * cm, []), (18.5 * cm, []), (18 * cm, ["zip_short"]), (22 * cm, ["zip_long"])],
)
def test_a_zip_fits_its_opening(garments, verb, length, found):
    """Up to 15 mm stay free at the top: common practice, no source."""
    assert codes(changed(garments.SKIRT, "Zip", zip_of(length, verb))) == found


def test_a_zip_closes_its_opening_and_takes_the_allowance(garments):
    pattern = garments.SKIRT.pattern()
    operation = operation_of(pattern, "Zip")
    assert [(c.span.side, c.span.start, c.span.end) for c in operation.closes(pattern)] == [
        ("left", 400.0, 600.0),
        ("right", 400.0, 600.0),
    ]
    assert operation.takes(pattern) == {("back", "centre"): 20.0}
    assert [(s.start, s.end) for s in operation.opens(pattern)] == [(400.0, 600.0)] * 2
    state = sew(pattern)[0]
    assert state.holds(("zip_in", "back", "left", "centre", "@400.00:600.00/600.00"))
    assert not state.touches(("zip_in", "back", "left", "centre", "@0.00:400.00/600.00"))


def test_a_lapped_zip_is_sewn_under_first_and_over_last(garments):
    """The order in which a lapped zip can be sewn at all: the under side while the lap is out of the way (common
    practice, no source)."""
    pattern = changed(garments.SKIRT, "Zip", zip_of(19 * cm))
    said = sentences(pattern, operation_of(pattern, "Zip"))
    begins = (
        "Press the",
        "Lay the fold of",
        "With the zip foot edgestitch the fold",
        "Lay the",
        "From the right side",
    )
    assert [line for line, begin in zip(said, begins, strict=True) if not line.startswith(begin)] == []
    assert "close beside the teeth" in said[1] and "over the zip" in said[3]


def test_the_row_that_shows_is_drawn_as_it_is_told(garments):
    """Across below the end of the zip, pivot, and up to the top: it begins on the fold at the lower end."""
    pattern = changed(garments.SKIRT, "Zip", zip_of(19 * cm))
    zip = operation_of(pattern, "Zip")
    (row,) = (row for row in zip.scenes(pattern)[-1].rows if row.ink == "new")
    fold = path_of(pattern, row.run)
    assert row.line is not None and fold.distance_to(row.line.start) < 0.5
    assert row.line.start.y < row.line.end.y and fold.distance_to(row.line.end) == pytest.approx(zip.lap, abs=0.5)


def test_a_centred_zip_is_basted_first_and_opened_last(garments):
    pattern = changed(garments.SKIRT, "Zip", zip_of(19 * cm, "centred_zip"))
    said = sentences(pattern, operation_of(pattern, "Zip"))
    assert said[0] == (
        "Pin the centre line of the left back to the centre line of the right back, right sides together, and baste "
        "the opening shut 2 cm (3/4 in) from the edge."
    )
    assert said[-1] == "Take the basting out: the two folds meet over the teeth."
    assert len(operation_of(pattern, "Zip").scenes(pattern)) == 2


def test_an_opening_that_differs_on_its_two_sides(garments):
    def write(t):
        t.make.lapped_zip(
            t.back.left.zip_opening,
            t.back.right.centre.between(41 * cm, 60 * cm),
            allowance=2 * cm,
            length=19 * cm,
        )

    assert "zip_sides" in codes(changed(garments.SKIRT, "Zip", write))


def test_a_seam_that_ends_short_of_the_zip(garments):
    def centre(t):
        t.make.plain_seam(
            t.back.left.centre.between(0 * cm, 35 * cm), t.back.right.centre.between(0 * cm, 35 * cm), allowance=2 * cm
        )

    assert codes(changed(garments.SKIRT, "Centre seam", centre))[0] == "seam_below_zip"


def test_widths_of_a_zip_are_read(garments):
    with pytest.raises(KitError, match="would miss the allowance"):
        changed(garments.SKIRT, "Zip", zip_of(19 * cm, lap=25 * mm))

    def narrow(t):
        t.make.lapped_zip(t.back.left.zip_opening, t.back.right.zip_opening, allowance=6 * mm, length=19 * cm)

    with pytest.raises(KitError, match="too narrow to sew a zip to"):
        changed(garments.SKIRT, "Zip", narrow)

    def same(t):
        t.make.lapped_zip(t.back.left.zip_opening, t.back.left.zip_opening, allowance=2 * cm, length=19 * cm)

    with pytest.raises(KitError, match="both sides of the zip"):
        changed(garments.SKIRT, "Zip", same)

    def mark(t):
        t.make.lapped_zip(t.waistband.hook, t.waistband.bar, allowance=2 * cm, length=19 * cm)

    with pytest.raises(KitError, match="is no opening"):
        changed(garments.SKIRT, "Zip", mark)


def test_a_zip_that_parts_has_two_free_ends(garments, sewn):
    pieces = (
        garments.rectangle("front", 200, 400, {"hem": 20, "side": 15, "neck": 10, "edge": 15}, cut=garments.PAIR),
    )
    found = sewn(
        pieces,
        lambda make, front: make.hem(front.hem, first=1 * cm, second=1 * cm),
        lambda make, front: make.centred_zip(front.left.edge, front.right.edge, allowance=15 * mm, length=39.5 * cm),
    )
    assert found.codes == []


# ---- buttonholes and buttons ----------------------------------------------------------------------------------


def holes(t, length=21 * mm):
    t.make.buttonholes(t.front.left.hole_1, t.front.left.hole_2, t.cuff.hole, length=length)


def button(t, *places, size=18 * mm, holes=None):
    places = places or (t.front.right.button_1, t.front.right.button_2, t.cuff.button)
    t.make.buttons(*places, size=size, holes=holes or [t.front.left.hole_1, t.front.left.hole_2, t.cuff.hole])


def test_every_buttonhole_has_its_button(garments):
    fewer = changed(garments.JACKET, "Buttons", lambda t: button(t, t.front.right.button_1, t.front.right.button_2))
    (found,) = sew(fewer)[1]
    assert (found.code, found.what) == ("buttons_and_holes", "there are 2 buttons for 4 buttonholes.")
    one_only = changed(garments.JACKET, "Buttons", lambda t: button(t, t.cuff.button, holes=[t.cuff.hole]))
    assert codes(one_only) == []
    operation = operation_of(one_only, "Buttonholes")
    missing = set(operation.wants(one_only)) - sew(one_only)[0].facts
    assert missing == {("buttoned", "front", "left", "hole_1"), ("buttoned", "front", "left", "hole_2")}


@pytest.mark.parametrize(
    ("size", "found"), [(18 * mm, []), (20 * mm, []), (21 * mm, ["button_wide"]), (10 * mm, ["button_slips"])]
)
def test_buttons_pass_their_buttonholes(garments, size, found):
    assert codes(changed(garments.JACKET, "Buttons", lambda t: button(t, size=size))) == found


def test_a_buttonhole_is_worked_as_marked(garments):
    assert set(codes(changed(garments.JACKET, "Buttonholes", lambda t: holes(t, 25 * mm)))) == {"buttonhole_size"}


def test_a_buttonhole_wants_a_finished_edge(garments):
    steps = list(garments.JACKET.steps)
    first = steps.pop([name for name, _ in steps].index("Buttonholes"))
    found = codes(garments.JACKET.pattern([first, *steps]))
    assert found == ["buttonhole_early"]


def test_a_point_is_no_buttonhole(garments):
    with pytest.raises(KitError, match="not as a buttonhole"):
        changed(garments.JACKET, "Buttonholes", lambda t: t.make.buttonholes(t.front.left.button_1, length=2 * cm))
    with pytest.raises(KitError, match="is not a mark"):
        changed(garments.JACKET, "Buttonholes", lambda t: t.make.buttonholes(t.front.neck, length=2 * cm))


def test_buttons_may_only_adorn(garments, sewn):
    piece = replace(
        garments.rectangle("flap", 100, 60, {"lower": 10, "far": 10, "upper": 10, "near": 10}),
        marks=(Mark("spot", "point", point=Point(50, 20)),),
    )
    found = sewn(
        (piece,),
        lambda make, flap: make.narrow_hem(flap.lower),
        lambda make, flap: make.buttons(flap.spot, size=2 * cm, shank=False),
    )
    assert found.codes == []
    assert found.said == [
        "Sew on a button 2 cm (3/4 in) across at the mark for the spot of the flap, with double thread."
    ]
    assert "small_parts" in found.last.cautions


def test_the_why_of_a_buttonhole_gives_the_rule(garments):
    pattern = garments.JACKET.pattern()
    ((key, values),) = operation_of(pattern, "Buttonholes").whys(pattern)
    assert key == "buttonholes.why" and values["thick"][0] == 3.0


# ---- snaps and hooks ------------------------------------------------------------------------------------------


def fasten(kind, on=("hook",), under=("bar",)):
    return lambda t: t.make.fasteners(
        *(getattr(t.waistband, name) for name in on), under=[getattr(t.waistband, name) for name in under], kind=kind
    )


@pytest.mark.parametrize("kind", ["hooks", "snaps"])
def test_pairs_are_counted(garments, kind):
    pattern = changed(garments.SKIRT, "Hook", fasten(kind))
    assert codes(pattern) == []
    assert operation_of(pattern, "Hook").notion_amounts(pattern) == {kind: (1, "count")}
    odd = changed(garments.SKIRT, "Hook", fasten(kind, on=("hook", "bar")))
    assert codes(odd) == ["fasteners_unequal"]


def test_pairs_are_sewn_on_last(garments):
    assert "fastener_early" in codes(garments.SKIRT.swapped("Close waistband", "Hook"))


# ---- cross-sections: counts worked by hand (common practice, no source) ----------------------------------------


def test_a_lapped_zip_is_covered():
    lapped = shapes.zip_lapped()
    assert (lapped.raw_edges, lapped.enclosed) == (2, 2)
    assert lapped.through(0) == ("zip", "under", "under")
    assert lapped.through(1) == ("zip", "over", "over")
    assert lapped.at(1.5) == ("zip", "under", "under", "over", "over")  # the lap covers the fold beside the teeth


def test_a_centred_zip_has_a_fold_on_either_side():
    centred = shapes.zip_centred()
    assert (centred.raw_edges, centred.enclosed) == (2, 2)
    assert centred.through(0) == ("zip", "left", "left") and centred.through(1) == ("zip", "right", "right")
    assert centred.at(0.0) == ("zip",)


def test_a_buttonhole_is_cut_between_its_rows():
    hole = shapes.buttonholed()
    assert hole.at(0.0) == ()
    assert hole.through(0) == hole.through(1) == ("inner", "interfacing", "outer")


def test_a_line_of_marks_is_read_in_lists(garments):
    pattern = garments.JACKET.pattern()
    operation = operation_of(pattern, "Buttons")
    assert operation.count(pattern) == 4
    assert isinstance(garments.JACKET_FRONT.marks[1].path, Path)


def test_numbered_marks_in_a_row_are_named_by_the_first_and_the_last(garments, sewn):
    """Of a pair one half laps over; what is on both halves beside it is told as such, and nothing is worked alike."""

    def holes(*numbers):
        return tuple(
            Mark(
                f"hole_{n}", "buttonhole", path=Path.line(Point(10, 50 * n), Point(31, 50 * n)), said=f"buttonhole {n}"
            )
            for n in numbers
        )

    front = garments.rectangle("front", 200, 400, {"hem": 20, "side": 10, "neck": 10, "edge": 30}, cut=garments.PAIR)
    cuff = garments.rectangle("cuff", 200, 100, {"lower": 10, "end": 10, "inner": 10, "start": 10}, cut=garments.PAIR)
    front, cuff = replace(front, marks=holes(1, 2, 3, 4, 6)), replace(cuff, marks=holes(1))

    def work(make, front, cuff):
        marks = [getattr(front.right, f"hole_{n}") for n in (1, 2, 3, 4, 6)]
        make.buttonholes(*marks, cuff.hole_1, length=21 * mm)

    def alike(make, front, cuff):
        make.buttonholes(front.hole_1, front.hole_2, length=21 * mm)

    said = sewn((front, cuff), work).said
    assert said[1] == (
        "Mark and work buttonhole 1 to 4 of the right front, buttonhole 6 of the right front and buttonhole 1 of the "
        "cuff, left and right, 2.1 cm (13/16 in) long, through all layers."
    )
    assert not any("alike" in each for each in said)
    said = sewn((front, cuff), alike).said
    assert said[1].startswith("Mark and work buttonhole 1 of the front and buttonhole 2 of the front, 2.1 cm")
    assert said[-1] == "Work the left and the right side alike."
