"""Closed forms of every rule, in numpy, for one joint or for millions at once."""
