"""package.xml: what FreeCAD's add-on manager reads agrees with the rest of the checkout."""

import re
from xml.etree import ElementTree as ET

import pytest

from freecad_neckfit import __version__

NAMESPACE = {"p": "https://wiki.freecad.org/Package_Metadata"}


@pytest.fixture(scope="module")
def manifest(checkout):
    return ET.parse(checkout / "package.xml").getroot()


def text(manifest, path):
    return manifest.findtext(path, namespaces=NAMESPACE)


def test_the_version_is_the_packages(manifest):
    assert text(manifest, "p:version") == __version__


def test_the_format_is_one(manifest):
    assert manifest.get("format") == "1"


@pytest.mark.parametrize("path", ["p:freecadmin", "p:content/p:workbench/p:freecadmin"])
def test_the_oldest_freecad_is_the_one_tested(manifest, path):
    assert text(manifest, path) == "0.20"


def test_the_files_it_names_exist(manifest, checkout):
    licence = manifest.find("p:license", NAMESPACE)
    assert licence.text == "LGPL-2.1-or-later"
    assert "GNU LESSER GENERAL PUBLIC LICENSE" in (checkout / licence.get("file")).read_text()
    assert (checkout / text(manifest, "p:icon")).is_file()


def test_the_icon_is_a_drawing(manifest, checkout):
    icon = ET.parse(checkout / text(manifest, "p:icon")).getroot()
    assert icon.tag == "{http://www.w3.org/2000/svg}svg"
    assert icon.get("viewBox").split()[2:] == ["64", "64"]


def test_the_subdirectory_is_the_door_and_holds_only_init_files(manifest, checkout):
    """The folder reaches sys.path: any other module in it would become a global name."""
    door = checkout / text(manifest, "p:content/p:workbench/p:subdirectory")
    assert {file.name for file in door.glob("*.py")} == {"Init.py", "InitGui.py"}


def test_the_class_is_the_one_that_is_registered(manifest, checkout):
    name = text(manifest, "p:content/p:workbench/p:classname")
    source = (checkout / "freecad_neckfit" / "door" / "InitGui.py").read_text()
    assert re.search(rf"^class {name}\(", source, re.MULTILINE)
    assert f"addWorkbench({name}())" in source


@pytest.mark.freecad
def test_freecad_reads_it(checkout):
    import FreeCAD

    read = FreeCAD.Metadata(str(checkout / "package.xml"))
    (workbench,) = read.Content["workbench"]
    assert (read.Name, read.Version) == ("NeckFit", __version__)
    assert workbench.Classname == "NeckFitWorkbench"
    assert workbench.Subdirectory == "./freecad_neckfit/door"
