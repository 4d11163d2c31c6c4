"""An address as a QR code (ISO/IEC 18004), drawn as SVG. Its squares are found by ReportLab's encoder."""

from __future__ import annotations

from html import escape

QUIET = 4
"""Modules of white round about, as the standard asks."""


def modules(text: str) -> list[list[bool]]:
    """The code's squares by rows, dark ones true, without the white about them. Level M: a seventh may be lost."""
    from reportlab.graphics.barcode import qrencoder  # a tenth of what a build loads, and few booklets have a code

    code = qrencoder.QRCode(None, qrencoder.QRErrorCorrectLevel.M)
    code.addData(text)
    code.make()
    side = code.getModuleCount()
    return [[bool(code.isDark(row, column)) for column in range(side)] for row in range(side)]


def qr_svg(text: str, alt: str = "") -> str:
    """The code of `text` (an address: ASCII) as an SVG element, one unit for each square."""
    rows = modules(text)
    side = len(rows) + 2 * QUIET
    dark = "".join(
        f"M{x + QUIET} {y + QUIET}h1v1h-1z" for y, row in enumerate(rows) for x, square in enumerate(row) if square
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" role="img" aria-label="{escape(alt)}" '
        f'shape-rendering="crispEdges"><path fill="#fff" d="M0 0h{side}v{side}H0z"/>'
        f'<path fill="#000" d="{dark}"/></svg>'
    )
