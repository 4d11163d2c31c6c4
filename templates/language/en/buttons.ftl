# Sentences of kit/sewing/operations/buttons.py.

buttonholes-try = Work one buttonhole on a scrap of the same layers first and try the button in it.
buttonholes-work = Mark and work { $places }, { $length } long, through all layers.
buttonholes-cut = Put a pin across each end and cut the slit open from the middle outwards with a seam ripper.
buttonholes-why = A buttonhole is as long as its button is wide and thick together: for a flat one about { $thick } more than it measures across. It needs interfacing, or it stretches.

buttons-find = Close the garment, put a pin through each buttonhole near its end, and mark where it comes out.
buttons-sew = Sew on { $count } buttons { $size } across at { $places }, with double thread.
buttons-one = Sew on a button { $size } across at the mark for { $places }, with double thread.
buttons-shank = Lay a pin under the thread while sewing, take it out, and wind the thread round below the button: a short shank.
buttons-why = The shank leaves room for the layer that is buttoned over.
