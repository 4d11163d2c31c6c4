# Die Zeichenfläche: die Schnittzeichnung am Bildschirm, mit Griffen zum Ziehen.

canvas-title = Die Schnittzeichnung: { $lesson }
canvas-help = Einen Griff ziehen, um seinen Wert zu ändern. Das Papier ziehen, um es zu verschieben; nach einem Klick darauf zoomt das Mausrad. Tab geht von Griff zu Linie; die Pfeiltasten bewegen einen Griff, mit Umschalt um zehn Schritte; Plus, Minus und 0 zoomen.
canvas-show = Ansicht
canvas-whole = Die Schnittzeichnung
# { $number }: welcher Schritt; { $title }: der Titel des Schritts.
canvas-step = Schritt { $number }: { $title }
canvas-nearer = Vergrößern
canvas-farther = Verkleinern
canvas-fit = Einpassen
canvas-undo = Rückgängig
canvas-redo = Wiederholen
canvas-layers = Ebenen
canvas-layer_grid = Raster
canvas-layer_body = Körperumriss
canvas-layer_block = Grundschnitt am Anfang
canvas-layer_ghost = Schritt davor
canvas-layer_stitch = Nahtlinien
canvas-layer_cut = Schneidelinien
canvas-layer_dims = Bemaßung
canvas-grid_cm = Raster: 1 cm, dick alle 10 cm
canvas-grid_cm_far = Raster: 10 cm, dick jeder Meter
canvas-grid_inch = Raster: 1 Zoll, dick alle 12 Zoll
canvas-grid_inch_far = Raster: 12 Zoll, dick alle 36 Zoll
# { $edge }: die Kante, wie man sie nennt; { $piece }: der Titel des Teils; { $length }: in beiden Einheiten.
canvas-edge = { $edge }, { $piece }: { $length }.
# { $shut }: die Länge mit zugelegten Abnähern, Falten und Biesen.
canvas-edge_shut = { $edge }, { $piece }: { $length }, zugelegt { $shut }.
# { $edges }: Kanten mit ihren Teilen.
canvas-sewn_to = Angenäht an { $edges }.
canvas-hemmed = Gesäumt.
canvas-faced = Belegt.
canvas-finished = Versäubert.
canvas-on_fold = Im Stoffbruch.
canvas-not_sewn = Nirgends angenäht.
canvas-point = { $point }, { $piece }
# { $parameter }: sein Name; { $value }: sein Wert in beiden Einheiten; { $why }: die Begründung der Lektion.
canvas-handle = { $parameter }: { $value }
canvas-handle_why = { $parameter }: { $value } ({ $why })
canvas-measure = { $name } { $value }
# { $measure }: ein Umfang, etwa „Taillenumfang“.
canvas-quarter = ¼ { $measure }: { $length }
canvas-silent = Der Kernel antwortet nicht. Falls er angehalten hat, neu starten und alle Zellen ausführen.
