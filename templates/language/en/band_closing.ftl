# Sentences of kit/sewing/operations/band_closing.py.

close_band-turn = Turn { $edge } under by { $allowance } and press.
close_band-pin = Lay its fold over the seam, just past the stitches, and pin or baste.
close_band-edgestitch = Edgestitch from the right side through all layers, catching the fold underneath.
close_band-groove = From the right side stitch in the groove of the seam, catching the fold underneath.
close_band-hand = Slip stitch the fold to the stitches by hand.
close_band-why = Laid a hair past the seam, the fold is surely caught by a row sewn from the other side.
