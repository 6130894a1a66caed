"""The report on one joint: what it says, and its HTML and PDF forms."""
