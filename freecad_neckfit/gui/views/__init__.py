"""View providers: how the document objects look in the tree and in the 3D view."""
