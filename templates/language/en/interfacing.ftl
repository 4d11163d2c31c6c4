# Sentences of kit/sewing/operations/interfacing.py.

baste_interfacing-lay = Lay the interfacing on the wrong side of { $pieces } and pin, both layers flat.
baste_interfacing-sew = Baste all round in the allowance, { $distance } outside the stitch line.
baste_interfacing-trim = When the seams are sewn, trim the interfacing close to the stitches and take out any basting that shows.
baste_interfacing-why = Sewn-in interfacing stays soft and needs no heat; basted in the allowance, it is caught by the seams and its own edge makes no ridge.
