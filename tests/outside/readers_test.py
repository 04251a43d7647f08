#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""diary.edf as other people's readers see it: MNE (Debian: python3-mne) and BioSig (Debian:
biosig-tools). Both must give back every annotation at its time, and every time of diary.json must be
among them. The program's path is the argument. All nights are invented."""
import datetime
import glob
import json
import os
import subprocess
import sys
import tempfile
import unittest

import mne

mne.set_log_level("ERROR")
TOP = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
DESK = sys.argv.pop(1)

# Texts of EDF+ where there is a standard one (Kemp & Olivan 2003), else ours; by pointer in the night.
TEXTS = {
    "/recording/from": "Recording starts", "/recording/to": "Recording ends",
    "/lights_out": "Lights off", "/lights_on": "Lights on",
    "/into_bed": "Into bed", "/out_of_bed": "Out of bed", "/final_waking": "Final waking as reported",
}


def night(**changes):
    base = {"format": "evenfall.night/1", "visit": {"code": "SM-0417", "night": 1},
            "sensors": ["cannula", "finger"], "need": {"minutes": 240, "groups": [["cannula"], ["finger"]]}}
    base.update(changes)
    return base


def over(zone, evening, morning):
    """A night from 22:00 to 06:30 with a removal, a range, and an awakening."""
    return night(zone=zone, recording={"from": evening + "T22:00", "to": morning + "T06:30"},
                 into_bed={"earliest": evening + "T21:50", "latest": evening + "T22:05"},
                 lights_out=evening + "T22:10", lights_on=morning + "T06:20", out_of_bed=morning + "T06:25",
                 final_waking={"about": morning + "T06:00", "give_or_take_min": 10},
                 awake=[{"from": morning + "T04:10", "to": morning + "T04:31"}],
                 off=[{"sensor": "finger", "from": {"earliest": evening + "T23:00", "latest": morning + "T00:30"},
                       "to": morning + "T04:00"}])


SAMPLES = {
    "over a year-end": over("Europe/Berlin", "2026-12-31", "2027-01-01"),
    "clocks go back": over("America/New_York", "2026-10-31", "2026-11-01"),
    "clocks go forward": over("Europe/Berlin", "2026-03-28", "2026-03-29"),
    "half an hour back": over("Australia/Lord_Howe", "2026-04-04", "2026-04-05"),
    "first year of EDF+": over("Europe/Berlin", "1985-01-01", "1985-01-02"),
    "last year of EDF+": night(lights_out="2084-12-30T23:00:00+01:00", lights_on="2084-12-31T07:00:00+01:00"),
}


def instant(text):
    return datetime.datetime.fromisoformat(text)


def at(json_value, pointer):
    for key in pointer.split("/")[1:]:
        if key not in json_value:
            return None
        json_value = json_value[key]
    return json_value


def expected(diary):
    """(onset, duration, text) of the night's own times, from diary.json alone."""
    start = instant(diary["start"]["value"])
    out = []
    for pointer, text in TEXTS.items():
        value = at(diary["night"], pointer)
        if value is None:
            continue
        if isinstance(value, str):
            out.append(((instant(value) - start).total_seconds(), 0.0, text))
        else:
            earliest, latest = instant(value["earliest"]), instant(value["latest"])
            out.append(((earliest - start).total_seconds(), (latest - earliest).total_seconds(), "Time uncertain: " + text))
    return out


def by_mne(path):
    found = mne.read_annotations(path)
    return sorted((round(float(one["onset"]), 3), round(float(one["duration"]), 3), one["description"]) for one in found)


def by_biosig(path):
    """Times to 0.1 s (BioSig counts in fractions of a day); it keeps no durations without samples."""
    run = subprocess.run(["save2gdf", "-JSON", path], capture_output=True, check=True)
    document = json.loads(run.stdout.decode("utf-8"))
    stamp = lambda text: datetime.datetime.strptime(text, "%Y-%m-%d %H:%M:%S.%f")
    start = stamp(document["StartOfRecording"])
    return sorted((round((stamp(one["TimeStamp"]) - start).total_seconds(), 1) + 0.0, one["Description"]) for one in document["EVENT"])


class Readers(unittest.TestCase):
    def check(self, night_json, name):
        with tempfile.TemporaryDirectory() as folder:
            source = os.path.join(folder, "night.json")
            with open(source, "w", encoding="utf-8") as file:
                json.dump(night_json, file)
            run = subprocess.run([DESK, "record", source, "--out", os.path.join(folder, "out")], capture_output=True, text=True)
            self.assertEqual(run.returncode, 0, run.stderr)
            record = run.stdout.strip()
            with open(os.path.join(record, "diary.json"), encoding="utf-8") as file:
                diary = json.load(file)
            path = os.path.join(record, "diary.edf")
            theirs = by_mne(path)
            self.assertGreaterEqual(len(theirs), 3, name)
            for one in expected(diary):
                self.assertIn((round(one[0], 3), round(one[1], 3), one[2]), theirs, name)
            self.assertEqual(by_biosig(path), sorted((round(onset, 1) + 0.0, text) for onset, _, text in theirs), name)
            # The clock time of the start, which MNE leaves out for a file without signals.
            run = subprocess.run(["save2gdf", "-JSON", path], capture_output=True, check=True)
            start = json.loads(run.stdout)["StartOfRecording"]
            local = instant(diary["start"]["value"]).replace(tzinfo=None)
            self.assertLess(abs(datetime.datetime.strptime(start, "%Y-%m-%d %H:%M:%S.%f") - local), datetime.timedelta(milliseconds=1), name)
            return len(theirs)

    def test_every_sample_is_read_back(self):
        annotations = 0
        for name, sample in SAMPLES.items():
            with self.subTest(name):
                annotations += self.check(sample, name)
        print(annotations, "annotations in", len(SAMPLES), "made nights")

    def test_every_night_of_the_tests_is_read_back(self):
        count = 0
        paths = glob.glob(os.path.join(TOP, "tests", "data", "night", "valid", "*.json"))
        paths.append(os.path.join(TOP, "assets", "schemas", "examples", "night.json"))
        for path in paths:
            with open(path, encoding="utf-8") as file:
                sample = json.load(file)
            # A record needs to know whose night it is, and when it was.
            if "lights_out" not in sample and "recording" not in sample:
                continue
            sample.setdefault("visit", {"code": "SM-0417", "night": 1})
            with self.subTest(os.path.basename(path)):
                self.check(sample, path)
                count += 1
        self.assertGreater(count, 3)

    def test_the_diary_of_an_example_with_notes_and_free_text(self):
        with tempfile.TemporaryDirectory() as folder:
            run = subprocess.run([DESK, "record", "--from", os.path.join(TOP, "assets", "schemas", "examples", "diary.json"),
                                  "--out", folder], capture_output=True, text=True)
            self.assertEqual(run.returncode, 0, run.stderr)
            path = os.path.join(run.stdout.strip(), "diary.edf")
            theirs = by_mne(path)
            self.assertEqual(by_biosig(path), sorted((round(onset, 1) + 0.0, text) for onset, _, text in theirs))


if __name__ == "__main__":
    unittest.main()
