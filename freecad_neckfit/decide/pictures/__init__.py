"""Pictures of what was decided, as SVG that a browser, a printer and Qt all show alike."""
