# Sentences of kit/sewing/operations/facings.py.

fuse-lay = Lay the interfacing, adhesive side down, on the wrong side of { $pieces }.
fuse-press = Cover with a press cloth and press, lifting the iron from place to place. Let it cool flat.
fuse-why = Interfacing keeps an edge from stretching and gives buttons, bands and collars something firm to hold to. It is fused first, because a flat piece fuses without creases.

face_with_interfacing-lay = Lay the interfacing on the right side of { $pieces }, adhesive side up, and pin along { THE($edge) }.
face_with_interfacing-sew = Stitch { $allowance } from { THE($edge) }.
face_with_interfacing-clip = Clip the allowances where the edge curves, almost to the stitches.
face_with_interfacing-turn = Turn the interfacing over to the wrong side, so that the adhesive lies on the cloth, and finger-press the edge. No iron yet.
face_with_interfacing-fuse = Smooth both layers flat, cover with a press cloth and fuse. { START(THE($edge)) } is now finished.
face_with_interfacing-why = The seam shuts in both raw edges, and fusing comes last, because an iron before turning would glue the wrong sides.

attach_facing-pin = Pin { $facing } to { $edge }, right sides together.
attach_facing-sew = Stitch { $allowance } from the edge, all along it.
attach_facing-grade = Trim the allowance of the facing narrower than that of the garment.
attach_facing-clip = Clip the curves almost to the stitches and trim corners.
attach_facing-turn = Turn the facing to the inside and press, the seam at the very edge.
attach_facing-turn_only = Turn the facing to the inside.
attach_facing-why = Layers trimmed to different widths make no ridge; clips let a curved allowance lie flat once it is turned.

understitch-press = Open out { $facing } and press the allowances towards that side.
understitch-sew = Stitch on { $facing }, { $distance } beside the seam, through that layer and the allowances only.
understitch-roll = Fold { $facing } back inside and press: the seam rolls out of sight by itself.
understitch-why = The row pulls the seam a little to the inside, so that the facing cannot roll out and show.
