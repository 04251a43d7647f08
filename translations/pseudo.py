#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""Makes the pseudo-language of the tests from the English strings.

Every letter gets an accent, every text grows by about a third and stands in brackets: what is not
translated, cut off or put together from pieces shows at once. Places for values (%1, %n, %L1) and
marks of direction stay as they are.

Usage: pseudo.py evenfall_en.ts OUT.ts
"""
import re
import sys
import xml.etree.ElementTree as tree

ACCENTS = str.maketrans("aceinosuyzACEINOSUYZ", "àçéîñöšûÿžÀÇÉÎÑÖŠÛŸŽ")
KEPT = re.compile(r"(%L?\d+|%n|[\u2066-\u2069])")


def pseudo(text):
    """'Back' -> '[Bàçk xx]'"""
    parts = KEPT.split(text)
    accented = "".join(p if KEPT.fullmatch(p) else p.translate(ACCENTS) for p in parts)
    # In words of five letters, as a longer language would have them.
    extra = -(-len(text) // 3)
    words = ["xxxxx"[: min(5, extra - i)] for i in range(0, extra, 5)]
    return "[" + accented + " " + " ".join(words) + "]"


def main(source, target):
    document = tree.parse(source)
    root = document.getroot()
    root.set("language", "en_GB")
    for message in root.iter("message"):
        translation = message.find("translation")
        text = translation.text or message.findtext("source")
        translation.attrib.pop("type", None)
        forms = translation.findall("numerusform")
        for form in forms:
            form.text = pseudo(form.text or message.findtext("source"))
        if not forms:
            translation.text = pseudo(text)
    document.write(target, encoding="utf-8", xml_declaration=True)


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit("usage: pseudo.py evenfall_en.ts OUT.ts")
    main(sys.argv[1], sys.argv[2])
