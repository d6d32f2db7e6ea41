package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trammel.planning.catalog.Catalog;

/**
 * Chooses between sticks so long that their supplier charges for the length and shorter ones. The
 * charge is paid once however many such sticks are bought, so for one supplier either every section
 * is sawn from what is cheapest by itself or none from an over-length stick; whichever costs less
 * with all that the supplier then adds to the order is taken. On a tie the shorter ones are.
 */
final class StickChoice {
  private final Catalog catalog;

  StickChoice(Catalog catalog) {
    this.catalog = catalog;
  }

  /**
   * A section with its plans.
   *
   * @param cheapest from the sticks that cost least by themselves
   * @param shorter without over-length sticks; empty where there is no such plan or no need of it
   * @param overLength whether the cheapest plan buys an over-length stick
   */
  record Choice(SectionCut cheapest, Optional<SectionCut> shorter, boolean overLength) {
    private SectionCut withoutOverLength() {
      return shorter.orElse(cheapest);
    }
  }

  /**
   * The plans to take.
   *
   * @param choices every section with its plans
   * @param materials the materials with the sections that they are given
   */
  List<SectionCut> of(List<Choice> choices, Function<List<SectionCut>, Materials> materials) {
    List<SectionCut> taken = new ArrayList<>();
    choices.forEach(choice -> taken.add(choice.cheapest()));
    for (String supplier : suppliersToAsk(choices)) {
      List<SectionCut> shorter = new ArrayList<>(taken);
      for (int i = 0; i < choices.size(); i++) {
        if (supplier.equals(supplier(choices.get(i)))) {
          shorter.set(i, choices.get(i).withoutOverLength());
        }
      }
      Purchases now = Purchases.of(materials.apply(taken), catalog);
      Purchases other = Purchases.of(materials.apply(shorter), catalog);
      if (other.total(supplier).compareTo(now.total(supplier)) <= 0) {
        for (int i = 0; i < taken.size(); i++) {
          taken.set(i, shorter.get(i));
        }
      }
    }
    return List.copyOf(taken);
  }

  /** Suppliers with an over-length stick in some plan, all of which could be done without. */
  private static Set<String> suppliersToAsk(List<Choice> choices) {
    Set<String> suppliers = new LinkedHashSet<>();
    for (Choice choice : choices) {
      if (choice.overLength()) {
        suppliers.add(supplier(choice));
      }
    }
    for (Choice choice : choices) {
      if (choice.overLength() && choice.shorter().isEmpty()) {
        suppliers.remove(supplier(choice));
      }
    }
    return suppliers;
  }

  private static String supplier(Choice choice) {
    return choice.cheapest().material().supplier();
  }
}
