package trammel.app.cutfile;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import trammel.app.cutfile.CutFields.Rule;
import trammel.app.files.FormerNames;
import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.bars.BarPiece;
import trammel.cutting.bars.BarStock;
import trammel.cutting.outlines.NestingProblem;
import trammel.cutting.outlines.NestingStripProblem;
import trammel.cutting.outlines.OutlinePart;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;
import trammel.cutting.sheets.StripProblem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;

/** Reads a cut file field by field and collects everything that is wrong with it. */
public final class CutFileReader {
  private static final Rule SIZE = new Rule("0.000001", "1000000", 6, "500");
  private static final Rule LOSS = new Rule("0", "1000000", 6, "2");
  private static final Rule PRICE = new Rule("0", "10000000", 4, "88.50");
  private static final Rule QUANTITY = new Rule("1", "100000", 0, "4");
  private static final Rule AVAILABLE = new Rule("0", "1000000", 0, "3");

  /** A list of a hundred thousand different pieces takes some megabytes. */
  private static final int LARGEST_BYTES = 20_000_000;

  private static final int MOST_ENTRIES = 100_000;
  private static final int MOST_SECTIONS = 1000;
  private static final int MOST_PIECES = 200_000;
  private static final int MOST_PARTS = 10_000;

  private static final String BAR =
      "{\"id\": \"240 in\", \"length\": 240, \"price\": 88," + " \"available\": null}";
  private static final String SHEET =
      "{\"id\": \"48x24\", \"width\": 48, \"height\": 24," + " \"price\": 88, \"available\": null}";
  private static final String PIECE = "{\"length\": 36.5, \"qty\": 4}";
  private static final String PART = "{\"w\": 4, \"h\": 6.5, \"qty\": 4}";
  private static final String SECTION =
      "{\"section\": \"2 x 0.120\", \"kerf\": 0.0625, \"stock\": [...], \"pieces\": [...]}";

  /** Keys that say where a file comes from; they are not used. */
  private static final List<String> ABOUT =
      List.of(
          "family",
          "source",
          "licence",
          "license",
          "reference",
          "note",
          "title",
          "description",
          "objective",
          "best",
          "thickness",
          "totalArea");

  private final Problems problems = new Problems();
  private final CutFields fields = new CutFields(problems);
  private String unit = "";

  private CutFileReader() {}

  /**
   * Reads a file whose name ends with {@code .json}, {@code .yaml} or {@code .yml}.
   *
   * @throws BadInputException with everything that is wrong with it, line by line
   */
  public static CutFile read(Path path) {
    return new CutFileReader().file(DocumentReader.read(path, LARGEST_BYTES));
  }

  private CutFile file(ObjectNode written) {
    ObjectNode document = FormerNames.replaced(written, CutFile.FORMER);
    String format = fields.word(document, "format", CutFile.FORMATS);
    problems.throwIfErrors();
    String name = fields.text(document, "name", "\"links\"");
    unit = fields.text(document, "unit", "\"mm\"");
    CutTask task =
        switch (format) {
          case CutFile.BARS -> bars(document);
          case CutFile.BAR_JOB -> barJob(document);
          case CutFile.RECTANGLES -> rectangles(document);
          default -> outlines(document);
        };
    problems.throwIfErrors();
    return new CutFile(format, name, unit, task, problems.warnings());
  }

  private static List<String> topKeys(String... own) {
    List<String> keys = new ArrayList<>(List.of("format", "name", "unit", "kerf"));
    keys.addAll(List.of(own));
    keys.addAll(ABOUT);
    return keys;
  }

  // Bars

  private CutTask bars(ObjectNode document) {
    fields.remarkOnOtherKeys(document, topKeys("stock", "pieces"));
    BigDecimal kerf = fields.number(document, "kerf", LOSS);
    CutTask.Section section = section("", kerf, document);
    return new CutTask.Bars(List.of(section));
  }

  private CutTask barJob(ObjectNode document) {
    fields.remarkOnOtherKeys(document, topKeys("sections"));
    Map<String, Location> names = new HashMap<>();
    List<CutTask.Section> sections = new ArrayList<>();
    for (ObjectNode group : fields.groups(document, "sections", MOST_SECTIONS, SECTION)) {
      List<String> keys = new ArrayList<>(List.of("section", "kerf", "stock", "pieces"));
      keys.addAll(ABOUT);
      fields.remarkOnOtherKeys(group, keys);
      String name = fields.text(group, "section", "\"DOM round tube 1.75 x 0.120\"");
      requireNew(names, name, CutFields.place(group, "section"), "section");
      boolean own = CutFields.given(group, "kerf").isPresent();
      boolean shared = !own && CutFields.given(document, "kerf").isPresent();
      BigDecimal kerf = fields.number(shared ? document : group, "kerf", LOSS);
      sections.add(section(name, kerf, group));
    }
    return new CutTask.Bars(sections);
  }

  private void requireNew(Map<String, Location> seen, String name, Location place, String what) {
    Location before = seen.putIfAbsent(name, place);
    if (before != null && !name.isEmpty()) {
      problems.error(
          place,
          "the " + what + " '" + name + "' a second time",
          "each " + what + " once; it stands first in line " + before.line(),
          "Rename one of the two, or put them together.");
    }
  }

  private CutTask.Section section(String name, BigDecimal kerf, ObjectNode group) {
    List<BarStock> stock = barStock(group);
    double longest = 0;
    for (BarStock bar : stock) {
      longest = bar.available().orElse(1) > 0 ? Math.max(longest, bar.lengthMm()) : longest;
    }
    List<BarPiece> pieces = new ArrayList<>();
    long total = 0;
    for (ObjectNode entry : fields.groups(group, "pieces", MOST_ENTRIES, PIECE)) {
      fields.remarkOnOtherKeys(entry, List.of("length", "qty", "id", "label", "note"));
      BigDecimal length = fields.number(entry, "length", SIZE);
      int quantity = fields.count(entry, "qty", QUANTITY);
      total += quantity;
      if (!problems.hasErrors() && length.doubleValue() > longest) {
        problems.error(
            CutFields.place(entry, "length"),
            length.toPlainString(),
            "at most " + plain(longest) + " (" + unit + "), the longest stock available",
            "Add a longer stock length, or splice the piece.");
      }
      if (!problems.hasErrors()) {
        pieces.add(new BarPiece(length.toPlainString(), length.doubleValue(), quantity));
      }
    }
    requireAtMost(total, MOST_PIECES, CutFields.place(group, "pieces"));
    Location place = CutFields.place(group, "stock");
    BarCuttingProblem problem =
        problems.hasErrors()
            ? new BarCuttingProblem(List.of(), List.of(), 0, 0, 0)
            : new BarCuttingProblem(stock, pieces, kerf.doubleValue(), 0, 0);
    return new CutTask.Section(name, problem, place);
  }

  private List<BarStock> barStock(ObjectNode group) {
    Map<String, String> seen = new HashMap<>();
    List<BarStock> stock = new ArrayList<>();
    for (ObjectNode entry : fields.groups(group, "stock", MOST_ENTRIES, BAR)) {
      fields.remarkOnOtherKeys(
          entry, List.of("id", "length", "price", "available", "remnant", "note"));
      String id = fields.text(entry, "id", "\"240 in\"");
      BigDecimal length = fields.number(entry, "length", SIZE);
      BigDecimal price = fields.number(entry, "price", PRICE);
      OptionalInt available = fields.available(entry, AVAILABLE);
      boolean remnant = remnant(entry, price);
      requireAlike(seen, id, plain(length.doubleValue()) + " at " + money(price), entry);
      if (!problems.hasErrors()) {
        stock.add(new BarStock(id, length.doubleValue(), price, available, remnant));
      }
    }
    return stock;
  }

  private boolean remnant(ObjectNode entry, BigDecimal price) {
    Optional<DocumentNode> node = CutFields.given(entry, "remnant");
    boolean remnant = node.isPresent() && fields.flag(node.get());
    if (remnant && price.signum() != 0) {
      problems.error(
          CutFields.place(entry, "price"),
          price.toPlainString(),
          "0 for a remnant: it is already paid for",
          "Write 0, or take out remnant.");
    }
    return remnant;
  }

  private static String money(BigDecimal price) {
    return price.signum() == 0 ? "0" : price.stripTrailingZeros().toPlainString();
  }

  /** Entries of one name add up, so they must be alike. */
  private void requireAlike(Map<String, String> seen, String id, String words, ObjectNode entry) {
    String before = seen.putIfAbsent(id, words);
    if (before != null && !before.equals(words)) {
      problems.error(
          CutFields.place(entry, "id"),
          "the stock '" + id + "' of " + words,
          "the same size and price wherever one id stands; before it was " + before,
          "Give one of them another id.");
    }
  }

  private void requireAtMost(long total, int most, Location place) {
    if (total > most) {
      problems.error(
          place,
          total + " pieces in all",
          "at most " + most + " in one list",
          "Check the quantities, or split the list into several files.");
    }
  }

  // Sheets and strips

  private CutTask rectangles(ObjectNode document) {
    fields.remarkOnOtherKeys(
        document,
        topKeys(
            "problem", "sheets", "strip", "parts", "margin", "leadIn", "rotation", "guillotine"));
    Ground ground = ground(document);
    boolean mayTurn = fields.flag(document, "rotation");
    boolean guillotine = fields.flag(document, "guillotine");
    if (guillotine && ground.strip()) {
      refuseGuillotine(document, "false for a strip: its parts are cut free");
    }
    List<SheetPart> parts = new ArrayList<>();
    List<List<BigDecimal>> sizes = new ArrayList<>();
    long total = 0;
    for (ObjectNode entry : fields.groups(document, "parts", MOST_ENTRIES, PART)) {
      fields.remarkOnOtherKeys(entry, List.of("w", "h", "qty", "id", "label", "note"));
      BigDecimal width = fields.number(entry, "w", SIZE);
      BigDecimal height = fields.number(entry, "h", SIZE);
      int quantity = fields.count(entry, "qty", QUANTITY);
      total += quantity;
      if (problems.hasErrors()) {
        continue;
      }
      SheetPart part =
          new SheetPart(
              Integer.toString(sizes.size()),
              width.doubleValue(),
              height.doubleValue(),
              quantity,
              mayTurn);
      List<double[]> ways = new ArrayList<>();
      ways.add(new double[] {part.widthMm(), part.heightMm()});
      if (mayTurn) {
        ways.add(new double[] {part.heightMm(), part.widthMm()});
      }
      requireFits(ground, "part", ways, 0, entry.location());
      parts.add(part);
      sizes.add(List.of(width, height));
    }
    requireAtMost(total, MOST_PARTS, CutFields.place(document, "parts"));
    problems.throwIfErrors();
    if (ground.strip()) {
      return new CutTask.Strip(
          new StripProblem(ground.width(), parts, ground.margin(), ground.kerf()),
          sizes,
          ground.place());
    }
    CuttingMethod method = guillotine ? CuttingMethod.GUILLOTINE : CuttingMethod.FREE;
    return new CutTask.Sheets(
        new SheetCuttingProblem(ground.sheets(), parts, ground.margin(), ground.kerf(), method),
        sizes,
        ground.place());
  }

  private void refuseGuillotine(ObjectNode document, String allowed) {
    problems.error(
        CutFields.place(document, "guillotine"),
        "true",
        allowed,
        "Write false, or plan it as rectangles from sheets (trammel-cut-rectangles/1, problem bin).");
  }

  /**
   * What parts are laid on.
   *
   * @param strip true for a strip, false for sheets
   * @param width width of the strip
   * @param sheets the sheets
   * @param margin edge that is not used
   * @param kerf least distance between parts, room for the torch to run in taken with it
   * @param place where sheets or strip stand in the file
   */
  private record Ground(
      boolean strip,
      double width,
      List<SheetStock> sheets,
      double margin,
      double kerf,
      Location place) {}

  private Ground ground(ObjectNode document) {
    boolean strip = fields.word(document, "problem", List.of("bin", "strip")).equals("strip");
    double kerf = fields.number(document, "kerf", LOSS).doubleValue();
    if (CutFields.given(document, "leadIn").isPresent()) {
      kerf += fields.number(document, "leadIn", LOSS).doubleValue();
    }
    double margin = fields.number(document, "margin", LOSS).doubleValue();
    double width = 0;
    List<SheetStock> sheets = List.of();
    if (strip) {
      Optional<ObjectNode> group = fields.group(document, "strip", "{\"width\": 48}");
      if (group.isPresent()) {
        fields.remarkOnOtherKeys(group.get(), List.of("width", "note"));
        width = fields.number(group.get(), "width", SIZE).doubleValue();
      }
    } else {
      sheets = sheets(document);
    }
    Location place = CutFields.place(document, strip ? "strip" : "sheets");
    return new Ground(strip, width, sheets, margin, kerf, place);
  }

  private List<SheetStock> sheets(ObjectNode document) {
    Map<String, String> seen = new HashMap<>();
    List<SheetStock> sheets = new ArrayList<>();
    for (ObjectNode entry : fields.groups(document, "sheets", MOST_ENTRIES, SHEET)) {
      fields.remarkOnOtherKeys(
          entry, List.of("id", "width", "height", "price", "available", "remnant", "note"));
      String id = fields.text(entry, "id", "\"48x24\"");
      double width = fields.number(entry, "width", SIZE).doubleValue();
      double height = fields.number(entry, "height", SIZE).doubleValue();
      BigDecimal price = fields.number(entry, "price", PRICE);
      OptionalInt available = fields.available(entry, AVAILABLE);
      boolean remnant = remnant(entry, price);
      requireAlike(seen, id, plain(width) + " x " + plain(height) + " at " + money(price), entry);
      if (!problems.hasErrors()) {
        sheets.add(new SheetStock(id, width, height, price, available, remnant));
      }
    }
    return sheets;
  }

  /**
   * Refuses a part that fits nowhere.
   *
   * @param name what the part is called
   * @param ways width and height in each way it may lie
   * @param along 0 if a strip's width runs along the width of a part, 1 if along its height
   */
  private void requireFits(
      Ground ground, String name, List<double[]> ways, int along, Location place) {
    double slack = 1e-9;
    String most = "";
    double largest = 0;
    if (ground.strip()) {
      double room = ground.width() - 2 * ground.margin();
      most = plain(Math.max(0, room)) + " across the strip";
      for (double[] way : ways) {
        if (way[along] <= room + slack) {
          return;
        }
      }
    }
    for (SheetStock sheet : ground.sheets()) {
      if (sheet.available().orElse(1) == 0) {
        continue;
      }
      double width = Math.max(0, sheet.widthMm() - 2 * ground.margin());
      double height = Math.max(0, sheet.heightMm() - 2 * ground.margin());
      for (double[] way : ways) {
        if (way[0] <= width + slack && way[1] <= height + slack) {
          return;
        }
      }
      if (most.isEmpty() || width * height > largest) {
        largest = width * height;
        most = plain(width) + " x " + plain(height) + " on the largest sheet, " + sheet.id();
      }
    }
    double[] way = ways.get(0);
    problems.error(
        place,
        "a " + name + " of " + plain(way[0]) + " x " + plain(way[1]),
        (most.isEmpty() ? "nothing, for no sheet is available" : "at most " + most)
            + " ("
            + unit
            + "), margins taken off, in a way round that it may lie",
        "Add a larger sheet or a wider strip, let the part turn, or split it.");
  }

  private static String plain(double value) {
    return CutNumbers.plain(value).toPlainString();
  }

  // Outlines

  private CutTask outlines(ObjectNode document) {
    fields.remarkOnOtherKeys(
        document, topKeys("problem", "sheets", "strip", "parts", "margin", "leadIn", "guillotine"));
    Ground ground = ground(document);
    Optional<DocumentNode> guillotine = CutFields.given(document, "guillotine");
    if (guillotine.isPresent() && fields.flag(guillotine.get())) {
      refuseGuillotine(document, "false for outlines: they are cut free");
    }
    OutlineFields outlines = new OutlineFields(problems, fields);
    List<OutlinePart> parts = new ArrayList<>();
    Map<String, Location> places = new HashMap<>();
    Map<String, Object> ids = new HashMap<>();
    long total = 0;
    for (ObjectNode entry : fields.groups(document, "parts", MOST_ENTRIES, OutlineFields.PART)) {
      Object id = outlines.id(entry);
      requireNew(places, id.toString(), CutFields.place(entry, "id"), "part");
      ids.put(id.toString(), id);
      int quantity = fields.count(entry, "qty", QUANTITY);
      total += quantity;
      Optional<OutlinePart> part = outlines.part(entry, id.toString(), quantity);
      if (part.isPresent()) {
        if (!problems.hasErrors()) {
          String name = "part " + id;
          requireFits(ground, name, OutlineFields.ways(part.get()), 1, entry.location());
        }
        parts.add(part.get());
      }
    }
    requireAtMost(total, MOST_PARTS, CutFields.place(document, "parts"));
    problems.throwIfErrors();
    if (ground.strip()) {
      return new CutTask.OutlineStrip(
          new NestingStripProblem(ground.width(), parts, ground.margin(), ground.kerf()),
          ids,
          ground.place());
    }
    return new CutTask.Outlines(
        new NestingProblem(ground.sheets(), parts, ground.margin(), ground.kerf()),
        ids,
        ground.place());
  }
}
