# Was der Entwurf selbst über die Handhabung des Stoffs sagt.
handling-stretches = Schräg zum Fadenlauf geschnitten gibt Stoff nach, hier { DAT($place, with: "an") }. Flach auf dem Tisch liegen lassen, nicht ziehen; zuerst die Enden stecken, dann Passzeichen und Nähte, dann dazwischen.
handling-curved = Vor dem Stecken die Nahtzugabe { GEN($hollow) } alle { $near } bis { $far } bis kurz vor die Nahtlinie einschneiden, damit sie sich { DAT($other, with: "an") } spreizt. Mit der eingeschnittenen Lage oben nähen.
