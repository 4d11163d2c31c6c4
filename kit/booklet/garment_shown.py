"""The garment as the booklet shows it: on the cover, on its body, laid flat with its finished measurements."""

from __future__ import annotations

from kit.booklet.forms import PHONE, PX, Form, PictureRoom
from kit.booklet.pictures import COVER, Inks, Picture, picture
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.assembled import View
from kit.picture.drawing import Label
from kit.picture.flat import cover_drawing, laid_flat
from kit.picture.worn_view import beside, worn_views

COVER_SHARE = 0.5
"""Of the height of a page's text, what the views on the cover may take."""
ON_BODY_SHARES = (0.19, 0.38)
"""Of the height of a page's text, what the garment on its body takes at least and at most."""


def for_whom(pattern: Pattern) -> str:
    """For whom it is drafted: a size, one size for all, or a person by name."""
    name = pattern.body.name
    return pattern.body.said if not pattern.body.measures or (len(name) <= 4 and " " not in name) else name


def cover_views(pattern: Pattern, form: Form, inks: Inks, *, small: bool = False, troubled: bool = False) -> Picture:
    """The garment from both sides: `small` beside a photo, lower where what is wrong stands above it (`troubled`)."""
    large = PictureRoom(form.measure * PX, form.depth * (0.36 if troubled else COVER_SHARE) * PX)
    beside_photo = PictureRoom(form.measure * 0.36 * PX, form.depth * 0.2 * PX)
    return picture(cover_drawing(pattern), "cover-views", beside_photo if small else large, inks, paper=COVER)


def on_body(pattern: Pattern, form: Form, inks: Inks, left: float) -> Picture | None:
    """The garment on its body, or as it is carried, as high as there are `left` mm, within reason."""
    views = worn_views(pattern)
    if views is None:
        return None
    drawing = beside(pattern, *views)
    least, most = (form.depth * share for share in ON_BODY_SHARES)
    room = PictureRoom(form.measure * PX, min(max(left, least), most) * PX)
    key = "on_body" if views[0].how == "worn" else "on_body_to_scale"
    return picture(drawing, "on-body", room, inks, say(f"booklet.{key}", body=pattern.body.said))


def finished_picture(pattern: Pattern, form: Form, inks: Inks) -> Picture | None:
    """The garment laid flat with its finished measurements, from the front, or from the back where more of them can be
    drawn there."""
    room = PictureRoom(form.measure * PX, min(82.0 * form.letters, form.depth * 0.5) * PX)
    seen: tuple[View, ...] = ("front", "back")
    system = pattern.lesson.units
    drawings = {view: laid_flat(pattern, view, system, room, 1.06 * form.letters) for view in seen}
    lines = {view: sum(isinstance(item, Label) for item in drawing.items) for view, drawing in drawings.items()}
    view = max(drawings, key=lambda view: lines[view])
    if not lines[view] or not pattern.finished:
        return None
    narrow = laid_flat(pattern, view, system, PHONE) if inks.phone else None
    return picture(drawings[view], "finished", room, inks, say(f"booklet.laid_flat_{view}"), narrow=narrow)
