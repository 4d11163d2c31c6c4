# Sentences of kit/sewing/operations/ties.py.

attach_handle-caught_place = Lay both ends of { THE($strip) } on the right side of { $run }, raw end to raw edge, { $spots }.
attach_handle-in_hem_place = On the inside lay both ends of { THE($strip) } on { $run }, raw end to raw edge, { $spots }.
attach_handle-stitched_on_place = On the inside lay both ends of { THE($strip) } { $lap } over { $run }, { $spots }.
attach_handle-notches = The notches mark both places.
attach_handle-twist = See that it is not twisted.
attach_handle-caught_sew = Baste the ends in the allowance; the next seam catches them. Keep the loop out of the way.
attach_handle-in_hem_sew = Baste the ends in the allowance. Turn the hem over them; when it is stitched, fold { THE($strip) } up over the hem and stitch it there too.
attach_handle-stitched_on_sew = Stitch each end down in a small box with a cross.
attach_handle-why = What carries weight is caught in a seam or hem and held by a second row: one row alone tears out.
