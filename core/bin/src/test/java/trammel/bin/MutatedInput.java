package trammel.bin;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** A command with one thing of its input spoilt, as a seed has it: a file, a line, a word. */
final class MutatedInput {
  private static final List<String> NASTY =
      List.of(
          "",
          "''",
          "null",
          "~",
          "-1",
          "0",
          "0 in",
          "-3 in",
          "1e308",
          "NaN",
          "1/0 in",
          "29 1/2",
          "9999999999999999999999",
          "1,5 in",
          "[]",
          "{}",
          "[1 in, 2 in]",
          "{forward: 1 in}",
          "🔧",
          "\u202e",
          "\u0000",
          "\u0007",
          "=1+1",
          "../../x",
          "yes",
          "2026-02-30",
          "50 %",
          "-0.001 %",
          "30 deg",
          "30 deg from frame",
          "118 kg",
          "&a b",
          "*a",
          "!!x y",
          "a: b: c",
          "\"",
          "'",
          "#");
  private static final List<String> WORDS =
      List.of(
          "--units",
          "us",
          "metric",
          "--json",
          "",
          "-",
          "--",
          "--no-such",
          "-x",
          "--vary",
          "chosen.ride.bump=1 in,9 in",
          "chosen.spring=",
          "=",
          "--date",
          "2026-13-01",
          "--quiet",
          "--why",
          "tax",
          "no such line",
          "--rack",
          "--dry-run",
          "--time",
          "-5",
          "NaN",
          "🔩",
          "help",
          "--samples");

  private final Random random;
  private final Path folder;
  private final List<String> words = new ArrayList<>();
  private String spoilt = "";

  private MutatedInput(long seed, Path folder) {
    this.random = new Random(seed * 0x9E3779B97F4A7C15L + 1);
    this.folder = folder;
  }

  /**
   * Lays the input of a seed out in an empty folder.
   *
   * @param home the copy whose demo jobs and catalog are spoilt
   */
  static MutatedInput of(long seed, Path home, Path folder) throws IOException {
    MutatedInput input = new MutatedInput(seed, folder);
    input.layOut(home);
    return input;
  }

  /** Whether a word was put among those of the command. */
  boolean hasSpoiltWords() {
    return spoilt.equals("words");
  }

  /** The command's words. */
  String[] words() {
    return words.toArray(new String[0]);
  }

  @Override
  public String toString() {
    return String.join(" ", words) + " [" + spoilt + "]";
  }

  private void layOut(Path home) throws IOException {
    String demo = random.nextBoolean() ? "pickup" : "sedan";
    Path job = folder.resolve("job.yaml");
    Files.copy(home.resolve("catalogs/demo").resolve(demo + ".yaml"), job);
    int kind = random.nextInt(20);
    if (kind < 11) {
      spoil(job, 1 + random.nextInt(3));
      command(job);
    } else if (kind < 15) {
      catalog(home);
      command(job);
    } else if (kind < 17) {
      table(home, job);
    } else if (kind < 19) {
      command(job);
      words.add(random.nextInt(words.size() + 1), pick(WORDS));
      spoilt = "words";
    } else {
      Path linkage = folder.resolve("linkage.yaml");
      Files.copy(home.resolve("docs/example-linkage.yaml"), linkage);
      spoil(linkage, 1 + random.nextInt(3));
      words.addAll(List.of("motion", linkage.toString()));
    }
  }

  private void command(Path job) {
    String command =
        pick(List.of("check", "check", "plan", "plan", "fitup", "order", "travel", "quote"));
    words.add(command);
    words.add(job.toString());
    if (random.nextInt(4) == 0) {
      words.add("--json");
    }
    boolean writes = command.equals("fitup") || command.equals("order") || command.equals("travel");
    if (writes && random.nextBoolean() || command.equals("quote") && random.nextInt(12) == 0) {
      words.addAll(List.of("--out", folder.resolve("out").toString()));
    }
  }

  private void catalog(Path home) throws IOException {
    Path shop = Files.createDirectory(folder.resolve("catalog"));
    List<Path> standard;
    try (Stream<Path> files = Files.list(home.resolve("catalogs/standard"))) {
      standard = files.sorted().toList();
    }
    Path file = standard.get(random.nextInt(standard.size()));
    Path copy = shop.resolve(file.getFileName().toString());
    Files.copy(file, copy);
    spoil(copy, 1 + random.nextInt(2));
  }

  private void table(Path home, Path job) throws IOException {
    Path rack = folder.resolve("rack.csv");
    Files.copy(home.resolve("catalogs/demo/rack.csv"), rack);
    spoil(rack, 1 + random.nextInt(2));
    switch (random.nextInt(3)) {
      case 0 -> words.addAll(List.of("tacked", job.toString(), rack.toString()));
      case 1 -> words.addAll(List.of("close", job.toString(), rack.toString()));
      default -> words.addAll(List.of("order", job.toString(), "--rack", rack.toString()));
    }
  }

  private void spoil(Path file, int times) throws IOException {
    StringBuilder text = new StringBuilder(Files.readString(file));
    for (int i = 0; i < times; i++) {
      spoil(text);
    }
    spoilt = file.getFileName() + ": " + spoilt;
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(40) == 0 && bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] = (byte) (128 + random.nextInt(128));
      spoilt += "a byte that is no UTF-8";
    }
    Files.write(file, bytes);
  }

  private void spoil(StringBuilder text) {
    if (text.length() < 2) {
      return;
    }
    switch (random.nextInt(8)) {
      case 0 -> {
        int at = random.nextInt(text.length());
        text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(5)));
        spoilt += "signs taken out at " + at + "; ";
      }
      case 1 -> {
        int at = random.nextInt(text.length());
        text.insert(at, pick(NASTY));
        spoilt += "signs put in at " + at + "; ";
      }
      case 2 -> line(text);
      case 3, 4 -> value(text);
      default -> number(text);
    }
  }

  /** A line is said twice, or not at all. */
  private void line(StringBuilder text) {
    int start = text.lastIndexOf("\n", random.nextInt(text.length())) + 1;
    int end = text.indexOf("\n", start);
    end = end < 0 ? text.length() : end + 1;
    if (random.nextBoolean()) {
      text.insert(start, text.substring(start, end));
      spoilt += "a line twice at " + start + "; ";
    } else {
      text.delete(start, end);
      spoilt += "a line taken out at " + start + "; ";
    }
  }

  /** What stands behind a colon or a comma is something else. */
  private void value(StringBuilder text) {
    int at = text.indexOf(random.nextInt(3) == 0 ? "," : ":", random.nextInt(text.length()));
    if (at > 0) {
      int end = at + 1;
      while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
        end++;
      }
      String nasty = pick(NASTY);
      text.replace(at + 1, end, " " + nasty);
      spoilt += "'" + nasty + "' for a value at " + at + "; ";
    }
  }

  /** A number is another, mostly one that could be meant. */
  private void number(StringBuilder text) {
    int at = random.nextInt(text.length());
    while (at < text.length() && !Character.isDigit(text.charAt(at))) {
      at++;
    }
    int end = at;
    while (end < text.length()
        && (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.')) {
      end++;
    }
    if (at < end) {
      String number = text.substring(at, end);
      String other = other(number);
      text.replace(at, end, other);
      spoilt += other + " for " + number + " at " + at + "; ";
    }
  }

  private String other(String number) {
    try {
      double value = Double.parseDouble(number);
      double factor =
          List.of(0.0, 0.1, 0.5, 0.8, 0.95, 1.05, 1.25, 2.0, 10.0).get(random.nextInt(9));
      double changed = Math.rint(value * factor * 1000) / 1000;
      return changed == Math.rint(changed)
          ? Long.toString((long) changed)
          : Double.toString(changed);
    } catch (NumberFormatException date) {
      return "7";
    }
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
