#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""How hard the English texts for patients are to read: the grade by Kincaid that "style" (Debian's
package diction) works out, at most 6.0 over all of them and 8.0 for each screen of the tour and each
file of a kit. Only whole sentences count for the whole, since titles and buttons would make it easier;
a screen counts with its titles, but not with labels of one or two words.

Kincaid, Fishburne, Rogers, Chissom: Derivation of new readability formulas for Navy enlisted
personnel, 1975 (from memory); the bounds are our own. Arguments: evenfall, the source tree."""
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree

PROGRAM, SOURCE = sys.argv[1], pathlib.Path(sys.argv[2])
OVERALL, ONE_SCREEN = 6.0, 8.0
STAFF = ("desk.", "desk-")  # texts and screens that no patient sees
faults = []


def check(condition, what):
    if not condition:
        faults.append(what)
        print("FAULT:", what)


def grade(texts):
    """Of these texts, each at least one sentence."""
    whole = "\n".join(text if text[-1] in ".?!:" else text + "." for text in texts)
    said = subprocess.run(["style", "-L", "en"], input=whole, capture_output=True, text=True, check=True).stdout
    found = re.search(r"Kincaid:\s*(-?[\d.]+)", said)
    if not found:
        raise SystemExit("style says no grade: " + said)
    return float(found.group(1))


def plain(text):
    """Without marks of direction; a value that comes in is a short number."""
    return re.sub(r"%\d", "4", re.sub("[\u2066-\u2069\u200e\u200f]", "", text)).strip()


def patient_texts():
    texts = xml.etree.ElementTree.parse(SOURCE / "translations" / "evenfall_en.ts").getroot().iter("message")
    return {one.get("id"): plain(one.find("source").text) for one in texts if not one.get("id").startswith(STAFF)}


def english_of(value):
    """Each text of a kit file that has its English beside other languages."""
    if isinstance(value, dict):
        if isinstance(value.get("en"), str):
            yield plain(value["en"])
        else:
            for one in value.values():
                yield from english_of(one)
    elif isinstance(value, list):
        for one in value:
            yield from english_of(one)


def screens(kit, folder):
    visit = json.loads((SOURCE / "assets" / "visits" / "demo.json").read_text())
    visit["kit"] = kit
    file = folder / (kit + ".json")
    file.write_text(json.dumps(visit))
    subprocess.run([PROGRAM, "--tour", folder / kit, "--visit", file, "--lang", "en"], check=True,
                   env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "QT_QUICK_BACKEND": "software"})
    return json.loads((folder / kit / "tour.json").read_text())["screens"]


# That the tool tells hard from easy at all: a sentence for physicians, and one of ours.
hard = grade(["Polysomnographic documentation necessitates uninterrupted respiratory inductance plethysmography."])
easy = grade(["Put the clip on your left index finger."])
check(hard > ONE_SCREEN > OVERALL > easy, "style gives %.1f and %.1f to a hard and an easy sentence" % (hard, easy))

texts = patient_texts()
sentences = [text for text in texts.values() if text[-1] in ".?!"]
check(len(sentences) > 400, "only %d sentences for patients were found" % len(sentences))
overall = grade(sentences)
check(overall <= OVERALL, "all %d texts: grade %.1f, right would be at most %.1f" % (len(sentences), overall, OVERALL))
print("%d of %d texts for patients are sentences: grade %.1f" % (len(sentences), len(texts), overall))

for file in sorted((SOURCE / "assets" / "kits").glob("*.json")):
    own = [text for text in english_of(json.loads(file.read_text())) if text[-1:] in tuple(".?!")]
    if own:
        found = grade(own)
        check(found <= ONE_SCREEN, "%s: grade %.1f, right would be at most %.1f" % (file.name, found, ONE_SCREEN))

with tempfile.TemporaryDirectory() as folder:
    for kit in ("marram", "heron"):
        worst, seen = (-99.0, ""), 0
        for screen in screens(kit, pathlib.Path(folder)):
            if screen["name"].startswith(STAFF):
                continue
            shown = [plain(text["text"]) for text in screen["texts"]]
            shown = [text for text in shown if len(text.split()) > 2]
            if not shown:
                continue
            found = grade(shown)
            seen += 1
            worst = max(worst, (found, screen["name"]))
            check(found <= ONE_SCREEN,
                  "%s, %s: grade %.1f, right would be at most %.1f" % (kit, screen["name"], found, ONE_SCREEN))
        check(seen > 80, "%s: only %d screens have text" % (kit, seen))
        print("%s: the hardest of %d screens is %s, grade %.1f" % (kit, seen, worst[1], worst[0]))

sys.exit(1 if faults else 0)
