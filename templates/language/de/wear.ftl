# Befunde am Körper: ob das Kleidungsstück angezogen, getragen und gebunden werden kann. $part ist ein Körpermaß, immer ein
# „…umfang“; Längen kommen mit ihrer Einheit.

wear-where = Am Körper

# ---- anziehen ----
wear-neck_small = so weit geöffnet, wie es geht, misst der Halsausschnitt { $has } rundum; ein { $part } von { $need } muss hindurch: Es fehlen { $amount }.
wear-neck_small_do = Den Ausschnitt tiefer oder weiter zeichnen, bis er rundum { $amount } länger ist, oder einen Schlitz oder Reißverschluss vorsehen, der { $half } länger ist.
wear-narrow_at = lässt sich nicht anziehen: In der Taille gehen geöffnet { $has } hindurch, bei einem { $part } von { $girth } müssen dort { $need } durch.
wear-narrow_above = lässt sich nicht anziehen: { $far } über der Taille gehen geöffnet { $has } hindurch, bei einem { $part } von { $girth } müssen dort { $need } durch.
wear-narrow_below = lässt sich nicht anziehen: { $far } unter der Taille gehen geöffnet { $has } hindurch, bei einem { $part } von { $girth } müssen dort { $need } durch.
wear-narrow_do = Weiter öffnen: Ein Reißverschluss oder Schlitz, der { $half } länger ist, gibt dort { $amount }. Oder um so viel weiter zeichnen.
wear-narrow_elastic_do = Das Gummiband mindestens { $amount } länger zuschneiden.
wear-armhole_small = ein Armloch misst { $has } rundum; über der Schulter eines Arms von { $arm } braucht es mindestens { $need }.
wear-armhole_small_do = Unter dem Arm tiefer zeichnen, bis es { $amount } länger ist.
wear-hand_stuck = ein Ärmel endet mit { $has } rundum; eine Hand von { $need } muss hindurch.
wear-hand_stuck_do = Die Öffnung { $amount } weiter machen oder einen Schlitz zum Knöpfen vorsehen.
wear-arm_stuck = ein Ärmel misst { $has } rundum, wo der Arm { $need } misst.
wear-arm_stuck_do = Um { $amount } und etwas Bequemlichkeit weiter machen.
wear-arm_tight = ein Ärmel hat am Oberarm { $ease } Bequemlichkeit; in gewebtem Stoff braucht der Arm { $least }, um sich zu beugen.
wear-arm_tight_do = Um { $amount } weiter machen.
wear-heel_stuck = ein Hosenbein endet mit { $has } rundum; ein Fersenumfang von { $need } muss hindurch.
wear-heel_stuck_do = Den Saum { $amount } weiter machen oder in der Seitennaht einen Schlitz lassen.

# ---- tragen ----
wear-too_small = misst { $has }, wo ein { $part } von { $need } hineingehört.
wear-too_small_do = Um { $amount } und mindestens { $ease } Bequemlichkeit weiter machen: Gewebter Stoff dehnt sich nicht.
wear-ease_small = hat beim Maß „{ $part }“ { $ease } Bequemlichkeit; ein enges Kleidungsstück aus gewebtem Stoff will { $least }.
wear-ease_small_do = Dort { $amount } weiter machen.
wear-stride = rundum geschlossen und ohne Schlitz misst der Saum { $has }; für einen Schritt braucht es am Knie { $need }.
wear-stride_do = Den Saum { $amount } weiter machen oder einen Schlitz oder eine Falte vorsehen.
wear-head_small = misst { $has } rundum, der Kopf misst { $head }.
wear-head_small_do = Um { $amount } weiter machen und 1 bis 2 cm Bequemlichkeit zugeben.
wear-head_large = misst { $has } rundum für einen Kopf von { $head }: rutscht über die Augen.
wear-head_large_do = Enger machen oder mit einem Band einhalten.
wear-elastic_long = das Gummiband misst { $has } rundum für eine Taille von { $waist }: Es hält nichts.
wear-elastic_long_do = Etwas kürzer als die Taille zuschneiden.
wear-elastic_short = das Gummiband misst { $has } rundum für eine Taille von { $waist }: Es schneidet ein.
wear-elastic_short_do = Länger zuschneiden, nur etwas kürzer als die Taille.

# ---- binden ----
wear-ties_short = die Bindebänder ({ $strip }) sind zusammen { $long } lang; der Weg um den Körper von einem zum anderen ist { $way }: Das gibt keinen Knoten.
wear-ties_short_do = Jedes mindestens { $each } lang zuschneiden.
wear-ties_no_bow = von den Bindebändern ({ $strip }), zusammen { $long }, bleiben { $left }, wenn sie { $way } um den Körper gegangen sind: genug für einen Knoten, nicht für eine Schleife.
wear-wrap_small = nur Bindebänder halten die Vorderteile zusammen, und diese liegen { $has } übereinander.
wear-wrap_small_do = Die Vorderteile { $amount } weiter übereinander legen.
wear-belt_short = der Gürtel ({ $strip }) ist { $long } lang; einmal herum sind { $around }, und der Rest gibt keinen Knoten.
wear-belt_short_do = Um { $amount } länger zuschneiden.
wear-strap_small = der Träger ({ $strip }) und die Kante zwischen seinen Enden bilden eine Schlinge von { $has }; ein Kopf von { $head } muss hindurch.
wear-strap_small_nobody = der Träger ({ $strip }) und die Kante zwischen seinen Enden bilden eine Schlinge von { $has }. Die Teile folgen niemandes Maßen; der Kopf einer erwachsenen Frau, im Mittel { $head }, geht nicht hindurch.
wear-strap_small_do = Den Träger { $amount } länger zuschneiden.

# ---- getragen und bewegt ----
wear-stretch_spent = für den { $part } ist der Stoff schon im Stehen um { $spent } gedehnt, von { $stretch }, die er hergibt: Zum Atmen und Greifen bleibt zu wenig.
wear-ease_style = soll { $style } sitzen, hat aber beim Maß „{ $part }“ { $ease } Bequemlichkeit; so ein Sitz braucht mindestens { $least }.
wear-pocket_low = eine Tasche öffnet sich { $has } unter der Taille; bei hängendem Arm greift die Hand nur bis { $least } darunter hinein.
wear-pocket_low_do = Mindestens { $amount } höher setzen.
wear-pocket_narrow = ein Tascheneingriff ist { $has } lang; die flache Hand braucht { $need }.
wear-pocket_narrow_do = Den Eingriff { $amount } länger machen.
wear-loop_small = eine Gürtelschlaufe ist mit eingeschlagenen Enden { $has } lang; der Gürtel ({ $strip }) von { $wide } Breite passt nicht hindurch.
wear-loop_small_do = Die Schlaufe { $amount } länger zuschneiden und etwas mehr für die Dicke des Gürtels.
wear-tie_opening = die Öffnung in der Naht ist { $has } lang; das Bindeband ({ $strip }) von { $wide } Breite verklemmt sich darin.
wear-tie_opening_do = Mindestens { $least } offen lassen oder das Band schmaler machen.
wear-wrap_low = die Vorderteile treffen sich { $meets } über der Taille, die Brust endet { $bust } über der Taille: Nichts bedeckt sie.
wear-wrap_low_do = Die Halskante so zeichnen, dass sich die Vorderteile mindestens { $amount } höher kreuzen, oder sie weiter übereinanderlegen.
wear-wrap_gapes = die Wickelkante ist vom Hals an { $has } lang, der Körper darunter { $body }: Sie steht ab.
wear-wrap_gapes_do = { $amount } mit einem Abnäher herausnehmen, der in die Seitennaht oder in die Taille verlegt wird, oder auf Band einhalten.
wear-wrap_pulls = die Wickelkante ist vom Hals an { $has } lang, der Körper darunter { $body }: Sie spannt über der Brust und rutscht hoch.
wear-wrap_pulls_do = Das Vorderteil über der Brust um { $amount } verlängern: auf Brusthöhe quer durchschneiden und spreizen, die Länge der Seitennaht mit einem Abnäher erhalten.
wear-wrap_thigh = nur Bänder halten die Vorderteile, und am Oberschenkel liegen sie { $has } übereinander; zum Gehen und Sitzen braucht es { $least }.
wear-wrap_thigh_do = Jedes Vorderteil { $half } weiter über die Mitte reichen lassen.
wear-button_bust = der Knopf, der der Brusthöhe am nächsten liegt, ist { $off } von ihr entfernt; bei mehr als { $most } klafft die Vorderkante dort.
wear-button_bust_do = Einen Knopf auf Brusthöhe setzen, { $height } über der Taille, und die anderen von dort aus verteilen.
wear-arm_raised = von der Taille die Seite hinauf und die Ärmelnaht unter dem Arm hinunter misst es { $has }, der Körper { $need }: Ein gehobener Arm zieht es { $up } hoch.
wear-arm_raised_do = Armloch und Ärmel unter dem Arm höher legen, oder die Armkugel flacher und den Ärmel weiter machen, bis beide Längen um { $amount } wachsen.
wear-cut_on = von der Taille die Seite hinauf und unter dem Arm bis ans Ende des Ärmels misst es { $has }, der Körper mit waagerechtem Arm { $need }. Der Arm geht { $angle } Grad hoch, bevor sich der Saum bewegt, 90 sind waagerecht; so weit gehoben zieht er den Saum { $up } hoch.
wear-cut_on_do = Den Ärmel höher an der Seite ansetzen oder weniger schräg zeichnen, bis beide Längen zusammen um { $amount } wachsen.
wear-cap_ease = die Armkugel ist { $ease } länger als das Armloch; in diesem Stoff lassen sich höchstens { $most } ohne Fältchen einhalten.
wear-cap_ease_do = Die Armkugel { $amount } kürzer zeichnen oder sie kräuseln und einen Puffärmel daraus machen.
wear-armhole_low = ein Armloch ohne Ärmel endet { $has } unter der Achsel und lässt die Seite frei; üblich sind höchstens { $most }.
wear-armhole_low_do = Es { $amount } höher legen.
wear-crotch_short = von der Oberkante vorn zwischen den Beinen hindurch bis zur hinteren misst die Schrittnaht { $has }, der Körper dort { $need }: Beim Sitzen schneidet sie ein.
wear-crotch_short_do = Die Schrittnaht { $amount } länger machen: ihren Bogen vertiefen oder die hintere Taille erhöhen.

# ---- fertige Maße ----
wear-finished_bust_girth = Fertige Weite an der Brust
wear-finished_waist_girth = Fertige Weite in der Taille
wear-finished_hip_girth = Fertige Weite an der Hüfte
wear-finished_upper_arm_girth = Fertige Ärmelweite am Oberarm
wear-finished_small_ring = „{ $title }“ misst am Ende { $has }, und hindurch muss: { $part }, { $need }. Es fehlen { $amount }, und nichts lässt sich dort öffnen.
wear-finished_small_whole = „{ $title }“ misst am Ende { $has }, und hinein muss: { $part }, { $need }. Es fehlen { $amount }, und nichts am Kleidungsstück lässt sich öffnen.
wear-finished_small_do = Rundum { $amount } länger zeichnen, dort einen Schlitz oder Reißverschluss von mindestens { $half } vorsehen oder dehnbaren Stoff wählen und seine Dehnung angeben.
wear-untried_lines = Nicht am Körper geprüft: Kein Teil hat eine Linie, die sagt, wo Brust, Taille oder Hüfte liegt. Eine Hilfslinie mit solchem Namen zeichnen, etwa waist_line.
wear-untried_measures = Nicht am Körper geprüft: Wie hoch die Linien der Teile liegen, sagen Maße, die diesen Größen fehlen: { $measures }. In die Größentabelle aufnehmen.
wear-untried_girths = Nicht am Körper geprüft: Die Größen haben keines dieser Maße: { $measures }.
