package trammel.assembly;

import java.util.Objects;
import trammel.trade.given.Given;

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
    Given.text(id, "Id of a weld", "Give it a name of its own.");
    Given.text(name, "Name of the weld '" + id + "'", "Give the name that the weld list uses.");
    Objects.requireNonNull(run, "run");
    Given.positive(sizeMm, 100, "Size of the weld '" + id + "' in mm", "Choose a fillet.");
    Given.text(position, "Position of the weld '" + id + "'", "Say how it lies.");
  }
}
