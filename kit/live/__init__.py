"""Widgets for the notebook: panel and canvas."""
