"""Checks on a pattern and its sewing order; each says what is wrong, where, by how much and what to do."""

from kit.proof.finding import Finding, failed
from kit.proof.prove import prove

__all__ = ["Finding", "failed", "prove"]
