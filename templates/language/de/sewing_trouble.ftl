# Was gegen das Nähen in der Reihenfolge der Lektion spricht: was nicht stimmt und was zu tun ist (Schlüssel auf _do).
# Der Titel des Teils steht davor. { $place } ist eine Kante oder Markierung mit ihrem Teil, { $edge } eine Kante, { $piece } ein Teil.
# Was im Notebook steht, etwa make.press(...), bleibt, wie es ist.

sewing_trouble-band_not_set = { $place } ist noch nicht an das Kleidungsstück genäht; es gibt noch keine Naht, über der sich der Bund schließen lässt.
sewing_trouble-band_not_set_do = Zuerst den Bund ansetzen: make.set_band(...).
sewing_trouble-band_not_pressed = { $place }: die Naht ist noch nicht gebügelt, und ist der Bund geschlossen, kommt kein Bügeleisen mehr hin.
sewing_trouble-band_not_pressed_do = Zuerst bügeln: make.press(..., way=...).
sewing_trouble-band_not_seamed = { $piece } ist noch nicht mit dem äußeren Bund zusammengenäht.
sewing_trouble-band_not_seamed_do = Zuerst beide zusammennähen und wenden: make.seam_band(...), make.turn_out(...).
sewing_trouble-band_end_open = { $edge } ({ $piece }) ist noch offen; ist die Innenkante erst geschlossen, lässt sich das Ende nicht mehr einschlagen.
sewing_trouble-band_end_open_do = Zuerst die Enden nähen und den Bund wenden.
sewing_trouble-band_end_raw = { $place } ist dort, wo der Bund beginnt oder endet, noch offen.
sewing_trouble-band_end_raw_do = Diese Kante zuerst säumen oder belegen, ihren Reißverschluss einnähen oder ihre Naht schließen: der Bund endet an ihrer fertigen Linie.
sewing_trouble-turned_already = { $piece } ist schon gewendet; das Ende lässt sich nicht mehr von innen nähen.
sewing_trouble-turned_already_do = Die Enden nähen, bevor der Bund gewendet wird.
# Von einem Streifen; sein Titel steht davor.
sewing_trouble-strip_length = { $length } lang zugeschnitten und an jedem Ende { $ends } eingeschlagen, wird der Streifen { $left } lang, nicht { $finished_length }.
sewing_trouble-strip_length_do = Die Zuschnittlänge, die eingeschlagenen Enden oder die fertige Länge ändern.
sewing_trouble-loop_before_seam = Die Schlaufe wird auf { $place } gesteppt, bevor diese Naht genäht ist.
sewing_trouble-do_sew_seam_first = Zuerst die Naht nähen.
sewing_trouble-too_few_strips_bound =
    { $count ->
        [one] { $count } Streifen wird angenäht
       *[other] { $count } Streifen werden angenäht
    }, zugeschnitten sind aber nur { $cut }.
sewing_trouble-too_few_strips_bound_do = Mehr zuschneiden oder weniger Kanten einfassen.
sewing_trouble-binding_width = { $width } breit zugeschnitten ergibt der Streifen keine { $finished }: dafür braucht es { $cut_width }.
sewing_trouble-binding_width_do = Die Zuschnittbreite oder die fertige Breite ändern.
sewing_trouble-binding_short_edge = Der Streifen ist { $length } lang zugeschnitten, die Kante mit ihren Enden braucht aber { $needed }.
sewing_trouble-binding_short_edge_do = Länger zuschneiden oder angeben, wie viele Streifen sich die Kanten teilen: count=....
sewing_trouble-binding_not_bias = { $place } ist rund, der Streifen ({ $piece }) ist aber im geraden Fadenlauf zugeschnitten und legt sich nicht um die Rundung.
sewing_trouble-binding_not_bias_do = Den Streifen im schrägen Fadenlauf zuschneiden.
sewing_trouble-buttons_and_holes =
    { $number ->
        [one] Es gibt { $number } Knopf
       *[other] Es gibt { $number } Knöpfe
    } für { $wanted ->
        [one] { $wanted } Knopfloch
       *[other] { $wanted } Knopflöcher
    }.
sewing_trouble-buttons_and_holes_do = Jedem Knopfloch seinen Knopf geben; eine Seite nennen, wo die Markierung auf beiden Hälften liegt (front.left).
sewing_trouble-no_buttonhole = Ein Knopf sitzt unter einem Knopfloch, das noch nicht genäht ist.
sewing_trouble-no_buttonhole_do = Zuerst die Knopflöcher nähen: make.buttonholes(...).
# { $size } ist der Knopf, { $sizes } das kürzeste Knopfloch.
sewing_trouble-button_wide = Ein Knopf mit { $size } Durchmesser geht nicht durch ein Knopfloch von { $sizes }.
sewing_trouble-button_wide_do = Das Knopfloch so lang nähen, wie der Knopf breit ist, und { $more } länger. In der Schnittzeichnung ebenso lang markieren: buttonholes(..., thick=...).
sewing_trouble-buttonhole_size = { $place } ist { $length } lang markiert, aber { $worked } lang genäht.
sewing_trouble-buttonhole_size_do = Gleich lang markieren und nähen.
sewing_trouble-button_slips = Ein Knopf mit { $size } Durchmesser rutscht aus einem Knopfloch von { $sizes }.
sewing_trouble-button_slips_do = Größere Knöpfe nehmen oder kürzere Knopflöcher nähen.
sewing_trouble-casing_turns = Der erste Einschlag ist breiter als der zweite und passt darum nicht in den Tunnel.
sewing_trouble-do_deepen_second_turn = Den zweiten Einschlag mindestens so breit machen wie den ersten.
sewing_trouble-gap_elsewhere = Die Öffnung liegt an { $place } und damit nicht im Tunnel.
sewing_trouble-gap_elsewhere_do = Sie in einer der Kanten des Tunnels lassen.
sewing_trouble-channel_one_layer = Unter { $place } liegt noch nichts: Zwei Nähte durch eine einzige Lage ergeben keinen Tunnel.
sewing_trouble-channel_one_layer_do = Die Kante zuerst mit Futter oder Beleg verstürzen und wenden (make.seam_to_turn, make.turn_out) oder tief säumen.
sewing_trouble-channel_beyond = Die zweite Naht liegt { $far } neben der Kante ({ $place }), eine der Lagen reicht aber nur { $reach } weit.
sewing_trouble-channel_beyond_do = Näher an der Kante nähen, oder Futter, Beleg oder Saum tiefer zuschneiden.
sewing_trouble-channel_shallow = Zwischen Nähten im Abstand von { $depth } läuft keine Kordel.
sewing_trouble-channel_shallow_do = Mindestens { $least } Abstand lassen.
sewing_trouble-channel_twice = An { $place } gibt es schon einen Tunnel.
sewing_trouble-no_slit = Die Kordel soll hier herauskommen: { $place }. Keine Naht ist dort aber offen geblieben.
sewing_trouble-no_slit_do = Sie in der Naht offen lassen: make.plain_seam(..., opening=...).
sewing_trouble-slit_off_casing = Diese Stelle reicht über den Tunnel hinaus, dessen Naht { $high } neben der Bruchkante liegt: { $place }.
sewing_trouble-slit_off_casing_do = Sie näher an der Bruchkante markieren, oder den Tunnel tiefer machen.
sewing_trouble-hole_off_channel = Diese Stelle liegt nicht zwischen den Nähten des Tunnels, { $low } und { $high } neben der Kante: { $place }.
sewing_trouble-hole_off_channel_do = Sie versetzen, oder die Nähte: distance und depth in make.channel.
# { $share } ist ein Prozentwert.
sewing_trouble-not_gathered_yet = { $place } ist um { $share } länger als die Kante, an die genäht wird: zu viel zum Einhalten.
sewing_trouble-not_gathered_yet_do = Zuerst kräuseln: make.gather(..., fit=...). Wo das kürzere Teil dehnbar ist und beim Nähen gedehnt wird, das angeben: Lesson(..., stretch=0.6).
sewing_trouble-not_eased_yet = { $place } ist um { $ease } länger als die Kante, an die genäht wird, und noch hält nichts die Mehrweite ein.
sewing_trouble-not_eased_yet_do = Dort zuerst einen Einhaltefaden nähen: make.ease_stitch(...).
sewing_trouble-no_casing = An { $place } gibt es noch keinen Tunnel, durch den sich etwas ziehen lässt.
sewing_trouble-no_casing_do = Zuerst den Tunnel nähen: make.casing(...) oder make.channel(...).
sewing_trouble-threaded_twice = Durch diesen Tunnel ist schon etwas gezogen: { $place }.
sewing_trouble-threaded_out_twice = hier kommt schon eine Kordel heraus: { $place }.
sewing_trouble-do_take_one_operation_out = Einen der beiden Arbeitsgänge herausnehmen.
sewing_trouble-gap_shut = Eingezogen werden soll durch die Öffnung an { $place }, aber die ist zugenäht.
sewing_trouble-gap_shut_do = Die Öffnung im Tunnel lassen: make.casing(..., gap=...) oder make.channel(..., gap=...).
sewing_trouble-elastic_wide = { $width } breites Gummiband läuft in einem { $deep } breiten Tunnel nicht frei.
sewing_trouble-elastic_wide_do = Schmaleres Gummiband nehmen oder den Tunnel breiter machen.
sewing_trouble-cord_no_room = { $width } breites Gummiband lässt in einem { $deep } breiten Tunnel keinen Platz für eine Kordel.
sewing_trouble-cord_no_room_do = Den Tunnel breiter machen oder schmaleres Gummiband nehmen.
sewing_trouble-cords_no_room = Zwei Kordeln brauchen { $cords } und laufen in einem { $deep } breiten Tunnel nicht frei nebeneinander.
sewing_trouble-cords_no_room_do = Den Tunnel breiter machen oder nur eine Kordel durchziehen.
sewing_trouble-elastic_long = Das Gummiband misst zusammengenäht { $worn }, der Tunnel ist aber nur { $whole } lang: es würde nichts zusammenziehen.
sewing_trouble-elastic_long_do = Das Gummiband kürzer schneiden als die Kante.
sewing_trouble-strip_not_made_drawn_in = Der Streifen wird eingezogen, bevor er genäht ist.
sewing_trouble-do_make_strip_first = Zuerst den Streifen nähen.
sewing_trouble-no_eyelet = Die Kordel soll hier herauskommen: { $place }. Dort ist aber noch keine Öse.
sewing_trouble-no_eyelet_do = Die Ösen setzen, bevor der Tunnel genäht wird: make.eyelets(...).
sewing_trouble-cord_short = Die Kordel ist { $length } lang, der Tunnel aber { $whole }: ihre Enden würden hineinrutschen.
sewing_trouble-cord_short_do = Eine längere Kordel nehmen: die Kante und an beiden Enden genug zum Binden.
sewing_trouble-mock_french_turn = Eine Nahtzugabe von { $allowance }, um { $turn } eingeschlagen, lässt { $left } übrig: die eingeschlagenen Kanten passen nicht zwischen Naht und Bruch.
sewing_trouble-mock_french_turn_do = Mindestens { $least } und weniger als die halbe Nahtzugabe einschlagen.
sewing_trouble-felled_trim = Die zurückgeschnittene Nahtzugabe ist { $trim } breit, zu breit für eine Kappnaht von { $width }.
sewing_trouble-felled_trim_do = Auf { $most } oder weniger zurückschneiden oder die Kappnaht breiter machen.
sewing_trouble-felled_width = Eine Kappnaht von { $width } lässt von der Nahtzugabe ({ $allowance }) nur { $turned } zum Einschlagen.
sewing_trouble-felled_width_do = Eingeschlagen werden müssen mindestens { $least } und höchstens die Breite der Kappnaht: die Breite oder die Nahtzugabe ändern.
sewing_trouble-lapped_row = Die Naht liegt { $edgestitch } neben dem Bruch und damit jenseits der { $allowance } breiten Nahtzugabe darunter.
sewing_trouble-lapped_row_do = Näher am Bruch steppen.
sewing_trouble-free_edge_raw = { $place } wird angenäht, solange die Kante noch offen ist.
sewing_trouble-free_edge_raw_do = Die Kante einschlagen (turn=...) oder vorher versäubern.
sewing_trouble-no_interfacing_cut = Das Teil bekommt Einlage, aber dafür ist keine zugeschnitten.
sewing_trouble-no_interfacing_cut_do = Im Zuschnitt des Teils angeben, dass es auch aus Einlage geschnitten wird, oder seine Einlage zeichnen.
sewing_trouble-fused_twice = Das Teil hat schon Einlage.
sewing_trouble-fused_late = Das Teil ist schon genäht; Einlage kommt auf das flache Teil.
sewing_trouble-fused_late_do = Die Einlage vor der ersten Naht dieses Teils aufbringen.
sewing_trouble-understitched_early = { $place } ist noch nirgends angenäht; es gibt keine Naht, neben der untersteppt werden kann.
sewing_trouble-understitched_early_do = Zuerst den Beleg annähen.
sewing_trouble-fasteners_unequal =
    { $number ->
        [one] Oben gibt es { $number } Stelle
       *[other] Oben gibt es { $number } Stellen
    }, unten { $other }.
sewing_trouble-fasteners_unequal_do = Auf beiden Seiten gleich viele Stellen nennen.
sewing_trouble-fasteners_apart = { $place } ist { $size } von der Stelle davor entfernt, ihre Gegenstücke auf der anderen Seite liegen aber { $other } auseinander.
sewing_trouble-fasteners_apart_do = Auf beiden Seiten gleiche Abstände markieren: so geschlossen würden sich dazwischen { $amount } aufwerfen.
sewing_trouble-eyelet_late = Der Tunnel an { $place } ist schon genäht: eine Öse ginge durch beide Lagen.
sewing_trouble-eyelet_late_do = Die Ösen setzen, bevor der Tunnel umgeschlagen wird.
sewing_trouble-eyelet_in_lining = An { $place } liegen inzwischen zwei Lagen aufeinander: eine Öse hielte sie zusammen, und zwischen ihnen käme keine Kordel heraus.
sewing_trouble-eyelet_in_lining_do = Die Ösen nur in die äußere Lage setzen, bevor Futter, Beleg oder Saum darunterliegt.
sewing_trouble-staystitched_late = { $place } ist schon genäht; eine Stütznaht hält die offene Kante, bevor sie sich dehnen kann.
sewing_trouble-staystitched_late_do = Sie vor die erste Naht an dieser Kante setzen.
sewing_trouble-finished_late = { $place }: die offene Kante ist schon eingeschlossen; es gibt nichts mehr zu versäubern.
sewing_trouble-finished_late_do = Vorher versäubern oder den Arbeitsgang herausnehmen.
sewing_trouble-topstitched_raw = { $place } wird abgesteppt, solange die Kante noch offen ist.
sewing_trouble-topstitched_raw_do = Die Kante zuerst nähen, belegen oder säumen.
sewing_trouble-topstitched_unpressed = { $place } wird abgesteppt, bevor die Naht gebügelt ist.
sewing_trouble-topstitched_unpressed_do = Zuerst bügeln: make.press(...).
sewing_trouble-staystitch_outside_cloth = Die Naht läge auf der Schnittkante oder außerhalb.
sewing_trouble-staystitch_outside_cloth_do = Näher an der Nahtlinie nähen, als die Nahtzugabe breit ist.
sewing_trouble-blind_hem_narrow = Ein { $depth } breiter Saum ist zu schmal, um ihn mit Blindstich zu nähen.
sewing_trouble-blind_hem_narrow_do = Ihn mindestens { $least } breit machen oder von Hand rollen.
sewing_trouble-wide_hem_short = Die Kante ist nach innen gebogen; { $first } hochgeschlagen, ist die offene Kante um { $surplus } zu kurz für die Stelle, an der sie angenäht wird, und würde ziehen.
sewing_trouble-do_face_or_narrow_hem = Die Kante belegen (make.faced_hem) oder den Saum schmaler machen.
sewing_trouble-wide_hem_full = { $first } hochgeschlagen, ist die offene Kante um { $surplus } länger als die Stelle, an der sie angenäht wird: zu viel, um an einer so runden Kante flach zu liegen.
sewing_trouble-rolled_hem_wide = Eine { $first } breit umgeschlagene Kante ist zu viel, um sie zwischen den Fingern zu rollen.
sewing_trouble-rolled_hem_wide_do = Ihr { $most } oder weniger geben oder einen schmalen Saum nähen.
sewing_trouble-caught_loose = { $place } soll im Saum mitgefasst werden, aber das Teil ist noch nicht an das Kleidungsstück genäht.
sewing_trouble-caught_loose_in_seam = { $place } soll in der Naht mitgefasst werden, aber das Teil ist noch nicht an das Kleidungsstück genäht.
sewing_trouble-caught_loose_do = Zuerst annähen.
sewing_trouble-caught_length = { $place } misst { $amount }, und keine Kante des Bunds, an der es liegen soll, ist so lang.
sewing_trouble-caught_length_do = Die Kante des Kragens so lang zeichnen wie die Kante des Stegs, an der sie liegt.
sewing_trouble-not_a_ring_yet = { $place } wird als Ring gesäumt, aber die Enden sind noch nicht zusammengenäht.
sewing_trouble-not_a_ring_yet_do = Zuerst die Naht nähen, die den Ring schließt, oder ring=True weglassen und flach säumen.
sewing_trouble-hem_turns = Der erste Einschlag ist breiter als der zweite und passt darum nicht in den Saum.
sewing_trouble-bags_unequal = Die beiden Taschenbeutel unterscheiden sich rund um die Tasche um { $gap }.
sewing_trouble-bags_unequal_do = Beide Beutel gleich zeichnen.
sewing_trouble-mouth_whole_seam = Der Eingriff nimmt die ganze Naht ein.
sewing_trouble-mouth_whole_seam_do = Einen Teil der Naht zum Nähen übrig lassen.
sewing_trouble-bag_whole_seam = { $place }: der Beutel ist an die ganze Kante genäht, sodass darüber und darunter nichts von der Naht übrig bleibt.
sewing_trouble-bag_whole_seam_do = Ihn nur an die markierte Öffnung des Tascheneingriffs nähen.
sewing_trouble-bag_not_set = { $piece } ist noch nicht an seine Seite des Eingriffs genäht.
sewing_trouble-bag_not_set_do = Zuerst beide Beutel annähen: make.pocket_bag(...).
sewing_trouble-mouth_moved = Die Naht lässt { $start } bis { $end } offen, aber dort ist kein Beutel angenäht.
sewing_trouble-mouth_moved_do = Für Beutel und Naht dieselbe Öffnung nennen.
sewing_trouble-basting_outside_cloth = { $distance } außerhalb der Nahtlinie geheftet, läge die Heftnaht auf der Schnittkante oder außerhalb.
sewing_trouble-basting_outside_cloth_do = Näher an der Nahtlinie heften, als die Nahtzugabe breit ist.
sewing_trouble-not_joined_yet = { $place } und { $other } werden in einem Zug genäht, aber die Teile sind dort noch nicht verbunden.
sewing_trouble-not_joined_yet_do = Zuerst die Naht dazwischen nähen, oder die beiden nacheinander.
sewing_trouble-gathers_not_taken_up = { $place } ist gekräuselt, aber die Naht nimmt dort keine Mehrweite auf.
sewing_trouble-gathers_not_taken_up_do = In der Naht angeben, um wie viel die gekräuselte Kante länger ist (ease=...), oder das Kräuseln weglassen.
sewing_trouble-gathered_to_another_length = { $place } ist auf { $to } eingehalten, aber die Kante, an die genäht wird, misst { $size }.
sewing_trouble-gathered_to_another_length_do = Auf die Länge dieser Kante einhalten: fit=... nennt sie.
sewing_trouble-pocket_place_size = Die Tasche misst an den genähten Kanten { $own }, die Linie, auf die sie gelegt wird, aber { $length }.
sewing_trouble-pocket_place_size_do = Die Markierung nach der Tasche zeichnen oder die Tasche nach ihrer Markierung.
sewing_trouble-pocket_turns = Der erste Einschlag ist breiter als der zweite und passt darum nicht in den Saum der Tasche.
sewing_trouble-folded_twice = { $place } ist schon umgebügelt.
sewing_trouble-do_take_one_out = Eines von beiden herausnehmen.
sewing_trouble-folded_late = { $place } ist schon genäht; die Zugabe wird umgebügelt, bevor die Tasche aufgesteppt wird.
sewing_trouble-folded_late_do = Vor das Aufsteppen der Tasche setzen.
sewing_trouble-pocket_not_hemmed = { $piece } wird aufgesteppt, bevor der Eingriff gesäumt ist; danach sind die Enden des Saums nicht mehr zu erreichen.
sewing_trouble-pocket_not_hemmed_do = Zuerst säumen: make.pocket_hem(pocket.top, ...).
sewing_trouble-pocket_not_folded = { $edge } ({ $piece }) ist noch nicht umgebügelt; die offene Kante wäre zu sehen.
sewing_trouble-pocket_not_folded_do = Zuerst die Kanten umbügeln: make.fold_pocket(...).
sewing_trouble-pocket_twice = Hier ist schon eine Tasche: { $place }.
sewing_trouble-pocket_twice_do = Eine der beiden herausnehmen oder eine andere Markierung nennen.
sewing_trouble-gathers_too_few = { $place } ist { $full } lang; auf { $drawn } zusammengezogen sind keine Kräuselfältchen zu sehen.
sewing_trouble-gathers_too_few_do = Die Kante verlängern, stärker zusammenziehen oder einhalten: make.ease_stitch(...).
# { $ratio } ist eine Zahl wie 3,5.
sewing_trouble-gathers_too_many = { $place } ist { $full } lang, das { $ratio }-Fache der { $drawn }, auf die zusammengezogen werden soll: so viel Stoff lässt sich nicht zusammenschieben.
sewing_trouble-gathers_too_many_do = Die Kante kürzen oder in Falten legen.
sewing_trouble-basted_late = { $place } ist schon geschlossen; es gibt nichts mehr zu heften.
sewing_trouble-basted_late_do = Vor die Naht an dieser Stelle setzen.
sewing_trouble-not_basted = An { $place } sind keine Heftfäden, die sich herausziehen ließen.
sewing_trouble-not_basted_do = Zuerst heften oder diesen Arbeitsgang herausnehmen.
sewing_trouble-basting_out_early = { $place } ist noch nicht genäht, nur die Heftnaht hält die Kante.
sewing_trouble-basting_out_early_do = Zuerst nähen, oder anprobieren: make.try_on(...).
sewing_trouble-basted_otherwise = { $place } ist noch auf der Nahtlinie geheftet, rechts auf rechts, und lässt sich nicht so legen, wie diese Naht beginnt.
sewing_trouble-basted_otherwise_do = Zuerst die Heftnaht herausziehen: make.remove_basting(...).
sewing_trouble-pressed_early = An { $place } gibt es noch keine Naht zu bügeln.
sewing_trouble-pressed_early_do = Zuerst nähen oder die Kante der gemeinten Naht nennen.
sewing_trouble-pressed_open_shut_in = { $place }: die Zugaben sind eingeschlossen und lassen sich nicht auseinanderbügeln.
sewing_trouble-pressed_open_shut_in_do = Zu einer Seite bügeln: make.press(..., way="one side").
sewing_trouble-pressed_no_edge = { $place }: hier ist noch nichts nach innen gewendet, an der Kante liegt also keine Naht.
sewing_trouble-pressed_no_edge_do = Zuerst den Beleg oder das Teil wenden; eine Naht, die innen bleibt, auseinander oder zu einer Seite bügeln.
sewing_trouble-band_meets_no_seam = { $place }: keine Naht des Kleidungsstücks trifft darauf, die Innenseite des Bundes hinge lose.
sewing_trouble-band_meets_no_seam_do = Ringsum schließen: method="hand", "groove" oder "edgestitch".
sewing_trouble-binding_short_seam = Das Einfassen der Zugaben braucht { $wanted }, vom Streifen sind aber nur { $left } übrig.
sewing_trouble-binding_short_seam_do = Mehr zuschneiden oder den Streifen verlängern.
sewing_trouble-french_seam_trimmed = Die zurückgeschnittenen Nahtzugaben sind { $trim } breit, nicht schmaler als die zweite Naht, die { $second } neben dem Falz liegt: ihre offenen Kanten würden hervorschauen.
sewing_trouble-french_seam_trimmed_do = Sie schmaler zurückschneiden oder die zweite Naht breiter nähen.
sewing_trouble-french_seam_rows = Die zweite Naht liegt { $second } neben dem Falz, zu schmal, um zurückgeschnittene offene Kanten einzuschließen.
sewing_trouble-french_seam_rows_do = Die zweite Naht mindestens { $least } breit nähen.
sewing_trouble-opening_outside_seam = Die Öffnung endet bei { $end }, aber { $place } ist nur { $size } lang.
sewing_trouble-opening_outside_seam_do = Die Öffnung weiter nach oben setzen oder verkleinern.
sewing_trouble-opening_narrow = Eine Nahtzugabe von { $depth } ist zu schmal, um entlang der Öffnung eingeschlagen zu werden.
sewing_trouble-opening_narrow_do = Der Naht mindestens { $least } Zugabe geben.
sewing_trouble-cap_not_eased = Die Armkugel ist um { $ease } länger als das Armloch, und noch hält kein Einhaltefaden sie ein.
sewing_trouble-cap_not_eased_do = Zuerst einen an der Armkugel nähen: make.ease_stitch(sleeve.cap, fit=...).
sewing_trouble-place_outside_run = Die Stelle liegt bei { $at }, aber { $place } ist nur { $size } lang.
sewing_trouble-place_outside_run_do = Vom Anfang der Kante aus messen.
sewing_trouble-strip_not_made = Der Streifen wird angenäht, bevor er gearbeitet ist.
sewing_trouble-too_few_strips =
    { $count ->
        [one] { $count } Stück wird angenäht
       *[other] { $count } Stück werden angenäht
    }, zugeschnitten sind aber nur { $cut }.
sewing_trouble-too_few_strips_do = Mehr zuschneiden oder weniger annähen (eine Seite nennen: front.left).
sewing_trouble-strip_made_twice = Der Streifen ist schon gearbeitet.
sewing_trouble-strip_made_twice_do = Einen Arbeitsgang herausnehmen.
sewing_trouble-strip_width = { $width } breit zugeschnitten wird der Streifen { $comes } breit, nicht { $finished_width }.
sewing_trouble-strip_width_do = Die Zuschnittbreite oder die fertige Breite ändern.
sewing_trouble-slant_long = Eine Schräge von { $slant } ist mehr als die Hälfte der Länge von { $length }.
sewing_trouble-slant_long_do = Die Schräge kürzer machen.
sewing_trouble-edge_closed_already = { $place } ist schon geschlossen; dort kann keine Naht den Streifen mehr mitfassen.
sewing_trouble-edge_closed_already_do = Ihn anbringen, bevor diese Naht genäht wird, oder aufsteppen.
sewing_trouble-strip_edge_raw = Der Streifen wird auf { $place } gesteppt, solange die Kante noch offen ist.
sewing_trouble-strip_edge_raw_do = Zuerst die Kante versäubern, oder die Naht den Streifen mitfassen lassen.
sewing_trouble-end_outside_run = Ein Ende liegt bei { $at }, aber { $place } ist nur { $size } lang.
sewing_trouble-end_outside_run_do = Beide Stellen vom Anfang der Kante aus messen.
sewing_trouble-handle_twice = An dieser Stelle ist schon ein Streifen befestigt: { $place }.
sewing_trouble-handle_edge_raw = Der Streifen wird auf { $place } gesteppt, solange die Kante noch offen ist.
sewing_trouble-handle_edge_raw_do = Zuerst die Kante versäubern, oder eine Naht oder einen Saum den Streifen mitfassen lassen.
sewing_trouble-handle_edge_closed = { $place } ist schon geschlossen; dort kann nichts die Enden mehr mitfassen.
sewing_trouble-handle_edge_closed_do = Den Streifen anbringen, bevor diese Kante genäht oder gesäumt wird, oder aufsteppen.
sewing_trouble-trimmed_away = Eine Nahtzugabe von { $to } franst aus der Naht heraus.
sewing_trouble-trimmed_away_do = Mindestens { $least } stehen lassen.
sewing_trouble-nothing_to_trim = { $place }: die Nahtzugabe ist nur { $width } breit; sie auf { $to } zurückzuschneiden nimmt nichts weg.
sewing_trouble-nothing_to_trim_do = Schmaler zurückschneiden oder dies weglassen.
sewing_trouble-strip_seam_not_sewn = { $piece }: die Naht ist noch nicht genäht, oder die Schere kommt nicht mehr heran.
sewing_trouble-strip_seam_not_sewn_do = Zwischen Nähen und Wenden zurückschneiden: make.turn_strip(..., rows="sew"), dann dies, dann make.finish(...).
sewing_trouble-strip_nothing_to_trim = { $piece }: die Nahtzugabe ist { $width } breit, auf { $to } ist nichts mehr abzuschneiden.
sewing_trouble-strip_end_open = { $piece }: über die Enden läuft keine Naht.
sewing_trouble-strip_end_open_do = Die Längskanten nennen (sides), oder ein Ende schräg zunähen: make.turn_strip(..., slant=3 * cm).
sewing_trouble-one_layer_graded = { $place } ist an keine andere Kante genäht; es gibt keine zwei Nahtzugaben zum Abstufen.
sewing_trouble-one_layer_graded_do = Zuerst die Naht nähen oder nur zurückschneiden: make.trim(...).
sewing_trouble-tacked_raw = { $place } wird angenäht, solange die Kante noch offen ist.
sewing_trouble-tacked_raw_do = Zuerst versäubern.
sewing_trouble-tacked_to_no_seam = An { $place } gibt es noch keine Naht, an der sich etwas annähen lässt.
sewing_trouble-tacked_to_no_seam_do = Zuerst diese Naht nähen.
sewing_trouble-tacked_loose = { $piece } ist noch nicht an das Kleidungsstück genäht.
sewing_trouble-tacked_loose_do = Zuerst annähen, dann die Kante befestigen.
sewing_trouble-inside_out = { $piece } ist noch auf links gedreht.
sewing_trouble-inside_out_do = Zuerst wenden: make.turn_out(..., through=...).
sewing_trouble-right_side_out_already = { $piece } ist nicht auf links gedreht; es gibt nichts zu wenden.
sewing_trouble-right_side_out_already_do = Zuerst rechts auf rechts nähen oder dies herausnehmen.
sewing_trouble-gap_narrow = Eine Öffnung von { $size } ist zu eng, um das Teil hindurchzuwenden.
sewing_trouble-gap_narrow_do = Mindestens { $least } offen lassen, bei dickem Stoff mehr.
sewing_trouble-gap_unequal = Die beiden Kanten der Öffnung sind verschieden lang: { $one } und { $two }.
sewing_trouble-gap_unequal_do = An beiden Kanten dieselbe Strecke nennen.
sewing_trouble-turned_gap_shut = Gewendet werden soll durch { $place }, aber die Kante ist zugenäht.
sewing_trouble-turned_gap_shut_do = In der Naht eine Öffnung lassen oder wenden, bevor diese Kante geschlossen wird.
sewing_trouble-zip_sides = Die beiden Seiten der Öffnung sind verschieden lang: { $size } und { $other }.
sewing_trouble-zip_sides_do = Die Öffnung an beiden Kanten an derselben Stelle markieren.
sewing_trouble-seam_below_zip = { $place } ist neben der Öffnung noch nicht genäht; ein Reißverschluss kommt in eine Naht, die an ihm endet.
sewing_trouble-seam_below_zip_do = Zuerst die Naht bis zur Öffnung nähen.
sewing_trouble-slit_adrift = { $place } beginnt an keiner Kante des Teils und lässt sich dort nicht öffnen.
sewing_trouble-slit_adrift_do = Den Schlitz von der Kante aus zeichnen, an der er sich öffnet.
sewing_trouble-placket_late = { $place } ist dort, wo sich der Schlitz öffnet, schon geschlossen; er lässt sich nicht mehr gerade ziehen.
sewing_trouble-placket_late_do = Den Schlitzbesatz nähen, solange diese Kante offen ist, vor Kräuseln, Manschette oder Saum.
sewing_trouble-placket_short = Der Streifen ist { $length } lang geschnitten, die beiden Seiten des Schlitzes brauchen aber { $needed }.
sewing_trouble-placket_short_do = Länger zuschneiden.
sewing_trouble-placket_narrow = Der Streifen ist { $width } breit geschnitten: umgelegt bedeckt er seine eigene Naht nicht, dafür braucht es { $needed }.
sewing_trouble-placket_narrow_do = Breiter zuschneiden oder mit schmalerer Nahtzugabe nähen.
sewing_trouble-tower_short = Der Schlitzbesatz reicht { $given } am Schlitz hinauf und endet vor der Quernaht, die ihn hält.
sewing_trouble-tower_short_do = Ohne Nahtzugaben mindestens { $least } lang zuschneiden oder den Schlitz kürzen.
sewing_trouble-tower_narrow = Gefaltet ist der Schlitzbesatz { $given } breit, zu schmal für das Schlitzende.
sewing_trouble-tower_narrow_do = Gefaltet muss er mindestens { $least } breit sein: breiter zuschneiden oder das Kästchen schmaler machen.
sewing_trouble-fly_facing_narrow = Der Schlitzbeleg ist { $wide } breit: der Bogen { $lap } neben der Kante fasst ihn kaum.
sewing_trouble-fly_facing_narrow_do = Ohne Nahtzugaben mindestens { $least } breit zuschneiden oder näher an der Kante steppen.
sewing_trouble-fly_facing_length = { $place } ist { $length } lang, die Öffnung { $opening }.
sewing_trouble-fly_facing_length_do = So lang wie die Öffnung zuschneiden oder unten etwas länger: bis { $most }.
sewing_trouble-fly_shield_open = { $place } soll mit dem Reißverschluss gefasst werden, aber beide Enden sind noch offen.
sewing_trouble-fly_shield_open_do = Den Untertritt zuerst am unteren Ende zusammennähen und wenden; danach ist sein Ende nicht mehr zu erreichen.
sewing_trouble-seam_before_zip = { $place } ist neben der Öffnung schon genäht; ein nahtverdeckter Reißverschluss wird an zwei flache Teile genäht und die Naht daneben erst danach.
sewing_trouble-seam_before_zip_do = Den Reißverschluss vor der Naht darunter einnähen.
sewing_trouble-zip_late = { $edge } ist schon geschlossen; das obere Ende des Reißverschlusses lässt sich dort nicht mehr mitfassen.
sewing_trouble-zip_late_do = Den Reißverschluss vor dem Bund, Beleg oder Saum einnähen, der sein Ende bedeckt.
sewing_trouble-fold_sewn = { $edge } liegt im Stoffbruch; dort gibt es keine offene Kante zu nähen.
sewing_trouble-fold_sewn_do = Eine andere Kante nennen oder das Teil als Paar mit einer Naht dort zuschneiden.
sewing_trouble-band_inner_longer = { $place } ist um { $amount } länger als die Kante, über die der Bund gelegt wird.
sewing_trouble-band_inner_shorter = { $place } ist um { $amount } kürzer als die Kante, über die der Bund gelegt wird.
sewing_trouble-band_inner_do = Beide Kanten des Bundes gleich zeichnen.
sewing_trouble-band_inner_deeper = { $place } liegt { $amount } tiefer als der äußere Bund: der Bruch hängt um so viel über die Naht hinaus.
sewing_trouble-band_inner_shallower = { $place } liegt { $amount } höher als der äußere Bund: der Bruch reicht nicht bis an die Naht.
sewing_trouble-band_inner_depth_do = Beide Teile des Bundes gleich hoch zeichnen; oder deeper=3 * mm schreiben, wo der Bruch über die Naht reichen soll.
sewing_trouble-worked_before_band = { $piece } ist noch nicht geschlossen: an { $place } liegt nur eine Lage.
sewing_trouble-worked_before_band_do = Zuerst den Bund schließen: make.close_band(...).
sewing_trouble-worked_at_raw_edge = { $edge } neben { $place } ist noch offen: dort liegt erst eine Lage.
sewing_trouble-worked_at_raw_edge_do = Zuerst diese Kante fertig arbeiten (Beleg, Bund oder Saum).
sewing_trouble-worked_twice = { $place } ist schon gearbeitet.
# { $wanted } ist, was die erste Kante misst.
sewing_trouble-fits_longer = { $place } gibt { $wanted } vor, aber die Kante, an die genäht wird, ist um { $amount } länger.
sewing_trouble-fits_shorter = { $place } gibt { $wanted } vor, aber die Kante, an die genäht wird, ist { $amount } kürzer.
sewing_trouble-fits_longer_with_ease = { $place } gibt { $wanted } vor, aber die Kante, an die genäht wird, ist samt Mehrweite { $amount } länger.
sewing_trouble-fits_shorter_with_ease = { $place } gibt { $wanted } vor, aber die Kante, an die genäht wird, ist samt Mehrweite { $amount } kürzer.
sewing_trouble-fits_do = Beide gleich lang zeichnen, die längere passend kräuseln oder Übertritt und Mehrweite angeben.
# { $fold } ist der Name eines Abnähers, einer Falte oder Biese.
sewing_trouble-fold_twice = { $fold } ist schon genäht oder gelegt.
sewing_trouble-fold_late = { $fold } öffnet sich an dieser Kante, die schon geschlossen ist: { $edge }.
sewing_trouble-fold_late_do = Vor die erste Naht, den Saum, Beleg oder Bund an dieser Kante setzen.
sewing_trouble-seam_not_gathered = { $place } ist um { $share } länger als die Kante, an die genäht wird: zu viel zum Einhalten.
sewing_trouble-seam_not_gathered_do = Zuerst kräuseln: make.gather(...). Wo das kürzere Teil dehnbar ist und beim Nähen gedehnt wird, das angeben: Lesson(..., stretch=0.6).
sewing_trouble-seam_not_eased = { $place } ist um { $share } länger als die Kante, an die genäht wird: zu viel, um es nur mit Nadeln einzuhalten.
sewing_trouble-seam_not_eased_do = Dort zuerst einen Einhaltefaden nähen: make.ease_stitch(...).
sewing_trouble-drawn_up_late = { $place } ist schon genäht und lässt sich nicht mehr zusammenziehen.
sewing_trouble-drawn_up_late_do = Vor die Naht setzen, die die Mehrweite aufnimmt.
sewing_trouble-gathered_twice = { $place } ist schon gekräuselt.
sewing_trouble-eased_twice = { $place } ist schon eingehalten.
sewing_trouble-nothing_to_ease = { $place } ist { $full } lang und soll auf { $drawn } eingehalten werden; das ist nicht weniger.
sewing_trouble-nothing_to_ease_do = Die beiden Längen prüfen.
sewing_trouble-too_much_to_ease = { $place } ist { $full } lang und soll auf { $drawn } eingehalten werden: { $share } sind zu viel, um glatt zu liegen.
sewing_trouble-too_much_to_ease_do = Kräuseln oder einen Abnäher oder Falten hineinlegen.
sewing_trouble-sleeve_no_ring = { $place } ist kein geschlossener Ring: die Ärmelnaht ist noch nicht genäht.
sewing_trouble-sleeve_no_ring_do = Zuerst die Ärmelnaht nähen, oder den Ärmel flach mit einer einfachen Naht annähen.
sewing_trouble-armhole_no_ring = { $place } ist kein geschlossener Ring: die Schulternaht oder die Seitennaht daneben ist noch nicht genäht.
sewing_trouble-armhole_no_ring_do = Zuerst beide nähen, oder den Ärmel flach mit einer einfachen Naht annähen.
# Vom Zurückschneiden, Einschneiden, Keileschneiden und Abstufen einer Nahtzugabe.
sewing_trouble-cut_into_early = { $place }: die Nahtzugabe wird beschnitten, bevor die Naht genäht ist.
sewing_trouble-cut_into_late = { $place }: die Nahtzugabe ist schon eingeschlossen; dort kommt keine Schere mehr hin.
sewing_trouble-cut_into_late_do = Vorher ausführen.
sewing_trouble-clip_first_late = { $place } ist schon genäht; vorher einzuschneiden hilft nicht mehr.
sewing_trouble-clip_first_late_do = Vor die erste Naht an dieser Kante setzen oder die genähte Kante einschneiden: make.clip(...).
sewing_trouble-clip_first_straight = { $place } muss sich nicht spreizen: es gibt keine enge Rundung, der die Kante folgt.
sewing_trouble-clip_first_straight_do = Dies weglassen oder die Rundung nennen, der eine gerade Kante folgen soll: fit=front.waist.
sewing_trouble-clip_first_loose = { $place } hat keine Stütznaht; von den Einschnitten aus risse die Kante weiter ein.
sewing_trouble-clip_first_loose_do = Zuerst die Stütznaht nähen: make.staystitch(...).
sewing_trouble-clipped_outward_curve = { $place } biegt sich nach außen: nach dem Wenden läge die eingeschnittene Zugabe immer noch übereinander.
sewing_trouble-clipped_outward_curve_do = Stattdessen Keile herausschneiden: make.notch_curve(...).
sewing_trouble-notched_inward_curve = { $place } biegt sich nach innen: die Zugabe muss sich nach dem Wenden spreizen, und herausgeschnittene Keile ließen Lücken.
sewing_trouble-notched_inward_curve_do = Stattdessen einschneiden: make.clip(...).
sewing_trouble-zip_length = Der Reißverschluss ist { $length } lang, seine Öffnung aber { $opening }.
sewing_trouble-zip_long_do = Einen kürzeren Reißverschluss oder eine längere Öffnung nehmen.
sewing_trouble-zip_short_do = Einen längeren Reißverschluss oder eine kürzere Öffnung nehmen; oben dürfen höchstens { $most } frei bleiben.
sewing_trouble-zip_ends_short = Der Reißverschluss ist { $length } lang: sein Schieber läge den letzten Stichen im Weg.
sewing_trouble-zip_ends_short_do = Für diese Öffnung von { $opening } einen Reißverschluss von mindestens { $least } nehmen; was zu lang ist, wird unten abgeschnitten.
sewing_trouble-fold_open = { $edge } wird geschlossen, solange dies daran noch offen ist: { $fold }.
# { $call } ist, was im Notebook steht, etwa make.dart(front).
sewing_trouble-fold_open_do = Zuerst nähen: { $call }.
sewing_trouble-not_pressed = { $edge } wird gekreuzt, bevor die Naht gebügelt ist.
sewing_trouble-not_pressed_do = Diese Naht zuerst bügeln: make.press(...), oder press=... angeben, wo sie genäht wird.
sewing_trouble-half_sewn = { $edge } wird gekreuzt, bevor die letzte Naht dort gesteppt ist.
sewing_trouble-half_sewn_do = Diese Naht zuerst fertigstellen: make.finish(...).
sewing_trouble-not_left_there = { $place }: weitergenäht, bevor angefangen wurde, oder zweimal.
sewing_trouble-not_left_there_do = Die Arbeitsgänge nacheinander nähen, jeden einmal.
sewing_trouble-closed_twice_do = Einen der beiden Arbeitsgänge herausnehmen oder nur die Strecke nennen, die noch offen ist, etwa front.side.before(front.slit).
# { $amount } ist eine Länge, { $step } der Titel eines Nähschritts.
sewing_trouble-closed_twice_sewn = { $edge }: { $amount } sind schon genäht.
sewing_trouble-closed_twice_sewn_by = { $edge }: { $amount } sind schon genäht, im Schritt „{ $step }“.
sewing_trouble-closed_twice_faced = { $edge }: { $amount } sind schon belegt.
sewing_trouble-closed_twice_faced_by = { $edge }: { $amount } sind schon belegt, im Schritt „{ $step }“.
sewing_trouble-closed_twice_hemmed = { $edge }: { $amount } sind schon gesäumt.
sewing_trouble-closed_twice_hemmed_by = { $edge }: { $amount } sind schon gesäumt, im Schritt „{ $step }“.
sewing_trouble-closed_twice_finished = { $edge }: { $amount } sind schon versäubert.
sewing_trouble-closed_twice_finished_by = { $edge }: { $amount } sind schon versäubert, im Schritt „{ $step }“.
sewing_trouble-understitched_garment = { $place } ist die Kleidseite der Naht; untersteppt wird auf dem Beleg, außen darf die Steppung nicht zu sehen sein.
sewing_trouble-understitched_garment_do = Die Kanten des Belegs nennen: make.understitch(front_facing.inner, ...).
sewing_trouble-understitched_wide = { $distance } neben der Naht untersteppt, fasst { $place } keine Nahtzugabe mehr, denn diese ist { $wide } breit.
sewing_trouble-understitched_wide_do = Näher an der Naht steppen, etwa 2 mm daneben.
sewing_trouble-button_on_hole = der Knopf sitzt auf { $place }, und dort ist ein Knopfloch gearbeitet.
sewing_trouble-button_on_hole_do = Die Stelle des Knopfes auf der Lage darunter nennen.
sewing_trouble-folded_otherwise = { $allowance } werden eingebügelt ({ $edge }), zugegeben sind { $added }.
sewing_trouble-folded_otherwise_do = Einbügeln, was zugegeben ist, oder zugeben, was eingebügelt wird.
sewing_trouble-pockets_and_places = { $number ->
    [one] eine Tasche wird aufgesetzt
   *[other] { $number } Taschen werden aufgesetzt
}, aber { $places ->
    [one] eine Stelle ist genannt.
   *[other] { $places } Stellen sind genannt.
}
sewing_trouble-pockets_and_places_do = Für jede Tasche eine Stelle nennen: Eine Markierung auf einem gegengleichen Teil, ohne links oder rechts, gilt für beide Hälften.
sewing_trouble-loop_over_opening = sie wird über eine Öffnung gesteppt ({ $place }) und verschließt sie.
sewing_trouble-loop_over_opening_do = Die Schlaufe neben die Öffnung oder auf die andere Seite setzen.
sewing_trouble-facing_apart = { $place } und { $other } werden einzeln versäubert, bevor die Belege verbunden sind.
sewing_trouble-facing_apart_do = Erst verbunden, liegen die Enden der Naht dazwischen unter der Versäuberung; es kann auch so bleiben.
sewing_trouble-try_on_refused = eine der beiden Fassungen lässt sich nicht zeichnen: { $why }
sewing_trouble-try_on_refused_do = Die Werte der Anprobe oder die der Lektion ändern.
sewing_trouble-tried_on_nothing = bei dieser Anprobe ändert sich am Schnitt nichts.
sewing_trouble-tried_on_nothing_do = Den geänderten Wert mit seinem Maß vorher und nachher nennen, oder ihn weglassen.
sewing_trouble-tried_on_elsewhere = bei dieser Anprobe ändert sich nichts: Die Lektion steht auf anderen Werten als denen, mit denen sie gemacht wurde.
sewing_trouble-tried_on_elsewhere_do = Den Wert auf den vorher oder nachher stellen, um die Änderung zu sehen.
sewing_trouble-spot_at = am Ende bei { $edge }
sewing_trouble-spot_from = { $far } vom Ende bei { $edge }
sewing_trouble-cloth_beyond = die neue Nahtlinie ({ $edge }) liegt { $amount } jenseits der Stoffkante, { $spot }.
sewing_trouble-cloth_beyond_do = Diese Kante mit Anprobezugabe zuschneiden, allow_to_fit(...), weniger auslassen, oder das Teil neu zuschneiden.
sewing_trouble-cloth_narrow = außerhalb der neuen Nahtlinie ({ $edge }) bleiben nur { $left } Stoff, { $spot }; die Naht braucht { $need }.
sewing_trouble-cloth_narrow_do = Diese Kante mit Anprobezugabe zuschneiden, allow_to_fit(...), oder weniger auslassen.
sewing_trouble-cloth_narrow_plain = außerhalb der neuen Nahtlinie ({ $edge }) bleiben von { $need } Zugabe nur { $left }, { $spot }.
sewing_trouble-cloth_narrow_plain_do = Eine einfache Naht lässt sich damit nähen; die Kanten versäubern, bevor sie ausfransen.
sewing_trouble-strip_cut_short = dieser Streifen ist um { $amount } zu klein zugeschnitten für das, was er von jetzt an sein soll: { $strip }.
sewing_trouble-strip_cut_short_do = Gleich größer zuschneiden, oder neu.
sewing_trouble-old_row_left_in = die Naht an dieser Kante bleibt bis zu { $amount } außerhalb der neuen Linie stehen: { $edge }.
sewing_trouble-old_row_left_out = die Naht an dieser Kante bleibt bis zu { $amount } innerhalb der neuen Linie stehen, wo man sie sieht und sie zieht: { $edge }.
sewing_trouble-old_row_left_do = Diese Kante aus leave=... nehmen, damit die Naht aufgetrennt wird.
sewing_trouble-no_extra_to_trim = hier gibt es keine Anprobezugabe: { $place }.
sewing_trouble-no_extra_to_trim_do = In einem Zeichenschritt welche geben, allow_to_fit(...), oder die Kante hier weglassen.
sewing_trouble-trimmed_to_fit_twice = die Anprobezugabe ist hier schon abgeschnitten: { $place }.
sewing_trouble-trimmed_to_fit_late = die Anprobezugabe ist schon eingeschlossen oder umgeschlagen, keine Schere kommt mehr hin: { $place }.
sewing_trouble-trimmed_to_fit_late_do = Sie vorher abschneiden.
sewing_trouble-part_of_edge = { $place } ist nur ein Stück, hier wird aber die ganze Kante genäht.
sewing_trouble-part_of_edge_do = Die ganze Kante nennen.
