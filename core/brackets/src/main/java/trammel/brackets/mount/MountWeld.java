package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.SeamRun;
import trammel.brackets.work.LoadedMember;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.strength.Electrode;
import trammel.engine.strength.WeldRuns;
import trammel.trade.welding.FilletWeld;

/**
 * The weld of a mount under what springs, shocks or bars push it with. The mount is taken as stiff,
 * see {@link WeldRuns} for the method.
 */
public final class MountWeld {
  /** Chords of a curved seam stay this near to it (mm). */
  private static final double CHORD_MM = 0.5;

  private static final Vector3 NONE = new Vector3(0, 0, 0);

  private final String name;
  private final WeldRuns welds;
  private final double legMm;
  private final Map<String, Double> throatPerN = new LinkedHashMap<>();

  /**
   * @param name what is welded to what
   * @param runs where its fillets run
   * @param fillet the fillet of all of them
   */
  public MountWeld(String name, List<SeamRun> runs, FilletWeld fillet) {
    this.name = name;
    legMm = fillet.sizeMm();
    List<List<Point3>> lines = new ArrayList<>();
    for (SeamRun run : runs) {
      lines.addAll(run.path().stretches(CHORD_MM));
    }
    welds = new WeldRuns(lines);
  }

  /**
   * What one newton of a spring, shock or bar does.
   *
   * @param unit its name
   * @param force what it pushes the mount with (N for each N)
   * @param at where (mm)
   */
  public MountWeld under(String unit, Vector3 force, Point3 at) {
    return under(unit, force, at, NONE);
  }

  /**
   * What one newton of a spring, shock or bar does.
   *
   * @param unit its name
   * @param force what it pushes the mount with (N for each N)
   * @param at where (mm)
   * @param moment what it turns the mount with besides (Nmm for each N)
   */
  public MountWeld under(String unit, Vector3 force, Point3 at, Vector3 moment) {
    throatPerN.put(unit, welds.throatMPa(force, at, moment, legMm));
    return this;
  }

  /**
   * The weld as a loaded part.
   *
   * @param how how it is loaded
   */
  public LoadedMember member(String how) {
    return new LoadedMember(
        name, LoadedMember.Kind.WELD, throatPerN, Electrode.E70.allowableThroatMPa(), how);
  }
}
