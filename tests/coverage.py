# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""coverage.py BUILD TOP: what tests/coverage measured, as a table, and every branch that was not taken.

A branch is one outcome, true or false, of one condition; `a && b` has four. Reasons stand in
tests/coverage_reasons.txt, one to a line:

    FILE | true or false | CONDITION as it stands in the source | REASON

They go by the condition's own text, for line numbers change. Fails when a branch has no reason, and when a
reason has no branch any more."""
import collections
import json
import pathlib
import subprocess
import sys

MEASURED = [
    "core/base/file.cpp", "core/base/intervals.cpp", "core/base/json.cpp", "core/base/pin.cpp", "core/base/time.cpp",
    "core/base/time.h", "core/base/intervals.h",
    "core/journal/journal.cpp", "core/journal/sqlite_journal.cpp", "core/journal/state.cpp", "core/journal/timeline.cpp",
    "core/kit/kit.cpp", "core/kit/visit.cpp", "core/answers/night.cpp", "core/record/diary.cpp", "core/record/edf.cpp",
]


def programs(build):
    found = sorted(pathlib.Path(build, "bin").iterdir())
    return [str(one) for one in found if one.name.endswith("_tests") or one.name.startswith("replay_")]


def measured(build, top):
    """{file: {(line, column, end line, end column): [times true, times false]}}"""
    data = pathlib.Path(build, "coverage.profdata")
    raw = [str(one) for one in pathlib.Path(build, "profile").glob("*.profraw")]
    subprocess.run(["llvm-profdata-14", "merge", "-sparse", "-o", data, *raw], check=True)
    binaries = programs(build)
    objects = [word for one in binaries[1:] for word in ("-object", one)]
    export = subprocess.run(["llvm-cov-14", "export", "-instr-profile", data, binaries[0], *objects,
                             *(str(pathlib.Path(top, one)) for one in MEASURED)], check=True, capture_output=True).stdout
    branches = {}
    for one in json.loads(export)["data"][0]["files"]:
        name = str(pathlib.Path(one["filename"]).relative_to(top))
        here = branches.setdefault(name, collections.defaultdict(lambda: [0, 0]))
        for line, column, end_line, end_column, true, false, *_ in one["branches"]:
            # One template or inline function may be there once for each use of it.
            count = here[(line, column, end_line, end_column)]
            count[0] += true
            count[1] += false
    return branches


def text_of(source, place):
    line, column, end_line, end_column = place
    if line == end_line:
        text = source[line - 1][column - 1:end_column - 1]
    else:
        text = " ".join([source[line - 1][column - 1:], *source[line:end_line - 1], source[end_line - 1][:end_column - 1]])
    return " ".join(text.split())


def reasons(file):
    out = {}
    for number, line in enumerate(file.read_text().splitlines(), 1):
        if not line or line.startswith("#"):
            continue
        words = [word.strip() for word in line.split(" | ")]
        if len(words) != 4 or words[1] not in ("true", "false") or not words[3]:
            sys.exit(f"{file}:{number}: right would be FILE | true or false | CONDITION | REASON")
        out[tuple(words[:3])] = words[3]
    return out


def main():
    build, top = sys.argv[1], sys.argv[2]
    branches = measured(build, top)
    known = reasons(pathlib.Path(top, "tests/coverage_reasons.txt"))
    used, open_ones, told = set(), [], []
    total = taken_in_all = 0
    print(f"{'file':40} {'branches':>9} {'taken':>7} {'':>7}  with a reason")
    for name in MEASURED:
        here = branches.get(name)
        if here is None:
            if pathlib.Path(top, name).exists() and name.endswith(".cpp"):
                sys.exit(f"{name} was not measured")
            continue
        source = pathlib.Path(top, name).read_text().splitlines()
        taken = reasoned = 0
        for place, count in sorted(here.items()):
            for side, times in zip(("true", "false"), count):
                if times:
                    taken += 1
                    continue
                key = (name, side, text_of(source, place))
                line = f"{name}:{place[0]}:{place[1]}: never {side}: {key[2]}"
                if key in known:
                    used.add(key)
                    reasoned += 1
                    told.append(f"{line}\n    {known[key]}")
                else:
                    open_ones.append(line)
        count = 2 * len(here)
        total += count
        taken_in_all += taken
        print(f"{name:40} {count:9} {taken:7} {100 * taken / max(count, 1):6.1f}%  {reasoned}")
    print(f"{'all':40} {total:9} {taken_in_all:7} {100 * taken_in_all / max(total, 1):6.1f}%  {len(told)}")
    print(*told, sep="\n")
    for line in open_ones:
        print(f"{line}\n    NO REASON is stated")
    stale = sorted(set(known) - used)
    for name, side, condition in stale:
        print(f"tests/coverage_reasons.txt: {name} | {side} | {condition}: it is taken now, or gone")
    print(f"coverage: {taken_in_all} of {total} branches, {len(told)} with a reason, {len(open_ones)} without, "
          f"{len(stale)} reasons too many")
    return 1 if open_ones or stale else 0


sys.exit(main())
