package trammel.page.http;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** Serves the page and its answers on one port of this machine. */
public final class Server implements Closeable {
  /** Requests at work at once; every open page keeps one for its news. */
  private static final int MOST_AT_ONCE = 64;

  private static final String DEVICE = "X-Trammel-Device";
  private static final String NAME = "X-Trammel-Name";
  private static final int LONGEST_DEVICE = 40;

  /** As it is written in the header, with signs beyond ASCII in several. */
  private static final int LONGEST_NAME = 720;

  private final HttpServer server;
  private final ExecutorService threads;
  private final Assets assets;
  private final Routes routes;
  private final Gate gate;
  private final UnaryOperator<Handler> round;
  private final BiFunction<Request, Throwable, Answer> faults;

  /**
   * Opens the port and serves.
   *
   * @param address the address to answer on
   * @param port the port; 0 for any that is free
   * @param names further names under which this machine may be asked
   * @param keys who may ask
   * @param routes who answers
   * @param round what is put round each of them
   * @param faults makes an answer of what a handler threw
   * @throws IOException if the port is taken
   */
  public Server(
      InetAddress address,
      int port,
      List<String> names,
      Keys keys,
      Routes routes,
      UnaryOperator<Handler> round,
      BiFunction<Request, Throwable, Answer> faults)
      throws IOException {
    // Without it every answer waits 40 ms for a packet of the other side.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    // Whoever sends slower than this is cut off, seconds.
    System.setProperty("sun.net.httpserver.maxReqTime", "30");
    assets = new Assets();
    this.routes = routes;
    this.round = round;
    this.faults = faults;
    server = HttpServer.create(new InetSocketAddress(address, port), 0);
    gate = new Gate(keys, hosts(names));
    threads = threads();
    server.setExecutor(threads);
    server.createContext("/", this::serve);
    server.start();
  }

  private Set<String> hosts(List<String> names) {
    Set<String> hosts = new HashSet<>();
    hosts.add("127.0.0.1:" + port());
    hosts.add("localhost:" + port());
    for (String name : names) {
      hosts.add(name + ":" + port());
    }
    return hosts;
  }

  private static ExecutorService threads() {
    AtomicInteger count = new AtomicInteger();
    return new ThreadPoolExecutor(
        2,
        MOST_AT_ONCE,
        30,
        TimeUnit.SECONDS,
        new SynchronousQueue<>(),
        work -> {
          Thread thread = new Thread(work, "page " + count.incrementAndGet());
          thread.setDaemon(true);
          return thread;
        });
  }

  /** The port it answers on. */
  public int port() {
    return server.getAddress().getPort();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }

  private void serve(HttpExchange exchange) throws IOException {
    try (exchange) {
      send(exchange, answer(exchange));
    }
  }

  private Answer answer(HttpExchange exchange) throws IOException {
    String method = exchange.getRequestMethod();
    URI uri = exchange.getRequestURI();
    String path = uri.getRawPath() == null ? "/" : uri.getRawPath();
    Optional<Answer> refused = gate.refuse(method, path, exchange.getRequestHeaders());
    if (refused.isPresent()) {
      return refused.get();
    }
    if (path.equals("/")) {
      return assets.index();
    }
    if (path.startsWith("/web/")) {
      return assets.file(path.substring("/web/".length())).orElse(none());
    }
    Optional<Routes.Found> found = routes.find(method, path);
    if (found.isEmpty()) {
      return none();
    }
    byte[] body = exchange.getRequestBody().readNBytes(Gate.LARGEST_BODY + 1);
    if (body.length > Gate.LARGEST_BODY) {
      return Answer.refused(413, "A request is at most " + Gate.LARGEST_BODY / 1000 + " kB.");
    }
    Request request =
        new Request(
            found.get().parts(),
            query(uri.getRawQuery()),
            new String(body, StandardCharsets.UTF_8),
            device(exchange),
            name(exchange));
    try {
      return round.apply(found.get().handler()).answer(request);
    } catch (Exception | StackOverflowError thrown) {
      return faults.apply(request, thrown);
    }
  }

  private static Answer none() {
    return Answer.refused(404, "There is nothing here.");
  }

  private static String device(HttpExchange exchange) {
    String device = exchange.getRequestHeaders().getFirst(DEVICE);
    return device == null || device.length() > LONGEST_DEVICE ? "" : device;
  }

  private static String name(HttpExchange exchange) {
    String name = exchange.getRequestHeaders().getFirst(NAME);
    return name == null || name.length() > LONGEST_NAME ? "" : Routes.decoded(name).strip();
  }

  private static Map<String, String> query(String raw) {
    Map<String, String> query = new HashMap<>();
    for (String pair : raw == null ? new String[0] : raw.split("&")) {
      int is = pair.indexOf('=');
      if (is > 0) {
        query.put(Routes.decoded(pair.substring(0, is)), Routes.decoded(pair.substring(is + 1)));
      }
    }
    return query;
  }

  private void send(HttpExchange exchange, Answer answer) throws IOException {
    var headers = exchange.getResponseHeaders();
    headers.set("Content-Type", answer.type());
    headers.set("Content-Security-Policy", assets.policy());
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
    answer.headers().forEach(headers::set);
    exchange.sendResponseHeaders(answer.status(), answer.length() == 0 ? 0 : answer.length());
    try (OutputStream out = exchange.getResponseBody()) {
      answer.body().writeTo(out);
      // Before what is left of the request is waited for.
      out.flush();
    }
  }
}
