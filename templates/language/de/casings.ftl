# Sätze von kit/sewing/operations/casings.py.

casing-first = { ACC($edge) } { $first } nach innen umbügeln.
casing-second = Noch einmal { $second } einschlagen und bügeln; Zugabe insgesamt: { $total }.
casing-sew = { $row } neben der inneren Bruchkante steppen, die ganze Kante entlang.
casing-sew_gap = { $row } neben der inneren Bruchkante steppen, dabei { DAT($where, with: "an") } zum Einziehen { $gap } offen lassen. An beiden Enden der Öffnung verriegeln.
casing-why = Der Tunnel ist etwas breiter als das, was darin läuft, damit es sich einziehen lässt und sich doch nicht verdreht.
