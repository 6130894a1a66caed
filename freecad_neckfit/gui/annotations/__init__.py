"""Findings in the 3D view: labels with leaders, interference, gap arrows and the gap map."""
