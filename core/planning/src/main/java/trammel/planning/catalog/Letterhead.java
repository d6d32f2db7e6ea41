package trammel.planning.catalog;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.engine.quantity.Given;

/**
 * What stands at the head of the papers that leave the shop.
 *
 * @param name name of the shop
 * @param address where it is, in one line
 * @param phone where it is reached
 * @param licence number of its licence or registration, with what it is called
 * @param logo file with its mark: PNG or JPEG
 */
public record Letterhead(
    String name,
    Optional<String> address,
    Optional<String> phone,
    Optional<String> licence,
    Optional<Path> logo) {
  public Letterhead {
    Given.text("name of the shop", name, "Say whose documents they are.");
  }

  /** A letterhead of nothing but the name. */
  public static Letterhead of(String name) {
    return new Letterhead(
        name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Address, phone and licence, as far as they are given. */
  public List<String> lines() {
    return List.of(address, phone, licence).stream().flatMap(Optional::stream).toList();
  }
}
