package trammel.page;

import java.io.Closeable;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import trammel.app.desk.EarlyReading;
import trammel.ledger.Writer;
import trammel.page.bench.Bench;
import trammel.page.folder.JobFolder;
import trammel.page.http.Handler;
import trammel.page.http.Keys;
import trammel.page.http.Routes;
import trammel.page.http.Server;
import trammel.page.shop.ShopTables;

/** The page of one folder of jobs, served until it is closed. */
public final class Page implements Closeable {
  private final Server server;
  private final News news;
  private final Keys keys;
  private final Searches searches = new Searches();

  /**
   * How a page is served.
   *
   * @param address the address to answer on
   * @param port the port; 0 for any that is free
   * @param names further names of this machine under which other devices ask
   * @param lan whether other devices are let in
   */
  public record Settings(InetAddress address, int port, List<String> names, boolean lan) {
    public Settings {
      names = List.copyOf(names);
    }
  }

  /**
   * Serves the jobs of a folder.
   *
   * @throws IOException if the port is taken
   */
  public Page(Path folder, EarlyReading reading, Settings settings) throws IOException {
    JobFolder jobs = new JobFolder(folder);
    Bench bench = new Bench(jobs.path(), reading);
    keys = new Keys(Instant::now);
    news = new News(jobs, bench::refresh);
    Routes routes = new Routes();
    new JobRoutes(jobs, bench, news).addTo(routes);
    new ArrangeRoutes(jobs, bench, searches).addTo(routes);
    new TrayRoutes(jobs, bench).addTo(routes);
    new PaperRoutes(jobs, bench).addTo(routes);
    new FloorRoutes(jobs, bench).addTo(routes);
    new OrderRoutes(jobs, bench, news).addTo(routes);
    new BookRoutes(jobs.path(), bench, news).addTo(routes);
    new TableRoutes(new ShopTables(jobs.path(), bench), news).addTo(routes);
    new ShopRoutes(jobs, bench, keys, news, settings.lan()).addTo(routes);
    server =
        new Server(
            settings.address(),
            settings.port(),
            settings.names(),
            keys,
            routes,
            Page::signed,
            Faults::answer);
  }

  /** What a request writes into the ledger bears the name that was given on its device. */
  private static Handler signed(Handler handler) {
    return request ->
        Writer.as(
            request.who().isEmpty() ? "the page" : request.who(), () -> handler.answer(request));
  }

  /** The port it answers on. */
  public int port() {
    return server.port();
  }

  /** The key that its first browser needs. */
  public String key() {
    return keys.first();
  }

  /** The code that lets another device in. */
  public String code() {
    return keys.code();
  }

  @Override
  public void close() {
    searches.stop();
    news.close();
    server.close();
  }
}
