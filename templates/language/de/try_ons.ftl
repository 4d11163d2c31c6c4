# Sätze zu kit/sewing/operations/try_ons.py.

try_on-wear = Anprobieren, auf links oder auf rechts gedreht, mit den Schuhen und der Wäsche, die dazu getragen werden.
try_on-mark = Mit Stecknadeln oder Kreide markieren: { $places }.
try_on-note = { $note }
try_on-found = Bei der Anprobe des ersten Stücks zeigte sich: { $note } Im Schnitt ist das schon geändert.
try_on-look = Prüfen, was sich bei der Anprobe des ersten Stücks zeigte: { $note }
try_on-changed = { $name }: bisher { $before }, von hier an { $after }.
try_on-changed_share = { $name }: bisher { $before } %, von hier an { $after } %.
try_on-changed_count = { $name }: bisher { $before }, von hier an { $after }.

try_on-line_all_along_in = Neue Nahtlinie ({ $place }): durchgehend { $size } innerhalb der alten.
try_on-line_all_along_out = Neue Nahtlinie ({ $place }): durchgehend { $size } außerhalb der alten.
try_on-line_to_nothing_in = Neue Nahtlinie ({ $place }): { $size } nach innen an dieser Kante: { $at }; bis hier auf null auslaufend: { $to }.
try_on-line_to_nothing_out = Neue Nahtlinie ({ $place }): { $size } nach außen an dieser Kante: { $at }; bis hier auf null auslaufend: { $to }.
try_on-line_early_in = Neue Nahtlinie ({ $place }): { $size } nach innen an dieser Kante: { $at }; { $far } weiter auf null ausgelaufen.
try_on-line_early_out = Neue Nahtlinie ({ $place }): { $size } nach außen an dieser Kante: { $at }; { $far } weiter auf null ausgelaufen.
try_on-line_unequal_in = Neue Nahtlinie ({ $place }): nach innen, { $size } an dieser Kante: { $at }; { $other } an dieser: { $to }.
try_on-line_unequal_out = Neue Nahtlinie ({ $place }): nach außen, { $size } an dieser Kante: { $at }; { $other } an dieser: { $to }.
try_on-line_middle_in = Neue Nahtlinie ({ $place }): am weitesten innen, um { $size }, ist sie { $far } von dieser Kante: { $at }; zu beiden Enden hin nähert sie sich der alten.
try_on-line_middle_out = Neue Nahtlinie ({ $place }): am weitesten außen, um { $size }, ist sie { $far } von dieser Kante: { $at }; zu beiden Enden hin nähert sie sich der alten.
try_on-line_crossing_in_out = Neue Nahtlinie ({ $place }): Sie kreuzt die alte. Von dieser Kante an: { $at }, erst bis { $size } nach innen, dann bis { $other } nach außen.
try_on-line_crossing_out_in = Neue Nahtlinie ({ $place }): Sie kreuzt die alte. Von dieser Kante an: { $at }, erst bis { $size } nach außen, dann bis { $other } nach innen.

try_on-unpick = Wo die beiden Linien auseinanderlaufen, die Naht auftrennen und auf der neuen ebenso wieder nähen: { $place }.
try_on-open = Daneben so weit wie nötig öffnen und wieder schließen, wenn die neue Linie genäht ist: { $place }.
try_on-basted = Die Heftnaht liegt auf der alten Linie; herausziehen und auf der neuen heften: { $place }.
try_on-trim = Auf { $allowance } außerhalb der neuen Linie zurückschneiden: { $place }.
try_on-trim_line = Auf der neuen Linie abschneiden: { $place }.
try_on-left = Außerhalb der neuen Linie ({ $place }) bleiben an dieser Kante nur { $left } Zugabe: { $at }.
try_on-left_far = Außerhalb der neuen Linie ({ $place }) bleiben nur { $left } Zugabe, { $far } von dieser Kante: { $at }.
try_on-redrawn = { $piece }: Die Kanten sind jetzt andere. Das neue Schnittteil auf den Stoff legen und seine Linien übertragen.
try_on-marks = { $piece }: neu markieren: { $marks }.
try_on-folds = { $piece }: neu markieren: { $folds }.
try_on-folds_unpick = { $piece }: auftrennen, neu markieren und neu nähen: { $folds }.
try_on-fresh = { $piece }: dieses Teil jetzt zuschneiden.
try_on-gone = { $piece }: Dieses Teil wird nicht mehr gebraucht.
try_on-strip_longer = { $strip }: von jetzt an { $size } länger.
try_on-strip_shorter = { $strip }: in der Länge { $size } abschneiden.
try_on-strip_wider = { $strip }: von jetzt an { $size } breiter.
try_on-strip_narrower = { $strip }: in der Breite { $size } abschneiden.

trim_to_fit-cut = Die Anprobezugabe abschneiden ({ $edge }): Außerhalb der Nahtlinie bleiben { $allowance } Nahtzugabe.
trim_to_fit-why = Diese Zugabe war für die Anprobe; wenn der Sitz stimmt, würde sie in der Naht nur auftragen.
