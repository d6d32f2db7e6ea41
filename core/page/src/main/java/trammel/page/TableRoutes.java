package trammel.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.page.shop.ShopTables;

/** What is asked about the shop's own tables: looking at them, changing them, taking back. */
final class TableRoutes {
  private static final int CONFLICT = 409;

  private final ShopTables tables;
  private final News news;

  TableRoutes(ShopTables tables, News news) {
    this.tables = tables;
    this.news = news;
  }

  void addTo(Routes routes) {
    routes
        .on("GET", "/api/tables", request -> Answer.json(tables.catalog(request.device())))
        .on("GET", "/api/tables/prices", request -> Answer.json(tables.prices(request.device())))
        .on("GET", "/api/tables/stock", request -> Answer.json(tables.stock(request.device())))
        .on("POST", "/api/tables/edit", this::edit)
        .on("POST", "/api/tables/undo", this::undo)
        .on("POST", "/api/tables/redo", this::redo)
        .on("POST", "/api/tables/prices/list", this::list);
  }

  private Answer edit(Request request) {
    List<Map<String, Object>> conflicts = tables.make(request.device(), request.json());
    if (conflicts.isEmpty()) {
      return done();
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("refused", "It was changed elsewhere while it was changed here.");
    json.put("conflicts", conflicts);
    return Answer.json(CONFLICT, json);
  }

  private Answer undo(Request request) {
    tables.undo(request.device());
    return done();
  }

  private Answer redo(Request request) {
    tables.redo(request.device());
    return done();
  }

  private Answer done() {
    news.changed();
    return Answer.json(Map.of("done", true));
  }

  /** What a supplier's list would change, or has changed. */
  private Answer list(Request request) {
    Map<String, Object> answer = tables.list(request.json());
    if (Boolean.TRUE.equals(answer.get("written"))) {
      news.changed();
    }
    return Answer.json(answer);
  }
}
