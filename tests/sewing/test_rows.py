"""Operations of several rows: begun, left and finished. What they are in the end is what they are sewn at once."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest

from kit import Lesson, blank_paper
from kit.body.body import Body
from kit.errors import KitError
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import Strip
from kit.proof import prove
from kit.proof.unfinished import unfinished
from kit.reference import sampler
from kit.reference.verb_help import verbs_of
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.operation import Operation
from kit.sewing.operations import KINDS
from kit.sewing.portion import begun, until
from kit.sewing.state import State
from kit.units import cm, inch, mm

STAGED = sorted(
    name
    for name, verb in verbs_of("make").items()
    if any(each.name == "rows" and str(each.annotation).startswith("Literal") for each in verb.arguments)
)


def example(name: str) -> tuple[Pattern, list[Operation], Operation]:
    """(pattern, what is sewn before, operation) of the example in the docstring of a verb."""
    table = sampler
    make = Make(table.PIECES, table.STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in table.PIECES}
    names |= {strip.name: StripHandle(strip) for strip in table.STRIPS}
    names |= {"make": make, "cm": cm, "mm": mm, "inch": inch}
    exec("\n".join(table.BEFORE.get(name, ())), names)
    exec(verbs_of("make")[name].example, names)
    record = SewRecord("s", "Sampler", "", "", make.operations)
    pattern = Pattern(LessonInfo("Sampler", "sampler"), Body("W4", ()), (), table.PIECES, table.STRIPS, (), (record,))
    *before, made = make.operations
    return pattern, before, made


def splits(made: Operation) -> list[list[Operation]]:
    """Every way to sew it in more than one part."""
    names = [stage.name for stage in made.staged()]
    found = []
    for count in range(1, len(names)):
        for cuts in combinations(range(1, len(names)), count):
            ends = [*cuts, len(names)]
            starts = [0, *cuts]
            found.append([until(made, names[end - 1], start) for start, end in zip(starts, ends, strict=True)])
    return found


def after(state: State, pattern: Pattern, row: list[Operation]) -> State:
    for operation in row:
        state = state.after(operation.outcome(pattern), pattern, "Sampler")
    return state


@pytest.mark.parametrize("name", STAGED)
def test_every_split_comes_to_the_same_as_the_whole(name: str) -> None:
    pattern, before, made = example(name)
    start = after(State(), pattern, before)
    whole = after(start, pattern, [made])
    assert splits(made)
    for row in splits(made):
        state = start
        for part in row:
            found = [each.code for each in part.refusals(state, pattern)]
            assert found == [], (part, found)
            state = after(state, pattern, [part])
        assert set(state.closed) == set(whole.closed)
        assert (state.seams, state.facts, state.joins) == (whole.seams, whole.facts, whole.joins)
        assert (state.made, state.attached, state.fused) == (whole.made, whole.attached, whole.fused)
        assert (state.handled, state.laid, state.inside_out) == (whole.handled, whole.laid, whole.inside_out)
        assert all(part.takes(pattern) == made.takes(pattern) for part in row)
        assert sum(part.minutes(pattern) for part in row) == pytest.approx(made.minutes(pattern))
        assert sum(len(part.notion_amounts(pattern)) for part in row) == len(made.notion_amounts(pattern))
        assert [part.begins for part in row] == [True] + [False] * (len(row) - 1)
        assert begun(row) == [] and begun(row[:-1]) == [row[-2]]


@pytest.mark.parametrize("name", STAGED)
def test_the_parts_say_and_show_what_the_whole_does(name: str) -> None:
    """Apart from naming the seam again, and from the closing word that is true of each part (left and right alike)."""
    pattern, _, made = example(name)
    last = made.told(made.lastly, pattern)
    for row in splits(made):
        said: list[Any] = []
        for part in row:
            mine = list(part.sentences(pattern))
            if not part.begins:
                again = mine.pop(0)
                named = {"rows.go_on": "place", "rows.go_on_strip": "strip"}[again.key]
                assert again.values[named][0]
            said += mine[: len(mine) - len(last)]
            assert tuple(mine[len(mine) - len(last) :]) == last
        assert tuple(said) + last == made.sentences(pattern)
        shown = [scene for part in row for scene in part.scenes(pattern)]
        assert [scene for scene in shown if scene in made.scenes(pattern)] == list(made.scenes(pattern))
        assert all(part.scenes(pattern) for part in row)


def test_the_families_with_stages_are_there() -> None:
    """So that the tests above are not empty."""
    assert {"french_seam", "mock_french_seam", "flat_felled_seam", "lapped_seam", "hem", "narrow_hem"} <= set(STAGED)
    assert all(len({stage.name for stage in kind.stages}) == len(kind.stages) for kind in KINDS.values())


# ---- on the table -----------------------------------------------------------------------------------------


@pytest.fixture
def pair(wrap):
    def panel(name):
        return wrap.polygon(
            name, [(0, 0), (200, 0), (200, 300), (0, 300)], {"hem": 20, "side": 10, "top": 10, "centre": 15}
        )

    return panel("front"), panel("back")


def first(make, front, back):
    make.french_seam(front.side, back.side, first=6 * mm, second=4 * mm, rows="first")


def rest(make, front, back):
    make.finish(front.side, back.side)


def findings(found) -> set[str]:
    return {each.code for each in unfinished(found.pattern, found.state)}


def test_after_the_first_row_the_edges_hang_together_and_are_not_shut_in(sewn, pair):
    found = sewn(pair, first)
    assert found.codes == []
    assert found.state.joined(("front", "right"), ("back", "right"))
    assert not any(fact[0] == "shut_in" for fact in found.state.facts)
    assert sewn(pair, first, first).codes.count("closed_twice") == 2
    leave = lambda make, front, back: make.edge_finish(front.side, leave=True)  # noqa: E731
    assert sewn(pair, first, leave).codes == ["closed_twice"]
    open_now = lambda make, front, back: make.press(front.side)  # noqa: E731
    assert sewn(pair, first, open_now, rest).codes == []
    assert sewn(pair, first, rest, open_now).codes == ["pressed_open_shut_in"]


def test_what_is_begun_and_never_finished_is_an_error_that_says_what_to_write(sewn, pair):
    found = sewn(pair, first)
    (finding,) = unfinished(found.pattern, found.state)
    assert (finding.code, finding.level) == ("never_finished", "error")
    assert str(finding.can).startswith("Write make.finish(front.side, back.side) in this step")
    assert (finding.piece, finding.edge, finding.step) == ("front", "side", "s0")
    assert findings(sewn(pair, first, rest)) == set()


def test_a_row_across_a_half_sewn_seam_is_refused_and_so_is_topstitching(sewn, pair):
    hem = lambda make, front, back: make.hem([front.hem, back.hem], first=2 * cm)  # noqa: E731
    top = lambda make, front, back: make.topstitch(front.side)  # noqa: E731
    assert set(sewn(pair, first, hem, rest).codes) == {"half_sewn"}
    assert sewn(pair, first, rest, hem).codes == []
    assert sewn(pair, first, top, rest).codes == ["topstitched_unpressed"]
    assert sewn(pair, first, rest, top).codes == []


def test_a_hem_may_be_folded_before_its_edges_are_joined_and_is_stitched_after(sewn, pair):
    fold = lambda make, front, back: make.hem([front.hem, back.hem], first=1 * cm, second=1 * cm, rows="fold")  # noqa: E731
    stitch = lambda make, front, back: make.finish([front.hem, back.hem])  # noqa: E731
    whole = lambda make, front, back: make.french_seam(front.side, back.side, first=6 * mm, second=4 * mm)  # noqa: E731
    assert sewn(pair, fold, whole, stitch).codes == []
    assert "not_joined_yet" in sewn(pair, fold, stitch, whole).codes
    begun_only = sewn(pair, whole, fold)
    assert begun_only.state.is_raw(begun_only.pattern, begun_only.last.runs()[0])
    assert findings(begun_only) == {"never_finished"}


def test_two_may_be_begun_at_once_and_each_is_found_by_its_value_or_its_edges(sewn, wrap):
    front, back = wrap.FRONT, wrap.BACK

    def two(make, front, back, **_):
        left = make.french_seam(front.left.side, back.left.side, first=6 * mm, second=4 * mm, rows="first")
        make.french_seam(front.right.side, back.right.side, first=6 * mm, second=4 * mm, rows="first")
        done = make.finish(left)
        assert done.named() == (front.left.side, back.left.side)

    right = lambda make, front, back, **_: make.finish(front.side)  # noqa: E731
    found = sewn((front, back), two, right)
    assert found.last.named() == (found.last.of.a[0], found.last.of.b[0])
    assert found.last.of.a[0].side == "right"
    assert findings(found) == set()
    assert findings(sewn((front, back), two)) == {"never_finished"}


def refused(sewn, pair, *writes) -> str:
    with pytest.raises(KitError) as told:
        sewn(pair, *writes)
    return str(told.value)


def test_slips_are_refused_in_words_a_teacher_understands(sewn, pair):
    word = lambda make, front, back: make.french_seam(  # noqa: E731
        front.side, back.side, first=6 * mm, second=4 * mm, rows="frist"
    )
    text = refused(sewn, pair, word)
    assert "this French seam has no stage 'frist'" in text and "first" in text.split("stage")[1]
    assert "nothing is begun on front side and back side by then" in refused(sewn, pair, rest, first)
    assert "is finished already" in refused(sewn, pair, first, rest, rest)
    whole = lambda make, front, back: make.french_seam(front.side, back.side, first=6 * mm, second=4 * mm)  # noqa: E731
    assert "was sewn whole, so that nothing is left of it" in refused(sewn, pair, whole, rest)
    again = lambda make, front, back: make.finish(front.side, rows="first")  # noqa: E731
    text = refused(sewn, pair, first, again)
    assert 'the stage "first" of this French seam is sewn already' in text and 'What is left is rows="second"' in text
    assert "no edge is named" in refused(sewn, pair, first, lambda make, front, back: make.finish())
    plain = lambda make, front, back: make.plain_seam(front.side, back.side, allowance=1 * cm, rows="first")  # noqa: E731
    assert "plain_seam knows no argument 'rows'" in refused(sewn, pair, plain)
    raw = lambda make, front, back: make.lapped_seam(  # noqa: E731
        front.side, back.side, allowance=1 * cm, turned=False, rows="fold"
    )
    assert "this lapped seam is not sewn in stages" in refused(sewn, pair, raw)

    def both_on_it(make, front, back):
        make.french_seam(front.side, back.side, first=6 * mm, second=4 * mm, rows="first")
        make.hem(front.side + front.top, first=1 * cm, rows="fold")
        make.finish(front.side)

    assert "several operations are begun there" in refused(sewn, pair, both_on_it)


def test_the_word_for_all_stages_is_the_whole(sewn, pair):
    whole = lambda make, front, back: make.french_seam(  # noqa: E731
        front.side, back.side, first=6 * mm, second=4 * mm, rows="second"
    )
    found = sewn(pair, whole)
    assert type(found.last).__name__ == "FrenchSeam" and findings(found) == set()


def test_a_finishing_step_names_the_seam_again(sewn, pair):
    assert sewn(pair, first, rest).said[0] == "Go on with the side seam of the front and back."


def test_a_tie_is_caught_between_the_rows(sewn, pair):
    """It lies on the first row when the second is sewn; once both are, nothing catches it any more."""
    tie = Strip("tie", "Tie", 400, 32, 1, finished_length=400, finished_width=10, fold="in_two")
    make_tie = lambda make, tie, **_: make.turn_strip(tie, allowance=6 * mm)  # noqa: E731
    catch = lambda make, front, tie, **_: make.attach_strip(tie, front.side, at=12 * cm, method="caught")  # noqa: E731
    begin = lambda make, front, back, **_: make.french_seam(  # noqa: E731
        front.side, back.side, first=6 * mm, second=4 * mm, rows="first"
    )
    end = lambda make, front, **_: make.finish(front.side)  # noqa: E731
    strips = (tie,)
    assert sewn(pair, make_tie, begin, catch, end, strips=strips).codes == []
    assert sewn(pair, make_tie, catch, begin, end, strips=strips).codes == []
    assert sewn(pair, make_tie, begin, end, catch, strips=strips).codes == ["edge_closed_already"]


# ---- in a lesson ------------------------------------------------------------------------------------------


def tabard(last: Any) -> Lesson:
    """Two panels, the right side begun in one sewing step; `last` is the step after the try-on."""
    lesson = Lesson("Tabard", start=blank_paper, notions=("sewing thread",))

    @lesson.step("Draw the front", makes="front")
    def front(front):
        a, b = front.place(0 * mm, 0 * mm), front.place(40 * cm, 0 * mm)
        c, d = front.place(40 * cm, 50 * cm), front.place(0 * mm, 50 * cm)
        front.draw(hem=a.to(b), right_side=b.to(c), top=c.to(d), left_side=d.to(a))
        front.leave_open("slit", "right_side", at=15 * cm, size=4 * cm)
        front.allow(hem=2 * cm, left_side=1 * cm, right_side=1 * cm, top=2 * cm)
        front.grain()
        front.cut(1, title="Front")

    @lesson.step("Draw the back", makes="back")
    def back(front, back):
        back.trace(front)
        back.leave_open("slit", "right_side", at=15 * cm, size=4 * cm)
        back.allow(hem=2 * cm, left_side=1 * cm, right_side=1 * cm, top=2 * cm)
        back.grain()
        back.cut(1, title="Back")

    @lesson.sew("Begin")
    def begin(make, front, back):
        make.french_seam(
            front.right_side, back.right_side, first=6 * mm, second=4 * mm, opening=front.slit, rows="first"
        )
        make.hem(front.hem, back.hem, first=1 * cm, second=1 * cm, rows="fold")

    @lesson.sew("Try on")
    def fit(make):
        make.try_on("Is it wide enough?")

    lesson.sew("Finish")(last)
    return lesson


def finish(make, front, back):
    make.finish(front.right_side, back.right_side)
    make.french_seam(front.left_side, back.left_side, first=6 * mm, second=4 * mm)
    make.finish(front.hem, back.hem)
    make.hem(front.top, back.top, first=1 * cm, second=1 * cm)


def test_what_one_step_begins_another_finishes():
    pattern = tabard(finish).work()
    assert [str(found) for found in prove(pattern) if found.level != "note"] == []
    begin, _, end = pattern.sewing
    assert [type(each).__name__ for each in begin.operations] == ["Portion", "Portion"]
    assert [each.of for each in begin.operations] == [end.operations[0].of, end.operations[2].of]
    assert [stage.name for stage in begin.operations[0].left] == ["opening", "second"]
    assert all(part.scenes(pattern) for part in (*begin.operations, *end.operations))


def test_a_lesson_is_told_where_a_row_is_missing():
    def forgets(make, front, back):
        make.french_seam(front.left_side, back.left_side, first=6 * mm, second=4 * mm)
        make.finish(front.hem, back.hem)
        make.hem(front.top, back.top, first=1 * cm, second=1 * cm)

    found = {each.code: each for each in prove(tabard(forgets).work()) if each.level == "error"}
    assert "Write make.finish(front.right_side, back.right_side)" in str(found["never_finished"].can)
    assert found["never_finished"].step == "begin"

    def twice(make, front, back):
        finish(make, front, back)
        make.finish(front.hem)

    with pytest.raises(KitError, match="the hem of front hem and back hem is finished already"):
        tabard(twice).work()


def test_what_is_left_of_one_part_of_an_edge_is_not_left_of_the_other() -> None:
    """A side begun below and above a slit: two seams, and the first alone is finished."""
    table = sampler
    make = Make(table.PIECES, table.STRIPS)
    front, back = (PieceHandle(piece) for piece in table.PIECES if piece.name in ("front", "back"))
    low = front.side.before(8 * cm), back.side.before(8 * cm)
    parts = low, (front.side.after(12 * cm), back.side.after(12 * cm))
    begun_ones = [make.french_seam(*part, first=6 * mm, second=4 * mm, rows="first") for part in parts]
    make.finish(begun_ones[0])
    record = SewRecord("s", "Sampler", "", "", make.operations)
    pattern = Pattern(LessonInfo("T", "t"), Body("W4", ()), (), table.PIECES, table.STRIPS, (), (record,))
    state = after(State(), pattern, list(make.operations))
    (left,) = [fact for fact in state.facts if fact[0] == "left_at"]
    assert "front.both.side[120.0..None]" in left[2]
