"""Sentences and numbers people read."""
