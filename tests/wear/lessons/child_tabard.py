"""A child's tabard from blank paper (invented): the chart has a head and the lesson's own chest, and no length of the
back, so that no line can tell how it hangs. Shoulders sewn, sides open, all bound."""

from kit import Lesson, blank_paper, cm, mm, read_chart

lesson = Lesson(
    "Child's tabard",
    start=blank_paper,
    sizes=read_chart("measure,Small,Middle\nhead_girth,50,51", "Two children"),
    size="Small",
    units="cm",
    notions=("sewing thread",),
)
lesson.measurement("child_chest_girth", {"Small": 56 * cm, "Middle": 58 * cm}, note="Round the chest.", said="chest")
lesson.length("neck_half", 10 * cm, least=6 * cm, most=13 * cm, why="the head passes")
lesson.length("front_neck", 11 * cm, least=5 * cm, most=14 * cm, why="how low the front neck lies")
lesson.length("back_neck", 5 * cm, least=2 * cm, most=9 * cm, why="how low the back neck lies")
lesson.length("length", 48 * cm, least=30 * cm, most=60 * cm, why="shoulder to hem")
lesson.length("seam", 1.2 * cm, least=1 * cm, most=1.5 * cm, why="shoulders", said="seam allowance")


@lesson.step("Rule the front", makes="front")
def frame(front, child_chest_girth, length, neck_half, front_neck):
    """A quarter of the chest wide and {length} high; the neck {neck_half} wide and {front_neck} deep."""
    low = front.place(0 * mm, 0 * mm)
    hem = low.ruled("out", child_chest_girth / 4 + 1 * cm)
    side = hem.end.ruled("up", length - 2 * cm)
    neck_point = low.up(length).out(neck_half)
    shoulder = side.end.to(neck_point)
    centre_top = low.up(length - front_neck)
    front.draw(hem=hem, side=side, shoulder=shoulder, neck=neck_point.to(centre_top), centre=centre_top.to(low))


@lesson.step("Trace the back", makes="back")
def trace(front, back, back_neck, length):
    """Trace the front; the neck is {back_neck} deep."""
    back.trace(front)
    low = back.hem.start.up(length - back_neck)
    back.draw(neck=back.neck.start.to(low), instead_of=back.neck)
    back.join(back.neck, back.centre)


@lesson.step("Allowances and bindings", strips=("neck_binding", "edge_binding"))
def allowances(front, back, neck_binding, edge_binding, seam):
    """Add {seam} at the shoulders; all else is bound."""
    neck_binding.bind(finished_length=(front.neck.length + back.neck.length) * 2 + 2 * cm, finished_width=8 * mm)
    edge_binding.bind(
        finished_length=sum(p.edge(e).length for p in (front, back) for e in ("hem", "side")) * 2 + 2 * cm,
        finished_width=8 * mm,
    )
    for piece in (front, back):
        piece.allow(shoulder=seam, neck=0 * mm, side=0 * mm, hem=0 * mm)
        piece.grain()
        piece.declare("neck", "centre", why="a V")
        piece.declare("hem", "side", why="a square corner")
        piece.declare("side", "shoulder", why="the tip")
        piece.declare("shoulder", "neck", why="the neck point")
        piece.cut(1, fold="centre")


@lesson.finished("Neck opening, all round", over="head_girth")
def neck_round(front, back):
    return (front.neck.length + back.neck.length) * 2


@lesson.finished("Across, front and back", over="child_chest_girth")
def across(front):
    return front.hem.length * 4


@lesson.sew("Sew the tabard")
def sew_up(make, front, back, neck_binding, edge_binding, seam):
    """Shoulders, then the neck, then all the rest."""
    make.plain_seam(front.shoulder, back.shoulder, allowance=seam, press="open")
    make.bind(front.neck + back.neck, strip=neck_binding, finished=8 * mm, ends="ring")
    make.bind(front.hem, front.side, back.side, back.hem, strip=edge_binding, finished=8 * mm, ends="ring")
