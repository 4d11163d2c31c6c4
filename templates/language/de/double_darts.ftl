# Sätze von kit/sewing/operations/double_darts.py.

double_dart-fold = Beide Spitzen und die breiteste Stelle jedes Abnähers { DAT($places, with: "an") } mit Faden oder Kreide durchschlagen. An der Linie von Spitze zu Spitze rechts auf rechts falten, sodass seine beiden Nahtlinien aufeinanderliegen, und stecken.
double_dart-sew = { ACC($dart) } in zwei Teilen steppen: von der breitesten Stelle, { $half } neben dem Bruch, hinunter zur unteren Spitze, { $down } lang; dann die Arbeit wenden, { $over } über die ersten Stiche nähen und von der breitesten Stelle hinauf zur oberen Spitze, { $up } lang. Die letzten Stiche jedes Teils laufen genau auf dem Bruch aus.
double_dart-tie = An den Spitzen nicht verriegeln: lange Fadenenden lassen und verknoten.
double_dart-clip = Den Bruch an der breitesten Stelle einschneiden, bis { $left } vor die Naht, damit er sich öffnen kann.
double_dart-press_centre = Die Abnäher erst flach bügeln, wie sie genäht sind, dann über einem runden Bügelkissen zur Mitte, von der breitesten Stelle zu jeder Spitze und nicht darüber hinaus.
double_dart-press_side = Die Abnäher erst flach bügeln, wie sie genäht sind, dann über einem runden Bügelkissen zur Seite, von der breitesten Stelle zu jeder Spitze und nicht darüber hinaus.
double_dart-why = Von der Mitte nach außen laufen beide Teile an einer Spitze ins Nichts, und was sich schiebt, endet dort; der Einschnitt lässt die Bruchkante, die kürzer ist als die Linie, auf der sie liegt, in der Höhlung der Taille aufgehen.
