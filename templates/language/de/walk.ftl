# Was an einer Stelle der Kante liegt, wenn eine Nahtlinie an der anderen abgerollt wird.

walk-start = Anfang
walk-end = Ende
walk-notch = Passzeichen
walk-double_notch = doppeltes Passzeichen
walk-corner = Ecke
# Wo zwei Kanten einer Reihe aneinanderstoßen.
walk-seam = { $first } an { $second }
# { $first } ist der Name einer auf der Kante markierten Öffnung.
walk-mark_start = Anfang: { $first }
walk-mark_end = Ende: { $first }
walk-both = { $names }
