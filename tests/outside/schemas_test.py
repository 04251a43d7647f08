#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""The schemas of night, estimate and diary against their examples and against samples, by an
independent validator (Debian: python3-jsonschema). With the program's path as argument, also against
what it writes."""
import copy
import glob
import json
import os
import subprocess
import sys
import tempfile
import unittest

import jsonschema

TOP = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
SCHEMAS = os.path.join(TOP, "assets", "schemas")
DESK = sys.argv.pop(1) if len(sys.argv) > 1 else None
# What no schema can say: it is not JSON, or JSON has no word for it.
BEYOND_SCHEMA = {"not_json", "duplicate_key", "too_fine", "bad_time-day_that_is_none"}


def load(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def validator(kind):
    schema = load(os.path.join(SCHEMAS, kind + ".schema.json"))
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema)


class Schemas(unittest.TestCase):
    def test_examples_fit_their_schemas(self):
        for kind in ("night", "estimate", "diary"):
            validator(kind).validate(load(os.path.join(SCHEMAS, "examples", kind + ".json")))

    def test_schema_and_reader_agree_on_samples(self):
        night = validator("night")
        for folder, fits in (("valid", True), ("refused", True), ("malformed", False)):
            paths = glob.glob(os.path.join(TOP, "tests", "data", "night", folder, "*.json"))
            self.assertTrue(paths)
            for path in paths:
                name = os.path.splitext(os.path.basename(path))[0]
                if name not in BEYOND_SCHEMA:
                    self.assertEqual(night.is_valid(load(path)), fits, path)

    def test_unknown_keys_are_refused_everywhere(self):
        def objects(value):
            if isinstance(value, dict):
                yield value
                for each in value.values():
                    yield from objects(each)
            elif isinstance(value, list):
                for each in value:
                    yield from objects(each)

        for kind in ("night", "estimate", "diary"):
            check = validator(kind)
            example = load(os.path.join(SCHEMAS, "examples", kind + ".json"))
            for index in range(len(list(objects(example)))):
                changed = copy.deepcopy(example)
                target = list(objects(changed))[index]
                target["No such key"] = 1
                self.assertFalse(check.is_valid(changed), (kind, index))

    def test_what_the_program_writes_fits(self):
        if not DESK:
            self.skipTest("no program given")
        for path in glob.glob(os.path.join(TOP, "tests", "data", "night", "valid", "*.json")):
            out = subprocess.run([DESK, "estimate", path], capture_output=True, check=True, text=True)
            validator("estimate").validate(json.loads(out.stdout))
            if "visit" not in load(path):
                continue
            with tempfile.TemporaryDirectory() as folder:
                record = subprocess.run([DESK, "record", path, "--out", folder], capture_output=True, check=True, text=True)
                validator("diary").validate(load(os.path.join(record.stdout.strip(), "diary.json")))


if __name__ == "__main__":
    unittest.main()
