# Titel der Teile der Grundschnitte.

block-front_bodice = Oberteil vorn
block-back_bodice = Oberteil hinten
block-front_skirt = Rockvorderteil
block-back_skirt = Rockrückenteil
block-front_trouser_leg = Vorderhose
block-back_trouser_leg = Hinterhose
block-sleeve = Ärmel

# Was von einem abgenommenen Schnitt zu wissen ist.
block_note-traced =
    { $size ->
        [none] { $title } ist von einem Kleidungsstück abgenommen und passt nur der Person, der dieses passt; mit anderen Körpermaßen ändert sich der Schnitt nicht.
       *[other] { $title } ist von einem Kleidungsstück abgenommen und passt nur für Größe { $size }; mit anderen Körpermaßen ändert sich der Schnitt nicht.
    }

# ---- Körper, für die ein Grundschnitt nicht zu zeichnen ist ----
blocks-missing = Es fehlt ein Maß: { $measure }.
blocks-missing_do = Messen: { $note }
blocks-missing_own_do = Mit den anderen Maßen angeben.
blocks-for_body = { $block } für { $body }
blocks-two_refused = { $one } { $one_value } und { $other } { $other_value } passen nicht zusammen: { $trouble }
blocks-two_refused_do = Noch einmal messen: { $one } und { $other }.
blocks-goes_one_do = Noch einmal messen: { $one } und { $other }. Es geht mit { $first }.
blocks-goes_two_do = Noch einmal messen: { $one } und { $other }. Es geht mit { $first } oder mit { $second }.
blocks-goes_with = { $measure } { $value }
blocks-estimated = { $what } Geschätzt, nicht gemessen: { $measures }.
blocks-again_do = Noch einmal messen: { $measure }.
blocks-arm_short = { $measure } { $value }: zu kurz für eine Armkugel, die in ein Armloch von { $armscye } passt.
blocks-arm_large = { $measure } { $value } und { $ease } Weitenzugabe sind zu viel für ein Armloch von { $armscye }: die Armkugel wäre niedriger als { $least }.
blocks-arm_large_do = Oberarm und Armlochtiefe noch einmal messen, das Armloch vertiefen oder weniger Weitenzugabe nehmen.
blocks-arm_small = { $measure } { $value } und { $ease } Weitenzugabe sind zu wenig für ein Armloch von { $armscye }: die Armkugel wäre höher als { $most }.
blocks-arm_small_do = Oberarm und Armlochtiefe noch einmal messen oder am Oberarm mehr Weitenzugabe nehmen.
blocks-wrist_wide = { $measure } { $value }: das Handgelenk wird weit größer als der Oberarm von { $arm }.
blocks-wrist_narrow = { $measure } { $value }: das Handgelenk wird weit kleiner als der Oberarm von { $arm }.
blocks-armscyes_differ = Ein vorderes Armloch von { $front } und ein hinteres von { $back } sind für einen Ärmel zu verschieden.
blocks-armscyes_differ_do = Nachsehen, wo die Schulternaht auf das Armloch trifft.
blocks-ease_negative = Die Weitenzugabe ist null oder mehr.
blocks-refused_neck_shoulders = der Hals wird zu weit für die Schultern.
blocks-refused_no_side_seam = über der Taille bleibt keine Seitennaht.
blocks-refused_neck_armhole = der vordere Halsausschnitt wird so tief wie das Armloch.
blocks-refused_side_flat = die Seitennaht liegt flacher als 45 Grad.
blocks-refused_armhole_shallow = das Armloch wird zu flach für einen Arm.
blocks-refused_shoulder_beyond = die Schulter reicht über die Seite der Brust hinaus.
blocks-refused_width_beyond = die Breite reicht über die Seite der Brust hinaus.
blocks-refused_width_inside = die Breite liegt weit innerhalb der Schulterspitze.
blocks-refused_width_past_tip = die Breite reicht weit über die Schulterspitze hinaus.
blocks-refused_side_leans = die Seitennaht neigt sich zu stark für ein Armloch.
blocks-refused_no_dart_room = über der Taille bleibt kein Platz für Abnäher.
blocks-refused_side_leans_20 = die Seitennaht neigt sich um mehr als 20 Grad.
blocks-refused_bust_dart_deep = der Brustabnäher wird so tief wie die Seitennaht.
blocks-refused_no_waist_shape = von der Hüfte zur Taille bleibt nichts zu formen.
blocks-refused_darts_wide = die Abnäher werden zu breit, um flach zu liegen.
blocks-refused_hip_side_flat = die Seitennaht liegt zu flach.
blocks-refused_below_hem = das Maß reicht unter den Saum.
blocks-refused_hip_crotch = zwischen Hüfte und Schritt bleibt kein Platz.
blocks-refused_leg_slant = die Seite des Beins wird zu schräg.
blocks-refused_crotch_curve = für den Schrittbogen bleibt kein Platz.

# ---- weitere ----
blocks-refused_back_low = die hintere Mitte liegt zu tief.
blocks-refused_back_high = die hintere Mitte liegt zu hoch.
blocks-refused_wide_leg = ergibt ein viel zu weites Bein.
blocks-refused_fork_wide = der Schritt wird zu breit.

block_title-bodice = Oberteil-Grundschnitt
block_title-darted_bodice = Oberteil-Grundschnitt mit Abnähern
block_title-skirt = Rock-Grundschnitt
block_title-trousers = Hosen-Grundschnitt
block_title-with_sleeve = { $block } mit Ärmel
