"""Patch pockets and pockets in a seam: what closes what, what is refused, their sections."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.proof import prove
from kit.prose import sentences
from kit.sewing.order import sew
from kit.sewing.sections import pockets as shapes
from kit.units import cm, mm


def codes(pattern) -> list[str]:
    return [refusal.code for refusal in sew(pattern)[1]]


def changed(garment, title, write):
    return garment.pattern([(name, write if name == title else own) for name, own in garment.steps])


def operation_of(pattern, title):
    return next(record for record in pattern.sewing if record.title == title).operations[0]


# ---- patch pockets --------------------------------------------------------------------------------------------


def test_a_patch_pocket_closes_its_own_edges_only(garments):
    pattern = garments.JACKET.pattern()
    hem, sewn = operation_of(pattern, "Pocket hem"), operation_of(pattern, "Pockets")
    assert {c.span.edge for c in hem.closes(pattern)} == {"top"}
    assert {(c.span.piece, c.span.edge) for c in sewn.closes(pattern)} == {
        ("pocket", edge) for edge in ("left_side", "bottom", "right_side")
    }
    assert hem.takes(pattern) == {("pocket", "top"): 36.0}
    assert operation_of(pattern, "Pocket edges").closes(pattern) == ()
    state, _ = sew(pattern)
    assert state.joined(("pocket", "left"), ("front", "left"))
    assert ("pocket_on", "front", "right", "pocket_place") in state.facts


def test_a_pocket_not_sewn_on_stays_loose(garments):
    assert "loose_piece" in {finding.code for finding in prove(garments.JACKET.without("Pockets"))}


@pytest.mark.parametrize(
    ("corners", "keys"),
    [
        ("square", ["press", "square"]),
        ("mitred", ["prepare_mitred", "press", "mitred"]),
        ("curved", ["prepare_curved", "press", "curved"]),
    ],
)
def test_corners_of_a_pocket(garments, corners, keys):
    def fold(t):
        t.make.fold_pocket(
            [t.pocket.left_side, t.pocket.bottom, t.pocket.right_side], allowance=1 * cm, corners=corners
        )

    pattern = changed(garments.JACKET, "Pocket edges", fold)
    assert codes(pattern) == []
    operation = operation_of(pattern, "Pocket edges")
    assert [key for key, _ in operation.sentences(pattern)] == [f"fold_pocket.{key}" for key in keys]
    assert [key for key, _ in operation.whys(pattern)] == [f"fold_pocket.why_{corners}"]


def test_one_edge_not_pressed_under_is_noticed(garments):
    def fold(t):
        t.make.fold_pocket(t.pocket.left_side, t.pocket.bottom, allowance=1 * cm)

    assert codes(changed(garments.JACKET, "Pocket edges", fold)) == ["pocket_not_folded"]


def test_a_placement_of_another_size_is_refused(garments):
    small = Path.line(Point(40, 150), Point(40, 60)).joined(Path.line(Point(40, 60), Point(130, 60)))
    front = replace(
        garments.JACKET_FRONT,
        marks=tuple(replace(m, path=small) if m.name == "pocket_place" else m for m in garments.JACKET_FRONT.marks),
    )
    assert codes(garments.JACKET.pattern(front=front)) == ["pocket_place_size"]
    mouth = Path.line(Point(40, 150), Point(160, 150))  # the line of its mouth alone will do
    front = replace(
        garments.JACKET_FRONT,
        marks=tuple(replace(m, path=mouth) if m.name == "pocket_place" else m for m in garments.JACKET_FRONT.marks),
    )
    assert codes(garments.JACKET.pattern(front=front)) == []


def test_a_pocket_needs_a_placement_mark(garments):
    def place(t):
        t.make.patch_pocket(t.pocket.bottom, at=t.front.button_1, allowance=1 * cm)

    with pytest.raises(KitError, match="is no placement"):
        changed(garments.JACKET, "Pockets", place)


def test_two_pockets_on_one_mark_are_refused(garments):
    assert "pocket_twice" in codes(garments.JACKET.twice("Pockets"))


def test_a_first_turn_deeper_than_the_second(garments):
    def hem(t):
        t.make.pocket_hem(t.pocket.top, first=20 * mm, second=16 * mm)

    assert codes(changed(garments.JACKET, "Pocket hem", hem)) == ["hem_turns"]


# ---- pockets in a seam ----------------------------------------------------------------------------------------


def test_each_stretch_of_the_side_is_closed_by_its_own_step(garments):
    pattern = garments.SKIRT.pattern()
    state, _ = sew(pattern)
    for piece in ("front", "back"):
        size = pattern.piece(piece).edge("side").path.length
        parts = sorted((d.span.start, d.span.end, d.step) for d in state.on((piece, "left", "side")))
        assert parts == [
            (0.0, 50.0, "Side seams"),
            (50.0, 200.0, "Pocket bags"),
            (200.0, pytest.approx(size), "Side seams"),
        ]
    for bag in ("front_bag", "back_bag"):
        steps = {edge: state.on((bag, "right", edge))[0].step for edge in ("mouth", "bottom", "outer", "upper")}
        assert steps == {
            "mouth": "Pocket bags",
            "bottom": "Side seams",
            "outer": "Side seams",
            "upper": "Side seams",
        }


def test_the_mouth_counts_as_left_open(garments):
    pattern = garments.SKIRT.pattern()
    found = operation_of(pattern, "Side seams").opens(pattern)
    assert {(span.piece, span.start, span.end) for span in found} == {("front", 50.0, 200.0), ("back", 50.0, 200.0)}
    assert "opening_sewn_shut" not in {finding.code for finding in prove(pattern)}


def test_a_plain_side_seam_would_sew_the_mouth_twice(garments):
    def side(t):
        t.make.plain_seam(t.front.side, t.back.side, allowance=15 * mm)

    pattern = changed(garments.SKIRT, "Side seams", side)
    assert "closed_twice" in codes(pattern)
    wanted = {fact for record in pattern.sewing for each in record.operations for fact in each.wants(pattern)}
    assert ("bag_closed", "front_bag", "left") in wanted - sew(pattern)[0].facts


def seam(mouth, bags=None):
    def write(t):
        def round_(bag):
            return bag.bottom + bag.outer + bag.upper

        t.make.pocket_seam(
            t.front.side,
            t.back.side,
            bags=(round_(t.front_bag), round_(t.back_bag)) if bags is None else bags(t),
            mouth=mouth,
            allowance=15 * mm,
            bag_allowance=1 * cm,
        )

    return write


def test_a_mouth_that_is_not_where_the_bags_are_is_refused(garments):
    pattern = changed(garments.SKIRT, "Side seams", seam((7 * cm, 22 * cm)))
    assert "mouth_moved" in codes(pattern)


def test_bags_that_differ_are_refused(garments):
    deep = garments.polygon(
        "back_bag",
        [(0, 0), (0, -150), (120, -260), (120, 20)],
        {"mouth": 15, "bottom": 10, "outer": 10, "upper": 10},
        cut=garments.FRONT_BAG.cut,
    )
    assert "bags_unequal" in codes(garments.SKIRT.pattern(back_bag=deep))


def test_a_mouth_longer_than_its_bag_is_found_by_the_proof(garments):
    mark = replace(garments.SKIRT_FRONT.marks[0], end=220)
    pattern = garments.SKIRT.pattern(
        front=replace(garments.SKIRT_FRONT, marks=(mark,)),
        back=replace(garments.SKIRT_BACK, marks=(mark, garments.SKIRT_BACK.marks[1])),
    )
    assert "seam_length" in {finding.code for finding in prove(pattern)}


def test_a_bag_along_the_whole_edge_is_refused(garments):
    def bags(t):
        t.make.pocket_bag(t.front_bag.mouth, t.front.side, allowance=15 * mm)

    assert codes(changed(garments.SKIRT, "Pocket bags", bags))[0] == "mouth_whole_edge"


def test_both_bags_are_named(garments):
    with pytest.raises(KitError, match="one of the two bags is missing"):
        changed(garments.SKIRT, "Side seams", seam((5 * cm, 20 * cm), lambda t: (t.front_bag.bottom,)))


def test_bags_of_cloth_that_does_not_fray_are_told_without_a_finish(garments):
    def bags(t):
        t.make.pocket_bag(t.front_bag.mouth, t.front.pocket_mouth, allowance=15 * mm, finish="none")

    pattern = changed(garments.SKIRT, "Pocket bags", bags)
    said = sentences(pattern, operation_of(pattern, "Pocket bags"))
    assert [line.split()[0] for line in said] == ["Pin", "Stitch", "Fold", "Work"]


def test_the_seam_tells_where_it_pivots(garments):
    pattern = garments.SKIRT.pattern()
    said = sentences(pattern, operation_of(pattern, "Side seams"))
    assert said[1:4] == [
        "Stitch 1.5 cm (5/8 in) from the edge down to the upper mark of the pocket, 5 cm (2 in) below the waist; "
        "leave the needle down.",
        "Pivot and stitch round the front bag and the back bag, 1 cm (3/8 in) from their edge, to the lower mark. The "
        "mouth stays open for 15 cm (5 7/8 in).",
        "Pivot again and stitch the seam on to its end.",
    ]


# ---- cross-sections: counts worked by hand (common practice, no source) ----------------------------------------


def test_the_edge_of_a_patch_pocket_is_shut_in():
    edge = shapes.patch_edge()
    assert (edge.raw_edges, edge.enclosed) == (1, 1)
    assert edge.through(0) == ("garment", "pocket", "pocket")
    assert edge.at(8.0) == ("garment", "pocket") and edge.at(-8.0) == ("garment",)
    folded = shapes.pocket_edge_folded()
    assert (folded.raw_edges, folded.enclosed, folded.plies[0].folds) == (1, 0, 1)


def test_bags():
    assert shapes.bags_together().through(0) == ("front bag", "back bag")
    assert (shapes.bags_together().raw_edges, shapes.bags_together().enclosed) == (2, 0)
    assert shapes.bag_sewn().raw_edges == 2
