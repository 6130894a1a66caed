"""FreeCAD's Python is found, the command starts itself again under it once, and never in a loop."""

import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from freecad_neckfit import host
from freecad_neckfit.host import GUARD_VARIABLE, LIB_VARIABLE, PYTHON_VARIABLE, Host, WrongHost


@pytest.fixture
def folder_with_freecad(tmp_path):
    """A folder that looks as if FreeCAD were in it."""
    lib = tmp_path / "else" / "lib"
    lib.mkdir(parents=True)
    (lib / "FreeCAD.so").touch()
    for name in ("Ext", "Mod"):
        (lib.parent / name).mkdir()
    return lib


@pytest.fixture
def without_freecad(monkeypatch):
    """A machine without FreeCAD, as far as host can see."""
    monkeypatch.setattr(host, "KNOWN_LIBS", ())
    monkeypatch.setattr(host, "_importable", lambda: False)
    monkeypatch.delitem(sys.modules, "FreeCAD", raising=False)
    for name in (PYTHON_VARIABLE, LIB_VARIABLE, GUARD_VARIABLE):
        monkeypatch.delenv(name, raising=False)


@pytest.fixture
def calls_to_exec(monkeypatch):
    """Record what would replace this process; raising stands for never coming back."""
    calls = []

    def execve(program, arguments, environment):
        calls.append((program, arguments, environment))
        raise SystemExit("replaced")

    monkeypatch.setattr(os, "execve", execve)
    return calls


@pytest.mark.freecad
def test_the_freecad_of_the_distribution_is_found():
    found = host.find_freecad({})
    assert found is not None
    assert found.python == Path("/usr/bin/python3")
    assert (found.paths[0] / "FreeCAD.so").is_file()
    assert [path.name for path in found.paths[1:]] == ["Ext", "Mod"]


@pytest.mark.freecad
def test_freecad_makes_a_solid_in_this_interpreter():
    import Part

    assert Part.makeBox(2.0, 3.0, 4.0).Volume == pytest.approx(24.0, rel=1e-12)


def test_variables_name_another_freecad(folder_with_freecad):
    stated = {PYTHON_VARIABLE: sys.executable, LIB_VARIABLE: str(folder_with_freecad)}
    assert host.find_freecad(stated) == Host(
        python=Path(sys.executable),
        paths=(
            folder_with_freecad,
            folder_with_freecad.parent / "Ext",
            folder_with_freecad.parent / "Mod",
        ),
    )


def test_a_python_that_is_none_is_refused(tmp_path):
    with pytest.raises(WrongHost, match=f"{PYTHON_VARIABLE} names .*no program"):
        host.find_freecad({PYTHON_VARIABLE: str(tmp_path / "python3")})


def test_a_folder_without_freecad_is_refused(tmp_path):
    with pytest.raises(WrongHost, match=r"holds no FreeCAD\.so"):
        host.find_freecad({LIB_VARIABLE: str(tmp_path)})


@pytest.mark.usefixtures("without_freecad")
def test_without_freecad_one_sentence_says_what_to_install(capsys):
    with pytest.raises(SystemExit) as stopped:
        host.reexec_under_freecad(["check", "joint.toml"])
    assert stopped.value.code == 2
    said = capsys.readouterr().err
    assert "apt-get install --no-install-recommends freecad python3-numpy python3-ezdxf" in said
    assert said.count("\n") == 1


@pytest.mark.usefixtures("without_freecad")
def test_the_command_starts_again_under_freecads_python(
    monkeypatch, folder_with_freecad, tmp_path, calls_to_exec, checkout
):
    python = tmp_path / "freecads-python"
    python.touch()
    python.chmod(python.stat().st_mode | stat.S_IXUSR)
    monkeypatch.setenv(PYTHON_VARIABLE, str(python))
    monkeypatch.setenv(LIB_VARIABLE, str(folder_with_freecad))
    monkeypatch.setenv("PYTHONPATH", "/stated/before")
    monkeypatch.setenv("PYTHONHOME", "/another/python")
    with pytest.raises(SystemExit, match="replaced"):
        host.reexec_under_freecad(["check", "a joint.toml"])
    ((program, arguments, environment),) = calls_to_exec
    assert program == str(python)
    assert arguments == [str(python), "-P", "-m", "freecad_neckfit", "check", "a joint.toml"]
    searched = environment["PYTHONPATH"].split(os.pathsep)
    assert searched[:2] == [str(checkout), str(folder_with_freecad)]
    assert searched[-1] == "/stated/before"
    assert "PYTHONHOME" not in environment
    assert environment[GUARD_VARIABLE] == str(os.getpid())


@pytest.mark.usefixtures("without_freecad")
def test_a_second_start_of_the_same_process_stops(
    monkeypatch, folder_with_freecad, calls_to_exec, capsys
):
    monkeypatch.setenv(LIB_VARIABLE, str(folder_with_freecad))
    monkeypatch.setenv(PYTHON_VARIABLE, sys.executable)
    monkeypatch.setenv(GUARD_VARIABLE, str(os.getpid()))
    with pytest.raises(SystemExit) as stopped:
        host.reexec_under_freecad(["check"])
    assert stopped.value.code == 2
    assert calls_to_exec == []
    assert "still cannot be imported" in capsys.readouterr().err


@pytest.mark.usefixtures("without_freecad")
def test_a_child_that_inherits_the_guard_may_start_again(
    monkeypatch, folder_with_freecad, calls_to_exec
):
    monkeypatch.setenv(LIB_VARIABLE, str(folder_with_freecad))
    monkeypatch.setenv(PYTHON_VARIABLE, sys.executable)
    monkeypatch.setenv(GUARD_VARIABLE, str(os.getpid() + 1))
    with pytest.raises(SystemExit, match="replaced"):
        host.reexec_under_freecad(["check"])
    assert len(calls_to_exec) == 1


@pytest.mark.freecad
def test_a_start_under_a_bare_interpreter_ends_with_freecad_imported(tmp_path, checkout):
    """Start under this environment's Python without FreeCAD on its path: exec brings it."""
    package = tmp_path / "freecad_neckfit"
    package.mkdir()
    (package / "__init__.py").touch()
    (package / "host.py").write_text((checkout / "freecad_neckfit" / "host.py").read_text())
    (package / "__main__.py").write_text(
        "import sys\n"
        "from freecad_neckfit.host import reexec_under_freecad\n"
        "reexec_under_freecad(sys.argv[1:])\n"
        "import FreeCAD\n"
        "print('FreeCAD', FreeCAD.Version()[0], *sys.argv[1:], flush=True)\n"
    )
    clean = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    done = subprocess.run(
        [sys.executable, "-m", "freecad_neckfit", "check", "my joint.toml"],
        cwd=tmp_path, env=clean, capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert done.stdout.split(maxsplit=2)[2].strip() == "check my joint.toml"
