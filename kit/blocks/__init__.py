"""Foundation blocks."""
