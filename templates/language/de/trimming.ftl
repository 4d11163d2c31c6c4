# Sätze von kit/sewing/operations/trimming.py.

clip-cut = Die Nahtzugaben { GEN($edge) } etwa alle { $spacing } mit den Scherenspitzen bis fast an die Stiche einschneiden.
clip-cut_curve = Die Nahtzugaben { GEN($edge) } mit den Scherenspitzen bis fast an die Stiche einschneiden, in der engsten Rundung etwa alle { $spacing }.
clip-why = In einer Innenrundung ist die Schnittkante kürzer als die Naht: durch die Einschnitte kann sie sich beim Wenden spreizen.

notch_curve-cut = Aus den Nahtzugaben { GEN($edge) } etwa alle { $spacing } kleine Keile herausschneiden, bis fast an die Stiche.
notch_curve-cut_curve = Aus den Nahtzugaben { GEN($edge) } kleine Keile herausschneiden, bis fast an die Stiche, in der engsten Rundung etwa alle { $spacing }.
notch_curve-why = An einer Außenrundung ist die Schnittkante länger als die Naht: ohne die Keile liegt sie nach dem Wenden flach.

clip_first-cut = Die Nahtzugabe { GEN($edge) } mit den Scherenspitzen bis an die Stütznaht einschneiden, nicht in sie hinein, in der engsten Rundung etwa alle { $spacing }.
clip_first-cut_to_fit = Die Nahtzugabe { GEN($edge) } mit den Scherenspitzen bis fast an die Nahtlinie einschneiden, etwa alle { $spacing } dort, wo { NOM($fit) } am engsten gerundet ist.
clip_first-why = Vorher eingeschnitten, spreizt sich die Kante an der anderen entlang, und beide lassen sich ohne Falte stecken und nähen.

trim-cut = Die Nahtzugaben { GEN($edge) } auf { $to } zurückschneiden.
trim-cut_half = Die Nahtzugaben { GEN($edge) } auf die Hälfte zurückschneiden, auf { $to }.
trim-why = Weggenommener Stoff, wo er gefaltet läge, hält die Kante dünn.

grade-cut = Die Nahtzugaben { GEN($edge) } abstufen; diese auf { $to } zurückschneiden, die weiter außen liegende { $wider } breit stehen lassen.
grade-why = Zugaben, die verschieden breit enden, bilden eine Schräge statt eines Wulstes, und die breitere verdeckt die schmalere.

trim_strip-sides = Die Nahtzugaben der Längsnaht { GEN($strip) } auf { $to } zurückschneiden.
trim_strip-sides_half = Die Nahtzugaben der Längsnaht { GEN($strip) } auf die Hälfte zurückschneiden, auf { $to }.
trim_strip-ends = Die Nahtzugaben am zugenähten Ende { GEN($strip) } auf { $to } zurückschneiden und die Ecken abschrägen.
trim_strip-ends_half = Die Nahtzugaben am zugenähten Ende { GEN($strip) } auf die Hälfte zurückschneiden, auf { $to }, und die Ecken abschrägen.
grade_strip-sides = Die Nahtzugaben der Längsnaht { GEN($strip) } abstufen, die eine auf { $to } zurückschneiden, die andere { $wider } breit lassen.
grade_strip-sides_on = Die Nahtzugaben der Ansatznaht { GEN($strip) } abstufen, die des Streifens auf { $to } zurückschneiden, die des Kleidungsstücks { $wider } breit lassen.
grade_strip-ends = Die Nahtzugaben am zugenähten Ende { GEN($strip) } abstufen, die eine auf { $to } zurückschneiden, die andere { $wider } breit lassen. Die Ecken abschrägen.

tack_down-sew = { ACC($edge) } mit einigen Handstichen, die außen nicht zu sehen sind, an den Nahtzugaben { GEN($seam) } annähen.
tack_down-why = Nur an den Nähten gehalten bleibt ein Beleg innen, ohne dass eine Naht zu sehen ist.
