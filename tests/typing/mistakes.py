"""Mistakes that authors make, each of which mypy must flag on its own line. Only mypy reads this, for test_typing.py:
behind a `# !` stand the code of the error and what is wrong."""

from kit import BenchPiece, Length, Lesson, Make, PieceHandle, bodice_block, cm, grows, mm

lesson = Lesson("Mistakes", start=bodice_block, units="centimetre")  # ! arg-type: an unknown unit
lesson.length("lift", 1.2, least=0 * cm, most=3 * cm)  # ! arg-type: a length without its unit
lesson.length("drop", 1 * cm, least=0 * cm)  # ! call-arg: the most is left out
lesson.count("buttons", 2 * cm + 1)  # ! operator: a bare number added to a length
lesson.sow("Join")  # ! attr-defined: sew, misspelt


@lesson.step("Drafting")
def drafting(front: BenchPiece, back: BenchPiece, lift: Length) -> None:
    """Slips at the bench."""
    front.shoulder_tip.up(3)  # ! arg-type: a distance without its unit
    front.shoulder_tip.up(lift + 2.5)  # ! arg-type: a bare number added, and the unit is gone
    front.shoulder_tip.upp(lift)  # ! attr-defined: up, misspelt
    front.notch("side", 8 * cm, doubel=True)  # ! call-arg: double, misspelt
    front.notch("side")  # ! call-arg: it is not said where
    front.move_dart("dart", to="side", at=3 * cm, way="slide")  # ! arg-type: pivot or slash
    front.allow(side=1.5)  # ! arg-type: an allowance without its unit
    front.mark(tip=front.edge("side"))  # ! arg-type: a line is no point
    front.draw(hem=front.point("corner"), instead_of="hem")  # ! arg-type: a point is no line
    front.side = 3 * cm  # ! assignment: an edge is a line, not its length
    front.point("corner").to(front.edge("side"))  # ! arg-type: to a point, not a line
    front.trace("back")  # ! arg-type: the piece, not its name
    front.edge("side").at(12)  # ! arg-type: along an edge without a unit
    front.cut(mirrored="yes")  # ! arg-type: True or False
    width: Length = front.edge("side").length * front.edge("hem").length  # ! assignment: an area is no length
    back.true(back.side, front.side, share="both")  # ! arg-type: half, own or other
    back.match(back.side, front.side, at=width / mm)  # ! arg-type: how often, not how far
    print(lift.mm)  # ! attr-defined: float(lift) is its mm


@lesson.sew("Sewing")
def sewing(make: Make, front: PieceHandle, back: PieceHandle) -> None:
    """Slips at the machine."""
    make.plain_seem(front.side, back.side)  # ! attr-defined: plain_seam, misspelt
    make.plain_seam(front.side, back.side)  # ! call-arg: no allowance
    make.plain_seam(front.side, back.side, allowance=15)  # ! arg-type: an allowance without its unit
    make.french_seam(front.side, back.side, first=6 * mm)  # ! call-arg: the second row is left out
    make.runs(front.side, "here")  # ! attr-defined: no verb, but how make reads
    make.topstitch(front, distance=6 * mm)  # ! arg-type: a whole piece is no edge


grows("front.underarm", 2)  # ! arg-type: a goal without its unit
lesson.fitting("First toile", lift=8 * mm)  # ! arg-type: before and after
