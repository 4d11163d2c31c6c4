# Sätze von kit/sewing/operations/hand_hems.py.

blind_hem-baste = Den Saum nahe am Bruch heften, damit er sich nicht verschiebt.
blind_hem-hand = Die obere Saumkante ein wenig zurückklappen und von rechts nach links mit lockeren Stichen annähen: einer durch den Saum, der nächste durch einen einzigen Faden des Kleidungsstücks.
blind_hem-machine = Das Kleidungsstück so zurückfalten, dass die obere Saumkante ein wenig vorsteht, und mit dem Blindstich nähen: die geraden Stiche liegen auf dem Saum, nur die Spitze jedes Zickzacks fasst den Bruch.
blind_hem-press = Die Heftfäden herausziehen und nur den Bruch bügeln, damit sich die obere Kante auf der rechten Stoffseite nicht abzeichnet.
blind_hem-why = Stiche zwischen Saum und Kleidungsstück sind nicht zu sehen, und etwas locker gelassen ziehen sie nicht.

wide_hem-ease = Dicht an der offenen Kante { GEN($edge) } einen Einhaltefaden nähen; hochgeschlagen ist die Kante um { $surplus } länger als die Stelle, an der sie angenäht wird.
wide_hem-tape = Saumband auf die rechte Stoffseite der offenen Kante legen, zur Hälfte darüber hinaus, und knappkantig aufsteppen.
wide_hem-tape_eased = Die offene Kante um { $surplus } einhalten, Saumband auf ihre rechte Stoffseite legen, zur Hälfte darüber hinaus, und knappkantig aufsteppen.
wide_hem-draw = Den Einhaltefaden anziehen, bis der Saum flach auf dem Kleidungsstück liegt, und die Mehrweite mit Dampf einbügeln.
wide_hem-hand = Die obere Kante von Hand mit lockeren Blindstichen annähen.
wide_hem-machine = Die obere Kante mit dem Blindstich der Maschine annähen.
wide_hem-press = Nur den Bruch bügeln, damit sich die obere Kante auf der rechten Stoffseite nicht abzeichnet.
wide_hem-why = Ein breiter Saum beschwert das Kleidungsstück, sodass es gut fällt, und lässt Stoff zum späteren Verlängern.

rolled_hem-stay = { DAT($edge, with: "an") } { $row } neben der Schnittkante eine feine Naht steppen.
rolled_hem-trim = Immer nur ein kleines Stück weit bis dicht an die feine Naht zurückschneiden.
rolled_hem-roll = Die Kante mit angefeuchtetem Daumen und Zeigefinger über die Naht nach links einrollen, sodass beide verschwinden; das braucht insgesamt { $first }.
rolled_hem-slip = Die Rolle von Hand mit Staffierstichen annähen: durch die Rolle, dann durch einen Faden des Stoffes.
rolled_hem-why = Ein Rollsaum ist der feinste Saum für durchscheinende Stoffe: er ist kaum breiter, als ein Faden dick ist.
