"""Drawings: one display list, several pens."""
