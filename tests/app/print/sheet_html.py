# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""What a reader of HTML finds in a sheet, one fact on a line: name, space, value."""
import sys
from html.parser import HTMLParser

VOID = {"meta", "br", "path"}


class Sheet(HTMLParser):
    def __init__(self):
        super().__init__()
        self.facts = {"lang": "", "dir": "", "h1": 0, "h2": 0, "outside": 0, "nameless": 0, "pictures": 0, "unclosed": 0}
        self.open, self.text = [], []

    def handle_starttag(self, tag, pairs):
        given = dict(pairs)
        if tag == "html":
            self.facts["lang"], self.facts["dir"] = given.get("lang"), given.get("dir")
        if tag in ("h1", "h2"):
            self.facts[tag] += 1
        if tag == "svg":
            named = given.get("role") == "img" and given.get("aria-label")
            self.facts["pictures"] += 1
            self.facts["nameless"] += 0 if named or given.get("aria-hidden") == "true" else 1
        for key in ("src", "href", "xlink:href"):
            if given.get(key) and not given[key].startswith("tel:"):
                self.facts["outside"] += 1
        if tag in ("script", "link", "img", "iframe"):
            self.facts["outside"] += 1
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, pairs):
        self.handle_starttag(tag, pairs)
        if tag not in VOID:
            self.open.pop()

    def handle_endtag(self, tag):
        if tag in VOID:
            return
        if self.open and self.open[-1] == tag:
            self.open.pop()
        else:
            self.facts["unclosed"] += 1

    def handle_data(self, data):
        if self.open and self.open[-1] not in ("style", "title"):
            self.text.append(data)


def main():
    page = Sheet()
    with open(sys.argv[1], encoding="utf-8") as file:
        page.feed(file.read())
    page.close()
    page.facts["unclosed"] += len(page.open)
    for name, value in page.facts.items():
        print(name, value)
    print("text", "".join("".join(page.text).split()))


main()
