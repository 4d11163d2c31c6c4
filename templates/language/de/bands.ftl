# Sätze von kit/sewing/operations/bands.py.

seam_band-catch = { ACC($caught) } auf der rechten Seite { DAT($on, with: "an") } auflegen, Schnittkanten und Mitten aufeinander, und heften; beim Annähen wird diese Kante zwischen den beiden Lagen mitgefasst.
seam_band-why = Der äußere Bund ist der sichtbare; er bekommt Einlage, damit sich die Nähte nicht abzeichnen und er sich nicht abträgt.

band_ends-fold = { ACC($pieces) } der Länge nach rechts auf rechts falten, Kante auf Kante.
band_ends-fold_marked = { ACC($pieces) } an der markierten Linie der Länge nach rechts auf rechts falten; eine lange Kante steht über die andere vor.
band_ends-sew = { DAT($edge, with: "an") } quer steppen, durch beide Lagen, { $allowance } von der Schnittkante, und am Bruch verriegeln.
band_ends-sew_set = { DAT($edge, with: "an") } quer steppen, { $allowance } von der Schnittkante, vom Bruch bis zur Ansatznaht, nur durch die beiden Lagen des angesetzten Teils. Das Kleidungsstück dabei weghalten und an beiden Enden verriegeln.
band_ends-extra = Am Übertritt um die Ecke weitersteppen, durch beide Längskanten, bis dorthin, wo das Kleidungsstück beginnt. Dort die Nahtzugabe bis an die Stiche einschneiden.
band_ends-trim = Nahtzugaben zurückschneiden und die Ecken bis dicht an die Stiche abschrägen.
band_ends-why = Die Enden werden von innen genäht und gewendet, damit am Verschluss keine offene Kante bleibt.

set_band-staystitch = { DAT($edge, with: "an") } { $row } außerhalb der Nahtlinie eine Stütznaht steppen und die Nahtzugabe bis an sie einschneiden, in der engsten Rundung etwa alle { $spacing }; so spreizt sie sich und liegt gerade { DAT($band, with: "an") } an.
set_band-clip_curve = Die Nahtzugabe { GEN($edge) } bis an die Stütznaht einschneiden, in der engsten Rundung etwa alle { $spacing }; so spreizt sie sich und liegt gerade { DAT($band, with: "an") } an.
set_band-clip_band = Die Nahtzugabe { GEN($straight) } bis fast an die Nahtlinie einschneiden, dort, wo { NOM($edge) } am engsten gerundet ist, etwa alle { $spacing }: so spreizt sie sich um die Rundung.
set_band-catch = { ACC($caught) } flach auf die linke Seite legen, Schnittkanten bündig; diese Kante wird in der Naht mitgefasst.
set_band-pin = { ACC($band) } rechts auf rechts auf { ACC($edge) } stecken.
set_band-match = Mitten, Nähte und Passzeichen aufeinandertreffen lassen; die Enden { GEN($band) } liegen genau an den Enden der Kante.
set_band-match_raw = Mitten, Nähte und Passzeichen aufeinandertreffen lassen; die Nahtlinien an den Enden { GEN($band) } liegen genau an den fertigen Enden der Kante, die Zugaben stehen darüber hinaus.
set_band-match_ring = Beides ist zum Ring geschlossen: zuerst die Naht { GEN($band) } auf eine Naht der Kante stecken, dann Mitten und Passzeichen, dann die Strecken dazwischen.
set_band-ends_beyond = Mitten, Nähte und Passzeichen aufeinandertreffen lassen; { NOM($band) } steht { DAT($end, with: "an") } { $beyond } über die Kante hinaus.
set_band-ends_beyond_raw = Mitten, Nähte und Passzeichen aufeinandertreffen lassen; { NOM($band) } steht { DAT($end, with: "an") } { $beyond } und die Nahtzugabe über die Kante hinaus, am anderen Ende nur die Nahtzugabe.
set_band-ease = Die Kante ist mit Absicht insgesamt um { $ease } länger: die Mehrweite gleichmäßig verteilen und stecken.
set_band-pull = Die Kante ist insgesamt um { $ease } länger: beide an den Vierteln aufeinanderstecken und beim Nähen { ACC($band) } bis auf die Länge der Kante dehnen, nie die Kante selbst.
set_band-sew = Im Abstand von { $allowance } zur Kante steppen.
set_band-trim = Nahtzugaben abstufen: die des Kleidungsstücks schmaler zurückschneiden als die { GEN($band) }.
set_band-clip = Die Zugaben in den Rundungen bis fast an die Stiche einschneiden.
set_band-press = { ACC($band) } vom Kleidungsstück weg bügeln, beide Nahtzugaben in das angesetzte Teil hinein.
set_band-why = Die Zugaben füllen das angesetzte Teil und werden beim Schließen darin eingeschlossen; sie liegen nie auf dem Kleidungsstück, wo sie sich durchdrücken würden.

close_band-turn = { ACC($edge) } { $turned } nach innen einschlagen und bügeln.
close_band-pin = Die Bruchkante über die Naht legen, gerade über die Stiche hinaus, und stecken oder heften.
close_band-edgestitch = Von der rechten Stoffseite knappkantig durch alle Lagen steppen und dabei die untere Bruchkante mitfassen.
close_band-groove = Von der rechten Stoffseite im Nahtschatten steppen und dabei die untere Bruchkante mitfassen.
close_band-hand = Die Bruchkante von Hand mit Staffierstichen an der Nahtlinie annähen.
close_band-seams = Die Bruchkante an jeder Naht, auf die sie trifft, mit einigen Handstichen an den Nahtzugaben darunter befestigen, ohne auf die rechte Seite durchzustechen; dazwischen liegt sie lose.
close_band-why = Ein klein wenig über die Naht gelegt, wird die Bruchkante von einer Naht von der anderen Seite sicher mitgefasst.
