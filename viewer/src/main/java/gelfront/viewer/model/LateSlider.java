package gelfront.viewer.model;

import gelfront.result.Fields;

/** The time before which set cells are hidden. */
public final class LateSlider {
  private static final int STEPS = 40;

  private final double latest;
  private int step;

  /**
   * @param start s from which cells are shown at first; the skin sets at once and hides the rest
   */
  public LateSlider(Fields fields, double start) {
    latest = VoxelFaces.latest(fields);
    if (latest > 0 && Double.isFinite(start)) {
      move((int) Math.ceil(STEPS * start / latest));
    }
  }

  /** Moves by so many steps, within the run; returns whether anything changed. */
  public boolean move(int by) {
    int to = Math.max(0, Math.min(STEPS - 1, step + by));
    boolean changed = to != step;
    step = to;
    return changed;
  }

  /** s from which cells are shown. */
  public double from() {
    return latest * step / STEPS;
  }

  /** s at which the last cell sets. */
  public double latest() {
    return latest;
  }
}
