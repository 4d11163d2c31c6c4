# Sätze zu kit/sewing/operations/try_ons.py.

try_on-wear = Anprobieren, auf links oder auf rechts gedreht, mit den Schuhen und der Wäsche, die dazu getragen werden.
try_on-wear_head = Aufsetzen, auf links oder auf rechts gedreht.
try_on-mark = { ACC($places) } mit Stecknadeln oder Kreide markieren.
try_on-note = { $note }
try_on-found = Bei der Anprobe des ersten Stücks zeigte sich: { $note } Im Schnitt ist das schon geändert.
try_on-look = Prüfen, was sich bei der Anprobe des ersten Stücks zeigte: { $note }
try_on-changed = { $name }: bisher { $before }, von hier an { $after }.
try_on-changed_share = { $name }: bisher { $before } %, von hier an { $after } %.
try_on-changed_count = { $name }: bisher { $before }, von hier an { $after }.

try_on-line_all_along_in = Die neue Nahtlinie { GEN($place) } verläuft durchgehend { $size } weiter innen.
try_on-line_all_along_out = Die neue Nahtlinie { GEN($place) } verläuft durchgehend { $size } weiter außen.
try_on-line_to_nothing_in = Die neue Nahtlinie { GEN($place) } verläuft { DAT($at, with: "an") } { $size } weiter innen, { DAT($to, with: "zu") } hin auslaufend.
try_on-line_to_nothing_out = Die neue Nahtlinie { GEN($place) } verläuft { DAT($at, with: "an") } { $size } weiter außen, { DAT($to, with: "zu") } hin auslaufend.
try_on-line_early_in = Die neue Nahtlinie { GEN($place) } verläuft { DAT($at, with: "an") } { $size } weiter innen, nach { $far } ausgelaufen.
try_on-line_early_out = Die neue Nahtlinie { GEN($place) } verläuft { DAT($at, with: "an") } { $size } weiter außen, nach { $far } ausgelaufen.
try_on-line_unequal_in = Die neue Nahtlinie { GEN($place) } verläuft weiter innen, { DAT($at, with: "an") } um { $size }, { DAT($to, with: "an") } um { $other }.
try_on-line_unequal_out = Die neue Nahtlinie { GEN($place) } verläuft weiter außen, { DAT($at, with: "an") } um { $size }, { DAT($to, with: "an") } um { $other }.
try_on-line_middle_in = Die neue Nahtlinie { GEN($place) } verläuft { $far } { DAT($at, with: "von") } entfernt am weitesten nach innen, um { $size }; zu beiden Enden hin nähert sie sich der alten.
try_on-line_middle_out = Die neue Nahtlinie { GEN($place) } verläuft { $far } { DAT($at, with: "von") } entfernt am weitesten nach außen, um { $size }; zu beiden Enden hin nähert sie sich der alten.
try_on-line_crossing_in_out = { DAT($place, with: "an") } kreuzt die neue Nahtlinie die alte: { DAT($at, with: "von") } an erst bis { $size } nach innen, dann bis { $other } nach außen.
try_on-line_crossing_out_in = { DAT($place, with: "an") } kreuzt die neue Nahtlinie die alte: { DAT($at, with: "von") } an erst bis { $size } nach außen, dann bis { $other } nach innen.

try_on-unpick = { ACC($place) } auftrennen, wo die beiden Linien auseinanderlaufen, und auf der neuen ebenso wieder nähen.
try_on-open = { ACC($place) } daneben so weit wie nötig öffnen und wieder schließen, wenn die neue Linie genäht ist.
try_on-basted = Die Heftnaht { DAT($place, with: "an") } liegt auf der alten Linie: herausziehen und auf der neuen heften.
try_on-trim = { ACC($place) } auf { $allowance } außerhalb der neuen Linie zurückschneiden.
try_on-trim_line = { ACC($place) } auf der neuen Linie abschneiden.
try_on-left = { DAT($place, with: "an") } bleiben außerhalb der neuen Linie, und zwar { DAT($at, with: "an") }, nur { $left } Zugabe.
try_on-left_far = { DAT($place, with: "an") } bleiben außerhalb der neuen Linie, { $far } { DAT($at, with: "von") } entfernt, nur { $left } Zugabe.
try_on-redrawn = { $piece }: Die Kanten sind jetzt andere. Das neue Schnittteil auf den Stoff legen und seine Linien übertragen.
try_on-marks = Auf { DAT($piece) } { ACC($marks) } neu markieren.
try_on-opening_moved = Die Öffnung { DAT($place, with: "an") } hängt an einer Markierung, die jetzt woanders liegt; sie reicht nun { $stretch }. Die Naht dort schließen, wo die alte war, entlang der neuen auftrennen und deren Kanten wie zuvor einschlagen und steppen.
try_on-row_moved = Die Naht { DAT($place, with: "an") } hängt an einer Markierung, die jetzt woanders liegt; sie endet nun { $spot }. Auftrennen, was darüber hinausgeht, oder bis dorthin weiternähen.
try_on-folds = Auf { DAT($piece) } { ACC($folds) } neu markieren.
try_on-folds_unpick = Auf { DAT($piece) } { ACC($folds) } auftrennen, neu markieren und neu nähen.
try_on-fresh = { $piece }: dieses Teil jetzt zuschneiden.
try_on-gone = { $piece }: Dieses Teil wird nicht mehr gebraucht.
try_on-strip_longer = { $strip }: von jetzt an { $size } länger.
try_on-strip_shorter = { $strip }: in der Länge { $size } abschneiden.
try_on-strip_wider = { $strip }: von jetzt an { $size } breiter.
try_on-strip_narrower = { $strip }: in der Breite { $size } abschneiden.

trim_to_fit-cut = { DAT($edge, with: "an") } die Anprobezugabe abschneiden; außerhalb der Nahtlinie bleiben { $allowance } Nahtzugabe.
trim_to_fit-why = Diese Zugabe war für die Anprobe; wenn der Sitz stimmt, würde sie in der Naht nur auftragen.
