#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""Start to the first complete frame, and peak memory, of the kiosk beside a bare Qt Quick window:
offscreen, software renderer, in one run and in turn. Prints figures and never fails on time.
Arguments: evenfall, bare_window."""
import os
import statistics
import sys
import tempfile
import time

KIOSK, BARE = sys.argv[1:3]
DEMO = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "assets", "visits", "demo.json")
TURNS = 9
os.environ.update(QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software")


def run(*command):
    """Seconds and peak memory (MB) of one process."""
    begin = time.monotonic()
    pid = os.fork()
    if pid == 0:
        null = os.open(os.devnull, os.O_WRONLY)
        os.dup2(null, 1)
        os.dup2(null, 2)
        os.execv(command[0], command)
    _, status, usage = os.wait4(pid, 0)
    assert status == 0, (command, status)
    return time.monotonic() - begin, usage.ru_maxrss / 1024


with tempfile.TemporaryDirectory() as folder:
    kiosk, bare = [], []
    for turn in range(TURNS):
        bare.append(run(BARE))
        kiosk.append(run(KIOSK, "--visit", DEMO, "--data", os.path.join(folder, str(turn)), "--quit-after-first-frame"))
    _, night = run(KIOSK, "--rehearse", os.path.join(folder, "night"))

median = lambda runs, part: statistics.median(one[part] for one in runs)
print("start to the first frame: kiosk %.0f ms, bare window %.0f ms: %.2fx (aim 1.5, at most 2.0)"
      % (median(kiosk, 0) * 1000, median(bare, 0) * 1000, median(kiosk, 0) / median(bare, 0)))
print("peak memory at the first frame: kiosk %.1f MB, bare window %.1f MB: %.2fx (at most 2.0)"
      % (median(kiosk, 1), median(bare, 1), median(kiosk, 1) / median(bare, 1)))
print("peak memory of a whole rehearsal: %.1f MB: %.2fx (at most 3.0)" % (night, night / median(bare, 1)))
