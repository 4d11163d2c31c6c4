# Sätze von kit/sewing/operations/finishes.py.

edge_finish-sew = { ACC($edge) } { $finish }.
edge_finish-why = Stiche über der offenen Kante halten die Fäden fest, die sonst ausfransen würden.

topstitch-sew = { ACC($edge) } von der rechten Stoffseite absteppen, { $distance } neben der Kante.
topstitch-edge = { ACC($edge) } von der rechten Stoffseite knappkantig absteppen, { $distance } neben der Kante.
topstitch-sew_rows = { ACC($edge) } von der rechten Stoffseite in { $rows } Reihen absteppen, im Abstand von { $apart }, die erste { $distance } neben der Kante.
topstitch-edge_rows = { ACC($edge) } von der rechten Stoffseite in { $rows } Reihen absteppen, im Abstand von { $apart }, die erste knappkantig, { $distance } neben der Kante.
topstitch-why = Eine Naht von der rechten Stoffseite hält die Kante flach und die Lagen an ihrem Platz, und sie soll zu sehen sein.

staystitch-sew = { DAT($edge, with: "an") } { $distance } außerhalb der Nahtlinie eine Stütznaht steppen, damit sich die Kante nicht dehnt.
staystitch-why = Eine quer zum Fadenlauf geschnittene Rundung dehnt sich, sobald man sie anfasst.
