#!/usr/bin/python3
"""Opens the review page in headless Chromium and says what is wrong with it.

    check.py CHROMIUM PAGE FOLDER

Writes screen.png and paper.pdf into FOLDER, to be looked at. Checked are: that something is drawn, that the page asks the network for
nothing, and what a screen reader needs (language, title, order of headings, names of charts, tables with captions and heads, contrast).
"""
import functools
import html.parser
import http.server
import json
import pathlib
import re
import struct
import subprocess
import sys
import threading
import zlib

FLAGS = ["--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync", "--disable-default-apps", "--window-size=1000,3000"]
LEAST_CONTRAST = 4.5  # WCAG 2, text of usual size, level AA


def main(chromium, page, folder):
    page, folder = pathlib.Path(page), pathlib.Path(folder)
    faults = []
    asked = []
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Served, page.read_bytes(), asked))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    address = f"http://127.0.0.1:{server.server_port}/"

    def chrome(*more):
        return subprocess.run([chromium, *FLAGS, f"--user-data-dir={folder / 'profile'}", *more, address], capture_output=True, timeout=120, check=True).stdout

    document = chrome("--dump-dom", f"--log-net-log={folder / 'net.json'}").decode()
    chrome(f"--screenshot={folder / 'screen.png'}")
    chrome(f"--print-to-pdf={folder / 'paper.pdf'}", "--no-pdf-header-footer")
    server.shutdown()
    if set(asked) - {"/", "/favicon.ico"}:
        faults.append(f"it asked for {sorted(set(asked))}")
    faults += network(folder / "net.json", address) + picture(folder / "screen.png") + structure(document)
    pages = len(re.findall(rb"/Type\s*/Page\b", (folder / "paper.pdf").read_bytes()))
    print(f"{len(document)} characters drawn, {pages} pages on paper, {len(faults)} faults")
    for fault in faults:
        print("  " + fault)
    return 1 if faults or pages == 0 else 0


class Served(http.server.BaseHTTPRequestHandler):
    def __init__(self, body, asked, *rest):
        self.body, self.asked = body, asked
        super().__init__(*rest)

    def do_GET(self):
        self.asked.append(self.path)
        self.send_response(200 if self.path == "/" else 404)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.end_headers()
        self.wfile.write(self.body if self.path == "/" else b"")

    def log_message(self, *_):
        pass


def network(log, address):
    """Requests that the page itself began; the browser's own (updates and the like) have another initiator."""
    origin = address.rstrip("/")
    events = json.loads(log.read_text())["events"]
    begun = [event["params"]["url"] for event in events if event.get("params", {}).get("initiator") == origin and "url" in event["params"]]
    return [f"it began a request for {url}" for url in sorted(set(begun)) if not url.startswith(("data:", origin + "/favicon.ico"))]


def picture(path):
    """A PNG of 8 bits a channel; a page that was drawn has dark text on a light ground."""
    data = path.read_bytes()
    width, height, depth, kind = struct.unpack(">IIBB", data[16:26])
    packed, at = b"", 8
    while at < len(data):
        length, name = struct.unpack(">I4s", data[at:at + 8])
        packed += data[at + 8:at + 8 + length] if name == b"IDAT" else b""
        at += 12 + length
    channels = {2: 3, 6: 4}[kind]
    rows, before = zlib.decompress(packed), bytearray(width * channels)
    dark = light = 0
    for y in range(height):
        start = y * (width * channels + 1)
        line = unfiltered(rows[start], bytearray(rows[start + 1:start + 1 + width * channels]), before, channels)
        before = line
        dark += sum(value < 100 for value in line[1::channels])
        light += sum(value > 200 for value in line[1::channels])
    share = dark / (width * height)
    print(f"screen {width}x{height}, {100 * share:.1f} % dark")
    return [] if depth == 8 and 0.002 < share < 0.5 and light > 2 * dark else ["the picture is blank or black"]


def unfiltered(filter_kind, line, before, channels):
    for i in range(len(line)):
        left = line[i - channels] if i >= channels else 0
        corner = before[i - channels] if i >= channels else 0
        up = before[i]
        if filter_kind == 1:
            line[i] = (line[i] + left) & 255
        elif filter_kind == 2:
            line[i] = (line[i] + up) & 255
        elif filter_kind == 3:
            line[i] = (line[i] + (left + up) // 2) & 255
        elif filter_kind == 4:
            guess = left + up - corner
            nearest = min((abs(guess - left), 0, left), (abs(guess - up), 1, up), (abs(guess - corner), 2, corner))[2]
            line[i] = (line[i] + nearest) & 255
    return line


def structure(document):
    seen = Seen()
    seen.feed(document)
    faults = list(seen.faults)
    levels = [int(name[1]) for name in seen.names if re.fullmatch("h[1-6]", name)]
    faults += [] if levels.count(1) == 1 and levels[:1] == [1] else ["there is not one h1 before all other headings"]
    faults += [f"a heading h{b} follows h{a}" for a, b in zip(levels, levels[1:]) if b > a + 1]
    faults += [] if seen.lang else ["the page has no language"]
    faults += [] if seen.title.strip() else ["the page has no title"]
    faults += [] if seen.names.count("main") == 1 else ["there is not one main"]
    faults += [] if seen.names.count("svg") > 0 else ["there is no chart"]
    faults += [] if seen.names.count("table") == seen.names.count("caption") else ["a table has no caption"]
    faults += [f"{name} is not wanted in a page that needs nothing else" for name in ("script", "link", "iframe", "img") if name in seen.names]
    print(f"{len(levels)} headings, {seen.names.count('svg')} charts, {seen.names.count('table')} tables")
    return faults


class Seen(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.names, self.faults, self.lang, self.title, self.in_title, self.figure = [], [], "", "", False, []

    def handle_starttag(self, tag, attrs):
        attrs = dict(attrs)
        self.names.append(tag)
        self.lang = attrs.get("lang", "") if tag == "html" else self.lang
        self.in_title = tag == "title"
        if tag == "figure":
            self.figure = []
        self.figure.append(tag)
        if tag == "svg" and (attrs.get("role") != "img" or len(attrs.get("aria-label", "")) < 10):
            self.faults.append("a chart has no name for who listens")
        if tag == "th" and attrs.get("scope") not in ("row", "col"):
            self.faults.append("the head of a table does not say what it heads")
        shade = re.search(r"background:rgb\((\d+),(\d+),(\d+)\)", attrs.get("style") or "")
        if shade and contrast([int(part) for part in shade.groups()], [17, 17, 17]) < LEAST_CONTRAST:
            self.faults.append(f"text on {shade.group(0)} is hard to read")

    def handle_data(self, data):
        self.title += data if self.in_title else ""

    def handle_endtag(self, tag):
        self.in_title = False
        if tag == "figure" and "svg" in self.figure and "table" not in self.figure:
            self.faults.append("a chart has no table beside it")


def contrast(a, b):
    """WCAG 2: relative luminance of the lighter over that of the darker, each plus 0.05."""
    def luminance(colour):
        linear = [c / 255 / 12.92 if c / 255 <= 0.04045 else ((c / 255 + 0.055) / 1.055) ** 2.4 for c in colour]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
    high, low = sorted((luminance(a), luminance(b)), reverse=True)
    return (high + 0.05) / (low + 0.05)


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
