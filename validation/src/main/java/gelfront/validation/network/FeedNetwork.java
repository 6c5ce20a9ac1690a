// SPDX-License-Identifier: Apache-2.0
package gelfront.validation.network;

import gelfront.validation.network.FeedDesign.Kind;
import gelfront.validation.network.FeedDesign.Slice;
import java.util.Arrays;
import java.util.List;

/**
 * Feeding through a chain of cooled tubes, one-dimensional in pressure and rate.
 *
 * <pre>
 *   flow:    Hagen and Poiseuille in each slice, viscosity varying with the radius; Sampson's ends
 *   demand:  S = sum over rings of beta (max(T0, Tnf) - max(T1, Tnf)) V m / dt
 *   heat:    Graetz's problem with storage, on rings:
 *            dT/dt + u dT/dx + v dT/dr = alpha (1/r d(r dT/dr)/dr + d2T/dx2)
 * </pre>
 *
 * <p>Graetz's problem: Shah and London, Laminar Flow Forced Convection in Ducts (1978). Ends: 3 eta
 * Q / R^3 for both ends of a narrow tube between wide ones, Sampson (1891), and Dagan, Weinbaum and
 * Pfeffer (1982) for tubes of any length; all from memory. A closure by Graetz's steady series
 * alone would miss that a gate begins hot all over. The mouth gives liquid as hot as the shot, at
 * the air's pressure; the wall's temperature is kept; no weight.
 */
public final class FeedNetwork {
  private final Melt melt;
  private final boolean carries;
  private final Rings[] rings;
  private final Stream[] streams;
  private final Joints joints;
  private final double[][] shrinks;
  private final double[] given;
  private final int firstOfPart;
  private double time;
  private double demand;
  private double unfed;
  private double share = 1;
  private double half = Double.NaN;

  /**
   * @param carries whether the flow carries heat
   */
  public FeedNetwork(FeedDesign design, Melt melt, boolean carries) {
    this.melt = melt;
    this.carries = carries;
    List<Slice> slices = design.slices();
    int n = slices.size();
    rings = new Rings[n];
    streams = new Stream[n];
    Arrays.setAll(rings, i -> new Rings(slices.get(i), melt));
    joints = new Joints(slices, melt);
    shrinks = new double[n][Rings.COUNT];
    given = new double[n];
    firstOfPart = (int) slices.stream().takeWhile(s -> s.kind() != Kind.PART).count();
  }

  /**
   * What the part needed and got.
   *
   * @param demandPercent contraction above no-flow, of the part's volume
   * @param unfedPercent what of that nothing came for, of the part's volume
   * @param half s at which the fed share of the moment falls below one half for the last time
   */
  public record Outcome(double demandPercent, double unfedPercent, double half) {
    public double fedShare() {
      return 1 - unfedPercent / demandPercent;
    }
  }

  /** Until all of the part has set. */
  public Outcome run() {
    while (Arrays.stream(rings).skip(firstOfPart).anyMatch(Rings::flows)) {
      step(Math.min(0.05, 0.004 + 0.02 * time));
    }
    double part = 0;
    for (int i = firstOfPart; i < rings.length; i++) {
      part += sum(rings[i].volume);
    }
    return new Outcome(100 * demand / part, 100 * unfed / part, half);
  }

  private void step(double dt) {
    conduct(dt);
    Arrays.fill(given, 1);
    int joined = Joints.joined(rings);
    if (joined > firstOfPart) {
      flow(joined, dt);
    }
    book(dt);
  }

  private void conduct(double dt) {
    double[][] gains = joints.along(rings);
    for (int i = 0; i < rings.length; i++) {
      double[] before = rings[i].t.clone();
      rings[i].conduct(dt, gains[i]);
      for (int k = 0; k < Rings.COUNT; k++) {
        double fall = Math.max(before[k], melt.noFlow()) - Math.max(rings[i].t[k], melt.noFlow());
        double v = rings[i].volume[k] * rings[i].mass[k];
        shrinks[i][k] = Math.max(0, melt.expansion() * fall * v / dt);
      }
    }
  }

  private void flow(int joined, double dt) {
    double[] draws = new double[joined];
    for (int i = 0; i < joined; i++) {
      streams[i] = new Stream(rings[i], melt, joints.funnel[i]);
      draws[i] = sum(shrinks[i]);
    }
    Pull pull = new Pull(conductances(joined), draws, melt.bears());
    System.arraycopy(pull.given, 0, given, 0, joined);
    for (int i = 0; i < joined && carries; i++) {
      double fed = 1 - given[i];
      double[] comes = Arrays.stream(shrinks[i]).map(s -> s * fed).toArray();
      Carry carry =
          i == 0
              ? Carry.fromMouth(streams[0], pull.rate[0], melt.hot())
              : Carry.fromSlice(rings[i - 1], streams[i - 1], streams[i], pull.rate[i]);
      carry.into(rings[i], streams[i], pull.rate[i + 1], comes, dt);
    }
  }

  /** m3/(Pa s) into each slice from the one before, the first from the mouth. */
  private double[] conductances(int joined) {
    double[] all = new double[joined];
    double before = 0;
    for (int i = 0; i < joined; i++) {
      double own = 0.5 * rings[i].length / streams[i].mobility;
      double end = i > 0 ? joints.end(i - 1, rings, streams) : 0;
      all[i] = 1 / (before + end + own);
      before = own;
    }
    return all;
  }

  private static double sum(double[] a) {
    return Arrays.stream(a).sum();
  }

  private void book(double dt) {
    double needs = 0;
    double lacks = 0;
    for (int i = firstOfPart; i < rings.length; i++) {
      double s = sum(shrinks[i]) * dt;
      needs += s;
      lacks += s * given[i];
    }
    double now = needs > 0 ? 1 - lacks / needs : 0;
    if (share >= 0.5 && now < 0.5) {
      half = time + dt * (share - 0.5) / (share - now);
    }
    share = now;
    time += dt;
    demand += needs;
    unfed += lacks;
  }
}
