# Sentences of kit/sewing/operations/trimming.py.

clip-cut = Clip the allowances along { $edge } about every { $spacing }, closer on a tight curve, with the points of the scissors, almost to the stitches.
clip-why = On a curve that bends inward the cut edge is shorter than the seam: clips let it spread when it is turned.

notch_curve-cut = Cut small wedges out of the allowances along { $edge }, almost to the stitches, closer together where the curve is sharper.
notch_curve-why = On a curve that bends outward the cut edge is longer than the seam: with wedges taken out it lies flat when it is turned.

trim-cut = Trim the allowances along { $edge } to { $to }.
trim-why = Cloth taken away where it would lie folded keeps the edge thin.

grade-cut = Grade the seam along { $edge }: trim this allowance to { $to } and leave the one nearer the outside { $wider } wide.
grade-why = Allowances that end at different widths make a slope instead of a ridge, and the wider one hides the narrower.

tack_down-sew = Tack { $edge } to the allowances of { $seam } with a few hand stitches that do not go through to the right side.
tack_down-why = Held at the seams only, a facing stays inside without a row that shows.
