"""A second pen: a drawing on matplotlib axes, for PNG files and figures that hold other things too."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING

from kit.geometry import Curve, Line
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Label, Stroke
from kit.picture.lettering import upright
from kit.picture.svg_pen import bounds_of, shifted
from kit.picture.theme import THEME, Theme
from kit.units import set_fractions

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.path import Path as MplPath

_HATCH = {"": "", "dots": "..", "hatch": "//", "cross": "xx", "rings": "oo", "bars": "--", "posts": "||"}
_POINTS_PER_PX = 0.75


def draw(drawing: Drawing, ax: Axes, theme: Theme = THEME) -> None:
    """Draws on `ax` in mm with equal scales and no frame."""
    from matplotlib.patches import PathPatch

    for z, item in enumerate(drawing.items):
        if isinstance(item, Fill):
            cloth = theme.fills[item.role]
            ax.add_patch(
                PathPatch(
                    _path(item.curves, True),
                    facecolor=cloth.tint,
                    edgecolor=cloth.ink,
                    hatch=_HATCH[cloth.motif],
                    linewidth=0,
                    zorder=z,
                )
            )
        elif isinstance(item, Stroke):
            _stroke(item, ax, theme, z)
        elif isinstance(item, Dot):
            ink = theme.lines[item.role]
            ax.plot([item.at.x], [item.at.y], "o", color=ink.colour, markersize=4, zorder=z)
        elif isinstance(item, Label):
            text = theme.texts[item.role]
            _write(
                ax, item.text, item.at.x, item.at.y, item.angle, text.size, text.colour, text.bold, item.anchor, theme
            )
        else:
            _dimension(item, ax, theme, z)
    x0, y0, x1, y1 = bounds_of(drawing)
    room = 0.0 if drawing.bounds is not None else max(x1 - x0, y1 - y0) * 0.04
    ax.set_xlim(x0 - room, x1 + room)
    ax.set_ylim(y0 - room, y1 + room)
    ax.set_aspect("equal")
    ax.axis("off")


def _stroke(item: Stroke, ax: Axes, theme: Theme, z: float) -> None:
    from matplotlib.patches import PathPatch

    ink = theme.lines[item.role]
    width = ink.width * _POINTS_PER_PX
    style = (0, tuple(d * _POINTS_PER_PX / width for d in ink.dash)) if ink.dash else "solid"
    ax.add_patch(
        PathPatch(
            _path(item.curves, item.closed),
            fill=False,
            edgecolor=ink.colour,
            linewidth=width,
            linestyle=style,
            zorder=z,
        )
    )
    ends = []
    if item.arrow in ("start", "both"):
        ends.append((item.curves[0].start, item.curves[0].tangent(0.0) * -1.0))
    if item.arrow in ("end", "both"):
        ends.append((item.curves[-1].end, item.curves[-1].tangent(1.0)))
    for tip, ahead in ends:
        ax.annotate(
            "",
            xy=(tip.x, tip.y),
            xytext=(tip.x - ahead.x, tip.y - ahead.y),
            arrowprops={"arrowstyle": "-|>", "color": ink.colour, "linewidth": width},
            zorder=z,
        )


def _dimension(item: Dimension, ax: Axes, theme: Theme, z: float) -> None:
    from matplotlib.patches import PathPatch

    if item.along:
        curves: Sequence[Curve] = [shifted(c, item.offset) for c in item.along] if item.offset else item.along
    elif item.start.distance(item.end) > 1e-6:
        curves = [shifted(Line(item.start, item.end), item.offset)]
    else:
        curves = []
    text = theme.texts["measure"]
    if not curves:
        _write(ax, item.text, item.end.x, item.end.y, 0.0, text.size, text.colour, False, "middle", theme)
        return
    ink = theme.lines["measure"]
    ax.add_patch(PathPatch(_path(curves, False), fill=False, edgecolor=ink.colour, linewidth=0.6, zorder=z))
    for tip, ahead in ((curves[0].start, curves[0].tangent(0.0) * -1.0), (curves[-1].end, curves[-1].tangent(1.0))):
        ax.annotate(
            "",
            xy=(tip.x, tip.y),
            xytext=(tip.x - ahead.x, tip.y - ahead.y),
            arrowprops={"arrowstyle": "-|>", "color": ink.colour, "linewidth": 0.6},
            zorder=z,
        )
    middle = curves[len(curves) // 2]
    at, along = middle.point(0.5), middle.tangent(0.5)
    angle = upright(math.atan2(along.y, along.x))
    _write(ax, item.text, at.x, at.y, angle, text.size, text.colour, False, "middle", theme)


def _write(
    ax: Axes,
    text: str,
    x: float,
    y: float,
    angle: float,
    size: float,
    colour: str,
    bold: bool,
    anchor: str,
    theme: Theme,
) -> None:
    across = {"start": "left", "middle": "center", "end": "right"}[anchor]
    ax.text(
        x,
        y,
        set_fractions(text).replace("$", r"\$"),
        rotation=math.degrees(angle),
        rotation_mode="anchor",
        ha=across,
        va="center",
        fontsize=size * _POINTS_PER_PX,
        color=colour,
        fontweight="bold" if bold else "normal",
        bbox={"facecolor": theme.paper, "edgecolor": "none", "alpha": 0.86, "pad": 0.8},
        zorder=10_000,
    )


def _path(curves: Sequence[Curve], closed: bool) -> MplPath:
    from matplotlib.path import Path as MplPath

    points: list[tuple[float, float]] = []
    codes: list[int] = []
    last = None
    for curve in curves:
        if last is None or last.distance(curve.start) > 0.02:
            points.append((curve.start.x, curve.start.y))
            codes.append(int(MplPath.MOVETO))
        if isinstance(curve, Line):
            points.append((curve.end.x, curve.end.y))
            codes.append(int(MplPath.LINETO))
        else:
            for c in curve.as_cubics():
                points += [(c.c1.x, c.c1.y), (c.c2.x, c.c2.y), (c.end.x, c.end.y)]
                codes += [int(MplPath.CURVE4)] * 3
        last = curve.end
    if closed and points:
        points.append(points[0])
        codes.append(int(MplPath.CLOSEPOLY))
    return MplPath(points, codes)
