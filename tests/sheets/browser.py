"""A browser without a window, spoken to over its pipe: what a reader of the report would see."""

import base64
import json
import os
import shutil
import subprocess
import tempfile
from contextlib import contextmanager

LOUD = ("error", "warning", "assert")
NAMES = ("chromium", "chromium-browser", "google-chrome")


def browser():
    """The program's path, or None."""
    return next((path for path in map(shutil.which, NAMES) if path), None)


class Tab:
    """One page, as wide as it is told to be; keeps what the console and the network say."""

    def __init__(self, ask, hear):
        self.ask, self.hear = ask, hear
        self.session, self.told, self.fetched = None, [], []

    def command(self, method, **values):
        number = self.ask(method, values, self.session)
        while True:
            answer = self.hear()
            if answer.get("id") == number:
                assert "error" not in answer, answer
                return answer["result"]
            self._note(answer)

    def _note(self, event):
        method, values = event.get("method", ""), event.get("params", {})
        if method == "Runtime.consoleAPICalled" and values["type"] in (
            "error",
            "warning",
            "assert",
        ):
            self.told.append(str(values["args"]))
        elif method == "Runtime.exceptionThrown":
            self.told.append(str(values["exceptionDetails"]))
        elif method == "Log.entryAdded" and values["entry"]["level"] in LOUD:
            self.told.append(values["entry"]["text"])
        elif method == "Network.requestWillBeSent":
            self.fetched.append(values["request"]["url"])

    def open(self, url):
        self.command("Page.navigate", url=url)
        self.run("new Promise(done => document.readyState === 'complete' && done() || "
                 "addEventListener('load', done))")  # fmt: skip

    def run(self, script):
        """The value of a script's expression."""
        found = self.command(
            "Runtime.evaluate", expression=script, awaitPromise=True, returnByValue=True
        )
        assert "exceptionDetails" not in found, found
        return found["result"].get("value")

    def width(self, wide, *, phone):
        self.command(
            "Emulation.setDeviceMetricsOverride",
            width=wide, height=812, deviceScaleFactor=1, mobile=phone,
        )  # fmt: skip

    def picture(self, *, top, high):
        """A part of the page as PNG."""
        wide = self.run("innerWidth")
        clip = {"x": 0, "y": top, "width": wide, "height": high, "scale": 1}
        shot = self.command("Page.captureScreenshot", captureBeyondViewport=True, clip=clip)
        return base64.b64decode(shot["data"])

    def printed(self, wide, high):
        """The page as PDF on paper of so many inches."""
        sheet = self.command(
            "Page.printToPDF", paperWidth=wide, paperHeight=high, preferCSSPageSize=False
        )
        return base64.b64decode(sheet["data"])


@contextmanager
def tab():
    """A fresh page in a browser of its own, which is ended by its handle."""
    to_browser, ours_out = os.pipe()
    ours_in, from_browser = os.pipe()
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as home:
        program = subprocess.Popen(
            ["bash", "-c", f'exec "$@" 3<&{to_browser} 4>&{from_browser}', "bash",
             browser(), "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
             "--remote-debugging-pipe", f"--user-data-dir={home}", "about:blank"],
            pass_fds=[to_browser, from_browser],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        os.close(to_browser)
        os.close(from_browser)
        try:
            with os.fdopen(ours_out, "wb") as out, os.fdopen(ours_in, "rb") as into:
                yield _attached(Tab(*_pipe(out, into)))
        finally:
            program.terminate()
            program.wait(timeout=10)


def _pipe(out, into):
    rest, count = bytearray(), [0]

    def ask(method, values, session):
        count[0] += 1
        told = {"id": count[0], "method": method, "params": values}
        told |= {"sessionId": session} if session else {}
        out.write(json.dumps(told).encode() + b"\0")
        out.flush()
        return count[0]

    def hear():
        while b"\0" not in rest:
            piece = os.read(into.fileno(), 1 << 16)
            assert piece, "the browser has gone"
            rest.extend(piece)
        message, _, left = bytes(rest).partition(b"\0")
        rest[:] = left
        return json.loads(message)

    return ask, hear


def _attached(page):
    target = page.command("Target.createTarget", url="about:blank")["targetId"]
    page.session = page.command("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
    for domain in ("Page", "Runtime", "Log", "Network"):
        page.command(f"{domain}.enable")
    return page
