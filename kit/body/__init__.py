"""Body measurements and size charts."""
