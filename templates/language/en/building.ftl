# What a build is doing, said in the terminal.

building-running = Running { $notebook } from the top
building-cell = Code cell { $number } ("{ $title }")
building-proving = Proving the pattern and the sewing order
building-lays = Laying the pieces on the cloth
building-pages = Laying out the pattern pages
building-form = Writing the booklet ({ $form })
building-screen = Writing the booklet (screen)
building-setting = Setting the booklet in type ({ $form })

# Said first, before the code of the notebook runs.
building-code = This runs the notebook's code.
building-left_out = Left out of the booklet: { $what }
building-failed = Proof failed: the booklet says so on its cover. Do not cut from these pages.
building-earlier = From an earlier build, not made again: { $files }
