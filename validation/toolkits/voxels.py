"""The standard case by finite volumes on plain voxels (SciPy).

    python3 voxels.py SPACING_MM NAME OUT.json

A cell is plastisol if its centre is; walls are the faces between cells. A quarter of the case, which
is what its symmetry leaves to do; cells grow away from the cavity. Solved by conjugate gradients,
preconditioned by the diagonal; a residual of 1e-2 a step moves no probe by more than 0.02 %
against 1e-3.
"""

import json
import sys

import numpy as np
from scipy import sparse
from scipy.sparse.linalg import LinearOperator, cg

from standard_case import (AIR, CASE, CONTACT, FILM, K_MOULD, K_PLASTISOL, PROBES, Clock, march,
                           radius, result)

GROWTH = 1.3


def edges(start, fine_to, end, spacing):
    """Equal cells up to a multiple of the spacing beyond fine_to, then growing ones; mm."""
    n = int(np.ceil((fine_to - start) / spacing - 1e-9))
    fine = start + spacing * np.arange(n + 1)
    rest = end - fine[-1]
    count = max(1, int(round(np.log1p(rest * (GROWTH - 1) / (spacing * GROWTH)) / np.log(GROWTH))))
    steps = GROWTH ** np.arange(1, count + 1)
    return np.append(fine, fine[-1] + rest * np.cumsum(steps) / steps.sum())


class Model:
    """Matrix in W/K, volumes in m3, by cell; x runs slowest."""

    def __init__(self, spacing):
        box = CASE["block"]
        across = edges(0.0, 7.0, box["y"][1], spacing)
        self.edges = [edges(box["x"][0], 100.0, box["x"][1], spacing), across, across]
        self.centres = [0.5 * (e[1:] + e[:-1]) for e in self.edges]
        size = [1e-3 * np.diff(e) for e in self.edges]
        self.shape = tuple(len(c) for c in self.centres)
        x, y, z = np.meshgrid(*self.centres, indexing="ij", sparse=True)
        self.inside = np.hypot(y, z) < np.nan_to_num(radius(x), nan=-1.0)
        self.size = np.meshgrid(*size, indexing="ij", sparse=True)
        self.volume = (self.size[0] * self.size[1] * self.size[2]).ravel()
        self.plastisol = self.inside.ravel()
        self.load = np.zeros(self.shape)
        own = np.zeros(self.shape)
        for axis in range(3):
            self.to_air(axis, -1, own)
        self.to_air(0, 0, own)
        self.load = self.load.ravel()
        self.matrix = self.conduction(own.ravel())

    def area(self, axis):
        a, b = (self.size[i] for i in range(3) if i != axis)
        return a * b

    def to_air(self, axis, end, own):
        """Film on an outer face of the block; the open end of the sprue is insulated."""
        face = [slice(None)] * 3
        face[axis] = slice(0, 1) if end == 0 else slice(-1, None)
        face = tuple(face)
        half = 0.5 * np.take(self.size[axis], [end], axis=axis)
        g = self.area(axis) / (1 / FILM + half / K_MOULD) * ~self.inside[face]
        own[face] += g
        self.load[face] += g * AIR

    def conduction(self, own):
        k = np.where(self.inside, K_PLASTISOL, K_MOULD)
        number = np.arange(own.size).reshape(self.shape)
        rows, columns, values = [number.ravel()], [number.ravel()], [own]
        for axis in range(3):
            low, high = [slice(None)] * 3, [slice(None)] * 3
            low[axis], high[axis] = slice(None, -1), slice(1, None)
            low, high = tuple(low), tuple(high)
            half = 0.5 * self.size[axis] / k
            wall = (self.inside[low] != self.inside[high]) / CONTACT
            g = (self.area(axis) / (half[low] + half[high] + wall)).ravel()
            i, j = number[low].ravel(), number[high].ravel()
            rows += [i, j, i, j]
            columns += [j, i, i, j]
            values += [-g, -g, g, g]
        return sparse.csr_matrix(
            (np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))))

    def weights(self, axis, place):
        """Two cells and their weights, linear; a parabola even in y or z on the axis itself."""
        c = self.centres[axis]
        if axis and place == 0:
            return (0, 1), (9 / 8, -1 / 8)
        i = min(max(int(np.searchsorted(c, place)) - 1, 0), len(c) - 2)
        w = max(0.0, (place - c[i]) / (c[i + 1] - c[i]))
        return (i, i + 1), (1 - w, w)

    def place(self, row, at, share):
        parts = [self.weights(axis, p) for axis, p in enumerate(at)]
        for corner in np.ndindex(2, 2, 2):
            cell = tuple(parts[a][0][c] for a, c in enumerate(corner))
            w = np.prod([parts[a][1][c] for a, c in enumerate(corner)])
            if abs(w) > 1e-12:
                assert self.inside[cell]
                row[np.ravel_multi_index(cell, self.shape)] += share * w

    def probes(self):
        rows = []
        for share in (0, 1):
            for p in PROBES:
                row = np.zeros(self.volume.size)
                angles = (0.5 + np.arange(4)) * np.pi / 8 if share else [0.0]
                for angle in angles:
                    r = share * p["radius_half"]
                    at = (p["x"], r * np.cos(angle), r * np.sin(angle))
                    self.place(row, at, 1 / len(angles))
                rows.append(row)
        return sparse.csr_matrix(np.array(rows))


def solver(matrix):
    plain = matrix.diagonal()

    def solve(diagonal, right):
        m = matrix.copy()
        m.setdiag(plain + diagonal)
        inverse = 1 / (plain + diagonal)
        by_diagonal = LinearOperator(m.shape, matvec=lambda v: inverse * v, dtype=float)
        x, info = cg(m, right, tol=1e-2, maxiter=3000, M=by_diagonal)
        assert info == 0
        return x

    return solve


def main(spacing, name, out):
    clock = Clock()
    model = Model(float(spacing))
    solve, probes = solver(model.matrix), model.probes()
    clock.ends("set_up")
    record = march(model.volume, model.plastisol, model.matrix, model.load, probes, solve)
    clock.ends("stepping")
    with open(out, "w") as f:
        json.dump(result(name, model.volume.size, record, clock), f, indent=1)


main(*sys.argv[1:])
