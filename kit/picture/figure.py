"""The measuring figure: where each tape goes, on a plain standing figure seen from the front or the back.

The figure is drawn from points of our own, in mm on the floor (y = 0) up; its levels are near those of a middle
size, and every tape is placed on the same levels, so a girth lies where its outline has that width. Girths are
drawn as a band around the body, the far side dashed; lengths as arrows. Numbers stand in the margins.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Literal

from kit.body.measures import MEASUREMENTS, measurement, said
from kit.geometry import Curve, Line, Motion, Point
from kit.geometry.spline import spline
from kit.language import say
from kit.picture.drawing import Dot, Drawing, Fill, Item, Label, Stroke, StrokeRole
from kit.wording.lists import strung

View = Literal["front", "back"]
_Spot = tuple[float, float]

# Half outlines, the viewer's right; (x, y) in mm.
NECK: Sequence[_Spot] = ((50, 1520), (51, 1478), (66, 1452))
SHOULDER: Sequence[_Spot] = ((66, 1452), (110, 1436), (176, 1410))
ARM_OUT: Sequence[_Spot] = ((176, 1410), (205, 1385), (222, 1330), (246, 1230), (268, 1110), (302, 990), (326, 890))
HAND: Sequence[_Spot] = (
    (326, 890),
    (345, 850),
    (352, 790),
    (342, 735),
    (326, 716),
    (315, 740),
    (310, 800),
    (283, 893),
)
ARM_IN: Sequence[_Spot] = ((283, 893), (250, 990), (204, 1110), (172, 1225), (157, 1268))
SIDE: Sequence[_Spot] = (
    (157, 1268), (156, 1214), (139, 1140), (123, 1042), (146, 940), (177, 837), (178, 760), (166, 640), (146, 520),
    (138, 460), (143, 400), (146, 340), (126, 210), (108, 100), (112, 62),
)  # fmt: skip
FOOT: Sequence[_Spot] = ((112, 62), (140, 26), (146, 4), (108, -4), (70, 2), (66, 40), (70, 70))
INSIDE: Sequence[_Spot] = (
    (70, 70), (70, 100), (54, 210), (40, 340), (44, 400), (46, 460), (36, 540), (14, 680), (4, 762)
)  # fmt: skip
_WIDE: dict[str, tuple[float, float]] = {  # level -> half width of the torso there
    "upper_chest_girth": (1284, 156),
    "bust_girth": (1214, 156),
    "under_bust_girth": (1140, 139),
    "waist_girth": (1042, 123),
    "hip_girth": (837, 177),
    "head_girth": (1612, 71),
    "shoulder_girth": (1362, 214),
}
_LEG: dict[str, tuple[float, float, float]] = {  # level -> inner and outer edge of the leg
    "thigh_girth": (728, 7, 176),
    "knee_girth": (460, 46, 138),
    "calf_girth": (345, 40, 146),
    "ankle_girth": (104, 70, 108),
    "heel_girth": (46, 67, 124),
    "foot_girth": (22, 67, 142),
}
_ARM: dict[str, tuple[_Spot, tuple[float, float]]] = {  # centre, half width, lean of the arm's axis (dx for dy = -1)
    "upper_arm_girth": ((197, 1262), (41, 6)),
    "elbow_girth": ((236, 1110), (34, 6)),
    "wrist_girth": ((304.5, 892), (22, 5)),
    "hand_girth": ((330, 812), (21, 2)),
}
_SEAT = (378.0, 10.0, 0.36)  # where the sitting figure stands and its scale
_SIT_HEAD: Sequence[_Spot] = (
    (0, 1322),
    (-72, 1280),
    (-78, 1200),
    (-46, 1120),
    (30, 1122),
    (84, 1210),
    (70, 1290),
    (0, 1322),
)
_SIT_BACK: Sequence[_Spot] = ((38, 1135), (96, 1000), (72, 860), (62, 790), (104, 640), (114, 540), (70, 452))
_SIT_LEG: Sequence[_Spot] = (
    (70, 452), (-150, 456), (-330, 448), (-374, 400), (-372, 250), (-400, 60), (-404, 0), (-500, 0), (-600, 4),
    (-560, 44), (-474, 90), (-478, 250), (-506, 440), (-478, 540), (-420, 566),
)  # fmt: skip
_SIT_FRONT: Sequence[_Spot] = (
    (-420, 566),
    (-250, 596),
    (-118, 620),
    (-104, 700),
    (-76, 790),
    (-128, 940),
    (-70, 1060),
    (-36, 1130),
)
_CHAIR: Sequence[Sequence[_Spot]] = (((-290, 440), (150, 440)), ((-270, 440), (-270, 0)), ((130, 440), (130, 0)))
_MARGIN = 440.0
_NEAREST = 62.0  # mm between two numbers in a margin
_BACK = {"body_rise", "back_width", "back_waist_length", "armscye_depth", "arm_length", "total_crotch_length", "height"}
_LOW = {*_LEG, "body_rise", "waist_height", "outside_leg_length", "inside_leg_length", "height"}
_BOTH = {"neck_base_girth", "total_crotch_length", "bust_girth", "waist_girth", "hip_girth"}


def measuring_figure(names: Sequence[str] | None = None, view: View = "front") -> Drawing:
    """A figure seen from the `view`, with a numbered tape for each measurement of `names` (all when None) that
    can be seen from there; cut off above the knees when nothing is measured below. Numbers count through `names`,
    so that front, back and a list of notes share them. Drawn in mm, y up from the floor. Raises `KitError` for a
    name that is no measurement."""
    wanted = tuple(MEASUREMENTS) if names is None else tuple(dict.fromkeys(measurement(name).name for name in names))
    items: list[Item] = _body(view)
    tags: list[tuple[int, _Spot, str]] = []
    for number, name in enumerate(wanted, 1):
        if view not in views(name):
            continue
        drawn, spot, side = _tape(name, view)
        items += drawn
        tags.append((number, spot, side))
    if "waist_girth" not in wanted:  # a tape is tied there first, and others start or stop at it
        items += [replace(item, role="kept", name="waist") for item in _band((0, 1042), 123, 13.5, "waist")[1:]]
    items += _numbers(tags)
    told = strung([f"{number} {said(wanted[number - 1])}" for number, _, _ in sorted(tags)])
    alt = say(f"picture.figure_{view}", tapes=told or say("picture.figure_none"))
    floor = -30.0 if _LOW & set(wanted) else 640.0
    return Drawing(
        tuple(items), alt=alt, title=say(f"picture.figure_title_{view}"), bounds=(-480.0, floor, 480.0, 1700.0)
    )


def views(name: str) -> tuple[View, ...]:
    """From where a measurement's tape can be seen."""
    if name in _BOTH:
        return ("front", "back")
    return ("back",) if name in _BACK else ("front",)


# ---- the figure -------------------------------------------------------------------------------------------


def _body(view: View) -> list[Item]:
    items: list[Item] = []
    half = [*_run(NECK), *_run(SHOULDER)]
    leg = [*_run(SIDE), *_run(FOOT), *_run(INSIDE)]
    torso = [*half, Line(_p((176, 1410)), _p((157, 1268))), *leg]
    other = [curve.reversed() for curve in _mirrored(torso)]
    items += _head() if view == "back" else []
    bridge = Line(torso[-1].end, other[0].start)
    top = Line(other[-1].end, torso[0].start)
    items.append(Fill((*torso, bridge, *other, top), "frame"))
    for sign in (False, True):
        arm = [*_run(ARM_OUT), *_run(HAND), *_run(ARM_IN)]
        drawn = _mirrored(arm) if sign else arm
        items.append(Fill((*drawn, Line(drawn[-1].end, drawn[0].start)), "frame"))
        items.append(Stroke(tuple(drawn), "edge"))
        for part in (half, leg):
            items.append(Stroke(tuple(_mirrored(part) if sign else part), "edge"))
    items.append(Stroke((Line(_p((4, 762)), _p((-4, 762))),), "edge"))
    items += _head() if view == "front" else []
    items += _front_lines() if view == "front" else _back_lines()
    return items


def _head() -> list[Item]:
    right = spline([_p(s) for s in ((0, 1672), (-66, 1630), (-74, 1568), (-52, 1496), (0, 1462))])
    face = (*right, *(curve.reversed() for curve in reversed(_mirrored(right))))
    return [Fill(face, "frame"), Stroke(face, "edge", closed=True)]


def _front_lines() -> list[Item]:
    lines: list[Sequence[_Spot]] = [((14, 1419), (40, 1428), (66, 1452))]
    lines += [((26, 1190), (62, 1168), (110, 1170), (140, 1196)), ((10, 770), (50, 800), (90, 830))]
    lines += [((74, 440), (92, 434), (110, 440))]
    found: list[Item] = []
    for line in lines:
        found += _both_sides(line)
    return found


def _back_lines() -> list[Item]:
    lines: list[Sequence[_Spot]] = [((40, 1330), (62, 1290), (58, 1240)), ((4, 770), (50, 752), (110, 758), (150, 790))]
    lines += [((70, 452), (92, 446), (112, 452))]
    found: list[Item] = [Stroke(_run(((0, 1400), (0, 1240), (0, 1070))), "kept")]
    for line in lines:
        found += _both_sides(line)
    return [*found, Stroke(_run(((0, 870), (0, 810), (0, 764))), "kept")]


def _both_sides(line: Sequence[_Spot]) -> list[Item]:
    right = _run(line)
    return [Stroke(right, "kept"), Stroke(tuple(_mirrored(right)), "kept")]


# ---- tapes ------------------------------------------------------------------------------------------------


def _tape(name: str, view: View) -> tuple[list[Item], _Spot, str]:
    """The drawn tape, the spot its number points to, and the margin ("left" or "right") it stands in."""
    if name in _WIDE:
        y, half = _WIDE[name]
        return [*_band((0, y), half, half * 0.11, name)], (half, y), "right"
    if name in _LEG:
        y, inner, outer = _LEG[name]
        middle, half = (inner + outer) / 2, (outer - inner) / 2
        return [*_band((middle, y), half, 9, name)], (outer, y), "right"
    if name in _ARM:
        (x, y), (half, lean) = _ARM[name]
        return [*_band((x, y), half, 8, name, lean)], (x + half, y + lean), "right"
    if name == "body_rise":
        return _seated()
    if name == "neck_base_girth":
        if view == "back":
            return [_line(((-66, 1452), (-34, 1448), (0, 1446), (34, 1448), (66, 1452)), name)], (66, 1452), "right"
        near = ((-66, 1452), (-36, 1422), (0, 1413), (36, 1422), (66, 1452))
        return [_line(near, name), _line(((-66, 1452), (0, 1466), (66, 1452)), name, "hidden")], (66, 1452), "right"
    line, spot, side = _LINES[name]
    return _arrows(line, name), spot, side


def _seated() -> tuple[list[Item], _Spot, str]:
    """A small sitting figure beside the standing one, seen from its side, with the body rise."""

    def run(points: Sequence[_Spot]) -> tuple[Curve, ...]:
        return _run([(_SEAT[0] + _SEAT[2] * x, _SEAT[1] + _SEAT[2] * y) for x, y in points])

    outline = (*run(_SIT_BACK), *run(_SIT_LEG), *run(_SIT_FRONT))
    neck = Line(outline[-1].end, outline[0].start)
    head = run(_SIT_HEAD)
    items: list[Item] = [Fill(head, "frame"), Stroke(head, "edge", closed=True)]
    items += [Fill((*outline, neck), "frame"), Stroke(outline, "edge")]
    for line in _CHAIR:
        items.append(Stroke(run(line), "cut"))
    items.append(Stroke(run(((-75, 790), (60, 790))), "hidden"))
    items.append(Stroke(run(((0, 790), (0, 452))), "new", arrow="both", name="body_rise"))
    return items, (_SEAT[0], _SEAT[1] + _SEAT[2] * 640), "right"


_LINES: dict[str, tuple[Sequence[_Spot], _Spot, str]] = {
    "shoulder_length": (((-66, 1452), (-110, 1436), (-176, 1410)), (-130, 1430), "left"),
    "front_width": (((-150, 1318), (150, 1318)), (-150, 1318), "left"),
    "back_width": (((-162, 1325), (162, 1325)), (162, 1325), "right"),
    "bust_point_width": (((-82, 1214), (82, 1214)), (-82, 1214), "left"),
    "neck_to_bust_point": (((-64, 1450), (-72, 1330), (-84, 1220)), (-72, 1340), "left"),
    "front_waist_length": (((64, 1450), (76, 1330), (84, 1214), (78, 1130), (72, 1042)), (80, 1100), "right"),
    "back_waist_length": (((0, 1446), (0, 1042)), (0, 1090), "left"),
    "armscye_depth": (((58, 1446), (58, 1268)), (58, 1370), "right"),
    "waist_to_hip": (((-123, 1042), (-150, 940), (-179, 837)), (-150, 930), "left"),
    "arm_length": (((-176, 1410), (-240, 1300), (-278, 1110), (-326, 892)), (-258, 1200), "left"),
    "total_crotch_length": (((0, 1042), (0, 900), (0, 764)), (0, 960), "left"),
    "waist_height": (((-232, 1042), (-232, 0)), (-232, 560), "left"),
    "outside_leg_length": (
        ((-125, 1042), (-158, 930), (-184, 837), (-187, 700), (-187, 350), (-187, 0)),
        (-187, 660),
        "left",
    ),
    "inside_leg_length": (((0, 762), (0, 0)), (0, 250), "left"),
    "height": (((-400, 1672), (-400, 0)), (-400, 300), "left"),
}


def _band(centre: _Spot, half: float, sag: float, name: str, lean: float = 0.0) -> list[Stroke]:
    """A tape around: the near side sags below its level, the far side is dashed above it."""
    x, y = centre
    left, right = (x - half, y - lean), (x + half, y + lean)
    near = (
        left,
        (x - half * 0.5, y - sag * 0.8 - lean / 2),
        (x, y - sag),
        (x + half * 0.5, y - sag * 0.8 + lean / 2),
        right,
    )
    far = (left, (x, y + sag * 0.6), right)
    return [_line(far, name, "hidden"), _line(near, name)]


def _arrows(line: Sequence[_Spot], name: str) -> list[Item]:
    items: list[Item] = [Stroke(_run(line), "new", arrow="both", name=name)]
    if name == "height":
        items += [_line(((-430, 1672), (0, 1672)), "", "guide"), _line(((-430, 0), (-150, 0)), "", "guide")]
    elif name == "waist_height":
        items += [_line(((-260, 1042), (-123, 1042)), "", "guide"), _line(((-260, 0), (-150, 0)), "", "guide")]
    elif name == "armscye_depth":
        items += [_line(((-190, 1268), (190, 1268)), "", "guide"), _line(((0, 1446), (58, 1446)), "", "guide")]
    return items


def _line(points: Sequence[_Spot], name: str, role: StrokeRole = "new") -> Stroke:
    return Stroke(_run(points), role, name=name)


def _numbers(tags: Sequence[tuple[int, _Spot, str]]) -> list[Item]:
    """Numbers in both margins, in the order of their tapes from the top and clear of each other, each with a
    thin line to its tape."""
    items: list[Item] = []
    for side, sign in (("left", -1.0), ("right", 1.0)):
        column = sorted((tag for tag in tags if tag[2] == side), key=lambda tag: -tag[1][1])
        heights = _spread([tag[1][1] for tag in column])
        for (number, spot, _), y in zip(column, heights, strict=True):
            end = (sign * (_MARGIN - (26 if number < 10 else 40)), y)
            items.append(Stroke((Line(_p(end), _p(spot)),), "mark"))
            items.append(Dot(_p(spot), "new"))
            items.append(Label(str(number), _p((sign * _MARGIN, y)), "new"))
    return items


def _spread(wanted: Sequence[float]) -> list[float]:
    """Heights, from the top down, as near as may be to `wanted` and at least `_NEAREST` apart."""
    blocks: list[tuple[float, int]] = []  # (centre, count)
    for y in wanted:
        blocks.append((y, 1))
        while len(blocks) > 1 and blocks[-2][0] - blocks[-1][0] < _NEAREST * (blocks[-2][1] + blocks[-1][1]) / 2:
            (b, m), (a, n) = blocks.pop(), blocks.pop()
            blocks.append(((a * n + b * m) / (n + m), n + m))
    return [centre + _NEAREST * ((count - 1) / 2 - k) for centre, count in blocks for k in range(count)]


# ---- small change -----------------------------------------------------------------------------------------


def _p(spot: _Spot) -> Point:
    return Point(float(spot[0]), float(spot[1]))


def _run(points: Sequence[_Spot]) -> tuple[Curve, ...]:
    return tuple(spline([_p(spot) for spot in points]))


def _mirrored(curves: Sequence[Curve]) -> list[Curve]:
    flip = Motion.reflection(Point(0.0, 0.0), Point(0.0, 1.0))
    return [curve.moved(flip) for curve in curves]
