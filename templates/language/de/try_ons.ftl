# Sätze zu kit/sewing/operations/try_ons.py.

try_on-wear = Anprobieren, auf links oder auf rechts gedreht, mit den Schuhen und der Wäsche, die dazu getragen werden.
try_on-mark = Mit Stecknadeln oder Kreide markieren: { $places }.
try_on-note = { $note }
try_on-found = Bei der Anprobe des ersten Stücks zeigte sich: { $note } Im Schnitt ist das schon geändert.
try_on-look = Prüfen, was sich bei der Anprobe des ersten Stücks zeigte: { $note }
try_on-changed = { $name }: bisher { $before }, von hier an { $after }.
try_on-changed_share = { $name }: bisher { $before } %, von hier an { $after } %.
try_on-changed_count = { $name }: bisher { $before }, von hier an { $after }.

try_on-line_all_along_in = { $place }: neue Nahtlinie durchgehend { $size } nach innen.
try_on-line_all_along_out = { $place }: neue Nahtlinie durchgehend { $size } nach außen.
try_on-line_to_nothing_in = { $place }: neue Nahtlinie am Ende bei { $at } { $size } nach innen, zum Ende bei { $to } hin auf null auslaufend.
try_on-line_to_nothing_out = { $place }: neue Nahtlinie am Ende bei { $at } { $size } nach außen, zum Ende bei { $to } hin auf null auslaufend.
try_on-line_early_in = { $place }: neue Nahtlinie am Ende bei { $at } { $size } nach innen, nach { $far } auf null ausgelaufen.
try_on-line_early_out = { $place }: neue Nahtlinie am Ende bei { $at } { $size } nach außen, nach { $far } auf null ausgelaufen.
try_on-line_unequal_in = { $place }: neue Nahtlinie nach innen, am Ende bei { $at } um { $size }, am Ende bei { $to } um { $other }.
try_on-line_unequal_out = { $place }: neue Nahtlinie nach außen, am Ende bei { $at } um { $size }, am Ende bei { $to } um { $other }.
try_on-line_middle_in = { $place }: neue Nahtlinie { $far } vom Ende bei { $at } am weitesten nach innen, um { $size }; zu beiden Enden hin nähert sie sich der alten.
try_on-line_middle_out = { $place }: neue Nahtlinie { $far } vom Ende bei { $at } am weitesten nach außen, um { $size }; zu beiden Enden hin nähert sie sich der alten.
try_on-line_crossing_in_out = { $place }: Die neue Nahtlinie kreuzt die alte; vom Ende bei { $at } an erst bis { $size } nach innen, dann bis { $other } nach außen.
try_on-line_crossing_out_in = { $place }: Die neue Nahtlinie kreuzt die alte; vom Ende bei { $at } an erst bis { $size } nach außen, dann bis { $other } nach innen.

try_on-unpick = { $place }: wo die beiden Linien auseinanderlaufen, auftrennen und auf der neuen ebenso wieder nähen.
try_on-open = { $place }: daneben so weit wie nötig öffnen und wieder schließen, wenn die neue Linie genäht ist.
try_on-basted = { $place }: Die Heftnaht liegt auf der alten Linie; herausziehen und auf der neuen heften.
try_on-trim = { $place }: auf { $allowance } außerhalb der neuen Linie zurückschneiden.
try_on-trim_line = { $place }: auf der neuen Linie abschneiden.
try_on-left = { $place }: Außerhalb der neuen Linie bleiben am Ende bei { $at } nur { $left } Zugabe.
try_on-left_far = { $place }: Außerhalb der neuen Linie bleiben { $far } vom Ende bei { $at } nur { $left } Zugabe.
try_on-redrawn = { $piece }: Die Kanten sind jetzt andere. Das neue Schnittteil auf den Stoff legen und seine Linien übertragen.
try_on-marks = { $piece }: neu markieren: { $marks }.
try_on-opening_moved = { $place }: die Öffnung hängt an einer Markierung, die jetzt woanders liegt; sie reicht nun { $stretch }. Die Naht dort schließen, wo die alte war, entlang der neuen auftrennen und deren Kanten wie zuvor einschlagen und steppen.
try_on-row_moved = { $place }: die Naht hängt an einer Markierung, die jetzt woanders liegt; sie endet nun { $spot }. Auftrennen, was darüber hinausgeht, oder bis dorthin weiternähen.
try_on-folds = { $piece }: neu markieren: { $folds }.
try_on-folds_unpick = { $piece }: auftrennen, neu markieren und neu nähen: { $folds }.
try_on-fresh = { $piece }: dieses Teil jetzt zuschneiden.
try_on-gone = { $piece }: Dieses Teil wird nicht mehr gebraucht.
try_on-strip_longer = { $strip }: von jetzt an { $size } länger.
try_on-strip_shorter = { $strip }: in der Länge { $size } abschneiden.
try_on-strip_wider = { $strip }: von jetzt an { $size } breiter.
try_on-strip_narrower = { $strip }: in der Breite { $size } abschneiden.

trim_to_fit-cut = { $edge }: die Anprobezugabe abschneiden; außerhalb der Nahtlinie bleiben { $allowance } Nahtzugabe.
trim_to_fit-why = Diese Zugabe war für die Anprobe; wenn der Sitz stimmt, würde sie in der Naht nur auftragen.
