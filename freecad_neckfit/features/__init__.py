"""Document objects: what the designer states, the joint that ties it, its parts and its check.

A saved document holds the module path and the class name of every proxy: ``body.BodyProxy``,
``pocket.PocketProxy`` and so on keep theirs for ever. Proxies import nothing heavy at the top,
because FreeCAD imports them at every start.
"""
