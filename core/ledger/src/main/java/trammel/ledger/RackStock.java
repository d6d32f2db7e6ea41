package trammel.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.engine.quantity.Given;
import trammel.planning.rack.Rack;

/**
 * The stock on hand in the ledger. Whatever goes on or off is a movement with its reason, so that
 * at every moment the rack is the sum of its movements.
 */
public final class RackStock {
  private final Sql sql;
  private final Hand hand;

  RackStock(Sql sql, Hand hand) {
    this.sql = sql;
    this.hand = hand;
  }

  /** What kind of stock a movement is of. */
  public enum Kind {
    STICK,
    DROP,
    BIN;

    /** As it is written in the file and in tables. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }

    static Kind of(String word) {
      return valueOf(word.toUpperCase(java.util.Locale.ROOT));
    }
  }

  /**
   * What moved, without when and why.
   *
   * @param kind stick, drop or bin
   * @param name painted on it; empty for a bin
   * @param item key in the catalog
   * @param lengthMm its length (mm); 0 for a bin of anything but bolts
   * @param widthMm the width of a drop (mm); 0 for anything else
   */
  public record Article(Kind kind, String name, String item, double lengthMm, double widthMm) {}

  /**
   * Something that went on the rack or came off.
   *
   * @param at when it was written down, UTC
   * @param who by whom; empty for what was written before ledgers kept it
   * @param reason why
   * @param article what
   * @param change how many went on; below 0 came off
   */
  public record Movement(
      String at, String who, String reason, Article article, BigDecimal change) {}

  /** What is on it now. */
  public Rack rack() {
    return sql.view(
        () -> {
          List<Rack.Stick> sticks = new ArrayList<>();
          List<Rack.Drop> drops = new ArrayList<>();
          for (Article piece : pieces()) {
            if (piece.kind == Kind.STICK) {
              sticks.add(new Rack.Stick(piece.name, piece.item, piece.lengthMm));
            } else {
              drops.add(new Rack.Drop(piece.name, piece.item, piece.widthMm, piece.lengthMm));
            }
          }
          return new Rack(sticks, drops, bins());
        });
  }

  private List<Article> pieces() {
    return sql.rows(
        "select kind, name, item, length_mm, width_mm from rack_piece order by id",
        row ->
            new Article(
                Kind.of(row.getString(1)),
                row.getString(2),
                row.getString(3),
                row.getDouble(4),
                row.getDouble(5)));
  }

  private List<Rack.Bin> bins() {
    return sql.rows(
        "select item, length_mm, quantity from rack_bin order by id",
        row -> new Rack.Bin(row.getString(1), row.getDouble(2), new BigDecimal(row.getString(3))));
  }

  /** Everything that ever moved, the first first. */
  public List<Movement> movements() {
    return sql.rows(
        "select moved_at, reason, kind, name, item, length_mm, width_mm, change, moved_by"
            + " from rack_movement order by id",
        row ->
            new Movement(
                row.getString(1),
                row.getString(9),
                row.getString(2),
                new Article(
                    Kind.of(row.getString(3)),
                    row.getString(4),
                    row.getString(5),
                    row.getDouble(6),
                    row.getDouble(7)),
                new BigDecimal(row.getString(8))));
  }

  /**
   * Puts the rack from what is on it now to what shall be on it; each difference is a movement.
   *
   * @param after what shall be on it
   * @param reason why, such as the jobs that it was ordered for
   */
  public void become(Rack after, String reason) {
    Given.text("reason of a movement on the rack", reason, "Say why.");
    sql.change(
        () -> {
          Rack before = rack();
          String at = hand.at();
          changePieces(before, after, at, reason);
          changeBins(before, after, at, reason);
          return null;
        });
  }

  private void changePieces(Rack before, Rack after, String at, String reason) {
    Set<Article> gone = pieces(before);
    Set<Article> come = pieces(after);
    Set<Article> stay = new LinkedHashSet<>(gone);
    stay.retainAll(come);
    gone.removeAll(stay);
    come.removeAll(stay);
    for (Article piece : gone) {
      sql.run("delete from rack_piece where name = ?", piece.name);
      move(at, reason, piece, BigDecimal.ONE.negate());
    }
    for (Article piece : come) {
      sql.run(
          "insert into rack_piece (kind, name, item, length_mm, width_mm) values (?, ?, ?, ?, ?)",
          piece.kind.word(),
          piece.name,
          piece.item,
          piece.lengthMm,
          piece.widthMm);
      move(at, reason, piece, BigDecimal.ONE);
    }
  }

  private void changeBins(Rack before, Rack after, String at, String reason) {
    if (before.bins().equals(after.bins())) {
      return;
    }
    Map<Article, BigDecimal> changes = counts(after);
    counts(before).forEach((bin, count) -> changes.merge(bin, count.negate(), BigDecimal::add));
    changes.forEach(
        (bin, change) -> {
          if (change.signum() != 0) {
            move(at, reason, bin, change);
          }
        });
    sql.run("delete from rack_bin");
    for (Rack.Bin bin : after.bins()) {
      sql.run(
          "insert into rack_bin (item, length_mm, quantity) values (?, ?, ?)",
          bin.key(),
          bin.lengthMm(),
          bin.quantity());
    }
  }

  private void move(String at, String reason, Article article, BigDecimal change) {
    sql.run(
        "insert into rack_movement (moved_at, reason, kind, name, item, length_mm, width_mm,"
            + " change, moved_by) values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        at,
        reason,
        article.kind.word(),
        article.name,
        article.item,
        article.lengthMm,
        article.widthMm,
        change,
        hand.who());
  }

  /** The sticks and drops of a rack. */
  static Set<Article> pieces(Rack rack) {
    Set<Article> pieces = new LinkedHashSet<>();
    for (Rack.Stick stick : rack.sticks()) {
      pieces.add(new Article(Kind.STICK, stick.name(), stick.barKey(), stick.lengthMm(), 0));
    }
    for (Rack.Drop drop : rack.drops()) {
      pieces.add(
          new Article(Kind.DROP, drop.name(), drop.plateKey(), drop.lengthMm(), drop.widthMm()));
    }
    return pieces;
  }

  /** How many lie in the bins of a rack. */
  static Map<Article, BigDecimal> counts(Rack rack) {
    Map<Article, BigDecimal> counts = new LinkedHashMap<>();
    for (Rack.Bin bin : rack.bins()) {
      counts.merge(
          new Article(Kind.BIN, "", bin.key(), bin.lengthMm(), 0), bin.quantity(), BigDecimal::add);
    }
    return counts;
  }
}
