// SPDX-License-Identifier: Apache-2.0
package gelfront.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gelfront.report.FindingsSchema;
import gelfront.report.Tool;
import gelfront.result.DentColour;
import gelfront.result.DentSurface;
import gelfront.result.Fields;
import gelfront.result.ResultFolder;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of a calculated result, read by programs that are none of ours. */
class ResultFilesTest {
  /** Reads an image data file and tells its frame, and of each array some figures, as JSON. */
  private static final String READER =
      """
      import json, sys
      from vtkmodules.vtkIOXML import vtkXMLImageDataReader
      reader = vtkXMLImageDataReader()
      reader.SetFileName(sys.argv[1])
      reader.Update()
      image = reader.GetOutput()
      cells = image.GetCellData()
      told = {"dimensions": image.GetDimensions(), "origin": image.GetOrigin(),
              "spacing": image.GetSpacing(), "error": reader.GetErrorCode(), "arrays": {}}
      for i in range(cells.GetNumberOfArrays()):
          a = cells.GetArray(i)
          told["arrays"][a.GetName()] = [a.GetValue(int(c)) for c in sys.argv[2:]] + [a.GetNumberOfTuples()]
      print(json.dumps(told))
      """;

  @TempDir private static Path folder;
  private static Path result;

  @BeforeAll
  static void calculate() throws IOException {
    Path caseFile = Files.writeString(folder.resolve("pea.toml"), CommandLineTest.CASE);
    result = folder.resolve("result");

    Program.Answer a = Program.run("check", caseFile, "-o", result);

    assertEquals(0, a.code(), a::err);
  }

  @Test
  void findingsAreAsTheSchemaSays() throws IOException {
    JsonNode findings = new ObjectMapper().readTree(result.resolve("findings.json").toFile());

    assertEquals(List.of(), FindingsSchema.complaints(findings));
  }

  @Test
  void voxelsAreReadByVtk() throws Exception {
    Tool python = Tool.orSkip("/usr/bin/python3");
    Tool.need(
        "yes\n".equals(python.run(folder, List.of("-c", ASK))),
        "python3-vtk9 for /usr/bin/python3");
    Path reader = Files.writeString(folder.resolve("reader.py"), READER);
    Fields f = ResultFolder.read(result).fields();
    int n = f.cells().length;
    int[] some = {0, n / 3, n / 2, n - 1};

    List<String> arguments =
        new ArrayList<>(List.of(reader + "", result.resolve("voxels.vti") + "", "0"));
    for (int c : some) {
      arguments.add(String.valueOf(f.cells()[c]));
    }
    JsonNode told = new ObjectMapper().readTree(python.run(folder, arguments));

    assertEquals(0, told.get("error").asInt());
    assertFrame(f, told);
    JsonNode arrays = told.get("arrays");
    assertEquals(4, arrays.size());
    assertEquals(f.nx() * f.ny() * f.nz(), arrays.get("region").get(5).asInt());
    assertEquals(-1, arrays.get("region").get(0).asInt(), "a corner of the grid is metal");
    for (int i = 0; i < some.length; i++) {
      int c = some[i];
      assertEquals(f.setTime()[c], (float) arrays.get("set_time").get(i + 1).asDouble());
      assertEquals(f.cutOff()[c], (float) arrays.get("cut_off").get(i + 1).asDouble());
      assertEquals(f.region()[c], arrays.get("region").get(i + 1).asInt());
      assertEquals(f.pocket()[c], arrays.get("pocket").get(i + 1).asInt());
    }
  }

  /** A reader of its own, of what the PLY file says of itself. */
  @Test
  void theDentedMeshIsReadByWhatItsHeadSays() throws IOException {
    byte[] all = Files.readAllBytes(result.resolve("dents.ply"));
    String head = new String(all, 0, 700, StandardCharsets.US_ASCII).split("end_header\n", -1)[0];
    List<String> lines = head.lines().toList();
    int vertices = count(lines, "element vertex ");
    List<String> floats =
        lines.stream()
            .filter(l -> l.startsWith("property float "))
            .map(l -> l.substring(15))
            .toList();
    DentSurface dents = ResultFolder.read(result).dents();

    assertEquals("ply", lines.get(0));
    assertEquals("format binary_little_endian 1.0", lines.get(1));
    assertEquals(List.of("x", "y", "z", "depth_mm", "depth_low_mm", "depth_high_mm"), floats);
    assertEquals(dents.mesh().vertexCount(), vertices);
    ByteBuffer b = ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN);
    int at = head.length() + "end_header\n".length();
    for (int v = 0; v < vertices; v += 7) {
      int here = at + 27 * v;
      assertEquals(1e3 * dents.mesh().coordinate(v, 0), b.getFloat(here), 1e-4);
      int rgb = DentColour.of(dents.depth()[v], 0.2e-3);
      assertEquals((byte) (rgb >> 16), b.get(here + 12));
      assertEquals(1e3f * dents.depth()[v], b.getFloat(here + 15), 1e-6);
      assertEquals(1e3f * dents.high()[v], b.getFloat(here + 23), 1e-6);
    }
    int faces = count(lines, "element face ");
    assertEquals(all.length, at + 27 * vertices + 13 * faces);
    assertEquals(3, b.get(at + 27 * vertices));
  }

  private static int count(List<String> lines, String element) {
    String line = lines.stream().filter(l -> l.startsWith(element)).findFirst().orElseThrow();
    return Integer.parseInt(line.substring(element.length()));
  }

  private static final String ASK =
      "import importlib.util as u; print('yes' if u.find_spec('vtkmodules') else 'no')";

  private static void assertFrame(Fields f, JsonNode told) {
    int[] cells = {f.nx(), f.ny(), f.nz()};
    double[] origin = {f.origin().x(), f.origin().y(), f.origin().z()};
    for (int a = 0; a < 3; a++) {
      assertEquals(cells[a] + 1, told.get("dimensions").get(a).asInt());
      assertEquals(origin[a] * 1e3, told.get("origin").get(a).asDouble(), 1e-6);
      assertEquals(f.spacing() * 1e3, told.get("spacing").get(a).asDouble(), 1e-6);
    }
    assertTrue(told.get("arrays").has("set_time"));
  }
}
