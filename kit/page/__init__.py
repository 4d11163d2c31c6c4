"""A lesson in the reader's own browser: the engine that runs there, and what builds the folder it lives in."""
