"""A bib apron drawn on blank paper (invented): a strap round the neck, two ties at the waist."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Bib apron", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))
lesson.length("width", 64 * cm, least=40 * cm, most=90 * cm, why="from hip to hip")
lesson.length("bib", 26 * cm, least=18 * cm, most=32 * cm, why="across the chest")
lesson.length("skirt_length", 50 * cm, least=30 * cm, most=80 * cm, why="from the waist to the hem")
lesson.length("strap_length", 54 * cm, least=20 * cm, most=70 * cm, why="round the neck, over the head")
lesson.length("tie_length", 80 * cm, least=5 * cm, most=120 * cm, why="round the back and a bow")


@lesson.step("Draw the apron", makes="front")
def draw_front(front, width, bib, skirt_length, waist_girth):
    """{width} wide and {skirt_length} long below the waist; the bib is {bib} wide at its top, 28 cm above the waist."""
    half, top = width / 2, bib / 2
    a, b = front.place(-half, -skirt_length), front.place(half, -skirt_length)
    c, d, e, f = (
        front.place(half, 0 * mm),
        front.place(top, 28 * cm),
        front.place(-top, 28 * cm),
        front.place(-half, 0 * mm),
    )
    front.draw(hem=a.to(b), left_side=b.to(c), left_bib=c.to(d), top=d.to(e), right_bib=e.to(f), right_side=f.to(a))
    front.guide(waist_line=f.to(c))
    front.role(left_bib="side", right_bib="side", top="hem")


@lesson.step("Allowances, cutting and strips", strips=("tie", "strap"))
def allowances(front, tie, strap, tie_length, strap_length):
    """Add 2 cm all round."""
    front.allow(hem=3 * cm, left_side=2 * cm, right_side=2 * cm, left_bib=2 * cm, right_bib=2 * cm, top=3 * cm)
    front.cut(1)
    front.grain()
    tie.fold_in_four(finished_length=tie_length, finished_width=25 * mm, ends=1 * cm, count=2, title="Tie")
    strap.fold_in_four(finished_length=strap_length, finished_width=25 * mm, ends=2 * cm, count=1, title="Neck strap")


@lesson.sew("Hems")
def hems(make, front):
    """Hem the sides first, then top and bottom."""
    for side in (front.left_side, front.right_side, front.left_bib, front.right_bib):
        make.hem(side, first=1 * cm, second=1 * cm)
    make.hem(front.top, first=1 * cm, second=2 * cm)
    make.hem(front.hem, first=1 * cm, second=2 * cm)


@lesson.sew("Strap and ties")
def strips(make, front, tie, strap, bib):
    """The strap on the bib, a tie at either end of the waist."""
    make.fold_strip(strap, ends=0 * mm)
    make.attach_handle(strap, front.top, at=(2 * cm, bib - 2 * cm), method="stitched_on", lap=2 * cm)
    make.fold_strip(tie, ends=1 * cm)
    make.attach_strip(tie, front.left_side, at="end", lap=25 * mm)
    make.attach_strip(tie, front.right_side, at="start", lap=25 * mm)
