# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""Every string of the app has a note for translators, and the files of translation are up to date."""
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as tree

ROOT = pathlib.Path(__file__).resolve().parents[2]
FOLDER = ROOT / "translations"
sys.path.insert(0, str(FOLDER))
import pseudo  # noqa: E402

PLACES = re.compile(r"%L?\d+|%n")


def messages(path):
    return list(tree.parse(path).getroot().iter("message"))


def forms(message):
    translation = message.find("translation")
    plural = [f.text or "" for f in translation.findall("numerusform")]
    return plural or [translation.text or ""]


class Translations(unittest.TestCase):
    def test_every_string_has_a_source_and_a_note_for_translators(self):
        found = messages(FOLDER / "evenfall_en.ts")
        self.assertGreater(len(found), 60)
        for message in found:
            with self.subTest(id=message.get("id")):
                self.assertTrue(message.get("id"), "strings have ids, not contexts")
                self.assertTrue((message.findtext("source") or "").strip(), "no English source")
                self.assertTrue((message.findtext("extracomment") or "").strip(), "no //: note")

    def test_the_files_are_what_update_makes_of_the_sources(self):
        with tempfile.TemporaryDirectory() as out:
            subprocess.run([FOLDER / "update", out], check=True)
            for committed in sorted(FOLDER.glob("evenfall_*.ts")):
                with self.subTest(file=committed.name):
                    fresh = pathlib.Path(out, committed.name).read_bytes()
                    self.assertEqual(committed.read_bytes(), fresh,
                                     "strings changed: run translations/update and commit")

    def test_translations_keep_the_places_for_values(self):
        for path in sorted(FOLDER.glob("evenfall_*.ts")):
            for message in messages(path):
                for form in forms(message):
                    if not form:
                        continue
                    with self.subTest(file=path.name, id=message.get("id")):
                        wanted = sorted(set(PLACES.findall(message.findtext("source"))) - {"%n"})
                        self.assertEqual(sorted(set(PLACES.findall(form)) - {"%n"}), wanted)

    def test_translations_mark_no_exclamation(self):
        for path in sorted(FOLDER.glob("evenfall_*.ts")):
            for message in messages(path):
                for text in [message.findtext("source"), *forms(message)]:
                    with self.subTest(file=path.name, id=message.get("id")):
                        self.assertNotRegex(text or "", "[!¡！]")

    def test_the_pseudo_language_is_longer_and_keeps_places(self):
        self.assertEqual(pseudo.pseudo("Back"), "[Bàçk xx]")
        self.assertIn("%1", pseudo.pseudo("In bed by about %1"))


if __name__ == "__main__":
    unittest.main()
