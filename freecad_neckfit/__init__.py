"""NeckFit: the fit of a bolt-on neck in its pocket, judged on numbers and on solids."""

__version__ = "0.1.0"
