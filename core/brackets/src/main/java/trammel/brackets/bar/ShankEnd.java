package trammel.brackets.bar;

import trammel.brackets.material.EndFitting;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.hardware.ThreadForm;
import trammel.trade.tubes.BushedEnd;
import trammel.trade.tubes.ThreadedEnd;
import trammel.trade.tubes.ThreadedShank;
import trammel.trade.tubes.TubeEnd;

/**
 * How a joint of the catalog meets the tube. Of a threaded joint the catalog gives the shank and
 * its thread; neck, jam nut and weld-in tube end follow from them by common proportions (common
 * practice, no source).
 */
final class ShankEnd {
  /** Plain neck between barrel and thread, in thread diameters. */
  private static final double NECK = 0.3;

  /** Height of a jam nut, in thread diameters. */
  private static final double JAM_NUT = 0.56;

  /** Depth of full thread in the weld-in tube end, in thread diameters. */
  private static final double BORE = 2;

  /** Length of the weld-in tube end inside the tube, in thread diameters. */
  private static final double INSIDE = 1.5;

  /** Shoulder of the weld-in tube end outside the tube, 1/8 in. */
  private static final double SHOULDER_MM = 25.4 / 8;

  /** The pitch does not enter the length; about that of fine threads, in thread diameters. */
  private static final double PITCH = 0.08;

  private ShankEnd() {}

  static TubeEnd of(EndFitting end) {
    if (!end.threaded()) {
      return BushedEnd.square(2 * end.joint().barrelRadiusMm());
    }
    double threadMm = end.threadMm();
    double usableMm = end.shankMm() - end.joint().barrelRadiusMm() - NECK * threadMm;
    ThreadedShank shank =
        new ThreadedShank(
            end.title(),
            new ScrewThread(end.title(), ThreadForm.UNIFIED, threadMm, PITCH * threadMm),
            end.shankMm(),
            usableMm,
            JAM_NUT * threadMm);
    return ThreadedEnd.of(shank, SHOULDER_MM, INSIDE * threadMm, BORE * threadMm);
  }
}
