# Sentences of kit/sewing/operations/trimming.py.

clip-cut = Clip the allowances along { $edge } about every { $spacing } with the points of the scissors, almost to the stitches.
clip-cut_curve = Clip the allowances along { $edge } with the points of the scissors, almost to the stitches, about every { $spacing } where the curve is tightest.
clip-why = On a curve that bends inward the cut edge is shorter than the seam: clips let it spread when it is turned.

notch_curve-cut = Cut small wedges out of the allowances along { $edge } about every { $spacing }, almost to the stitches.
notch_curve-cut_curve = Cut small wedges out of the allowances along { $edge }, almost to the stitches, about every { $spacing } where the curve is tightest.
notch_curve-why = On a curve that bends outward the cut edge is longer than the seam: with wedges taken out it lies flat when it is turned.

clip_first-cut = Clip the allowance of { $edge } up to the staystitching, but not into it, with the points of the scissors, about every { $spacing } where the curve is tightest.
clip_first-cut_to_fit = Clip the allowance of { $edge } almost to its stitch line with the points of the scissors, about every { $spacing } where { $fit } curves most tightly.
clip_first-why = Clipped first, the edge spreads along the other one, so that both can be pinned and sewn without a fold.

trim-cut = Trim the allowances along { $edge } to { $to }.
trim-cut_half = Trim the allowances along { $edge } in half, to { $to }.
trim-why = Cloth taken away where it would lie folded keeps the edge thin.

grade-cut = Grade the seam along { $edge }: trim this allowance to { $to } and leave the one nearer the outside { $wider } wide.
grade-why = Allowances that end at different widths make a slope instead of a ridge, and the wider one hides the narrower.

trim_strip-sides = Trim the allowances along the seam of { THE($strip) } to { $to }.
trim_strip-sides_half = Trim the allowances along the seam of { THE($strip) } in half, to { $to }.
trim_strip-ends = Trim the allowances across the seamed end of { THE($strip) } to { $to } and cut the corners off.
trim_strip-ends_half = Trim the allowances across the seamed end of { THE($strip) } in half, to { $to }, and cut the corners off.
grade_strip-sides = Grade the seam of { THE($strip) }: trim one allowance to { $to } and leave the other { $wider } wide.
grade_strip-sides_on = Grade the seam that holds { THE($strip) }: trim the allowance of { THE($strip) } to { $to } and leave that of the garment { $wider } wide.
grade_strip-ends = Grade the seam across the end of { THE($strip) }: trim one allowance to { $to } and leave the other { $wider } wide. Cut the corners off.

tack_down-sew = Tack { $edge } to the allowances of { $seam } with a few hand stitches that do not go through to the right side.
tack_down-why = Held at the seams only, a facing stays inside without a row that shows.
