# A class in a room (kit/room). What stands in braces in room_page and room_board is put in by the page itself.

# ---- the door ----
room-code_often = Too many wrong codes from this device. Wait a minute, then look at the code again.
room-device_full =
    { $count ->
        [one] One student is here from this device already. Go on in the window that is open.
       *[other] { $count } students are here from this device already. Go on in a window that is open.
    }
room-teacher_ask = This is the teacher’s board. Type the teacher’s code; it is shown where the class was opened.
room-teacher_wrong = That is not the teacher’s code. It is not the same as the class code.

# ---- a student's page ----
room_page-class = In class
room_page-name = First name (if you like)
room_page-hand_up = Raise my hand
room_page-hand_down = Lower my hand
room_page-may_look = My teacher may look at my draft, and show its outline to the class without my name
room_page-private_own = Your values and measurements stay on this device. Your teacher sees the step you are at, what the check found and which exercises are solved; no more, unless you allow it or have pages made.
room_page-private_room = Your teacher’s machine works the lesson for this page. It keeps none of your values and measurements. Your teacher sees the step you are at, what the check found and which exercises are solved.
room_page-follow_on = You are going along with your teacher.
room_page-follow_off = Your teacher leads the class through the steps.
room_page-let_go = Go my own way
room_page-go_along = Go along
room_page-sent_step = Your teacher sent everybody to this step.
room_page-sent_values = Your teacher set values for everybody.
room_page-sent_preset = Your teacher set “{ $title }” for everybody.
room_page-take_back = Back to mine
room_page-keep = Keep it
room_page-queue = Waiting. Before you: { $place }
room_page-booklet_follows = The booklet follows.
room_page-refused_often = You have had pages made several times just now. Wait a few minutes.
room_page-refused_disk = The teacher’s machine has no room left for more pages. Tell your teacher.
room_page-refused_large = These pages are larger than one student’s may be. Check the values you set.
room_page-lost = No connection to the class. Trying again …
room_page-gone = Your place in this class is free again. Load the page to come back.
room_page-busy = The class has much to do just now. Your draft follows.
room_page-too_large = That is more than can be sent at once.

# ---- the board ----
room_board-board = Teacher’s board
room_board-join = Join the class
room_board-code = Class code
room_board-large = Show it large
room_board-close = Close
room_board-name = Name
room_board-people = Who is here
room_board-count = { $count } of { $number }
room_board-nobody = Nobody yet.
room_board-student = Student { $number }
room_board-away = away
room_board-step = Step
room_board-place = { $number } of { $count }
room_board-exercises = Exercises
room_board-solved = solved
room_board-open = not yet
room_board-found = Check
room_board-found_none = nothing found
room_board-found_errors = to put right: { $count }
room_board-found_warnings = to look at: { $count }
room_board-hand = Hand
room_board-hand_seen = Hand raised – seen
room_board-look = Look
room_board-look_not = has not allowed it
room_board-looked_none = The draft was not shown: the page is closed, or this is not allowed any more.
room_board-free = Free this place
room_board-worked_here = worked by this machine
room_board-stage = Lead the class
room_board-back = Back
room_board-on = Next
room_board-play = Play
room_board-pause = Pause
room_board-send_step = Send everybody to this step
room_board-follow = Follow me
room_board-unfollow = Let them go
room_board-value = Value
room_board-send_value = Send this value to everybody
room_board-preset = Preset
room_board-send_preset = Send this preset to everybody
room_board-sent = Sent to { $count }.
room_board-over = All drafts over one another
room_board-over_none = Nobody allows their draft to be shown yet.
room_board-over_count = Drafts shown: { $count }
room_board-lost = No connection to the class. Trying again …
room_board-no_picture = This step has no picture.
