#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: Evenfall contributors
"""The tones are what their script makes, quiet, and begin and end without a click.
Argument: the folder of the tones."""
import array
import pathlib
import subprocess
import sys
import tempfile
import wave

folder = pathlib.Path(sys.argv[1])
with tempfile.TemporaryDirectory() as made:
    subprocess.run([sys.executable, folder / "make", made], check=True)
    names = sorted(path.name for path in pathlib.Path(made).iterdir())
    assert names == sorted(path.name for path in folder.glob("*.wav")) == ["noted.wav", "start.wav"], names
    for name in names:
        assert (folder / name).read_bytes() == pathlib.Path(made, name).read_bytes(), name + " is not what make makes"
        with wave.open(str(folder / name)) as sound:
            samples = array.array("h", sound.readframes(sound.getnframes()))
        top = max(map(abs, samples)) / 32768
        assert 0.15 < top < 0.25, (name, top)
        assert abs(samples[0]) < 50 and abs(samples[-1]) < 50, (name, samples[0], samples[-1])
        print("%s: %.1f s, peak %.2f" % (name, len(samples) / 22050, top))
