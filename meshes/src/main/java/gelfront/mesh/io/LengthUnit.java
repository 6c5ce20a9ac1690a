package gelfront.mesh.io;

/** Units that mesh files come in; the files themselves don't say. */
public enum LengthUnit {
  MM(1e-3),
  CM(1e-2),
  M(1),
  INCH(0.0254);

  private final double metres;

  LengthUnit(double metres) {
    this.metres = metres;
  }

  /** Length of one unit in metres. */
  public double metres() {
    return metres;
  }
}
