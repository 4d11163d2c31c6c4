# Sentences of kit/sewing/operations/hand_hems.py.

blind_hem-baste = Baste the hem near its fold, so that it cannot shift.
blind_hem-hand = Fold the top edge of the hem back a little and sew it from right to left with loose stitches: one through the hem, the next through a single thread of the garment.
blind_hem-machine = Fold the garment back so that the top edge of the hem stands out a little, and sew with the blind-hem stitch: the straight stitches lie on the hem, only each zigzag's tip catches the fold.
blind_hem-press = Take out the basting and press the fold only, so that the top edge leaves no mark on the right side.
blind_hem-why = Stitches hidden between hem and garment do not show, and left a little loose they do not pull.

wide_hem-ease = Sew a row of ease stitching along { $edge }, close to the raw edge: turned up, it is { $surplus } longer than the place where it will be sewn.
wide_hem-tape = Lay hem tape on the right side of the raw edge, half of its width over it, and stitch it close to its edge.
wide_hem-tape_eased = Draw the raw edge up by { $surplus }, lay hem tape on its right side, half of its width over it, and stitch it close to its edge.
wide_hem-draw = Pull up the ease stitching until the hem lies flat on the garment, and shrink the fullness with steam.
wide_hem-hand = Sew the top edge down by hand with loose blind stitches.
wide_hem-machine = Sew the top edge down with the machine's blind-hem stitch.
wide_hem-press = Press the fold only, so that the top edge leaves no mark on the right side.
wide_hem-why = A deep hem weighs the garment down so that it hangs well, and leaves cloth for letting down later.

rolled_hem-stay = Stitch a fine row { $row } from { $edge } as cut.
rolled_hem-trim = Trim close to the fine row, a little at a time.
rolled_hem-roll = With a moist thumb and finger roll the edge to the wrong side over the row, so that both disappear; it takes { $first } in all.
rolled_hem-slip = Slip-stitch the roll by hand: through the roll, then through one thread of the cloth.
rolled_hem-why = A rolled edge is the finest hem for sheer cloth: it is hardly wider than a thread is thick.
