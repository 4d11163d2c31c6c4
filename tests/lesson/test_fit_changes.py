"""Fit changes against exact geometry: what is slashed and spread is rigid on either side of the slash, hinges stay, and
edges that are sewn together change alike. Nothing here uses the code that made the drawings; turns and slides are
reckoned from points alone."""

from __future__ import annotations

import math

import pytest

import kit
from kit import Lesson, cm, with_sleeve, workshop_chart
from kit.errors import KitError
from kit.geometry import Point
from kit.language import speaking
from kit.lesson.fit_change import FIT_CHANGES, altered, altered_or_how_far, possible
from kit.lesson.fit_steps import words_of
from kit.lesson.own_words import translate
from kit.picture.draft import step_drawing
from kit.piece.dart import closing, darts_on, intake, sewn_length, sewn_point
from kit.piece.folded import corner_at, folded
from kit.piece.piece import Piece
from kit.proof import prove
from kit.proof.darts import darts
from kit.units import mm
from tests.example import EXAMPLE, notebook_names

BLOCKS = {
    "bodice": kit.bodice_block,
    "darted": kit.darted_bodice_block,
    "skirt": kit.skirt_block,
    "trousers": kit.trouser_block,
    "sleeve": with_sleeve(kit.bodice_block),
}
SIZES = ("W1", "W4", "W10")


def changed(block: str, name: str, amount: float, size: str = "W4") -> tuple[dict[str, Piece], dict[str, Piece]]:
    body = workshop_chart()[size]
    before = {piece.name: piece for piece in BLOCKS[block](body)}
    made = altered(before, FIT_CHANGES[name], amount, body)
    return before, before | {piece.name: piece for piece in made.pieces}


def grown(before: dict[str, Piece], after: dict[str, Piece], piece: str, edge: str) -> float:
    return sewn_length(after[piece], edge) - sewn_length(before[piece], edge)


def bends_at_darts(pieces) -> list[str]:
    """What the proof says of edges that bend, by more than 3 degrees, where a dart is shut, and of caps that miss."""
    return [str(finding) for finding in darts(tuple(pieces)) if finding.code in ("dart_not_true", "dart_cap")]


ACROSS = {"side": ("armhole", "waist", "hem", "hip"), "shoulder": ("neck", "armhole"), "inseam": ("crotch", "hem")}


def runs_on(pieces: dict[str, Piece]) -> dict[tuple[str, str], float]:
    """What the corners of front and back at either end of each seam add up to, in degrees, by the seam and what crosses
    it there: 180 where the line runs on without a bend. Seams that end at a fold do not count."""
    found: dict[tuple[str, str], float] = {}
    for role, lines in ACROSS.items():
        for piece in (pieces["front"], pieces["back"]):
            for edge in piece.with_role(role):
                run = folded(piece, (edge.name,))
                for corner in (corner_at(run, False), corner_at(run, True)):
                    across = "" if corner is None else piece.edge(corner.beside).role
                    if across in lines and corner.beside != piece.fold:
                        found[role, across] = found.get((role, across), 0.0) + math.degrees(corner.angle)
    return found


def shoulder(piece: Piece) -> float:
    return piece.point_of("neck_point").distance(piece.point_of("shoulder_tip"))


def every() -> list[tuple[str, str]]:
    body = workshop_chart()["W4"]
    return [(block, name) for block, start in BLOCKS.items() for name in possible(start(body), body)]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("block, name", every())
@pytest.mark.parametrize("share", [0.5, 1.0])
def test_every_change_closes_and_keeps_partners(block, name, size, share):
    before, after = changed(block, name, min(FIT_CHANGES[name].shown, 20.0) * share, size)
    assert before != after
    for piece in after.values():
        assert piece.outline.self_crossing() is None
        for dart in piece.darts:
            closing(piece, dart)  # refuses legs that differ
    told = [finding for finding in bends_at_darts(after.values()) if finding not in bends_at_darts(before.values())]
    assert not told
    assert runs_on(before) == pytest.approx(runs_on(after), abs=1.0)
    front, back = before["front"], before["back"]
    for role in ("side", "inseam", "shoulder"):
        pairs = [(f, b) for f in front.with_role(role) for b in back.with_role(role)]
        for f, b in pairs:
            if (front.worn, role) == ("front", "shoulder") and name == "round_back":
                continue
            one, two = grown(before, after, "front", f.name), grown(before, after, "back", b.name)
            assert one == pytest.approx(two, abs=0.1), role
    if "sleeve" in before:
        holes = sum(grown(before, after, p, "armhole") for p in ("front", "back"))
        caps = sum(grown(before, after, "sleeve", e) for e in ("front_cap", "back_cap"))
        assert caps == pytest.approx(holes, abs=1.5)  # of some 45 cm: how the armhole runs into the shoulder
        arms = [grown(before, after, "sleeve", e) for e in ("front_underarm", "back_underarm")]
        assert arms[0] == pytest.approx(arms[1], abs=0.05)


# ---- slashed and spread, reckoned from points -----------------------------------------------------------------


@pytest.mark.parametrize("way", ["lengthen", "shorten"])
def test_lengthened_slides_what_lies_above_by_just_that_much(way):
    before, after = changed("bodice", f"{way}_above_waist", 25.0)
    by = 25.0 if way == "lengthen" else -25.0
    for name in ("front", "back"):
        was, now = (dict(pieces[name].points) for pieces in (before, after))
        for point in ("neck_point", "shoulder_tip", "underarm_point", "centre_neck"):
            assert (now[point].x, now[point].y) == pytest.approx((was[point].x, was[point].y + by))
        for point in ("side_waist", "centre_waist", "side_hip"):
            assert now[point] == was[point]
        for edge in ("neck", "shoulder", "armhole"):
            assert grown(before, after, name, edge) == pytest.approx(0.0, abs=1e-9)
        assert grown(before, after, name, "centre") == pytest.approx(by)


def test_lengthened_and_shortened_again_is_the_draft_as_it_was():
    body = workshop_chart()["W4"]
    before = {piece.name: piece for piece in kit.skirt_block(body)}
    once = before | {p.name: p for p in altered(before, FIT_CHANGES["lengthen_above_hem"], 30.0, body).pieces}
    twice = once | {p.name: p for p in altered(once, FIT_CHANGES["shorten_above_hem"], 30.0, body).pieces}
    for name, piece in before.items():
        assert twice[name].outline.area == pytest.approx(piece.outline.area, rel=1e-6)


@pytest.mark.parametrize("name, sign", [("full_bust", 1), ("small_bust", -1)])
def test_full_bust_turns_about_the_armhole_and_opens_both_darts(name, sign):
    whole = 30.0
    before, after = changed("darted", name, whole)
    was, now = before["front"], after["front"]
    half = whole / 2
    one, two = (next(d for d in piece.darts if d.name == "bust_dart") for piece in (was, now))
    # The upper leg turned about the hinge with what lies above it, the lower one slid: the dart opened by that turn.
    bust = was.point_of("bust_point")
    hole = was.edge("armhole").path
    hinge = hole.at(hole.length * 2 / 3)  # a third up from the underarm
    arm = bust - hinge
    turn = math.asin((arm.x + sign * half) / arm.length) - math.asin(arm.x / arm.length)

    def angle(piece: Piece, dart) -> float:
        path = piece.edge(dart.edge).path
        a, b = path.at(dart.start), path.at(dart.end)
        leg = max(dart.apex.distance(a), dart.apex.distance(b))
        return 2 * math.asin(a.distance(b) / 2 / leg)

    lip = two.apex.distance(now.edge("side").path.at(two.start)) - sign * half / 2  # it was aimed nearer the centre
    mouth = intake(now, two)
    assert 2 * math.asin(mouth / 2 / lip) - angle(was, one) == pytest.approx(abs(turn) * sign, rel=0.06)
    waists = [next(d for d in piece.darts if d.name == "waist_dart") for piece in (was, now)]
    assert intake(now, waists[1]) - intake(was, waists[0]) == pytest.approx(sign * half, abs=0.3)  # drawn smooth
    for edge in ("armhole", "shoulder", "neck", "side"):
        assert grown(before, after, "front", edge) == pytest.approx(0.0, abs=0.3), edge
    tips = ("neck_point", "shoulder_tip", "centre_neck")
    assert all(dict(was.points)[tip] == dict(now.points)[tip] for tip in tips)


def test_full_seat_turns_the_upper_back_about_the_side():
    amount = 20.0
    before, after = changed("skirt", "full_seat", amount)
    was, now = before["back"], after["back"]
    hinge = dict(was.points)["side_hip"]
    wide = hinge.x  # from the fold to the hinge
    turn = -2 * math.asin(amount / 2 / wide)
    corner = dict(was.points)["side_waist"]
    arm = corner - hinge
    there = hinge + arm.rotated(turn)
    assert now.edge("side").path.start.distance(there) < 0.05 or now.edge("side").path.end.distance(there) < 0.05
    assert grown(before, after, "back", "side") == pytest.approx(0.0, abs=0.05)
    assert grown(before, after, "back", "hem") == pytest.approx(0.0, abs=1e-9)
    assert now.edge("centre").path.is_straight
    assert sewn_length(now, "waist") == pytest.approx(sewn_length(was, "waist"), abs=1.5)
    assert intake(now, now.darts[0] if now.darts[0].name == "waist_dart_1" else now.darts[-1]) > 30.0


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize(
    "block, name, edge",
    [
        ("skirt", "full_seat", "waist"),
        ("skirt", "flat_seat", "waist"),
        ("skirt", "sway_back", "waist"),
        ("trousers", "sway_back", "waist"),
        ("darted", "full_bust", "waist"),
        ("darted", "round_back", "neck"),
    ],
)
@pytest.mark.parametrize("share", [0.2, 0.5, 0.8])
def test_an_edge_runs_smooth_through_its_shut_darts_by_however_much(block, name, edge, share, size):
    """The lines on either side of a shut dart are laid together here by turning about where its stitching ends, and
    their directions compared: nothing of what drew them is asked."""
    before, after = changed(block, name, FIT_CHANGES[name].most * share, size)
    piece = after["front" if name == "full_bust" else "back"]
    path = piece.edge(edge).path
    assert darts_on(piece, edge)
    for dart in darts_on(piece, edge):
        one, two = (path.at(at) - sewn_point(piece, dart) for at in (dart.start, dart.end))
        assert one.length == pytest.approx(two.length, abs=0.02)
        way, on = path.tangent_at(dart.start - 0.01), path.tangent_at(dart.end + 0.01)
        assert math.degrees(abs(way.turn_to(on.rotated(two.turn_to(one))))) < 1.5
    if name.endswith("seat"):
        assert grown(before, after, "back", edge) == pytest.approx(0.0, abs=0.05)
        fold = piece.edge("centre").path
        assert abs(path.start_tangent.dot(fold.end_tangent)) < 0.01  # square to the fold, as it was


def test_round_back_turns_about_the_armhole_and_gives_a_neck_dart():
    before, after = changed("darted", "round_back", 15.0)
    was, now = before["back"], after["back"]
    for a, b in (("neck_point", "shoulder_tip"),):
        assert dict(now.points)[a].distance(dict(now.points)[b]) == pytest.approx(
            dict(was.points)[a].distance(dict(was.points)[b])
        )
    assert grown(before, after, "back", "armhole") == pytest.approx(0.0, abs=0.01)
    assert grown(before, after, "back", "side") == pytest.approx(0.0, abs=0.01)
    assert [d.edge for d in now.darts if d.name == "neck_dart"] == ["neck"]
    assert grown(before, after, "back", "neck") == pytest.approx(0.0, abs=0.6)


@pytest.mark.parametrize("block, waist", [("skirt", "waist"), ("darted", "waist"), ("trousers", "waist")])
def test_sway_back_shortens_the_centre_alone(block, waist):
    before, after = changed(block, "sway_back", 12.0)
    centre = "crotch" if block == "trousers" else "centre"
    assert grown(before, after, "back", centre) == pytest.approx(-12.0, abs=0.05)
    assert grown(before, after, "back", "side") == pytest.approx(0.0, abs=0.05)
    assert grown(before, after, "back", waist) == pytest.approx(0.0, abs=2.0)
    for dart in after["back"].darts:
        assert intake(after["back"], dart) == pytest.approx(
            intake(before["back"], next(d for d in before["back"].darts if d.name == dart.name)), abs=0.6
        )


@pytest.mark.parametrize("name, sign", [("sloping_shoulder", -1), ("square_shoulder", 1)])
def test_a_sloping_shoulder_slides_the_armhole_whole(name, sign):
    before, after = changed("bodice", name, 10.0)
    was, now = before["front"].edge("armhole").path, after["front"].edge("armhole").path
    for share in (0.0, 0.2, 0.4, 0.7, 1.0):
        old = was.at(was.length * share)
        slid = Point(old.x, old.y + sign * 10.0)
        # Near the tip it is bent a little, since the shoulder comes to it at another slope.
        assert now.distance_to(slid) < (2.0 if share == 0.2 else 1e-3)


@pytest.mark.parametrize("name, sign", [("broad_shoulder", 1), ("narrow_shoulder", -1)])
def test_a_broad_shoulder_turns_about_the_armhole(name, sign):
    before, after = changed("bodice", name, 12.0)
    for piece in ("front", "back"):
        hole = before[piece].edge("armhole").path
        hinge = hole.at(hole.length * 0.55)
        tips = [dict(pieces[piece].points)["shoulder_tip"] for pieces in (before, after)]
        assert tips[1].distance(hinge) == pytest.approx(tips[0].distance(hinge))
        assert (tips[1].x - tips[0].x) * sign > 6.0
        assert grown(before, after, piece, "armhole") == pytest.approx(0.0, abs=0.5)


def test_a_forward_shoulder_takes_from_the_front_what_it_gives_the_back():
    before, after = changed("sleeve", "forward_shoulder", 12.0)
    assert grown(before, after, "front", "armhole") == pytest.approx(-12.0, abs=0.2)
    assert grown(before, after, "back", "armhole") == pytest.approx(12.0, abs=0.2)
    assert grown(before, after, "sleeve", "front_cap") == pytest.approx(-12.0)
    assert grown(before, after, "sleeve", "back_cap") == pytest.approx(12.0)
    assert shoulder(after["front"]) - shoulder(before["front"]) == pytest.approx(
        shoulder(after["back"]) - shoulder(before["back"])
    )


def test_a_full_upper_arm_is_wider_there_and_nowhere_else():
    before, after = changed("sleeve", "full_upper_arm", 30.0)
    was, now = before["sleeve"], after["sleeve"]
    wide = [piece.guide_of("upper_arm_line").length for piece in (was, now)]
    assert wide[1] - wide[0] == pytest.approx(30.0, abs=0.05)
    for edge in ("front_cap", "back_cap", "front_underarm", "back_underarm"):
        assert grown(before, after, "sleeve", edge) == pytest.approx(0.0, abs=1e-6)
    assert grown(before, after, "sleeve", "wrist") == pytest.approx(0.0, abs=0.5)
    # Each of the four parts is rigid: its corners keep their distances.
    for one, other in (("front_underarm_point", "cap_top"), ("front_underarm_point", "front_wrist")):
        pair = [dict(piece.points)[one].distance(dict(piece.points)[other]) for piece in (was, now)]
        assert pair[1] == pytest.approx(pair[0], abs=1e-6)
    assert dict(now.points)["cap_top"].y < dict(was.points)["cap_top"].y


def test_let_out_is_a_quarter_on_each_side_seam():
    before, after = changed("sleeve", "let_out_sides", 40.0)
    for piece in ("front", "back"):
        old, new = (pieces[piece].edge("side").path for pieces in (before, after))
        for share in (0.1, 0.5, 0.9):
            a, b = old.at(old.length * share), new.at(new.length * share)
            assert (b.x - a.x, b.y - a.y) == pytest.approx((10.0, 0.0), abs=1e-6)


# ---- in a lesson ------------------------------------------------------------------------------------------


def test_an_author_places_one_among_the_steps():
    lesson = Lesson("Blouse", start=kit.darted_bodice_block)
    lesson.fit_change("Full bust", 3 * cm)

    @lesson.step("Lower the neck")
    def neck(front):
        """Lower it."""
        front.lower_neckline(2 * cm)

    pattern = lesson.work()
    assert [record.title for record in pattern.steps] == ["Full bust", "Lower the neck"]
    record = pattern.steps[0]
    assert "{full_bust}" in record.text
    assert [(spot.label, spot.value) for spot in record.spots] == [
        ("Full bust, half on each side", pytest.approx(15.0))
    ]
    assert any("1.5 cm" in str(getattr(item, "text", "")) for item in step_drawing(record, "cm").items)
    lesson.change(full_bust=0 * mm)
    assert [record.title for record in lesson.work().steps] == ["Lower the neck"]


def test_it_may_follow_a_step_and_what_comes_after_follows_it():
    lesson = Lesson("Blouse", start=kit.bodice_block)

    @lesson.step("Widen")
    def widen(front, back):
        """Widen."""
        front.add_ease(1 * cm)
        back.add_ease(1 * cm)

    @lesson.step("Facing", makes="neck_facing")
    def facing(front, neck_facing):
        """Face it."""
        neck_facing.face(front.neck, depth=5 * cm, ends=("centre", "shoulder"))

    lesson.fit_change("broad shoulder", 1 * cm, after="widen")
    assert [entry.name for entry in lesson.entries] == ["widen", "fit_broad_shoulder", "facing"]
    assert lesson.work().piece("front").edge("shoulder").path.length > 125


def test_a_reader_sets_one_by_its_amount(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Skirt", start=kit.skirt_block)
    names = [parameter.name for parameter in lesson.fit_changes]
    assert "full_seat" in names
    assert "full_bust" not in names
    plain = lesson.work()
    lesson.change(full_seat=2 * cm)
    assert [record.title for record in lesson.work().steps] == ["Full seat"]
    lesson.save()
    again = Lesson("Skirt", start=kit.skirt_block)
    assert again.values == {"full_seat": 20.0}
    assert again.work().pieces == lesson.work().pieces
    again.change(full_seat=0 * cm)
    assert again.work().pieces == plain.pieces
    assert again.values == {}
    lesson.reset()
    assert lesson.work().pieces == plain.pieces


def test_on_blank_paper_it_comes_behind_the_step_that_draws_what_it_goes_by():
    lesson = Lesson("Tube", start=kit.blank_paper)

    @lesson.step("Draw the tube", makes="front")
    def draw(front):
        """Draw it."""
        top = front.place(0 * cm, 0 * cm)
        side, low = top.out(25 * cm), top.down(60 * cm)
        front.draw(
            waist=top.to(side), side=side.to(side.down(60 * cm)), hem=side.down(60 * cm).to(low), centre=low.to(top)
        )
        front.guide(hip_line=top.down(20 * cm).to(side.down(20 * cm)))

    @lesson.step("Cut")
    def cut(front):
        """Cut it."""
        front.cut(1)

    assert "lengthen_above_hem" in [parameter.name for parameter in lesson.fit_changes]
    lesson.change(lengthen_above_hem=4 * cm)
    pattern = lesson.work()
    assert [record.key for record in pattern.steps] == ["draw", "fit_lengthen_above_hem", "cut"]
    assert pattern.piece("front").edge("centre").path.length == pytest.approx(640.0)


@pytest.mark.parametrize(
    "say, match",
    [
        (lambda lesson: lesson.fit_change("full bost", 2 * cm), "no fit change 'full bost'. Did you mean 'full_bust'"),
        (lambda lesson: lesson.fit_change("full bust", 50 * cm), "outside its range"),
        (lambda lesson: lesson.fit_change("full bust", 2), "has no unit"),
        (lambda lesson: lesson.change(full_seat=2 * cm), "no parameter 'full_seat'"),
    ],
)
def test_what_cannot_be_is_refused(say, match):
    with pytest.raises(KitError, match=match):
        say(Lesson("Blouse", start=kit.darted_bodice_block))


def test_too_much_names_the_change():
    lesson = Lesson("Skirt", start=kit.skirt_block)
    lesson.fit_change("shorten above hip", 4.8 * cm)
    lesson.fit_change("full upper arm", 2 * cm)
    with pytest.raises(KitError, match="Full upper arm: there is no set-in sleeve"):
        lesson.work()


@pytest.mark.parametrize("language, title", [("de", "Volle Brust"), ("es", "Busto grande"), ("fr", "Poitrine forte")])
def test_its_words_are_the_kits_in_every_language(language, title):
    lesson = Lesson("Blouse", start=kit.darted_bodice_block)
    lesson.fit_change("full bust", 3 * cm)
    said, missing = translate(lesson.work(), None, language)
    assert said.steps[0].title == title
    assert "{full_bust}" in said.steps[0].text
    assert not [one for one in missing if "ull bust" in one.text]
    assert said.steps[0].spots[0].label.startswith(title)
    own = Lesson("Bluse", start=kit.darted_bodice_block, language=language)
    own.fit_change("full bust", 3 * cm)
    assert own.work().steps[0].title == title


def test_every_change_is_worded_in_every_language():
    for language in ("en", "de", "es", "fr"):
        with speaking(language):
            texts = {change.told("7 cm") for change in FIT_CHANGES.values()}
            titles = {change.title for change in FIT_CHANGES.values()}
        assert all("7 cm" in text for text in texts)
        assert len(titles) == len(FIT_CHANGES)


@pytest.mark.slow
def test_the_wrap_top_stays_sound_under_each():
    names = notebook_names(EXAMPLE)
    lesson = next(thing for thing in reversed(names.values()) if isinstance(thing, Lesson))
    errors = {str(finding) for finding in prove(lesson.work()) if finding.level == "error"}
    for change in lesson.fit_changes:
        lesson.change(**{change.name: min(FIT_CHANGES[change.name].shown, 15.0) * mm})
        found = {str(finding) for finding in prove(lesson.work()) if finding.level == "error"}
        assert found <= errors, change.name
        lesson.change(**{change.name: 0 * mm})


@pytest.mark.parametrize(
    "garment, name, amount",
    [
        ("sandbar_top", "full_bust", 80.0),
        ("sandbar_top", "small_bust", 30.0),
        ("sandbar_top", "broad_shoulder", 20.0),
        ("dune_skirt", "full_seat", 30.0),
        ("dune_skirt", "flat_seat", 20.0),
        ("dune_skirt", "sway_back", 15.0),
    ],
)
def test_a_garment_is_told_no_fault_by_a_change_that_its_body_asks_for(garment, name, amount):
    names = notebook_names(EXAMPLE.parent / f"{garment}.ipynb")
    lesson = next(thing for thing in reversed(names.values()) if isinstance(thing, Lesson))
    for size in ("W1", "W10"):
        lesson.choose(size=size)
        lesson.change(**{name: amount * mm})
        assert [str(finding) for finding in prove(lesson.work()) if finding.level != "note"] == []


def test_opposites_name_each_other():
    for name, change in FIT_CHANGES.items():
        if change.opposite:
            assert FIT_CHANGES[change.opposite].opposite == name


def test_a_mirrored_block_is_altered_as_its_mirror_image():
    from kit.piece.unfold import pair

    body = workshop_chart()["W4"]
    sleeve = BLOCKS["sleeve"](body)[-1]
    left, right = pair(sleeve)
    one = altered({"s": right}, FIT_CHANGES["full_upper_arm"], 20.0, body).pieces
    other = altered({"s": left}, FIT_CHANGES["full_upper_arm"], 20.0, body).pieces
    assert one == () == other  # under another name they are not the table's
    made = [FIT_CHANGES["full_upper_arm"].work((piece,), 20.0, body).pieces[0] for piece in (left, right)]
    for edge in ("front_cap", "wrist"):
        a, b = (piece.edge(edge).path for piece in made)
        for share in (0.0, 0.4, 1.0):
            p, q = a.at(a.length * share), b.at(b.length * share)
            assert Point(-p.x, p.y).distance(q) < 0.01


def test_darts_on_the_waist_are_still_two():
    _, after = changed("skirt", "full_seat", 15.0)
    assert len(darts_on(after["back"], "waist")) == 2


@pytest.mark.parametrize("language", ["en", "de", "es", "fr"])
def test_a_garment_without_sleeve_is_told_nothing_of_one(language):
    """Trousers, a skirt and a bodice without sleeves; where there is one, the step and its translation tell of it."""
    words = {"en": "sleeve", "de": "Ärmel", "es": "manga", "fr": "manche"}
    for start, name, has in (
        (kit.trouser_block, "take_in_sides", False),
        (kit.skirt_block, "let_out_sides", False),
        (kit.bodice_block, "lower_underarm", False),
        (kit.bodice_block, "forward_shoulder", False),
        (with_sleeve(kit.bodice_block), "take_in_sides", True),
        (with_sleeve(kit.bodice_block), "raise_underarm", True),
    ):
        lesson = Lesson("Try", start=start)
        lesson.change(**{name: 1 * cm})
        (record,) = [step for step in lesson.work().steps if step.key == f"fit_{name}"]
        assert ("sleeve" in record.text) == has, name
        told = words_of(record.key, language, record.text)["text"]
        assert (words[language] in told) == has, name
    with speaking(language):
        for change in FIT_CHANGES.values():
            assert words[language] not in change.told("7 cm", sleeve=False).lower().replace("ärmel", "Ärmel") or (
                change.name == "full_upper_arm"
            ), change.name


@pytest.mark.parametrize("block, name, size", [("darted", "small_bust", "W1"), ("darted", "small_bust", "W10")])
def test_too_much_of_a_change_is_told_with_how_far_it_goes(block, name, size):
    body = workshop_chart()[size]
    pieces = {piece.name: piece for piece in BLOCKS[block](body)}
    change = FIT_CHANGES[name]
    with pytest.raises(KitError) as caught:
        altered_or_how_far(pieces, change, change.most, body)
    far = dict(caught.value.told.says.values)["most"][0]
    assert 10 < far < change.most and "no further than" in str(caught.value)
    assert altered_or_how_far(pieces, change, far, body).pieces
    with pytest.raises(KitError):
        altered(pieces, change, far + 2.0, body)
