"""Prints the comparison as markdown from the files that the runs left.

    python3 table.py MESHING.json RUN.json ...

MESHING.json: name of a run and the processor seconds of its mesh. Ratios are of processor seconds: a
toolkit's set-up and stepping without its mesh, over gelfront's from the voxel model to the result,
warm. Each toolkit run is held against that run of gelfront which is cheapest among those whose
largest error is no larger: of all probes, on the axis and half way to the wall, and of the end.
"""

import json
import sys

from standard_case import PROBES

GATE = next(i for i, p in enumerate(PROBES) if -3 < p["x"] < 0)


def worst(errors):
    return max(abs(e) for i, e in enumerate(errors) if i != GATE)


def percent(value):
    return "%+.2f" % (100 * value)


meshing = json.load(open(sys.argv[1]))
runs = [json.load(open(path)) for path in sys.argv[2:]]
own = [r for r in runs if r["name"].startswith("gelfront")]
toolkits = [r for r in runs if r not in own]


def spent(run):
    return run["cpu_s"].get("set_up", 0) + run["cpu_s"]["stepping"]


print("| run | unknowns | steps | worst on the axis % | gate % | worst half way % | gate half way % |"
      " last below 90 °C % |")
print("|---|---|---|---|---|---|---|---|")
for r in runs:
    print("| %s | %d | %d | %.2f | %s | %.2f | %s | %s |" % (
        r["name"], r["unknowns"], r["steps"], 100 * worst(r["axis"]), percent(r["axis"][GATE]),
        100 * worst(r["half"]), percent(r["half"][GATE]), percent(r["last"])))
print()
print("| run | mesh or voxels, CPU s | set-up, CPU s | stepping, CPU s | first run in the process,"
      " CPU s | whole process, CPU s | wall s | peak MB |")
print("|---|---|---|---|---|---|---|---|")
for r in runs:
    cpu = r["cpu_s"]
    mesh = cpu.get("meshing", meshing.get(r["name"], 0))
    print("| %s | %.1f | %.2f | %.2f | %s | %.1f | %.1f | %.0f |" % (
        r["name"], mesh, cpu.get("set_up", 0), cpu["stepping"],
        "%.2f" % cpu["first"] if "first" in cpu else "", r["whole_cpu_s"], r["wall_s"],
        r["peak_MB"]))
print()
print("Error on the axis at each probe, %:")
print()
print("| run | " + " | ".join("x = %g mm" % p["x"] for p in PROBES) + " |")
print("|---" * (len(PROBES) + 1) + "|")
for r in runs:
    print("| %s | %s |" % (r["name"], " | ".join(percent(e) for e in r["axis"])))
print()


def largest(run):
    return max(map(abs, run["axis"] + run["half"] + [run["last"]]))


print("| toolkit run | largest error % | gelfront's cheapest with none larger | its largest error % |"
      " CPU, toolkit over gelfront warm | over its first run in a fresh process |")
print("|---|---|---|---|---|---|")
for r in toolkits:
    equal = [g for g in own if largest(g) <= largest(r)]
    if equal:
        g = min(equal, key=spent)
        print("| %s | %.2f | %s | %.2f | %.1f | %.1f |" % (
            r["name"], 100 * largest(r), g["name"], 100 * largest(g), spent(r) / spent(g),
            spent(r) / g["cpu_s"]["first"]))
    else:
        print("| %s | %.2f | none | | | |" % (r["name"], 100 * largest(r)))
