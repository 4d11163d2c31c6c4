# Sätze von kit/sewing/operations/invisible_zip.py.

invisible_zip-coil = Den nahtverdeckten Reißverschluss ({ $length } lang) öffnen und beide Spiralen bei mäßiger Hitze von links so bügeln, dass sie vom Band abstehen. Franst der Stoff aus, die Schnittkanten der Öffnung jetzt versäubern.
invisible_zip-lay_first = Den offenen Reißverschluss mit der rechten Seite nach unten auf die rechte Stoffseite { GEN($under) } legen: die Spirale auf die Nahtlinie, { $allowance } von der Kante, das Band zur Schnittkante, der obere Anschlag { $top } unter der oberen Nahtlinie; stecken oder heften.
invisible_zip-stitch_first = Mit dem Fuß für nahtverdeckte Reißverschlüsse, oder einem Reißverschlussfuß bei zurückgerollter Spirale, dicht neben der Spirale von oben bis zum Ende der Öffnung steppen, oberhalb des Schiebers, und verriegeln.
invisible_zip-lay_second = Das andere Band ebenso mit der rechten Seite nach unten auf { ACC($over) } legen, nicht verdreht, die Enden auf gleicher Höhe, und von oben bis auf dieselbe Höhe steppen.
invisible_zip-close = Den Reißverschluss schließen: kein Band darf zu sehen sein, und beide Seiten müssen oben gleich hoch sein. Dann die Naht darunter mit dem Reißverschlussfuß nähen, von den letzten Stichen an und neben ihnen, das Ende des Reißverschlusses zur Seite gehalten.
invisible_zip-ends = Die losen Enden beider Bänder von Hand an den Nahtzugaben befestigen, sobald die Naht darunter genäht ist.
invisible_zip-why = Steht die Spirale ab, kommt die Nadel ganz dicht an sie heran, und der Stoff schließt sich darüber; zu weit daneben gesteppt ist das Band zu sehen, in die Spirale gesteppt klemmt der Reißverschluss.
invisible_zip-why_seam = Jede Seite wird flach liegend an ihr Band genäht; die Naht darunter kommt zuletzt, weil sie an die letzten Stiche herangeführt werden kann, während der Fuß am Schieber nicht vorbeikommt, um eine vorhandene Naht zu treffen.
