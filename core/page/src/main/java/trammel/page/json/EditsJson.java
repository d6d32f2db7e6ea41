package trammel.page.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.page.folder.Edit;
import trammel.page.folder.Plain;

/** Edits as a request for them has them. */
public final class EditsJson {
  private EditsJson() {}

  /** One entry an edit. */
  public static List<Object> of(List<Edit> edits) {
    List<Object> rows = new ArrayList<>();
    for (Edit edit : edits) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("path", edit.path());
      edit.from().map(Plain::of).ifPresent(from -> row.put("from", from));
      edit.to().map(Plain::of).ifPresent(to -> row.put("to", to));
      rows.add(row);
    }
    return rows;
  }
}
