"""A fitted shift dress (invented): waist darts, a small round neck, a zip in the centre back seam."""

from kit import Lesson, bodice_block, cm, mm

lesson = Lesson("Shift dress", start=bodice_block, units="cm", size="W4", notions=("sewing thread", "zip, 56 cm"))
lesson.length("hem_drop", 58 * cm, least=30 * cm, most=80 * cm, why="from the waist to the hem")
lesson.length("intake", 3 * cm, least=1 * cm, most=5 * cm, why="each waist dart")
lesson.length("side_in", 0 * cm, least=0 * cm, most=6 * cm, why="the side seam is taken in")
lesson.length("zip_length", 56 * cm, least=4 * cm, most=70 * cm, why="from the neck to the seat")
lesson.length("seam", 1.5 * cm, least=1 * cm, most=2 * cm, why="all seams", said="seam allowance")


@lesson.step("Rule the hem")
def hems(front, back, hem_drop, side_in):
    """Carry the sides on to the knee and rule the hem {hem_drop} below the waist; take the sides in by {side_in}."""
    for piece in (front, back):
        if side_in > 0 * cm:
            piece.side = piece.side.parallel(side_in, "inside")
            piece.join(piece.armhole, piece.side)
        piece.draw(hem=piece.waist.parallel(hem_drop, "down"), instead_of=piece.hip)
        piece.join(piece.side, piece.hem)
        piece.join(piece.hem, piece.centre)


@lesson.step("Draw the waist darts")
def waist_darts(front, back, intake):
    """On each half a dart of {intake}, from under the bust to the hip."""
    for piece in (front, back):
        place = piece.centre_waist.to(piece.side_waist).share(0.45)
        piece.add_double_dart("waist_dart", top=place.up(13 * cm), bottom=place.down(12 * cm), at=place, intake=intake)


@lesson.step("Mark the zip")
def mark_zip(back, zip_length):
    """From the neck down the centre back mark {zip_length} for the zip."""
    back.leave_open("zip_opening", "centre", at=back.centre.length - zip_length, size=zip_length)


@lesson.step("Allowances, cutting and strips", strips=("neck_binding", "arm_binding"))
def allowances(front, back, neck_binding, arm_binding, seam):
    """Add {seam} to the seams and 4 cm at the hem; neck and armhole are bound and get nothing."""
    for piece in (front, back):
        piece.allow(neck=0 * mm, armhole=0 * mm, shoulder=seam, side=seam, hem=4 * cm)
        piece.grain(along=piece.centre)
    back.allow(centre=seam)
    front.cut(1, fold="centre")
    back.cut(2, mirrored=True)
    neck = (front.neck.length + back.neck.length) * 2
    arm = front.armhole.length + back.armhole.length
    neck_binding.bind(finished_length=neck + 4 * cm, finished_width=8 * mm)
    arm_binding.bind(finished_length=arm + 4 * cm, finished_width=8 * mm, count=2)


@lesson.sew("Sew darts and seams")
def seams(make, front, back, seam, zip_length):
    """The darts first, then shoulders and sides, then the centre back below the zip."""
    make.double_dart(front.waist_dart, back.waist_dart)
    make.plain_seam(front.shoulder, back.shoulder, allowance=seam, press="open")
    make.plain_seam(front.side, back.side, allowance=seam, press="open")
    make.plain_seam(
        back.left.centre.before(back.zip_opening),
        back.right.centre.before(back.zip_opening),
        allowance=seam,
        press="open",
    )


@lesson.sew("Zip, bindings, hem")
def finish(make, front, back, neck_binding, arm_binding, seam, zip_length):
    """The zip goes in before the neck is bound."""
    make.centred_zip(back.left.zip_opening, back.right.zip_opening, allowance=seam, length=zip_length)
    make.bind(back.left.neck, front.neck, back.right.neck, strip=neck_binding, finished=8 * mm, ends="turned")
    make.bind(front.armhole, back.armhole, strip=arm_binding, finished=8 * mm, ends="ring", count=2)
    make.hem(front.hem, back.hem, first=1 * cm, second=3 * cm)
