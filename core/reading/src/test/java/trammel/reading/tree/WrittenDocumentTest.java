package trammel.reading.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Changing single values of a file leaves every other character of it as it was. */
class WrittenDocumentTest {
  private static final String JOB =
      """
      # Read before the frame was blasted.
      format: trammel-job/1

      job:
        number: D-101   # on the tag at the key
        customer: 'O''Hara: & sons'
      measured:
        # Both sides alike.
        wheelbase: {left: 118 in, right: [118 in, 118 1/32 in]}
        rails:
          depth: 6 in
          wall: 0.15 in # calliper
        obstacles:
          - name: tail pipe
            kind: exhaust
          - {name: tank, kind: tank}
        repeats: # taken twice
          - 29 1/2 in
          - 29 9/16 in
      chosen:
        spring_options: {}
        ride:
          bump: 3 in
        # The end.
      """;

  private static TextNode text(String text) {
    return new TextNode(new Location("test", 0, 0, ""), text);
  }

  private static String with(String path, String value) {
    return WrittenDocument.of("job.yaml", JOB).with(path, text(value)).text();
  }

  private static String without(String path) {
    return WrittenDocument.of("job.yaml", JOB).without(path).text();
  }

  @Test
  void a_value_is_replaced_and_the_remark_beside_it_stays() {
    assertEquals(
        JOB.replace("0.15 in # calliper", "0.17 in # calliper"),
        with("measured.rails.wall", "0.17 in"));
    assertEquals(
        JOB.replace("left: 118 in", "left: 117 1/2 in"),
        with("measured.wheelbase.left", "117 1/2 in"));
    assertEquals(JOB.replace("'O''Hara: & sons'", "Kim"), with("job.customer", "Kim"));
    assertEquals(
        JOB.replace("{name: tank,", "{name: cell,"), with("measured.obstacles[1].name", "cell"));
    assertEquals(
        JOB.replace("- 29 9/16 in", "- 29 5/8 in"), with("measured.repeats[1]", "29 5/8 in"));
  }

  @Test
  void what_yaml_could_take_for_something_else_is_put_in_quotes() {
    assertEquals(
        JOB.replace("'O''Hara: & sons'", "\"a: b #c \\\"d\\\" \\\\\""),
        with("job.customer", "a: b #c \"d\" \\"));
    for (String word :
        List.of("yes", "null", "0x1F", "- x", "*a", "&a", "!t", "{a}", "[a]", "", " ", "a\nb")) {
      String text = with("job.customer", word);
      assertEquals(
          word,
          ((TextNode)
                  WrittenDocument.of("a.yaml", text)
                      .root()
                      .findObject("job")
                      .orElseThrow()
                      .find("customer")
                      .orElseThrow())
              .text());
    }
  }

  @Test
  void a_new_key_goes_to_the_end_of_its_group() {
    assertEquals(
        JOB.replace("wall: 0.15 in # calliper\n", "wall: 0.15 in # calliper\n    shape: box\n"),
        with("measured.rails.shape", "box"));
    assertEquals(
        JOB.replace(
            "{left: 118 in, right: [118 in, 118 1/32 in]}",
            "{left: 118 in, right: [118 in, 118 1/32 in], by: Kim}"),
        with("measured.wheelbase.by", "Kim"));
    assertEquals(
        JOB.replace("spring_options: {}", "spring_options: {rate: 180 lb/in}"),
        with("chosen.spring_options.rate", "180 lb/in"));
    assertEquals(
        JOB.replace(
            "    bump: 3 in\n",
            "    bump: 3 in\n  pickups:\n    upper-left:\n      frame: {up: 18 1/2 in}\n"),
        with("chosen.pickups.upper-left.frame.up", "18 1/2 in"));
    assertEquals(JOB + "terms: {note: x}\n", with("terms.note", "x"));
    assertEquals(
        JOB.replace(
            "- {name: tank, kind: tank}\n", "- {name: tank, kind: tank}\n    - {name: hose}\n"),
        with("measured.obstacles[2].name", "hose"));
  }

  @Test
  void a_group_that_grows_too_long_for_its_line_gets_lines_of_its_own() {
    WrittenDocument job = WrittenDocument.of("job.yaml", "format: x\n");
    for (int i = 1; i <= 9; i++) {
      job = job.with("measured.rails.width_" + i, text(i + " 1/2 in"));
    }
    assertEquals(
        "format: x\nmeasured:\n  rails:\n    width_1: 1 1/2 in\n    width_2: 2 1/2 in\n"
            + "    width_3: 3 1/2 in\n    width_4: 4 1/2 in\n    width_5: 5 1/2 in\n"
            + "    width_6: 6 1/2 in\n    width_7: 7 1/2 in\n    width_8: 8 1/2 in\n"
            + "    width_9: 9 1/2 in\n",
        job.text());
  }

  @Test
  void a_list_over_several_lines_is_replaced_and_the_remark_at_its_key_stays() {
    WrittenDocument job = WrittenDocument.of("job.yaml", JOB);
    ListNode three =
        new ListNode(new Location("test", 0, 0, ""), List.of(text("1 in"), text("2 in")));
    assertEquals(
        JOB.replace(
            "repeats: # taken twice\n    - 29 1/2 in\n    - 29 9/16 in\n",
            "repeats: [1 in, 2 in] # taken twice\n"),
        job.with("measured.repeats", three).text());
  }

  @Test
  void a_key_goes_with_its_line_and_an_emptied_group_goes_too() {
    assertEquals(JOB.replace("    depth: 6 in\n", ""), without("measured.rails.depth"));
    assertEquals(JOB.replace("left: 118 in, ", ""), without("measured.wheelbase.left"));
    assertEquals(
        JOB.replace(", right: [118 in, 118 1/32 in]", ""), without("measured.wheelbase.right"));
    assertEquals(JOB.replace("  ride:\n    bump: 3 in\n", ""), without("chosen.ride.bump"));
    assertEquals(JOB, without("chosen.pickups.upper-left"));
    assertEquals(
        JOB.replace("    - {name: tank, kind: tank}\n", ""), without("measured.obstacles[1]"));
  }

  @Test
  void a_json_file_stays_json() {
    String json = "{\n  \"job\": {\"number\": \"D-1\", \"n\": 2},\n  \"terms\": null\n}\n";
    WrittenDocument job = WrittenDocument.of("job.json", json);
    assertEquals(json.replace("D-1", "D-2"), job.with("job.number", text("D-2")).text());
    assertEquals(
        json.replace("null", "{\"hours\": {\"rust\": \"1.15\"}}"),
        job.with("terms.hours.rust", text("1.15")).text());
    assertEquals(
        json.replace("null\n", "null,\n  \"chosen\": {\"spring\": \"air\"}\n"),
        job.with("chosen.spring", text("air")).text());
    assertEquals(json.replace(", \"n\": 2", ""), job.without("job.n").text());
  }

  @Test
  void a_name_with_dots_or_brackets_of_its_own_stands_in_double_quotes() {
    WrittenDocument catalog =
        WrittenDocument.of("shop.yaml", "items:\n  nut-0.75:\n    price: 2\n");
    assertEquals(
        catalog.text().replace("2", "3"),
        catalog.with("items.\"nut-0.75\".price", text("3")).text());
    String added = catalog.with("suppliers.\"A. [B]\".freight", text("9")).text();
    assertEquals(
        "9",
        ((NumberNode)
                new TreeEdit(new Location("test", 0, 0, "suppliers.\"A. [B]\".freight"))
                    .find(DocumentReader.read("shop.yaml", added))
                    .orElseThrow())
            .text());
    for (String path : List.of("items.\"nut", "items.\"nut\"x", "items.\"\"", "\"[0]\"")) {
      assertThrows(BadInputException.class, () -> catalog.with(path, text("1")), path);
    }
  }

  @Test
  void line_ends_of_another_system_and_a_last_line_without_one_stay() {
    WrittenDocument job = WrittenDocument.of("job.yaml", "job:\r\n  number: 1\r\n  date: x");
    assertEquals(
        "job:\r\n  number: 1\r\n  date: x\r\n  note: kept",
        job.with("job.note", text("kept")).text());
  }

  @Test
  void a_path_that_leads_through_a_value_is_refused() {
    WrittenDocument job = WrittenDocument.of("job.yaml", JOB);
    for (String path : List.of("job.number.x", "measured.obstacles[7].name", "a..b", "", "a[x]")) {
      BadInputException refused =
          assertThrows(BadInputException.class, () -> job.with(path, text("1")));
      assertTrue(refused.getMessage().contains("a field that a job file can hold"), path);
    }
  }

  /** Whatever is changed, all remarks stay, and what is read back is what was asked for. */
  @Seeds(300)
  void any_run_of_changes_keeps_every_remark_and_says_what_was_asked(Draw draw) {
    WrittenDocument job = WrittenDocument.of("job.yaml", JOB);
    List<String> remarks = remarks(JOB);
    for (int i = 0; i < 6; i++) {
      String path = draw.oneOf(PATHS);
      if (draw.whole(0, 3) == 0) {
        job = job.without(path);
        assertEquals(Optional.empty(), found(job.root(), path));
        continue;
      }
      String value = draw.oneOf(VALUES);
      try {
        job = job.with(path, text(value));
      } catch (BadInputException through) {
        assertTrue(through.getMessage().contains("so there is no"), through.getMessage());
        continue;
      }
      assertEquals(Optional.of(value), found(job.root(), path), job.text());
    }
    List<String> left = remarks(job.text());
    for (String remark : remarks) {
      // A remark on a line that was taken out goes with it.
      assertTrue(left.contains(remark) || ON_A_VALUE.contains(remark), remark + "\n" + job.text());
    }
  }

  private static final List<String> PATHS =
      List.of(
          "job.number",
          "job.customer",
          "job.note",
          "measured.wheelbase.left",
          "measured.wheelbase.right",
          "measured.rails.wall",
          "measured.rails.shape",
          "measured.rails",
          "measured.repeats",
          "chosen.spring_options.rate",
          "chosen.ride.bump",
          "chosen.ride.droop",
          "chosen.pickups.a.frame.up",
          "chosen.pickups.a.axle.left",
          "chosen.pickups.b.frame.up",
          "terms.hours.rust",
          "terms.note");

  private static final List<String> VALUES =
      List.of(
          "29 1/2 in",
          "5' 3 1/2\"",
          "-1 in",
          "0.9",
          "a # b",
          "a: b",
          "x, y",
          "{",
          "Ärger 😀",
          "2 %");

  private static final List<String> ON_A_VALUE =
      List.of("# on the tag at the key", "# calliper", "# taken twice");

  private static List<String> remarks(String text) {
    List<String> remarks = new ArrayList<>();
    for (String line : text.split("\n")) {
      if (line.contains("# ")) {
        remarks.add(line.substring(line.indexOf("# ")));
      }
    }
    return remarks;
  }

  private static Optional<String> found(ObjectNode root, String path) {
    DocumentNode at = root;
    for (String key : path.split("\\.")) {
      Optional<DocumentNode> next =
          at instanceof ObjectNode object ? object.find(key) : Optional.empty();
      if (next.isEmpty() || next.get() instanceof EmptyNode) {
        return Optional.empty();
      }
      at = next.get();
    }
    return Optional.of(
        at instanceof NumberNode number
            ? number.text()
            : at instanceof TextNode text ? text.text() : "group");
  }
}
