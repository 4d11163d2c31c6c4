"""Reading the step and the name at the cursor from a cell that is not Python yet."""

from __future__ import annotations

import pytest

from kit.live.half_written import Cursor, OpenCall, at_cursor

STEP = '''@lesson.step("Raise it", makes=("pocket", "flap"),
             after="wrap")
def overarm(front, shoulder_lift):
    """From the tip square up
{shoulder_lift} (at the margin)."""
'''


def read(code: str) -> Cursor | None:
    """What stands before the `|` in `code`."""
    return at_cursor(code.replace("|", ""), code.index("|"))


def place(body: str) -> tuple[str, str]:
    found = read(STEP + body)
    assert found is not None, body
    return found.owner, found.word


def test_the_step_is_found_by_its_decorator() -> None:
    found = read(STEP + "    front.|")
    assert found is not None
    step = found.step
    assert (step.lesson, step.way, step.name) == ("lesson", "step", "overarm")
    assert step.uses == ("front", "shoulder_lift")
    assert step.makes == ("pocket", "flap")
    assert step.after == "wrap"


@pytest.mark.parametrize(
    ("body", "owner", "word"),
    [
        ("    front.|", "front", ""),
        ("    front.dr|aw(x)", "front", "dr"),
        ("    front.draw(a=front.neck.thr|", "front.neck", "thr"),
        ("    front.tip.up(1 * cm).|", "front.tip.up(1*cm)", ""),
        ("    x = (front.under + front.side).|", "(front.under+front.side)", ""),
        ("    x = (front.a if wide else front.b).|", "(front.a if wide else front.b)", ""),
        ("    return front.|", "front", ""),
        ("    if front.|", "front", ""),
        ("    for one in [front.a, back.|", "back", ""),
        ("    a = 2 * front.|", "front", ""),
        ("    front.a; back.|", "back", ""),
        ("    here = (front.neck\n        .|", "front.neck", ""),
        ("    front.draw(in|", "", "in"),
        ("    sh|", "", "sh"),
    ],
)
def test_what_the_name_follows(body: str, owner: str, word: str) -> None:
    assert place(body) == (owner, word)


@pytest.mark.parametrize(
    "body",
    [
        "    'front.|",
        '    """front.|',
        "    # front.|",
        "    3.|",
        "    import fr|",
        "    'front'.|",
        "front.|",
        "lesson.|",
    ],
)
def test_where_no_name_of_the_step_can_stand(body: str) -> None:
    """Strings, comments, numbers and imports; a line at the margin has ended the step."""
    assert read(STEP + body) is None


@pytest.mark.parametrize(
    ("body", "call"),
    [
        ("    front.draw(|", OpenCall("front.draw")),
        ("    make.hem(front.hem, first=1 * cm, |", OpenCall("make.hem", ("first",), 1)),
        ("    make.hem(front.hem, first=|", OpenCall("make.hem", ("first",), 1, "first")),
        ("    make.seam(front.a, [back.a, |", OpenCall("make.seam", (), 1)),
        ("    make.seam(front.a.between(0, 1), (|", OpenCall("make.seam", (), 1)),
        ("    front.draw(a=front.neck.through(|", OpenCall("front.neck.through")),
        ("    front.draw(a=1)\n    |", None),
    ],
)
def test_the_call_the_cursor_stands_in(body: str, call: OpenCall | None) -> None:
    found = read(STEP + body)
    assert found is not None
    assert found.call == call


def test_a_bracket_left_open_above_does_not_swallow_the_next_line() -> None:
    found = read(STEP + "    front.draw(a=front.neck.through(raised,\n    front.|")
    assert found is not None
    assert (found.owner, found.call) == ("front", None)
    inside = read(STEP + "    front.draw(\n        a=front.neck,\n        b=front.|")
    assert inside is not None
    assert inside.call == OpenCall("front.draw", ("a", "b"), 0, "b")


def test_finished_statements_are_handed_on_whole() -> None:
    body = "    tip = front.tip.up(1 * cm)  # a comment\n    front.mark(\n        tip=tip,\n    )\n\n    front.|"
    found = read(STEP + body)
    assert found is not None
    assert [" ".join(text.split()) for text in found.statements[1:]] == [
        "tip = front.tip.up(1 * cm)",
        "front.mark( tip=tip, )",
    ]


@pytest.mark.parametrize(
    ("code", "uses", "word"),
    [
        ("@lesson.sew('x')\ndef hem(fr|", (), "fr"),
        ("@lesson.sew('x')\ndef hem(make, fr|ont, back):\n    pass", ("make", "back"), "fr"),
        ("@lesson.sew('x')\ndef hem(\n    make,\n    |", ("make",), ""),
        ("@jacket.sew('x')\n@other\nasync def hem(|", (), ""),
    ],
)
def test_the_arguments_of_the_step(code: str, uses: tuple[str, ...], word: str) -> None:
    found = read(code)
    assert found is not None
    assert (found.zone, found.step.uses, found.word) == ("arguments", uses, word)


def test_other_functions_are_left_alone() -> None:
    assert read("def hem(fr|") is None
    assert read("@other.thing('x')\ndef hem(fr|") is None
    assert read("@lesson.sew('x'\ndef hem(fr|") is None
    assert read("@lesson.sew('x')\ndef hem(front=fr|") is None
    assert read("lesson.|") is None
    assert read("|") is None


def test_a_function_inside_a_step_is_still_in_the_step() -> None:
    found = read(STEP + "    def square(at):\n        return front.|")
    assert found is not None
    assert (found.step.name, found.owner) == ("overarm", "front")
    two = read(STEP + "    pass\n\n@lesson.sew('b')\ndef second(make):\n    make.|")
    assert two is not None
    assert (two.step.name, two.step.way) == ("second", "sew")


def test_every_place_of_every_kind_of_text_is_read_without_stopping() -> None:
    """Nothing written, however torn, makes it stop."""
    code = (
        STEP
        + "    a = f'{x!r:>{w}}' if (b := [c for c in d]) else lambda *e, **g: {1: '''\n'''}\n\tfront.\\\n x)]}\"é\n"
    )
    for at in range(len(code) + 1):
        at_cursor(code, at)
        at_cursor(code[at:], len(code) - at)
