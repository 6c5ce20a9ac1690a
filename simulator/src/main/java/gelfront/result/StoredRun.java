// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import gelfront.base.Caution;
import gelfront.finding.Findings;
import gelfront.mesh.TriangleMesh;
import java.util.List;

/**
 * All that a run leaves: enough for report and window with no solver in memory.
 *
 * @param name of the case
 * @param caseText the case file as it was read
 * @param inputs what went in, in words
 * @param findings what came out
 * @param series curves over time
 * @param health what the run found out about itself
 * @param cautions warnings that belong to this run
 * @param provenance when, where, how long
 * @param fields values on voxels
 * @param surface part and feed system as closed, outward-wound solids, metres
 * @param dents how deep the part is dented
 */
public record StoredRun(
    String name,
    String caseText,
    Inputs inputs,
    Findings findings,
    Series series,
    Health health,
    List<Caution> cautions,
    Provenance provenance,
    Fields fields,
    TriangleMesh surface,
    DentSurface dents) {
  /** Without a dent. */
  public StoredRun(
      String name,
      String caseText,
      Inputs inputs,
      Findings findings,
      Series series,
      Health health,
      List<Caution> cautions,
      Provenance provenance,
      Fields fields,
      TriangleMesh surface) {
    this(
        name,
        caseText,
        inputs,
        findings,
        series,
        health,
        cautions,
        provenance,
        fields,
        surface,
        DentSurface.flat(surface));
  }

  public StoredRun {
    cautions = List.copyOf(cautions);
  }
}
