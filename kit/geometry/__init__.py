"""Points, lines, curves and outlines in millimetres."""
