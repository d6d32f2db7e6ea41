package trammel.brackets.work;

import java.util.List;
import trammel.assembly.FlatPath;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;

/** The weld of a tab that stands upright on what carries it: along its foot on both faces. */
public final class TabFoot {
  private TabFoot() {}

  /**
   * The runs of one tab.
   *
   * @param tab its id
   * @param onto id of what carries it
   * @param plane its middle plane: x along the foot from its middle, z across its thickness
   * @param footMm length of the foot (mm)
   * @param thicknessMm of the tab (mm)
   */
  public static List<SeamRun> runs(
      String tab, String onto, Place plane, double footMm, double thicknessMm) {
    return List.of(
        run(tab, onto, plane.shifted(0, 0, thicknessMm / 2), footMm),
        run(tab, onto, plane.shifted(0, 0, -thicknessMm / 2), footMm));
  }

  private static SeamRun run(String tab, String onto, Place face, double footMm) {
    return new SeamRun(tab, onto, FlatPath.line(face, -footMm / 2, 0, footMm / 2, 0));
  }
}
