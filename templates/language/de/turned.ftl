# Sätze von kit/sewing/operations/turned.py.

seam_to_turn-sew = Im Abstand von { $allowance } zur Kante steppen. An den Ecken mit der Nadel im Stoff anhalten, das Füßchen heben und drehen.
seam_to_turn-sew_smooth = Im Abstand von { $allowance } zur Kante rundherum steppen.
seam_to_turn-sew_gap = Im Abstand von { $allowance } zur Kante steppen, dabei zum Wenden { $size } { GEN($edge) } offen lassen, { DAT($from, with: "von") } aus gemessen. An beiden Enden der Öffnung verriegeln.
seam_to_turn-extra = Unterhalb des Übertritts um die Ecke weitersteppen, bis dorthin, wo das Kleidungsstück beginnt. Dort die Nahtzugabe bis an die Stiche einschneiden.
seam_to_turn-trim = Die Nahtzugaben zurückschneiden, eine schmaler als die andere, und die Ecken bis dicht an die Stiche abschrägen.
seam_to_turn-trim_smooth = Die Nahtzugaben zurückschneiden, eine schmaler als die andere.
seam_to_turn-clip = Die Zugaben an Innenrundungen bis fast an die Stiche einschneiden, in der engsten Rundung etwa alle { $spacing }.
seam_to_turn-notch = Aus den Zugaben an Außenrundungen Keile herausschneiden, bis fast an die Stiche, in der engsten Rundung etwa alle { $spacing }.
seam_to_turn-why = Nach dem Wenden liegen beide offenen Kanten zwischen den Lagen. Wenig Stoff in den Ecken macht sie spitz, verschieden breit zurückgeschnittene Lagen bilden keinen Wulst.

turn_out-turn = { ACC($pieces) } durch die Öffnung { DAT($edge, with: "an") } auf rechts wenden. Die Ecken vorsichtig ausformen.
turn_out-press = Die Naht genau an die Kante rollen und bügeln.
turn_out-why = Was gewendet wird, muss an einer Kante offen bleiben; diese Kante wird zuletzt geschlossen.

slip_stitch-turn = Die Kanten der Öffnung { DAT($edge, with: "an") } je { $allowance } nach innen einschlagen, bügeln und Bruch auf Bruch stecken.
slip_stitch-sew = Von Hand mit Leiterstichen schließen: einige Millimeter durch den einen Bruch, gerade hinüber in den anderen und so weiter.
slip_stitch-why = Der Faden läuft in den Bruchkanten und ist auf keiner Seite zu sehen.
