package trammel.assembly;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * One weld of the finished vehicle.
 *
 * @param id its own name
 * @param name the line of the weld list that it belongs to
 * @param run what it joins and where it runs
 * @param sizeMm leg of a fillet, or the size of another joint (mm), above 0
 * @param position how it lies when it is welded
 */
public record PlacedSeam(String id, String name, SeamRun run, double sizeMm, String position) {
  public PlacedSeam {
    Given.text("id of a weld", id, "Give it a name of its own.");
    Given.text("name of the weld '" + id + "'", name, "Give the name that the weld list uses.");
    Objects.requireNonNull(run, "run");
    Given.positive("size of the weld '" + id + "' in mm", sizeMm, 100, "", "Choose a fillet.");
    Given.text("position of the weld '" + id + "'", position, "Say how it lies.");
  }
}
