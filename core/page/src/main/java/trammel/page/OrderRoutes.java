package trammel.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.app.commands.OrderCommand;
import trammel.page.bench.Bench;
import trammel.page.folder.JobFolder;
import trammel.page.folder.Plain;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/** One order over several jobs of the folder, as {@code order} makes it. */
final class OrderRoutes {
  private static final String OUT = "order-";
  private static final int LONGEST_NAME = 80;

  private final JobFolder folder;
  private final Bench bench;
  private final News news;

  OrderRoutes(JobFolder folder, Bench bench, News news) {
    this.folder = folder;
    this.bench = bench;
    this.news = news;
  }

  void addTo(Routes routes) {
    routes.on("POST", "/api/order", this::order);
  }

  /** Works an order out; with {@code place} it is written, placed and taken off the rack. */
  private Answer order(Request request) throws Exception {
    ObjectNode json = request.json();
    boolean place = Plain.flag(json, "place");
    List<String> names = jobs(json);
    List<String> words = new ArrayList<>();
    for (String name : names) {
      words.add(folder.file(name).toString());
    }
    if (Plain.flag(json, "rack")) {
      words.add("--rack");
      if (!place) {
        words.add("--dry-run");
      } else if (Plain.flag(json, "anyway")) {
        words.add("--anyway");
      }
    }
    if (place) {
      words.addAll(List.of("--placed", "--out", folder.path().resolve(out(names)).toString()));
    }
    OrderCommand command = new OrderCommand();
    command.prepare(bench.reading());
    Map<String, Object> answer = Errand.run(command, words, "order");
    answer.put("folder", out(names));
    answer.put("placed", place && !isHeld(answer.get("order"), names, json));
    if (place) {
      bench.readAnew();
      news.changed();
    }
    return Answer.json(answer);
  }

  /**
   * With a job that cannot be used, or takes from the rack for one that a check stops, all stays.
   */
  private static boolean isHeld(Object order, List<String> names, ObjectNode json) {
    Map<?, ?> said = (Map<?, ?>) order;
    boolean leftOut = ((List<?>) said.get("jobs")).size() < names.size();
    boolean stopped = !((List<?>) said.get("stops")).isEmpty();
    return leftOut || stopped && Plain.flag(json, "rack") && !Plain.flag(json, "anyway");
  }

  /** A folder for each choice of jobs, since the papers of one never replace those of another. */
  private static String out(List<String> names) {
    List<String> stems =
        names.stream().map(name -> name.substring(0, name.lastIndexOf('.'))).sorted().toList();
    String all = String.join("+", stems);
    return OUT
        + (all.length() <= LONGEST_NAME
            ? all
            : all.substring(0, LONGEST_NAME) + "-" + Integer.toHexString(all.hashCode()));
  }

  private static List<String> jobs(ObjectNode json) {
    List<String> jobs = new ArrayList<>();
    if (json.find("jobs").orElse(null) instanceof ListNode list) {
      for (DocumentNode node : list.entries()) {
        jobs.add(node instanceof TextNode text ? text.text() : "");
      }
    }
    if (jobs.isEmpty()) {
      throw new Refused(400, "An order needs a job, or several.");
    }
    if (Set.copyOf(jobs).size() < jobs.size()) {
      throw new Refused(400, "An order names each job once.");
    }
    return jobs;
  }
}
