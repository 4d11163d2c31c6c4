"""A class: a lesson's page given out in a room, and the teacher's board.

    students' browsers --- files, one line (websocket) each ---+
                                                               |
    teacher's browser  --- board, one line --------------------+--- server.py: one process, tornado
                                                                       |            |
                                                            workers.py: warm     makings.py: a queue of
                                                            engines for pages    jobs that make pages
                                                            without their own    and booklets

**Processes.** The server loads no lesson and nothing of the kit that draws. `prepare.py` runs once before it and
leaves page, lesson and facts in a folder that is kept from class to class. A worker (`worker.py`) is the page's own
engine in a process beside it: a message in, an answer out, and nothing kept of whom it was for. A making (`making.py`)
is a process for one student's pages or booklet, and ends with them.

**Who brings the requests.** `running.py` is the class itself. `server.py` serves it on a port of its own, behind codes;
`extension.py` puts it into a Jupyter server that offers nothing else, behind that server's log-in, and `hub.py` is such
a server for a JupyterHub.

**Messages** are values (`said.py`): what a page or the board says is read into one of them or refused, 64 KB at most.
No request has a body; one that brings a body is refused before any of it is read.

**What is kept where.** Values, own measurements and the step a student is at: in the student's browser. In the server's
memory, while it runs: a seat for each student (`seats.py`: a random token in a cookie, a number, the first name if
one was given, what the page last reported, whether a hand is up and whether the teacher may look), who is followed,
what was last made. On disk: the pages a student had made, in a folder of the class, which goes when the class is
closed (`--keep DIR` keeps it). A setting that is sent to be worked, looked at or printed is forgotten when that is
done. Codes are new each time and stand in no log.

**Fair shares.** Each seat has one message with the workers at a time and they take turns round the room; drawings go
before proofs; what does not end is stopped with its worker, and its seat waits a while. Files, messages and makings
each have a rate for every seat, and wrong codes one for every device.
"""
