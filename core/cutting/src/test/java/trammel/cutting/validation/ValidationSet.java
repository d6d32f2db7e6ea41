package trammel.cutting.validation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import trammel.cutting.ReferenceFiles;
import trammel.cutting.outlines.NestingInstances;

/** The lists that the searches are tuned on, and as many that they are only held against. */
enum ValidationSet {
  /** What the searches may be tuned on. */
  TUNED(1_000),
  /** What they have never been tuned on. */
  UNSEEN(2_000);

  private static final List<Integer> HOPPER_PARTS = List.of(49, 73, 97);
  private static final List<String> PUBLISHED_UNSEEN =
      List.of("jakobs2", "mao", "shapes1", "trousers");
  private static final int OUTLINE_LISTS = 4;

  private final long seed;

  ValidationSet(long seed) {
    this.seed = seed;
  }

  /** Bar lists. */
  List<Instance> bars() {
    return List.of(
        BarRecipes.falkenauerUniform(120, seed + 1),
        BarRecipes.falkenauerUniform(250, seed + 2),
        BarRecipes.falkenauerUniform(500, seed + 3),
        BarRecipes.falkenauerTriplets(60, seed + 4),
        BarRecipes.falkenauerTriplets(120, seed + 5),
        BarRecipes.falkenauerTriplets(249, seed + 6),
        BarRecipes.schollOne(100, 100, 1, seed + 7),
        BarRecipes.schollOne(200, 120, 20, seed + 8),
        BarRecipes.schollOne(500, 150, 30, seed + 9),
        BarRecipes.schollTwo(100, 3, 20, seed + 10),
        BarRecipes.schollTwo(200, 5, 50, seed + 11),
        BarRecipes.schollTwo(500, 7, 90, seed + 12),
        BarRecipes.schollThree(seed + 13),
        BarRecipes.schollThree(seed + 14),
        BarRecipes.schwerin(100, seed + 15),
        BarRecipes.schwerin(120, seed + 16));
  }

  /** Sheet lists: every class with five sizes and 20 and 30 parts, with one size, and a shop's. */
  List<Instance> sheets() {
    List<Instance> list = new ArrayList<>();
    for (int c = 1; c <= 10; c++) {
      list.add(SheetRecipes.fiveSizes(c, 20, seed + 100 + c));
    }
    for (int c = 1; c <= 10; c++) {
      list.add(SheetRecipes.fiveSizes(c, 30, seed + 200 + c));
    }
    for (int c = 1; c <= 10; c++) {
      list.add(SheetRecipes.oneSize(c, 40, seed + 300 + c));
    }
    for (int i = 0; i < 5; i++) {
      list.add(SheetRecipes.shop(20 + 2 * i, seed + 400 + i));
    }
    return list;
  }

  /** Strips of rectangles. */
  List<Instance> strips() {
    List<Instance> list = new ArrayList<>();
    for (int parts : HOPPER_PARTS) {
      list.add(StripRecipes.pinwheels(parts, seed + 500 + parts));
      list.add(StripRecipes.sheared(parts, seed + 600 + parts));
    }
    return list;
  }

  /** Strips of outlines: published ones, and by our own recipe. */
  List<Instance> outlines() {
    List<Instance> list = new ArrayList<>();
    if (this == TUNED) {
      for (Path file : ReferenceFiles.in("poly2d")) {
        JsonNode read = ReferenceFiles.read(file);
        if (read.get("problem").asString().equals("strip")) {
          list.add(published(read));
        }
      }
    } else {
      for (String name : PUBLISHED_UNSEEN) {
        list.add(published(ReferenceFiles.read("validation", name)));
      }
    }
    for (int i = 0; i < OUTLINE_LISTS; i++) {
      list.add(OutlineRecipes.plates(8 + 4 * i, 5 - i % 2, seed + 700 + i));
    }
    return list;
  }

  private static Instance published(JsonNode file) {
    JsonNode best = file.path("best").path("objective");
    return new Instance.OutlineStrip(
        "published",
        file.get("name").asString(),
        best.isNumber() ? OptionalDouble.of(best.asDouble()) : OptionalDouble.empty(),
        NestingInstances.strip(file));
  }
}
