"""The lesson: parameters, steps and what working them gives."""
