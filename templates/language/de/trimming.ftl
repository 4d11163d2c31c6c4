# Sätze von kit/sewing/operations/trimming.py.

clip-cut = { $edge }: die Nahtzugaben etwa alle { $spacing } mit den Scherenspitzen bis fast an die Stiche einschneiden.
clip-cut_curve = { $edge }: die Nahtzugaben mit den Scherenspitzen bis fast an die Stiche einschneiden, in der engsten Rundung etwa alle { $spacing }.
clip-why = In einer Innenrundung ist die Schnittkante kürzer als die Naht: durch die Einschnitte kann sie sich beim Wenden spreizen.

notch_curve-cut = { $edge }: aus den Nahtzugaben etwa alle { $spacing } kleine Keile herausschneiden, bis fast an die Stiche.
notch_curve-cut_curve = { $edge }: aus den Nahtzugaben kleine Keile herausschneiden, bis fast an die Stiche, in der engsten Rundung etwa alle { $spacing }.
notch_curve-why = An einer Außenrundung ist die Schnittkante länger als die Naht: ohne die Keile liegt sie nach dem Wenden flach.

clip_first-cut = { $edge }: die Nahtzugabe mit den Scherenspitzen bis an die Stütznaht einschneiden, nicht in sie hinein, in der engsten Rundung etwa alle { $spacing }.
clip_first-cut_to_fit = { $edge }: die Nahtzugabe mit den Scherenspitzen bis fast an die Nahtlinie einschneiden, dort, wo diese Rundung am engsten ist, etwa alle { $spacing }: { $fit }.
clip_first-why = Vorher eingeschnitten, spreizt sich die Kante an der anderen entlang, und beide lassen sich ohne Falte stecken und nähen.

trim-cut = { $edge }: die Nahtzugaben auf { $to } zurückschneiden.
trim-cut_half = { $edge }: die Nahtzugaben auf die Hälfte zurückschneiden, auf { $to }.
trim-why = Weggenommener Stoff, wo er gefaltet läge, hält die Kante dünn.

grade-cut = { $edge }: Nahtzugaben abstufen; diese auf { $to } zurückschneiden, die weiter außen liegende { $wider } breit stehen lassen.
grade-why = Zugaben, die verschieden breit enden, bilden eine Schräge statt eines Wulstes, und die breitere verdeckt die schmalere.

trim_strip-sides = { $strip }: die Nahtzugaben der Längsnaht auf { $to } zurückschneiden.
trim_strip-sides_half = { $strip }: die Nahtzugaben der Längsnaht auf die Hälfte zurückschneiden, auf { $to }.
trim_strip-ends = { $strip }: die Nahtzugaben am zugenähten Ende auf { $to } zurückschneiden und die Ecken abschrägen.
trim_strip-ends_half = { $strip }: die Nahtzugaben am zugenähten Ende auf die Hälfte zurückschneiden, auf { $to }, und die Ecken abschrägen.
grade_strip-sides = { $strip }: die Nahtzugaben der Längsnaht abstufen, die eine auf { $to } zurückschneiden, die andere { $wider } breit lassen.
grade_strip-sides_on = { $strip }: die Nahtzugaben der Ansatznaht abstufen, die des Streifens auf { $to } zurückschneiden, die des Kleidungsstücks { $wider } breit lassen.
grade_strip-ends = { $strip }: die Nahtzugaben am zugenähten Ende abstufen, die eine auf { $to } zurückschneiden, die andere { $wider } breit lassen. Die Ecken abschrägen.

tack_down-sew = { $edge } mit einigen Handstichen, die außen nicht zu sehen sind, an diesen Nahtzugaben annähen: { $seam }.
tack_down-why = Nur an den Nähten gehalten bleibt ein Beleg innen, ohne dass eine Naht zu sehen ist.
