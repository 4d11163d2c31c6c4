"""The sewing operations, a file for each family."""

from kit.sewing.operations.facings import AttachFacing, FaceWithInterfacing, Fuse, Understitch
from kit.sewing.operations.finishes import EdgeFinish, Staystitch, Topstitch, TryOn
from kit.sewing.operations.hems import Hem
from kit.sewing.operations.seams import FrenchSeam, PlainSeam, Seam
from kit.sewing.operations.strips import AttachStrip, BeltLoop, FoldStrip, TurnStrip

__all__ = [
    "AttachFacing",
    "AttachStrip",
    "BeltLoop",
    "EdgeFinish",
    "FaceWithInterfacing",
    "FoldStrip",
    "FrenchSeam",
    "Fuse",
    "Hem",
    "PlainSeam",
    "Seam",
    "Staystitch",
    "Topstitch",
    "TryOn",
    "TurnStrip",
    "Understitch",
]
