"""The standard case by linear finite elements on tetrahedra that follow the walls (dolfin).

    python3 tetrahedra.py MESH.msh NAME OUT.json

Plastisol and metal are two bodies with nodes of their own on the wall; the film joins these node by
node. dolfin assembles, PETSc solves: conjugate gradients with an incomplete Cholesky factor, made
anew every tenth step. On edges of 0.6 mm that was faster than Jacobi's, Gauss-Seidel's and algebraic
multigrid's preconditioners, and a residual of 1e-3 moved no probe by more than 0.1 % against 1e-5.
"""

import json
import sys

import numpy as np
import petsc4py

petsc4py.init([])
from dolfin import (Cell, FunctionSpace, Measure, Mesh, MeshEditor, MeshFunction, Point,
                    TestFunction, TrialFunction, as_backend_type, assemble, dot, dof_to_vertex_map,
                    grad, parameters, set_log_level)
from petsc4py import PETSc
from scipy import sparse

from standard_case import (AIR, CONTACT, FILM, K_MOULD, K_PLASTISOL, PROBES, Clock, march, result)

set_log_level(40)
parameters["linear_algebra_backend"] = "PETSc"
PLASTISOL, MOULD = 1, 2
WALL, OUTSIDE = 1, 2


def read(path):
    """Points in mm; corners and physical number of tetrahedra and triangles (version 2.2)."""
    with open(path) as f:
        lines = f.read().split("\n")
    at = lines.index("$Nodes") + 1
    n = int(lines[at])
    nodes = np.array(" ".join(lines[at + 1:at + 1 + n]).split(), float).reshape(n, 4)
    number = np.zeros(int(nodes[:, 0].max()) + 1, int)
    number[nodes[:, 0].astype(int)] = np.arange(n)
    at = lines.index("$Elements") + 1
    n = int(lines[at])
    found = {}
    for corners, kind in ((3, " 2 2 "), (4, " 4 2 ")):
        width = 5 + corners
        rows = [l for l in lines[at + 1:at + 1 + n] if kind in l[l.index(" "):l.index(" ") + 5]]
        table = np.array(" ".join(rows).split(), int).reshape(-1, width)
        found[corners] = number[table[:, 5:]], table[:, 3]
    return nodes[:, 1:], found[4], found[3]


def two_bodies(points, tetrahedra, of):
    """A mesh whose plastisol comes first; new numbers of the old points in each body, -1: none."""
    mesh, editor = Mesh(), MeshEditor()
    editor.open(mesh, "tetrahedron", 3, 3)
    numbers, count = {}, 0
    for body in (PLASTISOL, MOULD):
        used = np.unique(tetrahedra[of == body])
        numbers[body] = np.full(len(points), -1)
        numbers[body][used] = count + np.arange(len(used))
        count += len(used)
    editor.init_vertices(count)
    for new in numbers.values():
        for old in np.flatnonzero(new >= 0):
            editor.add_vertex(new[old], points[old])
    cells = np.concatenate([np.sort(new[tetrahedra[of == b]], axis=1) for b, new in numbers.items()])
    editor.init_cells(len(cells))
    for i, c in enumerate(cells):
        editor.add_cell(i, c)
    editor.close(False)
    return mesh, numbers


def spread(points, triangles):
    """A third of each triangle's area to each corner, m2."""
    a, b, c = (points[triangles[:, i]] for i in range(3))
    area = 0.5e-6 * np.linalg.norm(np.cross(b - a, c - a), axis=1)
    return np.bincount(triangles.ravel(), np.repeat(area / 3, 3), len(points))


class Model:
    """Matrix in W/K, volumes in m3, by vertex."""

    def __init__(self, path):
        points, (tetrahedra, of), (triangles, on) = read(path)
        mesh, numbers = two_bodies(points, tetrahedra, of)
        domains = MeshFunction("size_t", mesh, 3, MOULD)
        first = int((of == PLASTISOL).sum())
        domains.array()[:first] = PLASTISOL
        dx = Measure("dx", domain=mesh, subdomain_data=domains)
        self.space = FunctionSpace(mesh, "P", 1)
        u, v = TrialFunction(self.space), TestFunction(self.space)
        self.vertex = dof_to_vertex_map(self.space)
        stiff = as_backend_type(assemble(
            1e-3 * K_PLASTISOL * dot(grad(u), grad(v)) * dx(PLASTISOL)
            + 1e-3 * K_MOULD * dot(grad(u), grad(v)) * dx(MOULD))).mat()
        rows, columns, values = stiff.getValuesCSR()
        n = mesh.num_vertices()
        dof = np.empty(n, int)
        dof[self.vertex] = np.arange(n)
        self.volume = 1e-9 * assemble(v * dx).get_local()
        self.plastisol = self.vertex < numbers[MOULD][numbers[MOULD] >= 0].min()
        wall = spread(points, triangles[on == WALL])
        joined = np.flatnonzero(wall)
        sides = [dof[numbers[b][joined]] for b in (PLASTISOL, MOULD)]
        u_wall = CONTACT * wall[joined]
        outside = spread(points, triangles[on == OUTSIDE])
        cooled = np.flatnonzero((outside > 0) & (numbers[MOULD] >= 0))
        to_air = dof[numbers[MOULD][cooled]]
        u_air = FILM * outside[cooled]
        i = np.concatenate([sides[0], sides[1], sides[0], sides[1], to_air])
        j = np.concatenate([sides[0], sides[1], sides[1], sides[0], to_air])
        films = np.concatenate([u_wall, u_wall, -u_wall, -u_wall, u_air])
        self.matrix = (sparse.csr_matrix((values, columns, rows), shape=(n, n))
                       + sparse.csr_matrix((films, (i, j)), shape=(n, n))).tocsr()
        self.load = np.zeros(n)
        np.add.at(self.load, to_air, AIR * u_air)
        self.mesh = mesh

    def probes(self):
        """Rows for the axis, then for half way to the wall, means of eight places round."""
        tree, maps = self.mesh.bounding_box_tree(), self.space.dofmap()
        limit = int(self.plastisol.sum())
        rows = []
        for share in (0, 1):
            for p in PROBES:
                row = np.zeros(len(self.volume))
                for angle in 0.1 + np.arange(8 if share else 1) * np.pi / 4:
                    r = share * p["radius_half"]
                    place = np.array([p["x"], r * np.cos(angle), r * np.sin(angle)])
                    cell = Cell(self.mesh, tree.compute_first_entity_collision(Point(*place)))
                    assert max(cell.entities(0)) < limit
                    weights = self.space.element().evaluate_basis_all(
                        place, np.array(cell.get_vertex_coordinates()), cell.orientation())
                    row[maps.cell_dofs(cell.index())] += weights / (8 if share else 1)
                rows.append(row)
        return sparse.csr_matrix(np.array(rows))


class Solver:
    """Solves by PETSc; only the diagonal changes."""

    def __init__(self, matrix):
        self.plain = matrix.diagonal()
        self.matrix = PETSc.Mat().createAIJ(
            matrix.shape, csr=(matrix.indptr, matrix.indices, matrix.data.copy()))
        self.ksp = PETSc.KSP().create()
        self.ksp.setType("cg")
        self.ksp.getPC().setType("icc")
        self.ksp.setTolerances(rtol=1e-3, max_it=2000)
        self.calls = 0
        self.x, self.b = self.matrix.createVecs()

    def __call__(self, diagonal, right):
        self.b.setArray(self.plain + diagonal)
        self.matrix.setDiagonal(self.b)
        self.ksp.getPC().setReusePreconditioner(self.calls % 10 > 0)
        self.calls += 1
        self.ksp.setOperators(self.matrix)
        self.b.setArray(right)
        self.ksp.solve(self.b, self.x)
        assert self.ksp.getConvergedReason() > 0
        return self.x.getArray().copy()


def main(path, name, out):
    clock = Clock()
    model = Model(path)
    solver, probes = Solver(model.matrix), model.probes()
    clock.ends("set_up")
    record = march(model.volume, model.plastisol, model.matrix, model.load, probes, solver)
    clock.ends("stepping")
    with open(out, "w") as f:
        json.dump(result(name, len(model.volume), record, clock), f, indent=1)


main(*sys.argv[1:])
