# Sätze von kit/sewing/operations/plackets.py.

bound_placket-mark = { ACC($slit) } auf der linken Stoffseite samt seinem Ende anzeichnen, { $long } lang. Noch nicht einschneiden.
bound_placket-reinforce = Mit kurzen Stichen ringsum steppen: { DAT($edge, with: "von") } aus { $allowance } neben der Linie schräg zu ihrem Ende, dort ein Stich quer, und auf der anderen Seite wieder bis { $allowance } neben der Linie.
bound_placket-cut = Mit den Spitzen einer kleinen Schere auf der Linie einschneiden, bis dicht vor den Querstich am Ende und nicht hindurch.
bound_placket-open = Den Schlitz zu einer geraden Linie aufziehen. { ACC($strip) } mit der rechten Seite auf die linke Stoffseite stecken: an beiden Enden Kante auf Kante, am Ende des Schlitzes den Stoff so weit zurückziehen, dass die Verstärkungsnaht auf der Nahtlinie des Streifens liegt. Mit dem Kleidungsstück oben { $allowance } von der Streifenkante steppen, knapp außerhalb der Verstärkungsnaht; am Ende die Falten wegschieben.
bound_placket-cover = Den Streifen vom Kleidungsstück weg bügeln. Die freie Kante { $allowance } einschlagen, so auf die rechte Seite legen, dass sie die Stiche gerade bedeckt, und knappkantig aufsteppen: der Schlitzbesatz ist { $wide } breit.
bound_placket-slant = Den Schlitzbesatz rechts auf rechts falten und seinen oberen Bruch schräg abnähen, nur durch den Streifen.
bound_placket-lie = Die Seite, die oben liegt (am Ärmel die zum Vorderarm hin), nach innen bügeln und die andere darunter vorstehen lassen; beide { DAT($edge, with: "an") } festheften.
bound_placket-why = Vor dem Einschneiden umsteppt, kann das Ende des Schlitzes nicht ausreißen, wenn er gerade gezogen und getragen wird.
bound_placket-why_row = Die schräge Naht hält den Bruch des Streifens innen, der sich sonst am Schlitzende nach außen drücken würde.
