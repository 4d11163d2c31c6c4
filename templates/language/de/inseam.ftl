# Sätze von kit/sewing/operations/inseam.py.

pocket_bag-pin = { ACC($bag) } { DAT($edge, with: "an") } rechts auf rechts auf { ACC($garment) } stecken, Taschenmarkierung auf Taschenmarkierung.
pocket_bag-sew = Im Abstand von { $allowance } zur Kante von Markierung zu Markierung steppen und an beiden verriegeln.
pocket_bag-finish = Die offenen Kanten zusammen { $finish }.
pocket_bag-press = Den Taschenbeutel nach außen klappen, weg vom Kleidungsstück, und die Nahtzugaben zum Beutel hin bügeln.
pocket_bag-why = Vom Kleidungsstück weggebügelt rollt der Beutel nach innen und zeigt sich am Eingriff nicht.

pocket_seam-sew = Im Abstand von { $allowance } zur Kante bis zur oberen Taschenmarkierung steppen, { $from }; die Nadel im Stoff lassen.
pocket_seam-round = Drehen und um { ACC($bags) } herumsteppen, { $bag_allowance } von der Kante, bis zur unteren Markierung. Der Eingriff bleibt { $size } weit offen.
pocket_seam-on = Wieder drehen und die Naht bis zum Ende steppen.
pocket_seam-finish = Die offenen Kanten von Naht und Beuteln { $finish }.
pocket_seam-clip = Die hintere Nahtzugabe an beiden Enden des Eingriffs einschneiden, damit sich die Naht bügeln lässt.
pocket_seam-press = Die Tasche nach vorn bügeln.
pocket_seam-why = In einem Zug genäht und an jeder Markierung gedreht, haben Naht und Beutel keine schwache Stelle, wo sie sich treffen; der Eingriff liegt in der Nahtlinie.
