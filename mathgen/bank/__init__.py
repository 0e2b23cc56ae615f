"""The bank: build, filter, choose by sheet plan, keep, say why not."""
