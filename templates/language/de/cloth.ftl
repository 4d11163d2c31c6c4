# Was der Stoff beim Auflegen verlangt.

cloth-nap = Alle Teile mit dem oberen Ende in dieselbe Richtung legen: keines wird gedreht, weder hier noch beim Zuschneiden.
cloth-print = Alle Teile mit dem oberen Ende in dieselbe Richtung legen: keines wird gedreht, weder hier noch beim Zuschneiden. Das Muster an den Nähten aufeinander abstimmen; dafür je Reihe von Teilen einen Rapport mehr kaufen.
