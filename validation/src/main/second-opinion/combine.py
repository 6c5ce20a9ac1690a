"""Joins runs of two_bulbs.py on finer and finer meshes into one reference with error bars.

    python3 combine.py COARSE.json MIDDLE.json FINE.json COARSE_HALF_STEP.json N N N OUT.json

N: the n of each mesh. Errors of facets and of elements both fall with 1/n^2 (volumes show it), so a
value is carried on to 1/n^2 = 0 from the middle and the fine mesh. Its error bar: what the same from
the coarse and the middle mesh gives instead, or a tenth of the way carried on if that is more, and
on top four thirds of what halving the step changes.
"""

import json
import sys

coarse, middle, fine, half = (json.load(open(p)) for p in sys.argv[1:5])
weights = [1 / int(n) ** 2 for n in sys.argv[5:8]]


def limit(a, b, wa, wb):
    return b + (b - a) * wb / (wa - wb)


def carried_on(get):
    values = [get(r) for r in (coarse, middle, fine)]
    best = limit(values[1], values[2], weights[1], weights[2])
    other = limit(values[0], values[1], weights[0], weights[1])
    error = max(abs(best - other), 0.1 * abs(best - values[2]))
    return best, error + 4 / 3 * abs(get(half) - values[0])


def field(name, get):
    value, error = carried_on(get)
    return {name: round(value, 4), name.replace("_s", "") + "_err_s": round(error, 4)}


probes = []
places = json.load(open("two-bulbs-probes.json"))
for name, place in places.items():
    probe = {"name": name, "at_mm": place}
    for what in ("set_s", "firm_s"):
        probe |= field(what, lambda r: r["probes"][name][what])
    probes.append(probe)

# The last plastisol to be firm sits at the large bulb's centre, which is a node or close to one.
json.dump({
    "name": "two bulbs, a slanted neck and a side gate in a block",
    "how": {
        "toolkit": "dolfin 2019.2.0.dev0 (Debian 2019.2.0~git20230116), PETSc 3.18, SciPy 1.10.1,"
                   " meshes by gmsh 4.8.4; two-bulbs.geo and two_bulbs.py beside combine.py",
        "method": "P2 tetrahedra, own nodes on either side of the wall joined by the contact"
                  " conductance, enthalpy at the nodes, consistent mass, SDIRK2 with steps of"
                  " 0.1 s + 0.05 t, 4 s at most; carried on to mesh size 0 from the two finer meshes",
        "runs": [{k: r[k] for k in ("cells_part", "cells", "unknowns", "volume_mm3", "wall_mm2",
                                    "step_factor", "steps", "end_s", "part_gain_J", "mould_gain_J",
                                    "to_air_J", "cpu_s", "peak_MB", "probes",
                                    "last_below_firm_s", "last_at_mm")}
                 | {"n": int(n)}
                 for r, n in zip((coarse, middle, fine, half),
                                 sys.argv[5:8] + [sys.argv[5]])],
    },
    "shape_mm": {
        "balls": [{"centre": [0, 0, 0], "radius": 6}, {"centre": [14, 6, 0], "radius": 4.5}],
        "bars": [{"is": "neck", "from": [0, 0, 0], "to": [14, 6, 0], "radius": 2},
                 {"is": "gate", "from": [0, 0, 0], "to": [0, -9, 0], "radius": 1.5},
                 {"is": "sprue", "from": [0, -9, 0], "to": [0, -24, 0], "radius": 4}],
        "open_face": "y = -24, flush with the block, insulated",
        "block": {"min": [-18, -24, -12], "max": [26, 20, 17]},
    },
    "plastisol": {"density": 1050, "specific_heat": 1900, "conductivity": 0.16,
                  "latent_heat_J_kg": 20000, "latent_released_linearly_between_degC": [130, 95],
                  "start_degC": 165},
    "mould": {"conductivity": 167, "density": 2700, "specific_heat": 896, "start_degC": 30},
    "contact_conductance_W_m2K": 1000,
    "outer_faces": {"h_W_m2K": 15, "air_degC": 25},
    "set_degC": 105,
    "firm_degC": 90,
    "reference": {
        "volume_mm3": round(carried_on(lambda r: r["volume_mm3"])[0], 2),
        "wall_mm2": round(carried_on(lambda r: r["wall_mm2"])[0], 2),
        "probes": probes,
        "last_below_firm": field("time_s", lambda r: r["last_below_firm_s"])
        | {"at_mm": [0, 0, 0]},
    },
}, open(sys.argv[8], "w"), indent=1)
