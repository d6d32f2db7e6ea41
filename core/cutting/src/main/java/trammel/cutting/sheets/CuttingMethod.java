package trammel.cutting.sheets;

/** How a sheet is taken apart. */
public enum CuttingMethod {
  /** Plasma, laser or torch: any outline can be cut. */
  FREE,
  /** Shear: every cut goes right across what is left, from edge to edge. */
  GUILLOTINE
}
