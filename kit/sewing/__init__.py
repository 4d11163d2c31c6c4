"""Sewing operations and their order."""
