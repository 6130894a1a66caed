"""Task panels: what the designer works in while the model stays in view."""
