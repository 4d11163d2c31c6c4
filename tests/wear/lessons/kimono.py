"""A top with cut-on sleeves (invented), drawn on blank paper of straight lines, so that every length of it can be
worked by hand: no armhole, the underarm runs from the end of the sleeve straight to the side."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Top with cut-on sleeves", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))
lesson.length("overarm_long", 56 * cm, least=20 * cm, most=62 * cm, why="from the neck to the end of the sleeve")
lesson.length("slope", 10 * cm, least=0 * cm, most=50 * cm, why="how much lower the sleeve ends than the neck begins")
lesson.length("depth", 17 * cm, least=12 * cm, most=24 * cm, why="half of the sleeve at its end")
lesson.length("underarm_up", 14 * cm, least=0 * cm, most=20 * cm, why="from the waist up the side to the underarm")
lesson.length("seam", 1 * cm, least=6 * mm, most=2 * cm, why="all seams", said="seam allowance")


@lesson.step("Draw the front", makes="front")
def draw_front(front, bust_girth, overarm_long, slope, depth, underarm_up):
    """The neck begins 12 cm beside the centre. The overarm runs {slope} lower to its end, the sleeve's end square to
    it, and the underarm straight from there to the side, {underarm_up} above the waist."""
    half = bust_girth / 4 + 4 * cm
    run = (float(overarm_long) ** 2 - float(slope) ** 2) ** 0.5
    centre, neck = front.place(0 * cm, 31 * cm), front.place(12 * cm, 40 * cm)
    end = front.place(12 * cm + run * mm, 40 * cm - slope)
    down, back = run / float(overarm_long), float(slope) / float(overarm_long)
    low_end = front.place(12 * cm + run * mm - depth * back, 40 * cm - slope - depth * down)
    under = front.place(half, underarm_up)
    low, foot = front.place(half, -20 * cm), front.place(0 * cm, -20 * cm)
    front.draw(
        centre=foot.to(centre),
        neck=centre.curve_to(neck, square_to=centre.to(foot), end_square_to=neck.to(end)),
        shoulder=neck.to(end),
        opening=end.to(low_end),
        underarm=low_end.to(under),
        side=under.to(low),
        hem=low.to(foot),
    )
    front.mark(underarm_point=under)
    front.guide(waist_line=front.place(0 * cm, 0 * cm).ruled("out", half))


@lesson.step("Draw the back", makes="back")
def draw_back(front, back):
    """The same, its neck only 3 cm deep."""
    back.trace(front)
    low = back.place(0 * cm, 37 * cm)
    foot = back.place(0 * cm, -20 * cm)
    neck = low.curve_to(back.neck.end, square_to=low.to(foot), end_square_to=back.shoulder)
    back.draw(neck=neck, instead_of=back.neck)
    back.draw(centre=foot.to(low), instead_of=back.centre)


@lesson.step("Allowances, cutting, binding", strips="neck_binding")
def allowances(front, back, neck_binding, seam):
    """{seam} on seams, 3 cm at hem and sleeves; the neck is bound."""
    for piece in (front, back):
        piece.allow(neck=0 * mm, shoulder=seam, underarm=seam, side=seam, opening=3 * cm, hem=3 * cm)
        piece.cut(1, fold="centre")
        piece.grain(along=piece.centre)
        piece.declare(piece.underarm, piece.side, why="the corner under the arm")
        piece.declare(piece.opening, piece.underarm, why="straight lines")
    neck_binding.bind(finished_length=(front.neck.length + back.neck.length) * 2 + 4 * cm, finished_width=8 * mm)


@lesson.sew("Sew the top")
def sew_up(make, front, back, neck_binding, seam):
    """Shoulders, neck, underarm and side in one row; the hems."""
    make.plain_seam(front.shoulder, back.shoulder, allowance=seam, press="open")
    make.bind(front.neck, back.neck, strip=neck_binding, finished=8 * mm, ends="ring")
    make.plain_seam(front.underarm + front.side, back.underarm + back.side, allowance=seam, press="open")
    make.hem(front.opening, back.opening, first=1 * cm, second=2 * cm)
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
