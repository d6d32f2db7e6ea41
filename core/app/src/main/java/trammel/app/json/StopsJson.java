package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.text.Stops;

/** What checks say stop to, for machines: the same field under every answer. */
public final class StopsJson {
  /** Name of the field. */
  /** The name that they have in every document. */
  public static final String FIELD = "stops";

  private StopsJson() {}

  /** One entry a stop; none where nothing says stop. */
  public static List<Object> of(Stops stops) {
    List<Object> rows = new ArrayList<>();
    for (Stops.Stop stop : stops.all()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("job", stop.job());
      row.put("check", stop.check());
      row.put("words", stop.words());
      rows.add(row);
    }
    return rows;
  }
}
