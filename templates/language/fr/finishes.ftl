# Phrases de kit/sewing/operations/finishes.py.

edge_finish-sew = { START($finish) } { LE($edge) }.
edge_finish-why = Des points à cheval sur le bord brut retiennent les fils qui s’effilocheraient.

topstitch-sew = Surpiquer { LE($edge) } sur l’endroit, à { $distance } du bord.
topstitch-edge = Surpiquer { LE($edge) } sur l’endroit, au ras du bord, à { $distance }.
topstitch-sew_rows = Surpiquer { LE($edge) } sur l’endroit en { $rows } rangs espacés de { $apart }, le premier à { $distance } du bord.
topstitch-edge_rows = Surpiquer { LE($edge) } sur l’endroit en { $rows } rangs espacés de { $apart }, le premier au ras du bord, à { $distance }.
topstitch-why = Une piqûre faite sur l’endroit tient le bord à plat et les épaisseurs en place, et elle est faite pour être vue.

staystitch-sew = Faire une piqûre de soutien le long { DU($edge) }, à { $distance } à l’extérieur de la ligne de couture, pour que le bord ne s’étire pas.
staystitch-why = Une courbe coupée en travers du fil s’étire dès qu’on la manipule.
