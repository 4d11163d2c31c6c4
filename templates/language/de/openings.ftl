# Sätze von kit/sewing/operations/openings.py. $beside ist eine Kante neben der Naht.

opening-leave_part = { $size } { GEN($edge) } offen lassen, von { $from } bis { $to } ab dem Anfang der Naht. An beiden Enden der Öffnung verriegeln.
opening-leave_part_from = { $size } { GEN($edge) } offen lassen: von { $from } bis { $to }, { DAT($beside, with: "von") } aus gemessen. An beiden Enden der Öffnung verriegeln.
opening-leave_mark = { ACC($mark) } zwischen den Markierungen offen lassen: { $size }, von { $from } bis { $to } ab dem Anfang der Naht. An beiden Enden der Öffnung verriegeln.
opening-leave_mark_from = { ACC($mark) } zwischen den Markierungen offen lassen: { $size }, von { $from } bis { $to }, { DAT($beside, with: "von") } aus gemessen. An beiden Enden der Öffnung verriegeln.
opening-leave_next = { DAT($edge, with: "an") } die { $size } offen lassen, die { DAT($beside, with: "an") } liegen. Verriegeln, wo die Öffnung auf die Naht trifft.
opening-leave_start = Die ersten { $size } { GEN($edge) } offen lassen. Verriegeln, wo die Öffnung auf die Naht trifft.
opening-leave_end = Die letzten { $size } { GEN($edge) } offen lassen. Verriegeln, wo die Öffnung auf die Naht trifft.
opening-gap_part = Zum Wenden { $size } { GEN($edge) } offen lassen, von { $from } bis { $to } ab dem Anfang der Naht. An beiden Enden der Wendeöffnung verriegeln.
opening-gap_part_from = Zum Wenden { $size } { GEN($edge) } offen lassen: von { $from } bis { $to }, { DAT($beside, with: "von") } aus gemessen. An beiden Enden der Wendeöffnung verriegeln.
opening-gap_next = Zum Wenden { DAT($edge, with: "an") } die { $size } offen lassen, die { DAT($beside, with: "an") } liegen. Verriegeln, wo die Wendeöffnung auf die Naht trifft.
opening-gap_start = Zum Wenden die ersten { $size } { GEN($edge) } offen lassen. Verriegeln, wo die Wendeöffnung auf die Naht trifft.
opening-gap_end = Zum Wenden die letzten { $size } { GEN($edge) } offen lassen. Verriegeln, wo die Wendeöffnung auf die Naht trifft.
opening-clip = An beiden Enden der Öffnung beide Nahtzugaben gerade einschneiden, { $depth } tief: bis zur Nahtlinie und keinen Faden weiter.
opening-clip_one = Wo die Öffnung auf die Naht trifft, beide Nahtzugaben gerade einschneiden, { $depth } tief: bis zur Nahtlinie und keinen Faden weiter.
opening-turn = Entlang der Öffnung jede Nahtzugabe an ihrer Nahtlinie auf die linke Seite des eigenen Teils falten, die offene Kante einschlagen und feststeppen. Bügeln.
opening-untrimmed = Entlang der Öffnung nichts zurückschneiden: dort sind die Nahtzugaben schon festgesteppt.
opening-again = Nicht über die Öffnung nähen; an ihren Enden verriegeln.
