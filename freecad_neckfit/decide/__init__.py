"""What to order or cut: windows, conflicts, mending, options, tolerances and seasons."""
