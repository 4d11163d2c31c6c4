"""A lesson with everything said beside its arguments, as an author who checks types would write it. Only mypy reads
it."""

from kit import BenchPiece, Body, Length, Lesson, Make, PieceHandle, bodice_block, cm, grows, inch, mm
from kit.lesson.bench_strip import BenchStrip
from kit.sewing.handle import StripHandle

lesson = Lesson("Typed top", start=bodice_block, units="cm", cloth_widths=["140 cm", 60 * inch])
lift = lesson.length("shoulder_lift", 1.2 * cm, least=0 * cm, most="3 cm", why="room for the arm to move")
lesson.length("sleeve_length", 26 * cm, least=5 * cm, most=45 * cm)
lesson.share("curve", 0.5)
lesson.count("buttons", 5, most=9)


@lesson.step("Raise the shoulder and extend it into a sleeve")
def overarm(front: BenchPiece, shoulder_lift: Length, sleeve_length: Length, curve: float, body: Body) -> None:
    """Raise it by {shoulder_lift}."""
    raised = front.shoulder_tip.up(shoulder_lift + 2 * mm)
    front.mark(raised_tip=raised)
    front.draw(overarm=front.neck_point.through(raised, beyond=sleeve_length), instead_of=front.shoulder)
    end = front.edge("overarm").end
    front.guide(opening_line=end.to(front.point("waist_side")))
    half: Length = sleeve_length / 2
    share: float = half / sleeve_length
    front.notch("overarm", half * curve + 0, double=share > 0.5)
    total: Length = sum([1 * cm, 2 * cm, half], start=0 * cm)
    front.allow(overarm=total, side="1 cm", centre=0)
    front.side = front.side.start.to(front.side.end)
    front.hem = front.hem.to(front.guide("waist_line"))
    found: int = front.buttonholes(front.centre, inside=2 * cm, first=3 * cm, last=33 * cm, count=5, button=15 * mm)
    front.measure(opening=front.overarm.at(found * mm).to(front.neck_point))
    front.add_dart("dart", front.side, at=front.side.middle, intake=2 * cm, apex=front.neck_point.down(20 * cm))


@lesson.step("The back", makes=("facing",), strips=("tie",))
def back(back: BenchPiece, front: BenchPiece, facing: BenchPiece, tie: BenchStrip) -> None:
    """As the front."""
    over: Length = back.true(back.side, front.side, ease=5 * mm)
    back.match("side", front.side, at=[8 * cm, front.side.middle, (20 * cm, 21 * cm)])
    facing.face(front.neck, back.neck, depth=5 * cm, ends=("one", "two"), across="shoulder")
    tie.fold_in_four(finished_length=60 * cm + over, finished_width="2 cm")
    back.cut(fold="centre", title="Back")
    back.finish_corner(back.hem, "side", "turned", folds=(0, 15 * mm))


@lesson.sew("Join the shoulders")
def shoulders(make: Make, front: PieceHandle, back: PieceHandle, tie: StripHandle) -> None:
    """Sew."""
    make.french_seam(front.overarm, back.overarm, first=6 * mm, second=4 * mm, press="back")
    make.plain_seam(front.left.side, back.left.side, allowance=1.5 * cm, opening=(2 * cm, 5 * cm))
    make.gather(front.waist, to=40 * cm)
    make.fold_strip(tie)


@lesson.finished("Chest", over="bust_girth")
def chest(front: BenchPiece, back: BenchPiece) -> Length:
    return 2 * (front.edge("side").length + back.edge("side").length)


lesson.preset("Long", sleeve_length=45 * cm, curve=0.7)
lesson.fitting("First toile", shoulder_lift=(8 * mm, 12 * mm))
lesson.exercise("Longer", "Make it longer.", goals=[grows("front.side", 2 * cm)], answer={"sleeve_length": 30 * cm})
