"""The pseudo-language of the tests itself."""

from __future__ import annotations

from kit.language import language, languages, say
from kit.units import both, percent
from tests.pseudo import escaped, pseudo, wrapped


def test_inside_the_block_everything_said_is_marked_and_afterwards_nothing() -> None:
    plain = say("tool.pins")
    with pseudo():
        assert language() == "qps" and "qps" in languages()
        assert say("tool.pins") == f"«{plain}»"
        assert say("word.left") == "left"
        assert both(1234.56) == "123.5 cm (48 5/8 in)" and percent(0.05) == "5%"
    assert language() == "en" and "qps" not in languages()
    assert say("tool.pins") == plain


def test_a_message_with_a_choice_in_it_is_marked_as_a_whole() -> None:
    source = "paper-pages =\n    { $count ->\n        [one] { $count } page\n       *[other] { $count } pages\n    }\n"
    assert wrapped(source).replace("\n", "").count("«") == 1
    assert wrapped("unit-mm = { $amount } mm\n") == "unit-mm = { $amount } mm\n"


def test_words_outside_the_marks_escaped() -> None:
    assert escaped("«Sew the { side } seam.»") == []
    assert escaped("Front, «step 'Sides'» 12 of «a «nested» one» stray") == ["Front,", "of", "stray"]
    assert escaped("Wrap top, «step»", ["Wrap top"]) == []
    assert escaped("Wrapping «step»", ["Wrap"]) == ["Wrapping"]
    assert escaped("1 2/3 (4)") == []
