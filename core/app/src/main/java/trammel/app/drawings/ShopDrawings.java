package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The numbered set of sheets from which the floor builds. */
public final class ShopDrawings {
  private ShopDrawings() {}

  /** By which letter or number the sheets of a rail mark what is on it. */
  public static Map<String, String> railMarks(ShopJob job, boolean left) {
    return new RailSheets(job, left).marks();
  }

  /** By which letter the sheet of the axle marks what is on it. */
  public static Map<String, String> axleMarks(ShopJob job) {
    return job.letters();
  }

  /**
   * The sheets of a job, the arrangement first.
   *
   * @param job what is drawn
   * @param arrangement the finished job on one sheet
   */
  public static List<Drawing> of(ShopJob job, ArrangementSheet arrangement) {
    List<SheetPage> pages = new ArrayList<>();
    pages.addAll(new AxleSheets(job).pages());
    pages.addAll(new RailSheets(job, true).pages());
    pages.addAll(new RailSheets(job, false).pages());
    pages.addAll(new BracketSheets(job).pages());
    pages.addAll(new BarSheets(job).pages());
    int count = pages.size() + 1;
    List<Drawing> sheets = new ArrayList<>();
    sheets.add(arrangement.of(1, count));
    for (SheetPage page : pages) {
      sheets.add(
          new ShopSheet(
              job.units(),
              arrangement.block().of(page.title(), sheets.size() + 1, count),
              page.scale(),
              page.notes(),
              page.body()));
    }
    return sheets;
  }
}
