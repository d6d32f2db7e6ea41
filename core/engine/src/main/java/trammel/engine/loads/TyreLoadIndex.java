package trammel.engine.loads;

import trammel.engine.quantity.Given;

/**
 * What a tyre may carry by the load index on its sidewall. Source: list of load indices of the
 * European Tyre and Rim Technical Organisation and the Tire and Rim Association, as tyre dealers
 * print it.
 */
public final class TyreLoadIndex {
  /** The least index of the list. */
  public static final int LEAST = 60;

  /** A passenger tyre on a truck carries its load divided by this: FMVSS 120 S5.1.2. */
  public static final double PASSENGER_ON_TRUCK = 1.10;

  private static final int[] KG = {
    250, 257, 265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425,
    437, 450, 462, 475, 487, 500, 515, 530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730,
    750, 775, 800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090, 1120, 1150, 1180,
    1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700
  };

  private TyreLoadIndex() {}

  /** The largest index of the list. */
  public static int most() {
    return LEAST + KG.length - 1;
  }

  /**
   * Load of one tyre.
   *
   * @param index its load index, {@value #LEAST} to 126
   * @return load (kg)
   */
  public static double kg(int index) {
    return KG[Given.count("load index", index, LEAST, most(), "Read it off the sidewall.") - LEAST];
  }
}
