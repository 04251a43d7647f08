#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""The sheet in HTML as a browser prints it: Chromium, headless, in every language that ships and in
both lengths. Its pages are about as many as those of the PDF, no figure goes over two of them or stands apart from its
step, and the file asks for nothing from outside.

Where a figure and the end of a step come to lie is read from the printed PDF: in a copy of the file
each gets a link, which Chromium keeps with its place. Arguments: evenfall-desk, the source tree."""
import html.parser
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

DESK, SOURCE = sys.argv[1:3]
PLACE = "https://sheet.example/"  # reserved (RFC 6761, 6.5); nobody follows it
faults = []


def check(condition, what):
    if not condition:
        faults.append(what)
        print("FAULT:", what)


def run(*command, **more):
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, timeout=240, **more)
    if done.returncode != 0:
        sys.exit("%s ended with %d:\n%s%s" % (" ".join(command), done.returncode, done.stdout, done.stderr))
    return done.stdout


class Elements(html.parser.HTMLParser):
    """How often each element is there, and what could reach outside."""
    def __init__(self):
        super().__init__()
        self.count, self.outside, self.lists, self.stray = {}, [], [], 0

    def handle_starttag(self, tag, pairs):
        self.count[tag] = self.count.get(tag, 0) + 1
        if tag in ("script", "link", "img", "iframe", "object", "embed", "base", "form", "input", "video", "audio"):
            self.outside.append(tag)
        for key, value in pairs:
            value = (value or "").strip().lower()
            reaches = key in ("src", "srcset", "data", "action", "poster", "background") or (
                key in ("href", "xlink:href") and not value.startswith(("tel:", "#")))
            if reaches or key.startswith("on") or "javascript:" in value or "url(" in value.replace("url(#", ""):
                self.outside.append("%s %s=%s" % (tag, key, value))
        if tag in ("ul", "ol"):
            self.lists.append(0)
        if tag == "li":
            if self.lists:
                self.lists[-1] += 1
            else:
                self.stray += 1

    def handle_endtag(self, tag):
        if tag in ("ul", "ol") and not self.lists.pop():
            self.stray += 1


def marked(text):
    """The file with a link around each figure and one at the end of each step; how many of each."""
    figures, steps = [], []

    def figure(found):
        figures.append(found.group(1))
        return ('<a href="%sfigure/%d" class="%s"><svg style="display:block;width:100%%;height:100%%"%s</a>'
                % (PLACE, len(figures) - 1, found.group(1), found.group(2)))

    text = re.sub(r'<svg class="((?:figure|thing|qr)[a-z ]*)"(.*?</svg>)', figure, text, flags=re.S)

    def step(found):
        numbers = re.findall(r"/figure/(\d+)", found.group(2))
        if not numbers:  # a light
            return found.group(0)
        steps.append(int(numbers[0]))
        return ('%s style="position:relative"%s<a href="%send/%s" style="position:absolute;bottom:0;'
                'inset-inline-start:0;width:6px;height:6px"></a></li>'
                % (found.group(1), found.group(2), PLACE, numbers[0]))

    text = re.sub(r'(<li class="step[a-z ]*")(.*?)</li>', step, text, flags=re.S)
    return text, figures, steps


def printed(text, folder):
    """Its PDF from Chromium: paper (width, height), and per page the links with their boxes."""
    page, pdf = os.path.join(folder, "page.html"), os.path.join(folder, "page.pdf")
    with open(page, "w", encoding="utf-8") as file:
        file.write(text)
    if os.path.exists(pdf):
        os.remove(pdf)
    home = os.path.join(folder, "home")
    # No sandbox, for it cannot be made as root; the page is our own and has no script.
    run("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
        "--disable-background-networking", "--user-data-dir=" + home, "--no-pdf-header-footer",
        "--print-to-pdf=" + pdf, "file://" + page, env=dict(os.environ, HOME=home))
    all_of = json.loads(run("qpdf", "--json=2", "--json-key=pages", "--json-key=qpdf", pdf))
    objects = all_of["qpdf"][1]

    def follow(value):
        while isinstance(value, str) and re.fullmatch(r"\d+ \d+ R", value):
            value = objects["obj:" + value]["value"]
        return value

    pages, paper = [], None
    for one in all_of["pages"]:
        content = follow(one["object"])
        holder = content
        while "/MediaBox" not in holder:
            holder = follow(holder["/Parent"])
        box = follow(holder["/MediaBox"])
        paper = (box[2] - box[0], box[3] - box[1])
        links = []
        for annotation in map(follow, follow(content.get("/Annots", []))):
            target = follow(follow(annotation.get("/A", {})).get("/URI", ""))
            if target.startswith("u:" + PLACE):
                links.append((target[2 + len(PLACE):], follow(annotation["/Rect"])))
        pages.append(links)
    return paper, pages


def places(pages):
    """Where each link is: its pages and boxes."""
    found = {}
    for number, links in enumerate(pages):
        for name, box in links:
            found.setdefault(name, []).append((number, box))
    return found


def main():
    for program, package in (("chromium", "chromium"), ("qpdf", "qpdf"), ("pdfinfo", "poppler-utils")):
        if not shutil.which(program):
            sys.exit("there is no %s: install the package %s" % (program, package))
    said = re.search(r"names another: ([a-z, ]+?)\.", " ".join(run(DESK, "sheet", "--help").split()))
    languages = said.group(1).replace(" ", "").split(",")
    assert "en" in languages and len(languages) >= 3, languages
    visit = os.path.join(SOURCE, "assets", "visits", "demo.json")
    with tempfile.TemporaryDirectory() as folder:
        sheet, pdf = os.path.join(folder, "sheet.html"), os.path.join(folder, "sheet.pdf")
        for language, length in [(one, length) for one in languages for length in ([], ["--full"])]:
            # Headings of steps, lists, things of lists, figures and steps that are there at the least.
            h3, ol, ul, li, pictures, least = (15, 3, 5, 50, 30, 24) if length else (0, 3, 4, 50, 24, 24)
            name = language + ("" if not length else " full")
            run(DESK, "sheet", "--visit", visit, "--lang", language, *length, "--html", "--out", sheet)
            with open(sheet, encoding="utf-8") as file:
                text = file.read()

            elements = Elements()
            elements.feed(text)
            check(not elements.outside, "%s: asks for something outside: %s" % (name, elements.outside))
            style = "".join(re.findall(r"<style>(.*?)</style>", text, flags=re.S))
            check(style and "url(" not in style and "@import" not in style, name + ": the style is not whole in itself")
            check(elements.count.get("h1") == 1 and elements.count.get("h2", 0) >= 8 and elements.count.get("h3", 0) >= h3,
                  "%s: headings %s" % (name, elements.count))
            check(elements.count.get("ol", 0) >= ol and elements.count.get("ul", 0) >= ul and elements.count.get("li", 0) >= li
                  and elements.stray == 0, "%s: lists %s" % (name, elements.count))

            with_links, figures, steps = marked(text)
            check(len(figures) >= pictures and len(steps) >= least, "%s: %d figures, %d steps" % (name, len(figures), len(steps)))
            paper, pages = printed(with_links, folder)
            if name == languages[0]:
                check(len(printed(text, folder)[1]) == len(pages), "the links move the pages")
            form = "a4" if abs(paper[0] - 595) < 2 else "letter"
            run(DESK, "sheet", "--visit", visit, "--lang", language, *length, "--paper", form, "--out", pdf)
            ours = int(re.search(r"Pages: +(\d+)", run("pdfinfo", pdf)).group(1))
            print("%s, %s: %d pages from Chromium, %d in the PDF; %d figures, %d steps"
                  % (name, form, len(pages), ours, len(figures), len(steps)))
            check(abs(len(pages) - ours) <= 1, "%s: %d pages, but the PDF has %d" % (name, len(pages), ours))

            found = places(pages)
            for number, kind in enumerate(figures):
                link, what = "figure/%d" % number, "%s: figure %d (%s)" % (name, number, kind)
                pieces = found.get(link, [])
                check(len(pieces) == 1, "%s is in %d pieces" % (what, len(pieces)))
                for _, (left, bottom, right, top) in pieces:
                    check(abs((right - left) - (top - bottom)) < 3 and right - left > 20, "%s is not whole" % what)
                    check(left >= 0 and bottom >= 0 and right <= paper[0] and top <= paper[1], "%s is off the page" % what)
            for number in steps:
                at = {page for page, _ in found.get("figure/%d" % number, [])} | {
                    page for page, _ in found.get("end/%d" % number, [])}
                check("end/%d" % number in found, "%s: the end of step %d is not seen" % (name, number))
                check(len(at) == 1, "%s: the step of figure %d goes over pages %s" % (name, number, sorted(at)))

            if language == "en" and length:  # the check itself: it must see steps that are torn apart
                torn = with_links.replace("break-inside: avoid", "break-inside: auto").replace(
                    "</style>", "li.step { display: block; } li.step > div > :last-child { break-before: page; }</style>")
                apart = places(printed(torn, folder)[1])
                split = [n for n in steps
                         if len({page for key in ("figure/%d", "end/%d") for page, _ in apart.get(key % n, [])}) != 1]
                check(len(split) > len(steps) / 2, "only %d of %d steps that are torn apart are seen" % (len(split), len(steps)))
    sys.exit(1 if faults else 0)


main()
