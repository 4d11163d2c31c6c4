# Sätze von kit/sewing/operations/pockets.py.

pocket_hem-turn = { ACC($edge) } { $first } nach innen umbügeln.
pocket_hem-fold = An der Saumlinie { $second } auf die rechte Stoffseite umschlagen; beide Einschläge brauchen zusammen { $total }.
pocket_hem-ends = Beide Enden des Saums quer steppen, { $ends } von den Seitenkanten. Die Ecken abschrägen.
pocket_hem-out = Den Saum nach innen wenden, die Ecken ausformen und bügeln.
pocket_hem-sew = Den Saum nahe an seiner inneren Bruchkante feststeppen.
pocket_hem-why = Zuerst auf der rechten Stoffseite genäht und dann gewendet, liegen die Enden des Saums innen und können an den Ecken nicht hervorschauen.

fold_pocket-prepare_curved = Um jede runde Ecke { GEN($pocket) } in der Nahtzugabe eine Reihe langer Stiche nähen.
fold_pocket-prepare_mitred = { ACC($pocket) } an jeder unteren Ecke diagonal rechts auf rechts falten und im rechten Winkel zum Bruch steppen, vom Eckpunkt der Nahtlinien bis zur Kante. Auf wenige Millimeter zurückschneiden und die Ecke wenden.
fold_pocket-press = { ACC($edge) } { GEN($pocket) } { $allowance } nach innen umbügeln.
fold_pocket-square = An den unteren Ecken zuerst die untere Kante hochbügeln, dann die Seiten darüber; jede Ecke knapp innerhalb des Bruchs abschneiden.
fold_pocket-mitred = Die Ecken liegen flach, jede mit einer Naht von der Spitze aus.
fold_pocket-curved = Die langen Stiche über einer Pappschablone in der Form der fertigen Ecke zusammenziehen, die Kräuselfältchen flach bügeln und die Schablone herausnehmen.
fold_pocket-why_square = Die Umschläge kreuzen sich an der Ecke; das abgeschnittene Stückchen Stoff hält sie flach.
fold_pocket-why_mitred = Eine Briefecke hat keinen doppelten Umschlag: in dickem Stoff liegt sie am flachsten und rutscht beim Aufsteppen nicht heraus.
fold_pocket-why_curved = Über eine Schablone gezogen werden beide Ecken gleich und bekommen keine Spitzen.

patch_pocket-pin = { ACC($pocket) } mit der rechten Stoffseite nach oben auf die rechte Stoffseite legen, { DAT($place, with: "an") }, und stecken oder heften. Eine Hand darunterlegen: die Tasche darf nicht spannen.
patch_pocket-sew = { $distance } neben den Bruchkanten aufsteppen, eine Seite hinunter, unten entlang und die andere Seite hinauf. Den Eingriff offen lassen.
patch_pocket-secure = An beiden Enden des Eingriffs verriegeln oder ein kleines Dreieck steppen.
patch_pocket-why = Eine Hand in der Tasche zieht an den beiden Enden des Eingriffs; dort reißt er aus, und darum wird dort doppelt genäht.
