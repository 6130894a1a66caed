"""A document with a joint in it, as a designer has it before him."""

import pytest


def close(name):
    import FreeCAD

    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.fixture
def document():
    """An empty document that keeps steps of undo."""
    import FreeCAD

    made = FreeCAD.newDocument("Tested", hidden=True)
    made.UndoMode = 1
    name = made.Name
    yield made
    close(name)


@pytest.fixture
def joint(document):
    """A joint at its defaults, recomputed."""
    from freecad_neckfit.features.make import make_joint

    made = make_joint(document)
    document.recompute()
    assert made.isValid(), made.getStatusString()
    return made


@pytest.fixture
def reopened():
    """Save a document, close it, and open it again."""
    import FreeCAD

    opened = []

    def reopen(document, path):
        document.saveAs(str(path))
        close(document.Name)
        again = FreeCAD.openDocument(str(path), hidden=True)
        opened.append(again.Name)
        return again

    yield reopen
    for name in opened:
        close(name)
