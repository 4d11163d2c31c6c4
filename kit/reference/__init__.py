"""What every verb offers: its entry, looked up by name or trade word, and the practice pieces its example is run on."""
