"""Run within FreeCAD's screen: many random steps of a designer, each compared with what must be.

A seeded draw of property edits, checks, undos, redos, saves and reopens. After each step the whole
document and what the 3D view holds are held against a shadow of the undo stack.
"""

import os
import random
from pathlib import Path

import FreeCAD
import FreeCADGui
from commands_hand import make_ready, pump
from whole_digest import differences, digest

STEPS = int(os.environ.get("NECKFIT_STEPS", "60"))
SEED = int(os.environ.get("NECKFIT_FIRST_SEED", "1"))
FOLDER = Path(os.environ["NECKFIT_ANSWER"]).parent

EDITS = (
    ("Pocket", "Depth", (15.0, 18.5)),
    ("Pocket", "Angle", (0.0, 1.5)),
    ("Pocket", "SeatEndGap", (0.0, 0.4)),
    ("CoverPlate", "Thickness", (1.6, 2.6)),
    ("Neck", "Underside", (18.0, 19.5)),
    ("Body", "Thickness", (40.0, 46.0)),
    ("Joint", "LimitsGapMin", (0.05, 0.3)),
    ("Pocket", "Depth", (-2.0, 2.0)),  # not permitted
)


class Walk:
    """The document, and what it looked like after each step that can be undone or done again."""

    def __init__(self):
        self.random = random.Random(SEED)
        self.told = {"steps": [], "wrong": [], "fresh": 0, "stale": 0, "refused": 0}
        FreeCADGui.runCommand("NeckFit_Sample")
        pump(200)
        self.document = FreeCAD.ActiveDocument
        self.document.clearUndos()
        self.past, self.future = [self.whole()], []

    def whole(self):
        return digest(self.document)

    def step(self, number):
        ways = [self.edit] * 4 + [self.check] * 4 + [self.undo] * 3 + [self.redo] * 2
        name = self.random.choice([*ways, self.reopen, self.toggle])
        self.told["steps"].append(name.__name__)
        name()
        pump(20)
        self.honest(f"step {number}")

    def edit(self):
        obj, name, (low, high) = self.random.choice(EDITS)
        value = round(self.random.uniform(low, high), 2)
        self.document.openTransaction(f"Edit {name}")
        setattr(self.document.getObject(obj), name, value)
        self.honest("before recompute")
        self.document.recompute()
        self.document.commitTransaction()
        self.done()

    def check(self):
        self.command("NeckFit_Check")

    def toggle(self):
        self.command("NeckFit_" + self.random.choice(("ShowFits", "ShowGaps", "ShowGapMap")))

    def command(self, name):
        from freecad_neckfit.gui.commands import ALL
        from freecad_neckfit.gui.commands import command as commands

        told = []
        real = commands.tell_failure
        commands.tell_failure = lambda *words: told.append(words)
        before = self.whole()
        try:
            good = commands.start(next(c for c in ALL if c.name == name))
        finally:
            commands.tell_failure = real
        if good:
            self.done()
            return
        # Only what is not permitted may be refused, and nothing may be left of it.
        self.told["refused"] += 1
        self.compare("a refused command", before)
        if not all(type(error).__name__ in ("BadInput", "CannotBuild") for _, error in told):
            self.told["wrong"].append(f"{name}: {told}")

    def undo(self):
        if len(self.past) > 1:
            self.document.undo()
            self.document.recompute()
            self.future.append(self.past.pop())
            self.compare("undo", self.past[-1])

    def redo(self):
        if self.future:
            self.document.redo()
            self.document.recompute()
            self.past.append(self.future.pop())
            self.compare("redo", self.past[-1])

    def reopen(self):
        before, path = self.whole(), str(FOLDER / "long.FCStd")
        self.document.saveAs(path)
        FreeCAD.closeDocument(self.document.Name)
        self.document = FreeCAD.openDocument(path)
        pump(100)
        self.compare("reopen", before)
        self.past, self.future = [self.whole()], []

    def done(self):
        self.past.append(self.whole())
        self.future = []
        # FreeCAD keeps twenty steps.
        self.past = self.past[-20:]

    def compare(self, what, wanted):
        found = [d for d in differences(wanted, self.whole()) if not _of_file(d)]
        if found:
            self.told["wrong"].append(f"{what}: {found[:6]}")

    def honest(self, when):
        """No stale finding may look fresh: what is shown is held against the joint as it is."""
        from freecad_neckfit.features.gather import joint_digest
        from freecad_neckfit.job.errors import BadInput

        check = self.document.Check
        try:
            fresh = joint_digest(self.document.Joint) == check.CheckedDigest
        except BadInput:
            fresh = False
        self.told["fresh" if fresh else "stale"] += 1
        labels = check.ViewObject.Proxy.scene.labels().values()
        marked = [label.text.endswith("out of date") for label in labels]
        if fresh == bool(check.Stale) or any(mark == fresh for mark in marked):
            self.told["wrong"].append(
                f"{when}: fresh {fresh}, Stale {check.Stale}, marked {marked}"
            )


def _of_file(difference):
    return difference.startswith("Document")


def main():
    make_ready()
    FreeCAD.Console.SetStatus("Console", "Err", False)  # what is not permitted is told there
    walk = Walk()
    for number in range(STEPS):
        walk.step(number)
    return walk.told
