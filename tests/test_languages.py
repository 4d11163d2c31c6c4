"""Every language says everything: the same messages, the same places, nothing left in English; numbers, fractions and
plurals as the language writes them.

Sources beside the checks: Unicode CLDR (through Babel's locale data) for decimal marks and plural rules.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path

import pytest
from babel import Locale
from fluent.syntax import FluentParser
from fluent.syntax import ast as fluent
from fluent.syntax.visitor import Visitor

from kit import language as spoken
from kit.errors import KitError
from kit.geometry import Path as Line
from kit.geometry import Point
from kit.language import called, keys, language, languages, naming, say, says, speaking
from kit.piece.piece import Edge
from kit.resources import templates
from kit.units import both, parse, percent, set_fractions, show
from kit.wording.lists import listed, strung
from kit.wording.names import edge_label, edge_said

FOLDER = templates() / "language"
OTHERS = [code for code in languages() if code != "en"]
SAME = re.compile(r"\W*(?:\{[^}]*\}|[A-Z0-9×·%.,:;()\[\]\s/–-]|lessonkit \w+|`[^`]*`)*\W*")


_TUBE = {
    "sewing_trouble": (
        "elastic_wide",
        "elastic_wide_do",
        "cord_no_room",
        "cord_no_room_do",
        "cords_no_room",
        "cords_no_room_do",
        "elastic_long",
        "cord_short",
    ),
    "thread_elastic": ("draw", "fasten"),
    "thread_cord": ("draw", "draw_strip", "tack"),
}
CHOOSING = {"phrase-title": {"small", "given"}, "phrase-two": {"sound"}} | {
    f"fit-{name}_text": {"known"} for name in ("full_bust", "small_bust", "let_out_sides", "take_in_sides")
}
CHOOSING |= {f"{file}-{key}": {"tube"} for file, keys in _TUBE.items() for key in keys}
"""Values the code gives with which a language chooses, or not, as it writes titles, joins words and tells half of a
difference. A casing and a channel have one name in German, Spanish and French ("Tunnel", "jareta", "coulisse")."""


class Places(Visitor):
    def __init__(self) -> None:
        self.names: set[str] = set()
        self.placed: set[str] = set()
        self.text = ""
        self.variants: set[str] = set()
        self.others: set[str] = set()

    def visit_MessageReference(self, node: fluent.MessageReference) -> None:
        self.others.add(node.id.name)

    def visit_TermReference(self, node: fluent.TermReference) -> None:
        self.others.add(f"-{node.id.name}")

    def visit_VariableReference(self, node: fluent.VariableReference) -> None:
        self.names.add(node.id.name)

    def visit_Placeable(self, node: fluent.Placeable) -> None:
        if isinstance(node.expression, fluent.VariableReference):
            self.placed.add(node.expression.id.name)
        self.generic_visit(node)

    def visit_TextElement(self, node: fluent.TextElement) -> None:
        self.text += node.value

    def visit_Variant(self, node: fluent.Variant) -> None:
        if isinstance(node.key, fluent.Identifier):
            self.variants.add(node.key.name)
        self.generic_visit(node)


@cache  # of every file, of which there are more than `lru_cache` keeps of itself
def messages(path: Path) -> dict[str, Places]:
    found = {}
    for entry in FluentParser().parse(path.read_text("utf-8")).body:
        assert not isinstance(entry, fluent.Junk), f"{path.name}: {entry.content.splitlines()[0]}"
        if isinstance(entry, fluent.Message):
            places = Places()
            places.visit(entry)
            assert entry.id.name not in found, f"{path.name}: {entry.id.name} stands twice"
            found[entry.id.name] = places
    return found


def whole(code: str) -> dict[str, Places]:
    found: dict[str, Places] = {}
    for path in sorted((FOLDER / code).glob("*.ftl")):
        more = messages(path)
        assert not set(more) & set(found), path.name
        found |= more
    return found


@pytest.fixture(scope="module")
def english() -> dict[str, Places]:
    return whole("en")


@pytest.fixture
def catalogues(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Callable[..., None]]:
    """Puts catalogues of one file each in the place of the kit's, given by their codes."""

    def put(**texts: str) -> None:
        for code, text in texts.items():
            (tmp_path / "language" / code).mkdir(parents=True)
            (tmp_path / "language" / code / "words.ftl").write_text(text, encoding="utf-8")
        monkeypatch.setattr(spoken, "templates", lambda: tmp_path)
        forget()

    def forget() -> None:
        spoken.languages.cache_clear()
        spoken._catalogue.cache_clear()

    yield put
    monkeypatch.undo()
    forget()


def test_the_languages_asked_for_are_there() -> None:
    assert set(languages()) >= {"en", "es", "de", "fr"} and languages()[0] == "en"


@pytest.mark.parametrize("code", OTHERS)
def test_a_language_says_every_message_and_no_other(code: str, english: dict[str, Places]) -> None:
    said = whole(code)
    assert sorted(set(english) - set(said)) == []
    assert sorted(set(said) - set(english)) == []


@pytest.mark.parametrize("code", OTHERS)
def test_every_place_of_a_message_is_kept(code: str, english: dict[str, Places]) -> None:
    said = whole(code)
    wrong = {key: (english[key].names ^ said[key].names) - CHOOSING.get(key, set()) for key in english if key in said}
    assert {key: names for key, names in wrong.items() if names} == {}


@pytest.mark.parametrize("code", languages())
def test_what_only_chooses_is_never_said(code: str) -> None:
    said = whole(code)
    assert "sound" not in said["phrase-two"].placed
    assert len(said["phrase-title"].placed) == 1


@pytest.mark.parametrize("code", OTHERS)
def test_nothing_is_left_in_english(code: str, english: dict[str, Places]) -> None:
    """A text of three words or more that is the same in both languages was not translated."""
    said = whole(code)
    left = [
        key
        for key, places in english.items()
        if key in said
        and said[key].text.strip() == places.text.strip()
        and len(re.findall(r"[A-Za-z]{3,}", re.sub(r"`[^`]*`|\S*[._/]\S*", "", places.text))) >= 3
    ]
    assert left == []


@pytest.mark.parametrize("code", languages())
def test_plurals_are_those_of_the_language(code: str) -> None:
    """A selector may name only plural forms the language has (CLDR), or words of its own."""
    allowed = {"zero", "one", "two", "few", "many", "other"} - set(Locale.parse(code).plural_form.tags) - {"other"}
    for key, places in whole(code).items():
        assert not places.variants & allowed, f"{key}: {places.variants}"


@pytest.mark.parametrize("code", languages())
def test_no_message_is_glued_or_empty(code: str) -> None:
    for path in sorted((FOLDER / code).glob("*.ftl")):
        text = path.read_text("utf-8")
        assert "\t" not in text and "\u200b" not in text, path.name
        for key, places in messages(path).items():
            assert places.text.strip() or places.names, key


@pytest.mark.parametrize("code", languages())
def test_a_message_read_alone_is_that_of_the_whole_file(code: str) -> None:
    """Each is read when it is first wanted, so none may name another."""
    parts = spoken._Catalogue(code)
    for path in sorted((FOLDER / code).glob("*.ftl")):
        for entry in FluentParser().parse(path.read_text("utf-8")).body:
            if isinstance(entry, fluent.Message):
                places = Places()
                places.visit(entry)
                assert not places.others, f"{path.name}: {entry.id.name} names {places.others}"
                alone = FluentParser().parse(parts._unread.pop(entry.id.name)).body
                (found,) = (each for each in alone if isinstance(each, fluent.Message))
                assert found.equals(entry, ignored_fields=["span", "comment"]), f"{path.name}: {entry.id.name}"
                assert parts.files[entry.id.name] == path
    assert not parts._unread


def test_what_cannot_be_read_is_told_with_its_file(catalogues: Callable[..., None]) -> None:
    catalogues(en="greet = Good evening\nbye = Good { bye\nlast = Good\nnight\n")
    assert say("greet") == "Good evening"
    for _ in range(2):
        with pytest.raises(KitError, match=r"words\.ftl: it cannot be read at 'bye = Good \{ bye'"):
            say("bye")
    with pytest.raises(KitError, match=r"words\.ftl: it cannot be read at 'night'"):
        say("last")


@pytest.mark.parametrize(("code", "mark"), [("en", "."), ("de", ","), ("es", ","), ("fr", ",")])
def test_decimal_marks_and_units(code: str, mark: str) -> None:
    """CLDR: the decimal separator is a comma in German, Spanish and French."""
    if code not in languages():
        pytest.skip(f"no {code} yet")
    with speaking(code):
        assert show(25.0) == f"2{mark}5 cm"
        assert show(4.0) == "4 mm"
        assert show(25.0, "inch").startswith("1 ")
        assert percent(0.5) in ("50%", "50\u00a0%", "50\u202f%", "50 %")
        for text in (show(25.0), show(38.1, "inch"), show(4.0)):
            assert abs(parse(text) - parse(text.replace(",", "."))) < 1e-9  # what is printed can be typed in
        assert float(parse(show(38.1, "inch"))) == pytest.approx(38.1)
        assert "(" in both(25.0)


def test_real_fractions() -> None:
    assert set_fractions("1 3/16 in and 3/4 in") == "1³⁄₁₆ in and ¾ in"
    assert set_fractions("page 3/15, 11/2026, 24/8") == "page 3/15, 11/2026, 24/8"
    assert float(parse("1³⁄₁₆ in")) == pytest.approx(float(parse("1 3/16 in")))


def test_one_language_inside_another() -> None:
    code = OTHERS[0]
    with speaking(code):
        with speaking("en"):
            assert language() == "en"
        assert language() == code
    assert language() == "en"
    with pytest.raises(KitError, match="no language 'xx'"), speaking("xx"):
        pass


def test_what_is_not_there_is_told_with_the_near_key() -> None:
    with pytest.raises(KitError, match=r"unit\.cmm.*unit-"):
        say("unit.cmm", amount="1")
    with pytest.raises(KitError, match=r"unit\.cm"):
        say("unit.cm")
    assert says("unit.cm") and not says("unit.nothing")
    assert "cm" in keys("unit")


def test_a_message_a_language_lacks_is_said_in_english_and_marked(catalogues: Callable[..., None]) -> None:
    catalogues(en="greet = Good evening\nbye = Goodbye\n", nl="greet = Goedenavond\n")
    with speaking("nl"):
        assert say("greet") == "Goedenavond"
        assert say("bye") == "Goodbye [en]"


def test_spanish_and_before_the_sound_of_i() -> None:
    """Real Academia Española, Diccionario panhispánico de dudas, "y2": e before i- and hi-, but not before the
    diphthong of hielo."""
    with speaking("es"):
        assert listed(["frente", "hilo"]) == "frente e hilo"
        assert listed(["sisa", "Índice de piezas"]) == "sisa e Índice de piezas"
        assert listed(["bajo", "«interior»"]) == "bajo e «interior»"
        assert listed(["agua", "hielo"]) == "agua y hielo"
        assert listed(["puño", "escote", "sisa"]) == "puño, escote y sisa"
    assert listed(["front", "inner edge"]) == "front and inner edge"


def test_parts_with_commas_of_their_own() -> None:
    assert (
        strung(["cut 2, mirrored", "interfacing", "interfacing"], "parted")
        == "cut 2, mirrored; interfacing; interfacing"
    )
    assert strung(["a", "b"]) == "a, b" and strung([]) == "" and strung(["a"], "parted") == "a"
    with speaking("fr"):
        assert strung(["a", "b"], "parted") == "a\u202f; b"


def test_an_edge_without_words_is_called_as_the_language_calls_it() -> None:
    line = Line.line(Point(0.0, 0.0), Point(10.0, 0.0))
    hem, odd, own = Edge("hem", line), Edge("odd_flap", line), Edge("hem", line, said="lower hem")
    assert [edge_label(edge) for edge in (hem, odd, own)] == ["hem", "odd flap", "lower hem"]
    assert edge_said(hem) == "hem"
    told = {"de": "Saum", "es": "bajo", "fr": "bas"}
    for code, word in told.items():
        with speaking(code), naming({"odd_flap": "klappe"}):
            assert [edge_label(edge) for edge in (hem, odd, own)] == [word, "klappe", "lower hem"]


def test_a_name_that_was_said_as_it_is_stays_so_in_english() -> None:
    """What the kit's blocks call their edges, in one word or several."""
    for name in ("hem", "waist", "hip", "armhole", "inseam", "centre_front", "top", "near_end"):
        assert say(f"edge.{name}") == name.replace("_", " ")


def test_names_of_a_lesson_in_its_translation() -> None:
    assert called("raised_tip") == "raised tip"
    with naming({"raised_tip": "pointe levée"}):
        assert called("raised_tip") == "pointe levée"
    assert called("raised_tip") == "raised tip"


# Words that a printed pattern in the language avoids (common practice, no source): in Spanish a verb that is coarse in
# most of America, and a jacket for a pocket bag; in French a verb made from a brand of adhesive tape, and the flap of a
# pocket for a felled seam; in German stitching down from outside for understitching.
AVOIDED = {
    "es": (r"\bcog(?:e|i|í|en)", r"\bcoj[ao]", r"\bsaco\b", "puntadas atrás", "márgenes abiertos"),
    "fr": ("scotch", r"\brabat\b", r"parement(?:er|é|ée|és)\b", "ouvrir les marges au fer", r"\w[ \u00a0]…"),
    "de": ("niedersteppen", "niedergesteppt", "Vorschriften am Ort"),
}


@pytest.mark.parametrize("code", AVOIDED)
def test_words_that_a_printed_pattern_avoids(code: str) -> None:
    for path in sorted((FOLDER / code).glob("*.ftl")):
        for line in path.read_text(encoding="utf-8").splitlines():
            for word in AVOIDED[code]:
                if not line.startswith("#"):
                    assert not re.search(word, line, re.IGNORECASE), f"{path.name}: {line}"
