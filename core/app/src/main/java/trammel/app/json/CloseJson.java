package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.learning.LearnedHours;
import trammel.planning.learning.QuoteRecord;

/** What closing a job taught, for machines. */
public final class CloseJson {
  private CloseJson() {}

  /** Factors before and after, and how past quotes did. */
  public static Map<String, Object> of(
      ClosedJob job, LearnedHours before, LearnedHours after, QuoteRecord record) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", job.number());
    json.put("closed", job.closed().toString());
    json.put("quoted_hours", job.quotedHours());
    json.put("quoted_eight_of_ten_hours", job.quotedEightOfTen());
    job.wholeHours().ifPresent(hours -> json.put("used_hours", hours));
    List<Object> operations = new ArrayList<>();
    for (ClosedOperation operation : job.operations()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("operation", operation.key());
      row.put("factor_before", before.factor(operation.key()));
      row.put("factor_now", after.factor(operation.key()));
      row.put("factor_deviation", after.factorDeviation(operation.key()));
      row.put("jobs", after.jobs(operation.key()));
      operations.add(row);
    }
    json.put("operations", operations);
    json.put("spread", after.scatter());
    json.put("quotes", record.jobs());
    json.put("quotes_within_eight_of_ten", record.within());
    return json;
  }
}
