# What a build is doing, said in the terminal.

building-running = Running { $notebook } from the top
building-cell = Code cell { $number } ("{ $title }")
building-proving = Proving the pattern and the sewing order
building-lays = Laying the pieces on the cloth
building-pages = Laying out the pattern pages
building-form = Writing the booklet ({ $form })
building-screen = Writing the booklet (screen)
building-setting = Setting the booklet in type ({ $form })
