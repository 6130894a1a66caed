"""How often a joint fails within its limit deviations, and which dimension matters most."""
