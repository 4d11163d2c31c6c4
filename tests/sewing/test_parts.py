"""Parts of edges between landmarks: where they lie, how long they are, what they are called, what is refused.

Places and lengths are reckoned by hand on pieces of straight edges; what a landmark is called is common practice, no
source.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from shapely.geometry import LineString, Polygon

from kit import blank_paper
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.language import speaking
from kit.lesson.lesson import Lesson
from kit.picture.laid import place_all
from kit.picture.sewing import scene_drawing
from kit.piece.piece import CutPlan, Edge, Mark, Notch, Piece, Strip
from kit.proof.seams import seam_lengths
from kit.prose import edges_said, places_said, tools
from kit.sewing.handle import PieceHandle
from kit.sewing.order import sew
from kit.sewing.run import Chain
from kit.sewing.spans import path_of
from kit.units import Length, cm, mm

FOLD, PAIR = CutPlan(fold="centre"), CutPlan(count=2, mirrored=True)
MARKS = (
    Mark("slit", "opening", edge="side", start=250, end=300, said="slit"),
    Mark("tie", "point", edge="side", start=100, end=100, said="tie"),
    Mark("dot", "point", point=Point(200, -60), said="dot"),
    Mark("level", "line", path=Path.line(Point(0, -200), Point(200, -200)), said="waistline"),
    Mark("gap", "opening", edge="hem", start=40, end=90, said="gap"),
    Mark("twin", "opening", edge="side", start=50, end=80, said="twin"),
)


def piece(name: str, cut: CutPlan) -> Piece:
    """Neck along the top from the centre, shoulder, side down from 0 to -400, hem back to the centre."""
    corners = [(0.0, -20.0), (80.0, 30.0), (200.0, 0.0), (200.0, -400.0), (0.0, -400.0)]
    names = ("neck", "shoulder", "side", "hem", "centre")
    points = [Point(*each) for each in corners]
    edges = tuple(
        Edge(edge, Path.line(a, b), 0.0 if edge == cut.fold else 15.0)
        for edge, a, b in zip(names, points, points[1:] + points[:1], strict=True)
    )
    notches = (Notch("side", 150, name="balance"), Notch("side", 350), Notch("shoulder", 40))
    return Piece(name, name.capitalize(), edges, cut=cut, marks=MARKS, notches=notches)


FRONT, BACK, WRAP = piece("front", FOLD), piece("back", FOLD), piece("wrap", PAIR)
front, back, wrap = (PieceHandle(each) for each in (FRONT, BACK, WRAP))


class _Table:
    pieces = (FRONT, BACK, WRAP)
    strips = ()

    def piece(self, name: str) -> Piece:
        return next(each for each in self.pieces if each.name == name)

    def strip(self, name: str) -> None:
        raise KeyError(name)


TABLE = _Table()
NECK = (80.0**2 + 50.0**2) ** 0.5

PARTS = {
    "after a mark": (front.side.after(front.tie), 100, None, "side seam from the tie to the hem"),
    "before a mark": (front.side.before(front.tie), 0, 100, "side seam from the shoulder seam to the tie"),
    "after a slit: its far end": (
        front.side.after(front.slit),
        300,
        None,
        "from the lower mark of the slit to the hem",
    ),
    "up to a slit: its near end": (
        front.side.before(front.slit),
        0,
        250,
        "from the shoulder seam to the upper mark of the slit",
    ),
    "between the marks": (
        front.side.between(front.twin, front.slit),
        80,
        250,
        "from the lower mark of the twin to the upper mark of the slit",
    ),
    "named the other way": (
        front.side.between(front.slit, front.twin),
        80,
        250,
        "from the upper mark of the slit to the lower mark of the twin",
    ),
    "one end of a mark": (
        front.side.between(front.twin.start, front.slit.end),
        50,
        300,
        "from the upper mark of the twin to the lower mark of the slit",
    ),
    "a mark drawn at the edge": (front.side.between(front.dot, front.tie), 60, 100, "from the dot to the tie"),
    "where a line meets it": (front.side.before(front.level), 0, 200, "from the shoulder seam to the waistline"),
    "a named notch": (
        front.side.after(front.balance),
        150,
        None,
        "from notch 1 counted from the shoulder seam to the hem",
    ),
    "a notch by its number": (
        front.side.after(front.side.notch(2)),
        350,
        None,
        "from notch 2 counted from the shoulder seam to the hem",
    ),
    "a neighbouring edge": (front.side.between(front.hem, front.tie), 100, None, "from the hem to the tie"),
    "lengths": (front.side.between(2 * cm, 17 * cm), 20, 170, "from 2 cm (3/4 in) to 17 cm (6 11/16 in) below the"),
    "a length and a mark": (
        front.side.between(2 * cm, front.tie),
        20,
        100,
        "from 2 cm (3/4 in) below the shoulder seam to the tie",
    ),
    "a level edge": (
        front.hem.between(2 * cm, 5 * cm),
        20,
        50,
        "from 2 cm (3/4 in) to 5 cm (2 in), measured from the side seam",
    ),
    "a mark on a level edge": (
        front.hem.after(front.gap),
        90,
        None,
        "from the mark of the gap towards the centre line to the centre line",
    ),
    "a part of a part": (front.side.after(front.tie).before(front.slit), 100, 250, "from the tie to the upper mark of"),
}


@pytest.mark.parametrize("name", PARTS)
def test_a_part_lies_between_its_landmarks_and_is_called_by_them(name: str) -> None:
    part, low, high, said = PARTS[name]
    assert (part.start, part.end) == (pytest.approx(low), high if high is None else pytest.approx(high))
    assert said in edges_said(TABLE, (part,))
    whole = PieceHandle(FRONT).side.length if part.edges == ("side",) else 200.0
    assert isinstance(part.length, Length)
    assert float(part.length) == pytest.approx((float(whole) if high is None else high) - low)


def test_a_part_is_said_in_every_language() -> None:
    part = front.side.before(front.slit)
    said = {}
    for code in ("en", "de", "es", "fr"):
        with speaking(code):
            said[code] = places_said(TABLE, (part,))
    assert said == {
        "en": "the side seam of the front from the shoulder seam to the upper mark of the slit",
        "de": "Seitennaht von Front von der Schulternaht bis zur oberen Markierung von slit",
        "es": "costura lateral de front desde la costura del hombro hasta la marca superior de slit",
        "fr": "couture de côté de front de la couture d’épaule jusqu’au repère supérieur de slit",
    }


def test_whole_when_both_ends_are_reached() -> None:
    assert front.side.between(front.hem, front.shoulder) == front.side
    assert front.side.after(front.shoulder) == front.side


REFUSED = {
    "a mark on another edge": (lambda: front.hem.after(front.tie), ("lies on the side", "front hem")),
    "a mark of another piece": (lambda: back.side.after(front.tie), ("front tie", "back side")),
    "an edge that does not meet it": (lambda: front.side.after(front.neck), ("does not meet", "shoulder, hem")),
    "the order reversed": (lambda: front.side.between(front.tie, 2 * cm), ("10 cm", "2 cm", "measured from")),
    "the part empty": (lambda: front.side.between(front.tie, front.tie), ("10 cm", "no part lies between")),
    "nothing after it": (lambda: front.side.after(front.hem), ("40 cm", "no part lies between")),
    "lengths reversed": (lambda: front.side.between(5 * cm, 2 * cm), ("5 cm", "2 cm")),
    "a bare number": (lambda: front.side.after(15), ("has no unit",)),
    "a notch that is not there": (lambda: front.side.notch(3), ("no notch 3", "it has 2")),
    "half a pair": (lambda: wrap.left.hem + wrap.hem, ("means both halves", "wrap.left.hem")),
    "an edge twice": (lambda: front.left.neck + back.left.neck + front.left.neck, ("twice",)),
}


@pytest.mark.parametrize("name", REFUSED)
def test_what_cannot_be_a_part_is_refused_with_its_values(name: str) -> None:
    write, words = REFUSED[name]
    with pytest.raises(KitError) as caught:
        write()
    for word in words:
        assert word in str(caught.value)


def test_a_line_over_the_fold() -> None:
    line = front.left.neck + front.right.neck
    assert isinstance(line, Chain)
    assert float(line.length) == pytest.approx(2 * NECK)
    part = line.between(5 * cm, 12 * cm)  # the left half is walked from the shoulder to the fold, against its drafting
    left, right = part.runs
    assert (left.start, left.end) == (pytest.approx(0), pytest.approx(NECK - 50))
    assert (right.start, right.end) == (pytest.approx(0), pytest.approx(120 - NECK))
    said = places_said(TABLE, part.one_by_one())
    assert said == (
        "the neck edge of the front from 5 cm (2 in) to 12 cm (4 3/4 in), measured from the left shoulder seam"
    )
    whole = (front.left.neck + front.right.neck).between(front.left.shoulder, front.right.shoulder)
    assert places_said(TABLE, whole.one_by_one()).startswith(
        "the neck edge of the front from the left shoulder seam to"
    )


def test_a_line_over_the_fold_is_drawn_on_both_halves(sewn) -> None:
    found = sewn((FRONT,), lambda make, front: make.edge_finish(front.left.hem + front.right.hem))
    assert found.codes == []
    (scene,) = found.last.scenes(found.pattern)
    rows = [item for item in scene_drawing(scene, found.pattern).items if getattr(item, "role", "") == "row"]
    across = [q.x for item in rows for curve in item.curves for q in curve.points(1.0)]
    assert min(across) < -190 < 190 < max(across)


def test_a_line_over_a_seam_once_it_is_sewn(sewn) -> None:
    def neck(make, front, back) -> None:
        make.staystitch(front.neck + back.neck)

    def shoulders(make, front, back) -> None:
        make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)

    assert sewn((FRONT, BACK), neck).codes == ["not_joined_yet"]
    found = sewn((FRONT, BACK), shoulders, neck)
    assert found.codes == []
    assert any("the neck edge of the front and back" in text or "neck edge" in text for text in found.said)
    row = sewn((FRONT, BACK), lambda make, front, back: make.staystitch(front.neck, back.neck))
    assert row.codes == []  # named one by one they are two rows


def test_two_halves_of_a_pair_are_no_line_before_they_are_joined(sewn) -> None:
    def write(make, wrap) -> None:
        make.staystitch(wrap.left.neck + wrap.right.neck)

    def centre(make, wrap) -> None:
        make.plain_seam(wrap.left.centre, wrap.right.centre, allowance=1.5 * cm)

    assert sewn((WRAP,), write).codes == ["not_joined_yet"]
    assert sewn((WRAP,), centre, write).codes == []


def test_a_whole_back_lies_between_two_halves() -> None:
    line = wrap.left.neck + back.neck + wrap.right.neck
    assert [run.said for run in line.runs] == ["wrap left neck", "back left neck", "back right neck", "wrap right neck"]
    assert float(line.length) == pytest.approx(4 * NECK)


def test_a_hem_on_a_part_turns_that_part_alone(sewn) -> None:
    """By hand: below the tie the left side is turned, so that the cloth ends on the stitch line, 200 from the centre;
    above it and on the right side the allowance of 15 still stands out."""

    def hem(make, front) -> None:
        make.hem(front.left.side.after(front.tie), first=6 * mm, second=9 * mm)

    found = sewn((FRONT,), hem)
    assert found.codes == []
    assert "side seam of the left front from the tie to the hem" in " ".join(found.said)
    (scene,) = found.last.scenes(found.pattern)[-1:]
    (placed,) = place_all(scene, found.pattern)
    cloth = Polygon([(q.x, q.y) for curve in placed.outline for q in list(curve.points(0.2))[:-1]])
    flap = [q for part in placed.flaps for curve in part for q in curve.points(1.0)]
    at = {y: LineString([(-500, y), (500, y)]).intersection(cloth).bounds for y in (-50, -250)}
    assert sorted(map(abs, at[-50][::2])) == pytest.approx([215, 215], abs=0.1)
    assert sorted(map(abs, at[-250][::2])) == pytest.approx([200, 215], abs=0.1)
    assert min(abs(q.x) for q in flap) == pytest.approx(200 - 9, abs=0.1)
    assert max(q.y for q in flap) == pytest.approx(-100, abs=0.1)


def test_seams_of_parts_are_compared_on_the_parts(sewn) -> None:
    longer = replace(BACK, marks=tuple(replace(m, start=120.0, end=120.0) if m.name == "tie" else m for m in MARKS))

    def side(make, front, back) -> None:
        make.plain_seam(front.side.before(front.tie), back.side.before(back.tie), allowance=1.5 * cm)

    even = sewn((FRONT, BACK), side)
    assert even.codes == []
    assert [found.code for found in seam_lengths(even.pattern)] == []
    uneven = sewn((FRONT, longer), side)
    (found,) = [each for each in seam_lengths(uneven.pattern)]
    assert found.amount == pytest.approx(20.0)


def test_a_part_follows_the_draft() -> None:
    """The landmarks are read when the step is worked: a slider moves the slit, and the seam above it follows."""
    lesson = Lesson("Slit", start=blank_paper, units="cm")
    lesson.length("slit", 10 * cm, least=5 * cm, most=20 * cm, why="how high the slit is")

    @lesson.step("Draw", makes="panel")
    def draw(panel, slit):
        """Draw it."""
        corner = panel.place(0, 0)
        side = corner.ruled("up", 40 * cm)
        top = side.end.ruled("out", 20 * cm)
        far = top.end.ruled("down", 40 * cm)
        panel.draw(side=side, top=top, far=far, hem=far.end.to(corner))
        panel.mark_point("stop", panel.side.start.up(slit), said="top of the slit")

    @lesson.sew("Stitch above the slit")
    def stitch(make, panel):
        """Above the slit."""
        make.staystitch(panel.side.after(panel.stop))

    def part() -> tuple[float | None, float]:
        pattern = lesson.work()
        (run,) = pattern.sewing[0].operations[0].along
        return run.start, path_of(pattern, run).length

    assert part() == (pytest.approx(100), pytest.approx(300))
    lesson.change(slit=15 * cm)
    assert part() == (pytest.approx(150), pytest.approx(250))
    assert sew(lesson.work())


def test_a_hem_that_ends_within_its_edge_is_clipped_there(sewn) -> None:
    def hem(make, front, back) -> None:
        make.hem(front.side.between(front.tie, front.slit), back.side, first=6 * mm, second=9 * mm)

    def one(make, front, back) -> None:
        make.hem(front.side.after(front.tie), first=6 * mm, second=9 * mm)

    clip = "Clip the allowance to just short of the stitch line at "
    two = "the tie and the upper mark of the slit, so that this part can be turned by itself."
    assert sewn((FRONT, BACK), hem).said[0] == clip + two
    assert sewn((FRONT, BACK), one).said[0] == clip + "the tie, so that this part can be turned by itself."
    whole = sewn((FRONT, BACK), lambda make, front, back: make.hem(front.side, first=6 * mm, second=9 * mm))
    assert not any(text.startswith("Clip") for text in whole.said)


def test_a_hem_that_is_clipped_at_its_ends_minds_the_scissors(sewn) -> None:
    for edge, wanted in (("part", True), ("whole", False)):
        found = sewn(
            (FRONT, BACK),
            lambda make, front, back, edge=edge: make.hem(
                front.side.after(front.tie) if edge == "part" else front.side, first=6 * mm, second=9 * mm
            ),
        )
        assert ("scissors" in found.last.cautioned(found.pattern)) is wanted
        assert ("scissors" in " ".join(tools(found.pattern))) is wanted


LOOP = Strip("loop", "Loop", 80, 40, 2, finished_length=60, finished_width=10)


@pytest.mark.parametrize(
    ("at", "lies"),
    [(None, 250), ("start", 250), ("end", 300), (3 * cm, 280), (0 * cm, 250)],
)
def test_a_place_on_a_mark_that_spans_a_stretch_is_obeyed(sewn, at, lies) -> None:
    more = {} if at is None else {"at": at}
    found = sewn(
        (FRONT, BACK), lambda make, front, back, loop: make.belt_loop(loop, front.slit, **more), strips=(LOOP,)
    )
    assert (found.last.seam.edges, found.last.at) == (("side",), pytest.approx(lies))


def test_a_place_beside_a_mark_that_it_does_not_have_is_refused(sewn) -> None:
    cases = (
        ("tie", {"at": 5 * cm}, "5 cm (2 in) stands beside the mark “tie”, which is one place by itself."),
        ("slit", {"at": 60 * cm}, "60 cm (23 5/8 in) lies beyond the mark “slit”, which is 5 cm (2 in) long."),
        ("side", {}, "it is not said where along the edge."),
    )
    for name, more, says in cases:
        for verb in ("belt_loop", "attach_strip") if more else ("belt_loop",):
            with pytest.raises(KitError) as refused:
                sewn(
                    (FRONT, BACK),
                    lambda make, front, back, loop, n=name, m=more, v=verb: getattr(make, v)(
                        loop, getattr(front, n), **m
                    ),
                    strips=(LOOP,),
                )
            assert says in str(refused.value)


def test_places_along_an_edge_are_told_from_the_edge_beside_it(sewn) -> None:
    """A belt loop at a mark: 10 cm below the shoulder, whichever way the edge was drafted."""
    found = sewn(
        (FRONT, BACK),
        lambda make, front, back, loop: make.belt_loop(loop, front.left.side, at=front.tie),
        strips=(Strip("loop", "Loop", 80, 40, 2, finished_length=60, finished_width=10),),
    )
    assert "its top end 10 cm (3 15/16 in) below the shoulder seam." in " ".join(found.said)


def test_what_is_left_of_an_edge_beside_a_shut_seam_can_be_finished(sewn) -> None:
    def seam(make, front, back) -> None:
        make.french_seam(front.side.before(front.slit), back.side.before(back.slit), first=9 * mm, second=6 * mm)

    def rest(make, front, back) -> None:
        make.edge_finish(front.side.between(front.slit.start, front.hem))

    def all_of_it(make, front, back) -> None:
        make.edge_finish(front.side)

    assert sewn((FRONT, BACK), seam, rest).codes == []
    assert sewn((FRONT, BACK), seam, all_of_it).codes == ["finished_late"]


POCKET = Piece(
    "pocket",
    "Pocket",
    tuple(
        Edge(name, Path.line(Point(*a), Point(*b)), allowance)
        for name, a, b, allowance in (
            ("top", (0, 0), (60, 0), 30),
            ("side", (60, 0), (60, -140), 10),
            ("bottom", (60, -140), (0, -140), 10),
            ("centre", (0, -140), (0, 0), 0),
        )
    ),
    cut=FOLD,
)
AT_FOLD = Path.line(Point(60, -150), Point(60, -290)).joined(Path.line(Point(60, -290), Point(0, -290)))
ASIDE = Path.line(Point(40, -150), Point(40, -290)).joined(Path.line(Point(40, -290), Point(160, -290)))
ASIDE = ASIDE.joined(Path.line(Point(160, -290), Point(160, -150)))


@pytest.mark.parametrize(
    ("line", "rows"),
    [(AT_FOLD, 2), (ASIDE, 1), (Path.line(Point(60, -150), Point(60, -290)), 0)],
    ids=["across the fold", "beside it", "half of it is missing"],
)
def test_a_pocket_cut_on_the_fold_is_laid_whole(sewn, line: Path, rows: int) -> None:
    """By hand: it is 120 wide and 140 deep, so that 140 + 120 + 140 are stitched, or half of that on either side."""
    ground = replace(FRONT, marks=(Mark("place", "placement", path=line, said="pocket place"),))

    def write(make, front, pocket) -> None:
        make.pocket_hem(pocket.top, second=24 * mm)
        make.fold_pocket(pocket.side, pocket.bottom, allowance=1 * cm)
        make.patch_pocket(pocket.side, pocket.bottom, at=front.left.place, allowance=1 * cm)

    found = sewn((ground, POCKET), write)
    assert found.codes == ([] if rows else ["pocket_place_size"])
    own, laid = (scene_drawing(scene, found.pattern).items for scene in found.last.scenes(found.pattern))
    stitched = [q.x for item in own if getattr(item, "role", "") == "row" for c in item.curves for q in c.points(1.0)]
    assert min(stitched) == pytest.approx(-max(stitched))
    if rows:
        assert sum(getattr(item, "role", "") == "row" for item in laid) == rows


def test_only_notches_on_the_part_are_matched(sewn) -> None:
    def above(make, front, back) -> None:
        make.plain_seam(front.side.before(front.tie), back.side.before(back.tie), allowance=1.5 * cm)

    def below(make, front, back) -> None:
        make.plain_seam(front.side.after(front.slit), back.side.after(back.slit), allowance=1.5 * cm)

    assert "Match the notches." not in sewn((FRONT, BACK), above).said  # the notches lie 15 and 35 cm down
    assert "Match the notches." in sewn((FRONT, BACK), below).said
