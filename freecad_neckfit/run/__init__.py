"""The one chain from a job to its findings, called by the command, the document and the sheets."""
