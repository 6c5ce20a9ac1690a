"""Sets the two bulbs of two-bulbs.geo by finite elements, as a second opinion on the voxel solver.

P2 tetrahedra in plastisol and mould. The two bodies have their own nodes along the wall they
share; heat passes by the contact conductance times the jump in temperature there. Unknown: the
enthalpy at the nodes, with the consistent mass matrix, so heat is conserved to rounding. Time: the
two-stage, second-order, L-stable diagonally implicit Runge-Kutta method (gamma = 1 - 1/sqrt 2).

Toolkit: dolfin assembles, PETSc solves (conjugate gradients, incomplete Cholesky), SciPy holds the
sparse matrices.

    gmsh -3 -setnumber n 36 -o MESH.msh two-bulbs.geo
    python3 two_bulbs.py MESH.msh STEP_FACTOR OUT.json

Length of a step: STEP_FACTOR times (0.1 s + 0.05 t), 4 s at most. combine.py joins the outputs.
"""

import json
import os
import resource
import sys
import time

import numpy as np
import petsc4py

petsc4py.init([])
from dolfin import (Cell, FunctionSpace, Mesh, MeshEditor, MeshFunction, Measure,
                    Point, TestFunction, TrialFunction, as_backend_type, assemble, dot, grad,
                    parameters, set_log_level)
from petsc4py import PETSc
from scipy import sparse
from scipy.interpolate import PchipInterpolator
from scipy.spatial import cKDTree

set_log_level(40)
parameters["linear_algebra_backend"] = "PETSc"

# Lengths in mm, so conductivities in W/mm K, films in W/mm2 K, heat in J/mm3.
K_PART, RHO_C = 0.16e-3, 1050 * 1900e-9
LATENT, GEL_START, GEL_END = 1050 * 20000e-9, 130.0, 95.0
K_MOULD, C_MOULD = 167e-3, 2700 * 896e-9
CONTACT, FILM, AIR = 1000e-6, 15e-6, 25.0
SHOT, MOULD_START = 165.0, 30.0
SET, FIRM = 105.0, 90.0
BOX = ((-18.0, -24.0, -12.0), (26.0, 20.0, 17.0))
PROBES = json.load(open(os.path.join(os.path.dirname(__file__), "two-bulbs-probes.json")))


def enthalpy(t):
    return RHO_C * t + LATENT * np.clip((t - GEL_END) / (GEL_START - GEL_END), 0, 1)


def slope(t):
    return RHO_C + LATENT / (GEL_START - GEL_END) * ((t > GEL_END) & (t < GEL_START))


def read_msh(path):
    """Points, and tetrahedra by physical volume, of a version 2.2 ASCII file."""
    lines = open(path).read().split("\n")
    at = lines.index("$Nodes") + 1
    count = int(lines[at])
    rows = np.array([l.split() for l in lines[at + 1:at + 1 + count]], float)
    number = {int(i): j for j, i in enumerate(rows[:, 0])}
    at = lines.index("$Elements") + 1
    cells = {1: [], 2: []}
    for line in lines[at + 1:at + 1 + int(lines[at])]:
        f = line.split()
        if f[1] == "4":
            cells[int(f[3])].append([number[int(v)] for v in f[-4:]])
    return rows[:, 1:], np.array(cells[1]), np.array(cells[2])


def two_bodies(path):
    """One dolfin mesh of two bodies that share no vertex; cells of the part come first."""
    points, part, mould = read_msh(path)
    vertices, cells = [], []
    start = 0
    for body in (part, mould):
        used, renumbered = np.unique(body, return_inverse=True)
        vertices.append(points[used])
        cells.append(renumbered.reshape(-1, 4) + start)
        start += len(used)
    mesh = Mesh()
    editor = MeshEditor()
    editor.open(mesh, "tetrahedron", 3, 3)
    editor.init_vertices(start)
    for i, p in enumerate(np.concatenate(vertices)):
        editor.add_vertex(i, p)
    cells = np.concatenate(cells)
    editor.init_cells(len(cells))
    for i, c in enumerate(cells):
        editor.add_cell(i, np.sort(c))
    editor.close(False)
    domains = MeshFunction("size_t", mesh, 3, 2)
    domains.array()[:len(part)] = 1
    return mesh, domains


def mark_faces(mesh, domains):
    """1: wall seen from the part, 2: wall seen from the mould, 3: block to air, 4: open end."""
    mesh.init(2, 3)
    mesh.init(2, 0)
    faces = MeshFunction("size_t", mesh, 2, 0)
    x = mesh.coordinates()
    owner = mesh.topology()(2, 3)
    corners = mesh.topology()(2, 0)
    for f in range(mesh.num_facets()):
        cells = owner(f)
        if len(cells) == 1:
            in_part = domains.array()[cells[0]] == 1
            c = x[corners(f)]
            outer = any(np.all(np.abs(c[:, a] - BOX[s][a]) < 1e-6)
                        for a in range(3) for s in range(2))
            faces.array()[f] = (4 if outer else 1) if in_part else (3 if outer else 2)
    return faces


def csr(form):
    m = as_backend_type(assemble(form)).mat()
    indptr, indices, data = m.getValuesCSR()
    return sparse.csr_matrix((data, indices, indptr), shape=m.getSize())


def contact(space, wall, other):
    """Integral of CONTACT (u_part - u_mould)(v_part - v_mould) over the wall."""
    u, v = TrialFunction(space), TestFunction(space)
    x = space.tabulate_dof_coordinates()
    s = csr(CONTACT * u * v * wall)
    mine = np.flatnonzero(s.diagonal() > 0)
    theirs = np.flatnonzero(csr(u * v * other).diagonal() > 0)
    gap, match = cKDTree(x[theirs]).query(x[mine])
    assert gap.max() < 1e-9 and len(mine) == len(theirs), "the two walls must match node by node"
    n = len(mine)
    jump = sparse.csr_matrix(
        (np.r_[np.ones(n), -np.ones(n)], (np.tile(np.arange(n), 2),
                                          np.r_[mine, theirs[match]])), shape=(n, len(x)))
    return (jump.T @ s[mine][:, mine] @ jump).tocsr()


class Model:
    def __init__(self, path):
        mesh, domains = two_bodies(path)
        faces = mark_faces(mesh, domains)
        dx = Measure("dx", domain=mesh, subdomain_data=domains)
        ds = Measure("ds", domain=mesh, subdomain_data=faces)
        self.space = FunctionSpace(mesh, "P", 2)
        u, v = TrialFunction(self.space), TestFunction(self.space)
        self.x = self.space.tabulate_dof_coordinates()
        self.mass = csr(u * v * dx)
        part_mass = csr(u * v * dx(1))
        self.part = part_mass.diagonal() > 0
        self.k = (csr(K_PART * dot(grad(u), grad(v)) * dx(1)
                      + K_MOULD * dot(grad(u), grad(v)) * dx(2) + FILM * u * v * ds(3))
                  + contact(self.space, ds(1), ds(2))).tocsr()
        self.load = assemble(FILM * AIR * v * ds(3)).get_local()
        self.weights = np.asarray(self.mass.sum(axis=0)).ravel()
        self.mesh, self.domains = mesh, domains
        self.sizes = {
            "cells_part": int((domains.array() == 1).sum()), "cells": mesh.num_cells(),
            "unknowns": len(self.x), "volume_mm3": float(part_mass.sum()),
            "wall_mm2": float(csr(u * v * ds(1)).sum()),
            "open_end_mm2": float(csr(u * v * ds(4)).sum()),
        }

    def probes(self):
        """Rows that interpolate at the probes."""
        tree = self.mesh.bounding_box_tree()
        dofs, element = self.space.dofmap(), self.space.element()
        data, rows, cols = [], [], []
        for r, p in enumerate(PROBES.values()):
            cell = tree.compute_first_entity_collision(Point(*map(float, p)))
            assert self.domains.array()[cell] == 1
            c = Cell(self.mesh, cell)
            w = element.evaluate_basis_all(np.array(p, float), np.array(c.get_vertex_coordinates()),
                                           c.orientation())
            data.extend(w)
            cols.extend(dofs.cell_dofs(cell))
            rows.extend([r] * len(w))
        return sparse.csr_matrix((data, (rows, cols)), shape=(len(PROBES), len(self.x)))

    def h(self, t):
        return np.where(self.part, enthalpy(t), C_MOULD * t)

    def dh(self, t):
        return np.where(self.part, slope(t), C_MOULD)


class Solver:
    """Solves mass h(t) + a k t = b for t by Newton's method on a symmetric neighbour of the matrix:
    sqrt(dh) mass sqrt(dh) instead of mass dh, alike where the slope varies little in an element."""

    def __init__(self, model):
        self.model = model
        self.work = [0, 0]

    def solve(self, t, b, a):
        m = self.model
        scale = np.linalg.norm(m.weights) * RHO_C * 0.5e-4
        for _ in range(40):
            r = b - m.mass @ m.h(t) - a * (m.k @ t)
            if np.linalg.norm(r) < scale:
                return t
            root = sparse.diags(np.sqrt(m.dh(t)))
            t = t + self.linear((root @ m.mass @ root + a * m.k).tocsr(), r)
        raise RuntimeError("no convergence: %g of %g" % (np.linalg.norm(r), scale))

    def linear(self, matrix, r):
        a = PETSc.Mat().createAIJ(matrix.shape, csr=(matrix.indptr, matrix.indices, matrix.data))
        ksp = PETSc.KSP().create()
        ksp.setOperators(a)
        ksp.setType("cg")
        ksp.getPC().setType("icc")
        ksp.setTolerances(rtol=1e-5, max_it=3000)
        x = a.createVecLeft()
        ksp.solve(PETSc.Vec().createWithArray(r), x)
        self.work[0] += 1
        self.work[1] += ksp.getIterationNumber()
        result = x.getArray().copy()
        for o in (ksp, a, x):
            o.destroy()
        return result


def march(model, factor):
    """Steps of factor (0.1 s + 0.05 t), at most 4 s factor, until all plastisol is below FIRM."""
    gamma = 1 - 1 / np.sqrt(2)
    solver = Solver(model)
    probes = model.probes()
    t = np.where(model.part, SHOT, MOULD_START)
    h0 = model.mass @ model.h(t)
    now, steps, air = 0.0, 0, 0.0
    record = [(0.0, probes @ t, t[model.part].max(), None)]
    start = {b: (model.weights * model.h(t))[s].sum()
             for b, s in (("part", model.part), ("mould", ~model.part))}
    while record[-1][2] > FIRM or record[-2][2] > FIRM:
        dt = factor * min(4.0, 0.1 + 0.05 * now)
        first = solver.solve(t, h0 + dt * gamma * model.load, dt * gamma)
        rate = model.load - model.k @ first
        b = h0 + dt * ((1 - gamma) * rate + gamma * model.load)
        t = solver.solve(first, b, dt * gamma)
        last = model.load - model.k @ t
        h0 = h0 + dt * ((1 - gamma) * rate + gamma * last)
        air -= dt * ((1 - gamma) * rate.sum() + gamma * last.sum())
        now += dt
        steps += 1
        hot = np.argmax(np.where(model.part, t, -1e9))
        record.append((now, probes @ t, t[hot], model.x[hot].tolist()))
    gain = {b: (model.weights * model.h(t))[s].sum() - start[b]
            for b, s in (("part", model.part), ("mould", ~model.part))}
    mean = ((model.weights * t)[~model.part].sum() / model.weights[~model.part].sum())
    return record, {"steps": steps, "linear_solves": solver.work[0],
                    "iterations": solver.work[1], "end_s": now, "part_gain_J": gain["part"],
                    "mould_gain_J": gain["mould"], "to_air_J": air, "mean_mould_C": mean}


def crossing(times, values, level):
    """When a monotone cubic through the record last falls through a level."""
    below = np.flatnonzero(values > level)[-1] + 1
    curve = PchipInterpolator(times, values)
    lo, hi = times[below - 1], times[below]
    for _ in range(60):
        mid = 0.5 * (lo + hi)
        lo, hi = (mid, hi) if curve(mid) > level else (lo, mid)
    return float(lo)


def main(path, factor, out):
    began = time.process_time()
    model = Model(path)
    built = time.process_time()
    record, totals = march(model, factor)
    times = np.array([r[0] for r in record])
    curves = np.array([r[1] for r in record])
    hottest = np.array([r[2] for r in record])
    end = crossing(times, hottest, FIRM)
    result = dict(model.sizes, step_factor=factor, **totals)
    result["probes"] = {
        name: {"set_s": crossing(times, curves[:, i], SET),
               "firm_s": crossing(times, curves[:, i], FIRM) if curves[-1, i] < FIRM else None}
        for i, name in enumerate(PROBES)}
    result["last_below_firm_s"] = end
    result["last_at_mm"] = record[np.searchsorted(times, end)][3]
    result["cpu_s"] = {"set_up": built - began, "stepping": time.process_time() - built}
    result["peak_MB"] = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    json.dump(result, open(out, "w"), indent=1)


main(sys.argv[1], float(sys.argv[2]), sys.argv[3])
