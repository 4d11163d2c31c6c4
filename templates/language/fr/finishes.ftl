# Phrases de kit/sewing/operations/finishes.py.

edge_finish-sew = Finir le bord { $finish } : { $edge }.
edge_finish-why = Des points à cheval sur le bord brut retiennent les fils qui s’effilocheraient.

topstitch-sew = Surpiquer sur l’endroit, à { $distance } : { $edge }.
topstitch-edge = Surpiquer au ras sur l’endroit, à { $distance } : { $edge }.
topstitch-sew_rows = Surpiquer sur l’endroit { $rows } rangs espacés de { $apart }, le premier à { $distance } du bord : { $edge }.
topstitch-edge_rows = Surpiquer sur l’endroit { $rows } rangs espacés de { $apart }, le premier au ras, à { $distance } du bord : { $edge }.
topstitch-why = Une piqûre faite sur l’endroit tient le bord à plat et les épaisseurs en place, et elle est faite pour être vue.

staystitch-sew = Faire une piqûre de soutien à { $distance } à l’extérieur de la ligne de couture, pour que le bord ne puisse pas s’étirer : { $edge }.
staystitch-why = Une courbe coupée en travers du fil s’étire dès qu’on la manipule.
