"""Joins runs of feeding_rod.edp into one reference with error bars.

    python3 feeding_rod.py CONTRACTION.txt OUT.json RUN.csv RUN.csv ...

CONTRACTION.txt: what short_contraction.edp prints. A run's file is named
g<gate>s<sprue>h<heat>n<mesh>dt<step>.csv. Three runs make one case: coarse mesh with long steps (c),
coarse mesh with all steps halved (d), finer mesh with long steps (f). The step's error is of first
order (liquid moves with the velocity of the step before), so a value is f + 2 (d - c); its error bar is
|f - c| + |d - c|. Where a run with steps halved again exists (e), the value is f - c + 2 e - d, and the error
bar |f - c| + |2 e - 3 d + c|, what the two ways of going to step 0 differ by. Where runs are missing, the value
is the one of the best run and the error bar is null.
"""

import csv
import json
import math
import re
import sys

NO_FLOW = 105.0
SERIES = ("time_s", "demand_mm3_s", "unfed_mm3_s", "through_gate_mm3_s", "gate_centre_C", "land_coldest_C",
          "gate_bulk_C", "sprue_coldest_C", "core_p_gate_Pa", "core_p_20mm_Pa")
PROFILE = [[0, 2.5], [8, 6], [60, 6], [92, 4], [99, 2], [100, 0.8]]
PART_MM3 = round(sum(math.pi / 3 * (b - a) * (r * r + r * s + s * s) for (a, r), (b, s) in zip(PROFILE, PROFILE[1:])), 2)


def falls(rows, get, level):
    """When a quantity falls through the level for the last time, straight between steps."""
    at = None
    for a, b in zip(rows, rows[1:]):
        if get(a) >= level > get(b):
            at = a["time_s"] + (b["time_s"] - a["time_s"]) * (get(a) - level) / (get(a) - get(b))
    return at


def values(rows):
    last = rows[-1]
    unfed = last["unfed_mm3"] + last["to_come_mm3"]
    demand = last["demand_mm3"] + last["to_come_mm3"]
    share = lambda r: 1 - r["unfed_mm3_s"] / r["demand_mm3_s"]
    return {
        "unfed_percent": 100 * unfed / PART_MM3,
        "demand_percent": 100 * demand / PART_MM3,
        "fed_share": 1 - unfed / demand,
        "share_through_50_percent_s": falls(rows, share, 0.5),
        "share_through_5_percent_s": falls(rows, share, 0.05),
        "gate_centre_sets_s": falls(rows, lambda r: r["gate_centre_C"], NO_FLOW),
        "gate_first_sets_s": falls(rows, lambda r: r["land_coldest_C"], NO_FLOW),
        "sprue_first_sets_s": falls(rows, lambda r: r["sprue_coldest_C"], NO_FLOW),
        "worst_volume_balance": max(abs(r["into_sprue_mm3_s"] - r["drawn_mm3_s"]) / rows[0]["drawn_mm3_s"] for r in rows),
    }


def read(path):
    with open(path) as f:
        return [{k: float(v) for k, v in r.items()} for r in csv.DictReader(f)]


def joined(c, d, e, f):
    if c is None or d is None or f is None:
        best = next((v for v in (f, d, c) if v is not None), None)
        return None if best is None else {"value": round(best, 4), "error": None}
    once = 2 * d - c
    limit = once if e is None else 2 * e - d
    steps = abs(d - c) if e is None else abs(limit - once)
    return {"value": round(f - c + limit, 4), "error": round(abs(f - c) + steps, 4)}


runs = {}
for path in sys.argv[3:]:
    gate, sprue, heat, n, dt = re.search(r"g([\d.]+)s([\d.]+)h(\d)n([\d.]+)dt([\d.]+)\.csv", path).groups()
    runs.setdefault((float(gate), float(sprue), heat == "1"), {})[float(n), float(dt)] = read(path)

cases = []
for (gate, sprue, heat), by in sorted(runs.items()):
    meshes, steps = sorted({n for n, _ in by}), sorted({dt for _, dt in by})
    long = steps[-1]
    sets = {k: values(v) for k, v in by.items()}
    c = sets[meshes[0], long]
    d, e = sets.get((meshes[0], long / 2)), sets.get((meshes[0], long / 4))
    f = sets.get((meshes[-1], long)) if len(meshes) > 1 else None
    shown = by[meshes[-1], long]
    cases.append({
        "gate_mm": gate, "sprue_mm": sprue, "heat_carried": heat,
        "reference":
            {k: joined(c[k], *(v and v[k] for v in (d, e, f))) for k in c if k != "worst_volume_balance"},
        "runs": [{"n": n, "dt_max_s": dt, "steps": len(by[n, dt])} | sets[n, dt] for n, dt in sorted(by)],
        "series_of_finest": {k: [float(f"{r[k]:.5g}") for r in shown] for k in SERIES},
    })

contraction = []
for line in open(sys.argv[1]):
    word = line.split()
    contraction.append({"far_side": word[0], "gate_mm": float(word[2]), "sprue_mm": float(word[4]), "land_mm": float(word[6]),
                        "n": float(word[8]), "triangles": int(word[10]), "resistance_over_poiseuille": float(word[12]),
                        "with_sampson_ends": float(word[14])})

json.dump({
    "name": "a rod fed through a short gate from an open sprue: axisymmetric Stokes flow and heat",
    "how": {
        "toolkit": "FreeFem++ 4.11 (Debian 4.11+dfsg1-3), UMFPACK; feeding_rod.edp, short_contraction.edp, feeding_rod.py",
        "method": "P2-P1 Stokes with viscosity by temperature, div u = -(contraction - yield), P2 heat with streamline"
                  " upwinding, BDF2; contraction = beta D max(T, no-flow)/Dt; error bars: feeding_rod.py",
        "left_out": "the sprue's surface stays where it is and what enters has the shot temperature; weight; latent heat; the wall"
                    " stays at 30 degC and the part on the wall; yielded cells keep their volume (their later contraction is overstated by a few per cent)",
        "meshes": "n = 1: edges 0.22 mm at the gate, 0.4 mm on walls, 0.8 mm on the axis, stretched along the axis up to 4.5"
                  " times away from the gate; n divides them. 3230 triangles for n = 1, gate 3 mm",
    },
    "given": {
        "part_profile_x_r_mm": PROFILE,
        "part_mm3": PART_MM3, "land_mm": 3, "sprue_length_mm": 30,
        "shot_degC": 165, "wall_degC": 30, "contact_conductance_W_m2K": 2500,
        "conductivity": 0.145, "density": 935, "specific_heat": 1900,
        "no_flow_degC": NO_FLOW, "expansion_1_K": 7e-4, "skin_bears_Pa": 500, "yield_from_to": [0.9, 1.1],
        "log10_viscosity_Pa_s": [[95, 6], [110, 4], [125, 1.7], [140, 0.3], [165, -0.5], [180, -0.7]],
    },
    "words": {
        "unfed_percent": "yielded while fed, and all contraction to no-flow still to come at the end, of the part's volume",
        "fed_share": "1 - unfed / demand",
        "share_through_50_percent_s": "fed over demand of the moment falls through 0.5; through 0.05 likewise",
        "gate_centre_sets_s": "middle of the land on the axis falls below no-flow",
        "gate_first_sets_s": "coldest place of the land on the axis falls below no-flow",
    },
    "cases": cases,
    "short_contraction": contraction,
}, open(sys.argv[2], "w"), indent=1)
