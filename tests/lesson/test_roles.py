"""How roles pass on in a lesson: by block, by the edge one stands instead of, by derivation, by sewing, by author."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from kit import Lesson, blank_paper, bodice_block, cm, darted_bodice_block, mm, skirt_block, trouser_block, with_sleeve
from kit.blocks.traced import Traced
from kit.body import workshop_chart
from kit.errors import KitError
from kit.lesson.bench import BenchPiece
from kit.piece.piece import Piece

BODY = workshop_chart()["W4"]
BODICE = {"neck", "shoulder", "armhole", "side", "centre"}


def on_bench(block: Callable[..., tuple[Piece, ...]] = bodice_block, which: str = "front") -> BenchPiece:
    return BenchPiece(next(piece for piece in block(BODY) if piece.name == which))


def edge_roles(piece: Any) -> dict[str, Any]:
    found = piece.freeze() if isinstance(piece, BenchPiece) else piece
    return {edge.name: edge.role for edge in found.edges}


@pytest.mark.parametrize(
    ("block", "roles"),
    [
        (bodice_block, BODICE | {"hip"}),
        (darted_bodice_block, BODICE | {"waist"}),
        (skirt_block, {"hem", "centre", "waist", "side"}),
        (trouser_block, {"hem", "inseam", "crotch", "side", "waist"}),
    ],
)
def test_blocks_say_what_they_are(block: Any, roles: set[str]) -> None:
    pieces = block(BODY)
    assert [(piece.role, piece.worn) for piece in pieces] == [("front", "front"), ("back", "back")]
    for piece in pieces:
        assert {edge.role for edge in piece.edges} == roles


def test_a_sleeve_says_what_it_is() -> None:
    sleeve = next(piece for piece in with_sleeve(bodice_block)(BODY) if piece.name == "sleeve")
    assert (sleeve.role, sleeve.worn) == ("sleeve", "")
    assert [edge.role for edge in sleeve.edges] == ["underarm", "wrist", "underarm", "cap", "cap"]


def test_a_new_edge_has_the_role_of_the_one_it_stands_instead_of() -> None:
    front = on_bench()
    front.draw(supra=front.shoulder.start.to(front.shoulder.end), instead_of=front.shoulder)
    assert edge_roles(front)["supra"] == "shoulder"
    front.draw(saum=front.hip.start.to(front.hip.end), instead_of=front.hip)  # a word of the trade says more
    assert edge_roles(front)["saum"] == "hem"
    half = front.side.at(front.side.length / 2)
    front.draw(alta=front.side.start.to(half), basa=half.to(front.side.end), instead_of=front.side)
    assert (edge_roles(front)["alta"], edge_roles(front)["basa"]) == ("side", "side")
    front.draw(unu=front.supra.start.to(front.armhole.end), instead_of=(front.supra, front.armhole))
    assert edge_roles(front)["unu"] == ""  # neither a shoulder nor an armhole


def test_an_author_says_a_role_and_it_stays() -> None:
    front = on_bench()
    front.role("facing", worn="back", hip="hem", neck_point="shoulder_tip")
    made = front.freeze()
    assert (made.role, made.worn, edge_roles(made)["hip"]) == ("facing", "back", "hem")
    assert made.point_of("neck_point") is None
    assert made.point_of("shoulder_tip") == dict(made.points)["neck_point"]
    front.cut(title="Front pocket")
    front.role(side="")
    front.say(side="side hem")
    front.draw(side=front.side.start.to(front.side.end), instead_of=front.side)
    assert (front.freeze().role, edge_roles(front)["side"]) == ("facing", "")
    front.role("pocket")
    assert (front.freeze().role, front.freeze().worn) == ("pocket", "back")
    front.role(worn="")
    assert front.freeze().worn == ""


def test_words_said_later_tell_what_was_not_known() -> None:
    panel = BenchPiece(Piece("panel", "Panel", ()))
    a, b, c = panel.place(0 * mm, 0 * mm), panel.place(9 * cm, 0 * mm), panel.place(0 * mm, 9 * cm)
    panel.draw(supra=a.to(b), basa=b.to(c), side=c.to(a))
    panel.say(supra="top hem", basa="der Saum", side="seam")
    panel.cut(title="Back panel")
    assert edge_roles(panel) == {"supra": "hem", "basa": "hem", "side": "side"}
    assert panel.freeze().worn == "back"


@pytest.mark.parametrize(
    ("say", "words"),
    [
        (lambda p: p.role("facings"), "'facings' is not a piece's role.*Did you mean 'facing'"),
        (lambda p: p.role(worn="left"), "'left' is not a place it is worn"),
        (lambda p: p.role(neck="hemm"), "'hemm' is not a role for the edge 'neck'.*Did you mean 'hem'"),
        (lambda p: p.role(nekk="neck"), "no edge, line or point 'nekk'.*Did you mean 'neck'"),
        (lambda p: p.role(neck_point="hem"), "'hem' is not a role for 'neck_point'"),
        (lambda p: p.role(3), "3 is not a piece's role"),
    ],
)
def test_a_wrong_role_is_refused(say: Callable[[BenchPiece], None], words: str) -> None:
    with pytest.raises(KitError, match=words):
        say(on_bench())


def test_a_facing_of_a_back_is_a_facing_worn_at_the_back() -> None:
    front, back = on_bench(), on_bench(which="back")
    for source, place in ((front, "front"), (back, "back")):
        made = BenchPiece(Piece("umo", "Umo", ()))
        made.face(source, ("neck",), depth=5 * cm, ends=("ena", "dva"))
        piece = made.freeze()
        assert (piece.role, piece.worn) == ("facing", place)
        assert edge_roles(piece) == {"neck": "neck", "dva": "shoulder", "outer": "outer", "ena": "centre"}
        inner = BenchPiece(Piece("vix", "Vix", ()))
        inner.interface(made)
        assert (inner.freeze().role, inner.freeze().worn) == ("facing", place)  # lies as the facing does
    lining = BenchPiece(Piece("umo", "Umo", ()))
    lining.line(back)
    assert (lining.freeze().role, lining.freeze().worn) == ("lining", "back")


def test_verbs_find_their_edge_by_its_role() -> None:
    plain, other = on_bench(), on_bench()
    other.draw(kolo=other.neck, instead_of=other.neck)
    other.draw(boko=other.side, instead_of=other.side)
    for front in (plain, other):
        front.lower_neckline(2 * cm)
        front.add_ease(1 * cm)
    assert [edge.path for edge in other.freeze().edges] == [edge.path for edge in plain.freeze().edges]
    other.role(boko="")
    with pytest.raises(KitError, match=r"no edge is known to be the side.*front\.role"):
        other.add_ease(1 * cm)
    other.role(boko="side", kolo="side")
    with pytest.raises(KitError, match="kolo, boko are each a side"):
        other.add_ease(1 * cm)


def test_what_is_hemmed_is_a_hem_and_what_is_attached_a_facing() -> None:
    lesson = Lesson("Trial", start=blank_paper, units="cm")

    @lesson.step("Draw", makes=("korpo", "umo"))
    def draw(korpo: Any, umo: Any) -> None:
        for piece in (korpo, umo):
            a, b = piece.place(0 * mm, 0 * mm), piece.place(20 * cm, 0 * mm)
            c, d = piece.place(20 * cm, 30 * cm), piece.place(0 * mm, 30 * cm)
            piece.draw(basa=a.to(b), destra=b.to(c), supra=c.to(d), sinistra=d.to(a))
            piece.allow(basa=2 * cm, destra=1 * cm, supra=1 * cm, sinistra=1 * cm)
        korpo.role("back")

    @lesson.sew("Sew")
    def sew(make: Any, korpo: Any, umo: Any) -> None:
        make.attach_facing(umo.supra, korpo.supra, allowance=1 * cm)
        make.hem(korpo.basa, first=1 * cm, second=1 * cm)

    pattern = lesson.work(BODY)
    korpo, umo = pattern.piece("korpo"), pattern.piece("umo")
    assert (umo.role, umo.worn) == ("facing", "back")
    assert (edge_roles(korpo)["basa"], edge_roles(umo)["basa"], edge_roles(korpo)["supra"]) == ("hem", "", "")
    assert pattern.steps[0].pieces[0].edge("basa").role == "hem"  # the step's picture shows the same cut line


CORNERS = {"a": (0, 20), "b": (9, 22), "c": (20, 20), "d": (24, 0), "e": (0, 0)}


def traced(names: tuple[str, ...], piece: str, **more: Any) -> Piece:
    places = list(CORNERS.values())
    edges = {name: (p, q) for name, p, q in zip(names, places, [*places[1:], places[0]], strict=True)}
    (made,) = Traced("Trial", {piece: edges}, **more)(BODY)
    return made


def test_a_traced_top_has_roles_from_its_words_or_as_said() -> None:
    roles = ["neck", "shoulder", "side", "hem", "centre"]
    english = traced(("neck", "shoulder", "side", "hem", "centre"), "back")
    german = traced(("hals", "schulter", "seite", "saum", "mitte"), "ruecken")
    names = ("un", "du", "tri", "kvar", "kvin")
    said = traced(names, "dorso", roles={"dorso": "back", **dict(zip(names, roles, strict=True))})
    for piece in (english, german, said):
        assert [edge.role for edge in piece.edges] == roles
        assert (piece.role, piece.worn) == ("back", "back")
        assert piece.point_of("neck_point") is not None
        assert piece.point_of("neck_point") == english.point_of("neck_point")
        assert piece.fold == piece.edges[-1].name
    assert traced(names, "dorso").fold == ""
    assert traced(("neck", "shoulder", "side", "hem", "centre_edge"), "back").fold == ""  # as it was before


def test_wrong_roles_of_a_traced_top_are_refused() -> None:
    names = ("un", "du", "tri", "kvar", "kvin")
    with pytest.raises(KitError, match="no piece, edge or point 'quar'"):
        traced(names, "dorso", roles={"quar": "hem"})
    with pytest.raises(KitError, match=r"'henm' is not a role for 'kvar'.*Did you mean 'hem'"):
        traced(names, "dorso", roles={"kvar": "henm"})
    with pytest.raises(KitError, match="'hem' is not a role for 'dorso'"):
        traced(names, "dorso", roles={"dorso": "hem"})
