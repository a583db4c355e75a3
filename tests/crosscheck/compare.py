#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Computes with NumPy and SciPy what the program computed, and compares.

Usage: compare.py DUMP_PROGRAM. Exit code 1 when something differs by more than stated, or the library is missing.
"""
import json
import subprocess
import sys

import numpy
import scipy.signal
import scipy.stats

failures = 0


def compare(what, ours, theirs, tolerance, unit):
    global failures
    off = abs(ours - theirs)
    ok = off <= tolerance
    failures += not ok
    print(f"{what:44} {ours:16.9g} {theirs:16.9g} off {off:9.2e} of {tolerance:9.2e} {unit:8} {'ok' if ok else 'FAIL'}")


def unit_fit(dump):
    """t - s = k T + a [to mark] + b [to space] by numpy.linalg.lstsq. Rounding is all that may differ."""
    k, to_mark, seconds = (numpy.array(column, dtype=float) for column in zip(*dump["instants"]))
    rows = numpy.column_stack([k, to_mark, 1.0 - to_mark])
    solution, squares, rank, _ = numpy.linalg.lstsq(rows, seconds, rcond=None)
    assert rank == 3
    for name, value in zip(("unit", "to_mark", "to_space"), solution):
        compare("least squares: " + name, dump[name], value, 1e-12, "s")
    compare("least squares: rms left", dump["rms"], numpy.sqrt(squares[0] / len(seconds)), 1e-12, "s")


def periodic_line(dump):
    """Peak of scipy.signal.lombscargle over a fine grid; its amplitude is that of the sine fitted at the peak."""
    seconds, left = numpy.array(dump["series"]).T
    span = seconds[-1] - seconds[0]

    def amplitude_squared(hz):
        angular = 2.0 * numpy.pi * numpy.atleast_1d(hz)
        return 4.0 * scipy.signal.lombscargle(seconds, left, angular) / len(seconds)

    grid = numpy.arange(dump["lowest_hz"], dump["highest_hz"], 0.1 / span)
    coarse = grid[numpy.argmax(amplitude_squared(grid))]
    fine = coarse + numpy.linspace(-0.2, 0.2, 801) / span
    power = amplitude_squared(fine)
    # A hundredth of the resolution; the noise alone leaves the frequency unsure by more than that.
    compare("periodic line: frequency", dump["hz"], fine[numpy.argmax(power)], 0.01 / span, "Hz")
    # The amplitude of the periodogram is that of the fit where sine and cosine are met equally often, as here.
    compare("periodic line: amplitude", dump["amplitude"], numpy.sqrt(power.max()), 0.01 * dump["amplitude"], "%")

    # And of the fit itself, free of that assumption.
    angle = 2.0 * numpy.pi * dump["hz"] * seconds
    sine, *_ = numpy.linalg.lstsq(numpy.column_stack([numpy.cos(angle), numpy.sin(angle)]), left, rcond=None)
    compare("periodic line: amplitude by least squares", dump["amplitude"], numpy.hypot(*sine), 1e-9, "%")


def spectrum(dump):
    """scipy.signal.welch with the same stretches; only the ratio of bins is used, so the sums are made equal."""
    power = numpy.array(dump["power"])
    n = 2 * (len(power) - 1)
    samples = numpy.array(dump["samples"])
    hz, theirs = scipy.signal.welch(
        samples, fs=dump["rate_hz"], window="hann", nperseg=n, noverlap=n // 2, detrend=False, scaling="spectrum"
    )
    compare("averaged spectrum: bin", dump["bin_hz"], hz[1], 1e-9, "Hz")
    theirs[1:-1] /= 2.0  # one-sided there, as it stands here
    ratio = (power / power.sum()) / (theirs / theirs.sum())
    compare("averaged spectrum: worst bin, ratio", ratio[numpy.argmax(numpy.abs(ratio - 1.0))], 1.0, 1e-4, "")


def student(dump):
    """Two-sided 95 % point of Student's distribution by scipy.stats.t."""
    for freedom, ours in dump:
        theirs = scipy.stats.t.ppf(0.975, freedom)
        compare(f"Student's factor, {freedom:g} degrees", ours, theirs, 0.01 * theirs, "")


def main():
    dump = json.loads(subprocess.run([sys.argv[1]], check=True, capture_output=True).stdout)
    unit_fit(dump["unit_fit"])
    periodic_line(dump["periodic_line"])
    spectrum(dump["spectrum"])
    student(dump["student"])
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
