package trammel.planning.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.reading.fields.Field;

class JobSchemaTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final JsonNode SCHEMA = JSON.readTree(JobSchema.jsonSchema());

  /** Folder of the repository's documents, from the folder of this module. */
  private static final Path DOCS = Path.of("..", "..", "docs");

  @Test
  void schemaIsWellFormedAndNamesItsDraft() {
    assertEquals("https://json-schema.org/draft/2020-12/schema", SCHEMA.get("$schema").asString());
    assertEquals("object", SCHEMA.get("type").asString());
  }

  @Test
  void goodFileHoldsToTheSchema() {
    List<String> faults = new ArrayList<>();
    check("", JSON.readTree(JobFiles.text("pickup.json")), SCHEMA, faults);
    assertEquals(List.of(), faults);
  }

  @ParameterizedTest
  @CsvSource({
    "flange, flangee, measured.rails.flangee",
    "flange, flangee, measured.rails needs flange",
    "'\"channel\"', '\"round\"', measured.rails.shape is not in the list"
  })
  void brokenFileDoesNotHoldToTheSchema(String passage, String replacement, String fault) {
    List<String> faults = new ArrayList<>();
    String text = JobFiles.text("pickup.json").replace(passage, replacement);
    check("", JSON.readTree(text), SCHEMA, faults);
    assertTrue(faults.contains(fault), faults::toString);
  }

  /** The few words of JSON Schema that the generated schema uses for structure. */
  private static void check(String path, JsonNode value, JsonNode schema, List<String> faults) {
    if (schema.has("enum") && !listed(value, schema.get("enum"))) {
      faults.add(path + " is not in the list");
    }
    if (value.isArray() && schema.has("items")) {
      value.forEach(entry -> check(path + "[]", entry, schema.get("items"), faults));
    }
    if (!value.isObject() || schema.get("type") == null) {
      return;
    }
    JsonNode properties = schema.has("properties") ? schema.get("properties") : JSON.readTree("{}");
    JsonNode others = schema.get("additionalProperties");
    value
        .properties()
        .forEach(
            member -> {
              String inner = path.isEmpty() ? member.getKey() : path + "." + member.getKey();
              if (properties.has(member.getKey())) {
                check(inner, member.getValue(), properties.get(member.getKey()), faults);
              } else if (others != null && others.isObject()) {
                check(inner, member.getValue(), others, faults);
              } else if (others != null) {
                faults.add(inner);
              }
            });
    if (schema.has("required")) {
      schema
          .get("required")
          .forEach(
              key -> {
                if (!value.has(key.asString())) {
                  faults.add(path + " needs " + key.asString());
                }
              });
    }
  }

  private static boolean listed(JsonNode value, JsonNode words) {
    for (JsonNode word : words) {
      if (word.equals(value)) {
        return true;
      }
    }
    return false;
  }

  @Test
  void everyFieldStandsInTheReferenceWithItsHelp() {
    assertStands(JobFields.all(), JobSchema.markdown());
  }

  private static void assertStands(List<Field<?>> fields, String page) {
    for (Field<?> field : fields) {
      assertTrue(page.contains("| `" + field.key() + "` | " + field.help()), field.key());
      switch (field.kind()) {
        case SECTION, SECTION_LIST, SECTION_MAP -> assertStands(field.children(), page);
        default -> assertTrue(!field.help().isBlank());
      }
    }
  }

  /** Run with {@code -Dtrammel.docs.write=true} to write the documents anew. */
  @Test
  void documentsInTheRepositoryAreThoseOfTheFields() throws IOException {
    assertDocument("job-file.md", JobSchema.markdown());
    assertDocument("trammel-job.schema.json", JobSchema.jsonSchema());
  }

  private static void assertDocument(String name, String wanted) throws IOException {
    Path file = DOCS.resolve(name);
    if (Boolean.getBoolean("trammel.docs.write")) {
      Files.createDirectories(DOCS);
      Files.writeString(file, wanted);
    }
    assertEquals(
        wanted,
        Files.readString(file),
        "docs/" + name + " is out of date: run the tests once with -Dtrammel.docs.write=true");
  }
}
