#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""10,000 records gathered to one CSV: every line there, as another CSV reader has it, and memory that
does not grow with their number. Time is printed beside that of sha256sum -c over the same files, and
never fails. Arguments: evenfall-desk, many_records."""
import csv
import os
import resource
import subprocess
import sys
import tempfile
import time

DESK, MAKER = sys.argv[1:3]
COUNT = 10000


def run(command, cwd=None):
    """Seconds and peak memory (MB) of one process."""
    begin = time.monotonic()
    pid = os.fork()
    if pid == 0:
        if cwd:
            os.chdir(cwd)
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
        os.execvp(command[0], command)
    _, status, usage = os.wait4(pid, 0)
    assert status == 0, (command, status)
    return time.monotonic() - begin, usage.ru_maxrss / 1024


with tempfile.TemporaryDirectory() as folder:
    few, many = os.path.join(folder, "few"), os.path.join(folder, "many")
    subprocess.run([MAKER, few, "100"], check=True)
    subprocess.run([MAKER, many, str(COUNT)], check=True)
    _, few_memory = run([DESK, "gather", few, "--csv", os.path.join(folder, "few.csv")])
    seconds, memory = run([DESK, "gather", many, "--csv", os.path.join(folder, "many.csv")])

    # All sums in one list, as one call of the reference sees them.
    with open(os.path.join(folder, "all.sums"), "w", encoding="utf-8") as sums:
        for name in os.listdir(many):
            with open(os.path.join(many, name, "SHA256SUMS"), encoding="utf-8") as lines:
                for line in lines:
                    sums.write(line[:66] + name + "/" + line[66:])
    reference, _ = run(["sha256sum", "--quiet", "-c", os.path.join(folder, "all.sums")], cwd=many)

    with open(os.path.join(folder, "many.csv"), newline="", encoding="utf-8") as table:
        rows = list(csv.DictReader(table, strict=True))
    assert len(rows) == COUNT, len(rows)
    assert len({row["study_code"] for row in rows}) == COUNT
    assert all(row["verdict"] in ("enough", "short", "borderline", "unknown", "contradictory") for row in rows)
    known = [row for row in rows if row["needed_best_guess_min"]]
    assert len(known) > COUNT / 10
    for row in known:
        assert float(row["needed_at_least_min"]) <= float(row["needed_best_guess_min"]) <= float(row["needed_at_most_min"]), row

    print("gather %d records: %.2f s, %.1f MB (100 records: %.1f MB); sha256sum -c over the same files: %.2f s"
          % (COUNT, seconds, memory, few_memory, reference))
    assert memory < few_memory + 2, "memory grows with the number of records"
