"""The invisible zip: the seam below it comes after it, the slider needs room, its rows do not show.

The order (coil pressed, each side by itself, the seam last) and the spare length are common practice, no source."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.proof import prove
from kit.prose import sentences
from kit.sewing.order import sew
from kit.sewing.sections import closures as shapes
from kit.units import cm


def hidden(length=25 * cm, **more):
    return lambda t: t.make.invisible_zip(
        t.back.left.zip_opening, t.back.right.zip_opening, allowance=2 * cm, length=length, **more
    )


def skirt(garments, *changes, swap=True, write=None):
    """The skirt with an invisible zip in place of its lapped one, before its centre seam."""
    steps = [(name, (write or hidden()) if name == "Zip" else own) for name, own in garments.SKIRT.steps]
    names = [name for name, _ in steps]
    if swap:
        i = names.index("Zip")
        steps.insert(names.index("Centre seam"), steps.pop(i))
    return garments.SKIRT.pattern([step for step in steps if step[0] not in changes])


def codes(pattern):
    return [refusal.code for refusal in sew(pattern)[1]]


def test_the_seam_below_comes_after_the_zip(garments):
    assert codes(skirt(garments)) == []
    assert codes(skirt(garments, swap=False)) == ["seam_before_zip"]


def test_left_out_or_its_seam_left_out_the_edge_stays_raw(garments):
    def raw(pattern):
        return {finding.edge for finding in prove(pattern) if finding.code == "raw_edge"}

    assert "centre" not in raw(skirt(garments))
    assert "centre" in raw(skirt(garments, "Zip"))
    assert "centre" in raw(skirt(garments, "Centre seam"))


def test_the_waist_is_closed_after_it(garments):
    steps = [(name, hidden() if name == "Zip" else own) for name, own in garments.SKIRT.steps if name != "Centre seam"]
    names = [name for name, _ in steps]
    zip = steps.pop(names.index("Zip"))
    steps.insert(names.index("Set waistband"), zip)
    assert "zip_late" in codes(garments.SKIRT.pattern(steps))


@pytest.mark.parametrize(("length", "found"), [(25 * cm, []), (21.5 * cm, []), (21 * cm, ["zip_short"]), (60 * cm, [])])
def test_the_slider_finds_room_below_the_last_stitch(garments, length, found):
    """An opening of 20 cm, the stop 5 mm from its top, 2 cm of room: 21.5 cm at least."""
    assert codes(skirt(garments, write=hidden(length))) == found


def test_a_seam_may_stop_short_of_the_zip_and_be_finished_after_it(garments):
    """Sewn to 5 cm below the opening the pieces still lie flat there."""

    def seam(start, end):
        return lambda t: t.make.plain_seam(
            t.back.left.centre.between(start, end), t.back.right.centre.between(start, end), allowance=2 * cm
        )

    steps = []
    for name, own in garments.SKIRT.steps:
        if name == "Centre seam":
            steps.append((name, seam(0 * cm, 35 * cm)))
        elif name == "Zip":
            steps += [(name, hidden()), ("Rest", seam(35 * cm, 40 * cm))]
        else:
            steps.append((name, own))
    assert codes(garments.SKIRT.pattern(steps)) == []


def test_what_is_said_in_order(garments):
    pattern = skirt(garments)
    (operation,) = next(record for record in pattern.sewing if record.title == "Zip").operations
    said = sentences(pattern, operation)
    order = ("coils", "Lay the open zip", "zip foot", "Lay the other tape", "sew the seam below", "by hand")
    assert [word for word, line in zip(order, said, strict=True) if word not in line] == []
    assert "5 mm" in said[1] and "above the slider" in said[2]
    assert operation.notion_amounts(pattern) == {"invisible_zip": (250.0, "length")}
    assert [len(scene.things) for scene in operation.scenes(pattern)] == [1, 1]
    assert operation.takes(pattern) == {("back", "centre"): 20.0}


def test_a_narrow_allowance_is_refused(garments):
    with pytest.raises(KitError, match="too narrow to sew a zip to"):
        skirt(
            garments,
            write=lambda t: t.make.invisible_zip(
                t.back.left.zip_opening, t.back.right.zip_opening, allowance=0.8 * cm, length=25 * cm
            ),
        )


def test_no_row_goes_through_what_is_seen():
    """Counts worked by hand: the row holds tape and allowance, the fold outside it stays free."""
    first, done = shapes.zip_invisible_first(), shapes.zip_invisible()
    assert first.through(0) == ("cloth", "zip")
    assert (done.raw_edges, done.enclosed) == (2, 2)
    assert done.through(0) == ("zip", "left") and done.through(1) == ("zip", "right")
    assert done.at(-0.6) == ("zip", "left", "left")
