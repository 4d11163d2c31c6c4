# Sentences of kit/sewing/operations/sleeves.py.

set_in_sleeve-place = Turn the garment inside out and { $sleeve } right side out, and put the sleeve into the armhole, right sides together. See that left and right are not mistaken.
set_in_sleeve-pin = Pin the cap to { $edge }, the underarm seams together and the top of the cap at the shoulder seam, from the sleeve's side.
set_in_sleeve-pin_notched = Pin the cap to { $edge }, the underarm seams together, the top of the cap at the shoulder seam, and notch on notch, from the sleeve's side.
set_in_sleeve-ease = Draw up the ease stitching until the cap fits: { $ease } of fullness lies over the upper part, none under the arm. It must show no gathers on the stitch line.
set_in_sleeve-sew = Stitch { $allowance } from the edge with the sleeve uppermost, beginning under the arm, and stitch the underarm part twice.
set_in_sleeve-trim = Trim both allowances of the part under the arm in half.
set_in_sleeve-finish = Finish the raw edges together with { $finish }.
set_in_sleeve-press = Press the allowances over the cap towards the sleeve; do not press the seam flat from the right side.
set_in_sleeve-press_open = Press the seam open over the cap, on a tailor’s ham; where the open part ends clip both allowances, so that they stay together and upright under the arm.
set_in_sleeve-press_garment = Press the allowances over the cap towards the garment; do not press the seam flat from the right side.
set_in_sleeve-finish_apart = Finish each raw edge by itself with { $finish }.
set_in_sleeve-why = The cap is longer than the armhole because it must round itself over the shoulder. Drawn in by long stitches first, the fullness cannot slip to one side.
