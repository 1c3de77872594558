package zonewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * No two classes of the trade need each other's constants. A class is set up by the first thread
 * that touches it, and all others wait; where setting up A touches B and the other way round, two
 * threads that come from both ends wait for each other for ever (JLS 12.4.2), and one thread alone
 * sees constants that are not there yet. So the columns of a class may be made of those of another
 * in one direction only, wherever in the class that stands.
 */
class InitialisationTest {

  /** Packages whose constants are made of each other's. */
  private static final Set<String> TRADE =
      Set.of(
          "budget",
          "climate",
          "emitters",
          "estimate",
          "fieldwork",
          "nights",
          "pipes",
          "plants",
          "retrofit",
          "savings",
          "soil",
          "trade",
          "water");

  private final Map<String, Set<String>> touches = new TreeMap<>();

  @Test
  void noTwoClassesOfTheTradeSetEachOtherUp() {
    for (JavaClass each : FloorsTest.PROGRAM) {
      if (ofTrade(each)) {
        touches.put(each.getName(), touched(each));
      }
    }
    assertThat(touches.get("zonewright.budget.ZoneBudget"))
        .as("what a class touches was found at all")
        .contains("zonewright.water.Demand");
    List<Set<String>> circles = circles();
    circles.removeIf(
        circle ->
            circle.stream()
                .noneMatch(
                    name -> FloorsTest.PROGRAM.get(name).getStaticInitializer().isPresent()));
    assertThat(circles).isEmpty();
  }

  private static boolean ofTrade(JavaClass type) {
    String[] parts = type.getName().split("\\.", -1);
    return parts.length > 2 && parts[0].equals("zonewright") && TRADE.contains(parts[1]);
  }

  /** The classes that are set up where code of a class is run. */
  private static Set<String> touched(JavaClass type) {
    Set<String> touched = new TreeSet<>();
    for (JavaAccess<?> access : type.getAccessesFromSelf()) {
      AccessTarget target = access.getTarget();
      JavaClass owner = target.getOwner();
      if (ofTrade(owner) && !owner.equals(type) && isStatic(target)) {
        touched.add(owner.getName());
      }
    }
    return touched;
  }

  private static boolean isStatic(AccessTarget target) {
    Optional<? extends JavaMember> member = target.resolveMember();
    return member.filter(found -> found.getModifiers().contains(JavaModifier.STATIC)).isPresent()
        || target.getName().equals("<init>");
  }

  /** The sets of classes each of which touches every other, by whatever way. */
  private List<Set<String>> circles() {
    Map<String, Set<String>> reached = new HashMap<>();
    touches.keySet().forEach(name -> reached.put(name, reachedFrom(name)));
    List<Set<String>> circles = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (String name : touches.keySet()) {
      Set<String> circle = new TreeSet<>();
      for (String other : reached.get(name)) {
        if (reached.getOrDefault(other, Set.of()).contains(name)) {
          circle.add(other);
        }
      }
      if (circle.size() > 1 && told.add(name)) {
        told.addAll(circle);
        circles.add(circle);
      }
    }
    return circles;
  }

  private Set<String> reachedFrom(String name) {
    Set<String> reached = new LinkedHashSet<>();
    Deque<String> next = new ArrayDeque<>(touches.get(name));
    while (!next.isEmpty()) {
      String each = next.remove();
      if (reached.add(each)) {
        next.addAll(touches.getOrDefault(each, Set.of()));
      }
    }
    return reached;
  }
}
