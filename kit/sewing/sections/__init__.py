"""Cross-sections of each family of operations, in the manner of `kit.sewing.section`."""
