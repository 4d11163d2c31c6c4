# Was der Entwurf selbst über die Handhabung des Stoffs sagt.
handling-stretches = Schräg zum Fadenlauf geschnitten gibt Stoff nach: { $place }. Flach auf dem Tisch liegen lassen, nicht ziehen; zuerst die Enden stecken, dann Passzeichen und Nähte, dann dazwischen.
handling-curved = Vor dem Stecken die Nahtzugabe bis kurz vor die Nahtlinie einschneiden, alle 1 bis 2 cm ({ $hollow }), damit sie sich öffnet und der anderen Kante folgt ({ $other }). Mit der eingeschnittenen Lage oben nähen.
