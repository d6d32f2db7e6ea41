package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;

/** A list of words, each once, out of several. */
final class ChoicesType extends ValueType<List<String>> {
  private final ChoiceType choice;

  ChoicesType(List<String> choices) {
    this.choice = new ChoiceType(choices);
  }

  @Override
  FieldKind kind() {
    return FieldKind.CHOICES;
  }

  @Override
  Optional<List<String>> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ListNode list)) {
      return refuse(node, reader);
    }
    List<String> words = new ArrayList<>();
    boolean good = true;
    for (DocumentNode entry : list.entries()) {
      Optional<String> word = choice.read(entry, reader);
      if (word.isPresent() && words.contains(word.get())) {
        return refuse(node, reader, "Write the word " + word.get() + " once.");
      }
      good = good && word.isPresent();
      if (word.isPresent()) {
        words.add(word.get());
      }
    }
    return good ? Optional.of(List.copyOf(words)) : Optional.empty();
  }

  @Override
  String allowed(UnitSystem units) {
    return "a list of words out of " + WordList.and(choice.choices());
  }

  @Override
  String example(UnitSystem units) {
    return "[" + choice.example(units) + "]";
  }

  @Override
  String print(List<String> value, UnitSystem units) {
    return "[" + WordList.plain(value) + "]";
  }

  @Override
  boolean accepts(List<String> value) {
    return choice.choices().containsAll(value);
  }

  @Override
  List<String> choices() {
    return choice.choices();
  }
}
