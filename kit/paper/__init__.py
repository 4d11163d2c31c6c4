"""Sheets, tiled pages and their files."""
