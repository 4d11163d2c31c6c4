# Sätze von kit/sewing/operations/hems.py.

hem-catch = { ACC($caught) } innen flach hinlegen; diese Kante wird beim Säumen mitgefasst.
hem-clip_ends = Die Zugabe { DAT($ends, with: "an") } bis knapp vor die Nahtlinie einschneiden, damit sich dieses Stück für sich umschlagen lässt.
hem-first = { ACC($edge) } { $first } nach innen umbügeln.
hem-second = Noch einmal { $second } einschlagen und bügeln; Saumzugabe insgesamt: { $total }.
hem-narrow = { ACC($edge) } { $first } nach innen umbügeln, dann noch einmal { $second } einschlagen und bügeln; Saumzugabe insgesamt: { $total }.
hem-finish = Die offene Kante { GEN($edge) } { $finish }.
hem-single = { ACC($edge) } { $first } nach innen umbügeln.
hem-sew = { $row } neben der inneren Bruchkante steppen.
hem-sew_single = { $row } neben der versäuberten Kante steppen.
hem-sew_raw = { $row } neben der offenen Kante steppen.
hem-press = Den Saum bügeln.
hem-ring = Das Teil auf links drehen und mit dem Freiarm der Maschine rundherum nähen, Anfang und Ende an einer Naht.
hem-lap_rows = Die Naht einige Stiche über ihren Anfang hinauslaufen lassen.
hem-why_once = Einmal umgeschlagen ist ein Saum dünn und fällt weich; seine offene Kante muss gegen das Ausfransen gesichert werden.
hem-why_twice = Zweimal umgeschlagen ist die offene Kante eingeschlossen, und der Saum muss nicht versäubert werden.
hem-why_narrow = Je schmaler der Saum, desto besser folgt er einer Rundung.
