"""Lays, yardage, cut list and notions."""
