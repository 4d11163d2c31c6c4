"""Checks on the pattern and the sewing order."""
