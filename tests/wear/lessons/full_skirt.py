"""A gathered skirt of two widths on elastic, drawn on blank paper (invented)."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Gathered skirt", start=blank_paper, units="cm", size="W4", notions=("sewing thread", "elastic 25 mm"))
lesson.length("width", 75 * cm, least=30 * cm, most=90 * cm, why="each of two widths")
lesson.length("skirt_length", 60 * cm, least=30 * cm, most=90 * cm, why="from the waist to the hem")
lesson.length("elastic", 66 * cm, least=30 * cm, most=120 * cm, why="a little less than the waist")


@lesson.step("Draw a width of the skirt", makes="front")
def draw_front(front, width, skirt_length, waist_girth, hip_girth):
    """Rule a rectangle, half of {width} wide and {skirt_length} long; its left edge lies on the fold. The upper edge is
    worn at the waist."""
    a, b = front.place(0 * mm, 0 * mm), front.place(width / 2, 0 * mm)
    c, d = front.place(width / 2, skirt_length), front.place(0 * mm, skirt_length)
    front.draw(hem=a.to(b), side=b.to(c), waist=c.to(d), centre=d.to(a))
    front.guide(waist_line=d.to(c))


@lesson.step("Trace the other", makes="back")
def draw_back(front, back):
    """The back is the same."""
    back.trace(front)


@lesson.step("Allowances and cutting")
def allowances(front, back):
    """Add 1.5 cm at the sides, 4 cm at the waist for the casing and 3 cm at the hem."""
    for piece in (front, back):
        piece.allow(side=1.5 * cm, waist=4 * cm, hem=3 * cm)
        piece.cut(1, fold="centre")
        piece.grain(along=piece.centre)


@lesson.sew("Sew the skirt")
def sew_up(make, front, back, elastic):
    """Sides, casing, elastic, hem."""
    make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="open")
    gap = back.right.waist.between(4 * cm, 8 * cm)
    make.casing(front.waist, back.waist, first=1 * cm, depth=3 * cm, gap=gap)
    make.thread_elastic(front.waist, back.waist, length=elastic + 2 * cm, width=25 * mm, gap=gap)
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
