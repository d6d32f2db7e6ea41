package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;

/** The numbered set of sheets from which the floor builds. */
public final class ShopDrawings {
  private ShopDrawings() {}

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
