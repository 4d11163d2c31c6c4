# Sentences of kit/sewing/operations/bands.py.

seam_band-catch = Lay { $caught } along { $on } on the right side, raw edges even and centres matched, and baste: the seam catches it between the two layers.
seam_band-why = The outer band is the one that shows; it is interfaced, so that the seams and the wear do not show through.

band_ends-fold = Fold { $pieces } lengthwise, right sides together, edge to edge.
band_ends-fold_marked = Fold { $pieces } lengthwise along the marked line, right sides together; one long edge reaches beyond the other.
band_ends-sew = Stitch across at { THE($edge) }, { $allowance } from the cut edge, through both layers, and backstitch at the fold.
band_ends-sew_set = Stitch across at { THE($edge) }, { $allowance } from the cut edge, from the fold to the seam that holds the band, through its two layers only. Keep the garment out of the way, and backstitch at both ends.
band_ends-extra = At the overlap carry the row on round the corner, through both long edges, up to where the garment begins. Clip the allowance there up to the stitches.
band_ends-trim = Trim the allowances and cut the corners off close to the stitches.
band_ends-why = The ends are stitched from inside and turned, so that no raw edge is left where the band is fastened.

set_band-staystitch = Staystitch { $edge } { $row } outside the stitch line and clip the allowance up to that row, about every { $spacing } where the curve is tightest: so it spreads and lies straight along { $band }.
set_band-clip_curve = Clip the allowance of { $edge } up to the staystitching, about every { $spacing } where the curve is tightest: so it spreads and lies straight along { $band }.
set_band-clip_band = Clip the allowance of { $straight } almost to its stitch line, about every { $spacing } where { $edge } curves most tightly, so that it spreads around the curve.
set_band-catch = Lay { $caught } flat on the wrong side, raw edges even, so that the seam catches it.
set_band-pin = Pin { $band } to { $edge }, right sides together.
set_band-match = Match centres, seams and notches; the ends of { $band } lie exactly at the ends of the edge.
set_band-match_raw = Match centres, seams and notches; the stitch lines across the ends of { $band } lie exactly at the finished ends of the edge, the allowances reach beyond them.
set_band-match_ring = Both are closed rings: pin the seam of { $band } to a seam of the edge first, then centres and notches, then what lies between.
set_band-ends_beyond = Match centres, seams and notches; at its { $end } { $band } reaches { $beyond } beyond the edge.
set_band-ends_beyond_raw = Match centres, seams and notches; at its { $end } { $band } reaches { $beyond } and its allowance beyond the edge, at the other end its allowance alone.
set_band-ease = The edge is { $ease } longer in all on purpose: spread that fullness evenly and pin it.
set_band-pull = The edge is { $ease } longer in all: pin both together at their quarters and, while you stitch, stretch { $band } to the edge, never the edge itself.
set_band-sew = Stitch { $allowance } from the edge.
set_band-trim = Trim the allowances, that of the garment narrower than that of { $band }.
set_band-clip = Clip the allowances where they curve, almost to the stitches.
set_band-press = Press { $band } away from the garment, both allowances into it.
set_band-why = The allowances fill the band and are shut in when it is closed; they never lie on the garment, where they would press through.

close_band-turn = Turn { $edge } under by { $turned } and press.
close_band-pin = Lay its fold over the seam, just past the stitches, and pin or baste.
close_band-edgestitch = Edgestitch from the right side through all layers, catching the fold underneath.
close_band-groove = From the right side stitch in the groove of the seam, catching the fold underneath.
close_band-hand = Slip stitch the fold to the stitches by hand.
close_band-seams = At every seam it meets sew the fold to the allowances underneath with a few hand stitches that do not go through to the right side; between them it lies loose.
close_band-why = Laid a hair past the seam, the fold is surely caught by a row sewn from the other side.
