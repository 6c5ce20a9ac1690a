// SPDX-License-Identifier: Apache-2.0
package gelfront.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gelfront.base.Progress;
import gelfront.base.Workers;
import gelfront.evidence.Check;
import gelfront.grid.MouldCells;
import gelfront.mesh.TriangleMesh;
import gelfront.mesh.Vec3;
import gelfront.mesh.io.LengthUnit;
import gelfront.mesh.io.MeshFiles;
import gelfront.mesh.shape.Solids;
import gelfront.setup.CaseException;
import gelfront.setup.CaseFile;
import gelfront.setup.LoadedCase;
import gelfront.setup.PartLoader;
import gelfront.voxelize.CaseVoxels;
import gelfront.voxelize.OpenMould;
import gelfront.voxelize.PartingPlane;
import gelfront.voxelize.VoxelException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the true shape of a mould does that a box round it doesn't know. */
class MouldShapeTest {
  private static final double FILM = 9;

  /** J/m3 K of aluminium 6061 in the material table. */
  private static final double HEAT = 2700.0 * 896;

  private static final Vec3 LOW = new Vec3(-20e-3, -15e-3, -15e-3);
  private static final Vec3 HIGH = new Vec3(30e-3, 15e-3, 15e-3);
  private static final double FULL = 50e-3 * 30e-3 * 30e-3;

  private static final String CASE =
      """
      name = "Block of any shape"
      [[part.caliper]]
      distance = "0 mm"
      width = "8 mm"
      height = "8 mm"
      [[part.caliper]]
      distance = "20 mm"
      width = "8 mm"
      height = "8 mm"
      [gate]
      at = ["0 mm", "0 mm", "0 mm"]
      direction = [-1, 0, 0]
      size = "4 mm"
      land = "2 mm"
      [sprue]
      diameter = "6 mm"
      length = "18 mm"
      [block]
      BLOCK
      air_film = "9 W/m2K"
      [shot]
      temperature = "165 degC"
      [numerics]
      level = "quick"
      """;

  private static final String BOX =
      """
      box_min = ["-20 mm", "-15 mm", "-15 mm"]
      box_max = ["30 mm", "15 mm", "15 mm"]
      """;

  @TempDir private Path folder;

  private LoadedCase loaded(String block) {
    return CaseFile.parse("bait.toml", CASE.replace("BLOCK\n", block), folder);
  }

  private CaseVoxels voxels(String block) {
    LoadedCase c = loaded(block);
    TriangleMesh part = PartLoader.load(c.setup().part()).mesh();
    return CaseVoxels.of(c.setup(), part, Progress.NONE);
  }

  private CaseRunner.Outcome run(String block) {
    LoadedCase c = loaded(block);
    TriangleMesh part = PartLoader.load(c.setup().part()).mesh();
    return CaseRunner.run(c.setup(), part, Workers.SERIAL, Progress.NONE);
  }

  private void write(String name, TriangleMesh mesh) throws IOException {
    try (OutputStream to = Files.newOutputStream(folder.resolve(name))) {
      MeshFiles.writeStl(mesh, to, LengthUnit.MM);
    }
  }

  private static double sum(double[] of) {
    return Arrays.stream(of).sum();
  }

  /** A profile in y and z, mm, along the whole block. */
  private static TriangleMesh bar(double[]... corners) {
    List<double[]> outline =
        Arrays.stream(corners).map(c -> new double[] {c[0] * 1e-3, c[1] * 1e-3}).toList();
    return Solids.prism(
        outline, new Vec3(LOW.x(), 0, 0), new Vec3(HIGH.x(), 0, 0), new Vec3(0, 0, 1));
  }

  @Test
  void twoHalvesOfABoxAreTheBoxToTheLastBit() throws IOException {
    write("low.stl", Solids.box(LOW, new Vec3(HIGH.x(), HIGH.y(), 0)));
    write("high.stl", Solids.box(new Vec3(LOW.x(), LOW.y(), 0), HIGH));
    MouldCells box = voxels(BOX).model().mould();
    MouldCells halves = voxels("mesh = [\"low.stl\", \"high.stl\"]\n" + BOX).model().mould();

    assertArrayEquals(box.cells(), halves.cells());
    assertArrayEquals(box.capacity(), halves.capacity());
    assertArrayEquals(box.neighbour(), halves.neighbour());
    assertArrayEquals(box.conductance(), halves.conductance());
    assertArrayEquals(box.airConductance(), halves.airConductance());
    assertArrayEquals(box.airTemperature(), halves.airTemperature());
  }

  @Test
  void aSlitAtThePartingPlaneIsNoAir() throws IOException {
    write("low.stl", Solids.box(LOW, new Vec3(HIGH.x(), HIGH.y(), -0.1e-3)));
    write("high.stl", Solids.box(new Vec3(LOW.x(), LOW.y(), 0.1e-3), HIGH));
    MouldCells box = voxels(BOX).model().mould();
    MouldCells halves = voxels("mesh = [\"low.stl\", \"high.stl\"]\n" + BOX).model().mould();

    assertArrayEquals(box.capacity(), halves.capacity());
    assertArrayEquals(box.airConductance(), halves.airConductance());
  }

  /** An eight-sided bar: each of its slopes cuts the cells on its way. */
  @Test
  void metalAndFilmOfSlopesAreThoseOfTheDrawing() throws IOException {
    double a = 15;
    double b = 7;
    write(
        "bar.stl",
        bar(
            new double[] {a, -b},
            new double[] {a, b},
            new double[] {b, a},
            new double[] {-b, a},
            new double[] {-a, b},
            new double[] {-a, -b},
            new double[] {-b, -a},
            new double[] {b, -a}));
    MouldCells box = voxels(BOX).model().mould();
    MouldCells cut = voxels("mesh = \"bar.stl\"\n" + BOX).model().mould();

    double corner = 0.5 * 8e-3 * 8e-3;
    double lost = sum(box.capacity()) - sum(cut.capacity());
    Check.of("metal that an eight-sided bar lacks", "geometry")
        .expected(4 * corner * 50e-3)
        .got(lost / HEAT)
        .within(0.02);

    double slopes = 4 * 8e-3 * Math.sqrt(2) * 50e-3;
    double faces = 4 * (30e-3 - 14e-3) * 50e-3 + 2 * 4 * corner;
    double film = sum(box.airConductance()) - sum(cut.airConductance());
    Check.of("film that an eight-sided bar lacks", "geometry")
        .expected(FILM * (faces - slopes))
        .got(film)
        .within(0.01, sum(box.airConductance()));
  }

  /** A notch of 15 x 6 mm at the edge: so much less of the parting plane is bared by opening. */
  @Test
  void whatIsCutFromThePartingPlaneLosesNoHeatThere() throws IOException {
    write("low.stl", notched(-15e-3, 0));
    write("high.stl", notched(0, 15e-3));

    double less = FILM * 2 * 15e-3 * 6e-3;
    double bared = bared("mesh = [\"low.stl\", \"high.stl\"]\n" + BOX);
    Check.of("film that a notch at the parting plane takes", "geometry")
        .expected(less)
        .got(bared(BOX) - bared)
        .within(0.01);
  }

  /** W/K more of the open mould than of the closed one. */
  private double bared(String block) {
    CaseVoxels v = voxels(block);
    assertEquals(1, PartingPlane.of(v).axis());
    double open = sum(OpenMould.of(v, loaded(block).setup().block()).airConductance());
    return open - sum(v.model().mould().airConductance());
  }

  /** Between two heights y. */
  private static TriangleMesh notched(double from, double to) {
    Vec3 high = new Vec3(HIGH.x(), to, 9e-3);
    return Solids.box(new Vec3(LOW.x(), from, LOW.z()), high)
        .plus(Solids.box(new Vec3(LOW.x(), from, 9e-3), new Vec3(10e-3, to, HIGH.z())))
        .plus(Solids.box(new Vec3(25e-3, from, 9e-3), new Vec3(HIGH.x(), to, HIGH.z())));
  }

  @Test
  void aMilledOffCornerMakesTheMouldHotterAndKeepsTheBalance() throws IOException {
    write(
        "corner.stl",
        Solids.box(LOW, new Vec3(HIGH.x(), HIGH.y(), 6e-3))
            .plus(
                Solids.box(new Vec3(LOW.x(), LOW.y(), 6e-3), new Vec3(HIGH.x(), 6e-3, HIGH.z()))));
    CaseRunner.Outcome box = run(BOX);
    CaseRunner.Outcome cut = run("mesh = \"corner.stl\"\n" + BOX);

    MouldCells all = box.voxels().model().mould();
    MouldCells less = cut.voxels().model().mould();
    double share = 9e-3 * 9e-3 * 50e-3 / FULL;
    double lost = (sum(all.capacity()) - sum(less.capacity())) / HEAT;
    assertEquals(share, lost / FULL, 0.02 * share);
    // A corner taken off at right angles leaves as much surface but for its own two ends.
    double ends = 2 * 9e-3 * 9e-3 * FILM;
    assertEquals(ends, sum(all.airConductance()) - sum(less.airConductance()), 0.3 * ends);

    assertTrue(Math.abs(cut.end().ledger.imbalance()) < 1e-9, "" + cut.end().ledger.imbalance());
    double before = last(box.shot().mouldAtWall());
    double after = last(cut.shot().mouldAtWall());
    // 9 % less metal for the same heat: the mould comes 9 % farther from where it began.
    assertEquals(share / (1 - share), (after - 30) / (before - 30) - 1, 0.4 * share);
    assertTrue(
        cut.judgement().findings().partSets() > box.judgement().findings().partSets(),
        "a hotter mould sets later");
  }

  private static double last(double[] of) {
    return of[of.length - 1];
  }

  @Test
  void aClosedHollowLosesMetalAndNoHeat() throws IOException {
    Vec3 at = new Vec3(5e-3, 11e-3, 11e-3);
    TriangleMesh ball = Solids.sphere(at, 3e-3, 48);
    write("hollow.stl", Solids.box(LOW, HIGH).plus(changed(ball, Vec3.ZERO, true)));
    MouldCells box = voxels(BOX).model().mould();
    MouldCells hollow = voxels("mesh = \"hollow.stl\"\n" + BOX).model().mould();

    double volume = 4.0 / 3 * Math.PI * Math.pow(3e-3, 3);
    double lost = (sum(box.capacity()) - sum(hollow.capacity())) / HEAT;
    Check.of("metal that a round hollow lacks", "geometry").expected(volume).got(lost).within(0.03);
    assertEquals(sum(box.airConductance()), sum(hollow.airConductance()), 1e-12);
  }

  @Test
  void withoutABoxThatRoundTheSolidsIsTaken() throws IOException {
    write("block.stl", Solids.box(LOW, HIGH));

    assertArrayEquals(
        voxels(BOX).model().mould().capacity(),
        voxels("mesh = \"block.stl\"\n").model().mould().capacity(),
        1e-9);
  }

  @Test
  void whatCantBeIsToldInWords() throws IOException {
    TriangleMesh block = Solids.box(LOW, HIGH);
    String mesh = "mesh = \"block.stl\"\n" + BOX;
    assertTrue(refusedCase(mesh).contains("there is no file \"block.stl\""));
    write("block.stl", block);
    assertTrue(refusedCase("mesh = \"block.stl\"\nwall = \"9 mm\"\n").contains("keep one"));
    assertTrue(refusedCase("unit = \"mm\"\nwall = \"9 mm\"\n").contains("there is none"));

    write("block.stl", changed(block, new Vec3(0, 2e-3, 0), false));
    assertTrue(refused(mesh).contains("reach out of box_min, box_max by 2.00 mm on the side +y"));
    write("block.stl", Solids.box(LOW, new Vec3(15e-3, HIGH.y(), HIGH.z())));
    assertTrue(refused(mesh).contains("part and feed system reach out of the mould's solids by 5"));

    String stl = Files.readString(text(block));
    int last = stl.lastIndexOf("facet normal");
    Files.writeString(folder.resolve("block.stl"), stl.substring(0, last) + "endsolid\n");
    assertTrue(refused(mesh).startsWith("block.stl: "), refused(mesh));
    assertTrue(refusedCase("mesh = \"block.stl\"\n").contains("block.stl: "));
  }

  private static TriangleMesh changed(TriangleMesh mesh, Vec3 shift, boolean turned) {
    double[] v = mesh.copyVertices();
    for (int i = 0; i < v.length; i += 3) {
      v[i] += shift.x();
      v[i + 1] += shift.y();
      v[i + 2] += shift.z();
    }
    int[] t = mesh.copyTriangles();
    for (int i = 0; turned && i < t.length; i += 3) {
      int first = t[i];
      t[i] = t[i + 1];
      t[i + 1] = first;
    }
    return new TriangleMesh(v, t);
  }

  /** A text file of it, to be broken. */
  private Path text(TriangleMesh mesh) throws IOException {
    StringBuilder s = new StringBuilder("solid block\n");
    for (int t = 0; t < mesh.triangleCount(); t++) {
      s.append("facet normal 0 0 0\nouter loop\n");
      for (int c = 0; c < 3; c++) {
        Vec3 v = mesh.vertex(mesh.corner(t, c)).times(1e3);
        s.append("vertex " + v.x() + " " + v.y() + " " + v.z() + "\n");
      }
      s.append("endloop\nendfacet\n");
    }
    return Files.writeString(folder.resolve("text.stl"), s + "endsolid block\n");
  }

  private String refusedCase(String block) {
    return assertThrows(CaseException.class, () -> loaded(block)).getMessage();
  }

  private String refused(String block) {
    return assertThrows(VoxelException.class, () -> voxels(block)).getMessage();
  }
}
