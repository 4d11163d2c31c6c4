# Sentences of kit/sewing/operations/inseam.py.

pocket_bag-pin = Pin { $bag } to { $garment } at the marks for the pocket on { THE($edge) }, right sides together.
pocket_bag-sew = Stitch { $allowance } from the edge, from mark to mark, and backstitch at both.
pocket_bag-finish = Finish the raw edges together with { $finish }.
pocket_bag-press = Fold the bag outwards, away from the garment, and press the allowances towards the bag.
pocket_bag-why = Pressed and stitched away from the garment, the bag rolls inside and cannot show at the mouth.

pocket_seam-sew = Stitch { $allowance } from the edge down to the upper mark of the pocket, { $from }; leave the needle down.
pocket_seam-round = Pivot and stitch round { $bags }, { $bag_allowance } from their edge, to the lower mark. The mouth stays open for { $size }.
pocket_seam-on = Pivot again and stitch the seam on to its end.
pocket_seam-finish = Finish the raw edges of seam and bags with { $finish }.
pocket_seam-clip = Clip the allowance behind the seam at both ends of the mouth, so that the seam can be pressed.
pocket_seam-press = Press the pocket towards the front.
pocket_seam-why = Sewn in one row with a pivot at each mark, seam and bag have no weak place where they meet; the mouth lies in the line of the seam.
