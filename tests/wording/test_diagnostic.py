"""A diagnostic is data; its words are put on when it is read, by one room."""

from __future__ import annotations

import ast
import json
import pickle
from pathlib import Path

import pytest

from kit import diagnostic
from kit.diagnostic import Diagnostic, EdgeName, NamedPlace, Value, list_of, measured, message, per_cent, titled, within
from kit.errors import KitError
from kit.language import speaking
from kit.wording.names import edge_label, edge_said, title_said
from kit.wording.worded import worded

KIT = Path(__file__).resolve().parents[2] / "kit"
SILENT = ("sewing", "proof", "piece", "geometry", "body/check.py")
"""Rooms that say what is, and put nothing into words."""

RAW = Diagnostic(
    "raw_edge",
    "error",
    message("proof.edge_never_sewn", edge=Value(EdgeName("side"), "edge"), length=measured(412.34)),
    message("proof.where_step", piece="Front", step="Sides"),
    amount=412.34,
    can=message("proof.raw_edge_do"),
    step="sides",
    piece="front",
    edge="side",
)


def test_words_are_put_on_when_it_is_read() -> None:
    assert str(RAW).startswith(
        "Front, step 'Sides': the side seam is never sewn, faced or hemmed (41.2 cm (16 1/4 in))."
    )
    with speaking("de"):
        assert RAW.where == "Front, Schritt „Sides“"
        assert RAW.what == "Seitennaht wird nie genäht, belegt oder gesäumt (41,2 cm (16 1/4 Zoll))."
    assert isinstance(RAW.says, diagnostic.Message)
    assert "(16 1/4 in (41.2 cm))" in RAW.says.said("inch")


def test_it_is_read_in_the_units_of_the_reader() -> None:
    with diagnostic.reading("inch"):
        assert "(16 1/4 in (41.2 cm))" in str(RAW)
        refused = KitError(message("proof.edge_never_sewn", edge=diagnostic.named_edge("side"), length=measured(254)))
        with diagnostic.reading("cm"), speaking("de"):
            assert "25,4 cm (10 Zoll)" in str(refused)
        assert "10 in (25.4 cm)" in str(refused)
        exact = message("walk.both", names=Value(25.4, "length", "cm"))  # where the system is told it stays
        assert "2.5 cm (1 in)" in str(exact)
    assert "(41.2 cm (16 1/4 in))" in str(RAW)


def test_a_file_gets_words_and_data() -> None:
    told = json.loads(json.dumps(RAW.as_dict()))
    assert told["key"] == "proof.edge_never_sewn" and told["amount"] == 412.34
    assert told["values"] == {
        "edge": {"value": "side", "kind": "edge"},
        "length": {"value": 412.34, "kind": "length"},
    }
    place = Value(NamedPlace("Front", (EdgeName("neck"), "mark"), "left"), "place")
    row = Value((place.value,), "row")
    mixed = Diagnostic("x", "note", message("walk.both", names=list_of((place, row, message("walk.end"), "own"))))
    assert json.loads(json.dumps(mixed.as_dict()))["values"]["names"]["value"][0]["value"]["side"] == "left"


def test_before_words_are_known_it_is_its_key_and_values(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(diagnostic, "_say", [diagnostic._keyed])
    assert str(message("a.key", size=measured(2))) == "a.key (size=2.0)"
    assert str(message("a.key")) == "a.key"


def test_kinds_are_said() -> None:
    place = NamedPlace("Back Yoke", (EdgeName("neck"), EdgeName("own", "own edge")), "left")
    given = {
        Value(place, "place"): "back Yoke left neck edge and own edge",
        Value((place, NamedPlace("Front", ("tie opening",))), "row"): (
            "back Yoke left neck edge and own edge with front tie opening"
        ),
        Value((EdgeName("side"), "left"), "edge_on"): "left side seam",
        Value((EdgeName("side"), ""), "edge_on"): "side seam",
        Value(("Front", "left"), "piece"): "the left front",
        Value("wrap_point", "name"): "wrap point",
        Value("bust_girth", "measure"): "bust girth",
        Value("bust_girth", "measure_first"): "Bust girth",
        Value("walk.end", "key"): "end",
        Value("left", "word"): "left",
        Value(0.125, "exact"): "0.12 mm",
        Value(2.5, "number"): "2.5",
        per_cent(0.5): "50%",
        titled("Yoke B"): "yoke B",
        list_of(("a", "b", "c"), "string"): "a, b, c",
        list_of(("a", "b"), "parted"): "a; b",
    }
    for value, text in given.items():
        assert worded(message("walk.both", names=value)) == text
    with pytest.raises(KitError, match="unknown kind 'smell'"):
        worded(message("walk.both", names=Value(1, "smell")))


@pytest.mark.parametrize(
    ("title", "said", "given"),
    [
        ("Yoke B", "yoke B", "Yoke B"),
        ("UK top", "UK top", "UK top"),
        ("A line", "a line", "A line"),
        ("T-shirt front", "T-shirt front", "T-shirt front"),
        ("Front", "front", "Front"),
        ("", "", ""),
    ],
)
def test_a_title_in_running_text(title: str, said: str, given: str) -> None:
    assert title_said(title) == said
    with speaking("de"):
        assert title_said(title) == given
    with speaking("fr"):
        assert title_said(title) == said


def test_an_edge_in_running_text_and_beside_its_line() -> None:
    assert (edge_said(EdgeName("side")), edge_label(EdgeName("side"))) == ("side seam", "side")
    assert edge_said(EdgeName("side", "flank")) == edge_label(EdgeName("side", "flank")) == "flank"
    with speaking("es"):
        assert edge_said(EdgeName("side")) == edge_label(EdgeName("side")) == "costura lateral"


def test_a_refusal_is_said_in_the_language_of_its_reader() -> None:
    error = KitError(message("proof.no_grainline"), where="Front", do=message("proof.no_grainline_do")).at("Skirt")
    assert str(error) == "Skirt, Front: it has no grainline. Draw one, so that it can be laid straight on the cloth."
    again = pickle.loads(pickle.dumps(error))
    assert again.told == error.told
    with speaking("de"):
        assert str(again).startswith("Skirt, Front: Das Teil hat keinen Fadenlauf.")
    with speaking("fr"):
        assert str(again).startswith("Skirt, Front\u00a0: ")
    assert within("Front", "") == within("", "Front") == "Front"
    assert str(within(message("walk.end"), "here")) == "end, here"


def test_what_only_code_can_cause_stays_as_it_is_written() -> None:
    with speaking("fr"):
        assert str(KitError("it is wrong.", where="here", do="Mend it.")) == "here: it is wrong. Mend it."


def imports_of_words(tree: ast.AST) -> list[str]:
    """What is imported to put words on."""
    return [
        f"{node.lineno}: {node.module} {alias.name}"
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom)
        for alias in node.names
        if (node.module == "kit.language" and alias.name in ("say", "says", "called"))
        or (node.module or "").startswith("kit.prose")
    ]


@pytest.mark.parametrize("room", SILENT)
def test_these_rooms_put_nothing_into_words(room: str) -> None:
    paths = [KIT / room] if room.endswith(".py") else sorted((KIT / room).rglob("*.py"))
    assert paths
    assert [f"{path.name}: {line}" for path in paths for line in imports_of_words(ast.parse(path.read_text()))] == []


def test_an_import_of_words_is_seen() -> None:
    assert imports_of_words(ast.parse("def f():\n    from kit.language import say\n")) == ["2: kit.language say"]
