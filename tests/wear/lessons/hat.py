"""A soft hat of two round-topped panels, drawn on blank paper (invented)."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Panel hat", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))
lesson.length("around", 59 * cm, least=48 * cm, most=72 * cm, why="round the head, and a little ease")
lesson.length("height", 21 * cm, least=16 * cm, most=26 * cm, why="from the brow to the crown")


@lesson.step("Draw a panel", makes="front")
def draw_front(front, around, height, head_girth):
    """The lower edge is half of {around}, the panel {height} high with a round top. The lower edge is worn round the
    head."""
    half = around / 2
    a, b = front.place(0 * mm, 0 * mm), front.place(half, 0 * mm)
    top = front.place(half / 2, height)
    crown = b.curve_to(top, along=b.up(5 * cm).to(b.up(6 * cm))).joined(
        top.curve_to(a, end_along=a.up(5 * cm).to(a.up(4 * cm)))
    )
    front.draw(hem=a.to(b), crown=crown)
    front.guide(brow=a.to(b))
    front.role(brow="head_line")


@lesson.step("Trace the other", makes="back")
def draw_back(front, back):
    """The back is the same."""
    back.trace(front)


@lesson.step("Allowances and cutting")
def allowances(front, back):
    """Add 1 cm round the crown and 3 cm at the lower edge."""
    for piece in (front, back):
        piece.allow(hem=3 * cm, crown=1 * cm)
        piece.cut(1)
        piece.grain(at=piece.place(0 * cm, 0 * cm).out(15 * cm).up(8 * cm))


@lesson.sew("Sew the hat")
def sew_up(make, front, back):
    """One seam over the crown, then the hem."""
    make.plain_seam(front.crown, back.crown, allowance=1 * cm, press="open")
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
