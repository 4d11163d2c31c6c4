# Die Kursfassung: Übungen mit ihren Zielen und die eigenen Seiten der Lernenden.
# { $what } ist eine Stelle wie „Vorderteil: Ärmelnaht“; Längen kommen mit ihrer Einheit, in beiden Systemen.

class_copy-edge = { $piece }: { $edge }

class_copy-grows = { $what } – soll { $by } länger werden.
class_copy-grows_met = { $what } – { $change } länger, wie verlangt.
class_copy-grows_none = { $what } – noch nicht länger; es fehlen { $missing }.
class_copy-grows_short = { $what } – bisher { $change } länger; es fehlen { $missing }.
class_copy-grows_over = { $what } – { $change } länger; das sind { $over } zu viel.
class_copy-grows_wrong = { $what } – jetzt { $change } kürzer; soll { $by } länger werden.

class_copy-shrinks = { $what } – soll { $by } kürzer werden.
class_copy-shrinks_met = { $what } – { $change } kürzer, wie verlangt.
class_copy-shrinks_none = { $what } – noch nicht kürzer; es fehlen { $missing }.
class_copy-shrinks_short = { $what } – bisher { $change } kürzer; es fehlen { $missing }.
class_copy-shrinks_over = { $what } – { $change } kürzer; das sind { $over } zu viel.
class_copy-shrinks_wrong = { $what } – jetzt { $change } länger; soll { $by } kürzer werden.

class_copy-keeps = { $what } – soll bleiben, wie es ist.
class_copy-keeps_met = { $what } – wie zuvor.
class_copy-keeps_longer = { $what } – { $by } länger; sollte bleiben, wie es war.
class_copy-keeps_shorter = { $what } – { $by } kürzer; sollte bleiben, wie es war.
class_copy-keeps_moved = { $what } – um { $by } verschoben; sollte an seiner Stelle bleiben.

class_copy-is_length = { $what } – soll { $length } messen.
class_copy-at_least = { $what } – soll { $length } oder mehr messen.
class_copy-at_most = { $what } – soll { $length } oder weniger messen.
class_copy-length_met = { $what } – { $length }, wie verlangt.
class_copy-too_short = { $what } – { $length }; es fehlen { $missing }.
class_copy-too_long = { $what } – { $length }; das sind { $over } zu viel.

# { $way } ist, wie ein Punkt sich bewegt: „2 cm (3/4 Zoll) nach oben“, oder zwei Wege verbunden.
class_copy-moves = { $what } – zu verschieben: { $way }.
class_copy-moves_met = { $what } – verschoben: { $way }, wie verlangt.
class_copy-moves_short = { $what } – noch zu verschieben: { $way }.
class_copy-up = { $by } nach oben
class_copy-down = { $by } nach unten
class_copy-out = { $by } nach außen
class_copy-in = { $by } nach innen

class_copy-sound = Die Prüfung findet keine Fehler.
class_copy-sound_met = Die Prüfung findet keine Fehler.
# { $first } ist der erste Befund, ein Satz.
class_copy-sound_not =
    { $count ->
        [one] Die Prüfung findet etwas, das anzusehen ist. { $first }
       *[other] Die Prüfung findet { $count } Dinge, die anzusehen sind. { $first }
    }

# Die Übung am Bildschirm.
class_copy-exercise = Übung: { $title }
class_copy-done = Gut gemacht – { $title } ist gelöst.
class_copy-start = Mit den Werten der Lektion beginnen
class_copy-start_tooltip = Setzt alle Werte zurück; Ziele werden von der Schnittzeichnung der Lektion aus gemessen
class_copy-hint =
    { $left ->
        [one] Einen Tipp zeigen (noch einer)
       *[other] Einen Tipp zeigen (noch { $left })
    }
class_copy-no_hint = Keine weiteren Tipps
class_copy-hint_tooltip = Tipps kommen einer nach dem anderen
class_copy-goal_met = geschafft
class_copy-goal_open = noch nicht
class_copy-answer = Die Lösung zeigen
# { $value } kommt mit seiner Einheit.
class_copy-answer_line = { $name }: { $value }
class_copy-waiting = Mit diesen Werten lässt sich der Schnitt noch nicht zeichnen.

# Die eigene Seite der Kursfassung.
class_copy-title = { $title } – Kursfassung
class_copy-welcome = Die Regler bewegen: Bild, Zahlen und Prüfung folgen. Die eigenen Maße eingeben, die Übungen versuchen und den Schnitt in der eigenen Größe drucken. Die Werte bleiben nur hier gespeichert.
class_copy-values = Werte
class_copy-body = Die eigenen Maße
class_copy-exercises = Übungen
class_copy-print = Der eigene Schnitt

# Die eigenen Seiten der Lernenden.
class_copy-print_mine = Meine Größe drucken
class_copy-print_tooltip = Erstellt Heft und Schnittmusterseiten in der eigenen Größe und mit den eigenen Werten
class_copy-paper = Papier
class_copy-booklet_too = Mit dem Heft
class_copy-cancel = Abbrechen
class_copy-print_run = Die Lektion wird in der eigenen Größe konstruiert …
class_copy-print_prove = Der Schnitt wird geprüft …
class_copy-print_booklet = Das Heft wird gesetzt …
class_copy-print_pages = Die Schnittmusterseiten werden ausgelegt …
class_copy-print_cancelled = Abgebrochen. Was vorher erstellt wurde, ist noch da.
class_copy-print_failed = Das hat nicht geklappt: { $why }
class_copy-print_kept = Die Dateien unten sind von vorher.
class_copy-print_lost = Es hat ohne Angabe von Gründen aufgehört. Noch einmal versuchen.
# { $who } ist die Größe oder der Name des Körpers, { $when } eine Uhrzeit wie 14:05.
class_copy-print_done = Erstellt um { $when }: { $who }.
class_copy-print_unsound = Die Prüfung hat etwas gefunden, das zu berichtigen ist: nach diesen Seiten noch nicht zuschneiden.
class_copy-file_booklet = Heft
class_copy-file_pages = Schnittmusterseiten, { $paper }

# Der Eingang zu einem Kurs, der in einem Raum angeboten wird.
class_copy-room = Schnittkurs
class_copy-code = Kurscode
class_copy-code_enter = Eintreten
class_copy-code_ask = Den Code eingeben, der an der Tafel steht.
class_copy-code_wrong = Das ist nicht der Code dieses Kurses. Noch einmal nachsehen: er enthält kein o, i oder l und keine Ziffer 0 oder 1.
class_copy-room_full =
    { $count ->
        [one] Hier ist Platz für eine Person, und es ist schon jemand da. Noch einmal versuchen, wenn der Platz frei ist.
       *[other] Hier ist Platz für { $count } Personen, und alle sind da. Noch einmal versuchen, wenn jemand gegangen ist.
    }

# ---- Ablehnungen für Lernende ----
class_copy-lesson_gone = Die Lektion „{ $path }“ ist nicht da.
class_copy-lesson_gone_do = Den Ordner, der zur Kopie für den Unterricht gehört, neben ihr lassen.
class_copy-no_lesson = Das ist keine Lektion, die sich zeigen lässt.
class_copy-no_lesson_do = Die Kopie für den Unterricht neu erstellen.
