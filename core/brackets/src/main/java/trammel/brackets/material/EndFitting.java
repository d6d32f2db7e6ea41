package trammel.brackets.material;

import trammel.engine.layout.Joint;
import trammel.engine.quantity.Given;

/**
 * A joint with which a bar can end, by generic size.
 *
 * @param key the name by which options and plans ask for it, also the key of its priced item
 * @param title what it is
 * @param joint the joint as the engine sees it
 * @param threaded true for a joint with a shank that screws into the tube, false for a barrel that
 *     is welded to it
 * @param shankMm from the joint's centre to the end of its thread (mm) for a threaded joint, the
 *     barrel's outside radius for a welded one
 * @param threadMm major diameter of the shank's thread (mm), 0 for a welded barrel
 * @param tubeEndKey key of the threaded weld-in tube end that takes the shank; empty for a barrel
 * @param jamNutKey key of the jam nut; empty for a barrel
 */
public record EndFitting(
    String key,
    String title,
    Joint joint,
    boolean threaded,
    double shankMm,
    double threadMm,
    String tubeEndKey,
    String jamNutKey) {
  public EndFitting {
    Given.text("key of a joint", key, "Give it a short name.");
    Given.text("title of joint '" + key + "'", title, "Say what it is.");
    Given.present("joint '" + key + "'", joint, "Give its figures.");
    Given.positive("shank of joint '" + key + "' in mm", shankMm, 1000, "", "Measure it.");
    Given.within("thread of joint '" + key + "' in mm", threadMm, 0, 100, "", "0 for a barrel.");
    Given.present("tube end of joint '" + key + "'", tubeEndKey, "Empty for a barrel.");
    Given.present("jam nut of joint '" + key + "'", jamNutKey, "Empty for a barrel.");
  }
}
