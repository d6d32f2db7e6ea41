package trammel.page.shop;

import java.util.List;
import trammel.page.folder.Edit;

/** Something of the shop's whose cells can be changed and changed back. */
interface ShopTable {
  /**
   * A cell that is not what whoever changes it saw.
   *
   * @param path the cell
   * @param now what it says now
   */
  record Conflict(String path, Object now) {}

  /** Those cells that are neither as they were seen nor as they are to be. */
  List<Conflict> conflicts(List<Edit> asked);

  /**
   * Makes changes that conflict with nothing.
   *
   * @return what was written, so that it can be taken back
   */
  List<Edit> make(List<Edit> asked);

  /** Makes those of the noted changes again whose cells still are as they say. */
  void repeat(List<Edit> noted);
}
