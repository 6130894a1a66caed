"""What goes to the shop: drawing, routing template, set-up sheet, report, model."""
