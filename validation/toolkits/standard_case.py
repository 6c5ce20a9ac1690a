"""The standard case for general-purpose toolkits: its numbers, its steps in time, its errors.

Heat content h(T) per volume in plastisol (latent heat straight between two temperatures) and mould,
conduction in both, a film between them and to the air. A toolkit gives, per unknown, a volume and
whether it is plastisol; the matrix of conduction and films; the load from the air; and a way to
solve. Steps: BDF2 with varying length in h, linear in T by the chord of h up to the extrapolated
temperature, then T from h: second order, one linear solve a step.
"""

import json
import os
import resource
import time

import numpy as np
from scipy.interpolate import PchipInterpolator

HERE = os.path.dirname(os.path.abspath(__file__))
CASE = json.load(open(os.path.join(
    HERE, "../src/main/resources/gelfront/validation/standard-case.json")))
REFERENCE = CASE["reference"]
PROBES = REFERENCE["probes"]
LAST = REFERENCE["last_plastisol_below_90degC"]["time_s"]

_p, _m = CASE["plastisol"], CASE["mould"]
K_PLASTISOL, K_MOULD = _p["conductivity"], _m["conductivity"]
C_PLASTISOL = _p["density"] * _p["specific_heat"]
C_MOULD = _m["density"] * _m["specific_heat"]
LATENT = _p["density"] * _p["latent_heat_J_kg"]
GEL_HIGH, GEL_LOW = _p["latent_released_linearly_between_degC"]
SHOT, MOULD_START = _p["start_degC"], _m["start_degC"]
CONTACT = CASE["contact_conductance_W_m2K"]
FILM, AIR = (CASE["block"]["outer_faces"][k] for k in ("h_W_m2K", "air_degC"))
SET, FIRM = 105.0, 90.0

_T = np.array([-1000.0, GEL_LOW, GEL_HIGH, 1000.0])
_H = C_PLASTISOL * _T + LATENT * np.array([0.0, 0.0, 1.0, 1.0])


def radius(x):
    """Of the cavity at x, mm; NaN beyond its ends."""
    body = CASE["part"]["body_of_revolution_about_x"]
    inside = np.interp(x, body["x"], body["radius"])
    return np.select([(x >= -33) & (x < -3), (x >= -3) & (x < 0), (x >= 0) & (x <= 100)],
                     [5.0, 1.5, inside], np.nan)


class Clock:
    """Processor seconds of this process, by what they went into."""

    def __init__(self):
        self.last, self.began = time.process_time(), time.time()
        self.cpu = {}

    def ends(self, what):
        now = time.process_time()
        self.cpu[what] = now - self.last
        self.last = now


class Heat:
    """h(T) and back, per unknown; J/m3 and degC."""

    def __init__(self, plastisol):
        self.plastisol = plastisol

    def content(self, t):
        return np.where(self.plastisol, np.interp(t, _T, _H), C_MOULD * t)

    def temperature(self, h):
        return np.where(self.plastisol, np.interp(h, _H, _T), h / C_MOULD)

    def slope(self, t):
        gelling = (t > GEL_LOW) & (t < GEL_HIGH)
        plastisol = C_PLASTISOL + LATENT / (GEL_HIGH - GEL_LOW) * gelling
        return np.where(self.plastisol, plastisol, C_MOULD)


def march(volume, plastisol, matrix, load, probes, solve):
    """Steps until all plastisol is below FIRM.

    volume, plastisol, load: per unknown; matrix: W/K, sparse; probes: rows that interpolate;
    solve(d, r): x with (diag(d) + matrix) x = r. Returns times, probe temperatures, hottest.
    """
    heat = Heat(plastisol)
    t = np.where(plastisol, SHOT, MOULD_START).astype(float)
    h = heat.content(t)
    older_t, older_h, last_dt = t, h, np.inf
    times, seen, hottest = [0.0], [probes @ t], [SHOT]
    while hottest[-1] > FIRM or len(hottest) < 3:
        dt = min(4.0, 0.05 + 0.05 * times[-1])
        q = dt / last_dt
        a = (1 + 2 * q) / (1 + q)
        ahead = t + q * (t - older_t)
        moved = np.abs(ahead - t) > 1e-6
        chord = np.where(moved, (heat.content(ahead) - h) / np.where(moved, ahead - t, 1),
                         heat.slope(t))
        change = solve(a * volume * chord / dt,
                       load - matrix @ t + volume * q * q / (1 + q) * (h - older_h) / dt)
        older_t, older_h, last_dt = t, h, dt
        h = h + chord * change
        t = heat.temperature(h)
        times.append(times[-1] + dt)
        seen.append(probes @ t)
        hottest.append(t[plastisol].max())
    return np.array(times), np.array(seen), np.array(hottest)


def crossing(times, values, level):
    """When a monotone cubic through the values falls through the level; NaN if it never does."""
    below = np.flatnonzero(values <= level)
    if not len(below):
        return float("nan")
    curve = PchipInterpolator(times, values)
    low, high = times[below[0] - 1], times[below[0]]
    for _ in range(50):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if curve(middle) > level else (low, middle)
    return float(high)


def result(name, unknowns, record, clock):
    """What table.py reads. Probes: those on the axis first, then those half way to the wall."""
    times, seen, hottest = record
    n = len(PROBES)
    wanted = [p["axis_set_time_s"] for p in PROBES] + [p["half_radius_set_time_s"] for p in PROBES]
    off = [crossing(times, seen[:, i], SET) / w - 1 for i, w in enumerate(wanted)]
    return {
        "name": name, "unknowns": int(unknowns), "steps": len(times) - 1,
        "axis": off[:n], "half": off[n:], "last": crossing(times, hottest, FIRM) / LAST - 1,
        "cpu_s": clock.cpu, "whole_cpu_s": time.process_time(),
        "wall_s": time.time() - clock.began,
        "peak_MB": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024,
    }
