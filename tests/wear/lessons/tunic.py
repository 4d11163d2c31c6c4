"""A sleeveless tunic pulled on over the head (invented): neck and armholes bound, straight sides."""

from kit import Lesson, bodice_block, cm, mm

lesson = Lesson("Pull-on tunic", start=bodice_block, units="cm", size="W4", notions=("sewing thread",))
lesson.length("neck_drop", 7 * cm, least=0 * cm, most=14 * cm, why="room for the head")
lesson.length("neck_wider", 5 * cm, least=0 * cm, most=8 * cm, why="room for the head")
lesson.length("hem_drop", 24 * cm, least=4 * cm, most=60 * cm, why="from the waist to the hem")
lesson.length("seam", 1.5 * cm, least=1 * cm, most=2 * cm, why="shoulders and sides", said="seam allowance")


@lesson.step("Lower and widen the neck")
def necks(front, back, neck_drop, neck_wider):
    """Lower the front neck by {neck_drop}, and widen both by {neck_wider} along the shoulder."""
    front.lower_neckline(neck_drop, wider=neck_wider)
    back.lower_neckline(2 * cm, wider=neck_wider)


@lesson.step("Rule the sides and the hem")
def sides(front, back, hem_drop):
    """Rule the side from the underarm through the hip, and the hem {hem_drop} below the waist."""
    for piece in (front, back):
        under = piece.underarm_point
        piece.side = under.to(piece.side_hip)
        piece.draw(hem=piece.waist.parallel(hem_drop, "down"), instead_of=piece.hip)
        piece.join(piece.side, piece.hem)
        piece.join(piece.hem, piece.centre)
        piece.declare("armhole", "side", why="a straight side")


@lesson.step("Allowances, cutting and strips", strips=("neck_binding", "arm_binding"))
def allowances(front, back, neck_binding, arm_binding, seam):
    """Add {seam} at shoulders and sides and 3 cm at the hem; neck and armhole are bound and get nothing."""
    for piece in (front, back):
        piece.allow(neck=0 * mm, armhole=0 * mm, shoulder=seam, side=seam, hem=3 * cm)
        piece.cut(1, fold="centre")
        piece.grain(along=piece.centre)
    neck = (front.neck.length + back.neck.length) * 2
    arm = front.armhole.length + back.armhole.length
    neck_binding.bind(finished_length=neck + 4 * cm, finished_width=8 * mm)
    arm_binding.bind(finished_length=arm + 4 * cm, finished_width=8 * mm, count=2)


@lesson.sew("Sew the tunic")
def sew_up(make, front, back, neck_binding, arm_binding, seam):
    """Shoulders, sides, then the bindings and the hem."""
    make.plain_seam(front.shoulder, back.shoulder, allowance=seam, press="open")
    make.plain_seam(front.side, back.side, allowance=seam, press="open")
    make.bind(front.neck, back.neck, strip=neck_binding, finished=8 * mm, ends="ring")
    make.bind(front.armhole, back.armhole, strip=arm_binding, finished=8 * mm, ends="ring", count=2)
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
