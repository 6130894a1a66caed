"""Dimensions read from solids whose history and origin nobody knows."""
